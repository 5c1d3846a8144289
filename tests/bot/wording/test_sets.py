"""How sets are said."""

from decimal import Decimal

import pytest

from bot.wording.reader import NO_BREAK, listed, set_words, sets_words
from domain.sets import LoadKind, TrainingSet


def a_set(load: str, kind: LoadKind, *, reps: int | None = 8, seconds: int | None = None) -> TrainingSet:
    return TrainingSet("Row", Decimal(load), "kg", kind, None if seconds else reps, seconds)


@pytest.mark.parametrize(
    ("done", "said"),
    [
        (a_set("80", "total"), "80 kg × 8"),
        (a_set("82.50", "total"), "82.5 kg × 8"),
        (a_set("100", "total"), "100 kg × 8"),
        (a_set("30", "each"), "30 kg each × 8"),
        (a_set("10", "added"), "body weight + 10 kg × 8"),
        (a_set("20", "assist"), "20 kg of help × 8"),
        (a_set("0", "body"), "8 reps"),
        (a_set("0", "body", reps=1), "1 rep"),
        (a_set("0", "body", seconds=45), "45 s"),
        (a_set("10", "total", seconds=45), "10 kg for 45 s"),
    ],
)
def test_a_set_is_said_with_its_load_and_unit(done: TrainingSet, said: str) -> None:
    assert set_words(done).replace(NO_BREAK, " ") == said


def test_lowering_only_and_effort_are_said() -> None:
    body = TrainingSet("Chin-up", Decimal(0), "kg", "body", 5, lowering_only=True)
    assert set_words(body).replace(NO_BREAK, " ") == "5 lowering-only reps"
    hard = TrainingSet("Row", Decimal(80), "kg", "total", 8, to_failure=True)
    assert set_words(hard).endswith("× 8, to failure")
    easy = TrainingSet("Row", Decimal(80), "kg", "total", 8, rir=Decimal("1.5"))
    assert set_words(easy).endswith("× 8, 1.5 in reserve")


def test_a_load_that_stays_the_same_is_said_once() -> None:
    sets = tuple(a_set("80", "total", reps=reps) for reps in (8, 7, 6))
    assert sets_words(sets).replace(NO_BREAK, " ") == "80 kg × 8, 7, 6"
    mixed = (a_set("80", "total"), a_set("70", "total", reps=9))
    assert sets_words(mixed).replace(NO_BREAK, " ") == "80 kg × 8; 70 kg × 9"


def test_names_are_listed_as_in_a_sentence() -> None:
    assert listed([]) == ""
    assert listed(["Row"]) == "Row"
    assert listed(["Row", "Dip", "Curl"]) == "Row, Dip and Curl"
