"""A short answer completes an unfinished set; a text that is no answer to the question leaves it alone."""

from decimal import Decimal

import pytest

from domain.reading import OpenSet, Slot, answer
from tests.domain.reading.build import reading, request, short


def asked(text: str) -> OpenSet:
    (found,) = reading(text).open
    return found


@pytest.mark.parametrize(
    ("text", "slot", "said", "expected"),
    [
        ("bench 80 kg", "reps", "8", ("Bench press", Decimal(80), 8)),
        ("bench 80 kg", "reps", "8 reps", ("Bench press", Decimal(80), 8)),
        ("bench 80 kg", "reps", "eight", ("Bench press", Decimal(80), 8)),
        ("bench 80 kg", "reps", "8 prob", ("Bench press", Decimal(80), 8)),
        ("bench 80 kg", "reps", "8ish", ("Bench press", Decimal(80), 8)),
        ("bench 80 kg", "reps", "8 or 9", None),
        ("press 30x10", "exercise", "the incline one", ("Incline dumbbell press", Decimal(30), 10)),
        ("press 30x10", "exercise", "bench", ("Bench press", Decimal(30), 10)),
        ("press 30x10", "exercise", "bench 30x10", ("Bench press", Decimal(30), 10)),
        ("press 30x10", "exercise", "the second", ("Incline dumbbell press", Decimal(30), 10)),
        ("bench 12 stone for 8", "load", "76 kg", None),
        ("bench 200 x 8", "confirm", "yes", ("Bench press", Decimal(200), 8)),
        ("bench 200 x 8", "confirm", "no, 82.5", ("Bench press", Decimal("82.5"), 8)),
        ("77.5 or 80 for 7", "confirm", "77.5", ("Bench press", Decimal("77.5"), 7)),
        ("bench 200 x 8", "confirm", "no, bench 82.5 x 7", ("Bench press", Decimal("82.5"), 7)),
        ("bench 200 x 8", "confirm", "no 7 reps", ("Bench press", Decimal(200), 7)),
        ("bench two plates for 5", "confirm", "yes", ("Bench press", Decimal(100), 5)),
        ("bench 60 a side x 5", "confirm", "120 kg", ("Bench press", Decimal(120), 5)),
        ("bench 60 a side x 5", "confirm", "60", ("Bench press", Decimal(60), 5)),
        ("dips 8", "confirm", "8 reps", ("Dip", Decimal(10), 8)),
        ("the other day bench 80x8", "date", "on monday", ("Bench press", Decimal(80), 8)),
        ("hammer curls 14", "confirm", "10", ("Hammer curl", Decimal(14), 10)),
        ("hammer curls 14", "confirm", "x10", ("Hammer curl", Decimal(14), 10)),
        ("hammer curls 14", "confirm", "10 kg", ("Hammer curl", Decimal(10), 14)),
    ],
)
def test_an_answer_completes_the_set(
    text: str, slot: Slot, said: str, expected: tuple[str, Decimal, int] | None
) -> None:
    found = answer(asked(text), slot, said, request(said))
    whole = found.complete() if found is not None else None
    assert (short(whole) if whole is not None else None) == expected


@pytest.mark.parametrize(
    ("text", "slot", "said"),
    [
        ("bench 80 kg", "reps", "my knee hurts"),
        ("bench 80 kg", "reps", "82.5 kg"),
        ("press 30x10", "exercise", "what do you mean?"),
        ("press 30x10", "exercise", "bench 80x8, 7"),
        ("bench 200 x 8", "confirm", "no"),
        ("bench 200 x 8", "confirm", "plank 45s"),
        ("bench 200 x 8", "confirm", "45s"),
        ("bench 200 x 8", "confirm", "200 lb"),
        ("hammer curls 14", "confirm", "14"),
        ("bench 200 x 8", "confirm", "bench 80x8 and dips +10 x 8 and then I went home"),
        ("the other day bench 80x8", "date", "no idea"),
    ],
)
def test_what_is_no_answer_is_left_alone(text: str, slot: Slot, said: str) -> None:
    assert answer(asked(text), slot, said, request(said)) is None


def test_two_ways_to_take_it_are_both_at_hand() -> None:
    found = (
        asked("incline 24 26 each") if reading("incline 24 26 each").open else asked("bench 60 a side x 5")
    )
    assert len(found.candidates) >= 1


def test_a_set_whose_name_is_not_known_keeps_the_word_for_it() -> None:
    assert asked("press 30x10").said_name == "press"
    assert asked("kreuzheben 140x4").said_name == "kreuzheben"
