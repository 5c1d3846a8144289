"""What of the first questions can never be passed over: pain, warning signs, readiness, age."""

from datetime import timedelta

import pytest

from domain.incoming import (
    Decided,
    Released,
)
from domain.memory import Clearance, JoiningStep
from domain.parts import Notice, Plan, Reminder
from tests.domain.client.newcomers import NOW, ORDER, asked, joining_at, notices, settled
from tests.domain.client.people import MARA, Life, at, kinds


@pytest.mark.parametrize("step", ORDER)
def test_a_warning_sign_gets_emergency_words_alone_at_any_question(step: JoiningStep) -> None:
    life = joining_at(step)
    assert kinds(life.says("I have chest pain right now", NOW)) == ["urgent"]
    assert life.alert_reasons == ["urgent"]
    assert step not in settled(life)
    assert asked(life.says("hello", NOW)) == step


@pytest.mark.parametrize("step", ORDER)
def test_pain_sets_aside_what_hurts_at_any_question(step: JoiningStep) -> None:
    life = joining_at(step)
    parts = life.says("my left knee hurts", NOW)
    assert kinds(parts)[0] == "safety"
    assert life.alert_reasons[-1:] == ["pain"]
    assert asked(parts) == ("unit" if step == "readiness" else step)
    assert (life.state.memory.clearance is not None) == (step == "readiness")


def test_a_yes_on_readiness_keeps_from_training_until_the_coach_releases_it() -> None:
    life = joining_at("readiness")
    assert "doctor first" in notices(life.says("2", NOW))
    assert kinds(life.to_coach) == ["to be released"]
    for answer in ("kg", "Lisbon", "7", "skip"):
        parts = life.says(answer, NOW)
    assert notices(parts) == ["waits for doctor"]
    assert life.passes_to(at(20)) == []
    assert notices(life.says("what's the plan?", at(20))) == ["waits for doctor"]
    parts = life.hears(Released(coach=MARA.number), at(21))
    assert notices(parts) == ["may begin"]
    assert asked(parts) == "first day"
    assert kinds(life.to_coach) == ["released"]
    life.says("tomorrow", at(21))
    assert "reminder" in kinds(life.passes_to(at(22)))


def test_only_the_own_coach_releases_and_only_once() -> None:
    life = joining_at("readiness")
    life.says("2", NOW)
    life.hears(Released(coach=99), NOW)
    assert is_barred(life)
    life.hears(Released(coach=MARA.number), NOW)
    assert not is_barred(life)
    life.hears(Released(coach=MARA.number), NOW)
    assert kinds(life.to_coach) == ["already settled"]


def is_barred(life: Life) -> bool:
    return life.state.memory.barred


def test_a_warning_sign_and_a_yes_on_readiness_are_released_one_by_one() -> None:
    life = joining_at("readiness")
    life.says("1", NOW)
    life.says("I have chest pain", NOW)
    (alert,) = life.state.alerts
    life.hears(Decided(coach=MARA.number, alert=alert.number, remedy="let train"), NOW)
    assert life.state.memory.barred
    assert kinds(life.to_coach) == ["settled", "to be released"]
    life.hears(Released(coach=MARA.number), NOW)
    assert not life.state.memory.barred


@pytest.mark.parametrize(
    "said", ["the doctor said I'm fine to train!", "Saw my GP today and she is happy for me to begin"]
)
def test_what_the_doctor_said_goes_to_the_coach_who_alone_lets_the_training_begin(said: str) -> None:
    life = joining_at("readiness")
    life.says("2", NOW)
    parts = life.says(said, NOW)
    assert (notices(parts), asked(parts)) == (["passed on"], "unit")
    for answer in ("kg", "Lisbon", "7", "skip"):
        life.says(answer, NOW)
    assert notices(life.says(said, NOW))[0] == "passed on"
    assert life.state.memory.barred
    later = Life()
    later.says("I'm pregnant", at(2))
    assert notices(later.says(said, at(3))) == ["passed on"]
    assert notices(later.says("can I still train?", at(3))) == ["passed on", "barred"]
    assert later.state.memory.barred


@pytest.mark.parametrize(
    "said",
    [
        "I have been diagnosed with diabetes",
        "I'm pregnant",
        "I had a heart attack",
        "I now have a heart condition",
    ],
)
def test_an_illness_found_later_goes_to_a_doctor_first_too(said: str) -> None:
    life = Life()
    life.says(said, at(2))
    assert life.state.memory.barred
    assert isinstance(life.state.memory.clearance, Clearance) or life.alert_reasons == ["urgent"]


@pytest.mark.parametrize(
    "text", ["I'm actually 16", "sorry, I'm 17", "I am only 15 years old", "actually I'm 16"]
)
def test_who_turns_out_to_be_under_age_needs_a_guardian_before_training_goes_on(text: str) -> None:
    life = joining_at("first day")
    life.says("tomorrow", NOW)
    parts = life.says(text, NOW + timedelta(hours=1))
    assert notices(parts) == ["minor after all"]
    assert asked(parts) == "guardian"
    assert [part.topic for part in life.to_coach if isinstance(part, Notice)] == ["client is minor after all"]
    assert not any(isinstance(part, Plan | Reminder) for part in life.passes_to(at(6)))
    life.says("I am her mother and I agree", at(6, 12))
    assert life.state.memory.joining is None
    assert life.state.memory.guardian_said == "I am her mother and I agree"


@pytest.mark.parametrize("text", ["I'm 34", "I'm 18", "I'm 16 reps in", "row 80x16", "I'm 5"])
def test_what_says_no_such_age_changes_nothing(text: str) -> None:
    life = joining_at("first day")
    life.says("tomorrow", NOW)
    life.says(text, NOW + timedelta(hours=1))
    assert life.state.memory.joining is None
