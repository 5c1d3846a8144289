"""A coach's notes on clients, and clients who are offered to another coach."""

import sqlalchemy as sa
from alembic import op

revision = "0008"
down_revision = "0007"

_NUMBER = sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    """Build both tables, and the index that finds all coaches."""
    op.create_index(
        "people_coaches",
        "people",
        ["number"],
        sqlite_where=sa.text("is_coach = 1"),
        postgresql_where=sa.text("is_coach"),
    )
    op.create_table(
        "notes",
        sa.Column("number", _NUMBER, autoincrement=True, nullable=False),
        sa.Column("coach", _NUMBER, nullable=False),
        sa.Column("client", _NUMBER, nullable=False),
        sa.Column("message", _NUMBER, nullable=False),
        sa.Column("text", sa.Text(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["client"], ["people.number"], name="notes_client_stands"),
        sa.ForeignKeyConstraint(["coach"], ["people.number"], name="notes_coach_stands"),
        sa.ForeignKeyConstraint(["message"], ["inbox.number"], name="notes_message_stands"),
        sa.PrimaryKeyConstraint("number", name="notes_key"),
        sqlite_autoincrement=True,
    )
    for column in ("client", "coach", "message"):
        op.create_index(f"notes_by_{column}", "notes", [column])
    op.create_table(
        "offers",
        sa.Column("client", _NUMBER, autoincrement=False, nullable=False),
        sa.Column("to", _NUMBER, nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("with_notes", sa.Boolean(), nullable=False),
        sa.ForeignKeyConstraint(["client"], ["people.number"], name="offers_client_stands"),
        sa.ForeignKeyConstraint(["to"], ["people.number"], name="offers_to_stands"),
        sa.PrimaryKeyConstraint("client", name="offers_key"),
    )
    op.create_index("offers_by_to", "offers", ["to"])


def downgrade() -> None:
    """Drop the notes and the offers again."""
    op.drop_table("offers")
    op.drop_table("notes")
    op.drop_index("people_coaches", "people")
