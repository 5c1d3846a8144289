"""What a client's message comes to. One message in, one answer out."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import timedelta
from itertools import compress
from typing import assert_never

from domain.actions import Answer, Treat, Words
from domain.client import orders
from domain.client.draft import Draft
from domain.client.pain import fine_again, hold_for_pain, warn
from domain.client.questions import take_pressed, take_typed
from domain.client.recording import correct, enter, record, supersede, take_back
from domain.client.rotation import keep_due
from domain.client.settings import take_setting
from domain.client.stalls import IT_HURTS
from domain.client.understanding import known, says_a_day, understand
from domain.client.unfinished import answer_anew, ask_about, ask_again, forget_unfinished
from domain.client.waking import is_to_remind, next_wake, remind_beside
from domain.client.wants import do
from domain.courtesies import is_courtesy
from domain.incoming import (
    Assigned,
    CardWanted,
    Decided,
    Document,
    Edited,
    Heard,
    HoldEnded,
    Pressed,
    Reachable,
    SendingFailed,
    Started,
    Text,
    Told,
    Unsupported,
)
from domain.outcome import Outcome
from domain.parts import Notice
from domain.reading import Pain, Reading, Want
from domain.sets import TrainingSet, is_within_reason
from domain.state import ClientState
from domain.values import facts_of

COMMANDS = {
    "/plan": "what's the plan today?",
    "/history": "show my history",
    "/undo": "undo",
    "/help": "help",
    "/stop": "stop the reminders",
}
"""The chat's menu; each command is the same as saying the words beside it."""


ANSWERS_COACH_WITHIN = timedelta(days=2)
"""For how long words with nothing to do in them can be an answer to the coach. The house's own choice."""


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
        case Decided() | Told() | Assigned() | CardWanted() | HoldEnded() as order:
            orders.carry_out(draft, order)
        case SendingFailed():
            orders.reachable(draft, reachable=False)
        case _:
            assert_never(heard.incoming)
    if is_to_remind(draft.state, draft.at) and not is_to_remind(state, draft.at):
        remind_beside(draft)
    keep_due(draft)
    return draft.outcome(next_wake(draft.state, draft.at))


def hear_words(draft: Draft, text: str) -> None:
    """Decide on something typed: a warning sign first, then an answer awaited, then everything else."""
    text = COMMANDS.get(text.strip().casefold(), text)
    reading = understand(draft, text)
    if not (reading.urgent or reading.pain) and take_typed(draft, text, reading.names):
        return
    if take_setting(draft, text):
        return
    act_on(draft, reading, text, draft.message)
    if draft.is_empty and not fine_again(draft, reading, text) and not answer_coach(draft, text):
        answer_nothing(draft, text)
    elif reading.sets and draft.memory.barred and not reading.urgent:
        draft.notice("barred", coach=draft.client.coach.name)


def answer_coach(draft: Draft, text: str) -> bool:
    """Pass on the first words with nothing to do in them since the coach wrote; return whether they were.

    An answer of a word is an answer too; some days later it hardly is one.
    """
    told_at = draft.memory.told_at
    if told_at is None or not any(sign.isalnum() for sign in text):
        return False
    draft.remember(told_at=None)
    if draft.at - told_at > ANSWERS_COACH_WITHIN:
        return False
    draft.tell_coach(Notice(topic="client answers", facts={"client": draft.client.name, "text": text}))
    draft.notice("passed on", coach=draft.client.coach.name)
    return True


def act_on(
    draft: Draft,
    reading: Reading,
    text: str,
    message: int,
    *,
    wants: Sequence[Want] | None = None,
    places: Sequence[int] = (),
) -> None:
    """Do all that a reading holds, the urgent first. A warning sign gets no talk of training beside it.

    `wants` are those to do where that is not all; `places` those of the sets that the new ones replace.
    """
    named = tuple(dict.fromkeys(each.exercise for each in reading.sets))
    if reading.urgent:
        keep_sets(draft, reading, message, places, silently=True)
        warn(draft, text, reading.pain)
        return
    if reading.pain:
        # Before the sets are answered, so that nothing is aimed for on what hurts.
        hold_for_pain(draft, text, reading.pain, named or reading.skips or reading.names)
    keep_sets(draft, reading, message, places)
    for want in reading.wants if wants is None else wants:
        do(draft, want, reading, text, named or reading.names)
    if reading.open:
        ask_about(draft, reading, text, message)
    elif reading.sets:
        ask_again(draft)
    if reading.cut:
        draft.notice("cut")


