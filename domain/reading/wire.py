"""JSON lines in and out: a request from its line, a reading to plain JSON, as the contract has them.

A broken line is told in one sentence; it never stops the rest.
"""

import json
from collections.abc import Callable, Mapping, Sequence
from datetime import date, datetime
from decimal import Decimal, InvalidOperation
from functools import lru_cache
from types import MappingProxyType
from typing import Any, Protocol, TypeVar

import orjson

from domain.reading.request import OpenSet, Planned, Reading, Request
from domain.sets import TrainingSet


class BrokenLineError(ValueError):
    """A line that is no request. The message tells what is wrong in a few words."""


_KINDS = frozenset({"total", "each", "added", "assist", "body"})


def request_from_json(line: str) -> Request:
    """Return the request that a line of JSON holds. Raises BrokenLineError where it holds none."""
    try:
        return _request(orjson.loads(line), _kept)
    except orjson.JSONDecodeError:
        pass
    try:
        # Half of a pair of surrogates is JSON, but no text that the faster reader takes.
        return request_from(json.loads(line))
    except BrokenLineError:
        raise
    except (ValueError, RecursionError) as error:
        raise BrokenLineError("it is not JSON") from error


def reading_to_line(reading: Reading) -> str:
    """Return a reading as one line of JSON, without the line's end."""
    return line_of(reading_to_json(reading))


def line_of(data: dict[str, Any]) -> str:
    """Return plain JSON as one line, without the line's end."""
    try:
        return orjson.dumps(data).decode()
    except TypeError:
        return json.dumps(data, ensure_ascii=True)


def request_from(data: Any) -> Request:
    """Return the request that parsed JSON holds. Raises BrokenLineError where it holds none."""
    return _request(data, _made)


def _request(data: Any, part: "_Part") -> Request:
    if not isinstance(data, dict):
        raise BrokenLineError("it is not a JSON object")
    text = data.get("text")
    if not isinstance(text, str):
        raise BrokenLineError("`text` must be text")
    unit = data.get("unit")
    if unit != "kg" and unit != "lb":
        raise BrokenLineError('`unit` must be "kg" or "lb"')
    try:
        sent = datetime.fromisoformat(data["sent"])
    except (KeyError, TypeError, ValueError) as error:
        raise BrokenLineError("`sent` must be a date and time in ISO 8601") from error
    if sent.tzinfo is not None:
        sent = sent.replace(tzinfo=None)
    plan = part(_plan, _list(data, "plan"))
    return Request(
        text=text,
        unit=unit,
        sent=sent,
        plan=plan,
        done=part(_sets, _as_planned(_list(data, "done"), plan)),
        last=part(_sets_by_name, _object(data, "last")),
        target=part(_sets_by_name, _object(data, "target")),
        own_names=part(_own_names, _object(data, "own_names")),
    )


def _as_planned(done: list[Any], plan: Sequence[Planned]) -> list[Any]:
    """Return sets, those of which it is not known whether they were lowering only as the plan has them."""
    lowering = {planned.name for planned in plan if planned.lowering_only}
    if not lowering:
        return done
    return [
        {"lowering_only": True, **one} if isinstance(one, dict) and one.get("exercise") in lowering else one
        for one in done
    ]


Given = TypeVar("Given", list[Any], dict[str, Any])
Made = TypeVar("Made")


class _Part(Protocol):
    """What makes a part of a request of its JSON."""

    def __call__(self, make: Callable[[Given], Made], given: Given, /) -> Made:
        """Return what `make` makes of it."""


def _made(make: Callable[[Given], Made], given: Given) -> Made:
    return make(given)


def _kept(make: Callable[[Given], Made], given: Given) -> Made:
    """Return what is made of a part of a request, once for all requests that have the same, as those of one
    client mostly do. What is given was read by orjson: in writing it is like nothing else."""
    key = (make, orjson.dumps(given))
    made: Made | None = _KEPT.get(key)
    if made is None:
        if len(_KEPT) >= _MOST_KEPT:
            _KEPT.clear()
        made = _KEPT[key] = make(given)
    return made


_KEPT: dict[object, Any] = {}
"""What was made of parts of requests, by what it was made by and what they were in writing."""
_MOST_KEPT = 4096


def _plan(data: list[Any]) -> tuple[Planned, ...]:
    return tuple([_planned(one) for one in data])


def _sets(data: list[Any]) -> tuple[TrainingSet, ...]:
    return tuple([_set(one) for one in data])


def _sets_by_name(data: dict[str, Any]) -> Mapping[str, TrainingSet]:
    return MappingProxyType({name: _set(one, name) for name, one in data.items()})


def _own_names(data: dict[str, Any]) -> Mapping[str, str]:
    return MappingProxyType({word: _text(name, "own_names") for word, name in data.items()})


