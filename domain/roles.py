"""In which role a coach says something who trains, too: about the own training, or about clients.

Both decisions are pure, so both are made, and what each would come to tells which is meant: whoever names a
client, or asks what only a coach can, is the coach; numbers that read as a set, and what hurts, are of the
own training. What either could understand is of the role just spoken in, and otherwise it is asked.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Literal

from domain import client, coach
from domain.actions import Role
from domain.client.draft import SET_SLOTS
from domain.client.not_understood import ANSWERED_WITHIN
from domain.coach.naming import ClientNames
from domain.coach.sheets import looks_like_sheet
from domain.coach_memory import CoachMemory
from domain.expressions import Expression
from domain.incoming import Edited, Heard, Text
from domain.memory import ClientMemory
from domain.outcome import HoldPlaced, Outcome, Recorded, SettingsKept, TakenBack
from domain.parts import Notice, Part, Question, Safety, Urgent
from domain.reading.message import message_of
from domain.state import BothState
from domain.topics import Topic

AS_CLIENT, AS_COACH = "My own training", "As a coach"

GOES_ON_FOR = timedelta(hours=1)
"""For how long what is unclear is of the role spoken in last. The house's own choice."""

Grasp = Literal["no", "weak", "clear", "strong"]
"""How well a role could understand something: not at all; as words to be passed on, or a courtesy; as a
request; as a set or a pain."""

NOT_UNDERSTOOD: frozenset[Topic] = frozenset(
    {
        "no set found",
        "nothing recorded",
        "nothing to read",
        "say it again",
        "other script",
        "coach unsure",
        "coach lost",
        "unknown client",
        "button is old",
    }
)
KIND_WORDS: frozenset[Topic] = frozenset({"heard", "thanked", "passed on"})

_IT_IS = r"(?:(?:it(?:'s| is)|that(?:'s| is| was)?|this is) )?"
_OWN = Expression(
    rf"{_IT_IS}(?:of |for )?(?:my (?:own )?(?:training|set|sets|workout)|mine|me|my own|own|own training|"
    r"myself|client|as a client|training)[ .!]*"
)
_AS_COACH = Expression(
    rf"{_IT_IS}(?:said )?(?:as (?:a |the )?)?(?:coach|coaching|a client|for a client|of a client|my clients?|"
    r"clients?)[ .!]*"
)


def role_chosen(text: str) -> Role | None:
    """Return the role that an answer names; None where it names none."""
    said = " ".join(text.casefold().replace("’", "'").split())
    if said == AS_CLIENT.casefold() or _OWN.fullmatch(said):
        return "client"
    return "coach" if said == AS_COACH.casefold() or _AS_COACH.fullmatch(said) else None


@dataclass(frozen=True, slots=True)
class Weighed:
    """What something said could be: how well each role grasps it, whether a client is named, and the role
    whose question it answers."""

    own: Grasp
    coaching: Grasp
    names_client: bool
    answers: Role | None


def role_of_words(state: BothState, heard: Heard) -> Role | None:
    """Return the role in which something was typed; None where that is to be asked."""
    return decided(weigh(state, heard), _spoken_last(state, heard))


def decided(weighed: Weighed, last: Role | None) -> Role | None:
    """Return the role that what was weighed is of; `last` is the one in which was just spoken, if one was."""
    own, coaching = weighed.own, weighed.coaching
    if weighed.names_client:
        return None if own == "strong" and coaching in {"no", "weak"} else "coach"
    if weighed.answers is not None:
        other = own if weighed.answers == "coach" else coaching
        return None if other == "strong" else weighed.answers
    if own == "strong":
        return None if coaching == "strong" else "client"
    if coaching == "strong":
        return "coach"
    if own == coaching == "clear":
        return last
    if "clear" in {own, coaching}:
        return "client" if own == "clear" else "coach"
    return last or "coach"


