"""The HTTP server: it listens at once, tells where it cannot, and answers what has begun before it stops."""

import asyncio

import httpx
import pytest
from starlette.applications import Starlette
from starlette.requests import Request
from starlette.responses import PlainTextResponse
from starlette.routing import Route

from bot.faults import OperatorFault
from bot.web.address import Address
from bot.web.server import listening
from tests import loopback

LOOPBACK = Address("127.0.0.1", 0)


def application(begun: asyncio.Event, goes_on: asyncio.Event) -> Starlette:
    async def slow(_request: Request) -> PlainTextResponse:
        begun.set()
        await goes_on.wait()
        return PlainTextResponse("answered")

    return Starlette(routes=[Route("/slow", slow)])


async def test_what_has_begun_is_answered_before_it_stops() -> None:
    begun, goes_on = asyncio.Event(), asyncio.Event()
    async with loopback.client() as client:
        async with listening(application(begun, goes_on), LOOPBACK) as address:
            asked = asyncio.create_task(client.get(f"http://{address}/slow"))
            await begun.wait()
            asyncio.get_running_loop().call_later(0.1, goes_on.set)
        assert (await asked).text == "answered"
        with pytest.raises(httpx.ConnectError):
            await client.get(f"http://{address}/slow")


async def test_a_port_that_is_taken_is_one_clear_line() -> None:
    application_ = application(asyncio.Event(), asyncio.Event())
    async with listening(application_, LOOPBACK) as address:
        with pytest.raises(OperatorFault, match=f"cannot listen on 127.0.0.1:{address.port}"):
            async with listening(application_, address):
                pass


async def test_it_listens_on_the_newer_protocol_too() -> None:
    async with listening(Starlette(), Address("::1", 0)) as address, loopback.client() as client:
        assert (await client.get(f"http://{address}/")).status_code == 404
