"""What clients and coaches write to each other, kept in the journal."""

import sqlalchemy as sa
from alembic import op

revision = "0007"
down_revision = "0006"

_NUMBER = sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    """Build the table."""
    op.create_table(
        "words",
        sa.Column("client", _NUMBER, nullable=False),
        sa.Column("number", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("writer", sa.Text(), nullable=False),
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("text", sa.Text(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("alert", sa.Integer()),
        sa.CheckConstraint("number >= 1", name="number_counts"),
        sa.CheckConstraint("writer IN ('client', 'coach')", name="writer_known"),
        sa.ForeignKeyConstraint(["client"], ["people.number"], name="words_client_stands"),
        sa.ForeignKeyConstraint(
            ["client", "alert"], ["alerts.client", "alerts.number"], name="words_alert_stands"
        ),
        sa.PrimaryKeyConstraint("client", "number", name="words_key"),
        sqlite_with_rowid=False,
    )


def downgrade() -> None:
    """Drop it again."""
    op.drop_table("words")
