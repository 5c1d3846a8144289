"""A week with forty clients, generated and seeded, in which the coach settles all by buttons and replies.

`python -m tests.play.forty` prints what her phone showed, and how much of it there was each day.
"""

import asyncio
import random
from collections import Counter, defaultdict
from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, timedelta
from typing import Any

from bot.channel import Rendered
from bot.commands.database import passing
from bot.markup import plain
from bot.roster import read_roster
from bot.stage import Stage
from domain.incoming import Pressed
from domain.parts import AlertPart, Notice, Question
from persistence.outbox import Outgoing
from persistence.store import Store
from tests.play.golden import SCRIPTS

BEGIN = datetime(2026, 3, 2, tzinfo=UTC)
"""A Monday, in Lisbon, where it is winter: the first days are before the week that is counted."""
DAYS = 8
WEEK = 7
"""The last so many days are the week."""
VISITS = (8, 13, 19)
"""The hours at which the coach takes out the phone."""
SHEET = """\
Quay Base
Train every 2 days in turn: All
Tell me after 3 workouts without a beat

All
1. Goblet squat, 8-12 reps
   if the knee is a problem: Back extension, 10-15 reps
2. Seated cable row, 8-12 reps
   no cable: Dumbbell row, 8-12 reps
3. Chest press, 8-12 reps
"""
NAMES = """
Abena Alma Anselm Bodil Calum Dagny Delia Eero Elif Emeka Esme Fenna Goran Hadiza Idris Ines Jorun Kaya Kofi
Lior Lotte Maeve Malin Mirza Nadia Nils Odile Oskar Pilar Quirin Ravi Rosa Selma Sunniva Tariq Thora Ulla
Vilde Yara Zoltan
"""
PROFILES = ("gains",) * 22 + ("stalls",) * 6 + ("hurts",) * 3 + ("asks",) * 5 + ("misses",) * 3 + ("new",)
QUESTIONS = (
    "can I use straps on the rows?",
    "should I train with a cold?",
    "is it ok to train before breakfast?",
    "can you check my form on the squat?",
    "can I do the presses first?",
)
PAIN = ("my left knee hurts on the squats", "my knee hurts", "squats hurt my right knee")
READ_WORDS_A_MINUTE = 200
"""How fast the coach reads; 238 is usual for reading silently (Brysbaert 2019, J Mem Lang 109:104047; from
memory)."""
SECONDS_A_TAP, SECONDS_TYPED = 3, 20
"""What a tap and an answer typed on a phone take. Estimates of the house's own."""


@dataclass
class Day:
    """What one day asked of the coach."""

    messages: int = 0
    taps: int = 0
    typed: int = 0
    words: int = 0
    kinds: Counter[str] = field(default_factory=Counter)

    @property
    def minutes(self) -> float:
        """How long it took, as estimated."""
        seconds = self.taps * SECONDS_A_TAP + self.typed * SECONDS_TYPED
        return self.words / READ_WORDS_A_MINUTE + seconds / 60


@dataclass(frozen=True)
class Shown:
    """A message on the coach's phone."""

    at: datetime
    outgoing: Outgoing
    rendered: Rendered


