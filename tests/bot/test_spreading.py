"""Words to several, through the whole bot: delivered, and told of as they arrive or not."""

import asyncio
from datetime import UTC, datetime

import pytest

from bot.channel import Final, Rendered, Sent
from bot.commands.database import opened, passing
from bot.markup import plain
from bot.roster import read_roster
from bot.stage import Stage
from persistence.outbox import Outgoing
from persistence.store import Store
from tests.play.golden import SCRIPTS

BEGIN = datetime(2026, 3, 1, 10, tzinfo=UTC)
NAMES = ("Noor", "Piet", "Ana", "Sami", "Ines", "Goran", "Ulla", "Bodil", "Tariq")
ROSTER = {
    "coaches": [{"name": "Mara", "zone": "Europe/Lisbon", "unit": "kg"}],
    "sheets": ["sheets/base.txt"],
    "clients": [
        {
            "name": name,
            "coach": "Mara",
            "programme": "Harbour Base",
            "unit": "kg",
            "zone": "Europe/Lisbon",
            "starts": "2026-03-02",
            "remind_at": "08:00",
        }
        for name in NAMES
    ],
}


class WithoutAna(Stage):
    """A stage on which Ana has blocked the bot."""

    async def send(self, chat: str, message: Rendered) -> Sent | Final:  # type: ignore[override] # it can fail
        return Final("blocked") if chat == "local:Ana" else await super().send(chat, message)


def told(store: Store) -> list[str]:
    """Return what the coach reads from the confirmation on."""
    read: list[str] = []

    def watch(_at: datetime, outgoing: Outgoing, rendered: Rendered) -> None:
        if outgoing.is_coach:
            read.append(plain(rendered.text_html))

    store.load_roster(read_roster(ROSTER, SCRIPTS), BEGIN)
    stage = WithoutAna(store, BEGIN, watch)
    asyncio.run(stage.settle())
    asyncio.run(stage.say("Mara", "tell everyone: the gym is shut on Monday"))
    read.clear()
    asyncio.run(stage.press("Mara", "Send it"))
    return read


@pytest.mark.parametrize("kind", ["sqlite", "postgresql"])
def test_the_coach_is_told_whom_words_to_all_have_reached_and_whom_not(
    kind: str, request: pytest.FixtureRequest
) -> None:
    if kind == "sqlite":
        with passing() as store:
            read = told(store)
    else:
        with opened(request.getfixturevalue("postgres_url")) as store:
            read = told(store)
    assert read[0] == "On its way to 9."
    assert read[-1] == "Reached: 8 of 9.\nNot reached: Ana (the chat is blocked)."
