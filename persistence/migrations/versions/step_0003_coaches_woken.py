"""Coaches are woken, for their digests: those who never were, too."""

from alembic import op

revision = "0003"
down_revision = "0002"


def upgrade() -> None:
    """Let every coach be woken who has no moment for it yet."""
    op.execute("UPDATE people SET wake_at = created_at WHERE is_coach AND wake_at IS NULL")


def downgrade() -> None:
    """Leave the moments as they are: whoever was woken for nothing was never disturbed by it."""
