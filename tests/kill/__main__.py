"""The long form: `python -m tests.kill --kills 100`. Ends with 1 where anything is not as it must be."""

import argparse
import sys
import tempfile
from pathlib import Path

from tests.kill.proof import prove


def main() -> int:
    """Kill as often as the command line says, and print what was found."""
    arguments = argparse.ArgumentParser(description="Kill the bot under traffic, and count what is lost.")
    arguments.add_argument("--kills", type=int, default=100)
    arguments.add_argument("--seed", type=int, default=1)
    said = arguments.parse_args()
    with tempfile.TemporaryDirectory(prefix="kilopost-kill-") as folder:
        found = prove(said.kills, said.seed, Path(folder))
    print(found)
    return 1 if found.faults else 0


if __name__ == "__main__":
    sys.exit(main())
