"""Targets: the hand-worked table, and the laws that must hold for any history."""

from datetime import date
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.comparison import extra_kg
from domain.equipment import Equipment, default_equipment, is_loadable, next_below
from domain.exercises import describe
from domain.exposure import Exposure
from domain.programme import Ladder, Prescription, Raise, Range
from domain.progression import MOST_CORRECTION, MOST_OVER, ready_at
from domain.raises import MOST_RAISE
from domain.sets import TrainingSet
from domain.target import NoTarget, Target, next_target
from domain.target_reasons import AddLoad, MoreFirst, MuchTooLight
from domain.units import Unit, convert, to_kg
from domain.verdict import judge
from tests.domain.sheet_cells import equipped, prescribed
from tests.domain.tables import Case, exposures, read_cases, sets

CASES = read_cases("targets.md")


@pytest.mark.parametrize("case", CASES, ids=lambda case: f"{case.place}: {case['situation']}")
def test_target_is_the_one_worked_by_hand(case: Case) -> None:
    exercise = case["exercise"]
    unit: Unit = "lb" if " lb" in case["aim"] else "kg"
    prescription, held, easing = prescribed(case["sheet"], exercise)
    other = case.get("other")
    body_mass, away = case.get("body mass"), case.get("away")
    target = next_target(
        prescription,
        exposures(case.get("done"), exercise, unit),
        unit=unit,
        equipment=equipped(case.get("equipment"), unit),
        exercise=describe(exercise),
        body_mass_kg=Decimal(body_mass) if body_mass else None,
        last_of_other=sets(other)[-1] if other else None,
        held=held,
        easing=easing,
        days_away=int(away.split(maxsplit=1)[0]) if away else 0,
    )
    assert target.reason.rule == case["by"]
    if case["aim"] == "none":
        assert isinstance(target, NoTarget)
        return
    assert isinstance(target, Target)
    assert target.as_set() == sets(case["aim"], exercise, unit)[0]
    assert target.expected == (int(case["expected"]) if case["expected"] else None)


EXERCISES = ("Bench press", "Back squat", "Hammer curl", "Leg press", "Lat pulldown", "Dip", "Pull-up")
GRIDS = (
    default_equipment("kg"),
    equipped("plates 20, 10, 5", "kg"),
    equipped("dumbbells 4 to 30 by 2", "kg"),
    equipped("stack 7 to 98 by 7, extra 2.5", "kg"),
)


Situation = tuple[Prescription, tuple[Exposure, ...], Equipment, Decimal | None]
"""A line of the sheet, what was done, the equipment and the body mass."""


@st.composite
def situations(draw: st.DrawFn, *, most_sets: int = 3) -> Situation:
    exercise = describe(draw(st.sampled_from(EXERCISES)))
    low = draw(st.integers(1, 15))
    prescription = Prescription(
        exercise=exercise.name,
        counted=exercise.counted,
        range=Range(low=low, high=low + draw(st.integers(0, 5))),
        sets=draw(st.integers(1, most_sets)),
        stop_short=draw(st.sampled_from([None, 0, 1, 3])),
        add_load=draw(st.sampled_from([None, Raise(over=low + 5)])),
        ladder=draw(st.sampled_from([None, Ladder(below=1, up_to=8)]))
        if exercise.counted == "added"
        else None,
    )
    equipment = draw(st.sampled_from(GRIDS))
    past = []
    for _ in range(draw(st.integers(0, 4))):
        load = Decimal(draw(st.integers(1, 80))) * Decimal("1.25")
        kind = draw(st.sampled_from(("added", "assist", "body"))) if exercise.counted == "added" else ""
        text = {"added": f"+{load} kg", "assist": f"help {load} kg", "body": "body"}.get(
            kind, f"each {load} kg" if exercise.counted == "each" else f"{load} kg"
        )
        reps = ", ".join(str(draw(st.integers(0, 25))) for _ in range(draw(st.integers(1, most_sets))))
        past += [*exposures(f"{text} x {reps}", exercise.name)]
    return prescription, tuple(past), equipment, draw(st.sampled_from([None, Decimal(80)]))


def aimed(situation: Situation, *, held: bool = False, days_away: int = 0) -> Target | NoTarget:
    prescription, past, equipment, body_mass_kg = situation
    return next_target(
        prescription,
        past,
        unit="kg",
        equipment=equipment,
        exercise=describe(prescription.exercise),
        body_mass_kg=body_mass_kg,
        held=held,
        days_away=days_away,
    )


