"""Words for what a sheet cannot be taken for, and for what was taken in a way that the coach should see."""

from collections.abc import Mapping
from types import MappingProxyType
from typing import Any

from bot.markup import escape
from domain.programme import JOINTS
from domain.sheet import Fault, FaultCode, Note, NoteCode
from domain.values import value_of

_JOINTS = f"{', '.join(JOINTS[:-1])} or {JOINTS[-1]}"

FAULTS: Mapping[FaultCode, tuple[str, str]] = MappingProxyType(
    {
        "empty": ("there is nothing to read in it", "Write a name, the days, and the workouts."),
        "too large": (
            "it has {part} characters, far more than a sheet has",
            "Send one programme alone, at most {hint} characters.",
        ),
        "too many lines": (
            "it has {part} lines, far more than a sheet has",
            "Send one programme alone, at most {hint} lines.",
        ),
        "line too long": ("this line is far longer than any rule", "Keep a line under {hint} characters."),
        "not text": ("it is not plain text", "Save it as plain text (.txt), or paste it into the chat."),
        "no name": ("the programme has no name", "Begin the sheet with its name, on a line of its own."),
        "no schedule": (
            "it does not say when to train",
            "Write «Train every 3 days in turn: Pull, Push», or «Train on Monday and Thursday in turn: …».",
        ),
        "no workouts": (
            "there is no workout in it",
            "Write the name of each workout on a line of its own, and its exercises below.",
        ),
        "two schedules": (
            "the days or the order are said a second time, and differently",
            "Say them once: every so many days, or fixed weekdays.",
        ),
        "weekdays missing": (
            "it does not say on which days",
            "Write «Train every 3 days», or name the weekdays: «Train on Monday and Thursday».",
        ),
        "too many days": ("that is too many days, or none", "Write a number of days from 1 to {hint}."),
        "workout without section": (
            "the workout «{part}» is in the rotation, but nowhere below",
            "Add a line «{part}» with its exercises below it{or_hint}.",
        ),
        "section not in rotation": (
            "the workout «{part}» is not in the rotation",
            "Add it to the line that says «in turn»{or_hint}, or take it out.",
        ),
        "duplicate workout": (
            "the workout «{part}» was there before, in line {hint}",
            "Give this one another name, or put both together.",
        ),
        "no workout name": (
            "«{part}» cannot be the name of a workout",
            "Give it a short name, without commas, colons or words that say when to train.",
        ),
        "empty workout": ("the workout «{part}» has no exercises", "Write its exercises below, one a line."),
        "review not in rounds": (
            "a review is counted in rounds of the rotation",
            "Write «Review after 4 rounds. If strength has not risen, switch to …».",
        ),
        "too few workouts": (
            "one workout without a beat is no stall yet",
            "Write «Tell me after 3 workouts without a beat», with a number from 2 to 100.",
        ),
        "not understood": (
            "I do not understand «{part}»",
            "Say it another way, or write «cue: …» before words that are for the client.",
        ),
        "exercise before workout": (
            "this exercise stands above the first workout",
            "Put the name of its workout on a line above it.",
        ),
        "no exercise": ("«{part}» is no name of an exercise", "Write its name first, then the reps."),
        "two exercises": (
            "«{part}» names two exercises at once",
            "Give each its own line and reps; in a superset the second begins «straight into {hint}».",
        ),
        "no range": (
            "it does not say how many reps, or how long",
            "Write «{part}, 8-10 reps», or «{part}, hold 30-60 seconds».",
        ),
        "two ranges": ("it says how many reps twice", "Give one range, such as «3 sets of 6-10 reps»."),
        "range upside down": ("the range «{part}» is upside down", "Write «{hint}»."),
        "too many reps": ("«{part}» is more than anyone is asked to do", "Write at most {hint} reps."),
        "too many seconds": (
            "«{part}» is longer than anyone is asked to hold",
            "Write at most {hint} seconds.",
        ),
        "zero": ("«{part}» leaves nothing to do", "Write a number of at least 1."),
        "sets out of range": ("«{part}» is no number of sets", "Write from 1 to {hint} sets."),
        "sets not one number": (
            "the number of sets is not clear",
            "Give one number, such as «3 sets of 8-10 reps».",
        ),
        "too many short": ("«{part}» is far from failure", "Stop at most {hint} reps short of failure."),
        "nothing before": (
            "there is no exercise above that this could belong to",
            "Write the exercise first, then what goes with it.",
        ),
        "superset alone": (
            "a superset needs an exercise above it",
            "Write the first exercise on the line before, then «straight into …».",
        ),
        "superset without exercise": (
            "it does not say straight into what",
            "Write «straight into Lat pulldown, 5-7 reps».",
        ),
        "load without unit": ("«{part}» has no unit", "Write «{hint} kg» or «{hint} lb»."),
        "unknown joint": ("I know no joint «{part}»", f"Name one of these: {_JOINTS}."),
        "alternative without reason": (
            "it does not say when to do «{part}» instead",
            "Write «no dumbbells: {part}» or «if the shoulder is a problem: {part}».",
        ),
        "alternative without exercise": (
            "it does not say what to do instead",
            "Write the exercise after the colon: «no dumbbells: Cable curl».",
        ),
        "reference missing": (
            "the exercise «{part}» is nowhere in this sheet",
            "Name an exercise that the client does in this programme{or_hint}.",
        ),
        "not said back": (
            "I understand «{part}» in a way that I could not say back to you the same",
            "Say that line, or its workout's name, in plainer words.",
        ),
        "reference to itself": (
            "an exercise cannot start from its own last load",
            "Name another exercise of this programme.",
        ),
    }
)
"""By fault, what is wrong, and what would be right. `or_hint` is the likeliest name, where there is one."""

