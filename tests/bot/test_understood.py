"""What lies behind a message, from the store to what the page is given: words, sets, reasons and numbers."""

import asyncio
import json
from collections.abc import Iterator
from datetime import UTC, datetime
from decimal import Decimal
from typing import Any, get_args

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import TypeAdapter

from bot.commands.database import passing
from bot.page.understood import behind_bot, behind_own
from bot.roster import read_roster
from bot.stage import Stage
from bot.wording.understood import BROUGHT_BECAUSE, NOT_NOTED, NOTHING_BEHIND, TAKEN_FOR, stretches
from domain.comparison import SameLoad
from domain.incoming import Text
from domain.journal import AlertReason
from domain.parts import AlertPart, Notice, Part, VerdictPart
from domain.reading import Heard, Reading, Request, read
from domain.sets import TrainingSet
from domain.understood import TakenFor, Understood
from persistence.outbox import Outgoing
from persistence.store import Store
from persistence.tables import UNDERSTOOD
from tests.play.golden import SCRIPTS

BEGIN = datetime(2026, 3, 2, 17, tzinfo=UTC)
ROSTER = {
    "coaches": [{"name": "Mara", "zone": "Europe/Lisbon", "unit": "kg"}],
    "sheets": ["sheets/base.txt"],
    "clients": [
        {"name": "Piet", "coach": "Mara", "programme": "Harbour Base", "unit": "kg", "zone": "Europe/Lisbon",
         "starts": "2026-03-02", "remind_at": "08:00"}
    ],
}  # fmt: skip

DIPS = TrainingSet("Dip", Decimal(0), "kg", "body", reps=6)
SIX_DIPS = TypeAdapter(TrainingSet).dump_python(DIPS, mode="json")


class Chat:
    """Piet's chat with the bot."""

    def __init__(self, store: Store) -> None:
        self.store = store
        self.said: list[Outgoing] = []
        self.stage = Stage(store, BEGIN, lambda _at, outgoing, _rendered: self.said.append(outgoing))
        store.load_roster(read_roster(ROSTER, SCRIPTS), BEGIN)
        self.last = 0

    def says(self, text: str) -> dict[str, Any]:
        """Let Piet say something; return what lies behind it."""
        asyncio.run(self.stage.say("Piet", text))
        self.last = newest(self.store)
        return self.behind(self.last)

    def behind(self, message: int) -> dict[str, Any]:
        told = self.store.told(message)
        assert told is not None
        return behind_own(told)

    def answer(self) -> list[list[str]]:
        """Return what lies behind the last message to Piet."""
        mine = next(each for each in reversed(self.said) if each.name == "Piet")
        facts: list[list[str]] = behind_bot(mine.say.parts)["facts"]
        return facts


def newest(store: Store) -> int:
    """Return the number of what came in last, which has words."""
    number = 1
    while store.told(number + 1) is not None:
        number += 1
    return number


@pytest.fixture
def chat() -> Iterator[Chat]:
    with passing() as store:
        yield Chat(store)


def plain(words: str) -> str:
    return words.replace("\u00a0", " ")


def heads(behind: dict[str, Any]) -> list[tuple[str, str, str]]:
    return [(head, plain(words), of) for head, words, of in behind["facts"]]


def test_the_words_of_a_report_are_shown_with_what_they_became_and_what_came_of_it(chat: Chat) -> None:
    behind = chat.says("row 2x9 @ 60 felt great, left knee hurts 3/10")
    assert (
        "".join(words for words, _ in behind["stretches"]) == "row 2x9 @ 60 felt great, left knee hurts 3/10"
    )
    became = {words: what for words, what in behind["stretches"] if what}
    assert became["row"] == ["an exercise"]
    assert became["2"] == ["how many sets"]
    assert became["9 @ 60"] == ["a set"]
    assert became["knee"] == ["pain"]
    assert heads(behind) == [
        ("Taken for", TAKEN_FOR["a report"], ""),
        ("A set", "Seated cable row: 60 kg × 9, on 2026-03-02", "9 @ 60"),
        ("A set", "Seated cable row: 60 kg × 9, on 2026-03-02", "9 @ 60"),
        ("Pain", "left knee, 3 out of 10", ""),
        ("Left over, or said around it", "felt great", ""),
        ("Recorded", "Seated cable row: 60 kg × 9, Monday 2 March (in the journal)", ""),
        ("Recorded", "Seated cable row: 60 kg × 9, Monday 2 March (in the journal)", ""),
    ]


def test_what_is_put_right_since_is_told_of_the_first_message(chat: Chat) -> None:
    chat.says("row 60x9")
    first = chat.last
    assert heads(chat.says("make that 10"))[-1][:2] == (
        "Recorded",
        "Seated cable row: 60 kg × 10, Monday 2 March (in the journal)",
    )
    assert heads(chat.behind(first))[-1][1].endswith("(put right since)")


