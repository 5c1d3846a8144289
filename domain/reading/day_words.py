"""Words and turns of phrase for days, as data."""

from typing import Literal

from domain.reading.pattern_tables import Table
from domain.reading.patterns import Pattern
from domain.reading.words import ORDINALS, words_of

Kind = Literal[
    "offset",
    "weekday",
    "last weekday",
    "next weekday",
    "weekday of next week",
    "weekday of last week",
    "weekday in weeks",
    "day of month",
    "numbers",
    "date",
    "vague",
]
"""How a day is said, which decides what its values are: days from today; the weekday (0 is Monday), and of
"in weeks" how many weeks after the next of its name; the day of the month; two or three numbers; the day's
ordinal; nothing."""
Said = tuple[Kind, tuple[int, ...]]
"""A day as it is said: how, and its values."""

WEEKDAYS = {
    name: number
    for number, names in enumerate(
        (
            "monday mon munday",
            "tuesday tue tues tuseday teusday",
            "wednesday wed weds wednsday wendesday wensday",
            "thursday thu thur thurs thrusday thurday",
            "friday fri firday",
            "saturday sat satuday saterday",
            "sunday sun",
        )
    )
    for name in names.split()
}
MONTHS = {
    name: number
    for number, names in enumerate(
        (
            "january jan",
            "february feb",
            "march mar",
            "april apr",
            "may",
            "june jun",
            "july jul",
            "august aug",
            "september sep sept",
            "october oct",
            "november nov",
            "december dec",
        ),
        1,
    )
    for name in names.split()
}
OFFSETS = {
    **dict.fromkeys(("today", "todays", "today", "todays", "2day"), 0),
    **dict.fromkeys(("tomorrow", "tomorrows"), 1),
    **dict.fromkeys(("yesterday", "yesterdays", "yday", "ydays", "yest"), -1),
}

_PART_OF_DAY = words_of("morning afternoon evening lunchtime")
PHRASES: Table[Said] = Table(
    (
        (Pattern("the day before yesterday"), ("offset", (-2,))),
        (Pattern("yesterday ..4 but the day before"), ("offset", (-2,))),
        (Pattern("the day after tomorrow"), ("offset", (2,))),
        (Pattern("(a|one) week (tomorrow|from tomorrow)|tomorrow in a week"), ("offset", (8,))),
        (
            Pattern("(last|yesterday) (night|nite|evening)|yesterday {part}", part=_PART_OF_DAY),
            ("offset", (-1,)),
        ),
        (Pattern("this ({part}|arvo)", part=_PART_OF_DAY), ("offset", (0,))),
        (
            Pattern("the other (day|night)|(on|over) the weekend|last weekend|<(#|reps|rep) last week >($)"),
            ("vague", ()),
        ),
    )
)
OF_NEXT_WEEK = Pattern(
    """
    first:{weekday} [{to} second:{weekday}] [of|in|the|,]* next week
    next week [,|:|-|on|from|starting|between|the]* first:{weekday} [{to} second:{weekday}]
    """,
    weekday=frozenset(WEEKDAYS),
    to="(to|till|til|until|through|thru|and|or|-|,)",
)
"""Weekdays that are told as those of the week to come."""
OF_LAST_WEEK = Pattern(
    "day:{weekday} [of|in|the]* last week\nlast week [on|:]* day:{weekday}", weekday=frozenset(WEEKDAYS)
)
"""A weekday that is told as one of the week before."""
IN_WEEKS = Pattern(
    """
    day:{weekday} ,? in (a|one|count:#) (week|weeks) [time]
    day:{weekday} ,? in a fortnight
    day:{weekday} week >(.|,|!|'?'|$|then|please|if|instead|and|but|so|as|because|ok)
    in? (a|one|count:#) (week|weeks) [,] (on|from|after) [this|next|coming]* day:{weekday}
    day:{weekday} (after|following) next
    not [this|the|next|coming]* day:{weekday} [,|but|-]* the (one|next|week|following) [one] after [that|next]
    not [this|the|next|coming]* day:{weekday} [,|but|-]* the (following|next) (one|week)
    """,
    weekday=frozenset(WEEKDAYS),
)
"""Weekdays that are told as some weeks after the next of their name: "Friday in a week"."""
AGO = Pattern("(count:#|a|one) (day|days|night|nights|weeks:(week|weeks)) ago")

AHEAD = Pattern("<!(done|up|more) in count:# days [time] !(a|per)")
"""A day to come, by how many days it is off: "in 2 days"."""

ENDINGS = frozenset({"st", "nd", "rd", "th"})
DAYS_IN_WORDS = ORDINALS | {"thirtieth": 30}
"""Days of a month in words."""
WITH_MONTH = Pattern(
    """
    # [{ending}] of? {month} #?
    {month} the? # [{ending}]
    {ordinal} of {month}
    {month} the {ordinal}
""",
    ending=ENDINGS,
    ordinal=frozenset(DAYS_IN_WORDS),
    month=frozenset(MONTHS),
)
DAY_OF_MONTH = Pattern(
    """
    {before} the # {ending} !({counted})
    (report|log|date|results|session|workout|training|day) ,? the # {ending}
    (till|until|til|(back|home|return|returning|again) (on|by|from)) # {ending} !({counted})
    from # {ending} >(to|till|til|until|-|through|thru)
    <({ending}) (to|-|through|thru) # {ending} !({counted})
    back # {ending} >(.|,|!|$|of|so|and)
    ^ the # {ending} >(:|,|'\n'|#|_ #)
    (till|until|til|(back|home|return|again) (on|by|from)|away to|off to) the {ordinal} >(.|,|!|$|so|and|
        i|im|coach|thanks|please)
""",
    ordinal=frozenset(DAYS_IN_WORDS),
    ending=ENDINGS,
    counted=words_of(
        """week weeks time times session workout set rep one year month go day attempt try round straight
        consecutive person"""
    ),
    before=frozenset(WEEKDAYS)
    | words_of(
        """on till til until from for of back by since to away through was that send sent log report post
        be under dated is were"""
    ),
)
IN_NUMBERS = Pattern("""
    # / # [/ #]
    # - # [- #]
    # . # . #?
""")

CUES = words_of("on for from of date dated since till until back workout session to")
"""Words before numbers, or before a word that has other meanings, that make a day of them."""
FULL_SET = Pattern(
    """
    # [{unit}] (x|for|@|*|times|by) #
    # reps
    # (kg|lb|lbs) #
""",
    unit=words_of("kg kgs kilo kilos lb lbs pound pounds s"),
)
"""A set that is told whole, so that other numbers beside it can be a day."""
