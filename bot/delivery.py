"""Delivery: what stands in the outbox is put into words and sent, in order for each chat.

What is unclear is decided by weight: an answer or an alert goes again, a nudge does not. What became of a
message is noted for as long as that takes: where the database is away just then, nothing else is begun
before it is back.
"""

import asyncio
import contextlib
import logging
from collections.abc import Callable
from dataclasses import replace
from datetime import datetime, timedelta
from typing import Any, assert_never

from bot.changing import deliver
from bot.channel import Delivered, Final, Rendered, Sender, Sent, TryAgain
from bot.enclosing import Enclose, encloses
from bot.faults import told
from bot.wording.alerts import label
from bot.wording.message import message_words
from bot.wording.notices import is_for_coach
from bot.wording.reader import Reader
from domain.once_sent import kept_of
from domain.parts import Notice, Part
from domain.pictures import ProgrammeProgress, Progress
from persistence.faults import DatabaseTrouble, NoRoomYet
from persistence.leases import ChatLease
from persistence.outbox import Outgoing
from persistence.pace import Pace
from persistence.store import Store

LEASE_SECONDS = 15.0
"""How long a worker that was lost holds a chat up. One that waits for an answer renews its lease."""
LONGEST_PAUSE = timedelta(minutes=30)
"""How long is waited at most between two tries, unless the platform asks for more."""
NUDGE_LASTS = timedelta(hours=12)
"""After that a nudge that could not be sent is dropped: its day is over."""
AWAY_SECONDS = 1.0
"""How long a database that is away is left alone before what became of a message is noted again."""

log = logging.getLogger(__name__)

Watcher = Callable[[Outgoing, Rendered], None]
"""Called after each message that was sent."""


