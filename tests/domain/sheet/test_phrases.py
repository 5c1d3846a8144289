"""Each rule of an exercise's line, in the many ways that coaches write it; and names around them."""

from decimal import Decimal

import pytest

from domain.exercises import catalogue, lookup
from domain.programme import (
    Alternative,
    FixedDays,
    Ladder,
    Mass,
    Prescription,
    Raise,
    Range,
    RelativeLoad,
    Rotation,
    Weekday,
)
from domain.sheet import Note, read_sheet
from domain.sheet.exercise_lines import Named, read_line
from domain.sheet.phrases import Amount

HEAD = "Harbour\nTrain every 3 days in turn: A\nA\n"


def prescriptions(lines: str) -> tuple[Prescription, ...]:
    """Return what `lines` of exercises mean; line 4 of the sheet is the first."""
    result = read_sheet(HEAD + lines)
    assert result.faults == ()
    assert result.programme is not None
    return result.programme.workouts[0].prescriptions


def notes(lines: str) -> tuple[Note, ...]:
    return read_sheet(HEAD + lines).notes


@pytest.mark.parametrize(
    ("words", "low", "high", "of"),
    [
        ("8-10", 8, 10, "reps"),
        ("8 - 10 reps", 8, 10, "reps"),
        ("8\N{EN DASH}10 repetitions", 8, 10, "reps"),
        ("8 to 10", 8, 10, "reps"),
        ("8 or 9 reps", 8, 9, "reps"),
        ("between 8 and 10 reps", 8, 10, "reps"),
        ("eight to ten reps", 8, 10, "reps"),
        ("12 reps", 12, 12, "reps"),
        ("a dozen reps", 12, 12, "reps"),
        ("x 20", 20, 20, "reps"),
        ("hold 30-60", 30, 60, "seconds"),
        ("hold for 30-60 seconds", 30, 60, "seconds"),
        ("30-60s", 30, 60, "seconds"),
        ("30 sec to 45 sec", 30, 45, "seconds"),
        ('30-60"', 30, 60, "seconds"),
        ("1-2 minutes", 60, 120, "seconds"),
        ("0:45-1:30", 45, 90, "seconds"),
        ("30-60 s hold", 30, 60, "seconds"),
    ],
)
@pytest.mark.parametrize(
    "line",
    [
        "Hack squat, {}",
        "Hack squat: {}",
        "Hack squat {}",
        "- **Hack squat** - {}",
        "1) hack squats\t{}",
    ],
)
def test_ranges(line: str, words: str, low: int, high: int, of: str) -> None:
    (only,) = prescriptions(line.format(words))
    assert (only.exercise, only.range.low, only.range.high, only.range.of) == ("Hack squat", low, high, of)


@pytest.mark.parametrize(
    "words",
    [
        "3x8-10",
        "3 x 8-10",
        "3\N{MULTIPLICATION SIGN}8-10",
        "3 sets of 8-10 reps",
        "three sets of 8-10",
        "8-10 reps, 3 sets",
        "3 sets: 8-10",
        "8-10 x 3",
        "3 working sets of 8-10",
        "3 sets x 8-10 reps",
        "3 * 8-10",
    ],
)
def test_sets(words: str) -> None:
    (only,) = prescriptions(f"Leg press, {words}")
    assert (only.sets, only.range) == (3, Range(low=8, high=10))


@pytest.mark.parametrize(
    ("words", "stop_short"),
    [
        ("to failure", 0),
        ("taken to failure", 0),
        ("all to complete failure", 0),
        ("until failure", 0),
        ("@ failure", 0),
        ("stop one short of failure", 1),
        ("stopping 2 reps short of failure", 2),
        ("leave 2 in reserve", 2),
        ("leave two reps in the tank", 2),
        ("with 3 reps left", 3),
        ("RIR 1", 1),
        ("1 RIR", 1),
        ("@ RPE 8", 2),
        ("RPE 10", 0),
        ("short of failure", 1),
    ],
)
@pytest.mark.parametrize("line", ["Leg press, 8-10 reps, {}", "Leg press 8-10 {}", "Leg press, 8-10\n  {}"])
def test_effort(line: str, words: str, stop_short: int) -> None:
    assert prescriptions(line.format(words))[0].stop_short == stop_short


