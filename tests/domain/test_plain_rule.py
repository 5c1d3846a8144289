"""Stalls by the plain rule, as worked by hand."""

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.plain_rule import find_unbeaten
from tests.domain.tables import Case, exposures, read_cases

CASES = read_cases("stalls.md")


@pytest.mark.parametrize("case", CASES, ids=lambda case: f"{case.place}: {case['situation']}")
def test_stall_is_the_one_worked_by_hand(case: Case) -> None:
    history = exposures(case.get("history"))
    stall = find_unbeaten(history, int(case["tell after"]))
    if not case["since"]:
        assert stall is None
        return
    assert stall is not None
    place = int(case["since"]) - 1
    assert (stall.since, stall.without_beat) == (history[place].on, int(case["without"]))
    assert stall.exposures == history[place:]


@given(st.lists(st.integers(1, 20), min_size=1, max_size=12), st.integers(2, 6))
def test_a_stall_has_as_many_exposures_without_a_beat_as_it_says(reps: list[int], tell_after: int) -> None:
    """At one load a beat is a rep more than last time, so the rule can be counted by hand."""
    history = exposures(" then ".join(f"80 kg x {each}" for each in reps))
    without = 0
    for before, now in pairwise(reps):
        without = 0 if now > before else without + 1
    stall = find_unbeaten(history, tell_after)
    assert (stall.without_beat if stall else None) == (without if without >= tell_after else None)
