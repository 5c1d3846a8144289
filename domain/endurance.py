"""How long a static hold can be kept up at some share of the strength one has.

The power models of Frey Law & Avin 2010 (Ergonomics 53:109-129, table 2; 194 publications, 369 points):
seconds = b0 * share^b1, with the share of maximal force between 0.1 and 1. They differ by joint, and a
hold loads several joints, so two holds are told apart only where the model of each of them says the same.
"""

import math
from typing import NamedTuple

from domain.exercises import Joint


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

_MODEL_OF: dict[Joint, str] = {
    "ankle": "ankle",
    "knee": "knee",
    "hip": "trunk",
    "lower back": "trunk",
    "shoulder": "shoulder",
    "elbow": "elbow",
    "wrist": "grip",
}
_LEAST_SHARE = 0.25


def endurance_seconds(share: float, model: PowerModel = GENERAL) -> float:
    """Return for how many seconds a share of maximal force can be held.

    Raises ValueError for a share outside the fitted range, 0.1 to 1.
    """
    if not 0.1 <= share <= 1:
        raise ValueError(f"endurance is known for shares of 0.1 to 1, not {share}")
    return float(model.seconds_at_maximum * share**model.exponent)


def models_for(joints: tuple[Joint, ...]) -> tuple[PowerModel, ...]:
    """Return the models of the joints that a hold loads; all of them where none of these joints was studied.

    No model was fitted for the hip; it is taken with the trunk, to which the paper's discussion puts it.
    """
    names = dict.fromkeys(_MODEL_OF[joint] for joint in joints if joint in _MODEL_OF)
    return tuple(BY_JOINT[name] for name in names) or tuple(BY_JOINT.values())


def supported_seconds(models: tuple[PowerModel, ...]) -> tuple[int, int]:
    """Return from how many to how many whole seconds the models are well supported.

    That is from the whole strength down to a quarter of it, above which most of the data lie: by each of the
    models, or where all joints are in question by the pooled one, 22 to 341 s.
    """
    asked = (GENERAL,) if len(models) == len(BY_JOINT) else models
    shortest = max(endurance_seconds(1, model) for model in asked)
    longest = min(endurance_seconds(_LEAST_SHARE, model) for model in asked)
    return math.ceil(shortest), math.floor(longest)


def strength_ratios(
    load_ratio: float, seconds_ratio: float, models: tuple[PowerModel, ...]
) -> tuple[float, float]:
    """Return the least and the greatest ratio of strength between two holds to failure, over the models.

    A hold of load w and t seconds shows a strength proportional to w * t^(-1/exponent).
    """
    ratios = [load_ratio * seconds_ratio ** (-1 / model.exponent) for model in models]
    return min(ratios), max(ratios)
