"""Messages that change an earlier one instead of adding one."""

import sqlalchemy as sa
from alembic import op

revision = "0009"
down_revision = "0008"

_NUMBER = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
_EDITS = sa.text("edits IS NOT NULL")


def upgrade() -> None:
    """Build the column, and the index of what changes another message."""
    op.add_column("outbox", sa.Column("edits", _NUMBER))
    op.create_index("outbox_edits", "outbox", ["edits"], sqlite_where=_EDITS, postgresql_where=_EDITS)


def downgrade() -> None:
    """Drop them again; what was said stays."""
    op.drop_index("outbox_edits", "outbox")
    op.drop_column("outbox", "edits")
