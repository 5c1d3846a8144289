"""Places and offsets against the tz database: its tables of countries, and `zoneinfo`'s own reckoning.

Source: `iso3166.tab` and `zone.tab` of the tz database, public domain, as the package `tzdata` brings them.
"""

import re
import tomllib
from datetime import UTC, datetime, timedelta
from importlib.resources import files
from zoneinfo import ZoneInfo, available_timezones

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.clock_words import clock_of
from domain.places import offset_at, zone_at, zones_of

TZDATA = files("tzdata").joinpath("zoneinfo")
KNOWN = available_timezones()
PLACES = tomllib.loads(files("domain").joinpath("places.toml").read_text(encoding="utf-8"))

OTHERWISE_NAMED = re.compile(
    r"Bouvet Island|Heard Island & McDonald Islands|Antarctica|French S. Terr.|"
    r"US minor outlying islands|Korea .*|"
    r"Samoa .*|Virgin Islands .*|Congo .*|Britain .*|St Maarten .*|St Martin .*|Central African Rep.|"
    r"Cocos .*|"
    r"Myanmar .*|Eswatini .*"
)
"""Nobody lives there, or nobody says it so."""


def rows(name: str) -> list[list[str]]:
    lines = TZDATA.joinpath(name).read_text(encoding="utf-8").splitlines()
    return [line.split("\t") for line in lines if line and not line.startswith("#")]


ZONES: dict[str, set[str]] = {code: set() for code, _ in rows("iso3166.tab")}
for code, _where, zone, *_ in rows("zone.tab"):
    ZONES[code].add(zone)


COUNTRIES = [
    (code, name) for code, name in rows("iso3166.tab") if not OTHERWISE_NAMED.fullmatch(name) and ZONES[code]
]


@pytest.mark.parametrize(("code", "name"), COUNTRIES)
def test_a_country_has_the_zones_of_the_tz_database(code: str, name: str) -> None:
    assert zones_of(name)
    assert set(zones_of(name)) <= ZONES[code]


def test_every_zone_of_the_table_is_one_of_the_tz_database() -> None:
    assert len(COUNTRIES) > 220
    named = {zone for zones in PLACES["countries"].values() for zone in zones} | set(PLACES["places"])
    assert named <= KNOWN


def test_no_place_is_in_two_zones() -> None:
    names = [name for several in PLACES["places"].values() for name in several]
    assert len(names) == len(set(names))
    assert not set(names) & set(PLACES["countries"])


OLD_NAMES = ("Etc/", "posix/", "right/", "SystemV/", "US/")
TOWNS = sorted(zone for zone in KNOWN if "/" in zone and not zone.startswith(OLD_NAMES))


@pytest.mark.parametrize("zone", TOWNS)
def test_a_town_that_has_a_zone_is_known_by_its_name(zone: str) -> None:
    assert zones_of(zone) == (zone,)


BEGIN = datetime(2020, 1, 1, tzinfo=UTC)
CITIES = sorted(zone for zones in ZONES.values() for zone in zones if zone in KNOWN)
MOMENTS = st.integers(0, 17 * 365 * 24 * 60).map(lambda minute: BEGIN + timedelta(minutes=minute))


@given(zone=st.sampled_from(CITIES), at=MOMENTS, slow=st.integers(-5, 5))
def test_the_time_somewhere_gives_its_offset_back(zone: str, at: datetime, slow: int) -> None:
    """A watch that is some minutes off does no harm; the day before or after does none near home."""
    local = at.astimezone(ZoneInfo(zone))
    clock = clock_of(f"it's {local + timedelta(minutes=slow):%H:%M} here")
    assert clock is not None
    offset = offset_at(clock, at, zone)
    assert offset == local.utcoffset()
    assert zone_at(offset, at, (zone,)) == zone


@given(zone=st.sampled_from(CITIES), at=MOMENTS)
def test_far_from_home_a_zone_of_that_offset_is_found(zone: str, at: datetime) -> None:
    offset = at.astimezone(ZoneInfo(zone)).utcoffset()
    assert offset is not None
    found = zone_at(offset, at, ("Europe/Lisbon",))
    assert found is not None
    assert at.astimezone(ZoneInfo(found)).utcoffset() == offset
