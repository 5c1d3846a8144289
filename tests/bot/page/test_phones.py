"""What is done on a phone of the page goes the way of every message, and what comes of it is shown."""

import csv
import io

import httpx
import pytest

from bot.textfile import LIMIT_BYTES
from tests.bot.page.conftest import Asking, words

pytestmark = pytest.mark.asyncio(loop_scope="module")

MARIT = "local:Marit"
ADAEZE, DANA, FARAH, MATEUS, WIREMU, YUKI = (
    f"local:{name}" for name in ("Adaeze", "Dana", "Farah", "Mateus", "Wiremu", "Yuki")
)


async def test_a_set_is_answered_on_the_phone_and_pain_reaches_the_coach(asking: Asking) -> None:
    assert (await asking.do("say", chat=ADAEZE, text="squat 60x6")).status_code == 200
    welcome, own, answer = await asking.said(ADAEZE)
    assert welcome.startswith("Welcome, Adaeze.")
    assert own == "squat 60x6"
    assert "60\u00a0kg × 6" in answer
    await asking.do("say", chat=ADAEZE, text="my knee hurts")
    assert "Adaeze" in (await asking.said(MARIT))[-1]


async def test_an_edit_changes_the_message_and_its_answer_where_they_stand(asking: Asking) -> None:
    await asking.do("say", chat=MATEUS, text="goblet squat 20x8")
    before = await asking.entries(MATEUS)
    await asking.do("edit", chat=MATEUS, key=before[-2]["key"], text="goblet squat 22x8")
    after = await asking.entries(MATEUS)
    assert [entry["id"] for entry in after] == [entry["id"] for entry in before]
    assert (words(after[-2]), after[-2]["edited"]) == ("goblet squat 22x8", True)
    assert "22\u00a0kg" in words(after[-1])


async def test_a_button_shows_the_choice_under_its_message(asking: Asking) -> None:
    await asking.do("say", chat=FARAH, text="bench 30x8")
    answer = (await asking.entries(FARAH))[-1]
    labels = dict(answer["buttons"])
    await asking.do("press", chat=FARAH, button=labels["Undo"])
    pressed = next(entry for entry in await asking.entries(FARAH) if entry["id"] == answer["id"])
    assert (words(pressed), pressed["buttons"]) != (words(answer), answer["buttons"])
    assert "Undo" not in dict(pressed["buttons"])


async def test_a_reply_shows_what_it_answers_and_is_taken_for_that(asking: Asking) -> None:
    await asking.do("say", chat=WIREMU, text="bench 60x8")
    first = (await asking.entries(WIREMU))[-2]
    await asking.do("say", chat=WIREMU, text="squat 80x6")
    await asking.do("say", chat=WIREMU, text="that was 7", replies_to=first["key"])
    own, answer = (await asking.entries(WIREMU))[-2:]
    assert own["answers"] == "bench 60x8"
    assert "Bench press" in words(answer)
    assert "60\u00a0kg × 7" in words(answer)


async def test_a_sheet_is_read_from_its_file(asking: Asking) -> None:
    sheet = b"Quay Base\nTrain every 3 days in turn: Push\n\nPush\n1. Dip, 5-8 reps to failure\n"
    answer = await _send(asking, "quay.txt", sheet)
    assert answer.status_code == 200
    own, said = (await asking.entries(MARIT))[-2:]
    assert own["file"] == "quay.txt"
    assert "Quay Base" in words(said)


@pytest.mark.parametrize("declared", [LIMIT_BYTES + 1, 10])
async def test_a_file_that_is_too_large_is_answered_by_the_bot(asking: Asking, declared: int) -> None:
    before = len(await asking.entries(MARIT))
    answer = await _send(asking, "sheet.txt", b"x" * (LIMIT_BYTES + 1), declared)
    assert answer.status_code == 200
    own, said = (await asking.entries(MARIT))[before:]
    assert own["file"] == "sheet.txt"
    assert "large" in words(said)


