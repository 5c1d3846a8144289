"""Moments, numbers and values come back from the database just as they went in."""

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta, timezone
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from sqlalchemy import Column, Engine, Integer, MetaData, Table, insert, select
from sqlalchemy.exc import StatementError

from persistence.columns import Exact, Moment

EACH = Table(
    "each",
    MetaData(),
    Column("number", Integer, primary_key=True),
    Column("moment", Moment),
    Column("exact", Exact),
)

YEARS = range(1900, 2200)
MOMENTS = st.builds(
    lambda moment, year: moment.replace(year=year, day=min(moment.day, 28)),
    st.datetimes(timezones=st.timezones()),
    st.sampled_from(YEARS),
)
NUMBERS = st.decimals(allow_nan=False, allow_infinity=False, places=6, min_value=-(10**12), max_value=10**12)


@pytest.fixture
def filled(bare_engine: Engine) -> Iterator[Engine]:
    EACH.create(bare_engine)
    yield bare_engine
    EACH.drop(bare_engine)


def there_and_back(engine: Engine, column: Column[Any], value: object) -> object:
    with engine.begin() as connection:
        number = connection.execute(insert(EACH).values({column: value})).inserted_primary_key
        assert number is not None
        return connection.execute(select(column).where(EACH.c.number == number[0])).scalar_one()


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=60)
@given(moment=MOMENTS)
def test_a_moment_of_any_zone_comes_back_in_utc(filled: Engine, moment: datetime) -> None:
    back = there_and_back(filled, EACH.c.moment, moment)
    assert isinstance(back, datetime)
    assert (back, back.tzinfo) == (moment.astimezone(UTC), UTC)


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=60)
@given(number=NUMBERS)
def test_a_number_comes_back_with_its_zeros(filled: Engine, number: Decimal) -> None:
    back = there_and_back(filled, EACH.c.exact, number)
    assert (back, str(back)) == (number, format(number, "f")) or number == 0


@pytest.mark.parametrize(
    ("kilograms", "pounds"), [("82.5", "181.88"), ("0.45359237", "1"), ("0.1", "0.2"), ("1e2", "1E-7")]
)
def test_what_no_binary_fraction_holds_adds_up_exactly(filled: Engine, kilograms: str, pounds: str) -> None:
    numbers = [Decimal(kilograms), Decimal(pounds)]
    back = [there_and_back(filled, EACH.c.exact, number) for number in numbers]
    assert back[0] + back[1] == sum(numbers)  # type: ignore[operator]  # a column's value has no type


@pytest.mark.parametrize("number", ["NaN", "Infinity", "-Infinity"])
def test_a_number_that_is_none_is_refused(filled: Engine, number: str) -> None:
    with pytest.raises(StatementError, match="not finite"):
        there_and_back(filled, EACH.c.exact, Decimal(number))


def test_a_moment_without_a_zone_is_refused(filled: Engine) -> None:
    with pytest.raises(StatementError, match="without a zone"):
        there_and_back(filled, EACH.c.moment, datetime(2026, 3, 2, 12))  # noqa: DTZ001 - what is refused


def test_moments_sort_as_time_does_whatever_their_zones(filled: Engine) -> None:
    noon = datetime(2026, 3, 2, 12, tzinfo=UTC)
    moments = [noon + timedelta(microseconds=step) for step in (0, 1, 999_999, 1_000_000)]
    with filled.begin() as connection:
        for hours, moment in zip((-8, 14, 0, 5), reversed(moments), strict=True):
            at = moment.astimezone(timezone(timedelta(hours=hours)))
            connection.execute(insert(EACH).values(moment=at))
        assert list(connection.execute(select(EACH.c.moment).order_by(EACH.c.moment)).scalars()) == moments
        later = select(EACH.c.moment).where(EACH.c.moment > noon).order_by(EACH.c.moment)
        assert list(connection.execute(later).scalars()) == moments[1:]
