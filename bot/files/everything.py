"""Everything about a client as one zip: the journal as a table, the messages, and all of it as JSON.

`everything.json` is `persistence.archive.KeptArchive`. The same store makes the same file, byte for byte.
"""

import io
import zipfile
from zoneinfo import ZoneInfo

from bot.markup import plain
from bot.wording.archive import BY, READ_ME, notes_words
from persistence.archive import KeptArchive, KeptMessage


def zipped(kept: KeptArchive, table: str) -> bytes:
    """Return the file; `table` is the journal as a table."""
    coach = kept.settings.coach
    names = {"name": kept.settings.name, "coach": coach, "notes": notes_words(coach, len(kept.coach_notes))}
    texts = {
        "read me.txt": READ_ME.format(**names),
        "journal.csv": f"\ufeff{table}",
        "messages.txt": messages_text(kept),
        "everything.json": with_plain_words(kept).model_dump_json(indent=1),
    }
    until = kept.until.astimezone(ZoneInfo(kept.settings.zone))
    moment = (until.year, until.month, until.day, until.hour, until.minute, until.second)
    content = io.BytesIO()
    with zipfile.ZipFile(content, "w", zipfile.ZIP_DEFLATED) as files:
        for name, text in texts.items():
            entry = zipfile.ZipInfo(name, moment)
            entry.compress_type = zipfile.ZIP_DEFLATED
            files.writestr(entry, text)
    return content.getvalue()


def messages_text(kept: KeptArchive) -> str:
    """Return all messages as a chat to read, in the client's local time."""
    zone = ZoneInfo(kept.settings.zone)
    return "\n".join(
        f"{each.at.astimezone(zone):%Y-%m-%d %H:%M}  {BY[each.by]}: {_said(each)}"
        for each in with_plain_words(kept).messages
    )


def with_plain_words(kept: KeptArchive) -> KeptArchive:
    """Return the archive with the bot's words as they were read, without markup."""
    messages = tuple(
        each.model_copy(update={"text": plain(each.text)}) if each.by == "bot" else each
        for each in kept.messages
    )
    return kept.model_copy(update={"messages": messages})


def _said(message: KeptMessage) -> str:
    return message.text if message.kind in {"text", "told"} else f"[{message.kind}] {message.text}".rstrip()
