"""`serve`: the bot on Telegram."""

import asyncio
import hashlib
import logging

from bot.commands.database import opened
from bot.faults import OperatorFault
from bot.serve import serve
from bot.settings import Settings, host_and_port, load_settings
from bot.telegram.connection import make_bot
from bot.telegram.polling import TokenRefusedError
from bot.telegram.posting import Posting
from bot.telegram.secrecy import hidden_in_logs
from bot.web.address import Address


def serve_command() -> int:
    """Run until stopped; return the exit status. Raises OperatorFault."""
    settings = load_settings()
    token = settings.token.get_secret_value() if settings.token else ""
    if not token:
        raise OperatorFault(("KILOPOST_TOKEN is missing: put the bot's token there, or into .env",))
    logging.basicConfig(level=logging.INFO, format="%(asctime)s %(levelname)s %(name)s: %(message)s")
    logging.raiseExceptions = (
        False  # where the log's own disk is full, nothing more is to be written about it
    )
    for chatty in ("apscheduler", "alembic"):
        logging.getLogger(chatty).setLevel(logging.WARNING)
    try:
        with hidden_in_logs(token), opened(settings.database) as store:
            store.check_whole()
            bot = make_bot(token, settings.api_url)
            asyncio.run(
                serve(store, bot, _posting(settings, token), _address(settings.monitor), settings.keep_days)
            )
    except TokenRefusedError:
        raise OperatorFault(("Telegram does not know KILOPOST_TOKEN: is it whole?",)) from None
    return 0


def _posting(settings: Settings, token: str) -> Posting | None:
    """Return how updates are posted to us; None where they are to be polled."""
    if settings.webhook_url is None:
        return None
    own = settings.webhook_secret
    made = hashlib.sha256(f"posted to {token}".encode()).hexdigest()
    address = Address(*host_and_port(settings.webhook_listen))
    return Posting(settings.webhook_url, address, own.get_secret_value() if own else made)


def _address(value: str | None) -> Address | None:
    return None if value is None else Address(*host_and_port(value))
