"""The sets told so far, and how a load and its reps become one more."""

from collections.abc import Callable
from typing import NamedTuple

from domain.reading.drafts import Draft, Source
from domain.reading.phrases import Mark
from domain.reading.pieces import Piece
from domain.reading.quantities import Quantity


class Habit(NamedTuple):
    """How the first load and its reps are told, which those after them follow.

    `order` is how the first bare pair stands, "" where none was told; `looseness` how loosely the first load
    is tied to its reps: 0 by a sign or a word, or its unit tells that it is one, 1 side by side, 2 by a comma
    or the like.
    """

    order: str = ""
    looseness: int = 2


_TIGHT = frozenset({"x", "for", "@", "at", ":"})


def looseness_of(load: Piece, tied: Piece) -> int:
    """Return how loosely a load is tied to its reps, the later one of which is `tied`: see `Habit`."""
    if tied.joint in _TIGHT or "at" in (load.led, tied.led) or not load.bare:
        return 0
    return 1 if tied.joint in {"", "-", "/"} else 2


class Story(NamedTuple):
    """The sets told so far with what it costs to read them so.

    `load` is the one told last, at which further reps are meant. `habit` is None before the first load that
    has its reps.
    """

    cost: float = 0.0
    drafts: tuple[Draft, ...] = ()
    load: Source = None
    habit: Habit | None = None


Telling = Callable[[], tuple[list[Draft], Source]]
"""Gives the sets that are told next, and the load told last."""


class Next(NamedTuple):
    """A story with what may be told next, and what it costs in all; the sets are only made once asked for."""

    cost: float
    story: Story
    tell: Telling
    habit: Habit | None

    def told(self) -> Story:
        """Return the story with the sets that are told next."""
        drafts, load = self.tell()
        return Story(self.cost, (*self.story.drafts, *drafts), load, self.habit)


def load_of(piece: Piece) -> Source:
    """Return where the load of a set comes from."""
    what = piece.what
    if isinstance(what, Quantity):
        return what._replace(role="load", kind=what.kind or "each") if what.role == "pair" else what
    if what.kind == "body":
        return "body"
    return "unknown" if what.kind in {"unknown load", "pin"} else what


def draft_of(load: Source, piece: Piece) -> Draft:
    """Return a set of reps, or of seconds, at a load."""
    amount = piece.what
    if isinstance(amount, Quantity) and amount.role == "pair":
        amount = amount._replace(role="seconds")
    start, end = piece.what.start, piece.what.end
    lowering = isinstance(amount, Quantity) and amount.lowering
    if isinstance(load, Quantity | Mark):
        start, end = min(start, load.start), max(end, load.end)
        lowering = lowering or (isinstance(load, Quantity) and load.lowering)
    if isinstance(amount, Mark) and amount.kind == "unknown reps":
        return Draft(load, None, start, end)
    if isinstance(amount, Mark) and amount.kind == "failed on":
        return Draft(load, amount, start, end, reps=int(amount.value or 1) - 1, to_failure=True)
    return Draft(load, amount, start, end, lowering=lowering)
