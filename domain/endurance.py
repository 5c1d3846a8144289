"""How long a static hold can be kept up at some share of the strength one has.

The power models of Frey Law & Avin 2010 (Ergonomics 53:109-129, table 2; 194 publications, 369 points):
seconds = b0 * share^b1, with the share of maximal force between 0.1 and 1. They differ by joint, and a
hold loads several joints, so two holds are told apart only where every joint's model says the same.
"""

from typing import NamedTuple


class PowerModel(NamedTuple):
    """Endurance in seconds = `seconds_at_maximum` * share ** `exponent`."""

    seconds_at_maximum: float
    exponent: float


GENERAL = PowerModel(21.92, -1.98)
BY_JOINT: dict[str, PowerModel] = {
    "ankle": PowerModel(34.71, -2.06),
    "trunk": PowerModel(22.69, -2.27),
    "elbow": PowerModel(17.98, -2.21),
    "grip": PowerModel(33.55, -1.61),
    "knee": PowerModel(19.38, -1.88),
    "shoulder": PowerModel(14.86, -1.83),
}


def endurance_seconds(share: float, model: PowerModel = GENERAL) -> float:
    """Return for how many seconds a share of maximal force can be held.

    Raises ValueError for a share outside the fitted range, 0.1 to 1.
    """
    if not 0.1 <= share <= 1:
        raise ValueError(f"endurance is known for shares of 0.1 to 1, not {share}")
    return float(model.seconds_at_maximum * share**model.exponent)


def strength_ratios(load_ratio: float, seconds_ratio: float) -> tuple[float, float]:
    """Return the least and the greatest ratio of strength between two holds, over the joints' models.

    A hold to failure of load w and t seconds shows a strength proportional to w * t^(-1/exponent).
    """
    ratios = [load_ratio * seconds_ratio ** (-1 / model.exponent) for model in BY_JOINT.values()]
    return min(ratios), max(ratios)
