"""What was ever set aside, and what was ever brought to the coach, with what has become of it."""

from dataclasses import dataclass
from datetime import date, datetime

from domain.actions import Remedy
from domain.journal import Alert, ExerciseHold


@dataclass(frozen=True, slots=True)
class HoldRecord:
    """A hold, and when person `lifted_by` has lifted it; both None where it still holds."""

    hold: ExerciseHold
    lifted_on: date | None = None
    lifted_by: int | None = None


@dataclass(frozen=True, slots=True)
class MatterRecord:
    """An alert, and when person `settled_by` has settled it with which remedy; all None where it is open."""

    alert: Alert
    settled_at: datetime | None = None
    settled_by: int | None = None
    remedy: Remedy | None = None
