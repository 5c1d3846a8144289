"""Whether so much was ever done, and when for the first time, as far as the journal goes back."""

from collections.abc import Mapping, Sequence
from datetime import date
from decimal import Decimal

from domain.client.draft import Draft
from domain.client.lifts import body_of
from domain.comparison import best_of
from domain.sets import TrainingSet
from domain.units import Unit, to_kg
from domain.values import facts_of

_LOADED = frozenset({"total", "each", "added"})
"""How loads are counted of which more is more."""

_POUNDS = frozenset({"lb", "lbs", "pound", "pounds"})


def tell_ever(
    draft: Draft,
    names: Sequence[str],
    numbers: Mapping[str, Decimal],
    pieces: Mapping[str, str],
    *,
    when: bool = False,
) -> None:
    """Say whether the `numbers` were ever done in the exercises `names`, or without any in whichever.

    `numbers` are a `load`, `reps` and `held` (seconds), as far as they were said; `pieces` the unit that was
    said, and `more` where only more than that counts. `when`: only the first time is asked for.
    """
    entries = sorted(draft.state.entries, key=lambda entry: (entry.set.on or date.min, entry.order))
    sets = [entry.set for entry in entries if not names or entry.set.exercise in names]
    if not sets:
        draft.notice("no history", exercise=names[0] if names else None)
        return
    numbers = with_meaning(numbers, sets if names else ())
    unit: Unit = draft.client.unit
    if said := pieces.get("unit"):
        unit = "lb" if said.casefold() in _POUNDS else "kg"
    done = [each for each in sets if is_so_much(each, numbers, unit, strictly="more" in pieces)]
    closest = None if done else nearest(draft, sets, numbers)
    draft.notice(
        "ever",
        load=str(numbers["load"]) if "load" in numbers else None,
        unit=unit,
        reps=int(numbers["reps"]) if "reps" in numbers else None,
        seconds=int(numbers["held"]) if "held" in numbers else None,
        more="more" in pieces,
        when=when,
        exercises=list(names),
        first=facts_of(done[0]) if done else None,
        latest=facts_of(done[-1]) if done else None,
        times=len(done),
        best=facts_of(closest) if closest is not None else None,
    )


def with_meaning(numbers: Mapping[str, Decimal], sets: Sequence[TrainingSet]) -> Mapping[str, Decimal]:
    """Return the numbers, where a lone one is of reps or seconds if these `sets` never had a load."""
    if set(numbers) != {"load"} or not sets or any(each.load_kind in _LOADED for each in sets):
        return numbers
    return {"held" if sets[-1].seconds is not None else "reps": numbers["load"]}


def is_so_much(
    done: TrainingSet, numbers: Mapping[str, Decimal], unit: Unit, *, strictly: bool = False
) -> bool:
    """Return whether a set is as much as the `numbers`, a load of theirs in `unit`; `strictly`: more."""
    if done.lowering_only or not done.amount:
        return False
    least = numbers.get("held", numbers.get("reps"))
    if least is not None:
        is_hold = "held" in numbers
        if is_hold != (done.seconds is not None) or done.amount < least:
            return False
        if strictly and "load" not in numbers and done.amount == least:
            return False
    if "load" not in numbers:
        return least is not None
    asked = to_kg(numbers["load"], unit)
    return done.load_kind in _LOADED and (done.kg > asked if strictly else done.kg >= asked)


def nearest(draft: Draft, sets: Sequence[TrainingSet], numbers: Mapping[str, Decimal]) -> TrainingSet | None:
    """Return what comes nearest to what was never done; None where nothing is of its kind."""
    if "load" in numbers:
        loaded = [each for each in sets if each.load_kind in _LOADED and each.amount]
        return max(loaded, key=lambda each: (each.kg, each.amount), default=None)
    is_hold = "held" in numbers
    alike = [each for each in sets if (each.seconds is not None) == is_hold]
    if alike and all(each.exercise == alike[0].exercise for each in alike):
        kind = alike[-1].load_kind
        return best_of(
            [each for each in alike if each.load_kind == kind], body_of(draft.state, alike[0].exercise)
        )
    return max(alike, key=lambda each: each.amount, default=None)
