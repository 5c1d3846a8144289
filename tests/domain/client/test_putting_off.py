"""Putting off: which day is meant, that nobody can do so for ever unheard, and what is asked of whom."""

from datetime import date, time

import pytest

from domain.client.rotation import due
from domain.parts import AlertPart, Nudge, Question, Reminder
from tests.domain.client.people import Life, at, kinds, noor
from tests.domain.client.test_days import BY_DAY
from tests.domain.client.test_waking import FIXED

PULL = "row 60x9\nrdl 80x7\ncurls 14x10"
DAILY = "Daily\nTrain every day in turn: A\n\nA\n1. Leg press, 8-12 reps\n"


def coming(life: Life, today: int) -> tuple[str, int]:
    there = due(life.state, date(2026, 3, today))
    assert there is not None
    return there.workout, there.on.day


# Monday 2 March is a training day; the next one of the rotation is the 5th.
@pytest.mark.parametrize(
    ("text", "said", "then"),
    [
        ("can't today", "moved", 3),
        ("can't come tomorrow", "rest day", 2),  # today stands
        ("can't make it on Thursday", "rest day", 2),
        ("can't today or tomorrow", "moved", 4),
        ("no gym today", "moved", 3),
        ("can't today, tomorrow instead", "moved", 3),
        ("Oh I am afraid my granddaughter is visiting today, may I do it tomorrow instead?", "moved", 3),
        ("cant", "moved", 3),
        ("missed", "moved", 3),
        ("Can’t!", "moved", 3),
        ("tomorrow morning instead", "moved", 3),
        ("move to Thursday", "moved", 5),
        ("not today", "moved", 3),
        ("nope, not today, sorry", "moved", 3),
        ("missed it, overtime", "moved", 3),
        ("not happening, the kids are sick", "moved", 3),
        ("couldn't make it", "moved", 3),
        ("missed it, one rep short", "question", 2),
        ("double shift today", "moved", 3),
        ("double shift today and tomorrow", "moved", 4),
        ("got called in again", "moved", 3),
        ("move it", "question", 2),
        ("another day please", "question", 2),
        ("can we reschedule?", "question", 2),
        ("could I do it on a different day instead", "question", 2),
    ],
)
def test_the_day_said_is_the_day_that_is_put_off(text: str, said: str, then: int) -> None:
    life = Life()
    assert kinds(life.says(text, at(2, 9))) == [said]
    assert coming(life, 2) == ("Pull", then)


def test_a_reason_beside_what_became_of_a_workout_leaves_the_answer_what_it_is() -> None:
    life = Life()
    life.passes_to(at(3, 8))
    assert kinds(life.says("missed it, because work was crazy", at(3, 9))) == ["missed noted"]
    assert life.state.memory.questions == ()


def test_a_day_to_come_is_put_off_beforehand() -> None:
    life = Life()
    life.says(PULL, at(2))
    assert kinds(life.says("can't come on Thursday", at(3))) == ["moved"]
    assert coming(life, 3) == ("Legs", 6)


@pytest.mark.parametrize(
    "text", ["I didn't train on Monday", "couldn't make it on Monday", "didn't make it to the gym yesterday"]
)
def test_a_day_gone_by_is_not_put_off(text: str) -> None:
    life = Life()
    life.passes_to(at(3, 9))
    assert kinds(life.says(text, at(3, 10))) == ["missed noted"]
    assert coming(life, 3) == ("Pull", 5)
    assert life.state.memory.questions == ()


def test_not_tomorrow_leaves_the_workout_under_way_as_it_is() -> None:
    life = Life()
    life.says("row 60x9", at(2))
    assert kinds(life.says("can't come tomorrow", at(2))) == ["rest day"]
    life.says("rdl 80x7", at(2, 19))
    assert len(life.state.workouts) == 1


def test_not_tomorrow_moves_the_rest_that_was_for_tomorrow() -> None:
    life = Life()
    life.says("row 60x9", at(2))
    life.says("the rest tomorrow", at(2))
    assert kinds(life.says("can't come tomorrow", at(2))) == ["rest of it moved"]
    assert life.state.memory.rest_on == date(2026, 3, 4)


