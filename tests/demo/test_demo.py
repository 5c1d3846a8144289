"""The demo plays, tells what it is there to tell, and leaves nothing behind."""

import os
import pty
import select
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from demo.stories import read_stories
from tests.demo.conftest import ROOT, Run

Part = dict[str, Any]
Message = dict[str, Any]

SECONDS = 20
"""The demo is to be over in this time; a machine that runs the tests beside it gets the double."""


@pytest.mark.parametrize("how", ["told", "played"])
def test_it_plays_without_a_fault_and_in_time(how: str, request: pytest.FixtureRequest) -> None:
    run: Run = request.getfixturevalue(how)
    assert (run.status, run.complained) == (0, "")
    assert run.seconds < 2 * SECONDS


@pytest.mark.parametrize("how", ["told", "played"])
def test_it_leaves_nothing_behind(how: str, request: pytest.FixtureRequest) -> None:
    assert request.getfixturevalue(how).left_behind == []


def kind(name: str, **facts: object) -> Callable[[Part], bool]:
    """Return a test for a part of that kind with these facts."""
    return lambda part: part["kind"] == name and all(part.get(key) == value for key, value in facts.items())


BEATS: list[tuple[str, str, Callable[[Part], bool]]] = [
    ("a training day begins with a plan", "Adaeze", kind("plan", workout="Push")),
    ("a reminder comes on the day", "Adaeze", kind("reminder")),
    ("the first time there is nothing to beat", "Adaeze", kind("verdict", result="first")),
    ("steady progress", "Adaeze", kind("verdict", result="beat", personal_best=True)),
    ("there is something to aim for next", "Adaeze", kind("target", when="next time")),
    ("the look back says that strength has risen", "Adaeze", kind("notice", topic="review")),
    ("the coach hears of the look back", "Marit", kind("alert", reason="review", client="Adaeze")),
    ("a load in pounds that can be put on", "Dana", kind("target", unit="lb", load=100, load_kind="total")),
    ("an edit is read again", "Dana", kind("notice", topic="read again")),
    ("«make that 9» puts right", "Dana", kind("verdict", exercise="Bench press", corrected=True)),
    ("what can be taken in two ways is asked about", "Dana", kind("question", slot="confirm")),
    ("a stall is told", "Wiremu", kind("notice", topic="stall")),
    ("a stall asks after the joint", "Wiremu", kind("safety", where=None, exercise="Bench press")),
    ("the coach hears of the stall", "Marit", kind("alert", reason="stall", client="Wiremu")),
    ("the coach gets the same caution", "Marit", kind("safety", where=None, exercise="Bench press")),
    ("the remedy reaches the client", "Wiremu", kind("notice", topic="lighter")),
    ("lighter on purpose is not called worse", "Wiremu", kind("verdict", exercise="Bench press", eased=True)),
    ("pain sets the exercise aside", "Farah", kind("safety", where="knee", exercise="Back squat")),
    ("the coach hears of the pain", "Marit", kind("alert", reason="pain", client="Farah")),
    ("the coach lifts the hold", "Farah", kind("notice", topic="hold lifted")),
    ("a nudge, where nothing was reported", "Mateus", kind("nudge")),
    ("a missed workout is asked about", "Mateus", kind("question", slot="missed")),
    ("the coach hears of two missed ones", "Marit", kind("alert", reason="missed", client="Mateus")),
    ("a question reaches the coach", "Marit", kind("alert", reason="question", client="Yuki")),
    ("the answer reaches the client", "Yuki", kind("notice", topic="from coach")),
    ("the coach's overview", "Marit", kind("digest", since=None)),
    ("the coach's look back on a week", "Marit", kind("digest", since="2026-03-09")),
]


@pytest.mark.parametrize(("to", "wanted"), [beat[1:] for beat in BEATS], ids=[beat[0] for beat in BEATS])
def test_a_beat_of_the_stories(messages: list[Message], to: str, wanted: Callable[[Part], bool]) -> None:
    found = [part for message in messages if message["to"] == to for part in message["about"] if wanted(part)]
    assert found


