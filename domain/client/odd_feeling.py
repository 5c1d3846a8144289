"""Words of what feels odd, and is neither pain nor a warning sign: "my shoulder is weird", "a bit dizzy"."""

import re
from datetime import timedelta

from domain.actions import Words
from domain.client.draft import Draft
from domain.client.pain import hold_for_pain
from domain.client.talking import pass_on
from domain.client.understanding import understand
from domain.expressions import Expression

_PART = (
    r"(?P<part>shoulders?|knees?|elbows?|wrists?|hips?|ankles?|neck|(?:lower |upper |mid )?back|groin|"
    r"hamstrings?|calf|calves|biceps?|triceps|forearms?|achilles|thumb|ribs?)"
)
_ODD = (
    r"(?:weird|off|odd|funny|strange|tight|uncomfortable|not (?:quite )?right|unstable|wobbly|clicky|numb|"
    r"stiff)"
)
_FEELS_ODD = Expression(
    rf"\b{_PART} (?:feels?|feel|felt|is|are|was|seems?|feeling)"
    rf"(?: (?:a|bit|little|kind|sort|of|still|really|just|so))* {_ODD}\b"
    rf"|\b{_PART.replace('<part>', '<speaks>')}(?:'s|s)?"
    r"(?: (?:is|are|was|were|has been|have been|keeps?|started|a|bit|little|really|still))*"
    r" (?:talking to me|talking|complain(?:s|ed|ing)?|grumbl(?:es|ed|ing)|moan(?:s|ed|ing)|niggl(?:es|ed|"
    r"ing|y)|"
    r"(?:playing|acting|plays|played|acted) up|making itself (?:known|felt)|letting me know|twinged|"
    r"twinging|twinges|(?:gave|had|felt) a twinge|tweaked|not happy|at me|"
    r"unhappy|"
    r"giving me (?:grief|trouble|jip|gyp|a hard time)|misbehaving|protesting)\b"
)
"""What is said of a part that feels other than usual, or as if it spoke; whether it hurts is not said."""
ANSWERED_WITHIN = timedelta(hours=2)
"""For how long a yes is the answer to whether it hurts. The house's own choice."""
_BIT = (
    r"(?:a (?:bit|little|touch)|slightly|somewhat|kind of|kinda|sort of|quite|rather|very|really|badly|"
    r"only|just)"
)
_SCORE = r"(?:(?:maybe|about|around|like|say|probably|it's|at|,|-)? ?)*(?:an? )?"
_YES = (
    r"(?:y|yes|yeah|yep|yup|aye|it does|it hurts|hurts|painful|it is painful|i think so|(?:it does |hurts )?"
    rf"{_BIT})"
)
_PLACE = r"(?:left|right|both|lower|upper|inner|outer|inside|outside)"
_SIDE = rf"(?:it's |in |on |at )?(?:the |my )?{_PLACE}(?: (?:one|side|ones|sides|part|back|bit))?"
_IT_HURTS = Expression(
    rf"(?=.*\b(?:{_YES}|{_PLACE})\b|.*\d ?/ ?10|.*\d out of|.*\ban? (?:10|\d)\b)"
    rf"(?:{_YES}[ ,.;-]*)*(?:{_SIDE}[ ,.;-]*)?(?:{_YES}[ ,.;-]*)*"
    rf"(?:{_SCORE}(?P<score>10|\d)(?:(?: ?/ ?| out of )(?:10|ten))?"
    r"(?: (?:maybe|or so|i guess|i'd say|i think|probably|perhaps))?[ ,.;-]*)?"
    rf"(?:{_SIDE}[ ,.;-]*)?(?:(?:when|if|only|at the|on the|in the|during|after)\b[^?\d]{{2,60}})?"
)
_IS_SCORE = Expression(r"\d ?/ ?10|\d out of|\ban? \d|\b(?:yes|yeah|yep|yup|it does|it hurts|hurts)\b")
"""What makes a number beside a side a score, and not the reps of that side: "left 8, right 7"."""
_WHICH_SIDE = Expression(r"\b(?P<side>left|right|both)\b")
_PLACES = Expression(rf"\b{_PLACE}\b")
DOES_NOT_HURT = Words(text="It does not hurt", once=True)
_NO = Expression(
    r"(?:no|nope|nah|not (?:really|at all|yet)|no,? (?:not (?:really|at all)|it's (?:fine|ok|okay)))"
)
_NO_PAIN = Expression(
    r"(?:no,? )?(?:it|that|this) (?:does not|doesn't|doesnt) (?:really )?hurt(?: at all| though| really)*|"
    r"(?:it'?s )?(?:not|no) (?:really )?pain(?: really| at all| though)*"
    r"(?:,? (?:more like|just) [a-z ]{2,30})?"
)


