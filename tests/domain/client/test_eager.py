"""More than was asked: told kindly and seldom, seen by the coach, withdrawn where it no longer stands."""

from dataclasses import replace
from datetime import date, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from domain.incoming import Assigned, Told
from domain.parts import Notice, Part, Plan
from domain.plan_lines import PlanLine
from tests.domain.client.people import MARA, SHEET, Life, at, kinds, noor, stored

Parts = tuple[Part, ...]

FIXED = """\
Harbour Week
Train on Monday and Thursday in turn: Pull, Legs

Pull
1. Seated cable row, 8-10 reps

Legs
1. Goblet squat, 8-12 reps
"""


def told(parts: Parts) -> list[tuple[str, str | None]]:
    """Return the rules and exercises of what the client is told of."""
    return [
        (matter["rule"], matter["exercise"])
        for part in parts
        if isinstance(part, Notice) and part.topic == "more than asked"
        for matter in part.facts["matters"]
    ]


def kept(life: Life) -> list[tuple[str, str | None, date]]:
    """Return what is kept for the coach's digest."""
    return [(each.what.rule, each.what.exercise, each.what.on) for each in life.state.memory.eager]


def after_pull(sheet: str | None = None) -> Life:
    """Return a client who did the first workout on Monday 2 March."""
    life = Life(noor(sheet) if sheet else noor())
    life.says("row 60x9" if sheet else "row 60x9, rdl 80x7, curl 14x10", at(2))
    return life


def test_a_great_jump_is_told_after_the_verdict_and_kept_for_the_coach() -> None:
    life = after_pull()
    life.says("goblet 24x10, wall sit 40 s", at(5))
    said = life.says("row 80x6", at(8))
    assert kinds(said) == ["verdict", "target", "more than asked"]
    assert told(said) == [("great jump", "Seated cable row")]
    assert kept(life) == [("great jump", "Seated cable row", date(2026, 3, 8))]
    assert life.to_coach == ()


def test_what_was_aimed_for_and_a_first_time_are_no_jumps() -> None:
    life = Life()
    assert told(life.says("row 60x16, rdl 80x7, curl 14x10", at(2))) == []
    life.says("goblet 24x10, wall sit 40 s", at(5))
    said = life.passes_to(at(8, 9))
    target = next(line.target for part in said for line in getattr(part, "lines", ()) if line.target)
    assert target.load > 66, "far above the range, more than a tenth is asked for"
    assert told(life.says(f"row {target.load}x8", at(8))) == []
    assert kept(life) == []


def test_a_correction_withdraws_it_and_so_does_an_undo() -> None:
    for mend in ("make that 62.5", "undo"):
        life = after_pull()
        life.says("row 80x6", at(8))
        assert [rule for rule, _, _ in kept(life)] == ["great jump"]
        life.says(mend, at(8, 19))
        assert kept(life) == [], mend


def test_what_is_put_right_earlier_can_withdraw_a_later_matter_but_makes_none() -> None:
    life = after_pull()
    life.says("row 80x6", at(8))
    life.edits("row 75x9, rdl 80x7, curl 14x10", "row 60x9, rdl 80x7, curl 14x10", 1, at(8, 19))
    assert kept(life) == []
    life.edits("row 50x9, rdl 80x7, curl 14x10", "row 75x9, rdl 80x7, curl 14x10", 1, at(8, 20))
    assert kept(life) == []


def test_an_edit_that_leaves_it_standing_does_not_tell_it_again() -> None:
    life = after_pull()
    assert told(life.says("row 80x6", at(8))) == [("great jump", "Seated cable row")]
    said = life.edits("row 82.5x6", "row 80x6", 2, at(8, 19))
    assert told(said) == []
    (each,) = life.state.memory.eager
    assert (each.told, each.what.at, each.what.facts) == (True, at(8), {"percent": 37.5})


def test_more_sets_than_the_sheet_has_are_told_once_in_four_weeks_and_kept_each_time() -> None:
    life = after_pull()
    heard = [told(life.says("row 60x9, 60x8", at(day))) for day in (8, 14, 20, 26)]
    heard.append(told(life.says("row 60x9, 60x8", at(1, month=4))))
    heard.append(told(life.says("row 60x9, 60x8", at(7, month=4))))
    once = [("extra sets", "Seated cable row")]
    assert heard == [once, [], [], [], [], once]
    assert len(kept(life)) == 5, "what is older than four weeks is let go"


