"""Whether a message puts something recorded on another day: "the deadlift was yesterday, not today"."""

from collections.abc import Sequence
from datetime import date

from domain.reading.days import Day
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.patterns import Pattern
from domain.reading.request import Request
from domain.reading.when import past_day
from domain.reading.words import words_of

_MOST_TOKENS = 18
_SENT_BEFORE = Pattern(
    """
    [that|which|what] (i|ive|we) [just|only|already]* {sent} [{you}]* [{then}]* {now_was}
    """,
    sent="""
        sent|send|logged|posted|wrote|typed|entered|reported|put|texted|recorded|submitted|gave you|messaged
        told
    """,
    then="earlier|before|now|today|a minute ago|just now|there",
    you="you|to you|in|it|just|about|of",
    now_was=">(was|were|is|are|should|s)",
)
"""What is said of a record between its name and the verb: "the bench that I just sent was Thursday"."""
_WAS = Pattern(
    "(was|were|is|are|s|its|thats|been|be) [{filler}]* $",
    filler="""
        actually|really|all|still|already|in fact|both|only|just|done|performed|completed|made
        from|on|of|back|for|meant
    """,
)
"""Words right before the day that something was of."""
_PUT = Pattern("""
    (belongs|belong|(needs|has|ought|have) to go) (under|on|to|for|as|into) [the|for]* $
    goes (under|on|for|as|into) [the|for]* $
    (put|log|count|record|mark|file|book|save|enter) ..6 (under|on|to|for|as|into) [the|for]* $
""")
"""Words right before the day that something is to be put on."""
_DID = Pattern("did ..5 $")
_SAYS_WHAT_DAY_IT_IS = Pattern(
    "thank (god|goodness|heaven|heavens)|thankfully|tgif|tomorrow (is|its)|tomorrow $"
)
_WRONG_DAY = Pattern("wrong (day|date|dates|days)|(day|date) (is|was|s) wrong")
_ONLY_THAT = words_of("i we trained lifted did it was that sorry no actually oh wait oops on from , ! .")
"""What stands before a day that is told and nothing else: "I trained last night, not today"."""
_TRAINED = words_of("trained lifted did was")
"""Words of what is past: "Monday, not today" alone may be a wish."""
_SENT_LATE = Pattern("send~|sent|logg~|log|write|wrote|typed|typing|enter~|entry|forgot")
"""What makes "I did that yesterday" a word about the record."""
_IT = words_of("that it this those they these all everything its thats them date day")
_WHOLE = words_of(
    "workout session training numbers results lot thing one ones set sets entry stuff bit part last"
)
_POINTS = words_of("the that this whole entire todays last those these whole of my")
LAST_TIME = Pattern(
    "last !({entry}) _ [!({entry}) _] [!({entry}) _] >({was})",
    entry="set|sets|one|ones|entry|record|message|two|three|few|exercise|part|bit|#",
    was="was|were|is|must|would|s",
)
"""A training before this one: "my last bench was Monday" tells nothing of today's."""
_DENIES = words_of("not than of")
"""Words before the day that is not the right one: "not today", "rather than today", "instead of today"."""
WHOLE_DAY = Pattern(
    """
    everything|all of (it|that|this|them|those)|all (that|this) (was|is)
    [the|this|that|todays]* (whole|entire) (workout|session|training|lot|thing|day)
    (the|this|that|todays) (workout|session|training) {was}
    all the? (sets|exercises)|(both|all) exercises
    (the|those|these|my) (sets|numbers|results|records|entries|lifts|exercises) ..6 {was}
""",
    was="was|were|is|are|should|belongs|belong",
)
"""All that is recorded of a day."""


def is_of_another_day(
    message: Message, request: Request, named: Sequence[Named], days: Sequence[Day]
) -> bool:
    """Return whether the message tells the day of what is recorded on another one, and no numbers."""
    if not days or len(message.tokens) > _MOST_TOKENS or _SAYS_WHAT_DAY_IT_IS.is_in(message):
        return False
    if any(not message.taken[at] for at in message.numbers(0, len(message.tokens))):
        return False
    denied = any(is_denied(message, day) for day in days)
    named = [n for n in named if not n.weak]
    return any(
        on is not None and _says_of_record(message, day, named, denied=denied) and _moves(request, named, on)
        for day in days
        if not is_denied(message, day)
        for on in [past_day(day, request.sent)]
    )


def is_denied(message: Message, day: Day) -> bool:
    """Return whether a day is said not to be the right one."""
    return message.text(day.start - 1) in _DENIES


def _says_of_record(message: Message, day: Day, named: Sequence[Named], *, denied: bool) -> bool:
    """Return whether what is said of the day is said of an exercise, or of what is pointed at."""
    start = max(0, day.start - 8)
    if message.text(day.end) in {"that", "when", "too", "also"} or "too" in message.words:
        return False
    if _WRONG_DAY.is_in(message):
        return True
    was = _WAS.first(message, start, day.start)
    if was is not None:
        return _is_subject(message, was.start, named)
    if _PUT.is_in(message, start, day.start):
        return True
    before = message.texts(0, day.start)
    is_past = day.kind == "offset" or not _TRAINED.isdisjoint(before)
    if denied and is_past and _ONLY_THAT.issuperset(before):
        return True
    did = _DID.is_in(message, start, day.start)
    if did and (denied or _SENT_LATE.is_in(message)):
        return True
    at = day.start - 1
    both = message.text(at) in {"both", "all"}
    return (denied or both) and any(n.end == (at if both else day.start) for n in named)


def _is_subject(message: Message, end: int, named: Sequence[Named]) -> bool:
    """Return whether a recorded exercise, or a word that points at what is recorded, stands before a verb."""
    sent = next((f for f in _SENT_BEFORE.find(message, 0, end + 1) if f.end == end), None)
    if sent is not None and message.text(sent.start) == "what":
        return True
    at = (end if sent is None else sent.start) - 1
    if message.text(end) in {"its", "thats"}:
        return True
    if message.text(at) in {"s"}:
        at -= 1
    if message.text(at) in {"should", "must", "needs"}:
        at -= 1
    if message.text(at) in {"to", "has"}:
        at -= 2
    if LAST_TIME.is_in(message, max(0, at - 4), end + 1):
        return False
    while at >= 0 and message.text(at) in _WHOLE and message.text(at) not in _IT:
        at -= 1
    if any(n.start <= at < n.end for n in named) or message.text(at) in _IT:
        return True
    return at < end - 1 and message.text(at) in _POINTS


def _moves(request: Request, named: Sequence[Named], on: date) -> bool:
    """Return whether something that is meant is recorded on another day, and nothing on this one."""
    today = request.sent.date()
    names = {name for n in named for name in n.names}
    days = {one.on or today for one in request.done if not names or one.exercise in names}
    return bool(days) and days != {on}
