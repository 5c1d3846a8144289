"""Settings changed in plain words: the hour of the reminder, the unit, the zone, equipment, coming back."""

import re
from dataclasses import replace
from datetime import time, timedelta
from zoneinfo import ZoneInfo

from domain.actions import Words
from domain.client.called import take_name
from domain.client.clearance import see_a_doctor_first
from domain.client.draft import Draft
from domain.client.equipping import take_equipment
from domain.client.plans import come_back, stay
from domain.client.rotation import in_turn
from domain.client.understanding import request_for
from domain.client.weighing import take_weight
from domain.clock_words import clock_of
from domain.equipment import default_equipment
from domain.expressions import Expression
from domain.outcome import SettingsKept
from domain.places import offset_at, offset_of, zone_at, zones_of
from domain.reading import days_to_come, read
from domain.staying_words import is_back, stays
from domain.units import Unit, convert
from domain.usual_hours import usual_hour

_REMIND = (
    r"(?:(?:nvm|never ?mind|actually|no|nope|ok|okay|oh|sorry|wait|then|hm+)[,. ]+)*"
    r"(?:please |(?:can|could|will|would) you (?:please )?)?"
    r"(?:(?:remind|message|text|ping|write to) me|(?:i want |i'd like )?(?:the |my )?reminders?|"
    r"(?:send|move|change|set|put|shift) (?:it|(?:me )?(?:my|the) reminders?))"
    r"(?: to| at| for| is| now|(?: a (?:little|bit))? (?:earlier|later),?| from now on| say| always|"
    r" perhaps| maybe|"
    r" about| around)*"
)
_FROM_NOW = (
    r"(?:,? (?:please|instead|from now on|"
    r"(?:from|starting|as of) (?:now|today|tomorrow|(?:next )?\w+day)(?: on)?))*\??"
)
"""From which day on makes no difference here: an hour is changed at once, and said to be."""
_HOUR = Expression(
    rf"{_REMIND} (?:at )?(?P<hour>\d{{1,2}})(?:[:.h](?P<minute>\d{{2}}))? ?(?P<half>am|pm|a\.m\.|p\.m\.)?"
    rf"{_FROM_NOW}"
)
_HOUR_IN_WORDS = Expression(rf"{_REMIND} (?P<clock>.{{2,40}}?){_FROM_NOW}")
_UNIT = Expression(
    r"(?:please )?(?:(?:can|could|shall|may) (?:you|we|i) (?:please )?)?"
    r"(?:i(?:'d rather| would rather|'d like to| would like to|'d prefer to|'ll)? "
    r"(?:use|train in|count in|lift in|think in|measure in|prefer|want|have)|use|have|my unit is|go back to|"
    r"(?:change|set|switch)(?: (?:my|the) units?| me| us| it| everything)?(?: back| over)? to|"
    r"(?:show|write|tell|give|say) (?:me )?(?:it|everything|all|my loads|the loads)? ?in|in|make it) "
    r"(?P<unit>kg|kgs|kilos?|kilograms?|lb|lbs|pounds?)"
    r"(?: please| now| again| instead| from now on)*\??|"
    r"(?:actually,? |no,? |oh,? )*(?:kg|kgs|kilos?|kilograms?|lb|lbs|pounds?) (?:is|are|was|were) "
    r"(?:better|fine|nicer|easier)(?: for me| after all| actually)*"
)
_UNITS = frozenset({"kg", "kgs", "kilo", "kilos", "kilogram", "kilograms", "lb", "lbs", "pound", "pounds"})
_SYSTEMS: dict[str, Unit] = {
    **dict.fromkeys(("metric", "european", "kilogramm", "kilogramme", "kilogrammes"), "kg"),
    **dict.fromkeys(("imperial", "american"), "lb"),
}
_NOT = Expression(r"\b(?:not|no|never|don't|\d+)\b")
_ZONE = Expression(
    r"(?:please )?(?:(?:i'm|im|i am|i live|we live|i've moved|i moved|i have moved|i'm staying|"
    r"(?:i(?:'ve)? )?(?:just )?(?:landed|arrived|came back|got back|returned|reached))"
    r"(?: now| back| home)*(?: safely)?(?: in| to)?|now|back (?=to )to|"
    r"(?:(?:now|safely) )*(?:back(?: home)?|home|home again) in|(?:now |just )?in(?= .{2,40} now$)|"
    r"my (?:time ?)?zone is|time ?zone(?: is)?)(?: now)? "
    r"(?P<place>[a-zà-ÿ+-][a-zà-ÿ0-9_/ .,'+:-]{1,40}?)(?: now| time)?"
)
_SURELY_WHERE = Expression(
    r"(?:please )?(?:i live|we live|i've moved|i moved|i have moved|(?:i(?:'ve)? )?(?:just )?landed|"
    r"my (?:time ?)?zone|time ?zone)\b(?! (?:on|up|down|out|over|off)\b)"
)
"""What says where somebody is, whether the place is known or not."""
_TRIP = Expression(
    r"(?:(?:i|we) (?:fly|travel)|"
    r"(?:(?:i'm|im|i am|we're|we are) )?(?:off )?(?:flying|going|travelling|traveling|moving|heading|"
    r"off)) to "
    r"(?P<place>[a-zà-ÿ .'-]{2,40}?)"
    r"(?: (?:today|tonight|tomorrow|soon|(?:on|this|next) \w+|in \w+ \w+|for \w+ \w+))*|"
    r"(?:(?:i'll|i will|we'll) be |(?:i'm |im |i am |we're |we are )?(?=back\b))(?P<back>back (?:home )?)?"
    r"in (?P<there>[a-zà-ÿ .'-]{2,40}?)"
    r"(?: (?:tonight|tomorrow|soon|from \w+ on|(?:on|this|next|from|by) (?:the )?\w+(?: \w+)?|in \w+ \w+|"
    r"for \w+ \w+))+"
)
_TIME_HERE = Expression(
    r"(?:it's|it is|the time is)(?: now)? (?P<place>.{1,25}?)(?: now)? (?:here|where i am)(?: now)?|"
    r"(?:the time )?here(?: it)?(?:'s| is)(?: now)? (?P<time>\d.{0,24}?)(?: now)?"
)
_START = Expression(
    r"(?:(?:actually|no|oh|sorry|hm+|wait|ok|okay|well|please),? )*"
    r"(?:(?:i'd|i would) like to |i want to |i'll |i will |(?:can|may|could|shall) i |let me |"
    r"let's )?(?:start|"
    r"begin)(?: training)?(?: on| from)? "
    r"(?P<day>(?!messages|reminders)[a-z0-9 ./]{2,30})(?: instead)?(?: please)?\??"
)
_FOUND_ILL = Expression(
    r"(?:(?:i've|i have|i was|i just got|i've just|i have just)(?: been| just been)? diagnosed with .{2,40}|"
    r"(?:i'm|i am) pregnant|"
    r"i (?:now )?have (?:a |an |high )?(?:diabetes|heart (?:condition|disease|problem|trouble)s?|"
    r"blood pressure|"
    r"kidney (?:disease|trouble|problems?)|angina|epilepsy|cancer)(?: now)?|"
    r"i (?:have )?had (?:a |an )?(?:heart attack|stroke|operation|surgery).{0,30})"
)
_BACK = Expression(
    r"(?:(?:hi|hello|hey|ok|okay|so|actually|well|oh|sorry|and|please)[,!. ]+){0,3}"
    r"(?:(?:i'm|im|i am)(?: now)? back(?: again| now| home| in town)*|back(?: again)?|"
    r"i'm (?:well|healthy|better) again|resume|(?:start|resume) (?:the )?(?:messages|reminders)(?: again)?)"
)
_BACK_FROM = Expression(r"(?:.{0,20}\b)?(?:i'm|im|i am|just got) back (?:from|at|to|on) .{1,40}|start")
"""What says so only for somebody who was away, or has stopped the reminders."""
_TRAINS_THERE = Expression(
    r"(?:.{0,30}\b)?(?:i(?:'ll| will| can| do|'m going to)? (?:still )?train (?:there|here|at home|anyway)|"
    r"i(?:'m| am) training (?:there|here|at home|anyway)|there(?:'s| is) a gym (?:there|here)|"
    r"(?:the|my) (?:hotel|place) has a gym)(?: too| as well| though| all the same)*"
)
"""What says of somebody away that the training goes on there."""
_GYM_THERE = Expression(
    r"\b(?:they(?:'ve| have)(?: got)?|there(?:'s| is| will be)|it has|(?:the|my|our) (?:hotel|place|resort|"
    r"ship) has) a (?:\w+ )?gym\b|"
    r"\bi(?:'ll| will| can| am going to|'m going to) (?:still )?train (?:there|as usual|anyway)\b"
)
TOLD_WITHIN = timedelta(days=3)
"""For how long after the end of a pause the client can say that it is over. The house's own choice."""
_WELL = Expression(
    r"(?:(?:hi|hello|hey|ok|okay|so)[,!. ]+)?"
    r"(?:i (?:become|became|got|get|have become) (?:well|better|healthy)(?: again| now)*|"
    r"(?:(?:i'm|im|i am|i feel|feeling|feel) )?(?:(?:all|much|fully|completely|totally) )*"
    r"(?:better|well|fine|healthy|recovered|fit|ok|good)(?: again| now)+|"
    r"(?:(?:i'm|im|i am|i have|i've) )?(?:fully |completely )?recovered(?: from .{1,20})?|"
    r"(?:(?:i'm|im|i am) )?(?:back |now )*(?:over|after) (?:the|my) (?:flu|cold|bug|covid|virus|illness)|"
    r"(?:the |my )?(?:flu|cold|fever|covid|bug|virus) (?:is|has|is all|was) (?:over|gone|passed))"
)
"""What says so for somebody who was ill."""


