"""`export`: the journals of clients as files, one each, into a folder, under a progress bar."""

from pathlib import Path
from typing import Literal

from bot.commands.bar import bar
from bot.commands.database import opened
from bot.faults import OperatorFault
from bot.files.writing import content_of, name_of
from bot.settings import load_settings
from bot.wording.faults import exported_words, journal_fault_words
from domain.called import the_one_named
from domain.parts import File, FileKind
from persistence.people import Person
from persistence.store import Store

Form = Literal["csv", "json", "pdf"]
_KINDS: dict[Form, FileKind] = {"csv": "journal table", "json": "journal data", "pdf": "journal pages"}


def export_command(folder: Path, clients: tuple[str, ...], form: Form) -> int:
    """Write the journals of these clients, or of all, into `folder`, made where it is missing.

    Of two clients of one name the second file has the client's number. Raises OperatorFault; a file that is
    there already is never written over.
    """
    with opened(load_settings().database) as store, bar("journals") as progress:
        people = _people(store, clients)
        written: set[str] = set()
        for done, person in enumerate(people, start=1):
            part = File(what=_KINDS[form], of=person.number, client=person.name)
            path = folder / name_of(part)
            if path.name in written:
                path = path.with_stem(f"{path.stem}-{person.number}")
            written.add(path.name)
            _write(path, content_of(part, store, person.number) or b"")
            progress(done, len(people))
    print(exported_words(len(people), str(folder)))
    return 0


def _people(store: Store, names: tuple[str, ...]) -> list[Person]:
    clients = [person for person in store.people() if person.is_client]
    if not names:
        return clients
    found = []
    for name in names:
        one = the_one_named(name, [(each.name, each) for each in clients])
        if one is None:
            there = tuple(each.name for each in clients)
            raise OperatorFault((journal_fault_words(name, "no client", there),))
        found.append(one)
    return found


def _write(path: Path, content: bytes) -> None:
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        with path.open("xb") as file:
            file.write(content)
    except OSError as fault:
        raise OperatorFault((f"{path}: {fault.strerror}",)) from fault
