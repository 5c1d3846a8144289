"""Groups into sets: which exercise, which day, which load. What is not clear becomes an open set with its
questions."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from decimal import Decimal
from typing import NamedTuple

from domain.reading.context import MOST_KG, MOST_REPS, MOST_REPS_SAID, MOST_SECONDS, Day, Known, day_of
from domain.reading.drafts import Draft, Source
from domain.reading.fold import Fold
from domain.reading.gather import Group
from domain.reading.naming import Named
from domain.reading.phrases import Mark
from domain.reading.quantities import Quantity
from domain.reading.request import OpenSet, Request, Slot
from domain.sets import LoadKind, TrainingSet
from domain.units import Unit, to_kg

Loading = tuple[Decimal | None, Unit | None, LoadKind | None, Slot | None]
"""A load, its unit, how it is counted, and what must be asked of it."""

_UNKNOWN_EXERCISE = ""
_NOTHING = Draft()


class Placed(NamedTuple):
    """A set or an open set with the tokens that it came from."""

    start: int
    end: int
    one: TrainingSet | OpenSet


@dataclass(slots=True)
class Resolver:
    """Turns groups into sets, in the order mentioned. `day_at` gives the day of a token, None to be asked."""

    request: Request
    unit: Unit
    day_at: Callable[[int], date | None]
    word_of: Callable[[Named], str]
    ask_unit: bool = False
    days: dict[date, Day] = field(default_factory=dict)
    placed: list[Placed] = field(default_factory=list)
    counted_loads: dict[tuple[str, Mark | Quantity], Loading] = field(default_factory=dict)
    known_before: dict[tuple[str, date], Known] = field(default_factory=dict)

    def run(self, groups: Sequence[Group]) -> list[Placed]:
        """Return what the groups give."""
        named_before: Named | None = None
        exercise_before: str | None = None
        for group in _merged(groups):
            day_on = self.day_at(group.start)
            day = self._day(day_on or self.request.sent.date())
            exercise, ambiguous = self._exercise(group, day, named_before, exercise_before)
            if group.named is not None:
                named_before = group.named
            if not group.items:
                exercise_before = exercise if group.named is not None else exercise_before
                continue
            before = len(self.placed)
            defaulted = (
                exercise is not None
                and group.named is None
                and named_before is None
                and group.pointer is None
                and not group.again
                and exercise != exercise_before
            )
            if defaulted and exercise is not None:
                exercise = self._pointed_by_kind(group, exercise, day)
            self._resolve(group, exercise, ambiguous, day, day_on, said=group.unknown_word)
            if len(self.placed) > before:
                exercise_before = exercise
        return self.placed

    def _day(self, on: date) -> Day:
        if on not in self.days:
            self.days[on] = day_of(self.request, on)
        return self.days[on]

    def _exercise(
        self, group: Group, day: Day, named_before: Named | None, exercise_before: str | None
    ) -> tuple[str | None, Named | None]:
        """Return the exercise of a group, or None with the name that fits several or none."""
        if group.named is not None:
            if len(group.named.names) == 1:
                return group.named.names[0], None
            return None, group.named
        if group.pointer is not None and named_before is None:
            plan = self.request.plan
            return (plan[group.pointer - 1].name if group.pointer <= len(plan) else None), None
        if named_before is not None:
            return (named_before.names[0], None) if len(named_before.names) == 1 else (None, named_before)
        if group.again:
            done = day.last_exercise or (self.request.done[-1].exercise if self.request.done else None)
            if done is not None:
                return done, None
        if exercise_before is not None and not group.first_on_line:
            return exercise_before, None
        return self.next_exercise(day), None

    def _pointed_by_kind(self, group: Group, exercise: str, day: Day) -> str | None:
        """Return the exercise of a set without a name, None where what was said cannot be of the one
        whose turn it is.

        Lowering-only reps and seconds point at the one exercise of the plan that is done so; a load
        counted in
        another way than the exercise's, or one that only fits another exercise, has to be asked about.
        """
        if group.unknown_word is not None:
            return None
        known = self.known(exercise, day)
        quantities = [q for i in group.items if not isinstance(i, Mark) for q in i.quantities]
        left = [p for p in self.request.plan if day.counts.get(p.name, 0) < p.sets]
        lowering = any(q.lowering for q in quantities) or any(
            isinstance(i, Mark) and i.kind == "lowering" for i in group.items
        )
        if (
            lowering
            and not (known.plan and known.plan.lowering_only)
            and known.kind not in {"added", "assist"}
        ):
            lowered = [p.name for p in left if p.lowering_only]
            return lowered[0] if len(lowered) == 1 else None
        if quantities and all(q.role == "seconds" for q in quantities) and not known.hold:
            holds = [p.name for p in left if p.of == "seconds"]
            return holds[0] if len(holds) == 1 else None
        body = any(isinstance(i, Mark) and i.kind == "body" for i in group.items)
        if body and known.kind not in {"added", "assist"} and not known.is_body:
            return None
        loads = [
            q
            for q in quantities
            if (q.role in {"load", "pair"} or q.kind is not None or q.each) and not q.plus and not q.minus
        ]
        if not loads:
            return exercise
        q = loads[0]
        if known.hold and q.role == "pair":
            return exercise
        kind = known.kind_of(q)
        if kind != known.kind and kind in {"each", "added", "assist"} and known.plan is not None:
            return None
        if known.load_fits(q) is False and any(
            self.known(p.name, day).load_fits(q) for p in left if p.name != exercise
        ):
            return None
        return exercise

    def known(self, exercise: str, day: Day) -> Known:
        """Return what is known of an exercise on a day."""
        key = (exercise, day.on)
        found = self.known_before.get(key)
        if found is None:
            found = self.known_before[key] = Known(self.request, exercise, day, self.unit)
        return found

    def next_exercise(self, day: Day) -> str | None:
        """Return the exercise of a set without a name: the one under way, else the first that is left."""
        plan = {p.name: p.sets for p in self.request.plan}
        last = day.last_exercise
        if last is not None and last in plan and day.counts.get(last, 0) < plan[last]:
            return last
        return next((p.name for p in self.request.plan if day.counts.get(p.name, 0) < p.sets), None)

    def _resolve(
        self,
        group: Group,
        exercise: str | None,
        ambiguous: Named | None,
        day: Day,
        day_on: date | None,
        said: str | None,
    ) -> None:
        known = self.known(exercise or _UNKNOWN_EXERCISE, day)
        fold = Fold(known)
        for draft in fold.run(group.items):
            if (
                draft == _NOTHING
                and not fold.count_said
                and not any(isinstance(i, Mark) and i.kind == "done" for i in group.items)
            ):
                continue
            if (
                draft.load in {"unknown", "body"}
                and draft.amount is None
                and draft.reps is None
                and group.named is None
            ):
                continue
            if group.doubtful:
                draft = draft._replace(confirm=True)  # noqa: PLW2901 - the draft, in doubt
            if fold.each_hand and isinstance(draft.load, Quantity) and draft.load.kind is None:
                draft = draft._replace(load=draft.load._replace(kind="each"))  # noqa: PLW2901 - the draft, completed
            one = self._one(draft, known, exercise, day_on)
            if exercise is None:
                one = _without_exercise(one, self.word_of(ambiguous) if ambiguous is not None else said)
            start, end = (draft.start, draft.end) if draft.end else (group.start, group.end)
            self.placed.append(Placed(start, end, one))
            if isinstance(one, TrainingSet):
                day.add(one)

    def _one(
        self,
        draft: Draft,
        known: Known,
        exercise: str | None,
        on: date | None,
        *,
        is_candidate: bool = False,
    ) -> TrainingSet | OpenSet:
        """Return the set of a draft, or the open set with what must be asked."""
        asks: list[Slot] = []
        if on is None:
            asks.append("date")
        if exercise is None:
            asks.append("exercise")
        said = draft.amount
        if isinstance(said, Quantity) and not known.hold and said.value % 1 not in {0, Decimal("0.5")}:
            draft = draft._replace(confirm=True)
        load, unit, kind, load_ask = self._load(draft.load, known, draft)
        amount, amount_ask = self._amount(draft, known)
        reps = None if known.hold else amount
        seconds = amount if known.hold else None
        lowering = draft.lowering or (known.plan is not None and known.plan.lowering_only)
        failure = draft.to_failure
        if draft.rir == 0:
            failure = True
        elif draft.rir is not None and draft.rir >= 1 and failure is True:
            failure = None
        if (
            not asks
            and load is not None
            and unit is not None
            and kind is not None
            and amount is not None
            and load_ask is None
            and amount_ask is None
            and exercise is not None
            and not (
                amount > 50
                and isinstance(draft.amount, Quantity)
                and draft.amount.role is None
                and not known.is_body
                and not known.hold
            )
            and not (draft.confirm or self.ask_unit or self._is_out_of_reason(load, unit, reps, seconds))
        ):
            to_failure = None if reps == 0 else failure
            return TrainingSet(exercise, load, unit, kind, reps, seconds, lowering, to_failure, draft.rir, on)
        one = OpenSet(
            exercise=exercise,
            load=load,
            unit=unit,
            load_kind=kind,
            reps=reps,
            seconds=seconds,
            lowering_only=lowering,
            to_failure=None if reps == 0 else failure,
            rir=draft.rir,
            on=on,
            bare=draft.bare,
        )
        if load_ask == "unit" or self.ask_unit:
            return replace(one, asks=("unit",) if on is not None else ("date",))
        if (
            isinstance(draft.amount, Quantity)
            and draft.amount.role is None
            and not known.reps_fit(draft.amount)
            and amount is not None
            and amount > 50
            and not known.is_body
        ):
            draft = draft._replace(confirm=True)
        if load_ask == "confirm" or draft.confirm:
            candidates = () if is_candidate else self._candidates(draft, known, exercise, on)
            return replace(one, asks=(*asks, "confirm"), candidates=candidates)
        if self._is_out_of_reason(load, unit, reps, seconds):
            whole = replace(one, asks=()).complete()
            return replace(one, asks=(*asks, "confirm"), candidates=(whole,) if whole else ())
        if asks and asks[0] == "date":
            return replace(one, asks=("date",))
        if load_ask is not None:
            asks.append(load_ask)
        if amount_ask is not None:
            asks.append(amount_ask)
        complete = replace(one, asks=tuple(asks))
        return complete.complete() or complete

    def _is_out_of_reason(
        self, load: Decimal | None, unit: Unit | None, reps: int | None, seconds: int | None
    ) -> bool:
        return (
            (load is not None and unit is not None and to_kg(load, unit) > MOST_KG)
            or (reps is not None and reps > MOST_REPS_SAID)
            or (seconds is not None and seconds > MOST_SECONDS)
        )

    def _load(self, source: Source, known: Known, draft: Draft) -> Loading:
        """Return the load, its unit, how it is counted, and what must be asked of it."""
        request = self.request
        match source:
            case Quantity():
                if not (source.plus or source.minus):
                    return self._said_load(source, known)
                place = (known.exercise, source)
                if place not in self.counted_loads:
                    self.counted_loads[place] = self._said_load(source, known)
                return self.counted_loads[place]
            case Mark():
                # "up 2.5 for 7, 6" is one load for both sets, counted once.
                key = (known.exercise, source)
                if key not in self.counted_loads:
                    self.counted_loads[key] = self._relative_load(source, known)
                return self.counted_loads[key]
            case "body":
                return Decimal(0), request.unit, "body", None
            case "unknown":
                return None, None, None, "load"
            case _:
                pass
        if isinstance(draft.amount, Mark) and draft.amount.kind in {"more reps", "fewer reps"}:
            base = known.base(from_last=draft.amount.from_last)
            return (base.load, base.unit, base.load_kind, None) if base else (None, None, None, "load")
        if draft.amount is None and draft.reps is None:
            target = known.target
            return (
                (target.load, target.unit, target.load_kind, None) if target else (None, None, None, "load")
            )
        base = known.load_for_reps()
        return (base.load, base.unit, base.load_kind, None) if base else (None, None, None, "load")

    def _said_load(self, q: Quantity, known: Known) -> Loading:
        if q.unit == "stone":
            return None, None, None, "unit"
        unit: Unit = q.unit or self.unit
        if q.role == "plates":
            return None, None, None, "confirm"
        kind = known.kind_of(q)
        if q.a_side and known.kind != "each":
            return q.value, unit, kind, "confirm"
        if q.value == 0:
            if kind in {"added", "assist"} or known.is_body:
                return Decimal(0), self.request.unit, "body", None
            return q.value, unit, kind, "confirm"
        if (
            (q.plus or (q.minus and known.load_fits(q) is False))
            and known.kind in {"total", "each"}
            and not known.is_body
        ):
            # "+2.5 for 7" on a bar counts from the load to beat.
            base = known.base(from_last=False)
            if base is None:
                return None, None, None, "load"
            if q.unit is not None and q.unit != base.unit:
                return None, None, None, "load"
            step = q.value
            load = base.load + step if q.plus else base.load - step
            return (load, base.unit, base.load_kind, None) if load > 0 else (None, None, None, "load")
        return q.value, unit, kind, None

    def _relative_load(self, mark: Mark, known: Known) -> Loading:
        if mark.kind in {"target", "target more", "target fewer"}:
            base = known.target
        else:
            base = known.base(from_last=mark.from_last)
        if base is None:
            return None, None, None, "load"
        if mark.kind not in {"up", "down"} or mark.value is None:
            return base.load, base.unit, base.load_kind, None
        step = mark.value
        if mark.unit is not None and mark.unit != base.unit:
            return None, None, None, "load"
        load = base.load + step if mark.kind == "up" else base.load - step
        kind: LoadKind = base.load_kind
        if kind == "body":
            kind = "added" if load > 0 else known.kind
            if load < 0:
                return None, None, None, "load"
        if load < 0:
            return None, None, None, "confirm"
        if load == 0 and kind in {"added", "assist"}:
            return Decimal(0), base.unit, "body", None
        return load, base.unit, kind, None

    def _amount(self, draft: Draft, known: Known) -> tuple[int | None, Slot | None]:
        """Return the reps or seconds, and what must be asked of them."""
        slot: Slot = "seconds" if known.hold else "reps"
        if draft.reps is not None:
            return draft.reps, None
        amount = draft.amount
        if isinstance(amount, Quantity):
            return int(amount.value), None
        if amount is None:
            return None, slot
        if amount.kind == "failed on":
            return int(amount.value or 1) - 1, None
        target_like = amount.kind in {"target", "target more", "target fewer"}
        base = known.target if target_like else known.base(from_last=amount.from_last)
        if base is None:
            return None, slot
        step = int(amount.value or 0)
        if amount.kind in {"more reps", "target more"}:
            return base.amount + step, None
        if amount.kind in {"fewer reps", "target fewer"}:
            return (base.amount - step, None) if base.amount >= step else (None, slot)
        return base.amount, None

    def _candidates(
        self, draft: Draft, known: Known, exercise: str | None, on: date | None
    ) -> tuple[TrainingSet, ...]:
        """Return the whole sets that an unclear draft can mean, the likeliest first."""
        if exercise is None or on is None:
            return ()
        found: list[TrainingSet] = []
        for way in (draft, *draft.unclear):
            plain = way._replace(
                confirm=False, unclear=(), to_failure=draft.to_failure, rir=draft.rir, lowering=draft.lowering
            )
            if isinstance(plain.amount, Quantity) and plain.amount.role is None:
                plain = plain._replace(amount=plain.amount._replace(role="reps"))
            if isinstance(plain.amount, Quantity) and plain.amount.role is None:
                plain = plain._replace(amount=plain.amount._replace(role="reps"))
            sources = [plain]
            if isinstance(way.load, Quantity) and way.load.role == "plates":
                big = (Decimal(100), "kg") if self.unit == "kg" else (Decimal(225), "lb")
                count = way.load.value
                plate, bar = (Decimal(20), Decimal(20)) if big[1] == "kg" else (Decimal(45), Decimal(45))
                sources = [plain._replace(load=way.load._replace(value=bar + 2 * count * plate, role="load"))]
            elif isinstance(way.load, Quantity) and way.load.a_side and known.kind != "each":
                q = way.load._replace(a_side=False)
                sources = [plain._replace(load=q._replace(value=q.value * 2)), plain._replace(load=q)]
            for source in sources:
                one = self._one(source, known, exercise, on, is_candidate=True)
                if isinstance(one, TrainingSet) and one not in found:
                    found.append(one)
        return tuple(found)


def _without_exercise(one: TrainingSet | OpenSet, said: str | None) -> OpenSet:
    """Return an open set that asks only which exercise it was; what else is missing is asked once that is
    known."""
    if isinstance(one, OpenSet):
        asks: tuple[Slot, ...] = ("date",) if one.on is None else ("exercise",)
        if one.asks and one.asks[0] == "unit":
            asks = ("unit",)
        return replace(one, exercise=None, asks=asks, said_name=said)
    return OpenSet(
        exercise=None,
        load=one.load,
        unit=one.unit,
        load_kind=one.load_kind,
        reps=one.reps,
        seconds=one.seconds,
        lowering_only=one.lowering_only,
        to_failure=one.to_failure,
        rir=one.rir,
        on=one.on,
        asks=("exercise",),
        said_name=said,
    )


def _merged(groups: Sequence[Group]) -> list[Group]:
    """Join a load and its reps that stand in two sentences, where no name stands between them."""
    kept: list[Group] = []
    for group in groups:
        before = kept[-1] if kept else None
        if (
            (
                before is not None
                and group.named is None
                and group.items
                and isinstance(group.items[0], Mark)
                and group.items[0].kind == "change"
            )
            or (
                before is not None
                and group.named is None
                and group.pointer is None
                and not group.again
                and before.items
                and group.items
                and (
                    (_only_amount(group) and (_only_load(before) or _only_bare(before)))
                    or (_only_load(group) and _only_amount(before))
                    or (_is_heavy(before) and _only_bare(group) and not _is_heavy(group))
                )
            )
            or (
                before is not None
                and group.named is None
                and before.items
                and group.items
                and all(isinstance(i, Mark) for i in group.items)
                and not any(isinstance(i, Mark) and i.kind in _WHOLE for i in group.items)
            )
        ):
            before.items.extend(group.items)
        else:
            kept.append(group)
    return kept


_WHOLE = frozenset(
    {
        "same all",
        "same again",
        "zero",
        "same load",
        "up",
        "down",
        "more reps",
        "fewer reps",
        "target",
        "target more",
        "target fewer",
        "body",
        "unknown load",
        "pin",
        "failed on",
    }
)


def _only_load(group: Group) -> bool:
    """Return whether a group says just one load, with its unit."""
    numbers = [i for i in group.items if not isinstance(i, Mark)]
    return len(numbers) == 1 and len(numbers[0].quantities) == 1 and numbers[0].quantities[0].role == "load"


def _is_heavy(group: Group) -> bool:
    """Return whether a lone bare number is far too large to be reps, so that it waits for them."""
    return (
        _only_bare(group)
        and not isinstance(group.items[0], Mark)
        and group.items[0].quantities[0].value > MOST_REPS
    )


def _only_bare(group: Group) -> bool:
    """Return whether a group says just one bare number."""
    return (
        len(group.items) == 1
        and not isinstance(group.items[0], Mark)
        and [q.role for q in group.items[0].quantities] == [None]
    )


def _only_amount(group: Group) -> bool:
    """Return whether a group says just reps or seconds."""
    numbers = [i for i in group.items if not isinstance(i, Mark)]
    return (
        len(numbers) == 1
        and len(numbers[0].quantities) == 1
        and numbers[0].quantities[0].role in {"reps", "seconds"}
    )
