"""Leases: the right to act for one person, or to send into one chat, until a moment that is soon.

Whoever holds one shows its token with every step. A worker that was slow or lost finds that the token is no
longer the person's, and changes nothing.
"""

import secrets
from dataclasses import dataclass, field

from sqlalchemy import Connection, update

from persistence.pace import Pace
from persistence.tables import DeliveryRow, PersonRow


@dataclass(frozen=True, slots=True)
class Lease:
    """The right to decide for `person`; each step renews it for `seconds`."""

    person: int
    token: str = field(repr=False)
    seconds: float


@dataclass(frozen=True, slots=True)
class ChatLease:
    """The right to send to `person`, at a `pace` if there is one; each step renews it for `seconds`."""

    person: int
    token: str = field(repr=False)
    seconds: float
    pace: Pace | None = None


def end_all(connection: Connection) -> None:
    """End every lease, whoever holds it."""
    for table in (PersonRow, DeliveryRow):
        connection.execute(
            update(table).where(table.lease_until.is_not(None)).values(lease_token=None, lease_until=None)
        )


def fresh_token() -> str:
    """Return a token that was never used."""
    return secrets.token_hex(16)
