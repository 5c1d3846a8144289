"""`python -m tests.bench.reading`: how long a message takes, beside a general-purpose library on the same
messages.

dateparser's search is what a programmer would reach for to find the days in a text; it is asked about nothing
else. What share each gets right is counted on the messages of the corpus that have a day for their sets.
"""

import statistics
import time
from datetime import date, datetime
from typing import Any

from domain.reading import read
from domain.reading.wire import request_from
from tests.corpus.rows import Row, got, own_rows

ROUNDS = 5


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


def days_found(row: Row) -> set[date]:
    """Return the days that dateparser's search finds in a message, told to look back from when it was
    sent."""
    from dateparser.search import search_dates  # noqa: PLC0415 - slow to import

    sent = datetime.fromisoformat(row.request["sent"])
    settings: Any = {"RELATIVE_BASE": sent, "PREFER_DATES_FROM": "past", "TIMEZONE": "UTC"}
    found = search_dates(row.request["text"], languages=["en"], settings=settings) or []
    return {day.date() for _, day in found}


def main() -> None:
    """Print the times, and what share of the days each gets right."""
    rows = list(own_rows())
    median, mean = microseconds(rows)
    print(
        f"ours: {len(rows)} messages, median {median:.0f} µs, mean {mean:.0f} µs, {1e6 / mean:,.0f} a second"
    )
    dated = [
        row for row in rows if row.gold["sets"] and row.gold["sets"][0]["on"] != row.request["sent"][:10]
    ]
    undated = [row for row in rows if row.gold["sets"] and row not in dated][: len(dated)]
    began = time.perf_counter()
    right = sum(
        days_found(row) == {date.fromisoformat(one["on"]) for one in row.gold["sets"]} for row in dated
    )
    quiet = sum(not days_found(row) for row in undated)
    each = (time.perf_counter() - began) / max(1, len(dated) + len(undated)) * 1e6
    ours = sum(
        {one["on"] for one in got(row)["sets"]} == {one["on"] for one in row.gold["sets"]} for row in dated
    )
    print(f"days, in {len(dated)} messages about another day: ours {ours / len(dated):.0%} right")
    print(
        f"dateparser's search: {right / len(dated):.0%} right, {each:.0f} µs each; "
        f"silent in {quiet / len(undated):.0%} of {len(undated)} messages that name no day"
    )


if __name__ == "__main__":
    main()
