"""Why a target is what it is: which rule, on which numbers. Words are made of these elsewhere.

Each reason names its `rule`, so that it can be told apart once it has been turned into plain facts.
"""

from dataclasses import dataclass
from decimal import Decimal
from typing import Literal

from domain.sets import LoadKind


@dataclass(frozen=True, slots=True)
class OneMore:
    """Inside the range: the same load, a little more than `done`."""

    done: int
    rule: Literal["one more"] = "one more"


@dataclass(frozen=True, slots=True)
class AddLoad:
    """`done` reached `ready`, the number at which load is added: `percent` of what is moved, where known.

    `by_sheet`: the coach's sheet says by how much.
    """

    done: int
    ready: int
    percent: float | None
    by_sheet: bool = False
    rule: Literal["add load"] = "add load"


@dataclass(frozen=True, slots=True)
class MuchTooLight:
    """`done` is far above the range: the load for the middle of it, `capped` where that is too great."""

    done: int
    high: int
    percent: float | None
    capped: bool
    rule: Literal["much too light"] = "much too light"


@dataclass(frozen=True, slots=True)
class MoreFirst:
    """More at this load first, `until` so many let the bottom of the range be expected at the next one.

    `percent` is the step to that, over 10%; None where what is moved is not really known.
    """

    done: int
    next_load: Decimal
    percent: float | None
    until: int
    next_kind: LoadKind = "total"
    rule: Literal["more first"] = "more first"


@dataclass(frozen=True, slots=True)
class NothingHeavier:
    """There is no heavier load to be put on, or for the body alone no rule to add any: more at this one."""

    done: int
    rule: Literal["nothing heavier"] = "nothing heavier"


@dataclass(frozen=True, slots=True)
class OtherSets:
    """The best set has reached `ready`, the weakest prescribed one only `least`: bring it up first."""

    least: int
    ready: int
    rule: Literal["other sets"] = "other sets"


@dataclass(frozen=True, slots=True)
class BackIntoRange:
    """Under the range once, or with nothing lighter to be had: the same load, back to `low`."""

    done: int
    low: int
    rule: Literal["back into the range"] = "back into the range"


@dataclass(frozen=True, slots=True)
class LowerLoad:
    """Under the range so many exposures running (or the first time): a load for the middle of it."""

    done: int
    low: int
    running: int
    rule: Literal["lower the load"] = "lower the load"


@dataclass(frozen=True, slots=True)
class DownTheLadder:
    """Fewer than `below` full reps: lowering-only reps for a time."""

    done: int
    below: int
    rule: Literal["down the ladder"] = "down the ladder"


@dataclass(frozen=True, slots=True)
class UpTheLadder:
    """The sheet's number of lowering-only reps is done: full reps again."""

    done: int
    up_to: int
    rule: Literal["up the ladder"] = "up the ladder"


@dataclass(frozen=True, slots=True)
class Relative:
    """The load is reckoned from another exercise's last load, as the sheet says."""

    exercise: str
    other_load: Decimal
    rule: Literal["relative load"] = "relative load"


@dataclass(frozen=True, slots=True)
class Eased:
    """The load is `factor` of the last one: after `days_away` where that is said, or `after_illness`.

    With neither, it is a deload.
    """

    factor: Decimal
    days_away: int | None = None
    after_illness: bool = False
    rule: Literal["eased"] = "eased"


@dataclass(frozen=True, slots=True)
class BuildBack:
    """After a break begun lighter, so many `percent` (where known) of the way back up to `wanted`."""

    done: int
    wanted: Decimal
    percent: float | None
    rule: Literal["build back"] = "build back"


@dataclass(frozen=True, slots=True)
class FirstWithBody:
    """The first time, with the body as the load: the bottom of the range."""

    rule: Literal["first with body weight"] = "first with body weight"


TargetReason = (
    OneMore
    | AddLoad
    | MuchTooLight
    | MoreFirst
    | NothingHeavier
    | OtherSets
    | BackIntoRange
    | LowerLoad
    | DownTheLadder
    | UpTheLadder
    | Relative
    | Eased
    | BuildBack
    | FirstWithBody
)


@dataclass(frozen=True, slots=True)
class Held:
    """The exercise is on hold because of pain: no target until that is lifted."""

    rule: Literal["on hold"] = "on hold"


@dataclass(frozen=True, slots=True)
class FirstTime:
    """Never done with a load: a first load is to be found, from light upwards."""

    rule: Literal["first time"] = "first time"


@dataclass(frozen=True, slots=True)
class OtherNotDone:
    """The load is reckoned from `exercise`, which has not been done yet."""

    exercise: str
    rule: Literal["other not done"] = "other not done"


NoTargetReason = Held | FirstTime | OtherNotDone