def test_sets_that_come_one_by_one_are_told_of_at_the_one_too_many() -> None:
    life = after_pull()
    assert told(life.says("row 60x9", at(8))) == []
    assert told(life.says("row 60x8", at(8, 18, 5))) == [("extra sets", "Seated cable row")]
    assert told(life.says("row 60x8", at(8, 18, 10))) == []
    (each,) = life.state.memory.eager
    assert each.what.facts == {"done": 3, "prescribed": 1}


def test_exercises_that_the_sheet_has_not_are_told_of_together() -> None:
    life = Life()
    said = life.says("row 60x9, face pull 20x12, leg press 100x10", at(2))
    assert told(said) == [("not on the sheet", "Face pull"), ("not on the sheet", "Leg press")]
    assert kinds(said).count("more than asked") == 1


def test_an_alternative_of_the_sheet_is_on_the_sheet() -> None:
    life = Life()
    assert told(life.says("cable curl 20x10", at(2))) == []
    assert told(life.says("back extension 10x12", at(2, 19))) == []


def test_a_workout_inside_the_rest_days_is_told_with_the_next_day_and_once() -> None:
    life = after_pull()
    said = life.says("goblet 24x10", at(3))
    assert told(said) == [("too soon", None)]
    notice = next(part for part in said if isinstance(part, Notice))
    assert (notice.facts["next"], notice.facts["on"], notice.facts["counted_on"]) == (
        "Pull",
        "2026-03-06",
        True,
    )
    assert notice.facts["matters"][0]["facts"] == {
        "days_early": 2,
        "free_from": "2026-03-05",
        "last": "2026-03-02",
    }
    said = life.says("wall sit 40 s", at(3, 19))
    assert told(said) == []
    assert kept(life) == [("too soon", None, date(2026, 3, 3))]


def test_where_the_workout_closes_the_next_day_is_said_by_that_alone() -> None:
    life = after_pull()
    said = life.says("goblet 24x10, wall sit 40 s", at(3))
    assert kinds(said)[-2:] == ["more than asked", "workout done"]
    assert [part.facts.get("next") for part in said if isinstance(part, Notice)] == [None, "Pull"]


def test_taking_all_of_it_back_withdraws_that_it_was_too_soon() -> None:
    life = after_pull()
    life.says("goblet 24x10", at(3))
    life.says("undo", at(3, 19))
    assert kept(life) == []


def test_a_day_on_which_the_bot_asked_is_never_too_soon() -> None:
    life = after_pull()
    life.says("move it to Wednesday", at(3))
    life.passes_to(at(4, 9))
    life.says("goblet 24x10, wall sit 40 s", at(4))
    life.passes_to(at(7, 9))
    said = life.says("row 60x9", at(7))
    assert told(said) == []
    assert [on for _, _, on in kept(life)] == [date(2026, 3, 4)]


def test_a_move_into_the_rest_days_is_told_at_once_and_not_again_when_it_is_done() -> None:
    life = after_pull()
    (moved,) = life.says("move it to Wednesday", at(3))
    assert isinstance(moved, Notice)
    assert (moved.topic, moved.facts["rest_until"]) == ("moved", "2026-03-05")
    assert told(life.says("goblet 24x10", at(4))) == []
    assert kept(life) == [("too soon", None, date(2026, 3, 4))]


def test_a_move_to_a_later_day_says_nothing_of_rest() -> None:
    life = after_pull()
    (moved,) = life.says("move it to Friday", at(3))
    assert isinstance(moved, Notice)
    assert moved.facts["rest_until"] is None


def test_a_workout_told_of_late_makes_none_of_the_one_that_the_bot_asked_for() -> None:
    life = Life()
    life.says("goblet 24x10", at(2))
    said = life.says("yesterday: row 60x9", at(2, 19))
    assert told(said) == []
    life.says("wall sit 40 s", at(2, 20))
    assert kept(life) == []


def test_with_fixed_days_the_next_day_stays_where_it_is() -> None:
    life = after_pull(FIXED)
    said = life.says("goblet 24x10", at(3))
    notice = next(part for part in said if isinstance(part, Notice))
    assert (told(said), notice.facts["counted_on"]) == ([("too soon", None)], False)


