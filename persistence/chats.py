"""A chat as it stands now: what somebody has said and what was said to them, for whoever shows it whole.

A message that was edited, or changed by a later one, is one message here, at its first place and as it stands
last. What is only a press, or an order from the desk, is none. It is read a stretch at a time, newest first:
a long past costs nothing.
"""

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime
from html import escape
from typing import Any

from sqlalchemy import Connection, Engine, bindparam, func, select

from domain.incoming import Document, Edited, Started, Text, Unsupported
from domain.parts import Part
from persistence.engine import reading
from persistence.tables import InboxRow, OutboxRow, SentKeyRow

OwnWords = Text | Edited | Document | Started | Unsupported
"""What a person can bring that has a place in the chat."""


@dataclass(frozen=True, slots=True)
class OwnMessage:
    """What somebody has said: its number in the inbox, when (aware, UTC), and as it stands by now.

    `key` is None where it cannot be edited. `answers` is the key of the message that it replies to.
    """

    number: int
    chat: str
    at: datetime
    key: str | None
    said: OwnWords
    is_edited: bool
    answers: str | None


@dataclass(frozen=True, slots=True)
class BotMessage:
    """What was said to somebody: its number in the outbox, when (aware, UTC), and as it stands by now.

    `newest` is the number of what it was last changed by, its own where it was not; `buttons` are (label,
    data) pairs. `key` is None where the platform gave it none.
    """

    number: int
    person: int
    newest: int
    at: datetime
    key: str | None
    words: str
    buttons: tuple[tuple[str, str], ...]
    parts: tuple[Part, ...]


@dataclass(frozen=True, slots=True)
class Before:
    """A place in a chat: all inbox and outbox numbers below these lie before it."""

    inbox: int
    outbox: int


@dataclass(frozen=True, slots=True)
class Stretch:
    """Messages in the order in which they came, and where what came before them ends; None: nothing did."""

    messages: tuple[OwnMessage | BotMessage, ...]
    before: Before | None


NEWEST = Before(2**62, 2**62)

_IN = (
    InboxRow.number,
    InboxRow.person,
    InboxRow.chat,
    InboxRow.message_key,
    InboxRow.incoming,
    InboxRow.received_at,
)
_OUT = (
    OutboxRow.number,
    OutboxRow.person,
    OutboxRow.parts,
    OutboxRow.sent_at,
    OutboxRow.words,
    OutboxRow.labels,
    OutboxRow.message_keys,
    OutboxRow.about_message,
    OutboxRow.edits,
)
_SAID = (
    select(*_IN)
    .where(
        InboxRow.person == bindparam("person"),
        InboxRow.number < bindparam("before"),
        InboxRow.chat.is_not(None),
    )
    .order_by(InboxRow.number.desc())
    .limit(bindparam("most"))
)
_SENT = (
    select(*_OUT)
    .where(
        OutboxRow.person == bindparam("person"),
        OutboxRow.number < bindparam("before"),
        OutboxRow.state == "sent",
    )
    .order_by(OutboxRow.number.desc())
    .limit(bindparam("most"))
)
_VERSIONS = (
    select(InboxRow.message_key, func.min(InboxRow.number), func.max(InboxRow.number))
    .where(
        InboxRow.chat == bindparam("chat"),
        InboxRow.message_key.in_(bindparam("message_keys", expanding=True)),
    )
    .group_by(InboxRow.message_key)
)
_ONE = select(*_OUT).where(OutboxRow.number == bindparam("number"))
_CHANGES = (
    select(*_OUT)
    .where(OutboxRow.edits.in_(bindparam("numbers", expanding=True)), OutboxRow.state == "sent")
    .order_by(OutboxRow.number)
)
_CAME_IN = (
    select(*_IN)
    .where(InboxRow.number > bindparam("after"), InboxRow.chat.is_not(None))
    .order_by(InboxRow.number)
)


