"""The markup of outgoing text: a handful of HTML tags, and what is needed to write and to read them.

Words from people must pass through `escape` before they become part of an outgoing text. What a platform
makes of the result (limits, splitting) is the platform's own matter.
"""

import html
from dataclasses import dataclass
from html.parser import HTMLParser
from typing import Final

TAGS: Final = frozenset({"b", "i", "u", "s", "code", "pre"})


def escape(text: str) -> str:
    """Return `text` so that it reads as itself inside markup."""
    return html.escape(text, quote=False)


def bold(text: str) -> str:
    """Return `text`, escaped, in bold."""
    return f"<b>{escape(text)}</b>"


def italic(text: str) -> str:
    """Return `text`, escaped, in italics."""
    return f"<i>{escape(text)}</i>"


@dataclass(frozen=True, slots=True)
class Run:
    """A stretch of plain `text` under the same `tags`, outermost first."""

    text: str
    tags: tuple[str, ...] = ()


def runs(text_html: str) -> tuple[Run, ...]:
    """Read markup. Whatever is not one of our tags, properly nested, is taken as text: nothing is lost."""
    reader = _Reader()
    reader.feed(text_html)
    reader.close()
    return tuple(reader.runs)


def plain(text_html: str) -> str:
    """Return the text without its markup, for places that can show none."""
    return "".join(run.text for run in runs(text_html))


class _Reader(HTMLParser):
    """Collects runs."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.runs: list[Run] = []
        self._open: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag in TAGS and not attrs:
            self._open.append(tag)
        else:
            self._text(self.get_starttag_text() or "")

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:  # noqa: ARG002 the base's signature
        self._text(self.get_starttag_text() or "")

    def handle_endtag(self, tag: str) -> None:
        if self._open and self._open[-1] == tag:
            self._open.pop()
        else:
            self._text(f"</{tag}>")

    def handle_data(self, data: str) -> None:
        self._text(data)

    def handle_comment(self, data: str) -> None:
        self._text(f"<!--{data}-->")

    def handle_decl(self, decl: str) -> None:
        self._text(f"<!{decl}>")

    def handle_pi(self, data: str) -> None:
        self._text(f"<?{data}>")

    def unknown_decl(self, data: str) -> None:
        self._text(f"<![{data}]>")

    def _text(self, text: str) -> None:
        tags = tuple(self._open)
        if self.runs and self.runs[-1].tags == tags:
            self.runs[-1] = Run(self.runs[-1].text + text, tags)
        else:
            self.runs.append(Run(text, tags))