KG_2_5 = Mass(amount=Decimal("2.5"), unit="kg")


@pytest.mark.parametrize(
    ("words", "over", "by"),
    [
        ("over 8 add load", 8, None),
        ("over 8 reps: add weight", 8, None),
        ("above 8, increase", 8, None),
        ("more than 8 reps -> go up", 8, None),
        ("over 8 add the smallest step", 8, None),
        ("over 8 add 2.5 kg", 8, KG_2_5),
        ("over 8 add 2,5 kilos", 8, KG_2_5),
        ("over 8: +2.5 kg", 8, KG_2_5),
        ("add 2.5kg when over 8", 8, KG_2_5),
        ("add 2.5 kg once you get 9", 8, KG_2_5),
        ("when you hit 9 reps, add 2.5 kg", 8, KG_2_5),
        ("at 9 add 2.5 kg", 8, KG_2_5),
        ("at the top of the range add 2.5 kg", 9, KG_2_5),
        ("when you hit the top, add load", 9, None),
        ("over 8 add 5 lbs", 8, Mass(amount=Decimal(5), unit="lb")),
        ("over 8 add 5 pounds", 8, Mass(amount=Decimal(5), unit="lb")),
    ],
)
@pytest.mark.parametrize(
    "line",
    [
        "Leg press, 8-10 reps, {}",
        "Leg press 8-10; {}",
        "Leg press, 8-10\n- {}",
        "Leg press 8-10. {}",
    ],
)
def test_when_to_add_load(line: str, words: str, over: int, by: Mass | None) -> None:
    assert prescriptions(line.format(words))[0].add_load == Raise(over=over, by=by)


@pytest.mark.parametrize(
    ("words", "amount", "side"),
    [
        ("start 10 kg above last goblet squat", "10", "above"),
        ("starting 10 kg over the last Goblet squat's load", "10", "above"),
        ("start with 10 kg more than your last goblet squats", "10", "above"),
        ("start 10 kg heavier than Goblet squat", "10", "above"),
        ("start 7.5 kg below last Goblet squat", "7.5", "below"),
        ("start 7,5 kilos lighter than the last goblet squat", "7.5", "below"),
        ("start at last goblet squat", "0", "above"),
    ],
)
def test_load_reckoned_from_another_exercise(words: str, amount: str, side: str) -> None:
    first, _ = prescriptions(f"Wall sit, hold 30-60 seconds, {words}\nGoblet squat, 8-12")
    assert first.load_from == RelativeLoad.model_validate(
        {"exercise": "Goblet squat", "difference": {"amount": amount, "unit": "kg"}, "side": side}
    )


@pytest.mark.parametrize(
    "words",
    [
        "below 1 do lowering-only reps up to 8",
        "under 1 full rep, do negatives up to 8",
        "if you get less than 1, do negatives until 8",
        "fewer than 1: eccentric-only reps to 8 reps",
    ],
)
def test_the_ladder(words: str) -> None:
    (only,) = prescriptions(f"Pull-up, 5-8 reps to failure; {words}; over 8 add load")
    assert only.ladder == Ladder(below=1, up_to=8)
    assert only.add_load == Raise(over=8)


