"""Which day and which workout sets belong to: early, late, in pieces, out of order, beside the programme."""

from dataclasses import replace
from datetime import date

import pytest

from domain.incoming import Assigned, CardWanted, Changed, Decided
from domain.parts import ClientLine, Digest, Plan, Reminder
from domain.wishes import BackWish
from tests.domain.client.people import MARA, Life, at, kinds, noor, stored
from tests.domain.client.test_waking import FIXED

PULL = "row 60x9\nrdl 80x7\ncurls 14x10"
LEGS = "goblet squat 20x10\nwall sit 45s"

BY_DAY = """\
Days
Train Monday: Push, Wednesday: Pull, Friday: Legs

Push
1. Chest press, 8-12 reps

Pull
1. Seated cable row, 8-12 reps

Legs
1. Leg press, 8-12 reps
"""


def journal(life: Life) -> list[tuple[str, int, str]]:
    return [(record.name, record.on.day, record.state) for record in life.state.workouts]


def next_reminder(life: Life, until: int) -> Reminder:
    return next(part for part in life.passes_to(at(until)) if isinstance(part, Reminder))


def test_two_workouts_on_one_day_are_two_workouts() -> None:
    life = Life()
    life.says(PULL, at(2, 9))
    life.says(LEGS, at(2, 18))
    assert journal(life) == [("Pull", 2, "done"), ("Legs", 2, "done")]


def test_a_set_more_after_the_last_one_is_no_set_of_the_workout_to_come() -> None:
    life = Life()
    life.says(PULL, at(2, 18))
    assert kinds(life.says("60x9", at(2, 18, 5))) == ["question"]
    assert len(life.state.entries) == 3


def test_an_exercise_beside_the_programme_takes_nobodys_turn() -> None:
    life = Life()
    life.says(PULL, at(2))
    life.says("bench press 60x5", at(3))
    assert next_reminder(life, 5) == Reminder(workout="Legs", on=date(2026, 3, 5))


def test_a_workout_half_done_is_finished_the_next_day() -> None:
    life = Life()
    life.says("row 60x9", at(2))
    said = life.says("rdl 80x7\ncurls 14x10", at(3))
    assert kinds(said)[-1] == "workout done"
    assert journal(life) == [("Pull", 2, "done")]
    assert [entry.set.on and entry.set.on.day for entry in life.state.entries] == [2, 3, 3]


def test_the_rest_moved_on_purpose_is_reminded_of_and_rest_days_count_from_there() -> None:
    life = Life()
    life.says("row 60x9", at(2))
    assert kinds(life.says("the rest on Thursday", at(2))) == ["rest of it moved"]
    said = life.passes_to(at(5, 8))
    (plan,) = [part for part in said if isinstance(part, Plan)]
    assert [line.exercise for line in plan.lines] == ["Romanian deadlift", "Hammer curl"]
    assert kinds(life.says("80x7\n14x10", at(5)))[-1] == "workout done"
    assert journal(life) == [("Pull", 2, "done")]
    assert next_reminder(life, 8) == Reminder(workout="Legs", on=date(2026, 3, 8))


def test_a_set_of_an_earlier_day_does_not_end_the_workout_under_way() -> None:
    life = Life()
    life.says("row 60x9", at(2))
    life.says("yesterday: goblet squat 20x10", at(2))
    life.says("80x7", at(2))
    assert journal(life) == [("Legs", 1, "done"), ("Pull", 2, "open")]
    assert life.state.entries[-1].set.exercise == "Romanian deadlift"


def test_sets_told_of_yesterday_go_on_being_yesterdays() -> None:
    life = Life()
    life.says("yesterday: row 60x9", at(3))
    life.says("rdl 80x7", at(3))
    assert [entry.set.on and entry.set.on.day for entry in life.state.entries] == [2, 2]


def test_a_workout_that_runs_over_midnight_is_of_the_day_on_which_it_began() -> None:
    life = Life()
    life.says("row 60x9", at(2, 23, 50))
    said = life.says("rdl 80x7\ncurls 14x10", at(3, 0, 40))
    assert kinds(said)[-1] == "workout done"
    assert {entry.set.on and entry.set.on.day for entry in life.state.entries} == {2}
    assert next_reminder(life, 5) == Reminder(workout="Legs", on=date(2026, 3, 5))


def test_a_workout_told_of_past_midnight_is_of_the_day_on_which_it_was_due() -> None:
    life = Life()
    life.says(PULL, at(3, 1))
    assert journal(life) == [("Pull", 2, "done")]
    life.says(LEGS, at(5, 3))  # it is due today, not on the day that has just ended
    assert journal(life)[1:] == [("Legs", 5, "done")]


