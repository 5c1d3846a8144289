"""Questions and requests: which of them the bot answers itself, and which are for the coach."""

import re
from collections.abc import Sequence

from domain.reading.away import ails
from domain.reading.message import Message
from domain.reading.question_words import (
    HELP,
    HELP_ALONE,
    HISTORY,
    NOT_REQUEST,
    OPENERS,
    PLAN,
    REQUEST,
    REQUEST_KEYS,
    SMALL_TALK,
    said,
)
from domain.reading.request import Want
from domain.reading.want_words import STOP, UNDO

_ANSWERED = re.compile(
    r"(?:^|(?<=[.!?;\n,] ))[^.!?;\n,]{1,60} \? (?=(?:no|nope|none|nah|nothing"
    r"|yes|yep|yeah)(?: [.,!;?\n]| just\b|$))"
)
"""A question that the client answers at once: "any pain? no"."""
_WHAT_NOW = re.compile(r"\bwhat (?:(?:do|should|can|shall|must) i|to) do\b|\bwhat now\b|\bnow what\b")
_NOW_WHAT = re.compile(r"\b(?:what now|now what)\b")


def find_questions(message: Message, asked: Sequence[str], wants: list[Want]) -> None:
    """Add what is asked: a plan, a history, help, or else the coach."""
    line = message.line
    if HELP_ALONE.match(line):
        wants.append("help")
        return
    if '"' in line:
        asked = [text.replace('" ', "") for text in asked]
        line = line.replace('" ', "")
    in_danger = ails(message) or ("pain" in message.taken and _NOW_WHAT.search(line) is not None)
    moved = bool({"move", "pause", "skip_workout", "stop_messages"} & set(wants))
    rest = _ANSWERED.sub(" ", line) if "?" in message.words else line
    for text in asked:
        if text not in rest:
            continue
        topic = topic_of(text)
        if topic == "show_plan" and in_danger:
            topic = "ask_coach"
        if topic is not None and not (
            topic == "ask_coach"
            and moved
            and re.search(
                r"\b(?:tomorrow|instead|move|shift|postpone|day|today|ok|okay|fine|train|monday|tuesday"
                r"|wednesday|thursday|friday|saturday|sunday)\b",
                text,
            )
        ):
            wants.append(topic)
        rest = rest.replace(text, " ", 1)
    for sentence in re.split(r"(?<= [.!?;\n])|\n", rest):
        plain = sentence.strip()
        if not plain:
            continue
        topic = _unmarked(plain, moved=moved)
        if in_danger and topic in {None, "show_plan"} and _WHAT_NOW.search(plain):
            topic = "ask_coach"
        if topic is not None:
            wants.append(topic)


def topic_of(text: str) -> Want | None:
    """Return what a question asks for; None for small talk, and for a request that the bot itself fulfils."""
    if SMALL_TALK.search(text) and not REQUEST.search(text):
        return None
    for pattern, want in _TOPICS:
        if pattern.search(text):
            return want
    return None if UNDO.search(text) else "ask_coach"


_TOPICS: tuple[tuple[re.Pattern[str], Want], ...] = (
    (
        said(r"how (?:do|should|can|to) (?:i|you) (?:do|perform|breathe|brace|hold|grip|set up)(?: \w+)*"),
        "ask_coach",
    ),
    (STOP, "stop_messages"),
    (HELP, "help"),
    (PLAN, "show_plan"),
    (HISTORY, "show_history"),
)


def _unmarked(sentence: str, *, moved: bool) -> Want | None:
    """Return what a sentence without the form of a question asks for all the same."""
    words = set(sentence.split())
    ends_asking = sentence.rstrip().endswith("?")
    opens = ends_asking or not words.isdisjoint(OPENERS)
    for pattern, want in ((HELP, "help"), (HISTORY, "show_history"), (PLAN, "show_plan")) if opens else ():
        match = pattern.search(sentence)
        if (
            match is not None
            and (ends_asking or _opens(sentence, match.start()))
            and (
                ends_asking
                or re.match(
                    r"(?:what|show|send|tell|give|how|list|remind|help|explain|define|which|when|see"
                    r"|meaning|progress|history|my|todays|plan|i dont|dont know|am|resend|pull|view|wats"
                    r"|wtf|are|need|who|stats)",
                    match.group(),
                )
            )
        ):
            return want  # type: ignore[return-value] # literals of the tuple above
    if not words.isdisjoint(REQUEST_KEYS):
        match = REQUEST.search(sentence)
        if match is not None and not NOT_REQUEST.search(match.group()):
            said = match.group()
            if moved and re.search(r"\b(?:tomorrow|instead|move|shift|train)\b", said):
                return None
            if (
                re.match(r"(?:hope|hoping|is|if|was|are|whether)\b", said)
                and not ends_asking
                and not re.match(r"(?:hope|hoping|if|whether|is that|is this|is it)", said)
            ):
                return None
            if re.match(r"(?:do|did|would|will|can|could|should|what)\b", said) and not (
                ends_asking
                or _opens(sentence, match.start())
                or re.match(r"(?:can|could|would|will) (?:you|u|someone)", said)
            ):
                return None
            if (
                re.match(r"i (?:\w+ )?(?:like|love|prefer|need|want|wish)\b", said)
                and re.search(
                    r"\b(?:like|love|need|want|prefer) (?:new|other|less|different|check|a new|this|the"
                    r"|it)\b",
                    said,
                )
                and not re.search(
                    r"\b(?:talk|ask|swap|change|discuss|know|speak|chat|switch|replace)\b", said
                )
            ):
                return None
            return None if UNDO.search(sentence) else "ask_coach"
    if ends_asking and re.search(r"#(?: (?:reps?|kgs?|lbs?|kilos?|pounds?|today|s))* \?$", sentence):
        return None
    if (
        ends_asking
        and len(words) > 1
        and not SMALL_TALK.search(sentence)
        and re.search(
            r"\b(?:i|my|me|it|heavy|form|sets?|reps?|weight|normal|ok|okay|pain|rest|days?|squats?|bench"
            r"|rows?|deadlifts?|press|curls?|knees?|back|shoulder|exercise|training|should|why|how|what"
            r"|can)\b",
            sentence,
        )
    ):
        return "ask_coach"
    return None


def _opens(sentence: str, place: int) -> bool:
    """Return whether a place is the beginning of a sentence, or comes after a greeting or a pause."""
    before = sentence[:place].strip()
    return (
        before == ""
        or before.endswith((",", ":", "-"))
        or before.split()[-1]
        in {
            "please",
            "pls",
            "hi",
            "hey",
            "hello",
            "coach",
            "and",
            "so",
            "ok",
            "okay",
            "um",
            "uh",
            "but",
            "also",
            "btw",
            "just",
            "sorry",
            "can",
            "you",
            "u",
            "now",
            "then",
            "me",
            "yo",
            "quick",
            "question",
            "ps",
            "wait",
            "hmm",
            "still",
        }
    )
