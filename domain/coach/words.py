"""A coach's requests in plain words: who needs me, how is Noor, tell Noor, invite, put on a programme."""

import re
from collections import Counter
from datetime import timedelta

from domain.coach.draft import Draft, plain, the_one_named
from domain.coach.hours import take_hours
from domain.coach.rule import take_rule
from domain.coach.showing import show
from domain.coach.writing import pass_on
from domain.courtesies import is_courtesy
from domain.incoming import Assigned, CardWanted, HoldEnded, Released, Told, WhyWanted
from domain.outcome import Invited
from domain.parts import Digest
from domain.state import Invitation, StoredProgramme

INVITATION_LASTS = timedelta(days=14)

_OVERVIEW = re.compile(
    r"(?:who(?: needs? (?:me|help|attention))?|overview|summary|status|(?:my )?clients|today|"
    r"who (?:trains|is training)|how (?:is|are) (?:everyone|everybody|they|my clients))"
    r"(?: today| now| right now| doing)*"
)
_CARD = re.compile(
    r"(?:how is|how's|hows|how did|show(?: me)?|card(?: for| of)?) (?P<name>.{1,60}?)"
    r"(?: doing| getting on| do| today| now)*"
)
_TELL = re.compile(
    r"(?:tell|write to|message|answer) (?P<name>[^:,\n]{1,60}?)\s*[:,]\s*(?P<text>.+)",
    re.DOTALL | re.IGNORECASE,
)
_TO = re.compile(r"(?P<name>[^:,\n]{1,60}?)\s*:\s*(?P<text>.+)", re.DOTALL)
_INVITE = re.compile(r"invite (?P<name>.{1,60}?)(?: (?:to|on|onto) (?P<programme>.{1,80}))?", re.IGNORECASE)
_ASSIGN = re.compile(
    r"(?:put|move|switch) (?P<name>.{1,60}?)(?: back)? (?:on|onto|to) (?P<programme>.{1,80})", re.IGNORECASE
)
_PUT_BACK = re.compile(
    r"(?:put|bring) (?:the )?(?P<exercise>.{1,60}?) back (?:in(?:to the plan)? )?for (?P<name>.{1,60})",
    re.IGNORECASE,
)
_WHY = re.compile(r"(?:but |and )?(?:why|how come|explain)\b(?P<what>.{0,160})", re.IGNORECASE)
_RELEASE = re.compile(
    r"(?:release|clear) (?P<name>.{1,60}?)(?: to (?:train|start|begin))?|"
    r"(?:let|allow) (?P<other>.{1,60}?) (?:to )?(?:train|start|begin)(?: training)?",
    re.IGNORECASE,
)
_PROGRAMMES = re.compile(r"(?:my |the )?(?:programmes?|programs?|sheets?)")
_REMEDIES = re.compile(r"^(?:which|what|do|did|how (?:well|often)).{0,20} remed(?:y|ies)\b.{0,30}$")
_HELP = frozenset({"help", "/help", "hello", "hi", "hey", "what can i say", "what can you do"})


def is_for_a_client(text: str) -> bool:
    """Return whether a text says outright that it is to be passed on, whatever it goes on with."""
    return _TELL.fullmatch(text.strip()) is not None


def obey(draft: Draft, text: str) -> None:
    """Do what a coach asks for; say what can be asked where it was not understood."""
    said = " ".join(text.split()).rstrip("?!. ")
    bare = said.casefold().replace("’", "'").removesuffix("please").rstrip(", ")
    to = _TO.fullmatch(text.strip())
    if found := _TELL.fullmatch(text.strip()):
        tell(draft, found["name"], found["text"].strip())
    elif to is not None and draft.client_named(to["name"]):
        tell(draft, to["name"], to["text"].strip())
    elif _OVERVIEW.fullmatch(bare):
        overview(draft)
    elif _REMEDIES.search(bare):
        which_worked(draft)
    elif take_hours(draft, bare) or take_rule(draft, bare) or show(draft, bare):
        pass
    elif _PROGRAMMES.fullmatch(bare):
        draft.notice("programmes", names=[each.programme.name for each in draft.state.programmes])
    elif found := _INVITE.fullmatch(said):
        invite(draft, found["name"], found["programme"])
    elif found := _PUT_BACK.fullmatch(said):
        put_back(draft, found["name"], found["exercise"])
    elif (found := _RELEASE.fullmatch(bare)) and draft.client_named(found["name"] or found["other"]):
        release(draft, found["name"] or found["other"])
    elif found := _ASSIGN.fullmatch(said):
        assign(draft, found["name"], found["programme"])
    elif (found := _WHY.fullmatch(said)) and why(draft, found["what"]):
        pass
    elif found := _CARD.fullmatch(bare):
        card(draft, found["name"])
    elif draft.client_named(said):
        card(draft, said)
    elif pass_on(draft, text):
        pass
    elif is_courtesy(text) and bare not in _HELP:
        draft.notice("heard")
    else:
        draft.notice("coach help", understood=bare in _HELP)


