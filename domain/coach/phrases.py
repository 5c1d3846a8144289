"""How a coach says what is wanted: turns of phrase over a whole message, each with the kind of request it is.

`{who}` is a client or several, `{all}` can be all of them; names themselves are found by `naming.py`. A piece
with a name before it ("exercise:") is handed on as it was typed. What comes first in the table goes first.
"""

from domain.coach.naming import CLIENT, CLIENTS
from domain.coach.not_by_words import OF_THE_CLIENT, OF_THE_SHEET
from domain.coach.people_phrases import DECLINING, FORGET, NOTING, NOTING_OF, PEOPLE_TURNS, TAKING
from domain.coach.who_phrases import ANYONE, WHO_TURNS
from domain.coach_requests import Kind
from domain.expressions import Expression
from domain.reading.patterns import Pattern

_OPENING = """
please|pls|hey|hi|hello|ok|okay|so|and|also|then|but|well|right|yes|hm|hmm|just|kilopost
actually|oh|morning|good morning|now|let me (see|have)|(can|could|may) i (see|have|get)
(can|could|would|will) (you|u)|(i want|i need|id like|i would like) [you] [to]|lets|,|-|'.'|'!'
"""
_CLOSING = """
please|pls|thanks|thank you|thx|ta|cheers|ok|okay|now|again|for me|then|today|sorry|,|'.'|'!'|'?'|'"'
this morning|after all|from now on|if you can|when you can|(will|would|could|can) you
(right|just) now|at the moment|at present|these days|so far|this week|lately|currently
"""
_UNTIL = """
(until|till|til) (i|we) (say|tell) [so|otherwise|you|it]
until [further] notice|for (now|a while|the moment|the time being)|until then|any more|anymore|any longer
"""
_EVERYONE = """
everyone|everybody|all of (my|the) clients|all (my|the) clients|all clients|all of them|all|every client
my clients
the [whole] (group|team|lot|gang|crew)
"""
_DAY = "today|tonight|tomorrow|[on|this] (monday|tuesday|wednesday|thursday|friday|saturday|sunday)"
_REST = "rest|day off|days off|day|days|rest day|rest days|day of rest|days of rest|days rest|day rest"
_SWAP = "swap|change|replace|switch|trade|substitute|exchange"
_MOVE = "put|move|switch|change|bring|take|get|update|upgrade"
_DOCTOR = """
[,|-|because|since|as|now] [that] [her|his|the|their|a] (doctor|doc|gp|physio|physiotherapist|hospital)
[has|have] (said|says|cleared|agreed|agrees|okayed|gave|gives|signed|is happy|is fine)
[she|he|it|her|him|that|its|shes|hes|is|was|the|a]*
[ok|okay|fine|yes|good|clear|all clear|off|green light|with it|can train|may train]
"""
_EARLIER = """
(an hour|half an hour|a quarter of an hour|a bit|a little|# (minutes|minute|min|mins|hour|hours|h)|two hours|
an hour and a half) (earlier|later|sooner|before|after)
"""
_PLACE = "instead of|in place of|rather than"

