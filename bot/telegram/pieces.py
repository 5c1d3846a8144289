"""Long texts cut into messages, and buttons laid out in rows: what the Bot API's limits ask for.

Texts are measured in UTF-16 code units after the markup is read, as the Bot API does; see "Formatting
options" and `MessageEntity` in https://core.telegram.org/bots/api. A cut never falls into a tag, an escape or
a character made of several code points.
"""

import unicodedata
from collections.abc import Iterator, Sequence
from typing import Final

from bot.markup import Run, escape, runs

TEXT_LIMIT: Final = 4096
CAPTION_LIMIT: Final = 1024
BUTTON_DATA_LIMIT: Final = 64
"""In bytes of UTF-8."""

_ROW_WIDTH: Final = 30
_ROW_LENGTH: Final = 3

_JOINER: Final = "\u200d"
_LONGEST_CLUSTER: Final = 32


def units(text: str) -> int:
    """Return the length of `text` in UTF-16 code units."""
    return len(text) + sum(char > "\uffff" for char in text)


def length(text_html: str) -> int:
    """Return how long a text with markup is to the Bot API."""
    return units("".join(run.text for run in runs(text_html)).strip())


def pieces(text_html: str, limit: int = TEXT_LIMIT) -> tuple[str, ...]:
    """Cut a text with markup into texts of at most `limit` units, each with its markup opened and closed.

    It is cut between paragraphs where that leaves no piece too small, else between lines, else between words.
    White space at a cut goes. A text without a visible character gives no piece.
    """
    read = runs(text_html)
    text = "".join(run.text for run in read)
    return tuple(_written(read, start, end) for start, end in _spans(text, limit))


def rows(buttons: Sequence[tuple[str, str]]) -> tuple[tuple[tuple[str, str], ...], ...]:
    """Lay out (label, data) buttons in order: up to three to a row while the labels are short."""
    laid: list[list[tuple[str, str]]] = []
    for button in buttons:
        if laid and len(laid[-1]) < _ROW_LENGTH and _width([*laid[-1], button]) <= _ROW_WIDTH:
            laid[-1].append(button)
        else:
            laid.append([button])
    return tuple(tuple(row) for row in laid)


def _width(row: Sequence[tuple[str, str]]) -> int:
    return sum(len(label) for label, _ in row)


def _spans(text: str, limit: int) -> Iterator[tuple[int, int]]:
    """Yield the start and end of each piece of the plain text."""
    start = _skip_space(text, 0)
    while start < len(text):
        end = _reach(text, start, limit)
        if end < len(text):
            end = _cut(text, start, end)
        yield start, start + len(text[start:end].rstrip())
        start = _skip_space(text, end)


def _skip_space(text: str, at: int) -> int:
    while at < len(text) and text[at].isspace():
        at += 1
    return at


def _reach(text: str, start: int, limit: int) -> int:
    """Return the furthest end within `limit` units of `start`."""
    left = limit
    for at in range(start, min(len(text), start + limit)):
        left -= units(text[at])
        if left < 0:
            return at
    return min(len(text), start + limit)


def _cut(text: str, start: int, end: int) -> int:
    """Return the best place to cut, after `start` and not after `end`."""
    middle = start + (end - start) // 2
    for separator, earliest in (("\n\n", middle), ("\n", middle), (" ", start + 1)):
        at = text.rfind(separator, earliest, end + len(separator))
        if at > start:
            return at
    for at in range(end, max(start, end - _LONGEST_CLUSTER), -1):
        if not _joined(text[at - 1], text[at]):
            return at
    return end


def _joined(before: str, after: str) -> bool:
    """Return whether two neighbours are parts of one visible character, as far as is worth telling."""
    return (
        _JOINER in {before, after}
        or unicodedata.category(after).startswith("M")
        or "\U0001f3fb" <= after <= "\U0001f3ff"
        or ("\U0001f1e6" <= before <= "\U0001f1ff" and "\U0001f1e6" <= after <= "\U0001f1ff")
    )


def _written(read: tuple[Run, ...], start: int, end: int) -> str:
    """Write the markup for the plain text from `start` to `end`."""
    written = ""
    at = 0
    for run in read:
        part = run.text[max(start - at, 0) : max(end - at, 0)]
        at += len(run.text)
        if part:
            opened = "".join(f"<{tag}>" for tag in run.tags)
            closed = "".join(f"</{tag}>" for tag in reversed(run.tags))
            written += f"{opened}{escape(part)}{closed}"
    return written
