"""A client's journal: workouts, recorded sets, exercises on hold, alerts. A set is never overwritten.

The records are numbered within their client, so the key of each is (client, number); on SQLite they lie in
that order on disk, which makes the recent past of one client a few pages, however large the table.
"""

from datetime import date, datetime
from decimal import Decimal
from typing import Any

from pydantic import TypeAdapter
from sqlalchemy import CheckConstraint, ForeignKey, ForeignKeyConstraint, Index, Text
from sqlalchemy.orm import Mapped, mapped_column

from domain.actions import Remedy
from domain.journal import AlertReason, WorkoutState, Writer
from domain.sets import LoadKind
from domain.units import Unit
from persistence.columns import AsJson
from persistence.tables.base import Base, Number, all_or_none, one_of, only

_CLUSTERED = {"sqlite_with_rowid": False}


class WorkoutRow(Base):
    """A workout begun, done, missed or skipped on the client's local `day`."""

    __tablename__ = "workouts"

    client: Mapped[Number] = mapped_column(ForeignKey("people.number"), primary_key=True)
    number: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    programme: Mapped[Number | None] = mapped_column(ForeignKey("programmes.number"))
    name: Mapped[str]
    day: Mapped[date]
    state: Mapped[WorkoutState] = mapped_column(Text)
    round: Mapped[int]
    skipped: Mapped[tuple[str, ...]] = mapped_column(AsJson(TypeAdapter(tuple[str, ...])))

    __table_args__ = (
        CheckConstraint("number >= 1", name="number_counts"),
        one_of("state", WorkoutState),
        Index("workouts_by_day", "client", "day", "number"),
        _CLUSTERED,
    )


class EntryRow(Base):
    """One recorded set, and the message that it came from.

    It counts until it is superseded by a later entry or taken back.
    """

    __tablename__ = "entries"

    client: Mapped[Number] = mapped_column(ForeignKey("people.number"), primary_key=True)
    number: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    workout: Mapped[int]
    message: Mapped[Number] = mapped_column(ForeignKey("inbox.number"), index=True)
    exercise: Mapped[str]
    load: Mapped[Decimal]
    unit: Mapped[Unit] = mapped_column(Text)
    load_kind: Mapped[LoadKind] = mapped_column(Text)
    reps: Mapped[int | None]
    seconds: Mapped[int | None]
    lowering_only: Mapped[bool]
    to_failure: Mapped[bool | None]
    rir: Mapped[Decimal | None]
    day: Mapped[date | None]
    at: Mapped[datetime]
    place: Mapped[int | None]
    superseded_by: Mapped[int | None]
    taken_back_at: Mapped[datetime | None]

    __table_args__ = (
        ForeignKeyConstraint(
            ["client", "workout"], ["workouts.client", "workouts.number"], name="entries_workout_stands"
        ),
        CheckConstraint("number >= 1", name="number_counts"),
        CheckConstraint("CAST(load AS NUMERIC) >= 0", name="load_not_negative"),
        CheckConstraint("load_kind <> 'body' OR CAST(load AS NUMERIC) = 0", name="body_has_no_load"),
        CheckConstraint("(reps IS NULL) <> (seconds IS NULL)", name="reps_or_seconds"),
        CheckConstraint("reps >= 0", name="reps_not_negative"),
        CheckConstraint("seconds >= 0", name="seconds_not_negative"),
        CheckConstraint("CAST(rir AS NUMERIC) >= 0", name="rir_not_negative"),
        CheckConstraint("superseded_by > number", name="superseded_by_later"),
        CheckConstraint("place < number", name="place_of_an_earlier_one"),
        CheckConstraint("superseded_by IS NULL OR taken_back_at IS NULL", name="gone_once"),
        one_of("unit", Unit),
        one_of("load_kind", LoadKind),
        only(
            "entries_by_day",
            "client",
            "day",
            "number",
            where="superseded_by IS NULL AND taken_back_at IS NULL",
        ),
        _CLUSTERED,
    )


class HoldRow(Base):
    """An exercise set aside because of pain, until someone lifts that."""

    __tablename__ = "exercise_holds"

    client: Mapped[Number] = mapped_column(ForeignKey("people.number"), primary_key=True)
    number: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    exercise: Mapped[str]
    place: Mapped[str]
    side: Mapped[str | None]
    since: Mapped[date]
    lifted_on: Mapped[date | None]
    lifted_by: Mapped[Number | None] = mapped_column(ForeignKey("people.number"), index=True)

    __table_args__ = (
        CheckConstraint("number >= 1", name="number_counts"),
        all_or_none("lifting_whole", "lifted_on", "lifted_by"),
        _CLUSTERED,
    )


class WordsRow(Base):
    """What a client or the coach has written to the other, under which `name`; `alert` is the question's."""

    __tablename__ = "words"

    client: Mapped[Number] = mapped_column(ForeignKey("people.number"), primary_key=True)
    number: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    writer: Mapped[Writer] = mapped_column(Text)
    name: Mapped[str]
    text: Mapped[str]
    at: Mapped[datetime]
    alert: Mapped[int | None]

    __table_args__ = (
        ForeignKeyConstraint(
            ["client", "alert"], ["alerts.client", "alerts.number"], name="words_alert_stands"
        ),
        CheckConstraint("number >= 1", name="number_counts"),
        one_of("writer", Writer),
        _CLUSTERED,
    )


class AlertRow(Base):
    """A matter that needs the coach, open until someone settles it with a remedy."""

    __tablename__ = "alerts"

    client: Mapped[Number] = mapped_column(ForeignKey("people.number"), primary_key=True)
    number: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    coach: Mapped[Number] = mapped_column(ForeignKey("people.number"), index=True)
    reason: Mapped[AlertReason] = mapped_column(Text)
    exercise: Mapped[str | None]
    evidence: Mapped[dict[str, Any]] = mapped_column(AsJson(TypeAdapter(dict[str, Any])))
    opened_at: Mapped[datetime]
    settled_at: Mapped[datetime | None]
    settled_by: Mapped[Number | None] = mapped_column(ForeignKey("people.number"), index=True)
    remedy: Mapped[Remedy | None] = mapped_column(Text)

    __table_args__ = (
        CheckConstraint("number >= 1", name="number_counts"),
        one_of("reason", AlertReason),
        one_of("remedy", Remedy),
        all_or_none("settling_whole", "settled_at", "settled_by", "remedy"),
        only("alerts_open", "client", "number", where="settled_at IS NULL"),
        _CLUSTERED,
    )
