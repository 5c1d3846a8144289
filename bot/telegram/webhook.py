"""The other way in from Telegram: it posts each update, and takes 200 for an acknowledgement.

So 200 is answered only after the commit; whatever else it is told, it posts the update again. It posts the
next update of a chat only after that (WebhookActor.cpp of github.com/tdlib/telegram-bot-api), so that any
number of workers behind one address keep the order of each chat.
"""

import asyncio
import hmac
import logging
from collections.abc import Sequence
from typing import Any, Final
from urllib.parse import urlsplit

import orjson
from starlette.applications import Starlette
from starlette.requests import Request
from starlette.responses import Response
from starlette.routing import Route
from telegram import Bot, Update

from bot.telegram.connection import readable
from bot.telegram.incoming import KINDS_OF_UPDATE
from bot.telegram.intake import Intake
from bot.telegram.polling import insist
from bot.telegram.posting import Posting
from bot.web.server import listening
from persistence.faults import StoreFault

SECRET_HEADER: Final = "X-Telegram-Bot-Api-Secret-Token"  # noqa: S105 the name of it, as the platform has it
LARGEST_BYTES: Final = 1_000_000
AT_ONCE: Final = 20
"""How many updates Telegram may post at the same time."""

_log = logging.getLogger(__name__)


class Webhook:
    """Takes what Telegram posts, into `intake`. `commands` (name, description) stand in the chat's menu."""

    def __init__(
        self, bot: Bot, intake: Intake, posting: Posting, commands: Sequence[tuple[str, str]] = ()
    ) -> None:
        self._bot = bot
        self._intake = intake
        self._posting = posting
        self._commands = tuple(commands)

    @property
    def application(self) -> Starlette:
        """What is to be served."""
        path = urlsplit(self._posting.url).path or "/"
        return Starlette(routes=[Route(path, self._take, methods=["POST"])])

    async def run(self) -> None:
        """Take updates until cancelled. Raises TokenRefusedError, OperatorFault where nothing can listen."""
        await insist(self._bot.initialize)
        async with listening(self.application, self._posting.address) as address:
            _log.info("waiting for updates on %s", address)
            await insist(self._ask_for_updates)
            await _for_ever()

    async def _ask_for_updates(self) -> None:
        await self._bot.set_webhook(
            self._posting.url,
            secret_token=self._posting.secret,
            allowed_updates=list(KINDS_OF_UPDATE),
            max_connections=AT_ONCE,
        )
        if self._commands:
            await self._bot.set_my_commands(self._commands)

    async def _take(self, request: Request) -> Response:
        shown = request.headers.get(SECRET_HEADER, "")
        if not hmac.compare_digest(shown.encode(), self._posting.secret.encode()):
            _log.warning("something was posted without the secret")
            return Response(status_code=403)
        body = bytearray()
        async for chunk in request.stream():
            body += chunk
            if len(body) > LARGEST_BYTES:
                return Response(status_code=413)
        update = _update(bytes(body))
        if update is None:
            return Response(status_code=400)
        try:
            await self._intake.take([update])
        except StoreFault as fault:
            _log.error("an update cannot be stored, and will be posted again: %s", type(fault).__name__)
            return Response(status_code=503)
        return Response(status_code=200)


def _update(body: bytes) -> Update | None:
    """Return what was posted; None where it is no update. One that cannot be read comes out empty."""
    try:
        posted: Any = orjson.loads(body)
    except ValueError:
        return None
    if not isinstance(posted, dict) or type(posted.get("update_id")) is not int:
        return None
    return Update.de_json(readable(posted), None)


async def _for_ever() -> None:
    await asyncio.Event().wait()
