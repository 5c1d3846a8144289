"""From the parts of lines to workouts: each phrase finds its exercise, each exercise what it still needs."""

import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from itertools import pairwise
from typing import assert_never

from domain.exercises import describe
from domain.expressions import Expression
from domain.names import name_key
from domain.programme import Ladder, Weekday, Workout
from domain.sheet.exercise_lines import Instead, Loose, Named, Part
from domain.sheet.exercise_names import ExerciseNames
from domain.sheet.lines import Line
from domain.sheet.phrases import (
    AddLoad,
    Amount,
    Counted,
    CueText,
    Effort,
    LadderRule,
    LoadFrom,
    LoweringOnly,
    Sets,
    Times,
    Trouble,
)
from domain.sheet.prescriptions import Draft, Finisher
from domain.sheet.result import Fault, FaultCode, Note

_RULE_WORDS = Expression(
    r"\d|\b(?:add|increase|load|over|below|start\b.*\blast|switch|if|unless|superset|review|failure|reserve|sets?|reps?|rpe|rir)\b",
    re.IGNORECASE,
)
"""Words that a mere cue does not hold: with them a line that no rule takes is a rule that was misread."""

_PAIR = Expression(r"(?P<stem>[A-Za-z])(?P<place>\d)|(?P<stem2>\d{1,2})(?P<place2>[A-Da-d])")


@dataclass(slots=True)
class Section:
    """One workout of the sheet in the making, its heading, and the days that the heading names."""

    name: str
    line: Line
    days: tuple[Weekday, ...] = ()
    drafts: list[Draft] = field(default_factory=list)
    misread: bool = False


@dataclass(slots=True)
class WorkoutsReader:
    """The workouts of one sheet, as far as it has been read."""

    sections: list[Section] = field(default_factory=list)
    faults: list[Fault] = field(default_factory=list)
    notes: list[Note] = field(default_factory=list)
    names: ExerciseNames = field(default_factory=ExerciseNames)

    def open(self, name: str, line: Line, days: tuple[Weekday, ...]) -> None:
        """Begin the workout `name`, headed by `line`."""
        twin = next((known for known in self.sections if name_key(known.name) == name_key(name)), None)
        if twin:
            self._fault(line, "duplicate workout", name, str(twin.line.number))
        self.sections.append(Section(name, line, days))

    def take(self, line: Line, parts: Sequence[Part]) -> None:
        """Put the parts of a line where they belong, in the workout begun last."""
        drafts = self.sections[-1].drafts
        if self._is_cue(line, parts, drafts):
            self._loose(line, drafts[-1], Loose(line.words))
            return
        for part in parts:
            if isinstance(part, Named):
                if not self._begin(line, part, drafts):
                    self.sections[-1].misread = True
                    return
            elif not drafts:
                self.sections[-1].misread = True
                self._fault(line, "nothing before", line.words)
                return
            else:
                self._add(line, drafts[-1], part)

    def finish(self) -> tuple[Workout, ...]:
        """Return the workouts; those at fault are missing from them."""
        known = frozenset(draft.exercise for section in self.sections for draft in section.drafts)
        finisher = Finisher(self.names, known)
        finished: list[Workout] = []
        for section in self.sections:
            prescriptions = [finisher.finish(draft) for draft in section.drafts]
            if not section.drafts and not section.misread:
                self._fault(section.line, "empty workout", section.name)
            elif section.drafts and all(prescriptions):
                finished.append(Workout(name=section.name, prescriptions=tuple(filter(None, prescriptions))))
        self.faults += [*self.names.faults, *finisher.faults]
        self.notes += [*self.names.notes, *finisher.notes]
        return tuple(finished)

    def _is_cue(self, line: Line, parts: Sequence[Part], drafts: Sequence[Draft]) -> bool:
        """Whether a line below an exercise is but words for the client: it has no reps and no known name."""
        if not drafts or not parts:
            return bool(drafts)
        first = parts[0]
        if not isinstance(first, Named) or first.together or self.names.find(first.name):
            return False
        if any(isinstance(part, Amount | Sets | Times | Trouble) for part in parts):
            return False
        return not line.bulleted or line.indent > drafts[-1].line.indent

    def _begin(self, line: Line, named: Named, drafts: list[Draft]) -> bool:
        """Begin an exercise, tied to the one before where the sheet says so; return whether one was begun."""
        if named.together and not drafts:
            self._fault(line, "superset alone", line.words)
            return False
        if named.together and not named.name:
            self._fault(line, "superset without exercise", line.words)
            return False
        if named.together:
            drafts[-1].straight_into_next = True
        elif drafts and _are_pair(drafts[-1].line.label, line.label):
            drafts[-1].straight_into_next = True
            self.notes.append(Note(line.number, "superset from numbering", line.label, drafts[-1].exercise))
        if pair := self.names.two_in_one(named.name):
            self._fault(line, "two exercises", named.name, pair)
            return False
        name = self.names.resolve(line, named.name)
        drafts.append(Draft(name or named.name, line, misread=name is None))
        return True

    def _add(self, line: Line, draft: Draft, part: Part) -> None:
        """Add a part of a line to the exercise it belongs to."""
        match part:
            case Amount() if draft.amount:
                self._fault(line, "two ranges", line.words)
            case Amount():
                draft.amount = part
            case Sets() if draft.sets:
                self._fault(line, "sets not one number", line.words)
            case Sets(count=count):
                draft.sets = count
            case Times():
                draft.times = part
            case Effort(stop_short=short, vague=vague):
                draft.stop_short = short
                if vague:
                    self.notes.append(Note(line.number, "one short", line.words))
            case LoweringOnly():
                draft.lowering_only = True
            case AddLoad():
                draft.add_load = (line, part)
            case LoadFrom():
                draft.load_from = (line, part)
            case LadderRule(below=below, up_to=up_to):
                draft.ladder = Ladder(below=below, up_to=up_to)
            case Counted(at_first=True) if describe(draft.exercise).counted == "added":
                pass
            case Counted(kind=kind):
                draft.counted = kind
            case CueText(text=text):
                draft.cues.append(text)
            case Instead():
                draft.alternatives.append((line, part))
            case Loose():
                self._loose(line, draft, part)
            case Trouble(what=what, part=words, hint=hint):
                draft.misread = True
                self._fault(line, what, words.strip(), hint)
            case Named():
                raise AssertionError("an exercise is begun, not added")
            case _:
                assert_never(part)

    def _loose(self, line: Line, draft: Draft, loose: Loose) -> None:
        """Keep words that no rule takes as a cue where they can be nothing else."""
        if not loose.bracketed and _RULE_WORDS.search(loose.text):
            self._fault(line, "not understood", loose.text)
            draft.misread = True
            return
        draft.cues.append(loose.text)
        if not loose.bracketed or _RULE_WORDS.search(loose.text):
            self.notes.append(Note(line.number, "kept as cue", loose.text))

    def _fault(self, line: Line, what: FaultCode, part: str = "", hint: str = "") -> None:
        self.faults.append(Fault(line.number, line.raw, what, part, hint))


def _are_pair(before: str, after: str) -> bool:
    """Whether two labels number a superset: A1 and A2, or 1a and 1b."""
    labels = [_PAIR.fullmatch(label) for label in (before, after)]
    pairs = [
        (found["stem"] or found["stem2"], found["place"] or found["place2"]) for found in labels if found
    ]
    return len(pairs) == 2 and all(
        one[0].casefold() == two[0].casefold() and ord(two[1].casefold()) - ord(one[1].casefold()) == 1
        for one, two in pairwise(pairs)
    )
