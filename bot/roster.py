"""A roster: coaches, their sheets and their clients as JSON, so that people need not join by chat.

Reading one gives a value for the store, or every fault of it, a line each, with the name of the person or the
sheet that it is about. Paths are relative to the roster's own folder.
"""

import json
from collections import Counter
from collections.abc import Iterable, Iterator
from datetime import date, datetime, time
from decimal import Decimal
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from pydantic import Field, ValidationError, field_validator, model_validator

from bot.faults import OperatorFault
from bot.markup import plain
from bot.wording.sheet import fault_words
from domain.calendar import at_local
from domain.equipment import Equipment
from domain.equipment_words import equipment_of
from domain.frozen import Frozen
from domain.sheet import read_sheet
from domain.units import Unit
from domain.values import facts_of
from persistence.prepared import PreparedClient, PreparedCoach, PreparedSheet, Roster

PLATFORM = "telegram"
"""The platform of a chat that is given by its number alone."""


class RosterFault(OperatorFault):
    """A roster that cannot be taken."""


class _Person(Frozen):
    name: str = Field(min_length=1, max_length=100)
    zone: str
    unit: Unit
    chat: str | int | None = None

    @field_validator("name")
    @classmethod
    def _plain(cls, name: str) -> str:
        """Refuse a name that could not be typed back."""
        name = " ".join(name.split())
        if not name or not name.isprintable():
            raise ValueError("a name of letters that can be seen")
        return name

    @field_validator("zone")
    @classmethod
    def _known(cls, zone: str) -> str:
        """Refuse a zone that is not in the time zone data."""
        try:
            ZoneInfo(zone)
        except (ZoneInfoNotFoundError, ValueError, OSError):
            raise ValueError(f"unknown zone {zone!r} (one like Europe/Lisbon)") from None
        return zone

    @property
    def whole_chat(self) -> str | None:
        """The chat with its platform, as in `telegram:1234`; None where none is given."""
        chat = "" if self.chat is None else str(self.chat).strip()
        return (chat if ":" in chat else f"{PLATFORM}:{chat}") if chat else None


class _Coach(_Person):
    pass


class _Client(_Person):
    coach: str
    programme: str | None = None
    starts: date
    remind_at: time
    body_mass: Decimal | None = Field(default=None, gt=0)
    equipment: Equipment | None = None

    @model_validator(mode="before")
    @classmethod
    def _equipment_in_words(cls, client: Any) -> Any:
        """Take equipment as words too: one text, or a list of them."""
        words = client.get("equipment") if isinstance(client, dict) else None
        if isinstance(words, str):
            words = words.split(";")
        if not isinstance(words, list) or not all(isinstance(each, str) for each in words):
            return client
        equipment = equipment_of(tuple(words), "lb" if client.get("unit") == "lb" else "kg")
        if isinstance(equipment, str):
            raise ValueError(f"equipment: «{equipment}» is not understood")
        return client | {"equipment": equipment.model_dump(mode="json")}


class _Roster(Frozen):
    coaches: tuple[_Coach, ...] = ()
    sheets: tuple[str, ...] = ()
    clients: tuple[_Client, ...] = ()


def read_roster(source: Path | dict[str, Any], folder: Path | None = None) -> Roster:
    """Return the roster of a file, or of what stands inline in a script in `folder`. Raises RosterFault."""
    found: Any = source
    if isinstance(source, Path):
        found, folder = _read_json(source), source.parent
    try:
        roster = _Roster.model_validate_json(json.dumps(found))
    except ValidationError as error:
        raise RosterFault(tuple(_shape_fault(fault, found) for fault in error.errors())) from None
    faults: list[str] = []
    sheets = tuple(_sheets(roster.sheets, folder or Path(), faults))
    faults += _name_faults(roster, {sheet.programme.name for sheet in sheets}, complete=not faults)
    if faults:
        raise RosterFault(tuple(faults))
    coaches = tuple(
        PreparedCoach(each.name, each.zone, each.unit, each.whole_chat) for each in roster.coaches
    )
    names = {coach.name.casefold(): coach.name for coach in coaches}
    programmes = {sheet.programme.name.casefold(): sheet.programme.name for sheet in sheets}
    clients = tuple(
        PreparedClient(
            name=each.name,
            coach=names[each.coach.casefold()],
            programme=None if each.programme is None else programmes[each.programme.casefold()],
            unit=each.unit,
            zone=each.zone,
            starts=each.starts,
            remind_at=each.remind_at,
            chat=each.whole_chat,
            body_mass=each.body_mass,
            equipment=each.equipment,
        )
        for each in roster.clients
    )
    return Roster(coaches, sheets, clients)


