"""`read`: what a message, or each of a stream of requests, is understood to mean. No database and no network."""

import json
import sys
from datetime import datetime
from typing import TextIO

from bot.wording_reading import reading_lines
from domain.reading import Request, read
from domain.reading.wire import BrokenLineError, reading_to_json, request_from_json

_BATCH = 256
"""Lines written at once when nobody waits for them."""


def read_command(text: str | None, *, jsonl: bool = False, unit: str = "kg") -> int:
    """Read `text` and print what was understood, or with `jsonl` a stream of requests; return the exit status."""
    if jsonl:
        if text is not None:
            print("kilopost: say a message or --jsonl, not both", file=sys.stderr)
            return 2
        return read_stream(sys.stdin, sys.stdout, sys.stderr)
    if text is None:
        print('kilopost: say a message to read, like "80 x 8", or --jsonl', file=sys.stderr)
        return 2
    if unit != "kg" and unit != "lb":
        print(f"kilopost: the unit is kg or lb, not {unit!r}", file=sys.stderr)
        return 2
    now = datetime.now().replace(microsecond=0)  # noqa: DTZ005 - the person's own clock, as they see it
    print("\n".join(reading_lines(text, read(Request(text=text, unit=unit, sent=now)))))
    return 0


def read_stream(requests: TextIO, readings: TextIO, faults: TextIO) -> int:
    """Write a reading for each request, in order; tell broken lines on `faults` and go on. Return the status."""
    status = 0
    waiting: list[str] = []
    interactive = requests.isatty()
    for number, line in enumerate(requests, 1):
        if not line.strip():
            continue
        try:
            waiting.append(json.dumps(reading_to_json(read(request_from_json(line))), ensure_ascii=False))
        except BrokenLineError as error:
            print(f"line {number}: {error}", file=faults)
            waiting.append(json.dumps({"error": str(error)}))
            status = 1
        if interactive or len(waiting) >= _BATCH:
            readings.write("\n".join(waiting) + "\n")
            readings.flush()
            waiting.clear()
    if waiting:
        readings.write("\n".join(waiting) + "\n")
        readings.flush()
    return status
