"""The first questions: how each is answered, what is heard in between, and how they go on."""

from datetime import timedelta

import pytest

from domain.client.joining import STEPS
from domain.incoming import (
    Document,
    FromChat,
    Pressed,
    Started,
    Text,
)
from domain.memory import JoiningStep
from domain.parts import Notice, Question
from tests.domain.client.newcomers import (
    LEG_PRESS,
    NOW,
    ORDER,
    asked,
    came_to,
    joining_at,
    newcomer,
    notices,
    settled,
)
from tests.domain.client.people import Life, at, kinds
from tests.domain.tables import Case, read_cases

CASES = read_cases("joining.md")


@pytest.mark.parametrize("case", CASES, ids=lambda case: f"{case.place.split(',')[0]}: {case['said']}")
def test_an_answer_comes_to_what_the_table_says(case: Case) -> None:
    step = next(name for name in ORDER if case.place.startswith(f"{name},"))
    life = joining_at(step, LEG_PRESS)
    assert came_to(life, step, case["said"]) == case["comes to"]


def test_there_are_eight_questions_at_most_for_who_is_of_age() -> None:
    assert len([step for step in STEPS if step.name != "guardian"]) == 8


def test_every_question_is_answered_by_each_of_its_buttons() -> None:
    for step in ORDER:
        labels = joining_at(step).buttons
        assert labels
        for label in labels:
            life = joining_at(step)
            parts = life.presses(label, NOW)
            is_refusal = label in {"No", "Not yet"}
            assert (step in settled(life)) != is_refusal, (step, label)
            assert "button is old" not in notices(parts)


@pytest.mark.parametrize(
    ("step", "said", "topic"),
    [
        ("equipment", "8 pm", "hour kept"),
        ("equipment", "lunchtime", "hour kept"),
        ("first day", "8 pm", "hour kept"),
        ("first day", "no dumbbells", "equipment kept"),
        ("hour", "pounds", "unit kept"),
        ("zone", "lb", "unit kept"),
        ("first day", "yes", None),
        ("equipment", "blorple", None),
    ],
)
def test_an_answer_to_a_question_before_puts_that_right_and_the_open_one_stays(
    step: JoiningStep, said: str, topic: str | None
) -> None:
    life = joining_at(step)
    parts = life.says(said, NOW)
    assert asked(parts) == step
    assert notices(parts) == ([] if topic is None else [topic])


def test_equipment_told_before_it_is_asked_about_is_taken_and_is_no_set() -> None:
    life = joining_at("zone")
    parts = life.says("home: dumbbells to 12 kg, a bench, no leg press", NOW)
    assert (asked(parts), notices(parts)) == ("zone", ["equipment kept"])
    assert asked(life.says("Lisbon", NOW)) == "hour"
    assert asked(life.says("7", NOW)) == "first day"


def test_a_button_of_the_same_question_still_answers_it_after_a_detour() -> None:
    life = joining_at("unit")
    life.says("what a nice day", NOW)
    first = life.buttons["lb"]
    life.says("row 60x9", NOW)
    life.hears(Pressed(button="1:0", action=first), NOW)
    assert life.state.client.unit == "lb"


def test_a_button_of_an_earlier_question_changes_nothing() -> None:
    life = joining_at("unit")
    old = life.buttons["lb"]
    life.presses("kg", NOW)
    parts = life.hears(Pressed(button="1:0", action=old), NOW)
    assert notices(parts) == ["button is old"]
    assert asked(parts) == "zone"
    assert life.state.client.unit == "kg"


def test_nothing_is_an_answer_before_anything_was_asked() -> None:
    life = Life(newcomer())
    life.wake_at = None
    parts = life.says("yes", NOW)
    assert asked(parts) == "consent"
    assert life.state.memory.agreed_at is None


@pytest.mark.parametrize("incoming", [Document(name="x.txt", text="x"), Started(), Text(text="")])
def test_whatever_comes_in_is_answered_with_the_open_question(incoming: FromChat) -> None:
    assert asked(joining_at("hour").hears(incoming, NOW)) == "hour"


def test_an_edit_answers_nothing_but_pain_in_it_is_heard() -> None:
    life = joining_at("age")
    parts = life.edits("yes", "yess", 1, NOW)
    assert (notices(parts), asked(parts), settled(life)) == (["joining edit"], "age", ("consent",))
    parts = life.edits("my knee hurts", "yess", 1, NOW)
    assert kinds(parts)[0] == "safety"


def test_sets_are_kept_as_typed_and_recorded_once_all_is_answered() -> None:
    life = joining_at("zone")
    parts = life.says("row 60x9", NOW)
    assert notices(parts) == ["later with that"]
    life.edits("row 60x10", "row 60x9", 1, NOW)
    for answer in ("Amsterdam", "7:00", "skip"):
        life.says(answer, at(2))
    life.says("Thursday", at(3))
    (entry,) = life.state.entries
    assert (entry.set.exercise, entry.set.reps, entry.set.on, entry.message) == (
        "Seated cable row",
        10,
        NOW.date(),
        1,
    )


@pytest.mark.parametrize("step", ["hour", "equipment", "first day"])
def test_who_has_trained_begins_that_day_where_nothing_is_open_that_could_not_wait(step: JoiningStep) -> None:
    life = joining_at(step)
    parts = life.says("row 60x9", NOW)
    assert [kind for kind in kinds(parts) if kind in {"verdict", "joined"}] == ["verdict", "joined"]
    assert life.state.memory.joining is None
    assert life.state.client.starts <= NOW.date()


