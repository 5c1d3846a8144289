"""`import`: an old journal into a client's, with a look at it first and a progress bar.

It goes the way that a coach's own file goes, through the inbox and in portions, so that it can be undone in
the chat and the bot may run meanwhile. Whoever is free takes the next portion: this command, or the bot.
"""

import time
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from zoneinfo import ZoneInfo

from bot.commands.bar import bar
from bot.commands.database import opened
from bot.desk import LEASE_SECONDS, decider
from bot.faults import OperatorFault
from bot.files.reading import reading_of
from bot.markup import plain
from bot.settings import load_settings
from bot.textfile import read_document
from bot.wording.faults import journal_fault_words
from bot.wording.old_journal import looked_words, names_words, unreadable_words
from bot.wording.reader import Reader
from domain.calendar import local_day
from domain.called import the_one_named
from domain.incoming import Document, JournalSent
from domain.old_journal import Found, read_journal
from domain.old_journal.looking import Looked, has_new, look_through
from domain.old_journal.showing import shown_of
from domain.parts import File
from domain.state import ClientState
from persistence.faults import Undecided
from persistence.store import Store

WAIT_SECONDS = 0.2
"""How long it waits for a portion that another worker takes."""


@dataclass(frozen=True, slots=True)
class Wanted:
    """Whose journal it is, and how it is to be taken."""

    client: str
    dry_run: bool
    keep_names: bool
    month_first: bool | None
    report: Path | None


def import_command(path: Path, wanted: Wanted) -> int:
    """Take the journal at `path`, or show what would be taken; return the exit status. Raises OperatorFault.

    Where nothing of it is new, nothing is done.
    """
    document = _document(path)
    with opened(load_settings().database) as store:
        state = _client(store, wanted.client)
        now = datetime.now(UTC)
        today = local_day(now, ZoneInfo(state.client.zone))
        text = document.text or ""
        client = state.client
        found = read_journal(text, client.name, client.unit, today, month_first=wanted.month_first)
        part = File(
            what="journal reading",
            of=client.number,
            client=client.name,
            month_first=wanted.month_first,
            on=today,
        )
        looked = _shown(state, found, document.name, wanted, part, text)
        if wanted.dry_run or not has_new(state, looked):
            return 0
        order = JournalSent(
            coach=client.coach.number,
            file=0,
            name=document.name,
            step="begin",
            exercises=dict(looked.exercises),
            month_first=wanted.month_first,
        )
        _take(store, client.number, store.bring_journal(client.number, document, order, now))
    return 0


def _document(path: Path) -> Document:
    try:
        document = read_document(path.name, path.read_bytes())
    except OSError as fault:
        raise OperatorFault((f"{path}: {fault.strerror}",)) from fault
    if document.fault is not None:
        raise OperatorFault((journal_fault_words(str(path), document.fault),))
    return document


def _client(store: Store, name: str) -> ClientState:
    clients = [person for person in store.people() if person.is_client]
    found = the_one_named(name, [(each.name, each) for each in clients])
    state = None if found is None else store.whole_client(found.number, found.number)
    if state is None:
        names = tuple(each.name for each in clients)
        raise OperatorFault((journal_fault_words(name, "no client", names),))
    return state


def _shown(state: ClientState, found: Found, name: str, wanted: Wanted, part: File, text: str) -> Looked:
    """Print what would be taken; return it. Raises OperatorFault where it cannot be taken so."""
    client = state.client
    reader = Reader(client.coach.name, client.zone, client.unit, is_coach=True)
    facts = {"client": client.name, "name": name}
    if found.head_fault is not None:
        words = unreadable_words({**facts, "fault": found.head_fault, "shown": found.shown}, reader)
        raise OperatorFault(tuple(plain(words).splitlines()))
    if found.which_date is not None:
        raise OperatorFault((journal_fault_words(found.which_date, "which date"),))
    looked = look_through(state, found, {})
    if looked.asked and not wanted.keep_names:
        raise OperatorFault(names_words(looked.asked))
    kept = {each.name: each.name for each in looked.asked}
    looked = look_through(state, found, kept)
    shown = {**facts, **shown_of(state, found, looked), "takes": has_new(state, looked)}
    print(plain(looked_words(shown, reader, asks=False)))
    if wanted.report is not None:
        content = reading_of(part.model_copy(update={"exercises": kept}), state, text)
        wanted.report.write_text(content, encoding="utf-8-sig", newline="")
    return looked


def _take(store: Store, client: int, change: int) -> None:
    """Take what is ordered, portion after portion, under a bar. Raises OperatorFault."""
    with bar("sets") as progress:
        goes_on = True
        while goes_on:
            now = datetime.now(UTC)
            lease = store.claim(client, now, LEASE_SECONDS)
            if lease is None:
                time.sleep(WAIT_SECONDS)
            else:
                try:
                    goes_on = store.work(lease, now, decider(now))
                except Undecided as fault:
                    raise OperatorFault((journal_fault_words(fault.why, "not taken"),)) from fault
                finally:
                    store.let_go(lease)
            made = store.brought_in(client, change)
            if made is not None:
                progress(made.taken, made.sets)
                goes_on = goes_on or made.taken < made.sets
