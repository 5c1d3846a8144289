"""What is wanted besides recording sets, as a value."""

from datetime import date
from typing import NamedTuple

from domain.reading.naming import Named
from domain.reading.request import Slot, Want


class Wanted(NamedTuple):
    """What is wanted, the exercises to leave out, the day of a move or a pause, and what must be asked."""

    wants: tuple[Want, ...] = ()
    skips: tuple[str, ...] = ()
    on: date | None = None
    asks: tuple[Slot, ...] = ()
    used_names: tuple[Named, ...] = ()
