"""On which day somebody begins, as it is answered: "right away", "in two days", "next Friday", "the weekend".

Days that are said as in any other message are read elsewhere (`domain.reading`).
"""

from datetime import date, timedelta

from domain.expressions import Expression

_LEADING = Expression(
    r"^(?:(?:i'll|i will|i can|i'd like to|i would like to|i want to|can i|could i|let's|let me|please|"
    r"ok|okay|yes|"
    r"maybe|how about|what about|we can|best|so) )*(?:start(?:ing)?|begin(?:ning)?)(?: off)?(?: on)? (?=\w)"
)
_AT_ONCE = Expression(
    r"(?:today|tonight|now|right now|straight away|right away|as soon as possible|asap|at once|immediately|"
    r"whenever(?: you like)?|any ?time|any day|as soon as i can|let's (?:go|start|begin)|this (?:evening|"
    r"afternoon))"
    r"(?: please| if possible| then)?"
)
_NUMBERS = {
    "a": 1,
    "one": 1,
    "two": 2,
    "a couple of": 2,
    "three": 3,
    "four": 4,
    "five": 5,
    "six": 6,
    "ten": 10,
}
_IN_SO_MANY = Expression(
    rf"in (?P<many>\d{{1,2}}|{'|'.join(_NUMBERS)}) (?P<of>days?|weeks?)(?:'s? time)?(?: please| then)?"
)
_NEXT_WEEKDAY = Expression(r"(?:on )?next (?P<day>(?:mon|tues|wednes|thurs|fri|satur|sun)day)")
_WEEKDAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
_NAMED = (
    (Expression(r"(?:the )?day after tomorrow(?: please)?"), None, 2),
    (Expression(r"(?:(?:at|on|over) )?(?:the |this |next )?week-?end(?: please)?"), "saturday", 0),
    (
        Expression(r"(?:(?:from|the start of|early|some ?time) )?next week(?: some ?time)?(?: please)?"),
        "monday",
        1,
    ),
    (Expression(r"(?:right |just )?after (?:the |this )?week-?end(?: please)?"), "monday", 1),
    (Expression(r"in (?:a fortnight|two weeks|a couple of weeks)(?:'s time)?"), None, 14),
)
"""How it is said, the weekday that it means, and after how many days at the earliest."""


def first_day_of(said: str, today: date) -> date | None:
    """Return the day that the whole of `said` (plain, in lower case) means, from `today` on; else None.

    A day that is named is the earliest one of that name, which is said back with its date.
    """
    said = _LEADING.sub("", said)
    if _AT_ONCE.fullmatch(said):
        return today
    if found := _IN_SO_MANY.fullmatch(said):
        many = int(found["many"]) if found["many"].isdecimal() else _NUMBERS[found["many"]]
        return today + timedelta(days=many * (7 if found["of"].startswith("week") else 1))
    if found := _NEXT_WEEKDAY.fullmatch(said):
        return _earliest(found["day"], today + timedelta(days=1))
    for pattern, weekday, ahead in _NAMED:
        if pattern.fullmatch(said):
            day = today + timedelta(days=ahead)
            return day if weekday is None else _earliest(weekday, day)
    return None


def _earliest(weekday: str, since: date) -> date:
    return since + timedelta(days=(_WEEKDAYS.index(weekday) - since.weekday()) % 7)