class Chats:
    """The chats of one database, to be looked at. Each look is a unit that only reads."""

    def __init__(self, engine: Engine) -> None:
        """Look at a database that has been migrated."""
        self._engine = engine

    def stretch(self, person: int, before: Before, most: int) -> Stretch:
        """Return the messages among the `most` rows of the person's that lie right before a place."""
        with reading(self._engine) as connection:
            names = {"person": person, "most": most}
            said = connection.execute(_SAID, {**names, "before": before.inbox}).all()
            sent = connection.execute(_SENT, {**names, "before": before.outbox}).all()
            in_order = list(_in_order(said[::-1], sent[::-1]))
            taken = in_order[-most:]
            mine = [row for row, is_own in taken if is_own]
            theirs = [row for row, is_own in taken if not is_own]
            own = {each.number: each for each in _own(connection, mine)}
            bots = {each.number: each for each in _bots(connection, theirs)}
        found = (own.get(row.number) if is_own else bots.get(row.number) for row, is_own in taken)
        left = Before(
            min((row.number for row in mine), default=before.inbox),
            min((row.number for row in theirs), default=before.outbox),
        )
        more = len(in_order) > most or most in {len(said), len(sent)}
        return Stretch(tuple(each for each in found if each is not None), left if more else None)

    def said_since(self, after: int) -> tuple[OwnMessage, ...]:
        """Return what anybody has said since inbox number `after`; of an edit, what it has changed."""
        with reading(self._engine) as connection:
            rows = connection.execute(_CAME_IN, {"after": after}).all()
            return tuple(own for row in rows for own in _own(connection, [_first(connection, row)]))

    def last_said(self) -> int:
        """Return the number of what came in last."""
        with reading(self._engine) as connection:
            return connection.execute(select(func.max(InboxRow.number))).scalar() or 0

    def said(self, number: int) -> OwnMessage | None:
        """Return what was said in the inbox message of that number, as it stands; None where it is gone."""
        with reading(self._engine) as connection:
            row = connection.execute(select(*_IN).where(InboxRow.number == number)).first()
            return None if row is None or row.chat is None else next(_own(connection, [row]), None)

    def heard(self, number: int) -> BotMessage | None:
        """Return the bot's message of that number, or the one that it changed; None where it is gone."""
        with reading(self._engine) as connection:
            row = connection.execute(_ONE, {"number": number}).first()
            while row is not None and row.edits is not None:
                earlier = connection.execute(_ONE, {"number": row.edits}).first()
                if earlier is None or not _is_in_place(row, earlier):
                    break
                row = earlier
            return None if row is None or row.sent_at is None else next(_bots(connection, [row]), None)

    def words_of(self, chat: str, keys: Collection[str]) -> dict[str, str]:
        """Return the words, with markup, of the messages of a chat known by these keys."""
        names = {"chat": chat, "message_keys": list(keys)}
        with reading(self._engine) as connection:
            found = {row.message_key: row.words for row in connection.execute(_WORDS, names) if row.words}
            for row in connection.execute(_TYPED, names):
                found[row.message_key] = escape(row.incoming.text, quote=False)
        return found


_WORDS = (
    select(SentKeyRow.message_key, OutboxRow.words)
    .join(OutboxRow, OutboxRow.number == SentKeyRow.outbox)
    .where(
        SentKeyRow.chat == bindparam("chat"),
        SentKeyRow.message_key.in_(bindparam("message_keys", expanding=True)),
    )
)
_TYPED = (
    select(*_IN)
    .where(
        InboxRow.chat == bindparam("chat"),
        InboxRow.message_key.in_(bindparam("message_keys", expanding=True)),
    )
    .order_by(InboxRow.number)
)


def _in_order(said: Sequence[Any], sent: Sequence[Any]) -> Iterator[tuple[Any, bool]]:
    """Yield rows of both in the order in which they came, each with whether somebody said it.

    Where the clock stood still meanwhile, an answer comes before what was said after that which it answers.
    """
    here, there = 0, 0
    while here < len(said) or there < len(sent):
        if here == len(said) or there == len(sent):
            own_comes = there == len(sent)
        else:
            own_comes = _comes_first(said[here], sent[there])
        yield (said[here], True) if own_comes else (sent[there], False)
        here, there = here + own_comes, there + (not own_comes)


