"""Questions about the own journal, settings and data are answered from what stands, and change nothing."""

from decimal import Decimal

import pytest

from domain.parts import Notice, Part
from tests.domain.client.newcomers import newcomer
from tests.domain.client.people import Life, at, kinds, noor


def trained(*rows: str) -> Life:
    """Noor, who has trained Pull every third day, with these words for the row."""
    life = Life()
    for count, row in enumerate(rows):
        life.says(
            f"row {row}, rdl 80x7, hammer curl 14x10", at(2 + 6 * (count % 5), 18, month=3 + count // 5)
        )
        life.says("squat 20x12, wall sit 30 kg 40 s", at(5 + 6 * (count % 5), 18, month=3 + count // 5))
    return life


def only(parts: tuple[Part, ...], topic: str) -> Notice:
    """Return the one part of an answer, a notice on that topic."""
    (part,) = parts
    assert isinstance(part, Notice)
    assert part.topic == topic
    return part


def test_the_last_workout_is_told_set_by_set() -> None:
    life = trained("60x9", "60x10")
    said = only(life.says("last time", at(12)), "last workout")
    assert (said.facts["workout"], said.facts["on"]) == ("Legs", "2026-03-11")
    assert [row["exercise"] for row in said.facts["rows"]] == ["Goblet squat", "Wall sit"]


def test_the_best_ever_is_by_strength_shown_and_not_by_the_last() -> None:
    life = trained("60x9", "65x9", "62.5x8")
    said = only(life.says("what's my best row?", at(18)), "best")
    (row,) = said.facts["rows"]
    assert (row["exercise"], Decimal(row["set"]["load"]), row["set"]["reps"]) == (
        "Seated cable row",
        Decimal(65),
        9,
    )
    every = only(life.says("best ever", at(18, 19)), "best")
    assert len(every.facts["rows"]) == 5


def test_the_best_of_what_is_no_exercise_is_not_looked_up() -> None:
    life = trained("60x9")
    assert "best" not in kinds(life.says("best of luck", at(6)))


def test_workouts_are_counted_by_what_was_done() -> None:
    life = trained("60x9", "60x10")
    life.passes_to(at(20))
    said = only(life.says("how many workouts?", at(20)), "workouts counted")
    assert (said.facts["count"], said.facts["sets"], said.facts["since"]) == (4, 10, "2026-03-02")


@pytest.mark.parametrize(
    ("rows", "found"),
    [
        (("60x8",), None),
        (("60x8", "60x9", "60x10"), None),
        (("60x8", "60x9", "62.5x8", "62.5x9", "65x8", "65x9", "67.5x8"), "risen"),
        (("60x9", "60x8", "60x9", "60x8", "60x9", "60x8"), "unclear"),
    ],
)
def test_stronger_or_not_is_told_only_as_far_as_it_can_be(rows: tuple[str, ...], found: str | None) -> None:
    life = Life()
    for count, row in enumerate(rows):
        life.says(f"row {row}", at(2 + 6 * (count % 5), 18, month=3 + count // 5))
    said = life.says("am I getting stronger?", at(28, 18, month=4))
    (part,) = [each for each in said if isinstance(each, Notice) and each.topic == "strength so far"]
    assert part.facts["found"] == found


def test_settings_and_equipment_are_said() -> None:
    life = Life(noor(lacking=("leg press",)))
    said = only(life.says("what are my settings?", at(2)), "settings")
    assert (said.facts["unit"], said.facts["at"], said.facts["local"]) == ("kg", "08:00", "18:00")
    known = only(life.says("what equipment do I have?", at(2, 18, 1)), "equipment known")
    assert known.facts["equipment"]["lacking"] == ["leg press"]


def test_never_mind_takes_back_the_question_just_asked_and_no_plans() -> None:
    life = trained("60x9")
    life.says("move it to Thursday", at(7, 10))
    plans = life.state.memory.moved_to
    life.says("can you check my form?", at(7, 10, 1))
    said = only(life.says("forget it", at(7, 10, 2)), "question withdrawn")
    assert said.facts["coach"] == "Mara"
    assert kinds(life.to_coach) == ["client withdraws"]
    assert life.state.alerts == ()
    assert kinds(life.says("forget it", at(7, 10, 3))) == ["heard"]
    assert life.state.memory.moved_to == plans


@pytest.mark.parametrize("text", ["thanks!", "thank you so much", "cheers"])
def test_thanks_get_a_kind_word_and_no_more(text: str) -> None:
    assert kinds(trained("60x9").says(text, at(6))) == ["thanked"]


def test_stop_ends_the_reminders_at_once_and_offers_the_way_back() -> None:
    life = trained("60x9")
    assert kinds(life.says("stop", at(6))) == ["reminders off"]
    assert life.passes_to(at(20)) == []
    assert kinds(life.presses("Start reminders", at(20)))[0] == "reminders on"


def test_who_wants_to_stop_without_saying_what_is_asked_and_a_workout_under_way_comes_first() -> None:
    life = Life()
    assert kinds(life.says("I want to stop", at(2, 9))) == ["which stop"]
    assert list(life.buttons)[-2:] == ["Stop reminders", "Leave"]
    life.says("row 60x9", at(2))
    life.buttons = {}
    assert kinds(life.says("I'd like to stop now", at(2))) == ["which stop"]
    assert list(life.buttons) == ["Done for today", "Stop reminders", "Leave"]
    assert kinds(life.presses("Done for today", at(2))) == ["workout done"]
    life.says("I'd like to stop now", at(3))
    assert kinds(life.presses("Stop reminders", at(3))) == ["reminders off"]


@pytest.mark.parametrize(
    ("text", "topic"),
    [("who sees this?", "what this is"), ("what do you store?", "what this is"), ("my settings", "settings")],
)
def test_what_is_kept_can_be_asked_during_the_first_questions(text: str, topic: str) -> None:
    life = Life(newcomer("consent", "age"))
    assert kinds(life.says(text, at(1, 19))) == [topic, "question"]


@pytest.mark.parametrize(
    "command", ["/plan", "/history", "/last", "/best", "/undo", "/settings", "/help", "/stop", "/leave"]
)
def test_each_command_of_the_menu_is_understood(command: str) -> None:
    said = kinds(trained("60x9").says(command, at(6)))
    assert len(said) >= 1
    assert not {"nothing recorded", "nothing to read"} & set(said)