def overview(draft: Draft) -> None:
    """Say who needs the coach, then who trains when."""
    lines = tuple(line.model_copy(update={"eager": (), "tried": ()}) for _, line in draft.state.clients)
    draft.say(Digest(today=draft.today, clients=lines))


def which_worked(draft: Draft) -> None:
    """Say of each remedy how often it was taken over all clients, and what came of it."""
    counted: dict[str, Counter[str]] = {}
    for _, line in draft.state.clients:
        for remedy, result in line.tried:
            counted.setdefault(remedy, Counter())[result] += 1
    rows = [
        {
            "remedy": remedy,
            "taken": results.total(),
            "worked": results["worked"],
            "did_not": results["did not"],
            "early": results.total() - results["worked"] - results["did not"],
        }
        for remedy, results in sorted(counted.items(), key=lambda each: -each[1].total())
    ]
    draft.notice("remedies", rows=rows)


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


def why(draft: Draft, what: str) -> bool:
    """Ask for the reasons of a client's verdict and target; return whether it is clear whose.

    A bare "why?" can be about nobody else than the only client.
    """
    words = [word.removesuffix("'s").removesuffix("s'") for word in what.replace("’", "'").split()]
    spans = ((at, at + many) for many in (3, 2, 1) for at in range(len(words) - many + 1))
    for start, end in spans:
        found = draft.client_named(" ".join(words[start:end]).strip(","))
        if found is not None:
            text = " ".join(words[:start] + words[end:])
            draft.order(found[0], WhyWanted(coach=draft.state.coach.number, text=text))
            return True
    if words or len(draft.state.clients) != 1:
        return False
    (only, _) = draft.state.clients[0]
    draft.order(only, WhyWanted(coach=draft.state.coach.number, text=""))
    return True


def invite(draft: Draft, name: str, programme: str | None) -> None:
    """Make an invitation for one person, to one of the coach's programmes."""
    state = draft.state
    chosen = programme_named(draft, programme) if programme else only_programme(draft)
    if chosen is None:
        draft.notice("which programme", names=[each.programme.name for each in state.programmes])
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


def assign(draft: Draft, name: str, programme: str) -> None:
    """Put a client on a programme."""
    found, chosen = draft.client_named(name), programme_named(draft, programme)
    if found is None:
        unknown_client(draft, name)
    elif chosen is None:
        draft.notice("which programme", names=[each.programme.name for each in draft.state.programmes])
    else:
        draft.order(found[0], Assigned(coach=draft.state.coach.number, programme=chosen.number))


def put_back(draft: Draft, name: str, exercise: str) -> None:
    """Put an exercise that was set aside back into a client's plan."""
    found = draft.client_named(name)
    if found is None:
        unknown_client(draft, name)
    else:
        draft.order(found[0], HoldEnded(coach=draft.state.coach.number, exercise=exercise))


def release(draft: Draft, name: str) -> None:
    """Let a client train who was to see a doctor first."""
    found = draft.client_named(name)
    if found is not None:
        draft.order(found[0], Released(coach=draft.state.coach.number))


def programme_named(draft: Draft, name: str) -> StoredProgramme | None:
    """Return the coach's programme of that name, or the only one with it in its name."""
    return the_one_named(name, [(each.programme.name, each) for each in draft.state.programmes])


def only_programme(draft: Draft) -> StoredProgramme | None:
    """Return the coach's programme where there is just one."""
    return draft.state.programmes[0] if len(draft.state.programmes) == 1 else None


def unknown_client(draft: Draft, name: str) -> None:
    """Say which clients there are."""
    draft.notice("unknown client", name=name, names=[line.name for _, line in draft.state.clients])
