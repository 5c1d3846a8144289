"""Pain sets exercises aside; a warning sign stops everything; no target is given on what hurts."""

import pytest

from domain.incoming import Decided, Released
from domain.parts import AlertPart, Plan, Safety, VerdictPart
from tests.domain.client.people import MARA, Life, at, kinds, noor


def alert_of(life: Life) -> AlertPart:
    (alert,) = [part for part in life.to_coach if isinstance(part, AlertPart)]
    return alert


def test_pain_beside_a_set_records_it_sets_it_aside_and_gives_no_target() -> None:
    life = Life()
    said = life.says("seated cable row 60 x 9 but my left shoulder hurts, 4/10", at(2))
    assert "verdict" in kinds(said)
    assert "target" not in kinds(said)
    (safety,) = [part for part in said if isinstance(part, Safety)]
    assert (safety.where, safety.side, safety.exercise) == ("shoulder", "left", "Seated cable row")
    assert [hold.exercise for hold in life.state.holds] == ["Seated cable row"]
    alert = alert_of(life)
    assert (alert.reason, alert.client, alert.exercise) == ("pain", "Noor", "Seated cable row")


def test_pain_on_its_own_sets_aside_all_that_loads_the_joint() -> None:
    life = Life()
    life.says("my right knee hurts", at(3))
    assert {hold.exercise for hold in life.state.holds} == {"Goblet squat", "Wall sit"}


def test_a_held_exercise_has_no_target_in_the_plan_and_the_joints_alternative_takes_its_place() -> None:
    life = Life()
    life.says("romanian deadlift 80 x 7, my lower back hurts", at(2))
    (plan,) = [
        part
        for part in life.passes_to(at(8, 8)) + list(life.says("plan?", at(8, 9)))
        if isinstance(part, Plan)
    ][-1:]
    lines = {line.exercise: line for line in plan.lines}
    assert "Romanian deadlift" not in lines or lines["Romanian deadlift"].target is None


def test_the_coach_lifts_a_hold_by_a_button() -> None:
    life = Life()
    life.says("my right knee hurts", at(3))
    number = life.state.alerts[0].number
    said = life.hears(Decided(coach=MARA.number, alert=number, remedy="lift hold"), at(4))
    assert life.state.holds == ()
    assert life.state.alerts == ()
    assert kinds(said) == ["hold lifted"]
    assert kinds(life.to_coach) == ["settled"]


def test_a_decision_that_comes_twice_is_carried_out_once() -> None:
    life = Life()
    life.says("my right knee hurts", at(3))
    decided = Decided(coach=MARA.number, alert=life.state.alerts[0].number, remedy="lift hold")
    life.hears(decided, at(4))
    assert life.hears(decided, at(4, 19)) == ()
    assert kinds(life.to_coach) == ["already settled"]


def test_another_coach_decides_nothing() -> None:
    life = Life()
    life.says("my right knee hurts", at(3))
    life.hears(Decided(coach=99, alert=life.state.alerts[0].number, remedy="lift hold"), at(4))
    assert life.outcome.changes == ()
    assert len(life.state.holds) == 2


def test_a_warning_sign_is_answered_with_nothing_else_and_the_coach_hears_of_it() -> None:
    life = Life()
    said = life.says("60 x 9 and then I had chest pain and could not breathe", at(2))
    assert kinds(said) == ["urgent"]
    assert alert_of(life).reason == "urgent"


def test_after_a_warning_sign_there_is_no_training_until_the_coach_lets_it_go_on() -> None:
    life = Life()
    life.says("I fainted after the squats", at(2))
    assert life.passes_to(at(20)) == []
    assert kinds(life.says("I'm back", at(20))) == ["barred"]
    assert kinds(life.says("what's the plan?", at(20))) == ["barred"]
    number = life.state.alerts[0].number
    life.hears(Decided(coach=MARA.number, alert=number, remedy="let train"), at(21))
    assert kinds(life.passes_to(at(22, 9)))[:1] == ["reminder"]


def test_the_coachs_words_let_training_go_on_as_the_button_does() -> None:
    life = Life()
    life.says("I fainted after the squats", at(2))
    said = life.hears(Released(coach=MARA.number), at(21))
    assert kinds(said) == ["let train"]
    assert (life.state.memory.barred, life.state.alerts) == (False, ())
    assert kinds(life.to_coach) == ["settled"]
    life.hears(Released(coach=MARA.number), at(21, 20))
    assert kinds(life.to_coach) == ["already settled"]


def test_no_pain_is_no_pain() -> None:
    life = Life()
    life.says("60 x 9, no pain at all", at(2))
    assert life.state.holds == ()
    assert life.to_coach == ()


def test_pain_told_of_twice_is_one_matter_for_the_coach_with_all_that_is_aside() -> None:
    life = Life()
    life.says("my right knee hurts", at(3))
    life.says("my right knee hurts, 7/10", at(4))
    (alert,) = life.state.alerts
    assert set(alert.evidence["held"]) == {"Goblet squat", "Wall sit"}


def test_an_exercise_named_beside_a_pain_that_it_does_not_load_stays_in_the_plan() -> None:
    life = Life()
    life.says("hammer curl 14x10, my right knee hurts", at(2))
    assert {hold.exercise for hold in life.state.holds} == {"Goblet squat", "Wall sit"}


def test_pain_that_nothing_in_the_programme_loads_sets_aside_what_was_named() -> None:
    life = Life(noor("One\nTrain every 2 days in turn: A\n\nA\n1. Hammer curl, 8-12 reps\n"))
    life.says("curls 14x10, my ankle hurts", at(2))
    assert [hold.exercise for hold in life.state.holds] == ["Hammer curl"]