def take_setting(draft: Draft, text: str) -> bool:
    """Change a setting where `text` as a whole says so; return whether it did."""
    if take_equipment(draft, text):
        return True
    said = plainly(text)
    if len(said) > 80:
        return False
    if take_return(draft, said):
        return True
    if take_hour(draft, said) or take_unit(draft, said):
        return True
    if (
        take_name(draft, text)
        or take_weight(draft, text)
        or take_start(draft, said)
        or take_illness(draft, said, text)
    ):
        return True
    return take_trip(draft, said) or take_zone(draft, said)


def take_return(draft: Draft, said: str) -> bool:
    """End a pause where `said` is just that the client is back, well, or not going; return whether it is."""
    if draft.memory.is_away and stays(said):
        stay(draft)
        return True
    is_away = draft.memory.is_away or draft.memory.reminders_off
    is_ill = draft.memory.paused and draft.memory.ill_on is not None
    trains_there = draft.memory.is_away and _TRAINS_THERE.fullmatch(said) is not None
    if not (
        _BACK.fullmatch(said)
        or (is_away and _BACK_FROM.fullmatch(said))
        or ((is_away or was_away_lately(draft)) and is_back(said, was_ill=is_ill))
        or (is_ill and _WELL.fullmatch(said))
        or trains_there
    ):
        return False
    come_back(draft, was_here=trains_there)
    return True


