"""Stalls told from bad days: what the engine says of series whose truth is known."""

from datetime import date, timedelta
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.comparison import Body
from domain.gaining import Standing, look, standings
from domain.strength_series import Point, Series, begun_anew, series_of
from tests.domain.tables import exposures

FIRST = date(2026, 1, 5)


def series(
    exposures: int, gain: float, ends: int = 999, after: float = 0.0, noise: float = 0.02, seed: str = "a"
) -> Series:
    luck = Random(f"{seed} {gain} {ends}")
    return Series(
        (
            tuple(
                Point(
                    FIRST + timedelta(4 * at),
                    4 + gain * min(at, ends) + after * max(0, at - ends) + luck.gauss(0, noise),
                )
                for at in range(exposures)
            ),
        )
    )


def alone(one: Series) -> Standing:
    return standings([one])[0]


def test_a_steady_gain_is_no_stall_and_lies_in_its_interval() -> None:
    found = alone(series(30, 0.01))
    assert (found.exposures, found.stalled, found.declining, found.since) == (30, False, False, None)
    assert found.gain is not None
    assert found.gain.low < 0.01 < found.gain.high
    assert found.ended is not None
    assert found.ended < 0.5


@pytest.mark.parametrize("gain", [0.0085, 0.0125, 0.0175, 0.025])
def test_a_steady_gain_of_any_size_is_no_stall_on_days_that_vary_little(gain: float) -> None:
    """Also one that lies between the gains that are considered, over many exposures."""
    alarms = 0
    for lifter in range(15):
        (points,) = series(40, gain, noise=0.01, seed=f"steady {lifter}").parts
        alarms += any(alone(Series((points[:size],))).stalled for size in range(8, 41, 4))
    print(f"\n{alarms} of 15")
    assert alarms <= 2


