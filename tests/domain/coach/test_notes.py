"""A coach's notes on own clients: kept, shown, forgotten, and on nobody else's."""

from dataclasses import replace

import pytest

from domain.actions import ForgetNote
from domain.coach_memory import CoachMemory
from domain.incoming import Pressed, Text
from domain.notes import LONGEST, Note
from domain.outcome import NoteForgotten, NoteKept
from domain.parts import Notice
from domain.state import CoachState
from tests.domain.coach.test_hearing import NOW, STATE, does, remembering, said

MORNINGS = Note(11, 2, "prefers mornings", NOW, 5)
TEA = Note(12, 2, "likes tea", NOW, 6)
KEYS = Note(13, 3, "has the gym's keys", NOW, 7)
NOTED = replace(STATE, notes=(MORNINGS, TEA, KEYS))


def kept(text: str, state: CoachState = STATE) -> list[tuple[int, str]]:
    """Return what was noted, on whom."""
    return [(each.note.client, each.note.text) for each in does(Text(text=text), state).changes
            if isinstance(each, NoteKept)]  # fmt: skip


def forgotten(text: str, state: CoachState = NOTED) -> list[int]:
    return [each.number for each in does(Text(text=text), state).changes if isinstance(each, NoteForgotten)]


@pytest.mark.parametrize(
    ("text", "notes"),
    [
        ("note on Noor: prefers mornings", [(2, "prefers mornings")]),
        ("Note for noor - her knee is old news", [(2, "her knee is old news")]),
        ("make a note about Ana Maria that she moves in May", [(3, "she moves in May")]),
        ("please note on Noor: tell Ana: hi", [(2, "tell Ana: hi")]),
        ("remember that Noor works nights", [(2, "Noor works nights")]),
        ("note: Noor", []),
        ("note that Ana hates burpees", [(3, "Ana hates burpees")]),
        ("note on nooor: x", [(2, "x")]),
        ("note on Noor and Ana Maria: both in Porto", [(2, "both in Porto"), (3, "both in Porto")]),
        ("note on Noor:\nTrain every day, she says\nnot two days\nnever", [
            (2, "Train every day, she says\nnot two days\nnever")]),
        ("note on Noor: " + "y" * LONGEST, [(2, "y" * LONGEST)]),
        ("note on Noor: " + "y" * (LONGEST + 1), []),
        ("note on Bob: x", []),
        ("tell Noor: note on Ana: x", []),
    ],
)  # fmt: skip
def test_a_note_is_kept_as_it_was_typed(text: str, notes: list[tuple[int, str]]) -> None:
    assert kept(text) == notes


def test_a_note_is_on_whom_the_coach_spoke_of_last() -> None:
    state = remembering(STATE, does(Text(text="how is Ana?")))
    assert kept("note on her: moves in May", state) == [(3, "moves in May")]


@pytest.mark.parametrize(
    ("text", "texts"),
    [
        ("notes on Noor", ["prefers mornings", "likes tea"]),
        ("Noor's notes?", ["prefers mornings", "likes tea"]),
        ("show me my notes on Ana", ["has the gym's keys"]),
        ("what have I noted about Noor?", ["prefers mornings", "likes tea"]),
        ("notes", ["prefers mornings", "likes tea", "has the gym's keys"]),
    ],
)
def test_notes_are_shown_to_the_coach(text: str, texts: list[str]) -> None:
    ((notice,),) = [say.parts for say in does(Text(text=text), NOTED).says]
    assert isinstance(notice, Notice)
    assert [each["text"] for row in notice.facts["noted"] for each in row["notes"]] == texts


@pytest.mark.parametrize(
    ("text", "numbers"),
    [
        ("forget note 1 on Noor", [11]),
        ("delete note 2 on noor", [12]),
        ("delete note 3 on noor", []),
        ("forget the last note on Noor", [12]),
        ("forget all notes on Noor", [11, 12]),
        ("erase my notes about Ana Maria", [13]),
        ("forget note 1 on Bob", []),
        ("forget that note", []),
    ],
)
def test_notes_are_forgotten_in_words(text: str, numbers: list[int]) -> None:
    assert forgotten(text) == numbers


@pytest.mark.parametrize("text", ["forget that note", "delete this note", "undo"])
def test_that_note_is_the_one_just_made(text: str) -> None:
    state = replace(NOTED, memory=CoachMemory(noted_in=6))
    assert forgotten(text, state) == [12]


def test_a_button_forgets_an_own_note_on_an_own_client_only() -> None:
    def pressed(client: int, note: int) -> tuple[list[str], int]:
        action = ForgetNote(client=client, note=note, place=1)
        outcome = does(Pressed(button="1:0", action=action), NOTED)
        return said(outcome), len(outcome.changes)

    assert pressed(2, 11) == (["notes forgotten"], 1)
    assert pressed(2, 13) == (["no such note"], 0)
    assert pressed(99, 11) == (["not your client"], 0)


def test_notes_on_somebody_who_is_no_client_any_more_are_not_shown() -> None:
    state = replace(NOTED, clients=STATE.clients[1:])
    ((notice,),) = [say.parts for say in does(Text(text="notes"), state).says]
    assert isinstance(notice, Notice)
    assert [row["client"] for row in notice.facts["noted"]] == ["Ana Maria"]
