"""Why a verdict and a target are what they are, as one value for the client's "why?" and for the coach."""

from dataclasses import dataclass
from decimal import Decimal
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
    """

    when: When
    target: Target | NoTarget
    range: Range
    last: TrainingSet | None = None


@dataclass(frozen=True, slots=True)
class Explanation:
    """The last verdict on `exercise` and what to aim for, each with its reason; None where there is none.

    `eased`: the load had been taken down on purpose for that verdict's sets. `held`: the place and the side
    because of which the exercise is on hold; then there is neither verdict nor target.
    """

    exercise: str
    verdict: Verdict | None = None
    eased: bool = False
    aimed: Aimed | None = None
    held: tuple[str, str | None] | None = None

    def speaks_of(self, number: Decimal) -> bool:
        """Return whether a load or a number of reps (seconds) in it is `number`, or `number` and a half."""
        return any(
            value == number or (value != int(value) and int(value) == number) for value in self._said()
        )

    def _said(self) -> list[Decimal]:
        verdict, aimed = self.verdict, self.aimed
        sets = [] if verdict is None else [verdict.set, verdict.before]
        said: list[Decimal] = []
        if aimed is not None:
            sets.append(aimed.last)
            if isinstance(aimed.target, Target):
                aim = aimed.target.as_set()
                sets.append(aim)
                said += [] if aimed.last is None else [abs(aim.load - aimed.last.load)]
                said += [] if aimed.target.expected is None else [Decimal(aimed.target.expected)]
        for each in sets:
            said += [] if each is None else [each.load, Decimal(each.amount)]
        return said
