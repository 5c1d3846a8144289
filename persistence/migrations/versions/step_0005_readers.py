"""Which worker reads a platform's updates: one at a time, under a lease with a fencing token."""

import sqlalchemy as sa
from alembic import op

revision = "0005"
down_revision = "0004"


def upgrade() -> None:
    """Build the table; nobody reads yet."""
    op.create_table(
        "readers",
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("fence", sa.BigInteger().with_variant(sa.Integer(), "sqlite"), nullable=False),
        sa.Column("lease_until", sa.DateTime(timezone=True)),
        sa.CheckConstraint("fence >= 0", name="fence_counts"),
        sa.PrimaryKeyConstraint("name", name="readers_key"),
    )


def downgrade() -> None:
    """Drop the table again."""
    op.drop_table("readers")
