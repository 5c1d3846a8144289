"""By which keys a platform knows what was sent, so that a reply finds the message it answers."""

import json

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"

_NUMBER = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
_AT_ONCE = 1000


def upgrade() -> None:
    """Build the table, and fill it from what was sent so far."""
    keys = op.create_table(
        "sent_keys",
        sa.Column("chat", sa.Text(), nullable=False),
        sa.Column("message_key", sa.Text(), nullable=False),
        sa.Column("outbox", _NUMBER, nullable=False),
        sa.ForeignKeyConstraint(["outbox"], ["outbox.number"], name="sent_keys_outbox_stands"),
        sa.PrimaryKeyConstraint("chat", "message_key", name="sent_keys_key"),
        sqlite_with_rowid=False,
    )
    op.create_index("sent_keys_by_outbox", "sent_keys", ["outbox"])
    connection = op.get_bind()
    sent = sa.text(
        "SELECT outbox.number, people.chat, outbox.message_keys FROM outbox"
        " JOIN people ON people.number = outbox.person"
        " WHERE outbox.number > :after AND outbox.message_keys IS NOT NULL AND people.chat IS NOT NULL"
        " ORDER BY outbox.number LIMIT :most"
    )
    after = 0
    while rows := connection.execute(sent, {"after": after, "most": _AT_ONCE}).all():
        after = rows[-1].number
        # A key that has come twice is that of the message sent last.
        latest = {(row.chat, key): row.number for row in rows for key in json.loads(row.message_keys)}
        for chat, key in latest:
            connection.execute(keys.delete().where(keys.c.chat == chat, keys.c.message_key == key))
        if latest:
            connection.execute(
                keys.insert(),
                [
                    {"chat": chat, "message_key": key, "outbox": number}
                    for (chat, key), number in latest.items()
                ],
            )


def downgrade() -> None:
    """Forget the keys again; they stand in the outbox, too."""
    op.drop_table("sent_keys")