@given(situations())
def test_there_is_never_a_target_on_a_held_exercise(situation: Situation) -> None:
    assert isinstance(aimed(situation, held=True), NoTarget)


@given(situations())
def test_a_target_can_be_loaded(situation: Situation) -> None:
    """Its load is one that the client's equipment allows, or the one that was done last time."""
    target = aimed(situation)
    if isinstance(target, NoTarget):
        return
    prescription, past, equipment, _ = situation
    done = {(one.load, one.load_kind) for each in past[-1:] for one in each.sets}
    assert (target.load, target.load_kind) in done or is_loadable(
        target.load, "kg", describe(prescription.exercise), equipment, target.load_kind
    )


@given(situations(), st.integers(14, 400))
def test_after_a_break_the_aim_is_no_heavier_and_can_be_loaded(situation: Situation, days_away: int) -> None:
    prescription, past, equipment, _ = situation
    target = aimed(situation, days_away=days_away)
    if isinstance(target, NoTarget) or not past:
        return
    assert target.reason.rule == "eased"
    assert extra_kg(target.as_set()) <= max(map(extra_kg, past[-1].sets)) or not next_below(
        target.load, "kg", describe(prescription.exercise), equipment, target.load_kind
    )
    assert is_loadable(target.load, "kg", describe(prescription.exercise), equipment, target.load_kind)


@given(st.lists(st.tuples(st.integers(0, 40), st.integers(1, 200)), max_size=4), st.booleans(), st.booleans())
def test_a_hold_can_be_loaded_and_is_raised_within_the_cap(
    told: list[tuple[int, int]], adds: bool, relative: bool
) -> None:
    sheet = "hold 30-60 s" + (", over 60 add load" if adds else "")
    prescription, _, _ = prescribed(sheet + (", 10 kg above Goblet squat" if relative else ""), "Wall sit")
    past = tuple(
        each
        for steps, seconds in told
        for each in exposures(f"{'body' if not steps else f'+{steps * 2.5} kg'} for {seconds} s", "Wall sit")
    )
    exercise, equipment = describe("Wall sit"), default_equipment("kg")
    target = next_target(
        prescription,
        past,
        unit="kg",
        equipment=equipment,
        exercise=exercise,
        body_mass_kg=Decimal(80),
        last_of_other=sets("30 kg x 10")[0],
    )
    assert isinstance(target, Target)
    assert target.seconds is not None
    assert is_loadable(target.load, "kg", exercise, equipment, target.load_kind)
    match target.reason:
        case AddLoad(percent=float(percent)) | MuchTooLight(percent=float(percent)):
            assert percent <= 100 * MOST_CORRECTION + 0.05
        case _:
            pass


@given(situations())
def test_a_raise_stays_inside_its_cap(situation: Situation) -> None:
    """10%, or more only once so many reps are done that the range is to be expected; 20% for a correction."""
    target = aimed(situation)
    if isinstance(target, NoTarget):
        return
    prescription = situation[0]
    match target.reason:
        case AddLoad(percent=float(percent)) if percent > 100 * MOST_RAISE + 0.05:
            assert target.expected is None or target.expected >= prescription.range.low
        case MuchTooLight(percent=float(percent)):
            assert 0 < percent <= 100 * MOST_CORRECTION + 0.05
        case _:
            pass


@given(st.integers(1, 200), st.integers(10, 60), st.integers(0, 60), st.booleans())
def test_a_hold_is_never_to_be_shorter_at_the_same_load(
    seconds: int, low: int, wide: int, relative: bool
) -> None:
    """Nor where its load is reckoned from another exercise."""
    sheet = f"hold {low}-{low + wide} s" + (", 10 kg above Goblet squat" if relative else "")
    prescription, _, _ = prescribed(sheet, "Wall sit")
    target = next_target(
        prescription,
        exposures(f"+40 kg for {seconds} s", "Wall sit"),
        unit="kg",
        equipment=default_equipment("kg"),
        exercise=describe("Wall sit"),
        last_of_other=sets("30 kg x 10")[0],
    )
    assert isinstance(target, Target)
    assert target.seconds is not None
    assert target.load != 40 or target.seconds >= seconds


@given(situations(most_sets=1))
def test_fewer_are_never_aimed_for_at_the_same_load(situation: Situation) -> None:
    target = aimed(situation)
    if isinstance(target, NoTarget) or not situation[1]:
        return
    (done,) = situation[1][-1].sets
    same = (target.load, target.load_kind, target.lowering_only)
    if same == (done.load, done.load_kind, done.lowering_only):
        assert target.as_set().amount >= done.amount


