"""Invented courses of exercises, as they stand in the outbox."""

from datetime import date, timedelta
from decimal import Decimal
from typing import Any

from domain.comparison import Body
from domain.exposure import Exposure
from domain.pictures import Away, Mark, Progress
from domain.progress import course_of, value_on
from domain.sets import LoadKind, TrainingSet

FIRST = date(2025, 12, 8)


def a_set(
    load: str, reps: int | None = None, kind: LoadKind = "total", seconds: int | None = None, **more: Any
) -> TrainingSet:
    return TrainingSet("Back squat", Decimal(load), "kg", kind, reps, seconds, **more)


def progress(*sets: TrainingSet, exercise: str = "Back squat", days: int = 6, **more: Any) -> Progress:
    """Return the course of these sets, one each so many days, with a next aim of one rep more."""
    last = sets[-1]
    exposures = [
        Exposure("A", exercise, FIRST + timedelta(days=days * place), (one,))
        for place, one in enumerate(sets)
    ]
    aim = more.pop("next_aim", None)
    body = more.pop("body", Body())
    course = course_of(exposures, body, last.unit, [aim] if aim else [])
    values: dict[str, Any] = {
        "client": "Noor",
        "exercise": exercise,
        "scale": course.scale,
        "points": tuple((each.on, round(each.value, 2)) for each in course.spots),
        "first": course.spots[0],
        "last": course.spots[-1],
        "best": max(course.spots, key=lambda each: each.value),
        "times": len(course.spots),
        "next_aim": aim,
        "next_value": None if aim is None else value_on(course.scale, aim, body),
    }
    return Progress(**(values | more))


def gaining(count: int = 24, **more: Any) -> Progress:
    """Return a lift that gains: a rep more each time, then the load up."""
    sets = [a_set(str(60 + Decimal("2.5") * (place // 4)), 5 + place % 4) for place in range(count)]
    return progress(*sets, next_aim=a_set("100", 6), **more)


def eventful(count: int = 24, **more: Any) -> Progress:
    """Return a lift to which everything has happened that can be marked."""
    plain = gaining(count)
    days = [on for on, _ in plain.points]
    marks = (
        Mark(on=days[count // 2], what="stall"),
        Mark(on=days[count // 2] + timedelta(days=1), what="remedy", remedy="lighten"),
        Mark(on=days[-2], what="remedy", remedy="write"),
    )
    away = Away(since=days[4] + timedelta(days=1), until=days[4] + timedelta(days=20))
    aims = tuple((on, value * 1.02) for on, value in plain.points[1:])
    return plain.model_copy(update={"marks": marks, "away": (away,), "aims": aims, **more})
