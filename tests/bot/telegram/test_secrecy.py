"""The token is in no log, at any level, in any logger, in any traceback."""

import logging
import traceback

import pytest
from telegram.error import InvalidToken

from bot.channel import Rendered
from bot.clock import machine_time
from bot.telegram.connection import make_bot
from bot.telegram.polling import TokenRefusedError
from bot.telegram.secrecy import SHOWN, hidden_in_logs
from bot.telegram.sending import TelegramSender
from persistence.store import Store
from tests.bot.telegram.village import polling_of
from tests.botapi.errors import Broken, Cut
from tests.botapi.people import Person
from tests.botapi.server import BotApi

SECRET = "AAF-a_secret"


def test_it_is_hidden_in_messages_arguments_and_tracebacks(caplog: pytest.LogCaptureFixture) -> None:
    caplog.set_level(logging.DEBUG)
    log = logging.getLogger("anything")
    with hidden_in_logs(f"4242:{SECRET}"):
        log.info("POST https://api.example.org/bot4242:%s/getMe", SECRET)
        log.info("GET https://api.example.org/file/bot4242%3A" + SECRET)  # noqa: G003 as a careless library does
        try:
            raise InvalidToken(f"The token `4242:{SECRET}` was rejected by the server.")
        except InvalidToken:
            log.exception("refused")
    assert SECRET not in caplog.text
    assert caplog.text.count(SHOWN) == 3
    log.info(SECRET)
    assert SECRET in caplog.text  # it lasted as long as it was asked to


async def test_a_whole_session_with_every_logger_wide_open_never_shows_it(
    store: Store, caplog: pytest.LogCaptureFixture
) -> None:
    caplog.set_level(logging.DEBUG)
    with BotApi(f"4242:{SECRET}") as api, hidden_in_logs(api.token):
        for name in ("httpx", "httpcore", "telegram"):
            logging.getLogger(name).setLevel(logging.DEBUG)
        person = Person(api.world, 1001)
        api.person(1001)
        person.sends_file("sheet.txt", b"Pull\n")
        bot = make_bot(api.token, api.url)
        await bot.initialize()
        reader = store.claim_reader("telegram:4242", machine_time(), 6)
        assert reader is not None
        await polling_of(bot, store).step(reader, 0)
        for failure in (Broken(), Cut(), None):
            if failure is not None:
                api.fail("sendMessage", failure)
            await TelegramSender(bot).send("telegram:1001", Rendered("hello"))
        await bot.shutdown()
        stranger = make_bot(f"4242:{SECRET}-else", api.url)
        with pytest.raises(TokenRefusedError) as refused:
            await polling_of(stranger, store).run()
        await stranger.shutdown()
    assert "/sendMessage" in caplog.text  # the loggers were open indeed
    assert SECRET not in caplog.text
    assert SECRET not in "".join(traceback.format_exception(refused.value))


async def test_by_default_the_client_logs_no_addresses(caplog: pytest.LogCaptureFixture) -> None:
    caplog.set_level(logging.INFO)
    with BotApi() as api, hidden_in_logs(api.token):
        async with make_bot(api.token, api.url):
            pass
    assert "getMe" not in caplog.text
