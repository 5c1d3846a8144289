"""What a coach's message comes to. Whatever concerns a client goes by `Draft.order`, which asks who may."""

from typing import assert_never

from domain.actions import (
    Action,
    Answer,
    BringIn,
    ChangeTo,
    ForgetNote,
    InRole,
    Keep,
    Release,
    Show,
    TakeBack,
    TakeBackAll,
    TakeOn,
    Treat,
    Words,
    Write,
)
from domain.authority import has_client
from domain.coach.assigning import answer_assigning, undo_for_all
from domain.coach.draft import Draft
from domain.coach.handing_over import answer_handover, press_keep, press_offer
from domain.coach.notes import press_forget
from domain.coach.old_journals import answer_whose, press_journal, take_journal_file
from domain.coach.replying import takes_reply
from domain.coach.sheets import answer_sheet, looks_like_sheet, take_sheet
from domain.coach.spreading import answer_spreading, note_arrival
from domain.coach.training_too import take_up_as_client
from domain.coach.which_client import take_who
from domain.coach.which_programme import answer_programme
from domain.coach.words import is_for_a_client, obey
from domain.coach.writing import begin_writing, pass_on
from domain.incoming import (
    Arrived,
    Changed,
    CoachOrder,
    Decided,
    Document,
    Edited,
    Heard,
    PictureWanted,
    Pressed,
    Reachable,
    Released,
    SendingFailed,
    Started,
    Text,
    Undone,
    Unsupported,
)
from domain.memory import Waiting
from domain.old_journal import looks_like_a_journal
from domain.outcome import Outcome
from domain.parts import AlertPart
from domain.state import CoachState


def hear(state: CoachState, heard: Heard) -> Outcome:
    """Decide on one thing that came in for this coach."""
    draft = Draft(state, heard.at, heard.number)
    match heard.incoming:
        case Text(text=text, reply=reply):
            if not takes_reply(draft, text, reply):
                hear_words(draft, text)
        case Edited(text=text, before=before):
            if text != before:
                hear_edit(draft, text)
        case Pressed(action=action, under=under):
            if action is not None:
                draft.show_chosen(action, under)
            press(draft, action)
        case Document() as document:
            hear_document(draft, document)
        case Started():
            take_up_as_client(draft)
        case Unsupported(what=what):
            draft.notice("words only", what=what)
        case SendingFailed(person=person):
            say_unreachable(draft, person)
        case Arrived() as arrived:
            note_arrival(draft, arrived)
        case Reachable():
            pass
        case CoachOrder():
            pass
        case _:
            assert_never(heard.incoming)
    return draft.outcome()


def hear_words(draft: Draft, text: str) -> None:
    """Decide on something typed: a sheet, an answer awaited, or one of the coach's requests."""
    waiting = draft.memory.waiting
    if looks_like_sheet(text) and not is_for_a_client(draft, text):
        draft.take_for("a sheet")
        take_sheet(draft, text)
    elif waiting is not None and answers(draft, waiting, text):
        draft.take_for("an answer")
    else:
        obey(draft, text)


def answers(draft: Draft, waiting: Waiting, text: str) -> bool:
    """Take an answer to whether a sheet is right, clients are put on one, one is handed over, whose a journal
    is, or which programme is meant.

    Return False where it is none.
    """
    return (
        answer_sheet(draft, waiting, text)
        or answer_assigning(draft, waiting, text)
        or answer_handover(draft, waiting, text)
        or answer_spreading(draft, waiting, text)
        or answer_whose(draft, waiting, text)
        or answer_programme(draft, waiting, text)
    )


def hear_edit(draft: Draft, text: str) -> None:
    """Read an edited sheet again; nothing else is done a second time because of an edit."""
    if looks_like_sheet(text) and not is_for_a_client(draft, text):
        draft.take_for("a sheet")
        take_sheet(draft, text)
    else:
        draft.take_for("an edit of no sheet")
        draft.notice("edit not taken")


def hear_document(draft: Draft, document: Document) -> None:
    """Take a text file as an old journal, where it has the form of one, else as a sheet."""
    if document.text is None:
        draft.notice("file not taken", name=document.name, fault=document.fault)
    elif looks_like_a_journal(document.name, document.text):
        take_journal_file(draft, document, document.text)
    else:
        take_sheet(draft, document.text)


def press(draft: Draft, action: Action | None) -> None:
    """Decide on a button."""
    coach = draft.number
    match action:
        case Words(text=text) | InRole(text=text):
            hear_words(draft, text)
        case Answer(question=question, text=text):
            answer(draft, question, text)
        case Treat(client=client, alert=alert, remedy=remedy, workouts=workouts):
            draft.order(client, Decided(coach=coach, alert=alert, remedy=remedy, workouts=workouts))
        case Write() as wish:
            if has_client(draft.state, wish.client):
                begin_writing(draft, wish)
            else:
                draft.notice("not your client")
        case Release(client=client):
            draft.order(client, Released(coach=coach))
        case ChangeTo(client=client, wish=wanted):
            draft.order(client, Changed(coach=coach, change=draft.message, wish=wanted))
        case TakeBack(client=client, change=change):
            draft.order(client, Undone(coach=coach, change=change))
        case TakeBackAll(clients=clients, change=change):
            undo_for_all(draft, clients, change)
        case BringIn():
            press_journal(draft, action)
        case Show(client=client, exercise=exercise):
            draft.order(client, PictureWanted(coach=coach, text=exercise or ""))
        case TakeOn():
            press_offer(draft, action)
        case Keep():
            press_keep(draft, action)
        case ForgetNote():
            press_forget(draft, action)
        case None:
            draft.notice("button is not yours")
        case _:
            assert_never(action)


def answer(draft: Draft, question: int, text: str) -> None:
    """Take a button as the answer to the question of that number, as long as it is open."""
    waiting = draft.memory.waiting
    if take_who(draft, text, obey, question):
        return
    fits = waiting is not None and waiting.number == question
    if not fits or waiting is None or not (answers(draft, waiting, text) or pass_on(draft, text)):
        draft.notice("button is old")


def say_unreachable(draft: Draft, person: int) -> None:
    """Say that nothing can be sent to a client any more."""
    for number, line in draft.state.clients:
        if number == person:
            draft.say(AlertPart(reason="unreachable", client=line.name))
