"""What a picture shows, as values that stand in the outbox; the same values make its caption in words.

Points are (day, number) pairs, the numbers on the scale of their exercise, so that a picture is small.
"""

from datetime import date
from typing import Literal

from domain.actions import Taken
from domain.frozen import Frozen
from domain.progress import Scale, Spot
from domain.sets import TrainingSet

Points = tuple[tuple[date, float], ...]


class Mark(Frozen):
    """Something that concerned the exercise on that day: a stall that was told of, or a remedy taken."""

    on: date
    what: Literal["stall", "remedy"]
    remedy: Taken | None = None


class Away(Frozen):
    """A layoff: no training between these two days."""

    since: date
    until: date


class Progress(Frozen):
    """How one exercise of client `client` has gone.

    `points` are the best sets of the exposures shown, oldest first, `aims` what was to be aimed for in them;
    `last` is the last of them. `best` is the best so far, of all time. `next_aim` is what is to be aimed for
    next, on no day yet.
    `small`: it stands beside other words, and is drawn and said in short.
    """

    kind: Literal["progress"] = "progress"
    client: str
    exercise: str
    scale: Scale
    points: Points
    first: Spot
    last: Spot
    best: Spot
    times: int
    aims: Points = ()
    next_aim: TrainingSet | None = None
    next_value: float | None = None
    marks: tuple[Mark, ...] = ()
    away: tuple[Away, ...] = ()
    held_since: date | None = None
    small: bool = False


class ProgrammeProgress(Frozen):
    """How all exercises of a client's programme have gone; `waiting` are those that were never done."""

    kind: Literal["programme progress"] = "programme progress"
    client: str
    programme: str | None
    exercises: tuple[Progress, ...]
    waiting: tuple[str, ...] = ()


class RosterRow(Frozen):
    """One client of a coach's: the change in strength since the first of the days shown, as a fraction.

    It is the mean over all exercises; 0.01 is 1%. `matters` is how many alerts are open.
    """

    client: str
    points: Points = ()
    matters: int = 0
    aside: int = 0
    last_workout: date | None = None
    due_on: date | None = None
    paused: bool = False
    joining: bool = False


class RosterProgress(Frozen):
    """A coach's clients at a glance, on the day `today`, over the time since `since`."""

    kind: Literal["roster progress"] = "roster progress"
    today: date
    since: date
    rows: tuple[RosterRow, ...]
