"""What changes between two programmes: every line is either the same, changed, moved, gone or new."""

from hypothesis import given
from hypothesis import strategies as st

from domain.programme import Prescription, Programme, Range, Rotation, Workout
from domain.programme_changes import carried_over, changes_between, lines_by_spot

EXERCISES = st.sampled_from(["Dip", "Seated cable row", "Goblet squat", "Calf raise", "Hammer curl"])
LINES = st.builds(
    Prescription,
    exercise=EXERCISES,
    counted=st.just("total"),
    range=st.sampled_from([Range(low=5, high=8), Range(low=8, high=12)]),
    sets=st.integers(1, 2),
)


@st.composite
def programmes(draw: st.DrawFn) -> Programme:
    """Draw a programme whose workouts name no exercise twice."""
    names = draw(st.lists(st.sampled_from(["Pull", "Push", "Legs"]), min_size=1, unique=True))
    workouts = tuple(
        Workout(
            name=name,
            prescriptions=tuple(
                draw(st.lists(LINES, min_size=1, max_size=4, unique_by=lambda line: line.exercise))
            ),
        )
        for name in names
    )
    days = draw(st.integers(1, 3))
    return Programme(
        name="Harbour Base", schedule=Rotation(every_days=days, order=tuple(names)), workouts=workouts
    )


@given(programmes(), programmes())
def test_the_new_programme_is_the_old_one_with_the_changes(before: Programme, after: Programme) -> None:
    changes = changes_between(before, after)
    made = dict(lines_by_spot(before))
    for spot in changes.gone:
        del made[spot]
    new = lines_by_spot(after)
    for moved in changes.moved:
        del made[moved.before, moved.exercise]
        made[moved.after, moved.exercise] = new[moved.after, moved.exercise]
    for each in changes.changed:
        assert made[each.workout, each.before.exercise] == each.before
        made[each.workout, each.after.exercise] = each.after
    for workout, line in changes.new:
        assert (workout, line.exercise) not in made
        made[workout, line.exercise] = line
    assert made == new
    assert (changes.schedule or before.schedule) == after.schedule


@given(programmes())
def test_nothing_changes_to_the_same_programme(programme: Programme) -> None:
    changes = changes_between(programme, programme)
    assert changes.model_dump(exclude_defaults=True) == {}


@given(programmes(), programmes())
def test_history_goes_on_just_where_it_is_compared(before: Programme, after: Programme) -> None:
    goes_on, anew = carried_over(after, lines_by_spot(before).keys())
    same = lines_by_spot(before).keys() & lines_by_spot(after).keys()
    assert set(goes_on) == {exercise for _, exercise in same}
    assert set(anew) == {spot[1] for spot in lines_by_spot(after) if spot not in same}
