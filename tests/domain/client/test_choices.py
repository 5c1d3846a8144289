"""A question comes with its likely answers, and each of them answers it as it stands on the button."""

from datetime import date, datetime

import pytest

from domain.actions import Answer
from domain.client.choices import days
from tests.domain.client.people import Life, at, kinds


@pytest.mark.parametrize(
    ("before", "said", "offered"),
    [
        ((), "rdl 80 kg", ("6", "7", "8")),
        (("rdl 80x7",), "rdl 80 kg", ("6", "7", "8")),
        ((), "curls 14 kg", ("8", "9", "10", "11", "12")),
        ((), "wall sit 10 kg", ("30 s", "35 s")),
        (("wall sit bw 40s",), "wall sit 10 kg", ("33 s", "38 s", "43 s")),
        (("row 60x9",), "row 8", ()),
        ((), "on monday rdl 80x7", ("Monday 16 March", "Monday 9 March")),
        ((), "on 3/2 rdl 80x7", ("Monday 2 March", "Tuesday 3 February")),
        ((), "rdl 14", ("14 kg", "14 reps")),
    ],
)
def test_a_question_offers_its_likely_answers_and_each_is_taken(
    before: tuple[str, ...], said: str, offered: tuple[str, ...]
) -> None:
    for label in offered or ("",):
        life = Life()
        for text in before:
            life.says(text, at(2))
        recorded = len(life.state.entries)
        life.says(said, at(16))
        assert answers(life) == offered
        if label:
            assert kinds(life.presses(label, at(16)))[0] in {"verdict", "question"}
            assert len(life.state.entries) > recorded or life.state.memory.questions


def answers(life: Life) -> tuple[str, ...]:
    """Return the answers that the last outcome offers to a question."""
    buttons = (button for say in life.outcome.says for button in say.buttons)
    return tuple(button.text for button in buttons if isinstance(button, Answer))


def test_a_lone_number_is_offered_in_the_unit_of_the_client() -> None:
    life = Life()
    life.says("I use pounds", at(2))
    life.says("rdl 14", at(2))
    assert answers(life) == ("14 lb", "14 reps")


def test_a_button_of_an_older_question_still_answers_that_one() -> None:
    life = Life()
    life.says("rdl 80 kg", at(2))
    life.says("curls 14 kg", at(2))
    life.presses("7", at(2))
    assert [(each.set.exercise, each.set.reps) for each in life.state.entries] == [("Romanian deadlift", 7)]


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("on 3/2 rows", [date(2026, 3, 2), date(2026, 2, 3)]),
        ("on 25/12 rows", [date(2025, 12, 25)]),
        ("mon: 60x9", [date(2026, 3, 16), date(2026, 3, 9)]),
        ("on the other day 60x9", [date(2026, 3, 16), date(2026, 3, 15)]),
    ],
)
def test_the_days_that_words_can_mean(text: str, expected: list[date]) -> None:
    assert list(days(text, datetime(2026, 3, 16, 18, 30))) == expected  # noqa: DTZ001 - local, as a client has it