def test_in_a_daily_programme_the_next_day_is_the_next_workout() -> None:
    life = Life(
        noor("Daily\nTrain every day in turn: A\n\nA\n1. Leg press, 8-12 reps\n2. Leg curl, 8-12 reps\n")
    )
    life.says("leg press 100x10", at(2))
    life.says("leg curl 40x10", at(3))
    assert journal(life) == [("A", 2, "done"), ("A", 3, "open")]


def test_a_workout_done_ahead_of_its_fixed_day_stands_for_it() -> None:
    life = Life(noor(FIXED))
    life.says("leg press 100x10", at(1))
    assert next_reminder(life, 5) == Reminder(workout="B", on=date(2026, 3, 5))


def test_cant_today_passes_a_fixed_day_and_the_workout_stays_in_turn() -> None:
    life = Life(noor(FIXED))
    assert kinds(life.says("can't make it today", at(2, 9))) == ["moved away"]
    assert next_reminder(life, 5) == Reminder(workout="A", on=date(2026, 3, 5))


def test_where_each_day_has_its_own_workout_a_day_that_passes_takes_its_workout_with_it() -> None:
    life = Life(noor(BY_DAY))
    life.says("can't make it today", at(2, 9))
    assert next_reminder(life, 4) == Reminder(workout="Pull", on=date(2026, 3, 4))


def test_after_a_pause_the_next_fixed_day_comes() -> None:
    life = Life(noor(BY_DAY))
    life.says("away till Thursday", at(2, 7))
    assert next_reminder(life, 6) == Reminder(workout="Legs", on=date(2026, 3, 6))


def test_a_pause_that_is_over_is_no_pause_any_more() -> None:
    life = Life()
    life.says("away till the 14th", at(2, 7))
    life.passes_to(at(14, 9))
    life.hears(CardWanted(coach=MARA.number), at(14, 9))
    (line,) = [line for part in life.to_coach if isinstance(part, Digest) for line in part.clients]
    assert isinstance(line, ClientLine)
    assert not line.paused


def test_a_forgotten_set_told_of_in_a_pause_does_not_end_the_pause() -> None:
    life = Life()
    life.says(PULL, at(2))
    life.says("away till the 14th", at(4))
    life.says("on Monday I also did bench press 60x5", at(5))
    assert life.passes_to(at(13, 23)) == []


def test_training_ends_a_pause_without_an_end_and_says_so() -> None:
    life = Life()
    life.says("got the flu", at(2, 7))
    assert kinds(life.says("row 60x9", at(5))) == ["pause over", "verdict", "target"]
    assert not life.state.memory.paused


def test_training_in_a_pause_with_an_end_leaves_the_pause_and_says_so_once() -> None:
    life = Life()
    life.says("away till the 14th", at(2, 7))
    assert kinds(life.says("row 60x9", at(5))) == ["pause stands", "verdict", "target"]
    assert kinds(life.says("rdl 80x7", at(5))) == ["verdict", "target"]
    assert kinds(life.passes_to(at(13, 23))) == ["workout done"]
    assert next_reminder(life, 14) == Reminder(workout="Legs", on=date(2026, 3, 14))


@pytest.mark.parametrize("text", ["never mind, I train there too", "there's a gym there", "I'll train here"])
def test_who_trains_away_from_home_is_not_paused(text: str) -> None:
    life = Life()
    life.says("away till the 14th", at(2, 7))
    assert kinds(life.says(text, at(2, 7)))[0] == "reminders on"
    assert next_reminder(life, 2) == Reminder(workout="Pull", on=date(2026, 3, 2))


def test_cant_today_on_a_rest_day_moves_nothing_nearer() -> None:
    life = Life()
    life.says(PULL, at(2))
    assert kinds(life.says("can't make it today", at(3))) == ["rest day"]
    assert next_reminder(life, 5) == Reminder(workout="Legs", on=date(2026, 3, 5))


def test_leaving_something_out_beforehand_does_not_begin_the_workout() -> None:
    life = Life()
    life.says("skip hammer curls today", at(2, 7))
    (plan,) = [part for part in life.passes_to(at(2, 8)) if isinstance(part, Plan)]
    assert [line.exercise for line in plan.lines] == ["Seated cable row", "Romanian deadlift"]
    assert kinds(life.passes_to(at(2, 20))) == ["nudge"]


def test_what_is_not_in_the_workout_cannot_be_left_out_of_it() -> None:
    assert kinds(Life().says("skip goblet squat today", at(2, 7))) == ["not in it"]


def test_a_workout_in_which_nothing_is_left_standing_counts_as_missed() -> None:
    life = Life()
    life.says("row 60x9", at(2))
    life.says("undo", at(2))
    life.passes_to(at(4, 8))
    assert journal(life) == [("Pull", 2, "missed")]


