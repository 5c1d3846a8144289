"""A short run of the mutated updates; the long one is `python -m tests.fuzz.updates`."""

from pathlib import Path

import pytest

from tests.fuzz.updates import run


async def test_mutated_updates_stop_nothing_and_leave_nothing_half_done(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    status = await run(400, 20260325, tmp_path)
    assert status == 0, capsys.readouterr().out
