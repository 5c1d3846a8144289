"""Dates with the name of a month, read by dateparser; the one file that knows of it.

It is asked only about words that already are such a date. Languages and order are pinned, so that nothing
depends on the machine; it is imported when first needed, as that takes long.
"""

from datetime import date, datetime
from functools import lru_cache
from typing import Any


@lru_cache(maxsize=1024)
def parsed_date(span: str) -> date | None:
    """Return the day that a date with the name of a month means, in any year where none is said."""
    found = _date_parser().get_date_data(span)
    return found.date_obj.date() if found is not None and found.date_obj is not None else None


@lru_cache(maxsize=1)
def _date_parser() -> Any:
    from dateparser.date import DateDataParser  # noqa: PLC0415 - slow to import, and seldom needed

    return DateDataParser(
        languages=["en"],
        settings={
            "DATE_ORDER": "DMY",
            "PREFER_DAY_OF_MONTH": "first",
            "RELATIVE_BASE": datetime(2024, 1, 1),  # noqa: DTZ001 - a leap year, without a zone, as all here
            "TIMEZONE": "UTC",
            "REQUIRE_PARTS": ["day", "month"],
            "PARSERS": ["absolute-time"],
        },
    )
