"""One outgoing message to the Bot API, in as many requests as its limits ask for.

Whether to try again, and when, is decided in delivery. Here it is only found out what became of a message.
"""

import asyncio
import logging
from collections.abc import Iterator
from dataclasses import dataclass, replace

from telegram import Bot, InlineKeyboardButton, InlineKeyboardMarkup, LinkPreviewOptions, Message
from telegram.constants import ParseMode
from telegram.error import TelegramError

from bot.channel import Attachment, Delivered, Final, Rendered, Sent, TryAgain
from bot.faults import told
from bot.markup import escape, plain
from bot.telegram.errors import SOON_SECONDS, is_as_wanted, meaning, named
from bot.telegram.incoming import PLATFORM
from bot.telegram.pieces import BUTTON_DATA_LIMIT, CAPTION_LIMIT, TEXT_LIMIT, length, pieces, rows
from persistence.pace import Pace, Rate

PACE = Pace(PLATFORM, everywhere=Rate(27, at_once=3), in_chat=Rate(1, at_once=3))
"""What the platform bears (core.telegram.org/bots/faq#my-bot-is-hitting-limits-how-do-i-avoid-this): about 30
messages a second to all, and one a second into a chat, short bursts apart. A text in several pieces counts
once, for which some room is left."""

_log = logging.getLogger(__name__)


@dataclass(frozen=True, slots=True)
class _Part:
    """What goes out in one request: a text, or a `file` with it, which is a document or a picture."""

    text_html: str
    file: Attachment | None = None
    is_picture: bool = False
    keyboard: InlineKeyboardMarkup | None = None


class TelegramSender:
    """Sends through `bot`, which is open.

    A message in several parts is finished in one go where it can be: a later part that fails is tried again
    here for up to `patience_seconds`, since the earlier ones cannot be taken back.
    """

    def __init__(self, bot: Bot, patience_seconds: float = 20) -> None:
        self._bot = bot
        self._patience_seconds = patience_seconds

    async def send(self, chat: str, message: Rendered) -> Delivered:
        """Send `message` to `chat`.

        What is refused goes again in plainer forms: a picture, a file, marks or buttons may be missing in the
        end, the words are not.
        """
        number = _number(chat)
        parts = _parts(message)
        if number is None or not parts:
            _log.error("a message of %d parts for chat %r cannot be sent", len(parts), chat)
            return Final("refused")
        result = await self._send_all(number, parts)
        for form, plainer in _plainer(message):
            if result != Final("refused"):
                break
            _log.error("a message was refused, and goes %s", form)
            result = await self._send_all(number, _parts(plainer))
        return result

    async def change(self, chat: str, message_key: str, message: Rendered) -> Delivered:
        """Change a message that was sent; one that is so already is as good as changed."""
        limit = CAPTION_LIMIT if message.is_caption else TEXT_LIMIT
        number, texts = _number(chat), pieces(message.text_html, limit) if message.text_html else []
        if number is None or not message_key.isdecimal() or len(texts) > 1:
            return Final("refused")
        keyboard = _keyboard(message.buttons)
        try:
            if texts and message.is_caption:
                await self._bot.edit_message_caption(
                    number,
                    int(message_key),
                    caption=texts[0],
                    parse_mode=ParseMode.HTML,
                    reply_markup=keyboard,
                )
            elif texts:
                await self._bot.edit_message_text(
                    texts[0],
                    number,
                    int(message_key),
                    parse_mode=ParseMode.HTML,
                    reply_markup=keyboard,
                    link_preview_options=LinkPreviewOptions(is_disabled=True),
                )
            else:
                await self._bot.edit_message_reply_markup(number, int(message_key), reply_markup=keyboard)
        except TelegramError as error:
            if is_as_wanted(error):
                return Sent((message_key,))
            _log.warning("changing a message failed (%s)", named(error))
            return meaning(error)
        except Exception as error:  # noqa: BLE001 an answer of another shape says nothing of what was done
            _log.warning("changing was answered with something else (%s)", told(error))
            return TryAgain(SOON_SECONDS, surely_not_sent=False)
        return Sent((message_key,))

    async def _send_all(self, chat: int, parts: tuple[_Part, ...]) -> Delivered:
        keys: list[str] = []
        left_seconds = self._patience_seconds
        while len(keys) < len(parts):
            result = await self._send_one(chat, parts[len(keys)])
            match result:
                case Message():
                    keys.append(str(result.message_id))
                case TryAgain(after_seconds) if keys:
                    if not result.surely_not_sent or after_seconds > left_seconds:
                        return TryAgain(after_seconds, surely_not_sent=False)
                    left_seconds -= after_seconds
                    await asyncio.sleep(after_seconds)
                case _:
                    return result
        return Sent(tuple(keys))

    async def _send_one(self, chat: int, part: _Part) -> Message | TryAgain | Final:
        try:
            match part.file:
                case None:
                    return await self._bot.send_message(
                        chat,
                        part.text_html,
                        parse_mode=ParseMode.HTML,
                        reply_markup=part.keyboard,
                        link_preview_options=LinkPreviewOptions(is_disabled=True),
                    )
                case Attachment(name, content) if not part.is_picture:
                    return await self._bot.send_document(
                        chat,
                        content,
                        filename=name,
                        caption=part.text_html or None,
                        parse_mode=ParseMode.HTML,
                        reply_markup=part.keyboard,
                    )
                case Attachment(name, content):
                    return await self._bot.send_photo(
                        chat,
                        content,
                        filename=name,
                        caption=part.text_html or None,
                        parse_mode=ParseMode.HTML,
                        reply_markup=part.keyboard,
                    )
        except TelegramError as error:
            result = meaning(error)
            _log.warning("sending failed (%s): %s", named(error), result)
            return result
        except Exception as error:  # noqa: BLE001 an answer of another shape says nothing of what was done
            _log.warning("sending was answered with something else (%s)", told(error))
            return TryAgain(SOON_SECONDS, surely_not_sent=False)