@given(situations(most_sets=1))
def test_more_than_last_time_at_the_same_load_would_be_a_beat(situation: Situation) -> None:
    target = aimed(situation)
    if isinstance(target, NoTarget) or target.reason.rule not in (
        "one more",
        "more first",
        "nothing heavier",
    ):
        return
    prescription, past, _, body_mass_kg = situation
    if target.as_set().amount >= MOST_OVER * ready_at(prescription):
        return  # nobody is asked for more without end
    now = Exposure("Push", target.exercise, past[-1].on, (target.as_set(),))
    share = describe(target.exercise).body_share
    assert judge(now, past[-1], body_mass_kg=body_mass_kg, body_share=share).result == "beat"


@given(st.integers(16, 100), st.integers(4, 12))
def test_a_history_told_in_the_other_unit_is_taken_to_a_load_that_exists(quarters: int, reps: int) -> None:
    load = Decimal(quarters) * Decimal("1.25")
    done = TrainingSet("Bench press", round(convert(load, "kg", "lb"), 1), "lb", "total", reps=reps)
    past = exposures("80 kg x 8")
    prescription, _, _ = prescribed("4-12", "Bench press")
    target = next_target(
        prescription,
        (Exposure("Push", "Bench press", past[0].on, (done,)),),
        unit="kg",
        equipment=default_equipment("kg"),
        exercise=describe("Bench press"),
    )
    assert isinstance(target, Target)
    assert is_loadable(target.load, "kg", describe("Bench press"), default_equipment("kg"))


@given(
    st.lists(st.tuples(st.integers(0, 40), st.integers(0, 15)), min_size=1, max_size=4),
    st.integers(3, 12),
    st.integers(0, 4),
)
def test_the_same_history_in_kilograms_and_pounds_gives_a_target_within_a_step(
    told: list[tuple[int, int]], low: int, wide: int
) -> None:
    """Each with the usual plates of its unit. Above 120 kg a raise of 2% is more than one step."""
    loads: list[Decimal] = []
    for unit in ("kg", "lb"):
        past = tuple(
            Exposure("Push", "Bench press", date(2026, 3, 1 + day), (done,))
            for day, (steps, reps) in enumerate(told)
            for done in [
                TrainingSet(
                    "Bench press",
                    convert(20 + steps * Decimal("2.5"), "kg", unit),
                    unit,
                    "total",
                    reps=reps,
                )
            ]
        )
        target = next_target(
            Prescription(exercise="Bench press", counted="total", range=Range(low=low, high=low + wide)),
            past,
            unit=unit,
            equipment=default_equipment(unit),
            exercise=describe("Bench press"),
        )
        assert isinstance(target, Target)
        loads.append(to_kg(target.load, target.unit))
    assert abs(loads[0] - loads[1]) <= Decimal("2.5")


@pytest.mark.parametrize(("body_mass", "percent"), [(None, None), (Decimal(75), 3.4)])
def test_how_great_a_step_is_is_said_only_where_the_body_mass_is_known(
    body_mass: Decimal | None, percent: float | None
) -> None:
    """From 2.5 kg of help to none: the next load is the body alone."""
    prescription, _, _ = prescribed("5-6", "Pull-up")
    target = next_target(
        prescription,
        exposures("help 2.5 kg x 6", "Pull-up"),
        unit="kg",
        equipment=default_equipment("kg"),
        exercise=describe("Pull-up"),
        body_mass_kg=body_mass,
    )
    assert isinstance(target, Target)
    assert (target.load_kind, target.reason) == ("body", AddLoad(6, 6, percent))


@pytest.mark.parametrize(("body_mass", "percent"), [(None, None), (Decimal(75), 15.4)])
def test_nor_how_great_one_is_that_is_too_great(body_mass: Decimal | None, percent: float | None) -> None:
    """From 10 kg of help to none, where the help goes by 10 kg."""
    prescription, _, _ = prescribed("5-6", "Pull-up")
    target = next_target(
        prescription,
        exposures("help 10 kg x 6", "Pull-up"),
        unit="kg",
        equipment=equipped("stack 10 to 100 by 10", "kg"),
        exercise=describe("Pull-up"),
        body_mass_kg=body_mass,
    )
    assert isinstance(target.reason, MoreFirst)
    assert (target.reason.next_kind, target.reason.percent) == ("body", percent)
