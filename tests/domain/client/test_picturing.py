"""Pictures of progress: when one is asked for, what it shows, and that the coach's alert has one."""

import pytest

from domain.actions import Show
from domain.client.progress import progress_of
from domain.incoming import CardWanted, PictureWanted
from domain.parts import Notice, Part
from domain.pictures import ProgrammeProgress, Progress
from domain.reading import wants_picture
from tests.domain.client.people import MARA, Life, at, kinds


def trained() -> Life:
    """Return a life with three workouts: rows 50 x 8, squats 20 x 9, rows 50 x 9."""
    life = Life()
    life.says("rows 50x8", at(2))
    life.says("goblet squat 20x9", at(5))
    life.says("rows 50x9", at(8))
    return life


@pytest.mark.parametrize(
    "text",
    [
        "show me my rows",
        "picture of my rows",
        "can I see a graph of my rows?",
        "show rows",
        "a chart for rows",
    ],
)
def test_a_client_asks_for_the_picture_of_an_exercise(text: str) -> None:
    (part,) = trained().says(text, at(9))
    assert isinstance(part, Progress)
    assert part.exercise == "Seated cable row"
    assert part.scale.measure in {"reps", "one-rep max"}
    assert [on.day for on, _ in part.points] == [2, 8]
    assert part.best.set.reps == 9
    assert part.next_aim is not None


@pytest.mark.parametrize("text", ["picture of progress", "show me a picture", "a graph please"])
def test_without_an_exercise_the_whole_programme_is_shown(text: str) -> None:
    (part,) = trained().says(text, at(9))
    assert isinstance(part, ProgrammeProgress)
    assert [each.exercise for each in part.exercises] == ["Seated cable row", "Goblet squat"]
    assert part.waiting == ("Romanian deadlift", "Hammer curl", "Wall sit")


@pytest.mark.parametrize(
    "text",
    [
        "I sent you a picture of my form",
        "can I send a picture?",
        "here is a picture of my knee",
        "show me what to do today",
        "rows 50x8, send me a graph",
    ],
)
def test_other_words_are_no_wish_for_a_picture(text: str) -> None:
    answer = trained().says(text, at(9))
    assert not any(isinstance(part, Progress | ProgrammeProgress) for part in answer)


def test_a_text_without_end_is_no_wish() -> None:
    assert not wants_picture("picture of my rows " * 30)


def test_before_the_first_set_there_is_nothing_to_draw() -> None:
    assert kinds(Life().says("picture of my rows", at(3))) == ["nothing to draw"]


@pytest.mark.parametrize(("text", "kind"), [("row", "progress"), ("", "programme progress")])
def test_the_coach_is_shown_what_was_asked_for(text: str, kind: str) -> None:
    life = trained()
    assert life.hears(PictureWanted(coach=MARA.number, text=text), at(9)) == ()
    assert kinds(life.to_coach) == [kind]


def test_another_coach_is_shown_nothing() -> None:
    life = trained()
    life.hears(PictureWanted(coach=99, text=""), at(9))
    assert [(say.to, kinds(say.parts)) for say in life.outcome.says] == [(99, ["not your client"])]


def test_a_stall_comes_to_the_coach_with_its_trend_and_a_button_for_more() -> None:
    life = Life()
    alerts: list[Part] = []
    buttons = []
    for workout in range(4):
        life.says("rows 50x8, rdl 80x6, curls 14x9", at(2 + 6 * workout))
        life.says("goblet squat 20x9, wall sit 40 s", at(5 + 6 * workout))
        life.passes_to(at(6 + 6 * workout))
        alerts += life.to_coach
        buttons += [each for say in life.outcome.says for each in say.buttons if isinstance(each, Show)]
    courses = [part for part in alerts if isinstance(part, Progress)]
    assert "Goblet squat" in {each.exercise for each in courses}
    assert all(each.small and len(each.points) == 4 for each in courses)
    assert buttons


def test_a_card_has_a_button_for_the_picture_of_all() -> None:
    life = trained()
    life.hears(CardWanted(coach=MARA.number), at(9))
    assert Show(client=2) in life.outcome.says[0].buttons


def test_what_is_on_hold_has_no_aim() -> None:
    life = trained()
    life.says("my left knee hurts on goblet squats, 4 out of 10", at(9))
    held = progress_of(life.state, "Goblet squat", at(9).date())
    assert held is not None
    assert held.held_since is not None
    assert held.next_aim is None


def test_a_layoff_lies_between_the_workouts_around_it() -> None:
    life = trained()
    life.says("rows 50x8", at(10, month=4))
    found = progress_of(life.state, "Seated cable row", at(11, month=4).date())
    assert found is not None
    assert [(each.since.isoformat(), each.until.isoformat()) for each in found.away] == [
        ("2026-03-09", "2026-04-09")
    ]


def test_the_memory_keeps_how_strength_has_changed() -> None:
    life = trained()
    days = [on.day for on, _ in life.state.memory.strength]
    changes = [change for _, change in life.state.memory.strength]
    assert days == [2, 5, 8]
    assert changes[0] == changes[1] == 0
    # Rows by the estimated maximum from 1 + 8/30 to 1 + 9/30, squats level: half of that on average.
    assert changes[2] == pytest.approx(((1 + 9 / 30) / (1 + 8 / 30)) ** 0.5 - 1, abs=1e-4)
    assert not any(isinstance(part, Notice) and "strength" in part.facts for part in life.to_coach)
