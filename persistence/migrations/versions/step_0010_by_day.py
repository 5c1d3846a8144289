"""A client's journal by its days: what is brought in later can be older than all that was told."""

import sqlalchemy as sa
from alembic import op

revision = "0010"
down_revision = "0009"

_COUNTING = sa.text("superseded_by IS NULL AND taken_back_at IS NULL")


def upgrade() -> None:
    """Index workouts, and the sets that count, by their days."""
    op.create_index("workouts_by_day", "workouts", ["client", "day", "number"])
    op.create_index(
        "entries_by_day",
        "entries",
        ["client", "day", "number"],
        sqlite_where=_COUNTING,
        postgresql_where=_COUNTING,
    )


def downgrade() -> None:
    """Drop both."""
    op.drop_index("entries_by_day", "entries")
    op.drop_index("workouts_by_day", "workouts")
