"""What a digest counts is what stands in the journal, whatever was said, put right or taken back."""

from collections import Counter
from datetime import date, timedelta

from hypothesis import given, settings
from hypothesis import strategies as st

from domain.client.rotation import BESIDE
from domain.exercises import describe
from domain.exposure import Exposure
from domain.journal import WorkoutRecord
from domain.state import ClientState
from domain.tally import ClientTally, between
from domain.verdict import judge
from tests.domain.client.people import Life, at

SAID = st.sampled_from(
    [
        *("row 60x9", "row 60x10", "row 62.5x8", "rdl 80x7", "rdl 80x8", "curls 14x10", "curls 14x9"),
        *("goblet squat 20x10", "goblet squat 22x10", "wall sit 50s", "wall sit 45s", "bench press 70x5"),
        *("row 60x9\nrdl 80x8\ncurls 14x11", "goblet squat 20x11, wall sit 55 s"),
        *(
            "make that 9",
            "undo",
            "rdl was 82.5",
            "can't make it today",
            "my knee hurts",
            "chin-up 3 negatives",
        ),
    ]
)
DAYS = st.lists(st.tuples(st.integers(0, 4), SAID), min_size=4, max_size=16)


def counted(state: ClientState, since: date) -> Counter[str]:
    """Count by hand: each exercise of each workout against the last workout of that name that has it."""
    counts: Counter[str] = Counter()
    done: dict[tuple[int, str], Exposure] = {}
    for record in state.workouts:
        for name in {entry.set.exercise for entry in state.entries if entry.workout == record.number}:
            sets = [e.set for e in state.entries if e.workout == record.number and e.set.exercise == name]
            done[record.number, name] = Exposure(record.name, name, record.on, tuple(sets))
    for (number, name), now in done.items():
        record = next(each for each in state.workouts if each.number == number)
        before = [done[each.number, name] for each in earlier(state, record) if (each.number, name) in done]
        if record.on >= since:
            about = describe(name)
            last = before[-1] if before else None
            verdict = judge(now, last, tuple(before[:-1]), body_share=about.body_share, joints=about.joints)
            counts[verdict.result.replace(" ", "_")] += 1
    numbers = {number for number, _ in done}
    for record in state.workouts:
        if record.on >= since and record.name != BESIDE:
            is_done = record.number in numbers and record.state in {"open", "done"}
            counts["done"] += is_done
            counts["due"] += is_done or record.state in {"missed", "skipped"}
    return +counts


def earlier(state: ClientState, record: WorkoutRecord) -> list[WorkoutRecord]:
    """Return the workouts of the same name before that one, oldest first."""
    return [
        each
        for each in state.workouts
        if each.name == record.name and (each.on, each.number) < (record.on, record.number)
    ]


@settings(max_examples=40, deadline=None)
@given(DAYS, st.integers(0, 12))
def test_the_numbers_are_a_direct_count_over_the_journal(said: list[tuple[int, str]], back: int) -> None:
    life = Life()
    day = 2
    for gap, text in said:
        day += gap
        moment = at(2, 18) + timedelta(days=day - 2)
        life.says(text, moment)
    today = (at(2, 18) + timedelta(days=day - 2)).date()
    tally = life.state.memory.tally
    assert tally is not None
    since = max(today - timedelta(days=back), today - timedelta(days=34))
    told = between(tally, since, today)
    assert +Counter(told.model_dump()) == counted(life.state, since)


def tally_of(life: Life) -> ClientTally:
    assert life.state.memory.tally is not None
    return life.state.memory.tally


def rows(*reps: int) -> Life:
    """Return a client whose rows went so, every six days, with all else of the workout getting better."""
    life = Life()
    for place, each in enumerate(reps):
        day = at(2, 18) + timedelta(days=6 * place)
        life.says(f"row 60x{each}, rdl {80 + 5 * place}x7, curls {10 + 2 * place}x10", day)
        life.says(f"goblet squat {20 + 2 * place}x10, wall sit {40 + place} s", day + timedelta(days=3))
    return life


def test_the_exercise_longest_without_a_beat_is_counted_from_after_its_last_beat() -> None:
    longest = tally_of(rows(8, 9, 9, 8, 8)).longest
    assert longest is not None
    assert (longest.exercise, longest.workouts, longest.since) == ("Seated cable row", 3, date(2026, 3, 14))


def test_two_workouts_without_a_beat_are_nothing_yet() -> None:
    assert tally_of(rows(8, 9, 9, 8)).longest is None


def test_what_is_aside_is_not_named_as_long_not_beaten() -> None:
    life = rows(8, 9, 9, 8, 8)
    life.says("my back hurts on the rows", at(30, 18))
    assert tally_of(life).longest is None


def test_a_workout_that_was_missed_was_due_and_not_done() -> None:
    life = rows(8)
    life.passes_to(at(12, 9))
    told = between(tally_of(life), date(2026, 3, 2), date(2026, 3, 10))
    assert (told.due, told.done) == (3, 2)


def test_a_workout_that_was_to_be_lighter_is_not_counted_as_below() -> None:
    life = Life()
    for day in (2, 8):
        life.says("row 60x9\nrdl 80x7\ncurls 14x10", at(day))
        life.says("goblet squat 20x10\nwall sit 45s", at(day + 3))
    life.says("away till the 30th", at(12))
    life.says("row 52.5x9\nrdl 80x6\ncurls 14x10", at(31))  # the row as eased after the break
    tally = life.state.memory.tally
    assert tally is not None
    counts = between(tally, date(2026, 3, 31), date(2026, 3, 31))
    assert (counts.below, counts.level, counts.not_comparable) == (1, 1, 1)
