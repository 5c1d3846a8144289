"""A client who becomes a coach as well, by a coach's invitation; the training goes on as before."""

from domain.client.draft import Draft
from domain.outcome import Joined
from domain.parts import Notice


def take_up_as_coach(draft: Draft) -> bool:
    """Take up the invitation that has just come in, if it makes a coach; return whether there was such."""
    invitation = draft.state.invitation
    if invitation is None or not invitation.as_coach or invitation.person is not None:
        return False
    if not invitation.is_open(draft.at):
        draft.notice("invitation is over")
        return True
    draft.change(Joined(invitation, draft.at))
    draft.notice("welcome coach", name=draft.client.name)
    if invitation.coach is not None:
        draft.tell(invitation.coach.number, Notice(topic="coach joined", facts={"name": draft.client.name}))
    return True
