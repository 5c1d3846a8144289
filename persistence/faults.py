"""What can go wrong with the store, as facts. Words for people are made of them in `bot`."""

from dataclasses import dataclass
from datetime import datetime


class StoreFault(Exception):
    """Anything that the store reports by an exception of its own."""


@dataclass(eq=False)
class BadDatabaseUrl(StoreFault):
    """The URL cannot be read, or names a database of another kind. It stands here without a password."""

    url: str


@dataclass(eq=False)
class DatabaseFolderMissing(StoreFault):
    """The folder that is to hold the SQLite file does not exist."""

    folder: str


@dataclass(eq=False)
class DatabaseUnreachable(StoreFault):
    """The database cannot be opened. `why` is the driver's own first line."""

    url: str
    why: str


@dataclass(eq=False)
class DatabaseTrouble(StoreFault):
    """A unit was rolled back for the database's own reasons (locked, full, gone). It may be tried again."""

    why: str


@dataclass(eq=False)
class DatabaseBroken(DatabaseTrouble):
    """The database's file is damaged, or a table is missing."""

    url: str


@dataclass(eq=False)
class DatabaseEmpty(StoreFault):
    """There is nothing of ours in the database."""

    url: str


@dataclass(eq=False)
class DatabaseNotEmpty(StoreFault):
    """The database holds something already, where it is to take in something else."""

    url: str


@dataclass(eq=False)
class CopyDiffers(StoreFault):
    """What was copied into the database is not what was to be copied; it was taken back."""

    url: str


@dataclass(eq=False)
class BackupThere(StoreFault):
    """There is a file already where the backup is to be written."""

    path: str


@dataclass(eq=False)
class BackupMissing(StoreFault):
    """There is no such backup."""

    path: str


@dataclass(eq=False)
class NotOurDatabase(StoreFault):
    """The file is not a database, or the database holds other tables than ours. `why` says which."""

    url: str
    why: str


@dataclass(eq=False)
class DatabaseNewer(StoreFault):
    """The database is at `revision`, which this version of the program does not know."""

    url: str
    revision: str


@dataclass(eq=False)
class DatabaseOlder(StoreFault):
    """The database is at `revision` (None: empty) and has to be migrated first."""

    url: str
    revision: str | None


@dataclass(eq=False)
class Undecided(StoreFault):
    """Nothing came of a message (`message`, its inbox number) or of a wake (None); all of it was rolled back.

    `why` is the name of the class of what was raised, which is also the cause.
    """

    person: int
    message: int | None
    why: str


@dataclass(eq=False)
class Unreadable(StoreFault):
    """What is stored of a person cannot be read, as where a newer program wrote it. No message is at fault.

    `why` is the name of the class of what was raised, which is also the cause.
    """

    person: int
    why: str


@dataclass(eq=False)
class NoProgress(StoreFault):
    """Somebody woken asks to be woken again at once, or in the past: that would go on for ever."""

    person: int


@dataclass(eq=False)
class RecordMissing(StoreFault):
    """A decision speaks of a record that is not there, or no longer counts: its table and number."""

    table: str
    number: int


@dataclass(eq=False)
class ReaderLost(StoreFault):
    """Another worker has become the reader of what goes by this name; the unit was rolled back."""

    name: str


@dataclass(eq=False)
class NoRoomYet(StoreFault):
    """The platform takes no further message before this moment, aware."""

    until: datetime


@dataclass(eq=False)
class ChatTaken(StoreFault):
    """The chat that somebody is to have belongs to somebody else, `name`."""

    chat: str
    name: str
