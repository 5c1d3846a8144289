"""Somebody without a role: one polite line, and no data, unless an invitation comes in.

Somebody whose data were erased is one, too: once the last words have arrived, the chat is forgotten as well.
"""

from dataclasses import replace
from datetime import datetime

from domain.erasure import FORGET_AFTER
from domain.incoming import Arrived, CoachOrder, Heard, Reachable, SendingFailed, Started, Text
from domain.memory import ClientMemory, Joining
from domain.outcome import Forgotten, Joined, Outcome
from domain.parts import Notice, Say
from domain.state import Invitation, StrangerState


def hear(state: StrangerState, heard: Heard) -> Outcome:
    """Let in whoever brings a valid invitation; answer everybody else politely.

    A new client is woken at once, and the first thing said then is what the bot is and is not. Who was not
    prepared by a roster is asked the first questions.
    """
    outcome = _hear(state, heard)
    if state.erased_at is not None and outcome.wake_at is None:
        return replace(outcome, wake_at=max(heard.at, state.erased_at) + FORGET_AFTER)
    return outcome


def wake(state: StrangerState, now: datetime) -> Outcome:
    """Forget somebody who was erased, once nothing of it waits to be sent any more."""
    if state.erased_at is None:
        return Outcome()
    if state.is_unsent:
        return Outcome(wake_at=now + FORGET_AFTER)
    return Outcome(changes=(Forgotten(),))


def _hear(state: StrangerState, heard: Heard) -> Outcome:
    match heard.incoming:
        case Started() | Text():
            pass
        case Reachable() | SendingFailed() | Arrived() | CoachOrder():
            return Outcome()
        case _:
            return _turn_away(state)
    invitation = state.invitation
    if invitation is None:
        return _turn_away(state)
    if not invitation.is_open(heard.at):
        return _answer(state, Notice(topic="invitation is over"))
    return _let_in(state, invitation, heard)


def _turn_away(state: StrangerState) -> Outcome:
    return _answer(state, Notice(topic="stranger" if state.erased_at is None else "erased before"))


def _answer(state: StrangerState, notice: Notice) -> Outcome:
    return Outcome(says=(Say(to=state.number, parts=(notice,)),))


def _let_in(state: StrangerState, invitation: Invitation, heard: Heard) -> Outcome:
    joined = Joined(invitation, heard.at)
    to = invitation.person if invitation.person is not None else state.number
    if invitation.as_coach or invitation.coach is None:
        welcome = Notice(topic="welcome coach", facts={"name": invitation.name})
        says = [Say(to=to, parts=(welcome,))]
        if invitation.coach is not None:
            news = Notice(topic="coach joined", facts={"name": invitation.name})
            says.append(Say(to=invitation.coach.number, parts=(news,)))
        return Outcome(changes=(joined,), says=tuple(says))
    is_prepared = invitation.person is not None
    facts = {"client": invitation.name, "is_asked": not is_prepared}
    news = Notice(topic="client joined", facts=facts)
    return Outcome(
        changes=(joined,),
        says=(Say(to=invitation.coach.number, parts=(news,)),),
        memory=None if is_prepared else ClientMemory(joining=Joining()),
        wake_at=heard.at,
    )
