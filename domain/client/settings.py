"""Settings changed in plain words: the hour of the reminder, the unit, the zone, equipment, coming back."""

import re
from dataclasses import replace
from datetime import time
from functools import cache
from zoneinfo import ZoneInfo, available_timezones

from domain.client.draft import Draft
from domain.client.plans import come_back
from domain.client.weighing import take_weight
from domain.equipment import Equipment, default_equipment
from domain.equipment_words import told
from domain.outcome import SettingsKept
from domain.units import Unit, convert

_HOUR = re.compile(
    r"(?:please )?(?:remind me|reminders?|my reminder|send (?:it|my reminder))(?: to| at| for| is| now)* "
    r"(?:at )?(?P<hour>\d{1,2})(?:[:.h](?P<minute>\d{2}))? ?(?P<half>am|pm|a\.m\.|p\.m\.)?"
)
_UNIT = re.compile(
    r"(?:please )?(?:i use|use|i train in|my unit is|switch to|in) "
    r"(?P<unit>kg|kgs|kilos?|kilograms?|lb|lbs|pounds?)(?: please| now)?"
)
_ZONE = re.compile(
    r"(?:please )?(?:i'm|im|i am|i live|i'm now|my (?:time ?)?zone is|time ?zone)(?: now| back)?(?: in)? "
    r"(?P<place>[a-z][a-z_/ .'-]{2,40}?)(?: now| time)?"
)
_BACK = re.compile(
    r"(?:(?:hi|hello|hey|ok|okay|so)[,!. ]+)?"
    r"(?:(?:i'm|im|i am)(?: now)? back(?: again| now| home| in town)*|back(?: again)?|"
    r"i'm (?:well|healthy|better) again|resume|(?:start|resume) (?:the )?(?:messages|reminders)(?: again)?)"
)
_BACK_FROM = re.compile(r"(?:.{0,20}\b)?(?:i'm|im|i am|just got) back (?:from|at|to|on) .{1,40}|start")
"""What says so only for somebody who was away, or has stopped the reminders."""
_WELL = re.compile(
    r"(?:(?:hi|hello|hey|ok|okay|so)[,!. ]+)?"
    r"(?:(?:(?:i'm|im|i am|i feel|feeling|feel) )?(?:(?:all|much|fully|completely|totally) )*"
    r"(?:better|well|fine|healthy|recovered|fit|ok|good)(?: again| now)+|"
    r"(?:(?:i'm|im|i am|i have|i've) )?(?:fully |completely )?recovered(?: from .{1,20})?|"
    r"(?:(?:i'm|im|i am) )?(?:back |now )*(?:over|after) (?:the|my) (?:flu|cold|bug|covid|virus|illness)|"
    r"(?:the |my )?(?:flu|cold|fever|covid|bug|virus) (?:is|has|is all|was) (?:over|gone|passed))"
)
"""What says so for somebody who was ill."""


def take_setting(draft: Draft, text: str) -> bool:
    """Change a setting where `text` as a whole says so; return whether it did."""
    if (equipment := told(text, draft.client.equipment)) is not None:
        set_equipment(draft, equipment)
        return True
    said = " ".join(text.casefold().replace("’", "'").split()).rstrip(".! ")
    said = said.removesuffix("please").removesuffix("thanks").rstrip(", ")
    if len(said) > 80:
        return False
    is_away = draft.memory.paused or draft.memory.reminders_off
    is_ill = draft.memory.paused and draft.memory.ill_on is not None
    if (
        _BACK.fullmatch(said)
        or (is_away and _BACK_FROM.fullmatch(said))
        or (is_ill and _WELL.fullmatch(said))
    ):
        come_back(draft)
        return True
    if found := _HOUR.fullmatch(said):
        return set_hour(draft, int(found["hour"]), int(found["minute"] or 0), found["half"])
    if found := _UNIT.fullmatch(said):
        set_unit(draft, unit_of(found["unit"]))
        return True
    if take_weight(draft, text):
        return True
    if (found := _ZONE.fullmatch(said)) and (zone := zone_of(found["place"])):
        set_zone(draft, zone)
        return True
    return False


def set_hour(draft: Draft, hour: int, minute: int, half: str | None) -> bool:
    """Set the local hour of the reminder; say so where there is no such hour."""
    if half is not None and 1 <= hour <= 12:
        hour = hour % 12 + (12 if half.startswith("p") else 0)
    if hour > 23 or minute > 59:
        draft.notice("no such hour")
        return True
    draft.change(SettingsKept(replace(draft.client, remind_at=time(hour, minute))))
    draft.remember(reminders_off=False)
    draft.notice("hour kept", at=f"{hour:02d}:{minute:02d}")
    return True


def set_unit(draft: Draft, unit: Unit) -> None:
    """Set the usual unit; recorded sets keep theirs, body mass is converted, equipment becomes usual."""
    client = draft.client
    if unit != client.unit:
        mass = client.body_mass
        changed = replace(
            client,
            unit=unit,
            body_mass=None if mass is None else round(convert(mass, client.unit, unit), 1),
            equipment=default_equipment(unit).model_copy(update={"lacking": client.equipment.lacking}),
        )
        draft.change(SettingsKept(changed))
    draft.notice("unit kept", unit=unit)


def set_equipment(draft: Draft, equipment: Equipment) -> None:
    """Keep what the client has to train with; targets are loadable with it from now on."""
    before = draft.client.equipment
    changed = [of for of in Equipment.model_fields if getattr(equipment, of) != getattr(before, of)]
    draft.change(SettingsKept(replace(draft.client, equipment=equipment)))
    draft.notice("equipment kept", equipment=equipment.model_dump(mode="json"), changed=changed)


def set_zone(draft: Draft, zone: str) -> None:
    """Set where the client is, and say the local time back."""
    draft.change(SettingsKept(replace(draft.client, zone=zone)))
    draft.zone = ZoneInfo(zone)
    draft.notice("zone kept", zone=zone, local=draft.local.strftime("%H:%M"))


def unit_of(word: str) -> Unit:
    """Return the unit that a word names."""
    return "kg" if word.startswith("k") else "lb"


def zone_of(place: str) -> str | None:
    """Return the IANA zone of a city or zone name, or None where it is not one of the zone data's."""
    return _zones().get(place.strip().casefold().replace(" ", "_"))


@cache
def _zones() -> dict[str, str]:
    named: dict[str, str] = {}
    for zone in sorted(available_timezones()):
        if "/" in zone and not zone.startswith(("Etc/", "posix/", "right/", "SystemV/", "US/")):
            named.setdefault(zone.rsplit("/", 1)[1].casefold(), zone)
            named[zone.casefold()] = zone
    return named