NOTES: Mapping[NoteCode, str] = MappingProxyType(
    {
        "own exercise": "«{part}» is taken as your own exercise{like}.",
        "other name": "«{part}» is taken as {taken_as}.",
        "kept as cue": "«{part}» is kept as a cue for the client.",
        "left out": "«{part}» is left out.",
        "order from sections": "The workouts come in the order of the sheet: {taken_as}.",
        "superset from numbering": "The numbering ties this one to {taken_as}, without rest between.",
        "one short": "«Short of failure» is taken as one rep short.",
    }
)


def fault_words(facts: Mapping[str, Any]) -> str:
    """Say one fault in one line: where, what is wrong, and what would be right."""
    fault = value_of(Fault, facts)
    wrong, right = fault_parts(fault)
    where = (
        f"Line {fault.line_number} («{escape(_short(fault.line.strip()))}»): " if fault.line_number else ""
    )
    return f"{where}{wrong if where else wrong[:1].upper() + wrong[1:]}. {right}"


def fault_parts(fault: Fault) -> tuple[str, str]:
    """Return what is wrong and what would be right, as markup, without the place."""
    or_hint = f" (or did you mean «{escape(fault.hint)}»?)" if fault.hint else ""
    return _filled(FAULTS[fault.what], part=_short(fault.part), hint=fault.hint, or_hint=or_hint)


def note_words(facts: Mapping[str, Any]) -> str:
    """Say one note in one line, with the number of its line."""
    note = value_of(Note, facts)
    like = f"; did you mean {escape(note.taken_as)}?" if note.taken_as else ""
    words = NOTES[note.what].format(part=escape(_short(note.part)), taken_as=escape(note.taken_as), like=like)
    return f"Line {note.line_number}: {words}".replace("?.", "?")


def _filled(templates: tuple[str, str], *, part: str, hint: str, or_hint: str) -> tuple[str, str]:
    wrong, right = (
        template.format(part=escape(part), hint=escape(hint), or_hint=or_hint) for template in templates
    )
    return wrong, right


def _short(words: str, most: int = 60) -> str:
    """Return the beginning of `words` where they are long."""
    return words if len(words) <= most else f"{words[: most - 1].rstrip()}…"
