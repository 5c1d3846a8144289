"""Where a set could be meant in two ways, nothing of it is recorded; where a second thought is clear, that
counts."""

from dataclasses import replace
from decimal import Decimal

import pytest

from domain.reading import read
from tests.domain.reading.build import SENT, TARGET, one, reading, request, short

AROUND = ("{}", "{}, felt good", "phew {}", "{}. incline 26x10")


@pytest.mark.parametrize("around", AROUND)
@pytest.mark.parametrize(
    "text",
    [
        "bench 80 x ~8",
        "bench ~80 x 8",
        "bench 80-ish x 8",
        "bench 80 x 8ish",
        "bench 80 x 8 or so",
        "bench 80 for maybe 8",
        "bench 80 for roughly 8 reps",
        "bench 80 x 7 or 8",
        "bench 80 x 8 maybe 9",
        "bench 80 x 8, possibly 9",
        "bench 80, think I got 8 but might be 7",
        "bench 80x8, the last two were half reps",
        "bench 80x8, last rep was assisted",
        "bench 80x8, last one doesn't count",
        "bench 80x8, spotter helped with the last one",
        "bench 80x8, 7 if you don't count the last one",
    ],
)
def test_what_is_only_about_so_much_is_asked_about(text: str, around: str) -> None:
    found = reading(around.format(text))
    assert "Bench press" not in [each.exercise for each in found.sets], text
    assert found.asks
    assert not found.wants


@pytest.mark.parametrize(
    "change",
    [
        ", well 7 really",
        ", well, 7 if I'm honest",
        " (7 really)",
        " - 7 if we're being strict",
        ", 7 to be honest",
        ", last rep was more of a shrug so call it 7",
        ", last one spotted so 7",
        ", no wait, 7",
        " I mean 7",
    ],
)
@pytest.mark.parametrize("told", ["bench 80x8", "bench 80 for 8", "bench 80 kg 8 reps"])
def test_a_second_thought_takes_the_place_of_the_first(told: str, change: str) -> None:
    found = reading(told + change)
    assert [short(each) for each in found.sets] == [("Bench press", Decimal(80), 7)]
    assert not found.asks


@pytest.mark.parametrize(
    "other",
    [
        "up a notch",
        "one plate up",
        "went a bit lighter",
        "went heavier",
        "bumped it up",
        "with the empty bar",
        "just the bar",
        "used the next dumbbells",
        "more weight",
    ],
)
@pytest.mark.parametrize("around", ["bench {}, 8 reps", "bench 8 reps, {}", "bench, {}: 8 reps"])
def test_reps_at_a_load_that_is_not_said_are_not_taken_at_the_usual_one(other: str, around: str) -> None:
    found = reading(around.format(other))
    assert not found.sets
    assert found.asks == ("load",)


@pytest.mark.parametrize(
    "remark", ["felt a bit lighter", "it felt heavier than last time", "lighter than it looks"]
)
def test_how_a_load_felt_is_no_other_load(remark: str) -> None:
    found = reading(f"bench 8 reps, {remark}")
    assert [short(each) for each in found.sets] == [("Bench press", Decimal(80), 8)]


@pytest.mark.parametrize(
    "text",
    [
        "load 80 reps 8",
        "weight: 80 reps: 8",
        "reps: 8, weight: 80",
        "bench weight 80 reps 8",
        "bench\nweight 80\nreps 8",
        "bench load=80, reps=8",
        "bench - reps 8 - weight 80 kg",
    ],
)
def test_each_number_is_what_the_word_before_it_says(text: str) -> None:
    assert [short(each) for each in reading(text).sets] == [("Bench press", Decimal(80), 8)]


@pytest.mark.parametrize("mark", ["#{}", "s{}", "set {}", "set {}:", "S{}:"])
@pytest.mark.parametrize("between", [" ", ", ", "\n"])
def test_the_number_of_a_set_is_none_of_its_own(mark: str, between: str) -> None:
    text = "bench " + between.join(f"{mark.format(at)} 80x{reps}" for at, reps in ((1, 8), (2, 7)))
    assert [short(each) for each in reading(text).sets] == [
        ("Bench press", Decimal(80), 8),
        ("Bench press", Decimal(80), 7),
    ]