def test_another_programme_ends_the_workout_under_way() -> None:
    light = stored("Light\nTrain every 4 days in turn: All\n\nAll\n1. Chest press, 10-15 reps\n", number=9)
    life = Life()
    life.state = replace(life.state, programmes=(*life.state.programmes, light))
    life.says("row 60x9", at(2))
    said = life.hears(Assigned(coach=MARA.number, programme=9), at(2, 19))
    assert kinds(said) == ["new programme", "plan"]
    assert journal(life) == [("Pull", 2, "done")]
    life.says("40x12", at(6))
    assert life.state.entries[-1].set.exercise == "Chest press"


def test_a_programme_that_comes_back_goes_on_where_it_was_left() -> None:
    light = stored("Light\nTrain every 4 days in turn: All\n\nAll\n1. Chest press, 10-15 reps\n", number=9)
    life = Life()
    life.state = replace(life.state, programmes=(*life.state.programmes, light))
    life.says(PULL, at(2))
    life.hears(Assigned(coach=MARA.number, programme=9), at(2, 19))
    life.says("40x12", at(6))
    (_, plan) = life.hears(Assigned(coach=MARA.number, programme=7), at(6, 19))
    assert isinstance(plan, Plan)
    assert plan.workout == "Legs"


def test_a_review_comes_though_the_last_workout_of_the_round_was_closed_by_the_next() -> None:
    life = Life()
    for day in (2, 8):
        life.says(PULL, at(day))
        life.says("goblet squat 20x10", at(day + 3))
    life.says("row 60x9", at(12))
    assert "review" in life.alert_reasons


@pytest.mark.parametrize("text", ["goblet squat", "Goblet Squats", "all", "everything"])
def test_a_coach_puts_back_what_is_aside_at_any_time(text: str) -> None:
    life = Life()
    life.says("my right knee hurts", at(3))
    alert = life.state.alerts[0]
    life.hears(Decided(coach=MARA.number, alert=alert.number, remedy="keep held"), at(3, 20))
    assert kinds(life.hears(Changed(coach=MARA.number, change=1, wish=BackWish(exercise=text)), at(9))) == [
        "hold lifted"
    ]
    assert "Goblet squat" not in {hold.exercise for hold in life.state.holds}


def test_training_again_settles_what_was_told_of_missed_workouts() -> None:
    life = Life()
    life.passes_to(at(6, 8))
    assert [alert.reason for alert in life.state.alerts] == ["missed"]
    life.says(PULL, at(6, 18))
    assert life.state.alerts == ()


def test_a_reminder_that_an_answer_makes_due_stands_in_the_answer() -> None:
    life = Life()
    life.says("got the flu", at(2, 7))
    assert kinds(life.says("I'm back", at(9, 18))) == ["back", "plan"]
    assert life.passes_to(at(9, 19)) == []


def test_a_missed_day_told_of_later_does_not_end_the_workout_under_way() -> None:
    life = Life()
    life.passes_to(at(3, 9))
    life.says("row 60x9", at(4, 18))
    life.says("on Monday rdl 80x7", at(4, 18))
    assert journal(life) == [("Pull", 2, "done"), ("Pull", 4, "open")]


def test_a_name_that_fits_nothing_today_is_looked_for_in_the_other_workouts() -> None:
    """«row» on the day for the legs is the seated cable row of the other workout, as it is the only one."""
    life = Life()
    life.says("60 x 9\n80 x 7\n14 x 10", at(2))
    life.says("row 60 x 10", at(5))
    entry = life.state.entries[-1]
    assert (entry.set.exercise, entry.set.reps) == ("Seated cable row", 10)
    assert life.state.workouts[-1].name == "Pull"


@pytest.mark.parametrize(
    "text",
    ["Legs is next", "I'm in the middle of the round, next is legs", "I did Pull on paper, so legs next"],
)
def test_the_client_can_say_which_workout_is_next(text: str) -> None:
    life = Life()
    assert kinds(life.says(text, at(2, 7))) == ["turn taken"]
    assert next_reminder(life, 2) == Reminder(workout="Legs", on=date(2026, 3, 2))
    life.says(LEGS, at(2))
    assert next_reminder(life, 5) == Reminder(workout="Pull", on=date(2026, 3, 5))


def test_workouts_from_before_the_word_do_not_change_whose_turn_it_is() -> None:
    life = Life()
    life.says("Legs is next", at(2, 7))
    life.says("on Friday: goblet squat 20x10, wall sit 45s", at(2, 7))
    life.says("on Saturday: row 60x9, rdl 80x7, curls 14x10", at(2, 7))
    assert next_reminder(life, 3) == Reminder(workout="Legs", on=date(2026, 3, 3))


def test_the_coach_hears_where_a_workout_is_passed_over_and_undo_takes_it_back() -> None:
    life = Life()
    life.says(PULL, at(2))
    life.says("Pull is next", at(3))
    assert kinds(life.to_coach) == ["client turn"]
    assert kinds(life.says("undo", at(3))) == ["plans as before"]
    assert next_reminder(life, 5) == Reminder(workout="Legs", on=date(2026, 3, 5))
