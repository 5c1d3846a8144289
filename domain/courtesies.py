"""Words that are only kind: thanks, yes, good night. They call for nothing but a kind word."""

import unicodedata

from domain.expressions import Expression

_WORD = Expression(
    r"(?:thanks|thank|thx|ty|you|u|so|much|a|lot|ok|okay|k|kk|great|good|cool|nice|perfect|super|fine|sure|"
    r"yes|yep|yeah|no|nope|hi|hello|hey|morning|evening|night|bye|cheers|got|it|will|do|alright|all|right|"
    r"love|awesome|wow|lol|haha|see|ya|later|coach|for|the|aw+|ah+|oh+|very|kind|sweet|lovely|amazing|"
    r"brilliant|you're|youre|are|your|really|appreciate|appreciated|day|have|one|helpful|help|always|is|was|"
    r"that|that's|thats|glad|happy|please|friend|welcome|to|hear|me|my|too|dear|darling|grand|lovely|then|now|bet|aight|dope|word|yup|np|gg|ugh|meh|argh|\W*)"
)
_BETWEEN = Expression(r"[\s.,!?]+")


_THANKS = Expression(r"\b(?:thanks|thank|thx|ty|cheers)\b")


_APOLOGY = Expression(r"\b(?:sorry|apologies)\b")
_OF_APOLOGY = Expression(r"sorry|apologies|asking|bother(?:ing)?|trouble|questions|many|again")
"""What is said sorry for, and is nothing else beside it."""


def is_thanks(text: str) -> bool:
    """Return whether a courtesy has thanks in it."""
    return _THANKS.search(text.casefold()) is not None


def is_courtesy(text: str) -> bool:
    """Return whether `text` holds nothing but courtesies, or nothing but emojis with them."""
    has_words = any(sign.isalpha() for sign in text)
    has_emoji = any(unicodedata.category(sign) == "So" for sign in text)
    said = text.casefold()
    words = _BETWEEN.split(said)
    of_it = _OF_APOLOGY if _APOLOGY.search(said) else None
    return (has_words or has_emoji) and all(
        _WORD.fullmatch(word) or (of_it is not None and of_it.fullmatch(word)) for word in words
    )
