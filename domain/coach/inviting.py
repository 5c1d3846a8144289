"""Invitations that a coach makes, of a client to a programme or of another coach, and takes back."""

import re
from datetime import timedelta

from domain.called import plain, the_one_named
from domain.coach.draft import Draft
from domain.coach.programmes import ask_programme, only_programme, programme_named
from domain.expressions import Expression
from domain.outcome import InvitationRevoked, Invited
from domain.state import Invitation, OpenInvitation, StoredProgramme

INVITATION_LASTS = timedelta(days=14)

_PLEASE = (
    r"(?:(?:oh|ah|ok|okay|hm|hey|hi|so|and|right|well|actually|sorry|no|now)[ ,.!]+)*"
    r"(?:(?:please|can you|could you|can i|i want to|i'd like to|i need to|let's|let us|i need|i'd like|"
    r"i have|i've got|there is|make|give me|get me|send me|create) )*"
)
_COACH = r"(?:(?:a |an |another |one more |a new |a second |the |my )?(?:new |second )?(?:co-?)?coach)"
_COLLEAGUE = rf"(?:{_COACH}|(?:a |another |my )?colleague)"
_BRING = r"(?:invite|bring in|bring|add|get in|get|let in|let|set up|set|sign up|sign)"
_AS_COACH = Expression(
    rf"{_PLEASE}(?:"
    rf"{_BRING} {_COLLEAGUE}(?:[,:]? (?:called |named )?(?P<a>.{{1,60}}))?"
    rf"|{_BRING} (?P<b>.{{1,60}}?),? (?:in |up |on )?(?:as|to be) {_COACH}"
    r"|make (?P<c>.{1,60}?) (?:a|another) (?:new )?(?:co-?)?coach"
    rf"|(?:an? )?(?:invite|invitation|code)(?: code| link)? for {_COACH},? (?:called |named )?"
    r"(?P<d>.{1,60})"
    rf"|{_COACH} invitation for (?P<e>.{{1,60}}))",
    re.IGNORECASE,
)
_TO = r"(?:,? (?:to|on|onto|for|with) (?P<programme>.{1,80}))?"
_INVITE = Expression(rf"{_PLEASE}invite (?P<name>.{{1,60}}?){_TO}", re.IGNORECASE)
_NEW_CLIENT = Expression(
    rf"{_PLEASE}(?:(?:a )?new client[,:]? (?:called |named )?(?P<a>.{{1,60}}?)"
    r"|(?:add|bring in|take on|sign up|get) (?P<b>.{1,60}?) as (?:a |my )?(?:new )?client"
    r"|(?:sign up|enrol|enroll|sign) (?P<c>.{1,60}?)(?: up)?"
    rf"|send (?P<d>.{{1,60}}?) (?:an? )?(?:invitation|invite|code)){_TO}",
    re.IGNORECASE,
)
_INVITATION = r"(?:invitations?|invites?|codes?|links?)"
_BACK = r"(?:revoke|cancel|withdraw|take back|void|delete|remove|undo|stop|end|kill)"
_REVOKE = Expression(
    rf"{_PLEASE}(?:"
    rf"{_BACK} (?:(?:the|my|that|this|last|open) )*{_INVITATION} (?:(?:that )?(?:i|we) (?:made|sent|gave) )?"
    r"(?:for|of|to) (?P<a>.{1,60})"
    rf"|{_BACK} (?P<b>.{{1,60}}?)(?:'s|s'|’s) {_INVITATION}"
    r"|(?:uninvite|disinvite) (?P<c>.{1,60})"
    r"|(?P<d>.{1,60}?) (?:is not|isn't|isn’t|is no longer|won't be|won’t be) (?:coming|joining)"
    r"(?: after all)?[,.;:]? "
    rf"(?:so )?(?:please )?{_BACK} (?:her|his|their|the|that) {_INVITATION}"
    rf"|{_BACK} (?P<which>that|that last|the|the last|my last|all|all my|all the|all open|my|every|her|his|"
    rf"their) (?:open )?{_INVITATION})",
    re.IGNORECASE,
)
_MANY = Expression(r"\b(?:all|every)\b", re.IGNORECASE)


