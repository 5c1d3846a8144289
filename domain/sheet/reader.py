"""From lines to a programme: which line is the name, which says when to train, which heads a workout.

Two walks: the first takes the lines beside the workouts, since the rotation tells which lines are headings
and may stand at the end; the second takes the workouts. Neither stops at a fault.
"""

import re
from collections.abc import Sequence

from domain.exercises import lookup
from domain.expressions import Expression
from domain.names import name_key
from domain.programme import Programme
from domain.sheet.exercise_lines import Named, Part, read_line
from domain.sheet.header import DayWorkout, Every, HeaderPart, OnDays, read_header, weekday_heading
from domain.sheet.lines import MAX_LINE, Line, split_lines
from domain.sheet.phrases import Amount, Times, Trouble
from domain.sheet.result import Fault, FaultCode, Note, SheetResult
from domain.sheet.schedule import SchedulePlan, plan_schedule
from domain.sheet.workouts import WorkoutsReader
from domain.sheet.writer import write_sheet

_TITLE = Expression(
    r"(?:(?:training\s+)?programme|program|plan|name|title)(?:\s+name)?\s*:\s*(?=\S)", re.IGNORECASE
)
_RANGE_FAULTS = {"range upside down", "too many reps", "too many seconds", "zero"}
_HEADING_WORDS = Expression(r"(?:workout|session|day|training|block)s?\s+(?:\w{1,5})$", re.IGNORECASE)
_AFFIXES = Expression(
    r"^(?:workout|session|day|training)\s*(?:\d+\s*)?[:.-]?\s+|\s+(?:workout|session|day)$", re.IGNORECASE
)


def read_sheet(text: str) -> SheetResult:
    """Return the programme that a sheet means, or everything about it that cannot be taken."""
    lines = split_lines(text)
    if isinstance(lines, Fault):
        return SheetResult(programme=None, faults=(lines,))
    too_long = tuple(
        Fault(line.number, line.raw, "line too long", hint=str(MAX_LINE))
        for line in lines
        if len(line.words) > MAX_LINE
    )
    if too_long:
        return SheetResult(programme=None, faults=too_long)
    result = _Reader(lines).read()
    if result.programme is None:
        return result
    differing = _not_said_back(result.programme)
    if differing is None:
        return result
    return SheetResult(programme=None, faults=(Fault(None, "", "not said back", differing),))


def _not_said_back(programme: Programme) -> str | None:
    """Return the first name that would be read otherwise were the programme written out; None where none is.

    Whatever is stored can so be shown to the coach as a sheet, and sent back unchanged.
    """
    lines = split_lines(write_sheet(programme))
    again = None if isinstance(lines, Fault) else _Reader(lines).read().programme
    if again == programme:
        return None
    workouts = again.workouts if again else ()
    known = {(workout.name, line) for workout in workouts for line in workout.prescriptions}
    changed = (
        line.exercise
        for workout in programme.workouts
        for line in workout.prescriptions
        if known and (workout.name, line) not in known
    )
    return next(changed, programme.name)


