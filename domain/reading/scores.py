"""Scores out of ten, or of five, which look like a day or like reps: "session 7/10, coffee 9/10"."""

from decimal import Decimal

from domain.reading.day_words import FULL_SET
from domain.reading.message import Message
from domain.reading.patterns import Found, Pattern

_SCORED = """
    energy|mood|effort|motivation|stress|sleep|difficulty|enjoyment|form|fun|rating|rated|rate|felt|feeling
    feels|tiredness|fatigue|soreness|overall|recovery|pump|focus|technique|vibe|vibes|music|playlist|coffee
    food|lunch|dinner|breakfast|weather|hunger|appetite|nutrition|performance|confidence|readiness|score
    give it|(gave|giving) it|intensity
"""
_BETWEEN = (
    "[was|is|were|of|like|a|an|about|at|level|:|=|today|maybe|gets|got|around|solid|probably|quality|-|,]*"
)
_SCORE = Pattern(
    """
    ({scored}) {between} n:# (/|out of|of) most:#
    {scored_so} {between} n:# / most:# >({ends})
    n:# (/|out of) most:# ({scored_before})
    (a|an|another|strong|proud) [{fair}]* n:# (/|out of) most:#
    n:# (/|out of) most:# (for (the|my|this|effort|trying|style)|would|stars|recommend)
    """,
    scored=_SCORED,
    scored_so="session|workout|training|gym|day",
    scored_before="""
        session|workout|day|pump|effort|mood|energy|sleep|music|playlist|vibe|vibes|training|difficulty
        intensity|motivation|hard|tough|easy|tired
    """,
    between=_BETWEEN,
    fair="solid|strong|good|decent|easy|weak|clear|big|comfortable|shaky|firm|straight|definite|proper|full",
    ends=",|.|!|and|but|overall|tbh|'\\n'|;|')'|$",
)
_ANOTHER = Pattern("[,|.|and|;|!|but|&|the|my|'\\n']* _ [was|is|gets|got|:]* n:# / most:#")
"""A score right after another."""
_SO = frozenset({"session", "workout", "training", "gym", "day"})
"""What can have a date as well, so that a set must stand before it."""
_MOST = frozenset({Decimal(5), Decimal(10), Decimal(100)})
"""The scores that others are out of."""
_OUT_OF = frozenset({"/", "of"})


def score_spans(message: Message) -> list[tuple[int, int]]:
    """Return where scores are said."""
    if message.words.isdisjoint(_OUT_OF):
        return []
    spans: list[tuple[int, int]] = []
    for found in _SCORE.find(message):
        if not _is_a_score(message, found):
            continue
        if message.text(found.start) in _SO and not FULL_SET.is_in(message, 0, found.start):
            continue
        spans.append((found.start, found.end))
        following = _ANOTHER.at(message, found.end)
        if following is not None and _is_a_score(message, following):
            spans.append((following.start, following.end))
    return spans


def _is_a_score(message: Message, found: Found) -> bool:
    score, most = (message.value(found.parts[part][0]) for part in ("n", "most"))
    return score is not None and most in _MOST and score <= most
