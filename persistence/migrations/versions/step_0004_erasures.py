"""Clients who were erased: the counts that are left of them, and who still waits for the last words."""

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"

_NUMBER = sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    """Build the table, and the column of those whose chat is still known."""
    op.add_column("people", sa.Column("erased_at", sa.DateTime(timezone=True)))
    op.create_table(
        "erasures",
        sa.Column("number", _NUMBER, autoincrement=True, nullable=False),
        sa.Column("coach", _NUMBER),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("workouts", sa.Integer(), nullable=False),
        sa.Column("sets", sa.Integer(), nullable=False),
        sa.Column("messages", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(["coach"], ["people.number"], name="erasures_coach_stands"),
        sa.PrimaryKeyConstraint("number", name="erasures_key"),
        sqlite_autoincrement=True,
    )
    op.create_index("erasures_by_coach", "erasures", ["coach"])


def downgrade() -> None:
    """Drop the counts and the column again."""
    op.drop_table("erasures")
    op.drop_column("people", "erased_at")
