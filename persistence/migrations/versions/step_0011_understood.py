"""What a client's message was taken for, kept with it."""

import sqlalchemy as sa
from alembic import op

revision = "0011"
down_revision = "0010"


def upgrade() -> None:
    """Build the column; of what was heard before, it is not known."""
    op.add_column("inbox", sa.Column("understood", sa.Text))


def downgrade() -> None:
    """Drop it again; what was heard stays."""
    op.drop_column("inbox", "understood")
