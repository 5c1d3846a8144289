"""What lies behind what the bot says to a coach: why a matter is brought, and what an overview goes by."""

from typing import Any

from bot.markup import plain
from bot.wording.alerts import alert_words
from bot.wording.overview import kinds_of, urgency
from bot.wording.reader import listed
from domain.client.orders import BACK_FROM_PAIN, LIGHTEN_TO
from domain.journal import AlertReason
from domain.parts import About, AlertPart, Digest, Notice
from domain.reach import Reach

Told = tuple[str, str]
"""A head, and its words."""

BROUGHT_BECAUSE: dict[AlertReason, str] = {
    "stall": "There is no gain any more, by the rule of the sheet or by all workouts that can be held "
    "against each other; a single bad day is not enough.",
    "review": "The rounds are done after which the sheet asks for a look back.",
    "pain": "The client wrote of pain. That waits for nobody's hours, and what is set aside waits for you.",
    "urgent": "A warning sign was found in what the client wrote. That waits for nobody's hours.",
    "missed": "Workouts were due of which nothing was reported, or training was put off again and again.",
    "question": "The client asked for you, or something that the bot does not answer by itself.",
    "unreachable": "A message could not be delivered, and the platform says that no other can be.",
}
"""Why a matter is brought to the coach."""

IN_ORDER = (
    "Warning signs and pain come first, then stalls, who cannot be reached, what is still aside, questions, "
    "missed workouts, reviews, and who waits to begin; of two alike, the one with more that waits."
)
COMPARED = "Each exercise against its last time in the same workout, where the two can be compared."

_ABOUT_ONE: dict[About, frozenset[AlertReason]] = {
    "trains": frozenset(),
    "stalled": frozenset({"stall"}),
    "hurts": frozenset({"pain", "urgent"}),
    "missed": frozenset({"missed"}),
    "asked": frozenset({"question"}),
    "review": frozenset({"review"}),
    "new": frozenset(),
    "away": frozenset(),
}
"""Which matters an overview tells of that is about one thing only."""


def behind_alert(part: AlertPart) -> list[Told]:
    """Return why it was brought to the coach, and what evidence there is besides what the message says."""
    said = plain(alert_words(part)).split("\n")
    full = plain(alert_words(part.model_copy(update={"full": True}))).split("\n")
    evidence = [("Evidence", line) for line in full if line not in said]
    return [(f"Alert: {part.reason}", BROUGHT_BECAUSE[part.reason]), *evidence]


def behind_digest(part: Digest) -> list[Told]:
    """Return why each client stands in an overview, what its order goes by, and what its numbers count."""
    told = []
    waiting = [line for line in sorted(part.clients, key=urgency) if kinds_of(line)]
    for reason, because in BROUGHT_BECAUSE.items():
        names = [line.name for line in waiting if any(kind == reason for kind, _ in line.open_alerts)]
        if names and reason in _ABOUT_ONE.get(part.about, BROUGHT_BECAUSE):
            told.append((f"{reason.capitalize()}: {listed(names)}", because))
    if len(waiting) > 1 and part.about == "all":
        told.append(("In order", IN_ORDER))
    if part.numbers is not None:
        counts = part.numbers.counts
        compared = counts.beat + counts.level + counts.below
        share = f" Beaten: {counts.beat} of {compared}." if compared else ""
        told.append(("Exercises", f"{COMPARED}{share}"))
    return told


def behind_reach(part: Reach) -> list[Told]:
    """Return whom words to several have reached."""
    return [("Reached", listed(list(part.reached)))] if part.reached else []


def behind_notice(part: Notice) -> list[Told]:
    """Return the numbers of what a coach's decision came to, where the message does not say them."""
    facts: dict[str, Any] = part.facts
    match part.topic, facts.get("what"), facts.get("remedy"):
        case "changed", str(), _ if facts.get("before"):
            return [("Before", str(facts["before"]))]
        case "settled", _, "lighten":
            return [
                (
                    "Lighter",
                    f"The next time begins with {LIGHTEN_TO:.0%} of the last load, and is built back.",
                )
            ]
        case "settled", _, "lift hold":
            return [("Lighter", f"After pain it begins with {BACK_FROM_PAIN:.0%} of the last load at most.")]
        case _:
            return []
