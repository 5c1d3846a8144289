"""One proof on both databases at once: it mostly waits, so the two take hardly longer than one."""

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import TypeVar

import pytest

from persistence.store import open_store
from tests.conftest import IN_CI
from tests.postgres import find_programs

Proof = TypeVar("Proof")


def on_both(
    prove: Callable[[Path, str], Proof], folder: Path, request: pytest.FixtureRequest
) -> dict[str, Proof]:
    """Prove in a folder of its own, by the URL of an empty database, for SQLite and PostgreSQL.

    Where no PostgreSQL can be had, it is left out, but not in CI.
    """
    urls = {"SQLite": f"sqlite:///{folder / 'kilopost.sqlite3'}"}
    if IN_CI or find_programs() is not None:
        urls["PostgreSQL"] = request.getfixturevalue("postgres_url")
    for name, url in urls.items():
        (folder / name).mkdir()
        open_store(url).close()  # here, for within one process only one database is migrated at a time
    with ThreadPoolExecutor(len(urls)) as at_once:
        proving = {name: at_once.submit(prove, folder / name, url) for name, url in urls.items()}
    return {name: each.result() for name, each in proving.items()}
