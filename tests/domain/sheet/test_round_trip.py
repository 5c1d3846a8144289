"""The law of the sheet: a programme written out and read again is the same programme."""

from decimal import Decimal

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from domain.exercises import catalogue, describe, lookup
from domain.names import name_key
from domain.programme import (
    JOINTS,
    Alternative,
    FixedDays,
    Ladder,
    Mass,
    Prescription,
    Programme,
    Raise,
    Range,
    RelativeLoad,
    Review,
    Rotation,
    Weekday,
    Workout,
)
from domain.sheet import read_sheet, write_sheet

WEEK: tuple[Weekday, ...] = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
OWN_EXERCISES = (
    "Zigzag crawl",
    "Hill sprint 400",
    "Tempo squat",
    "21s curl",
    "Towel hold",
    "Barbell complex",
    "Rest-pause shrug",
    "Sandbag load",
    "Bell's press",
)
"""Names that hold a number, an implement, or a word that also belongs to a rule."""
WORKOUT_NAMES = (
    "Pull",
    "Push",
    "Legs",
    "A",
    "B",
    "Day 1",
    "Day 2",
    "Workout A",
    "Push and pull",
    "2",
    "Bench press",
    "Squat day",
)
TITLES = (
    "Harbour Base",
    "5x5 for beginners",
    "Every day stronger 2",
    "Squat",
    "Winter block (8 weeks)",
    "Pull",
)
EQUIPMENT = ("dumbbells", "barbell", "cable machine", "adjustable bench", "30 kg kettlebell", "rack", "band")

syllables = st.lists(
    st.sampled_from(["zan", "kri", "bul", "mof", "tek", "dar", "vix", "gom"]), min_size=2, max_size=4
)
made_up = st.lists(syllables.map("".join), min_size=1, max_size=3).map(
    lambda words: " ".join(words).capitalize()
)
exercise_names = st.one_of(
    st.sampled_from([exercise.name for exercise in catalogue()]),
    st.sampled_from(OWN_EXERCISES),
    made_up.filter(lambda name: lookup(name) is None),
)
masses = st.builds(
    Mass,
    amount=st.decimals(min_value=0, max_value=999, places=2).map(Decimal.normalize),
    unit=st.sampled_from(["kg", "lb"]),
)
cues = (
    st.text("abcdefghij KLMNO 0123456789 .,;:()'!?-/&+ é", min_size=1, max_size=60)
    .map(lambda text: " ".join(text.split()).strip("-"))
    .filter(lambda text: any(letter.isalnum() for letter in text) and text == text.strip())
)


@st.composite
def ranges(draw: st.DrawFn) -> Range:
    of = draw(st.sampled_from(["reps", "seconds"]))
    most = 100 if of == "reps" else 3600
    low, high = sorted((draw(st.integers(1, most)), draw(st.integers(1, most))))
    return Range(low=low, high=high, of="reps" if of == "reps" else "seconds")


alternatives = st.one_of(
    st.builds(
        Alternative,
        why=st.just("joint"),
        without=st.sampled_from(JOINTS),
        exercise=exercise_names,
        range=ranges(),
    ),
    st.builds(
        Alternative,
        why=st.just("equipment"),
        without=st.sampled_from(EQUIPMENT),
        exercise=exercise_names,
        range=ranges(),
    ),
)


@st.composite
def prescriptions(draw: st.DrawFn, names: list[str], *, may_go_on: bool) -> Prescription:
    exercise = draw(st.sampled_from(names))
    others = [name for name in names if name != exercise]
    range_ = draw(ranges())
    instead: list[Alternative] = draw(st.lists(alternatives, max_size=2))
    same_range: bool = draw(st.booleans())
    if instead and same_range:
        instead = [instead[0].model_copy(update={"range": range_}), *instead[1:]]
    return Prescription(
        exercise=exercise,
        counted=draw(
            st.sampled_from(["total", "each", "added", "assist", "body", describe(exercise).counted])
        ),
        range=range_,
        sets=draw(st.sampled_from([1, 1, 2, 3, 20])),
        lowering_only=draw(st.booleans()),
        stop_short=draw(st.none() | st.integers(0, 10)),
        straight_into_next=may_go_on and draw(st.booleans()),
        add_load=draw(st.none() | st.builds(Raise, over=st.integers(1, 3600), by=st.none() | masses)),
        load_from=draw(
            st.none()
            | st.builds(
                RelativeLoad,
                exercise=st.sampled_from(others),
                difference=masses,
                side=st.sampled_from(["above", "below"]),
            )
        )
        if others
        else None,
        ladder=draw(st.none() | st.builds(Ladder, below=st.integers(1, 100), up_to=st.integers(1, 100))),
        alternatives=tuple(instead),
        cues=tuple(draw(st.lists(cues, max_size=2))),
    )


@st.composite
def programmes(draw: st.DrawFn) -> Programme:
    """Programmes of a few workouts, every exercise of which is done somewhere."""
    exercises = draw(st.lists(exercise_names, min_size=1, max_size=6, unique_by=name_key))
    names = draw(
        st.lists(st.sampled_from(WORKOUT_NAMES) | made_up, min_size=1, max_size=4, unique_by=name_key)
    )
    workouts: list[Workout] = []
    for place, name in enumerate(names):
        dealt = (
            exercises if place == 0 else draw(st.lists(st.sampled_from(exercises), min_size=1, max_size=3))
        )
        lines = [
            draw(prescriptions(exercises, may_go_on=line < len(dealt) - 1)).model_copy(
                update={"exercise": exercise}
            )
            for line, exercise in enumerate(dealt)
        ]
        lines = [
            line.model_copy(update={"load_from": None})
            if line.load_from and line.load_from.exercise == line.exercise
            else line
            for line in lines
        ]
        workouts.append(Workout(name=name, prescriptions=tuple(lines)))
    order = (*draw(st.permutations(names)), *draw(st.lists(st.sampled_from(names), max_size=2)))
    some_days = draw(st.sets(st.sampled_from(WEEK), min_size=1))
    days = tuple(day for day in WEEK if day in some_days)
    by_day = tuple(draw(st.lists(st.sampled_from(names), min_size=len(days), max_size=len(days))))
    schedules: list[Rotation | FixedDays] = [
        Rotation(every_days=draw(st.integers(1, 30)), order=order),
        FixedDays(days=days, order=order),
    ]
    if set(by_day) == set(names):
        schedules.append(FixedDays(days=days, order=by_day, by_day=True))
    return Programme(
        name=draw(st.sampled_from(TITLES) | made_up),
        schedule=draw(st.sampled_from(schedules)),
        workouts=tuple(workouts),
        review=draw(
            st.none()
            | st.builds(
                Review,
                after_rounds=st.integers(1, 99),
                switch_to=st.none() | st.sampled_from(TITLES) | made_up,
            )
        ),
        tell_after=draw(st.none() | st.integers(2, 99)),
    )


@settings(
    max_examples=80, deadline=None, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large]
)
@given(programmes())
def test_a_programme_written_and_read_again_is_the_same_and_is_written_the_same(programme: Programme) -> None:
    sheet = write_sheet(programme)
    result = read_sheet(sheet)
    assert result.faults == (), sheet
    assert result.programme == programme, sheet
    assert write_sheet(result.programme) == sheet
