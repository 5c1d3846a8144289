"""Whether an exercise has stalled, and whether strength has risen over a whole programme.

A stall here is the coach's own plain rule: so many exposures in a row without a beat. It is a project
choice, since no published definition of a plateau exists, and it is coarse: a lift that gains well can
pause for three exposures by chance. Where there is no such rule, `domain.gaining` tells a stall from a bad
day. The review uses a trend test over all exercises together.
"""

import math
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from domain.comparison import Body
from domain.exercises import Joint
from domain.exposure import Exposure
from domain.programme import Prescription
from domain.strength_series import strength_index
from domain.trend import trend
from domain.verdict import judge

TELL_AFTER = 3
"""Exposures in a row without a beat that are a stall, where neither coach nor sheet says otherwise."""

_MOST_LIKELY_CHANCE = 0.05
"""A rise counts as one where chance alone would show as much in fewer than 1 of 20 reviews."""


@dataclass(frozen=True, slots=True)
class Stall:
    """An exercise without a beat for `without_beat` exposures.

    `exposures` are those and the one before, which still was a beat or the first, oldest first; `since` is
    the day of that one.
    """

    exercise: str
    workout: str
    exposures: tuple[Exposure, ...]
    since: date
    without_beat: int


@dataclass(frozen=True, slots=True)
class Review:
    """Whether strength has risen over `rounds` of a rotation, over all exercises together.

    `p_value` is the chance of a rise like this where there is none (one-sided). `gain_per_round` is the
    Theil-Sen estimate as a fraction of strength (0.01 is 1%), which lies in `interval` by 95%.
    """

    risen: bool
    p_value: float
    gain_per_round: float
    rounds: int
    interval: tuple[float, float]


def find_stall(
    history: tuple[Exposure, ...],
    prescription: Prescription,
    tell_after: int | None = None,
    *,
    body_mass_kg: Decimal | None = None,
    body_share: Decimal | None = None,
    joints: tuple[Joint, ...] = (),
) -> Stall | None:
    """Return the stall at the end of `history` (one exercise of one workout, oldest first), or None.

    An exposure that cannot be compared is neither a beat nor one without. Exposures on hold or lightened on
    purpose are to be left out by the caller.
    """
    needed = TELL_AFTER if tell_after is None else tell_after
    own = tuple(each for each in history if each.exercise == prescription.exercise)
    without = 0
    for at in range(len(own) - 1, 0, -1):
        verdict = judge(
            own[at],
            own[at - 1],
            own[: at - 1],
            body_mass_kg=body_mass_kg,
            body_share=body_share,
            joints=joints,
        )
        match verdict.result:
            case "beat" | "first":
                break
            case "level" | "below":
                without += 1
            case "not comparable":
                continue
    else:
        at = 0
    if without < needed:
        return None
    return Stall(prescription.exercise, own[-1].workout, own[at:], own[at].on, without)


def review(
    histories: tuple[tuple[Exposure, ...], ...],
    *,
    body_mass_kg: Decimal | None = None,
    body_shares: Mapping[str, Decimal] | None = None,
) -> Review | None:
    """Look back over exercises, each a history of one kind, oldest first, one exposure a round.

    `body_shares` gives by exercise the share of body mass moved. None where no exercise has two exposures.
    """
    shares = body_shares or {}
    series = []
    for history in histories:
        indices = [
            strength_index(each, Body(body_mass_kg, shares.get(each.exercise)))
            for each in history
            if each.kind == history[-1].kind
        ]
        known = tuple(index for index in indices if index is not None)
        if len(known) > 1:
            series.append(known)
    return review_of(tuple(series))


def review_of(series: tuple[tuple[float, ...], ...]) -> Review | None:
    """Look back over exercises, each the strength indices of its exposures, oldest first."""
    found = trend(series)
    if found.slope is None or found.interval is None:
        return None
    return Review(
        risen=found.s > 0 and found.p_rising < _MOST_LIKELY_CHANCE,
        p_value=found.p_rising,
        gain_per_round=math.expm1(found.slope),
        rounds=max(len(each) for each in series),
        interval=(math.expm1(found.interval[0]), math.expm1(found.interval[1])),
    )
