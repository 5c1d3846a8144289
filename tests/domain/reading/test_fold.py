"""The weighing of numbers: ways a set is said, the exact rules that ask, and where the weighing ends."""

import pytest

from domain.reading.fold import MOST_WEIGHED
from tests.domain.reading.build import one, reading, short


@pytest.mark.parametrize(
    ("text", "sets"),
    [
        ("bench 80 8", [("80", 8)]),
        ("bench 8 at 80", [("80", 8)]),
        ("bench 3x8 @ 80", [("80", 8)] * 3),
        ("bench 80 2x8, 1x6", [("80", 8), ("80", 8), ("80", 6)]),
        ("bench 80x8x3", [("80", 8)] * 3),
        ("bench 80: 8, 7, 6", [("80", 8), ("80", 7), ("80", 6)]),
        ("bench 7/6/5 with 82.5", [("82.5", 7), ("82.5", 6), ("82.5", 5)]),
        ("bench 80x6 60x8 40x12", [("80", 6), ("60", 8), ("40", 12)]),
        ("bench 80 kg x 8 (176 lb)", [("80", 8)]),
        ("bench 80 for 8 and then two more sets of 6", [("80", 8), ("80", 6), ("80", 6)]),
        ("bench 3x8 at 80 no 82.5", [("82.5", 8)] * 3),
        ("bench 80x8, 80x7, no wait 80x6", [("80", 8), ("80", 6)]),
        ("dips bw 12 then +10 x 6", [("0", 12), ("10", 6)]),
        ("incline 26s 10 9", [("26", 10), ("26", 9)]),
        ("bench couldn't move 90, then 80x7", [("90", 0), ("80", 7)]),
    ],
)
def test_numbers_become_sets(text: str, sets: list[tuple[str, int]]) -> None:
    found = reading(text)
    assert not found.asks
    assert [(str(load), reps) for _, load, reps in map(short, found.sets)] == sets


@pytest.mark.parametrize("text", ["bench 12x3", "bench 80 80", "dips 8", "dips 8, 7", "dips 8 8 7"])
def test_what_the_contract_asks_about_is_not_recorded(text: str) -> None:
    found = reading(text)
    assert not found.sets
    assert found.asks == ("confirm",)


def test_a_set_of_the_day_is_what_reps_alone_go_on_from() -> None:
    found = reading("7 reps", done=(one("Bench press", "82.5", 8),))
    assert [str(load) for _, load, _ in map(short, found.sets)] == ["82.5"]


def test_of_more_numbers_than_anybody_does_sets_each_is_asked_about() -> None:
    found = reading("bench " + ", ".join(["8"] * (MOST_WEIGHED + 1)))
    assert not found.sets
    assert len(found.open) == MOST_WEIGHED + 1
    assert found.asks == ("confirm",)