def test_an_exercise_beside_the_sheet_on_a_rest_day_loads_the_same_again() -> None:
    life = after_pull()
    said = life.says("face pull 20x12, leg press 100x10", at(3))
    assert told(said) == [("same again", "Face pull"), ("same again", "Leg press")]
    facts = next(part for part in said if isinstance(part, Notice)).facts["matters"]
    assert [matter["facts"]["region"] for matter in facts] == ["upper", "lower"], "rows, and deadlifts"


def test_on_a_day_after_the_rest_it_is_only_not_on_the_sheet() -> None:
    life = after_pull()
    assert told(life.says("bench 50x8", at(2, 22))) == [("not on the sheet", "Bench press")]
    assert told(life.says("overhead press 30x8", at(6))) == [("not on the sheet", "Overhead press")]


def test_where_it_hurts_nothing_is_said_of_it_but_the_coach_sees_it() -> None:
    life = after_pull()
    said = life.says("row 60x9, rdl 100x5, my left shoulder hurts", at(8))
    assert "safety" in kinds(said)
    assert told(said) == []
    assert [(rule, exercise) for rule, exercise, _ in kept(life)] == [("great jump", "Romanian deadlift")]


def test_after_a_warning_sign_an_undo_still_withdraws() -> None:
    life = after_pull()
    life.says("row 80x6", at(8))
    life.says("I have chest pain", at(8, 19))
    life.edits("row 62.5x6", "row 80x6", 2, at(8, 20))
    assert kept(life) == []


def test_on_another_sheet_a_matter_stands_as_long_as_its_sets_do() -> None:
    for undone, stand in ((False, [("great jump", "Seated cable row", date(2026, 3, 8))]), (True, [])):
        life = after_pull()
        life.says("row 80x6", at(8))
        life.state = replace(life.state, programmes=(stored(FIXED, 8),))
        life.hears(Assigned(coach=MARA.number, programme=8), at(8, 19))
        if undone:
            life.says("undo", at(8, 20))
        assert kept(life) == stand


def test_a_warning_sign_makes_no_matter_of_anything() -> None:
    life = after_pull()
    said = life.says("row 80x6 and now I have chest pain", at(8))
    assert told(said) == []
    assert "urgent" in kinds(said)


@pytest.mark.parametrize(
    ("words", "heard"),
    [
        ("add some face pulls if you like", []),
        ("well done", [("not on the sheet", "Face pull")]),
    ],
)
def test_of_what_the_coach_has_written_the_client_is_not_told_but_the_coach_sees_it(
    words: str, heard: list[tuple[str, str]]
) -> None:
    life = Life()
    life.hears(Told(coach=MARA.number, text=words), at(2, 9))
    assert told(life.says("row 60x9, face pull 20x12", at(2))) == heard
    assert kept(life) == [("not on the sheet", "Face pull", date(2026, 3, 2))]


def test_a_day_is_not_called_too_soon_where_the_coach_has_written_since() -> None:
    life = after_pull()
    life.hears(Told(coach=MARA.number, text="if you feel fresh, train tomorrow already"), at(2, 20))
    assert told(life.says("goblet 24x10", at(3))) == []
    assert kept(life) == [("too soon", None, date(2026, 3, 3))]


def load_to_lift(line: PlanLine) -> str:
    """Return the load that the plan says, as a client would type it; at first a light one."""
    if line.target is None or line.target.load_kind == "body":
        return "20 kg x " if line.range.of == "reps" else ""
    sign = "+" if line.target.load_kind == "added" else ""
    return f"{sign}{line.target.load} kg{' x ' if line.range.of == 'reps' else ' for '}"


@settings(max_examples=12, deadline=None)
@given(st.sampled_from([SHEET, FIXED]), st.lists(st.integers(3, 20), min_size=20, max_size=20))
def test_who_does_the_plan_on_its_days_is_never_told_of_more_than_asked(
    sheet: str, amounts: list[int]
) -> None:
    """Whatever comes of each set: the loads and the days are those that the bot has said."""
    life = Life(noor(sheet))
    left = iter(amounts)
    workouts = 0
    for day in range(24):
        now = at(2, 18) + timedelta(days=day)
        for plan in [part for part in life.passes_to(now) if isinstance(part, Plan)]:
            workouts += 1
            for line in plan.lines:
                amount = next(left, 8)
                done = f"{amount}" if line.range.of == "reps" else f"{amount + 25} s"
                said = life.says(f"{line.exercise} {load_to_lift(line)}{done}", now)
                assert "verdict" in kinds(said)
                assert told(said) == []
    assert workouts > 5
    assert kept(life) == []
