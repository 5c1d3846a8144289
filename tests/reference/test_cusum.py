"""The reference detector of the simulation against a published example of the tabular CUSUM."""

import pytest

from tests.bench.detectors import likelihood_ratio, tabular_cusum
from tests.bench.lifters import Truth

# Montgomery & Runger, Applied Statistics and Probability for Engineers, example 16-6: target 99, K 1, H 10.
VALUES = (
    *(102.0, 94.8, 98.3, 98.4, 102.0, 98.5, 99.0, 97.7, 100.0, 98.1),
    *(101.3, 98.7, 101.1, 98.4, 97.0, 96.7, 100.3, 101.4, 97.2, 101.0),
)
UPPER = (2, 0, 0, 0, 2, 0.5, 0, 0, 0, 0, 1.3, 0, 1.1, 0, 0, 0, 0.3, 1.7, 0, 1)
LOWER = (0, 3.2, 2.9, 2.5, 0, 0, 0, 0.3, 0, 0, 0, 0, 0, 0, 1, 2.3, 0, 0, 0.8, 0)


def test_the_tabular_cusum_is_the_published_one() -> None:
    upper, lower = tabular_cusum(VALUES, 99, 1)
    assert upper == pytest.approx(UPPER, abs=1e-9)
    assert lower == pytest.approx(LOWER, abs=1e-9)
    assert max(*upper, *lower) < 10


def test_the_likelihood_ratio_is_the_greatest_over_all_ends_by_hand() -> None:
    """Four exposures of which the last two do not gain; each end written out."""
    truth = Truth(gain=0.02, noise=0.03)
    index = [0.0, 0.02, 0.02, 0.02]
    variance = 0.03**2 + 0.026**2 / 12

    def log_likelihood(shape: list[float]) -> float:
        return (
            -sum((value + 0.013 - rise) ** 2 for value, rise in zip(index, shape, strict=True)) / 2 / variance
        )

    steady = log_likelihood([0.0, 0.02, 0.04, 0.06])
    ended = (
        log_likelihood(shape)
        for shape in ([0.0, 0.0, 0.0, 0.0], [0.0, 0.02, 0.02, 0.02], [0.0, 0.02, 0.04, 0.04])
    )
    assert likelihood_ratio(index, truth, 0.0)[-1] == pytest.approx(max(ended) - steady)
