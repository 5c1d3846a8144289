"""Which exercise a group is of, and what is known of it on its day.

A name goes first, then a pointer, then what was named before, then the one whose turn it is in the plan. Sets
are made elsewhere.
"""

from dataclasses import dataclass, field
from datetime import date

from domain.reading.context import Day, Known, day_of
from domain.reading.gather import Group
from domain.reading.naming import Named
from domain.reading.phrases import Mark
from domain.reading.request import Request
from domain.units import Unit


@dataclass(slots=True)
class Exercises:
    """The exercises of a request, day by day, with the sets of this message as they are added."""

    request: Request
    unit: Unit
    days: dict[date, Day] = field(default_factory=dict)
    known_before: dict[tuple[str, date], Known] = field(default_factory=dict)

    def day(self, on: date) -> Day:
        """Return the sets of each exercise on a day."""
        if on not in self.days:
            self.days[on] = day_of(self.request, on)
        return self.days[on]

    def known(self, exercise: str, day: Day) -> Known:
        """Return what is known of an exercise on a day."""
        key = (exercise, day.on)
        found = self.known_before.get(key)
        if found is None:
            found = self.known_before[key] = Known(self.request, exercise, day, self.unit)
        return found

    def of_group(
        self, group: Group, day: Day, named_before: Named | None, exercise_before: str | None
    ) -> tuple[str | None, Named | None]:
        """Return the exercise of a group, or None with the name that fits several or none."""
        if group.named is not None:
            if len(group.named.names) == 1:
                return group.named.names[0], None
            return None, group.named
        if group.is_of_another:
            return None, None
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
        return self.next(day), None

    def pointed_by_kind(self, group: Group, exercise: str, day: Day) -> str | None:
        """Return the exercise of a set without a name, None where what was said cannot be of the one
        whose turn it is.

        Lowering-only reps and seconds point at the one exercise of the plan that is done so; a load
        counted in another way than the exercise's, or one that only fits another exercise, has to
        be asked about.
        """
        if group.unknown_word is not None:
            return None
        known = self.known(exercise, day)
        quantities = [q for i in group.items if not isinstance(i, Mark) for q in i.quantities]
        left = [p for p in self.request.plan if day.counts.get(p.name, 0) < p.sets]
        lowering = any(q.lowering for q in quantities) or any(
            isinstance(i, Mark) and i.kind == "lowering" for i in group.items
        )
        if lowering and not (known.plan and known.plan.lowering_only):
            lowered = [p.name for p in left if p.lowering_only]
            if lowered or known.hold or known.kind not in {"added", "assist"}:
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
            helped = [p.name for p in left if self.known(p.name, day).kind == "assist"]
            return helped[0] if kind == "assist" and len(helped) == 1 else None
        if known.load_fits(q) is False and any(
            self.known(p.name, day).load_fits(q) for p in left if p.name != exercise
        ):
            return None
        return exercise

    def counted_otherwise(self, group: Group, exercise: str, day: Day) -> str | None:
        """Return the exercise of a set on a line of its own, below a name: the one exercise left whose load
        is counted as this one is, where the named one's is not; None where that must be asked."""
        known = self.known(exercise, day)
        q = next(
            (q for i in group.items if not isinstance(i, Mark) for q in i.quantities if q.role != "reps"),
            None,
        )
        if q is None or known.plan is None:
            return exercise
        left = [self.known(p.name, day) for p in self.request.plan if day.counts.get(p.name, 0) < p.sets]
        if q.plus:
            fits = [one for one in left if known.kind != "added" and one.kind == "added" and one.load_fits(q)]
            exact = [one for one in fits if one.is_exact(q)]
            return exercise if not fits else exact[0].exercise if len(exact) == 1 else None
        if q.role != "pair" and not q.each and q.kind is None:
            return exercise
        kind = known.kind_of(q)
        fits = [one for one in left if one.kind == kind and kind != known.kind]
        return exercise if not fits else fits[0].exercise if len(fits) == 1 else None

    def next(self, day: Day) -> str | None:
        """Return the exercise of a set without a name: the one under way, else the first that is left."""
        plan = {p.name: p.sets for p in self.request.plan}
        last = day.last_exercise
        if last is not None and last in plan and day.counts.get(last, 0) < plan[last]:
            return last
        return next((p.name for p in self.request.plan if day.counts.get(p.name, 0) < p.sets), None)
