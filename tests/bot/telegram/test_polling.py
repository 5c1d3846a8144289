"""The way in: what reaches the inbox, when it is acknowledged, and what trouble it outlives."""

import asyncio
import logging
from collections.abc import AsyncIterator, Callable, Sequence
from contextlib import asynccontextmanager

import pytest
from sqlalchemy import Engine, select
from telegram import Bot, InlineKeyboardButton, InlineKeyboardMarkup

from bot.clock import machine_time
from bot.telegram import intake, polling
from bot.telegram.connection import make_bot
from bot.telegram.intake import Intake
from bot.telegram.polling import Polling, TokenRefusedError
from domain.incoming import Document, Edited, FromChat, Pressed, Reachable, Started, Text
from persistence.engine import reading
from persistence.faults import DatabaseTrouble
from persistence.inbox import Received
from persistence.readers import Reader
from persistence.store import Store
from persistence.tables import InboxRow
from tests.bot.telegram.village import polling_of
from tests.botapi.errors import Broken, Cut, Nonsense, Odd, TooMany
from tests.botapi.people import Person
from tests.botapi.server import BotApi


@pytest.fixture(autouse=True)
def _no_long_pauses(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(polling, "LONGEST_PAUSE_SECONDS", 0.05)
    monkeypatch.setattr(polling, "CONFLICT_PAUSE_SECONDS", 0.05)
    monkeypatch.setattr(intake, "FETCH_PAUSE_SECONDS", 0.05)


def inbox(engine: Engine) -> list[FromChat]:
    with reading(engine) as connection:
        return list(connection.execute(select(InboxRow.incoming).order_by(InboxRow.number)).scalars())  # type: ignore[arg-type]  # only chats write here


def texts(engine: Engine) -> list[str]:
    return [incoming.text for incoming in inbox(engine) if isinstance(incoming, Text)]


@asynccontextmanager
async def running(loop: Polling) -> AsyncIterator["asyncio.Task[None]"]:
    task = asyncio.create_task(loop.run())
    try:
        yield task
    finally:
        task.cancel()
        await asyncio.gather(task, return_exceptions=True)


async def until(true: Callable[[], bool], seconds: float = 5) -> None:
    async with asyncio.timeout(seconds):
        while not true():  # noqa: ASYNC110 what is waited for happens in other threads
            await asyncio.sleep(0.01)


async def test_everything_reaches_the_inbox_and_is_then_acknowledged(
    api: BotApi, bot: Bot, anna: Person, store: Store, engine: Engine
) -> None:
    commits: list[int] = []
    into = Intake(bot, store, machine_time, lambda: commits.append(len(inbox(engine))))
    async with running(Polling(bot, store, into, machine_time, [("today", "Today's plan")])):
        anna.says("/start a-Code")
        typed = anna.says("row 60 x 8")
        anna.edits(typed, "row 60 x 9")
        anna.sends_file("sheet.txt", "Härbour Base\n".encode())
        anna.blocks()
        await until(lambda: len(inbox(engine)) == 5)
        await until(lambda: api.world.waiting == 0)
    assert inbox(engine) == [
        Started(code="a-Code"),
        Text(text="row 60 x 8", key=str(typed)),
        Edited(text="row 60 x 9", key=str(typed)),
        Document(name="sheet.txt", text="Härbour Base\n"),
        Reachable(reachable=False),
    ]
    assert commits[-1] == 5
    assert api.world.commands == [{"command": "today", "description": "Today's plan"}]


async def test_an_update_is_acknowledged_only_after_it_is_committed(
    api: BotApi, bot: Bot, anna: Person, store: Store, engine: Engine, monkeypatch: pytest.MonkeyPatch
) -> None:
    troubles = 2
    receive = store.receive

    def full_disk(items: Sequence[Received], read: tuple[str, str] | None, reader: Reader) -> None:
        nonlocal troubles
        if troubles:
            troubles -= 1
            raise DatabaseTrouble("disk full")
        receive(items, read, reader)

    monkeypatch.setattr(store, "receive", full_disk)
    anna.says("row 60 x 8")
    async with running(polling_of(bot, store)):
        await until(lambda: not troubles)
        await until(lambda: api.world.waiting == 0)
    assert texts(engine) == ["row 60 x 8"]
    assert set(api.world.handed_out.values()) == {3}


async def test_what_comes_again_is_stored_once(
    api: BotApi, anna: Person, store: Store, engine: Engine
) -> None:
    """After a crash between the commit and the next request, the server hands the same updates out again."""
    anna.says("one")
    anna.says("two")
    for _ in range(2):
        bot = make_bot(api.token, api.url)
        await bot.initialize()
        store.take_over(machine_time())
        reader = store.claim_reader("telegram:4242", machine_time(), polling.LEASE_SECONDS)
        assert reader is not None
        await polling_of(bot, store).step(reader, 0)  # a crash is a step without the next one
        await bot.shutdown()
    assert texts(engine) == ["one", "two"]
    assert api.world.acknowledged == []


async def test_a_restart_goes_on_where_the_database_says(
    api: BotApi, anna: Person, store: Store, engine: Engine
) -> None:
    for text in ("one", "two"):
        bot = make_bot(api.token, api.url)
        anna.says(text)
        async with running(polling_of(bot, store)):
            await until(lambda text=text: text in texts(engine))  # type: ignore[misc]  # mypy wants it spelled out
        await bot.shutdown()
    assert store.cursor("telegram:4242") is not None
    assert texts(engine) == ["one", "two"]


async def test_a_restart_knows_at_once_when_all_that_has_waited_is_stored(
    bot: Bot, anna: Person, store: Store, engine: Engine
) -> None:
    for text in ("one", "two"):
        anna.says(text)
    loop = polling_of(bot, store)
    async with running(loop):
        await until(loop.heard.is_set)  # though a poll that has nothing to fetch would wait for longer
        assert texts(engine) == ["one", "two"]


async def test_update_identifiers_may_start_anew_after_a_long_silence(
    api: BotApi, bot: Bot, anna: Person, store: Store, engine: Engine
) -> None:
    async with running(polling_of(bot, store)):
        anna.says("before")
        await until(lambda: texts(engine) == ["before"])
        await until(lambda: api.world.waiting == 0)
        api.world.jump_to(1_000)
        anna.says("after")
        await until(lambda: texts(engine) == ["before", "after"])


async def test_lost_connections_and_server_errors_are_outlived(
    api: BotApi, bot: Bot, anna: Person, store: Store, engine: Engine
) -> None:
    for failure in (Broken(), Cut(), Cut(done=True), Nonsense(), TooMany(1), Broken(502, done=True)):
        api.fail("getUpdates", failure)
    api.fail("getMe", Cut())
    api.fail("deleteWebhook", Broken(503))
    anna.says("row 60 x 8")
    async with running(polling_of(bot, store)):
        await until(lambda: api.world.waiting == 0 and not api.world.failures)
    assert texts(engine) == ["row 60 x 8"]


@pytest.mark.parametrize(
    "answer",
    [
        [],
        {"ok": True},
        {"ok": True, "result": {}},
        {"ok": True, "result": [7]},
        {"ok": True, "result": [{"message": {}}]},
        {"ok": True, "result": [{"update_id": "7"}]},
        {"ok": "maybe", "result": None},
    ],
    ids=str,
)
async def test_an_answer_of_another_shape_is_asked_for_again(
    api: BotApi, bot: Bot, anna: Person, store: Store, engine: Engine, answer: object
) -> None:
    api.fail("getUpdates", Odd(answer))
    api.fail("getMe", Odd(answer))
    anna.says("row 60 x 8")
    async with running(polling_of(bot, store)):
        await until(lambda: api.world.waiting == 0 and not api.world.failures)
    assert texts(engine) == ["row 60 x 8"]


async def test_an_update_that_cannot_be_stored_holds_up_nobody_and_its_words_stay_unsaid(
    api: BotApi,
    bot: Bot,
    anna: Person,
    store: Store,
    engine: Engine,
    monkeypatch: pytest.MonkeyPatch,
    caplog: pytest.LogCaptureFixture,
) -> None:
    receive = store.receive

    def refuse_one(items: Sequence[Received], read: tuple[str, str] | None, reader: Reader) -> None:
        receive(items, read, reader)
        for item in items:
            if isinstance(item.incoming, Text) and "secret" in item.incoming.text:
                raise ValueError(item.incoming.text)

    monkeypatch.setattr(store, "receive", refuse_one)
    for text in ("one", "my secret", "two"):
        anna.says(text)
    async with running(polling_of(bot, store)):
        await until(lambda: api.world.waiting == 0)
    assert {"one", "two"} <= set(texts(engine))
    assert "passed over" in caplog.text
    assert "my secret" not in caplog.text


async def test_a_second_poller_is_said_clearly_and_outlived(
    api: BotApi, bot: Bot, anna: Person, store: Store, engine: Engine, caplog: pytest.LogCaptureFixture
) -> None:
    async with running(polling_of(bot, store)):
        await until(lambda: len(api.calls("getUpdates")) == 2)  # the first asks only for what has waited
        async with make_bot(api.token, api.url) as other:
            await other.get_updates(timeout=0)
            await until(lambda: "another copy of this bot" in caplog.text)
        anna.says("row 60 x 8")
        await until(lambda: texts(engine) == ["row 60 x 8"])


async def test_a_refused_token_ends_it_without_showing_the_token(api: BotApi, store: Store) -> None:
    bot = make_bot("4242:revoked-secret", api.url)
    with pytest.raises(TokenRefusedError) as refused:
        await polling_of(bot, store).run()
    await bot.shutdown()
    assert "revoked-secret" not in str(refused.value)
    assert refused.value.__suppress_context__


async def test_a_press_is_stored_once_and_answered_and_a_stale_one_does_no_harm(
    api: BotApi, bot: Bot, anna: Person, store: Store, engine: Engine
) -> None:
    await bot.initialize()
    keyboard = InlineKeyboardMarkup([[InlineKeyboardButton("Yes", callback_data="7:0")]])
    await bot.send_message(anna.number, "Right?", reply_markup=keyboard)
    async with running(polling_of(bot, store)):
        anna.presses("Yes")
        query = anna.presses("Yes")
        api.world.queries.discard(query)
        anna.says("still here")
        await until(lambda: len(inbox(engine)) == 2)
        await until(lambda: len(api.calls("answerCallbackQuery")) == 2)
    assert [type(incoming) for incoming in inbox(engine)] == [Pressed, Text]
    assert api.world.queries == set()


@pytest.mark.parametrize(
    ("name", "content", "expected"),
    [
        ("sheet.txt", b"\xef\xbb\xbfPull\r\n", Document(name="sheet.txt", text="Pull\r\n")),
        ("sheet.txt", "8×60".encode("utf-16"), Document(name="sheet.txt", text="8×60")),
        ("noise.bin", bytes(range(256)), Document(name="noise.bin", fault="not text")),
        ("huge.txt", b"x" * 1_000_000, Document(name="huge.txt", fault="too large")),
        ("empty.txt", b"", Document(name="empty.txt", text="")),
    ],
)
async def test_a_file_is_read_or_its_fault_told(
    bot: Bot, anna: Person, store: Store, engine: Engine, name: str, content: bytes, expected: Document
) -> None:
    anna.sends_file(name, content)
    async with running(polling_of(bot, store)):
        await until(lambda: bool(inbox(engine)))
    assert inbox(engine) == [expected]


async def test_a_file_out_of_reach_holds_up_nobody(
    api: BotApi, bot: Bot, anna: Person, store: Store, engine: Engine
) -> None:
    api.fail("getFile", Broken(), times=99)
    anna.sends_file("sheet.txt", b"Pull\n")
    anna.says("row 60 x 8")
    async with running(polling_of(bot, store)):
        await until(lambda: len(inbox(engine)) == 2)
    assert inbox(engine)[0] == Document(name="sheet.txt", fault="not fetched")


async def test_a_group_is_told_and_left(
    api: BotApi, bot: Bot, anna: Person, store: Store, engine: Engine
) -> None:
    group = api.group(-5)
    async with running(polling_of(bot, store, "Only in private chats.")):
        group.says("hello", anna)
        await until(lambda: group.left)
    assert [(message.chat, message.text) for message in api.sent] == [(-5, "Only in private chats.")]
    assert inbox(engine) == []


async def test_an_update_that_cannot_be_read_is_passed_over(
    api: BotApi, bot: Bot, anna: Person, store: Store, engine: Engine, caplog: pytest.LogCaptureFixture
) -> None:
    api.world.add_update("message", {"message_id": "of a new kind"})
    anna.says("row 60 x 8")
    async with running(polling_of(bot, store)):
        await until(lambda: texts(engine) == ["row 60 x 8"])
    assert [r.levelno for r in caplog.records if "passed over" in r.getMessage()] == [logging.ERROR]