def test_what_is_taken_as_a_whole_shows_no_words(chat: Chat) -> None:
    behind = chat.says("remind me at 7")
    assert behind["stretches"] == [["remind me at 7", []]]
    assert heads(behind) == [("Taken for", TAKEN_FOR["a setting"], "")]


def test_a_verdict_and_a_target_show_their_reasons_and_numbers(chat: Chat) -> None:
    chat.says("row 60x9, rdl 80x7, hammer curl 14x10, pulldown 45x6")
    asyncio.run(chat.stage.wait_until(datetime(2026, 3, 8, 17, tzinfo=UTC)))
    chat.says("row 62.5x9")
    facts = [(head, plain(words)) for head, words, _ in chat.answer()]
    assert facts[0] == ("Heard", "62.5 kg × 9")
    assert facts[1][0] == "Verdict, Seated cable row"
    assert "62.5 kg × 9 against 60 kg × 9: 2.5 kg more and as many reps, so a beat" in facts[1][1]
    assert facts[2][0] == "Target, Seated cable row"
    assert "so the same load and one rep more" in facts[2][1]
    assert facts[3][1] == "Reckoned from 62.5 kg × 9, in a range of 8–10 reps."


@pytest.mark.parametrize(
    ("part", "facts"),
    [
        (Notice(topic="nothing recorded"), []),
        (VerdictPart(exercise="Dip", result="beat", set=DIPS, before=DIPS, recorded=(DIPS,),
                     reason=SameLoad(1), held=True),
         [["Heard", "6\u00a0reps", ""]]),
        (AlertPart(reason="missed", client="Piet", evidence={"in_a_row": 2, "workout": "Pull"}),
         [["Alert: missed", BROUGHT_BECAUSE["missed"], ""]]),
        (AlertPart(reason="stall", client="Piet", exercise="Dip", evidence={
            "without_beat": 2,
            "exposures": [{"on": f"2026-03-0{day}", "sets": [SIX_DIPS]} for day in (1, 4, 7)],
         }),
         [["Alert: stall", BROUGHT_BECAUSE["stall"], ""],
          ["Evidence", "Sunday 1 March: 6\u00a0reps", ""],
          ["Evidence", "Wednesday 4 March: 6\u00a0reps", ""],
          ["Evidence", "Saturday 7 March: 6\u00a0reps", ""]]),
    ],
)  # fmt: skip
def test_what_is_behind_a_part(part: Part, facts: list[list[str]]) -> None:
    assert behind_bot([part]) == {
        "stretches": [],
        "facts": facts,
        "note": None if facts else NOTHING_BEHIND,
    }


def test_why_it_is_brought_is_told_of_every_alert() -> None:
    assert BROUGHT_BECAUSE.keys() == set(get_args(AlertReason))


def test_a_message_heard_before_it_was_noted_says_so() -> None:
    with passing() as store:
        store.load_roster(read_roster(ROSTER, SCRIPTS), BEGIN)
        stage = Stage(store, BEGIN, lambda *_: None)
        asyncio.run(stage.bring("Mara", Text(text="who needs me?", key="1")))
        told = store.told(1)
    assert told is not None
    assert behind_own(told)["note"] == NOT_NOTED


@given(
    st.text(max_size=60),
    st.lists(st.tuples(st.integers(0, 60), st.integers(0, 60)), max_size=6),
    st.sampled_from(list(TAKEN_FOR)),
)
def test_the_stretches_are_all_of_the_message(
    text: str, spans: list[tuple[int, int]], taken_for: TakenFor
) -> None:
    words = tuple(
        Heard(min(pair), max(pair), "a set")
        for pair in spans
        if max(pair) <= len(text) and pair[0] != pair[1]
    )
    found = stretches(text, Understood(taken_for, Reading(words=words)))
    assert "".join(each.words for each in found) == text
    assert all(each.words for each in found)


@pytest.mark.parametrize(
    "text",
    [
        "squat 62.5x6, bench 3x8 @ 40, left knee hurts 4/10",
        "8",
        "plank 60 s, 1.5 in reserve",
        "skip dips, move the rest to friday",
        "chest pain and I feel faint",
    ],
)
def test_what_is_kept_is_what_was_understood(text: str) -> None:
    understood = Understood("a report", read(Request(text, "kg", BEGIN.replace(tzinfo=None), done=(DIPS,))))
    kept = UNDERSTOOD.dump_json(understood, exclude_defaults=True)
    assert UNDERSTOOD.validate_json(kept) == understood
    assert json.loads(kept)["taken_for"] == "a report"
