"""Where a message asks something, with a question mark or without: no set is made of what stands there."""

from domain.reading.message import Message
from domain.reading.patterns import Pattern
from domain.reading.words import words_of

_OPENS = Pattern(
    """
    (^|<({before})) !({verb} #) {opening} >({about})
    ^ [yo|hey|hi|ok|so]* {called} ,? opens:({opening}) >({about})
    <(#|rep|reps|each) opens:({asks_me}) >(_)
    (^|<({before})) {by_itself}
    (^|<({before})) (tell|ask|let) [the|my] coach
""",
    before=words_of(
        """. , ! ? : ; ( ) - so and but or coach hi hey ok wondering question btw for please um uh sorry then
        also"""
    )
    | {"\n"},
    asks_me="""
        (do|should|shall|can|could|may|must) i !({doing})|(how|why|when) (should|do|does|can|long|come|is|are)
        what (should|do|does|is|are|if)|(is|are) (that|this|it|my|the) !(was)
    """,
    doing=words_of("have just also only not"),
    called=words_of("boss mate bro man dude chief bruv sir miss champ buddy bruh fam"),
    verb=words_of("did do does have has will would could can may might"),
    opening="""
        should|shall|can|could|would|do|does|did|is|are|am|was|were|will|may|might|must|ought|has|have i
        isnt|arent|dont you|cant i|couldnt i|shouldnt i
        what if?|whats|wats|how|hows|why|when|which|who|where|if|whether
        any (tips|advice|idea|ideas|thoughts|chance)
    """,
    by_itself="""
        thoughts (on|about)
        worth [me|us|it|just|still]* ~ing
        (reckon|think) (i should|(im|i am) ready|i (can|could|may)|its (ok|okay|time|too))
        {choice} ...15 or !(so|something|more|#)
    """,
    choice=words_of(
        """add carry continue deload stick stay keep move push raise reduce drop go going straps belt heavier
        lighter rest switch try wait swap stop more less higher lower"""
    ),
    about=words_of(
        """i we you u it its that this the these those my your there they he she anyone s # a an any one
        is are was were do does did should can could would have to if of for on
        much many long often about kind sort weight heavy reps sets load exercise exercises number
        mean means rest lower high low left next up come going exactly happens matter else too not
        good bad better best normal ok okay safe more less wrong right worth tips advice idea thoughts chance
        bench squat squats rows dips leg"""
    ),
)
"""Words that can open a question, where a question can begin and with what can follow."""

_ASKS = Pattern(
    """
    isnt|why|whats|any|whether|(tell|ask|let) [the|my] coach
    what !(a|an|(i|we) did)
    how !(a|an|i|we)
    (should|shall|can|could) !({doing}|feel|you believe)
    (is|are|am|does) (it|that|this|i|my|the|there|these|those|they|we)
    (will|would|was|were|did) (it|that|this|i) (be|have|ok|okay|bad|wrong|normal|matter)
    (will|would) you (be|have)|(may|might) i
    do !({doing}|the|my|it|that|this|these|those|more|less|#|squats|bench|rows)
""",
    doing=words_of("have be do not only still barely also easily probably"),
)
"""Those of them that ask even where no question mark stands at the end."""


def questions_in(message: Message) -> list[tuple[int, int]]:
    """Return the questions and requests, each from its opening words to the end of its sentence."""
    spans: list[tuple[int, int]] = []
    for found in _OPENS.find(message):
        if spans and found.start < spans[-1][1]:
            continue
        _, last = message.sentence_span(found.start)
        start, _ = found.parts.get("opens", (found.start, found.end))
        if "?" in message.texts(last - 1, last + 1) or _ASKS.at(message, start, last):
            spans.append((start, last))
    return spans
