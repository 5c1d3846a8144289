"""An undo can be taken back: what it took back stands again as it was, until something else has come."""

from decimal import Decimal

import pytest

from domain.journal import Entry
from domain.outcome import Recorded
from tests.domain.client.people import Life, at, kinds

WAYS = """
redo | put it back | no, put it back | No wait, put that back please | oops, undo the undo | bring it back |
restore it | I want it back | no, keep it | I didn't mean to undo that | don't delete it | put the set back |
put the last set back in | no, it was right | cancel that undo | leave it as it was
"""


def stand(life: Life) -> list[tuple[str, Decimal, int | None, int, int]]:
    """Return what stands in the journal, in the order done."""
    return [
        (each.set.exercise, each.set.load, each.set.reps, each.workout, each.message)
        for each in life.state.entries
    ]


@pytest.mark.parametrize("way", [each.strip() for each in WAYS.split("|")])
def test_what_was_taken_back_stands_again(way: str) -> None:
    life = Life()
    life.says("60 x 9", at(2))
    life.says("80 x 7\n14 x 10", at(2))
    before, workouts = stand(life), life.state.workouts
    life.says("undo", at(2))
    assert len(life.state.entries) == 1
    assert kinds(life.says(way, at(2, 18, 1))) == ["put back"]
    assert stand(life) == before
    assert life.state.workouts == workouts


def test_the_button_under_an_undo_puts_it_back_and_can_be_undone_again() -> None:
    life = Life()
    life.says("60 x 9", at(2))
    life.says("undo", at(2))
    assert kinds(life.presses("Put it back", at(2))) == ["put back"]
    assert [each[2] for each in stand(life)] == [9]
    assert kinds(life.says("undo", at(2))) == ["taken back"]
    assert stand(life) == []


def test_a_correction_taken_back_can_be_had_again_and_undone_once_more() -> None:
    life = Life()
    life.says("60 x 9", at(2))
    life.says("make that 10", at(2))
    life.says("undo", at(2))
    assert [each[2] for each in stand(life)] == [9]
    life.says("put it back", at(2))
    assert [each[2] for each in stand(life)] == [10]
    (recorded,) = [each for each in life.outcome.changes if isinstance(each, Recorded)]
    assert recorded.instead_of is not None
    assert isinstance(recorded.entry, Entry)
    life.says("undo", at(2))
    assert [each[2] for each in stand(life)] == [9]


@pytest.mark.parametrize("change", ["move it to Thursday", "away till the 14th", "stop messaging me"])
def test_a_change_of_plans_taken_back_can_be_had_again(change: str) -> None:
    life = Life()
    life.says(change, at(2, 7))
    memory = life.state.memory
    life.says("undo", at(2, 7))
    assert kinds(life.says("no, put it back", at(2, 7))) == ["put back"]
    again = life.state.memory
    assert (again.moved_to, again.paused, again.reminders_off) == (
        memory.moved_to,
        memory.paused,
        memory.reminders_off,
    )
    assert kinds(life.says("undo", at(2, 7, 5))) == ["plans as before"]


def test_a_body_weight_taken_back_can_be_had_again() -> None:
    life = Life()
    life.says("I weigh 71 kg", at(2))
    life.says("undo", at(2))
    assert life.state.client.body_mass is None
    assert kinds(life.says("redo", at(2))) == ["put back"]
    assert life.state.client.body_mass == 71


def test_what_has_been_overtaken_is_not_put_back() -> None:
    life = Life()
    life.says("60 x 9", at(2))
    life.says("undo", at(2))
    life.says("65 x 8", at(2))
    assert kinds(life.says("put it back", at(2))) == ["not put back"]
    assert [each[1] for each in stand(life)] == [65]


@pytest.mark.parametrize("way", ["redo", "put it back", "keep it"])
def test_without_an_undo_nothing_is_put_back(way: str) -> None:
    life = Life()
    life.says("60 x 9", at(2))
    assert "put back" not in kinds(life.says(way, at(2)))
    life.says("undo", at(2))
    assert "put back" not in kinds(life.says(way, at(4)))
