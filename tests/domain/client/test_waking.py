"""Reminders, nudges, missed workouts and the end of a workout."""

from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from domain.calendar import at_local
from domain.client import hear, waking
from domain.client.draft import Draft
from domain.incoming import Heard, Text
from domain.memory import ClientMemory
from domain.outcome import Stuck
from domain.parts import Notice, Plan, Question, Reminder, VerdictPart
from tests.domain.client.people import Life, at, kinds, noor

FIXED = """\
Week
Train on Monday and Thursday in turn: A, B

A
1. Leg press, 8-12 reps

B
1. Chest press, 8-12 reps
"""


def test_the_first_thing_a_client_reads_is_what_the_bot_is_and_is_not() -> None:
    life = Life(replace(noor(), memory=ClientMemory()))
    life.wake_at = at(2, 7)
    assert kinds(life.passes_to(at(2, 7))) == ["welcome"]
    assert kinds(life.passes_to(at(2, 8))) == ["reminder", "plan"]


def test_a_client_who_writes_first_is_answered_and_then_welcomed() -> None:
    life = Life(replace(noor(), memory=ClientMemory()))
    life.wake_at = None
    assert kinds(life.says("60 x 9", at(2, 9))) == ["verdict", "target"]
    assert life.wake_at == at(2, 9)
    assert kinds(life.passes_to(at(2, 9)))[0] == "welcome"


def test_who_joins_late_on_a_training_day_is_welcomed_first() -> None:
    life = Life(replace(noor(), memory=ClientMemory()))
    life.wake_at = at(2, 12)
    assert kinds(life.passes_to(at(2, 12))) == ["welcome", "reminder", "plan"]


def test_the_reminder_comes_at_the_clients_hour_with_the_plan() -> None:
    life = Life()
    assert life.passes_to(at(2, 7, 59)) == []
    said = life.passes_to(at(2, 8))
    assert kinds(said) == ["reminder", "plan"]
    assert said[0] == Reminder(workout="Pull", on=date(2026, 3, 2))


def test_one_nudge_comes_some_hours_later_where_nothing_was_reported() -> None:
    life = Life()
    life.passes_to(at(2, 8))
    assert life.passes_to(at(2, 19, 59)) == []
    assert kinds(life.passes_to(at(2, 20))) == ["nudge"]
    assert life.passes_to(at(3, 7, 59)) == []


def test_no_nudge_comes_to_who_has_reported() -> None:
    life = Life()
    life.says("60 x 9", at(2, 12))
    assert life.passes_to(at(3, 23)) == []


def test_a_late_reminder_is_not_followed_by_a_nudge() -> None:
    life = Life(noor(remind_at=time(20, 30)))
    assert kinds(life.passes_to(at(3, 6))) == ["reminder", "plan"]


def test_the_next_morning_asks_what_became_of_it_and_the_workout_stays_in_turn() -> None:
    life = Life()
    said = life.passes_to(at(3, 8))
    assert kinds(said) == ["reminder", "plan", "nudge", "question"]
    question = said[-1]
    assert isinstance(question, Question)
    assert question.slot == "missed"
    said = life.passes_to(at(5, 8))
    assert said[0] == Reminder(workout="Pull", on=date(2026, 3, 5))


@pytest.mark.parametrize(
    ("remind_at", "asked_at"), [(time(5, 30), (5, 30)), (time(8), (8, 0)), (time(18, 30), (9, 0))]
)
def test_it_is_asked_in_the_morning_whatever_the_hour_of_the_reminder(
    remind_at: time, asked_at: tuple[int, int]
) -> None:
    life = Life(noor(remind_at=remind_at))
    life.passes_to(at(3, *asked_at) - timedelta(minutes=1))
    assert life.state.memory.missed_in_a_row == 0
    assert kinds(life.passes_to(at(3, *asked_at)))[-1] == "question"


def test_trained_after_all_takes_yesterdays_sets() -> None:
    life = Life()
    life.passes_to(at(3, 8))
    life.presses("Trained", at(3, 9))
    life.says("60 x 9", at(3, 9, 5))
    (workout,) = life.state.workouts
    assert (workout.name, workout.on, workout.state) == ("Pull", date(2026, 3, 2), "open")


def test_today_instead_moves_the_workout_to_today() -> None:
    life = Life()
    life.passes_to(at(3, 8))
    assert kinds(life.presses("Today instead", at(3, 9))) == ["moved", "plan"]
    assert kinds(life.passes_to(at(3, 18))) == []
    life.says("60 x 9\n80 x 7\n14 x 10", at(3, 18))
    assert [(each.on.day, each.state) for each in life.state.workouts] == [(2, "missed"), (3, "done")]
    assert kinds(life.passes_to(at(6, 8))) == ["reminder", "plan"]


def test_the_coach_hears_of_the_second_workout_missed_in_a_row() -> None:
    life = Life()
    life.passes_to(at(3, 8))
    assert life.alert_reasons == []
    life.passes_to(at(6, 8))
    assert life.alert_reasons == ["missed"]


def test_after_an_outage_one_message_says_what_is_next() -> None:
    life = Life()
    life.wake_at = at(20, 10)
    said = life.passes_to(at(20, 10))
    assert kinds(said) == ["reminder", "plan"]
    plan = said[1]
    assert isinstance(plan, Plan)
    assert (plan.workout, plan.on) == ("Pull", date(2026, 3, 20))