def test_a_gain_that_ended_is_a_stall_since_about_then() -> None:
    found = alone(series(32, 0.01, ends=18))
    assert found.stalled
    assert not found.declining
    assert found.since is not None
    assert abs((found.since - FIRST).days // 4 - 18) <= 3
    assert found.before is not None
    assert found.before.low < 0.01 < found.before.high
    assert found.gain is not None
    assert found.gain.low < 0 < found.gain.high


def test_a_decline_is_called_one() -> None:
    found = alone(series(28, 0.01, ends=16, after=-0.01))
    assert found.stalled
    assert found.declining
    assert found.gain is not None
    assert found.gain.high < 0


def test_what_never_gained_has_stalled_from_the_first() -> None:
    found = alone(series(25, 0.0))
    assert found.stalled
    assert found.since is not None
    assert found.since <= FIRST + timedelta(20)


def test_the_same_numbers_again_and_again_are_a_stall_and_no_error() -> None:
    found = alone(Series((tuple(Point(FIRST + timedelta(4 * at), 4.0) for at in range(20)),)))
    assert found.stalled
    assert found.gain is not None
    assert found.gain.estimate == pytest.approx(0, abs=1e-12)


@pytest.mark.parametrize("exposures", [0, 1])
def test_from_one_exposure_nothing_is_said(exposures: int) -> None:
    assert alone(series(exposures, 0.01) if exposures else Series()) == Standing(exposures)


@pytest.mark.parametrize("exposures", [2, 3, 4])
def test_a_few_exposures_are_no_stall_and_the_interval_is_wide(exposures: int) -> None:
    found = alone(series(exposures, 0.0))
    assert not found.stalled
    assert found.gain is not None
    assert found.gain.high - found.gain.low > 0.02


@pytest.mark.parametrize("exposures", [10, 20])
def test_one_bad_day_is_seldom_taken_for_a_stall(exposures: int) -> None:
    """Ten percent below what it would have been, as the last: of fifty lifters who gain, at most three."""
    alarms = 0
    for lifter in range(50):
        (points,) = series(exposures, 0.01, seed=f"bad day {lifter}").parts
        spoilt = (*points[:-1], Point(points[-1].on, points[-1].shown - 0.105))
        alarms += alone(Series((spoilt,))).stalled
    print(f"\n{alarms} of 50")
    assert alarms <= 3


@pytest.mark.parametrize("falling", [1, 16])
def test_one_falls_beyond_doubt_beside_many_that_gain_as_if_by_a_ruler(falling: int) -> None:
    """So that it gains on is less likely than any number that can be told from 0."""
    falls = series(40, 0.03, ends=20, after=-0.025, noise=0)
    gains = series(40, 0.01, noise=0)
    found = look([falls] * falling + [gains] * (16 - falling))
    assert [each.declining for each in found.standings] == [True] * falling + [False] * (16 - falling)
    assert (found.together is not None) == (falling > 1)
    if found.together is not None:
        assert found.together.ended == pytest.approx(1)


def test_other_exercises_that_gain_little_make_a_small_gain_usual() -> None:
    """Their noise and gain are known beforehand: it is seen sooner, or as surely, that a gain has ended."""
    ended = series(24, 0.01, ends=14, noise=0.015)
    others = [series(24, 0.01, noise=0.015, seed=f"other {each}") for each in range(5)]
    first_alone = first_with = None
    for size in range(5, 25):
        cut = [Series((each.parts[0][:size],)) for each in (ended, *others)]
        if first_alone is None and standings(cut[:1])[0].stalled:
            first_alone = size
        if first_with is None and standings(cut)[0].stalled:
            first_with = size
    assert first_alone is not None
    assert first_with is not None
    assert 15 <= first_with <= first_alone + 1


def test_a_layoff_is_no_stall() -> None:
    """Three weeks away, 8% lost and won back in four exposures, then gaining on."""
    text = [f"{80 * 1.01**at:.2f} kg x 8" for at in range(12)]
    text += [f"{80 * 1.01**11 * share:.2f} kg x 8" for share in (0.92, 0.94, 0.96, 0.98)]
    text += [f"{80 * 1.01**at:.2f} kg x 8" for at in range(12, 22)]
    history = [
        type(each)(each.workout, each.exercise, each.on + timedelta(0 if at < 12 else 21), each.sets)
        for at, each in enumerate(exposures(" then ".join(text)))
    ]
    found = series_of(history, Body())
    assert [len(part) for part in found.parts] == [12, 11]
    assert not any(standings([series_of(history[: at + 1], Body())])[0].stalled for at in range(26))


@pytest.mark.parametrize(
    ("gaps", "wanted"),
    [
        ([28], [False, True]),
        ([4, 28], [False, False, True]),
        ([28, 4], [False, True, False]),
        ([28, 4, 28], [False, True, False, True]),
        ([15, 15], [False, False, False]),
        ([15, 15, 35], [False, False, False, True]),
        ([4, 13], [False, False, False]),
        ([], [False]),
    ],
)
def test_a_layoff_is_told_from_what_lies_between_two_exposures_anyway(
    gaps: list[int], wanted: list[bool]
) -> None:
    """Few exposures too: a gap is held against the others, and never against itself."""
    days = [FIRST + timedelta(sum(gaps[:at])) for at in range(len(gaps) + 1)]
    assert begun_anew(days) == wanted


def test_what_was_begun_lighter_on_purpose_is_begun_anew() -> None:
    days = [FIRST + timedelta(4 * at) for at in range(4)]
    assert begun_anew(days, [days[1], days[3]]) == [False, False, True, False]
    assert begun_anew([]) == []


def test_a_slip_of_the_finger_and_a_kind_of_its_own_are_left_out() -> None:
    history = exposures(
        "body x 8 then 80 kg x 8 then 80 kg x 9 then 800 kg x 9 then 82.5 kg x 8 then 40 kg lowering x 8"
        " then 82.5 kg x 9"
    )
    found = series_of(history, Body())
    assert [point.on for point in found.points] == [history[at].on for at in (1, 2, 4, 6)]


def test_no_rep_is_no_point() -> None:
    assert series_of(exposures("80 kg x 0"), Body()) == Series()
    assert series_of((), Body()) == Series()


@given(
    st.lists(st.tuples(st.floats(-60, 60), st.integers(1, 90)), max_size=45),
    st.lists(st.floats(3, 5), max_size=12),
)
def test_anything_at_all_has_a_standing_in_bounds(wild: list[tuple[float, int]], other: list[float]) -> None:
    on, points = FIRST, []
    for index, days in wild:
        on += timedelta(days)
        points.append(Point(on, index))
    cut = len(points) // 3
    parts = tuple(part for part in (tuple(points[:cut]), tuple(points[cut:])) if part)
    beside = Series((tuple(Point(FIRST, each) for each in other),) if other else ())
    for found in standings([Series(parts), beside]):
        assert found.ended is None or 0 <= found.ended <= 1
        assert found.stalled or not found.declining
        assert (found.since is not None) == found.stalled
        if found.gain is not None:
            assert found.gain.low <= found.gain.estimate <= found.gain.high
