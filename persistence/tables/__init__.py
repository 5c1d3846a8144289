"""Every table. The constraints refuse states that cannot be; `persistence.migrations` builds the same."""

from persistence.tables.base import Base
from persistence.tables.journal import AlertRow, EntryRow, HoldRow, WordsRow, WorkoutRow
from persistence.tables.mail import (
    INCOMING,
    UNDERSTOOD,
    BudgetRow,
    CursorRow,
    DeliveryRow,
    InboxRow,
    OutboxRow,
    ReaderRow,
    SentKeyRow,
)
from persistence.tables.people import ErasureRow, InvitationRow, NoteRow, OfferRow, PersonRow, ProgrammeRow

__all__ = [
    "INCOMING",
    "UNDERSTOOD",
    "AlertRow",
    "Base",
    "BudgetRow",
    "CursorRow",
    "DeliveryRow",
    "EntryRow",
    "ErasureRow",
    "HoldRow",
    "InboxRow",
    "InvitationRow",
    "NoteRow",
    "OfferRow",
    "OutboxRow",
    "PersonRow",
    "ProgrammeRow",
    "ReaderRow",
    "SentKeyRow",
    "WordsRow",
    "WorkoutRow",
]
