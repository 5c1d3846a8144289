"""Where a client does more than was asked: to be told kindly, and for the coach's digest.

Training again inside the rest days is not judged here but where training days are reckoned.
"""

from dataclasses import dataclass
from decimal import Decimal
from typing import Literal

from domain.comparison import Body, best_of
from domain.exposure import Exposure
from domain.programme import Prescription
from domain.progression import MOST_RAISE
from domain.sets import TrainingSet


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
    body_mass_kg: Decimal | None = None,
    body_share: Decimal | None = None,
) -> tuple[OverEager, ...]:
    """Return in what `now` went beyond the sheet and the cap; () where it did not.

    `before` is the last exposure of this kind, `aim` what the client was told to aim for: a jump that the bot
    or the sheet asked for is none. `prescription` is None where the sheet has no such line.
    """
    if prescription is None:
        return (NotOnSheet(now.exercise),)
    found: list[OverEager] = []
    if before is not None and before.kind == now.kind:
        body = Body(body_mass_kg, body_share)
        best = best_of(now.counting, body)
        jump = _step(best_of(before.counting, body), best, body)
        beyond_aim = aim is None or (_step(aim, best, body) or 0.0) > 0
        if jump is not None and jump > MOST_RAISE + 1e-9 and beyond_aim:
            found.append(GreatJump(round(100 * jump, 1)))
    if len(now.sets) > prescription.sets:
        found.append(ExtraSets(len(now.sets), prescription.sets))
    return tuple(found)


def _step(one: TrainingSet, other: TrainingSet, body: Body) -> float | None:
    """Return the step in what is moved, as a fraction; None where it is not known or counted in two ways."""
    here, there = body.system_kg(one), body.system_kg(other)
    if here is None or there is None or here <= 0:
        return None
    alike = one.load_kind == other.load_kind or not {one.load_kind, other.load_kind} & {"total", "each"}
    return float(there / here) - 1 if alike else None
