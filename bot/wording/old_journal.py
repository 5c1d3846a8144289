"""Words for an old journal that a coach sends: what is understood of it, asked, taken, and taken out."""

from collections.abc import Iterable
from typing import Any

from bot.markup import bold, escape, italic
from bot.wording.notice_forms import Facts, Words, filled
from bot.wording.reader import Reader, bar, listed, quoted
from domain.actions import BringIn
from domain.old_journal import MOST_SETS, FaultKind, HeadFault, RowFault
from domain.old_journal.names import Meaning
from domain.topics import Topic

COLUMNS = ("row", "taken", "exercise", "date", "set", "why")
TAKEN_WORDS = ""
THERE_WORDS = "stands in the journal already"
LEFT_OUT_WORDS = "left out, as you said"

_FAULTS: dict[FaultKind, str] = {
    "no date": "no date",
    "date": "not a date that I know; 2026-03-12 is clear",
    "which date": "day first, or month first?",
    "future": "a day still to come",
    "no exercise": "no exercise",
    "long name": "a name too long for an exercise",
    "load": "not a load that I know; 82.5, bw, +10 are clear",
    "load kind": "total, each, added, assist or body is what I know",
    "unit": "kg or lb is what I know",
    "reps": "not a number of reps",
    "seconds": "not a time; 60, 60 s or 1:00 are clear",
    "both": "reps and seconds: a set has one of them",
    "nothing done": "no reps and no seconds",
    "held": "an exercise that is held, without seconds",
    "lowered hold": "a hold of lowering-only reps",
    "reserve": "not a number of reps in reserve",
    "yes or no": "yes or no is what I know",
    "beyond reason": "more than anybody lifts, repeats or holds",
    "too many cells": "more cells than columns; a comma within a number?",
    "other client": "of another client",
    "moment": "not a moment with its offset from UTC",
    "aside": "set aside in a way that cannot be",
    "matter": "a matter for you that is not as I write it",
}
_HEADS: dict[HeadFault, str] = {
    "no columns": "The first line is to name the columns, a date and an exercise among them, as in\n"
    "date,exercise,load,unit,reps\nIt says: {shown}",
    "too many": f"It has {{shown}} sets; I take {MOST_SETS:,} at once. Please send it in parts.",
    "too many names": "It names {shown} exercises; that is more than I can ask about. Is the right column "
    "called «exercise»?",
    "not a journal": "It is no journal as I send it (JSON). Where I stopped: {shown}",
    "newer": "It is of a later version than I know ({shown}).",
    "nobody": "No row of it is of {client}; it has rows of {shown}.",
}
_LABELS = {
    "month first": "The month comes first",
    "day first": "The day comes first",
    "means": "{of}",
    "keep": "Keep «{of}»",
    "keep all": "Keep all {of} as they are",
    "leave out": "Leave it out",
    "take": "Take it in",
    "leave": "Leave it",
}


def journal_label(action: BringIn) -> str:
    """Return the words on a button that goes on with a journal."""
    return _LABELS[action.says].format(of=action.of)


def fault_reason(fault: RowFault) -> str:
    """Say why a row is not taken."""
    return _FAULTS[fault.what]


def counted(many: int, what: str) -> str:
    """Say how many there are of something."""
    return f"{many:,} {what}{'' if many == 1 else 's'}"


def looked_words(facts: Facts, _reader: Reader, *, asks: bool = True) -> str:
    """Say what would be taken of a journal, and what is not understood; where it `asks`, ask to take it."""
    client = bold(str(facts["client"]))
    lines = [f"I have read {quoted(str(facts['name']))} for {client}; nothing is taken yet."] if asks else []
    sets = int(facts["sets"])
    if facts["takes"]:
        span = (
            f", {facts['first']}"
            if facts["first"] == facts["last"]
            else f", {facts['first']} to {facts['last']}"
        )
        exercises = f" of {counted(int(facts['exercises']), 'exercise')}"
        lines.append(
            f"I would take {bold(counted(sets, 'set'))}{exercises} in "
            f"{counted(int(facts['workouts']), 'workout')}{span}."
            if facts["workouts"]
            else "Of workouts there is nothing new in it."
        )
        lines += _beside(facts)
    else:
        lines.append("There is nothing in it to take.")
    lines += _details(facts)
    lines += _faults(facts)
    if facts["takes"] and asks:
        lines.append(f"Shall I take it in? It can be undone later, as a whole. {client} is told nothing.")
    return "\n".join(lines)


def _beside(facts: dict[str, Any]) -> list[str]:
    """Say what was set aside and brought to the coach, and what of it would still be open."""
    lines = []
    if facts.get("holds"):
        still = [escape(str(each)) for each in facts["still_aside"]]
        now = f"{listed(still)} would be aside until you put it back" if still else "none of them now"
        lines.append(f"Set aside {_times(int(facts['holds']))}: {now}.")
    if facts.get("matter_count"):
        still_open = int(facts["still_open"])
        now = (
            f"{still_open} still open, and would wait under «who needs me?»" if still_open else "all settled"
        )
        lines.append(f"{counted(int(facts['matter_count']), 'matter')} brought to the coach: {now}.")
    return lines


def _times(many: int) -> str:
    return "once" if many == 1 else f"{many:,} times"


def _with_beside(facts: dict[str, Any]) -> str:
    """Name what came with the sets."""
    aside, matters = int(facts.get("with_holds", 0)), int(facts.get("with_matters", 0))
    several = [counted(aside, "hold")] if aside else []
    several += [counted(matters, "matter")] if matters else []
    return f", with {listed(several)}" if several else ""


