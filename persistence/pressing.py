"""What a button stands for, and the message that it stands under.

Its data name a message in the outbox and its place there. Where only the buttons of an earlier message were
changed, it is that one that it stands under.
"""

import re
from typing import Any

from sqlalchemy import Connection, bindparam, select

from domain.actions import Action
from domain.chosen import only_shows
from domain.expressions import Expression
from domain.incoming import Pressed, Under
from persistence.replies import came_of
from persistence.statements import Prepared
from persistence.tables import InboxRow, OutboxRow

SHOWS = ":shows"
"""What ends the data of a button that only shows something, so that the edge of a platform can tell a new
press of it from one that comes again: all other buttons do what they do once."""

_DATA = Expression(rf"(\d{{1,18}}):(\d{{1,3}})(?:{SHOWS})?", re.ASCII)
_MESSAGE = Prepared(
    select(
        OutboxRow.actions, OutboxRow.about_message, OutboxRow.parts, OutboxRow.edits, OutboxRow.message_keys
    ).where(OutboxRow.number == bindparam("number"), OutboxRow.person == bindparam("person"))
)

_CAME_IN = Prepared(select(InboxRow.received_at).where(InboxRow.number == bindparam("number")))


def data_of(number: int, place: int, action: Action) -> str:
    """Return what the button at that place under message `number` sends back when pressed."""
    return f"{number}:{place}{SHOWS if only_shows(action) else ''}"


def with_action(connection: Connection, pressed: Pressed, person: int) -> Pressed:
    """Return the press with what the button stands for, and where it stood.

    Both stay None where there is no such button, or it was sent to somebody else.
    """
    data = _DATA.fullmatch(pressed.button)
    row = None if data is None else _message(connection, int(data[1]), person)
    if data is None or row is None or int(data[2]) >= len(row.actions):
        return pressed
    number, first = int(data[1]), row
    if row.edits is not None and not row.message_keys:
        number, first = row.edits, _message(connection, row.edits, person) or row
    reply = came_of(connection, first.about_message, first.parts, person)
    cause = {"number": first.about_message}
    at = None if first.about_message is None else _CAME_IN(connection, cause).scalar()
    under = Under(number=number, buttons=row.actions, reply=reply, at=at)
    return pressed.model_copy(update={"action": row.actions[int(data[2])], "under": under})


def _message(connection: Connection, number: int, person: int) -> Any:
    return _MESSAGE(connection, {"number": number, "person": person}).first()
