"""The first load after time away against what is published of the strength that is lost in that time.

No source gives a percentage of load to take off, so the shares are the project's own rule; published is only
that they must lie no higher than what is left of the strength.
"""

from decimal import Decimal

import pytest

from domain.layoff import FIRST_LOAD, share_after


@pytest.mark.parametrize(
    ("weeks", "lost"),
    [
        # Published: two weeks keep the gains (Hwang 2017, J Strength Cond Res 31:869-881).
        (2, "0"),
        # Published: three weeks off change the bench press 1RM of untrained men by -2 to +1%.
        (3, "0.02"),
        # Quoted: elite weightlifters lost about 10% in the squat in four weeks (Häkkinen & Komi 1985).
        (4, "0.10"),
        # From memory: 7 to 12% in 8 to 12 weeks (Mujika & Padilla 2000).
        (8, "0.12"),
        (12, "0.12"),
    ],
)
def test_the_first_load_is_no_more_than_what_is_left_of_the_strength(weeks: int, lost: str) -> None:
    share = share_after(7 * weeks)
    assert share is not None
    assert share <= 1 - Decimal(lost)


def test_a_break_begins_at_two_weeks() -> None:
    """Quoted: guidelines of CSCCa and NSCA 2019, Strength Cond J 41(3):1-23, count from two weeks."""
    assert share_after(13) is None
    assert share_after(14) is not None


def test_a_longer_break_never_allows_more() -> None:
    """Published: losses grow with its length (Bosquet 2013, Scand J Med Sci Sports 23:e140-9)."""
    shares = [share for _, share in sorted(FIRST_LOAD)]
    assert shares == sorted(shares, reverse=True)