@pytest.mark.parametrize(
    ("words", "why", "without"),
    [
        ("no dumbbells: {}", "equipment", "dumbbells"),
        ("No dumbbells -> {}", "equipment", "dumbbells"),
        ("without a cable machine: {}", "equipment", "cable machine"),
        ("if there is no rack, do {}", "equipment", "rack"),
        ("if you don't have a barbell: {}", "equipment", "barbell"),
        ("if the bench is taken: {}", "equipment", "bench"),
        ("or {} if there are no bands", "equipment", "bands"),
        ("if the lower back is a problem: {}", "joint", "lower back"),
        ("if your low back hurts, do {}", "joint", "lower back"),
        ("bad knees: {}", "joint", "knee"),
        ("for sore shoulders: {}", "joint", "shoulder"),
        ("if the rotator cuff plays up: {}", "joint", "shoulder"),
        ("elbow trouble: {}", "joint", "elbow"),
        ("Alternative if the wrist complains: {}", "joint", "wrist"),
        ("swap for {} if knees hurt", "joint", "knee"),
        ("if neck trouble: {}", "joint", "neck"),
    ],
)
@pytest.mark.parametrize("line", ["1. Dip, 5-8 reps\n   {}", "1. Dip, 5-8 reps; {}", "1. Dip 5-8 ({})"])
def test_alternatives(line: str, words: str, why: str, without: str) -> None:
    (only,) = prescriptions(line.format(words.format("Leg press")))
    assert only.alternatives == (
        Alternative.model_validate(
            {"why": why, "without": without, "exercise": "Leg press", "range": {"low": 5, "high": 8}}
        ),
    )


@pytest.mark.parametrize(
    "words",
    [
        "straight into Dip, 5-7 reps",
        "superset with Dip, 5-7 reps",
        "supersetted with dips 5-7",
        "then straight into dip 5-7",
        "followed straight away by Dip, 5-7",
        "no rest, straight to dips, 5-7",
        "immediately into Dip: 5-7",
    ],
)
@pytest.mark.parametrize("between", ["\n   ", ", ", "; ", " "])
def test_supersets(between: str, words: str) -> None:
    first, second = prescriptions(f"1. Leg press, 8-10 reps{between}{words}")
    assert (first.exercise, first.straight_into_next) == ("Leg press", True)
    assert (second.exercise, second.range, second.straight_into_next) == ("Dip", Range(low=5, high=7), False)


@pytest.mark.parametrize(
    ("line", "cues"),
    [
        ("Dip, 5-8\ncue: elbows in", ("elbows in",)),
        ("Dip, 5-8 reps. Remember: elbows in; breathe", ("elbows in; breathe",)),
        ("Dip, 5-8 (elbows in)", ("elbows in",)),
        ('Dip, 5-8\n"elbows in"', ("elbows in",)),
        ("Dip, 5-8 each arm", ("each arm",)),
        ("Dip, 5-8, rest 2-3 minutes", ("rest 2-3 minutes",)),
        ("Dip, 5-8, tempo 3-1-3", ("tempo 3-1-3",)),
        ("Dip, 5-8, 4 seconds down", ("4 seconds down",)),
        ("Dip, 5-8\n   elbows in", ("elbows in",)),
        ("Dip, 5-8, slow and smooth", ("slow and smooth",)),
    ],
)
def test_cues(line: str, cues: tuple[str, ...]) -> None:
    assert prescriptions(line)[0].cues == cues


@pytest.mark.parametrize(
    ("line", "what", "part", "taken_as"),
    [
        ("1. Dumbel bench press, 8", "own exercise", "Dumbel bench press", "Dumbbell bench press"),
        ("1. Goblet sqat, 8", "own exercise", "Goblet sqat", "Goblet squat"),
        ("1. Zigzag crawl, 8", "own exercise", "Zigzag crawl", ""),
        ("1. rdl, 8", "other name", "rdl", "Romanian deadlift"),
        ("1. Dip, 8\n   elbows in", "kept as cue", "elbows in", ""),
        ("1. Dip, 8, short of failure", "one short", "Dip, 8, short of failure", ""),
    ],
)
def test_what_the_coach_should_see(line: str, what: str, part: str, taken_as: str) -> None:
    assert [(note.line_number, note.what, note.part, note.taken_as) for note in notes(line)][-1] == (
        5 if what == "kept as cue" else 4,
        what,
        part,
        taken_as,
    )


@pytest.mark.parametrize(
    "line",
    [
        "1. Negative chin-up, 4-6",
        "1. Chin-up negatives, 4-6",
        "1. Lowering-only chin-ups: 4-6",
        "1. Chin-up, 4-6 lowering-only reps",
        "1. Chin-up, 4-6 negatives",
        "1. Chin-up, lowering only, 4-6 reps",
    ],
)
def test_lowering_only_reps(line: str) -> None:
    (only,) = prescriptions(line)
    assert (only.exercise, only.lowering_only, only.range) == ("Chin-up", True, Range(low=4, high=6))


