"""The command: it says where the page is, serves it on loopback, and leaves nothing behind."""

import os
import re
import signal
import subprocess
import sys
from pathlib import Path

import httpx
import pytest

from bot.page.serving import has_browser
from tests.test_project import ROOT


def test_it_serves_until_it_is_stopped_and_leaves_nothing_behind(tmp_path: Path) -> None:
    places = dict.fromkeys(("TMPDIR", "HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"), str(tmp_path))
    database = {"KILOPOST_DATABASE": f"sqlite:///{tmp_path / 'missing.sqlite3'}"}
    command = [sys.executable, "-m", "bot", "page", "--no-browser"]
    environment = {**os.environ, **places, **database}
    with subprocess.Popen(
        command, cwd=ROOT, env=environment, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True
    ) as run:
        assert run.stdout is not None
        assert run.stderr is not None
        lines = iter(run.stdout.readline, "")
        address = next(
            found[0] for line in lines if (found := re.search(r"http://127\.0\.0\.1:\d+/\S+/", line))
        )
        assert "Kilopost" in httpx.get(address, timeout=60).text
        run.send_signal(signal.SIGINT)
        assert (run.wait(timeout=60), run.stderr.read()) == (0, "")
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("environment", [{}, {"DISPLAY": ""}, {"TERM": "xterm", "WAYLAND_DISPLAY": ""}])
@pytest.mark.skipif(sys.platform in {"darwin", "win32"}, reason="windows are always there")
def test_no_browser_of_text_takes_the_terminal_away(environment: dict[str, str]) -> None:
    assert not has_browser(environment)
