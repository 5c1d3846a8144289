"""What is wanted besides recording sets, as a value."""

from dataclasses import dataclass
from datetime import date

from domain.reading.naming import Named
from domain.reading.request import Slot, Want


@dataclass(frozen=True, slots=True)
class Wanted:
    """What is wanted, the exercises to leave out, the day of a move or a pause, and what must be asked."""

    wants: tuple[Want, ...] = ()
    skips: tuple[str, ...] = ()
    on: date | None = None
    asks: tuple[Slot, ...] = ()
    used_names: tuple[Named, ...] = ()
