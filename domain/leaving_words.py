"""How somebody says to leave for good, to have all data sent, or to have them erased. Whole messages only.

To end the reminders is another matter ("stop"), and so is a pause: neither is taken for leaving.
"""

from typing import Literal

from domain.expressions import Expression
from domain.joining_words import plainly

Wish = Literal["leave", "export", "erase"]
"""To be gone from here, to get everything that is kept, or to have it erased."""

_LEAD = (
    r"(?:(?:hi|hello|hey|ok|okay|so|please|sorry|well|and|then|actually)[,.! ]+)*"
    r"(?:i(?:'d|'m| am)?(?: would| want| need| like| have| wish| going){0,2}(?: you)?(?: to)? |"
    r"can (?:i|you|we) |could (?:i|you) |may i |will you |how (?:do|can) i |let me |just |please )*"
)
_TAIL = r"(?:[ ,]+(?:please|now|then|thanks|thank you|for good|for ever|forever|at once|all of it))*"
_SMALL = (
    r"all|of|every|bit|everything|whatever|any|the|my|our|your|about|on|for|me|from|you|keep|have|store|"
    r"stored|kept|know|personal|own|whole|entire|complete|that|which|is|i|sent|to|as|a|copy|file|download"
)
_MINE = rf"(?:(?:{_SMALL}) ){{0,8}}"
_WHICH = r"(?: (?:about|on|of|that|which|you|i|me|have|keep|store|stored|kept|know|sent|from|here|to)){0,6}"
_DATA = r"(?:data|account|information|info|profile|records?|messages|everything|chat history|details)"
_COACHING = r"(?:(?:the|this|my|your) )?(?:programme|program|coaching|service|subscription|whole thing)"
_LEAVE = Expression(
    rf"{_LEAD}(?:/?leave(?: (?:this|here|the bot|kilopost|you|you all|{_COACHING}))?|"
    rf"quit(?: (?:this|the bot|for good|altogether|{_COACHING}))*|i quit|drop out(?: of {_COACHING})?|"
    rf"(?:stop|end|cancel) {_COACHING}|unsubscribe|sign off|sign me off|deregister|opt out|"
    r"(?:close|cancel|end|delete|remove|erase) (?:my |the )?(?:account|membership|profile)|"
    rf"(?:i(?:'?m| am) )?(?:leaving|quitting)(?: for good| this| the bot| {_COACHING})?|"
    r"stop (?:using|with) (?:this|it|you|the bot)(?: altogether| for good)?|"
    r"(?:i(?:'m| am) )?(?:done|finished) with (?:this|you|the bot|it all)(?: for good)?)"
    rf"{_TAIL}"
)
_QUITS = Expression(
    rf"{_LEAD}(?:quit|leave (?:this|the bot|kilopost))(?: (?:this|the bot|for good|altogether))*"
    r"(?:[,;:.!-]+ ?| (?:because|since|as) )[^\d?]{3,60}"
)
"""A wish to leave with its reason behind it: it is asked about first, as any is."""
_ERASE = Expression(
    rf"{_LEAD}(?:be (?:erased|deleted|forgotten|removed|wiped)|"
    rf"/?(?:erase|delete|remove|wipe|destroy|clear|forget|scrub)(?: out)? "
    rf"(?:me(?: completely| entirely| altogether| from (?:here|this|the bot|your (?:database|records)))?|"
    r"(?:all|everything|anything|whatever)(?: (?:you|that|is|have|know|keep|store|stored|kept|there)){0,4}"
    r"(?: (?:about|of|on|from|with))? me|"
    rf"{_MINE}(?:{_DATA}|my (?:whole )?journal|(?:my )?history){_WHICH}))"
    rf"{_TAIL}"
)
_EXPORT = Expression(
    rf"{_LEAD}(?:/?export|/?download|/?my data|a copy of my data|"
    rf"/?(?:export|download|send|give|get|show|have|receive|see|extract|back up|backup)(?: me)?(?: back)? "
    rf"{_MINE}(?:data|personal information|everything you (?:have|keep|store|know)|"
    rf"copy of (?:my )?(?:data|journal|everything)|export){_WHICH}|"
    rf"(?:export|download|back up|backup) {_MINE}(?:journal|history|log|sets|training|workouts))"
    rf"{_TAIL}"
)


def wish_of(text: str) -> Wish | None:
    """Return what a message as a whole wants done with the person's data; None where it wants nothing."""
    said = plainly(text).rstrip("?! ")
    if len(said) > 120:
        return None
    if _ERASE.fullmatch(said):
        return "erase"
    if _EXPORT.fullmatch(said):
        return "export"
    return "leave" if _LEAVE.fullmatch(said) or _QUITS.fullmatch(said) else None
