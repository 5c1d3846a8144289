"""Somebody who is a coach and a client as well: trains by an own sheet, or with another coach.

Each role is decided on as if the person had no other; here it is only told which is meant, and asked where
that is unclear.
"""

from dataclasses import replace
from datetime import datetime
from typing import assert_never

from domain import client, coach
from domain.actions import Action, Answer, InRole, Role, Words
from domain.client.waking import next_wake as client_wakes
from domain.coach.waking import next_wake as coach_wakes
from domain.coach_memory import CoachMemory, LastRole
from domain.incoming import (
    Arrived,
    CoachOrder,
    Document,
    Edited,
    Heard,
    Pressed,
    Reachable,
    SendingFailed,
    Started,
    Text,
    Unsupported,
)
from domain.memory import ClientMemory, KeptWords
from domain.outcome import Outcome
from domain.parts import Question, Say
from domain.roles import role_chosen, role_of_words
from domain.state import BothState
from domain.understood import Understood


def hear(state: BothState, heard: Heard) -> Outcome:
    """Decide on one thing that came in, in the role that is meant."""
    match heard.incoming:
        case CoachOrder() | Reachable():
            return _in_role(state, heard, "client")
        case SendingFailed(person=person):
            return _in_role(state, heard, "client" if person == state.coach.coach.number else "coach")
        case Arrived():
            return _in_role(state, heard, "coach")
        case Document() | Started():
            return _in_role(state, heard, "coach")
        case Unsupported():
            return _in_role(state, heard, _last_role(state) or "coach")
        case Pressed(action=action):
            return _press(state, heard, action)
        case Edited(places=places) if places:
            return _in_role(state, heard, "client", spoken=True)
        case Edited():
            return _in_role(state, heard, role_of_words(state, heard) or "coach", spoken=True)
        case Text(text=text):
            return _hear_words(state, heard, text)
        case _:
            assert_never(heard.incoming)


def wake(state: BothState, now: datetime) -> Outcome:
    """Do what is due at `now` in either role."""
    own, others = client.wake(state.client, now), coach.wake(state.coach, now)
    memory = others.memory if isinstance(others.memory, CoachMemory) else None
    return replace(
        own,
        changes=(*own.changes, *others.changes),
        says=(*own.says, *others.says),
        orders=(*own.orders, *others.orders),
        other_memory=memory,
        wake_at=_earlier(own.wake_at, others.wake_at),
    )


def _press(state: BothState, heard: Heard, action: Action | None) -> Outcome:
    match action:
        case InRole(role=role, text=text):
            said = replace(heard, incoming=Text(text=text))
            return _in_role(state, said, role, spoken=True)
        case Answer(role=role):
            return _in_role(state, heard, role, spoken=True)
        case Words(text=text):
            return _hear_words(state, replace(heard, incoming=Text(text=text)), text)
        case None:
            return _in_role(state, heard, "client")
        case _:
            return _in_role(state, heard, "coach", spoken=True)


def _hear_words(state: BothState, heard: Heard, text: str) -> Outcome:
    kept = state.coach.memory.in_which_role
    chosen = role_chosen(text) if kept is not None else None
    if kept is not None and chosen is not None:
        meant = replace(heard, incoming=Text(text=kept.text))
        return replace(_in_role(state, meant, chosen, spoken=True), understood=Understood("an answer"))
    role = role_of_words(state, heard)
    return _ask(state, heard, text) if role is None else _in_role(state, heard, role, spoken=True)


def _ask(state: BothState, heard: Heard, text: str) -> Outcome:
    """Ask in which role something was said; nothing is done before that is told."""
    number = state.coach.coach.number
    buttons = (
        InRole(role="client", text=text),
        InRole(role="coach", text=text),
    )
    question = Say(to=number, parts=(Question(slot="role", facts={"text": text}),), buttons=buttons)
    kept = KeptWords(message=heard.number, at=heard.at, text=text)
    memory = state.coach.memory.model_copy(update={"in_which_role": kept})
    return Outcome(
        says=(question,),
        memory=memory,
        wake_at=_next_wake(state, heard.at),
        understood=Understood("either role"),
    )


def _in_role(state: BothState, heard: Heard, role: Role, *, spoken: bool = False) -> Outcome:
    """Decide in one role; where the person has `spoken` in it, it is remembered for what is unclear next."""
    own = role == "client"
    outcome = client.hear(state.client, heard) if own else coach.hear(state.coach, heard)
    memory = outcome.memory if isinstance(outcome.memory, CoachMemory) else state.coach.memory
    if spoken:
        last = LastRole(role=role, at=heard.at)
        memory = memory.model_copy(update={"last_role": last, "in_which_role": None})
    other = None if memory == state.coach.memory else memory
    kept = outcome.memory if isinstance(outcome.memory, ClientMemory) else None
    other_wake = coach_wakes(state.coach, heard.at) if own else client_wakes(state.client, heard.at)
    return replace(
        outcome,
        memory=other if kept is None else kept,
        other_memory=None if kept is None else other,
        wake_at=_earlier(outcome.wake_at, other_wake),
    )


def _last_role(state: BothState) -> Role | None:
    last = state.coach.memory.last_role
    return None if last is None else last.role


def _next_wake(state: BothState, now: datetime) -> datetime | None:
    return _earlier(client_wakes(state.client, now), coach_wakes(state.coach, now))


def _earlier(one: datetime | None, other: datetime | None) -> datetime | None:
    return min((each for each in (one, other) if each is not None), default=None)
