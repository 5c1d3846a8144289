"""A scene with ten thousand messages in one chat."""

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime, timedelta

from sqlalchemy import insert

from bot.commands.database import passing
from bot.page.scenes import Scene
from bot.play.script import Script, Step
from bot.roster import read_roster
from domain.incoming import Text
from domain.parts import Notice
from persistence.engine import writing
from persistence.store import Store
from persistence.tables import InboxRow, OutboxRow
from tests.test_project import ROOT

MESSAGES = 10_000
BEGAN = datetime(2024, 3, 2, 8, tzinfo=UTC)
NOW = BEGAN + timedelta(hours=MESSAGES)


def long_past() -> Scene:
    """A scene in which Adaeze has said half of ten thousand messages, and the bot has answered each."""
    return Scene("A long past", with_messages, lambda: Script((Step(0, NOW),), None, ROOT / "demo"))


@contextmanager
def with_messages() -> Iterator[Store]:
    with passing() as store:
        loaded = store.load_roster(read_roster(ROOT / "demo" / "roster.json"), NOW)
        assert loaded
        person = store.person_of_chat("local:Adaeze")
        assert person is not None
        said, answers = [], []
        for count in range(MESSAGES // 2):
            at = BEGAN + timedelta(hours=2 * count)
            said.append(
                {"source": "local", "key": f"past:{count}", "person": person.number, "chat": "local:Adaeze",
                 "message_key": f"past:{count}", "incoming": Text(text=f"words {count}", key=f"past:{count}"),
                 "received_at": at, "done_at": at}
            )  # fmt: skip
            answers.append(
                {"person": person.number, "weight": "answer", "parts": (Notice(topic="heard"),),
                 "actions": (), "created_at": at, "state": "sent", "attempts": 1, "sent_at": at,
                 "words": f"heard {count}", "labels": (), "message_keys": (f"answer:{count}",)}
            )  # fmt: skip
        with writing(store._engine) as connection:
            connection.execute(insert(InboxRow), said)
            connection.execute(insert(OutboxRow), answers)
        yield store