def _comes_first(said: Any, sent: Any) -> bool:
    """Return whether what somebody has said comes before what the bot has."""
    if said.received_at != sent.sent_at or sent.about_message is None:
        return bool(said.received_at <= sent.sent_at)
    return bool(said.number <= sent.about_message)


def _first(connection: Connection, row: Any) -> Any:
    """Return the row of a message as it was first sent."""
    if not isinstance(row.incoming, Edited):
        return row
    return connection.execute(_TYPED, {"chat": row.chat, "message_keys": [row.message_key]}).first()


def _own(connection: Connection, rows: Sequence[Any]) -> Iterator[OwnMessage]:
    """Yield what was said in these rows; an edit has no place of its own."""
    keys = [row.message_key for row in rows if row.message_key is not None]
    names = {"chat": rows[0].chat if rows else None, "message_keys": keys}
    spans = {key: (first, last) for key, first, last in connection.execute(_VERSIONS, names)} if keys else {}
    last_ones = [last for first, last in spans.values() if first != last]
    edits = select(InboxRow.number, InboxRow.incoming).where(InboxRow.number.in_(last_ones))
    newest = {row.number: row.incoming for row in connection.execute(edits)} if last_ones else {}
    for row in rows:
        first, last = spans.get(row.message_key, (row.number, row.number))
        if first != row.number or not isinstance(row.incoming, OwnWords):
            continue
        yield OwnMessage(
            row.number,
            row.chat,
            row.received_at,
            row.message_key,
            newest.get(last, row.incoming),
            is_edited=first != last or isinstance(row.incoming, Edited),
            answers=row.incoming.replies_to if isinstance(row.incoming, Text) else None,
        )


def _bots(connection: Connection, rows: Sequence[Any]) -> Iterator[BotMessage]:
    """Yield what was said in these rows, as changed since; what changes another has no place of its own."""
    known = {row.number: row for row in rows}
    others = {row.edits for row in rows if row.edits is not None} - known.keys()
    if others:
        earlier_ones = connection.execute(select(*_OUT).where(OutboxRow.number.in_(others)))
        known |= {row.number: row for row in earlier_ones}
    changes: dict[int, list[Any]] = {}
    asked = list(known)
    while asked:
        found = connection.execute(_CHANGES, {"numbers": asked}).all()
        for row in found:
            changes.setdefault(row.edits, []).append(row)
        asked = [row.number for row in found if row.number not in known]
        known |= {row.number: row for row in found}
    for row in rows:
        earlier = None if row.edits is None else known.get(row.edits)
        if earlier is None or not _is_in_place(row, earlier):
            yield _as_it_stands(row, changes)


def _is_in_place(row: Any, earlier: Any) -> bool:
    """Return whether a message has changed an earlier one where that stands, instead of coming after it."""
    return not row.message_keys or row.message_keys == earlier.message_keys


def _as_it_stands(row: Any, changes: dict[int, list[Any]]) -> BotMessage:
    newest, words, parts = row, row.words, row.parts
    waiting = list(changes.get(row.number, ()))
    while waiting:
        change = waiting.pop(0)
        if not _is_in_place(change, row):
            continue
        newest = change
        if change.message_keys:
            words, parts = change.words, change.parts
        elif change.words:
            words = f"{words}\n{change.words}"
        waiting = sorted([*waiting, *changes.get(change.number, ())], key=lambda each: each.number)
    buttons = tuple((label, f"{newest.number}:{index}") for index, label in enumerate(newest.labels))
    key = row.message_keys[0] if row.message_keys else None
    return BotMessage(row.number, row.person, newest.number, row.sent_at, key, words, buttons, parts)
