"""What is said of a workout that is due in a word or two: "tonight", "tomorrow then", "in the gym now"."""

from dataclasses import dataclass
from datetime import time
from functools import cache
from typing import Literal

from domain.reading.patterns import Pattern
from domain.usual_hours import usual_hour
from domain.whole_messages import short_message, wholes

What = Literal["plan", "day", "hour"]
"""The plan is wanted, as the client is there; the workout is to be on the day said, or later today."""

_WEEKDAY = """
(mon|monday|tue|tues|tuesday|wed|wednesday|thu|thur|thurs|thursday|fri|friday|sat|saturday|sun|sunday)
""".strip()
_BEFORE = (
    "actually|maybe|better|rather|then|no|nope|sorry|busy [today]|not today|how about|what about|"
    "will do [it]|ill do it|ill go|,|-"
)
_BEHIND = "then|instead|maybe|rather|works|suits me|is better|works better|probably"
_PART = "morning|afternoon|evening|night|after work|before work|at lunch|first thing"

_TURNS: tuple[tuple[What, str], ...] = (
    (
        "plan",
        """
        [im|i am|am|we are] [just|already] (at|in|inside|arrived at|arrived in) the gym [now|already]
        [im|i am|am|we are] [just] (here|arrived|starting|ready|ready to (go|start|train)|all set) [now|
        + at last|finally]
        [im|i am|am] (doing it|training|at it) (now|right now|at last)
        [im|i am|am|we are] (on my way|omw|heading (there|to the gym)|off to the gym|going now) [now|already]
        [(im|i am)] [just] (about to|gonna|going to) (start|begin|train) [now]
        (start|begin|go|lets go|lets start|lets begin|lets do this|lets train|starting|bring it on|here we go)
        + [now|the workout|training|today]
        [gym|training|workout|train|anything|something|do i train] hour:today
        """,
    ),
    (
        "day",
        f"""
        [{_BEFORE}]* day:([on|this|next] {_WEEKDAY}) [{_PART}] [{_BEHIND}]*
        [{_BEFORE}]* day:(tomorrow|[the] day after tomorrow) [{_PART}] [{_BEHIND}]*
        """,
    ),
    (
        "hour",
        """
        [actually|maybe|better|rather|probably|late|ill do it|will do [it]|ill train|ill go|doing it|going]*
        + hour:(today|in the evening|in the afternoon|after work|after lunch|after dinner|after school|late
        + today|at lunch|lunchtime|at lunchtime) [then|instead|maybe|rather|works|probably|is better]*
        """,
    ),
)


@dataclass(frozen=True, slots=True)
class Said:
    """What is said, with the `day` as typed, or the `hour` that is taken for a part of it."""

    what: What
    day: str = ""
    hour: time | None = None


@cache
def _patterns() -> tuple[tuple[What, Pattern], ...]:
    return tuple((what, pattern) for what, text in _TURNS for pattern in wholes(text))


def said_of_today(text: str) -> Said | None:
    """Return what `text` as a whole says of the workout that is due; None where it says nothing of it."""
    message = short_message(text, _patterns)
    if message is None:
        return None
    for what, pattern in _patterns():
        found = pattern.at(message, 0)
        if found is None:
            continue
        pieces = {
            name: text[message.tokens[start].start : message.tokens[end - 1].end]
            for name, (start, end) in found.parts.items()
        }
        hour = usual_hour(pieces["hour"]) if "hour" in pieces else None
        if isinstance(hour, time):
            return Said("hour", hour=hour)
        return Said("plan" if what == "hour" else what, pieces.get("day", ""))
    return None
