"""How somebody says that an absence told before comes to nothing, or is over: "the holiday is cancelled",
"the holiday is over"."""

from domain.whole_messages import short_message, wholes

_TRIP = """
    [the|my|our|that|this|all]* (holiday|holidays|vacation|vacay|trip|trips|travel|travels|travelling|
    traveling|business trip|work trip|weekend away|weekend trip|cruise|conference|flight|camping [trip]|break|
    time off|leave|annual leave|city break|pause)
"""
_ILLNESS = (
    "[the|my|this]* (flu|flus|cold|colds|bug|bugs|covid|covids|fever|fevers|virus|illness|infection|cough)"
)

_NOTHING_OF_IT = wholes(
    """
    {news} {forget} {trip} [{pause} {it} {off}] {then}
    {news} {trip} {was} {off} [{after}] [{pause} {forget} it] {then}
    {news} {not_going} [{away}] [{after}] {then}
    {news} {staying} [{after}] {then}
    {news} (i|we) (can|will) train after all|{news} (cancel|scrap|forget|drop|end|stop|undo) (the|my) pause
    {news} i dont need the (pause|break) [{after}|after all]
    """,
    news="[change of plan|change of plans|(good|bad|sad) news|plans changed|our plans changed|,|'.'|-|!|:]*",
    forget="(never mind|nevermind|nvm|forget|ignore|scrap|cancel) [about|what i said about]*",
    trip=_TRIP,
    it="[it|its|it s|it is|that|that s|thats|we|that is|everything]*",
    was="[is|was|has been|has|got|s|are|were|gets|been|isnt|is not|wont be|has just been|just got|now]*",
    off="""
        (cancelled|canceled|called off|off|not happening|happening|postponed|fell through|been cancelled|been
        canceled|not on|not taking place|fallen through|cancelled it|canceled it|dropped)
    """,
    not_going="""
        [it turns out|turns out]* [i|im|i am|we are|were|we re|we]* (not|wont be|arent) (going|leaving|flying|
        travelling|traveling|away)
    """,
    away="(away|on holiday|on vacation|on the trip|anywhere|there|to _)",
    after="(after all|anymore|any more|any longer)",
    staying="[i|im|i am|we are|were|we re]* staying (home|here|at home|put|in town)",
    pause="[,|'.'|;|-|!|as|because|since|so|and]*",
    then="""
        [,|'.'|;|-|!|so|and|i|we|can|will|ill|im|train|training|as|planned|usual|normal|keep|going|
        after|all|then|back|on|now]*
    """,
)

_OVER = """
    [{news}]* {trip} [{was}]* {over} [{news}]* [{again} [{news}]*]*
    [{news}]* (end of|finished|done with) {trip} [{news}]* [{again} [{news}]*]*
    [{news}]* {again} [{news}]* [{again} [{news}]*]*
"""
_OVER_WORDS = {
    "news": """
        finally|sadly|alas|unfortunately|well|so|right|then|and|now|,|'.'|-|!|;|from (today|now) on
        (i|im|i am) (feel|feeling) [all|much|really|so]* (great|good|fine|better|well|fit|ok) [again]
        what (now|next)|whats next|what is next
    """,
    "was": "is|s|are|was|were|has|have|come|came|to|all|now|officially|just|already|sadly|been",
    "over": "over|gone|better|passed|done|finished|ended|an end|behind me|behind us|past me|past us|up",
    "i": "i|im|i am|we|were|we are",
    "get": "come|came|got|get|just|safely|finally|feeling|all|going|getting|straight|been",
    "there": """
        at it|to it|in it|on it|to (training|work|lifting|normal|the gym|business|reality|the grind)
        in the gym|home|again|now|safe|safely|already|from {trip}|in town
    """,
    "go_on": """
        go on|go|get going|get back to it|get started|start|carry on|continue|train|training|lift|lifting|work
        do this|starting|get back|action|more|it
    """,
}
_AGAIN = """
    [{i}]* [{get}]* back [{there}]*
    [{i}]* [{get}]* ready [again|now] [(to|for) {go_on}] [again]
    [i|we]* (can|could|want to|will) {go_on} again
    lets {go_on} [again]
    {go_on} (again|as usual|as planned|as normal|as before)
"""
_BACK = wholes(_OVER, again=_AGAIN, trip=_ILLNESS, **_OVER_WORDS)
_HOME = wholes(_OVER, again=f"{_AGAIN}\n[{{i}}]* [{{get}}]* home [{{there}}]*", trip=_TRIP, **_OVER_WORDS)
"""Home is where somebody comes back to from a journey, and stays with an illness."""


def stays(text: str) -> bool:
    """Return whether all that is said is that an absence told before comes to nothing."""
    message = short_message(text)
    return message is not None and any(pattern.is_in(message) for pattern in _NOTHING_OF_IT)


def is_back(text: str, *, was_ill: bool) -> bool:
    """Return whether all that is said is that an absence told before is over; of nobody else would it be."""
    message = short_message(text)
    patterns = _BACK if was_ill else _HOME
    return message is not None and any(pattern.is_in(message) for pattern in patterns)
