"""Wishes to see a picture of how it has gone: "show me my bench", "a graph of my progress".

A picture that somebody has taken, or sends, is another matter.
"""

from domain.reading.message import message_of
from domain.reading.patterns import Pattern
from domain.reading.words import words_of

LONGEST = 16
"""How many words and signs such a wish has at most. The house's own choice."""

MOST_LETTERS = 200
"""How long it is at most: a longer text is not even looked through."""

_PICTURE = words_of("picture pictures pic graph graphs chart charts plot plots curve diagram trendline")

_WISH = Pattern(
    """
    (show|draw|give|send|see|view|get|have|want|need|like|make|plot|got|do) ..4 {picture} !(i|my|that|from)
    ^ [please|a|an|the|my|new|,]* {picture} (of|for|on|about|please|'?'|$)
    ^ [please|a|an|the|my|,]* _ ..2 {picture} [please|pls|'?'|.|!]* $
    (in|as) a {picture}
    (draw|plot|graph|chart) [me|my|the]* (progress|strength|_)
    """,
    picture=_PICTURE,
)
_SHOW = Pattern("^ [please|can|could|you|u|pls|coach|,]* (show|see) [me] [the|my|all]* _")
"""What shows an exercise, where nothing but its name comes after."""
_NOT_OURS = Pattern(
    """
    (sent|send|sending|sends|took|take|taken|taking|attached|uploaded|upload|post|posted|
        look at|check|see) [you|u|a|the|this|that|my|some]* {picture} (of (me|my {of_body})|i|from|attached|$)
    (big|bigger|whole|get the|got the|mental) picture|can i send|i (send|sent|took|take)
    (physique|body|selfie|form|posing|before|after|food|meal|xray|mri|scan) ..1 {picture}
    {picture} of (me|my {of_body}|the (gym|plate|plates|machine|food|menu))
    """,
    picture=_PICTURE,
    of_body=words_of(
        "form back knee shoulder elbow foot arm leg hip wrist food meal gym plates setup body physique abs"
    ),
)


def wants_picture(text: str) -> bool:
    """Return whether `text` asks for a picture of how it has gone."""
    if len(text) > MOST_LETTERS:
        return False
    message = message_of(text)
    return len(message.tokens) <= LONGEST and _WISH.is_in(message) and not _NOT_OURS.is_in(message)


def shows(text: str) -> bool:
    """Return whether `text` asks to be shown what it then names."""
    if len(text) > MOST_LETTERS:
        return False
    message = message_of(text)
    return len(message.tokens) <= LONGEST and _SHOW.at(message, 0) is not None


def without_picture(text: str) -> str:
    """Return `text` without its words for a picture, some of which are near to exercises' names."""
    message = message_of(text)
    spans = [(each.start, each.end) for at, each in enumerate(message.tokens) if message.text(at) in _PICTURE]
    for start, end in reversed(spans):
        text = text[:start] + text[end:]
    return text
