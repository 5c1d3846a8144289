"""The bot as a process whose clock is off by as many seconds as the file `skew` says, looked at each time.

It waits for a lock of the database for a shorter time than it otherwise would.
"""

from datetime import datetime, timedelta
from pathlib import Path

import bot.clock
import persistence.engine
from bot.__main__ import main

SKEW = Path("skew")
BUSY_SECONDS = 1


def skewed() -> datetime:
    """Return the moment by a clock that somebody sets."""
    return true_time() + timedelta(seconds=float(SKEW.read_text("utf-8") or 0))


true_time = bot.clock.machine_time

if __name__ == "__main__":
    bot.clock.machine_time = skewed
    persistence.engine.BUSY_SECONDS = BUSY_SECONDS
    main()
