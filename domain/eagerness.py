"""Where a client does more than was asked: to be told kindly, and for the coach's digest.

Training again inside the rest days is judged in `domain.rest_days`.
"""

from dataclasses import dataclass
from typing import Literal

from domain.comparison import Body, best_of
from domain.exposure import Exposure
from domain.loading import Loading
from domain.programme import Prescription
from domain.raises import MOST_RAISE
from domain.sets import TrainingSet

GREAT_JUMP = MOST_RAISE + 0.005
"""Jumps are told in whole percent, and what is told as 10% is within the measure. The project's own rule."""


@dataclass(frozen=True, slots=True)
class GreatJump:
    """The load went up by `percent`, more than any raise aimed at (10%)."""

    percent: float
    rule: Literal["great jump"] = "great jump"


@dataclass(frozen=True, slots=True)
class ExtraSets:
    """More sets than the sheet has."""

    done: int
    prescribed: int
    rule: Literal["extra sets"] = "extra sets"


@dataclass(frozen=True, slots=True)
class NotOnSheet:
    """An exercise that the sheet has not in this workout."""

    exercise: str
    rule: Literal["not on the sheet"] = "not on the sheet"


OverEager = GreatJump | ExtraSets | NotOnSheet


def over_eager(
    now: Exposure,
    before: Exposure | None,
    prescription: Prescription | None,
    *,
    aim: TrainingSet | None = None,
    loading: Loading,
) -> tuple[OverEager, ...]:
    """Return in what `now` went beyond the sheet and the cap; () where it did not.

    `before` is the last exposure of this kind, `aim` what the client was told to aim for: a jump that the bot
    or the sheet asked for is none, nor is a step up to the next load that exists. `prescription` is None
    where the sheet has no such line. Who does an exercise for the first time is to find the load from set to
    set, and so cannot do too many of them.
    """
    if prescription is None:
        return (NotOnSheet(now.exercise),)
    found: list[OverEager] = []
    body = loading.body
    if before is not None and before.kind == now.kind:
        best, last = best_of(now.counting, body), best_of(before.counting, body)
        jump = _step(last, best, body)
        beyond_aim = aim is None or (_step(aim, best, body) or 0.0) > 0
        if jump is not None and jump >= GREAT_JUMP and beyond_aim and _is_beyond_next(last, best, loading):
            found.append(GreatJump(round(100 * jump, 1)))
    done = _hard_sets(now, body)
    is_first = before is None and aim is None
    if done > prescription.sets and not is_first:
        found.append(ExtraSets(done, prescription.sets))
    return tuple(found)


def _is_beyond_next(last: TrainingSet, best: TrainingSet, loading: Loading) -> bool:
    """Return whether there is a lighter load between the two that could have been taken."""
    following = next(loading.heavier(loading.of(last)), None)
    return following is not None and loading.step(following, loading.of(best)) > 0


def _hard_sets(now: Exposure, body: Body) -> int:
    """Return how many sets were done, without the lighter ones on the way up to the best one.

    Lowering-only reps that finish a set off are no set more.
    """
    sets = now.counting
    best = best_of(sets, body)
    way_up = sets[: sets.index(best)]
    return len(sets) - sum(1 for each in way_up if (_step(each, best, body) or 0.0) > 0)


def _step(one: TrainingSet, other: TrainingSet, body: Body) -> float | None:
    """Return the step in what is moved, as a fraction; None where it is not known or counted in two ways."""
    here, there = body.system_kg(one), body.system_kg(other)
    if here is None or there is None or here <= 0:
        return None
    alike = one.load_kind == other.load_kind or not {one.load_kind, other.load_kind} & {"total", "each"}
    return float(there / here) - 1 if alike else None
