"""How many sets there were, and lists with numbers, however they are written."""

from decimal import Decimal

import pytest

from tests.domain.reading.build import SENT, reading, short

BENCH = "Bench press"
INCLINE = "Incline dumbbell press"
DIP = "Dip"
EIGHTS = [(BENCH, 80, 8)] * 3
FALLING = [(BENCH, 80, 8), (BENCH, 80, 8), (BENCH, 80, 7)]
ALL = [(BENCH, 80, 8), (INCLINE, 26, 10), (DIP, 10, 8)]


@pytest.mark.parametrize(
    ("text", "sets"),
    [
        ("bench 3x80x8", EIGHTS),
        ("bench 3 x 80 for 8", EIGHTS),
        ("bench 8 @ 80 x 3", EIGHTS),
        ("bench 8x80x3", EIGHTS),
        ("bench 80x8x3", EIGHTS),
        ("bench 3x8x80", EIGHTS),
        ("bench 80 for 8 on all three", EIGHTS),
        ("bench 80 for 8 all three", EIGHTS),
        ("bench, two lots of 8 with 80", EIGHTS[:2]),
        ("bench 3x 80kg: 8, 8, 7", FALLING),
        ("bench 3x: 80x8 80x8 80x7", FALLING),
        ("bench 80x(8,8,7)", FALLING),
        ("bench 80: 8 in the first set, 8 in the second, 7 in the third", FALLING),
        ("bench 80kg got 8 first, 8 second, 7 third", FALLING),
        ("1. bench 80x8 2. incline 26x10 3. dips +10x8", ALL),
        ("1: bench 80x8, 2: incline 26x10, 3: dips +10x8", ALL),
        ("#1 bench 80x8 #2 incline 26x10 #3 dips +10x8", ALL),
        ("1. dips +10x8 2. bench 80x8", [ALL[2], ALL[0]]),
        ("got all 8 on bench", [(BENCH, 80, 8)]),
        ("bench paused 80x8", [(BENCH, 80, 8)]),
        ("bench with pause 80x8", [(BENCH, 80, 8)]),
        ("wanted 8 got 7 on bench at 80", [(BENCH, 80, 7)]),
        ("bench 80x8, would have managed 9 with a spotter", [(BENCH, 80, 8)]),
        ("bench 80x8,80x8,80x7", FALLING),
        ("bench 82.5x8,82,5x8,80x7", [(BENCH, "82.5", 8), (BENCH, "82.5", 8), (BENCH, 80, 7)]),
        ("bench 80 8,8,7 incline 26 10,9", [*FALLING, (INCLINE, 26, 10), (INCLINE, 26, 9)]),
        ("bench 80x7 last week, now 80x8", [(BENCH, 80, 8)]),
        ("bench 80 x 6, 2 more with help", [(BENCH, 80, 6)]),
        ("bench, three of them: 80 x 8/8/7", FALLING),
        ("bench 80x8, 7 songs on repeat", [(BENCH, 80, 8)]),
        ("bench 80 80 75 / 8 8 7", [(BENCH, 80, 8), (BENCH, 80, 8), (BENCH, 75, 7)]),
        ("bench 80, 80, 80: 8, 8, 7", FALLING),
        ("bench 80 8 / 80 7", [(BENCH, 80, 8), (BENCH, 80, 7)]),
        ("bench 80 8 rest 8 rest 7", FALLING),
        ("bench 80 went 8/8/7", FALLING),
        ("bench 80: 8, 8, 7, to failure, delts = toast", FALLING),
        ("bench pressed 80 for 8", [(BENCH, 80, 8)]),
        ("bench 80x8 beside their 80s hits", [(BENCH, 80, 8)]),
        ("bench 80x8, cable 7 was free for once", [(BENCH, 80, 8)]),
        ("up at six, at the gym by seven, bench 80 for 8", [(BENCH, 80, 8)]),
        ("bench 80 for 8, incline 26 for 10, dips +10 for 8. All three!", ALL),
        ("bench 80x8 and 7 hours of sleep", [(BENCH, 80, 8)]),
        ("bench 80 for 8. My husband says 9 but he counts the walk out", [(BENCH, 80, 8)]),
        ("mate got 100 for 3 on bench, i got 80 x 8", [(BENCH, 80, 8)]),
    ],
)
def test_sets_told_in_lists_and_counts(text: str, sets: list[tuple[str, int | str, int]]) -> None:
    found = reading(text)
    assert [short(one) for one in found.sets] == [(name, Decimal(load), reps) for name, load, reps in sets]
    assert found.asks == ()


@pytest.mark.parametrize(
    "text",
    [
        "off to Italy for a week as planned",
        "going to my sister's on Friday as planned",
        "the food was the same as last time",
        "my back hurts the same as last time",
        "same pain as last time",
    ],
)
def test_what_is_as_planned_or_as_last_time_need_not_be_a_set(text: str) -> None:
    found = reading(text)
    assert found.sets == ()
    assert found.asks == ()


@pytest.mark.parametrize(
    "text",
    [
        "elbow was sore yesterday, fine now. bench 80x8",
        "bench 80x8 btw I'm on holiday from friday till the 12th",
        "bench 80x8, yesterday's queue at the bank was worse than this",
    ],
)
def test_a_day_of_something_else_dates_no_set(text: str) -> None:
    assert [one.on for one in reading(text).sets] == [SENT.date()]


def test_a_set_of_some_day_last_week_is_asked_for_its_day() -> None:
    found = reading("bench 80x7 last week")
    assert (len(found.sets), found.asks) == (0, ("date",))
