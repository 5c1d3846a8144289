"""Regular expressions that are made ready as each is first looked for.

There are hundreds, making one ready takes a millisecond or more, and most runs need but a part of them.
"""

import re
from collections.abc import Callable, Iterator
from functools import cached_property

Found = re.Match[str]


class Expression:
    """A regular expression: what an `re.Pattern` does, it does in the same way."""

    def __init__(self, pattern: str, flags: int = 0) -> None:
        """Keep `pattern` as it is written; that it is no expression shows as it is first looked for."""
        self.pattern = pattern
        self.flags = flags

    @cached_property
    def ready(self) -> re.Pattern[str]:
        """The same, ready to be looked for. Raises re.error where it is no expression."""
        return re.compile(self.pattern, self.flags)

    def match(self, text: str, at: int = 0) -> Found | None:
        """Look for it at the place `at`."""
        return self.ready.match(text, at)

    def fullmatch(self, text: str) -> Found | None:
        """Look for it as the whole text."""
        return self.ready.fullmatch(text)

    def search(self, text: str, at: int = 0) -> Found | None:
        """Look for the first one from the place `at` on."""
        return self.ready.search(text, at)

    def finditer(self, text: str) -> Iterator[Found]:
        """Look for all that do not overlap."""
        return self.ready.finditer(text)

    def findall(self, text: str) -> list[str]:
        """Return each that does not overlap with another, or what is in its one group."""
        return self.ready.findall(text)

    def split(self, text: str, maxsplit: int = 0) -> list[str]:
        """Return what stands between, and what is in its groups."""
        return self.ready.split(text, maxsplit)

    def sub(self, instead: str | Callable[[Found], str], text: str, count: int = 0) -> str:
        """Return the text with something else instead of each, or of the first `count`."""
        return self.ready.sub(instead, text, count)
