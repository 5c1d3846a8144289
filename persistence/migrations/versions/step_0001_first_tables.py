"""The first tables."""

from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None

_NUMBER = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
_EXACT = sa.Numeric().with_variant(sa.String(), "sqlite")
_MOMENT = sa.DateTime(timezone=True)
_JSON = sa.Text()


def upgrade() -> None:
    """Build all tables."""
    op.create_table(
        "cursors",
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("value", sa.Text(), nullable=False),
        sa.PrimaryKeyConstraint("name", name="cursors_key"),
    )
    op.create_table(
        "people",
        sa.Column("number", _NUMBER, autoincrement=True, nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("chat", sa.Text(), nullable=True),
        sa.Column("zone", sa.Text(), server_default="UTC", nullable=False),
        sa.Column("unit", sa.Text(), server_default="kg", nullable=False),
        sa.Column("is_coach", sa.Boolean(), server_default=sa.text("false"), nullable=False),
        sa.Column("is_client", sa.Boolean(), server_default=sa.text("false"), nullable=False),
        sa.Column("coach", _NUMBER, nullable=True),
        sa.Column("programme", _NUMBER, nullable=True),
        sa.Column("starts", sa.Date(), nullable=True),
        sa.Column("remind_at", sa.Time(), nullable=True),
        sa.Column("body_mass", _EXACT, nullable=True),
        sa.Column("equipment", _JSON, nullable=True),
        sa.Column("own_names", _JSON, server_default="{}", nullable=False),
        sa.Column("client_memory", _JSON, nullable=True),
        sa.Column("coach_memory", _JSON, nullable=True),
        sa.Column("wake_at", _MOMENT, nullable=True),
        sa.Column("lease_token", sa.Text(), nullable=True),
        sa.Column("lease_until", _MOMENT, nullable=True),
        sa.Column("unreachable_since", _MOMENT, nullable=True),
        sa.Column("created_at", _MOMENT, nullable=False),
        sa.CheckConstraint("unit IN ('kg', 'lb')", name="unit_known"),
        sa.CheckConstraint("(lease_token IS NULL) = (lease_until IS NULL)", name="lease_whole"),
        sa.CheckConstraint("CAST(body_mass AS NUMERIC) > 0", name="body_mass_positive"),
        sa.CheckConstraint(
            "NOT is_client OR (coach IS NOT NULL AND starts IS NOT NULL"
            " AND remind_at IS NOT NULL AND equipment IS NOT NULL)",
            name="client_whole",
        ),
        sa.ForeignKeyConstraint(["coach"], ["people.number"], name="people_coach_stands"),
        *_programme_of_people(),
        sa.PrimaryKeyConstraint("number", name="people_key"),
        sa.UniqueConstraint("chat", name="people_chat_once"),
        sqlite_autoincrement=True,
    )
    op.create_index("people_by_coach", "people", ["coach"])
    op.create_index("people_by_name", "people", ["name"])
    op.create_index("people_due", "people", ["wake_at", "number"], **_only(sa.text("wake_at IS NOT NULL")))
    op.create_table(
        "alerts",
        sa.Column("client", _NUMBER, nullable=False),
        sa.Column("number", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("coach", _NUMBER, nullable=False),
        sa.Column("reason", sa.Text(), nullable=False),
        sa.Column("exercise", sa.Text(), nullable=True),
        sa.Column("evidence", _JSON, nullable=False),
        sa.Column("opened_at", _MOMENT, nullable=False),
        sa.Column("settled_at", _MOMENT, nullable=True),
        sa.Column("settled_by", _NUMBER, nullable=True),
        sa.Column("remedy", sa.Text(), nullable=True),
        sa.CheckConstraint(
            "reason IN ('stall', 'review', 'pain', 'urgent', 'missed', 'question', 'unreachable')",
            name="reason_known",
        ),
        sa.CheckConstraint(
            "remedy IN ('lighten', 'swap', 'rest more', 'next programme',"
            " 'keep on', 'lift hold', 'keep held', 'let train', 'seen')",
            name="remedy_known",
        ),
        sa.CheckConstraint(
            "(settled_at IS NULL) = (settled_by IS NULL) AND (settled_at IS NULL) = (remedy IS NULL)",
            name="settling_whole",
        ),
        sa.CheckConstraint("number >= 1", name="number_counts"),
        sa.ForeignKeyConstraint(["client"], ["people.number"], name="alerts_client_stands"),
        sa.ForeignKeyConstraint(["coach"], ["people.number"], name="alerts_coach_stands"),
        sa.ForeignKeyConstraint(["settled_by"], ["people.number"], name="alerts_settled_by_stands"),
        sa.PrimaryKeyConstraint("client", "number", name="alerts_key"),
        sqlite_with_rowid=False,
    )
    op.create_index("alerts_by_coach", "alerts", ["coach"])
    op.create_index("alerts_by_settled_by", "alerts", ["settled_by"])
    op.create_index("alerts_open", "alerts", ["client", "number"], **_only(sa.text("settled_at IS NULL")))
    op.create_table(
        "deliveries",
        sa.Column("person", _NUMBER, autoincrement=False, nullable=False),
        sa.Column("platform", sa.Text(), nullable=False),
        sa.Column("first", _NUMBER, nullable=True),
        sa.Column("due_at", _MOMENT, nullable=True),
        sa.Column("nudges_only", sa.Boolean(), nullable=False),
        sa.Column("lease_token", sa.Text(), nullable=True),
        sa.Column("lease_until", _MOMENT, nullable=True),
        sa.CheckConstraint("(lease_token IS NULL) = (lease_until IS NULL)", name="lease_whole"),
        sa.CheckConstraint("(first IS NULL) = (due_at IS NULL)", name="waiting_whole"),
        sa.ForeignKeyConstraint(["person"], ["people.number"], name="deliveries_person_stands"),
        sa.PrimaryKeyConstraint("person", name="deliveries_key"),
    )
    op.create_index(
        "deliveries_due",
        "deliveries",
        ["platform", "nudges_only", "due_at", "first"],
        **_only(sa.text("due_at IS NOT NULL")),
    )
    op.create_index("deliveries_next", "deliveries", ["due_at"], **_only(sa.text("due_at IS NOT NULL")))
    op.create_table(
        "exercise_holds",
        sa.Column("client", _NUMBER, nullable=False),
        sa.Column("number", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("exercise", sa.Text(), nullable=False),
        sa.Column("place", sa.Text(), nullable=False),
        sa.Column("side", sa.Text(), nullable=True),
        sa.Column("since", sa.Date(), nullable=False),
        sa.Column("lifted_on", sa.Date(), nullable=True),
        sa.Column("lifted_by", _NUMBER, nullable=True),
        sa.CheckConstraint("(lifted_on IS NULL) = (lifted_by IS NULL)", name="lifting_whole"),
        sa.CheckConstraint("number >= 1", name="number_counts"),
        sa.ForeignKeyConstraint(["client"], ["people.number"], name="exercise_holds_client_stands"),
        sa.ForeignKeyConstraint(["lifted_by"], ["people.number"], name="exercise_holds_lifted_by_stands"),
        sa.PrimaryKeyConstraint("client", "number", name="exercise_holds_key"),
        sqlite_with_rowid=False,
    )
    op.create_index("exercise_holds_by_lifted_by", "exercise_holds", ["lifted_by"])
    op.create_table(
        "inbox",
        sa.Column("number", _NUMBER, autoincrement=True, nullable=False),
        sa.Column("source", sa.Text(), nullable=False),
        sa.Column("key", sa.Text(), nullable=False),
        sa.Column("person", _NUMBER, nullable=False),
        sa.Column("chat", sa.Text(), nullable=True),
        sa.Column("message_key", sa.Text(), nullable=True),
        sa.Column("incoming", _JSON, nullable=False),
        sa.Column("received_at", _MOMENT, nullable=False),
        sa.Column("done_at", _MOMENT, nullable=True),
        sa.Column("fault", sa.Text(), nullable=True),
        sa.CheckConstraint("(source = 'desk') = (chat IS NULL)", name="chat_known"),
        sa.CheckConstraint("fault IS NULL OR done_at IS NOT NULL", name="fault_is_done"),
        sa.ForeignKeyConstraint(["person"], ["people.number"], name="inbox_person_stands"),
        sa.PrimaryKeyConstraint("number", name="inbox_key"),
        sa.UniqueConstraint("source", "key", name="inbox_key_once"),
        sqlite_autoincrement=True,
    )
    op.create_index(
        "inbox_by_message", "inbox", ["chat", "message_key"], **_only(sa.text("message_key IS NOT NULL"))
    )
    op.create_index("inbox_by_person", "inbox", ["person"])
    op.create_index("inbox_waiting", "inbox", ["number"], **_only(sa.text("done_at IS NULL")))
    op.create_index(
        "inbox_waiting_of_person", "inbox", ["person", "number"], **_only(sa.text("done_at IS NULL"))
    )
    op.create_table(
        "programmes",
        sa.Column("number", _NUMBER, autoincrement=True, nullable=False),
        sa.Column("coach", _NUMBER, nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("version", sa.Integer(), nullable=False),
        sa.Column("sheet", sa.Text(), nullable=False),
        sa.Column("programme", _JSON, nullable=False),
        sa.Column("created_at", _MOMENT, nullable=False),
        sa.CheckConstraint("version >= 1", name="version_counts"),
        sa.ForeignKeyConstraint(["coach"], ["people.number"], name="programmes_coach_stands"),
        sa.PrimaryKeyConstraint("number", name="programmes_key"),
        sa.UniqueConstraint("coach", "name", "version", name="programmes_version_once"),
        sqlite_autoincrement=True,
    )
    op.create_table(
        "invitations",
        sa.Column("code_hash", sa.Text(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("coach", _NUMBER, nullable=True),
        sa.Column("programme", _NUMBER, nullable=True),
        sa.Column("person", _NUMBER, nullable=True),
        sa.Column("as_coach", sa.Boolean(), nullable=False),
        sa.Column("created_at", _MOMENT, nullable=False),
        sa.Column("expires", _MOMENT, nullable=False),
        sa.Column("used_by", _NUMBER, nullable=True),
        sa.Column("used_at", _MOMENT, nullable=True),
        sa.Column("revoked_at", _MOMENT, nullable=True),
        sa.CheckConstraint("(used_by IS NULL) = (used_at IS NULL)", name="use_whole"),
        sa.CheckConstraint("as_coach OR coach IS NOT NULL", name="coach_known"),
        sa.CheckConstraint("length(code_hash) = 64", name="code_hashed"),
        sa.ForeignKeyConstraint(["coach"], ["people.number"], name="invitations_coach_stands"),
        sa.ForeignKeyConstraint(["person"], ["people.number"], name="invitations_person_stands"),
        sa.ForeignKeyConstraint(["programme"], ["programmes.number"], name="invitations_programme_stands"),
        sa.ForeignKeyConstraint(["used_by"], ["people.number"], name="invitations_used_by_stands"),
        sa.PrimaryKeyConstraint("code_hash", name="invitations_key"),
    )
    op.create_index("invitations_by_coach", "invitations", ["coach"])
    op.create_index("invitations_by_person", "invitations", ["person"])
    op.create_index("invitations_by_used_by", "invitations", ["used_by"])
    op.create_table(
        "outbox",
        sa.Column("number", _NUMBER, autoincrement=True, nullable=False),
        sa.Column("person", _NUMBER, nullable=False),
        sa.Column("weight", sa.Text(), nullable=False),
        sa.Column("parts", _JSON, nullable=False),
        sa.Column("actions", _JSON, nullable=False),
        sa.Column("about_message", _NUMBER, nullable=True),
        sa.Column("about_wake", _MOMENT, nullable=True),
        sa.Column("created_at", _MOMENT, nullable=False),
        sa.Column("state", sa.Text(), server_default="pending", nullable=False),
        sa.Column("attempts", sa.Integer(), server_default=sa.text("0"), nullable=False),
        sa.Column("trying_since", _MOMENT, nullable=True),
        sa.Column("not_before", _MOMENT, nullable=True),
        sa.Column("sent_at", _MOMENT, nullable=True),
        sa.Column("words", sa.Text(), nullable=True),
        sa.Column("labels", _JSON, nullable=True),
        sa.Column("message_keys", _JSON, nullable=True),
        sa.Column("fault", sa.Text(), nullable=True),
        sa.CheckConstraint("(state = 'failed') = (fault IS NOT NULL)", name="fault_is_failed"),
        sa.CheckConstraint("(state = 'sent') = (sent_at IS NOT NULL)", name="sent_whole"),
        sa.CheckConstraint("state = 'pending' OR trying_since IS NULL", name="trying_is_pending"),
        sa.CheckConstraint("state IN ('pending', 'sent', 'failed')", name="state_known"),
        sa.CheckConstraint("weight IN ('answer', 'alert', 'nudge')", name="weight_known"),
        sa.CheckConstraint(
            "(sent_at IS NULL) = (words IS NULL) AND (sent_at IS NULL) = (labels IS NULL)"
            " AND (sent_at IS NULL) = (message_keys IS NULL)",
            name="words_whole",
        ),
        sa.CheckConstraint("about_message IS NULL OR about_wake IS NULL", name="about_one"),
        sa.CheckConstraint("attempts >= 0", name="attempts_count"),
        sa.ForeignKeyConstraint(["about_message"], ["inbox.number"], name="outbox_about_message_stands"),
        sa.ForeignKeyConstraint(["person"], ["people.number"], name="outbox_person_stands"),
        sa.PrimaryKeyConstraint("number", name="outbox_key"),
        sqlite_autoincrement=True,
    )
    op.create_index("outbox_by_about_message", "outbox", ["about_message"])
    op.create_index("outbox_by_person", "outbox", ["person"])
    op.create_index("outbox_waiting", "outbox", ["person", "number"], **_only(sa.text("state = 'pending'")))
    op.create_table(
        "workouts",
        sa.Column("client", _NUMBER, nullable=False),
        sa.Column("number", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("programme", _NUMBER, nullable=True),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("day", sa.Date(), nullable=False),
        sa.Column("state", sa.Text(), nullable=False),
        sa.Column("round", sa.Integer(), nullable=False),
        sa.Column("skipped", _JSON, nullable=False),
        sa.CheckConstraint("state IN ('open', 'done', 'missed', 'skipped')", name="state_known"),
        sa.CheckConstraint("number >= 1", name="number_counts"),
        sa.ForeignKeyConstraint(["client"], ["people.number"], name="workouts_client_stands"),
        sa.ForeignKeyConstraint(["programme"], ["programmes.number"], name="workouts_programme_stands"),
        sa.PrimaryKeyConstraint("client", "number", name="workouts_key"),
        sqlite_with_rowid=False,
    )
    op.create_table(
        "entries",
        sa.Column("client", _NUMBER, nullable=False),
        sa.Column("number", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("workout", sa.Integer(), nullable=False),
        sa.Column("message", _NUMBER, nullable=False),
        sa.Column("exercise", sa.Text(), nullable=False),
        sa.Column("load", _EXACT, nullable=False),
        sa.Column("unit", sa.Text(), nullable=False),
        sa.Column("load_kind", sa.Text(), nullable=False),
        sa.Column("reps", sa.Integer(), nullable=True),
        sa.Column("seconds", sa.Integer(), nullable=True),
        sa.Column("lowering_only", sa.Boolean(), nullable=False),
        sa.Column("to_failure", sa.Boolean(), nullable=True),
        sa.Column("rir", _EXACT, nullable=True),
        sa.Column("day", sa.Date(), nullable=True),
        sa.Column("at", _MOMENT, nullable=False),
        sa.Column("place", sa.Integer(), nullable=True),
        sa.Column("superseded_by", sa.Integer(), nullable=True),
        sa.Column("taken_back_at", _MOMENT, nullable=True),
        sa.CheckConstraint("load_kind <> 'body' OR CAST(load AS NUMERIC) = 0", name="body_has_no_load"),
        sa.CheckConstraint(
            "load_kind IN ('total', 'each', 'added', 'assist', 'body')", name="load_kind_known"
        ),
        sa.CheckConstraint("unit IN ('kg', 'lb')", name="unit_known"),
        sa.CheckConstraint("(reps IS NULL) <> (seconds IS NULL)", name="reps_or_seconds"),
        sa.CheckConstraint("CAST(load AS NUMERIC) >= 0", name="load_not_negative"),
        sa.CheckConstraint("CAST(rir AS NUMERIC) >= 0", name="rir_not_negative"),
        sa.CheckConstraint("number >= 1", name="number_counts"),
        sa.CheckConstraint("reps >= 0", name="reps_not_negative"),
        sa.CheckConstraint("seconds >= 0", name="seconds_not_negative"),
        sa.CheckConstraint("superseded_by > number", name="superseded_by_later"),
        sa.CheckConstraint("place < number", name="place_of_an_earlier_one"),
        sa.CheckConstraint("superseded_by IS NULL OR taken_back_at IS NULL", name="gone_once"),
        sa.ForeignKeyConstraint(
            ["client", "workout"], ["workouts.client", "workouts.number"], name="entries_workout_stands"
        ),
        sa.ForeignKeyConstraint(["client"], ["people.number"], name="entries_client_stands"),
        sa.ForeignKeyConstraint(["message"], ["inbox.number"], name="entries_message_stands"),
        sa.PrimaryKeyConstraint("client", "number", name="entries_key"),
        sqlite_with_rowid=False,
    )
    op.create_index("entries_by_message", "entries", ["message"])
    if not _is_sqlite():
        op.create_foreign_key("people_programme_stands", "people", "programmes", ["programme"], ["number"])


def downgrade() -> None:
    """Drop all tables."""
    if not _is_sqlite():
        op.drop_constraint("people_programme_stands", "people", type_="foreignkey")
    for table in (
        "entries",
        "workouts",
        "outbox",
        "invitations",
        "programmes",
        "inbox",
        "exercise_holds",
        "deliveries",
        "alerts",
        "people",
        "cursors",
    ):
        op.drop_table(table)


def _is_sqlite() -> bool:
    return op.get_bind().dialect.name == "sqlite"


def _programme_of_people() -> list[sa.ForeignKeyConstraint]:
    """Return the constraint where it can point at a table that comes later; PostgreSQL gets it at the end."""
    if not _is_sqlite():
        return []
    return [sa.ForeignKeyConstraint(["programme"], ["programmes.number"], name="people_programme_stands")]


def _only(where: sa.TextClause) -> dict[str, Any]:
    return {"sqlite_where": where, "postgresql_where": where}
