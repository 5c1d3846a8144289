"""What a client's message was taken for is noted with the decision, in the context as it was then."""

import pytest

from domain.understood import Understood
from tests.domain.client.people import Life, at


def heard_last(life: Life) -> Understood:
    """Return what the last message was taken for."""
    found = life.outcome.understood
    assert found is not None
    return found


@pytest.mark.parametrize(
    ("before", "said", "taken_for"),
    [
        ((), "row 60x9", "a report"),
        ((), "my left knee hurts", "a report"),
        ((), "what's the plan today?", "a report"),
        ((), "skip the curls", "a report"),
        ((), "/plan", "a command"),
        ((), "hello there", "nothing known"),
        ((), "remind me at 7", "a setting"),
        ((), "warm-up for rdl?", "a request for a warm-up"),
        (("row 60x9",), "why?", "a question after reasons"),
        (("row 60x9",), "last time", "a question"),
        (("row 60x9",), "make that 8", "a report"),
        (("row 60",), "9", "an answer"),
        (("row 60x9",), "that's it for today", "the end of the workout"),
        (("row 60x9",), "delete my data", "a wish to leave"),
    ],
)
def test_a_message_is_taken_for(before: tuple[str, ...], said: str, taken_for: str) -> None:
    life = Life()
    for minute, text in enumerate(before):
        life.says(text, at(2, 18, minute))
    life.says(said, at(2, 19))
    assert heard_last(life).taken_for == taken_for


def test_the_words_are_read_in_the_context_as_it_was() -> None:
    """A name alone is taken from the workout in turn: "squat" is the one that the sheet has."""
    life = Life()
    life.says("row 60 kg x 9, rdl 80x7, hammer curl 14x10", at(2))
    life.says("squat 3x10 @ 20", at(5))
    (first, *others) = heard_last(life).reading.sets
    assert (first.exercise, first.reps, len(others)) == ("Goblet squat", 10, 2)
    assert set(heard_last(life).reading.told_in) == {(8, 15)}


def test_of_an_edit_the_new_words_are_noted_and_of_the_same_words_none() -> None:
    life = Life()
    life.says("row 60x9", at(2))
    message = life.heard
    life.edits("row 62.5x9", "row 60x9", message, at(2, 19))
    assert [str(each.load) for each in heard_last(life).reading.sets] == ["62.5"]
    life.edits("row 62.5x9", "row 62.5x9", message, at(2, 19))
    assert life.outcome.understood is None


def test_a_correction_of_an_earlier_message_is_read_of_its_sets() -> None:
    life = Life()
    life.says("row 60x9", at(2))
    message = life.heard
    life.says("rdl 80x7", at(2, 18, 30))
    life.replies("make that 10", message, at(2, 19))
    assert [(each.exercise, each.reps) for each in heard_last(life).reading.sets] == [
        ("Seated cable row", 10)
    ]


def test_time_passing_is_no_message() -> None:
    life = Life()
    life.passes_to(at(3))
    assert life.outcome.understood is None
