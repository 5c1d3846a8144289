"""The clock of the page, moved by hand: by a leap, or at a pace until it is stopped.

All that falls due on the way happens at its time, as on any stage. A long leap is made in stretches, so that
what happens is seen as it does.
"""

import asyncio
from collections.abc import Collection
from datetime import datetime, time, timedelta
from typing import Literal, assert_never
from zoneinfo import ZoneInfo

from bot.page.live import Live
from domain.calendar import DAY, at_local

Leap = Literal["next", "tomorrow", "three days"]
Pace = Literal["still", "real", "fast"]

PACES: dict[Pace, timedelta] = {"still": timedelta(0), "real": timedelta(seconds=1), "fast": DAY}
"""How much time passes in a second of ours."""
SLICE_SECONDS: dict[Pace, float] = {"still": 1.0, "real": 1.0, "fast": 0.1}

MORNING = time(6)
"""When tomorrow begins, where the client lives. The house's own choice."""
STRETCH = timedelta(hours=6)
LONGEST_WAIT = timedelta(weeks=2)
"""After so long without a word, the next event is waited for no longer. The house's own choice."""


class MovingClock:
    """Moves the time of what is on the page."""

    def __init__(self, live: Live) -> None:
        """It stands still at first."""
        self._live = live
        self._goes = asyncio.Event()
        self.pace: Pace = "still"
        self._changes = 0

    def go(self, pace: Pace) -> None:
        """Let time pass at this pace from now on; a leap that is under way ends where it is."""
        self.pace = pace
        self._changes += 1
        (self._goes.clear if pace == "still" else self._goes.set)()
        if self._live.is_ready:
            self._live.tell_time(pace=pace)

    async def leap(self, leap: Leap, chats: Collection[str], zone: ZoneInfo) -> bool:
        """Let time pass until then at once, and stand still; return whether there was anything to wait for.

        The next event is the next message into any of `chats`; tomorrow begins where `zone` is.
        """
        self.go("still")
        leaps = self._changes
        async with self._live.one_at_a_time:
            now = self._live.stage.now
            match leap:
                case "next":
                    return await self._until_heard(chats, leaps)
                case "tomorrow":
                    day = now.astimezone(zone).date() + DAY
                    await self._until(at_local(day, MORNING, zone), leaps)
                case "three days":
                    await self._until(now + 3 * DAY, leaps)
                case _:
                    assert_never(leap)
        return True

    async def run(self) -> None:
        """Let time pass, whenever it is to, until cancelled."""
        loop = asyncio.get_running_loop()
        while True:
            await self._goes.wait()
            began, pace = loop.time(), self.pace
            seconds = SLICE_SECONDS[pace]
            async with self._live.one_at_a_time:
                if self.pace == pace != "still" and self._live.is_ready:
                    await self._until(self._live.stage.now + PACES[pace] * seconds, self._changes)
            await asyncio.sleep(max(0.0, began + seconds - loop.time()))

    async def _until(self, moment: datetime, as_of: int) -> None:
        stage = self._live.stage
        while stage.now < moment and self._changes == as_of:
            await stage.wait_until(min(moment, stage.now + STRETCH))
            self._told()
            await asyncio.sleep(0)

    async def _until_heard(self, chats: Collection[str], as_of: int) -> bool:
        live = self._live
        before = sum(live.heard[chat] for chat in chats)
        latest = live.stage.now + LONGEST_WAIT
        while self._changes == as_of:
            due = live.store.next_due(live.stage.now)
            if due is None or due > latest:
                return False
            await live.stage.wait_until(due)
            self._told()
            if sum(live.heard[chat] for chat in chats) > before:
                return True
            await asyncio.sleep(0)
        return True

    def _told(self) -> None:
        self._live.tell()
        self._live.tell_time()
