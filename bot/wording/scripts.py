"""Which names a picture or a printed page can show: those in letters that its one font has.

The font has Latin, Greek, Cyrillic, Armenian, Georgian, Hebrew and Arabic letters. What is in others, as
Chinese, Japanese, Korean, Thai or the scripts of India, would be empty boxes: a stand-in is put there, and
the words beside it, which a chat shows in any script, say whom or what it stands for.
"""

from collections.abc import Callable

_RANGES = (
    (0x20, 0x7E),
    (0xA0, 0x2AF),
    (0x300, 0x34F),
    (0x370, 0x37E),
    (0x384, 0x3FF),
    (0x400, 0x525),
    (0x531, 0x556),
    (0x561, 0x587),
    (0x5B0, 0x5BD),
    (0x5D0, 0x5EA),
    (0x621, 0x63A),
    (0x640, 0x655),
    (0x660, 0x669),
    (0x6A9, 0x6A9),
    (0x6AF, 0x6AF),
    (0x6CC, 0x6CC),
    (0x67E, 0x67E),
    (0x686, 0x686),
    (0x698, 0x698),
    (0x10A0, 0x10C5),
    (0x10D0, 0x10FC),
    (0x1E00, 0x1EFB),
    (0x1F00, 0x1FFF),
    (0x2010, 0x2015),
    (0x2018, 0x201F),
)
"""The first and the last of what can be shown; tried against the font itself."""

_RIGHT_TO_LEFT = (0x590, 0x6FF)


def is_shown(sign: str) -> bool:
    """Return whether the font has a sign."""
    return any(first <= ord(sign) <= last for first, last in _RANGES)


def is_printed(sign: str) -> bool:
    """Return whether a printed page can show a sign: none of a script that runs to the left."""
    return is_shown(sign) and not _RIGHT_TO_LEFT[0] <= ord(sign) <= _RIGHT_TO_LEFT[1]


def printed(text: str, otherwise: str) -> str:
    """Return a text as `shown` does, for a printed page."""
    return _left_of(text, otherwise, is_printed)


def shown(text: str, otherwise: str) -> str:
    """Return a text without the signs that the font lacks; `otherwise` where that leaves less than half."""
    return _left_of(text, otherwise, is_shown)


def _left_of(text: str, otherwise: str, can_be: Callable[[str], bool]) -> str:
    left = " ".join("".join(each if can_be(each) else " " for each in text).split())
    return left if 2 * len(left.replace(" ", "")) >= len("".join(text.split())) and left else otherwise


def told(text: str, otherwise: str) -> str:
    """Return how the words beside a picture say a name: with what stands for it there, if anything does."""
    return text if shown(text, otherwise) != otherwise else f"{otherwise}, {text}"


def of_client(place: int) -> str:
    """Return what stands for the client in the row `place`, counted from 1."""
    return f"client {place}"


def of_exercise(place: int) -> str:
    """Return what stands for the exercise at `place`, counted from 1."""
    return f"exercise {place}"
