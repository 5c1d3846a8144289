"""Ways of saying a thing, each in all its surroundings."""

from dataclasses import replace
from datetime import date
from decimal import Decimal

import pytest

from domain.reading import Reading, read
from tests.domain.reading.build import SENT, one, reading, request, short

TODAY = date(2026, 3, 25)
EFFORTS: dict[str, tuple[bool | None, int | None]] = {
    "RPE 9": (None, 1),
    "2 left": (None, 2),
    "2 rir": (None, 2),
    "one in reserve": (None, 1),
    "had 2 more in me": (None, 2),
    "to failure": (True, None),
    "nothing left": (True, None),
    "no more in the tank": (True, None),
    "failed on the 9th": (True, None),
    "stopped short of failure": (False, None),
}


@pytest.mark.parametrize("effort", EFFORTS)
@pytest.mark.parametrize("beside", [" {}", ", {}", " - {}", " ({})"])
@pytest.mark.parametrize("then", [", ", " then ", "\n", "; ", ". "])
def test_an_effort_is_of_the_set_that_it_follows(effort: str, beside: str, then: str) -> None:
    for first, second in (("bench 80 x 8", "incline 26x10"), ("incline 26 x 8", "bench 80x6")):
        text = first + beside.format(effort) + then + second
        found = read(request(text))
        assert [(each.to_failure, each.rir) for each in found.sets] == [EFFORTS[effort], (None, None)], text
        assert not found.asks


UNITS = ["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"]
SPOKEN_LOADS = {
    60: "sixty",
    70: "seventy",
    80: "eighty",
    90: "ninety",
    120: "one twenty",
    110: "a hundred and ten",
    105: "one oh five",
}


@pytest.mark.parametrize("load", SPOKEN_LOADS)
@pytest.mark.parametrize(
    "way", ["{} {} reps", "{} for {}", "{} times {}", "{} by {}", "{} kilos {} reps", "{} x {}"]
)
def test_a_load_and_its_reps_are_told_apart_though_dictated(load: int, way: str) -> None:
    for reps in range(2, 10):
        text = "bench " + way.format(SPOKEN_LOADS[load], UNITS[reps])
        assert [short(each) for each in reading(text).sets] == [("Bench press", Decimal(load), reps)], text
    again = "bench " + " ".join(way.format(SPOKEN_LOADS[load], UNITS[reps]) for reps in (8, 7))
    if "by" in way or "x" in way:
        assert [each.reps for each in reading(again).sets] == [8, 7], again


def test_many_reps_of_what_needs_no_load_are_reps() -> None:
    (pushed,) = reading("push ups sixty five reps").sets
    assert short(pushed) == ("Push-up", Decimal(0), 65)


@pytest.mark.parametrize("unit", ["lb", "lbs", " lb.", "lb.", " pounds", " LBS"])
@pytest.mark.parametrize("times", ["x", " x ", "x ", "×", " × ", " for ", " by ", " a ", "·"])
def test_a_unit_is_kept_however_the_reps_are_joined_to_it(unit: str, times: str) -> None:
    text = f"bench 175{unit}{times}6"
    assert [(str(each.unit), short(each)) for each in reading(text).sets] == [
        ("lb", ("Bench press", Decimal(175), 6))
    ], text


@pytest.mark.parametrize(
    "text",
    [
        "bench 82.5k x 6",
        "bench 82.5kx6",
        "bench 6 @ 82.5k",
        "bench 6 reps at 82.5k",
        "bench 82.5k by 6",
        "bench 82.5·6",
    ],
)
def test_a_load_in_k_is_no_distance(text: str) -> None:
    assert [short(each) for each in reading(text).sets] == [("Bench press", Decimal("82.5"), 6)]


LAST = {"Bench press": one("Bench press", "77.5", 7)}
STEPS = {
    "2.5 more, {} reps": "2.5",
    "2.5 more for {}": "2.5",
    "{} reps, 2.5 more": "2.5",
    "2.5 up, {} reps": "2.5",
    "5 kg heavier, {}": "5",
    "5 more, {} reps": "5",
    "2.5 less, {} reps": "-2.5",
    "minus 2.5 kg for {}": "-2.5",
    "minus 5 kg, {} reps": "-5",
    "dropped 2.5, {} reps": "-2.5",
    "last weight, {}": "0",
    "last week's weight for {}": "0",
}


@pytest.mark.parametrize("step", STEPS)
@pytest.mark.parametrize(
    "around", ["bench {}", "bench: {}", "{} on bench", "incline 26x10, bench {}", "bench {}, incline 26x10"]
)
def test_a_step_counts_from_the_load_to_beat(step: str, around: str) -> None:
    text = around.format(step.format(6))
    found = read(replace(request(text), last=LAST))
    load = Decimal("77.5") + Decimal(STEPS[step])
    assert ("Bench press", load, 6) in [short(each) for each in found.sets], text
    assert len(found.sets) == 1 + ("incline" in around), text
    assert not found.asks
    assert not found.wants


