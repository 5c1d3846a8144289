"""How somebody says that an absence told before comes to nothing: "the holiday is cancelled"."""

from domain.whole_messages import short_message, wholes

_PATTERNS = wholes(
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
    trip="""
        [the|my|our|that|this]* (holiday|holidays|vacation|vacay|trip|trips|travel|business trip|work trip|
            weekend away|weekend trip|cruise|conference|flight|camping [trip]|break|time off|leave|
            annual leave|city break)
    """,
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


def stays(text: str) -> bool:
    """Return whether all that is said is that an absence told before comes to nothing."""
    message = short_message(text)
    return message is not None and any(pattern.is_in(message) for pattern in _PATTERNS)
