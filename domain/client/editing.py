"""Edited messages: read again; what they had recorded, asked or answered gives way to what they say now."""

from collections.abc import Sequence

from domain.client.acting import act_on, answer_nothing
from domain.client.draft import Draft
from domain.client.questions import take_pressed
from domain.client.recording import take_back
from domain.client.understanding import came_of, understand, understand_of
from domain.client.unfinished import answer_anew, forget_unfinished
from domain.client.weighing import weigh_again
from domain.client.why import answer_why, why_of
from domain.incoming import Edited
from domain.journal import Entry
from domain.reading import Reading
from domain.understood import Understood
from domain.values import facts_of


def hear_edit(draft: Draft, edited: Edited) -> Understood | None:
    """Read an edited message again; what it had recorded gives way to what it says now.

    What had been taken back is not taken back twice. Returns what the message was taken for, None where its
    words are the same.
    """
    if edited.original is None or edited.before == edited.text:
        return None
    if answer_edited(draft, edited):
        return Understood("an answer", Reading())
    if weigh_again(draft, edited.original, edited.text):
        return Understood("a setting", Reading())
    message = draft.message = edited.original
    draft.reply = edited.reply
    replaced = came_of(draft.state, message, edited.places)
    kept = {entry.number for entry in draft.state.entries}
    old = tuple(entry for entry in replaced if is_old(draft, entry, edited.places))
    put_right_since = tuple(entry for entry in replaced if entry.message != message)
    take_back(draft, [entry for entry in replaced if entry not in {*old, *put_right_since}])
    forget_unfinished(draft, message)
    draft.settle(*(alert for alert in draft.state.alerts if alert.evidence.get("message") == message))
    asked = why_of(draft, edited.text)
    if asked is not None and not asked.said_before and not replaced and answer_why(draft, asked):
        return Understood("a question after reasons", Reading())
    before = understand(draft, edited.before or "")
    again = tuple(entry for entry in draft.state.entries if entry.number not in kept)
    reading = understand_of(draft, edited.text, (*again, *old, *put_right_since) or answered(draft))
    if reading is None or "correct" not in reading.wants:
        take_back(draft, put_right_since, whole=True)
    reading = reading or understand(draft, edited.text)
    if replaced:
        draft.notice("read again")
    if replaced and not reading.sets:
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
        return Understood("nothing known", reading)
    return Understood("a report", reading)


def is_old(draft: Draft, entry: Entry, places: Sequence[int]) -> bool:
    """Return whether an entry puts right one of which it is no longer known how it was; that one stays right.

    `places` are those of the entries that its message was the first to record.
    """
    undone = {each.entry for each in draft.memory.put_right}
    was_first = entry.place is None or entry.place in places
    return not was_first and entry.message == draft.message and entry.number not in undone


def answered(draft: Draft) -> tuple[Entry, ...]:
    """Return the entries that the message answered has recorded; none where no message is answered."""
    reply = draft.reply
    return () if reply is None else came_of(draft.state, reply.message, reply.places)


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
