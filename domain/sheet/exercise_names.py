"""The proper name of an exercise: the catalogue's where it has one, else the coach's own as first written."""

import re
from dataclasses import dataclass, field

from rapidfuzz import fuzz, process

from domain.exercises import catalogue, lookup
from domain.expressions import Expression
from domain.names import name_key
from domain.sheet.header import read_header
from domain.sheet.lines import Line
from domain.sheet.result import Fault, Note

LONGEST_NAME = 60

_LIKE_ENOUGH = 82
"""Of 100: how like a name of the catalogue a coach's own must be for the catalogue's to be mentioned."""


_RULE = Expression(
    r"(?:if|when|where|without|with|no|for|or|bad|sore|over|above|below|under|start|add|straight\s+into|superset|cue|"
    r"remember|note|review|tell|train|switch)\b(?!-)|.*[,;:|()\"]|.*\d\s*-\s*\d",
    re.IGNORECASE,
)
"""How a rule begins that was misread for a name, and marks and ranges that no name has."""


def _is_rule(written: str) -> bool:
    """Whether words that stand where a name should are a rule, or belong beside the workouts."""
    return _RULE.match(written) is not None or bool(read_header(written, frozenset()))


@dataclass(slots=True)
class ExerciseNames:
    """The names of one sheet, so that a coach's own exercise is spelled the same everywhere."""

    own: dict[str, str] = field(default_factory=dict)
    notes: list[Note] = field(default_factory=list)
    faults: list[Fault] = field(default_factory=list)

    def resolve(self, line: Line, written: str) -> str | None:
        """Return the proper name; None where `written` is no name at all."""
        if found := self.find(written):
            self._note_other_name(line, written, found)
            return found
        if len(written) > LONGEST_NAME or not re.search(r"[^\W\d_]{2}", written) or _is_rule(written):
            self.faults.append(Fault(line.number, line.raw, "no exercise", written))
            return None
        name = written[:1].upper() + written[1:]
        self.own[name_key(name)] = name
        self.notes.append(Note(line.number, "own exercise", written, most_like(written)))
        return name

    def two_in_one(self, written: str) -> str:
        """Return the second exercise where `written` names two known ones; else nothing."""
        if lookup(written):
            return ""
        both = [lookup(half) for half in re.split(r"\s*\+\s*|\s+(?:and|&|/)\s+", written)]
        return both[1].name if len(both) == 2 and both[0] and both[1] else ""

    def find(self, written: str) -> str | None:
        """Return the proper name where the catalogue knows it, or the sheet has named it before."""
        known = lookup(written)
        return known.name if known else self.own.get(name_key(written))

    def _note_other_name(self, line: Line, written: str, found: str) -> None:
        known = lookup(written)
        if known and name_key(written) not in {name_key(known.name), name_key(known.plural)}:
            self.notes.append(Note(line.number, "other name", written, found))


def most_like(written: str) -> str:
    """Return the catalogue's exercise whose name is so like `written` that a slip is likely; else nothing."""
    names = {
        name.casefold(): known.name
        for known in catalogue()
        for name in (known.name, *known.names)
        if len(name) > 4
    }
    found = process.extractOne(
        written.casefold(), names.keys(), scorer=fuzz.ratio, score_cutoff=_LIKE_ENOUGH
    ) or process.extractOne(
        written.casefold(), names.keys(), scorer=fuzz.token_sort_ratio, score_cutoff=_LIKE_ENOUGH
    )
    return names[found[0]] if found else ""
