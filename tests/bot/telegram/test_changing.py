"""The bot's own messages change in the chat after a press or an edit, on the whole bot with real requests."""

import pytest
from sqlalchemy import Engine

from persistence.store import Store
from tests.bot.telegram.test_whole import ROW, VERDICT, heard, until, village
from tests.bot.telegram.village import journal
from tests.botapi.errors import Says
from tests.botapi.server import BotApi


async def test_the_answer_to_an_edited_message_changes_where_it_stands(store: Store, api: BotApi) -> None:
    async with village(store, api) as (_, bram, _):
        typed = bram.says("seated cable row 60 kg x 8")
        await until(lambda: heard(bram, VERDICT))
        answers = len(bram.received)
        bram.edits(typed, "seated cable row 62.5 kg x 8")
        await until(lambda: heard(bram, "62.5"))
        assert len(bram.received) == answers
        assert "60\u00a0kg × 8" not in bram.received[-1].text
        assert bram.received[-1].labels[0] == "Undo"


@pytest.mark.parametrize("is_gone", [False, True])
async def test_once_something_else_was_said_or_the_answer_is_gone_it_is_a_new_message(
    store: Store, api: BotApi, is_gone: bool
) -> None:
    async with village(store, api) as (_, bram, _):
        typed = bram.says("seated cable row 60 kg x 8")
        await until(lambda: heard(bram, VERDICT))
        if is_gone:
            api.fail("editMessageText", Says(400, "Bad Request: message to edit not found"))
        else:
            bram.says("thanks")
            await until(lambda: heard(bram, "welcome."))
        answers = len(bram.received)
        bram.edits(typed, "seated cable row 62.5 kg x 8")
        await until(lambda: len(bram.received) == answers + 1)
        assert "62.5" in bram.received[-1].text


async def test_a_question_shows_the_answer_that_was_pressed_and_loses_its_buttons(
    store: Store, engine: Engine, api: BotApi
) -> None:
    async with village(store, api) as (_, bram, _):
        bram.says("seated cable row 60 kg")
        await until(lambda: heard(bram, "How many reps"))
        answers = len(bram.received)
        label = bram.received[-1].labels[0]
        bram.presses(label)
        await until(lambda: heard(bram, VERDICT) and not bram.received[answers - 1].labels)
        question, verdict = bram.received[answers - 1 :]
        assert question.text.endswith(f"\n→ {label}")
        assert verdict.text.startswith(VERDICT)
    assert [each.exercise for each in journal(engine, "Bram")] == [ROW]


async def test_undo_under_a_record_is_said_in_its_place(store: Store, engine: Engine, api: BotApi) -> None:
    async with village(store, api) as (_, bram, _):
        bram.says("seated cable row 60 kg x 8")
        await until(lambda: heard(bram, VERDICT))
        bram.says("romanian deadlift 80 kg x 6")
        await until(lambda: heard(bram, "Romanian deadlift:"))
        answers = len(bram.received)
        first = next(message for message in bram.received if message.text.startswith(VERDICT))
        bram.presses_data(
            first, next(data for row in first.buttons for label, data in row if label == "Undo")
        )
        await until(lambda: heard(bram, "Taken back"))
        assert len(bram.received) == answers
        again = next(message for message in bram.received if message.message_id == first.message_id)
        assert again.text.startswith(f"Taken back: {ROW}")
    assert [each.exercise for each in journal(engine, "Bram")] == ["Romanian deadlift"]


async def test_what_comes_of_a_press_of_the_coach_stands_under_the_alert(store: Store, api: BotApi) -> None:
    async with village(store, api) as (ilse, bram, _):
        bram.says("my lower back hurts on the rows")
        await until(lambda: heard(ilse, "lower back"))
        messages = len(ilse.received)
        ilse.presses("Keep it aside")
        await until(lambda: heard(ilse, "Settled: "))
        assert len(ilse.received) == messages
        shown = ilse.received[-1].text.splitlines()[-2:]
        assert shown == ["→ Keep it aside", "Settled: it stays aside for Bram."]
        assert "Keep it aside" not in ilse.received[-1].labels
