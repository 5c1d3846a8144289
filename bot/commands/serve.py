"""`serve`: the bot on Telegram."""

import asyncio
import logging

from bot.commands.database import opened
from bot.faults import OperatorFault
from bot.serve import serve
from bot.settings import load_settings
from bot.telegram.connection import fault_of, make_bot
from bot.telegram.polling import TokenRefusedError
from bot.telegram.secrecy import hidden_in_logs


def serve_command() -> int:
    """Run until stopped; return the exit status. Raises OperatorFault."""
    settings = load_settings()
    token = settings.token.get_secret_value() if settings.token else ""
    if not token:
        raise OperatorFault(("KILOPOST_TOKEN is missing: put the bot's token there, or into .env",))
    if fault := fault_of(settings.api_url):
        raise OperatorFault((f"KILOPOST_API_URL: {fault}",))
    logging.basicConfig(level=logging.INFO, format="%(asctime)s %(levelname)s %(name)s: %(message)s")
    for chatty in ("apscheduler", "alembic"):
        logging.getLogger(chatty).setLevel(logging.WARNING)
    try:
        with hidden_in_logs(token), opened(settings.database) as store:
            store.check_whole()
            asyncio.run(serve(store, make_bot(token, settings.api_url)))
    except TokenRefusedError:
        raise OperatorFault(("Telegram does not know KILOPOST_TOKEN: is it whole?",)) from None
    return 0
