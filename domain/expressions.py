"""Regular expressions that are made ready as each is first looked for.

There are hundreds, making one ready takes a millisecond or more, and most runs need but a part of them. What
takes so long is to make codes of the text, from which Python's engine begins. They hang on nothing but the
text and the release of Python, so they can be worked out once for many runs. Where a Python has none of this
kind, each is made ready by `re.compile`, as anywhere else.
"""

import re
import sys
from array import array
from collections.abc import Callable, Iterator
from contextlib import suppress
from functools import cached_property

from domain.worked_out import worked_out

Found = re.Match[str]

Codes = tuple[bytes, int, int, tuple[tuple[str, int], ...]]
"""The codes of an expression, its flags as they come to be, how many groups it has, and the names of some."""

CODE = "I"
"""How a code is kept: none is longer than 32 bits."""

RELEASE = (sys.implementation.name, sys.hexversion)


class Expression:
    """A regular expression: what an `re.Pattern` does, it does in the same way."""

    def __init__(self, pattern: str, flags: int = 0) -> None:
        """Keep `pattern` as it is written; that it is no expression shows as it is first looked for."""
        self.pattern = pattern
        self.flags = flags

    @cached_property
    def ready(self) -> re.Pattern[str]:
        """The same, ready to be looked for. Raises re.error where it is no expression."""
        pattern, flags = self.pattern, int(self.flags)
        with suppress(ImportError, AttributeError, TypeError, ValueError, RuntimeError, IndexError):
            return of_codes(
                pattern, *worked_out(__name__, (pattern, flags, RELEASE), lambda: codes_of(pattern, flags))
            )
        return re.compile(pattern, flags)

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


def codes_of(pattern: str, flags: int) -> Codes:
    """Return the codes of an expression. Raises re.error where it is none, and what `ready` takes for granted
    where this Python has no such codes."""
    from re import _compiler, _parser  # type: ignore[attr-defined]  # noqa: PLC0415 - Python's own affair

    parsed = _parser.parse(pattern, flags)
    state = parsed.state
    codes = array(CODE, _compiler._code(parsed, flags))
    return codes.tobytes(), flags | state.flags, state.groups - 1, tuple(state.groupdict.items())


def of_codes(
    pattern: str, codes: bytes, flags: int, groups: int, names: tuple[tuple[str, int], ...]
) -> re.Pattern[str]:
    """Return the expression of these codes, which the engine looks through for what cannot be."""
    import _sre  # type: ignore[import-not-found]  # noqa: PLC0415 - as above

    places: list[str | None] = [None] * (groups + 1)
    for name, at in names:
        places[at] = name
    ready: re.Pattern[str] = _sre.compile(
        pattern, flags, array(CODE, codes).tolist(), groups, dict(names), tuple(places)
    )
    return ready
