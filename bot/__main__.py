"""The command line: `kilopost`, or `python -m bot`."""

import sys
from collections.abc import Sequence

from bot.faults import OperatorFault
from bot.worked_out import keep_between_runs


def main() -> None:
    """Run the command line; a reader that goes away early (as with `head`) is no fault."""
    keep_between_runs()
    try:
        status = _read_at_once(sys.argv[1:])
        if status is not None:
            sys.exit(status)
        from bot.command_line import app

        app()
    except OperatorFault as fault:
        for line in fault.faults:
            print(f"kilopost: {line}", file=sys.stderr)
        sys.exit(1)
    except BrokenPipeError:
        sys.stderr.close()
        sys.exit(141)


def _read_at_once(arguments: Sequence[str]) -> int | None:
    """Read what is to be read and return the status; None where the command is another, or has options.

    Most of the time that one message takes would else go into what takes options apart.
    """
    match arguments:
        case ["read", "--jsonl"]:
            text = None
        case ["read", text] if not text.startswith("-"):
            pass
        case _:
            return None
    from bot.commands.read import read_command

    return read_command(text, jsonl=text is None)


if __name__ == "__main__":
    main()