_TURNS: tuple[tuple[Kind, str], ...] = (
    *PEOPLE_TURNS,
    *WHO_TURNS,
    (
        "undo",
        """
        (undo|undu|revert|scratch|reverse) [that|it|this|the last one|the last change|the last|my last|
        + what i (did|said)]
        (undo|undu|revert|scratch|reverse) (that|this|the|my) [very] last (thing|one|change|step|bit|move)
        take (that|it|this) back
        (change|put|turn|set|switch|make) (that|it|this) (back|as it was|like before|as before)
        no [no] undo [that|it]
        """,
    ),
    (
        "programmes",
        """
        [show me|list|what are|which are] [my|the|all] (programmes|programs|sheets|programme|sheet)
        (what|which) (programmes|programs|sheets) (do i have|have i|have i got|are there)
        """,
    ),
    ("remedies", "...4 (remedy|remedies|remidies|remidy|remedys|remedie|remediess) ...5"),
    (
        "who is on",
        """
        (who|whos|who is|which clients|which of my clients|who all) [is|are|train|trains|training] (on|
        + with|doing|by) [the] programme:(_ ...4)
        """,
    ),
    *OF_THE_CLIENT,
    (
        "help",
        "(help|'/' help|'/' start|hello|hi|hey|what can (i|you) (say|do)|how does this work|commands|menu)",
    ),
    ("why", "(why|whys|how come|explain) ....24"),
    (
        "reminder",
        """
        (raise|lower|set|move|change|put|push|shift|make|bring|have|turn|nudge|pull|
        + adjust) who:{all} (reminder|reminders) [time|hour|forward|back|up|down] [to|at|
        + for] clock:((_|#) ...4)
        who:{all} (should|is to|wants|wants to|would like|would like to) [get|have]
        + [her|his|their|the|a] (reminder|reminders) (at|
        + from) clock:((_|#) ...4)
        remind who:{all} [at|from] clock:(# ...4)
        remind who:{all} at clock:(_ ...4)
        remind who:{all} [by] clock:({earlier})
        who:{all} [reminder|reminders] (should|is to|can|has to) [come|be|get] [by] clock:({earlier})
        (set|move|change|put|push|shift|make|bring|have|raise|lower) who:{all} (reminder|reminders) [to|by|
        + back|forward] clock:({earlier})
        [make] who:{all} (reminder|reminders) [by] clock:({earlier})
        (raise|lower|set|move|change|put|push|shift) [the|a] (reminder|reminders) [time|hour] (of|
        + for) who:{all} [to|at] clock:((_|#) ...4)
        [make] who:{all} (reminder|reminders) [to|at|is|is at|for] clock:((_|#) ...4)
        (raise|lower|set|move|change|put|push|shift|make) [the|a] (reminder|reminders) [to|at|
        + for] clock:((_|#) ...3) for who:{all}
        (reminder|reminders) (for|of) who:{all} [to|at] clock:((_|#) ...4)
        """,
    ),
    (
        "rest more",
        """
        (give|grant|allow|get) who:{all} [n:#|a|an|some] (more|extra|another|additional|further) ({rest})
        (give|grant|allow|get) who:{all} [n:#|a|an] (day off|days off|rest day|rest days|day of rest|
        + days of rest) [more|extra]
        (give|grant|allow|get) who:{all} (n:#|a|an) ({rest}) (more|extra|longer)
        who:{all} (needs|need|gets|get|takes|take|has|wants) [n:#|a|an|some] (more|extra|another|
        + additional|further) ({rest})
        who:{all} (needs|need|gets|get|takes|take) [n:#|a|an] (day off|days off|rest day|rest days|
        + day of rest) [more]
        who:{all} (should|can|may|is to|has to) (have|get|take) [n:#|a|an|some] (more|extra|another|
        + additional|further) ({rest})
        [add] [n:#|a|an] (more|extra|another|additional|further) ({rest}) (for|to) who:{all}
        [add] [n:#|a|an|one] (rest day|rest days|day off|days off|day of rest|days of rest) [more|extra]
        + (for|to) who:{all} [before the next workout]
        (let|have) who:{all} (rest|have|take|get) [n:#|a|an|for] [more|extra|another] [rest] (day|
        + days) [more|longer|off]
        (let|have) who:{all} rest n:# [more] (day|days) [more]
        who:{all} (rests|rest) [n:#|a|an|for] [more|another] (day|days) [more|longer]
        """,
    ),
    (
        "swap",
        """
        ({swap}) [out] who:{who} exercise:(_ ...4) (for|to|with|by|into) instead:(_ ...4)
        ({swap}) [out] exercise:(_ ...4) (for|to|with|by|into) instead:(_ ...4) (for|on|in|with) who:{who}
        (give|let|have) who:{who} [do|have] instead:(_ ...4) ({place}|not) exercise:(_ ...4)
        put who:{who} on instead:(_ ...4) ({place}) exercise:(_ ...4)
        who:{who} (does|do|is to do|should do|gets|to do|will do|can do) instead:(_ ...4) ({place}|
        + not) exercise:(_ ...4)
        instead:(_ ...4) ({place}) exercise:(_ ...4) (for|with) who:{who}
        who:{who} [:|,|-] instead:(_ ...4) ({place}) exercise:(_ ...4)
        ({place}) who:{who} exercise:(_ ...4) , instead:(_ ...4)
        """,
    ),
    ("card", "who:{who} (is|was|are) [now] (back|here|in) [again|from ....4|at work|in the gym]"),
    (
        "back",
        """
        (put|bring|get|take|let|start) who:{who} [go] back (on|onto|to|with) exercise:(_ ...5)
        who:{who} [is|can go|goes|may go|can get|should go] back (on|onto|to) exercise:(_ ...4)
        (bring|put|get|have) back exercise:(_ ...4) (for|with) who:{who}
        (resume|unban|restore|reinstate|unpause|reintroduce) who:{who} exercise:(_ ...4)
        (resume|unban|restore|reinstate|unpause|reintroduce) exercise:(_ ...4) (for|with) who:{who}
        (put|bring|let|take|give) exercise:(_ ...4) back [in|into] [the plan] (for|on|to) who:{who}
        (put|bring|give) exercise:(_ ...4) back (in|into|to|on) who:{who} [plan|programme|sheet|workouts]
        (put|bring|give) who:{who} exercise:(_ ...4) back [in]
        who:{who} exercise:(_ ..2) back [in|on|again]
        exercise:(_ ...4) [is|are] (back|ok|okay|fine|allowed) [in|on] [again] (for|with) who:{who}
        who:{who} (can|may|should|is to|is allowed to|is ok to|is fine to) [do|have|
        + start] exercise:(_ ...4) again
        (allow|give|let) who:{who} [do|have|to do|to] exercise:(_ ...4) (back|again)
        allow exercise:(_ ...4) (for|to) who:{who}
        who:{who} [is] (allowed|cleared for|ok for|fine with) exercise:(_ ...4) (again|back)
        """,
    ),
    (
        "leave out",
        """
        who:{who} (cant|cannot|wont|should not|shouldnt|is not to) (do|use|manage|have) exercise:(_ ...3) [,]
        + {because}
        no [more] exercise:(_ ...3) (for|with) who:{who} [,] {because}
        no [more] exercise:(_ ...4) (for|with) who:{who} [{until}]
        no [more] exercise:(_ ...4) ({until}) (for|with) who:{who}
        who:{who} [:|,|-] no [more] exercise:(_ ...4) [{until}]
        who:{who} (is not to|should not|shouldnt|must not|mustnt|may not|cant|cannot|does not|doesnt|
        + not to|isnt to|is not allowed [to]|isnt allowed [to]|should stop|has to stop) [do|have|train|
        + doing] exercise:(_ ...4) [{until}]
        (do not|dont|never) (let|give|have) who:{who} [do|have] exercise:(_ ...4) [{until}]
        (leave out|take out|leave|drop|remove|stop|skip|cut|pause|ban|forbid|cancel|hold|
        + set aside) [the] exercise:(_ ...4) [out|aside] (for|from|with|in) who:{who} [plan|programme|
        + program|workouts|workout|sheet] [{until}]
        (leave out|take out|leave|drop|remove|stop|skip|cut|pause|ban|cancel|hold|
        + set aside) who:{who} exercise:(_ ...4) [out|off|aside] [{until}]
        (take|get) [the] exercise:(_ ...4) out (for|with) who:{who} [{until}]
        who:{who} (stays|is|keeps|is to stay|should stay|has to stay) (off|away from)
        + exercise:(_ ...4) [{until}]
        (take|keep|get) who:{who} (off|away from) exercise:(_ ...4) [{until}]
        take exercise:(_ ...4) (off|out of) who:{who} [plan|programme|program|sheet] [{until}]
        """,
    ),
    (
        "update",
        """
        ({move}) ({whoever}) [{are}] (on|with) (an|the|any|one of the) ({older}) ({version}) [of programme:(_
        + ...5)]
        ({move}) ({whoever}) [{are}] (on|with) (an|the|any|one of the) ({older}) ({version}) (on|onto|to)
        + (the|its|their) (new|newest|latest|newer|current) ({version})
        ({move}) ({whoever}) [{are}] (on|with) (an|the|any|one of the) ({older}) ({version}) (on|onto|to)
        + [the] [new|newest|latest] [version|one|sheet] [of] programme:(_ ...5)
        ({move}) ({whoever}) (on|onto|to) the (new|newest|latest) ({version}) [of programme:(_ ...5)]
        """,
    ),
    (
        "assign",
        """
        ({move}|start|assign|set) who:{all} [back|over|up] (on|onto|to|in|with) programme:((_|#) ...6)
        (assign|give) programme:((_|#) ...6) to who:{all}
        """,
    ),
    (
        "release",
        """
        (release|clear) who:{who} [to (train|start|begin)|for training] [{doctor}]
        (let|allow) who:{who} [to] (train|start|begin|go|go on) [training|again|on] [{doctor}]
        who:{who} (may|can|is allowed to|is ok to|is cleared to|is fine to) (train|start|begin|go back to)
        + [training|again] [{doctor}]
        who:{who} (is|was) cleared [to (train|start|begin)|for training] [{doctor}]
        """,
    ),
    (
        "card",
        """
        (how (is|are|was)|hows|how do|how does|how did) [it going (with|for)] [our|my] who:{who} [doing|
        + getting along|keeping|getting on|going|coming along|progressing|holding up|faring|training|feeling|
        + do|get on] [last time|yesterday]
        (how are|hows|how is) (things|it) [going|looking] (with|for) who:{who}
        [show|show me|give me|send me|see|open|the] [the|a] (card|status|overview|summary|file|profile|
        + update|report|details|news|word) (for|of|on|about|from) who:{who}
        [show|show me|give me|see|open] who:{who} [card|status|file|profile|progress|update|summary|
        + overview]
        who:{who} [,|:|-] how (is|are|was) (she|he|it|they|things|it going) [doing|getting on|going]
        (tell me|show me|say) [more|something|everything] [about|on|how] who:{who} [is doing|is|
        + is getting on|does|did]
        (what about|whats up with|what is up with|whats new with|whats going on with|
        + whats happening with|any news (of|from|on)) who:{who}
        [give me|show me|tell me|whats] the (lowdown|news|story|latest|state) (on|of|with|about) who:{who}
        (did|has|does|do|have) [our|my] who:{who} (train|trained|work out|worked out|show up|shown up|lift|
        + lifted|do it|done it|come|missed anything) ....4
        (anything|something|any word|any news|any message|any messages) (new|from|of|on|about|with) who:{who}
        (is|are) [our|my] who:{who} (ok|okay|fine|well|alright|all right|doing ok|doing well|
        + doing fine|on track)
        (pull up|bring up|open up|look up|check|check on|check in on) who:{who} [card|file]
        (what|whats|what is) who:{who} [been] (up to|doing)
        (where is|wheres) who:{who} [in the rotation|in the programme|at|up to]
        (is|has|are|have) [our|my] who:{who} [been|still|really|getting|any]* (stuck|stalled|stalling|
        + plateaued|struggling|stronger|progressing|improving|behind|slacking)
        (why|whys|how come) (is|has|did|does|was|isnt|hasnt|cant) who:{who} (stuck|stalled|stalling|
        + plateaued|struggling|behind|weaker|stopped ..3|not ..3)
        """,
    ),
    (
        "talk",
        """
        what did who:{who} (ask|write|say|answer|reply) [me|you|us]
        what (did i|have i) (tell|told|write|written|wrote|say|said|answer|answered) [to] who:{who}
        [show|show me|give me|see|open] [my|the|our] (talk|talks|thread|conversation|words|messages|
        + questions|question|answers) (with|of|from|to|by) who:{who}
        [show|show me|give me|see|open] who:{who} (talk|thread|conversation|words|messages|questions|
        + question|answers|answer)
        what (was|were) who:{who} (question|questions|answer|answers|words)
        """,
    ),
    ("sets", "who:{who} [the] (last|latest|recent|past) # ....4"),
    *OF_THE_SHEET,
    (
        "sets",
        """
        (what|how|whats|hows|when|which|where) ....4 who:{who} ....8
        (show|show me|give me|see|look up|list) [the|all|last] ....4 who:{who} ....6
        (history|last|progress|numbers|sets|results) ....4 (of|for) ....3 who:{who} ....4
        who:{who} ....2 [last] (history|numbers|sets|results|progress|last time|last week|yesterday) ....3
        """,
    ),
)

