"""Whether a message says in words that the load was another than the usual one, without saying which.

Reps told beside such words are not at the load taken where nothing is said of it: "up a notch, 8 reps",
"went a bit lighter, 10", "8 with the empty bar".
"""

from domain.reading.message import Message
from domain.reading.patterns import Pattern
from domain.reading.words import words_of

_OTHER_LOAD = Pattern(
    """
    {moved} [it|that|the (weight|load|pin|stack|bar)|things]* [{slightly}|a|one|two|#]* {way} !(to|the|by|
        than|part|phase|half|bit)
    (a|one|two|another|#) ({step}) {way}
    (up|down) (a|one|two|another|#) ({step})
    # (more|extra|fewer|less) ({step})
    # ({step}) (more|extra|fewer|less)
    next ({step}) [up|down]
    {took} [{slightly}|a|much|the|some|next|way|too|#]* (heavier|lighter) !(than expected)
    a? ({slightly}) (heavier|lighter) [weight|load|today|this time] (>(,|.|!|-|:|for|#)|$)
    (more|less|extra|added|reduced|increased|lowered|upped|changed) [the|my] (weight|load|plates)
    (next|smaller|bigger|lighter|heavier) ({thing})
    (empty|naked|bare|bar) (bar|barbell)|(just|only) the (bar|barbell)|(bar|barbell) only
    <!(#|kg|kgs|lb|lbs|kilo|kilos|s|pounds|trap|ez|hex|curl|chin|dip|pull|on) bar x >(#)
    """,
    moved="""
        went|go|going|gone|bumped|moved|took|put|stepped|notched|cranked|nudged|turned|set|pushed|upped
        bumping|had to (go|drop)|ended up
    """,
    way="(up|down|heavier|lighter|higher|lower|more|less)",
    slightly="slightly|bit|little|touch|tad|just",
    took="went|go|going|used|took|with|tried|did|using|had|on|at",
    step=words_of(
        """notch notches plate plates pin pins hole holes click clicks step steps level stop size setting
        increment"""
    ),
    thing=words_of("dumbbell dumbbells dbs db pair size kettlebell bell plate plates band"),
)
_FELT = words_of("felt feel feels feeling seemed was were looked is not no wasnt")


def speaks_of_another_load(message: Message, start: int, end: int) -> bool:
    """Return whether the sentences from the token `start` to before `end` say that the load was changed."""
    first, _ = message.sentence_span(start)
    _, last = message.sentence_span(max(start, end - 1))
    return any(
        message.text(found.start - 1) not in _FELT and not message.taken[found.start]
        for found in _OTHER_LOAD.find(message, first, last)
    )
