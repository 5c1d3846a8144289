"""Ten minutes a day do for forty clients, and at the end of the week nothing is open."""

import asyncio

from sqlalchemy import select

from bot.commands.database import passing
from persistence.engine import reading
from persistence.tables import AlertRow, PersonRow
from tests.play.forty import Week, counts_of, of_week

MINUTES_A_DAY = 10


def test_a_week_with_forty_clients_is_settled_in_ten_minutes_a_day() -> None:
    with passing() as store:
        week = Week(store, seed=7)
        asyncio.run(week.live())
        with reading(store._engine) as connection:
            alerts = connection.execute(select(AlertRow.reason, AlertRow.settled_at)).all()
            people = connection.execute(select(PersonRow.client_memory).where(PersonRow.is_client)).scalars()
            waiting = [memory for memory in people if memory is not None and memory.clearance is not None]
    print(f"\n{counts_of(week)}")
    assert {alert.reason for alert in alerts} == {"stall", "pain", "question", "missed"}
    assert [alert.reason for alert in alerts if alert.settled_at is None] == []
    assert waiting == []
    days = of_week(week)
    assert len(days) == 7
    assert max(day.minutes for day in days.values()) < MINUTES_A_DAY
