"""What every chat platform has in common: what goes out to one, and how that ended.

Telegram, the local chat and the played scripts all speak in these values. A chat is named by a string with
the platform before the colon (`telegram:1234`). Text going out is HTML with the few tags of `bot.markup`.
Nothing here knows a platform or a database. What comes in from a platform is `persistence.inbox.Received`.
"""

from dataclasses import dataclass
from typing import Literal, Protocol


@dataclass(frozen=True, slots=True)
class Attachment:
    """A file to be sent under this `name`."""

    name: str
    content: bytes


@dataclass(frozen=True, slots=True)
class Rendered:
    """One outgoing message, in words. `buttons` are (label, data) pairs; `photo` is a PNG or JPEG.

    `is_caption`: of one that changes an earlier one, that its words stand under a picture or a file there.
    """

    text_html: str
    buttons: tuple[tuple[str, str], ...] = ()
    photo: Attachment | None = None
    document: Attachment | None = None
    is_caption: bool = False


@dataclass(frozen=True, slots=True)
class Sent:
    """Delivered, as messages with these keys (several where a text was too long for one), in order."""

    message_keys: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class TryAgain:
    """Not known to be delivered. Where not `surely_not_sent`, it may have been, or may have in part.

    `after_seconds` is the shortest wait that makes sense.
    """

    after_seconds: float
    surely_not_sent: bool


@dataclass(frozen=True, slots=True)
class Final:
    """Will never be delivered: the person blocked the bot, the chat is gone, or the message was refused."""

    why: Literal["blocked", "chat gone", "refused"]


Delivered = Sent | TryAgain | Final


class Sender(Protocol):
    """Something that can put a message into a chat. It raises nothing that a lost network can cause."""

    async def send(self, chat: str, message: Rendered) -> Delivered:
        """Send `message` to `chat`, whole and in order."""
        ...

    async def change(self, chat: str, message_key: str, message: Rendered) -> Delivered:
        """Let the message known by that key be `message` from now on; without a text only its buttons change.

        It has neither picture nor file. Where it cannot be, as there is no such message any more, or the text
        is too long for one, it is `Final("refused")`.
        """
        ...