_LISTS = {
    "opening": _OPENING,
    "because": "(because|cause|cos|coz|since|as|he|she|they|his|her|their|until) ....10",
    "closing": _CLOSING,
    "until": _UNTIL,
    "day": _DAY,
    "anyone": ANYONE,
    "forget": FORGET,
    "rest": _REST,
    "swap": _SWAP,
    "move": _MOVE,
    "whoever": f"{_EVERYONE.strip()}|those|all those|clients|whoever|anyone|anybody".replace("\n", "|"),
    "are": "who is|who are|that are|still",
    "version": "version|versions|sheet|sheets|one",
    "older": "older|old|earlier|previous|former",
    "place": _PLACE,
    "except": "except|except for|but not|but|apart from|besides|other than|without|not",
    "everyone": f"({_EVERYONE.strip()})".replace("\n", "|"),
    "named": "(@client|@clients)",
    "doctor": _DOCTOR.strip().replace("\n", " "),
    "earlier": _EARLIER.strip().replace("\n", " "),
    "saying": "[that|saying|to say] [:|,|-]",
}
_CONTINUED = Expression(r"(?<=\|)\n\s*\+ |\n\s*\+(?= )")
"""A line that begins so goes on with the one before."""
_NAMED = f"{CLIENT}|{CLIENTS}"
_ANY_NAME = "_|_ _|_ _ _"


