"""Whether somebody should see a doctor before hard training begins: four questions, and how answers are read.

The questions follow the published logic of pre-participation screening (Riebe et al. 2015, Med Sci Sports
Exerc 47:2473-2479): signs and symptoms, known disease, current activity; joints and back are asked about as
well, since training loads them. They are put in the house's own words, and the house is stricter than the
paper: training here is hard from the first day, so any yes, not knowing included, goes to a doctor first.
Nothing here says what a complaint is; what is not clearly "none" is never taken for it.
"""

import re
from typing import Literal, get_args

from domain.expressions import Expression

Matter = Literal["signs", "disease", "joints", "inactive"]
MATTERS: tuple[Matter, ...] = get_args(Matter)
"""In the order of the questions, which count from 1."""

_ALL = Expression(r"\b(?:to |of )?(?:all|any)(?: of)?(?: the| these)? (?:4|four)\b|\bof the (?:4|four)\b")
_NO_TROUBLE = (
    r"(?:no|not any|without(?: any)?) (?:problems?|issues?|complaints?|troubles?|worries|concerns)"
    r"(?: (?:with|in|of|for|about) (?:(?:any|all|those|these|that|them)(?: of (?:these|them|those))?|"
    r"(?:(?:my|the|any) )?(?:health|body|heart|joints?|health or joints?))| whatsoever)?"
)
_NONE = Expression(
    r"(?:(?:i|we) (?:have|have got|'ve got|got) |i've got )?"
    rf"(?:{_NO_TROUBLE}|(?:all|4|four)(?: x|x| times)? no(?:es|s)?|n{{4}}|"
    r"no (?:x ?)?(?:4|four)(?: times| x|x)?|"
    r"(?:i )?(?:don't|do not|dont) have (?:any|one)|no|nope|nah|none|nothing|never|not one|not any|neither|"
    r"not at all|0|zero|nil|"
    r"(?:nothing|none|not|nope not|no not) (?:that i(?:'m| am) aware of|to my knowledge|that i know(?: of)?|"
    r"(?:like|of) (?:that|the sort|the kind|those|these)|to (?:report|declare|mention|worry about)))"
    rf"(?:[ ,.]+(?:{_NO_TROUBLE}|no|none|nope|nothing|not one))*"
    r"(?: (?:to )?(?:of )?(?:all|any|everything|these|them|those|it|that|the above)"
    r"(?: (?:of )?(?:these|them|those|it))?)*"
    r"(?: (?:at all|really))?(?: (?:fits?|apply|applies|is true|are true)(?: (?:to|for) me|"
    r" me)?)?(?: for me| to me)?"
    r"(?: (?:that i(?:'m| am) aware of|to my knowledge|that i know(?: of)?|as far as i know))?"
    r"(?:[ ,.;:!-]+(?:thanks|thank you|thankfully|luckily|fortunately|ok|okay|dear|"
    r"(?:i'm |i am |all )?(?:very |perfectly )?(?:fine|healthy|good|well|fit|fit and well|fit and healthy)|"
    r"fit as a fiddle|everything is fine|everything's fine|"
    r"(?:and )?i(?:'m| am|'ve been| have been)? ?(?:still |very |always |quite )*"
    r"(?:train(?:ing)?|walk(?:ing)?|run(?:ning)?|lift(?:ing)?|swim(?:ming)?|cycl(?:e|ing)|active|"
    r"work(?:ing)? out)"
    r"(?: (?:every day|daily|regularly|a lot|most days|(?:for )?(?:years|months|ages)|all my life|"
    r"(?:once|twice|[2-7] times|two times|three times|four times|five times)(?: a| every| per)? week))*))*"
)
"""A clear no to all four; what may stand beside it says nothing but that all is well, or of being active."""
_UNSAID = Expression(
    r"(?:yes|yeah|yep|yup|y|some|some of (?:them|these)|one of (?:them|these)|a few|a few of (?:them|"
    r"these)|i do|"
    r"maybe|perhaps|possibly|i think so|sort of|kind of|not sure|i'm not sure|i am not sure|unsure|"
    r"(?:i )?(?:don't|do not|dont) know|no idea|hard to say|yes,? (?:some|one|a few|several)|several|"
    r"all|all of them)"
)
_NUMBER_WORDS = {
    "one": "1",
    "two": "2",
    "three": "3",
    "four": "4",
    "first": "1",
    "second": "2",
    "third": "3",
} | {
    "fourth": "4",
    "last": "4",
}
_BESIDE_NUMBERS = Expression(
    r"yes|no|not|none|nothing|n|y|and|or|only|just|numbers?|nr|except|but|to|for|maybe|also|the|is|"
    r"are|it's|that|a|"
    r"bit|i|have|think|so|sure|questions?|points?|apply|applies|fits?|with|of"
)
_BUT = Expression(r"\b(?:but|except|only|though|although|however|apart from|other than|besides)\b|[,;.!\n]")
_DENIED = Expression(
    r"\b(?:no|not|none|never|without|nothing|don't|dont|doesn't|haven't|hasn't|isn't|free of)\b"
)
_OF: dict[Matter, Expression] = {
    "signs": Expression(
        r"\b(?:chest|breath\w*|dizz\w*|faint\w*|black(?:ed)? out|light-?headed\w*|palpitations?|heartbeat|"
        r"heart (?:beats?|races|racing|flutters?|skips)|swollen|swelling|cramps?|murmur|fatigue\w*|"
        r"(?:always|very|unusually|so|constantly) tired|exhausted|wheez\w*)\b"
    ),
    "disease": Expression(
        r"\b(?:heart|cardi\w*|angina|stents?|pacemaker|bypass|stroke|diabet\w*|blood (?:pressure|"
        r"sugar|thinners?|clots?)|"
        r"hypertension|cholesterol|kidneys?|renal|thyroid|asthma\w*|lungs?|copd|cancer|epilep\w*|seizures?|"
        r"medic(?:ation|ations|ines?)|pills|tablets|insulin|beta ?blockers?|pregnan\w*|gave birth|"
        r"surgery|operat\w+|"
        r"diseases?|conditions?|illness|diagnos\w+|anaemi\w*|anemi\w*)\b"
    ),
    "joints": Expression(
        r"\b(?:knees?|(?<!come )(?<!came )(?<!coming )(?<!go )(?<!going )(?<!get )(?<!got )(?<!be )"
        r"(?<!am )(?<!i'm )backs?(?! (?:to|home|from|then|soon|later|on)\b)|backache|"
        r"shoulders?|hips?|ankles?|elbows?|wrists?|neck|joints?|dis[ck]s?|"
        r"slipped|"
        r"spine|spinal|hernia\w*|arthr\w+|osteo\w+|sciatica|tendons?|tendin\w+|ligaments?|meniscus|"
        r"injur\w+|bones?|pain|hurts?|sore)\b"
    ),
    "inactive": Expression(
        r"\b(?:inactive|sedentary|unfit|out of shape|couch|beginner|never (?:trained|lifted|exercised)|"
        r"long (?:break|time off)|desk job|"
        r"new to (?:this|training|lifting|exercise))\b|"
        r"\b(?:not|haven't|hasn't|don't|didn't|hardly|barely|never|no(?! idea)|little)\b.{0,30}"
        r"\b(?:active|exercis\w+|train\w*|sports?|work(?:ed|ing)? out|lift\w*|gym|moved?|regular\w*)\b"
    ),
}


