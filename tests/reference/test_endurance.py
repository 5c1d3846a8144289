"""Endurance times of static holds against Frey Law & Avin 2010, Ergonomics 53:109-129, table 2 and abstract.

The coefficients were read in a secondary text that quotes the table in full; the order of the joints is the
abstract's.
"""

import pytest

from domain.endurance import (
    BY_JOINT,
    GENERAL,
    PowerModel,
    endurance_seconds,
    models_for,
    strength_ratios,
    supported_seconds,
)


def test_coefficients_of_the_power_models() -> None:
    assert tuple(GENERAL) == (21.92, -1.98)
    assert {joint: tuple(model) for joint, model in BY_JOINT.items()} == {
        "ankle": (34.71, -2.06),
        "trunk": (22.69, -2.27),
        "elbow": (17.98, -2.21),
        "grip": (33.55, -1.61),
        "knee": (19.38, -1.88),
        "shoulder": (14.86, -1.83),
    }


@pytest.mark.parametrize("share", [0.4, 0.45, 0.5])
def test_the_joints_tire_in_the_published_order(share: float) -> None:
    """The abstract: the ankle tires last, then trunk, hand/grip, elbow, knee, and the shoulder first.

    That is overall; well below and above these shares the curve of the grip crosses its neighbours.
    """
    order = sorted(BY_JOINT, key=lambda joint: endurance_seconds(share, BY_JOINT[joint]), reverse=True)
    assert order == ["ankle", "trunk", "grip", "elbow", "knee", "shoulder"]


def test_grip_at_thirty_percent() -> None:
    """A worked value in print elsewhere: about 230 s at 30% and 450 s at 20% of maximal grip."""
    assert endurance_seconds(0.3, BY_JOINT["grip"]) == pytest.approx(230, abs=5)
    assert endurance_seconds(0.2, BY_JOINT["grip"]) == pytest.approx(450, abs=5)


@pytest.mark.parametrize("model", [GENERAL, *BY_JOINT.values()])
def test_the_ratio_of_strengths_undoes_the_model(model: PowerModel) -> None:
    """Someone holds half of the maximum, then six tenths of the same maximum: as strong as before."""
    seconds = endurance_seconds(0.6, model) / endurance_seconds(0.5, model)
    assert strength_ratios(0.6 / 0.5, seconds, (model,)) == pytest.approx((1, 1))
    assert strength_ratios(1.2, 1.0, (model,)) == pytest.approx((1.2, 1.2))


@pytest.mark.parametrize(("share", "other"), [(0.5, 0.7), (0.4, 0.6), (0.5, 0.6)])
def test_an_older_curve_puts_two_holds_about_as_far_apart(share: float, other: float) -> None:
    """From memory: Rohmert 1960, minutes = -1.5 + 2.1 / f - 0.6 / f^2 + 0.1 / f^3 at a share f of maximum.

    His times are a quarter to a third shorter, but only their ratio counts between two holds: it differs by
    less than 15%, which is less than 8% of strength.
    """

    def rohmert(f: float) -> float:
        return 60 * (-1.5 + 2.1 / f - 0.6 / f**2 + 0.1 / f**3)

    assert rohmert(0.5) == pytest.approx(66)
    ours = endurance_seconds(share) / endurance_seconds(other)
    assert ours == pytest.approx(rohmert(share) / rohmert(other), rel=0.15)


def test_the_models_of_an_exercise_are_those_of_its_joints() -> None:
    assert models_for(("knee",)) == (BY_JOINT["knee"],)
    assert models_for(("hip", "lower back", "knee")) == (BY_JOINT["trunk"], BY_JOINT["knee"])
    assert set(models_for(())) == set(models_for(("neck",))) == set(BY_JOINT.values())


def test_models_are_used_from_a_quarter_of_the_strength_up() -> None:
    """The paper has most of its data above 25% of maximal force; at 100% lies the shortest hold."""
    assert supported_seconds((BY_JOINT["knee"],)) == (20, 262)
    assert supported_seconds(models_for(())) == (22, 341)


@pytest.mark.parametrize("share", [0.05, 1.01])
def test_nothing_is_said_outside_the_fitted_shares(share: float) -> None:
    with pytest.raises(ValueError, match="for shares of"):
        endurance_seconds(share)
