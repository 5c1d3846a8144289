"""Laws of the reading: ways of writing, small talk, units, case and spaces make no difference to a clear
set."""

from dataclasses import replace
from decimal import Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from domain.reading import Planned, read
from domain.sets import TrainingSet
from tests.domain.reading.build import PLAN, one, request, short

LOADS = st.integers(100, 256).map(lambda halves: Decimal(halves) / 2)  # 50 to 128 kg, sensible beside 80
REPS = st.integers(1, 15)
WAYS = (
    "{load}x{reps}",
    "{load} x {reps}",
    "{load} for {reps}",
    "{load}kg x {reps}",
    "{load} kg {reps} reps",
    "{reps} reps at {load}",
    "{reps} @ {load}kg",
    "{load}kg, {reps} reps",
    "{reps} reps with {load} kg",
    "{load} kg for {reps} reps",
    "{load}kg × {reps}",
    "{reps} times {load} kg",
)
PUT_RIGHT = (
    "i meant failed on the 9th",
    "the 9th then i meant 12/3 two plates held sets of my mate did failed on the 9th",
    "i meant 5 kg lighter",
    "make it 5 kg heavier",
    "that was 5 kg up",
    "make that 5 kg less",
    "that was 12 reps fewer",
)
DONE = (
    one("Plank", "0", seconds=40, kind="body"),
    one("Plank", "5", seconds=40, kind="added"),
    one("Dip", "0", 8, kind="body"),
    one("Dip", "5", 8, kind="assist"),
    one("Bench press", "2", 8),
)
TALK = (
    "",
    "phew, ",
    "hi coach! ",
    "ok so ",
    "gym was packed. ",
    "slept badly but ",
    "finally done: ",
)
AFTER = (
    "",
    " 💪",
    "!!",
    ". felt great",
    ", no pain",
    " today",
    ". On my way home now",
    ", and that was that",
)
UNITS = [
    "zero",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen",
    "fifteen",
]
TENS = {
    50: "fifty",
    60: "sixty",
    70: "seventy",
    80: "eighty",
    90: "ninety",
    100: "a hundred",
    120: "one twenty",
}


def plain(load: Decimal) -> str:
    return f"{load.normalize():f}"


@given(LOADS, REPS, st.sampled_from(WAYS), st.sampled_from(TALK), st.sampled_from(AFTER))
@settings(max_examples=300, deadline=None)
def test_a_set_reads_back_however_it_is_written(
    load: Decimal, reps: int, way: str, talk: str, after: str
) -> None:
    text = f"{talk}bench {way.format(load=plain(load), reps=reps)}{after}"
    found = read(request(text))
    assert [short(one) for one in found.sets] == [("Bench press", load, reps)], text
    assert not found.asks
    assert not found.pain


WAYS_BY_KIND = {
    "each": (
        "incline {load}s x {reps}",
        "incline {load} kg each x {reps}",
        "incline pair of {load}s for {reps}",
        "incline 2x{load}kg dumbbells, {reps} reps",
        "incline {load} in each hand for {reps}",
        "{reps} reps with {load}s on the incline",
    ),
    "added": (
        "dips +{load} x {reps}",
        "dips bw+{load} for {reps}",
        "dips with {load} kg on the belt, {reps} reps",
        "dips {load} kg added x {reps}",
        "{reps} dips with {load} kg on the belt",
    ),
    "body": (
        "dips bw x {reps}",
        "bodyweight dips, {reps} reps",
        "{reps} dips without weight",
    ),
}
LIGHT = st.integers(6, 14)
"""Loads beside which the numbers are sensible both on the belt, at 10 kg, and twice as many in each hand."""


@given(LIGHT, REPS, st.sampled_from(sorted(WAYS_BY_KIND)), st.data(), st.sampled_from(TALK))
@settings(max_examples=300, deadline=None)
def test_a_set_keeps_how_its_load_is_counted_however_it_is_written(
    load: int, reps: int, kind: str, data: st.DataObject, talk: str
) -> None:
    counted = Decimal({"each": 2 * load, "added": load, "body": 0}[kind])
    text = talk + data.draw(st.sampled_from(WAYS_BY_KIND[kind])).format(load=counted, reps=reps)
    found = read(request(text))
    assert [(str(one.load_kind), one.load, one.reps) for one in found.sets] == [(kind, counted, reps)], text
    assert not found.asks


LIGHT_LISTS = (
    "{load}{unit}: {a}, {b}, {c}",
    "{load}{unit} {a}, {b}, {c}",
    "{load}{unit} {a}/{b}/{c}",
    "{load}{unit} x {a}, {b} and {c}",
    "{load}{unit} for {a}, {b}, {c}",
    "{load}{unit} - {a}, {b}, {c}",
    "{load}{unit} {a} then {b} then {c}",
    "{load}{unit}, {a} {b} {c} reps",
    "{a}, {b} and {c} with {load}{unit}",
    "{a}/{b}/{c} @ {load}{unit}",
    "{a}, {b}, {c} reps with {load}{unit}",
    "3 sets with {load}{unit}: {a}, {b}, {c}",
)
RAISES = Planned("Dumbbell lateral raise", 10, 15, "reps", 3, "each")


