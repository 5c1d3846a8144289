"""The simulation in short: what the engine reaches with seeds that it was not made with."""

from domain.gaining import standings
from tests.bench.detectors import no_new_best
from tests.bench.lifters import EXPOSURES, WITHIN, Truth
from tests.bench.stalls import first_alarm, judged, lifter, row_of

LIFTERS = 24
TRUTH = Truth(0.01, 0.03)


def test_few_false_alarms_where_the_plain_rule_cries_wolf_and_no_sleep() -> None:
    """An exercise alone, gaining 1% with 3% noise; the limits leave room for so few lifters."""
    steady = [lifter(TRUTH, f"short {each}", others=0) for each in range(LIFTERS)]
    turned = [lifter(Truth(0.01, 0.03, ends=12), f"short {each}", others=0) for each in range(LIFTERS)]
    ours = row_of(
        (first_alarm(each.alone(WITHIN + 1)) for each in steady),
        ((first_alarm(each.alone(EXPOSURES)), 12) for each in turned),
    )
    plain = sum(first_alarm(no_new_best(each.index)) <= WITHIN for each in steady) / LIFTERS
    print(f"\nfalse alarms {ours.false_alarms:.0%}, plain rule {plain:.0%}, median delay {ours.median:.1f}")
    assert ours.false_alarms <= 0.25
    assert plain >= 0.6
    assert ours.median <= 10


def test_one_exercise_is_judged_as_the_engine_judges_it_among_all() -> None:
    one = lifter(Truth(0.02, 0.03, ends=9), "judged", others=2)
    for at in range(0, 30, 3):
        series = [one.own[at], *(each[at] for each in one.others)]
        for which, own in enumerate(series):
            others = series[:which] + series[which + 1 :]
            assert (judged(own, others) > 0) == standings(series)[which].stalled
