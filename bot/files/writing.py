"""Which file a part asks for, under which name, and its content."""

from typing import assert_never

from bot.files.everything import zipped
from bot.files.reading import reading_of
from bot.wording.enclosed import file_name
from domain.journal_table.writer import write_table
from domain.parts import File
from persistence.store import Store


def name_of(part: File) -> str:
    """Return the name of the file."""
    match part.what:
        case "journal table":
            return file_name("journal", part.client, ending="csv")
        case "journal pages":
            return file_name("journal", part.client, ending="pdf")
        case "journal data":
            return file_name("journal", part.client, ending="json")
        case "journal reading":
            return file_name("what I read for", part.client, ending="csv")
        case "everything":
            return file_name("everything", part.client, ending="zip")
        case _:
            assert_never(part.what)


def content_of(part: File, store: Store, reader: int) -> bytes | None:
    """Return the file for the person of number `reader`; None where it is not for them to see."""
    match part.what:
        case "journal table":
            state = store.whole_client(part.of, reader)
            # With its mark, by which spreadsheets know that it is UTF-8.
            return None if state is None else write_table(state).encode("utf-8-sig")
        case "journal pages":
            from bot.files.pages import printed  # noqa: PLC0415 two seconds and 50 MB, seldom asked for

            state = store.whole_client(part.of, reader)
            return None if state is None else printed(state)
        case "journal data":
            data = store.whole_journal(part.of, reader)
            return None if data is None else data.model_dump_json(indent=1).encode()
        case "journal reading":
            text, state = store.file_sent(part.source, reader), store.whole_client(part.of, reader)
            if text is None or state is None:
                return None
            return reading_of(part, state, text).encode("utf-8-sig")
        case "everything":
            kept, state = store.archive(part.of, reader), store.whole_client(part.of, reader)
            return None if kept is None or state is None else zipped(kept, write_table(state))
        case _:
            assert_never(part.what)