@given(
    st.integers(9, 14),
    st.integers(10, 16),
    st.integers(0, 2),
    st.integers(0, 2),
    st.sampled_from(LIGHT_LISTS),
    st.sampled_from(("kg", " kg", "s")),
    st.sampled_from(("{}", "raises {}", "{} on the lateral raises", "lateral raises: {}", "{} on raises")),
)
@settings(max_examples=300, deadline=None)
def test_of_a_list_at_one_light_load_no_reps_are_taken_for_a_load(
    load: int, first: int, less: int, still_less: int, way: str, unit: str, around: str
) -> None:
    a, b, c = first, first - less, first - less - still_less
    text = around.format(way.format(load=load, unit=unit, a=a, b=b, c=c))
    target = {RAISES.name: one(RAISES.name, "11", 12, kind="each")}
    found = read(replace(request(text, plan=(RAISES, *PLAN)), target=target))
    assert [short(each) for each in found.sets] == [
        (RAISES.name, Decimal(load), reps) for reps in (a, b, c)
    ], text
    assert not found.asks


@given(
    st.integers(20, 59),
    st.sampled_from(
        (
            "plank {s}s",
            "plank {s} sec",
            "plank: {s} seconds",
            "held the plank {s} seconds",
            "plank for {s} secs",
            "{s} second plank",
            "plank 0:{s}",
        )
    ),
    st.sampled_from(TALK),
    st.sampled_from(AFTER),
)
@settings(max_examples=200, deadline=None)
def test_a_hold_reads_back_however_it_is_written(seconds: int, way: str, talk: str, after: str) -> None:
    text = talk + way.format(s=seconds) + after
    found = read(request(text))
    assert [short(one) for one in found.sets] == [("Plank", Decimal(0), seconds)], text
    assert not found.asks


@given(LOADS, REPS, st.sampled_from(WAYS))
@settings(deadline=None)
def test_case_and_spaces_do_not_matter(load: Decimal, reps: int, way: str) -> None:
    text = f"bench {way.format(load=plain(load), reps=reps)}"
    assert read(request(text.upper())).sets == read(request(f"  {text.replace(' ', '  ')} ")).sets


@given(st.sampled_from(sorted(TENS)), st.integers(1, 12))
@settings(deadline=None)
def test_words_and_digits_mean_the_same(load: int, reps: int) -> None:
    words = read(request(f"bench {TENS[load]} for {UNITS[reps]}"))
    digits = read(request(f"bench {load} for {reps}"))
    assert words.sets == digits.sets


@given(st.integers(40, 400), st.integers(1, 12), st.sampled_from(["lb", "lbs", "pounds", "#"]))
@settings(deadline=None)
def test_a_unit_that_is_said_is_kept_as_said(load: int, reps: int, unit: str) -> None:
    (one,) = read(request(f"bench {load}{unit if unit == '#' else ' ' + unit} x {reps}")).sets
    assert (int(one.load), str(one.unit), one.reps) == (load, "lb", reps)


@given(
    st.lists(st.tuples(LOADS, REPS), min_size=1, max_size=5), st.sampled_from([", ", "\n", " then ", " and "])
)
@settings(deadline=None)
def test_sets_in_a_list_are_read_in_their_order(sets: list[tuple[Decimal, int]], sep: str) -> None:
    text = "bench " + sep.join(f"{plain(load)}kg x {reps}" for load, reps in sets)
    found = read(request(text))
    assert [short(one) for one in found.sets] == [("Bench press", load, reps) for load, reps in sets], text


@given(st.text(max_size=300))
@settings(max_examples=300, deadline=None)
def test_any_text_is_read_without_an_exception_and_no_number_is_invented(text: str) -> None:
    found = read(request(text))
    digits = {c for c in text if c.isnumeric()}
    if not digits and text.isascii() and not any(c.isalpha() for c in text):
        assert not found.sets


@given(
    st.lists(
        st.sampled_from(
            [p.name for p in PLAN] + ["x", "for", "@", "80", "8", "kg", ",", "reps", "to failure"]
        ),
        max_size=12,
    )
)
@settings(max_examples=300, deadline=None)
def test_a_set_has_numbers_that_were_said_or_pointed_at(words: list[str]) -> None:
    found = read(request(" ".join(words)))
    for each in found.sets:
        assert each.load in {Decimal(80), Decimal(8), Decimal(10), Decimal(26), Decimal(0)}
        assert (each.reps if each.seconds is None else each.seconds) in {0, 8, 80, 45}


@pytest.mark.parametrize("done", DONE)
@pytest.mark.parametrize("words", PUT_RIGHT)
def test_whatever_is_put_right_is_still_a_set_that_somebody_can_have_done(
    words: str, done: TrainingSet
) -> None:
    """The constraints of the tables ask the same: a message that broke one was set aside."""
    for found in read(request(words, done=(done,))).sets:
        assert (found.reps is None) != (found.seconds is None)
        assert found.load >= 0
        assert found.amount >= 0
        assert found.load_kind != "body" or found.load == 0
