"""A message on the page, as JSON: its words in stretches, its buttons, and what goes out beside it.

No markup goes over the line: the page makes elements of the few tags that there are, and text of the rest.
"""

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from bot.channel import Attachment
from bot.enclosing import file_in
from bot.files.writing import content_of, name_of
from bot.markup import plain, runs
from bot.pictures.drawing import draw, drawable, picture_name
from domain.incoming import Document, Edited, Started, Text, Unsupported
from persistence.chats import BotMessage, OwnMessage
from persistence.store import Store

LONGEST_QUOTE = 90
"""How much is shown of a message that is replied to."""


def own_entry(message: OwnMessage, quotes: Mapping[str, str]) -> dict[str, Any]:
    """Return what somebody has said; `quotes` has the words of the messages replied to, by key."""
    words, file = _own_words(message)
    return {
        "id": f"i{message.number}",
        "by": "me",
        "at": moment(message.at),
        "key": message.key,
        "words": [[words]] if words else [],
        "file": file,
        "edited": message.is_edited,
        "answers": _quote(quotes.get(message.answers or "", "")),
    }


def bot_entry(message: BotMessage, as_said: str | None = None) -> dict[str, Any]:
    """Return what the bot has said; `as_said` are its words where not all of them are kept."""
    shown, file = drawable(message.parts), file_in(message.parts)
    return {
        "id": f"o{message.number}",
        "by": "bot",
        "at": moment(message.at),
        "key": message.key,
        "words": [[run.text, *run.tags] for run in runs(message.words if as_said is None else as_said)],
        "buttons": [[label, data] for label, data in message.buttons],
        "picture": None if shown is None else picture_name(shown),
        "file": None if file is None else name_of(file),
        "kinds": sorted({part.kind for part in message.parts}),
    }


def picture_of(message: BotMessage) -> Attachment | None:
    """Return the message's picture, drawn anew; None where it has none. Takes time: call it in a thread."""
    shown = drawable(message.parts)
    return None if shown is None else Attachment(picture_name(shown), draw(shown))


def file_of(message: BotMessage, store: Store) -> Attachment | None:
    """Return the message's file with what stands by now, as far as its reader may see it. As `picture_of`."""
    part = file_in(message.parts)
    content = None if part is None else content_of(part, store, message.person)
    return None if part is None or content is None else Attachment(name_of(part), content)


def moment(at: datetime) -> str:
    """Return a moment as the page's script takes it."""
    return at.isoformat().replace("+00:00", "Z")


def _own_words(message: OwnMessage) -> tuple[str, str | None]:
    """Return the words, and the name of a file that was sent."""
    match message.said:
        case Text(text=text) | Edited(text=text):
            return text, None
        case Document(name=name, caption=caption):
            return caption, name
        case Started():
            return "/start", None
        case Unsupported(what=what):
            return f"({what})", None


def _quote(words: str) -> str | None:
    line = " ".join(plain(words).split())
    return (line if len(line) <= LONGEST_QUOTE else f"{line[: LONGEST_QUOTE - 1]}…") or None
