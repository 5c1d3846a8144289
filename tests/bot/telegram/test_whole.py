"""The whole bot on Telegram: poll, inbox, desk, outbox, send, on a SQLite file.

Only the people and Telegram's server are ours; the server checks what the real one checks.
"""

import asyncio
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager

import pytest
from sqlalchemy import Engine

from bot.serve import serve
from bot.telegram.connection import make_bot
from persistence.store import Store
from tests.bot.telegram.village import SHEET, Recorded, codes, inbox_count, journal
from tests.botapi.errors import Broken, Cut, Says, Slow
from tests.botapi.people import Person
from tests.botapi.server import BotApi

ROW = "Seated cable row"
VERDICT = f"{ROW}:"
"""How the answer to a set begins; the plan names the exercise too."""


@asynccontextmanager
async def serving(store: Store, api: BotApi) -> AsyncIterator[None]:
    task = asyncio.create_task(serve(store, make_bot(api.token, api.url)))
    try:
        yield
    finally:
        assert not task.done() or task.result() is None
        task.cancel()
        await asyncio.gather(task, return_exceptions=True)


async def until(true: Callable[[], object], seconds: float = 10) -> None:
    async with asyncio.timeout(seconds):
        while not true():  # noqa: ASYNC110 what is waited for happens in other threads
            await asyncio.sleep(0.02)


def heard(person: Person, words: str) -> bool:
    return any(words.casefold() in message.text.casefold() for message in person.received)


@asynccontextmanager
async def village(store: Store, api: BotApi) -> AsyncIterator[tuple[Person, Person, Person]]:
    """The coach and two clients, who have all come in."""
    code = codes(store, "Bram", "Chidi")
    ilse, bram, chidi = api.person(1, "Ilse"), api.person(2, "Bram"), api.person(3, "Chidi")
    async with serving(store, api):
        ilse.says(f"/start {code['Ilse']}")
        bram.says(f"/start {code['Bram']}")
        chidi.says(f"/start {code['Chidi']}")
        await until(lambda: all(heard(person, "welcome") for person in (ilse, bram, chidi)))
        await until(lambda: heard(ilse, "Bram has joined") and heard(ilse, "Chidi has joined"))
        yield ilse, bram, chidi


async def test_a_client_comes_in_reports_and_is_answered(store: Store, engine: Engine, api: BotApi) -> None:
    async with village(store, api) as (_, bram, _):
        assert heard(bram, "no doctor")  # the first message says what the bot is not
        bram.says("seated cable row 60 kg x 8")
        await until(lambda: heard(bram, VERDICT))
    assert journal(engine, "Bram") == [Recorded(ROW, "60", 8, "seated cable row 60 kg x 8")]


async def test_a_look_at_something_is_answered_each_time_it_is_pressed(store: Store, api: BotApi) -> None:
    async with village(store, api) as (_, bram, _):
        bram.says("seated cable row 60 kg x 8")
        await until(lambda: heard(bram, VERDICT))
        answer = bram.received[-1]
        data = dict(button for row in answer.buttons for button in row)["What's next?"]
        said = len(bram.received)
        bram.presses_data(answer, data)
        await until(lambda: len(bram.received) == said + 1)
        bram.presses_data(answer, data)
        await until(lambda: len(bram.received) == said + 2)
    assert bram.received[-1].text == bram.received[-2].text


async def test_an_edited_message_is_read_again(store: Store, engine: Engine, api: BotApi) -> None:
    async with village(store, api) as (_, bram, _):
        typed = bram.says("seated cable row 60 kg x 8")
        await until(lambda: journal(engine, "Bram"))
        bram.edits(typed, "seated cable row 62.5 kg x 8")
        await until(lambda: heard(bram, "62.5"))
        assert [each.load for each in journal(engine, "Bram")] == ["62.5"]
        answers = len(bram.received)
        bram.edits(typed, "seated cable row 62.5 kg x 8")  # as a link's preview does: nothing has changed
        await until(lambda: inbox_count(engine, "Bram") == 4 and api.world.waiting == 0)
        await asyncio.sleep(0.3)
        assert len(bram.received) == answers
    assert len(journal(engine, "Bram")) == 1


@pytest.mark.parametrize("to_the_bot", [False, True])
async def test_a_reply_to_an_older_message_puts_right_what_that_one_recorded(
    store: Store, engine: Engine, api: BotApi, to_the_bot: bool
) -> None:
    async with village(store, api) as (_, bram, _):
        typed = bram.says("seated cable row 60 kg x 8")
        await until(lambda: heard(bram, VERDICT))
        bram.says("romanian deadlift 80 kg x 6")
        await until(lambda: heard(bram, "Romanian deadlift:"))
        echo = next(message for message in bram.received if VERDICT in message.text)
        bram.says("that was 9", replies_to=echo.message_id if to_the_bot else typed)
        await until(lambda: heard(bram, "put right"))
    assert {(each.exercise, each.load, each.reps) for each in journal(engine, "Bram")} == {
        (ROW, "60", 9),
        ("Romanian deadlift", "80", 6),
    }


