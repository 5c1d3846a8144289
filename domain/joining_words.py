"""How answers to the first questions are read: a yes or no to what this is, an age, a guardian's word.

What is not clear is no answer: nobody is taken to agree, or to be of age, by a guess.
"""

import re
from typing import Literal

from domain.expressions import Expression
from domain.reading.number_words import TEENS, TENS, UNITS

ADULT_FROM = 18
"""Under this age in years a guardian has to agree. The house's own rule: what counts as adult differs by
country."""

_AGREES = Expression(
    r"(?!(?:is|am|do|have) )"
    r"(?:(?:y|yes|yeah|yep|yup|ya|yea|yeh|ye|yh|yass?|aye|sure|ok|okay|k|"
    r"no (?:worries|problem|prob)|all|alright|right|fine|"
    r"great|perfect|good|cool|deal|happy|"
    r"glad|of course|absolutely|certainly|definitely|why not|agree(?:d|ing)?|accept(?:ed)?|consent|"
    r"i|i'm|i am|i've|i have|am|have|it's|its|it is|that's|thats|that is|this is|is|sounds?|read|"
    r"see|quite|perfectly|very|much|understand|understood|got it|"
    r"thing|with|to|of|by|me|it|that|this|them|the|everything|in|do|go|going|go ahead|on|for it|then|"
    r"let's|start|begin|please|and|so|oh|hi|hello|hey|there|well|thanks|thank you|mate|dear|"
    r"\U0001f44d|✅)[ ,.!]*)+"
)
"""Words that leave a yes a yes, in any order; no denial, condition or question is among them."""
_CLEARLY = Expression(
    r"\b(?:y|yes|yeah|yep|yup|ya|yea|yeh|ye|yh|yass?|aye|sure|ok|okay|k|"
    r"no (?:worries|problem|prob)|alright|all right|fine|"
    r"deal|of course|absolutely|certainly|"
    r"definitely|agreed?|agreeing|accept|accepted|i do|consent|i'm in|i am in|perfect|"
    r"(?:sounds|all) (?:good|great|cool)|(?:good|happy|cool) with|go (?:ahead|on|for it)|please do|"
    r"let's (?:go|start|begin|do))\b|\U0001f44d|✅"
)
_REFUSES = Expression(
    r"(?:no|nope|nah|n|no way|never|not really|not now|not yet|not today|later|maybe later|"
    r"stop|cancel|"
    r"no thanks?|no thank you|(?:i )?(?:don't|do not|dont|can't|cannot|won't) (?:agree|accept|consent|"
    r"want(?: to| this| that)?|think so)|"
    r"i disagree|disagree|i'd rather not|i would rather not|rather not|i refuse|decline|i decline|"
    r"leave me alone)"
    r"(?:[ ,.!]+(?:thanks?|thank you|sorry|please|to (?:that|this)|with (?:that|this)|no))*"
)
_ABOUT: dict[str, Expression] = {
    "stored": Expression(
        r"\b(?:stor\w+|sav\w+|kept|keep|data|information|record\w*|privacy|gdpr|collect\w*)\b"
    ),
    "seen": Expression(
        r"\b(?:who (?:can )?(?:sees?|reads?|knows?)|shar\w+|(?:see|read) (?:it|this|what i|"
        r"my (?:data|journal|messages?|words|workouts|training|answers|numbers|stuff)))\b"
    ),
    "leave": Expression(r"\b(?:leave|quit|stop|get out|unsubscribe|delete|erase|remove|cancel)\b"),
    "what": Expression(
        r"\b(?:what (?:is|are|do|does|can) (?:this|you|it)|who are you|who(?:'s| is) this|"
        r"who am i (?:speaking|talking|writing|chatting) (?:to|with)|are you (?:a )?(?:robot|bot|"
        r"human|real|person)|"
        r"how does (?:this|it) work|medical|doctor|emergenc\w+)\b"
    ),
}
_WHO = Expression(
    r"\bwho (?:are|r) (?:you|u)\b|\bwho(?:'s| is) this\b|"
    r"\bwho am i (?:speaking|talking|writing|chatting) (?:to|with)\b|\bare you (?:an? )?(?:real |"
    r"actual )?(?:robot|bot|human|person|ai)\b"
)
_ADULT = Expression(
    r"(?:yes|yeah|yep|yup|ok|okay|sure|of course|y|adult|an adult|i am|i'm|i do|over|above|older|"
    r"(?:i'm |i am |im |yes,? |yep,? |yeah,? )*(?:an? )?(?:adult|grown[- ]?up|grown (?:man|woman|adult)|"
    r"of age|"
    r"old enough|over (?:18|eighteen)|"
    r"above (?:18|eighteen)|"
    r"18 or (?:older|over|more)|18\+|(?:well |way |long |far )?(?:over|past|above|older)(?: than)?"
    r"(?: (?:18|that|it))?|over age)|i am 18 or (?:older|over))"
    r"(?:[ ,.!]+(?:i am|i'm|thanks|sure|of course|an adult|adult|yes|for sure|definitely|easily|by far|"
    r"lol|haha|"
    r"i'm afraid|unfortunately))*"
)
_MINOR = Expression(
    r"(?:no|nope|n|not yet|not quite|nearly|almost|soon|"
    r"(?:no,? |i'm |i am |still )*(?:an? )?(?:minor|child|kid|teen(?:ager)?|under (?:18|eighteen|age)|"
    r"below (?:18|eighteen)|"
    r"underage|younger(?: than (?:18|that))?|not (?:yet )?(?:18|eighteen|an adult|of age|"
    r"old enough)(?: yet)?))"
    r"(?:[ ,.!]+(?:i am not|i'm not|sorry|not yet|yet|i'm under 18|i am under 18))*"
)
_AGE = Expression(
    r"(?:(?:yes|yeah|yep|yup|yea|ye|ya|ok|okay|sure|of course|no|nope|well|hmm|oh|sorry|oops|actually|hi|"
    r"hey|hello|i'm|i am|im|am|i have|i have got|my age is|age|aged|i just turned|i turned|turned|"
    r"just|already|only|turn|turning|will be|i'll be|i shall be|"
    r"still|nearly|almost|it's|make that|i meant|i mean)[,:. ]+)*(?P<age>\d{1,3})(?: ?(?:years?|yrs?|"
    r"y)(?: ?old)?| ?y/?o)?"
    r"(?:[ ,.!]+(?:now|already|years young|thanks|this year|(?:last|this) (?:week|month|year|\w+day)|"
    r"yesterday|today|next month|next year|soon|in \w+|actually|"
    r"not \d+|and a half|(?:or|maybe) (?P<other>\d{1,3})|(?:and )?\d+ (?:in|on|next|this) \w+))*"
)
_DECADE = Expression(
    r"(?:(?:i'm|i am|im|in|my|the|early|mid|middle|late|well|into|somewhere)[ -]+)*"
    r"(?:[2-9]0'?s|(?:twent|thirt|fort|fift|sixt|sevent|eight)ies)"
)
_AGE_IN_WORDS = Expression(
    rf"\b(?:(?P<tens>{'|'.join(TENS)})(?:[ -](?P<units>{'|'.join(UNITS)}))?|(?P<teens>{'|'.join(TEENS)}))\b"
)
_KIND_PICTURES = Expression("[\U0001f600-\U0001f60a\U0001f642\U0001f44c\U0001f4aa\U0001f389\u263a\ufe0f]")
"""Signs that make a yes no other than one."""
_PICTURES = Expression(r"[^\w\s'.,!?:+/-]")
"""Signs beside the words that say nothing, like a cake."""
_NOT_YET = Expression(r"\b(?:nearly|almost|turning|next (?:month|year|week)|soon|in \w+)\b")

