"""The demo with the first days of its weeks alone: for what does not hang on how long they are.

`python -m tests.demo.shortened` takes what `python -m demo` takes.
"""

import shutil
import sys
import tempfile
from pathlib import Path

import demo.__main__

STEPS = 11
LAST = '{"at": "2026-03-07T09:00:00+01:00", "who": "Marit", "says": "who needs me?"}\n'


def main() -> int:
    """Play the first steps of the weeks and the coach's question, and go on as the demo does."""
    with tempfile.TemporaryDirectory(prefix="kilopost-demo-") as name:
        here = Path(name) / "demo"
        shutil.copytree(demo.__main__.HERE, here, ignore=shutil.ignore_patterns("__pycache__"))
        weeks = here / "weeks.jsonl"
        lines = weeks.read_text("utf-8").splitlines(keepends=True)
        weeks.write_text("".join([*lines[:STEPS], LAST]), "utf-8")
        demo.__main__.HERE = here
        return demo.__main__.main()


if __name__ == "__main__":
    sys.exit(main())