_HOW = (
    r"(?:felt|feel|feels|feeling|got|getting|was|am|i'm|im|gone|went|made me|left me|bit|little|slightly|"
    r"quite|very|really|so|still|some|rather|kind of|kinda|super|pretty|then|and|with|,|$)"
)
_DIZZY = Expression(
    rf"(?:^|{_HOW} |[.;:(-] ?)"
    r"(?:a (?:bit|little|touch) |(?:bit|little|slightly|quite|very|really|so|still) )*"
    r"(?:dizzy|dizziness|light-?\s?headed(?:ness)?|woozy|giddy|queasy|nauseous|nausea)\b"
    r"|\bmy head (?:was |is |started |keeps )?(?:spinning|swimming)|\bsaw stars|\bseeing stars"
    r"|\b(?:felt|feel|feeling) (?:a (?:bit|little) |quite |really )?sick (?:after|during|from|to my stomach)"
)
_NOT_SO = Expression(
    r"\b(?:not|no|never|without|wasn't|isn't|didn't|don't|haven't|any|if|what if|last (?:week|month|year)|"
    r"(?:he|she|they|wife|husband|friend|mother|mum|mom|dad|father|partner|son|daughter|kid|everyone|"
    r"somebody|someone)\b[^.;]*)\b"
)

_LONG_AGO = Expression(r" (?:last|a|some|two|three|\d+) (?:weeks?|months?|years?)\b")


def feels_dizzy(said: str) -> bool:
    """Return whether somebody says to feel dizzy or sick from training; not where that is denied."""
    found = _DIZZY.search(said)
    if found is None:
        return False
    before, after = said[: found.start() + 1], said[found.end() :]
    is_not_so = _NOT_SO.search(re.split(r"[.;!?]|\bbut\b", before)[-1]) is not None
    return not is_not_so and _LONG_AGO.match(after) is None


def take_odd_feeling(draft: Draft, text: str) -> bool:
    """Say what to do where it feels odd; whether it hurts is the client's to say. Return if so."""
    said = " ".join(text.casefold().replace("’", "'").split()).rstrip(".! ")
    if _NO_PAIN.fullmatch(said):
        draft.notice("no trouble")
        return True
    return say_of_odd_feeling(draft, text)


def answer_odd_feeling(draft: Draft, text: str) -> bool:
    """Take `text` as the answer to whether it hurts, which was asked just now; return whether it is one.

    A yes, a side or a score is one, and so is that it does not; a lone number may as well be a set.
    """
    asked_at, part = draft.memory.odd_at, draft.memory.odd_part
    if asked_at is None or draft.at - asked_at > ANSWERED_WITHIN:
        return False
    said = " ".join(text.casefold().replace("’", "'").split()).strip(" .!")
    if not part:
        return tell_more(draft, text, said)
    if _NO_PAIN.fullmatch(said) or _NO.fullmatch(said):
        draft.remember(odd_part="", odd_at=None)
        draft.notice("no trouble")
        return True
    found = it_hurts(said)
    if found is None:
        return False
    draft.remember(odd_part="", odd_at=None)
    which = _WHICH_SIDE.search(said)
    side = f"{which['side']} " if which else ""
    score = f", {found['score']} out of 10" if found["score"] else ""
    reading = understand(draft, f"my {side}{part} hurts{score}")
    hold_for_pain(draft, text, reading.pain, reading.names)
    return True


def tell_more(draft: Draft, text: str, said: str) -> bool:
    """Pass on where and how much it hurts, told behind the pain itself: "the left one, 5/10"."""
    found = it_hurts(said)
    if found is None or not (found["score"] or _PLACES.search(said)):
        return False
    pass_on(draft, text)
    return True


def it_hurts(said: str) -> re.Match[str] | None:
    """Return how it is said that something hurts, where it does, or how much; None for what can be a set."""
    found = _IT_HURTS.fullmatch(said)
    return None if found is None or (found["score"] and not _IS_SCORE.search(said)) else found


def say_of_odd_feeling(draft: Draft, text: str) -> bool:
    """Say what to do where something feels odd, be it beside sets; return whether it does."""
    said = " ".join(text.casefold().replace("’", "'").split()).rstrip(".! ")
    if feels_dizzy(said):
        draft.notice("feels dizzy")
        return True
    found = _FEELS_ODD.search(said)
    if found is None:
        return False
    part = found["part"] or found["speaks"]
    hurts = f"my {part} hurt" + ("" if part.endswith("s") else "s")
    draft.remember(odd_part=part, odd_at=draft.at)
    draft.notice("feels odd", hurts=hurts, coach=draft.client.coach.name)
    draft.offer(Words(text=hurts.capitalize(), once=True), DOES_NOT_HURT)
    return True
