"""The README's examples of running the bot, as far as they can be tried without systemd and a container."""

import configparser
import json
import re
import shutil
import subprocess
from pathlib import Path

import pytest

from bot.command_line import app
from bot.serve import DRAIN_SECONDS
from bot.settings import Settings
from tests.test_project import ROOT

README = (ROOT / "README.md").read_text("utf-8")


def block(language: str) -> str:
    (found,) = re.findall(rf"```{language}\n(.*?)```", README, re.DOTALL)
    return str(found)


def commands() -> set[str]:
    return {str(each.callback.__name__) for each in app.registered_commands if each.callback is not None}


def known_settings(lines: str) -> None:
    named = re.findall(r"KILOPOST_([A-Z_]+)=", lines)
    assert named
    assert {name.lower() for name in named} <= set(Settings.model_fields)


def test_the_service_runs_a_command_that_there_is_and_gives_it_time_to_stop(tmp_path: Path) -> None:
    unit = configparser.ConfigParser(strict=False, interpolation=None)
    unit.optionxform = str  # type: ignore[assignment,method-assign]  # the names have capitals
    unit.read_string(block("ini"))
    program, command = unit["Service"]["ExecStart"].split()
    assert program.startswith(unit["Service"]["WorkingDirectory"])
    assert program.endswith("/.venv/bin/kilopost")
    assert command in commands()
    assert int(unit["Service"]["TimeoutStopSec"]) > DRAIN_SECONDS
    known_settings(block("ini"))
    analyze = shutil.which("systemd-analyze")
    if analyze is not None:
        path = tmp_path / "kilopost.service"
        path.write_text(block("ini"), "utf-8")
        ran = subprocess.run([analyze, "verify", path], capture_output=True, text=True, check=False)
        own = [line for line in ran.stderr.splitlines() if "Unknown" in line or "Failed to parse" in line]
        assert own == []


def test_the_container_copies_what_is_there_and_runs_a_command_that_there_is() -> None:
    lines = block("dockerfile").splitlines()
    copied = [word for line in lines if line.startswith("COPY ") for word in line.split()[1:-1]]
    assert {"bot", "domain", "persistence", "pyproject.toml"} <= set(copied)
    assert all((ROOT / each).exists() for each in copied)
    (last,) = (json.loads(line.removeprefix("CMD ")) for line in lines if line.startswith("CMD "))
    assert last[0] == "kilopost"
    assert last[1] in commands()
    known_settings(block("dockerfile"))


@pytest.mark.parametrize("name", list(Settings.model_fields))
def test_every_setting_stands_in_the_readme(name: str) -> None:
    assert f"`KILOPOST_{name.upper()}`" in README
