"""Somebody without a role: one polite line, and no data, unless an invitation comes in."""

from domain.incoming import Heard, Reachable, Started, Text
from domain.memory import ClientMemory, Joining
from domain.outcome import Joined, Outcome
from domain.parts import Notice, Say
from domain.state import Invitation, StrangerState


def hear(state: StrangerState, heard: Heard) -> Outcome:
    """Let in whoever brings a valid invitation; answer everybody else politely.

    A new client is woken at once, and the first thing said then is what the bot is and is not. Who was not
    prepared by a roster is asked the first questions.
    """
    match heard.incoming:
        case Started() | Text():
            pass
        case Reachable():
            return Outcome()
        case _:
            return _answer(state, Notice(topic="stranger"))
    invitation = state.invitation
    if invitation is None:
        return _answer(state, Notice(topic="stranger"))
    if invitation.used or invitation.expires <= heard.at:
        return _answer(state, Notice(topic="invitation is over"))
    return _let_in(state, invitation, heard)


def _answer(state: StrangerState, notice: Notice) -> Outcome:
    return Outcome(says=(Say(to=state.number, parts=(notice,)),))


def _let_in(state: StrangerState, invitation: Invitation, heard: Heard) -> Outcome:
    joined = Joined(invitation, heard.at)
    to = invitation.person if invitation.person is not None else state.number
    if invitation.as_coach or invitation.coach is None:
        welcome = Notice(topic="welcome coach", facts={"name": invitation.name})
        return Outcome(changes=(joined,), says=(Say(to=to, parts=(welcome,)),))
    is_prepared = invitation.person is not None
    facts = {"client": invitation.name, "is_asked": not is_prepared}
    news = Notice(topic="client joined", facts=facts)
    return Outcome(
        changes=(joined,),
        says=(Say(to=invitation.coach.number, parts=(news,)),),
        memory=None if is_prepared else ClientMemory(joining=Joining()),
        wake_at=heard.at,
    )