class Delivery:
    """Sends what is due, through `sender`. Several tasks may `clear` at once, each a chat of its own."""

    def __init__(
        self,
        store: Store,
        sender: Sender,
        *,
        platform: str | None = None,
        pace: Pace | None = None,
        clock: Callable[[], datetime],
        enclose: Enclose,
        watcher: Watcher | None = None,
        on_claimed: Callable[[], None] = lambda: None,
    ) -> None:
        """Send for one `platform` (None: for all), at its `pace`; `clock` gives the moment, aware.

        `enclose` makes what goes beside the words; it is called in a thread. `on_claimed` is called when a
        chat was found to send into: there may be more.
        """
        self._store = store
        self._sender = sender
        self._platform = platform
        self._pace = pace
        self._clock = clock
        self._enclose = enclose
        self._watcher = watcher
        self._on_claimed = on_claimed
        self._begun: list[ChatLease] = []
        self._to_note = 0
        self._stopping = False
        self.room_at: datetime | None = None
        """When there is room for what waits, where the pace was used up as it was last looked for."""

    def stop(self) -> None:
        """Begin no further message, and let what cannot be noted be."""
        self._stopping = True

    async def clear(self) -> int:
        """Send all that is due; return the number of messages tried. Raises DatabaseTrouble."""
        tried = 0
        while (lease := await self._next_chat()) is not None:
            self._on_claimed()
            try:
                tried += await self._chat(lease)
            except DatabaseTrouble:
                self._begun.append(lease)
                raise
        return tried

    async def _next_chat(self) -> ChatLease | None:
        if self._stopping or self._to_note:
            return None
        if self._begun:
            return self._begun.pop()
        claim, self.room_at = self._store.claim_chat, None
        try:
            return await asyncio.to_thread(claim, self._clock(), LEASE_SECONDS, self._platform, self._pace)
        except NoRoomYet as full:
            self.room_at = full.until
            return None

    async def _chat(self, lease: ChatLease) -> int:
        tried = 0
        while True:
            outgoing = await asyncio.to_thread(self._store.next_message, lease, self._clock())
            if outgoing is None:
                return tried
            if self._stopping:
                await asyncio.to_thread(self._store.leave_chat, lease, self._clock())
                return tried
            tried += 1
            if not await self._message(lease, outgoing):
                return tried

    async def _message(self, lease: ChatLease, outgoing: Outgoing) -> bool:
        """Send one message; return whether the chat goes on under this lease."""
        store, number, is_nudge = self._store, outgoing.number, outgoing.say.weight == "nudge"
        if is_nudge and outgoing.unclear:
            return await self._give_up(lease, outgoing, "unclear")
        if is_nudge and outgoing.created_at + NUDGE_LASTS < self._clock():
            return await self._give_up(lease, outgoing, "too late")
        try:
            rendered = render(outgoing)
        except Exception as error:  # noqa: BLE001 one message without words must not hold up those behind it
            log.error("message %s cannot be put into words: %s", number, told(error))
            return await self._give_up(lease, outgoing, "no words")
        if encloses(outgoing.say.parts):
            rendered = await asyncio.to_thread(self._enclose, outgoing, rendered)
        if not await asyncio.to_thread(store.sending, lease, number, self._clock()):
            return False
        result = await self._send(lease, outgoing, rendered)
        now = self._clock()
        match result:
            case Sent(message_keys=keys):
                labels = [text for text, _ in rendered.buttons]
                kept = as_kept(outgoing)
                words = rendered.text_html if kept is outgoing else render(kept).text_html
                parts = None if kept is outgoing else kept.say.parts
                goes_on = await self._note(
                    store.sent, lease, number, words, keys, labels, now, parts=parts, spread=outgoing.spread
                )
                if self._watcher is not None:
                    self._watcher(outgoing, rendered)
                return goes_on
            case TryAgain(after_seconds=seconds, surely_not_sent=surely):
                if is_nudge and not surely:
                    return await self._give_up(lease, outgoing, "unclear")
                until = now + wait(seconds, outgoing.attempts)
                await self._note(store.try_again, lease, number, until, now)
                return False
            case Final(why="refused" as why):
                log.error("message %s to person %s was refused", number, lease.person)
                is_lost = outgoing.is_coach and outgoing.say.weight == "alert"
                instead = (Notice(topic="could not be shown"),) if is_lost else ()
                return await self._give_up(lease, outgoing, why, instead=instead)
            case Final(why=why):
                return await self._give_up(lease, outgoing, why, unreachable=True)
            case _:
                assert_never(result)

    async def _send(self, lease: ChatLease, outgoing: Outgoing, rendered: Rendered) -> Delivered:
        """Send a message, and keep the lease for as long as that takes."""
        under_way = asyncio.ensure_future(deliver(self._sender, outgoing, rendered))
        while not (await asyncio.wait({under_way}, timeout=LEASE_SECONDS / 3))[0]:
            with contextlib.suppress(DatabaseTrouble):
                await asyncio.to_thread(self._store.keep_chat, lease, self._clock())
        return await under_way

    async def _give_up(
        self,
        lease: ChatLease,
        outgoing: Outgoing,
        why: str,
        *,
        unreachable: bool = False,
        instead: tuple[Notice, ...] = (),
    ) -> bool:
        return await self._note(
            self._store.failed,
            lease,
            outgoing.number,
            why,
            self._clock(),
            unreachable=unreachable,
            instead=instead,
            spread=outgoing.spread,
        )

    async def _note(self, unit: Callable[..., bool], *facts: Any, **more: Any) -> bool:
        """Note what became of a message: forgotten, it would be sent a second time."""
        self._to_note += 1
        try:
            while True:
                try:
                    return await asyncio.to_thread(unit, *facts, **more)
                except DatabaseTrouble as fault:
                    if self._stopping:
                        raise
                    log.warning("what became of a message cannot be noted yet: %s", fault.why)
                    await asyncio.sleep(AWAY_SECONDS)
        finally:
            self._to_note -= 1


def render(outgoing: Outgoing) -> Rendered:
    """Put a message into words for the person it goes to."""
    reader = Reader(outgoing.name, outgoing.zone, outgoing.unit, is_coach=is_to_coach(outgoing))
    labels = [label(action) for action in outgoing.say.buttons]
    return Rendered(
        text_html=message_words(outgoing.say.parts, reader),
        buttons=tuple(zip(labels, outgoing.button_data, strict=True)),
    )


def is_to_coach(outgoing: Outgoing) -> bool:
    """Return whether a message is for a coach as such, not about the own training of one who trains, too."""
    if not (outgoing.is_coach and outgoing.is_client):
        return outgoing.is_coach
    return any(is_for_coach(part) or is_of_another(part, outgoing.name) for part in outgoing.say.parts)


def is_of_another(part: Part, name: str) -> bool:
    """Return whether a picture is of somebody else's training than that of the reader, called `name`."""
    return isinstance(part, Progress | ProgrammeProgress) and part.client != name


def as_kept(outgoing: Outgoing) -> Outgoing:
    """Return a message as it is kept once it was sent: the very same where there is nothing to leave out."""
    parts = kept_of(outgoing.say.parts)
    if parts == outgoing.say.parts:
        return outgoing
    return replace(outgoing, say=outgoing.say.model_copy(update={"parts": parts}))


def wait(seconds: float, attempts: int) -> timedelta:
    """Return how long to wait before the next try: at least `seconds`, and twice as long each time."""
    doubled = min(timedelta(seconds=2 ** min(attempts, 11)), LONGEST_PAUSE)
    return max(timedelta(seconds=seconds), doubled)
