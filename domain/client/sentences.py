"""A message taken sentence by sentence, where as a whole it is nothing, or only a question to somebody."""

import re
from collections.abc import Callable

from domain.client.draft import Draft
from domain.expressions import Expression
from domain.understood import TakenFor

MOST_SENTENCES = 8
"""How many sentences of a message are looked at one by one. The house's own choice."""

_END = Expression(r"(?<=[.!?;])\s+|\n+")
_LEADS_OVER = Expression(r"^(?:(?:and|so|also|oh|but|then|btw|by the way|ps),? )+", re.IGNORECASE)

_INSTEAD = Expression(
    r".{3,90}?[,.;:!\u2013-] ?(?:oh |uh |um )?(?:no,? wait|wait,? no|no,? sorry|sorry,? no|actually,? no|"
    r"scratch that|hang on,? no|no,? hang on|on second thoughts?)[,.:;!\u2013-]* ?(?:just |rather |only )?"
    r"(?P<meant>\w.{2,90})",
    re.IGNORECASE,
)

_WITH_HELP = Expression(
    r"(?:please |pls )?help(?: me)?(?: please| pls)?[,.:;!\u2013-]* (?P<meant>\w.{5,90})", re.IGNORECASE
)

Take = Callable[[Draft, str], TakenFor | None]
"""Do what one sentence asks for, and return what that was; None where it asks for nothing."""


def sentences(text: str) -> list[str]:
    """Return the sentences of a message, without the small words that lead over to them."""
    return [_LEADS_OVER.sub("", part.strip()) for part in _END.split(text) if part.strip()]


def answers_all(draft: Draft, text: str, take: Take) -> bool:
    """Return whether each question among several sentences is one for the bot, and none for the coach."""
    parts = sentences(text)
    asked = [part for part in parts if part.endswith("?")]
    is_short = bool(asked) and 1 < len(parts) <= MOST_SENTENCES
    return is_short and all(take(draft.trial(), part) is not None for part in asked)


def take_each(draft: Draft, text: str, take: Take) -> TakenFor | None:
    """Do what single sentences ask for: "done. when's the next?" Return what the first of them was.

    None where the message has one sentence, or none of them is anything.
    """
    parts = sentences(text)
    if not 1 < len(parts) <= MOST_SENTENCES:
        return None
    found = [take(draft, part) for part in parts]
    return next((taken for taken in found if taken is not None), None)


def said_instead(text: str) -> str | None:
    """Return what is wanted after all, where the first thing is taken back: "leave, no wait, just stop".

    None where nothing is taken back, and where there are numbers: they are put right as the records they are.
    """
    found = None if any(sign.isdigit() for sign in text) else _INSTEAD.fullmatch(" ".join(text.split()))
    return found["meant"] if found else None


def asked_with_help(text: str) -> str | None:
    """Return what is asked behind a call for help: "help what do I do today"; None where there is none.

    None with numbers, too: help is what takes weight off as well.
    """
    found = None if any(sign.isdigit() for sign in text) else _WITH_HELP.fullmatch(" ".join(text.split()))
    return found["meant"] if found else None