def test_what_is_read_after_an_outage_says_no_day_that_has_gone_by() -> None:
    """Said on the Monday and read on the Friday: the workout of the Thursday is not announced any more."""
    life = Life()
    heard = Heard(1, at(2), Text(text="row 60x9, rdl 80x7, curls 14x10"), answered=at(6))
    says = [say for say in hear(life.state, heard).says if say.to == life.state.client.number]
    (parts,) = (say.parts for say in says)
    (summary,) = (part for part in parts if isinstance(part, Notice))
    assert (summary.facts["next"], summary.facts["aims"]) == (None, [])
    assert {part.on for part in parts if isinstance(part, VerdictPart)} == {date(2026, 3, 2)}


def test_rest_days_are_counted_from_the_workout_really_done() -> None:
    life = Life()
    life.says("60 x 9\n80 x 7\n14 x 10", at(4, 18))
    assert life.passes_to(at(7, 7, 59)) == []
    assert life.passes_to(at(7, 8))[0] == Reminder(workout="Legs", on=date(2026, 3, 7))


def test_after_a_late_workout_a_fixed_day_waits_for_the_rest_that_the_week_has_and_then_stays() -> None:
    life = Life(noor(FIXED))
    life.says("100 x 10", at(3, 18))  # Monday's on Tuesday: Thursday would leave one rest day of the two
    assert life.passes_to(at(6, 7, 59)) == []
    assert life.passes_to(at(6, 8))[0] == Reminder(workout="B", on=date(2026, 3, 6))
    life.says("chest press 50x10", at(6, 18))
    assert life.passes_to(at(9, 8))[0] == Reminder(workout="A", on=date(2026, 3, 9))


def test_a_workout_left_open_closes_by_itself_at_the_end_of_the_day_after() -> None:
    life = Life()
    life.says("60 x 9", at(2, 18))
    assert life.passes_to(at(3, 23, 59)) == []
    assert life.workout_state == "open"
    assert life.passes_to(at(4, 0)) == []  # nothing is said in the night
    assert life.workout_state == "done"
    (said,) = life.passes_to(at(4, 8))
    assert isinstance(said, Notice)
    assert (said.topic, said.facts["closed_of"]) == ("workout done", "2026-03-02")
    assert said.facts["untold"] == ["Romanian deadlift", "Hammer curl"]
    assert (said.facts["next"], said.facts["on"]) == ("Legs", "2026-03-05")


@pytest.mark.parametrize(
    ("day", "hour", "utc"),
    [
        # Amsterdam skips 02:00 to 03:00 on 29 March 2026 (Directive 2000/84/EC: last Sunday of March).
        (29, time(2, 30), datetime(2026, 3, 29, 1, 0, tzinfo=UTC)),
        (28, time(8), datetime(2026, 3, 28, 7, 0, tzinfo=UTC)),
        (30, time(8), datetime(2026, 3, 30, 6, 0, tzinfo=UTC)),
    ],
)
def test_the_hour_is_the_clients_own_across_summer_time(day: int, hour: time, utc: datetime) -> None:
    moved = ClientMemory(welcomed=True, moved_to=date(2026, 3, day))
    life = Life(replace(noor(remind_at=hour), memory=moved))
    life.wake_at = at(2, 1, 30)
    life.passes_to(at(2, 1, 30))
    assert life.wake_at == utc


ZONES = st.sampled_from(
    [
        *("Africa/Casablanca", "America/Santiago", "America/St_Johns", "Antarctica/Troll", "Asia/Beirut"),
        *("Australia/Lord_Howe", "Europe/Dublin", "Pacific/Chatham", "Pacific/Kiritimati"),
    ]
)
DAILY = "Daily\nTrain every day in turn: A\n\nA\n1. Leg press, 8-12 reps\n"


@settings(max_examples=10, deadline=None)
@given(ZONES, st.times().map(lambda hour: hour.replace(second=0, microsecond=0)), st.integers(0, 360))
def test_each_training_day_has_one_reminder_at_its_hour_whatever_the_clocks_do(
    zone: str, hour: time, ahead: int
) -> None:
    """Two weeks from any day of a year on: at the hour, or the first moment after a leap over it."""
    first = date(2026, 3, 2) + timedelta(days=ahead)
    state = noor(DAILY, remind_at=hour)
    life = Life(replace(state, client=replace(state.client, zone=zone, starts=first)))
    for day in (first + timedelta(days=each) for each in range(14)):
        moment = at_local(day, hour, ZoneInfo(zone))
        life.wake_at = life.wake_at if day > first else moment
        assert "reminder" not in kinds(life.passes_to(moment - timedelta(seconds=1)))
        said = [part for part in life.passes_to(moment) if isinstance(part, Reminder)]
        assert said == [Reminder(workout="A", on=day)]
        life.says("100x10", moment + timedelta(minutes=1))


@pytest.mark.parametrize(
    "going_on_for_ever",
    [
        pytest.param(lambda _draft: None, id="changes nothing"),
        pytest.param(lambda draft: draft.remember(told_unasked=draft.memory.told_unasked), id="as it was"),
        pytest.param(lambda draft: draft.number("last_question"), id="changes something each time"),
    ],
)
def test_an_event_that_would_be_due_without_an_end_is_left_alone_for_an_hour_and_holds_nothing_up(
    going_on_for_ever: Callable[[Draft], None], monkeypatch: pytest.MonkeyPatch
) -> None:
    state = replace(noor(), memory=ClientMemory())
    monkeypatch.setattr(waking, "welcome", going_on_for_ever)
    outcome = waking.wake(state, at(2, 8))
    assert outcome.stuck == (Stuck(state.client.number, "welcome"),)
    assert [part.kind for say in outcome.says for part in say.parts] == ["reminder", "plan"]
    assert outcome.wake_at == at(2, 9)