SET_SLOTS = {"exercise", "load", "reps", "seconds", "unit", "date", "confirm"}


def test_of_all_that_is_typed_only_the_riddle_has_to_be_asked_about(messages: list[Message]) -> None:
    asked = [
        (message["to"], part["slot"])
        for message in messages
        for part in message["about"]
        if part["kind"] == "question" and part["slot"] in SET_SLOTS
    ]
    assert asked == [("Dana", "confirm")]


def plans(messages: list[Message], to: str) -> list[Part]:
    return [
        part
        for message in messages
        if message["to"] == to
        for part in message["about"]
        if part["kind"] == "plan"
    ]


def test_without_a_barbell_nothing_is_asked_for_that_needs_one(messages: list[Message]) -> None:
    lines = [line for plan in plans(messages, "Yuki") for line in plan["lines"]]
    assert {line["exercise"] for line in lines if line["instead_of"] == "Back squat"} == {"Goblet squat"}
    assert not {"Back squat", "Bench press", "Romanian deadlift", "Dip"} & {
        line["exercise"] for line in lines
    }


def test_nothing_is_aimed_for_on_what_hurts_until_the_coach_has_lifted_the_hold(
    messages: list[Message],
) -> None:
    about = [part for message in messages if message["to"] == "Farah" for part in message["about"]]
    hurt = next(at for at, part in enumerate(about) if part["kind"] == "safety" and part["where"] == "knee")
    lifted = next(at for at, part in enumerate(about) if part.get("topic") == "hold lifted")
    between = [line for part in about[hurt:lifted] if part["kind"] == "plan" for line in part["lines"]]
    assert "Hip thrust" in {line["exercise"] for line in between}
    assert not [line for line in between if line["exercise"] == "Back squat" and line["target"]]
    assert not [
        part for part in about[hurt:lifted] if part.get("exercise") == "Back squat" and part.get("when")
    ]
    after = next(line for part in about[lifted:] if part["kind"] == "plan" for line in part["lines"])
    assert after["exercise"] != "Back squat" or after["target"]["load"] < after["to_beat"]["load"]


def test_every_story_is_told_and_the_coach_comes_last(told: Run) -> None:
    stories = read_stories(ROOT / "demo" / "stories.toml")
    places = [told.printed.index(story.heading) for story in stories]
    assert places == sorted(places)
    assert told.printed.index("who needs me?") > places[-1]
    assert "None" not in told.printed


def test_on_a_terminal_the_chat_goes_on_with_the_same_people(tmp_path: Path) -> None:
    """After its first days alone: the chat goes on from wherever they end."""
    printed = at_a_terminal(tmp_path, "how is Farah doing?\n:as Mateus\n:quit\n")
    told, _, chat = printed.partition("You are Marit.")
    assert "Farah (Orchard Base): trains" in chat
    assert "Sat 07 Mar" in chat
    assert "who needs me?" in told


def at_a_terminal(folder: Path, typed: str) -> str:
    """Run the demo at a terminal of its own, type, and return all that it showed; it must end by itself."""
    ours, its = pty.openpty()
    with subprocess.Popen(
        [sys.executable, "-m", "tests.demo.shortened"],
        cwd=ROOT,
        env={**os.environ, "TMPDIR": str(folder), "TERM": "dumb"},
        stdin=its,
        stdout=its,
        stderr=its,
    ) as process:
        os.close(its)
        shown = b""
        until = time.monotonic() + 3 * SECONDS
        sent = False
        while time.monotonic() < until:
            if select.select([ours], [], [], 0.2)[0]:
                try:
                    some = os.read(ours, 65536)
                except OSError:
                    break
                if not some:
                    break
                shown += some
            if not sent and b"Marit>" in shown:
                os.write(ours, typed.encode())
                sent = True
        os.close(ours)
        assert process.wait(timeout=SECONDS) == 0
    return shown.decode().replace("\r\n", "\n")
