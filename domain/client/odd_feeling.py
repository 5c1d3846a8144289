"""Words of what feels odd, and is neither pain nor a warning sign: "my shoulder is weird", "a bit dizzy"."""

import re

from domain.actions import Words
from domain.client.draft import Draft
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
    r"twinging|twinges|(?:gave|had|felt) a twinge|tweaked|not happy|"
    r"unhappy|"
    r"giving me (?:grief|trouble|jip|gyp|a hard time)|misbehaving|protesting)\b"
)
"""What is said of a part that feels other than usual, or as if it spoke; whether it hurts is not said."""
DOES_NOT_HURT = Words(text="It does not hurt", once=True)
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
    draft.notice("feels odd", hurts=hurts, coach=draft.client.coach.name)
    draft.offer(Words(text=hurts.capitalize(), once=True), DOES_NOT_HURT)
    return True
