"""The catalogue of exercises: what is commonly known of each, read once from `exercises.toml`.

An exercise is found here by its exact name, another usual name or a short form; typing errors are forgiven
elsewhere. A coach's own exercise, which is not in the catalogue, is guessed at by its words, so that it works
like any other.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal
from functools import cache
from types import MappingProxyType
from typing import Any, Literal, get_args

from domain.names import name_key, name_words, plural_of
from domain.own_data import own_data

Region = Literal["upper", "lower", "trunk"]
Joint = Literal["neck", "shoulder", "elbow", "wrist", "upper back", "lower back", "hip", "knee", "ankle"]
Implement = Literal[
    "barbell", "dumbbell", "kettlebell", "machine", "cable", "band", "body weight", "plate", "other"
]
Counted = Literal["total", "each", "added", "assist"]


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
    counted: Counted
    step_kg: Decimal
    step_lb: Decimal
    is_hold: bool = False
    body_share: Decimal | None = None
    body_share_source: str | None = None


@dataclass(frozen=True, slots=True)
class Step:
    """The usual smallest step of load, in each unit."""

    kg: Decimal
    lb: Decimal


@cache
def catalogue() -> tuple[Exercise, ...]:
    """Return every exercise of the catalogue, in its order."""
    steps = usual_steps()
    return tuple(_exercise(facts, steps) for facts in _data()["exercise"])


@cache
def usual_steps() -> Mapping[Implement, Step]:
    """Return the usual smallest step of load by implement."""
    steps = _data()["steps"].items()
    return MappingProxyType({of: Step(Decimal(step["kg"]), Decimal(step["lb"])) for of, step in steps})


def lookup(name: str) -> Exercise | None:
    """Return the exercise of that name, other name, short form or plural; None where there is none.

    Capitals, accents, hyphens, spaces, apostrophes and a plural "s" make no difference; else it is exact.
    """
    return _by_key().get(name_key(name))


def describe(name: str) -> Exercise:
    """Return what the catalogue knows of `name`, or where it knows nothing, a careful guess by its words."""
    return lookup(name) or _guess(name)


def loads_joint(name: str, joint: Joint) -> bool:
    """Return whether the exercise of that name loads `joint`; one of which nothing is known may load any."""
    return joint in describe(name).joints


@cache
def _data() -> dict[str, Any]:
    return own_data("exercises.toml")


@cache
def _by_key() -> Mapping[str, Exercise]:
    """Return each exercise by the key of every name it has; the tests see to it that none has two."""
    return MappingProxyType(
        {
            name_key(name): exercise
            for exercise in catalogue()
            for name in (*exercise.names, exercise.plural, exercise.name)
        }
    )


def _exercise(facts: dict[str, Any], steps: Mapping[Implement, Step]) -> Exercise:
    step = steps[facts["implement"]]
    share = facts.get("body_share")
    return Exercise(
        name=facts["name"],
        names=tuple(facts["names"]),
        plural=facts.get("plural") or plural_of(facts["name"]),
        region=facts["region"],
        joints=tuple(facts["joints"]),
        implement=facts["implement"],
        counted=facts["counted"],
        step_kg=Decimal(facts["step_kg"]) if "step_kg" in facts else step.kg,
        step_lb=Decimal(facts["step_lb"]) if "step_lb" in facts else step.lb,
        is_hold=facts.get("is_hold", False),
        body_share=Decimal(share) if share else None,
        body_share_source=facts.get("body_share_source"),
    )


_IMPLEMENT_WORDS: Mapping[str, Implement] = MappingProxyType(
    {
        "barbell": "barbell",
        "bb": "barbell",
        "bar": "barbell",
        "landmine": "barbell",
        "dumbbell": "dumbbell",
        "dumbell": "dumbbell",
        "db": "dumbbell",
        "kettlebell": "kettlebell",
        "kb": "kettlebell",
        "machine": "machine",
        "smith": "machine",
        "lever": "machine",
        "sled": "machine",
        "cable": "cable",
        "pulley": "cable",
        "rope": "cable",
        "band": "band",
        "banded": "band",
        "bodyweight": "body weight",
        "bw": "body weight",
        "ring": "body weight",
        "floor": "body weight",
        "plate": "plate",
    }
)

_COUNTED: Mapping[Implement, Counted] = MappingProxyType({"dumbbell": "each", "body weight": "added"})
"""How load is counted by implement, common practice; the whole where nothing is said."""

_ARM: tuple[Joint, ...] = ("shoulder", "elbow", "wrist")
_BACK: tuple[Joint, ...] = ("upper back", "lower back")
_LEG: tuple[Joint, ...] = ("hip", "knee", "ankle")
_BODY_WORDS: tuple[tuple[str, Region, tuple[Joint, ...]], ...] = (
    ("neck", "upper", ("neck", "upper back")),
    ("calf calve shin ankle heel toe foot soleus", "lower", ("ankle",)),
    ("squat lunge leg knee quad thigh jump step", "lower", ("lower back", *_LEG)),
    ("hip glute hamstring ham groin adductor abductor", "lower", ("lower back", *_LEG)),
    ("deadlift hinge swing clean snatch", "lower", (*_ARM, *_BACK, *_LEG)),
    ("ab abdominal core trunk oblique plank crunch twist", "trunk", ("lower back", "hip")),
    ("back spinal lumbar", "trunk", (*_BACK, "hip")),
    ("chest pec press bench push dip fly", "upper", _ARM),
    ("row pull pulldown lat chin hang trap shrug", "upper", (*_ARM, *_BACK)),
    ("shoulder delt raise rotation overhead", "upper", (*_ARM, "upper back")),
    ("bicep tricep arm forearm wrist grip curl finger", "upper", _ARM),
    ("carry walk farmer", "trunk", (*_ARM, *_BACK, *_LEG)),
)
"""Words of the body and of movements, the region, and the joints that may be loaded: common practice."""
_EVERY_JOINT: tuple[Joint, ...] = get_args(Joint)
_HOLD_WORDS = frozenset({"hold", "plank", "hang", "static", "isometric", "iso"})


def _guess(name: str) -> Exercise:
    """Return what the words of a coach's own exercise tell, erring on the side of more joints.

    The longest run of its words that is a catalogue exercise stands in for it ("Tempo goblet squat"); without
    one, body words give region and joints, and without those it may load any joint.
    """
    words = name_words(name)
    base = _longest_known(words)
    said = next((_IMPLEMENT_WORDS[word] for word in reversed(words) if word in _IMPLEMENT_WORDS), None)
    implement = said or (base.implement if base else "other")
    same_implement = base is not None and base.implement == implement
    told = [(region, joints) for body, region, joints in _BODY_WORDS if set(body.split()) & set(words)]
    joints = {*(base.joints if base else ()), *(joint for _, some in told for joint in some if base is None)}
    counted: Counted = _COUNTED.get(implement, "total")
    if base and same_implement:
        counted = base.counted
    if "assisted" in words:
        counted = "assist"
    step = usual_steps()[implement]
    return Exercise(
        name=name,
        names=(),
        plural=plural_of(name),
        region=base.region if base else told[0][0] if told else "upper",
        joints=tuple(joint for joint in _EVERY_JOINT if joint in joints) or _EVERY_JOINT,
        implement=implement,
        counted=counted,
        step_kg=base.step_kg if base and same_implement else step.kg,
        step_lb=base.step_lb if base and same_implement else step.lb,
        is_hold=not _HOLD_WORDS.isdisjoint(words) or words[-1:] == ("sit",) or bool(base and base.is_hold),
        body_share=base.body_share if base and same_implement else None,
        body_share_source=base.body_share_source if base and same_implement else None,
    )


def _longest_known(words: tuple[str, ...]) -> Exercise | None:
    """Return the exercise that the longest run of `words` names; of equally long runs, the last.

    A single word counts only at the end: a "chin tuck" is no chin-up.
    """
    known = _by_key()
    for length in range(min(len(words), 8), 0, -1):
        for start in range(len(words) - length, -1, -1):
            found = known.get("".join(words[start : start + length]))
            if found and (length > 1 or start == len(words) - 1):
                return found
    return None