async def test_a_reply_to_an_older_question_answers_it(store: Store, engine: Engine, api: BotApi) -> None:
    async with village(store, api) as (_, bram, _):
        bram.says("seated cable row 9 reps")
        await until(lambda: heard(bram, "What load was that on Seated"))
        asked = bram.received[-1]
        bram.says("romanian deadlift 7 reps")
        await until(lambda: heard(bram, "What load was that on Romanian"))
        bram.says("60", replies_to=asked.message_id)
        await until(lambda: heard(bram, VERDICT))
    assert [(each.exercise, each.load, each.reps) for each in journal(engine, "Bram")] == [(ROW, "60", 9)]


async def test_a_sheet_sent_as_a_file_is_said_back_and_stored_at_a_press(store: Store, api: BotApi) -> None:
    async with village(store, api) as (ilse, bram, _):
        sheet = SHEET.replace("Quayside Base", "Quayside <Light>").replace("8-10", "10-12")
        ilse.sends_file("light.txt", sheet.encode())
        await until(lambda: any("Store it" in message.labels for message in ilse.received))
        asked = next(message for message in ilse.received if "Store it" in message.labels)
        assert "Quayside <Light>" in asked.text
        data = dict(asked.buttons[0] + (asked.buttons[1] if len(asked.buttons) > 1 else []))["Store it"]
        bram.presses_data(asked, data)  # a button that was sent to somebody else
        await until(lambda: heard(bram, "button"))
        ilse.presses("Store it")
        ilse.presses("Store it")
        await until(lambda: heard(ilse, "stored: Quayside"))
        said = len(ilse.received)
        await asyncio.sleep(0.3)
        assert len(ilse.received) == said  # the second press is the first one, come again
        ilse.presses_data(asked, "999999:0")
        await until(lambda: len(ilse.received) == said + 1)
        assert heard(ilse, "button")
        assert api.world.queries == set()


async def test_a_broken_sheet_is_answered_line_by_line(store: Store, api: BotApi) -> None:
    async with village(store, api) as (ilse, _, _):
        ilse.sends_file(
            "broken.txt", b"Quayside\nTrain every 2 days in turn: Pull\n\nPull\n1. Row, some reps\n"
        )
        await until(lambda: heard(ilse, "line 5"))
        ilse.sends_file("noise.bin", bytes(range(256)))
        await until(lambda: heard(ilse, "not plain text"))


async def test_whoever_blocks_the_bot_is_told_of_to_the_coach(store: Store, api: BotApi) -> None:
    async with village(store, api) as (ilse, bram, chidi):
        bram.says("seated cable row 60 kg x 8")
        bram.blocks()
        await until(lambda: heard(ilse, "can no longer be reached"))
        chidi.says("seated cable row 50 kg x 8")
        await until(lambda: heard(chidi, VERDICT))
        bram.unblocks()
        bram.says("romanian deadlift 80 kg x 6")
        await until(lambda: heard(bram, "Romanian deadlift"))


@pytest.mark.parametrize(
    "words",
    [
        "x" * 1_000_000,
        "seated cable row " * 50_000,
        "😀😀😀",
        "<b>60 x 8</b> & <script>",
        "\u202e60 x 8\u202c",
        "\x00\x07\x1b[31m",
        "seated cable row 9999 kg x 500",
        "присед 100 на 5",
    ],
    ids=[
        "a megabyte",
        "a megabyte of words",
        "emoji",
        "html",
        "right to left",
        "control",
        "reason",
        "alphabet",
    ],
)
async def test_strange_words_get_a_kind_answer_and_do_no_harm(
    store: Store, engine: Engine, api: BotApi, words: str
) -> None:
    async with village(store, api) as (_, bram, chidi):
        said = len(bram.received)
        bram.says(words)
        await until(lambda: len(bram.received) > said)
        chidi.says("seated cable row 50 kg x 8")
        await until(lambda: heard(chidi, VERDICT))
        answer = bram.received[said].text
        assert "Traceback" not in answer
        assert "Error" not in answer
    assert inbox_count(engine, "Bram") == 2


