"""The client's coming behaviour (a wait is a timedelta), asked for as it documents."""

import pytest


@pytest.fixture(autouse=True)
def _timedelta(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("PTB_TIMEDELTA", "true")
