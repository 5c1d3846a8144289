"""A year of regular training in virtual time, through the real desk and store: `python -m tests.bench.year`.

An invented client trains on every training day and does what the bot asked for; it is printed how long the
year took, and what it came to.
"""

import argparse
import asyncio
import time
from datetime import UTC, datetime, timedelta

from bot.channel import Rendered
from bot.commands.database import passing
from bot.roster import read_roster
from bot.stage import Stage
from domain.parts import Nudge, Plan, Reminder
from domain.plan_lines import PlanLine
from domain.programme import Range
from persistence.outbox import Outgoing
from tests.play.golden import SCRIPTS

STARTS = datetime(2026, 3, 2, tzinfo=UTC)
NAME = "Noor"
TRAINS_AFTER = timedelta(hours=10)
FIRST_LOAD = {"seconds": "20 kg", "reps": "40"}


class Year:
    """One client's year: what was said, and what is done on the evenings of training days."""

    def __init__(self) -> None:
        """Begin with nothing said."""
        self.messages = 0
        self.unasked = 0
        self.workouts = 0
        self.plan: Plan | None = None

    def watch(self, _at: datetime, outgoing: Outgoing, _rendered: Rendered) -> None:
        """Note a message, and the plan to train by where it is a reminder."""
        self.messages += 1
        parts = outgoing.say.parts
        self.unasked += any(isinstance(part, Reminder | Nudge) for part in parts)
        if any(isinstance(part, Reminder) for part in parts):
            self.plan = next((part for part in parts if isinstance(part, Plan)), None)

    async def live(self, stage: Stage, days: int) -> None:
        """Let so many days pass, and report each workout that is asked for on its evening."""
        for day in range(days):
            evening = STARTS + day * timedelta(days=1) + TRAINS_AFTER
            await stage.wait_until(evening)
            plan, self.plan = self.plan, None
            if plan is not None:
                self.workouts += 1
                await stage.say(NAME, "\n".join(map(done, plan.lines)))
        await stage.settle()


def done(line: PlanLine) -> str:
    """Say a line as done: just what was to be aimed for, or a first load at the range's low end."""
    aim, span = line.target, line.range
    if aim is None:
        return f"{line.exercise} {FIRST_LOAD[span.of]} {amount(span, span.low)}"
    load = {"each": "each ", "added": "+", "assist": "help "}.get(aim.load_kind, "")
    amounts = amount(span, int(aim.amount))
    return (
        f"{line.exercise} {amounts}"
        if aim.load_kind == "body"
        else (f"{line.exercise} {load}{aim.load.normalize():f} {aim.unit} {amounts}")
    )


def amount(span: Range, many: int) -> str:
    """Say reps or seconds."""
    return f"{many} s" if span.of == "seconds" else f"x {many}"


def main() -> None:
    """Play the year and print its figures."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--days", type=int, default=365)
    days = parser.parse_args().days
    year = Year()
    with passing() as store:
        store.load_roster(read_roster(SCRIPTS / "noor.json"), STARTS)
        stage = Stage(store, STARTS, year.watch)
        began, used = time.perf_counter(), time.process_time()
        asyncio.run(year.live(stage, days))
        seconds, cpu = time.perf_counter() - began, time.process_time() - used
    said = f"{year.messages} messages, {year.unasked} of them reminders and nudges"
    print(f"{days} days in {seconds:.1f} s ({cpu:.1f} s of the processor): {year.workouts} workouts, {said}")


if __name__ == "__main__":
    main()
