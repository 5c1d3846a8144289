"""The simulation in short: what the engine reaches with seeds that it was not made with."""

import statistics

import pytest

from domain.comparison import Body
from domain.gaining import standings
from domain.strength_series import series_of
from tests.bench.delays import Alarms, Lifters, threshold_for
from tests.bench.lifters import WITHIN, Truth, growing, lift
from tests.bench.seen import ALONE, KNOWING, NEVER, PLAIN, Gaining, course_of, first_above, others_of, see
from tests.bench.stalls import lifters_of

LIFTERS = 24
TRUTH = Truth(0.01, 0.03)


def test_few_false_alarms_where_the_plain_rule_cries_wolf_and_no_sleep() -> None:
    """An exercise alone, gaining 1% with 3% noise; the limits leave room for so few lifters."""
    lifters = lifters_of([see(TRUTH, (0.0,), f"short {each}", 0) for each in range(LIFTERS)], 0.0)
    ours = lifters.by_name(ALONE).row()
    plain, _ = (lifters.by_name(name).row() for name in PLAIN)
    print(f"\nalarms {ours.false_alarms:.0%}, plain {plain.false_alarms:.0%}, delay {ours.median:.1f}")
    assert ours.false_alarms <= 0.25
    assert plain.false_alarms >= 0.6
    assert ours.median <= 10


def test_one_exercise_is_judged_as_the_engine_judges_it_among_all() -> None:
    truth = Truth(0.02, 0.03)
    one = Gaining(Truth(0.02, 0.03, ends=9), "judged", begun=Gaining(truth, "judged"))
    others = others_of(truth, "judged", 2)
    for at in range(0, 30, 3):
        series = [each.series[at] for each in (one, *others)]
        for which, own in enumerate((one, *others)):
            beside = [each for each in (one, *others) if each is not own]
            assert own.has_stalled(at, beside) == standings(series)[which].stalled


def test_the_series_after_each_exposure_is_the_one_that_the_engine_makes_of_them() -> None:
    past, _ = lift(Truth(0.02, 0.042, bad_days=0.2), "growing")
    assert growing(past) == [series_of(past[: at + 1], Body()) for at in range(len(past))]


@pytest.mark.parametrize("after", [0.0, -0.01])
def test_a_lifter_goes_on_from_what_was_done_as_if_simulated_from_the_first_day(after: float) -> None:
    steady = Gaining(TRUTH, "goes on")
    truth = Truth(0.01, 0.03, ends=12, after=after)
    turned = Gaining(truth, "goes on", begun=steady)
    assert turned.past == lift(truth, "goes on")[0]
    assert turned.past[:13] == steady.past[:13]
    assert turned.past[13:] != steady.past[13:]


def test_a_course_passes_a_threshold_where_the_scores_first_do() -> None:
    scores = [0.0, 2.0, 1.0, 3.0, 2.5, 7.0]
    for threshold in (-1.0, 0.0, 1.5, 2.0, 2.7, 6.9, 7.0):
        first = next((at for at, score in enumerate(scores) if score > threshold), NEVER)
        assert first_above(course_of(scores), threshold) == first


def test_the_knowing_detector_has_as_many_false_alarms_as_it_is_asked_for() -> None:
    lifters = lifters_of([see(TRUTH, (0.0,), f"short {each}", 0) for each in range(LIFTERS)], 0.0)
    for alarms in range(0, LIFTERS, 5):
        for name in KNOWING:
            assert lifters.at_rate(name, alarms / LIFTERS).false == alarms / LIFTERS
    assert threshold_for([3.0, 1.0, 2.0], 1.0) == 1.0


def test_delays_are_of_those_without_an_alarm_before_the_end() -> None:
    alarms = Alarms(steady=[5, WITHIN, WITHIN + 1, NEVER], turned=[9, 10, 14, 15], ends=[10, 10, 12, 12])
    assert alarms.false == 0.5
    assert alarms.delays == [2, 3]
    assert alarms.row().later == 0.5


def test_the_error_is_the_one_that_lifters_drawn_anew_from_all_there_are_have() -> None:
    """Of a mean the standard error is known: the deviation over the root of how many there are."""
    lifters = lifters_of([see(TRUTH, (0.0,), f"short {each}", 0) for each in range(LIFTERS)], 0.0)

    def mean_end(some: Lifters) -> float:
        return statistics.fmean(each.ends for each in some.turned)

    known = statistics.pstdev(each.ends for each in lifters.turned) / LIFTERS**0.5
    assert lifters.error(mean_end, "error") == pytest.approx(known, rel=0.25)
