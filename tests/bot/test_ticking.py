"""The ticks of the clock."""

import asyncio
from datetime import UTC, datetime, timedelta

from apscheduler.job import Job

from bot.ticking import Ticking


async def test_ticks_come_by_themselves_and_again_after_the_clock_was_set_back() -> None:
    """A clock set back by an hour leaves the next tick an hour ahead, for which the scheduler would wait."""
    ticked = asyncio.Event()

    async def tick() -> None:
        ticked.set()

    ticking = Ticking(tick)
    ticking.start()
    try:
        async with asyncio.timeout(10):
            await ticked.wait()
        assert not ticking.catch_up()
        job: Job = ticking._job
        job.modify(next_run_time=datetime.now(UTC) + timedelta(hours=1))
        ticked.clear()
        assert ticking.catch_up()
        async with asyncio.timeout(10):
            await ticked.wait()
    finally:
        ticking.stop()
