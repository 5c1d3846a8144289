"""The server's own behaviour, seen through the real client, python-telegram-bot.

Expected answers are those of the Bot API's description and of the real server's published source; see the
package's docstring.
"""

import asyncio
from collections.abc import AsyncIterator, Iterator

import pytest
from telegram import Bot, InlineKeyboardButton, InlineKeyboardMarkup
from telegram.constants import ParseMode
from telegram.error import BadRequest, Conflict, Forbidden, InvalidToken, NetworkError, RetryAfter, TimedOut
from telegram.request import HTTPXRequest

from tests.botapi.errors import Broken, Cut, Failure, Nonsense, RefusedError, Says, Slow, TooMany
from tests.botapi.markup import parse
from tests.botapi.people import Person
from tests.botapi.server import BotApi

PNG = b"\x89PNG\r\n\x1a\n" + bytes(range(256)) + b"\r\n--\r\n\x00\x85\xff"


@pytest.fixture
def api() -> Iterator[BotApi]:
    with BotApi() as running:
        yield running


@pytest.fixture
async def bot(api: BotApi) -> AsyncIterator[Bot]:
    async with make_bot(api) as ready:
        yield ready


@pytest.fixture
def anna(api: BotApi) -> Person:
    person = api.person(1001, "Anna")
    api.world.started.add(person.number)
    return person


def make_bot(api: BotApi, token: str | None = None) -> Bot:
    return Bot(
        token or api.token,
        base_url=f"{api.url}/bot",
        base_file_url=f"{api.url}/file/bot",
        request=HTTPXRequest(read_timeout=0.5),
        get_updates_request=HTTPXRequest(read_timeout=5),
    )


async def test_a_wrong_token_is_refused(api: BotApi) -> None:
    bot = make_bot(api, "4242:another")
    with pytest.raises(InvalidToken):
        await bot.initialize()
    await bot.request.shutdown()


async def test_updates_are_forgotten_only_below_the_offset(bot: Bot, anna: Person) -> None:
    for text in ("one", "two", "three"):
        anna.says(text)
    first = await bot.get_updates()
    again = await bot.get_updates()
    assert [u.message.text for u in first if u.message] == ["one", "two", "three"]
    assert again == first
    rest = await bot.get_updates(offset=first[1].update_id)
    assert [u.message.text for u in rest if u.message] == ["two", "three"]
    assert anna.world.acknowledged == [first[0].update_id]
    assert await bot.get_updates(offset=first[2].update_id + 1) == ()
    assert anna.world.waiting == 0


async def test_an_offset_far_beyond_the_end_forgets_nothing(bot: Bot, anna: Person) -> None:
    anna.world.jump_to(5_000)
    anna.says("after a week of silence")
    assert len(await bot.get_updates(offset=730_050)) == 1


async def test_the_batch_is_limited(bot: Bot, anna: Person) -> None:
    for number in range(5):
        anna.says(str(number))
    assert len(await bot.get_updates(limit=2)) == 2


async def test_a_long_poll_ends_with_the_first_update(bot: Bot, anna: Person) -> None:
    poll = asyncio.create_task(bot.get_updates(timeout=5))
    await asyncio.sleep(0.05)
    assert not poll.done()
    anna.says("hello")
    async with asyncio.timeout(1):
        assert len(await poll) == 1


async def test_of_two_pollers_the_older_gets_a_conflict(api: BotApi, bot: Bot, anna: Person) -> None:
    older = asyncio.create_task(bot.get_updates(timeout=5))
    await asyncio.sleep(0.05)
    async with make_bot(api) as other:
        newer = asyncio.create_task(other.get_updates(timeout=5))
        with pytest.raises(Conflict, match="only one bot instance"):
            await older
        anna.says("hello")
        assert len(await newer) == 1


async def test_polling_beside_a_webhook_is_a_conflict(bot: Bot) -> None:
    await bot.set_webhook("https://bot.example.org/")
    with pytest.raises(Conflict, match="deleteWebhook"):
        await bot.get_updates()
    await bot.delete_webhook()
    assert await bot.get_updates() == ()


async def test_kinds_not_asked_for_do_not_come(bot: Bot, anna: Person) -> None:
    await bot.get_updates(allowed_updates=["message"])
    anna.blocks()
    anna.says("hello")
    assert [u.message is not None for u in await bot.get_updates()] == [True]


async def test_everything_that_a_person_does_arrives(bot: Bot, anna: Person) -> None:
    buttons = InlineKeyboardMarkup([[InlineKeyboardButton("Yes", callback_data="7:0")]])
    asked = await bot.send_message(anna.number, "Right?", reply_markup=buttons)
    typed = anna.says("hello", replies_to=asked.message_id)
    anna.edits(typed, "hallo")
    query = anna.presses("Yes")
    anna.sends_file("sheet.txt", b"\x00\r\nPull\n")
    anna.sends({"location": {"longitude": 1.0, "latitude": 2.0}})
    anna.blocks()
    message, edited, pressed, document, location, blocked = await bot.get_updates()
    assert message.message is not None
    assert message.message.reply_to_message is not None
    assert message.message.reply_to_message.message_id == asked.message_id
    assert edited.edited_message is not None
    assert (edited.edited_message.message_id, edited.edited_message.text) == (typed, "hallo")
    assert pressed.callback_query is not None
    assert pressed.callback_query.data == "7:0"
    assert await bot.answer_callback_query(query)
    with pytest.raises(BadRequest, match=r"[Qq]uery is too old"):
        await bot.answer_callback_query(query)
    assert document.message is not None
    assert document.message.document is not None
    file = await document.message.document.get_file()
    assert bytes(await file.download_as_bytearray()) == b"\x00\r\nPull\n"
    assert location.message is not None
    assert location.message.location is not None
    assert blocked.my_chat_member is not None
    assert blocked.my_chat_member.new_chat_member.status == "kicked"