async def test_a_picture_and_a_file_are_made_when_they_are_looked_at(asking: Asking) -> None:
    await asking.do("say", chat=DANA, text="squat 155x6")
    await asking.do("say", chat=DANA, text="show me my squat")
    await asking.do("say", chat=DANA, text="my journal as CSV")
    shown, sent = [entry for entry in await asking.entries(DANA) if entry["by"] == "bot"][-2:]
    assert shown["picture"].endswith(".png")
    picture = await asking.client.get(f"{asking.guard.path}picture/{shown['id'][1:]}")
    assert picture.content.startswith(b"\x89PNG")
    file = await asking.client.get(f"{asking.guard.path}file/{sent['id'][1:]}")
    assert file.headers["Content-Disposition"].startswith("attachment; ")
    rows = list(csv.DictReader(io.StringIO(file.content.decode("utf-8-sig"))))
    assert [row["exercise"] for row in rows] == ["Back squat"]
    assert (await asking.client.get(f"{asking.guard.path}file/{shown['id'][1:]}")).status_code == 404
    assert (await asking.client.get(f"{asking.guard.path}picture/99999")).status_code == 404


async def test_what_lies_behind_a_message_is_told_of_both_kinds(asking: Asking) -> None:
    await asking.do("say", chat=ADAEZE, text="squat 61x5")
    own, answer = (await asking.entries(ADAEZE))[-2:]
    behind = await asking.look(f"understood/{own['id']}")
    assert "".join(text for text, _ in behind["stretches"]) == "squat 61x5"
    assert any(became for _, became in behind["stretches"])
    assert (await asking.look(f"understood/{answer['id']}"))["facts"]
    assert await asking.look("understood/i999999") is None
    assert (await asking.client.get(f"{asking.guard.path}understood/x1")).status_code == 404


async def test_somebody_new_joins_by_an_invitation(asking: Asking) -> None:
    chat = (await asking.do("newcomer")).json()["chat"]
    await asking.do("say", chat=MARIT, text="invite Nia to Orchard Light")
    told = next(each for each in reversed(await asking.said(MARIT)) if "/start " in each)
    code = told.partition("/start ")[2].split()[0]
    await asking.do("say", chat=chat, text=f"/start {code}")
    own, *answers = await asking.said(chat)
    assert own == "/start"
    assert answers
    people = {person["chat"]: person["name"] for person in (await asking.look("state"))["people"]}
    assert people[chat] == "Nia"


async def test_what_is_typed_is_text_and_nothing_else(asking: Asking) -> None:
    typed = "<img src=x onerror=alert(1)> & <b>bold</b>"
    await asking.do("say", chat=YUKI, text=typed)
    own = next(entry for entry in await asking.entries(YUKI) if entry["by"] == "me")
    assert own["words"] == [[typed]]


@pytest.mark.parametrize(
    ("path", "body", "status"),
    [
        ("say", {"chat": "local:Nobody", "text": "hello"}, 400),
        ("say", {"chat": YUKI, "text": "  "}, 400),
        ("say", {"chat": YUKI, "text": "x" * 4097}, 413),
        ("say", {"chat": YUKI, "text": "x" * 100_000}, 413),
        ("say", {"chat": YUKI}, 400),
        ("say", {"chat": YUKI, "text": "hello", "as": "root"}, 400),
        ("pace", {"pace": "backwards"}, 400),
        ("begin", {"scene": 7}, 400),
        ("begin", {"scene": -1}, 400),
    ],
)
async def test_what_cannot_be_taken_is_refused(
    asking: Asking, path: str, body: dict[str, object], status: int
) -> None:
    before = await asking.said(YUKI)
    answer = await asking.do(path, **body)
    assert answer.status_code == status
    assert answer.text.endswith(".")
    assert await asking.said(YUKI) == before


async def _send(asking: Asking, name: str, content: bytes, declared: int | None = None) -> httpx.Response:
    query = {"of": MARIT, "name": name, "size": str(len(content) if declared is None else declared)}
    return await asking.client.post(
        f"{asking.guard.path}send", params=query, content=content, headers={"Origin": asking.origin}
    )
