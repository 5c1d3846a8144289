"""The store: every unit of work on the database, each in a transaction of its own.

The units are short and synchronous. A caller on an event loop runs each whole in a thread, and never cancels
one half-way. What a unit does is told where it is done, in the module of the same matter; here is only where
it begins and ends.
"""

from collections.abc import Sequence
from datetime import datetime, timedelta

from sqlalchemy import Engine
from sqlalchemy.exc import IntegrityError

from domain.authority import may_read_everything
from domain.brought_in import BroughtIn
from domain.incoming import Document, JournalSent
from domain.journal_data import JournalData
from domain.parts import Part
from domain.state import ClientState
from persistence import (
    archive,
    backup,
    deliveries,
    inbox,
    leases,
    moments,
    outbox,
    people,
    prepared,
    queues,
    readers,
    retention,
    sending,
    understood,
    whole,
    work,
)
from persistence.archive import KeptArchive
from persistence.chats import Chats
from persistence.engine import first_line, open_engine, reading, writing
from persistence.faults import DatabaseTrouble
from persistence.inbox import Received
from persistence.leases import ChatLease, Lease
from persistence.migrate import migrate
from persistence.outbox import Outgoing, SentMessage
from persistence.pace import Pace
from persistence.people import Person
from persistence.prepared import Loaded, Roster
from persistence.programmes import Programmes
from persistence.queues import Queues
from persistence.readers import Reader
from persistence.understood import Told
from persistence.work import Decide

_RECENT = 200
"""How many of a person's newest messages are searched for a button."""

_MET_ANOTHER = ("foreign key", "unique")
"""What a database says where a stranger has become somebody else at this very moment."""


