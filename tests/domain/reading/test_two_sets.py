"""Two sets in one message, each told in any of many ways: both are read, or asked about, and hardly ever
taken for others."""

from collections.abc import Iterator
from decimal import Decimal
from itertools import cycle, permutations, product

import pytest

from domain.reading import Planned, read
from tests.domain.reading.build import one, request, short

LIFTS = {
    "Bench press": ("bench", "80", 8),
    "Overhead press": ("overhead press", "47.5", 7),
    "Triceps pushdown": ("pushdowns", "35", 13),
    "Hammer curl": ("hammer curls", "14", 11),
}
EACH = {"Hammer curl"}
PLAN = tuple(
    Planned(name, reps - 2, reps + 1, "reps", 1, "each" if name in EACH else None)
    for name, (_, _, reps) in LIFTS.items()
)
TARGET = {
    name: one(name, load, reps, kind="each" if name in EACH else "total")
    for name, (_, load, reps) in LIFTS.items()
}
WAYS = (
    "{name} {load}x{reps}",
    "{load} for {reps} on {name}",
    "{reps} {name} at {load}",
    "{name}: {load}kg, {reps} reps",
    "{name} was {load} for {reps}",
    "{load}x{reps} {name}",
    "{reps} reps of {name} with {load}",
    "{name} {reps} reps at {load}kg",
    "{name} {load} {reps}",
    "did {name}, {load}kg {reps} times",
    "got {reps} on {name} with {load}",
    "{name} went well: {load} x {reps}",
    "{name} - {load} - {reps}",
    "{load} kilos {name} {reps} reps",
    "{name} at {load}, managed {reps}",
    "{name} with {load} and got {reps}",
    "on {name} i did {load} for {reps}",
    "{reps} at {load} on {name}",
    "{name} felt heavy, {load} for {reps}",
    "{name} ({load}kg) {reps}",
    "{reps}x{load} {name}",
    "for {name} {load} by {reps}",
    "{name} {load}/{reps}",
    "{name} got {reps} with {load}",
)
CLEAR = (", ", ". ", " then ", " and ", "; ", "\n", ", then ", " and then ")
LOOSE = (" ", " / ", " - ")
"""What may as well stand within a set."""


def told(between: tuple[str, ...]) -> Iterator[tuple[str, list[tuple[str, Decimal, int]]]]:
    """Yield messages and the sets that they tell of: each two ways, with each pair of exercises in turn."""
    pairs, joints = cycle(permutations(LIFTS, 2)), cycle(between)
    for ways, names in zip(product(WAYS, WAYS), pairs, strict=False):
        said = [
            way.format(name=LIFTS[name][0], load=LIFTS[name][1], reps=LIFTS[name][2])
            for way, name in zip(ways, names, strict=True)
        ]
        for joint in (next(joints), next(joints)):
            yield joint.join(said), [(n, Decimal(LIFTS[n][1]), LIFTS[n][2]) for n in names]


@pytest.mark.parametrize(("between", "exactly", "wrongly"), [(CLEAR, 0.97, 0.002), (LOOSE, 0.75, 0.08)])
def test_two_sets_are_read_or_asked_about(between: tuple[str, ...], exactly: float, wrongly: float) -> None:
    """At least that share is read exactly, and at most that share has a set that was not told."""
    count = exact = wrong = 0
    for text, sets in told(between):
        found = read(request(text, plan=PLAN, target=TARGET))
        said = [short(each) for each in found.sets]
        count += 1
        exact += said == sets and not found.asks
        wrong += any(each not in sets for each in said) or len(said) > len(sets)
    print(f"{count} messages: {exact / count:.1%} exact, {wrong / count:.2%} with a set that was not told")
    assert exact / count >= exactly
    assert wrong / count <= wrongly