def take_invitation(draft: Draft, said: str) -> bool:
    """Make the invitation that is asked for, or take one back; return whether it was about that."""
    if found := _REVOKE.fullmatch(said):
        name = found["a"] or found["b"] or found["c"] or found["d"]
        revoke(draft, name, is_all=bool(found["which"] and _MANY.search(found["which"])))
        return True
    if found := _AS_COACH.fullmatch(said):
        name = found["a"] or found["b"] or found["c"] or found["d"] or found["e"]
        if name is None:
            draft.notice("which coach")
        else:
            invite_coach(draft, name)
        return True
    if found := _INVITE.fullmatch(said):
        invite(draft, found["name"], found["programme"])
        return True
    return (found := _NEW_CLIENT.fullmatch(said)) is not None and take_new_client(draft, found)


def take_new_client(draft: Draft, found: re.Match[str]) -> bool:
    """Make an invitation for a client who was not called one, or only where a programme is named with it."""
    programme = found["programme"]
    if not (found["a"] or found["b"]) and not (programme and programme_named(draft, programme)):
        return False
    invite(draft, found["a"] or found["b"] or found["c"] or found["d"], programme)
    return True


def invite(draft: Draft, name: str, programme: str | None) -> None:
    """Make an invitation for one person, to one of the coach's programmes."""
    chosen = programme_named(draft, programme) if programme else only_programme(draft)
    if chosen is None:
        ask_programme(draft, "invite", {"name": name, "who": [name]}, named=programme)
        return
    invite_to(draft, name, chosen)


def invite_to(draft: Draft, name: str, chosen: StoredProgramme) -> None:
    """Make an invitation for one person to a programme."""
    if plain(name) in {plain(line.name) for _, line in draft.state.clients}:
        draft.notice("name is taken", name=name)
        return
    send(draft, name, chosen)


def invite_coach(draft: Draft, name: str) -> None:
    """Make an invitation for another coach, who will have own clients and see nobody else's."""
    if plain(name) in {plain(each) for each in (*dict(draft.state.coaches).values(), draft.state.coach.name)}:
        draft.notice("coach name is taken", name=name)
        return
    send(draft, name, None)


def send(draft: Draft, name: str, programme: StoredProgramme | None) -> None:
    """Make an invitation: to a programme, or without one as a coach; an earlier one of that name is over."""
    as_coach = programme is None
    for earlier in draft.state.invitations:
        if plain(earlier.name) == plain(name) and earlier.as_coach == as_coach:
            draft.change(InvitationRevoked(earlier.key))
    invitation = Invitation(
        code=draft.state.fresh_code,
        name=name,
        expires=draft.at + INVITATION_LASTS,
        coach=draft.state.coach,
        programme=programme,
        as_coach=as_coach,
    )
    draft.change(Invited(invitation))
    draft.notice(
        "invited",
        name=name,
        code=draft.state.fresh_code,
        programme=programme.programme.name if programme else None,
        days=INVITATION_LASTS.days,
    )


def show_invitations(draft: Draft) -> None:
    """Say which invitations are open; a code is told once, and not kept."""
    rows = [
        {"name": each.name, "as_coach": each.as_coach, "until": draft.day_of(each.expires).isoformat()}
        for each in draft.state.invitations
    ]
    draft.notice("invitations", invitations=rows)


def revoke(draft: Draft, name: str | None, *, is_all: bool) -> None:
    """Take back the open invitation of that name; without a name the last one, or all."""
    still_open = draft.state.invitations
    gone: tuple[OpenInvitation, ...]
    if name is not None:
        one = the_one_named(name, [(each.name, each) for each in still_open])
        gone = (one,) if one else ()
    else:
        gone = still_open if is_all else still_open[-1:]
    for each in gone:
        draft.change(InvitationRevoked(each.key))
    draft.notice(
        "invitations revoked", names=[each.name for each in gone], left=[each.name for each in still_open]
    )
