"""What else the client wants done: leave out, move, pause, take back, ask, look at, stop. No set is read
here."""

import re
from collections.abc import Sequence
from datetime import date, datetime

from domain.reading.away import Wanted, find_move, find_pause
from domain.reading.days import Day
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.questions import find_questions
from domain.reading.request import Slot, Want
from domain.reading.skips import exercises_left_out
from domain.reading.want_words import (
    AWAY_WORDS,
    BUSY_WORDS,
    ILL_WORDS,
    MOVE_WORDS,
    SAYS_WORKOUT,
    SKIP_TRIGGERS,
    SKIP_WORDS,
    SKIP_WORKOUT,
    STOP,
    STOP_ALONE,
    STOP_TRIGGERS,
    TODAY_WORDS,
    UNDO,
    UNDO_TRIGGERS,
)


def find_wants(
    message: Message,
    named: Sequence[Named],
    days: Sequence[Day],
    questions: Sequence[tuple[int, int]],
    sent: datetime,
) -> Wanted:
    """Return what the client wants done besides the recording of sets; undo and correct are decided
    elsewhere."""
    wants: list[Want] = []
    on: date | None = None
    asks: list[Slot] = []
    line = message.line
    asked = [
        line[message.starts[s] : message.starts[e - 1] + len(_piece(message, e - 1))]
        for s, e in questions
        if e > s
    ]
    in_question = {at for s, e in questions for at in range(s, e)}
    used: list[Named] = []
    skips: list[str] = []

    if message.has(SKIP_WORDS):
        for name in exercises_left_out(message, named, in_question):
            used.append(name)
            if len(name.names) == 1:
                skips.append(name.names[0])
            elif name.names or not name.weak:
                asks.append("exercise")
        if skips:
            wants.append("skip_exercise")
    if message.has(MOVE_WORDS):
        move = find_move(message, days, sent)
        if move is not None:
            wants.append("move")
            on = move.on
            if on is None:
                asks.append("date")
    if "move" not in wants and (message.has(AWAY_WORDS) or message.has(ILL_WORDS) or message.has(BUSY_WORDS)):
        pause = find_pause(message, days, sent)
        if pause is not None:
            wants.append("pause")
            on = pause.on
    if not {"move", "pause"} & set(wants) and message.has(SKIP_TRIGGERS) and message.has(TODAY_WORDS):
        for _, start, end in message.find(SKIP_WORKOUT):
            if start in in_question or any(
                n.start >= start and n.end <= end + 1 and not n.weak for n in named
            ):
                continue
            if skips and not message.has(frozenset({"today", "tonight", "gym", "workout", "session"})):
                continue
            if skips and message.texts(start, end) == ["not", "today"]:
                continue
            if _says_workout(message, start, end, named):
                wants.append("skip_workout")
                break
    if message.has(STOP_TRIGGERS) and (STOP.search(line) or STOP_ALONE.search(line)):
        wants.append("stop_messages")
    find_questions(message, asked, wants)
    return Wanted(
        tuple(dict.fromkeys(wants)), tuple(dict.fromkeys(skips)), on, tuple(dict.fromkeys(asks)), tuple(used)
    )


def _piece(message: Message, at: int) -> str:
    return "#" if message.value(at) is not None else message.text(at)


def _says_workout(message: Message, start: int, end: int, named: Sequence[Named]) -> bool:
    words = message.texts(start, end)
    after = message.text(end)
    if any(n.start in {end, end + 1} for n in named) and words[-1] in {
        "it",
        "this",
        "the",
        "that",
        "drop",
        "miss",
        "do",
    }:
        return False
    if (
        words[-1] in {"lift", "go", "train", "come", "training", "lifting"}
        and after
        in {
            "my",
            "a",
            "the",
            "it",
            "anything",
            "more",
            "that",
            "past",
            "below",
            "any",
            "heavier",
            "lower",
            "higher",
            "deeper",
            "faster",
            "for",
        }
        and message.text(end + 1) not in {"gym", "next"}
    ):
        return False
    if (
        after in {"reps", "rep", "#"}
        or message.value(end) is not None
        or message.value(start + 1) is not None
    ):
        return False
    if (
        words[:1] == ["not"]
        and words[-1] in {"go", "come", "training", "lift"}
        and "today" not in message.words
    ):
        return False
    if (
        words[0] in {"never", "not", "didnt", "cant", "couldnt", "wont", "dont", "did", "will", "can"}
        and words[-1] in {"it", "go", "come", "lift"}
        and words[-2:] != ["make", "it"]
    ):
        rest = " ".join(message.texts(end, min(len(message.tokens), end + 4)))
        if not re.search(r"\b(?:today|tonight|gym|training|tomorrow)\b", rest) and words[-1] != "train":
            return False
    if (
        words[0].startswith(("skip", "miss"))
        and message.text(start - 1) == "to"
        and message.text(start - 2)
        not in {
            "have",
            "had",
            "need",
            "going",
            "want",
            "got",
            "decided",
            "forced",
            "able",
            "ok",
            "possible",
            "like",
        }
    ):
        return False
    if words[:2] == ["no", "gym"] and "where" in message.texts(end, end + 2):
        return False
    return bool(set(words) & SAYS_WORKOUT) or after in {"today", "tonight"}


def find_undo(message: Message) -> tuple[int, int] | None:
    """Return the words that take back the last record, as a span of tokens; None where there are none."""
    if not message.has(UNDO_TRIGGERS):
        return None
    for _, start, end in message.find(UNDO):
        if (
            message.text(start - 1) in {"dont", "didnt", "cant", "to", "never", "not"}
            and message.text(start - 1) != "to"
        ):
            continue
        if message.taken[start] and message.taken[start] not in {"a question", "exercise"}:
            continue
        return start, end
    return None