@pytest.mark.parametrize(
    ("text", "reps"),
    [("2 reps fewer than last time", 5), ("one rep down on last time", 6), ("last time plus one rep", 8)],
)
def test_last_time_is_not_the_set_just_done(text: str, reps: int) -> None:
    found = read(replace(request("bench " + text, done=(one("Bench press", "85", 4),)), last=LAST))
    assert [short(each) for each in found.sets] == [("Bench press", Decimal("77.5"), reps)]


SKIPS = ("incline skipped", "incline: skipped", "incline - skipped", "skipped incline", "no time for incline")


@pytest.mark.parametrize("skip", SKIPS)
@pytest.mark.parametrize(
    "around", ["{skip}, {done}", "{done}, {skip}", "{skip}. {done}", "{done}. {skip}", "{skip}\n{done}"]
)
def test_what_is_skipped_takes_no_set_of_its_neighbour(skip: str, around: str) -> None:
    text = around.format(skip=skip, done="bench 80x8")
    found = read(request(text))
    assert [short(each) for each in found.sets] == [("Bench press", Decimal(80), 8)], text
    assert found.skips == ("Incline dumbbell press",), text


BENCH = one("Bench press", "80", 8), one("Bench press", "80", 7)
INCLINE = (
    one("Incline dumbbell press", "26", 10, kind="each"),
    one("Incline dumbbell press", "26", 9, kind="each"),
)
LISTS = (BENCH[1:], BENCH, INCLINE[:1] + BENCH[1:], INCLINE + BENCH, INCLINE + BENCH[1:])
"""Lists of what is recorded, each with a bench press of 80 kg for 7 at its end."""
CORRECTIONS: dict[str, tuple[str, int, str]] = {
    "make that 9": ("80", 9, "kg"),
    "sorry, 9 reps": ("80", 9, "kg"),
    "9 not 7": ("80", 9, "kg"),
    "nope, 9 reps": ("80", 9, "kg"),
    "*9": ("80", 9, "kg"),
    "fix: 9 reps": ("80", 9, "kg"),
    "i got 9 actually": ("80", 9, "kg"),
    "scratch that, 9 reps": ("80", 9, "kg"),
    "the last one was 9": ("80", 9, "kg"),
    "i meant 9 on the bench": ("80", 9, "kg"),
    "82.5 not 80": ("82.5", 7, "kg"),
    "no, 82.5 kg": ("82.5", 7, "kg"),
    "edit: 82.5 kg": ("82.5", 7, "kg"),
    "wrong, 82.5 kg for 9 reps": ("82.5", 9, "kg"),
    "*82.5x9": ("82.5", 9, "kg"),
    "no, 82.5 x 9": ("82.5", 9, "kg"),
    "make that pounds": ("80", 7, "lb"),
    "pounds not kilos": ("80", 7, "lb"),
    "oops, lbs": ("80", 7, "lb"),
    "sorry, pounds": ("80", 7, "lb"),
    "wrong unit, lb": ("80", 7, "lb"),
}


@pytest.mark.parametrize("text", CORRECTIONS)
@pytest.mark.parametrize("around", ["{}", "hi, {}", "sorry coach, {}", "{}, my bad", "{}, thanks", "{} 😅"])
def test_a_corrected_set_is_whole_and_the_only_one(text: str, around: str) -> None:
    load, reps, unit = CORRECTIONS[text]
    for done in LISTS:
        found = reading(around.format(text), done=done)
        _is_put_right(found, "Bench press", load, reps, unit)
        assert found.replaces == (len(done) - 1,), text


OF_ONE: dict[str, tuple[str, int]] = {
    "second set was 12": ("26", 12),
    "incline, second set: 12 not 9": ("26", 12),
    "set 2 was 12": ("26", 12),
    "change set 2 to 12 reps": ("26", 12),
    "make the second one 12": ("26", 12),
    "set 2 weight was 28": ("28", 9),
    "set 2 was 28x12": ("28", 12),
}


@pytest.mark.parametrize("text", OF_ONE)
def test_a_set_pointed_at_by_its_place_is_put_right(text: str) -> None:
    load, reps = OF_ONE[text]
    found = reading(text, done=INCLINE)
    _is_put_right(found, "Incline dumbbell press", load, reps, "kg")
    assert found.replaces == (1,)


def test_a_number_meant_on_an_exercise_is_of_its_own_set() -> None:
    _is_put_right(
        reading("i meant 12 on the incline", done=INCLINE[:1] + BENCH),
        "Incline dumbbell press",
        "26",
        12,
        "kg",
    )


def _is_put_right(found: Reading, exercise: str, load: str, reps: int, unit: str) -> None:
    assert [(short(each), str(each.unit), each.on) for each in found.sets] == [
        ((exercise, Decimal(load), reps), unit, SENT.date())
    ]
    assert found.wants == ("correct",)
    assert not found.asks


