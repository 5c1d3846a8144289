"""Under an answer stand buttons for what is likely next, and each does what it says."""

import copy
from functools import cache

import pytest

from domain.actions import Answer, Words
from domain.incoming import Edited, FromChat, Pressed, ReplyTo, Text, Under
from domain.parts import Say
from tests.domain.client.people import SHEET, Life, at, kinds, noor

CUED = SHEET.replace("1. Goblet squat, 8-12 reps\n", "1. Goblet squat, 8-12 reps\n   cue: chest tall\n")


@cache
def trained() -> Life:
    """Noor, after one round."""
    life = Life(noor(CUED))
    life.says("row 60x9, rdl 90x7, hammer curl 14x10", at(2))
    life.says("squat 20x10, wall sit 30 kg 40 s", at(5))
    return life


def own(life: Life) -> list[Say]:
    """Return what the last outcome says to the client."""
    return [say for say in life.outcome.says if say.to == life.state.client.number]


def labels(life: Life) -> list[str]:
    """Return the labels of the buttons under the last answer."""
    return [getattr(button, "text", "") for say in own(life) if say.edits is None for button in say.buttons]


@pytest.mark.parametrize(
    ("text", "day", "buttons"),
    [
        ("row 60x9", 8, ["Undo", "Why?", "What's next?", "Done for today"]),
        ("row 60x9, rdl 90x7, curl 14x10", 8, ["Undo", "Why?", "What's next?"]),
        ("bench press 60x8", 8, ["Undo", "What's next?"]),
        ("yesterday: row 60x9", 8, ["Undo", "Why?", "What's next?"]),
        ("what's next?", 8, ["Can't today", "Not now"]),
        ("what's next?", 6, []),
        ("move it to Friday", 8, ["Undo"]),
        ("skip rows", 8, ["Undo", "What's next?"]),
        ("away till the 20th", 8, ["Undo"]),
        ("can you check my form?", 8, ["Never mind"]),
        ("history of rows", 8, ["Picture of Seated cable row"]),
        ("undo", 5, ["Put it back", "What's next?"]),
        ("thanks!", 8, []),
        ("my back hurts on rdl", 8, []),
    ],
)
def test_what_is_likely_next_is_offered(text: str, day: int, buttons: list[str]) -> None:
    life = copy.copy(trained())
    life.says(text, at(day, 19))
    assert labels(life) == buttons


def test_a_reminder_can_be_put_off_and_shows_the_cues() -> None:
    life = copy.copy(trained())
    life.says("row 60x9, rdl 90x7, hammer curl 14x10", at(8))
    life.passes_to(at(11, 9))
    assert labels(life) == ["Can't today", "Not now", "Cues"]
    assert kinds(life.presses("Cues", at(11, 9))) == ["cues"]
    assert kinds(life.presses("Not now", at(11, 9))) == ["when later"]
    assert "question" in kinds(life.presses("Can't today", at(11, 9, 1))) or life.state.memory.moved_to


def test_beside_a_question_there_are_only_its_answers() -> None:
    life = copy.copy(trained())
    life.says("row 60x9, rdl 90", at(8))
    assert all(isinstance(button, Answer) for say in own(life) for button in say.buttons)


def test_done_for_today_ends_the_workout() -> None:
    life = copy.copy(trained())
    life.says("row 60x9", at(8))
    assert kinds(life.presses("Done for today", at(8, 19))) == ["workout done"]
    assert life.workout_state == "done"


def pressed(life: Life, text: str, under: Under | None) -> FromChat:
    """Return the press of the button of that label under a message of the bot's."""
    return Pressed(button="9:0", action=life.buttons[text], under=under)


def test_undo_under_a_record_takes_that_one_back_and_is_said_in_its_place() -> None:
    life = copy.copy(trained())
    life.says("row 60x9", at(8))
    first = life.heard
    life.says("rdl 90x8", at(8, 18, 5))
    under = Under(number=9, buttons=(life.buttons["Undo"],), reply=ReplyTo(message=first, places=(6,)))
    said = life.hears(pressed(life, "Undo", under), at(8, 18, 6))
    assert kinds(said) == ["taken back"]
    assert [say.edits for say in own(life)] == [9]
    assert [entry.set.exercise for entry in life.state.entries][-1] == "Romanian deadlift"


def test_an_answer_pressed_is_shown_under_its_question_and_answered_once() -> None:
    life = copy.copy(trained())
    life.says("rdl 90", at(8))
    (question,) = own(life)
    eight = next(button for button in question.buttons if getattr(button, "text", "") == "8")
    under = Under(number=9, buttons=question.buttons, reply=ReplyTo())
    life.hears(Pressed(button="9:1", action=eight, under=under), at(8, 18, 1))
    answer, shown = own(life)
    assert (answer.edits, answer.parts[0].kind) == (None, "verdict")
    assert (shown.edits, shown.buttons, [part.kind for part in shown.parts]) == (9, (), ["chosen"])
    life.hears(Pressed(button="9:1", action=eight, under=under), at(8, 18, 2))
    late, stripped = own(life)
    assert (kinds(late.parts), stripped.parts, stripped.buttons) == (["button is old"], (), ())


def test_undo_under_what_an_answer_has_made_whole_takes_that_back() -> None:
    life = copy.copy(trained())
    life.says("rdl 90", at(8))
    life.presses("8", at(8, 18, 1))
    reply = ReplyTo(message=life.heard)
    life.says("row 60x9", at(8, 18, 2))
    under = Under(number=9, buttons=(life.buttons["Undo"],), reply=reply, at=at(8, 18, 1))
    (part,) = life.hears(pressed(life, "Undo", under), at(8, 18, 3))
    assert part.model_dump()["facts"]["sets"][0]["exercise"] == "Romanian deadlift"


@pytest.mark.parametrize(
    ("answered", "text", "edits"),
    [(9, "row 60x10", 9), (None, "row 60x10", None), (9, "row 60x10 and my back hurts", None)],
)
def test_an_edit_is_answered_in_place_if_nothing_was_said_since_and_it_needs_no_heed(
    answered: int | None, text: str, edits: int | None
) -> None:
    life = copy.copy(trained())
    life.says("row 60x9", at(8))
    number = life.heard
    edit = Edited(text=text, key="k", before="row 60x9", original=number, places=(6,), answered=answered)
    life.hears(edit, at(8, 18, 1))
    assert [say.edits for say in own(life)] == [edits]


@pytest.mark.parametrize(
    "text", ["row 60x9", "hello", "what's next?", "stop", "my knee hurts", "cues", "x" * 500]
)
def test_every_message_is_answered_with_one_message(text: str) -> None:
    life = copy.copy(trained())
    life.hears(Text(text=text), at(8))
    (say,) = own(life)
    assert say.edits is None


def test_thanks_and_the_like_are_answered_in_a_word_and_offer_nothing() -> None:
    life = copy.copy(trained())
    for text in ("thanks", "ok", "great, thank you!", "👍"):
        life.says(text, at(6))
        assert not any(isinstance(button, Words) for say in own(life) for button in say.buttons)