def trains_on_there(text: str) -> bool:
    """Return whether somebody who goes away says that the training goes on there."""
    return _GYM_THERE.search(plainly(text)) is not None


def was_away_lately(draft: Draft) -> bool:
    """Return whether a pause has just ended by itself, so that its end can still be told."""
    until = draft.memory.paused_until
    return until is not None and draft.today - until <= TOLD_WITHIN


def plainly(text: str) -> str:
    """Return what was typed without what makes no difference to a setting."""
    said = " ".join(text.casefold().replace("’", "'").split()).rstrip(".! ")
    return said.removesuffix("please").removesuffix("thanks").rstrip(", ")


def take_hour(draft: Draft, said: str) -> bool:
    """Change the hour of the reminder where `said` is just that; return whether it did."""
    if found := _HOUR.fullmatch(said):
        hour, minute = int(found["hour"]), int(found["minute"] or 0)
        if found["half"] is None and (clock := clock_of(f"{hour}:{minute:02d}")) is not None:
            hour = clock.awake(draft.client.remind_at).hour
        if found["half"] is None and int(found["hour"]) <= 12 and hour:
            draft.offer(Words(text=f"Remind me at {(hour + 12) % 24:02d}:{minute:02d}", once=True))
        return set_hour(draft, hour, minute, found["half"])
    found = _HOUR_IN_WORDS.fullmatch(said)
    if found and (clock := clock_of(found["clock"])):
        at = clock.awake(draft.client.remind_at)
        return set_hour(draft, at.hour, at.minute, None)
    return found is not None and take_usual_hour(draft, found["clock"])


def take_usual_hour(draft: Draft, said: str) -> bool:
    """Take an hour where only a part of the day is said, or the choice is left; return whether it is."""
    hour = usual_hour(said)
    if hour is None:
        return False
    at = draft.client.remind_at if isinstance(hour, str) else hour
    return set_hour(draft, at.hour, at.minute, None, chosen=True)


def take_unit(draft: Draft, said: str) -> bool:
    """Change the usual unit where `said` is just that; return whether it did."""
    unit = unit_named(said) if _UNIT.fullmatch(said) else None
    if unit is not None:
        set_unit(draft, unit)
    return unit is not None


def take_trip(draft: Draft, said: str) -> bool:
    """Say how to tell of another place once there, where `said` is just of going there; return if so."""
    trip = _TRIP.fullmatch(said)
    if trip and zones_of(place := trip["place"] or trip["there"]):
        is_home = trip["back"] is not None and draft.client.zone in zones_of(place)
        ahead = [day for day in days_to_come(said, draft.local) if day > draft.today] if is_home else []
        draft.notice(
            "zone later",
            place=place.upper() if len(place) == 2 else place.title(),
            back=trip["back"] is not None,
            until=ahead[0].isoformat() if ahead else None,
        )
        for on in ahead[:1]:
            draft.offer(Words(text=f"Away till {on:%A} {on.day} {on:%B}", once=True))
        return True
    return False