KNEES = """\
Base
Train every 2 days in turn: A

A
1. Back squat, 5-8 reps
   no barbell: Goblet squat, 8-12 reps
   if a knee is a problem: Hip thrust, 8-12 reps
2. Hammer curl, 8-12 reps
"""


def test_pain_sets_aside_what_the_client_does_in_place_of_the_sheets_exercise() -> None:
    life = Life(noor(KNEES, lacking=("barbell",)))
    life.says("my knee hurts", at(2, 9))
    assert [hold.exercise for hold in life.state.holds] == ["Goblet squat"]


def test_an_exercise_in_the_place_of_one_that_hurts_is_aside_too_where_it_loads_the_same() -> None:
    life = Life(noor(KNEES.replace("   if a knee is a problem: Hip thrust, 8-12 reps\n", "")))
    life.says("back squat 80x6, my knee hurts", at(2, 9))
    life.says("I have no barbell", at(3))
    (plan,) = life.says("what's next?", at(3))
    assert isinstance(plan, Plan)
    assert (plan.lines[0].exercise, plan.lines[0].held_for) == ("Goblet squat", "knee")
    assert plan.lines[0].target is None


def test_what_the_sheet_means_for_a_troubled_joint_comes_in_the_place_of_whatever_hurts() -> None:
    life = Life(noor(KNEES.replace("Hip thrust", "Back extension"), lacking=("barbell",)))
    life.says("goblet squat 20x10, my knee hurts", at(2, 9))
    (plan,) = life.says("what's next?", at(4, 7))
    assert isinstance(plan, Plan)
    assert [line.exercise for line in plan.lines] == ["Back extension", "Hammer curl"]


def test_after_pain_each_workout_with_the_exercise_begins_lighter() -> None:
    sheet = (
        "Two\nTrain every 2 days in turn: A, B\n\nA\n1. Leg press, 8-12 reps\n\nB\n1. Leg press, 8-12 reps\n"
    )
    life = Life(noor(sheet))
    life.says("100 x 10", at(2))
    life.says("100 x 10", at(4))
    life.says("my knee hurts", at(5))
    life.hears(Decided(coach=MARA.number, alert=life.state.alerts[0].number, remedy="lift hold"), at(6, 7))
    for day in (6, 8):
        (plan,) = [part for part in life.passes_to(at(day, 9)) if isinstance(part, Plan)]
        assert plan.lines[0].target is not None
        assert plan.lines[0].target.load == 70
        said = life.says("70 x 10", at(day, 18))
        assert isinstance(said[0], VerdictPart)
        assert said[0].eased
    (plan,) = [part for part in life.passes_to(at(10, 9)) if isinstance(part, Plan)]
    assert plan.lines[0].target is not None
    assert plan.lines[0].target.load == 70
    assert plan.lines[0].target.reps == 11


def test_two_pains_that_share_an_exercise_keep_it_aside_until_both_are_settled() -> None:
    life = Life()
    life.says("seated cable row 60x9, my shoulder hurts", at(2))
    life.says("rdl 80x7 and row 60x8, my lower back hurts", at(2))
    shoulder, back = life.state.alerts
    life.hears(Decided(coach=MARA.number, alert=shoulder.number, remedy="lift hold"), at(3))
    assert "Seated cable row" in {hold.exercise for hold in life.state.holds}
    life.hears(Decided(coach=MARA.number, alert=back.number, remedy="lift hold"), at(3))
    assert life.state.holds == ()


def test_words_that_it_is_fine_again_go_to_the_coach_and_lift_nothing() -> None:
    life = Life()
    life.says("my right knee hurts", at(3))
    assert kinds(life.says("my knee is fine again", at(5))) == ["fine again"]
    assert len(life.state.holds) == 2
    (alert,) = life.state.alerts
    assert alert.evidence["fine"] is True


@pytest.mark.parametrize(
    "text",
    ["it's fine now", "It's better now!", "ok, all good now", "feels better", "it is gone", "fine again"],
)
def test_fine_now_is_of_what_began_to_hurt_in_the_last_days(text: str) -> None:
    life = Life()
    life.says("my right knee hurts", at(3))
    assert kinds(life.says(text, at(4))) == ["fine again"]
    assert len(life.state.holds) == 2


@pytest.mark.parametrize(
    "text", ["good", "ok", "good workout", "better luck next time", "I'm good at this now"]
)
def test_courtesies_after_pain_do_not_say_that_it_is_fine(text: str) -> None:
    life = Life()
    life.says("my right knee hurts", at(3))
    assert "fine again" not in kinds(life.says(text, at(4)))


def test_fine_now_is_not_of_what_hurt_long_ago() -> None:
    life = Life()
    life.says("my right knee hurts", at(3))
    assert "fine again" not in kinds(life.says("it's fine now", at(12)))


def test_the_coach_hears_of_what_was_done_on_a_later_day_though_it_was_aside() -> None:
    life = Life()
    life.says("my right knee hurts", at(3))
    said = life.says("goblet squat 20x10", at(5))
    assert "still aside" in kinds(said)
    assert "target" not in kinds(said)
    assert kinds(life.to_coach) == ["done though aside"]


def test_a_second_warning_sign_leaves_one_matter_to_settle() -> None:
    life = Life()
    life.says("I fainted after the squats", at(2))
    life.says("I fainted again", at(3))
    (alert,) = life.state.alerts
    life.hears(Decided(coach=MARA.number, alert=alert.number, remedy="let train"), at(4))
    assert not life.state.memory.barred


def test_after_a_warning_sign_sets_are_written_down_without_talk_of_training() -> None:
    life = Life()
    life.says("I fainted", at(2))
    assert kinds(life.says("row 60x9", at(2))) == ["written down", "barred"]
    assert len(life.state.entries) == 1
