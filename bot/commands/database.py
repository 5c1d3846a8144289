"""The database of a command: opened, brought up to date, and closed in the end."""

import tempfile
from collections.abc import Iterator
from contextlib import contextmanager

from bot.faults import OperatorFault
from bot.wording.faults import store_fault_words
from persistence.engine import open_engine
from persistence.faults import StoreFault
from persistence.migrate import migrate
from persistence.store import Store


@contextmanager
def opened(url: str, *, durable: bool = True) -> Iterator[Store]:
    """Open the database at `url`, brought up to date. Raises OperatorFault."""
    try:
        engine = open_engine(url, durable=durable)
        store = Store(engine)
        try:
            migrate(engine)
            yield store
        finally:
            store.close()
    except StoreFault as fault:
        raise OperatorFault((store_fault_words(fault),)) from fault


@contextmanager
def passing() -> Iterator[Store]:
    """Open a fresh database that is gone again afterwards."""
    with (
        tempfile.TemporaryDirectory(prefix="kilopost-") as folder,
        opened(f"sqlite:///{folder}/kilopost.sqlite3", durable=False) as store,
    ):
        yield store