def _patterns(who: str, everyone: str, *, only_of_clients: bool) -> tuple[tuple[Kind, Pattern], ...]:
    return tuple(
        (kind, Pattern(f"^ [{{opening}}]* said:({line}) [{{closing}}]* $", **_LISTS, who=who, all=everyone))
        for kind, text in _TURNS
        for line in _lines(text)
        if not only_of_clients or "who:" in line
    )


def _lines(text: str) -> list[str]:
    return [line.strip() for line in _CONTINUED.sub(" ", text).strip().splitlines()]


PHRASES = _patterns(_NAMED, f"{_NAMED}|{_EVERYONE.strip()}".replace("\n", "|"), only_of_clients=False)
"""Requests of clients who are named, or of none."""

OF_ANYBODY = _patterns(_ANY_NAME, _ANY_NAME, only_of_clients=True)
"""The same where any one to three words stand for a name."""

_TELLING = (
    "(dm|pm|tell|tel|telll|tlel|write [to]|message|mesage|messege|msg|text|txt|answer|reply to|say to|ask)"
)


def _heads(who: str) -> tuple[Pattern, ...]:
    lines = (
        f"^ [{{opening}}]* said:{_TELLING} who:{{all}} (on|doing) programme:(_ ...5) ':'",
        f"^ [{{opening}}]* said:{_TELLING} who:{{everyone}} ({{except}}) but:{{named}} [that] [:|,|-]",
        f"^ [{{opening}}]* said:{_TELLING} who:{{all}} [that] [:|,|-]",
        "^ [{opening}]* said:let who:{all} know [that] [:|,|-]",
        "^ [{opening}]* said:(drop|send|write|give) who:{all} a (line|message|word) {saying}",
        "^ who:{all} (on|doing) programme:(_ ...5) ':'",
        "^ who:{everyone} ({except}) but:{named} ':'",
        "^ who:{all} ':'",
    )
    return tuple(Pattern(line, **_LISTS, all=who) for line in lines)


