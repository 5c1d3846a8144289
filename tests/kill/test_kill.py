"""The short form of the proof."""

from pathlib import Path

import pytest

from tests.kill.proof import prove


def test_killed_under_traffic_nothing_is_lost_doubled_or_out_of_order(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    found = prove(kills=4, seed=1, folder=tmp_path)
    with capsys.disabled():
        print(f"\n{found}")
    assert found.faults == ()
    assert found.recorded == found.reports > 0
    assert found.delivered == found.alerts
