"""Why a verdict and a target are what they are, as one value for the client's "why?" and for the coach."""

from dataclasses import dataclass
from typing import Literal

from domain.programme import Range
from domain.sets import TrainingSet
from domain.target import NoTarget, Target
from domain.verdict import Verdict

When = Literal["next set", "next time", "this time"]


@dataclass(frozen=True, slots=True)
class Aimed:
    """A target, or that there is none, and what it is reckoned from.

    `range` is the prescription's; `last` the best set of the exposure before, None where there was none.
    `hurts` is the place and the side because of which the exercise is on hold.
    """

    when: When
    target: Target | NoTarget
    range: Range
    last: TrainingSet | None = None
    hurts: tuple[str, str | None] | None = None


@dataclass(frozen=True, slots=True)
class Explanation:
    """The last verdict on `exercise` and what to aim for, each with its reason; None where there is none."""

    exercise: str
    verdict: Verdict | None = None
    aimed: Aimed | None = None
