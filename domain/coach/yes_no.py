"""A bare yes or no of the coach's to what was asked, however it is said."""

import re

from domain.called import plain
from domain.expressions import Expression

_EXTRAS = (
    r"(?:,? (?:please|pls|thanks|thank you|thx|it is|it's|do|do it|do that|go ahead|go for it|go on|then|now|"
    r"of course|sure|that is right|that's right|looks good|all good|perfect|great|fine|good))*"
)
_YES = Expression(
    r"(?:(?:oh|ah|um|uh|well|hm),? )?(?:y|ye|yes+|yeah|yea|yep|yup|ya|aye|ok|okay|okey|k|kk|sure|sure thing|"
    r"of course|certainly|absolutely|definitely|exactly|correct|right|that is right|that's right|"
    r"looks right|looks good|looks fine|looks ok|looks okay|all good|go ahead|go for it|do it|do that|"
    rf"please do|agreed|confirm|confirmed|that is correct|that's correct){_EXTRAS}"
)
_NO = Expression(
    r"(?:(?:oh|ah|um|uh|well|hm|actually|sorry|wait),? )*(?:no+|n|nope|nah|never|not now|not yet|"
    r"never mind|nevermind|cancel|stop|forget it|forget that|scrap it|scrap that|leave it|leave that|leave|"
    r"don't|do not|dont|don't do it|do not do it|wrong|that is wrong|that's wrong|not right|rather not|"
    r"better not)(?:,? (?:no|please|thanks|thank you|sorry|leave it|don't|do not|not now|wait|never mind|"
    r"cancel|it|that|wrong))*"
)


def is_yes(text: str, *others: str) -> bool:
    """Return whether a text is a yes and nothing else, or one of the `others`, as they are typed."""
    said = bare(text)
    return _YES.fullmatch(said) is not None or said in {bare(each) for each in others}


def is_no(text: str, *others: str) -> bool:
    """Return whether a text is a no and nothing else, or one of the `others`, as they are typed."""
    said = bare(text)
    return _NO.fullmatch(said) is not None or said in {bare(each) for each in others}


def bare(text: str) -> str:
    """Return a text as it is compared: without case, accents, signs at the end, and needless spaces."""
    said = plain(text).replace("’", "'")
    return " ".join(re.sub(r"[,;.!?]+(?=\s|$)", " ", said).split())
