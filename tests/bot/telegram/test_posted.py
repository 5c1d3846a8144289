"""The whole bot with updates posted to it, and watched over."""

import asyncio
import socket

from sqlalchemy import Engine

from bot.serve import serve
from bot.telegram.connection import make_bot
from bot.telegram.posting import Posting
from bot.telegram.webhook import SECRET_HEADER
from bot.web.address import Address
from persistence.store import Store
from tests import loopback
from tests.bot.telegram.test_whole import until
from tests.bot.telegram.village import codes, journal
from tests.botapi.server import BotApi

SECRET = "a-secret-for-tests"


def free() -> Address:
    """Return an address that nobody listens on just now."""
    with socket.create_server(("127.0.0.1", 0)) as listener:
        return Address("127.0.0.1", listener.getsockname()[1])


async def test_a_client_reports_by_posts_and_the_bot_is_well(
    store: Store, engine: Engine, api: BotApi
) -> None:
    code = codes(store, "Bram")
    bram = api.person(2, "Bram")
    inward, monitor = free(), free()
    posting = Posting("https://bot.example/in", inward, SECRET)
    serving = asyncio.create_task(serve(store, make_bot(api.token, api.url), posting, monitor))
    try:
        await until(lambda: api.world.webhook == posting.url)
        bram.says(f"/start {code['Bram']}")
        bram.says("seated cable row 60 kg x 8")
        async with loopback.client() as client:
            for update in api.world._updates:  # polling is refused while a webhook stands
                answer = await client.post(
                    f"http://{inward}/in", json=update, headers={SECRET_HEADER: SECRET}
                )
                assert answer.status_code == 200
            await until(lambda: any("Seated cable row:" in message.text for message in bram.received))
            assert (await client.get(f"http://{monitor}/health")).json()["well"]
            assert "kilopost_sent_after_seconds_count" in (await client.get(f"http://{monitor}/metrics")).text
    finally:
        serving.cancel()
        await asyncio.gather(serving, return_exceptions=True)
    assert [each.load for each in journal(engine, "Bram")] == ["60"]
    assert api.calls("getUpdates") == ()
