"""What is wanted besides recording sets, as a value."""

from datetime import date
from typing import NamedTuple

from domain.reading.naming import Named
from domain.reading.request import Absence, Slot, Want


class Wanted(NamedTuple):
    """What is wanted, the exercises to leave out, the day of a move or a pause, what must be asked, and
    the absence that begins on a day to come."""

    wants: tuple[Want, ...] = ()
    skips: tuple[str, ...] = ()
    on: date | None = None
    asks: tuple[Slot, ...] = ()
    used_names: tuple[Named, ...] = ()
    absence: Absence | None = None
