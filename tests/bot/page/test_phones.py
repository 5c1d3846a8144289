"""What is done on a phone of the page goes the way of every message, and what comes of it is shown."""

import pytest

from tests.bot.page.conftest import Asking

ADAEZE, MARIT = "local:Adaeze", "local:Marit"


async def test_a_set_is_answered_on_the_phone_and_pain_reaches_the_coach(asking: Asking) -> None:
    assert (await asking.do("say", chat=ADAEZE, text="squat 60x6")).status_code == 200
    said = await asking.said(ADAEZE)
    assert said[0].startswith("Welcome, Adaeze.")
    assert said[1] == "squat 60x6"
    assert "60\u00a0kg × 6" in said[2]
    await asking.do("say", chat=ADAEZE, text="my knee hurts")
    assert "Adaeze" in (await asking.said(MARIT))[-1]


async def test_an_edit_changes_the_message_and_its_answer_where_they_stand(asking: Asking) -> None:
    await asking.do("say", chat=ADAEZE, text="squat 60x6")
    before = (await asking.look("chat", of=ADAEZE))["messages"]
    own = next(entry for entry in before if entry["by"] == "me")
    await asking.do("edit", chat=ADAEZE, key=own["key"], text="squat 62.5x6")
    after = (await asking.look("chat", of=ADAEZE))["messages"]
    assert [entry["id"] for entry in after] == [entry["id"] for entry in before]
    assert (after[-2]["words"], after[-2]["edited"]) == ([["squat 62.5x6"]], True)
    assert "62.5\u00a0kg × 6" in "".join(stretch[0] for stretch in after[-1]["words"])


@pytest.mark.parametrize(
    ("path", "body", "status"),
    [
        ("say", {"chat": "local:Nobody", "text": "hello"}, 400),
        ("say", {"chat": ADAEZE, "text": "  "}, 400),
        ("say", {"chat": ADAEZE, "text": "x" * 4097}, 413),
        ("say", {"chat": ADAEZE, "text": "x" * 100_000}, 413),
        ("say", {"chat": ADAEZE}, 400),
        ("pace", {"pace": "backwards"}, 400),
        ("begin", {"scene": 7}, 400),
        ("begin", {"scene": -1}, 400),
    ],
)
async def test_what_cannot_be_taken_is_refused(
    asking: Asking, path: str, body: dict[str, object], status: int
) -> None:
    answer = await asking.do(path, **body)
    assert answer.status_code == status
    assert answer.text.endswith(".")
