"""`python -m tests.bench.reading`: how long a message takes, beside general-purpose libraries on the same
messages; how the time grows with the length; how many lines a stream has a second; how long a start takes.

dateparser's search is what a programmer would reach for to find the days in a text, quantulum3 to find the
numbers with their units; each is asked about nothing else. What share each gets right is counted on the same
messages of the corpus: those that tell of another day, and those that hold just one whole set.
"""

import json
import resource
import statistics
import subprocess
import sys
import time
import warnings
from collections.abc import Callable
from dataclasses import replace
from datetime import date, datetime
from typing import Any

from domain.reading import Request, read
from domain.reading.tokens import LONGEST, tokenise
from domain.reading.wire import request_from
from tests.corpus.rows import Row, got, own_rows

ROUNDS = 5
MEGABYTE = 1_000_000
LINES = 20_000
MEASURED = 500
"""How many messages the slower libraries are asked about."""


def microseconds(rows: list[Row]) -> tuple[float, float]:
    """Return the median and the mean time of a message, warm."""
    requests = [request_from(row.request) for row in rows]
    for request in requests:
        read(request)
    times: list[float] = []
    for _ in range(ROUNDS):
        for request in requests:
            began = time.perf_counter()
            read(request)
            times.append((time.perf_counter() - began) * 1e6)
    return statistics.median(times), statistics.fmean(times)


def catalogue_seconds() -> float:
    """Return how long a new process takes to read the catalogue of exercises."""
    code = "import time, domain.exercises as e; t = time.perf_counter(); e.catalogue(); "
    code += "print(time.perf_counter() - t)"
    ran = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    return float(ran.stdout)


