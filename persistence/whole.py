"""A client's journal with nothing left out, for a file: read by the client, or by the client's coach."""

from sqlalchemy import Connection, select

from domain.authority import may_read_journal
from domain.journal_data import JournalData, journal_data
from domain.state import ClientState
from persistence.programmes import Programmes
from persistence.state import client_state
from persistence.tables import PersonRow


def whole_client(
    connection: Connection, client: int, reader: int, programmes: Programmes
) -> ClientState | None:
    """Return a client with the whole journal; None where `reader` is neither the client nor the coach now."""
    row = connection.execute(select(PersonRow).where(PersonRow.number == client, PersonRow.is_client)).first()
    if row is None or not may_read_journal(reader, client, row.coach):
        return None
    return client_state(connection, row, programmes, whole=True)


def whole_journal(
    connection: Connection, client: int, reader: int, programmes: Programmes
) -> JournalData | None:
    """Return a client's journal as data, with all that belongs to it; None as in `whole_client`."""
    state = whole_client(connection, client, reader, programmes)
    return None if state is None else journal_data(state)
