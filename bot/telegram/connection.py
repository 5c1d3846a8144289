"""The library's client, set up: addresses, time-outs, and a reader that one odd update cannot stop."""

import json
import logging
import ssl
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from functools import cache
from typing import Any, Final, TypeAlias

import httpx
from telegram import Bot, Update
from telegram.error import TelegramError
from telegram.request import HTTPXRequest

from bot.faults import told

API_URL: Final = "https://api.telegram.org"

Connection: TypeAlias = Bot
"""One bot's line to its server, by the name under which the rest of the house knows it."""

_SENDING_AT_ONCE: Final = 16

_log = logging.getLogger(__name__)


def make_bot(token: str, api_url: str = API_URL) -> Bot:
    """Return a client for the Bot API server at `api_url`; the caller opens and closes it."""
    base = api_url.rstrip("/")
    shared = {"verify": _trusted()}
    return Bot(
        token,
        base_url=f"{base}/bot",
        base_file_url=f"{base}/file/bot",
        request=QuietRequest(
            connection_pool_size=_SENDING_AT_ONCE,
            connect_timeout=5,
            read_timeout=20,
            write_timeout=20,
            pool_timeout=5,
            httpx_kwargs=shared,
        ),
        get_updates_request=UpdatesRequest(
            connection_pool_size=2, connect_timeout=5, read_timeout=10, httpx_kwargs=shared
        ),
    )


@cache
def _trusted() -> ssl.SSLContext:
    """Return whom to trust, loaded once: each client would load it anew, which takes longer than the rest."""
    return httpx.create_ssl_context()


@asynccontextmanager
async def closing(bot: Bot) -> AsyncIterator[Bot]:
    """Close `bot` in the end. Unlike the library's own way, this does not ask the network first."""
    try:
        yield bot
    finally:
        await bot.shutdown()


class QuietRequest(HTTPXRequest):
    """Keeps an answer that is not JSON out of the log, where the library would put all of it."""

    @staticmethod
    def parse_json_payload(payload: bytes) -> dict[str, Any]:
        """Read the server's answer; the library documents this as the place to do so differently.

        Raises TelegramError where it cannot be read.
        """
        try:
            answer: dict[str, Any] = json.loads(payload.decode("utf-8", "replace"))
        except (ValueError, RecursionError):
            raise TelegramError("Invalid server response") from None
        return answer


class UpdatesRequest(QuietRequest):
    """Fetches updates. One that the library cannot read comes out empty, and the rest of its batch stands."""

    @staticmethod
    def parse_json_payload(payload: bytes) -> dict[str, Any]:
        """Read the server's answer.

        Raises TelegramError where it is of another shape, so that it is asked for again after a pause.
        """
        answer = QuietRequest.parse_json_payload(payload)
        if not isinstance(answer, dict):
            raise TelegramError("the answer is no object")
        result = answer.get("result")
        if isinstance(result, list):
            if not all(isinstance(one, dict) and isinstance(one.get("update_id"), int) for one in result):
                raise TelegramError("the answer holds something else than updates")
            answer["result"] = [readable(update) for update in result]
        return answer


def readable(update: dict[str, Any]) -> dict[str, Any]:
    """Return an update as it came, or an empty one in its place where the library cannot read it."""
    try:
        Update.de_json(update, None)
    except Exception as error:  # noqa: BLE001 the library's parser may raise anything on what it cannot read
        _log.error("update %s cannot be read, and is passed over: %s", update["update_id"], told(error))
        return {"update_id": update["update_id"]}
    return update
