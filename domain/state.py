"""One person's whole state, as a frozen value: what `hear` and `wake` decide from."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, datetime, time
from decimal import Decimal

from domain.coach_memory import CoachMemory
from domain.equipment import Equipment
from domain.hours import USUAL, Hours
from domain.journal import Alert, Entry, ExerciseHold, Words, WorkoutRecord
from domain.memory import ClientMemory
from domain.notes import Note
from domain.parts import ClientLine
from domain.past import HoldRecord, MatterRecord
from domain.pictures import Points
from domain.programme import Programme
from domain.tally import ClientTally
from domain.units import Unit

WORDS_SEEN = 12
"""How much of what was written between client and coach a decision sees. The house's own choice."""


@dataclass(frozen=True, slots=True)
class Coach:
    """A coach. `number` is the person's number; `zone` an IANA name; `hours` are when to write to her.

    `tell_after` is her own plain rule for a stall, where she has one.
    """

    number: int
    name: str
    zone: str
    unit: Unit
    hours: Hours = USUAL
    tell_after: int | None = None


@dataclass(frozen=True, slots=True)
class StoredProgramme:
    """A programme as stored. A sheet of the same name makes the next `version`."""

    number: int
    version: int
    programme: Programme


@dataclass(frozen=True, slots=True)
class Offer:
    """That a client is offered to coach number `to`, since when, and whether the notes would go along."""

    to: int
    to_name: str
    at: datetime
    with_notes: bool


@dataclass(frozen=True, slots=True)
class Client:
    """A client and the client's settings. `zone` is an IANA name, `remind_at` a local time."""

    number: int
    name: str
    coach: Coach
    unit: Unit
    zone: str
    remind_at: time
    starts: date
    equipment: Equipment
    programme: StoredProgramme | None = None
    body_mass: Decimal | None = None
    """In the client's own unit."""
    own_names: Mapping[str, str] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class ClientState:
    """A client with journal and memory.

    `workouts` and `entries` are oldest first and bounded to the recent past; entries that were superseded or
    taken back are not among them. `alerts` are the open ones.
    """

    client: Client
    memory: ClientMemory
    workouts: tuple[WorkoutRecord, ...] = ()
    entries: tuple[Entry, ...] = ()
    holds: tuple[ExerciseHold, ...] = ()
    alerts: tuple[Alert, ...] = ()
    holds_ever: tuple[HoldRecord, ...] = ()
    """All holds, the lifted ones as well, as they stand in the store; only where all is loaded."""
    matters_ever: tuple[MatterRecord, ...] = ()
    """All alerts, the settled ones as well; as above."""
    words: tuple[Words, ...] = ()
    """What client and coach have written to each other, the newest `WORDS_SEEN`, oldest first."""
    programmes: tuple[StoredProgramme, ...] = ()
    """The coach's programmes, the newest version of each name."""
    former: tuple[StoredProgramme, ...] = ()
    """The programmes that the client was on before, as far as that can be undone."""
    notes: tuple[Note, ...] = ()
    """What the coach has noted, oldest first; only where an order of a coach's is heard."""
    offer: Offer | None = None
    """That the coach has offered this client to another; only where a coach's order is heard, too."""
    offered_to: Coach | None = None
    """The coach to whom the client is offered."""
    invitation: "Invitation | None" = None
    """The invitation whose code has just come in, if there is such."""


@dataclass(frozen=True, slots=True)
class Invitation:
    """An invitation for one person to become a client, or where `as_coach`, a coach."""

    code: str
    name: str
    expires: datetime
    coach: Coach | None = None
    programme: StoredProgramme | None = None
    used: bool = False
    as_coach: bool = False
    person: int | None = None
    """The number of the person prepared for this chat (from a roster), where there is one."""

    def is_open(self, at: datetime) -> bool:
        """Return whether somebody can take it up at that moment."""
        return not self.used and self.expires > at


@dataclass(frozen=True, slots=True)
class Standing:
    """How a client stands with a programme: which one it is, and each workout with each exercise `done` in
    it; `swaps` are the exercises with those that the coach has put in their place."""

    programme: StoredProgramme | None = None
    done: tuple[tuple[str, str], ...] = ()
    swaps: tuple[tuple[str, str], ...] = ()


@dataclass(frozen=True, slots=True)
class OpenInvitation:
    """An invitation of this coach's that nobody has taken up yet; `key` is how it is stored, not its code."""

    key: str
    name: str
    expires: datetime
    as_coach: bool = False


@dataclass(frozen=True, slots=True)
class OfferedClient:
    """A client whom another coach offers to this one."""

    client: int
    name: str
    coach_name: str
    at: datetime


@dataclass(frozen=True, slots=True)
class CoachState:
    """A coach with an overview of own clients. `fresh_code` is an unused invitation code of 128 bits."""

    coach: Coach
    memory: CoachMemory
    clients: tuple[tuple[int, ClientLine], ...] = ()
    programmes: tuple[StoredProgramme, ...] = ()
    fresh_code: str = ""
    strength: Mapping[int, Points] = field(default_factory=dict)
    """By the client's number, how strength has changed over the last weeks."""
    tallies: Mapping[int, ClientTally] = field(default_factory=dict)
    """By the client's number, what a digest counts."""
    notes: tuple[Note, ...] = ()
    """The coach's own notes, oldest first."""
    coaches: tuple[tuple[int, str], ...] = ()
    """The number and the name of each other coach."""
    invitations: tuple[OpenInvitation, ...] = ()
    """Those that are open, oldest first; what has run out is not among them."""
    offered: tuple[OfferedClient, ...] = ()
    """The clients whom others offer to this coach."""
    standings: Mapping[int, Standing] = field(default_factory=dict)
    """By the client's number, how each stands with the programme."""
    invitation: Invitation | None = None
    """The invitation whose code has just come in, if there is such."""
    is_client: bool = False
    """Whether the coach trains, too, by an own sheet or with another coach."""


@dataclass(frozen=True, slots=True)
class StrangerState:
    """Somebody without a role. `invitation` is the one whose code has just come in, if there is such.

    `erased_at` is when a client was erased whose chat is still known, None of others; then `is_unsent` tells
    whether something about that still waits to be sent.
    """

    number: int
    invitation: Invitation | None = None
    erased_at: datetime | None = None
    is_unsent: bool = False


@dataclass(frozen=True, slots=True)
class BothState:
    """A coach who trains, too: by an own sheet, or as another coach's client."""

    coach: CoachState
    client: ClientState


State = ClientState | CoachState | BothState | StrangerState