_GUARDIAN = Expression(
    r"\b(?:(?:step|foster|grand)?-?(?:mother|mum|mom|mam|mama|father|dad|papa|parents?)|guardians?|"
    r"grandma|grandpa|aunt|"
    r"uncle|carer|foster (?:mother|father|parents?))\b"
)
_GUARDIAN_AGREES = Expression(
    r"\b(?:agrees?|agreed|allows?|allowed|consents?|consented|approves?|approved|permits?|permission|"
    r"ok|okay|fine|happy|yes|lets|accepts?)\b"
)
_OPEN_STILL = Expression(
    r"\b(?:no|not|n't|never|without|if|whether|when|once|will|would|could|should|may|might|maybe|"
    r"perhaps|later|tomorrow|"
    r"tonight|ask|asking|soon|yet|refuses?|against|away|doesn't|don't|dont|doesnt|won't|can't|isn't|"
    r"haven't|hasn't|"
    r"dead|died|do i|must|need|needs)\b|\?"
)

BACK = frozenset(
    {"back", "go back", "wrong", "that's wrong", "that is wrong", "no that's wrong", "no wrong", "not right"}
    | {"that's not right", "that is not right", "it's wrong", "incorrect", "no it isn't", "no it's not"}
)
"""Words that take the answer before back."""

