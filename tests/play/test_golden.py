"""What the bot says in whole conversations, word for word."""

from pathlib import Path

import pytest

from tests.play.golden import chat_of, scripts


@pytest.mark.apart
@pytest.mark.parametrize("path", scripts(), ids=lambda path: path.stem)
def test_a_conversation_goes_as_written(path: Path) -> None:
    """The chat is the one that stands beside the script; `python -m tests.play.golden` writes it anew."""
    assert chat_of(path) == path.with_suffix(".txt").read_text(encoding="utf-8")
