"""The clock of the running bot: the same moment for all workers, and told where it was set back.

Between two looks at its source it goes on by the machine's steady counter, so nothing that sets the source
makes it jump in the middle of a step.
"""

import time
from collections.abc import Callable
from datetime import UTC, datetime, timedelta

from persistence.store import Store

SET_BACK_BY = timedelta(seconds=5)
"""By how much a clock has to go back for it to count: what waits for a moment waits no longer than that."""

LOOK_SECONDS = 1.0
SERVER_LOOK_SECONDS = 30.0
"""How often the source is looked at: where that costs nothing, and where it is a query."""


def machine_time() -> datetime:
    """Return the moment by this machine's clock, aware and in UTC."""
    return datetime.now(UTC)


class Clock:
    """Gives the moment, aware and in UTC, by a `source` that is looked at now and then."""

    def __init__(
        self,
        source: Callable[[], datetime],
        steady: Callable[[], float] = time.monotonic,
        look_seconds: float = LOOK_SECONDS,
    ) -> None:
        """Look at `source` for the first time; `steady` counts seconds and never goes back."""
        self.look_seconds = look_seconds
        self._source = source
        self._steady = steady
        self._base = (source(), steady())

    def __call__(self) -> datetime:
        """Return the moment."""
        moment, counted = self._base
        return moment + timedelta(seconds=self._steady() - counted)

    def look(self) -> bool:
        """Go by the source again; return whether it was set back."""
        before, found = self(), self._source()
        self._base = (found, self._steady())
        return found < before - SET_BACK_BY


def clock_of(store: Store) -> Clock:
    """Return the clock of whoever works on this store: that of the database's server where there is one."""
    if store.server_time() is None:
        return Clock(machine_time)
    return Clock(lambda: store.server_time() or machine_time(), look_seconds=SERVER_LOOK_SECONDS)