class _Reader:
    """One reading of one sheet: what has been found so far."""

    def __init__(self, lines: tuple[Line, ...]) -> None:
        self.lines = lines
        self.faults: list[Fault] = []
        self.notes: list[Note] = []
        keys = (name_key(name) for line in lines[1:] for name in (line.heading, _bare(line.heading)))
        headings = frozenset(key for key in keys if key)
        self.places = {line.number: place for place, line in enumerate(lines)}
        self.headers = [read_header(line.words, headings) for line in lines]
        self.parts = [read_line(line.words) for line in lines]

    def read(self) -> SheetResult:
        """Return what the sheet comes to."""
        name, body = self._title()
        headers, sections = self._headers(body)
        plan = plan_schedule(headers)
        read = self._workouts(sections, plan)
        schedule = plan.settle(read.sections)
        workouts = read.finish()
        if not read.sections and not self.faults:
            self._fault(None, "no workouts")
        faults = {*self.faults, *plan.faults, *read.faults}
        if faults or schedule is None:
            return SheetResult(programme=None, faults=tuple(sorted(faults, key=_by_line)))
        programme = Programme(
            name=name, schedule=schedule, workouts=workouts, review=plan.review, tell_after=plan.tell_after
        )
        notes = (*self.notes, *plan.notes, *read.notes)
        return SheetResult(programme, notes=tuple(sorted(notes, key=lambda note: note.line_number)))

    def _title(self) -> tuple[str, tuple[Line, ...]]:
        """Return the name of the programme, and the other lines."""
        first = self.lines[0]
        if prefix := _TITLE.match(first.words):
            return first.words[prefix.end() :], self.lines[1:]
        parts = self.parts[0]
        known = any(isinstance(part, Named) and lookup(part.name) for part in parts)
        if (_with_amount(parts) and known) or self._is_needed_as_heading() or self._is_needed_as_header():
            self._fault(first, "no name")
            return "", self.lines
        return first.words, self.lines[1:]

    def _is_needed_as_header(self) -> bool:
        """Whether the first line tells of days or reviews; a name may sound so ("Every day stronger")."""
        kinds = [{type(part) for part in parts} for parts in self.headers]
        days = {Every, OnDays, DayWorkout}
        return bool(kinds[0]) and not (kinds[0] & days and any(other & days for other in kinds[1:]))

    def _is_needed_as_heading(self) -> bool:
        """Whether the first line heads a workout of the rotation that no other line heads."""
        first, *others = (name_key(line.heading) for line in self.lines)
        if first in others or not self._looks_like_exercise(1):
            return False
        every = [(line, part) for line, parts in zip(self.lines, self.headers, strict=True) for part in parts]
        return plan_schedule(every).finds(first) is not None

    def _headers(self, body: Sequence[Line]) -> tuple[list[tuple[Line, HeaderPart]], list[Line]]:
        """Return the parts beside the workouts with their lines, and the lines of the workouts."""
        headers: list[tuple[Line, HeaderPart]] = []
        rest: list[Line] = []
        for line in body:
            place = self.places[line.number]
            parts = self.headers[place]
            if not parts or (weekday_heading(line.heading) and self._looks_like_exercise(place + 1)):
                rest.append(line)
                continue
            headers.extend((line, part) for part in parts)
            for part in parts:
                if isinstance(part, Trouble):
                    self._fault(line, part.what, part.part, part.hint)
        return headers, rest

    def _workouts(self, body: Sequence[Line], plan: SchedulePlan) -> WorkoutsReader:
        """Return the workouts in the order of the sheet, as far as they go."""
        read = WorkoutsReader()
        for line in body:
            if heading := self._heading(line, plan):
                days = weekday_heading(line.heading)
                if not _can_be_written(heading):
                    self._fault(line, "no workout name", heading)
                read.open(heading, line, days[0] if days else ())
                continue
            parts = self.parts[self.places[line.number]]
            if read.sections:
                read.take(line, parts)
            elif _with_amount(parts):
                if all(fault.what != "exercise before workout" for fault in self.faults):
                    self._fault(line, "exercise before workout", line.words)
            elif re.match(r"(?:notes?|nb|comments?)\b", line.words, re.IGNORECASE):
                self.notes.append(Note(line.number, "left out", line.words))
            else:
                self._fault(line, "not understood", line.words)
        return read

    def _heading(self, line: Line, plan: SchedulePlan) -> str | None:
        """Return the name of the workout that this line heads, if it heads one."""
        words = line.heading
        if days := weekday_heading(words):
            words = days[1]
        elif line.bulleted and not plan.finds(words):
            return None
        if name := plan.finds(words) or plan.finds(_bare(words)):
            return name
        place = self.places[line.number]
        parts = self.parts[place]
        named = all(isinstance(part, Named) and not part.together for part in parts[:1])
        if (_with_amount(parts) and not _HEADING_WORDS.match(words)) or not named or '"' in words:
            return None
        stands_out = line.marked or line.words.endswith(":") or _HEADING_WORDS.match(words) is not None
        stands_out = stands_out or (len(parts) <= 1 and line.indent == 0)
        if stands_out and not line.bulleted and self._looks_like_exercise(place + 1):
            return words
        return words if days else None

    def _looks_like_exercise(self, place: int) -> bool:
        """Whether the line at `place` begins an exercise: a name with reps, or with reps on the next line."""
        if place >= len(self.lines) or self.headers[place]:
            return False
        parts = self.parts[place]
        if not parts or not isinstance(parts[0], Named):
            return False
        if _with_amount(parts) or (self.lines[place].bulleted and not self.lines[place].marked):
            return True
        if lookup(parts[0].name) is None or place + 1 >= len(self.lines):
            return False
        following = self.parts[place + 1]
        return _with_amount(following) and not any(isinstance(part, Named) for part in following)

    def _fault(self, line: Line | None, what: FaultCode, part: str = "", hint: str = "") -> None:
        self.faults.append(Fault(line.number if line else None, line.raw if line else "", what, part, hint))


def _with_amount(parts: Sequence[Part]) -> bool:
    """Whether a line says how many reps, or how long; a range that is at fault counts."""
    return any(
        isinstance(part, Amount | Times) or (isinstance(part, Trouble) and part.what in _RANGE_FAULTS)
        for part in parts
    )


def _can_be_written(name: str) -> bool:
    """Whether a workout's name stays one where it stands in a list, or alone on a line."""
    if weekday_heading(name):
        return True
    return not re.search(r"[,;:.|]|->", name) and not read_header(name, frozenset())


def _bare(name: str) -> str:
    """Return a heading without the words that only say that it is one ("Workout A", "Pull day")."""
    return _AFFIXES.sub("", name).strip(" :=-_*#.") or name


def _by_line(fault: Fault) -> tuple[int, str]:
    return (fault.line_number or 0, fault.what)
