"""Words of a joint or muscle that feels odd, and do not say that it hurts: "my shoulder feels weird"."""

import re

from domain.actions import Words
from domain.client.draft import Draft

_PART = (
    r"(?P<part>shoulders?|knees?|elbows?|wrists?|hips?|ankles?|neck|(?:lower |upper |mid )?back|groin|"
    r"hamstrings?|calf|calves|biceps?|triceps|forearms?|achilles|thumb|ribs?)"
)
_ODD = (
    r"(?:weird|off|odd|funny|strange|tight|uncomfortable|not (?:quite )?right|unstable|wobbly|clicky|numb|"
    r"stiff)"
)
_FEELS_ODD = re.compile(
    rf"\b{_PART} (?:feels?|feel|felt|is|are|was|seems?|feeling)"
    rf"(?: (?:a|bit|little|kind|sort|of|still|really|just|so))* {_ODD}\b"
)
DOES_NOT_HURT = Words(text="It does not hurt", once=True)
_NO_PAIN = re.compile(
    r"(?:no,? )?(?:it|that|this) (?:does not|doesn't|doesnt) (?:really )?hurt(?: at all| though| really)*|"
    r"(?:it'?s )?(?:not|no) (?:really )?pain(?: really| at all| though)*"
    r"(?:,? (?:more like|just) [a-z ]{2,30})?"
)


def take_odd_feeling(draft: Draft, text: str) -> bool:
    """Say what to do where it feels odd; whether it hurts is the client's to say. Return if so."""
    said = " ".join(text.casefold().replace("’", "'").split()).rstrip(".! ")
    if _NO_PAIN.fullmatch(said):
        draft.notice("no trouble")
        return True
    found = _FEELS_ODD.search(said)
    if found is None:
        return False
    hurts = f"my {found['part']} hurt" + ("" if found["part"].endswith("s") else "s")
    draft.notice("feels odd", hurts=hurts, coach=draft.client.coach.name)
    draft.offer(Words(text=hurts.capitalize(), once=True), DOES_NOT_HURT)
    return True
