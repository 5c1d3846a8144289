"""Short ways to a request, for the tests of the reading."""

from collections.abc import Mapping
from datetime import datetime
from decimal import Decimal

from domain.reading import OpenSet, Planned, Reading, Request, read
from domain.sets import LoadKind, TrainingSet
from domain.units import Unit

SENT = datetime(2026, 3, 25, 18, 0)  # noqa: DTZ001 - a client's local time, as in a request
BENCH = Planned("Bench press", 6, 8, "reps", 3)
INCLINE = Planned("Incline dumbbell press", 8, 12, "reps", 2, "each")
DIP = Planned("Dip", 6, 10, "reps", 1, "added")
PLANK = Planned("Plank", 30, 60, "seconds", 1, "added")
PLAN = (BENCH, INCLINE, DIP, PLANK)


def one(
    exercise: str,
    load: str,
    reps: int | None = None,
    *,
    kind: LoadKind = "total",
    unit: Unit = "kg",
    seconds: int | None = None,
) -> TrainingSet:
    """Return a set without a day."""
    return TrainingSet(exercise, Decimal(load), unit, kind, reps, seconds)


TARGET = {
    "Bench press": one("Bench press", "80", 8),
    "Incline dumbbell press": one("Incline dumbbell press", "26", 10, kind="each"),
    "Dip": one("Dip", "10", 8, kind="added"),
    "Plank": one("Plank", "0", seconds=45, kind="body"),
}


def request(
    text: str,
    *,
    unit: Unit = "kg",
    plan: tuple[Planned, ...] = PLAN,
    done: tuple[TrainingSet, ...] = (),
    target: Mapping[str, TrainingSet] = TARGET,
) -> Request:
    """Return a request with a usual plan, its targets and the sets `done`."""
    return Request(text=text, unit=unit, sent=SENT, plan=plan, done=done, last={}, target=target)


def reading(text: str, *, done: tuple[TrainingSet, ...] = ()) -> Reading:
    """Return what a message means beside the usual plan."""
    return read(request(text, done=done))


def short(found: TrainingSet | OpenSet) -> tuple[str | None, Decimal | None, int | None]:
    """Return the exercise, the load and the reps or seconds of a set."""
    return found.exercise, found.load, found.reps if found.seconds is None else found.seconds
