"""Several exercises in one message, each said in its own way: every set goes to its exercise."""

from dataclasses import replace
from decimal import Decimal

from hypothesis import given, settings
from hypothesis import strategies as st

from domain.reading import Planned, read
from domain.sets import LoadKind
from tests.domain.reading.build import one, request, short

LIFTS: dict[str, tuple[tuple[str, ...], LoadKind, str, range]] = {
    "Bench press": (("bench", "flat bench", "bench press"), "total", "80", range(5, 9)),
    "Seated row": (("row", "rows", "seated row"), "total", "60", range(8, 11)),
    "Lateral raise": (("laterals", "lat raises"), "each", "8", range(10, 16)),
    "Leg press": (("leg press",), "total", "150", range(8, 13)),
    "Leg curl": (("leg curl", "leg curls"), "total", "40", range(10, 16)),
    "Hammer curl": (("hammers", "hammer curl"), "each", "14", range(8, 13)),
    "Dip": (("dips", "dip"), "added", "10", range(5, 9)),
}
ONE_SET = (
    "{name} {load}x{reps}",
    "{name} {load} x {reps}",
    "{name}: {load} for {reps}",
    "{name} {load}kg {reps} reps",
    "{load}x{reps} {name}",
    "{load} for {reps} on {name}",
    "{name} {reps} at {load}",
    "{name} - {load}kg x {reps}",
    "{reps} reps of {name} with {load}kg",
)
TWO_SETS = (
    "{name} {load}kg: {reps}/{fewer}",
    "{name} {load} x {reps}, {fewer}",
    "{name} {load}kg {reps}, {fewer}",
)
BETWEEN = (", ", "; ", "\n", ". ", " then ", " and ", ", then ", "\n- ")


@st.composite
def told(draw: st.DrawFn) -> tuple[str, list[tuple[str, Decimal, int]]]:
    """Return a message about two to four exercises, and the sets that it tells of."""
    names = draw(st.lists(st.sampled_from(sorted(LIFTS)), min_size=2, max_size=4, unique=True))
    parts: list[str] = []
    sets: list[tuple[str, Decimal, int]] = []
    for name in names:
        called, _, load, usual = LIFTS[name]
        reps = draw(st.sampled_from(usual))
        way = draw(st.sampled_from((*ONE_SET, *TWO_SETS)))
        parts.append(way.format(name=draw(st.sampled_from(called)), load=load, reps=reps, fewer=reps - 1))
        sets.append((name, Decimal(load), reps))
        if "{fewer}" in way:
            sets.append((name, Decimal(load), reps - 1))
    return draw(st.sampled_from(BETWEEN)).join(parts), sets


@given(told())
@settings(max_examples=300, deadline=None)
def test_each_set_goes_to_its_exercise(message: tuple[str, list[tuple[str, Decimal, int]]]) -> None:
    text, sets = message
    plan = tuple(
        Planned(name, usual[0], usual[-1], "reps", 2, None if kind == "total" else kind)
        for name, (_, kind, _, usual) in LIFTS.items()
    )
    target = {name: one(name, load, usual[-1], kind=kind) for name, (_, kind, load, usual) in LIFTS.items()}
    found = read(replace(request(text, plan=plan), target=target))
    assert [short(each) for each in found.sets] == sets
    assert not found.asks
