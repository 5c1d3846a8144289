"""`serve`: the bot on Telegram."""

import asyncio
import logging
import sys

from bot.commands.database import opened
from bot.serve import serve
from bot.settings import load_settings
from bot.telegram.connection import fault_of, make_bot
from bot.telegram.polling import TokenRefusedError
from bot.telegram.secrecy import hidden_in_logs


def serve_command() -> int:
    """Run until stopped; return the exit status."""
    settings = load_settings()
    token = settings.token.get_secret_value() if settings.token else ""
    if not token:
        print("kilopost: KILOPOST_TOKEN is missing: put the bot's token there, or into .env", file=sys.stderr)
        return 1
    if fault := fault_of(settings.api_url):
        print(f"kilopost: KILOPOST_API_URL: {fault}", file=sys.stderr)
        return 1
    logging.basicConfig(level=logging.INFO, format="%(asctime)s %(levelname)s %(name)s: %(message)s")
    logging.getLogger("apscheduler").setLevel(logging.WARNING)
    try:
        with hidden_in_logs(token), opened(settings.database) as store:
            asyncio.run(serve(store, make_bot(token, settings.api_url)))
    except TokenRefusedError:
        print(
            "kilopost: Telegram does not know KILOPOST_TOKEN: check it for missing characters",
            file=sys.stderr,
        )
        return 1
    return 0
