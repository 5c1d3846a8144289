"""What a failed request means for the message that it carried: the one place that knows the library's errors.

The order of the questions matters: `BadRequest` and `TimedOut` are kinds of `NetworkError` in the library.
What the transport reported is in `__cause__`: a connection that was never made, or never free, has sent
nothing; after that the request may have been carried out although no answer came.
"""

from typing import Final

import httpx
from telegram.error import BadRequest, ChatMigrated, Forbidden, InvalidToken, RetryAfter, TelegramError

from bot.channel import Final as ForGood
from bot.channel import TryAgain
from domain.expressions import Expression

SOON_SECONDS: Final = 2.0
LATER_SECONDS: Final = 60.0

_NEVER_SENT: Final = (
    httpx.ConnectError,
    httpx.ConnectTimeout,
    httpx.PoolTimeout,
    httpx.ProxyError,
    httpx.UnsupportedProtocol,
    httpx.LocalProtocolError,
)
_QUOTED: Final = Expression(r"\"[^\"]*\"?|'[^']*'?")
_GONE: Final = ("chat not found", "user not found", "peer_id_invalid", "chat_id is empty", "deactivated")


def meaning(error: TelegramError) -> TryAgain | ForGood:
    """Return what becomes of a message whose request failed with `error`."""
    words = error.message.lower()
    match error:
        case RetryAfter():
            return TryAgain(wait_seconds(error), surely_not_sent=True)
        case Forbidden():
            return ForGood("blocked" if "blocked by the user" in words else "chat gone")
        case ChatMigrated():
            return ForGood("chat gone")
        case BadRequest():
            return ForGood("chat gone" if any(gone in words for gone in _GONE) else "refused")
        case InvalidToken():
            return TryAgain(LATER_SECONDS, surely_not_sent=True)
        case _:
            return TryAgain(SOON_SECONDS, surely_not_sent=isinstance(error.__cause__, _NEVER_SENT))


def is_as_wanted(error: TelegramError) -> bool:
    """Return whether a change was refused only because the message is so already."""
    return isinstance(error, BadRequest) and "message is not modified" in error.message.lower()


def named(error: TelegramError) -> str:
    """Return what a log may say of an error: its class and the server's words, without what they quote."""
    return f"{type(error).__name__}: {_QUOTED.sub('…', error.message)}"


def wait_seconds(error: RetryAfter) -> float:
    """Return how long the server asks to be left alone."""
    asked = error.retry_after
    return float(asked) if isinstance(asked, int) else asked.total_seconds()
