"""Edited messages: read again; what they had recorded, asked or answered gives way to what they say now."""

from domain.client.acting import act_on, answer_nothing
from domain.client.draft import Draft
from domain.client.questions import take_pressed
from domain.client.recording import take_back
from domain.client.understanding import understand
from domain.client.unfinished import answer_anew, forget_unfinished
from domain.incoming import Edited
from domain.values import facts_of


def hear_edit(draft: Draft, edited: Edited) -> None:
    """Read an edited message again; what it had recorded gives way to what it says now.

    What had been taken back is not taken back twice.
    """
    if edited.original is None or edited.before == edited.text or answer_edited(draft, edited):
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
