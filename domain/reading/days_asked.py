"""What is asked about the days to come: when the next workout is, what the week has, whether one may train
early, or not today, or on another day without saying which.

Only a message that is nothing else is taken for one.
"""

import re
from typing import Literal

DaysAsked = Literal["when", "week", "early", "today", "not today", "another day"]

_DAY = (
    r"(?:today|tonight|tomorrow|now|already|this (?:morning|afternoon|evening)|(?:on |this |next )?"
    r"(?:mon|tues|wednes|thurs|fri|satur|sun)day)"
)
_TRAIN = r"(?:train|lift|work ?out|go|come|exercise)"
_WORKOUT = r"(?:workout|session|training|one|training day|gym day|time)"
_WHEN = re.compile(
    r"(?:and |so )?when(?: (?:is|was|are)|'s|s)? ?(?:it|that|(?:my |the )?(?:next|first|coming|following)?"
    rf"(?: {_WORKOUT})?(?: due| on)?)?|"
    r"when (?:do|should|must|can|shall|am) i (?:to |have to |supposed to )?"
    rf"{_TRAIN}(?:ing)?(?: again| next)?|"
    r"when (?:do|can|should|shall|will) i (?:start|begin)(?: again| training)*|"
    r"when am i (?:on|due|in|up|back)? ?(?:next|again)?|"
    rf"(?:which|what) day (?:is (?:it|(?:my|the) next {_WORKOUT})|do i {_TRAIN}(?: again| next)?)|"
    rf"(?:how many days|how long)(?: is it)? (?:until|till|to|before) (?:i {_TRAIN}(?: again)?|(?:my |the )?"
    rf"next {_WORKOUT})|"
    rf"(?:do|must|should) i (?:have to )?{_TRAIN} {_DAY}|am i training {_DAY}|"
    rf"is (?:it |{_DAY} )(?:a |my )?(?:training|rest|gym|free) day(?: {_DAY})?|(?:training|rest) day {_DAY}|"
    rf"is there (?:a |any )?{_WORKOUT} {_DAY}|next (?:workout|session|training)(?: day)?"
)
_WEEK = re.compile(
    r"(?:(?:what is|what's|whats|show me|tell me|give me|can i (?:see|have)|send(?: me)?) )?(?:the |my )?"
    r"(?:plan|schedule|programme|training|workouts|sessions|training days|week)(?: (?:for|of|in))?"
    r"(?: (?:the |this |next |coming )+(?:week|days|few days|two weeks))|"
    r"(?:what|how) does (?:my |the |this |next )+week look(?: like)?|"
    r"what's (?:on|up|coming) (?:this|next) week|"
    r"(?:what's|what is|how's|how is) (?:my |the |this |next )+week(?: like| looking)*|"
    r"(?:plan|show(?: me)?) (?:my |the |this |next )+week|(?:my |this |next |the )+week(?: please)?|"
    r"(?:which|what) days (?:do|will|should|must) i (?:train|work ?out|lift)(?: (?:this|next) week)?|"
    r"(?:what are )?my (?:next )?(?:training days|schedule)|(?:the )?schedule|"
    r"when (?:do|will|should) i train (?:this|next) week|"
    r"(?:and |so )?(?:what|how) about (?:the rest of )?(?:the |this |next |the coming )week"
)
_OK = r"(?:ok|okay|fine|alright|all right|allowed|possible|sensible|bad|a problem|too early|too soon)"
_TRAINS = (
    rf"(?:{_TRAIN}|do it|do (?:my |the )?(?:next )?{_WORKOUT}|training|lifting|working out|going|exercising|"
    rf"doing (?:it|(?:my |the )?(?:next )?{_WORKOUT}))"
)
_EARLY = re.compile(
    r"(?P<asks>(?:(?:can|could|may|should) i|i(?:'d| would) like to|i want to|i wanna|let me|"
    rf"(?:is|would) it (?:be )?{_OK} (?:to|if i)|(?:is|would)(?= \w+ing )|"
    r"(?:is there |would there be )?any (?:harm|problem|risk|objections?) (?:in|with|to|if i)|what if i) )?"
    r"(?:(?:i(?:'m| am) )?(?:thinking (?:of|about)|planning (?:on|to)|going to|gonna|tempted to) )?"
    rf"(?:already )?{_TRAINS}"
    rf"(?: (?:a day |one day |two days |a bit )?(?:early|earlier|sooner|in advance)| {_DAY})+"
    rf"(?: instead(?: of (?:on )?{_DAY})?)?"
    rf"(?P<behind>(?:,| -)? (?:(?:is|would|will|if) (?:that|it|this)(?:'s|s| is)? (?:be )?)?{_OK}"
    r"(?: (?:with|by|for) (?:you|me))?)?"
)
"""Asked before it or behind: "is it ok to train today", "training early today, is that ok"."""


