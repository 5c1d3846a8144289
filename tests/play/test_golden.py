"""What the bot says in whole conversations, word for word."""

from pathlib import Path

import pytest
from sqlalchemy import select

from domain.evidence import is_sound
from persistence.engine import reading
from persistence.store import Store
from persistence.tables import AlertRow
from tests.play.golden import chat_of, scripts


def every_matter_can_come_in_again(store: Store) -> None:
    """What the bot itself has brought to the coach is sound, as what comes in with a journal has to be."""
    with reading(store._engine) as connection:
        brought = connection.execute(select(AlertRow.reason, AlertRow.exercise, AlertRow.evidence)).all()
    assert all(is_sound(reason, exercise, evidence) for reason, exercise, evidence in brought), brought


@pytest.mark.apart
@pytest.mark.parametrize("path", scripts(), ids=lambda path: path.stem)
def test_a_conversation_goes_as_written(path: Path) -> None:
    """The chat is the one that stands beside the script; `python -m tests.play.golden` writes it anew."""
    assert chat_of(path, every_matter_can_come_in_again) == path.with_suffix(".txt").read_text(
        encoding="utf-8"
    )
