"""What looks like something else: whose set it was, what a clock shows, what was got with a load."""

from dataclasses import replace
from decimal import Decimal

import pytest

from domain.reading import read
from tests.domain.reading.build import SENT, TARGET, reading, request, short

MINE = ("Bench press", Decimal(80), 8)


@pytest.mark.parametrize("who", ["my gaffer", "the postman", "this tourist", "our choirmaster", "my wife"])
@pytest.mark.parametrize("did", ["pulled 180x3", "benched 120", "just pressed 60x5", "casually squatted 200"])
@pytest.mark.parametrize("then", [", me bench 80x8", ". bench 80x8", " but I got bench 80x8"])
def test_a_set_of_whoever_else_is_none_of_the_clients(who: str, did: str, then: str) -> None:
    assert [short(each) for each in reading(f"{who} {did}{then}").sets] == [MINE]


@pytest.mark.parametrize("part", ["my right arm", "my last set", "the other side"])
def test_a_limb_or_a_set_is_nobody_else(part: str) -> None:
    assert reading(f"bench 80x8, {part} pulled 80x7").sets


@pytest.mark.parametrize(
    ("text", "reps"),
    [
        ("all 3 bench sets at 80: 8, 8 and 7", [8, 8, 7]),
        ("bench at 80: 8, 7", [8, 7]),
        ("bench with 80 kg of plates and got 8", [8]),
        ("bench used 80 kg and got eight", [8]),
        ("bench 80 kg also 8", [8]),
    ],
)
def test_reps_after_a_load_are_neither_a_time_nor_lost(text: str, reps: list[int]) -> None:
    found = reading(text)
    assert [short(each) for each in found.sets] == [("Bench press", Decimal(80), one) for one in reps]
    assert not found.asks


@pytest.mark.parametrize(
    "text", ["trained after the late shift last night. bench 80x8", "lifted after work yesterday: bench 80x8"]
)
def test_a_day_on_which_one_trained_is_the_trainings(text: str) -> None:
    assert [each.on for each in reading(text).sets] == [SENT.date().replace(day=24)]


@pytest.mark.parametrize(
    "short_of", ["not until failure", "not all the way to failure", "not quite to failure"]
)
def test_failure_denied_is_false(short_of: str) -> None:
    (told,) = reading(f"bench 80x8, {short_of}").sets
    assert told.to_failure is False


@pytest.mark.parametrize(
    "text", ["this queue is a headache, bench 80x8", "the app is such a pain. bench 80x8"]
)
def test_a_nuisance_is_no_pain(text: str) -> None:
    found = reading(text)
    assert [short(each) for each in found.sets] == [MINE]
    assert not found.pain


@pytest.mark.parametrize("name", ["flurps", "db florps", "krangles", "cable wobblers"])
@pytest.mark.parametrize("between", [", ", "\n", "; "])
def test_a_set_behind_a_name_that_nobody_knows_is_asked_about(name: str, between: str) -> None:
    found = reading(f"bench 80x8{between}{name} 20x10")
    assert [short(each) for each in found.sets] == [MINE]
    assert found.asks == ("exercise",)


@pytest.mark.parametrize("sort", ["backoff", "lighter", "dropset", "then", "finally", "dropped", "tired now"])
def test_a_sort_of_set_is_no_name(sort: str) -> None:
    assert [short(each)[0] for each in reading(f"bench 80x8, {sort} 70x10").sets] == ["Bench press"] * 2


@pytest.mark.parametrize("word", ["bruh", "calm", "pumped", "sadly", "legit"])
def test_an_outcry_before_the_same_load_is_no_name(word: str) -> None:
    found = reading(f"bench 80x8, {word} 80x7")
    assert [short(each)[2] for each in found.sets] == [8, 7]


@pytest.mark.parametrize(
    "text", ["got 8 on dips", "only got 8 on the dips", "managed 8 on dips", "8 dips", "only 8 dips"]
)
def test_what_one_got_of_something_is_how_often(text: str) -> None:
    found = reading(text)
    assert [short(each) for each in found.sets] == [("Dip", Decimal(10), 8)]
    assert not found.asks


@pytest.mark.parametrize(
    "text", ["bench 20 + 60 x 8", "bench 30 a side + bar x 8", "bench 30 + the bar for 8"]
)
def test_a_load_told_in_parts_is_asked_about(text: str) -> None:
    found = reading(text)
    assert not found.sets
    assert found.asks


@pytest.mark.parametrize("text", ["bench 30 each side + bar = 80 for 8", "bench 20 + 60 = 80 x 8"])
def test_what_the_parts_of_a_load_make_is_the_load(text: str) -> None:
    assert [short(each) for each in reading(text).sets] == [MINE]


@pytest.mark.parametrize("text", ["bench 80x8 + 75x6", "bench 80x8 + bench 75x6", "bench 80 x 8 + 75 x 6"])
def test_sets_joined_by_a_plus_are_no_sum(text: str) -> None:
    assert [short(each) for each in reading(text).sets] == [MINE, ("Bench press", Decimal(75), 6)]


@pytest.mark.parametrize("load", ["eighty", "eigthy", "eihgty", "80"])
@pytest.mark.parametrize("tie", ["for", "fro", "x"])
@pytest.mark.parametrize("reps", ["eight", "eihgt", "eigth", "8"])
def test_numbers_in_words_with_letters_changed_over_are_read(load: str, tie: str, reps: str) -> None:
    assert [short(each) for each in reading(f"bench {load} {tie} {reps}").sets] == [MINE]


def test_reps_told_of_two_names_at_once_go_to_each_of_them() -> None:
    found = read(replace(request("bench and incline same weight, 8 and 10"), last=TARGET))
    assert [short(each) for each in found.sets] == [MINE, ("Incline dumbbell press", Decimal(26), 10)]


@pytest.mark.parametrize(
    "second", ["and the second one 7", "and in the second set 7", "then the second go 7"]
)
def test_the_second_of_two_sets_keeps_its_reps(second: str) -> None:
    assert [short(each) for each in reading(f"bench was 80 for 8 {second}").sets] == [
        MINE,
        ("Bench press", Decimal(80), 7),
    ]


@pytest.mark.parametrize(
    "aside",
    [
        "for the 3rd week in a row",
        "for the 2nd time",
        "with pauses of 2",
        "5 kg up on january",
        "third week in a row",
    ],
)
def test_what_is_counted_or_compared_is_neither_a_day_nor_a_set(aside: str) -> None:
    for around in ("bench 80x8 {}", "bench 80x8, {}", "bench 80x8!! {}"):
        found = reading(around.format(aside))
        assert [(short(each), each.on) for each in found.sets] == [(MINE, SENT.date())], around
        assert not found.asks
