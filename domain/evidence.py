"""What the evidence of an alert has to hold, so that it can be said and decided on.

The bot's own decisions make it so. What comes with a file is looked through here before it is taken: whatever
else stands in it is kept as it is.
"""

from datetime import date
from typing import Any, Literal

from pydantic import BaseModel, ConfigDict, Field, ValidationError

from domain.explanation import Aimed, Explanation
from domain.journal import AlertReason
from domain.sets import TrainingSet
from domain.slope import Gain
from domain.verdict import Verdict


class _Known(BaseModel):
    model_config = ConfigDict(extra="allow", defer_build=True)


class _Pain(_Known):
    where: str
    side: Literal["left", "right", "both"] | None = None
    score: int | None = None


class _Done(_Known):
    on: date
    sets: tuple[TrainingSet, ...]


class _Answered(_Known):
    answers: dict[Literal["trouble", "lately"], str] = Field(default_factory=dict)
    exposures: tuple[_Done, ...] = ()
    verdicts: tuple[Verdict, ...] = ()
    aimed: Aimed | None = None
    before: Gain | None = None
    gain: Gain | None = None
    declining: bool = False


class _ByRule(_Answered):
    without_beat: int


class _ByEngine(_Answered):
    since: date
    ended: float
    exposures_since: int
    counted: int
    noise: float


class _Slowing(_Known):
    exercise: str
    exposures_since: int
    exposures: tuple[_Done, ...]


class _Several(_Answered):
    since: date
    ended: float
    exercises: tuple[str, ...] = Field(min_length=1)
    lifts: tuple[_Slowing, ...]
    was_told: tuple[str, ...] = ()


class _Stalled(_Known):
    exercise: str | None
    evidence: dict[str, Any]


class _Hurts(_Known):
    said: str
    pain: _Pain = _Pain(where="other")
    held: tuple[str, ...] = ()
    also: tuple[str, ...] = ()
    fine: bool = False
    stalled: tuple[str, ...] = ()
    stalls: tuple[_Stalled, ...] = ()


class _Urgent(_Known):
    said: str
    pain: tuple[_Pain, ...] = ()
    held: tuple[str, ...] = ()


class _Missed(_Known):
    in_a_row: int
    put_off: int = 0
    workout: str


class _Review(_Known):
    rounds: int
    gain_per_round: float
    risen: bool
    p_value: float | None = Field(default=None, ge=0, le=1)
    interval: tuple[float, float] | None = None
    can_switch: bool = False
    switch_to: str | None = None
    weeks_away: int | None = None
    was_ill: bool = False


class _Question(_Known):
    said: str
    last: tuple[TrainingSet, ...] = ()
    explanation: Explanation | None = None


_FORMS: dict[AlertReason, type[BaseModel]] = {
    "review": _Review,
    "pain": _Hurts,
    "urgent": _Urgent,
    "missed": _Missed,
    "question": _Question,
    "unreachable": _Known,
}


def is_sound(reason: AlertReason, exercise: str | None, evidence: dict[str, Any]) -> bool:
    """Return whether `evidence` (plain JSON) holds all that an alert of that reason needs."""
    try:
        _form(reason, exercise, evidence).model_validate(evidence)
    except (ValidationError, RecursionError):
        return False
    overtaken = evidence.get("stalls", ()) if reason == "pain" else ()
    return all(is_sound("stall", each["exercise"], each["evidence"]) for each in overtaken)


def _form(reason: AlertReason, exercise: str | None, evidence: dict[str, Any]) -> type[BaseModel]:
    if reason != "stall":
        return _FORMS[reason]
    if exercise is None:
        return _Several
    return _ByRule if "without_beat" in evidence else _ByEngine
