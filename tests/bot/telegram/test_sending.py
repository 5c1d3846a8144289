"""What becomes of an outgoing message, against a server that can fail in each way."""

import pytest
from telegram import Bot

from bot.channel import Attachment, Delivered, Final, Rendered, Sent, TryAgain
from bot.markup import bold, escape
from bot.telegram.connection import make_bot
from bot.telegram.errors import SOON_SECONDS
from bot.telegram.sending import TelegramSender
from tests.botapi.errors import Broken, Cut, Failure, Nonsense, Odd, Says, TooMany
from tests.botapi.people import Person
from tests.botapi.server import BotApi

PNG = Attachment("squat.png", b"\x89PNG\r\n\x1a\n" + bytes(100))


async def send(bot: Bot, message: Rendered, chat: str = "telegram:1001") -> Delivered:
    return await TelegramSender(bot, patience_seconds=3).send(chat, message)


async def test_a_text_arrives_as_it_was_meant(bot: Bot, anna: Person) -> None:
    result = await send(bot, Rendered(f"{bold('5 < 6')} {escape('<script> & so on')}", (("Yes", "7:0"),)))
    (message,) = anna.received
    assert result == Sent((str(message.message_id),))
    assert message.text == "5 < 6 <script> & so on"
    assert message.entities == [{"type": "bold", "offset": 0, "length": 5}]
    assert message.buttons == [[("Yes", "7:0")]]


async def test_a_long_text_comes_in_order_with_the_buttons_under_its_end(bot: Bot, anna: Person) -> None:
    text = "\n".join(f"{number}: {bold('😀 row & press')}" for number in range(600))
    result = await send(bot, Rendered(text, (("Yes", "7:0"),)))
    assert isinstance(result, Sent)
    assert list(result.message_keys) == [str(message.message_id) for message in anna.received]
    assert "\n".join(message.text for message in anna.received).splitlines() == [
        f"{number}: 😀 row & press" for number in range(600)
    ]
    assert [message.labels for message in anna.received] == [[]] * (len(anna.received) - 1) + [["Yes"]]


@pytest.mark.parametrize(("letters", "texts"), [(1024, ["x" * 1024]), (1025, ["", "x" * 1025])])
async def test_a_caption_too_long_follows_as_a_message(
    bot: Bot, anna: Person, letters: int, texts: list[str]
) -> None:
    await send(bot, Rendered(bold("x" * letters), (("Yes", "7:0"),), photo=PNG))
    assert [message.text for message in anna.received] == texts
    assert anna.received[0].photo == PNG.content
    assert anna.received[-1].labels == ["Yes"]


async def test_a_file_arrives_under_its_name(bot: Bot, anna: Person) -> None:
    await send(bot, Rendered("Your journal", document=Attachment("journal.csv", b"a,b\r\n")))
    (message,) = anna.received
    assert message.document is not None
    assert (message.document.name, message.document.content) == ("journal.csv", b"a,b\r\n")


async def test_a_refused_picture_goes_missing_but_not_its_text(bot: Bot, anna: Person) -> None:
    result = await send(bot, Rendered("You beat last time", photo=Attachment("squat.png", b"no picture")))
    assert isinstance(result, Sent)
    assert [message.text for message in anna.received] == ["You beat last time"]


@pytest.mark.parametrize(
    ("times", "text", "labels"),
    [(1, "Knee & pain", ["Yes"]), (2, "Knee & pain", []), (3, None, None)],
    ids=["marks", "buttons", "all"],
)
async def test_a_refused_message_goes_in_plainer_forms_before_it_is_given_up(
    api: BotApi, bot: Bot, anna: Person, times: int, text: str | None, labels: list[str] | None
) -> None:
    api.fail("sendMessage", Says(400, "Bad Request: something new"), times=times)
    result = await send(bot, Rendered(f"{bold('Knee')} &amp; pain", (("Yes", "7:0"),)))
    if text is None:
        assert result == Final("refused")
        assert anna.received == ()
        return
    (message,) = anna.received
    assert isinstance(result, Sent)
    assert (message.text, message.labels, message.entities) == (text, labels, [])


async def test_a_button_with_too_much_data_goes_missing_but_not_the_text(bot: Bot, anna: Person) -> None:
    await send(bot, Rendered("Right?", (("Yes", "7:0"), ("No", "x" * 65))))
    assert anna.received[0].labels == ["Yes"]


@pytest.mark.parametrize(
    ("failure", "expected", "arrived"),
    [
        (TooMany(7), TryAgain(7, surely_not_sent=True), False),
        (Broken(500), TryAgain(SOON_SECONDS, surely_not_sent=False), False),
        (Broken(502, done=True), TryAgain(SOON_SECONDS, surely_not_sent=False), True),
        (Cut(), TryAgain(SOON_SECONDS, surely_not_sent=False), False),
        (Cut(done=True), TryAgain(SOON_SECONDS, surely_not_sent=False), True),
        (Nonsense(), TryAgain(SOON_SECONDS, surely_not_sent=False), True),
        (Odd({"ok": True}), TryAgain(SOON_SECONDS, surely_not_sent=False), True),
        (
            Odd({"ok": True, "result": {"of": "a new kind"}}),
            TryAgain(SOON_SECONDS, surely_not_sent=False),
            True,
        ),
        (Odd([1]), TryAgain(SOON_SECONDS, surely_not_sent=False), True),
        (Says(403, "Forbidden: bot was blocked by the user"), Final("blocked"), False),
        (Says(403, "Forbidden: user is deactivated"), Final("chat gone"), False),
        (Says(400, "Bad Request: chat not found"), Final("chat gone"), False),
        (Says(400, "Bad Request: PEER_ID_INVALID"), Final("chat gone"), False),
        (Says(400, "Bad Request: message text is strange"), Final("refused"), False),
        (Says(401, "Unauthorized"), TryAgain(60, surely_not_sent=True), False),
    ],
    ids=str,
)
async def test_a_failure_is_told_for_what_it_is(
    bot: Bot, api: BotApi, anna: Person, failure: Failure, expected: Delivered, *, arrived: bool
) -> None:
    api.fail("sendMessage", failure)
    assert await send(bot, Rendered("hello")) == expected
    assert [message.text for message in anna.received] == ["hello"] * arrived