def keep_sets(
    draft: Draft, reading: Reading, message: int, places: Sequence[int] = (), *, silently: bool = False
) -> None:
    """Record the sets of a reading, or put recorded ones right with them; nothing that is out of reason."""
    sensible = [is_within_reason(each) for each in reading.sets]
    if not all(sensible) and not silently:
        draft.notice("out of reason")
    if not any(sensible):
        return
    if "correct" in reading.wants:
        entries = known(draft.state)
        pairs = [(entries[index], right) for index, right in zip(reading.replaces, reading.sets, strict=True)]
        (supersede if silently else correct)(draft, list(compress(pairs, sensible)), message)
    else:
        sets = tuple(compress(dated(reading), sensible))
        (enter if silently else record)(draft, sets, message, places)


def dated(reading: Reading) -> tuple[TrainingSet, ...]:
    """Return the sets of a reading, with their day only where the client has said one."""
    if says_a_day(reading):
        return reading.sets
    return tuple(replace(each, on=None) for each in reading.sets)


def hear_edit(draft: Draft, edited: Edited) -> None:
    """Read an edited message again; what it had recorded gives way to what it says now.

    What had been taken back is not taken back twice.
    """
    if edited.original is None:
        hear_words(draft, edited.text)
        return
    if edited.before == edited.text:
        return
    if answer_edited(draft, edited):
        return
    message = draft.message = edited.original
    replaced = [entry for entry in draft.state.entries if entry.message == message]
    kept = {entry.number for entry in draft.state.entries}
    take_back(draft, replaced)
    forget_unfinished(draft, message)
    draft.settle(*(alert for alert in draft.state.alerts if alert.evidence.get("message") == message))
    reading = understand(draft, edited.text)
    before = understand(draft, edited.before or "")
    if replaced:
        draft.notice("read again")
    if replaced and not reading.sets:
        again = [entry for entry in draft.state.entries if entry.number not in kept]
        draft.notice(
            "taken back",
            sets=[facts_of(entry.set) for entry in replaced],
            stand=[facts_of(entry.set) for entry in again],
        )
    act_on(
        draft,
        reading,
        edited.text,
        message,
        wants=[want for want in reading.wants if want != "undo" or "undo" not in before.wants],
        places=[entry.order[0] for entry in replaced],
    )
    if draft.is_empty and reading.wants:
        draft.notice("read again")
    elif draft.is_empty:
        answer_nothing(draft, edited.text)


def answer_edited(draft: Draft, edited: Edited) -> bool:
    """Take an edited answer to the question answered last anew; return whether it was one."""
    answered = draft.memory.answered
    if answered is None or answered.message != edited.original:
        return False
    numbers = answer_anew(draft, answered)
    take_back(draft, [entry for entry in draft.state.entries if entry.number in numbers])
    draft.message = answered.message
    draft.notice("read again")
    if not take_pressed(draft, answered.question.number, edited.text):
        act_on(draft, understand(draft, edited.text), edited.text, answered.message)
    return True


def press(draft: Draft, action: Answer | Treat | Words | None) -> None:
    """Decide on a button; one whose question is no longer open is answered kindly."""
    match action:
        case Words(text=text):
            hear_words(draft, text)
        case Answer(question=question, text=text):
            if not take_pressed(draft, question, text):
                press_late(draft, text)
        case Treat() | None:
            draft.notice("button is not yours")
        case _:
            assert_never(action)


def press_late(draft: Draft, text: str) -> None:
    """Answer a button whose question is no longer open; but pain counts at any time."""
    if text == IT_HURTS:
        hold_for_pain(draft, text, (Pain(where="other"),), ())
    else:
        draft.notice("button is old")


def answer_nothing(draft: Draft, text: str) -> None:
    """Answer a message in which there was nothing to do."""
    letters = [sign for sign in text if sign.isalpha()]
    if any(sign.isdigit() for sign in text):
        draft.notice("no set found")
    elif is_courtesy(text):
        draft.notice("heard")
    elif not letters:
        draft.notice("nothing to read")
    elif not any(letter.isascii() for letter in letters):
        draft.notice("other script")
    else:
        draft.notice("nothing recorded")
