"""What every test stands on: a local time zone that is nobody's, the pinned time zone data, a PostgreSQL.

And what is said at the end of tests that this machine cannot run.
"""

import gc
import os
import time
import zoneinfo
from collections.abc import Iterator
from uuid import uuid4

import pytest
from hypothesis import settings

from tests.browser import find_browser
from tests.gathering import gathered, tried
from tests.postgres import Server, find_programs, running

NO_POSTGRES = "no PostgreSQL can be had here, so its tests are left out"
NO_BROWSER = "no Chromium can be had here, so the tests of the page are left out; .setup/browser brings it"
IN_CI = "CI" in os.environ

# Whatever reads this machine's zone instead of the client's gives itself away: this is +12:45 or +13:45.
os.environ["TZ"] = "Pacific/Chatham"
time.tzset()

# The data of the pinned package tzdata, not of this machine, so that each run tests the same clock changes.
zoneinfo.reset_tzpath(to=())

# A slow machine is no failure; in CI every run tries the same cases, so that a red one can be had again.
settings.register_profile("kilopost", deadline=None, derandomize=IN_CI, print_blob=True)
settings.load_profile("kilopost")


@pytest.hookimpl(wrapper=True)
def pytest_collection() -> Iterator[None]:
    """Let what the tests bring stay for good, and never look through it for what nobody needs any more."""
    gc.disable()
    try:
        return (yield)
    finally:
        gc.freeze()
        gc.enable()


@pytest.fixture(scope="session")
def postgres_server() -> Iterator[Server]:
    """A private PostgreSQL for this session; without one the test is left out, or fails in CI."""
    programs = find_programs()
    if programs is None:
        if IN_CI:
            pytest.fail("no PostgreSQL can be had here, and CI must test with it")
        pytest.skip(NO_POSTGRES)
    with running(programs) as server:
        yield server


@pytest.fixture
def postgres_url(postgres_server: Server) -> Iterator[str]:
    """The SQLAlchemy URL of a fresh, empty PostgreSQL database."""
    with postgres_server.database(f"test_{uuid4().hex}") as url:
        yield url


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Begin with the tests that mostly wait: they take long, and none is left for the end."""
    items.sort(key=lambda item: item.get_closest_marker("waits") is None)


def pytest_addoption(parser: pytest.Parser) -> None:
    """Let a row be chosen by its name."""
    told = "let each row of a table be a test of its own, so that -k can choose it"
    parser.addoption("--apart", action="store_true", help=told)


def pytest_pycollect_makeitem(
    collector: pytest.Module | pytest.Class, name: str, obj: object
) -> pytest.Function | None:
    """Make one test of a table."""
    if isinstance(collector, pytest.Class) or collector.config.getoption("--apart"):
        return None
    return gathered(collector, name, obj)


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    """Say in a line how many cases were tried, and in one each which tests were left out."""
    reports = [report for several in terminalreporter.stats.values() for report in several]
    terminalreporter.write_line(f"{sum(tried(reports))} cases: a table of several is one test")
    lacking = {NO_POSTGRES: find_programs() is None, NO_BROWSER: find_browser() is None}
    for line in (line for line, lacks in lacking.items() if lacks and not IN_CI):
        terminalreporter.write_line(line, yellow=True)