def readiness_of(text: str) -> frozenset[Matter] | Literal["yes"] | None:
    """Return which matters `text` says yes to, "yes" where it does not say which; None where it is no answer.

    An empty set is a clear no to all of them.
    """
    said = " ".join(text.casefold().replace("’", "'").split()).strip(" .!")
    bare = " ".join(_ALL.sub(" of them", _IS_THAT_FINE.sub("", said)).split())
    if _NONE.fullmatch(bare) or _all_denied(said):
        return frozenset()
    if _UNSAID.fullmatch(said):
        return "yes"
    if "?" in said:
        told = " . ".join(each for each in _CLAUSE.findall(said) if not _ASKS.match(each.strip(" ,;")))
        return matters_in(told)
    return _numbered(said) or matters_in(said) or ("yes" if re.match(r"(?:yes|yeah|yep)\b", said) else None)


_IS_THAT_FINE = Expression(r"[ ,.]+(?:is that |that's |all )?(?:ok|okay|right|fine|good)\?+$")
"""Words that hand an answer over, as in "no problems, ok?"."""
_CLAUSE = Expression(r"[^,;.!?\n]+[,;.!?\n]*")
_ASKS = Expression(
    r"(?:(?:but|and|so|ok|sorry) )?(?:is|are|was|were|do|does|did|can|could|should|would|will|may|what|"
    r"which|how|"
    r"why|who|when|where)\b|[^?]*\b(?:count|mean|matter)\w*\b[^?]*\?"
)
"""A clause that asks something, and so tells of nothing."""


def matters_in(said: str) -> frozenset[Matter] | None:
    """Return the matters that lower-case words tell of, as far as they are not denied; None where of none."""
    told: set[Matter] = set()
    for clause in _BUT.split(said):
        told |= {"inactive"} if _OF["inactive"].search(clause) else set()
        if not _DENIED.search(clause):
            told |= {matter for matter in MATTERS if _OF[matter].search(clause)}
    return frozenset(told) or None


def _all_denied(said: str) -> bool:
    """Return whether each of the four is answered with no: "1 no, 2 no, 3 no, 4 no"."""
    answers = re.findall(r"\b([1-4])\b[).: =-]*(?:no|n)\b", said)
    left = re.sub(r"\b[1-4]\b[).: =-]*(?:no|n)\b|\band\b|[,;.\s]", "", said)
    return sorted(answers) == ["1", "2", "3", "4"] and not left


def _numbered(said: str) -> frozenset[Matter] | None:
    words = [_NUMBER_WORDS.get(word, word) for word in re.findall(r"[a-z']+|\d+", said)]
    numbers = {word for word in words if word.isdecimal()}
    if not numbers or not numbers <= {"1", "2", "3", "4"}:
        return None
    if not all(word.isdecimal() or _BESIDE_NUMBERS.fullmatch(word) for word in words):
        return None
    return frozenset(MATTERS[int(number) - 1] for number in numbers)
