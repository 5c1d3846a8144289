"""How a journal is asked for as a file; what is none of it stays what it was."""

import pytest

from domain.journal_words import JournalAsked, of_client, of_own
from domain.parts import File
from tests.domain.client.people import Life, at, noor

PAGES, DATA, TABLE = "journal pages", "journal data", "journal table"


@pytest.mark.parametrize(
    ("text", "name", "form"),
    [
        ("noor's journal", "noor", None),
        ("journal of noor", "noor", None),
        ("noor's journal as pdf", "noor", PAGES),
        ("send me noor's journal as a pdf, please", "noor", PAGES),
        ("pdf of noor's journal", "noor", PAGES),
        ("can you print out ana maria's training log", "ana maria", None),
        ("noor's journal to print", "noor", PAGES),
        ("the whole journal of ana maria as a spreadsheet", "ana maria", TABLE),
        ("noor's logbook as csv", "noor", TABLE),
        ("export noor", "noor", None),
        ("export noor as json", "noor", DATA),
        ("please download noor as csv", "noor", TABLE),
        ("everything about noor as json", "noor", DATA),
        ("send me everything about noor", "noor", DATA),
        ("export everything of noor as csv", "noor", TABLE),
    ],
)
def test_a_coach_asks_for_a_clients_journal(text: str, name: str, form: str | None) -> None:
    assert of_client(text) == JournalAsked(name, form)  # type: ignore[arg-type]  # a table of plain words


@pytest.mark.parametrize(
    "text", ["how is noor", "tell me everything about noor", "show me noor", "picture of noor", "undo"]
)
def test_what_is_no_wish_for_a_file_of_a_client(text: str) -> None:
    assert of_client(text) is None


@pytest.mark.parametrize(
    ("text", "form"),
    [
        ("Send me my journal", None),
        ("can I have my training log please?", None),
        ("print my journal", None),
        ("my journal as PDF", PAGES),
        ("Send me my journal as a csv file", TABLE),
        ("I'd like to get my journal as JSON", DATA),
        ("my history as a spreadsheet", TABLE),
    ],
)
def test_a_client_asks_for_the_own_journal(text: str, form: str | None) -> None:
    assert of_own(text) == JournalAsked("", form)  # type: ignore[arg-type]  # a table of plain words


@pytest.mark.parametrize(
    "text", ["show my history", "send me my data", "squat 60x5", "journal", "show me my rows", "my journal"]
)
def test_what_is_no_wish_for_the_own_journal(text: str) -> None:
    assert of_own(text) is None


def test_a_client_gets_pages_and_is_offered_the_other_forms() -> None:
    life = Life(noor())
    assert life.says("send me my journal", at(3, 10)) == (File(what="journal pages", of=2, client="Noor"),)
    assert life.presses("My journal as CSV", at(3, 10, 1)) == (
        File(what="journal table", of=2, client="Noor"),
    )
