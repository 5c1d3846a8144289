"""A coach's wish to see something: a picture of one client or of all, a journal as a file."""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import timedelta

from domain.actions import Words
from domain.coach.draft import Draft
from domain.coach.naming import ClientNames
from domain.coach.understanding import closest_to
from domain.coach.which_client import ask_who
from domain.expressions import Expression
from domain.incoming import PictureWanted
from domain.journal_words import EVERYONE, of_client
from domain.parts import File, FileKind, Notice, Say, Weight
from domain.pictures import RosterProgress, RosterRow
from domain.reading.message import message_of

WEEKS_SHOWN = 12
"""How far the picture of all clients looks back, as `domain.client.strength` does."""

STEPS = 10
"""In how many steps at most it is shown how far files have come. The house's own choice."""

_PLEASE = (
    r"(?:(?:please|can you|could you|can i|could i|i want to|i'd like to|let me) )?"
    r"(?:(?:send|give|show|draw|see|have|export|download|get|make)(?: me)? )?(?:the |a |an |all of )?"
)
_PICTURE = r"(?:picture|pictures|graph|chart|plot|curve)"
_OWN = r"(?:'s|s'|')"
_ROSTER = Expression(
    rf"{_PLEASE}(?:my |our )?(?:(?:clients|roster|everybody|everyone|all(?: my| of my)?(?: clients)?|they)"
    rf"(?: all)? at a glance|at a glance|{_PICTURE} (?:of|for) (?:all |all of )?"
    r"(?:my clients|my roster|everybody|everyone|all|them all|all clients|the roster))"
)
_OF = Expression(rf"{_PLEASE}(?:progress )?{_PICTURE} (?:of|for|on) (?P<what>.{{1,120}})")
_OWNED = Expression(rf"{_PLEASE}(?P<what>.{{1,120}}?)(?:(?: in| as)? a)? {_PICTURE}")
_SHOW = Expression(r"(?:please |can you |could you )?(?:show|draw)(?: me)? (?P<what>.{1,120})")


def show(draft: Draft, bare: str) -> bool:
    """Send what is asked for in `bare`, small letters and no mark at the end; return whether it was that."""
    if _ROSTER.fullmatch(bare):
        draft.say(roster_of(draft))
        return True
    if show_journal(draft, bare):
        return True
    for wish, is_of_all in ((_OF, True), (_OWNED, True), (_SHOW, False)):
        found = wish.fullmatch(bare)
        if found and show_client(draft, bare, found["what"], is_of_all=is_of_all):
            return True
    return False


def show_journal(draft: Draft, bare: str) -> bool:
    """Send a client's journal as a file; where no form was named, with buttons for the others."""
    asked = of_client(bare)
    several = () if asked is None else several_named(draft, asked.name)
    if asked is not None and several:
        send_journals(draft, several, asked.form or "journal table")
        return True
    of = None if asked is None else one_named(draft, asked.name)
    if asked is None or of is None:
        return False
    if len(of.fits) > 1:
        ask_which(draft, bare, of)
        return True
    number = of.fits[0]
    name = draft.name_of(number)
    draft.say(File(what=asked.form or "journal table", of=number, client=name))
    if asked.form is None:
        draft.offer(*(Words(text=f"{name}'s journal as {form}") for form in ("PDF", "JSON")))
    return True


def several_named(draft: Draft, name: str) -> tuple[int, ...]:
    """Return the clients where several are named, each clearly, or all are meant; none where it is one."""
    if name in EVERYONE:
        return tuple(number for number, _ in draft.names)
    fits = [fits for each in ClientNames(draft.names).find(message_of(name)) for fits in each.meant]
    clients = dict.fromkeys(each[0] for each in fits if len(each) == 1)
    return tuple(clients) if 1 < len(clients) == len(fits) else ()


def send_journals(draft: Draft, clients: Sequence[int], form: FileKind) -> None:
    """Send the journals of several clients, a file each, and show in the answer how far that is."""
    total = len(clients)
    draft.notice("journals coming", sent=0, total=total)
    for sent, client in enumerate(clients, start=1):
        part = File(what=form, of=client, client=draft.name_of(client))
        draft.say_again(Say(to=draft.number, parts=(part,)))
        if sent * STEPS // total > (sent - 1) * STEPS // total:
            shown = Notice(topic="journals coming", facts={"sent": sent, "total": total})
            weight: Weight = "answer" if sent == total else "nudge"
            draft.say_again(Say(to=draft.number, parts=(shown,), weight=weight, instead_of=draft.message))


def show_client(draft: Draft, bare: str, what: str, *, is_of_all: bool) -> bool:
    """Ask for a picture of the client named in `what`, of the exercise beside the name, if one is named.

    Without an exercise it is of all, where that `is_of_all`. Returns whether a picture is asked for.
    """
    of = one_named(draft, what)
    if of is None or not (of.rest or is_of_all):
        return False
    if len(of.fits) == 1:
        draft.order(of.fits[0], PictureWanted(coach=draft.number, text=of.rest))
    else:
        ask_which(draft, bare, of)
    return True


@dataclass(frozen=True, slots=True)
class Named:
    """The own clients whom a name, `said` so, fits, be it several, and what else stood beside it."""

    fits: tuple[int, ...]
    said: str
    rest: str


def one_named(draft: Draft, what: str) -> Named | None:
    """Return the first name in `what` that an own client bears; with a slip, where it owns something."""
    message, names = message_of(what), ClientNames(draft.names)
    found = next(iter(names.find(message)), None)
    if found is not None:
        start, end = message.tokens[found.start].start, message.tokens[found.end - 1].end
        return Named(found.fits, what[start:end], beside(what, start, end))
    words = [(each.start(), each.end()) for each in re.finditer(rf"\S+{_OWN}(?!\S)", what)]
    for start, end in [*words, (0, len(what))]:
        said = re.sub(rf"{_OWN}$", "", what[start:end].strip(" ,"))
        if near := closest_to(said, draft.names):
            return Named(near, said, beside(what, start, end))
    return None


def beside(what: str, start: int, end: int) -> str:
    """Return `what` without the name that stands in it, nor its possessive."""
    after = re.sub(rf"^{_OWN}(?!\w)", "", what[end:])
    return " ".join(f"{what[:start]} {after}".replace(" , ", " ").split()).strip(" ,")


def ask_which(draft: Draft, bare: str, of: Named) -> None:
    """Ask whom a name that fits several clients means."""
    start = bare.index(of.said)
    ask_who(draft, bare, (start, start + len(of.said)), of.fits)


def roster_of(draft: Draft) -> RosterProgress:
    """Return all clients at a glance; whoever needs the coach comes first, then who has gained least."""
    since = draft.today - timedelta(weeks=WEEKS_SHOWN)
    rows = [
        RosterRow(
            client=line.name,
            points=tuple(each for each in draft.state.strength.get(number, ()) if each[0] >= since),
            matters=len(line.open_alerts) + line.to_release,
            aside=len(line.held),
            last_workout=line.last_workout,
            due_on=line.due_on,
            paused=line.paused,
            joining=line.joining,
        )
        for number, line in draft.state.clients
    ]
    rows.sort(key=lambda row: (-row.matters, not row.points, row.points[-1][1] if row.points else 0.0))
    return RosterProgress(today=draft.today, since=since, rows=tuple(rows))
