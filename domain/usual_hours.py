"""The hour that is taken where only a part of the day is said: "evenings", "before work", "you choose"."""

from datetime import time
from typing import Literal

from domain.clock_words import Clock, clock_of
from domain.expressions import Expression

Usual = time | Literal["any", "unknown"]
"""An hour, or any, where the choice is left to whoever asks, or that it is not known."""

_LEAD = (
    r"(?:(?:please|ok|okay|well|yes|hi|oh|and|so|um+|hm+|maybe|perhaps|probably|preferably|usually|always|"
    r"mostly|rather|ideally|i guess|i think|i'd say|let's say|say|me|remind me|reminders?|it's|in|on|at|this|"
    r"later|around|about|sometime|some ?time|any ?time|during|for|the|i'd like|i would like|i prefer|"
    r"sometimes|"
    r"i(?:'d)? (?:rather|like|prefer) (?:it )?|i(?: can| usually| only| always| mostly)* train)\b[,:]? ?)*"
)
_TAIL = (
    r"(?:[ ,]*\b(?:please|thanks|thank you|then|is|are|would be|works?|suits?|best|better|fine|good|great|ok|"
    r"okay|for me|me|usually|mostly|probably|i think|i guess|somewhere|some ?time|sometime|times?|"
    r"on training days|every day|always))*"
)
_NAMED: tuple[tuple[str, Usual], ...] = (
    (r"(?:very |quite |really )?early(?: (?:in the )?mornings?| bird)?", time(6)),
    (r"first thing(?: in the mornings?)?", time(6)),
    (r"(?:mornings?[, ]*)?before (?:work|breakfast|school|the kids wake(?: up)?)", time(6)),
    (r"(?:every |each )?mornings?|a\.?m\.?", time(7)),
    (r"(?:when|as soon as|once|after) i (?:wake|get|have got) up|(?:at |over )?breakfast(?: time)?", time(7)),
    (r"mid[- ]?mornings?|late(?: in the)? mornings?", time(10)),
    (r"(?:my )?lunch(?:[ -]?(?:time|break|hour))?|middle of (?:the )?day|mid-?day", time(12)),
    (r"after lunch|early afternoons?", time(13)),
    (r"(?:every |each )?(?:late )?afternoons?|p\.?m\.?", time(15)),
    (r"after (?:work|school|the office|my shift|uni)", time(17)),
    (r"(?:the )?end of (?:the|my) (?:work(?:ing)? )?day", time(17)),
    (r"(?:every |each )?(?:early )?evenings?|tonight", time(18)),
    (r"after (?:dinner|supper|tea|the kids are (?:in bed|asleep))", time(20)),
    (r"late(?: evenings?| at night)?|(?:late )?(?:at )?nights?", time(20)),
    (r"(?:you|u) (?:choose|decide|pick|say|tell me)|(?:you|your) (?:choice|call|pick)|up to you", "any"),
    (r"when(?:ever)? (?:you (?:like|want|think(?: is best)?)|suits you|it suits(?: you)?)|whenever", "any"),
    (r"any(?: ?time|thing| hour)(?: of (?:the )?day)?|(?:all|any)(?: times?| hours?)?|whatever", "any"),
    (r"(?:i )?(?:don't|do not|dont) (?:mind|care)|no preference", "any"),
    (r"(?:i )?(?:don't|do not|dont) know|dunno|idk|(?:i'm )?not sure(?: yet)?|no idea", "unknown"),
    (r"either(?: way| one)?|(?:it )?(?:doesn't|does not|doesnt) matter(?: to me)?", "any"),
    (r"(?:it )?(?:varies|depends|changes)(?: (?:on|with|from) [a-z ]{2,30})?", "unknown"),
    (r"surprise me|(?:the )?(?:usual|normal|standard|default)(?: time| hour)?", "any"),
)
"""What is said, and the hour that it is taken for: the house's own choice, and said back."""

_USUAL = tuple((Expression(rf"{_LEAD}(?:{said}){_TAIL}"), hour) for said, hour in _NAMED)
_AND_OR = Expression(r"\s*(?:[,;/]|\bor\b|\band\b)\s*")
_EITHER = Expression(
    rf"{_LEAD}(?:between |from )?(?P<one>.{{1,20}}?)(?: or |/| ?- ?(?![1-5]\d)| to | and )"
    rf"(?P<other>.{{1,20}}?){_TAIL}"
)
_NOT_BEFORE = Expression(
    rf"{_LEAD}(?:not (?:before|earlier than|until|till)|never before|no earlier than|"
    r"any ?time (?:after|from)|(?:only )?(?:after|from|past))(?: at| about| around)? "
    rf"(?P<clock>.{{1,20}}?)(?: on(?:wards)?)?{_TAIL}"
)


def usual_hour(text: str) -> Usual | None:
    """Return the hour that is taken for a part of the day, or the first of several, that is all of `text`.

    "any" where the choice is left, "unknown" where it is not known;
    None where `text` says something else, or an hour.
    """
    said = " ".join(text.casefold().replace("’", "'").split()).strip(" .!")
    parts = [_named(part) for part in _AND_OR.split(said)]
    if None not in parts:
        return parts[0]
    clock = None
    if clock_of(said) is not None:
        return None
    if found := _NOT_BEFORE.fullmatch(said):
        clock = clock_of(found["clock"])
    elif found := _EITHER.fullmatch(said):
        clock = _earlier(clock_of(found["one"]), clock_of(found["other"]))
    return None if clock is None else clock.awake()


def leaves_choice(text: str) -> bool:
    """Return whether `text` as a whole leaves the choice to whoever asks."""
    return _named(" ".join(text.casefold().replace("’", "'").split()).strip(" .!")) == "any"


def _named(said: str) -> Usual | None:
    return next((hour for words, hour in _USUAL if words.fullmatch(said)), None)


def _earlier(one: Clock | None, other: Clock | None) -> Clock | None:
    """Return the earlier of two hours, in the half of the day of that for which it is said: "7 or 8 pm"."""
    if one is None or other is None:
        return None
    if len(one.times) > len(other.times):
        one = Clock(tuple(each for each in one.times if (each.hour < 12) == (other.as_said.hour < 12)))
    return one if not one.times or one.as_said <= other.as_said else other