def _details(facts: dict[str, Any]) -> list[str]:
    lines = []
    if facts["there"]:
        lines.append(f"{counted(int(facts['there']), 'set')} stand in the journal already.")
    if facts["left_out"]:
        lines.append(f"{counted(int(facts['left_out']), 'set')} left out, as you said.")
    if facts["unit"]:
        lines.append(f"Loads without a unit: taken as {facts['unit']}.")
    if facts["renamed"]:
        pairs = [f"{quoted(before)} as {escape(after)}" for before, after in facts["renamed"]]
        lines.append(f"Read {', '.join(pairs)}{_more(facts['renamed_count'], len(pairs))}.")
    if facts["new"]:
        names = [quoted(each) for each in facts["new"]]
        lines.append(
            f"New to me, kept as they are: {', '.join(names)}{_more(facts['new_count'], len(names))}."
        )
    if facts["passed_over"]:
        lines.append(f"Columns passed over: {listed([quoted(each) for each in facts['passed_over']])}.")
    return lines


def _faults(facts: dict[str, Any]) -> list[str]:
    many = int(facts["fault_count"])
    if not many:
        return ["Every row is understood."] if facts["takes"] else []
    lines = [f"{bold(counted(many, 'row'))} not taken:"]
    for fault in facts["faults"]:
        shown = f" {quoted(fault['shown'])}" if fault["shown"] else ""
        lines.append(f"row {fault['row']}:{shown} {_FAULTS[fault['what']]}")
    if many > len(facts["faults"]):
        kinds = sorted(facts["fault_kinds"].items(), key=lambda each: -each[1])
        told = "; ".join(f"{count:,} × {_FAULTS[kind].split(';')[0]}" for kind, count in kinds)
        lines.append(italic(f"… and {many - len(facts['faults']):,} more, in the file. In all: {told}"))
    return lines


def _more(many: int, shown: int) -> str:
    return f" and {many - shown:,} more" if many > shown else ""


def unreadable_words(facts: Facts, _reader: Reader) -> str:
    """Say why a file as a whole is not taken."""
    fault: HeadFault = facts["fault"]
    shown = escape(str(facts["shown"] or "nothing"))
    why = _HEADS[fault].format(shown=shown, client=escape(str(facts["client"])))
    return f"I cannot take {quoted(str(facts['name']))}. {why}"


def name_words(facts: Facts, _reader: Reader) -> str:
    """Ask what a name means."""
    left = int(facts["left"])
    more = f" {counted(left, 'more name')} to ask about." if left else ""
    return (
        f"Which exercise is {quoted(str(facts['shown']))} ({counted(int(facts['many']), 'set')}) in "
        f"{quoted(str(facts['name']))}?{more}"
    )


def names_words(asked: Iterable[Meaning]) -> tuple[str, ...]:
    """Say to an operator which names are not known, a line each, and what can be done about it."""
    lines = [
        f"«{each.name}» ({counted(each.many, 'set')})"
        + (f": {listed(each.near, 'or')}?" if each.near else "")
        for each in asked
    ]
    return ("exercises that are not known; rename them in the file, or keep them with --keep-names:", *lines)


def days_words(facts: Facts, _reader: Reader) -> str:
    """Ask how days are written."""
    return (
        f"In {quoted(str(facts['name']))}, which comes first in {quoted(str(facts['shown']))}: the day or "
        "the month? No row of it shows that."
    )


def coming_words(facts: Facts, _reader: Reader) -> str:
    """Say that it takes a while, and how far it has come."""
    sets, taken = int(facts["sets"]), int(facts.get("taken", 0))
    for_whom = f"Taking in {counted(sets, 'set')} for {bold(str(facts['client']))}."
    return f"{for_whom} This message shows how far it is.\n{bar(taken, sets)}"


def taken_words(facts: Facts, _reader: Reader) -> str:
    """Say that a journal is taken."""
    return (
        f"Done: {counted(int(facts['sets']), 'set')} of {quoted(str(facts['name']))}"
        f"{_with_beside(facts)} stand in "
        f"{bold(str(facts['client']))}'s journal. The next plan compares with them."
    )


def taken_out_words(facts: Facts, _reader: Reader) -> str:
    """Say that a journal is taken out again."""
    return (
        f"Undone: the {counted(int(facts['sets']), 'set')} of {quoted(str(facts['name']))}"
        f"{_with_beside(facts)} are out of "
        f"{bold(str(facts['client']))}'s journal again."
    )


def journals_words(facts: Facts, _reader: Reader) -> str:
    """Say how many of several journals have been sent."""
    sent, total = int(facts["sent"]), int(facts["total"])
    if sent == total:
        return f"All {total} journals are sent, a file each."
    return f"Journals of {total} clients, a file each: {sent} sent so far.\n{bar(sent, total)}"


JOURNAL_WORDS: dict[Topic, Words] = {
    "journal gone": filled("«{name}» is no longer here. Please send it once more."),
    "journal unreadable": unreadable_words,
    "journal days": days_words,
    "journal name": name_words,
    "journal looked at": looked_words,
    "journals coming": journals_words,
    "journal begun": coming_words,
    "journal coming": coming_words,
    "journal taken": taken_words,
    "journal taken out": taken_out_words,
    "journal left": "Left; nothing was taken.",
    "journal of nobody": filled(
        "«{name}» looks like a journal, but you have no client yet for whom I could take it."
    ),
}