@pytest.mark.parametrize("sheet", [None, FIXED, BY_DAY, DAILY])
def test_cant_today_for_ever_reaches_the_coach(sheet: str | None) -> None:
    life = Life(noor(sheet) if sheet else None)
    for _ in range(2):
        day = coming(life, life.state.memory.due_on.day if life.state.memory.due_on else 2)[1]
        life.says("can't today", at(day, 9))
        assert life.alert_reasons == []
    day = coming(life, day)[1]
    assert kinds(life.says("can't today", at(day, 9)))[-1] == "put off often"
    (alert,) = [part for part in life.to_coach if isinstance(part, AlertPart)]
    assert (alert.reason, alert.evidence["put_off"], alert.evidence["in_a_row"]) == ("missed", 3, 0)


def test_changing_ones_mind_on_one_day_is_putting_off_once() -> None:
    life = Life()
    for text in ("can't today", "tomorrow morning instead", "move to Thursday", "no, move it to Friday"):
        life.says(text, at(2, 9))
    assert life.state.memory.put_off_on == (date(2026, 3, 2),)
    assert life.state.alerts == ()


def test_one_missed_and_two_put_off_are_three() -> None:
    life = Life()
    life.passes_to(at(3, 9))
    life.says("can't today", at(5, 9))
    life.says("can't today", at(6, 9))
    assert [alert.evidence["put_off"] for alert in life.state.alerts] == [2]
    assert life.state.alerts[0].evidence["in_a_row"] == 1


def test_training_told_of_later_begins_the_count_anew_from_its_day() -> None:
    life = Life()
    life.says("can't today", at(2, 9))
    life.says("can't today", at(3, 9))
    life.passes_to(at(5, 9))
    assert life.alert_reasons == ["missed"]
    life.says("did it yesterday: " + PULL.replace("\n", ", "), at(5, 10))
    assert (life.state.memory.missed_in_a_row, life.state.memory.put_off_on) == (0, ())
    assert life.state.alerts == ()


def test_training_begins_the_count_anew() -> None:
    life = Life()
    life.says("can't today", at(2, 9))
    life.says("can't today", at(3, 9))
    life.says(PULL, at(4))
    life.says("can't today", at(7, 9))
    assert life.state.memory.put_off_on == (date(2026, 3, 7),)
    assert life.state.alerts == ()


def test_undo_takes_a_putting_off_out_of_the_count() -> None:
    life = Life()
    life.says("can't today", at(2, 9))
    life.says("undo", at(2, 9))
    assert life.state.memory.put_off_on == ()


def nudges(life: Life, day: int) -> int:
    return sum(isinstance(part, Nudge) for part in life.passes_to(at(day, 23)))


def test_nudges_stop_for_who_tells_unasked_and_come_back_when_the_telling_stops() -> None:
    life = Life(noor(DAILY))
    for day in (2, 3, 4):
        assert nudges(life, day - 1) == 0
        life.says("100x10", at(day, 12))
    assert life.state.memory.told_unasked == 3
    assert nudges(life, 5) == 0
    said = life.passes_to(at(6, 8))
    assert [part.slot for part in said if isinstance(part, Question)] == ["missed"]
    assert nudges(life, 6) == 1


def test_who_tells_only_when_asked_goes_on_being_asked() -> None:
    life = Life(noor(DAILY))
    for day in range(2, 8):
        assert nudges(life, day) == 1
        life.says("100x10", at(day, 23, 30))
    assert life.state.memory.told_unasked == 0


def test_reminders_rest_where_nothing_is_heard_for_long_and_come_back_with_the_client() -> None:
    life = Life()
    said = life.passes_to(at(28))
    assert kinds(said).count("reminder") == 6
    assert kinds(said)[-1] == "reminders rest"
    assert life.passes_to(at(30, month=6)) == []
    (alert,) = life.state.alerts
    assert (alert.reason, alert.evidence["in_a_row"]) == ("missed", 6)
    assert kinds(life.says("I'm back", at(1, 18, month=7))) == ["back", "plan"]
    assert kinds(life.says("row 60x9", at(1, 19, month=7)))[0] == "verdict"
    assert life.state.alerts == ()


def test_sets_alone_bring_the_reminders_back() -> None:
    life = Life()
    life.passes_to(at(28))
    assert kinds(life.says(PULL, at(28)))[0] == "pause over"
    assert isinstance(life.passes_to(at(31))[0], Reminder)


def test_a_reminder_late_in_the_evening_counts_as_asked_when_the_question_comes_first() -> None:
    life = Life(noor(DAILY, remind_at=time(21)))
    life.passes_to(at(3, 22))
    assert life.state.memory.told_unasked == 0
    life.says("100x10", at(3, 22, 30))
    assert life.state.memory.told_unasked == 0