@pytest.mark.parametrize(
    "text",
    [
        "40s left, 35s right",
        "left 40s right 35s",
        "40s left and 35s right",
        "left 35s, right 40s",
        "35s l, 40s r",
    ],
)
@pytest.mark.parametrize("name", ["plank {}", "plank: {}", "plank - {}", "held the plank for {}"])
def test_of_a_hold_on_two_sides_the_shorter_counts(text: str, name: str) -> None:
    assert [short(each) for each in reading(name.format(text)).sets] == [("Plank", Decimal(0), 35)]


@pytest.mark.parametrize(
    "text",
    ["40s and 35s", "40s, 35s", "40s then 35s", "0:40, 0:35", "40 sec and 35 sec"],
)
@pytest.mark.parametrize(
    "name", ["plank {}", "plank: {}", "{} plank", "{} on the plank", "bench 80x8. {} plank"]
)
def test_of_several_holds_none_is_lost(text: str, name: str) -> None:
    found = reading(name.format(text))
    assert [each.seconds for each in found.sets if each.seconds] == [40, 35]
    assert not found.asks


@pytest.mark.parametrize("name", ["plank", "side plank", "wall sit"])
@pytest.mark.parametrize("each", ["each side", "per side", "a side"])
def test_a_side_is_that_of_the_number_and_not_of_a_name(name: str, each: str) -> None:
    for text in (f"30s {each} {name}", f"{name} 30s {each}", f"{name}: 30 sec {each}"):
        assert [(one.exercise.lower(), one.seconds) for one in reading(text).sets] == [(name, 30)], text


@pytest.mark.parametrize("first", ["7 @ 80 kg", "7 reps at 80kg", "80 kg x 7"])
@pytest.mark.parametrize("second", ["6 @ 177 lb", "6 reps at 177lb", "177 lb x 6"])
def test_each_set_keeps_its_own_unit(first: str, second: str) -> None:
    assert [(str(each.unit), each.reps) for each in reading(f"bench {first}, {second}").sets] == [
        ("kg", 7),
        ("lb", 6),
    ]


WANTS = {
    "rest tomorrow": ("move",),
    "the rest tomorrow": ("move",),
    "will finish tomorrow": ("move",),
    "away next week, back on the 29th": ("pause",),
    "should i go heavier next time?": ("ask_coach",),
    "is it ok to train tomorrow too?": ("ask_coach",),
    "next exercise?": ("show_plan",),
}


@pytest.mark.parametrize("want", WANTS)
@pytest.mark.parametrize(
    "around", ["{done}, {want}", "{done}. {want}", "{done}\n{want}", "{want}\n{done}", "{done} - {want}"]
)
def test_a_want_beside_a_set_takes_nothing_from_it(want: str, around: str) -> None:
    found = reading(around.format(done="bench 80x8", want=want))
    assert [short(each) for each in found.sets] == [("Bench press", Decimal(80), 8)]
    assert found.wants == WANTS[want]
    assert not found.asks


@pytest.mark.parametrize(
    "text",
    ["bench 80x8 tomorrow", "tomorrow bench 80x8", "next time bench 80x8", "rest tomorrow: bench 80x8"],
)
def test_what_is_to_come_is_no_set(text: str) -> None:
    assert not reading(text).sets


@pytest.mark.parametrize(
    "text", ["bodyweight dips 5", "bw dips 5", "dips bw 5", "bodyweigth dips 5 reps", "dips bodywieght x 5"]
)
def test_body_weight_is_kept_wherever_it_is_said(text: str) -> None:
    for around in ("{}", "bench 80x8, {}", "{}, bench 80x8"):
        (dips,) = [each for each in reading(around.format(text)).sets if each.exercise == "Dip"]
        assert (str(dips.load_kind), dips.load, dips.reps) == ("body", Decimal(0), 5)


@pytest.mark.parametrize("text", ["1m 15s", "1m15s", "1:15", "1 min 15", "75s", "1 min 15 sec"])
def test_minutes_and_seconds_are_one_time(text: str) -> None:
    for around in ("plank {}", "plank: {}", "{} plank", "bench 80x8, plank {}"):
        assert short(reading(around.format(text)).sets[-1]) == ("Plank", Decimal(0), 75), around


@pytest.mark.parametrize("slip", ["dipd", "idps", "fips", "dops", "dpis", "dipss"])
@pytest.mark.parametrize("around", ["{}", "bench 80x8, {}", "bench 80x8 then {}", "bench 80x8\n{}"])
def test_a_short_name_with_a_slip_takes_its_set_from_no_neighbour(slip: str, around: str) -> None:
    found = reading(around.format(f"{slip} 10 kg x 6"))
    assert short(found.sets[-1]) == ("Dip", Decimal(10), 6)


@pytest.mark.parametrize("word", ["now", "raw", "slow", "brutal", "easy", "grip", "again"])
def test_a_good_word_before_a_set_is_no_slip_of_a_name(word: str) -> None:
    found = reading(f"bench 80x8, {word} 80x7")
    assert {each.exercise for each in found.sets} == {"Bench press"}
