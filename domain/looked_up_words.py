"""What a client wants looked up, told by the whole of a message: turns of phrase, each with what it asks for.

What is asked for changes nothing. A piece with a name before it ("of:") is handed on as it was typed; `n`,
`load`, `reps` and `held` are numbers. What comes first in the table goes first.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from functools import cache
from typing import Literal

from domain.reading.message import Message
from domain.reading.patterns import Found, Pattern
from domain.whole_messages import lines, short_message, wholes

LookUp = Literal[
    "cues",
    "coach said",
    "ever",
    "first time",
    "last of",
    "count",
    "missed",
    "days",
    "beaten",
    "counts",
    "history",
    "last time",
    "whole history",
    "best",
    "picture",
    "aim",
]
"""How an exercise is to be done, in the coach's words; what else the coach has written; whether so much was
ever done; when for the first time; when an exercise, or a workout of that name, was done last; how often;
how many workouts were missed; what was done on a day, or in a week, month or year; what was beaten last;
as which workout, of which day, the last sets stand; the course of an exercise; the best of it; a picture;
what to aim for."""

_OF = "[the|my|a|an] of:(_ ...4)"
_LOGGED = "done|lifted|managed|made|moved|hit|reached|got|had|pulled|pushed|pressed|handled|used|logged"
_DOES = "do|lift|manage|make|move|hit|reach|get|have|pull|push|press|handle|use|log"
_UNIT = "unit:(kg|kgs|kilo|kilos|kilogram|kilograms|lb|lbs|pound|pounds)"
_AMOUNT = f"""
[more:(more than|over|above)|at least] load:# [{_UNIT}] (x|for|times) reps:# [reps|times]
[more:(more than|over|above)|at least] load:# {_UNIT}
[more:(more than|over|above)|at least] held:# (s|sec|secs|second|seconds)
[more:(more than|over|above)|at least] reps:# (reps|rep)
[more:(more than|over|above)|at least] load:#
"""
_SPAN = """
this (week|month|year)|last (week|month|year)|(in|during|over) the (last|past) [#] (days|weeks|months|week|
+ month|year)|the (last|past) [#] (days|weeks|months|week|month|year)|in _ [#]|since _ [#]|[on] yesterday|
+ today
"""
_WHEN = """
[on|back on] (monday|tuesday|wednesday|thursday|friday|saturday|sunday|mon|tue|tues|wed|thu|thur|thurs|fri|
+ sat|sun)|last (monday|tuesday|wednesday|thursday|friday|saturday|sunday|night)|yesterday|today
the day before yesterday|this morning|[on] [the] #|[on] [the] # [of] _|on _ [the] #|on # (/|'.'|-) # [(/|'.'|
+ -) #]
# (days|weeks) ago|a week ago|(this|last) (week|month|year)|in _ [#]|in the (last|past) [#] (days|weeks|week|
+ month|months)|the (last|past) [#] (days|weeks|week|month|months)
"""
_SESSIONS = "workouts|workout|sessions|session|trainings|training sessions|times in the gym|gym sessions"

_TURNS: tuple[tuple[LookUp, str], ...] = (
    (
        "cues",
        f"""
        [(what|which) (is|are|was|were)|whats|any|some|my|all] [the|my] [form|technique] (cue|cues|form cues|
        + technique cues|tips|pointers) [again] [(for|on|with|of|about|in) {_OF}]
        [the] (form|technique|cue|cues|tips|how to) (for|on|of|in) {_OF}
        (what|whats) [is|was] [the|my] [right|correct|proper|good] (form|technique) (for|on|of|in) {_OF}
        how (do|should|must|can|shall) i (do|perform|execute|set up [for]) {_OF} [right|properly|correctly]
        how (is|are|was|were) {_OF} (done|performed|to be done|meant to be done) [right|properly]
        how to [do|perform] {_OF} [right|properly|correctly]
        what (should|do|must) i (watch|mind|look out|think|remember|keep in mind|focus|watch out) [out] [of|
        + for|
        + about|on] [on|in|with|for|during|when doing|at] {_OF}
        what did [the|my] coach say [about|on|of|for] {_OF}
        [the|my] of:(_ [_] [_]) (cue|cues|tips)
        """,
    ),
    (
        "coach said",
        """
        what (did|has|was) [the|my] (coach|trainer) (say|said|write|written|tell me|told me|answer|answered|
        + think) [about|on|of|for|regarding|to] about:(_ ...5)
        what (did|has) [the|my] (coach|trainer) (say|said|write|written|tell me|told me|
        + answer|answered) [to me] [last|again|so far]
        [the|my] (coach|trainer) [s] (words|notes|messages|message|answer) [about|on|of|for|regarding|to]
        + about:(_ ...5)
        did [the|my] (coach|trainer) (say|write|tell me|answer) [anything|something] [(about|on|to|
        + regarding) about:(_ ...5)]
        """,
    ),
    (
        "ever",
        f"""
        (have i|ive|did i|had i) [already] ever [already] ({_LOGGED}|{_DOES}|held|hold) ({{amount}}) [(on|at|
        + with|
        + in|for|of) {_OF}]
        (have i|did i) [already|ever] ({_LOGGED}|{_DOES}) ({{amount}}) (before|already|ever) [(on|at|with|in|
        + for|of) {_OF}]
        (have i|did i) [already|ever] ({_LOGGED}|{_DOES}|held|hold) ({{amount}}) [(on|at|with|in|
        + for|of) {_OF}] (before|already|ever)
        (have i|did i) ever [already] of:(_ [_] [_]) [with|at|for] ({{amount}})
        (have i|did i) [already|ever] of:(_ [_] [_]) [with|at] ({{amount}}) (before|already|ever)
        (have i|did i) [ever] ({_LOGGED}|{_DOES}) reps:# of:(_ [_] [_]) [in a row|in one go|in one set|
        + at once|
        + before|ever|already]
        was i ever (at|on|up to) ({{amount}}) [(on|at|with|in|for) {_OF}]
        have i [ever] been (at|on|up to) ({{amount}}) [(on|at|with|in|for) {_OF}]
        """,
    ),
    (
        "first time",
        f"""
        when (did|have) i [ever] (first|do first) ({_LOGGED}|{_DOES}|held|hold) ({{amount}}) [(on|at|with|in|
        + for|
        + of) {_OF}]
        when (did|have) i ({_LOGGED}|{_DOES}|held|hold) ({{amount}}) [(on|at|with|in|for|of) {_OF}] [for the]
        + first [time]
        when did i first of:(_ [_] [_]) ({{amount}})
        (when|whens|when is|when was) the first time i ({_LOGGED}|did|held) ({{amount}}) [(on|at|with|in|for|
        + of) {_OF}]
        since when (do|can|have|did) i (do|lift|done|lifted|did) ({{amount}}) [(on|at|with|in|for|of) {_OF}]
        """,
    ),
    (
        "last of",
        f"""
        when (did|have) i last ({_DOES}|train|trained|done) {_OF}
        when did i last of:(_ [_] [_])
        when did i ({_DOES}|train) {_OF} last [time]
        (when|whens) (was|is|were) (the|my) last [time i (did|trained)] of:(_ ...4) [workout|session|day]
        how long (is it|ago (is|was|did) [i|it]|has it been|since) [since] [i] [did|do|last|trained|
        + my last] {_OF}
        """,
    ),
    (
        "missed",
        """
        how (many|often) [workouts|sessions|times|trainings|days] (did|have|had) i (miss|missed|skip|
        + skipped) [it|
        + a workout|a session|any|workouts|training|one] [span:({span})]
        how (many|often) did i (miss|skip) [a workout|workouts|training|a session] [span:({span})]
        (did|have) i (miss|missed|skip|skipped) (any|a|anything|some) [workout|workouts|session|sessions|
        + training|trainings|day|days] [lately|recently|span:({span})]
        [number of] missed (workouts|sessions) [span:({span})]
        """,
    ),
    (
        "count",
        f"""
        how many ({_SESSIONS}|times) (have|did|do|had) i (done|do|had|have|train|trained|finished|completed|
        + complete|make|made|got in|get in|been training|been|log|logged) [span:({{span}})]
        how many ({_SESSIONS}) [span:({{span}})] [have i|did i] [done|do]
        how (often|many times|many days) (have|did|do) i (train|trained|work out|worked out|lift|lifted|been|
        + go|
        + gone|come|been training|been to the gym|go to the gym|workout) [span:({{span}})]
        how (often|many times) (have|did|do) i (do|done|train|trained|had|have) {_OF} [span:({{span}})]
        how (often|many times) (have|did|do) i of:(_ [_]) [span:({{span}})]
        how many ({_SESSIONS}|times) (with|of|for) {_OF} [span:({{span}})]
        how many (sets|reps) (have|did) i (do|done|have|log|logged|make|made) [of {_OF}] [span:({{span}})]
        how many (sets|reps) of of:(_ [_] [_]) (have|did) i (do|done|log|logged|make|made) [span:({{span}})]
        how many (weeks|months|days|years) (have|am) i [been] (training|doing this|here|with you|at it|
        + lifting)
        how long (have|am) i [been] (training|doing this|here|with you|at it|lifting)
        (number|count|total) of [my] ({_SESSIONS}) [span:({{span}})]
        since when (have|am|do) i [been] (training|train|here)|when did i (start|begin) [training|here|
        + with this]
        """,
    ),
    (
        "beaten",
        """
        (what|which|which ones|which exercises) (did|have) i (beat|beaten|improve|improved|improve on) [on|
        + in|at]
        + [last time|in the last workout|the last workout|last workout|yesterday|today]
        did i beat (anything|something|last time|my last time|the last one|it) [last time|today|yesterday]
        (how|hows) (did|was|were) [the|my|it] last (workout|session|time) [go|went]
        did i do (well|ok|okay|good|alright|fine|better) [last time|today|yesterday|this time]
        how (did|was) i [do] [last time|today|yesterday|this time|there]
        how did [it|that|the workout|the session|my workout] go (last time|yesterday|today)
        """,
    ),
    (
        "counts",
        """
        (does|did|do|will|would) (it|that|this|these|they|those|today|[the|my] last [one|workout|session]|
        + [my|the|todays] (workout|session|sets)) [still|also|then|now] (count|counts) (for|as|towards|
        + toward|on) [the|my] as:(_ ...3)
        (what|which) (day|workout|session) (does|did|do|will) (it|that|this|these|they) (count|go|stand)
        + (for|as|under|to|on|towards)
        (did|have) you (count|counted|put|write|written|record|recorded) (it|that|this) [down] (for|as|on|
        + under) [the|my] as:(_ ...3)
        """,
    ),
    (
        "days",
        """
        what (did|have) i (do|done|lift|lifted|train|trained|log|logged|record|recorded) [at the gym]
        + when:({when})
        what (was|did) [i|my] [do] [workout|session|training] [on|of|from] when:({when})
        (what|whats) [was|is] my (workout|session|training) [on|of|from] when:({when})
        (my|the) (sets|workout|session|numbers|training) (of|from|on|for) when:({when})
        how much did i (lift|do|train) when:({when})
        what do you have [written|down|recorded|logged] [down] [for|from|of] when:({when})
        (sets|workout|session|numbers) (of|from|on) when:({when})
        did i (train|work out|lift|do anything) when:({when})
        """,
    ),
    (
        "best",
        f"""
        (whats|what is|what was|show) my (heaviest|biggest|strongest|highest|top|longest|max|maximum) [ever]
        + of:(_ [_] [_]) [ever]
        my (heaviest|biggest|strongest|highest|top|longest|max|maximum) of:(_ [_] [_]) [ever]
        (whats|what is|what was) the (most|heaviest|best|longest) (i have|ive|i) [ever] ({_LOGGED}|did|
        + held) (on|
        + in|at|with|of|for) {_OF} [ever]
        (whats|what is|what was) my (max|maximum|top) (on|in|at|for) {_OF} [ever]
        (how much|how many|how long) (have|did|can|could) i ever (lift|lifted|do|done|held|hold) (on|at|in|
        + with|
        + of) {_OF}
        """,
    ),
    (
        "picture",
        """
        [show|see] [me] (my|the) (progress|development|course|curve|curves|trend) [in [a] (picture|pictures)]
        [how does|how is|hows] my (progress|development) [look|looking|going] [like]
        """,
    ),
    (
        "last time",
        """
        [show|tell|give] [me] [the|my] [what was] last time [of|for|on|with|i did|was] of:(_ ...6)
        how did [the|my] of:(_ ...6) go [last time|last|then|before]
        """,
    ),
    (
        "whole history",
        """
        [show|give|see|send|tell] [me] [the|my] (history|log) (of|for|on|with) of:(_ ...8)
        (history|log) of:(_ ...3)
        [show|give|see|send|tell] [me] [the|my] of:(_ ...8) (history|log)
        """,
    ),
    (
        "history",
        f"""
        [the|my] last (n:#|few) of:(_ [_] [_])
        (the|my) last n:# (times|sessions|workouts|sets) (of|on|with|for) {_OF}
        (whats|what were|what are) [the|my] last [n:#|few] of:(_ [_] [_])
        """,
    ),
    (
        "aim",
        f"""
        (what|whats|how much) [am|do|should|is|must|shall] [i|my] (aiming|aim|go|going|shoot|shooting|target)
        + for (on|in|at|with) {_OF} [today|next time|next]
        (what|how much|how many|how heavy|how long) (do|should|shall|must|will|am|can) i [to|have to|need to|
        + supposed to]* (lift|do|use|put on|take|load|go|hold|aim for) (on|for|in|at|with) {_OF} [today|
        + next time|
        + next|this time]
        how (much|many|heavy|long) (should|shall|must|do|will) i of:(_ [_] [_]) (today|next time|next|
        + this time)
        (which|what) (weight|load) [should i use|do i use|is it|do i take|goes] (for|on|with|in|
        + at) {_OF} [today|
        + next time|next|this time]
        (whats|what is) [the|my] (target|goal|aim|load|weight) (for|on|in|of|with) {_OF} [today|next time|
        + next]
        """,
    ),
)

_LISTS = {
    "amount": "\n".join(lines(_AMOUNT)),
    "span": "\n".join(lines(_SPAN)),
    "when": "\n".join(lines(_WHEN)),
}


@cache
def _patterns() -> tuple[tuple[LookUp, Pattern], ...]:
    return tuple((kind, pattern) for kind, text in _TURNS for pattern in wholes(text, **_LISTS))


@dataclass(frozen=True, slots=True)
class Asked:
    """What is to be looked up, with the pieces of the question as typed, and its numbers by their names."""

    what: LookUp
    pieces: Mapping[str, str] = field(default_factory=dict)
    numbers: Mapping[str, Decimal] = field(default_factory=dict)


def look_ups(text: str) -> tuple[Asked, ...]:
    """Return what `text` as a whole can ask for, the likeliest first; none where it asks for something else.

    Whether its pieces name an exercise or a day is not known here.
    """
    message = short_message(text, _patterns)
    if message is None:
        return ()
    hits = ((kind, pattern.at(message, 0)) for kind, pattern in _patterns())
    return tuple(_asked(kind, text, message, hit) for kind, hit in hits if hit is not None)


def _asked(kind: LookUp, text: str, message: Message, hit: Found) -> Asked:
    values = {name: message.value(at) for name, (at, _) in hit.parts.items()}
    numbers = {name: value for name, value in values.items() if value is not None and name in _NUMBERS}
    pieces = {
        name: text[message.tokens[start].start : message.tokens[end - 1].end].strip()
        for name, (start, end) in hit.parts.items()
        if name not in _NUMBERS and start < end
    }
    return Asked(kind, pieces, numbers)


_NUMBERS = frozenset({"n", "load", "reps", "held"})