async def test_what_the_bot_sends_is_kept_in_order(bot: Bot, anna: Person) -> None:
    await bot.send_message(anna.number, "<b>5 &lt; 6</b> &amp; so on", parse_mode=ParseMode.HTML)
    await bot.send_photo(anna.number, PNG, caption="a picture")
    await bot.send_document(anna.number, b"\r\n\x00--", filename="journal.csv")
    text, photo, document = anna.received
    assert text.text == "5 < 6 & so on"
    assert text.entities == [{"type": "bold", "offset": 0, "length": 5}]
    assert (photo.photo, photo.text) == (PNG, "a picture")
    assert document.document is not None
    assert (document.document.name, document.document.content) == ("journal.csv", b"\r\n\x00--")


async def test_an_edit_that_changes_nothing_is_refused(bot: Bot, anna: Person) -> None:
    sent = await bot.send_message(anna.number, "one")
    await bot.edit_message_text("two", anna.number, sent.message_id)
    with pytest.raises(BadRequest, match="not modified"):
        await bot.edit_message_text("two", anna.number, sent.message_id)
    with pytest.raises(BadRequest, match="not modified"):
        await bot.edit_message_reply_markup(anna.number, sent.message_id)
    assert anna.received[0].versions == ["one", "two"]


@pytest.mark.parametrize(
    ("text", "why"),
    [
        ("5 < 6", 'Unsupported start tag "" at byte offset 2'),
        ("ä<script>", 'Unsupported start tag "script" at byte offset 2'),
        ("<b>bold", 'Can\'t find end tag corresponding to start tag "b"'),
        ("bold</b>", "Unexpected end tag at byte offset 4"),
        ("<b><i>x</b></i>", 'Unmatched end tag at byte offset 7, expected "</i>", found "</b>"'),
        ("<b", "Unclosed start tag at byte offset 0"),
        ("<b>x</b", "Unclosed end tag at byte offset 4"),
    ],
)
def test_markup_that_cannot_be_read_is_refused_in_the_real_words(text: str, why: str) -> None:
    """The cases and words of td/telegram/MessageEntity.cpp and test/message_entities.cpp of tdlib/td."""
    with pytest.raises(RefusedError) as refused:
        parse(text)
    assert refused.value.description == f"Bad Request: can't parse entities: {why}"


@pytest.mark.parametrize(
    ("text", "plain"),
    [
        ("&ge;&lt;&gt;&amp;&quot;&laquo;&raquo;", '&ge;<>&"&laquo;&raquo;'),
        ("&#65;&#x42; & so on", "AB & so on"),
        ("<strong>a</strong><em>b</em>", "ab"),
    ],
)
def test_references_are_read_as_the_real_server_reads_them(text: str, plain: str) -> None:
    assert parse(text)[0] == plain


@pytest.mark.parametrize(
    ("text", "data", "why"),
    [
        ("", "ok", "text is empty"),
        ("x" * 4097, "ok", "too long"),
        ("😀" * 2049, "ok", "too long"),
        ("fine", "d" * 65, "(?i)BUTTON_DATA_INVALID"),
        ("<i>", "ok", "parse entities"),
    ],
)
async def test_what_the_limits_forbid_is_refused(
    bot: Bot, anna: Person, text: str, data: str, why: str
) -> None:
    buttons = InlineKeyboardMarkup([[InlineKeyboardButton("b", callback_data=data)]])
    with pytest.raises(BadRequest, match=why):
        await bot.send_message(anna.number, text, parse_mode=ParseMode.HTML, reply_markup=buttons)
    assert anna.received == ()


async def test_chats_that_cannot_be_written_to(api: BotApi, bot: Bot, anna: Person) -> None:
    bert = api.person(1002)
    with pytest.raises(BadRequest, match="not found"):
        await bot.send_message(999, "hello")
    with pytest.raises(Forbidden, match="initiate"):
        await bot.send_message(bert.number, "hello")
    anna.blocks()
    with pytest.raises(Forbidden, match="blocked"):
        await bot.send_message(anna.number, "hello")


@pytest.mark.parametrize(
    ("failure", "error", "carried_out"),
    [
        (TooMany(3), RetryAfter, False),
        (Broken(), NetworkError, False),
        (Broken(502, done=True), NetworkError, True),
        (Cut(), NetworkError, False),
        (Cut(done=True), NetworkError, True),
        (Slow(0.7), TimedOut, True),
        (Says(403, "Forbidden: user is deactivated"), Forbidden, False),
    ],
    ids=str,
)
async def test_failures_come_as_scripted_and_once(
    bot: Bot, api: BotApi, anna: Person, failure: Failure, error: type[Exception], *, carried_out: bool
) -> None:
    api.fail("sendMessage", failure, chat=anna.number)
    with pytest.raises(error):
        await bot.send_message(anna.number, "first")
    await bot.send_message(anna.number, "second")
    assert [m.text for m in anna.received] == ["first", "second"][not carried_out :]


async def test_nonsense_is_answered_when_scripted(bot: Bot, api: BotApi, anna: Person) -> None:
    api.fail("sendMessage", Nonsense())
    with pytest.raises(Exception, match="Invalid server response"):
        await bot.send_message(anna.number, "first")
    assert [m.text for m in anna.received] == ["first"]


async def test_a_group_can_be_left(api: BotApi, bot: Bot, anna: Person) -> None:
    group = api.group(-5)
    group.says("hello all", anna)
    (update,) = await bot.get_updates()
    assert update.message is not None
    await bot.leave_chat(update.message.chat.id)
    assert group.left
