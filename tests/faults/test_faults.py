"""The short form of the proof, on both databases."""

from pathlib import Path

import pytest

from tests.faults.proof import prove


@pytest.mark.parametrize("database", ["sqlite", "postgresql"])
def test_nothing_is_lost_doubled_or_out_of_order_whatever_fails(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], request: pytest.FixtureRequest, database: str
) -> None:
    is_sqlite = database == "sqlite"
    url = f"sqlite:///{tmp_path / 'k.sqlite3'}" if is_sqlite else request.getfixturevalue("postgres_url")
    proof = prove(rounds=1, seed=1, folder=tmp_path, url=url, long=False)
    with capsys.disabled():
        print(f"\n{proof}")
    assert proof.found.faults == ()
    assert proof.found.recorded == proof.found.reports > 0
    assert proof.found.delivered == proof.found.alerts > 0
