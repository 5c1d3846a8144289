"""From what was read of one exercise to its prescription, once the whole sheet is known."""

import re
from dataclasses import dataclass, field, replace

from domain.exercises import describe
from domain.expressions import Expression
from domain.programme import Alternative, Ladder, Prescription, Raise, Range, RelativeLoad
from domain.sets import LoadKind
from domain.sheet.conditions import UnknownPlace, read_condition
from domain.sheet.exercise_lines import Instead, Loose, Named, Part, split_name
from domain.sheet.exercise_names import ExerciseNames, most_like
from domain.sheet.lines import Line
from domain.sheet.phrases import (
    MOST_REPS,
    MOST_SETS,
    AddLoad,
    Amount,
    CueText,
    Effort,
    LoadFrom,
    Sets,
    Times,
    Trouble,
)
from domain.sheet.result import Fault, FaultCode, Note

_OF_LOAD = Expression(r"(?:'s?)?(?:\s+(?:load|weight))?$", re.IGNORECASE)
"""What may follow a name where its load is meant: "last Goblet squat's load"."""


@dataclass(slots=True)
class Draft:
    """A prescription in the making. `amount` is None until the sheet says it."""

    exercise: str
    line: Line
    amount: Amount | None = None
    misread: bool = False
    sets: int | None = None
    times: Times | None = None
    lowering_only: bool = False
    stop_short: int | None = None
    straight_into_next: bool = False
    add_load: tuple[Line, AddLoad] | None = None
    load_from: tuple[Line, LoadFrom] | None = None
    ladder: Ladder | None = None
    counted: LoadKind | None = None
    alternatives: list[tuple[Line, Instead]] = field(default_factory=list)
    cues: list[str] = field(default_factory=list)


@dataclass(slots=True)
class Finisher:
    """What drafts are held against: the names of the sheet, and the exercises done somewhere in it."""

    names: ExerciseNames
    known: frozenset[str]
    faults: list[Fault] = field(default_factory=list)
    notes: list[Note] = field(default_factory=list)

    def finish(self, draft: Draft) -> Prescription | None:
        """Return the prescription of a draft; None where something of it is at fault."""
        before = len(self.faults)
        amount, sets = draft.amount, draft.sets
        if draft.times and amount:
            sets = sets or draft.times.count
        elif draft.times:
            amount = Amount(low=draft.times.count, high=draft.times.count, of=None)
        if sets is not None and sets > MOST_SETS:
            self._fault(draft.line, "sets out of range", str(sets), str(MOST_SETS))
        if amount and amount.of is None and draft.lowering_only:
            amount = replace(amount, of="reps")
        reps = self._range(draft.line, amount, draft.exercise)
        if reps is None:
            if not draft.misread and amount is None:
                self._fault(draft.line, "no range", draft.exercise)
            return None
        alternatives = [self._alternative(line, instead, reps, draft) for line, instead in draft.alternatives]
        add_load = self._raise(*draft.add_load, reps) if draft.add_load else None
        load_from = self._relative(draft)
        if len(self.faults) > before or draft.misread:
            return None
        return Prescription(
            exercise=draft.exercise,
            counted=draft.counted or describe(draft.exercise).counted,
            range=reps,
            sets=sets or 1,
            lowering_only=draft.lowering_only,
            stop_short=draft.stop_short,
            straight_into_next=draft.straight_into_next,
            add_load=add_load,
            load_from=load_from,
            ladder=draft.ladder,
            alternatives=tuple(filter(None, alternatives)),
            cues=tuple(draft.cues),
        )

    def _range(self, line: Line, amount: Amount | None, exercise: str) -> Range | None:
        """Return the range of an exercise: seconds where they are said or the exercise is a static hold."""
        if amount is None:
            return None
        of = amount.of or ("seconds" if describe(exercise).is_hold else "reps")
        if of == "reps" and amount.high > MOST_REPS:
            self._fault(line, "too many reps", str(amount.high), str(MOST_REPS))
            return None
        return Range(low=amount.low, high=amount.high, of=of)

    def _alternative(self, line: Line, instead: Instead, usual: Range, draft: Draft) -> Alternative | None:
        """Return the alternative; one without a range has that of the exercise it stands in for."""
        if not instead.condition:
            self._fault(line, "alternative without reason", instead.exercise)
            return None
        condition = read_condition(instead.condition)
        if condition is None:
            self._fault(line, "not understood", instead.condition)
            return None
        if isinstance(condition, UnknownPlace):
            self._fault(line, "unknown joint", condition.place)
            return None
        named, *rest = split_name(instead.exercise)
        assert isinstance(named, Named)  # noqa: S101  # for the type checker: a name always comes first
        if not named.name:
            self._fault(line, "alternative without exercise", instead.condition)
            return None
        resolved = self.names.resolve(line, named.name)
        amount: Amount | None = None
        for part in rest:
            match part:
                case Amount() if amount is None:
                    amount = part
                case Times(count=count) if amount is None:
                    amount = Amount(low=count, high=count, of=None)
                case Trouble(what=what, part=words, hint=hint):
                    self._fault(line, what, words.strip(), hint)
                    return None
                case Sets(count=count) if count == draft.sets:
                    pass
                case Effort(stop_short=short) if short == draft.stop_short:
                    pass
                case _:
                    self.notes.append(Note(line.number, "left out", _words(part, instead.exercise)))
        if resolved is None:
            return None
        reps = self._range(line, amount, resolved)
        if amount is None and describe(resolved).is_hold == (usual.of == "seconds"):
            reps = usual
        if reps is None:
            if amount is None:
                self._fault(line, "no range", resolved)
            return None
        why, without = condition
        return Alternative(why=why, without=without, exercise=resolved, range=reps)

    def _raise(self, line: Line, rule: AddLoad, reps: Range) -> Raise | None:
        over = reps.high - 1 if rule.over is None else rule.over
        if over < 1:
            self._fault(line, "zero", line.words)
            return None
        return Raise(over=over, by=rule.by)

    def _relative(self, draft: Draft) -> RelativeLoad | None:
        """Return the load reckoned from another exercise, which must be somewhere in the sheet."""
        if draft.load_from is None:
            return None
        line, rule = draft.load_from
        name = self.names.find(rule.name) or self.names.find(_OF_LOAD.sub("", rule.name))
        if name is None or name not in self.known:
            like = most_like(rule.name)
            self._fault(line, "reference missing", rule.name, like if like in self.known else "")
            return None
        if name == draft.exercise:
            self._fault(line, "reference to itself", rule.name)
            return None
        return RelativeLoad(exercise=name, difference=rule.difference, side=rule.side)

    def _fault(self, line: Line, what: FaultCode, part: str = "", hint: str = "") -> None:
        self.faults.append(Fault(line.number, line.raw, what, part, hint))


def _words(part: Part, whole: str) -> str:
    """Return what a part of an alternative said, as far as it can be told."""
    match part:
        case Loose(text=text) | CueText(text=text):
            return text
        case Sets(count=count):
            return f"{count} sets"
        case _:
            return whole
