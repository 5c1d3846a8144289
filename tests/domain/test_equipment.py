"""Loads that exist, against brute force: every combination of plates, every dumbbell of a rack."""

from decimal import Decimal
from itertools import combinations_with_replacement, pairwise, product

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import ValidationError

from domain.equipment import (
    Equipment,
    Listed,
    Plate,
    Steps,
    default_equipment,
    is_loadable,
    loadable,
    nearest_loadable,
    next_below,
    next_load_above,
    plates_per_side,
)
from domain.exercises import describe
from domain.units import Unit, convert

BAR = describe("Bench press")
DUMBBELLS = describe("Hammer curl")
STACK = describe("Lat pulldown")
BELT = describe("Dip")
BANDS = describe("Band pull-apart")

SIZES = tuple(Decimal(size) for size in ("0.5", "1.25", "2", "2.5", "5", "10", "20", "25"))


@st.composite
def few_plates(draw: st.DrawFn) -> Equipment:
    """Return a home gym: up to four sizes of plate, one to three pairs of each."""
    sizes = draw(st.lists(st.sampled_from(SIZES), min_size=1, max_size=4, unique=True))
    plates = tuple(Plate(mass=size, pairs=draw(st.integers(1, 3))) for size in sizes)
    return default_equipment("kg").model_copy(
        update={"plates": plates, "bar": draw(st.sampled_from(SIZES[5:7]))}
    )


def every_side(equipment: Equipment) -> list[tuple[Decimal, ...]]:
    """Return every way to fill one side, heaviest plate first."""
    plates = sorted(equipment.plates, key=lambda plate: plate.mass, reverse=True)
    counts = product(*(range((plate.pairs or 0) + 1) for plate in plates))
    return [
        tuple(plate.mass for plate, count in zip(plates, each, strict=True) for _ in range(count))
        for each in counts
    ]


@given(few_plates())
def test_a_bar_takes_every_total_that_some_combination_of_pairs_gives(equipment: Equipment) -> None:
    totals = {equipment.bar + 2 * sum(side) for side in every_side(equipment)}
    assert loadable(BAR, equipment) == tuple(sorted(totals))


@given(few_plates())
def test_the_plates_of_a_side_are_the_fewest_that_make_the_total(equipment: Equipment) -> None:
    for total in loadable(BAR, equipment):
        side = plates_per_side(total, "kg", equipment)
        ways = [each for each in every_side(equipment) if equipment.bar + 2 * sum(each) == total]
        assert side in ways
        assert side is not None
        fewest = min(map(len, ways))
        assert side == max(each for each in ways if len(each) == fewest)


@given(few_plates(), st.decimals(min_value=0, max_value=260, places=2))
def test_next_above_below_and_nearest(equipment: Equipment, load: Decimal) -> None:
    totals = [equipment.bar + 2 * sum(side) for side in every_side(equipment)]
    above, below = [each for each in totals if each > load], [each for each in totals if each < load]
    assert next_load_above(load, "kg", BAR, equipment) == min(above, default=None)
    assert next_below(load, "kg", BAR, equipment) == max(below, default=None)
    nearest = nearest_loadable(load, "kg", BAR, equipment)
    assert abs(nearest - load) == min(abs(each - load) for each in totals)
    assert is_loadable(load, "kg", BAR, equipment) == (load in totals)


@given(few_plates())
def test_a_belt_takes_plates_one_by_one(equipment: Equipment) -> None:
    """Every load hung on is a sum of single plates; the heaviest one left out is less than a step away."""
    masses = [plate.mass for plate in equipment.plates for _ in range(2 * (plate.pairs or 0))]
    sums = {Decimal(0)}
    for mass in masses:
        sums |= {each + mass for each in sums}
    hung = loadable(BELT, equipment)
    assert set(hung) <= sums
    assert hung[0] == 0
    assert max(sums) - hung[-1] < BELT.step_kg


@pytest.mark.parametrize("unit", ["kg", "lb"])
def test_with_the_usual_plates_every_step_of_the_smallest_pair_can_be_loaded(unit: Unit) -> None:
    equipment = default_equipment(unit)
    step = 2 * min(plate.mass for plate in equipment.plates)
    totals = loadable(BAR, equipment)
    assert all(after - before == step for before, after in pairwise(totals))


