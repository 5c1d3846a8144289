"""What is said of more than was asked: to the client with the reason, to the coach in a few words."""

from datetime import UTC, date, datetime
from typing import Any

import pytest

from bot.markup import plain
from bot.wording.eagerness import LEADS
from bot.wording.message import message_words
from bot.wording.reader import Reader
from domain.parts import ClientLine, Digest, Eager, Notice
from domain.values import facts_of

READER = Reader("Noor", "Europe/Amsterdam", "kg")
AT = datetime(2026, 3, 4, 18, tzinfo=UTC)
NEXT = {"next": "Push", "on": "2026-03-07"}


def matter(rule: Any, exercise: str | None = "Row", workout: str = "Pull", **facts: object) -> Eager:
    return Eager(rule=rule, exercise=exercise, workout=workout, on=date(2026, 3, 4), at=AT, facts=facts)


JUMP = matter("great jump", percent=18.8)
SETS = matter("extra sets", done=3, prescribed=1)
EARLY = matter("too soon", None, "Legs", last="2026-03-02", free_from="2026-03-05", days_early=1)
ON_TOP = matter("too soon", None, "Legs", last="2026-03-04", free_from="2026-03-07", days_early=3)
AGAIN = matter("same again", "Face pull", "", region="upper", last="2026-03-02", free_from="2026-03-05")
BESIDE = matter("not on the sheet", "Dip")


def to_client(*matters: Eager, **facts: object) -> str:
    notice = Notice(
        topic="more than asked",
        facts={"coach": "Mara", "matters": [facts_of(each) for each in matters], **facts},
    )
    return plain(message_words((notice,), READER))


def to_coach(*matters: Eager, today: date = date(2026, 3, 9)) -> list[str]:
    line = ClientLine(name="Noor", programme=None, last_workout=None, due_on=None, eager=matters)
    digest = Digest(today=today, clients=(line,), since=date(2026, 3, 2))
    return plain(message_words((digest,), READER)).splitlines()


@pytest.mark.parametrize(
    ("found", "facts", "says"),
    [
        (JUMP, {}, ["Row went up by 19% at once", "up to a tenth"]),
        (SETS, {}, ["3 sets", "the sheet has 1"]),
        (EARLY, {"counted_on": True, **NEXT}, ["a day before", "rest days", "counted from it", "Next: Push"]),
        (EARLY, {"counted_on": False}, ["a day before", "rest days"]),
        (ON_TOP, {}, ["on top of another one on the same day", "rest days"]),
        (AGAIN, {}, ["Face pull loads the upper body again", "Monday 2 March", "until Thursday 5 March"]),
        (BESIDE, {}, ["Dip is not in Pull", "I keep it"]),
    ],
)
def test_a_client_is_told_what_and_why(found: Eager, facts: dict[str, object], says: list[str]) -> None:
    said = to_client(found, **facts)
    assert [words for words in says if words not in said] == []
    assert ("counted from it" in said) == bool(facts.get("counted_on"))


def test_who_sees_it_is_said_at_first_only() -> None:
    assert "Mara sees" in to_client(JUMP, is_first=True)
    assert "Mara" not in to_client(JUMP, is_first=False)


def test_what_is_beside_the_sheet_is_said_in_one_line() -> None:
    said = to_client(BESIDE, JUMP, matter("not on the sheet", "Plank"))
    assert "Dip and Plank are not in Pull. I keep them" in said
    assert len(said.splitlines()) == 2


def test_the_coach_reads_one_line_for_each_way_of_doing_more() -> None:
    assert to_coach(BESIDE, AGAIN, EARLY, SETS, JUMP, ON_TOP) == [
        "Since Monday 2 March:",
        "Did more than asked",
        "Noor",
        "    up at once: Row +19%",
        "    more sets: Row 3, not 1",
        "    too soon: Legs by 1 day, Legs on top of another one",
        "    on a rest day: Face pull (upper body)",
        "    beside the sheet: Dip",
    ]


def test_what_came_again_is_said_once_with_its_number() -> None:
    assert to_coach(SETS, SETS, BESIDE)[3:] == [
        "    more sets: Row 3, not 1 (2 times)",
        "    beside the sheet: Dip",
    ]


def test_every_rule_has_its_lead() -> None:
    assert set(LEADS) == {each.rule for each in (JUMP, SETS, EARLY, AGAIN, BESIDE)}


def test_names_are_never_markup() -> None:
    sly = matter("not on the sheet", "<b>x</b> & co", "<i>Pull</i>")
    assert "<b>x</b> & co is not in <i>Pull</i>" in to_client(sly)
    assert to_coach(sly)[3] == "    beside the sheet: <b>x</b> & co"
