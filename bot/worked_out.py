"""What the domain works out from its own sources, kept between runs beside the compiled modules.

As with those, a file that cannot be written is no fault, and none is written where Python is told not to.
What was worked out by other code than that which stands here now is not used.
"""

import atexit
import hashlib
import marshal
import os
import sys
from contextlib import suppress
from importlib.util import cache_from_source
from pathlib import Path

from domain.worked_out import Kept, bring, come_new

MOST = 5_000
"""How many results are kept at most: beyond, those that this run had no use for are let go."""

ROOT = Path(__file__).resolve().parent.parent


def keep_between_runs(file: Path | None = None) -> None:
    """Bring what earlier runs have worked out, and keep at the end what comes new.

    To be called before the domain is imported. `file` is where to keep it, `file_for_results()` where None.
    """
    place = file_for_results() if file is None else file
    kept = load(place)
    bring(kept)
    if not sys.dont_write_bytecode:
        atexit.register(lambda: save(place, kept, come_new()))


def file_for_results() -> Path:
    """Return where results are kept: where Python keeps the compiled form of this module."""
    return Path(cache_from_source(__file__)).with_suffix(".results")


def load(file: Path) -> Kept:
    """Return the results in a file, without those that other code has made; none where it cannot be read."""
    try:
        codes, kept = marshal.loads(file.read_bytes())  # noqa: S302 beside the compiled modules
        right = {maker for maker, code in codes.items() if code == code_of(maker)}
        return {key: result for key, result in kept.items() if key[0] in right}
    except (OSError, EOFError, ValueError, TypeError, AttributeError):
        return {}


def save(file: Path, kept: Kept, new: Kept) -> None:
    """Write what was brought and what has come new into a file, in one go, if anything has."""
    if not new:
        return
    both = new if len(kept) + len(new) > MOST else kept | new
    codes = {maker: code_of(maker) for maker in {maker for maker, _ in both}}
    unfinished = file.with_suffix(f".{os.getpid()}")
    with suppress(OSError):
        file.parent.mkdir(exist_ok=True)
        unfinished.write_bytes(marshal.dumps((codes, both)))
        unfinished.replace(file)
    with suppress(OSError):
        unfinished.unlink(missing_ok=True)


def code_of(maker: str) -> str:
    """Return a digest of the source of a module, by its dotted name. Raises OSError where it has none."""
    return hashlib.sha256(ROOT.joinpath(*maker.split(".")).with_suffix(".py").read_bytes()).hexdigest()
