"""The corpus of messages: rows of a request and what it should be read as, and how readings are compared
with it.

Each file holds one kind of message. What a row should be read as was worked out by hand from the contract; in
`corrections_three` it is what was read, looked through and kept where it was right, so that those rows guard
against loss and measure nothing.
"""

import json
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from domain.reading import read
from domain.reading.wire import reading_to_json, request_from

FOLDER = Path(__file__).parent
MEASURED = (
    "examples",
    "other_writers",
    "other_writers_two",
    "other_writers_three",
    "other_writers_four",
    "other_writers_five",
    "other_writers_six",
    "other_writers_seven",
    "other_writers_eight",
    "other_writers_nine",
    "other_writers_ten",
    "other_writers_eleven",
    "other_writers_twelve",
    "other_writers_thirteen",
    "other_writers_fourteen",
    "other_writers_fifteen",
    "other_writers_sixteen",
    "other_writers_seventeen",
    "other_writers_eighteen",
    "other_writers_nineteen",
    "other_writers_twenty",
    "other_writers_twenty_one",
    "other_writers_twenty_two",
)
"""Folders of rows that somebody else wrote, without knowing the rules of the reading: those measure it.

Of the rows in `safety` only what hurts and what is urgent was worked out; their sets are not judged.
"""


@dataclass(frozen=True)
class Row:
    """One message with what it should be read as."""

    id: str
    request: dict[str, Any]
    gold: dict[str, Any]


def rows_of(path: Path) -> tuple[Row, ...]:
    """Return the rows of a file."""
    with path.open(encoding="utf-8") as lines:
        return tuple(Row(**json.loads(line)) for line in lines if line.strip())


def own_rows() -> Iterator[Row]:
    """Return every row of our own."""
    for path in sorted(FOLDER.glob("*.jsonl")):
        yield from rows_of(path)


def rows_in(folder: str) -> tuple[Row, ...]:
    """Return the rows of all files of a folder in this one."""
    return tuple(row for path in sorted((FOLDER / folder).glob("*.jsonl")) for row in rows_of(path))


def got(row: Row) -> dict[str, Any]:
    """Return what a row's message is read as, as plain JSON."""
    return reading_to_json(read(request_from(row.request)))


def compared(reading: dict[str, Any]) -> dict[str, Any]:
    """Return what counts of a reading, in a form that can be compared: places, wants and asks in any
    order."""
    return {
        "sets": [
            {
                key: (float(value) if key in {"load", "rir"} and value is not None else value)
                for key, value in one.items()
            }
            for one in reading["sets"]
        ],
        "pain": sorted(json.dumps(one, sort_keys=True) for one in reading["pain"]),
        "urgent": reading["urgent"],
        "wants": sorted(reading["wants"]),
        "asks": sorted(reading["asks"]),
        "on": reading.get("on"),
        "skips": sorted(reading.get("skips") or ()),
    }


def wrong_sets(row: Row, reading: dict[str, Any]) -> list[str]:
    """Return the sets that would be recorded and should not be."""
    said = Counter(json.dumps(one, sort_keys=True) for one in compared(reading)["sets"])
    meant = Counter(json.dumps(one, sort_keys=True) for one in compared(row.gold)["sets"])
    return list((said - meant).elements())


def difference(row: Row, reading: dict[str, Any]) -> str:
    """Return the message, and what differs, for a person; "" where nothing does."""
    should, is_so = compared(row.gold), compared(reading)
    if should == is_so:
        return ""
    lines = [f"{row.id}: {row.request['text']!r} ({row.request['unit']})"]
    for key in should:
        if should[key] != is_so[key]:
            lines += [f"  {key}", f"    should be {should[key]}", f"    was       {is_so[key]}"]
    return "\n".join(lines)
