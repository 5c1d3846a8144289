"""A coach's own plain rule for a stall, told in a sheet's words: so many workouts without a beat, or none."""

from domain.coach.draft import Draft
from domain.expressions import Expression
from domain.sheet.header import TellAfter, read_rule

_NO_RULE = Expression(
    r"(?:forget|drop|cancel|no|without) (?:my |the |that |any )?(?:own |plain |stall )*rules?"
    r"(?: for (?:a stall|stalls))?|"
    r"(?:please )?tell me (?:of (?:a stall|stalls) )?(?:when|where|if|as) you (?:see|find|think|are sure)\b"
    r".{0,20}|"
    r"(?:you )?(?:judge|find|decide on|tell) (?:the )?stalls (?:yourself|by yourself|on your own)"
)


def take_rule(draft: Draft, said: str) -> bool:
    """Keep the rule that a coach tells (`said` in lower case), or drop it; return whether it was that."""
    if _NO_RULE.fullmatch(said):
        draft.remember(tell_after=None)
        draft.notice("no rule")
        return True
    told = read_rule(said)
    if told is None:
        return False
    if isinstance(told, TellAfter):
        draft.remember(tell_after=told.workouts)
        draft.notice("rule kept", workouts=told.workouts)
    else:
        draft.notice("no such rule")
    return True
