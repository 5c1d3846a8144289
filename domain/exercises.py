"""The catalogue of exercises: what is commonly known of each, read once from `exercises.toml`."""

from dataclasses import dataclass
from decimal import Decimal
from typing import Literal

Region = Literal["upper", "lower", "trunk"]
Joint = Literal["neck", "shoulder", "elbow", "wrist", "upper back", "lower back", "hip", "knee", "ankle"]
Implement = Literal[
    "barbell", "dumbbell", "kettlebell", "machine", "cable", "band", "body weight", "plate", "other"
]


@dataclass(frozen=True, slots=True)
class Exercise:
    """What the trade knows of one exercise.

    `names` are usual other names and short forms, in lower case. `counted` says how its load is usually
    counted. `step_kg` and `step_lb` are the usual smallest steps of load. `body_share` is the share of body
    mass that is moved (0 to 1), None where the body is not the load; `body_share_source` names its source.
    """

    name: str
    names: tuple[str, ...]
    plural: str
    region: Region
    joints: tuple[Joint, ...]
    implement: Implement
    counted: Literal["total", "each", "added", "assist"]
    step_kg: Decimal
    step_lb: Decimal
    is_hold: bool = False
    body_share: Decimal | None = None
    body_share_source: str | None = None
