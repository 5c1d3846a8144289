"""Clients are put on a programme only after what changes for each was shown; and it can be undone for all."""

from dataclasses import replace

import pytest

from domain.actions import Answer, TakeBackAll
from domain.incoming import Assigned, Pressed, Text, Undone
from domain.outcome import Order, Outcome
from domain.parts import Question
from domain.state import CoachState, Standing, StoredProgramme
from tests.domain.client.people import SHEET, stored
from tests.domain.coach.test_hearing import MARA, STATE, does, noor, remembering, said

OLD = stored(SHEET.replace("Hammer curl, 8-12", "Hammer curl, 6-8"), number=5)
NEW = StoredProgramme(number=7, version=2, programme=stored().programme)
LIGHT = stored(SHEET.replace("Harbour Base", "Harbour Light"), number=8)
ROWS = (("Pull", "Seated cable row"),)
FOUR = replace(
    STATE,
    clients=((2, noor()), (3, noor("Piet")), (4, noor("Ana")), (5, noor("Sami"))),
    programmes=(NEW, LIGHT),
    standings={
        2: Standing(OLD, ROWS, (("Hammer curl", "Cable curl"),)),
        3: Standing(OLD),
        4: Standing(NEW),
        5: Standing(LIGHT),
    },
)


def question(outcome: Outcome) -> Question:
    (found,) = (part for say in outcome.says for part in say.parts if isinstance(part, Question))
    return found


def given(client: int, *, programme: int = 7, to_several: bool = False) -> Order:
    return Order(client, Assigned(coach=1, programme=programme, change=1, to_several=to_several))


@pytest.mark.parametrize(
    ("text", "who"),
    [
        ("put Noor on Harbour Base", ["Noor"]),
        ("put Noor and Piet on harbour base", ["Noor", "Piet"]),
        ("move all on an older version to Harbour Base", ["Noor", "Piet"]),
        ("update everyone on an old version", ["Noor", "Piet"]),
        ("update Noor to harbour base", ["Noor"]),
        ("move everyone to the new version of harbour base", ["Noor", "Piet"]),
        ("put everyone on Harbour Base", ["Noor", "Piet", "Sami"]),
    ],
)
def test_what_changes_is_shown_and_nothing_is_done_yet(text: str, who: list[str]) -> None:
    outcome = does(Text(text=text), FOUR)
    assert outcome.orders == ()
    asked = question(outcome)
    assert [name for group in asked.facts["groups"] for name in group["clients"]] == who
    assert [button.text for button in outcome.says[0].buttons if isinstance(button, Answer)] == [
        "Change it",
        "Leave it",
    ]


def test_clients_who_come_from_the_same_sheet_are_shown_together_with_whose_history_goes_on() -> None:
    facts = question(does(Text(text="put everyone on Harbour Base"), FOUR)).facts
    first, second = facts["groups"]
    assert [each["after"]["range"]["low"] for each in first["changes"]["changed"]] == [8]
    assert [(each["clients"], each["history"]["goes_on"]) for each in first["histories"]] == [
        (["Noor"], ["Seated cable row"]),
        (["Piet"], []),
    ]
    assert first["swaps"] == [{"client": "Noor", "exercise": "Hammer curl", "instead": "Cable curl"}]
    assert second["before"] == "Harbour Light"


@pytest.mark.parametrize("answer", ["Change it", "yes", "ok"])
def test_one_is_changed_on_a_yes(answer: str) -> None:
    asked = does(Text(text="put Noor on Harbour Base"), FOUR)
    outcome = does(Text(text=answer), remembering(FOUR, asked))
    assert outcome.orders == (given(2),)


@pytest.mark.parametrize("answer", ["Leave it", "no"])
def test_nobody_is_changed_on_a_no(answer: str) -> None:
    asked = does(Text(text="put Noor on Harbour Base"), FOUR)
    outcome = does(Text(text=answer), remembering(FOUR, asked))
    assert (outcome.orders, said(outcome)) == ((), ["programmes left"])


def both_changed() -> tuple[Outcome, CoachState]:
    asked = does(Text(text="put Noor and Piet on Harbour Base"), FOUR)
    state = remembering(FOUR, asked)
    yes = next(each for each in asked.says[0].buttons if isinstance(each, Answer))
    outcome = does(Pressed(button="1:0", action=yes), state)
    return outcome, remembering(state, outcome)


def test_several_are_changed_and_told_of_at_once_with_one_button_to_undo_it() -> None:
    outcome, _ = both_changed()
    assert outcome.orders == (given(2, to_several=True), given(3, to_several=True))
    assert said(outcome) == ["programme given to several"]
    assert outcome.says[0].buttons == (TakeBackAll(clients=(2, 3), change=1),)


UNDONE = tuple(Order(each, Undone(coach=1, change=1, to_several=True)) for each in (2, 3))


def test_it_is_undone_for_all_by_the_button_or_in_words() -> None:
    outcome, state = both_changed()
    (button,) = outcome.says[0].buttons
    assert does(Pressed(button="1:0", action=button), state).orders == UNDONE
    assert does(Text(text="undo"), state).orders == UNDONE


def test_a_button_undoes_nothing_for_somebody_elses_client() -> None:
    button = TakeBackAll(clients=(2, 99), change=1)
    outcome = does(Pressed(button="1:0", action=button), FOUR)
    assert [order.to for order in outcome.orders] == [2]


def test_who_is_on_it_already_is_left_alone() -> None:
    outcome = does(Text(text="put Ana on Harbour Base"), FOUR)
    assert (outcome.orders, said(outcome)) == ((), ["on it already"])


def test_who_has_no_programme_yet_is_put_on_it_at_once() -> None:
    state = replace(FOUR, standings={})
    assert does(Text(text="put Noor on Harbour Base"), state).orders == (given(2),)


def test_a_sheet_that_was_stored_anew_meanwhile_is_not_the_one_that_was_shown() -> None:
    asked = does(Text(text="put Noor on Harbour Base"), FOUR)
    newer = replace(NEW, number=9, version=3)
    state = replace(remembering(FOUR, asked), programmes=(newer, LIGHT))
    outcome = does(Text(text="yes"), state)
    assert (outcome.orders, said(outcome)) == ((), ["newer version since"])


def test_nobody_is_on_an_older_version() -> None:
    state = replace(FOUR, standings={4: Standing(NEW)})
    assert said(does(Text(text="move all on an older version to Harbour Base"), state)) == ["nobody on older"]


def test_a_new_version_of_a_sheet_offers_to_show_what_changes() -> None:
    asked = does(Text(text=SHEET), FOUR)
    outcome = does(Text(text="yes"), remembering(FOUR, asked))
    assert [getattr(each, "text", "") for each in outcome.says[0].buttons] == [
        "Move all on an older version to Harbour Base"
    ]
    assert MARA.number == outcome.says[0].to
