"""The time of day as it is said: "18:40", "half past six", "half six", "7 in the evening", "noon"."""

import re
from collections.abc import Iterator
from datetime import time
from typing import NamedTuple

from domain.expressions import Expression

_HOURS = ("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve")
_NUMBERS = {word: value for value, word in enumerate(_HOURS, start=1)} | {
    "quarter": 15,
    "half": 30,
    "twenty": 20,
    "twenty-five": 25,
}

_WORD = "|".join(sorted(_NUMBERS, key=len, reverse=True))
_PART = (
    r"(?P<half>am|pm|a\.m\.?|p\.m\.?|in the (?:early )?(?:morning|afternoon|evening)|at night|tonight|"
    r"(?:every |each )?(?:mornings?|evenings?|afternoons?)|o'? ?clock)"
)
_OPENING = Expression(
    r"(?:(?:please|ok|okay|well|yes|hi|and|so|um|maybe|about|around|at|it's|its|it is|it|is|now|"
    r"the time|time|"
    r"here|right|remind me|reminders?|me|let's say|say|make it|just|exactly|currently|by|to|for|"
    r"my time|that's|"
    r"around|roughly|mostly|usually|depends|i'd like|i would like|best)\b[,:]? ?)+"
)
_CLOSING = Expression(
    r"(?:[ ,]*\b(?:here|now|right now|please|thanks|thank you|is fine|is good|would be good|"
    r"would be fine|would be "
    r"great|o'? ?clock|or so|mostly|usually|local time|my time|sharp|at the moment|in my place|"
    r"where i (?:am|live)|every day|works|"
    r"works for me|is best|on training days|hours|hrs))+$"
)
_FIGURES = Expression(rf"(?P<hour>\d{{1,2}})(?: ?[:.h] ?(?P<minute>\d{{2}})| ?h)?(?: ?{_PART})?")
_RUN_ON = Expression(
    r"(?P<hour>[01]\d|2[0-3])(?P<minute>[0-5]\d)(?: ?(?:h|hrs|hours))?|"
    r"(?P<on>0?[1-9]|1[0-2])(?P<past>[0-5]\d) ?(?P<half>am|pm|a\.m\.?|p\.m\.?)"
)
"""Hours and minutes without a sign between them: "0545", "530am"."""
_PAST = Expression(
    rf"(?P<minutes>\d{{1,2}}|{_WORD})(?: minutes?| mins?)? (?P<way>past|after|to|before|till) "
    rf"(?P<hour>\d{{1,2}}|{_WORD})(?: ?{_PART})?"
)
_HALF = Expression(rf"half (?P<hour>\d{{1,2}}|{_WORD})(?: ?{_PART})?")
"""In English, "half seven" is half past seven."""
_IN_WORDS = Expression(
    rf"(?P<hour>{_WORD})(?:[ -](?P<minutes>thirty|fifteen|forty-five|twenty|forty|ten))?(?: ?{_PART})?"
)
_TENS = {"thirty": 30, "fifteen": 15, "forty-five": 45, "twenty": 20, "forty": 40, "ten": 10}
_NOON = Expression(r"\b(?:noon|mid ?day)\b")
_NAMED = {"noon": 12, "midday": 12, "mid day": 12, "midnight": 0}


_ROUGHLY = Expression(r"(?<=\w)-?ish\b")


_NOON_HOUR = 12
_UP_FROM, _UP_AT_LAST_FROM = time(5), time(4)
"""From which hour on people are up, where an hour alone is said, and where minutes are, as of an early
shift. The house's own choice."""


class Clock(NamedTuple):
    """A time of day; `times` are all that it can be, as said first, where the half of the day is not said."""

    times: tuple[time, ...]

    def awake(self, before: time | None = None) -> time:
        """The time as the figures stand, but one of the afternoon where it would be a small hour else, or,
        said without minutes, where the one `before` it was one of the afternoon."""
        likely = [each for each in self.times if each >= (_UP_FROM if each.minute == 0 else _UP_AT_LAST_FROM)]
        is_bare = before is not None and before.hour >= _NOON_HOUR and self.as_said.minute == 0
        half = [each for each in likely if each.hour >= _NOON_HOUR] if is_bare else likely
        return (half or likely or [self.as_said])[0]

    @property
    def as_said(self) -> time:
        """The time as the figures stand."""
        return self.times[0]


def clock_of(text: str) -> Clock | None:
    """Return the time of day that the whole of `text` says; None where it says none, or one that is no
    time."""
    said = " ".join(text.casefold().replace("’", "'").split()).strip(" .!?")
    said = _OPENING.sub("", said, count=1) if _OPENING.match(said) else said
    said = _ROUGHLY.sub("", _CLOSING.sub("", said)).strip(" ,.")
    if said in _NAMED:
        return Clock((time(_NAMED[said]),))
    if found := _FIGURES.fullmatch(said):
        return _clock(int(found["hour"]), int(found["minute"] or 0), found["half"])
    if found := _RUN_ON.fullmatch(said):
        if found["half"]:
            return _clock(int(found["on"]), int(found["past"]), found["half"])
        return Clock((time(int(found["hour"]), int(found["minute"])),))
    if found := _PAST.fullmatch(said):
        hour, minutes = _number(found["hour"]), _number(found["minutes"])
        if minutes > 59:
            return None
        if found["way"] in {"past", "after"}:
            return _clock(hour, minutes, found["half"])
        return _clock((hour - 1) % 12 or 12 if hour <= 12 else hour - 1, (60 - minutes) % 60, found["half"])
    if found := _HALF.fullmatch(said):
        return _clock(_number(found["hour"]), 30, found["half"])
    if found := _IN_WORDS.fullmatch(said):
        return _clock(_number(found["hour"]), _TENS.get(found["minutes"] or "", 0), found["half"])
    return None


