"""The pace at which a platform takes messages: of all chats together, and of each."""

import sqlalchemy as sa
from alembic import op

revision = "0006"
down_revision = "0005"


def upgrade() -> None:
    """Build the table and the column; nothing of any pace is used up."""
    op.create_table(
        "budgets",
        sa.Column("name", sa.Text(), nullable=False),
        sa.Column("used_to", sa.DateTime(timezone=True), nullable=False),
        sa.PrimaryKeyConstraint("name", name="budgets_key"),
    )
    op.add_column("deliveries", sa.Column("used_to", sa.DateTime(timezone=True)))


def downgrade() -> None:
    """Drop them again."""
    op.drop_column("deliveries", "used_to")
    op.drop_table("budgets")