@pytest.mark.parametrize("step", ["hour", "equipment"])
def test_after_two_answers_that_are_none_what_can_wait_is_left(step: JoiningStep) -> None:
    life = joining_at(step)
    assert asked(life.says("the one with the red door", NOW)) == step
    parts = life.says("as I said", NOW)
    assert notices(parts) == ["left for now"]
    assert step in settled(life)


def test_thanks_are_no_wrong_answer() -> None:
    life = joining_at("equipment")
    for _ in range(3):
        parts = life.says("Thank you so much!", NOW)
        assert (notices(parts), asked(parts)) == (["thanked"], "equipment")


def test_the_first_day_can_be_told_before_it_is_asked_for() -> None:
    life = joining_at("hour")
    life.says("May I start on Tuesday?", NOW)
    life.says("7:00", NOW)
    assert notices(life.says("skip", NOW)) == ["joined"]
    assert life.state.client.starts.isoformat() == "2026-03-03"


def test_an_open_question_is_reminded_of_once_a_day_later_and_not_where_it_was_refused() -> None:
    life = joining_at("unit")
    assert kinds(life.passes_to(NOW + timedelta(hours=23))) == []
    assert kinds(life.passes_to(NOW + timedelta(hours=24))) == ["still there", "question"]
    assert life.passes_to(NOW + timedelta(days=30)) == []
    assert asked(life.says("kg", NOW + timedelta(days=30))) == "zone"
    refused = joining_at("consent")
    refused.says("no", NOW)
    assert refused.passes_to(NOW + timedelta(days=30)) == []
    assert kinds(refused.to_coach) == ["client agreed not"]
    assert asked(refused.says("yes", NOW + timedelta(days=30))) == "age"


def test_a_setting_told_early_is_not_asked_for_again() -> None:
    life = joining_at("unit")
    life.says("remind me at half past six", NOW)
    life.says("I'm in Madrid", NOW)
    assert asked(life.says("lb", NOW)) == "equipment"


def test_an_answer_said_back_wrongly_is_asked_for_again() -> None:
    life = joining_at("zone")
    life.says("Lisbon", NOW)
    assert asked(life.says("no", NOW)) == "zone"
    life.says("Porto", NOW)
    assert asked(life.says("that's wrong", NOW)) == "zone"


def test_the_zone_of_a_time_is_one_of_the_country_named_before() -> None:
    life = joining_at("zone")
    assert asked(life.says("USA", NOW)) == "zone"
    life.says("12:40 here", NOW)
    assert life.state.client.zone == "America/New_York"


def test_the_first_day_can_be_changed_until_the_first_workout() -> None:
    life = Life()
    life.says("I'd like to start on Thursday", at(1))
    assert life.state.client.starts.isoformat() == "2026-03-05"


def test_the_coach_hears_once_of_who_stops_half_way() -> None:
    life = joining_at("zone")
    told: list[tuple[str, str]] = []
    for day in range(2, 28):
        while life.wake_at is not None and life.wake_at <= at(day, 20):
            moment = life.wake_at
            life.passes_to(moment)
            told += [(f"{moment:%d %H}", part.topic) for part in life.to_coach if isinstance(part, Notice)]
    assert told == [("03 17", "client half-way")]


def test_nobody_is_told_of_who_goes_on_in_time() -> None:
    life = joining_at("first day")
    life.says("tomorrow", at(2, 12))
    assert life.state.memory.joining is None
    while life.wake_at is not None and life.wake_at <= at(9):
        life.passes_to(life.wake_at)
        assert "client half-way" not in [part.topic for part in life.to_coach if isinstance(part, Notice)]


@pytest.mark.parametrize(
    "said",
    ["what was the question?", "sorry, what was your question", "can you repeat that please", "pardon?"],
)
def test_who_has_forgotten_the_question_gets_it_in_full(said: str) -> None:
    life = joining_at("readiness")
    parts = life.says(said, NOW)
    assert asked(parts) == "readiness"
    question = parts[-1]
    assert isinstance(question, Question)
    assert not question.facts.get("again")
    assert life.to_coach == ()


def test_who_wants_a_person_while_joining_is_told_how() -> None:
    life = joining_at("readiness")
    assert notices(life.says("let me talk to a human", NOW)) == ["coach is reached"]


@pytest.mark.parametrize(
    "said", ["actually start on thursday", "oh no, begin on Thursday", "start on thursday"]
)
def test_the_first_day_is_changed_in_words_that_take_it_back(said: str) -> None:
    life = Life()
    life.says(said, at(1))
    assert life.state.client.starts.isoformat() == "2026-03-05"


def test_a_question_that_another_takes_the_place_of_is_not_asked_in_the_same_breath() -> None:
    life = joining_at("equipment")
    life.says("I think row 50 or 60 for 9", NOW)
    life.says("I think rdl 70 or 75 for 6", NOW)
    parts = life.says("everything", NOW)
    life.says("today", NOW)
    slots = [part.slot for part in (*parts, *life.outcome.says[0].parts) if isinstance(part, Question)]
    assert len([slot for slot in slots if slot != "joining"]) <= 1
