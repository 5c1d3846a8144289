"""Buttons for what is likely next: they follow from what the answer says."""

from collections.abc import Iterator

from domain.actions import Answer, Words
from domain.client.draft import Draft
from domain.client.later import ANOTHER_DAY
from domain.client.rotation import open_workout
from domain.parts import Notice, Nudge, Part, Plan, TargetPart, VerdictPart
from domain.topics import Topic

UNDO = Words(text="Undo", once=True)
WHY = Words(text="Why?")
NEXT = Words(text="What's next?")
OVER = Words(text="Done for today", once=True)
CANNOT = Words(text="Can't today", once=True)
NOT_NOW = Words(text="Not now", once=True)
CUES = Words(text="Cues")
FORGET_IT = Words(text="Never mind", once=True)

CAN_BE_UNDONE: frozenset[Topic] = frozenset({"moved", "rest of it moved", "moved away", "paused", "left out"})
"""What has changed the plans, and can be had back as it was."""


def offer_likely(draft: Draft) -> None:
    """Offer what is likely next; nothing beside a question, a caution, or while there is no training."""
    if draft.offers(Answer) or draft.has_caution or draft.memory.barred or draft.memory.joining is not None:
        return
    draft.offer(*(button for part in draft.parts for button in likely_after(part, draft)))


def likely_after(part: Part, draft: Draft) -> Iterator[Words]:
    """Give the buttons for what is likely after one part of an answer."""
    match part:
        case VerdictPart(held=False):
            yield UNDO
            if part.before is not None or draft.says(TargetPart):
                yield WHY
            yield NEXT
            if part.on is None and open_workout(draft.state) is not None:
                yield OVER
        case VerdictPart():
            yield UNDO
        case Plan(on=on, lines=lines) if lines and on == draft.today:
            yield CANNOT
            yield NOT_NOW
            if any(line.cues for line in lines):
                yield CUES
        case Plan(lines=lines) if any(line.cues for line in lines):
            yield CUES
        case Nudge():
            yield CANNOT
            yield Words(text=ANOTHER_DAY, once=True)
        case Notice(topic="taken back"):
            yield NEXT
        case Notice(topic="passed on" | "no cues") if any(
            each.reason == "question" and each.at == draft.at for each in draft.state.alerts
        ):
            yield FORGET_IT
        case Notice(topic="history", facts=facts):
            yield Words(text=f"Picture of {facts['exercise']}")
        case Notice(topic=topic) if topic in CAN_BE_UNDONE:
            yield UNDO
        case _:
            return
