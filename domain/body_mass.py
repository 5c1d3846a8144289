"""Body mass as people tell it, whether it can be meant so, and when it is time to ask for it.

It counts only where the body is the load. How often to ask, and what is taken without asking for its unit,
are the project's own rules; a stone is 14 pounds.
"""

from dataclasses import dataclass
from datetime import date, timedelta
from decimal import Decimal
from typing import Literal

from domain.expressions import Expression
from domain.units import Unit, convert

ASK_EVERY = timedelta(weeks=5)
"""So long after it was told, or asked for in vain, it is asked for again. The project's own rule."""

LEAST_KG, MOST_KG = Decimal(25), Decimal(350)
"""Nobody who trains weighs less or more."""

PLAIN_KG = (Decimal(40), Decimal(130))
"""Between these a number needs no unit; outside them it may be meant in the other one."""

MOST_CHANGE = Decimal("0.25")
"""A number without a unit is not taken that differs by more than this share from the last one told."""

_POUNDS_IN_A_STONE = 14

Doubt = Literal["beyond", "unit"]
"""What keeps a body mass from being taken: it is beyond anything, or its unit has to be said."""

_NUMBER = r"\d{1,3}(?:[.,]\d{1,2})?"
_LEAD = (
    r"(?:i weigh(?:ed)?(?: in)?(?: at)?|my (?:body ?)?(?:weight|mass)(?: is|'s)?|"
    r"body ?weight(?: is)?|body ?mass(?: is)?)"
)
_ABOUT = (
    r"(?:about|around|roughly|approx(?:imately)?|circa|maybe|just (?:under|over|about)|close to|now|"
    r"currently|still|~)"
)
_TAIL = (
    r"(?:now|today|this morning|at the moment|or so|ish|roughly|about|i think|i guess|these days|currently|"
    r"thanks|thank you|please)"
)
_TOLD = Expression(
    rf"(?:(?P<lead>{_LEAD}) |(?P<mine>i'm|im|i am|weigh) |(?:it's|its|it is|that's|weight) )?(?:{_ABOUT} ?)*"
    rf"(?:(?P<stone>{_NUMBER})(?P<half> and a half)? ?(?:stones?|st)\b"
    rf"(?:,? ?(?:and )?(?P<pounds>\d{{1,2}}) ?(?:lbs?|pounds?)?)?"
    rf"|(?P<mass>{_NUMBER}) ?(?P<unit>kg|kgs|kilos?|kilograms?|kilogrammes?|k|lbs?|pounds?)?)"
    rf"(?:[, ]*{_TAIL})*"
)


@dataclass(frozen=True, slots=True)
class Told:
    """A body mass as told; `in_words`: the unit was said with it."""

    mass: Decimal
    unit: Unit
    in_words: bool


def told(text: str, usual: Unit, *, asked: bool) -> Told | None:
    """Return the body mass that `text` as a whole tells, None where it tells none.

    A number alone tells one only where it was `asked` for. Without a unit it is in the `usual` one.
    """
    said = " ".join(text.casefold().replace("’", "'").split()).rstrip(".! ")
    found = _TOLD.fullmatch(said)
    if found is None or not (asked or found["lead"] or (found["mine"] and (found["stone"] or found["unit"]))):
        return None
    if found["stone"]:
        stone = _decimal(found["stone"]) + (Decimal("0.5") if found["half"] else 0)
        return Told(stone * _POUNDS_IN_A_STONE + int(found["pounds"] or 0), "lb", in_words=True)
    unit = found["unit"]
    if unit is None:
        return Told(_decimal(found["mass"]), usual, in_words=False)
    return Told(_decimal(found["mass"]), "kg" if unit.startswith("k") else "lb", in_words=True)


def doubt_of(told: Told, known_kg: Decimal | None) -> Doubt | None:
    """Return why a body mass cannot be taken as told, None where it can; `known_kg` is the last one told."""
    mass_kg = convert(told.mass, told.unit, "kg")
    if told.in_words:
        return None if LEAST_KG <= mass_kg <= MOST_KG else "beyond"
    either = (told.mass, convert(told.mass, "lb", "kg"))
    if not any(LEAST_KG <= each <= MOST_KG for each in either):
        return "beyond"
    is_plain = PLAIN_KG[0] <= mass_kg <= PLAIN_KG[1]
    is_near = known_kg is None or abs(mass_kg / known_kg - 1) <= MOST_CHANGE
    return None if is_plain and is_near else "unit"


def is_time_to_ask(today: date, told_on: date | None, asked_on: date | None) -> bool:
    """Return whether body mass is to be asked for: never told nor asked for, or both of them long ago."""
    last = max(filter(None, (told_on, asked_on)), default=None)
    return last is None or today - last >= ASK_EVERY


def _decimal(text: str) -> Decimal:
    return Decimal(text.replace(",", "."))
