"""Make the checkout's own environment, `.venv`, or do nothing where it is as it should be.

Run by `.setup/environment`, which has found a Python that will do. With the argument `test` the tools of the
tests are installed too. Every release is pinned by `constraints.txt`, those that build the project included.

A stamp in `.venv` says what it was made from. It is written last and taken away before anything is changed,
so that an interrupted run is never taken for a finished one; and only one run at a time works on `.venv`.
"""

import fcntl
import hashlib
import os
import subprocess
import sys
import tomllib
import venv
from collections.abc import Set as AbstractSet
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
CONSTRAINTS = ROOT / ".setup" / "constraints.txt"
PROJECT = ROOT / "pyproject.toml"
VENV = ROOT / ".venv"
PYTHON = VENV / "bin" / "python"
STAMP = VENV / "kilopost-stamp"

NO_ANSWER = "connection broken by"
"""What pip writes, before it tries again, where the registry does not answer."""


class SetupError(Exception):
    """The environment could not be made; the message says why in one line."""


def main() -> int:
    """Give `.venv` what the arguments ask for; return the exit status."""
    wanted = frozenset(sys.argv[1:])
    if has(wanted):
        return 0
    lock = os.open(ROOT / ".setup", os.O_RDONLY)
    try:
        fcntl.flock(lock, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except BlockingIOError:
        tell("waiting for another run that sets up .venv")
        fcntl.flock(lock, fcntl.LOCK_EX)
    try:
        if not has(wanted):
            set_up(wanted, lock)
    except SetupError as problem:
        tell(str(problem))
        return 1
    return 0


def has(wanted: AbstractSet[str]) -> bool:
    """Return whether `.venv` is finished, made from what stands here now, and has the wanted extras."""
    extras = installed_extras()
    return extras is not None and wanted <= extras


def installed_extras() -> AbstractSet[str] | None:
    """Return the extras in `.venv`; None where it is missing, unfinished or made from something else."""
    try:
        made_from, *extras = STAMP.read_text("utf-8").split()
    except (OSError, ValueError):
        return None
    return frozenset(extras) if made_from == fingerprint() else None


def fingerprint() -> str:
    """Return a digest of what `.venv` is made from: what is asked for, the pins, the Python, the place.

    The settings of tools in `pyproject.toml` are no part of it.
    """
    project = tomllib.loads(PROJECT.read_text(encoding="utf-8"))
    asked_for = repr((project["build-system"], project["project"])).encode()
    digest = hashlib.sha256()
    for part in (asked_for, CONSTRAINTS.read_bytes()):
        digest.update(hashlib.sha256(part).digest())
    digest.update(repr((sys.version, sys.base_prefix, str(ROOT))).encode())
    return digest.hexdigest()


def set_up(wanted: AbstractSet[str], lock: int) -> None:
    """Add the wanted extras to a good environment, or make it anew. Raises SetupError."""
    extras = installed_extras()
    STAMP.unlink(missing_ok=True)
    if extras is None:
        tell(f"setting up .venv with Python {sys.version.split()[0]}; this takes a minute, once")
        extras = frozenset()
        create()
    else:
        tell(f"adding to .venv: {', '.join(sorted(wanted - extras))}")
    extras |= wanted
    install(lock, *tomllib.loads(PROJECT.read_text("utf-8"))["build-system"]["requires"])
    install(lock, "--no-build-isolation", "--editable", f".[{','.join(sorted(extras))}]" if extras else ".")
    unfinished = STAMP.with_suffix(".new")
    unfinished.write_text(" ".join([fingerprint(), *sorted(extras)]), "utf-8")
    unfinished.replace(STAMP)


def create() -> None:
    """Make an empty environment with pip in place of what is there. Raises SetupError."""
    try:
        venv.create(VENV, clear=True, symlinks=True, with_pip=True)
    except (OSError, subprocess.CalledProcessError) as problem:
        raise SetupError(f"the virtual environment .venv could not be made: {problem}") from problem


def install(lock: int, *what: str) -> None:
    """Have pip install `what` at the pinned releases. Raises SetupError.

    pip keeps the lock open as well: were this process killed, nobody would touch `.venv` before pip ends.
    """
    command = [str(PYTHON), "-m", "pip", "install", "--retries=2", f"--constraint={CONSTRAINTS}", *what]
    pip = subprocess.run(  # noqa: S603 - the words are those above and pyproject's, and no shell reads them
        command,
        cwd=ROOT,
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        errors="replace",
        pass_fds=(lock,),
        check=False,
    )
    if pip.returncode == 0:
        return
    if NO_ANSWER in pip.stdout:
        raise SetupError("the package registry could not be reached; run this again when it can be")
    errors = [line for line in pip.stdout.splitlines() if line.startswith("ERROR:")]
    reason = errors[0].removeprefix("ERROR: ") if errors else " ".join(pip.stdout[-300:].split())
    raise SetupError(f"pip could not install the dependencies: {reason}")


def tell(line: str) -> None:
    """Write one line for the person who waits."""
    print(f"kilopost: {line}", file=sys.stderr, flush=True)


if __name__ == "__main__":
    sys.exit(main())
