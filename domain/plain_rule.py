"""A coach's own plain rule for a stall: so many exposures in a row without a beat.

It holds where a coach or a sheet names it. It is coarse, since a lift that gains well can pause for three
exposures by chance; where there is no such rule, `domain.stall` tells a stall from a bad day.
"""

from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from domain.exercises import Joint
from domain.exposure import Exposure
from domain.verdict import judge


@dataclass(frozen=True, slots=True)
class Unbeaten:
    """`without_beat` exposures in a row without a beat.

    `exposures` are those and the one before, which still was a beat or the first, oldest first; `since` is
    the day of that one.
    """

    exposures: tuple[Exposure, ...]
    since: date
    without_beat: int


def find_unbeaten(
    history: tuple[Exposure, ...],
    tell_after: int,
    *,
    body_mass_kg: Decimal | None = None,
    body_share: Decimal | None = None,
    joints: tuple[Joint, ...] = (),
) -> Unbeaten | None:
    """Return what is without a beat at the end of `history`, where it is `tell_after` exposures or more.

    `history` is of one exercise of one workout, oldest first. An exposure that cannot be compared is neither
    a beat nor one without. Exposures on hold or lightened on purpose are to be left out by the caller.
    """
    without = 0
    for at in range(len(history) - 1, 0, -1):
        verdict = judge(
            history[at],
            history[at - 1],
            history[: at - 1],
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
    if without < tell_after:
        return None
    return Unbeaten(history[at:], history[at].on, without)
