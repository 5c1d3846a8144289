"""What a coach asks over all clients: who needs her, who trains, who is on what, which remedies worked."""

from collections import Counter
from datetime import timedelta
from typing import get_args

from domain.coach.draft import Draft
from domain.coach.programmes import programme_named, programme_names
from domain.parts import About, Digest
from domain.programme import Weekday
from domain.state import StoredProgramme

OVERVIEWS: dict[str, About] = {
    "who needs me": "all",
    "who trains": "trains",
    "who stalled": "stalled",
    "who hurts": "hurts",
    "who missed": "missed",
    "who asked": "asked",
    "who is due a review": "review",
    "who is new": "new",
    "who is away": "away",
}


def overview(draft: Draft, about: About = "all", day: str = "") -> None:
    """Say who needs the coach, then who trains when; or who is concerned by one matter."""
    lines = tuple(line.model_copy(update={"eager": (), "tried": ()}) for _, line in draft.state.clients)
    on = draft.today
    if about == "trains" and day:
        word = day.rsplit(maxsplit=1)[-1].casefold()
        days = get_args(Weekday)
        if word == "tomorrow":
            on += timedelta(days=1)
        elif word in days:
            on += timedelta(days=(days.index(word) - on.weekday()) % 7)
    draft.say(Digest(today=draft.today, clients=lines, about=about, on=on if about == "trains" else None))


def who_is_on(draft: Draft, named: str) -> None:
    """Say which clients are on a programme."""
    chosen = programme_named(draft, named)
    if chosen is None:
        draft.notice("programmes", names=programme_names(draft))
        return
    names = [draft.name_of(each) for each in clients_on(draft, chosen)]
    draft.notice("who is on", programme=chosen.programme.name, names=names)


def clients_on(draft: Draft, chosen: StoredProgramme) -> tuple[int, ...]:
    """Return the clients who are on a programme, in whichever version."""
    return tuple(number for number, line in draft.state.clients if line.programme == chosen.programme.name)


def which_worked(draft: Draft) -> None:
    """Say of each remedy how often it was taken over all clients, and what came of it."""
    counted: dict[str, Counter[str]] = {}
    for _, line in draft.state.clients:
        for remedy, result in line.tried:
            counted.setdefault(remedy, Counter())[result] += 1
    rows = [
        {
            "remedy": remedy,
            "taken": results.total(),
            "worked": results["worked"],
            "did_not": results["did not"],
            "early": results.total() - results["worked"] - results["did not"],
        }
        for remedy, results in sorted(counted.items(), key=lambda each: -each[1].total())
    ]
    draft.notice("remedies", rows=rows)
