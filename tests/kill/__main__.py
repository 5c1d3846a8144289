"""The long form: `python -m tests.kill --kills 100 [--database postgresql]`.

Ends with 1 where anything is not as it must be.
"""

import argparse
import sys
import tempfile
from pathlib import Path

from tests.kill.proof import Proof, prove
from tests.postgres import find_programs, running

AT_WORK = 0.8
"""The share of the kills that hit a bot at work; the others may hit it while it starts."""


def main() -> int:
    """Kill as often as the command line says, and print what was found."""
    arguments = argparse.ArgumentParser(description="Kill the bot under traffic, and count what is lost.")
    arguments.add_argument("--kills", type=int, default=100)
    arguments.add_argument("--seed", type=int, default=1)
    arguments.add_argument("--database", choices=("sqlite", "postgresql"), default="sqlite")
    said = arguments.parse_args()
    with tempfile.TemporaryDirectory(prefix="kilopost-kill-") as folder:
        found = _found(said.database, said.kills, said.seed, Path(folder))
    print(found)
    return 1 if found.found.faults else 0


def _found(database: str, kills: int, seed: int, folder: Path) -> Proof:
    if database == "sqlite":
        return prove(kills, seed, folder, f"sqlite:///{folder / 'kilopost.sqlite3'}", at_work=AT_WORK)
    programs = find_programs()
    if programs is None:
        raise SystemExit("no PostgreSQL can be had here")
    with running(programs) as server, server.database("kill") as url:
        return prove(kills, seed, folder, url, at_work=AT_WORK)


if __name__ == "__main__":
    sys.exit(main())
