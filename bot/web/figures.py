"""Health and figures for whoever watches over the bot: `/health` for a person or a supervisor, `/metrics` in
the words of Prometheus. Numbers only: nothing here knows a name or a message.
"""

import asyncio
import logging
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import datetime

from prometheus_client import CollectorRegistry, Counter, Histogram, generate_latest
from prometheus_client.core import GaugeMetricFamily
from prometheus_client.exposition import CONTENT_TYPE_LATEST
from starlette.applications import Starlette
from starlette.requests import Request
from starlette.responses import JSONResponse, Response
from starlette.routing import Route

from bot.channel import Rendered
from persistence.faults import StoreFault
from persistence.outbox import Outgoing
from persistence.queues import Queue, Queues
from persistence.store import Store

LATE_SECONDS = 60.0
"""Whoever wrote and has waited for longer than this finds the bot unwell."""

_BUCKETS = (0.1, 0.25, 0.5, 1, 2.5, 5, 10, 30, 60, 300, 3600)


class Figures:
    """What this worker has done, and what waits in the database for all of them."""

    def __init__(self, store: Store, clock: Callable[[], datetime]) -> None:
        """`clock` gives the moment, aware."""
        self._store = store
        self._clock = clock
        self._registry = CollectorRegistry(auto_describe=False)
        self._waited = Histogram(
            "kilopost_sent_after_seconds",
            "From what was decided to its arrival on the platform",
            ["weight"],
            buckets=_BUCKETS,
            registry=self._registry,
        )
        self._logged = Counter(
            "kilopost_log_records", "Warnings and errors in the log", ["level"], registry=self._registry
        )

    @property
    def application(self) -> Starlette:
        """What is to be served."""
        return Starlette(routes=[Route("/health", self._health), Route("/metrics", self._metrics)])

    def sent(self, outgoing: Outgoing, _rendered: Rendered) -> None:
        """Count a message that has been sent."""
        waited = (self._clock() - outgoing.created_at).total_seconds()
        self._waited.labels(outgoing.say.weight).observe(max(0.0, waited))

    @contextmanager
    def counting_log(self) -> Iterator[None]:
        """Count what is logged while this lasts."""
        handler = _Counting(self._logged)
        logging.getLogger().addHandler(handler)
        try:
            yield
        finally:
            logging.getLogger().removeHandler(handler)

    async def _health(self, _request: Request) -> Response:
        """200 where all is well, else 503: the database is away, or somebody waits for too long."""
        now = self._clock()
        try:
            waiting = await asyncio.to_thread(self._store.queues, now)
        except StoreFault as fault:
            return JSONResponse({"well": False, "database": type(fault).__name__}, status_code=503)
        seconds = {name: round(age, 1) for name, _, age in _of(waiting, now)}
        well = seconds["inbox"] <= LATE_SECONDS
        return JSONResponse({"well": well, "waits_for_seconds": seconds}, status_code=200 if well else 503)

    async def _metrics(self, _request: Request) -> Response:
        now = self._clock()
        try:
            waiting = await asyncio.to_thread(self._store.queues, now)
        except StoreFault:
            return Response(status_code=503)
        registry = CollectorRegistry(auto_describe=False)
        registry.register(_Waiting(waiting, now))
        return Response(
            generate_latest(self._registry) + generate_latest(registry),
            headers={"Content-Type": CONTENT_TYPE_LATEST},
        )


class _Waiting:
    """The queues as gauges."""

    def __init__(self, waiting: Queues, now: datetime) -> None:
        self._waiting = waiting
        self._now = now

    def collect(self) -> Iterator[GaugeMetricFamily]:
        """Yield the gauges; the library calls this."""
        lengths = GaugeMetricFamily("kilopost_queue_length", "How much waits", labels=["queue"])
        ages = GaugeMetricFamily("kilopost_queue_age_seconds", "How long the first waits", labels=["queue"])
        for name, length, age in _of(self._waiting, self._now):
            lengths.add_metric([name], length)
            ages.add_metric([name], age)
        yield from (lengths, ages)


class _Counting(logging.Handler):
    def __init__(self, counter: Counter) -> None:
        super().__init__(logging.WARNING)
        self._counter = counter

    def emit(self, record: logging.LogRecord) -> None:
        """Count one record."""
        self._counter.labels(record.levelname.lower()).inc()


def _of(waiting: Queues, now: datetime) -> Iterator[tuple[str, int, float]]:
    """Yield each queue's name, how many wait in it, and for how many seconds the first one does."""
    named: dict[str, Queue] = {"inbox": waiting.inbox, "wakes": waiting.wakes, "outbox": waiting.outbox}
    for name, queue in named.items():
        yield name, queue.length, max(0.0, (now - queue.since).total_seconds()) if queue.since else 0.0
