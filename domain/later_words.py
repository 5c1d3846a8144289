"""Today's reminder once more, later: "not now, in 30 minutes", "remind me an hour later", "again at 6 pm"."""

from dataclasses import dataclass
from datetime import time
from decimal import Decimal
from functools import cache
from typing import Literal

from domain.clock_words import clock_of
from domain.reading.patterns import Pattern
from domain.whole_messages import short_message, wholes

_ASKING = """
[not now|not yet|busy|cant now|later|no|wait] [,|-|'.'] [remind|ping|nudge|ask|tell|message|text|write|
+ write to|
+ try|come back] [me|it|to me] [again|later|about it|of it] [,|-]
"""
_LONG = "n:# (h:(hour|hours|hr|hrs|h)|minute|minutes|min|mins|m)|h:(an|a) hour|half:half [an|a] hour"
_AND_A_HALF = "(h:(an|a) hour|n:# h:(hour|hours)) and a more:half"

_TURNS: tuple[tuple[Literal["in", "at", "later", "earlier", "some time"], str], ...] = (
    (
        "in",
        """
        {asking} in [about|another|like] ({long}|{half}) [time|later]
        {asking} [give me|need|wait] [about|another|like] ({long}|n:# more (h:(hour|hours)|minutes|
        + min)) [more]
        snooze [it|this|that|me|the reminder] [for|by] [about] ({long}|{half})
        [i|ill|i will|im|i am]* (going|training|starting|leaving|go|train|start) [there|to the gym] in [about]
        + ({long}|{half})
        """,
    ),
    (
        "later",
        """
        [not now|not yet] [,] (remind|ping|message|nudge|text|ask) me [about|again] ({long}|{half}) later
        (make it|send it|shift it|move it|push it) [by|about] ({long}|{half}) later
        [the] (reminder|reminders) ({long}|{half}) later
        (move|push|shift|make) (the|my) (reminder|reminders) [back] [by] ({long}|{half}) [later|back]
        """,
    ),
    (
        "earlier",
        """
        (remind|ping|message|nudge|text) me [about] ({long}|{half}) (earlier|before|sooner)
        [the] (reminder|reminders) ({long}|{half}) (earlier|sooner)
        (move|make|bring|shift) (the|my) (reminder|reminders) [forward] [by] ({long}|{half}) (earlier|sooner|
        + forward)
        """,
    ),
    (
        "at",
        """
        (remind|ping|nudge|ask|message|text|write to) me (today|tonight|this evening|
        + this afternoon) at clock:((_|#) ...4)
        (remind|ping|nudge|ask|message|text|write to) me [again|once more] at clock:((_|#) ...4) (today|
        + tonight|
        + this evening|this afternoon)
        (remind|ping|nudge|ask|message|text|write to) me (again|once more|later) at clock:((_|#) ...4)
        (not now|not yet|cant now|busy) [,] [remind me] [again] at clock:((_|#) ...4)
        [i|ill|i will|will|im|i am|gonna|going to|i plan to|planning to|i hope to|hoping to]* (train|training|
        + go|going|going to the gym|do it|doing it|be there|lift|work out|go to the gym|
        + be at the gym) [today]* (at|around|about) clock:((_|#) ...4)
        (at|around|about) clock:(# ...3) today
        """,
    ),
    (
        "some time",
        """
        (not now|not yet|not right now|cant now|busy [right] now|cant right now) [,] [maybe] [later|
        + later today]
        (remind|ping|nudge|ask|message|text) me [again] (later|later today|in a [little] (bit|while)|
        + a bit later)
        snooze [it|this|that|the reminder]|(later today|a bit later|in a bit|in a while)
        """,
    ),
)


@dataclass(frozen=True, slots=True)
class Later:
    """When to remind once more: `minutes` from now (`in`), or from the usual hour (`later`, `earlier`).

    `at` has the times of day that it can be instead; of `some time` nothing is known.
    """

    how: Literal["in", "at", "later", "earlier", "some time"]
    minutes: int = 0
    times: tuple[time, ...] = ()


@cache
def _patterns() -> tuple[tuple[Literal["in", "at", "later", "earlier", "some time"], Pattern], ...]:
    return tuple(
        (how, pattern)
        for how, text in _TURNS
        for pattern in wholes(text, asking=_one_line(_ASKING), long=_LONG, half=_AND_A_HALF)
    )


def _one_line(text: str) -> str:
    return text.strip().replace("|\n+ ", "|")


def later_of(text: str) -> Later | None:
    """Return when `text` as a whole wants to be reminded once more; None where it is no such wish."""
    message = short_message(text, _patterns)
    if message is None:
        return None
    for how, pattern in _patterns():
        found = pattern.at(message, 0)
        if found is None:
            continue
        if how == "at":
            start, end = found.parts["clock"]
            clock = clock_of(text[message.tokens[start].start : message.tokens[end - 1].end])
            if clock is None:
                continue
            return Later(how, times=clock.times)
        if how == "some time":
            return Later(how)
        count = message.value(found.parts["n"][0]) if "n" in found.parts else Decimal(1)
        hours = found.parts.keys() & {"h", "half"}
        minutes = (count or Decimal(0)) * (60 if hours else 1)
        if "half" in found.parts:
            minutes = Decimal(30)
        return Later(how, int(minutes) + (30 if "more" in found.parts else 0))
    return None
