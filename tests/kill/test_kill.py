"""The short form of the proof, on both databases."""

from pathlib import Path

import pytest

from tests.kill.proof import prove


@pytest.mark.parametrize("database", ["sqlite", "postgresql"])
def test_killed_under_traffic_nothing_is_lost_doubled_or_out_of_order(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], request: pytest.FixtureRequest, database: str
) -> None:
    is_sqlite = database == "sqlite"
    url = f"sqlite:///{tmp_path / 'k.sqlite3'}" if is_sqlite else request.getfixturevalue("postgres_url")
    found = prove(kills=4 if is_sqlite else 6, seed=1, folder=tmp_path, url=url)
    with capsys.disabled():
        print(f"\n{found}")
    assert found.found.faults == ()
    assert found.found.recorded == found.found.reports > 0
    assert found.found.delivered == found.found.alerts > 0
