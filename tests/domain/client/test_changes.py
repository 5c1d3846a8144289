"""Single changes by the coach: made, reported, told in the next plan, and undone to what was before."""

import pytest

from domain.actions import ChangeTo, TakeBack
from domain.incoming import Changed, Undone
from domain.outcome import Outcome
from domain.parts import Plan
from domain.plan_lines import PlanChange
from domain.wishes import BackWish, LeaveOutWish, ReminderWish, RestWish, SwapWish, Wish
from tests.domain.client.people import MARA, Life, at, kinds


def wants(life: Life, wish: Wish, day: int = 2, message: int = 50) -> list[str]:
    life.hears(Changed(coach=MARA.number, change=message, wish=wish), at(day))
    return kinds(life.to_coach)


def plan_in(parts: object) -> Plan:
    (plan,) = [part for part in parts if isinstance(part, Plan)]  # type: ignore[attr-defined] # parts of any kind
    return plan


def buttons(outcome: Outcome) -> list[object]:
    return [button for say in outcome.says if say.to == MARA.number for button in say.buttons]


def exercises(life: Life, day: int) -> list[str]:
    return [line.exercise for line in plan_in(life.says("what's the plan?", at(day))).lines]


CASES: list[tuple[Wish, PlanChange, list[str]]] = [
    (
        SwapWish(exercise="rows", instead="pulldowns"),
        PlanChange(what="swap", exercise="Seated cable row", instead="Lat pulldown"),
        ["Lat pulldown", "Romanian deadlift", "Hammer curl"],
    ),
    (
        SwapWish(exercise="curls", instead="cable curls"),
        PlanChange(what="swap", exercise="Hammer curl", instead="Cable curl"),
        ["Seated cable row", "Romanian deadlift", "Cable curl"],
    ),
    (
        LeaveOutWish(exercise="deadlifts"),
        PlanChange(what="leave out", exercise="Romanian deadlift"),
        ["Seated cable row", "Hammer curl"],
    ),
]
AS_ON_THE_SHEET = ["Seated cable row", "Romanian deadlift", "Hammer curl"]


@pytest.mark.parametrize(("wish", "told", "left"), CASES)
def test_a_change_stands_in_the_next_plan_and_is_told_there_once(
    wish: Wish, told: PlanChange, left: list[str]
) -> None:
    life = Life()
    assert wants(life, wish) == ["changed"]
    plan = plan_in(life.says("what's the plan?", at(2, 19)))
    assert ([line.exercise for line in plan.lines], plan.changes, plan.by) == (left, (told,), "Mara")
    later = plan_in(life.says("what's the plan?", at(3)))
    assert ([line.exercise for line in later.lines], later.changes) == (left, ())


@pytest.mark.parametrize(("wish", "told", "left"), CASES)
def test_it_is_undone_by_its_button_or_by_putting_back(wish: Wish, told: PlanChange, left: list[str]) -> None:
    life = Life()
    wants(life, wish)
    assert TakeBack(client=2, change=50) in buttons(life.outcome)
    life.hears(Undone(coach=MARA.number, change=50), at(2, 19))
    assert kinds(life.to_coach) == ["undone"]
    assert exercises(life, 3) == AS_ON_THE_SHEET
    wants(life, wish, 4, 51)
    assert wants(life, BackWish(exercise=told.exercise), 4, 52) == ["changed"]
    plan = plan_in(life.says("what's the plan?", at(4, 20)))
    assert ([line.exercise for line in plan.lines], plan.changes) == (AS_ON_THE_SHEET, ())
    life.hears(Undone(coach=MARA.number, change=52), at(4, 21))
    assert exercises(life, 5) == left


def test_undone_twice_there_is_nothing_to_undo() -> None:
    life = Life()
    wants(life, LeaveOutWish(exercise="rows"))
    life.hears(Undone(coach=MARA.number, change=50), at(2, 19))
    life.hears(Undone(coach=MARA.number, change=50), at(2, 20))
    assert kinds(life.to_coach) == ["nothing to undo"]


