"""Words for what an operator has to mend: one line each."""

from persistence.faults import (
    BadDatabaseUrl,
    ChatTaken,
    DatabaseFolderMissing,
    DatabaseNewer,
    DatabaseOlder,
    DatabaseTrouble,
    DatabaseUnreachable,
    NotOurDatabase,
    StoreFault,
)


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
        case DatabaseTrouble(why=why):
            return f"the database is in trouble: {why}"
        case ChatTaken(chat=chat, name=name):
            return f"the chat {chat} belongs to {name} already"
        case _:
            return f"the database said: {type(fault).__name__}"
