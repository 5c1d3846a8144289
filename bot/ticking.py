"""Ticks of the clock: once a second something looks whether anything is due.

APScheduler waits for a time of day, and so for an hour where the machine's clock is set back by one. Whoever
ticks therefore looks now and then, by the steady counter, whether the next tick lies too far ahead.
"""

from collections.abc import Awaitable, Callable
from datetime import UTC, datetime, timedelta

from apscheduler.schedulers.asyncio import AsyncIOScheduler

TICK_SECONDS = 1
TOO_FAR = timedelta(seconds=2 * TICK_SECONDS)


class Ticking:
    """Calls `tick` once a second on the running event loop, from `start` until `stop`."""

    def __init__(self, tick: Callable[[], Awaitable[None]]) -> None:
        self._scheduler = AsyncIOScheduler(timezone=UTC)
        self._job = self._scheduler.add_job(
            tick, "interval", seconds=TICK_SECONDS, coalesce=True, misfire_grace_time=None
        )

    def start(self) -> None:
        """Begin; a tick that is late is made up for by one."""
        self._scheduler.start()

    def stop(self) -> None:
        """End."""
        self._scheduler.shutdown(wait=False)

    def catch_up(self) -> bool:
        """Tick now where the next tick lies too far ahead, as when the clock was set back; whether it did."""
        now = datetime.now(UTC)
        if self._job.next_run_time <= now + TOO_FAR:
            return False
        self._job.modify(next_run_time=now)
        return True
