"""Where the browser of the tests is: the Chromium that this machine has. `.setup/browser` brings it."""

import shutil
from pathlib import Path

NAMES = ("chromium", "chromium-browser")


def find_browser() -> Path | None:
    """Return the browser's program, None where this machine has none."""
    found = next(filter(None, map(shutil.which, NAMES)), None)
    return Path(found) if found else None
