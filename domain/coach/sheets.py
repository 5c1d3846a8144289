"""Sheets that a coach sends: read, said back, and stored only once the coach agrees."""

from datetime import timedelta

from domain.actions import Words
from domain.coach.draft import Draft
from domain.coach.yes_no import is_no, is_yes
from domain.memory import Waiting
from domain.outcome import SheetStored
from domain.sheet import read_sheet
from domain.values import facts_of

AGREE = "Store it"
REFUSE = "Leave it"
WAITS_FOR = timedelta(days=1)
"""For how long a typed «ok» is surely about the sheet last sent. The house's own choice."""


def looks_like_sheet(text: str) -> bool:
    """Return whether a typed text is a sheet: several lines, one of which says when to train."""
    lines = [line for line in text.splitlines() if line.strip()]
    return len(lines) >= 3 and any("train" in line.casefold() for line in lines[:8])


def take_sheet(draft: Draft, text: str) -> None:
    """Read a sheet; say its faults, or what was understood, and ask whether to store it."""
    result = read_sheet(text)
    programme = result.programme
    if programme is None:
        draft.notice("sheet faults", faults=[facts_of(fault) for fault in result.faults])
        return
    same = [stored for stored in draft.state.programmes if stored.programme.name == programme.name]
    facts = {
        "programme": facts_of(programme),
        "notes": [facts_of(note) for note in result.notes],
        "version": same[0].version + 1 if same else 1,
    }
    draft.ask("sheet", {"sheet": text}, facts, (AGREE, REFUSE))


def on_version_before(draft: Draft, name: str) -> list[int]:
    """Return the clients who are on whichever version of a programme, as a new one is stored."""
    return [
        number
        for number, _ in draft.names
        if (standing := draft.state.standings.get(number)) is not None
        and standing.programme is not None
        and standing.programme.programme.name == name
    ]


def answer_sheet(draft: Draft, waiting: Waiting, text: str) -> bool:
    """Take the answer to whether a sheet is right; return False where it is none."""
    if waiting.slot != "sheet":
        return False
    if is_yes(text, AGREE, "store", "yes store it", "save it"):
        sheet = str(waiting.about["sheet"])
        if draft.at - waiting.asked_at > WAITS_FOR and text.strip() != AGREE:
            # An "ok" of days later may be about something else: what it would store is said once more.
            take_sheet(draft, sheet)
            return True
        programme = read_sheet(sheet).programme
        draft.remember(waiting=None)
        if programme is not None:
            draft.change(SheetStored(programme, sheet))
            older = on_version_before(draft, programme.name)
            draft.notice(
                "sheet stored", programme=programme.name, older=[draft.name_of(each) for each in older]
            )
            if older:
                draft.offer(Words(text=f"Move all on an older version to {programme.name}", once=True))
        return True
    if is_no(text, REFUSE):
        draft.remember(waiting=None)
        draft.notice("sheet left")
        return True
    return False
