"""Old journals that a coach sends: whose they are, and what she says to them with buttons."""

import re

from domain.actions import BringIn
from domain.called import plain
from domain.coach.draft import Draft
from domain.coach.understanding import closest_to
from domain.coach.writing import WAITS_FOR
from domain.incoming import Document, JournalSent
from domain.memory import Waiting
from domain.old_journal import clients_named

MOST_OFFERED = 20
"""How many clients are offered by buttons; any can be named. The house's own choice."""

NEVER_MIND = "Leave it"


def take_journal_file(draft: Draft, document: Document, text: str) -> None:
    """Have an old journal looked at for the client whose it is, or ask whose."""
    if not draft.names:
        draft.notice("journal of nobody", name=document.name)
        return
    client = whose(draft, document, text)
    if client is not None:
        draft.order(client, JournalSent(coach=draft.number, file=draft.message, name=document.name))
        return
    names = [name for _, name in draft.names]
    shown = (*names[:MOST_OFFERED], NEVER_MIND)
    draft.ask("journal", {"file": draft.message, "name": document.name}, {"name": document.name}, shown)


def whose(draft: Draft, document: Document, text: str) -> int | None:
    """Return the client whose journal a file has: by the words beside it, by itself, by its name; or the only
    client; None where it is not clear."""
    for said in (document.caption, *clients_named(text)[:2], document.name.rpartition(".")[0]):
        named = named_in(draft, said)
        if len(named) == 1:
            return named[0]
    return draft.names[0][0] if len(draft.names) == 1 else None


def named_in(draft: Draft, said: str) -> list[int]:
    """Return the clients whose whole name stands in some words, or is nearly all of them."""
    said = re.sub(r"(?<=\w)['’]s?\b|(?<=s)['’]", "", said)
    words = f" {' '.join(plain(said).replace('-', ' ').replace('_', ' ').split())} "
    whole = [
        number
        for number, name in draft.names
        if f" {' '.join(plain(name).replace('-', ' ').split())} " in words
    ]
    return whole or list(closest_to(said, draft.names) if said.strip() else ())


def answer_whose(draft: Draft, waiting: Waiting, text: str) -> bool:
    """Take the answer to whose journal a file has; return False where it is none."""
    if waiting.slot != "journal" or draft.at - waiting.asked_at > WAITS_FOR:
        return False
    if text.strip().casefold().rstrip(".!") in {NEVER_MIND.casefold(), "never mind", "nobody", "no"}:
        draft.remember(waiting=None)
        draft.notice("journal left")
        return True
    exact = [number for number, name in draft.names if plain(name) == plain(text)]
    named = exact or closest_to(text, draft.names)
    if len(named) != 1:
        return False
    draft.remember(waiting=None)
    file, name = int(waiting.about["file"]), str(waiting.about["name"])
    draft.order(named[0], JournalSent(coach=draft.number, file=file, name=name))
    return True


def press_journal(draft: Draft, action: BringIn) -> None:
    """Go on with a journal as the button says."""
    if action.says == "leave":
        draft.notice("journal left")
        return
    order = JournalSent(
        coach=draft.number,
        file=action.file,
        name=action.name,
        step="begin" if action.says == "take" else "look",
        change=draft.message,
        exercises=action.exercises,
        month_first=action.month_first,
    )
    draft.order(action.client, order)
