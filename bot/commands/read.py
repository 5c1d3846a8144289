"""`read`: what a message, or each of a stream of requests, is understood to mean."""

import sys
from datetime import datetime
from typing import TextIO

from bot.wording.reading import reading_lines
from domain.reading import Request, read
from domain.reading.wire import BrokenLineError, line_of, reading_to_line, request_from_json
from domain.units import Unit

_UNITS: dict[str, Unit] = {"kg": "kg", "lb": "lb"}


def read_command(text: str | None, *, jsonl: bool = False, unit: str = "kg") -> int:
    """Read `text` and print what was understood, or with `jsonl` a stream; return the exit status."""
    if jsonl:
        if text is not None:
            print("kilopost: say a message or --jsonl, not both", file=sys.stderr)
            return 2
        return read_stream(sys.stdin, sys.stdout, sys.stderr)
    if text is None:
        print('kilopost: say a message to read, like "80 x 8", or --jsonl', file=sys.stderr)
        return 2
    usual = _UNITS.get(unit)
    if usual is None:
        print(f"kilopost: the unit is kg or lb, not {unit!r}", file=sys.stderr)
        return 2
    now = datetime.now().replace(microsecond=0)  # noqa: DTZ005 - the person's own clock, as they see it
    print("\n".join(reading_lines(text, read(Request(text=text, unit=usual, sent=now)))))
    return 0


def read_stream(requests: TextIO, readings: TextIO, faults: TextIO) -> int:
    """Write a reading for each request, in order; tell broken lines on `faults`. Return the status."""
    status = 0
    for number, line in enumerate(requests, 1):
        if not line.strip():
            continue
        try:
            answer = reading_to_line(read(request_from_json(line)))
        except BrokenLineError as error:
            print(f"line {number}: {error}", file=faults)
            answer = line_of({"error": str(error)})
            status = 1
        # Each line goes out at once: whoever asks may wait for the answer before the next request.
        readings.write(answer + "\n")
        readings.flush()
    return status