async def test_a_stranger_gets_one_polite_line(store: Store, api: BotApi) -> None:
    async with village(store, api) as (ilse, _, _):
        before = len(ilse.received)
        stranger = api.person(99, "Stranger")
        stranger.says("seated cable row 60 kg x 8")
        stranger.says("/start not-a-code")
        await until(lambda: len(stranger.received) == 2)
        assert all("invit" in message.text and "\n" not in message.text for message in stranger.received)
        assert len(ilse.received) == before


async def test_other_kinds_of_messages_get_a_kind_answer(store: Store, api: BotApi) -> None:
    async with village(store, api) as (_, bram, _):
        said = len(bram.received)
        bram.sends({"location": {"longitude": 1.0, "latitude": 2.0}})
        await until(lambda: len(bram.received) == said + 1)
        assert "location" in bram.received[-1].text


async def test_answers_outlive_a_bad_network_in_order(store: Store, engine: Engine, api: BotApi) -> None:
    async with village(store, api) as (_, bram, _):
        said = len(bram.received)
        for failure in (Cut(), Broken(502)):
            api.fail("sendMessage", failure, chat=bram.number)
        api.fail("getUpdates", Cut(done=True))
        bram.says("seated cable row 60 kg x 8")
        bram.says("romanian deadlift 80 kg x 6")
        await until(lambda: not api.world.failures and len(bram.received) >= said + 2, seconds=30)
        answers = [message.text for message in bram.received[said:]]
        assert ROW in answers[0]
        assert "Romanian deadlift" in answers[1]
    assert [each.load for each in journal(engine, "Bram")] == ["60", "80"]


async def test_a_slow_chat_holds_up_nobody_else(store: Store, api: BotApi) -> None:
    async with village(store, api) as (_, bram, chidi):
        said = len(bram.received)
        api.fail("sendMessage", Slow(3), chat=bram.number)
        bram.says("seated cable row 60 kg x 8")
        await until(lambda: not api.world.failures)
        bram.says("romanian deadlift 80 kg x 6")
        chidi.says("seated cable row 50 kg x 8")
        await until(lambda: heard(chidi, VERDICT), seconds=2)
        assert len(bram.received) == said + 1  # the second answer waits for the first


async def test_what_telegram_refuses_for_good_holds_up_nothing(store: Store, api: BotApi) -> None:
    async with village(store, api) as (_, bram, _):
        api.fail("sendMessage", Says(400, "Bad Request: something new"), chat=bram.number)
        bram.says("seated cable row 60 kg x 8")
        await until(lambda: not api.world.failures)
        bram.says("romanian deadlift 80 kg x 6")
        await until(lambda: heard(bram, "Romanian deadlift"))


@pytest.mark.parametrize(
    "failure",
    [
        Says(403, "Forbidden: bot was blocked by the user"),
        Says(403, "Forbidden: user is deactivated"),
        Says(400, "Bad Request: chat not found"),
    ],
    ids=["blocked", "deactivated", "gone"],
)
async def test_the_coach_hears_where_only_the_answer_to_a_message_tells_that_a_client_is_gone(
    store: Store, api: BotApi, failure: Says
) -> None:
    async with village(store, api) as (ilse, bram, _):
        api.fail("sendMessage", failure, chat=bram.number)
        bram.says("seated cable row 60 kg x 8")
        await until(lambda: heard(ilse, "can no longer be reached"))


async def test_an_alert_that_is_refused_in_every_form_is_told_of_in_other_words(
    store: Store, api: BotApi
) -> None:
    async with village(store, api) as (ilse, bram, _):
        said = len(ilse.received)
        api.fail("sendMessage", Says(400, "Bad Request: something new"), chat=ilse.number, times=3)
        bram.says("my left knee hurts")
        await until(lambda: len(ilse.received) > said)
        assert "who needs me" in ilse.received[said].text
        ilse.says("who needs me?")
        await until(lambda: len(ilse.received) > said + 1)
        assert "Bram: pain" in ilse.received[said + 1].text


async def test_a_journal_arrives_as_a_file(store: Store, api: BotApi) -> None:
    async with village(store, api) as (ilse, bram, _):
        bram.says("seated row 60 x 9")
        await until(lambda: heard(bram, VERDICT))
        ilse.says("journal of Bram")
        await until(lambda: any(message.document for message in ilse.received))
        (file,) = (message for message in ilse.received if message.document)
    assert file.document is not None
    assert "one row a set" in file.text
    assert file.document.name == "journal-bram.csv"
    head, row = file.document.content.decode("utf-8-sig").splitlines()
    assert head.startswith("client,date,exercise,load,unit,reps,seconds,")
    assert row.startswith("Bram,")
    assert f",{ROW},60,kg,9,,total," in row
