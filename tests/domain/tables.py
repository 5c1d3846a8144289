"""Reads the tables of hand-worked cases: Markdown tables that a coach can read, in `tests/domain/cases/`.

A set is written `80 kg x 8`, `each 30 kg x 8`, `body x 8`, `+10 kg x 6`, `help 20 kg x 8`, `40 kg for 30 s`,
with `lowering x` for lowering-only reps; `80 kg x 8, 8, 7` are three sets of one load, `;` parts loads, and
`then` parts workouts.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta
from decimal import Decimal
from pathlib import Path

from domain.exposure import Exposure
from domain.sets import LoadKind, TrainingSet
from domain.units import Unit

CASES = Path(__file__).parent / "cases"

_SET = re.compile(
    r"(?P<kind>each |help |\+)?(?:(?P<load>[\d.]+) (?P<unit>kg|lb)|body)"
    r" (?:(?P<lowering>lowering )?x (?P<reps>[\d, ]+)|for (?P<seconds>[\d, ]+) s)"
)
_KINDS: dict[str | None, LoadKind] = {None: "total", "each ": "each", "help ": "assist", "+": "added"}


@dataclass(frozen=True)
class Case:
    """One row of a table, by the names of its columns, and where it stands."""

    place: str
    columns: dict[str, str]

    def __getitem__(self, column: str) -> str:
        return self.columns[column]

    def get(self, column: str) -> str | None:
        """Return what stands in a column that not every table has; None where nothing does."""
        return self.columns.get(column) or None


def read_cases(name: str) -> list[Case]:
    """Return the rows of all tables of a file in order."""
    return list(_rows(CASES / name))


def _rows(path: Path) -> Iterator[Case]:
    heading, columns = "", list[str]()
    for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), start=1):
        if line.startswith("#"):
            heading, columns = line.strip("# "), []
        elif not line.startswith("|"):
            columns = []
        elif not columns:
            columns = _cells(line)
        elif not set(line) <= set("|- "):
            yield Case(f"{heading}, line {number}", dict(zip(columns, _cells(line), strict=True)))


def _cells(line: str) -> list[str]:
    return [cell.strip() for cell in line.strip().strip("|").split("|")]


def sets(text: str, exercise: str = "Bench press", unit: Unit = "kg") -> tuple[TrainingSet, ...]:
    """Return the sets written in `text`; `unit` is that of body weight alone."""
    found: list[TrainingSet] = []
    for part in text.split(";"):
        match = _SET.fullmatch(part.strip())
        assert match, f"not a set: {part!r}"
        load = match["load"]
        found += [
            TrainingSet(
                exercise=exercise,
                load=Decimal(load or 0),
                unit="lb" if match["unit"] == "lb" else "kg" if match["unit"] else unit,
                load_kind=_KINDS[match["kind"]] if load else "body",
                reps=int(number) if match["reps"] else None,
                seconds=int(number) if match["seconds"] else None,
                lowering_only=bool(match["lowering"]),
            )
            for number in (match["reps"] or match["seconds"]).split(",")
        ]
    return tuple(found)


def exposures(
    text: str | None, exercise: str = "Bench press", unit: Unit = "kg", workout: str = "Push"
) -> tuple[Exposure, ...]:
    """Return the exposures written in `text`, three days apart, the last on 1 March 2026."""
    if text is None:
        return ()
    parts = text.split(" then ")
    last = date(2026, 3, 1)
    return tuple(
        Exposure(workout, exercise, last - timedelta(days=3 * before), sets(part, exercise, unit))
        for before, part in zip(range(len(parts) - 1, -1, -1), parts, strict=True)
    )
