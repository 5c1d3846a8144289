"""Invitations that a coach makes: a client to one of the programmes."""

import re
from datetime import timedelta

from domain.coach.draft import Draft, plain
from domain.coach.programmes import only_programme, programme_named, programme_names
from domain.outcome import Invited
from domain.state import Invitation

INVITATION_LASTS = timedelta(days=14)

_INVITE = re.compile(r"invite (?P<name>.{1,60}?)(?: (?:to|on|onto) (?P<programme>.{1,80}))?", re.IGNORECASE)


def take_invitation(draft: Draft, said: str) -> bool:
    """Make the invitation that is asked for; return whether one was."""
    found = _INVITE.fullmatch(said)
    if found is None:
        return False
    invite(draft, found["name"], found["programme"])
    return True


def invite(draft: Draft, name: str, programme: str | None) -> None:
    """Make an invitation for one person, to one of the coach's programmes."""
    state = draft.state
    chosen = programme_named(draft, programme) if programme else only_programme(draft)
    if chosen is None:
        draft.notice("which programme", names=programme_names(draft))
        return
    if plain(name) in {plain(line.name) for _, line in state.clients}:
        draft.notice("name is taken", name=name)
        return
    invitation = Invitation(
        code=state.fresh_code,
        name=name,
        expires=draft.at + INVITATION_LASTS,
        coach=state.coach,
        programme=chosen,
    )
    draft.change(Invited(invitation))
    draft.notice(
        "invited",
        name=name,
        code=state.fresh_code,
        programme=chosen.programme.name,
        days=INVITATION_LASTS.days,
    )