_IS_EARLY = re.compile(r"train .*early|(?:i(?:'m| am) )?(?:thinking|tempted) ")
_TODAY = re.compile(
    r"(?:move|bring|shift) (?:it|that|the workout|my workout|the next one)(?: forward)? to today|"
    r"(?:i'll|i will) (?:train|do it) today(?: anyway| already| then)?"
)


_KEPT_BY = (
    r"(?:,|\.|:| -)? (?:(?:because|cos|as|since|due to|had|got|was|were|i|i'm|"
    r"too|stuck|held up|at|in|by|the|my|"
    r"a) )*"
    r"(?:overtime|work|job|traffic|meetings?|kids?|family|baby|busy|overslept|asleep|tired|late|train|bus|car|"
    r"weather)\b[^\d?]{0,50}"
)
_NOT_TODAY = re.compile(
    r"(?:ok(?:ay)?,? |then |i'll |i will |let's |better )*skip(?: it| this(?: one)?| today)?|"
    r"(?:(?:no|nope|nah|sorry|uh|oh),? )?not (?:gonna happen |happening )?(?:today|tonight)"
    r"(?:,? (?:sorry|i'm afraid|i am afraid|coach|thanks|thank you|maybe tomorrow))?|"
    r"(?:(?:sorry|uh|oh|argh),? )?(?:i(?:'ve)? |just |it'?s |that'?s )*"
    r"(?:missed (?:it|this one)|not happening)"
    rf"{_KEPT_BY}|"
    r"(?:(?:sorry|uh|oh|argh),? )?(?:i(?:'m| am) )?(?:not able|unable)"
    r"(?: for it| to(?: train| make it| come| go)?)? (?:today|tonight)(?:[,;:. -]+[^\d?]{2,50})?|"
    r"(?:(?:sorry|uh|oh|argh),? )?(?:i(?:'ve| have)? |got |have |a |working |doing |on )*"
    r"(?:(?:double|extra|long) shift|overtime|on call)(?: again)? (?:today|tonight)|"
    r"(?:sorry,? )?(?:i )?(?:got|was|have been|been|am being) called in(?: again| to work| today| tonight)*"
)
_ASKING = (
    r"(?:(?:can|could|may|shall|let'?s|i need to|i have to|i want to|i'd like to) ?(?:i |we |you )?)?"
    r"(?:please )?"
)
_WHICH = r"(?:it|that|this|today|(?:the|my|this|today's) (?:workout|session|training|one))"
_ELSEWHEN = r"(?:another|a different|some other|any other) (?:day|date)"
_ANOTHER_DAY = re.compile(
    rf"{_ASKING}(?:move|shift|reschedule|postpone|delay|put off)(?: {_WHICH})?"
    rf"(?: (?:to|for|till|until) {_ELSEWHEN})?|"
    rf"{_ASKING}(?:do|train)(?: {_WHICH})? (?:on )?{_ELSEWHEN}(?: instead)?|{_ELSEWHEN}(?: instead)?|"
    rf"{_ASKING}(?:swap|change|switch) (?:the |my )?(?:training )?days?"
)


def days_asked(text: str) -> DaysAsked | None:
    """Return what a message asks of the days to come.

    "today": the next workout is wanted today; "another day": it is to be moved to one that is not said.

    None where it is no such thing.
    """
    said = " ".join(text.casefold().replace("’", "'").split()).strip(" .!?")
    said = re.sub(r",? ?(?:please|thanks|then)$", "", said)
    if len(said) > 80:
        return None
    if _TODAY.fullmatch(said):
        return "today"
    if _NOT_TODAY.fullmatch(said):
        return "not today"
    if _ANOTHER_DAY.fullmatch(said):
        return "another day"
    early = _EARLY.fullmatch(said)
    if early and (early["asks"] or early["behind"] or _IS_EARLY.match(said)):
        return "early"
    if _WEEK.fullmatch(said):
        return "week"
    return "when" if _WHEN.fullmatch(said) else None