def first_reminder(roster: Roster) -> datetime | None:
    """Return the moment of the first reminder that anybody in the roster gets; None where nobody does."""
    moments = (at_local(each.starts, each.remind_at, ZoneInfo(each.zone)) for each in roster.clients)
    return min(moments, default=None)


def _read_json(path: Path) -> Any:
    try:
        return json.loads(path.read_text(encoding="utf-8-sig"))
    except OSError as error:
        raise RosterFault((f"{path}: {error.strerror}",)) from None
    except UnicodeDecodeError:
        raise RosterFault((f"{path}: not a text file in UTF-8",)) from None
    except (ValueError, RecursionError) as error:
        raise RosterFault((f"{path}: not JSON ({error})",)) from None


def _shape_fault(fault: Any, found: Any) -> str:
    """Return a fault of pydantic's as a line that names the person it is about, where there is a name."""
    loc = tuple(fault["loc"])
    where = " ".join(str(part) for part in loc) or "the roster"
    if len(loc) > 1 and isinstance(loc[1], int):
        person = found[loc[0]][loc[1]]
        given = person.get("name") if isinstance(person, dict) else None
        name = " ".join(given.split()) if isinstance(given, str) else ""
        where = " ".join([name or f"{loc[0]} {loc[1] + 1}", *map(str, loc[2:])])
    return f"{where}: {fault['msg'].removeprefix('Value error, ')}"


def _sheets(sources: Iterable[str], folder: Path, faults: list[str]) -> Iterator[PreparedSheet]:
    """Yield the sheets that can be read; add what is wrong with the others to `faults`."""
    for number, source in enumerate(sources, start=1):
        label, text = f"sheet {number}", source
        if "\n" not in source:
            label = source
            try:
                text = (folder / source).read_text(encoding="utf-8-sig")
            except (OSError, ValueError) as error:
                why = error.strerror if isinstance(error, OSError) else "not a text file in UTF-8"
                faults.append(f"{label}: {why}")
                continue
        result = read_sheet(text)
        faults += (f"{label}: {plain(fault_words(facts_of(fault)))}" for fault in result.faults)
        if result.programme is not None:
            yield PreparedSheet(result.programme, text)


def _name_faults(roster: _Roster, programmes: set[str], *, complete: bool) -> Iterator[str]:
    """Yield names that come twice, and names of nobody; of programmes only where all of them were read."""
    people = Counter(each.name.casefold() for each in (*roster.coaches, *roster.clients))
    for each in dict.fromkeys(each.name for each in (*roster.coaches, *roster.clients)):
        if people[each.casefold()] > 1:
            yield f"{each}: the name comes more than once"
    chats = Counter(chat for each in (*roster.coaches, *roster.clients) if (chat := each.whole_chat))
    yield from (f"chat {chat}: given to more than one person" for chat, count in chats.items() if count > 1)
    coaches = {coach.name.casefold() for coach in roster.coaches}
    known = {name.casefold() for name in programmes}
    for client in roster.clients:
        if client.coach.casefold() not in coaches:
            yield f"{client.name}: unknown coach {client.coach!r}"
        if complete and client.programme is not None and client.programme.casefold() not in known:
            there = ", ".join(sorted(programmes)) or "none"
            yield f"{client.name}: no sheet of the programme {client.programme!r} (there are: {there})"