def _plainer(message: Rendered) -> Iterator[tuple[str, Rendered]]:
    """Yield what the message can be reduced to, step by step, and what each is called."""
    if not length(message.text_html):
        return
    if message.photo is not None or message.document is not None:
        message = replace(message, photo=None, document=None)
        yield "without its file", message
    words = escape(plain(message.text_html))
    if words != message.text_html:
        message = replace(message, text_html=words)
        yield "without marks", message
    if message.buttons:
        yield "without buttons", replace(message, buttons=())


def _parts(message: Rendered) -> tuple[_Part, ...]:
    """Return what to send, in order. The buttons stand under the last of it."""
    parts = []
    if message.photo is not None:
        parts.append(_Part("", message.photo, is_picture=True))
    if message.document is not None:
        parts.append(_Part("", message.document))
    if parts and length(message.text_html) <= CAPTION_LIMIT:
        parts[0] = replace(parts[0], text_html="".join(pieces(message.text_html)))
    else:
        parts += [_Part(text) for text in pieces(message.text_html)]
    if parts and message.buttons:
        parts[-1] = replace(parts[-1], keyboard=_keyboard(message.buttons))
    return tuple(parts)


def _keyboard(buttons: tuple[tuple[str, str], ...]) -> InlineKeyboardMarkup | None:
    """Return the buttons. One whose data no message can carry is left out, and said in the log."""
    fitting = [(label, data) for label, data in buttons if 1 <= len(data.encode()) <= BUTTON_DATA_LIMIT]
    if len(fitting) < len(buttons):
        _log.error("%d buttons with too much data, or none, are left out", len(buttons) - len(fitting))
    laid = [[InlineKeyboardButton(label, callback_data=data) for label, data in row] for row in rows(fitting)]
    return InlineKeyboardMarkup(laid) if laid else None


def _number(chat: str) -> int | None:
    """Return Telegram's identifier of a chat, or None where it is not one of Telegram's."""
    platform, _, number = chat.partition(":")
    try:
        return int(number) if platform == PLATFORM else None
    except ValueError:
        return None