def take_zone(draft: Draft, said: str) -> bool:
    """Change the zone where `said` is just a place or the time there; return whether it did."""
    found = _ZONE.fullmatch(said) or _TIME_HERE.fullmatch(said)
    place = next(filter(None, found.groups()), "") if found else ""
    zones = zones_said(draft, place) if found else ()
    is_where = found is not None and (clock_of(place) is not None or _SURELY_WHERE.match(said))
    if len(zones) > 1:
        draft.notice("which town")
    elif zones:
        set_zone(draft, zones[0])
    elif is_where:
        draft.notice("place unclear", zone=draft.client.zone, local=f"{draft.local:%H:%M}")
    return bool(zones or is_where)


def says_time_here(said: str) -> bool:
    """Return whether `said` is what time it is where the client is, and no hour that is wished for."""
    return _TIME_HERE.fullmatch(said) is not None


def take_start(draft: Draft, said: str) -> bool:
    """Change the day of the first workout, as long as nothing was trained yet."""
    found = _START.fullmatch(said)
    if found is None or draft.state.workouts or draft.client.programme is None:
        return False
    on = read(request_for(draft, f"move it to {found['day']}")).on
    if on is None:
        return False
    if on < draft.today:
        draft.notice("day is past", on=on.isoformat())
        return True
    draft.change(SettingsKept(replace(draft.client, starts=on)))
    draft.remember(moved_to=None, moved_workout=None, moved_from=None)
    coming = in_turn(draft.state, draft.today)
    if coming is not None:
        draft.notice("moved", workout=coming.workout, on=coming.on.isoformat())
    return True


def take_illness(draft: Draft, said: str, text: str) -> bool:
    """Take word of an illness found since: a doctor first, and the coach's release, as when joining."""
    if not _FOUND_ILL.fullmatch(said):
        return False
    see_a_doctor_first(draft, frozenset({"disease"}), text)
    return True


_ROUGH_CLOCK = Expression(r"\b(?:half|quarter|noon|midnight|about|around|nearly|almost|just after)\b")
HOUR, ROUGHLY = timedelta(hours=1), timedelta(minutes=20)
"""How far off the time can be that somebody says it is. The house's own choice."""


def zones_said(draft: Draft, place: str, among: tuple[str, ...] = ()) -> tuple[str, ...]:
    """Return the zones that a place, an offset or the time there can mean; none where it is none of these.

    Of an offset it is that of the zones `among` which it can be, else the client's as it stands, the coach's,
    or one of fixed offset.
    The time can be said roughly, as "half past four" at a quarter past.
    """
    if zones := zones_of(place):
        return zones
    here = () if draft.memory.joining is not None else (draft.client.zone,)
    likely = among or (*here, draft.client.coach.zone)
    offset, clock = offset_of(place), clock_of(place)
    if offset is None and clock is not None:
        offset = offset_at(clock, draft.at, likely[0])
    zone = None if offset is None else zone_at(offset, draft.at, likely)
    if zone is None and offset is not None and _ROUGH_CLOCK.search(place):
        hours = round(offset / HOUR) * HOUR
        zone = zone_at(hours, draft.at, likely) if abs(offset - hours) <= ROUGHLY else None
    return () if zone is None else (zone,)


def set_hour(draft: Draft, hour: int, minute: int, half: str | None, *, chosen: bool = False) -> bool:
    """Set the local hour of the reminder; say so where there is no such hour.

    `chosen`: no hour was said, so that it is said with it how another one is told.
    """
    if half is not None and 1 <= hour <= 12:
        hour = hour % 12 + (12 if half.startswith("p") else 0)
    if hour > 23 or minute > 59:
        draft.notice("no such hour")
        return True
    draft.change(SettingsKept(replace(draft.client, remind_at=time(hour, minute))))
    draft.remember(reminders_off=False)
    draft.notice("hour kept", at=f"{hour:02d}:{minute:02d}", chosen=chosen)
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


def set_zone(draft: Draft, zone: str) -> None:
    """Set where the client is, and say the local time back."""
    before = draft.today
    draft.change(SettingsKept(replace(draft.client, zone=zone)))
    draft.zone = ZoneInfo(zone)
    on = None if draft.today == before else draft.today.isoformat()
    draft.notice("zone kept", zone=zone, local=draft.local.strftime("%H:%M"), on=on)


def unit_named(said: str) -> Unit | None:
    """Return the one unit that plain words name; None where they name none or both."""
    words = re.findall(r"[a-z]+", said)
    units: set[Unit] = {"kg" if word.startswith("k") else "lb" for word in words if word in _UNITS}
    units |= {_SYSTEMS[word] for word in words if word in _SYSTEMS}
    return units.pop() if len(units) == 1 and not _NOT.search(said) else None
