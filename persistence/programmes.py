"""The programmes of coaches: found by number, and stored version by version."""

from dataclasses import dataclass, field
from datetime import datetime

from sqlalchemy import Connection, bindparam, func, insert, select

from domain.programme import Programme
from domain.state import StoredProgramme
from persistence.statements import Prepared
from persistence.tables import ProgrammeRow

_NEWEST = Prepared(
    select(func.max(ProgrammeRow.number))
    .where(ProgrammeRow.coach == bindparam("coach"))
    .group_by(ProgrammeRow.name)
)


@dataclass(frozen=True, slots=True)
class Programmes:
    """Finds programmes by number. A stored version never changes, so what was read once is kept."""

    kept: dict[int, StoredProgramme] = field(default_factory=dict)

    def find(self, connection: Connection, numbers: set[int]) -> dict[int, StoredProgramme]:
        """Return the programmes of these numbers."""
        unknown = numbers - self.kept.keys()
        if unknown:
            rows = connection.execute(
                select(ProgrammeRow.number, ProgrammeRow.version, ProgrammeRow.programme).where(
                    ProgrammeRow.number.in_(unknown)
                )
            )
            self.kept.update({row.number: StoredProgramme(*row) for row in rows})
        return {number: self.kept[number] for number in numbers}

    def newest(self, connection: Connection, coach: int) -> tuple[StoredProgramme, ...]:
        """Return the newest version of each of the coach's programmes, in the order of their numbers."""
        versions = _NEWEST(connection, {"coach": coach}).scalars()
        numbers = sorted(number for number in versions)
        found = self.find(connection, set(numbers))
        return tuple(found[number] for number in numbers)


def store_sheet(connection: Connection, coach: int, programme: Programme, sheet: str, now: datetime) -> None:
    """Store the next version of a coach's programme of this name."""
    version = connection.execute(
        select(func.max(ProgrammeRow.version)).where(
            ProgrammeRow.coach == coach, ProgrammeRow.name == programme.name
        )
    ).scalar()
    connection.execute(
        insert(ProgrammeRow).values(
            coach=coach,
            name=programme.name,
            version=(version or 0) + 1,
            sheet=sheet,
            programme=programme,
            created_at=now,
        )
    )