def _list(data: Mapping[str, Any], field: str) -> list[Any]:
    value = data.get(field) or []
    if not isinstance(value, list):
        raise BrokenLineError(f"`{field}` must be a list")
    return value


def _object(data: Mapping[str, Any], field: str) -> dict[str, Any]:
    value = data.get(field) or {}
    if not isinstance(value, dict):
        raise BrokenLineError(f"`{field}` must be an object")
    return value


def _text(value: Any, field: str) -> str:
    if not isinstance(value, str):
        raise BrokenLineError(f"`{field}` must hold text")
    return value


def _planned(data: Any) -> Planned:
    if not isinstance(data, dict) or not isinstance(data.get("name"), str):
        raise BrokenLineError("each exercise of `plan` needs a `name`")
    of = "seconds" if data.get("seconds") is not None else "reps"
    low, high = _range(str(data.get(of) or "1-50"))
    kind = data.get("load")
    sets = data.get("sets", 1)
    if kind is not None and kind not in _KINDS:
        raise BrokenLineError("`load` of an exercise must be each, added or assist")
    if not isinstance(sets, int) or sets < 0:
        raise BrokenLineError("`sets` of an exercise must be a whole number")
    return _line(data["name"], low, high, of, sets, kind, bool(data.get("lowering_only")))


@lru_cache(maxsize=1024)
def _range(text: str) -> tuple[int, int]:
    low, _, high = text.replace("–", "-").partition("-")
    try:
        return int(low), int(high or low)
    except ValueError as error:
        raise BrokenLineError(f"a range must look like 8-12, not {text[:20]!r}") from error


@lru_cache(maxsize=4096)
def _decimal(value: str) -> Decimal:
    try:
        number = Decimal(value)
    except InvalidOperation as error:
        raise BrokenLineError("a load must be a number") from error
    if not number.is_finite():
        raise BrokenLineError("a load must be a number")
    return number


def _whole(value: Any) -> int | None:
    if value is None:
        return None
    if isinstance(value, bool) or not isinstance(value, int | float) or value != int(value):
        raise BrokenLineError("reps and seconds must be whole numbers")
    return int(value)


def _set(data: Any, exercise: str | None = None) -> TrainingSet:
    if not isinstance(data, dict):
        raise BrokenLineError("a set must be an object")
    name = data.get("exercise", exercise)
    unit = data.get("unit")
    kind = data.get("load_kind") or "total"
    if not isinstance(name, str) or unit not in {"kg", "lb"} or kind not in _KINDS:
        raise BrokenLineError("a set needs `exercise`, `unit` and `load_kind`")
    load = data.get("load")
    if isinstance(load, bool) or not isinstance(load, int | float):
        raise BrokenLineError("a load must be a number")
    rir, on = data.get("rir"), data.get("on")
    try:
        day = date.fromisoformat(on) if on else None
    except (TypeError, ValueError) as error:
        raise BrokenLineError("`on` must be a date in ISO 8601") from error
    return _one(
        name,
        _decimal(str(load)),
        unit,
        kind,
        _whole(data.get("reps")),
        _whole(data.get("seconds")),
        bool(data.get("lowering_only")),
        data.get("to_failure"),
        _decimal(str(rir)) if rir is not None else None,
        day,
    )


# A stream of requests names the same few sets over and over; both values are frozen and cheap to keep.
_one = lru_cache(maxsize=8192)(TrainingSet)
_line = lru_cache(maxsize=2048)(Planned)


def number(value: Decimal | None) -> int | float | None:
    """Return a decimal as a JSON number: whole where it is whole."""
    if value is None:
        return None
    whole = int(value)
    return whole if whole == value else float(value)


def set_to_json(one: TrainingSet | OpenSet) -> dict[str, Any]:
    """Return a set as plain JSON."""
    return {
        "exercise": one.exercise,
        "load": number(one.load),
        "unit": one.unit,
        "load_kind": one.load_kind,
        "reps": one.reps,
        "seconds": one.seconds,
        "lowering_only": one.lowering_only,
        "to_failure": one.to_failure,
        "rir": number(one.rir),
        "on": one.on.isoformat() if one.on else None,
    }


def reading_to_json(reading: Reading) -> dict[str, Any]:
    """Return a reading as plain JSON, as the contract has it."""
    return {
        "sets": [set_to_json(one) for one in reading.sets],
        "pain": [{"where": p.where, "side": p.side, "score": number(p.score)} for p in reading.pain],
        "urgent": reading.urgent,
        "wants": list(reading.wants),
        "skips": list(reading.skips),
        "on": reading.on.isoformat() if reading.on else None,
        "asks": list(reading.asks),
        "open": [set_to_json(one) for one in reading.open],
        **({"cut": True} if reading.cut else {}),
    }
