"""A look at Telegram's side of the set-up: the token, the time there, and who brings the updates."""

from dataclasses import dataclass
from datetime import datetime

from telegram import Bot, WebhookInfo
from telegram.error import InvalidToken, TelegramError

from bot.telegram.connection import closing, make_bot
from bot.telegram.errors import named


@dataclass(frozen=True, slots=True)
class Seen:
    """What was seen. `fault` is why nothing more was; `posts_to` is where updates are posted, empty: nowhere.

    `failing` is what the platform last had to say of its posts, None where they succeed.
    """

    fault: str | None
    name: str = ""
    posts_to: str = ""
    waiting: int = 0
    failing: str | None = None


async def look(token: str, api_url: str, since: datetime) -> Seen:
    """Look once, without waiting for a network that is away; a failure before `since` is an old one."""
    async with closing(make_bot(token, api_url)) as bot:
        try:
            await bot.initialize()
            return _seen(bot, await bot.get_webhook_info(), since)
        except InvalidToken:
            return Seen("Telegram does not know KILOPOST_TOKEN: is it whole?")
        except TelegramError as error:
            return Seen(
                f"no word from Telegram ({named(error)}): is KILOPOST_API_URL right, and the network up?"
            )


def _seen(bot: Bot, webhook: WebhookInfo, since: datetime) -> Seen:
    failed_at = webhook.last_error_date
    is_new = failed_at is not None and failed_at >= since
    failing = webhook.last_error_message if is_new else None
    return Seen(None, bot.username, webhook.url, webhook.pending_update_count, failing)