class Week:
    """The coach Mara and her clients; what her phone shows is kept, with what she did about it."""

    def __init__(self, store: Store, seed: int) -> None:
        self.chance = random.Random(seed)
        self.days: defaultdict[date, Day] = defaultdict(Day)
        self.phone: list[Shown] = []
        self.unread: list[Shown] = []
        self.code = ""
        self.stage = Stage(store, BEGIN, self._heard)
        self.profiles = dict(zip(NAMES.split(), self.chance.sample(PROFILES, len(PROFILES)), strict=True))
        store.load_roster(read_roster(self._roster(), SCRIPTS), BEGIN)

    def _roster(self) -> dict[str, Any]:
        clients = [
            {
                "name": name,
                "coach": "Mara",
                "programme": "Quay Base",
                "unit": "kg",
                "zone": "Europe/Lisbon",
                "starts": (BEGIN.date() + timedelta(days=place % 2)).isoformat(),
                "remind_at": "07:00",
            }
            for place, (name, profile) in enumerate(self.profiles.items())
            if profile != "new"
        ]
        coach = {"name": "Mara", "zone": "Europe/Lisbon", "unit": "kg"}
        return {"coaches": [coach], "sheets": [SHEET], "clients": clients}

    def _heard(self, at: datetime, outgoing: Outgoing, rendered: Rendered) -> None:
        if not outgoing.is_coach:
            return
        shown = Shown(at, outgoing, rendered)
        self.phone.append(shown)
        self.unread.append(shown)
        day = self.days[at.date()]
        day.messages += outgoing.say.edits is None
        day.words += len(plain(rendered.text_html).split())
        for part in outgoing.say.parts:
            day.kinds[kind_of(part)] += 1
            if isinstance(part, Notice) and part.topic == "invited":
                self.code = str(part.facts["code"])

    async def live(self) -> None:
        """Let all days pass; the coach looks at the phone at her hours, and once more at the end."""
        for number in range(DAYS):
            day = BEGIN + timedelta(days=number)
            deeds = sorted(
                [*self._deeds(number, day), *((day + timedelta(hours=each), "", "") for each in VISITS)]
            )
            for at, who, text in deeds:
                await self.stage.wait_until(at)
                if who:
                    await self._client(who, text)
                else:
                    await self._visit()
        await self.stage.wait_until(BEGIN + timedelta(days=DAYS, hours=VISITS[0]))
        await self._visit()

    def _deeds(self, number: int, day: datetime) -> Iterator[tuple[datetime, str, str]]:
        """Give what clients say on that day, at which moment."""
        for place, (name, profile) in enumerate(self.profiles.items()):
            done, is_due = divmod(number - place % 2, 2)
            at = day + timedelta(hours=15 + self.chance.randrange(5), minutes=self.chance.randrange(60))
            if profile == "new":
                yield from self._joins(name, number, day)
            elif is_due == 0 and not (profile == "misses" and number in {4, 5, 6, 7}) and done >= 0:
                yield (
                    at,
                    name,
                    self._told(profile, place, done, hurts=profile == "hurts" and number > 5 + place % 3),
                )
            if profile == "asks" and number == 3 + place % 5:
                yield at + timedelta(minutes=20), name, QUESTIONS[place % len(QUESTIONS)]
            if profile == "hurts" and number == 5 + place % 3:
                yield at + timedelta(minutes=20), name, PAIN[place % len(PAIN)]

    def _told(self, profile: str, place: int, done: int, *, hurts: bool) -> str:
        load, more = 20 + 2 * (place % 6), done
        reps = 8 if profile == "stalls" else 8 + more % 4
        heavier = 0 if profile == "stalls" else 2 * (more // 4)
        other = 8 + done % 4, 2 * (done // 4)
        squats = "" if hurts else f"goblet squat {load + heavier}x{reps}, "
        return f"{squats}row {40 + other[1]}x{other[0]}, chest press {30 + other[1]}x{other[0]}"

    def _joins(self, name: str, number: int, day: datetime) -> Iterator[tuple[datetime, str, str]]:
        if number != 3:
            return
        yield day + timedelta(hours=9), "Mara", f"invite {name} to Quay Base"
        said = (
            "/start",
            "yes",
            "34",
            "I take pills for my blood pressure",
            "kg",
            "Lisbon",
            "7:00",
            "a full gym",
        )
        for minute, text in enumerate((*said, "tomorrow", "my doctor says I can train")):
            yield day + timedelta(hours=9, minutes=5 + minute), name, text

    async def _client(self, who: str, text: str) -> None:
        await self.stage.say(who, f"/start {self.code}" if text == "/start" else text)

    async def _visit(self) -> None:
        """Go through what came in since the last visit, and settle what can be settled."""
        unread, self.unread = self.unread, []
        for shown in unread:
            await self._settle(shown)
        # What her own taps brought are short words that need nothing.
        self.unread = [each for each in self.unread if each.rendered.buttons and not is_settled(each)]

    async def _settle(self, shown: Shown) -> None:
        day = self.days[self.stage.now.date()]
        questions = [
            part
            for part in shown.outgoing.say.parts
            if isinstance(part, AlertPart) and part.reason == "question"
        ]
        if questions:
            words = plain(shown.rendered.text_html).splitlines()[0]
            day.typed += 1
            await self.stage.say("Mara", "Yes, that is fine.", self.stage.message("Mara", words).key)
            return
        for data in self._presses(shown):
            day.taps += 1
            await self.stage.bring("Mara", Pressed(button=data))

    def _presses(self, shown: Shown) -> Iterator[str]:
        """Give the data of the button that settles each matter of a message."""
        labels = dict(shown.rendered.buttons)
        matters = [part for part in shown.outgoing.say.parts if isinstance(part, AlertPart)]
        wanted = {
            "stall": ("Load down, build back", "One rest day more"),
            "pain": ("Keep it aside", "Seen"),
            "review": ("Seen",),
        }
        for part in matters:
            of = f"{part.exercise}: " if len(matters) > 1 and part.exercise else ""
            for label in wanted.get(part.reason, ("Seen",)):
                said = f"{of}{label.lower()}" if of else label
                if said in labels:
                    yield labels[said]
                    break
        yield from (data for label, data in labels.items() if label == "Let training begin")


def kind_of(part: Any) -> str:
    """Return what a part of a message to the coach is, in a word or two."""
    if isinstance(part, AlertPart):
        return f"alert: {part.reason}"
    if isinstance(part, Question):
        return f"question: {part.slot}"
    return f"notice: {part.topic}" if isinstance(part, Notice) else str(part.kind)


def is_settled(shown: Shown) -> bool:
    """Return whether a message only says back what was done."""
    return not any(isinstance(part, AlertPart) for part in shown.outgoing.say.parts)


def of_week(week: Week) -> dict[date, Day]:
    """Return the days that are counted."""
    first = (BEGIN + timedelta(days=DAYS - WEEK)).date()
    return {on: week.days[on] for on in (first + timedelta(days=each) for each in range(WEEK))}


def counts_of(week: Week) -> str:
    """Return a line for each day of the week: what the coach's phone showed, and what she did."""
    return "\n".join(
        f"{on:%a}: {day.messages} messages, {day.words} words, {day.taps} taps, {day.typed} typed, "
        f"{day.minutes:.1f} minutes: {dict(day.kinds)}"
        for on, day in of_week(week).items()
    )


def main() -> None:
    """Print the phone and the counts."""
    with passing() as store:
        week = Week(store, seed=7)
        asyncio.run(week.live())
    for shown in week.phone:
        print(f"--- {shown.at:%a %d %H:%M}")
        print(plain(shown.rendered.text_html))
        if shown.rendered.buttons:
            print("  ".join(f"[{label}]" for label, _ in shown.rendered.buttons))
    print(counts_of(week))


if __name__ == "__main__":
    main()
