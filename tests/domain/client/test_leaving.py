"""Leaving: nothing is erased without a second yes, and what is said about something else is none."""

from datetime import timedelta

import pytest

from domain.leaving_words import wish_of
from domain.outcome import Erased
from domain.parts import File, Notice, Question
from domain.state import ClientState
from tests.domain.client.newcomers import newcomer
from tests.domain.client.people import Life, at, kinds, noor

WISHES = {
    "leave": "leave|/leave|I want to leave|I quit|quit|I'm leaving|I'd like to leave the bot|How do I leave?|"
    "can I leave?|leave Kilopost|"
    "i want to leave the programme|I am leaving the coaching|cancel my coaching|drop out|im quitting|"
    "done with this|close my account|unsubscribe",
    "erase": "delete my data|please delete my data|erase everything|Delete everything you have about me|"
    "forget me|delete my journal|clear my history|remove me|delete my messages|wipe my data, please|"
    "delete all about me|erase all you know about me|I want you to delete my data|"
    "I want to be erased|erase all my data for good",
    "export": "send me my data|export|export my data|Can I have a copy of my data?|download my data|"
    "give me everything you have on me|I want my data|can you send me all my data please|export my journal",
}
NO_WISHES = (
    "stop|stop messages|forget it|forget that|leave it|leave out squats|leave the rows|leave early|"
    "delete my last set|delete that|delete everything from today|delete all sets|remove the row|erase it|"
    "show my history|what do you store about me|send me everything for today|I'm done|undo|I left the gym|"
    "leave me alone|leaving for work now|"
    "leave the programme as it is|quit halfway through the rows|show me my journal of rows"
)


@pytest.mark.parametrize(
    ("text", "wish"), [(text, wish) for wish, texts in WISHES.items() for text in texts.split("|")]
)
def test_a_wish_is_told_in_many_ways(text: str, wish: str) -> None:
    assert wish_of(text) == wish


@pytest.mark.parametrize("text", NO_WISHES.split("|"))
def test_what_is_no_such_wish_is_none(text: str) -> None:
    assert wish_of(text) is None


def started() -> Life:
    """Noor, who has trained once and has a reminder of the second workout to come."""
    life = Life()
    life.says("row 60x9, rdl 80x7, hammer curl 14x10", at(2))
    return life


def has_erased(life: Life) -> bool:
    """Return whether the last decision erases."""
    return any(isinstance(change, Erased) for change in life.outcome.changes)


@pytest.mark.parametrize(
    "yes", ["yes", "Yes, erase everything", "yes please", "erase it all", "YES!", "I'm sure, yes"]
)
def test_erasing_takes_a_second_yes(yes: str) -> None:
    life = started()
    (asked,) = life.says("delete my data", at(3, 10))
    assert isinstance(asked, Question)
    assert (asked.slot, asked.facts["want"]) == ("leaving", "erase")
    assert not has_erased(life)
    said = life.says(yes, at(3, 10, 1))
    assert life.outcome.changes == (Erased(at(3, 10, 1)),)
    assert kinds(said) == ["erased"]
    assert kinds(life.to_coach) == ["client erased"]
    assert life.outcome.memory is None
    assert life.wake_at == at(3, 11, 1)


@pytest.mark.parametrize(
    "no", ["no", "No, keep it", "nope", "never mind", "I changed my mind", "cancel", "forget it"]
)
def test_a_no_keeps_everything(no: str) -> None:
    life = started()
    life.says("erase my data", at(3, 10))
    before = life.state.entries
    assert kinds(life.says(no, at(3, 10, 1))) == ["all stays"]
    assert life.state.entries == before
    life.says("yes", at(3, 10, 2))
    assert not has_erased(life)


@pytest.mark.parametrize("between", ["what's next?", "ok", "row 60x10", "maybe", "thanks"])
def test_no_yes_to_something_else_erases(between: str) -> None:
    life = started()
    life.says("erase my data", at(3, 10))
    life.says(between, at(3, 10, 1))
    life.says("yes", at(3, 10, 2))
    assert not has_erased(life)


