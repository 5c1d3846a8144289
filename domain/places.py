"""Where people live, as they say it, and which zone that is: by town, country, offset or the time it is
there.

Towns that are zones of the tz database are known by it; others, and countries, stand in `places.toml`.
"""

import re
import unicodedata
from datetime import UTC, datetime, timedelta
from functools import cache
from zoneinfo import ZoneInfo, available_timezones

from domain.clock_words import Clock
from domain.expressions import Expression
from domain.own_data import own_data

_LEADING = Expression(r"^(?:(?:in|near|at|from|the|city of|close to|just outside|outside) )+")
_OFFSET = Expression(
    r"(?:(?:utc|gmt|z|offset|time ?zone) ?)?(?P<sign>[+-]) ?(?P<hours>\d{1,2})(?:[:.]?(?P<minutes>00|"
    r"15|30|45))?"
    r"(?: ?(?:hours?|h|utc|gmt))?"
)
_NO_OFFSET = frozenset({"utc", "gmt", "greenwich", "zulu"})

_NEAREST = timedelta(minutes=15)
"""All offsets in use are whole quarters of an hour (tz database, 2026)."""

_UNEVEN = (
    *("Asia/Kolkata", "Asia/Kathmandu", "Asia/Tehran", "Asia/Kabul", "Asia/Yangon", "Australia/Adelaide"),
    *("Australia/Darwin", "America/St_Johns", "Australia/Eucla", "Pacific/Chatham", "Pacific/Marquesas"),
    "Australia/Lord_Howe",
)
"""Zones whose offset is no whole number of hours, those of the most people first."""


def zones_of(place: str) -> tuple[str, ...]:
    """Return the IANA zones that a place is in: one of a town, several of a large country, none where
    unknown.

    Of "Porto, Portugal" the part that is known counts, the first before the others.
    """
    whole = _bare(place)
    for part in (whole, *(_bare(each) for each in re.split(r"[,()]", place))):
        if found := _known(part):
            return found
    words = whole.split()
    for at in range(1, len(words)):
        if country := _countries().get(" ".join(words[at:])):
            return _known(" ".join(words[:at])) or country
    return ()


_MOST_WORDS = 4
_NO_PLACE = frozenset({"male", "easter", "center", "troll", "wake", "christmas", "reunion", "vincennes"})
"""Names of places that are said for other things as well, and so mean none among other words."""


def zones_in(text: str) -> tuple[str, ...]:
    """Return the zones of all places that are named somewhere in `text`, where one can be meant by each.

    Of "I'm between Lisbon and Porto" that is one zone; of two places that have none in common, none.
    """
    words = re.findall(r"[^\W_]+(?:['.-][^\W_]+)*", _plain(text))
    found, at = list[tuple[str, ...]](), 0
    while at < len(words):
        for end in range(min(len(words), at + _MOST_WORDS), at, -1):
            name = " ".join(words[at:end])
            if name not in _NO_PLACE and len(name) > 2 and (zones := _known(name)):
                found.append(zones)
                at = end - 1
                break
        at += 1
    return tuple(zone for zone in found[0] if all(zone in each for each in found)) if found else ()


def zone_of(place: str) -> str | None:
    """Return the IANA zone of a place that has just one; None where it has several, or is not known."""
    found = zones_of(place)
    return found[0] if len(found) == 1 else None


def city_of(zone: str) -> str | None:
    """Return the town that a zone is named after; None where it is named after none."""
    area, _, town = zone.rpartition("/")
    return town.replace("_", " ") if area and not zone.startswith("Etc/") else None


def offset_of(text: str) -> timedelta | None:
    """Return the offset from UTC that `text` is; None where it is none."""
    said = _plain(text).strip(" .!")
    if said in _NO_OFFSET:
        return timedelta(0)
    found = _OFFSET.fullmatch(said)
    if found is None:
        return None
    offset = timedelta(hours=int(found["hours"]), minutes=int(found["minutes"] or 0))
    offset = offset if found["sign"] == "+" else -offset
    return offset if timedelta(hours=-12) <= offset <= timedelta(hours=14) else None


def offset_at(clock: Clock, at: datetime, near: str) -> timedelta:
    """Return the offset from UTC of a place where it is `clock` at the moment `at`, to a quarter of an hour.

    Of several that fit (the day before or after, the other half of the day) it is the one nearest to that of
    the zone `near`.
    """
    in_utc = at.astimezone(UTC)
    utc = timedelta(hours=in_utc.hour, minutes=in_utc.minute)
    home = _offset(near, at)
    fitting = [
        round((said + days * timedelta(days=1) - utc) / _NEAREST) * _NEAREST
        for said in (timedelta(hours=each.hour, minutes=each.minute) for each in clock.times)
        for days in (-1, 0, 1)
    ]
    in_use = [each for each in fitting if timedelta(hours=-12) <= each <= timedelta(hours=14)]
    return min(in_use, key=lambda each: abs(each - home))


def zone_at(offset: timedelta, at: datetime, likely: tuple[str, ...]) -> str | None:
    """Return a zone with that offset from UTC at the moment `at`; None where there is no such.

    The first of the zones `likely` that has it: people rarely live far from their coach. Else one of fixed
    offset, which changes no clocks.
    """
    for zone in likely:
        if _offset(zone, at) == offset:
            return zone
    hours, rest = divmod(offset, timedelta(hours=1))
    if not rest:
        return f"Etc/GMT{-hours:+d}" if hours else "Etc/UTC"
    return next((zone for zone in _UNEVEN if _offset(zone, at) == offset), None)


def _offset(zone: str, at: datetime) -> timedelta:
    return at.astimezone(ZoneInfo(zone)).utcoffset() or timedelta(0)


def _plain(text: str) -> str:
    bare = "".join(sign for sign in unicodedata.normalize("NFKD", text) if not unicodedata.combining(sign))
    return " ".join(bare.casefold().replace("’", "'").replace("&", " and ").split())


def _bare(text: str) -> str:
    return _LEADING.sub("", _plain(text).strip(" .!?,"), count=1)


def _known(part: str) -> tuple[str, ...]:
    spelt = part.replace("'", "")
    for name in (part, *(re.sub(r"^st\.? ", saint, spelt) for saint in ("saint ", "st "))):
        found = _countries().get(name) or _other_places().get(name) or _towns().get(name.replace(" ", "_"))
        if found:
            return found
    return ()


@cache
def _data() -> dict[str, dict[str, list[str]]]:
    return own_data("places.toml")


@cache
def _countries() -> dict[str, tuple[str, ...]]:
    return {name: tuple(zones) for name, zones in _data()["countries"].items()}


@cache
def _other_places() -> dict[str, tuple[str, ...]]:
    return {name: (zone,) for zone, names in _data()["places"].items() for name in names}


_PARTS_OF = ("Brazil/", "Canada/", "Chile/", "Mexico/")
"""Old names of zones after a part of a country, as "East": no towns."""


@cache
def _towns() -> dict[str, tuple[str, ...]]:
    named: dict[str, tuple[str, ...]] = {}
    for zone in sorted(available_timezones()):
        if "/" in zone and not zone.startswith(("Etc/", "posix/", "right/", "SystemV/", "US/")):
            if not zone.startswith(_PARTS_OF):
                named.setdefault(zone.rsplit("/", 1)[1].casefold(), (zone,))
            named[zone.casefold()] = (zone,)
    return named
