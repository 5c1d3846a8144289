"""The odds that a stall needs: greater where the readings differ, and with more exercises."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.gain_odds import LEAST, Odds
from domain.needed import LONG, MOST_DIFFERENCE, RISE, THRESHOLD, Seen, Threshold, has_ended, seen_in


def odds(ended: float, never: float = 1.0, overall: float = 0.01, if_never: float = 0.01) -> Odds:
    return Odds([ended * 0.75], [ended * 0.25], never, overall, if_never, 0.03)


@pytest.mark.parametrize(
    ("others", "wanted"),
    [(0, 1 + 2 * 0.5 + 3 * 0.7), (2, 1 + 4 / 2 + 2 * 0.5 + (3 - 1 / 2) * 0.7), (6, 1 + 3 + 1 + 2.25 * 0.7)],
)
def test_what_is_needed_goes_from_that_of_one_alone_towards_that_of_one_among_many(
    others: int, wanted: float
) -> None:
    """By hand; the share told by 2 others is 1/2, by 6 it is 3/4."""
    threshold = Threshold(base=1, base_told=4, difference=2, gain=3, gain_told=-1)
    assert threshold.needed(Seen(0, 0.5, 0.7, 0), others) == pytest.approx(wanted)
    assert threshold.needed(Seen(0, 0.5, 0.7, 4), others) == pytest.approx(wanted + 4 * RISE)


def test_what_is_seen_are_logarithms_and_a_share() -> None:
    seen = seen_in(odds(3, 2, overall=0.015, if_never=0.012))
    assert seen == pytest.approx((math.log(1.5), math.log(1.25), 0.2, 0))
    assert seen_in(odds(1, overall=0.02, if_never=0.0025)).difference == MOST_DIFFERENCE


def test_the_more_exposures_beyond_many_the_more_is_needed() -> None:
    """The last one is no end: nothing comes after it."""

    def seen(exposures: int) -> Seen:
        ends = exposures - 1
        return seen_in(Odds([1.0] * ends, [0.0] * ends, 1.0, 0.01, 0.01, 0.03))

    assert [seen(exposures).long for exposures in (2, LONG, LONG + 1, LONG + 15)] == [0, 0, 1, 15]


@given(st.floats(0, 1e300), st.floats(LEAST, 1e300), st.integers(0, 12))
def test_weights_of_any_size_are_decided_on_and_greater_odds_never_undo_it(
    ended: float, never: float, others: int
) -> None:
    found = has_ended(odds(ended, never), others)
    assert has_ended(odds(ended * 2, never), others) >= found


@given(st.floats(-0.75, 2), st.floats(0, MOST_DIFFERENCE), st.integers(0, 10))
def test_more_exercises_and_a_greater_difference_need_more(
    gain: float, difference: float, others: int
) -> None:
    """For every gain that is considered, 0.25 to 3%: each exercise is one more that can go wrong."""
    now = THRESHOLD.needed(Seen(0, difference, gain, 0), others)
    assert THRESHOLD.needed(Seen(0, difference, gain, 0), others + 1) > now
    assert THRESHOLD.needed(Seen(0, difference + 0.1, gain, 0), others) > now