TELLING = _heads(f"{_NAMED}|{_EVERYONE.strip()}".replace("\n", "|"))
"""How words to be passed on begin."""

TELLING_ANYBODY = (Pattern(f"^ [{{opening}}]* said:{_TELLING} who:({_ANY_NAME}) [:|,]", **_LISTS),)
"""The same where any one to three words stand for a name."""


def _beginnings(text: str, who: str) -> tuple[Pattern, ...]:
    return tuple(Pattern(f"^ [{{opening}}]* said:({line})", **_LISTS, who=who) for line in _lines(text))


NOTES = (*_beginnings(NOTING, _NAMED), *_beginnings(NOTING_OF, _NAMED))
"""How a note on clients who are named begins."""

NOTES_WITH_NAME = NOTES[len(_lines(NOTING)) :]
"""Those of them whose text begins with the name."""

NOTES_ON_ANYBODY = _beginnings(NOTING, _ANY_NAME)
"""The same where any one to three words stand for a name."""

TAKES = tuple(Pattern(f"^ [{{opening}}]* {line} [{{closing}}]* $", **_LISTS) for line in _lines(TAKING))
DECLINES = tuple(Pattern(f"^ [{{opening}}]* {line} [{{closing}}]* $", **_LISTS) for line in _lines(DECLINING))
"""How another coach's offer of a client is answered."""
