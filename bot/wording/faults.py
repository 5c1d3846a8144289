"""Words for what an operator has to mend: one line each."""

from persistence.faults import (
    BackupMissing,
    BackupThere,
    BadDatabaseUrl,
    ChatTaken,
    CopyDiffers,
    DatabaseBroken,
    DatabaseEmpty,
    DatabaseFolderMissing,
    DatabaseNewer,
    DatabaseNotEmpty,
    DatabaseOlder,
    DatabaseTrouble,
    DatabaseUnreachable,
    NotOurDatabase,
    StoreFault,
)


def journal_fault_words(of: str, fault: str, names: tuple[str, ...] = ()) -> str:
    """Return one line that says why an old journal is not taken."""
    match fault:
        case "too large":
            return f"{of} is too large"
        case "not text":
            return f"{of} is not plain text: save it as CSV"
        case "no client":
            return f"there is no client «{of}»; there are: {', '.join(names) or 'none'}"
        case "which date":
            return f"is «{of}» day first or month first? Say --day-first or --month-first"
        case _:
            return f"it could not be taken ({of}); nothing of the last portion is kept"


def store_fault_words(fault: StoreFault) -> str:
    """Return one line that says what is wrong with the database and what would mend it."""
    match fault:
        case BadDatabaseUrl(url=url):
            return f"«{url}» is no database address: say sqlite:///FILE or postgresql://USER@HOST/NAME"
        case DatabaseFolderMissing(folder=folder):
            return f"the folder {folder} for the database is not there: make it first"
        case DatabaseUnreachable(url=url, why=why):
            return f"cannot open the database {url}: {why}"
        case NotOurDatabase(url=url, why=why):
            return f"{url} is not a database of Kilopost ({why})"
        case DatabaseNewer(url=url, revision=revision):
            return f"{url} was made by a newer Kilopost (step {revision}): run that version, or a newer one"
        case DatabaseOlder(url=url):
            return f"{url} is of an older Kilopost and has to be brought up to date first"
        case DatabaseBroken(url=url, why=why):
            return f"{url} is damaged ({why}): put back a backup of it with `restore`"
        case DatabaseEmpty(url=url):
            return f"there is nothing of Kilopost in {url}"
        case DatabaseNotEmpty(url=url):
            return f"{url} holds something already: name an empty database"
        case CopyDiffers(url=url):
            return f"not everything arrived in {url}, so nothing was kept there"
        case BackupThere(path=path):
            return f"{path} is there already: name a new file"
        case BackupMissing(path=path):
            return f"there is no backup {path}"
        case DatabaseTrouble(why=why):
            return f"the database is in trouble: {why}"
        case ChatTaken(chat=chat, name=name):
            return f"the chat {chat} belongs to {name} already"
        case _:
            return f"the database said: {type(fault).__name__}"


def copied_words(rows: dict[str, int], to: str) -> str:
    """Say what was copied, from how many rows there are of each table."""
    return f"{rows['people']} people, {rows['entries']} sets and {rows['inbox']} messages are in {to}."


def exported_words(many: int, to: str) -> str:
    """Say how many journals were written."""
    return f"{many} {'journal is' if many == 1 else 'journals are'} in {to}."
