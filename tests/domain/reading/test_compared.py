"""A set that is compared with another and told in numbers as well is one set, unless one more is told of."""

from decimal import Decimal

import pytest

from domain.reading import read
from tests.domain.reading.build import request, short


@pytest.mark.parametrize(
    ("text", "reps"),
    [
        ("target hit, bench 80x8", [8]),
        ("bench 80x8, target hit", [8]),
        ("bench 80x8. Target met!", [8]),
        ("bench 80x8. same as last time", [8]),
        ("bench 80x7. one short of the target", [7]),
        ("bench 80x8. One more than last time", [8]),
        ("bench 80x8. Up 2.5 from last time!", [8]),
        ("bench 80x8. second set: target met", [8, 8]),
        ("one short of the target, bench 80x7", [7]),
        ("bench: two over target, 80x10", [10]),
        ("bench target hit, second set 80x8", [8, 8]),
        ("bench target hit, then another set 80x8", [8, 8]),
        ("bench target hit and again 80x8", [8, 8]),
        ("bench target hit, next 80x7", [8, 7]),
    ],
)
def test_it_is_told_once(text: str, reps: list[int]) -> None:
    found = read(request(text))
    assert [short(each) for each in found.sets] == [("Bench press", Decimal(80), each) for each in reps]
    assert not found.asks


@pytest.mark.parametrize(
    ("text", "exercises"),
    [
        ("target hit, incline 26x10", ["Incline dumbbell press"]),
        ("target hit, then incline 26x10", ["Bench press", "Incline dumbbell press"]),
        ("bench target hit, incline 26x10", ["Bench press", "Incline dumbbell press"]),
    ],
)
def test_words_ahead_of_a_name_are_of_it_unless_it_comes_after_them(text: str, exercises: list[str]) -> None:
    assert [each.exercise for each in read(request(text)).sets] == exercises
