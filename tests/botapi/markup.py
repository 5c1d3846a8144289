"""HTML as the real server reads it: strict about tags, lenient about `&`.

The rules and the words of the errors are those of `parse_html` in td/telegram/MessageEntity.cpp of tdlib/td.
"""

import re

from tests.botapi.errors import RefusedError

Entity = dict[str, object]

KINDS = {
    "b": "bold",
    "strong": "bold",
    "i": "italic",
    "em": "italic",
    "u": "underline",
    "s": "strikethrough",
    "code": "code",
    "pre": "pre",
    "blockquote": "blockquote",
    "a": "text_link",
}

_NAMED = {"lt": "<", "gt": ">", "amp": "&", "quot": '"'}
_REFERENCE = re.compile(r"&(#x[0-9a-fA-F]+|#[0-9]+|lt|gt|amp|quot);?")
_TAG = re.compile(r"<(?P<end>/?)(?P<name>[^\s>]*)(?P<attributes>[^>]*)(?P<close>>?)")


def units(text: str) -> int:
    """Return the length of `text` in UTF-16 code units, as the Bot API counts."""
    return len(text.encode("utf-16-le", "surrogatepass")) // 2


def parse(text: str) -> tuple[str, list[Entity]]:
    """Return the plain text and its entities. Raises RefusedError as the real server would answer."""
    plain = ""
    entities: list[Entity] = []
    opened: list[tuple[str, int]] = []
    position = 0
    for tag in _TAG.finditer(text):
        plain += _REFERENCE.sub(_character, text[position : tag.start()])
        position = tag.end()
        at = f"at byte offset {len(text[: tag.start()].encode())}"
        name = tag["name"].lower()
        if tag["end"]:
            if not opened:
                raise _cannot_parse(f"Unexpected end tag {at}")
            start_name, start = opened.pop()
            if not tag["close"]:
                raise _cannot_parse(f"Unclosed end tag {at}")
            if name not in {"", start_name}:
                found = f'expected "</{start_name}>", found "</{name}>"'
                raise _cannot_parse(f"Unmatched end tag {at}, {found}")
            if units(plain) > start:
                entities.append({"type": KINDS[start_name], "offset": start, "length": units(plain) - start})
        elif name not in KINDS:
            raise _cannot_parse(f'Unsupported start tag "{name}" {at}')
        elif not tag["close"]:
            raise _cannot_parse(f"Unclosed start tag {at}")
        else:
            opened.append((name, units(plain)))
    plain += _REFERENCE.sub(_character, text[position:])
    if opened:
        raise _cannot_parse(f'Can\'t find end tag corresponding to start tag "{opened[-1][0]}"')
    return plain, entities


def _character(reference: re.Match[str]) -> str:
    name = reference[1]
    if name in _NAMED:
        return _NAMED[name]
    code = int(name[2:], 16) if name.startswith("#x") else int(name[1:])
    return chr(code) if 0 < code < 0x110000 else reference[0]


def _cannot_parse(why: str) -> RefusedError:
    return RefusedError(400, f"Bad Request: can't parse entities: {why}")