def test_a_yes_that_comes_late_erases_nothing() -> None:
    life = started()
    life.says("erase my data", at(3, 10))
    life.says("yes", at(3, 10) + timedelta(minutes=16))
    assert not has_erased(life)


def test_the_button_of_a_question_that_is_over_erases_nothing() -> None:
    life = started()
    life.says("erase my data", at(3, 10))
    life.says("no", at(3, 10, 1))
    assert kinds(life.presses("Yes, erase everything", at(3, 10, 2))) == ["button is old"]


def test_the_first_question_alone_never_erases() -> None:
    life = started()
    life.says("leave", at(3, 10))
    life.says("yes", at(3, 10, 1))
    assert not has_erased(life)
    life.says("leave", at(3, 10, 2))
    (asked,) = life.presses("Erase it", at(3, 10, 3))
    assert isinstance(asked, Question)
    assert asked.facts["want"] == "erase"
    life.presses("Yes, erase everything", at(3, 10, 4))
    assert has_erased(life)


def test_everything_is_sent_whenever_it_is_asked_for() -> None:
    life = started()
    assert life.says("send me my data", at(3, 10)) == (File(what="everything", of=2, client="Noor"),)
    life.says("leave", at(3, 10, 1))
    file, asked = life.presses("Send it to me", at(3, 10, 2))
    assert isinstance(file, File)
    assert isinstance(asked, Question)
    assert asked.facts["has_file"]


@pytest.mark.parametrize("text", ["send me the file", "could you send me a copy?", "the file please"])
def test_the_file_is_asked_for_in_other_words_too(text: str) -> None:
    life = started()
    life.says("leave", at(3, 10, 1))
    file, _ = life.says(text, at(3, 10, 2))
    assert isinstance(file, File)


def test_a_wish_to_quit_with_its_reason_is_asked_about_and_can_be_taken_back() -> None:
    life = started()
    assert kinds(life.says("I want to quit, this is too hard", at(3, 10))) == ["question"]
    assert kinds(life.says("sorry i didnt mean it", at(3, 10, 1))) == ["all stays"]


def test_who_leaves_the_journal_behind_hears_nothing_more_until_coming_back() -> None:
    life = started()
    life.says("I quit", at(3, 10))
    assert kinds(life.presses("Leave it with my coach", at(3, 10, 1))) == ["left"]
    assert kinds(life.to_coach) == ["client left"]
    assert life.passes_to(at(30, 12)) == []
    said = life.says("I'm back", at(30, 12))
    assert kinds(said)[0] == "back"
    assert kinds(life.to_coach) == ["client back"]
    assert life.state.memory.left_at is None


def test_what_needs_no_decision_any_more_is_settled_and_pain_is_not() -> None:
    life = started()
    life.says("my knee hurts when I squat", at(3, 10))
    life.passes_to(at(12))
    assert {alert.reason for alert in life.state.alerts} == {"pain", "missed"}
    life.says("leave", at(12, 19))
    life.presses("Leave it with my coach", at(12, 19, 1))
    assert [alert.reason for alert in life.state.alerts] == ["pain"]


def test_pain_goes_before_leaving() -> None:
    life = started()
    life.says("leave", at(3, 10))
    said = kinds(life.says("my knee hurts", at(3, 10, 1)))
    assert "safety" in said


@pytest.mark.parametrize("state", [newcomer(), newcomer("consent", "age"), noor()])
def test_it_works_at_any_stage(state: ClientState) -> None:
    """Also before anything is agreed to."""
    life = Life(state)
    life.says("delete my data", at(1, 19))
    life.says("yes", at(1, 19, 1))
    assert has_erased(life)


def test_staying_goes_on_with_the_first_questions() -> None:
    life = Life(newcomer("consent"))
    life.says("leave", at(1, 19))
    said = life.says("stay", at(1, 19, 1))
    assert kinds(said) == ["all stays", "question"]
    assert isinstance(said[1], Question)
    assert said[1].facts["step"] == "age"
    assert isinstance(said[0], Notice)
