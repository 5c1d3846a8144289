"""Where a coach lives, and the unit of her clients who have said none: changed in plain words."""

from dataclasses import replace
from zoneinfo import ZoneInfo

from domain.coach.draft import Draft
from domain.expressions import Expression
from domain.places import zones_of
from domain.units import Unit

_PLACE = Expression(
    r"(?:i(?:'m| am) (?:now )?in|i (?:now )?live in|i(?:'ve| have) moved to|my (?:time ?)?zone is|"
    r"time ?zone:?) (?P<place>.{2,60}?)(?: now)?"
)
_UNIT = Expression(
    r"(?:i |we )?(?:use|count in|work in|think in|want) (?:(?P<kg>kg|kgs|kilos?|kilograms?)|lbs?|pounds?)"
    r"(?: please)?"
)


def take_own_setting(draft: Draft, said: str) -> bool:
    """Keep a place or a unit that a coach tells (`said` in lower case); return whether it was that.

    Of a coach who trains, too, the training's settings are the same ones, and are told there.
    """
    if draft.state.is_client:
        return False
    coach = draft.state.coach
    if found := _UNIT.fullmatch(said):
        unit: Unit = "kg" if found["kg"] else "lb"
        draft.keep(replace(coach, unit=unit))
        draft.notice("unit kept", unit=unit)
        return True
    found = _PLACE.fullmatch(said)
    zones = zones_of(found["place"]) if found else ()
    if len(zones) > 1:
        draft.notice("which town")
    elif zones:
        draft.keep(replace(coach, zone=zones[0]))
        local = draft.at.astimezone(ZoneInfo(zones[0]))
        draft.notice("zone kept", zone=zones[0], local=f"{local:%H:%M}", on=None)
    return bool(zones)