@pytest.mark.parametrize("line", ["1. Bench press, 8", "1. bench presses, 8", "1. BENCH-PRESS, 8"])
def test_case_plural_and_hyphens_are_nothing_to_note(line: str) -> None:
    assert notes(line) == ()


def test_a_slip_of_the_pen_is_never_silently_another_exercise() -> None:
    (only,) = prescriptions("1. Goblet sqat, 8")
    assert only.exercise == "Goblet sqat"


@pytest.mark.parametrize(
    ("line", "every_days"),
    [
        ("Train every 3 days", 3),
        ("every third day", 3),
        ("Every other day.", 2),
        ("Train daily", 1),
        ("Two rest days between workouts", 3),
        ("One workout every 4 days", 4),
        ("Schedule: train every five days", 5),
        ("Train every 3 days (counted from the last workout done)", 3),
    ],
)
def test_rotations(line: str, every_days: int) -> None:
    programme = read_sheet(f"Harbour\n{line}\nA\n1. Dip, 8\nB\n1. Squat, 8").programme
    assert programme is not None
    assert programme.schedule == Rotation(every_days=every_days, order=("A", "B"))


@pytest.mark.parametrize(
    ("line", "days"),
    [
        ("Train on Monday, Wednesday and Friday in turn: A, B", ("monday", "wednesday", "friday")),
        ("Mon/Wed/Fri: A, B", ("monday", "wednesday", "friday")),
        ("Training days: Tuesdays & Saturdays. In turn: A, B", ("tuesday", "saturday")),
        ("on Sun and Thu, alternating A and B", ("thursday", "sunday")),
        ("Tues, Thurs: A then B", ("tuesday", "thursday")),
    ],
)
def test_fixed_weekdays_with_the_workouts_in_turn(line: str, days: tuple[Weekday, ...]) -> None:
    programme = read_sheet(f"Harbour\n{line}\nA\n1. Dip, 8\nB\n1. Squat, 8").programme
    assert programme is not None
    assert programme.schedule == FixedDays(days=days, order=("A", "B"))


@pytest.mark.parametrize(
    "head",
    [
        "Mon/Thu: A; Tue/Fri: B",
        "Monday and Thursday: A. Tuesday and Friday: B",
        "Mon: A\nTue: B\nThu: A\nFri: B",
        "Train on Monday: A; Tuesday: B; Thursday: A; Friday: B",
    ],
)
def test_fixed_weekdays_with_a_workout_each(head: str) -> None:
    programme = read_sheet(f"Harbour\n{head}\nA\n1. Dip, 8\nB\n1. Squat, 8").programme
    assert programme is not None
    assert programme.schedule == FixedDays(
        days=("monday", "tuesday", "thursday", "friday"), order=("A", "B", "A", "B"), by_day=True
    )


LINES_AROUND_A_NAME = (
    "{}, 8-10 reps",
    "{} 8-10",
    "{}: 3 sets of 8-10 reps to failure",
    "3x8-10 {}",
    "{} 3x8-10",
    "{} - 3 x 8-10",
    "2 sets of 8 {}",
)


@pytest.mark.parametrize("turn", range(len(LINES_AROUND_A_NAME)))
def test_every_name_of_the_catalogue_is_found_in_a_line(turn: int) -> None:
    """Each exercise's own name in every line, and its other names in three of them, ever others."""
    for place, exercise in enumerate(catalogue()):
        for nth, name in enumerate((exercise.name, exercise.plural, *exercise.names[:4])):
            if nth and (place + nth + turn) % len(LINES_AROUND_A_NAME) > 2:
                continue
            line = LINES_AROUND_A_NAME[turn].format(name)
            parts = read_line(line)
            named = [part for part in parts if isinstance(part, Named)]
            assert [lookup(part.name) for part in named] == [exercise], line
            assert sum(isinstance(part, Amount) for part in parts) == 1, line