async def test_without_a_connection_nothing_was_sent() -> None:
    with BotApi() as gone:
        url, token = gone.url, gone.token
    bot = make_bot(token, url)
    assert await send(bot, Rendered("hello")) == TryAgain(SOON_SECONDS, surely_not_sent=True)
    await bot.request.shutdown()


async def test_a_blocked_chat_is_final(bot: Bot, anna: Person) -> None:
    anna.blocks()
    assert await send(bot, Rendered("hello")) == Final("blocked")


@pytest.mark.parametrize("chat", ["telegram:", "telegram:x", "local:1001", ""])
async def test_what_is_no_chat_of_telegrams_is_refused(bot: Bot, chat: str) -> None:
    assert await send(bot, Rendered("hello"), chat) == Final("refused")


async def test_an_empty_message_is_refused(bot: Bot, anna: Person) -> None:
    assert await send(bot, Rendered(" <b>\n</b>")) == Final("refused")
    assert anna.received == ()


async def test_a_later_part_that_is_held_up_is_waited_for(bot: Bot, api: BotApi, anna: Person) -> None:
    api.fail("sendMessage", TooMany(1))
    result = await send(bot, Rendered("x", photo=PNG, document=None))
    assert result == Sent((str(anna.received[0].message_id),))
    result = await send(bot, Rendered("y" * 1025, photo=PNG))
    assert isinstance(result, Sent)
    assert [message.text for message in anna.received] == ["x", "", "y" * 1025]


@pytest.mark.parametrize("failure", [TooMany(60), Cut()], ids=str)
async def test_a_message_half_sent_is_not_surely_unsent(
    bot: Bot, api: BotApi, anna: Person, failure: Failure
) -> None:
    api.fail("sendMessage", failure)
    result = await send(bot, Rendered("y" * 1025, photo=PNG))
    assert isinstance(result, TryAgain)
    assert not result.surely_not_sent
    assert len(anna.received) == 1


async def change(bot: Bot, key: str, message: Rendered, chat: str = "telegram:1001") -> Delivered:
    return await TelegramSender(bot, patience_seconds=3).change(chat, key, message)


async def test_a_message_is_changed_in_its_place_with_its_buttons(bot: Bot, anna: Person) -> None:
    await send(bot, Rendered("Right?", (("Yes", "7:0"), ("No", "7:1"))))
    key = str(anna.received[0].message_id)
    assert await change(bot, key, Rendered(bold("Right? Yes"), (("Undo", "8:0"),))) == Sent((key,))
    (message,) = anna.received
    assert (message.text, message.labels) == ("Right? Yes", ["Undo"])
    assert await change(bot, key, Rendered("", ())) == Sent((key,))
    assert (anna.received[0].text, anna.received[0].labels) == ("Right? Yes", [])


@pytest.mark.parametrize("text", ["Right?", ""])
async def test_what_is_so_already_counts_as_changed(bot: Bot, anna: Person, text: str) -> None:
    await send(bot, Rendered("Right?", (("Yes", "7:0"),)))
    key = str(anna.received[0].message_id)
    assert await change(bot, key, Rendered(text, (("Yes", "7:0"),))) == Sent((key,))


@pytest.mark.parametrize(
    ("key", "text", "chat"),
    [
        ("999999", "hello", "telegram:1001"),
        ("x", "hello", "telegram:1001"),
        ("1", "word " * 1500, "telegram:1001"),
        ("1", "hello", "local:1001"),
    ],
)
async def test_what_cannot_be_changed_is_refused(
    bot: Bot, anna: Person, key: str, text: str, chat: str
) -> None:
    assert await change(bot, key, Rendered(text), chat) == Final("refused")
    assert anna.received == ()


@pytest.mark.parametrize(
    ("failure", "expected"),
    [
        (TooMany(7), TryAgain(7, surely_not_sent=True)),
        (Cut(done=True), TryAgain(SOON_SECONDS, surely_not_sent=False)),
        (Nonsense(), TryAgain(SOON_SECONDS, surely_not_sent=False)),
        (Says(403, "Forbidden: bot was blocked by the user"), Final("blocked")),
    ],
    ids=str,
)
async def test_a_change_that_fails_is_told_for_what_it_is(
    bot: Bot, api: BotApi, anna: Person, failure: Failure, expected: Delivered
) -> None:
    await send(bot, Rendered("Right?"))
    api.fail("editMessageText", failure)
    assert await change(bot, str(anna.received[0].message_id), Rendered("Right.")) == expected