@pytest.mark.parametrize("reached", ["7 of 8", "7 of the 8", "7 out of 8", "7 of the planned 8"])
@pytest.mark.parametrize("around", ["bench 80, {}", "bench 80 kg {}", "bench 80: {}", "bench 80, hit {}"])
def test_what_was_aimed_for_is_no_set(reached: str, around: str) -> None:
    assert [short(each) for each in reading(around.format(reached)).sets] == [("Bench press", Decimal(80), 7)]


@pytest.mark.parametrize(
    ("text", "load", "reps"),
    [
        ("bench 5 more than last time, 8 reps", 85, 8),
        ("bench 80 for one more than last time", 80, 9),
        ("bench 80 for two fewer than last time", 80, 6),
        ("bench down to 77.5, 8", Decimal("77.5"), 8),
        ("bench up to 82.5 for 7", Decimal("82.5"), 7),
    ],
)
def test_more_or_less_than_last_time(text: str, load: Decimal, reps: int) -> None:
    found = read(replace(request(text), last={"Bench press": one("Bench press", "80", 8)}, target=TARGET))
    assert [short(each) for each in found.sets] == [("Bench press", Decimal(load), reps)]


@pytest.mark.parametrize("text", ["training again on friday as planned", "back in on monday as usual"])
def test_a_workout_to_come_as_planned_is_no_set(text: str) -> None:
    assert not reading(text).sets


@pytest.mark.parametrize(
    "after",
    [
        " see you friday",
        ", see you on friday",
        ", can't wait for friday",
        " and on friday I'll do 8",
        ", will get 8 on friday",
        ", ready for monday",
        ", 8 on friday hopefully",
    ],
)
def test_a_day_to_come_behind_a_set_is_not_its_day(after: str) -> None:
    (told,) = reading("bench 80x7" + after).sets
    assert (short(told), told.on) == (("Bench press", Decimal(80), 7), SENT.date())


@pytest.mark.parametrize(
    "text",
    [
        "bench 80x8, sleep 7",
        "bench 80x8, sleep: 7, stress: 4",
        "bench 80x8, mood 8/10",
        "bench 80x8 = 640",
        "bench 80x8 = 640kg",
        "bench 80x8 rest 3:00",
        "didn't do 82.5 on bench, did 80x8",
        "I couldn't get 85, but did 80x8 on the bench",
    ],
)
def test_scores_sums_and_what_it_was_not_are_no_sets(text: str) -> None:
    found = reading(text)
    assert [short(each) for each in found.sets] == [("Bench press", Decimal(80), 8)]
    assert not found.asks


@pytest.mark.parametrize("other", ["my wife counted 7", "coach counted 9", "he says it was 9"])
def test_another_count_of_the_same_set_is_asked_about(other: str) -> None:
    found = reading(f"bench 80x8, {other}")
    assert (found.sets, found.asks) == ((), ("confirm",))


DONE = (one("Bench press", "80", 8),)


@pytest.mark.parametrize(
    ("text", "load", "reps"),
    [
        ("one less", 80, 7),
        ("same weight, one rep less", 80, 7),
        ("same weight one less rep", 80, 7),
        ("same minus one", 80, 7),
        ("same plus one", 80, 9),
        ("last set 7", 80, 7),
        ("final set 7", 80, 7),
        ("2nd set 7", 80, 7),
        ("took 5 off, 9", 75, 9),
        ("1 more, 7", 80, 7),
        ("one more: 7", 80, 7),
    ],
)
def test_a_set_told_beside_the_one_just_done(text: str, load: int, reps: int) -> None:
    found = reading(text, done=DONE)
    assert [short(each) for each in found.sets] == [("Bench press", Decimal(load), reps)]
    assert not found.wants


@pytest.mark.parametrize("text", ["9 sorry", "9, oops", "80x9 I mean", "80x9, typo"])
def test_a_number_that_is_excused_corrects_the_one_before(text: str) -> None:
    found = reading(text, done=DONE)
    assert [short(each) for each in found.sets] == [("Bench press", Decimal(80), 9)]
    assert found.wants == ("correct",)
