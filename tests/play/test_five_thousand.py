"""An import of 5,000 rows, word for word."""

from tests.play.five_thousand import CHAT, chat_of_five_thousand


def test_an_old_journal_of_five_thousand_rows_goes_as_written() -> None:
    assert chat_of_five_thousand() == CHAT.read_text(encoding="utf-8")