@pytest.mark.parametrize(
    ("wish", "topic"),
    [
        (SwapWish(exercise="benches", instead="dips"), "which exercise of client"),
        (SwapWish(exercise="rows", instead="zorbing"), "which exercise of client"),
        (SwapWish(exercise="rows", instead="deadlifts"), "already in it"),
        (SwapWish(exercise="rows", instead="plank"), "other kind"),
        (LeaveOutWish(exercise="training"), "which exercise of client"),
        (BackWish(exercise="rows"), "nothing aside"),
        (ReminderWish(clock="some time"), "no such hour for client"),
    ],
)
def test_what_cannot_be_is_said_and_changes_nothing(wish: Wish, topic: str) -> None:
    life = Life()
    assert wants(life, wish) == [topic]
    assert exercises(life, 2) == AS_ON_THE_SHEET


def test_a_word_that_fits_two_exercises_is_asked_about_with_a_button_for_each() -> None:
    life = Life()
    wants(life, SwapWish(exercise="rows", instead="curls"))
    choices = [each for each in buttons(life.outcome) if isinstance(each, ChangeTo)]
    assert all(isinstance(each.wish, SwapWish) and each.wish.instead == each.label for each in choices)


def test_rest_is_counted_from_the_day_that_would_be_and_taken_back() -> None:
    life = Life()
    life.says("rows 40x9, rdl 60x7, hammer curls 10s x 9", at(2, 18))
    assert kinds(life.hears(Changed(coach=1, change=60, wish=RestWish(days=2)), at(2, 20))) == ["rest more"]
    assert life.state.memory.due_on == at(7).date()
    life.hears(Undone(coach=MARA.number, change=60), at(2, 21))
    assert life.state.memory.due_on == at(5).date()


def test_the_hour_is_told_at_once_with_the_evening_as_a_button() -> None:
    life = Life()
    said = life.hears(Changed(coach=1, change=70, wish=ReminderWish(clock="7")), at(2))
    assert kinds(said) == ["hour from coach"]
    assert (
        f"{life.state.client.remind_at:%H:%M}",
        [getattr(b, "label", None) for b in buttons(life.outcome)],
    ) == (
        "07:00",
        ["19:00", None],
    )
    life.hears(Undone(coach=MARA.number, change=70), at(2, 20))
    assert f"{life.state.client.remind_at:%H:%M}" == "08:00"


@pytest.mark.parametrize("wish", [ReminderWish(clock="7:30"), RestWish(days=2)])
def test_what_is_changed_for_several_is_told_the_client_alone_and_taken_back(wish: Wish) -> None:
    life = Life()
    life.says("rows 40x9, rdl 60x7, hammer curls 10s x 9", at(2, 18))
    before = (life.state.client.remind_at, life.state.memory.due_on)
    life.hears(Changed(coach=1, change=70, wish=wish, to_several=True), at(2, 19))
    assert [say.to for say in life.outcome.says] == [life.state.client.number]
    assert (life.state.client.remind_at, life.state.memory.due_on) != before
    life.hears(Undone(coach=MARA.number, change=70, to_several=True), at(2, 20))
    assert (life.state.client.remind_at, life.state.memory.due_on) == before


def test_another_coach_changes_nothing_and_hears_so() -> None:
    life = Life()
    life.hears(Changed(coach=99, change=50, wish=LeaveOutWish(exercise="rows")), at(2))
    assert [(say.to, kinds(say.parts)) for say in life.outcome.says] == [(99, ["not your client"])]
    assert exercises(life, 2) == AS_ON_THE_SHEET


@pytest.mark.parametrize(
    ("clock", "at_last"),
    [
        ("an hour earlier", "07:00"),
        ("half an hour later", "08:30"),
        ("45 minutes sooner", "07:15"),
        ("2 hours later", "10:00"),
        ("a bit earlier", "07:30"),
        ("9 hours earlier", "23:00"),
    ],
)
def test_the_hour_is_moved_from_where_it_is(clock: str, at_last: str) -> None:
    life = Life()
    life.hears(Changed(coach=1, change=70, wish=ReminderWish(clock=clock)), at(2))
    assert f"{life.state.client.remind_at:%H:%M}" == at_last