@given(
    st.integers(1, 10),
    st.integers(1, 8),
    st.integers(0, 20),
    st.decimals(min_value=0, max_value=200, places=1),
)
def test_a_rack_told_by_its_steps(first: int, step: int, count: int, load: Decimal) -> None:
    told = Steps(first=Decimal(first), step=Decimal(step), last=Decimal(first + step * count))
    equipment = default_equipment("kg").model_copy(update={"dumbbells": told})
    rack = [first + step * each for each in range(count + 1)]
    assert next_load_above(load, "kg", DUMBBELLS, equipment) == min(
        (w for w in rack if w > load), default=None
    )
    assert next_below(load, "kg", DUMBBELLS, equipment) == max((w for w in rack if w < load), default=None)


def test_a_stack_with_a_small_weight_to_add_once() -> None:
    told = Steps(first=Decimal(7), step=Decimal(7), last=Decimal(21), extra=Decimal("2.5"))
    equipment = default_equipment("kg").model_copy(update={"stack": told})
    expected = ("7", "9.5", "14", "16.5", "21", "23.5")
    assert tuple(map(str, loadable(STACK, equipment))) == expected


def test_just_the_dumbbells_that_were_named() -> None:
    told = Listed(masses=(Decimal(16), Decimal(5), Decimal(8)))
    equipment = default_equipment("kg").model_copy(update={"dumbbells": told})
    assert loadable(DUMBBELLS, equipment) == (Decimal(5), Decimal(8), Decimal(16))
    assert Equipment.model_validate_json(equipment.model_dump_json()) == equipment


def test_help_from_a_machine_may_be_none() -> None:
    loads = loadable(describe("Pull-up"), default_equipment("kg"), "assist")
    assert loads[:2] == (Decimal(0), describe("Pull-up").step_kg)


def test_bands_of_known_weight() -> None:
    equipment = default_equipment("kg").model_copy(update={"bands": (Decimal(12), Decimal(5))})
    assert loadable(BANDS, equipment) == (Decimal(5), Decimal(12))


@pytest.mark.parametrize(
    ("load", "unit", "above"),
    [
        ("80", "kg", "82.5"),
        ("82.4", "kg", "82.5"),
        ("175", "lb", "180"),
        ("24", "kg", "25"),
        ("0", "kg", "20"),
    ],
)
def test_next_load_on_the_usual_bar(load: str, unit: Unit, above: str) -> None:
    assert str(next_load_above(Decimal(load), unit, BAR, default_equipment(unit))) == above


def test_nothing_below_the_bar_alone() -> None:
    assert next_below(Decimal(20), "kg", BAR, default_equipment("kg")) is None


@given(st.integers(16, 200))
def test_pounds_on_plates_in_kilograms_are_rounded_to_hundredths_and_still_loadable(quarters: int) -> None:
    total = 20 + 2 * (Decimal(quarters - 16) * Decimal("1.25"))
    equipment = default_equipment("kg")
    said = round(convert(total, "kg", "lb"), 2)
    assert is_loadable(said, "lb", BAR, equipment)
    assert plates_per_side(said, "lb", equipment) == plates_per_side(total, "kg", equipment)


@pytest.mark.parametrize("unit", ["kg", "lb"])
def test_equipment_survives_json(unit: Unit) -> None:
    equipment = default_equipment(unit).model_copy(
        update={"lacking": ("barbell",), "stack": Steps(first=Decimal(5), step=Decimal(5))}
    )
    assert Equipment.model_validate_json(equipment.model_dump_json()) == equipment


def test_what_is_not_given_is_the_usual() -> None:
    """So that a roster need only tell what is out of the ordinary."""
    told = Equipment.model_validate({"unit": "lb", "lacking": ["barbell"]})
    assert told == default_equipment("lb").model_copy(update={"lacking": ("barbell",)})


@pytest.mark.parametrize(
    "wrong", [{}, {"unit": "st"}, {"unit": "kg", "bar": -1}, {"unit": "kg", "stack": {"first": 5, "step": 0}}]
)
def test_equipment_out_of_reason_is_refused(wrong: dict[str, object]) -> None:
    with pytest.raises(ValidationError):
        Equipment.model_validate(wrong)


def test_combinations_are_counted_right() -> None:
    """The brute force itself, against the library's own combinations."""
    plates = (Plate(mass=Decimal(5), pairs=2), Plate(mass=Decimal(10), pairs=2))
    equipment = default_equipment("kg").model_copy(update={"plates": plates})
    pool = (Decimal(10), Decimal(5))
    expected = {
        combination
        for size in range(5)
        for combination in combinations_with_replacement(pool, size)
        if combination.count(pool[0]) <= 2 and combination.count(pool[1]) <= 2
    }
    assert set(every_side(equipment)) == expected
