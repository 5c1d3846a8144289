"""What lies behind a message, as JSON for the page: what its words became, or the reasons of what it says.

`stretches` are [words, [what they became …]], together the whole message; `facts` are [head, words, the words
they came from]; `note` is one line, or null. All of it is plain text.
"""

from collections.abc import Sequence
from typing import Any

from bot.wording.understood import (
    NOT_NOTED,
    NOTHING_BEHIND,
    Fact,
    Stretch,
    fact_recorded,
    facts_behind,
    facts_understood,
    stretches,
)
from domain.parts import Part
from persistence.understood import Told


def behind_own(told: Told) -> dict[str, Any]:
    """Return what somebody's own message was taken for, and what came of it."""
    known = told.understood
    facts = [] if known is None else facts_understood(told.text, known, told.orders)
    facts += [fact_recorded(done, standing) for done, standing in told.sets]
    said = [Stretch(told.text)] if known is None else stretches(told.text, known)
    return _plain(said, facts, NOT_NOTED if known is None else None)


def behind_bot(parts: Sequence[Part]) -> dict[str, Any]:
    """Return why a message of the bot's says what it says."""
    facts = [fact for part in parts for fact in facts_behind(part)]
    return _plain([], facts, None if facts else NOTHING_BEHIND)


def _plain(said: Sequence[Stretch], facts: Sequence[Fact], note: str | None) -> dict[str, Any]:
    return {
        "stretches": [[each.words, list(each.became)] for each in said],
        "facts": [list(each) for each in facts],
        "note": note,
    }
