"""When an alternative holds: which equipment is missing, or which joint is in trouble."""

import re
from dataclasses import dataclass
from typing import Literal

from domain.exercises import Joint
from domain.expressions import Expression

_JOINTS: tuple[tuple[str, Joint], ...] = (
    (r"(?:lower|low)\s*-?\s*back|lumbar(?:\s+spine)?|lower\s+spine|spine|sacrum|si\s+joint", "lower back"),
    (r"(?:upper|mid|middle)\s*-?\s*back|thoracic(?:\s+spine)?|t-spine|shoulder\s+blades?", "upper back"),
    (r"necks?|cervical(?:\s+spine)?", "neck"),
    (r"shoulders?|rotator\s+cuffs?|ac\s+joint", "shoulder"),
    (r"elbows?|tennis\s+elbow|golfer'?s\s+elbow", "elbow"),
    (r"wrists?", "wrist"),
    (r"hips?|groin", "hip"),
    (r"knees?|kneecaps?|patellas?", "knee"),
    (r"ankles?|achilles(?:\s+tendons?)?", "ankle"),
)
_LACK = Expression(
    r"(?:(?:if|when|where|with|for|in\s+case)\s+)?(?:(?:you|they|there|the\s+gym|your\s+gym|gym)(?:'s)?\s+)?"
    r"(?:(?:have|has|is|are|got|with)\s+)*(?:no|without|don't\s+have|do\s+not\s+have|doesn't\s+have|lacks?|missing|"
    r"can't\s+get|haven't\s+got)\s+(?P<what>\S.*?)(?:\s+(?:is|are))?(?:\s+(?:available|at\s+hand|here|around|free|there))?$",
    re.IGNORECASE,
)
_TAKEN = Expression(
    r"(?:if|when|where|in\s+case)\s+(?P<what>\S.*?)\s+(?:is|are)\s+(?:taken|busy|missing|not\s+(?:available|there|free)|"
    r"unavailable|in\s+use|broken|out\s+of\s+order)$",
    re.IGNORECASE,
)
_TROUBLE = Expression(
    r"\b(?:problems?|troubles?|troubled|sore|hurts?|hurting|aches?|aching|achy|bad|painful|pains?|bothers?|bothering|"
    r"plays?\s+up|playing\s+up|acts?\s+up|acting\s+up|complains?|unhappy|stiff|tight|injur\w+|dodgy|cranky|issues?|flares?|"
    r"irritat\w+|tender|tricky|grumbl\w+)\b",
    re.IGNORECASE,
)
_PLACE = Expression(
    r"^(?:(?:if|when|where|with|for|in\s+case|of|any|some|a|an|the|your|you|have|has|their|his|her|there|is|are|bad|sore|"
    r"troubled?|painful|dodgy|cranky|stiff)\s+)*",
    re.IGNORECASE,
)
_ARTICLE = Expression(r"^(?:(?:an?|any|the|access\s+to)\s+)+", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class UnknownPlace:
    """A condition that names no joint known here: the `place` that it does name."""

    place: str


def read_condition(text: str) -> tuple[Literal["equipment", "joint"], str] | UnknownPlace | None:
    """Return what is missing or which joint is meant; None where the words are no condition at all."""
    for pattern in (_LACK, _TAKEN):
        if found := pattern.fullmatch(text):
            return "equipment", equipment_words(found["what"])
    for pattern_text, joint in _JOINTS:
        if re.search(rf"\b(?:{pattern_text})\b", text, re.IGNORECASE):
            return "joint", joint
    if _TROUBLE.search(text):
        rest = _PLACE.sub("", text)
        place = _TROUBLE.split(rest)[0] or rest
        return UnknownPlace(
            re.sub(r"\s+(?:is|are|a|an|feels?|gets?|the|give\w*|you)\b.*$", "", f"{place} ").strip() or text
        )
    return None


def equipment_words(text: str) -> str:
    """Return a piece of equipment as it is kept: as written, without an article."""
    return _ARTICLE.sub("", text).strip(" ,.")
