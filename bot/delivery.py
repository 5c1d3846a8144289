"""Delivery: what stands in the outbox is put into words and sent, in order for each chat.

What is unclear is decided by weight: an answer or an alert goes again, a nudge does not.
"""

import asyncio
from collections.abc import Callable
from datetime import datetime, timedelta
from typing import assert_never

from bot.channel import Final, Rendered, Sender, Sent, TryAgain
from bot.enclosing import Enclose, encloses
from bot.wording.alerts import label
from bot.wording.message import message_words
from bot.wording.reader import Reader
from persistence.leases import ChatLease
from persistence.outbox import Outgoing
from persistence.store import Store

LEASE_SECONDS = 120.0
LONGEST_WAIT = timedelta(minutes=30)

Watcher = Callable[[Outgoing, Rendered], None]
"""Called after each message that was sent."""


class Delivery:
    """Sends what is due, through `sender`."""

    def __init__(
        self,
        store: Store,
        sender: Sender,
        *,
        platform: str | None = None,
        clock: Callable[[], datetime],
        enclose: Enclose,
        watcher: Watcher | None = None,
    ) -> None:
        """Send for one `platform` (None: for all); `clock` gives the moment, aware.

        `enclose` makes what goes beside the words; it is called in a thread.
        """
        self._store = store
        self._sender = sender
        self._platform = platform
        self._clock = clock
        self._enclose = enclose
        self._watcher = watcher

    async def clear(self) -> int:
        """Send all that is due; return the number of messages tried."""
        tried = 0
        while True:
            lease = await asyncio.to_thread(
                self._store.claim_chat, self._clock(), LEASE_SECONDS, self._platform
            )
            if lease is None:
                return tried
            tried += await self._chat(lease)

    async def _chat(self, lease: ChatLease) -> int:
        tried = 0
        while True:
            outgoing = await asyncio.to_thread(self._store.next_message, lease, self._clock())
            if outgoing is None:
                return tried
            tried += 1
            if not await self._message(lease, outgoing):
                return tried

    async def _message(self, lease: ChatLease, outgoing: Outgoing) -> bool:
        """Send one message; return whether the chat goes on under this lease."""
        store, number = self._store, outgoing.number
        if outgoing.unclear and outgoing.say.weight == "nudge":
            return await asyncio.to_thread(
                store.failed, lease, number, "unclear", self._clock(), unreachable=False
            )
        rendered = render(outgoing)
        if encloses(outgoing.say.parts):
            rendered = await asyncio.to_thread(self._enclose, outgoing, rendered)
        if not await asyncio.to_thread(store.sending, lease, number, self._clock()):
            return False
        result = await self._sender.send(outgoing.chat, rendered)
        now = self._clock()
        match result:
            case Sent(message_keys=keys):
                labels = [text for text, _ in rendered.buttons]
                held = await asyncio.to_thread(
                    store.sent, lease, number, rendered.text_html, keys, labels, now
                )
                if self._watcher is not None:
                    self._watcher(outgoing, rendered)
                return held
            case TryAgain(after_seconds=seconds, surely_not_sent=surely):
                if not surely and outgoing.say.weight == "nudge":
                    return await asyncio.to_thread(
                        store.failed, lease, number, "unclear", now, unreachable=False
                    )
                await asyncio.to_thread(
                    store.try_again, lease, number, now + wait(seconds, outgoing.attempts), now
                )
                return False
            case Final(why=why):
                return await asyncio.to_thread(
                    store.failed, lease, number, why, now, unreachable=why != "refused"
                )
            case _:
                assert_never(result)


def render(outgoing: Outgoing) -> Rendered:
    """Put a message into words for the person it goes to."""
    reader = Reader(outgoing.name, outgoing.zone, outgoing.unit, is_coach=outgoing.is_coach)
    labels = [label(action) for action in outgoing.say.buttons]
    return Rendered(
        text_html=message_words(outgoing.say.parts, reader),
        buttons=tuple(zip(labels, outgoing.button_data, strict=True)),
    )


def wait(seconds: float, attempts: int) -> timedelta:
    """Return how long to wait before the next try: at least `seconds`, twice as long each time."""
    return min(max(timedelta(seconds=seconds), timedelta(seconds=2 ** min(attempts, 11))), LONGEST_WAIT)
