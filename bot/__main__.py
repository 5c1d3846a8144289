"""The command line: `kilopost`, or `python -m bot`."""

import gc
import sys
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path

from bot.faults import OperatorFault
from bot.worked_out import keep_between_runs

NEW_OBJECTS = 20_000
"""How many come before it is looked which of them nobody needs: looking more often takes long, and finds next
to none."""


def main() -> None:
    """Run the command line; a reader that goes away early (as with `head`) is no fault."""
    gc.set_threshold(NEW_OBJECTS)
    keep_between_runs()
    try:
        status = _at_once(sys.argv[1:])
        if status is not None:
            sys.exit(status)
        with _loading():
            from bot.command_line import app

        app()
    except OperatorFault as fault:
        for line in fault.faults:
            print(f"kilopost: {line}", file=sys.stderr)
        sys.exit(1)
    except BrokenPipeError:
        sys.stderr.close()
        sys.exit(141)


def _at_once(arguments: Sequence[str]) -> int | None:
    """Read what is to be read, or chat, and return the status; None where the command is another, or has
    other options.

    Most of the time that one message takes would else go into what takes options apart.
    """
    match arguments:
        case ["chat", "--roster", roster] if not roster.startswith("-"):
            with _loading():
                from bot.commands.chat import chat_command

            return chat_command(None, Path(roster))
        case ["read", "--jsonl"]:
            text = None
        case ["read", text] if not text.startswith("-"):
            pass
        case _:
            return None
    with _loading():
        from bot.commands.read import read_command

    return read_command(text, jsonl=text is None)


@contextmanager
def _loading() -> Iterator[None]:
    """Let what is loaded within stay for good, and never look through it for what nobody needs any more."""
    gc.disable()
    try:
        yield
    finally:
        gc.freeze()
        gc.enable()


if __name__ == "__main__":
    main()