def growth(request: Request) -> float:
    """Return how much longer a text of 4,000 characters takes than four of 1,000: 1 where that is linear.

    Both are put together of the messages of the corpus.
    """
    words = " ".join(row.request["text"] for row in own_rows()).replace("\n", " ")
    short = [words[at : at + LONGEST // 4] for at in range(0, 40 * LONGEST, LONGEST // 4)]
    long = [words[at : at + LONGEST] for at in range(0, 40 * LONGEST, LONGEST)]
    took: list[list[float]] = [[], []]
    for _ in range(ROUNDS):
        for texts, times in zip((short, long), took, strict=True):
            began = time.process_time()
            for text in texts:
                read(replace(request, text=text))
            times.append(time.process_time() - began)
    return min(took[1]) / min(took[0])


def stream(rows: list[Row]) -> tuple[float, float, float]:
    """Return how many lines of `read --jsonl` are answered in a second of one processor, its start included,
    and its greatest memory in megabytes after a tenth of the lines and after all."""
    lines = [json.dumps(row.request) + "\n" for row in rows]
    took, memory = 0.0, []
    for count in (LINES // 10, LINES):
        given = "".join(lines[at % len(lines)] for at in range(count))
        before = resource.getrusage(resource.RUSAGE_CHILDREN)
        code = "import resource, sys; from bot.__main__ import main; sys.argv[1:] = ['read', '--jsonl']\n"
        code += "try:\n    main()\nfinally:\n"
        code += "    print(resource.getrusage(resource.RUSAGE_SELF).ru_maxrss, file=sys.stderr)"
        ran = subprocess.run(
            [sys.executable, "-c", code], input=given, capture_output=True, text=True, check=True
        )
        after = resource.getrusage(resource.RUSAGE_CHILDREN)
        took = after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime
        memory.append(int(ran.stderr) / 1000)
    return LINES / took, memory[0], memory[1]


def start() -> float:
    """Return how many times the processor time of an empty Python process a message read by itself takes."""
    took: list[float] = []
    for arguments in (["-c", ""], ["-m", "bot", "read", "bench 80x8"]):
        each: list[float] = []
        for _ in range(ROUNDS):
            before = resource.getrusage(resource.RUSAGE_CHILDREN)
            subprocess.run([sys.executable, *arguments], capture_output=True, check=True)
            after = resource.getrusage(resource.RUSAGE_CHILDREN)
            each.append(after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime)
        took.append(min(each))
    return took[1] / took[0]


def days_found(row: Row) -> set[date]:
    """Return the days that dateparser's search finds in a message, told to look back from when it was
    sent."""
    from dateparser.search import search_dates  # noqa: PLC0415 - slow to import

    sent = datetime.fromisoformat(row.request["sent"])
    settings: Any = {"RELATIVE_BASE": sent, "PREFER_DATES_FROM": "past", "TIMEZONE": "UTC"}
    found = search_dates(row.request["text"], languages=["en"], settings=settings) or []
    return {day.date() for _, day in found}


def numbers_found(row: Row) -> list[float]:
    """Return the numbers that quantulum3 finds in a message."""
    with warnings.catch_warnings():
        # It speaks of an extra that would tell apart units with one name; kg and lb are not among those.
        warnings.simplefilter("ignore")
        from quantulum3 import parser  # noqa: PLC0415 - slow to import

        return sorted(float(one.value) for one in parser.parse(row.request["text"]))


def numbers_of(row: Row) -> list[float]:
    """Return the numbers that a message with one set speaks of: its load and its reps or seconds."""
    (one,) = row.gold["sets"]
    return sorted([float(one["load"]), float(one["seconds"] if one["reps"] is None else one["reps"])])


def is_one_whole_set(row: Row) -> bool:
    """Return whether a message is of one set, with both its numbers written in digits."""
    if len(row.gold["sets"]) != 1 or row.gold["sets"][0]["load_kind"] != "total":
        return False
    words = {token.text for token in tokenise(row.request["text"])}
    return all(f"{number:g}" in words for number in numbers_of(row))


def days_of(row: Row) -> set[date]:
    """Return the days of the sets of a message."""
    return {date.fromisoformat(one["on"]) for one in row.gold["sets"]}


def share(right: Callable[[Row], bool], rows: list[Row]) -> tuple[float, float]:
    """Return the share of rows that `right` holds of, and the mean time it takes in microseconds."""
    began = time.perf_counter()
    count = sum(right(row) for row in rows)
    return count / max(1, len(rows)), (time.perf_counter() - began) / max(1, len(rows)) * 1e6


def main() -> None:
    """Print the times, and what share each gets right."""
    rows = list(own_rows())
    median, mean = microseconds(rows)
    print(
        f"ours: {len(rows)} messages, median {median:.0f} µs, mean {mean:.0f} µs, {1e6 / mean:,.0f} a second"
    )
    for name, text in (
        ("seven reps after a load", "bench 80 8 7 6 5 4 3 2"),
        ("sixty loose numbers", "bench " + ", ".join(["8"] * 60)),
        ("a megabyte", "bench 80x8, " * (MEGABYTE // 12)),
    ):
        began = time.perf_counter()
        read(replace(request_from(rows[0].request), text=text))
        print(f"{name}: {(time.perf_counter() - began) * 1e6 / mean:,.1f} times a message")
    print(f"4,000 characters take {growth(request_from(rows[0].request)):.2f} times as long as four of 1,000")
    second, early, late = stream(rows)
    print(f"a stream of {LINES:,} lines: {second:,.0f} a second")
    print(f"its memory: {early:.0f} MB after a tenth of them, {late:.0f} MB at the end")
    print(f"one message by itself: {start():.0f} times as long as an empty Python process")
    print(f"reading the catalogue anew: {catalogue_seconds() * 1e6 / mean:,.0f} times a message")
    whole = [row for row in rows if is_one_whole_set(row)][:MEASURED]
    right, each = share(lambda row: numbers_found(row) == numbers_of(row), whole)
    ours, _ = share(lambda row: got(row)["sets"] == row.gold["sets"], whole)
    print(f"one whole set, in {len(whole)} messages: ours {ours:.0%} right")
    print(f"quantulum3: just its two numbers in {right:.0%}, {each / mean:,.0f} times our time")
    dated = [
        row for row in rows if row.gold["sets"] and row.gold["sets"][0]["on"] != row.request["sent"][:10]
    ]
    undated = [row for row in rows if row.gold["sets"] and row not in dated][: len(dated)]
    right, each = share(lambda row: days_found(row) == days_of(row), dated)
    quiet, _ = share(lambda row: not days_found(row), undated)
    ours, _ = share(
        lambda row: {date.fromisoformat(one["on"]) for one in got(row)["sets"]} == days_of(row), dated
    )
    print(f"days, in {len(dated)} messages about another day: ours {ours:.0%} right")
    print(
        f"dateparser's search: {right:.0%} right, {each / mean:,.0f} times our time; "
        f"silent in {quiet:.0%} of {len(undated)} messages that name no day"
    )


if __name__ == "__main__":
    main()
