"""The review of a programme: has strength risen?"""

from decimal import Decimal

import pytest

from domain.comparison import Body
from domain.exposure import Exposure
from domain.review import Review, review_of
from domain.strength_series import strength_index
from tests.domain.tables import exposures


def review(histories: tuple[tuple[Exposure, ...], ...]) -> Review | None:
    """Look back over exercises that are not on the body."""
    indices = (tuple(strength_index(each, Body()) for each in history) for history in histories)
    return review_of(tuple(tuple(each for each in row if each is not None) for row in indices))


def test_a_review_of_lifts_that_all_rise() -> None:
    """Four rounds: two lifts up in each, exactly; 1 / (24 x 24) by chance, 2.5 kg of 80 kg a round."""
    bench = exposures("80 kg x 8 then 82 kg x 8 then 84.05 kg x 8 then 86.15125 kg x 8")
    rows = exposures("40 kg x 10 then 41 kg x 10 then 42.025 kg x 10 then 43.075625 kg x 10", "Row")
    found = review((bench, rows))
    assert found is not None
    assert found.risen
    assert found.p_value == pytest.approx(1 / 576)
    assert found.gain_per_round == pytest.approx(0.025)
    assert found.rounds == 4


def test_one_lift_over_four_rounds_rises_at_best_by_a_chance_of_one_in_twenty_four() -> None:
    bench = exposures("80 kg x 5 then 80 kg x 6 then 80 kg x 7 then 80 kg x 8")
    found = review((bench,))
    assert found is not None
    assert found.p_value == pytest.approx(1 / 24)


@pytest.mark.parametrize(
    "histories",
    [
        ("80 kg x 8 then 80 kg x 8 then 80 kg x 8 then 80 kg x 8",),
        ("80 kg x 8 then 80 kg x 9", "60 kg x 8 then 60 kg x 7"),
        ("80 kg x 8 then 80 kg x 7 then 80 kg x 6 then 80 kg x 5",),
        ("80 kg x 7 then 80 kg x 8",),
    ],
)
def test_a_review_of_what_has_not_risen_for_sure(histories: tuple[str, ...]) -> None:
    found = review(tuple(exposures(each) for each in histories))
    assert found is not None
    assert not found.risen


def test_no_review_without_two_exposures_of_anything() -> None:
    assert review((exposures("80 kg x 8"), ())) is None
    assert review(()) is None


def test_body_weight_rises_with_its_share_of_the_body() -> None:
    """Ten kilograms more on 80 are an eighth more strength; on half of them a quarter."""
    (plain,), (loaded,) = exposures("body x 8"), exposures("+10 kg x 8")
    for share, ratio in ((Decimal(1), 90 / 80), (Decimal("0.5"), 50 / 40)):
        body = Body(Decimal(80), share)
        one, other = strength_index(plain, body), strength_index(loaded, body)
        assert one is not None
        assert other is not None
        assert 2.718281828459045 ** (other - one) == pytest.approx(ratio)


def test_nothing_done_has_no_strength() -> None:
    assert strength_index(exposures("90 kg x 0")[0], Body()) is None
