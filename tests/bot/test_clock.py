"""The clock: steady between two looks at its source, and told where that was set back."""

from datetime import UTC, datetime, timedelta

import pytest

from bot.clock import SET_BACK_BY, Clock

NOON = datetime(2026, 3, 2, 12, tzinfo=UTC)


class Source:
    """A machine whose clock can be set, beside a counter that cannot."""

    def __init__(self) -> None:
        self.moment, self.counted = NOON, 100.0

    def passes(self, seconds: float) -> None:
        self.moment += timedelta(seconds=seconds)
        self.counted += seconds


@pytest.mark.parametrize(
    ("jump", "is_told"),
    [
        (timedelta(0), False),
        (timedelta(hours=3), False),
        (-SET_BACK_BY, False),
        (-SET_BACK_BY - timedelta(seconds=1), True),
        (-timedelta(days=365), True),
    ],
)
def test_a_jump_shows_only_with_the_next_look_and_is_told_where_it_goes_back(
    jump: timedelta, *, is_told: bool
) -> None:
    source = Source()
    clock = Clock(lambda: source.moment, lambda: source.counted)
    source.passes(10)
    source.moment += jump
    assert clock() == NOON + timedelta(seconds=10)
    assert clock.look() is is_told
    assert clock() == NOON + timedelta(seconds=10) + jump
    source.passes(5)
    assert clock.look() is False
    assert clock() == NOON + timedelta(seconds=15) + jump
