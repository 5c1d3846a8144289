"""Which questions are after the reason for a verdict or a target, and which are for somebody else."""

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.reading import why_asked

EXERCISES = ("Back squat", "Bench press", "Seated cable row", "Romanian deadlift", "Chin-up")

AFTER_REASONS = """
why?
why not?
but why
why though?
hm, why that?
how come?
what's that based on
based on what?
what's the reason?
explain that
how did you get that?
why not more?
how come below?
why did I not beat it?
why is that level?
how is that below?
and why's that level
why less than last time
why the same weight again
why fewer reps
why so heavy?
why only 6?
why not comparable?
why can't you compare the two
why can't it go up
why wasn't that a pb
why isn't 80x8 a beat?
why lower the weight
why the jump to 82.5
why did it go up to 82.5?
why did you drop it
why 82.5 and not 85?
where does 82.5 come from?
how did you work out 82.5
80? why
i beat it, why level
why no target for squat?
why is squat below?
why is bench lighter
why 80 on the rows
why rdl 70
why is squat on hold
why is it set aside
why negatives on chin ups
"""

FOR_SOMEBODY_ELSE = """
why does my knee hurt?
why is my left knee worse after squats
why do my shoulders hold me back
why am I so tired
why do I feel weaker today?
why am I not getting stronger?
why am I heavier
why is my weight up
why do we do rows?
why squats first
why is my squat stuck?
why do I always fail at rep 6
why can't I squat?
why can't I beat it
why rest 3 days?
why two sets of rows
why do I have to train on monday
why should I warm up
why do you ask
what does level mean?
should I do more?
that was below, thanks
that is why
80x8 and one more set, why not
80x8
why below? 80x9
how do I beat it
"""


@pytest.mark.parametrize("text", AFTER_REASONS.strip().splitlines())
def test_a_question_after_reasons_is_heard_as_one(text: str) -> None:
    asked = why_asked(text, EXERCISES)
    assert asked is not None
    assert not asked.said_before


@pytest.mark.parametrize("text", [*FOR_SOMEBODY_ELSE.strip().splitlines(), "why\n80x9"])
def test_a_question_about_the_body_or_the_programme_is_not(text: str) -> None:
    """One word that is not of loads, reps, verdicts and targets makes it a question of another kind."""
    assert why_asked(text, EXERCISES) is None


@pytest.mark.parametrize("text", ["why rows?", "why chin-ups", "why the squat"])
def test_an_exercise_alone_is_not_what_was_said_of_it(text: str) -> None:
    """It names the exercise and no matter: whoever knows what is answered decides."""
    asked = why_asked(text, EXERCISES)
    assert asked is not None
    assert not asked.has_matter


@pytest.mark.parametrize(
    ("text", "before"),
    [
        ("80x8, why below?", "80x8, "),
        ("squat 80x8 why not more", "squat 80x8 "),
        ("my knee hurts. but why 80?", "my knee hurts. "),
        ("legs done, why 80?", "legs done, "),
        ("why 80?", ""),
    ],
)
def test_what_stands_before_the_question_is_left_to_be_read_by_itself(text: str, before: str) -> None:
    asked = why_asked(text, EXERCISES)
    assert asked is not None
    assert text[: asked.start] == before
    assert asked.said_before == bool(before)


@pytest.mark.parametrize(
    ("text", "numbers", "names"),
    [
        ("why 82.5 and not 85?", ["82.5"], ()),
        ("why not 85", [], ()),
        ("why 80 instead of 82.5 on squat", ["80"], ("Back squat",)),
        ("why eighty two and a half on bench", ["82.5"], ("Bench press",)),
        ("why is 80x8 level with 77.5x9", ["80", "8", "77.5", "9"], ()),
        ("how come bench is lower than squat", [], ("Bench press", "Back squat")),
    ],
)
def test_it_is_about_what_is_named_and_not_about_what_was_expected(
    text: str, numbers: list[str], names: tuple[str, ...]
) -> None:
    asked = why_asked(text, EXERCISES)
    assert asked is not None
    assert asked.numbers == tuple(Decimal(each) for each in numbers)
    assert asked.names == names


def test_the_clients_own_name_for_an_exercise_is_known() -> None:
    assert why_asked("why is chesty below") is None
    asked = why_asked("why is chesty below", EXERCISES, {"chesty": "Bench press"})
    assert asked is not None
    assert asked.names == ("Bench press",)


@given(st.text(max_size=200))
def test_any_text_at_all_can_be_asked_about(text: str) -> None:
    asked = why_asked(f"why {text}", EXERCISES)
    assert asked is None or 0 <= asked.start <= len(text) + 4
