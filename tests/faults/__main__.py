"""The long form: `python -m tests.faults --rounds 20`. Ends with 1 where anything is not as it must be."""

import argparse
import sys
import tempfile
from pathlib import Path

from tests.faults.proof import prove
from tests.postgres import find_programs, running


def main() -> int:
    """Let everything fail as often as the command line says, and print what was found."""
    arguments = argparse.ArgumentParser(description="Let everything fail around the bot, and count.")
    arguments.add_argument("--rounds", type=int, default=20)
    arguments.add_argument("--seed", type=int, default=1)
    said = arguments.parse_args()
    programs = find_programs()
    if programs is None:
        raise SystemExit("no PostgreSQL can be had here")
    faults = 0
    with tempfile.TemporaryDirectory(prefix="kilopost-faults-") as name:
        folder = Path(name)
        found = prove(said.rounds, said.seed, folder, f"sqlite:///{folder / 'k.sqlite3'}", long=True)
        print(f"SQLite\n{found}")
        faults += len(found.found.faults)
        with running(programs) as server, server.database("faults") as url:
            found = prove(said.rounds, said.seed, folder, url, long=True)
        print(f"PostgreSQL\n{found}")
        faults += len(found.found.faults)
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
