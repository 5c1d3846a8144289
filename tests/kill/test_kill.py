"""The short form of the proof, on both databases."""

from pathlib import Path

import pytest

from tests.kill.both import on_both
from tests.kill.proof import Proof, prove

pytestmark = pytest.mark.waits

KILLS = 2


def test_killed_under_traffic_nothing_is_lost_doubled_or_out_of_order(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], request: pytest.FixtureRequest
) -> None:
    def proof(folder: Path, url: str) -> Proof:
        return prove(KILLS, seed=1, folder=folder, url=url)

    for name, found in on_both(proof, tmp_path, request).items():
        with capsys.disabled():
            print(f"\n{name}: {found}")
        assert found.found.faults == (), name
        assert found.found.recorded == found.found.reports > 0, name
        assert found.found.delivered == found.found.alerts > 0, name
