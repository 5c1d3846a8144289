"""Buttons for what is likely next: they follow from what the answer says."""

from collections.abc import Iterator

from domain.actions import Answer, Words
from domain.client.draft import Draft
from domain.client.leads_to import HERE_AGAIN, LEADS_TO, NEXT, OVER, PICTURE, TOMORROW, UNDO
from domain.client.rotation import due, open_workout, under_way
from domain.parts import Notice, Nudge, Part, Plan, TargetPart, VerdictPart

WHY = Words(text="Why?")
CANNOT = Words(text="Can't today", once=True)
NOT_NOW = Words(text="Not now", once=True)
CUES = Words(text="Cues")
FORGET_IT = Words(text="Never mind", once=True)

MOST_BUTTONS = 4
"""How many buttons for what is likely stand under an answer at most. The house's own choice."""


def offer_likely(draft: Draft) -> None:
    """Offer what is likely next; nothing beside a question, a caution, or while there is no training.

    What an answer has offered by itself comes first.
    """
    if draft.offers(Answer) or draft.has_caution or draft.memory.barred or draft.memory.joining is not None:
        return
    likely = (button for part in draft.parts for button in likely_after(part, draft))
    of_use = dict.fromkeys(button for button in likely if leads_on(button, draft))
    draft.offer(*list(of_use)[: max(0, MOST_BUTTONS - draft.offered)])


def leads_on(button: Words, draft: Draft) -> bool:
    """Return whether that can be had just now, and is not said by the answer itself."""
    if button == NEXT:
        return not draft.says(Plan) and (
            due(draft.state, draft.today) is not None or under_way(draft.state, draft.today) is not None
        )
    if button == HERE_AGAIN:
        return draft.memory.paused or draft.memory.pause_ahead is not None
    if button == PICTURE:
        return bool(draft.state.entries)
    return True


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
            yield TOMORROW
        case Notice(topic="passed on" | "no cues") if any(
            each.reason == "question" and each.at == draft.at for each in draft.state.alerts
        ):
            yield FORGET_IT
        case Notice(topic="what this is", facts=facts) if facts["about"] != ["what"]:
            yield Words(text="Send me my data")
        case Notice(topic="history" | "done last", facts=facts):
            yield Words(text=f"Picture of {facts['exercise']}")
        case Notice(topic="best", facts=facts) if len(facts["rows"]) == 1:
            yield Words(text=f"Picture of {facts['rows'][0]['exercise']}")
        case Notice(topic=topic):
            yield from LEADS_TO.get(topic, ())
        case _:
            return
