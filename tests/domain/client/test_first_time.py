"""The first time: a load is looked for with care, and put right in the next set where it has proved wrong."""

import pytest

from bot.markup import plain
from bot.wording.message import message_words
from bot.wording.reader import Reader
from domain.parts import Part, Plan, TargetPart
from tests.domain.client.people import Life, at, noor

FIRST = """\
Harbour First
Train every 3 days in turn: All

All
1. Bench press, 3 sets of 6-8 reps
2. Pull-up, 5-8 reps
"""


def next_set(parts: tuple[Part, ...]) -> str | None:
    """Return what an answer says to aim for in the next set, and by which rule."""
    for part in parts:
        if isinstance(part, TargetPart) and part.when == "next set":
            return f"{part.load.normalize():f} x {part.reps}, {part.reason.rule if part.reason else ''}"
    return None


@pytest.mark.parametrize(
    ("said", "aim"),
    [
        ("bench 30 x 14", "35 x 7, much too light"),
        ("bench 50 x 4", "45 x 7, lower the load"),
        ("bench 40 x 7", None),
        ("bench 40 x 9", None),
        ("yesterday: bench 30 x 14", None),
    ],
)
def test_the_first_load_is_put_right_in_the_next_set_where_it_has_proved_wrong(
    said: str, aim: str | None
) -> None:
    assert (
        next_set(Life(noor(FIRST)).says(f"bench {said}" if said[0] != "y" else said + " bench", at(2))) == aim
    )


def test_only_the_very_first_time_is_put_right_at_once() -> None:
    life = Life(noor(FIRST))
    life.says("bench 40x7, 40x7, 40x7\npull-ups 6", at(2))
    life.passes_to(at(5, 9))
    assert next_set(life.says("bench 30x14", at(5))) is None


def test_on_hold_nothing_is_put_right() -> None:
    assert next_set(Life(noor(FIRST)).says("bench 30x14 but my left shoulder hurts", at(2))) is None


def test_the_plan_says_how_to_find_a_first_load_safely() -> None:
    (plan,) = (part for part in Life(noor(FIRST)).passes_to(at(2, 9)) if isinstance(part, Plan))
    said = " ".join(plain(message_words((plan,), Reader("Noor", "Europe/Amsterdam", "kg"))).split())
    assert "begin far too light rather than too heavy, form first" in said
    assert "in doubt, well short of it" in said
    assert "first time: aim for 5 reps; form first, less is fine" in said
