"""The short form of the proof, on both databases."""

from pathlib import Path

import pytest

from tests.faults.proof import Proof, prove
from tests.kill.both import on_both

pytestmark = pytest.mark.waits


def test_nothing_is_lost_doubled_or_out_of_order_whatever_fails(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], request: pytest.FixtureRequest
) -> None:
    def proof(folder: Path, url: str) -> Proof:
        return prove(rounds=1, seed=1, folder=folder, url=url, long=False)

    for name, found in on_both(proof, tmp_path, request).items():
        with capsys.disabled():
            print(f"\n{name}: {found}")
        assert found.found.faults == (), name
        assert found.found.recorded == found.found.reports > 0, name
        assert found.found.delivered == found.found.alerts > 0, name
