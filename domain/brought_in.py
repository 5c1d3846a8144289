"""What is remembered of an old journal that was taken in, to tell it apart and to take it out again."""

from datetime import date

from domain.frozen import Frozen


class BroughtIn(Frozen):
    """An old journal taken in by the coach's message `change`, from the file `name`, on the day `on`.

    `entries` and `workouts` are the numbers of its records, as (first, last); `taken` of `sets` are in.
    `bars`: something in it has barred the client from training, which was not so before.
    """

    change: int
    name: str
    on: date
    sets: int
    taken: int = 0
    entries: tuple[tuple[int, int], ...] = ()
    workouts: tuple[tuple[int, int], ...] = ()
    holds: tuple[tuple[int, int], ...] = ()
    matters: tuple[tuple[int, int], ...] = ()
    bars: bool = False
