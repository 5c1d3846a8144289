"""What the README shows is what there is."""

import asyncio
import re
from dataclasses import replace
from datetime import UTC, datetime

import pytest

from bot.command_line import app
from bot.commands.database import passing
from bot.roster import read_roster
from bot.settings import PREFIX, Settings
from bot.stage import Stage
from bot.wording.client_notices import HELP
from domain.client import hear
from domain.incoming import Heard, Text
from domain.outcome import Outcome
from domain.parts import Notice
from domain.sheet import read_sheet
from domain.state import ClientState, State
from persistence.inbox import Received
from tests.demo.conftest import ROOT, Run

NOW = datetime(2026, 3, 8, 17, tzinfo=UTC)

README = (ROOT / "README.md").read_text(encoding="utf-8")
BLOCKS = re.findall(r"^```text\n(.*?)^```$", README, re.MULTILINE | re.DOTALL)


def stripped(text: str) -> str:
    return "\n".join(line.rstrip() for line in text.splitlines())


def rows(heading: str) -> list[list[str]]:
    """Return the rows of the first table under a heading, without its head."""
    section = README.partition(f"## {heading}\n")[2].partition("\n## ")[0]
    lines = [line for line in section.splitlines() if line.startswith("|")]
    return [[cell.strip() for cell in line.strip("|").split("|")] for line in lines[2:]]


def quoted(cell: str) -> list[str]:
    return re.findall(r"`([^`]+)`", cell)


def test_the_chat_is_one_that_the_demo_prints(told: Run) -> None:
    assert stripped(BLOCKS[0]) in stripped(told.printed)
    assert len(BLOCKS[0].splitlines()) > 5


def test_the_sheet_is_the_demo_s_and_can_be_read() -> None:
    assert BLOCKS[1] == (ROOT / "demo" / "sheets" / "orchard-base.txt").read_text(encoding="utf-8")
    assert read_sheet(BLOCKS[1]).programme is not None


def test_every_setting_is_named_and_no_other() -> None:
    assert {name for row in rows("Settings") for name in quoted(row[0])} == {
        f"{PREFIX}{name.upper()}" for name in Settings.model_fields
    }


def test_every_command_is_named_and_no_other() -> None:
    commands = {each.name or each.callback.__name__ for each in app.registered_commands if each.callback}
    assert {quoted(row[0])[0].split()[0] for row in rows("Commands")} == commands


def examples(heading: str) -> list[str]:
    return [said for row in rows(heading) for said in quoted(row[0])]


@pytest.fixture(scope="module")
def adaeze() -> ClientState:
    """Adaeze before her second round, with one of each workout in her journal."""
    states: list[ClientState] = []

    def look(state: State, _heard: Heard | None) -> Outcome:
        assert isinstance(state, ClientState)
        states.append(state)
        return Outcome()

    async def train(stage: Stage) -> None:
        for day, sets in (
            (2, "squat 60x6, bench 40x7, dips 5, lateral raises 6x12"),
            (5, "rdl 70x7, rows 40x9, pulldown 35x7, plank 60 s"),
        ):
            await stage.wait_until(datetime(2026, 3, day, 18, tzinfo=UTC))
            await stage.say("Adaeze", sets)
        await stage.wait_until(NOW)

    with passing() as store:
        store.load_roster(read_roster(ROOT / "demo" / "roster.json"), datetime(2026, 3, 1, tzinfo=UTC))
        asyncio.run(train(Stage(store, datetime(2026, 3, 1, tzinfo=UTC), lambda *_: None)))
        store.receive([Received("local", "look", "local:Adaeze", NOW, Text(text="look"))])
        lease = store.claim_person(NOW, 60)
        assert lease is not None
        store.work(lease, NOW, look)
    return states[0]


NOTHING_UNDERSTOOD = {
    "heard",
    "nothing recorded",
    "no set found",
    "nothing to read",
    "nothing to take back",
    "no history",
}


def topics(outcome: Outcome) -> set[str]:
    return {part.topic for say in outcome.says for part in say.parts if isinstance(part, Notice)}


HELPED = re.findall(r"«([^»]+)»", HELP)


@pytest.mark.parametrize("said", [*examples("What the bot understands"), *HELPED])
def test_what_readme_and_help_say_can_be_said_is_understood(adaeze: ClientState, said: str) -> None:
    if said in {"I'm back", "the flu is over", "the trip is off"}:
        adaeze = replace(
            adaeze, memory=adaeze.memory.model_copy(update={"paused": True, "ill_on": NOW.date()})
        )
    outcome = hear(adaeze, Heard(1_000, NOW, Text(text=said)))
    assert HELPED
    assert outcome.says
    assert not topics(outcome) & NOTHING_UNDERSTOOD
