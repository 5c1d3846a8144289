"""Words for the `read` command: a reading shown to a person, with the words of the message it came from."""

from itertools import chain, repeat
from typing import Literal, NamedTuple, assert_never

from bot.wording.reader import number, set_words
from domain.reading import OpenSet, Pain, Reading, Slot, Want
from domain.sets import TrainingSet

_WANTS: dict[Want, str] = {
    "skip_exercise": "leave out",
    "skip_workout": "miss this workout",
    "move": "move this workout, or the rest of it",
    "pause": "pause",
    "undo": "take back the last record",
    "correct": "put a record right",
    "ask_coach": "ask the coach",
    "show_plan": "see the plan",
    "show_history": "see what was done before",
    "help": "help",
    "stop_messages": "no more messages",
}


class Finding(NamedTuple):
    """One thing that was understood: of which kind, in words, and for a set where in the message it was told.

    `kind` is empty for what belongs to the one before. `told_in` is (0, 0) where that is not known.
    """

    kind: Literal["record", "ask", "pain", "urgent", "wants", ""]
    words: str
    told_in: tuple[int, int] = (0, 0)


def findings(reading: Reading) -> list[Finding]:
    """Return all that was understood, what is to be recorded first."""
    places = chain(reading.told_in, repeat((0, 0)))
    found = [
        Finding("record", record_words(one), place) for one, place in zip(reading.sets, places, strict=False)
    ]
    for one in reading.open:
        found.append(Finding("ask", f"{', '.join(map(slot_words, one.asks))}: {open_words(one)}"))
        found.extend(Finding("", f"it could be {record_words(other)}") for other in one.candidates)
    asked = {slot for one in reading.open for slot in one.asks}
    found.extend(Finding("ask", slot_words(slot)) for slot in reading.asks if slot not in asked)
    found.extend(Finding("pain", pain_words(pain)) for pain in reading.pain)
    if reading.urgent:
        found.append(Finding("urgent", "a warning sign: stop, and call the local emergency number"))
    for want in reading.wants:
        about = ", ".join(reading.skips) if want == "skip_exercise" else ""
        until = reading.on.isoformat() if reading.on and want in {"move", "pause"} else ""
        found.append(Finding("wants", " ".join(filter(None, (_WANTS[want], about, until)))))
    return found


def reading_lines(text: str, reading: Reading) -> list[str]:
    """Return what was understood, a line each, and what was left over."""
    lines = [f"{each.kind:8} {each.words}" for each in findings(reading)]
    if not lines:
        lines.append("nothing to record and nothing to do")
    lines.append("")
    lines.extend(
        f"{'from' if i == 0 else '':8} {text[s:e]!r}: {what}"
        for i, (s, e, what) in enumerate(_spans(reading))
    )
    left = left_over(text, reading)
    if left:
        lines.append(f"left     {left!r}")
    if reading.cut:
        lines.append("The message is very long; only its beginning was read.")
    return lines


def record_words(one: TrainingSet) -> str:
    """Return a set as it would be recorded, with its exercise and its day."""
    denied = ", not to failure" if one.to_failure is False else ""
    day = f", on {one.on.isoformat()}" if one.on else ""
    return f"{one.exercise}: {set_words(one)}{denied}{day}"


def open_words(one: OpenSet) -> str:
    """Return what is known of an unfinished set; a question mark stands for the rest."""
    load = "?" if one.load is None else f"{number(one.load)} {one.unit or ''}".strip()
    amount = one.seconds if one.seconds is not None else one.reps
    return f"{one.exercise or '?'}: {load} × {'?' if amount is None else amount}"


def slot_words(slot: Slot) -> str:
    """Return what a question asks for."""
    match slot:
        case "exercise":
            return "which exercise"
        case "load":
            return "what load"
        case "reps":
            return "how many reps"
        case "seconds":
            return "how many seconds"
        case "unit":
            return "which unit"
        case "date":
            return "which day"
        case "confirm":
            return "is that right"
        case _:
            assert_never(slot)


def pain_words(pain: Pain) -> str:
    """Return a place that hurts, with its side and score."""
    place = {"both": f"both sides, {pain.where}", None: pain.where}.get(
        pain.side, f"{pain.side} {pain.where}"
    )
    return f"{place}, {number(pain.score)} out of 10" if pain.score is not None else place


def _spans(reading: Reading) -> list[tuple[int, int, str]]:
    return list(dict.fromkeys((word.start, word.end, word.became) for word in reading.words))


_NO_WORDS = frozenset({"", "x", "X", "×", "@"})
"""What joins two numbers, and is nothing by itself."""


def left_over(text: str, reading: Reading) -> str:
    """Return the words of the message that became nothing."""
    kept: list[str] = []
    at = 0
    for start, end, _ in sorted(_spans(reading)):
        if start > at:
            kept.append(text[at:start].strip(" ,.:;!\n"))
        at = max(at, end)
    kept.append(text[at:].strip(" ,.:;!\n"))
    return " … ".join(each for each in kept if each not in _NO_WORDS)
