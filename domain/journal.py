"""A client's journal: recorded sets, workouts, exercises on hold, alerts. What was, not what will be.

Every record is numbered within its client, counting up from 1, by the decision that made it.
"""

from dataclasses import dataclass
from datetime import date, datetime
from typing import Any, Literal

from domain.sets import TrainingSet

WorkoutState = Literal["open", "done", "missed", "skipped"]
Writer = Literal["client", "coach"]
AlertReason = Literal["stall", "review", "pain", "urgent", "missed", "question", "unreachable"]


@dataclass(frozen=True, slots=True)
class WorkoutRecord:
    """A workout begun, done, missed or skipped on the local day `on`; `programme` None is of no programme."""

    number: int
    programme: int | None
    name: str
    on: date
    state: WorkoutState
    round: int
    skipped: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Entry:
    """One recorded set, the workout it belongs to, and the inbox number of the message it came from.

    `place` is the number of the entry whose place in the order done it keeps, where it puts one right.
    """

    number: int
    workout: int
    message: int
    set: TrainingSet
    at: datetime
    place: int | None = None

    @property
    def order(self) -> tuple[int, int]:
        """Where it stands among all entries in the order done."""
        return (self.number if self.place is None else self.place, self.number)


@dataclass(frozen=True, slots=True)
class ExerciseHold:
    """An exercise set aside because of pain, until someone lifts that."""

    number: int
    exercise: str
    where: str
    side: str | None
    since: date


@dataclass(frozen=True, slots=True)
class Words:
    """What client and coach have written to each other: by whom, under which `name`, and of which alert.

    `alert` is the number of the question that is asked or answered, None where it is about none.
    """

    number: int
    by: Writer
    name: str
    text: str
    at: datetime
    alert: int | None = None


@dataclass(frozen=True, slots=True)
class Alert:
    """A matter that needs the coach. `evidence` is plain JSON: numbers, texts, lists and objects of them."""

    number: int
    reason: AlertReason
    exercise: str | None
    evidence: dict[str, Any]
    at: datetime

    @property
    def exercises(self) -> tuple[str, ...]:
        """The exercises that it is about: its own, or several; none where it is about none."""
        if self.exercise is not None:
            return (self.exercise,)
        return tuple(str(each) for each in self.evidence.get("exercises", ()))
