"""From Telegram's updates to what the inbox holds. Pure: nothing is fetched, stored or answered here.

Only private chats count. A group is left, a channel is ignored. A command counts only in a message as first
sent, never in an edit. A press that comes again under another update identifier has the same key; where the
button only shows something, a new press of it has one of its own.
"""

import re
from dataclasses import dataclass
from datetime import datetime
from typing import Final

import telegram
from telegram import CallbackQuery, Chat, ChatMemberUpdated, Message, Update
from telegram.constants import ChatMemberStatus, ChatType, UpdateType

from bot.textfile import is_named_as_text, limit_of, storable
from domain.expressions import Expression
from domain.incoming import Document, Edited, FromChat, Pressed, Reachable, Started, Text, Unsupported
from persistence.inbox import Received
from persistence.pressing import SHOWS

PLATFORM: Final = "telegram"

KINDS_OF_UPDATE: Final = (
    UpdateType.MESSAGE,
    UpdateType.EDITED_MESSAGE,
    UpdateType.CALLBACK_QUERY,
    UpdateType.MY_CHAT_MEMBER,
)
"""What the server is asked to tell of."""

_START: Final = Expression(r"/start(?:@\w+)?(?:\s+(?P<code>.*))?", re.IGNORECASE | re.DOTALL)
_OUTSIDE: Final = frozenset({ChatMemberStatus.BANNED, ChatMemberStatus.LEFT})
_NOT_TEXT: Final = (
    "image/",
    "audio/",
    "video/",
    "font/",
    "application/pdf",
    "application/zip",
    "application/vnd.",
)

_USUAL_NAMES: Final = {
    "sticker": "sticker",
    "voice": "voice message",
    "video_note": "video message",
    "animation": "animation",
    "photo": "photo",
    "video": "video",
    "audio": "audio file",
    "contact": "contact",
    "venue": "place",
    "location": "location",
    "poll": "poll",
    "dice": "dice",
    "game": "game",
    "story": "story",
    "checklist": "checklist",
    "paid_media": "photo",
}
"""Content that cannot be read, by its field in a message; where one implies another, it comes first."""


@dataclass(frozen=True, slots=True)
class WithFile:
    """A document whose content has to be fetched before it is whole."""

    received: Received
    name: str
    file_id: str


@dataclass(frozen=True, slots=True)
class InGroup:
    """Something from a group, where the bot has no place."""

    chat: int


def translate(update: Update, bot: int, now: datetime) -> Received | WithFile | InGroup | None:
    """Return what `update` comes to for the bot with this identifier; None where it is of no concern.

    `now` stands in for the time of a press, which Telegram does not tell.
    """
    if update.message is not None:
        return _message(update.message, bot)
    if update.edited_message is not None:
        return _edit(update.edited_message, bot, update.update_id)
    if update.callback_query is not None:
        return _press(update.callback_query, bot, now)
    if update.my_chat_member is not None:
        return _membership(update.my_chat_member, bot, update.update_id)
    return None


def _message(message: Message, bot: int) -> Received | WithFile | InGroup | None:
    if message.chat.type != ChatType.PRIVATE:
        return _elsewhere(message.chat)
    incoming = _content(message)
    if incoming is None:
        return None
    received = _received(message.chat, bot, str(message.message_id), message.date, incoming)
    if isinstance(incoming, Document) and incoming.fault is None and message.document is not None:
        return WithFile(received, incoming.name, message.document.file_id)
    return received


def _content(message: Message) -> FromChat | None:
    words = message.text if message.text is not None else message.caption
    if message.document is not None and message.animation is None:
        return _document(message.document, storable(message.caption or ""))
    if words is not None:
        start = _START.fullmatch(words.strip()) if message.text is not None else None
        if start is not None:
            return Started(code=storable((start["code"] or "").strip()))
        answered = message.reply_to_message
        replies_to = None if answered is None else str(answered.message_id)
        return Text(text=storable(words), key=str(message.message_id), replies_to=replies_to)
    for field, usual_name in _USUAL_NAMES.items():
        if getattr(message, field, None):
            return Unsupported(what=usual_name)
    return None


def _document(file: telegram.Document, caption: str) -> Document:
    """Return a document that is still to be fetched, or the fault that it has.

    What kind of file it is, its name says better: where a spreadsheet is installed, a table of plain text is
    sent as that program's.
    """
    name = storable(file.file_name or "")
    if (file.mime_type or "").startswith(_NOT_TEXT) and not is_named_as_text(name):
        return Document(name=name, fault="not text", caption=caption)
    if (file.file_size or 0) > limit_of(name):
        return Document(name=name, fault="too large", caption=caption)
    return Document(name=name, caption=caption)


def _edit(message: Message, bot: int, update: int) -> Received | InGroup | None:
    if message.chat.type != ChatType.PRIVATE:
        return _elsewhere(message.chat)
    words = message.text if message.text is not None else message.caption
    if words is None:
        return None
    edited = Edited(text=storable(words), key=str(message.message_id))
    at = message.edit_date or message.date
    return _received(message.chat, bot, f"{message.message_id}:edit:{update}", at, edited)


def _press(query: CallbackQuery, bot: int, now: datetime) -> Received | None:
    if query.message is None or query.message.chat.type != ChatType.PRIVATE:
        return None
    pressed = Pressed(button=storable(query.data or ""), query=query.id)
    again = f":{storable(query.id)}" if pressed.button.endswith(SHOWS) else ""
    key = f"{query.message.message_id}:press:{pressed.button}{again}"
    return _received(query.message.chat, bot, key, now, pressed)


def _membership(change: ChatMemberUpdated, bot: int, update: int) -> Received | InGroup | None:
    outside = change.new_chat_member.status in _OUTSIDE
    if change.chat.type != ChatType.PRIVATE:
        return None if outside else _elsewhere(change.chat)
    return _received(change.chat, bot, f"member:{update}", change.date, Reachable(reachable=not outside))


def _elsewhere(chat: Chat) -> InGroup | None:
    return None if chat.type == ChatType.CHANNEL else InGroup(_number(chat))


def _received(chat: Chat, bot: int, key: str, at: datetime, incoming: FromChat) -> Received:
    if not isinstance(at, datetime):  # the library lets that through
        raise TypeError("a message without a date")
    return Received(PLATFORM, f"{bot}:{_number(chat)}:{key}", f"{PLATFORM}:{chat.id}", at, incoming)


def _number(chat: Chat) -> int:
    """Return the chat's identifier; the library lets through whatever stands there. Raises TypeError."""
    if type(chat.id) is not int:
        raise TypeError("a chat without a number")
    return chat.id
