"""The demo as its two audiences get it: run once each, in a folder for passing files that is looked into."""

import json
import os
import subprocess
import sys
import time
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

ROOT = Path(__file__).resolve().parents[2]

OF_TESTS = {"__pycache__", ".hypothesis"}
"""Folders that tests beside it may make; the demo is not let write the one and knows nothing of the other."""


@dataclass(frozen=True)
class Run:
    """What a run of the demo came to."""

    status: int
    printed: str
    complained: str
    seconds: float
    left_behind: list[str]


def run_demo(folder: Path, *arguments: str) -> Run:
    """Run the demo with `folder` for all its passing files, home and data folder included."""
    places = ("TMPDIR", "HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME")
    environment = {**os.environ, **dict.fromkeys(places, str(folder)), "PYTHONDONTWRITEBYTECODE": "1"}
    before = listing()
    begun = time.monotonic()
    done = subprocess.run(
        [sys.executable, "-m", "demo", *arguments],
        cwd=ROOT,
        env=environment,
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        encoding="utf-8",
        timeout=120,
        check=False,
    )
    seconds = time.monotonic() - begun
    left = [str(path) for path in folder.rglob("*")] + sorted(listing() - before)
    return Run(done.returncode, done.stdout, done.stderr, seconds, left)


def listing() -> set[str]:
    """Return the files of the two places where a run could leave something: its folder and the root."""
    paths = (*ROOT.iterdir(), *(ROOT / "demo").rglob("*"))
    return {str(path) for path in paths if OF_TESTS.isdisjoint(path.relative_to(ROOT).parts)}


@pytest.fixture(scope="package")
def told(tmp_path_factory: pytest.TempPathFactory) -> Run:
    """The demo as a person reads it."""
    return run_demo(tmp_path_factory.mktemp("told"))


@pytest.fixture(scope="package")
def played(tmp_path_factory: pytest.TempPathFactory) -> Run:
    """The demo as JSON lines."""
    return run_demo(tmp_path_factory.mktemp("played"), "--json")


@pytest.fixture(scope="package")
def messages(played: Run) -> list[dict[str, Any]]:
    """All that the bot said, in order."""
    return [json.loads(line) for line in played.printed.splitlines()]
