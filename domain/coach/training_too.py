"""A coach who trains, too: as another coach's client, by an invitation, or by an own sheet."""

from domain.coach.draft import Draft
from domain.coach.inviting import INVITATION_LASTS
from domain.coach.programmes import ask_programme, only_programme, programme_named
from domain.expressions import Expression
from domain.outcome import Invited, Joined
from domain.parts import Notice
from domain.state import Invitation, StoredProgramme

_WANT = (
    r"(?:(?:please|can you|could you|i want to|i'd like to|i would like to|let me|i'll|i will|i|and|also) )*"
)
_ON = r"(?: (?:(?:on|onto|to|by|with|through|as) )?(?P<programme>.{1,80}?))?"
_TOO = r"(?: too| as well| myself)"
_ME = Expression(
    rf"{_WANT}(?:(?:put|coach|take|invite) me|(?:be|become) (?:a|my own) client){_TOO}?{_ON}{_TOO}?"
)
_TRAIN = Expression(rf"{_WANT}(?:train|work out|follow|do|use|go)(?P<own>{_TOO})?{_ON}(?P<too>{_TOO})?")


def take_up_as_client(draft: Draft) -> None:
    """Let a coach become another coach's client, whose invitation has just come in."""
    invitation = draft.state.invitation
    if invitation is None or invitation.as_coach or invitation.coach is None:
        draft.notice("coach already here", name=draft.state.coach.name)
    elif not invitation.is_open(draft.at) or invitation.person is not None:
        draft.notice("invitation is over")
    elif not draft.state.is_client:
        begin(draft, invitation)
        facts = {"client": draft.state.coach.name, "is_asked": True}
        draft.tell(invitation.coach.number, Notice(topic="client joined", facts=facts))
    else:
        draft.notice("coach already here", name=draft.state.coach.name)


def take_own_training(draft: Draft, said: str) -> bool:
    """Let a coach train by an own sheet; return whether that was wanted."""
    me, trains = _ME.fullmatch(said), _TRAIN.fullmatch(said)
    found = me or trains
    if found is None or draft.state.is_client:
        return False
    name = found["programme"]
    chosen = programme_named(draft, name) if name else only_programme(draft)
    # "follow it" and "do better" are no wish to become a client: it takes "me", or a known programme.
    if me is None and (chosen is None or not (name or found["own"] or found["too"])):
        return False
    if me is None and not (found["own"] or found["too"] or said.startswith(("i ", "i'", "let me "))):
        return False
    if chosen is None:
        ask_programme(draft, "train", {}, named=name)
    else:
        train(draft, chosen)
    return True


def train(draft: Draft, chosen: StoredProgramme) -> None:
    """Let a coach train by an own programme."""
    invitation = Invitation(
        code=draft.state.fresh_code,
        name=draft.state.coach.name,
        expires=draft.at + INVITATION_LASTS,
        coach=draft.state.coach,
        programme=chosen,
    )
    draft.change(Invited(invitation))
    begin(draft, invitation)


def begin(draft: Draft, invitation: Invitation) -> None:
    """Begin to train: the first questions come next, as with any client."""
    draft.change(Joined(invitation, draft.at))
    draft.notice("coach trains", coach=invitation.coach.name if invitation.coach else "")
