"""What a decision comes to: what to record, what to say and to whom, when to be woken next."""

from dataclasses import dataclass
from datetime import date, datetime
from typing import Any

from domain.actions import Remedy
from domain.coach_memory import CoachMemory
from domain.incoming import FromCoach, FromDelivery
from domain.journal import Alert, Entry, ExerciseHold, Words, WorkoutRecord
from domain.memory import ClientMemory
from domain.notes import Note
from domain.parts import Say
from domain.past import HoldRecord, MatterRecord
from domain.programme import Programme
from domain.state import Client, Coach, Invitation, Offer
from domain.understood import Understood


@dataclass(frozen=True, slots=True)
class Recorded:
    """A new entry. `instead_of` is the entry that it supersedes, which is kept but no longer counts."""

    entry: Entry
    instead_of: int | None = None


@dataclass(frozen=True, slots=True)
class TakenBack:
    """An entry that no longer counts."""

    entry: int
    at: datetime


@dataclass(frozen=True, slots=True)
class WorkoutKept:
    """A workout begun or changed: the record with this number is as given."""

    workout: WorkoutRecord


@dataclass(frozen=True, slots=True)
class JournalTaken:
    """What came with an old journal, all of it new; an entry may be of a workout that stands.

    Of holds and matters, what is lifted and settled is among it, as it was.
    """

    workouts: tuple[WorkoutRecord, ...]
    entries: tuple[Entry, ...]
    holds: tuple[HoldRecord, ...] = ()
    matters: tuple[MatterRecord, ...] = ()


@dataclass(frozen=True, slots=True)
class JournalTakenOut:
    """What came with an old journal is gone, by its numbers, as (first, last).

    The workouts in `kept` stay, with what the client has told of them. Holds and matters go whatever has
    become of them since; words about such a matter stay, about none.
    """

    entries: tuple[tuple[int, int], ...]
    workouts: tuple[tuple[int, int], ...]
    kept: frozenset[int]
    holds: tuple[tuple[int, int], ...] = ()
    matters: tuple[tuple[int, int], ...] = ()


@dataclass(frozen=True, slots=True)
class HoldPlaced:
    """An exercise set aside."""

    hold: ExerciseHold


@dataclass(frozen=True, slots=True)
class HoldLifted:
    """An exercise back in the plan, by person `by`."""

    hold: int
    on: date
    by: int


@dataclass(frozen=True, slots=True)
class AlertRaised:
    """A matter for the coach."""

    alert: Alert


@dataclass(frozen=True, slots=True)
class AlertNoted:
    """What an open alert knows is as given from now on."""

    alert: int
    evidence: dict[str, Any]


@dataclass(frozen=True, slots=True)
class AlertSettled:
    """A matter settled by person `by` with `remedy`."""

    alert: int
    remedy: Remedy
    by: int
    at: datetime


@dataclass(frozen=True, slots=True)
class WordsKept:
    """What client or coach has written to the other."""

    words: Words


@dataclass(frozen=True, slots=True)
class SettingsKept:
    """The client's settings, own names and programme are as given."""

    client: Client


@dataclass(frozen=True, slots=True)
class CoachKept:
    """This coach's zone and unit are as given."""

    coach: Coach


@dataclass(frozen=True, slots=True)
class SheetStored:
    """A coach's programme, in its next version, with the sheet it was read from."""

    programme: Programme
    sheet: str


@dataclass(frozen=True, slots=True)
class Invited:
    """An invitation made by this coach."""

    invitation: Invitation


@dataclass(frozen=True, slots=True)
class InvitationRevoked:
    """An invitation of this coach's that nobody can take up any more; `key` is how it is stored."""

    key: str


@dataclass(frozen=True, slots=True)
class NoteKept:
    """A new note of this coach's; the store numbers it."""

    note: Note


@dataclass(frozen=True, slots=True)
class NoteForgotten:
    """A note of this coach's that goes, with the message that it came from."""

    number: int


@dataclass(frozen=True, slots=True)
class OfferKept:
    """This client is offered to another coach as given; None: to nobody any more."""

    offer: Offer | None


@dataclass(frozen=True, slots=True)
class HandedOver:
    """This client is coach `to`'s from now on, with all that is open.

    The former coach's notes go along where `with_notes`, and are erased otherwise.
    """

    to: Coach
    with_notes: bool


@dataclass(frozen=True, slots=True)
class Joined:
    """This stranger takes up `invitation`."""

    invitation: Invitation
    at: datetime


@dataclass(frozen=True, slots=True)
class Erased:
    """Everything that is kept about this client goes, at the client's own wish; nothing else is changed."""

    at: datetime


@dataclass(frozen=True, slots=True)
class Forgotten:
    """Of somebody who was erased, the chat goes as well, which the last words had to be sent to."""


Change = (
    Recorded
    | TakenBack
    | WorkoutKept
    | JournalTaken
    | JournalTakenOut
    | HoldPlaced
    | HoldLifted
    | AlertRaised
    | AlertNoted
    | AlertSettled
    | WordsKept
    | SettingsKept
    | CoachKept
    | SheetStored
    | Invited
    | InvitationRevoked
    | NoteKept
    | NoteForgotten
    | OfferKept
    | HandedOver
    | Joined
    | Erased
    | Forgotten
)


@dataclass(frozen=True, slots=True)
class Order:
    """Something for another person's inbox, committed with the decision that made it."""

    to: int
    incoming: FromCoach | FromDelivery


@dataclass(frozen=True, slots=True)
class Stuck:
    """An event of a waking that would be due without an end: a fault of the program. It waits for a while."""

    person: int
    event: str


@dataclass(frozen=True, slots=True)
class Outcome:
    """A whole decision; it is saved whole or not at all.

    `understood` is what the message was taken for. `memory` None leaves the memory as it is;
    `other_memory` is a coach's who is a client as well. `wake_at` is aware and UTC; None: nothing to be woken
    for. `stuck` are events that were given up.
    """

    changes: tuple[Change, ...] = ()
    says: tuple[Say, ...] = ()
    orders: tuple[Order, ...] = ()
    memory: ClientMemory | CoachMemory | None = None
    other_memory: CoachMemory | None = None
    wake_at: datetime | None = None
    understood: Understood | None = None
    stuck: tuple[Stuck, ...] = ()