def weigh(state: BothState, heard: Heard) -> Weighed:
    """Return what something typed could be, by what each role would make of it."""
    text = heard.incoming.text if isinstance(heard.incoming, Text | Edited) else ""
    mine, theirs = client.hear(state.client, heard), coach.hear(state.coach, heard)
    own, coaching = own_grasp(state, mine), coaching_grasp(state, theirs, text)
    number = state.coach.coach.number
    reply = heard.incoming.reply if isinstance(heard.incoming, Text) else None
    others = [(each, line.name) for each, line in state.coach.clients if each != number]
    is_named = bool(ClientNames(others).find(message_of(text)))
    return Weighed(
        own=own,
        coaching=coaching,
        names_client=is_named or (reply is not None and reply.client not in {None, number}),
        answers=answered(
            to_client=_asked_client(state, mine, heard) if own in {"clear", "strong"} else None,
            to_coach=_asked_coach(state, theirs) if coaching != "no" else None,
        ),
    )


def own_grasp(state: BothState, outcome: Outcome) -> Grasp:
    """Return how well something is grasped as said of the own training."""
    parts = [part for say in outcome.says if say.to == state.client.client.number for part in say.parts]
    if any(isinstance(each, Recorded | TakenBack | HoldPlaced) for each in outcome.changes):
        return "strong"
    if any(isinstance(part, Safety | Urgent) for part in parts):
        return "strong"
    if any(isinstance(part, Question) and part.slot in SET_SLOTS for part in parts):
        return "strong"
    joining = state.client.memory.joining
    if joining is not None and any(isinstance(part, Question) and part.slot == "joining" for part in parts):
        after = outcome.memory.joining if isinstance(outcome.memory, ClientMemory) else joining
        if after is not None and after.settled == joining.settled:
            return "weak"
    return _grasp(parts, did=any(isinstance(change, SettingsKept) for change in outcome.changes))


def coaching_grasp(state: BothState, outcome: Outcome, text: str) -> Grasp:
    """Return how well something is grasped as said by the coach."""
    if looks_like_sheet(text):
        return "strong"
    parts = [part for say in outcome.says if say.to == state.coach.coach.number for part in say.parts]
    return _grasp(parts, did=bool(outcome.orders or outcome.changes))


def _grasp(parts: Sequence[Part], *, did: bool) -> Grasp:
    topics = {part.topic for part in parts if isinstance(part, Notice)}
    if topics & NOT_UNDERSTOOD:
        return "no"
    if topics & KIND_WORDS:
        return "weak"
    return "clear" if did or parts else "no"


def answered(to_client: datetime | None, to_coach: datetime | None) -> Role | None:
    """Return the role whose question is answered, by when each was asked; of two, the later one."""
    if to_client is None or to_coach is None:
        return "client" if to_client is not None else "coach" if to_coach is not None else None
    return "coach" if to_coach >= to_client else "client"


def _asked_coach(state: BothState, outcome: Outcome) -> datetime | None:
    """Return when the question was asked that the coach's decision has taken as answered."""
    before = state.coach.memory
    after = outcome.memory if isinstance(outcome.memory, CoachMemory) else before
    asked = [each for each in (before.waiting, before.who) if each is not None]
    return max((each.asked_at for each in asked if each not in (after.waiting, after.who)), default=None)


def _asked_client(state: BothState, outcome: Outcome, heard: Heard) -> datetime | None:
    """Return when the question was asked that the client's decision has taken as answered."""
    after = outcome.memory if isinstance(outcome.memory, ClientMemory) else state.client.memory
    left = {each.number for each in after.questions}
    return max(
        (
            each.asked_at
            for each in state.client.memory.questions
            if each.number not in left and heard.at - each.asked_at <= ANSWERED_WITHIN
        ),
        default=None,
    )


def _spoken_last(state: BothState, heard: Heard) -> Role | None:
    last = state.coach.memory.last_role
    return last.role if last is not None and heard.at - last.at <= GOES_ON_FOR else None
