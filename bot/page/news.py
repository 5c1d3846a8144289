"""News for the browsers: what has happened, in order, for each to read on from where it was.

It goes out as server-sent events (https://html.spec.whatwg.org/multipage/server-sent-events.html). A browser
that was away says what it has had last, and gets the rest; where that is no longer known, it is told to look
at everything anew.
"""

import asyncio
import json
import secrets
from collections import deque
from collections.abc import AsyncIterator
from typing import Any, NamedTuple

KEPT = 5000
"""How much news is kept for browsers that come back. The house's own choice."""

QUIET_SECONDS = 15.0
"""After so long without news a sign of life is sent, so that a lost connection is noticed."""

RETRY_MILLISECONDS = 500


class _Item(NamedTuple):
    number: int
    text: str


class News:
    """What has happened since the page was started."""

    def __init__(self) -> None:
        """Begin with no news, under a name that no other start of the page has."""
        self.name = secrets.token_hex(4)
        self._items: deque[_Item] = deque(maxlen=KEPT)
        self._count = 0
        self._more = asyncio.Event()
        self._closed = False

    @property
    def last(self) -> str:
        """What a browser that knows all of it has had last."""
        return f"{self.name}-{self._count}"

    def tell(self, kind: str, **facts: Any) -> None:
        """Add an item; `facts` are plain JSON."""
        self._count += 1
        data = json.dumps(facts, ensure_ascii=False, separators=(",", ":"))
        text = f"event: {kind}\nid: {self.last}\ndata: {data}\n\n"
        self._items.append(_Item(self._count, text))
        self._wake()

    def close(self) -> None:
        """Let every reader come to its end."""
        self._closed = True
        self._wake()

    async def since(self, had: str | None) -> AsyncIterator[str]:
        """Yield what has come since, as it goes over the line, and then whatever comes, until closed."""
        yield f"retry: {RETRY_MILLISECONDS}\n\n"
        at = self._number(had)
        while not self._closed:
            if at is None or (self._items and at < self._items[0].number - 1):
                at = self._count
                yield f"event: anew\nid: {self.last}\ndata: {{}}\n\n"
            waiting = self._more
            behind = min(self._count - at, len(self._items))
            fresh = [self._items[place] for place in range(len(self._items) - behind, len(self._items))]
            if fresh:
                at = fresh[-1].number
                yield "".join(item.text for item in fresh)
                continue
            try:
                async with asyncio.timeout(QUIET_SECONDS):
                    await waiting.wait()
            except TimeoutError:
                yield ": still here\n\n"

    def _wake(self) -> None:
        self._more.set()
        self._more = asyncio.Event()

    def _number(self, had: str | None) -> int | None:
        """Return the number of what was had last; None where that is not known here."""
        name, _, number = (had or "").rpartition("-")
        if name != self.name or not number.isdecimal() or int(number) > self._count:
            return None
        return int(number)