_SPOKEN_SIGNS = Expression(r"(?: (?:full stop|period|exclamation mark|comma))+$")
"""Signs that a telephone has written out as words."""

SKIP = Expression(
    r"(?:skip(?: it| this| that)?|pass|next|later|not now|(?:i )?(?:don't|dont|do not) know(?: yet)?|"
    r"no idea|not sure|"
    r"i'll tell you later)"
)


def plainly(text: str) -> str:
    """Return an answer as it is compared: lower case, one space between words, no closing stop."""
    said = " ".join(text.casefold().replace("’", "'").split()).strip(" .!")
    return _SPOKEN_SIGNS.sub("", said).strip(" .!")


def agrees(text: str) -> bool | None:
    """Return whether `text` is a yes (True) or a no (False) to what was asked; None where it is neither."""
    said = plainly(_KIND_PICTURES.sub(" ", text))
    if _REFUSES.fullmatch(said):
        return False
    return True if said == "y" or (_AGREES.fullmatch(said) and _CLEARLY.search(said)) else None


def asked_about(text: str) -> tuple[str, ...]:
    """Return what of the conditions a question is about: `what`, `stored`, `seen`, `leave`; none for no
    question."""
    said = re.sub(r"\br u\b", "are you", plainly(text))
    is_asked = "?" in said or re.match(r"(?:what|who|how|where|why|can|do|does|is|are|will|could)\b", said)
    about = tuple(about for about, words in _ABOUT.items() if words.search(said)) if is_asked else ()
    return about if about == ("what",) else tuple(each for each in about if each != "what")


def asks_who(text: str) -> bool:
    """Return whether `text` asks who, or what, answers here."""
    return _WHO.search(plainly(text)) is not None


def age_of(text: str) -> Literal["adult", "minor"] | None:
    """Return whether `text` says that somebody is of age; None where it does not say."""
    said = " ".join(_PICTURES.sub(" ", plainly(text)).split()).rstrip(" .!")
    said = _AGE_IN_WORDS.sub(_age_in_numbers, said)
    found = _AGE.fullmatch(said)
    if found is not None:
        age = min(int(found["age"]), int(found["other"] or found["age"]))
        if not 5 <= age <= 110:
            return None
        return "adult" if age > ADULT_FROM or (age == ADULT_FROM and not _NOT_YET.search(said)) else "minor"
    if _MINOR.fullmatch(said):
        return "minor"
    if _DECADE.fullmatch(said):
        return "adult"
    return "adult" if _ADULT.fullmatch(said) else None


_BORN = Expression(
    r"(?:yes,? |i'm |i am |i was )*(?:born|year|from)?(?: in| of birth:?)?(?: \w+)? ?(?P<year>19\d\d|20\d\d)"
)


def age_by_year(text: str, year: int) -> Literal["adult", "minor"] | None:
    """Return whether somebody born in the year that `text` says is of age in `year`; None: unsure."""
    found = _BORN.fullmatch(plainly(text))
    age = year - int(found["year"]) if found else None
    if age is None or not 5 <= age <= 110 or age == ADULT_FROM:
        return None
    return "adult" if age > ADULT_FROM else "minor"


def _age_in_numbers(found: re.Match[str]) -> str:
    tens, units, teens = found.group("tens", "units", "teens")
    return str(TEENS[teens] if teens else TENS[tens] + UNITS.get(units or "", 0))


def guardian_agrees(text: str) -> bool:
    """Return whether `text` is a guardian's word: it names who agrees, and nothing in it leaves that open."""
    said = plainly(text)
    return bool(_GUARDIAN.search(said) and _GUARDIAN_AGREES.search(said) and not _OPEN_STILL.search(said))
