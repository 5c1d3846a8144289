"""Answers to a question that are not quite sure: "not sure, 8" is 8, "8 or 9" is to be asked."""

from domain.expressions import Expression

_HEDGE = (
    r"(?:(?:i'm |im |i am )?not (?:quite |really |too |so |100% |entirely )?(?:sure|certain)|unsure|"
    r"(?:i )?(?:can't|cannot|cant|don't|dont|do not) (?:quite |really )?(?:remember|recall|know)"
    r"(?: (?:exactly|for sure|precisely))?|(?:i )?(?:lost count|forgot|forget)|from memory|"
    r"off the top of my head|iirc|if i (?:remember|recall)(?: it)?(?: right(?:ly)?| correctly| well)?|"
    r"(?:i |i'd |i would |id )?(?:guess|reckon|say|suppose|believe|think|assume)(?: so)?|"
    r"as far as i (?:know|remember)|something like|somewhere (?:around|about)|at a guess|a guess|"
    r"(?:it |that )?(?:must|might|may|could|would|should|will) (?:have been|be)|"
    r"give or take(?: one| a rep)?|or (?:so|thereabouts|something)|-?ish\b|dunno|idk|more or less|"
    r"probably|probs?|maybe|perhaps|roughly|about|around|approximately)"
)
_PAUSE = r"[ ,.;:!?\u2013-]*"
_BEFORE = Expression(
    rf"(?:(?:but|so|well|hm+|um+|oh)?{_PAUSE}{_HEDGE}(?:{_PAUSE}\b(?:but|so|it was|that was))?{_PAUSE})+"
)
_BEHIND = Expression(rf"(?:{_PAUSE}(?:but )?{_HEDGE})+{_PAUSE}$")

_NUMBER = r"\d+(?:[.,]\d+)?"
_UNIT = r"(?: ?(?:kg|kgs|kilos?|lbs?|pounds?|reps?|s|secs?|seconds?))?"
_EITHER = Expression(
    r"(?:(?:it was|was|it's|got|did|either|between|from|maybe|probably|about|around|like)[ ,]+)*"
    rf"(?P<one>{_NUMBER}){_UNIT}"
    r"(?: ?[/\u2013-] ?|,? ?(?:or|and|to|maybe|perhaps|possibly|might be)"
    r"(?: (?:maybe|perhaps|even|possibly))? )"
    rf"(?P<other>{_NUMBER}){_UNIT}"
)


def without_hedges(text: str) -> str:
    """Return an answer without the words at its ends that only say how sure it is, or all of it."""
    said = " ".join(text.casefold().replace("’", "'").split())
    before = _BEFORE.match(said)
    bare = _BEHIND.sub("", said[before.end() :] if before else said)
    return bare.strip() or text


def either_of(text: str) -> tuple[str, str] | None:
    """Return the two numbers of which an answer says that it was one; None where it says no such thing."""
    said = " ".join(without_hedges(text).casefold().split()).strip(" .!?")
    found = _EITHER.fullmatch(said)
    if found is None or found["one"] == found["other"]:
        return None
    return found["one"], found["other"]
