"""People, the programmes of coaches, and invitations."""

from datetime import date, datetime, time
from decimal import Decimal

from pydantic import TypeAdapter
from sqlalchemy import CheckConstraint, ForeignKey, Index, Text, UniqueConstraint, text
from sqlalchemy.orm import Mapped, mapped_column

from domain.coach_memory import CoachMemory
from domain.equipment import Equipment
from domain.memory import ClientMemory
from domain.programme import Programme
from domain.units import Unit
from persistence.columns import AsJson
from persistence.tables.base import Base, Number, OwnNumber, all_or_none, one_of, only


class PersonRow(Base):
    """Anybody who has written, or was prepared by a roster: a client, a coach, both, or (neither) a stranger.

    `chat` is the platform and its name for the chat, as in `telegram:1234`. `wake_at` is when this person is
    to be woken next. The lease says which worker is deciding for this person, and until when. `erased_at` is
    filled of a client who was erased, for as long as the chat is still needed to say so.
    """

    __tablename__ = "people"

    number: Mapped[OwnNumber]
    name: Mapped[str] = mapped_column(index=True)
    chat: Mapped[str | None] = mapped_column(unique=True)
    zone: Mapped[str] = mapped_column(server_default="UTC")
    unit: Mapped[Unit] = mapped_column(Text, server_default="kg")
    is_coach: Mapped[bool] = mapped_column(server_default=text("false"))
    is_client: Mapped[bool] = mapped_column(server_default=text("false"))
    coach: Mapped[Number | None] = mapped_column(ForeignKey("people.number"), index=True)
    programme: Mapped[Number | None] = mapped_column(
        ForeignKey("programmes.number", use_alter=True)  # a programme points at its coach, too
    )
    starts: Mapped[date | None]
    remind_at: Mapped[time | None]
    body_mass: Mapped[Decimal | None]
    equipment: Mapped[Equipment | None] = mapped_column(AsJson(TypeAdapter(Equipment), alike=True))
    own_names: Mapped[dict[str, str]] = mapped_column(
        AsJson(TypeAdapter(dict[str, str])), server_default="{}"
    )
    client_memory: Mapped[ClientMemory | None] = mapped_column(AsJson(TypeAdapter(ClientMemory)))
    coach_memory: Mapped[CoachMemory | None] = mapped_column(AsJson(TypeAdapter(CoachMemory), alike=True))
    wake_at: Mapped[datetime | None]
    lease_token: Mapped[str | None]
    lease_until: Mapped[datetime | None]
    unreachable_since: Mapped[datetime | None]
    created_at: Mapped[datetime]
    erased_at: Mapped[datetime | None]

    __table_args__ = (
        one_of("unit", Unit),
        all_or_none("lease_whole", "lease_token", "lease_until"),
        CheckConstraint(
            "NOT is_client OR (coach IS NOT NULL AND starts IS NOT NULL"
            " AND remind_at IS NOT NULL AND equipment IS NOT NULL)",
            name="client_whole",
        ),
        CheckConstraint("CAST(body_mass AS NUMERIC) > 0", name="body_mass_positive"),
        only("people_due", "wake_at", "number", where="wake_at IS NOT NULL"),
        Index(
            "people_coaches",
            "number",
            sqlite_where=text("is_coach = 1"),  # each as SQLAlchemy asks for it
            postgresql_where=text("is_coach"),
        ),
        {"sqlite_autoincrement": True},
    )


class ProgrammeRow(Base):
    """One version of a coach's programme, with the sheet that it was read from. Never changed."""

    __tablename__ = "programmes"

    number: Mapped[OwnNumber]
    coach: Mapped[Number] = mapped_column(ForeignKey("people.number"))
    name: Mapped[str]
    version: Mapped[int]
    sheet: Mapped[str]
    programme: Mapped[Programme] = mapped_column(AsJson(TypeAdapter(Programme)))
    created_at: Mapped[datetime]

    __table_args__ = (
        UniqueConstraint("coach", "name", "version", name="programmes_version_once"),
        CheckConstraint("version >= 1", name="version_counts"),
        {"sqlite_autoincrement": True},
    )


class InvitationRow(Base):
    """An invitation. Of its code only the SHA-256 stands here, in hexadecimal."""

    __tablename__ = "invitations"

    code_hash: Mapped[str] = mapped_column(primary_key=True)
    name: Mapped[str]
    coach: Mapped[Number | None] = mapped_column(ForeignKey("people.number"), index=True)
    programme: Mapped[Number | None] = mapped_column(ForeignKey("programmes.number"))
    person: Mapped[Number | None] = mapped_column(ForeignKey("people.number"), index=True)
    as_coach: Mapped[bool]
    created_at: Mapped[datetime]
    expires: Mapped[datetime]
    used_by: Mapped[Number | None] = mapped_column(ForeignKey("people.number"), index=True)
    used_at: Mapped[datetime | None]
    revoked_at: Mapped[datetime | None]

    __table_args__ = (
        all_or_none("use_whole", "used_by", "used_at"),
        CheckConstraint("length(code_hash) = 64", name="code_hashed"),
        CheckConstraint("as_coach OR coach IS NOT NULL", name="coach_known"),
    )


class ErasureRow(Base):
    """That a client of this coach was erased: counts, and nothing that tells who it was."""

    __tablename__ = "erasures"

    number: Mapped[OwnNumber]
    coach: Mapped[Number | None] = mapped_column(ForeignKey("people.number"), index=True)
    at: Mapped[datetime]
    workouts: Mapped[int]
    sets: Mapped[int]
    messages: Mapped[int]
    """Those that came in from the client."""

    __table_args__ = ({"sqlite_autoincrement": True},)


class NoteRow(Base):
    """What a coach has noted on a client, for the coach alone, and the message that it came from."""

    __tablename__ = "notes"

    number: Mapped[OwnNumber]
    coach: Mapped[Number] = mapped_column(ForeignKey("people.number"), index=True)
    client: Mapped[Number] = mapped_column(ForeignKey("people.number"), index=True)
    message: Mapped[Number] = mapped_column(ForeignKey("inbox.number"), index=True)
    text: Mapped[str]
    at: Mapped[datetime]

    __table_args__ = ({"sqlite_autoincrement": True},)


class OfferRow(Base):
    """That a client is offered to coach `to` and waits for an answer: with the coach's notes, or without."""

    __tablename__ = "offers"

    client: Mapped[Number] = mapped_column(ForeignKey("people.number"), primary_key=True, autoincrement=False)
    to: Mapped[Number] = mapped_column(ForeignKey("people.number"), index=True)
    at: Mapped[datetime]
    with_notes: Mapped[bool]
