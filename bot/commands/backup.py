"""`backup`, `restore` and `copy`: all of a database into a file, from there, or into another database."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from bot.commands.bar import bar
from bot.faults import OperatorFault
from bot.settings import load_settings
from bot.wording.faults import copied_words, store_fault_words
from persistence.backup import back_up, check_whole
from persistence.backup import restore as put_back
from persistence.copying import copy_database
from persistence.engine import open_engine
from persistence.faults import StoreFault
from persistence.migrate import migrate


def backup_command(file: Path) -> int:
    """Write a backup of the database of the settings. Raises OperatorFault."""
    with _telling():
        source = open_engine(load_settings().database)
        try:
            check_whole(source)
            with bar("rows") as progress:
                copied = back_up(source, file, progress)
            print(copied_words(copied.rows, str(file)))
        finally:
            source.dispose()
    return 0


def restore_command(file: Path) -> int:
    """Put a backup into the database of the settings. Raises OperatorFault."""
    with _telling():
        target = open_engine(load_settings().database)
        try:
            with bar("rows") as progress:
                copied = put_back(file, target, progress)
            print(copied_words(copied.rows, "the database"))
        finally:
            target.dispose()
    return 0


def copy_command(to: str) -> int:
    """Copy the database of the settings into another one. Raises OperatorFault."""
    with _telling():
        source, target = open_engine(load_settings().database), open_engine(to)
        try:
            with bar("rows") as progress:
                copied = copy_database(source, target, progress)
            migrate(target)
            print(copied_words(copied.rows, "the other database"))
        finally:
            source.dispose()
            target.dispose()
    return 0


@contextmanager
def _telling() -> Iterator[None]:
    try:
        yield
    except StoreFault as fault:
        raise OperatorFault((store_fault_words(fault),)) from fault
    except OSError as fault:
        raise OperatorFault((f"{fault.filename}: {fault.strerror}",)) from fault