class Store:
    """One database. It may be used by several threads at once."""

    def __init__(self, engine: Engine) -> None:
        """Use an engine of `persistence.engine.open_engine` whose database has been migrated."""
        self._engine = engine
        self._programmes = Programmes()
        self.chats = Chats(engine)
        """What stands in people's chats, to be shown."""

    @property
    def is_shared(self) -> bool:
        """Whether several workers may work on this database at once."""
        return self._engine.dialect.name != "sqlite"

    def close(self) -> None:
        """Close every connection."""
        self._engine.dispose()

    def check_whole(self) -> None:
        """Look through the database's file for damage, where it is one file. Raises DatabaseBroken."""
        backup.check_whole(self._engine)

    def take_over(self, now: datetime) -> None:
        """Go on where a process before this one stopped.

        Its leases end where there can have been only one, on SQLite; of many workers, a lost one's leases
        run out by themselves. Where the clock has been set back since, nothing waits for the time that it
        was.
        """
        with writing(self._engine) as connection:
            if not self.is_shared:
                leases.end_all(connection)
                readers.end_all(connection)
            if moments.is_before_the_past(connection, now):
                moments.bring_forward(connection, now)

    def clock_was_set_back(self, now: datetime) -> None:
        """Let nothing wait for a moment that was noted while the clock was ahead."""
        with writing(self._engine) as connection:
            moments.bring_forward(connection, now)

    def server_time(self) -> datetime | None:
        """Return the moment by the database server's clock, the same for all workers; None on SQLite."""
        with reading(self._engine) as connection:
            return moments.of_server(connection)

    # What comes in

    def receive(
        self,
        items: Sequence[Received],
        cursor: tuple[str, str] | None = None,
        reader: Reader | None = None,
    ) -> None:
        """Store what is new among `items`, and how far the platform was read, as (name, value).

        All or nothing; after DatabaseTrouble the same items can be brought again. Raises ReaderLost where a
        `reader` is named who is no longer the one.
        """
        try:
            with writing(self._engine) as connection:
                if reader is not None:
                    readers.check(connection, reader)
                inbox.receive(connection, items, cursor)
        except IntegrityError as error:
            why = first_line(error)
            if not any(kind in why.casefold() for kind in _MET_ANOTHER):
                raise  # it would be refused again and again
            raise DatabaseTrouble(why) from error

    def cursor(self, name: str) -> str | None:
        """Return how far `name` was read; None where it never was."""
        with reading(self._engine) as connection:
            return inbox.cursor(connection, name)

    def claim_reader(self, name: str, now: datetime, lease_seconds: float) -> Reader | None:
        """Become the one worker that reads what goes by this `name`; None while another one is."""
        with writing(self._engine) as connection:
            return readers.claim(connection, name, now, lease_seconds)

    def renew_reader(self, reader: Reader, now: datetime) -> Reader:
        """Read on for another while. Raises ReaderLost where another worker does by now."""
        with writing(self._engine) as connection:
            return readers.renew(connection, reader, now)

    def end_reader(self, reader: Reader) -> None:
        """Let another worker read."""
        with writing(self._engine) as connection:
            readers.end(connection, reader)

    # Deciding

    def claim_people(self, now: datetime, lease_seconds: float, most: int) -> tuple[Lease, ...]:
        """Lease up to `most` people who have something to do; whoever wrote comes before whoever is due."""
        with writing(self._engine) as connection:
            return inbox.claim_people(connection, now, lease_seconds, most)

    def claim_person(self, now: datetime, lease_seconds: float) -> Lease | None:
        """Lease one person who has something to do, as `claim_people` does; None where nobody has."""
        return next(iter(self.claim_people(now, lease_seconds, 1)), None)

    def begin(self, now: datetime, lease_seconds: float, decide: Decide) -> tuple[int, Lease | None]:
        """Do what is next for somebody who wrote; where nobody did, wake some who are due. In one unit.

        Returns how many steps that were, and the lease of whoever has more to do. Raises Undecided or
        Unreadable, as `work`, and then nothing was done and nobody is leased.
        """
        with writing(self._engine) as connection:
            return work.begin(connection, lease_seconds, now, decide, self._programmes)

    def claim(self, person: int, now: datetime, lease_seconds: float) -> Lease | None:
        """Lease this very person; None while somebody else has the lease."""
        with writing(self._engine) as connection:
            return inbox.claim(connection, person, now, lease_seconds)

    def work(self, lease: Lease, now: datetime, decide: Decide) -> bool:
        """Do what is next for a person, whole or not at all; return whether there is more, on the same lease.

        Raises Undecided where `decide` raised, or its outcome does not fit what is stored.
        """
        with writing(self._engine) as connection:
            return work.work(connection, lease, now, decide, self._programmes)

    def set_aside(
        self, lease: Lease, message: int | None, fault: str, now: datetime, parts: tuple[Part, ...] = ()
    ) -> None:
        """Let a message be that was Undecided, and say `parts`; or (None) a wake for an hour."""
        with writing(self._engine) as connection:
            work.set_aside(connection, lease, message, fault, now, parts)

    def let_go(self, lease: Lease) -> None:
        """End a lease before its time."""
        with writing(self._engine) as connection:
            work.let_go(connection, lease)

    def rest(self, lease: Lease, now: datetime, seconds: float) -> None:
        """Let nobody act for a person for so long, and then whoever comes first."""
        with writing(self._engine) as connection:
            work.rest(connection, lease, now + timedelta(seconds=seconds))

    # Sending

    def claim_chat(
        self, now: datetime, lease_seconds: float, platform: str | None = None, pace: Pace | None = None
    ) -> ChatLease | None:
        """Lease a chat in which something waits to be sent, on this `platform` (None: any); None: no such.

        Where there is a `pace`, whatever is sent under the lease keeps it. Raises NoRoomYet where it is used
        up.
        """
        with writing(self._engine) as connection:
            return deliveries.claim_chat(connection, now, lease_seconds, platform, pace)

    def next_message(self, lease: ChatLease, now: datetime) -> Outgoing | None:
        """Return the chat's first waiting message if it is due; None: nothing is, and the lease has ended."""
        with writing(self._engine) as connection:
            return sending.next_message(connection, lease, now)

    def sending(self, lease: ChatLease, number: int, now: datetime) -> bool:
        """Note that a try to send begins. False: the lease was lost, or there is no room; do not send."""
        with writing(self._engine) as connection:
            return sending.sending(connection, lease, number, now)

    def keep_chat(self, lease: ChatLease, now: datetime) -> None:
        """Let the lease of a chat begin anew, if it is still held."""
        with writing(self._engine) as connection:
            sending.keep(connection, lease, now)

    def sent(
        self,
        lease: ChatLease,
        number: int,
        words: str,
        message_keys: Sequence[str],
        labels: Sequence[str],
        now: datetime,
        *,
        parts: tuple[Part, ...] | None = None,
        spread: outbox.Spread | None = None,
    ) -> bool:
        """Note that a message was sent: its words, its keys on the platform, its buttons' labels in order.

        `parts` is what of it is kept, where that is not all; `spread` are the words to several it carries.
        """
        with writing(self._engine) as connection:
            return sending.sent(connection, lease, number, words, message_keys, labels, now, parts, spread)

    def try_again(self, lease: ChatLease, number: int, not_before: datetime, now: datetime) -> bool:
        """Let a message, and all behind it in its chat, wait until `not_before`. The lease ends."""
        with writing(self._engine) as connection:
            return sending.try_again(connection, lease, number, not_before, now)

    def failed(
        self,
        lease: ChatLease,
        number: int,
        why: str,
        now: datetime,
        *,
        unreachable: bool,
        instead: tuple[Part, ...] = (),
        spread: outbox.Spread | None = None,
    ) -> bool:
        """Give a message up, and say something else `instead`.

        The coach hears once of a client who has become `unreachable`. `spread` are the words to several that
        it carries.
        """
        with writing(self._engine) as connection:
            return sending.failed(
                connection, lease, number, why, now, unreachable=unreachable, instead=instead, spread=spread
            )

    def leave_chat(self, lease: ChatLease, now: datetime) -> None:
        """End the lease of a chat before its time."""
        with writing(self._engine) as connection:
            sending.leave(connection, lease, now)

    def forget_words(self, before: datetime) -> None:
        """Let the words go of a portion of the messages from before that moment."""
        with writing(self._engine) as connection:
            retention.forget_words(connection, before)

    # Preparing people

    def load_roster(self, roster: Roster, now: datetime) -> tuple[Loaded, ...]:
        """Put a roster's people and sheets into the database, once; who is new is woken `now`.

        Raises ChatTaken.
        """
        with writing(self._engine) as connection:
            return prepared.load_roster(connection, roster, self._programmes, now)

    def invite(self, person: int, now: datetime) -> str:
        """Return a fresh code with which a prepared person opens a chat of a platform."""
        with writing(self._engine) as connection:
            return prepared.invite(connection, person, now)

    # Looking

    def archive(self, client: int, reader: int) -> KeptArchive | None:
        """Return everything that is kept about a client; None where the person `reader` is somebody else."""
        with reading(self._engine) as connection:
            return archive.archive(connection, client) if may_read_everything(reader, client) else None

    def next_due(self, now: datetime) -> datetime | None:
        """Return the first moment after `now` at which somebody is to be woken, or something to be sent."""
        with reading(self._engine) as connection:
            moments = (work.next_due(connection, now), deliveries.next_due(connection, now))
        return min((moment for moment in moments if moment is not None), default=None)

    def queues(self, now: datetime) -> Queues:
        """Return how much waits to be done, and since when."""
        with reading(self._engine) as connection:
            return queues.queues(connection, now)

    def people(self) -> tuple[Person, ...]:
        """Return every coach and client."""
        with reading(self._engine) as connection:
            return people.people(connection)

    def person(self, number: int) -> Person | None:
        """Return the person of that number."""
        with reading(self._engine) as connection:
            return people.person(connection, number)

    def whole_client(self, client: int, reader: int) -> ClientState | None:
        """Return a client with the whole journal, for `reader`; None where that is not for them to see."""
        with reading(self._engine) as connection:
            return whole.whole_client(connection, client, reader, self._programmes)

    def whole_journal(self, client: int, reader: int) -> JournalData | None:
        """Return a client's journal as data, for `reader`; None where that is not for them to see."""
        with reading(self._engine) as connection:
            return whole.whole_journal(connection, client, reader, self._programmes)

    def bring_journal(self, client: int, file: Document, order: JournalSent, now: datetime) -> int:
        """Order that an old journal is taken, as its coach would; return what it can be undone by."""
        with writing(self._engine) as connection:
            return inbox.bring_journal(connection, client, file, order, now)

    def brought_in(self, client: int, change: int) -> BroughtIn | None:
        """Return how far an old journal is taken; None where it is not begun."""
        with reading(self._engine) as connection:
            return people.brought_in(connection, client, change)

    def file_sent(self, message: int, person: int) -> str | None:
        """Return what the file in that message of the person's says; None where it is gone."""
        with reading(self._engine) as connection:
            return inbox.file_sent(connection, message, person)

    def told(self, message: int) -> Told | None:
        """Return what became of that message in the inbox, as first sent; None where it has no words."""
        with reading(self._engine) as connection:
            return understood.told(connection, message)

    def person_of_chat(self, chat: str) -> Person | None:
        """Return the person who writes in `chat`; None where nobody ever did."""
        with reading(self._engine) as connection:
            return people.person_of_chat(connection, chat)

    def latest_buttons(self, person: int) -> tuple[tuple[str, str], ...]:
        """Return (label, data) of each button under the newest message to this person that has some."""
        return next((message.buttons for message in self._with_buttons(person)), ())

    def button(self, person: int, label: str) -> str | None:
        """Return the data of the button of that label on the newest message to this person that has one.

        Where none has it any more, of one that had it: it can be pressed twice before it is gone.
        """
        return next(
            (
                data
                for had in (False, True)
                for message in self._with_buttons(person, had=had)
                for known, data in message.buttons
                if known == label
            ),
            None,
        )

    def _with_buttons(self, person: int, *, had: bool = False) -> list[SentMessage]:
        with reading(self._engine) as connection:
            return outbox.sent_with_buttons(connection, person, _RECENT, had=had)


def open_store(url: str) -> Store:
    """Return the store at a database URL, migrated to what this program wants. Raises a StoreFault."""
    engine = open_engine(url)
    try:
        migrate(engine)
    except BaseException:
        engine.dispose()
        raise
    return Store(engine)
