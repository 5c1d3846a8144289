"""Numbers far from the others at their load, and sets far from the client's strength, are asked about."""

from decimal import Decimal

import pytest

from tests.domain.reading.build import one, reading, short

BENCH = "Bench press"


@pytest.mark.parametrize(
    ("text", "recorded"),
    [
        ("bench 80: 8, 7, 3", [(80, 8), (80, 7)]),
        ("bench 80x8, 8, 15", [(80, 8), (80, 8)]),
        ("bench 80 for 8 and 2", [(80, 8)]),
        ("bench 80: 4, 8, 8", [(80, 8), (80, 8)]),
    ],
)
def test_a_number_out_of_line_with_the_others_at_its_load_is_asked_about(
    text: str, recorded: list[tuple[int, int]]
) -> None:
    found = reading(text)
    assert [short(each) for each in found.sets] == [(BENCH, Decimal(load), reps) for load, reps in recorded]
    assert found.asks == ("confirm",)


@pytest.mark.parametrize(
    ("text", "recorded"),
    [
        ("bench 80: 8, 7, 5", [8, 7, 5]),
        ("bench 80x8, 80x7, 80x3", [8, 7, 3]),
        ("bench 80: 5, 4, 3", [5, 4, 3]),
        ("push-ups 24, 15, 9", [24, 15, 9]),
    ],
)
def test_reps_that_fall_are_believed_and_so_is_what_is_told_with_its_load(
    text: str, recorded: list[int]
) -> None:
    found = reading(text)
    assert [each.reps for each in found.sets] == recorded
    assert found.asks == ()


@pytest.mark.parametrize(
    "text",
    [
        "the regulars near the mirror squeezed out bench 130x8",
        "the squeaky pulley machine bench 50x5",
    ],
)
def test_a_set_out_of_strength_among_strange_words_is_asked_about(text: str) -> None:
    found = reading(text)
    assert not found.sets
    assert found.asks == ("confirm",)


@pytest.mark.parametrize(
    ("text", "recorded"),
    [
        ("bench 110x8", (110, 8)),
        ("bench 50x8", (50, 8)),
        ("creaky cobwebby bones today bench 80x8", (80, 8)),
        ("slept badly and dreamt weirdly, bench 110x8", (110, 8)),
        ("bench 50x5 while the pulley squeaked and groaned", (50, 5)),
        ("bench 50x8, light day", (50, 8)),
    ],
)
def test_what_is_told_plainly_is_believed_however_strong(text: str, recorded: tuple[int, int]) -> None:
    found = reading(text)
    assert [short(each) for each in found.sets] == [(BENCH, Decimal(recorded[0]), recorded[1])]
    assert found.asks == ()


def test_a_lighter_set_after_another_is_a_drop_set() -> None:
    done = (one(BENCH, "80", 8),)
    found = reading("bench 50x12, glorious melting burning mayhem", done=done)
    assert [short(each) for each in found.sets] == [(BENCH, Decimal(50), 12)]