_BY = Expression(
    r"(?P<much>an hour and a half|half an hour|a quarter of an hour|an hour|two hours|a (?:bit|little)|"
    r"(?P<count>\d{1,2}) ?(?P<unit>minutes?|mins?|hours?|h)) (?P<way>earlier|sooner|before|later|after)"
)
_MINUTES = {
    "an hour and a half": 90,
    "half an hour": 30,
    "a quarter of an hour": 15,
    "an hour": 60,
    "two hours": 120,
}
_A_BIT = 30
"""How many minutes "a bit earlier" is. The house's own choice; it is said back, and can be undone."""


def moved_clock(text: str, before: time) -> time | None:
    """Return the time of day that lies as much before or after `before` as `text` says; None: it does not."""
    found = _BY.fullmatch(" ".join(text.casefold().split()).strip(" .!?"))
    if found is None:
        return None
    minutes = _MINUTES.get(found["much"], _A_BIT)
    if found["count"]:
        minutes = int(found["count"]) * (60 if found["unit"].startswith("h") else 1)
    sign = 1 if found["way"] in {"later", "after"} else -1
    at = (before.hour * 60 + before.minute + sign * minutes) % (24 * 60)
    return time(at // 60, at % 60)


_LATE_IN_THE_DAY = Expression(
    r"\b(?:after (?:work|dinner|supper|tea|school|lunch)|evenings?|afternoons?|tonight|"
    r"(?:home|back) from work|at night)\b"
)
_EARLY_IN_THE_DAY = Expression(r"\b(?:mornings?|before (?:work|breakfast|school)|breakfast)\b")


_PART_OF_DAY = Expression(f"{_LATE_IN_THE_DAY.pattern}|{_EARLY_IN_THE_DAY.pattern}")


def _in_its_half(clock: Clock, said: str) -> Clock:
    """Return the clock in the half of the day that other words of what was said tell of."""
    late = bool(_LATE_IN_THE_DAY.search(said))
    if len(clock.times) == 1 or late == bool(_EARLY_IN_THE_DAY.search(said)):
        return clock
    return Clock(tuple(each for each in clock.times if (each.hour >= 12) == late) or clock.times)


_AT_THE_END = Expression(
    r"\b(?:so|like|around|about|say|maybe|make it|perhaps)(?: (?:at|like|around|about|maybe))* "
    r"(?P<clock>\d{1,2}(?: ?(?:am|pm))?)$"
)
"""An hour after words that say why it is that: "I work nights so like 4"."""


def clock_in(text: str) -> Clock | None:
    """Return the one time of day that `text` says somewhere; None where it says none, or several."""
    said = " ".join(text.casefold().replace("’", "'").split())
    if whole := clock_of(text):
        return whole
    if whole := clock_of(_PART_OF_DAY.sub(" ", said).strip(" ,")):
        return _in_its_half(whole, said)
    if last := _AT_THE_END.search(said):
        return _in_its_half(clock, said) if (clock := clock_of(last["clock"])) else None
    found: list[str] = []
    for pattern in (_NOON, _PAST, _HALF, _FIGURES):
        for each in _alone(pattern, said):
            found.append(_NOON.sub("12:00", each[0]))
            said = said[: each.start()] + "/" * len(each[0]) + said[each.end() :]
    clocks = {clock for each in found if (clock := clock_of(each)) is not None}
    return _in_its_half(clocks.pop(), said) if len(clocks) == 1 else None


def _alone(pattern: Expression, said: str) -> Iterator[re.Match[str]]:
    """Give what a pattern finds between words; of plain figures, those that can be nothing but a time."""
    for each in pattern.finditer(said):
        start, end = each.span()
        if said[start - 1 : start].isalnum() or said[end : end + 1].isalnum():
            continue
        if pattern is not _FIGURES or each["minute"] or each["half"]:
            yield each


def _number(word: str) -> int:
    return int(word) if word.isdecimal() else _NUMBERS[word]


def _clock(hour: int, minute: int, half: str | None) -> Clock | None:
    if hour > 24 or minute > 59 or (hour == 24 and minute):
        return None
    if hour == 24 or (hour > 12 and half is not None):
        return Clock((time(hour % 24, minute),))
    if half is not None and (later := _is_later(hour, half)) is not None:
        return Clock((time(hour % 12 + (12 if later else 0), minute),)) if hour else Clock((time(0, minute),))
    if 1 <= hour <= 12:
        return Clock((time(hour, minute), time((hour + 12) % 24, minute)))
    return Clock((time(hour, minute),))


def _is_later(hour: int, half: str) -> bool | None:
    """Return whether it is in the second half of the day; None where that is not said."""
    if "clock" in half:
        return None
    if "night" in half:
        return 5 <= hour < 12
    return half.startswith("p") or "afternoon" in half or "evening" in half
