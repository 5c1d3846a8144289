"""A coach's requests in plain words: who needs me, how is Noor, tell Noor, invite, put on a programme."""

import re
from datetime import timedelta

from domain.coach.draft import Draft
from domain.incoming import Assigned, CardWanted, Told
from domain.outcome import Invited
from domain.parts import Digest
from domain.state import Invitation, StoredProgramme

INVITATION_LASTS = timedelta(days=14)

_OVERVIEW = re.compile(r"(?:who needs me|who|overview|clients|today|my clients|who trains today)")
_CARD = re.compile(r"(?:how is|how's|hows|show|card for|card) (?P<name>.{1,60}?)(?: doing| getting on)?")
_TELL = re.compile(r"tell (?P<name>[^:]{1,60}?)\s*:\s*(?P<text>.+)", re.DOTALL | re.IGNORECASE)
_INVITE = re.compile(r"invite (?P<name>.{1,60}?)(?: (?:to|on|onto) (?P<programme>.{1,80}))?", re.IGNORECASE)
_ASSIGN = re.compile(r"(?:put|move) (?P<name>.{1,60}?) (?:on|onto|to) (?P<programme>.{1,80})", re.IGNORECASE)
_PROGRAMMES = re.compile(r"(?:programmes?|programs?|sheets?|my (?:programmes|programs|sheets))")


def obey(draft: Draft, text: str) -> None:
    """Do what a coach asks for; say what can be asked where it was not understood."""
    said = " ".join(text.split()).rstrip("?!. ")
    plain = said.casefold().replace("’", "'")
    if found := _TELL.fullmatch(text.strip()):
        tell(draft, found["name"], found["text"].strip())
    elif _OVERVIEW.fullmatch(plain):
        overview(draft)
    elif _PROGRAMMES.fullmatch(plain):
        draft.notice("programmes", names=[each.programme.name for each in draft.state.programmes])
    elif found := _INVITE.fullmatch(said):
        invite(draft, found["name"], found["programme"])
    elif found := _ASSIGN.fullmatch(said):
        assign(draft, found["name"], found["programme"])
    elif found := _CARD.fullmatch(plain):
        card(draft, found["name"])
    elif draft.client_named(said):
        card(draft, said)
    else:
        draft.notice("coach help", understood=plain in {"help", "/help", "hello", "hi"})


def overview(draft: Draft) -> None:
    """Say who needs the coach, then who trains when."""
    lines = tuple(line for _, line in draft.state.clients)
    draft.say(Digest(today=draft.today, clients=lines))


def tell(draft: Draft, name: str, text: str) -> None:
    """Pass the coach's words on to a client."""
    found = draft.client_named(name)
    if found is None:
        unknown_client(draft, name)
    else:
        draft.order(found[0], Told(coach=draft.state.coach.number, text=text))


def card(draft: Draft, name: str) -> None:
    """Ask for a client's card."""
    found = draft.client_named(name)
    if found is None:
        unknown_client(draft, name)
    else:
        draft.order(found[0], CardWanted(coach=draft.state.coach.number))


def invite(draft: Draft, name: str, programme: str | None) -> None:
    """Make an invitation for one person, to one of the coach's programmes."""
    state = draft.state
    chosen = programme_named(draft, programme) if programme else only_programme(draft)
    if chosen is None:
        draft.notice("which programme", names=[each.programme.name for each in state.programmes])
        return
    if draft.client_named(name) is not None:
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


def assign(draft: Draft, name: str, programme: str) -> None:
    """Put a client on a programme."""
    found, chosen = draft.client_named(name), programme_named(draft, programme)
    if found is None:
        unknown_client(draft, name)
    elif chosen is None:
        draft.notice("which programme", names=[each.programme.name for each in draft.state.programmes])
    else:
        draft.order(found[0], Assigned(coach=draft.state.coach.number, programme=chosen.number))


def programme_named(draft: Draft, name: str) -> StoredProgramme | None:
    """Return the coach's programme of that name, whatever the case, in its newest version."""
    wanted = " ".join(name.casefold().split())
    for stored in draft.state.programmes:
        if stored.programme.name.casefold() == wanted:
            return stored
    return None


def only_programme(draft: Draft) -> StoredProgramme | None:
    """Return the coach's programme where there is just one."""
    return draft.state.programmes[0] if len(draft.state.programmes) == 1 else None


def unknown_client(draft: Draft, name: str) -> None:
    """Say which clients there are."""
    draft.notice("unknown client", name=name, names=[line.name for _, line in draft.state.clients])
