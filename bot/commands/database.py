"""The database of a command: opened, brought up to date, and closed in the end."""

import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from bot.faults import OperatorFault
from bot.wording.faults import store_fault_words
from persistence.copying import copy_database
from persistence.engine import file_of, open_engine
from persistence.faults import StoreFault
from persistence.fresh import write_fresh
from persistence.migrate import migrate, revision_of
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
        opened(write_fresh(Path(folder) / "kilopost.sqlite3"), durable=False) as store,
    ):
        yield store


@contextmanager
def copied(url: str) -> Iterator[Store]:
    """Open a copy of the database at `url`, brought up to date and gone again afterwards.

    Whatever is done on the copy reaches nobody, and the database itself is only read. Raises OperatorFault.
    """
    with tempfile.TemporaryDirectory(prefix="kilopost-") as folder:
        copy = f"sqlite:///{folder}/kilopost.sqlite3"
        try:
            source = open_engine(url)
            try:
                target = open_engine(copy, durable=False)
                try:
                    copy_database(source, target)
                finally:
                    target.dispose()
            finally:
                source.dispose()
        except StoreFault as fault:
            raise OperatorFault((store_fault_words(fault),)) from fault
        with opened(copy, durable=False) as store:
            yield store


def has_people(url: str) -> bool:
    """Return whether anybody is in the database at `url`; it is not made where it is missing.

    Raises OperatorFault.
    """
    try:
        file = file_of(url)
        if file is not None and not file.is_file():
            return False
        engine = open_engine(url)
        try:
            return revision_of(engine) is not None and bool(Store(engine).people())
        finally:
            engine.dispose()
    except StoreFault as fault:
        raise OperatorFault((store_fault_words(fault),)) from fault
