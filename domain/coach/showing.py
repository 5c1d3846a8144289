"""A coach's wish to see something: a picture of one client or of all, a journal as a file."""

import re
from datetime import timedelta

from domain.actions import Words
from domain.coach.draft import Draft
from domain.incoming import PictureWanted
from domain.journal_words import of_client
from domain.parts import File
from domain.pictures import RosterProgress, RosterRow

WEEKS_SHOWN = 12
"""How far the picture of all clients looks back, as `domain.client.strength` does."""

_PLEASE = (
    r"(?:(?:please|can you|could you|can i|could i|i want to|i'd like to|let me) )?"
    r"(?:(?:send|give|show|draw|see|have|export|download|get|make)(?: me)? )?(?:the |a |an |all of )?"
)
_PICTURE = r"(?:picture|pictures|graph|chart|plot|curve)"
_OWN = r"(?:'s|s'|')"
_ROSTER = re.compile(
    rf"{_PLEASE}(?:my |our )?(?:(?:clients|roster|everybody|everyone|all(?: my| of my)?(?: clients)?|they)"
    rf"(?: all)? at a glance|at a glance|{_PICTURE} (?:of|for) (?:all |all of )?"
    r"(?:my clients|my roster|everybody|everyone|all|them all|all clients|the roster))"
)
_OF = re.compile(rf"{_PLEASE}(?:progress )?{_PICTURE} (?:of|for|on) (?P<what>.{{1,120}})")
_OWNED = re.compile(rf"{_PLEASE}(?P<what>.{{1,120}}?)(?:(?: in| as)? a)? {_PICTURE}")
_SHOW = re.compile(r"(?:please |can you |could you )?(?:show|draw)(?: me)? (?P<what>.{1,120})")


def show(draft: Draft, bare: str) -> bool:
    """Send what is asked for in `bare`, small letters and no mark at the end; return whether it was that."""
    if _ROSTER.fullmatch(bare):
        draft.say(roster_of(draft))
        return True
    if show_journal(draft, bare):
        return True
    for wish, is_of_all in ((_OF, True), (_OWNED, True), (_SHOW, False)):
        found = wish.fullmatch(bare)
        if found and show_client(draft, found["what"], is_of_all=is_of_all):
            return True
    return False


def show_journal(draft: Draft, bare: str) -> bool:
    """Send a client's journal as a file; where no form was named, with buttons for the others."""
    asked = of_client(bare)
    named = None if asked is None else draft.client_named(asked.name)
    if asked is None or named is None:
        return False
    number, line = named
    draft.say(File(what=asked.form or "journal table", of=number, client=line.name))
    if asked.form is None:
        draft.offer(*(Words(text=f"{line.name}'s journal as {form}") for form in ("PDF", "JSON")))
    return True


def show_client(draft: Draft, what: str, *, is_of_all: bool) -> bool:
    """Ask for a picture of the client named in `what`, of the exercise beside the name, if one is named.

    Without an exercise it is of all, where that `is_of_all`. Returns whether a picture is asked for.
    """
    words = what.split()
    for many in (3, 2, 1):
        for start in range(len(words) - many + 1):
            name = re.sub(rf"{_OWN}$", "", " ".join(words[start : start + many]).strip(","))
            found = draft.client_named(name)
            rest = " ".join(words[:start] + words[start + many :])
            if found is not None and (rest or is_of_all):
                draft.order(found[0], PictureWanted(coach=draft.state.coach.number, text=rest))
                return True
    return False


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
