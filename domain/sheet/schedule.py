"""From the lines beside the workouts to the schedule, the review and the coach's own stall rule."""

from collections.abc import Sequence
from dataclasses import dataclass, field

from rapidfuzz import fuzz, process

from domain.names import name_key
from domain.programme import FixedDays, Review, Rotation, Weekday
from domain.sheet.header import (
    DayWorkout,
    Every,
    HeaderPart,
    OnDays,
    Order,
    ReviewAfter,
    SwitchTo,
    TellAfter,
    weekdays,
)
from domain.sheet.lines import Line
from domain.sheet.result import Fault, FaultCode, Note
from domain.sheet.workouts import Section

_LIKE_ENOUGH = 60
"""Of 100: how like two names must be for one to be offered in place of the other."""


@dataclass(slots=True)
class SchedulePlan:
    """What the header says of days and turns; the workouts themselves are held against it by `settle`."""

    every: Every | None = None
    days: tuple[Weekday, ...] = ()
    day_workouts: dict[Weekday, str] = field(default_factory=dict)
    order: tuple[str, ...] = ()
    line: Line | None = None
    order_line: Line | None = None
    review: Review | None = None
    tell_after: int | None = None
    unclear: bool = False
    faults: list[Fault] = field(default_factory=list)
    notes: list[Note] = field(default_factory=list)

    def finds(self, heading: str) -> str | None:
        """Return `heading` where it is the name of a workout in turn, else None."""
        key = name_key(heading)
        names = (*self.order, *self.day_workouts.values())
        return heading if key and any(name_key(name) == key for name in names) else None

    def settle(self, sections: Sequence[Section]) -> Rotation | FixedDays | None:
        """Return the schedule with the workouts as the sections call them; None where it is at fault."""
        by_day = self.day_workouts or {day: section.name for section in sections for day in section.days}
        if not self.every and not self.days and not by_day:
            if not self.unclear:
                self._fault(None, "no schedule")
            return None
        days = self.days or weekdays(" ".join(by_day))
        if by_day and (self.every or self.order):
            if self.every or self.day_workouts:
                self._fault(self.line, "two schedules", self.line.words if self.line else "")
            by_day = {}
        if by_day and set(days) != set(by_day):
            self._fault(self.line, "two schedules", ", ".join(days), ", ".join(by_day))
        names = self._names(sections, tuple(by_day.values()) or self.order)
        if not names:
            return None
        if self.every:
            return Rotation(every_days=self.every.days, order=names)
        if by_day:
            placed = dict(zip(by_day, names, strict=True))
            return FixedDays(days=days, order=tuple(placed[day] for day in days), by_day=True)
        return FixedDays(days=days, order=names)

    def _names(self, sections: Sequence[Section], wanted: tuple[str, ...]) -> tuple[str, ...]:
        """Return the names in turn as the sections spell them, and fault what is in one place only."""
        if any(fault.what == "two schedules" for fault in self.faults):
            return ()
        spelling = {name_key(section.name): section.name for section in sections}
        if not wanted:
            if sections:
                line = self.line or sections[0].line
                self.notes.append(
                    Note(line.number, "order from sections", line.words, ", ".join(spelling.values()))
                )
            return tuple(spelling.values())
        head = self.order_line or self.line
        turns = {name_key(name) for name in wanted}
        unplaced = [section.name for section in sections if name_key(section.name) not in turns]
        for name in dict.fromkeys(wanted):
            if name_key(name) not in spelling:
                self._fault(head, "workout without section", name, _most_like(name, unplaced))
        missing = [name for name in wanted if name_key(name) not in spelling]
        for section in sections:
            if name_key(section.name) not in turns:
                self._fault(
                    section.line, "section not in rotation", section.name, _most_like(section.name, missing)
                )
        return tuple(spelling.get(name_key(name), name) for name in wanted)

    def _fault(self, line: Line | None, what: FaultCode, part: str = "", hint: str = "") -> None:
        self.faults.append(Fault(line.number if line else None, line.raw if line else "", what, part, hint))


def plan_schedule(headers: Sequence[tuple[Line, HeaderPart]]) -> SchedulePlan:
    """Return what the parts beside the workouts say together, and fault what they say twice."""
    plan = SchedulePlan()
    rounds: int | None = None
    switch: tuple[Line, str] | None = None
    for line, part in headers:
        match part:
            case Every() | OnDays() if plan.every or plan.days:
                plan._fault(line, "two schedules", line.words)
            case Every():
                plan.every, plan.line = part, line
            case OnDays(days=days):
                plan.days, plan.line = days, line
            case DayWorkout(days=days, name=name):
                plan.line = plan.line or line
                for day in days:
                    if day in plan.day_workouts:
                        plan._fault(line, "two schedules", line.words)
                    plan.day_workouts[day] = name
            case Order() if plan.order:
                plan._fault(line, "two schedules", line.words)
            case Order(names=names):
                plan.order, plan.order_line = names, line
            case ReviewAfter(rounds=after):
                rounds = after
            case SwitchTo(name=name):
                switch = (line, name)
            case TellAfter(workouts=workouts):
                plan.tell_after = workouts
            case _:
                plan.unclear = plan.unclear or part.what in {"weekdays missing", "too many days"}
    if rounds:
        plan.review = Review(after_rounds=rounds, switch_to=switch[1] if switch else None)
    elif switch and not any(getattr(part, "what", "") == "review not in rounds" for _, part in headers):
        plan._fault(switch[0], "review not in rounds", switch[0].words)
    return plan


def _most_like(name: str, names: Sequence[str]) -> str:
    """Return the one of `names` that is most like `name`, or nothing."""
    if len(names) == 1:
        return names[0]
    found = process.extractOne(name, names, scorer=fuzz.ratio, score_cutoff=_LIKE_ENOUGH)
    return found[0] if found else ""
