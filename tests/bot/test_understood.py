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
from sqlalchemy import func, select

from bot.commands.database import passing
from bot.page.understood import behind_bot, behind_own
from bot.roster import read_roster
from bot.stage import Stage
from bot.wording.behind_coach import BROUGHT_BECAUSE, COMPARED, IN_ORDER
from bot.wording.understood import NOT_NOTED, NOTHING_BEHIND, TAKEN_FOR, stretches
from bot.wording.understood_coach import COACH_TAKEN_FOR
from domain.client.orders import LIGHTEN_TO
from domain.comparison import SameLoad
from domain.journal import AlertReason
from domain.parts import AlertPart, CameOf, ClientLine, Digest, Notice, Part, VerdictPart
from domain.reading import Heard, Reading, Request, read
from domain.sets import TrainingSet
from domain.tally import Counts, Numbers
from domain.understood import CoachTakenFor, TakenFor, Understood
from persistence.engine import reading
from persistence.outbox import Outgoing
from persistence.store import Store
from persistence.tables import UNDERSTOOD, InboxRow
from persistence.understood import Told
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


def newest_of_coach(chat: Chat) -> int:
    """Return the number of what the coach has said last."""
    with reading(chat.store._engine) as connection:
        said = select(func.max(InboxRow.number)).where(InboxRow.chat == chat.stage.chat_of("Mara"))
        return connection.execute(said).scalar_one()


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


def test_a_message_of_which_it_was_not_noted_says_so() -> None:
    assert behind_own(Told("who needs me?", None, ()))["note"] == NOT_NOTED


@pytest.mark.parametrize(
    ("said", "told"),
    [
        ("no rows for piet", [("Taken for", COACH_TAKEN_FOR["leave out"], ""),
                              ("Exercise", "Seated cable row", "rows"), ("Client", "Piet", "piet")]),
        ("swap rows for dips for him", [("Taken for", COACH_TAKEN_FOR["swap"], ""),
                                        ("Exercise", "Seated cable row", "rows"), ("Instead", "Dip", "dips"),
                                        ("Client", "Piet", "him")]),
        ("no quokkas for Piet", [("Taken for", COACH_TAKEN_FOR["leave out"], ""),
                                 ("Exercise", "none that is known", "quokkas"), ("Client", "Piet", "Piet")]),
        ("Piet's rdl?", [("Taken for", COACH_TAKEN_FOR["sets"], ""), ("Client", "Piet", ""),
                         ("Exercise", "Romanian deadlift", "")]),
        ("remind Piet at 7", [("Taken for", COACH_TAKEN_FOR["reminder"], ""), ("Client", "Piet", "Piet"),
                              ("Hour", "7", "7")]),
        ("who needs me?", [("Taken for", COACH_TAKEN_FOR["who needs me"], "")]),
    ],
)  # fmt: skip
def test_a_coach_s_message_shows_what_was_asked_of_whom(
    chat: Chat, said: str, told: list[tuple[str, str, str]]
) -> None:
    asyncio.run(chat.stage.say("Mara", "how is Piet?"))
    asyncio.run(chat.stage.say("Mara", said))
    orders = chat.store.told(newest_of_coach(chat))
    assert orders is not None
    assert heads(behind_own(orders)) == told


def test_what_is_said_to_a_coach_shows_what_it_goes_by() -> None:
    line = ClientLine(
        name="Piet", programme="Harbour Base", last_workout=None, due_on=None, open_alerts=(("stall", "Dip"),)
    )
    hurt = line.model_copy(update={"name": "Noor", "open_alerts": (("pain", None), ("stall", "Dip"))})
    counts = Counts(beat=3, level=1, below=1)
    digest = Digest(
        today=BEGIN.date(), clients=(line, hurt), numbers=Numbers(until=BEGIN.date(), counts=counts)
    )
    assert behind_bot([digest])["facts"] == [
        ["Stall: Noor and Piet", BROUGHT_BECAUSE["stall"], ""],
        ["Pain: Noor", BROUGHT_BECAUSE["pain"], ""],
        ["In order", IN_ORDER, ""],
        ["Exercises", f"{COMPARED} Beaten: 3 of 5.", ""],
    ]
    stalled = digest.model_copy(update={"about": "stalled", "numbers": None})
    assert behind_bot([stalled])["facts"] == [["Stall: Noor and Piet", BROUGHT_BECAUSE["stall"], ""]]
    lighter = Notice(topic="settled", facts={"client": "Piet", "remedy": "lighten", "exercises": ["Dip"]})
    (fact,) = behind_bot([CameOf(notice=lighter)])["facts"]
    assert f"{LIGHTEN_TO:.0%} of the last load" in fact[1]


def test_all_that_a_message_can_be_taken_for_has_words() -> None:
    assert TAKEN_FOR.keys() == set(get_args(TakenFor))
    assert COACH_TAKEN_FOR.keys() == set(get_args(CoachTakenFor))


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
