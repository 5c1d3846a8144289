"""What a client's message comes to. One message in, one answer out."""

from itertools import compress
from typing import assert_never

from domain.actions import Answer, Treat, Words
from domain.client import orders
from domain.client.draft import Draft
from domain.client.pain import hold_for_pain, warn
from domain.client.questions import take_answer
from domain.client.recording import correct, record, take_back
from domain.client.rotation import keep_due
from domain.client.settings import take_setting
from domain.client.understanding import known, request_for
from domain.client.unfinished import ask_about
from domain.client.waking import next_wake
from domain.client.wants import do, reopen
from domain.incoming import (
    Assigned,
    CardWanted,
    Decided,
    Document,
    Edited,
    Heard,
    Pressed,
    Reachable,
    SendingFailed,
    Started,
    Text,
    Told,
    Unsupported,
)
from domain.outcome import Outcome
from domain.reading import Reading, read
from domain.sets import is_within_reason
from domain.state import ClientState

COMMANDS = {
    "/plan": "what's the plan today?",
    "/history": "show my history",
    "/undo": "undo",
    "/help": "help",
    "/stop": "stop the reminders",
}
"""The chat's menu; each command is the same as saying the words beside it."""


def hear(state: ClientState, heard: Heard) -> Outcome:
    """Decide on one thing that came in for this client."""
    draft = Draft(state, heard.at, heard.number)
    match heard.incoming:
        case Text(text=text):
            hear_words(draft, text)
        case Edited() as edited:
            hear_edit(draft, edited)
        case Pressed(action=action):
            press(draft, action)
        case Document():
            draft.notice("no file wanted")
        case Started():
            draft.notice("already here")
        case Unsupported(what=what):
            draft.notice("words only", what=what)
        case Reachable(reachable=reachable):
            orders.reachable(draft, reachable=reachable)
        case Decided() | Told() | Assigned() | CardWanted() as order:
            orders.carry_out(draft, order)
        case SendingFailed():
            orders.reachable(draft, reachable=False)
        case _:
            assert_never(heard.incoming)
    keep_due(draft)
    return draft.outcome(next_wake(draft.state, draft.at))


def hear_words(draft: Draft, text: str) -> None:
    """Decide on something typed: a warning sign first, then an answer awaited, then everything else."""
    text = COMMANDS.get(text.strip().casefold(), text)
    reading = read(request_for(draft, text))
    waiting = draft.memory.waiting
    if waiting is not None and not (reading.urgent or reading.pain) and take_answer(draft, waiting, text):
        return
    if take_setting(draft, text):
        return
    if waiting is not None:
        draft.remember(waiting=None)
    act_on(draft, reading, text, draft.message)
    if draft.is_empty:
        answer_nothing(draft, text)
    elif reading.sets and draft.memory.barred and not reading.urgent:
        draft.notice("barred", coach=draft.client.coach.name)


def act_on(draft: Draft, reading: Reading, text: str, message: int) -> None:
    """Do all that a reading holds, the urgent first. A warning sign gets no talk of training beside it."""
    named = tuple(dict.fromkeys(each.exercise for each in reading.sets))
    if reading.urgent:
        quiet = Draft(draft.state, draft.at, draft.message)
        keep_sets(quiet, reading, message)
        draft.take_changes_of(quiet)
        warn(draft, text, reading.pain)
        return
    if reading.pain:
        # Before the sets are answered, so that nothing is aimed for on what hurts.
        hold_for_pain(draft, text, reading.pain, named or reading.skips)
    keep_sets(draft, reading, message)
    for want in reading.wants:
        do(draft, want, reading, text, named or reading.names)
    waiting = draft.memory.waiting
    if reading.asks and (waiting is None or waiting.slot == "trouble"):
        # What a set still lacks goes before the question after a joint: without it the set would be lost.
        ask_about(draft, reading, text)
    if reading.cut:
        draft.notice("cut")


def keep_sets(draft: Draft, reading: Reading, message: int) -> None:
    """Record the sets of a reading, or put recorded ones right with them; nothing that is out of reason."""
    sensible = [is_within_reason(each) for each in reading.sets]
    if not all(sensible):
        draft.notice("out of reason")
    if "correct" in reading.wants:
        entries = known(draft.state)
        pairs = [(entries[index], right) for index, right in zip(reading.replaces, reading.sets, strict=True)]
        correct(draft, list(compress(pairs, sensible)), message)
    elif any(sensible):
        record(draft, tuple(compress(reading.sets, sensible)), message)


def hear_edit(draft: Draft, edited: Edited) -> None:
    """Read an edited message again; what it had recorded gives way to what it says now."""
    if edited.original is None:
        hear_words(draft, edited.text)
        return
    if edited.before == edited.text:
        return
    waiting = draft.memory.waiting
    if waiting is not None and waiting.message == edited.original:
        draft.remember(waiting=None)
    replaced = [entry for entry in draft.state.entries if entry.message == edited.original]
    take_back(draft, replaced)
    reopen(draft, {entry.workout for entry in replaced})
    reading = read(request_for(draft, edited.text))
    draft.message = edited.original
    if replaced:
        draft.notice("read again")
    act_on(draft, reading, edited.text, edited.original)
    if draft.is_empty:
        answer_nothing(draft, edited.text)


def press(draft: Draft, action: Answer | Treat | Words | None) -> None:
    """Decide on a button; one whose question is no longer open is answered kindly."""
    match action:
        case Words(text=text):
            hear_words(draft, text)
        case Answer(question=question, text=text):
            waiting = draft.memory.waiting
            if waiting is None or waiting.number != question or not take_answer(draft, waiting, text):
                draft.notice("button is old")
        case Treat() | None:
            draft.notice("button is not yours")
        case _:
            assert_never(action)


def answer_nothing(draft: Draft, text: str) -> None:
    """Answer a message in which there was nothing to do."""
    letters = [sign for sign in text if sign.isalpha()]
    if any(sign.isdigit() for sign in text):
        draft.notice("no set found")
    elif not letters:
        draft.notice("nothing to read")
    elif not any(letter.isascii() for letter in letters):
        draft.notice("other script")
    else:
        draft.notice("heard")
