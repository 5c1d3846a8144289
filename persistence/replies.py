"""What a message points back at: the one that it answers or was before, and the sets which that has recorded.

Each step is one look into an index, however old the message is.
"""

from collections.abc import Collection, Sequence

from sqlalchemy import Connection, bindparam, or_, select

from domain.incoming import Edited, FromCoach, FromDelivery, ReplyTo, Text
from domain.parts import WORDS_PASSED_ON, AlertPart, Notice, Part, Question
from persistence.statements import Prepared
from persistence.tables import EntryRow, InboxRow, OutboxRow, SentKeyRow

_VERSIONS = (
    select(InboxRow.number, InboxRow.incoming)
    .where(
        InboxRow.chat == bindparam("chat"),
        InboxRow.message_key == bindparam("message_key"),
        InboxRow.number < bindparam("before"),
    )
    .limit(1)
)
_FIRST_VERSION = Prepared(_VERSIONS.order_by(InboxRow.number))
_LAST_VERSION = Prepared(_VERSIONS.order_by(InboxRow.number.desc()))
_SENT = Prepared(
    select(OutboxRow.about_message, OutboxRow.parts)
    .join(SentKeyRow, SentKeyRow.outbox == OutboxRow.number)
    .where(
        SentKeyRow.chat == bindparam("chat"),
        SentKeyRow.message_key == bindparam("message_key"),
        OutboxRow.person == bindparam("person"),
    )
)
_LAST_SAID = Prepared(
    select(OutboxRow.number, OutboxRow.about_message)
    .where(
        OutboxRow.person == bindparam("person"), or_(OutboxRow.edits.is_(None), OutboxRow.weight != "nudge")
    )
    .order_by(OutboxRow.number.desc())
    .limit(1)
)
_CAUSE = Prepared(
    select(InboxRow.number, InboxRow.incoming, InboxRow.chat, InboxRow.message_key).where(
        InboxRow.number == bindparam("message")
    )
)
_MADE = Prepared(
    select(EntryRow.number, EntryRow.place).where(
        EntryRow.message == bindparam("message"), EntryRow.client == bindparam("client")
    )
)


def with_reply(connection: Connection, said: Text, chat: str | None, number: int, person: int) -> Text:
    """Return what was typed (inbox message `number`) with what it answers, where that is known."""
    reply = _reply_to(connection, said.replies_to, chat, number, person)
    return said if reply is None else said.model_copy(update={"reply": reply})


def with_original(
    connection: Connection, edited: Edited, chat: str | None, number: int, person: int
) -> Edited:
    """Return the edit with the message as first sent, its text as it last stood, and what came of it."""
    names = {"chat": chat, "message_key": edited.key, "before": number}
    first = _FIRST_VERSION(connection, names).first()
    last = _LAST_VERSION(connection, names).first()
    if first is None or last is None:
        return edited
    made = _MADE(connection, {"message": first.number, "client": person})
    own = {entry.number for entry in made}
    replies_to = first.incoming.replies_to if isinstance(first.incoming, Text) else None
    return edited.model_copy(
        update={
            "original": first.number,
            "before": last.incoming.text if isinstance(last.incoming, Text | Edited) else None,
            "places": tuple(sorted({entry.place or entry.number for entry in made} & own)),
            "reply": _reply_to(connection, replies_to, chat, first.number, person),
            "answered": _answer(connection, {first.number, last.number}, person),
        }
    )


def _answer(connection: Connection, messages: Collection[int], person: int) -> int | None:
    """Return the number of the bot's answer to one of these messages, where nothing was said since."""
    last = _LAST_SAID(connection, {"person": person}).first()
    return last.number if last is not None and last.about_message in messages else None


def _reply_to(
    connection: Connection, key: str | None, chat: str | None, before: int, person: int
) -> ReplyTo | None:
    """Return the message known by `key` in this chat: an own one, or one of the bot's."""
    if key is None or chat is None:
        return None
    names = {"chat": chat, "message_key": key, "before": before, "person": person}
    own = _FIRST_VERSION(connection, names).first()
    if own is not None:
        return ReplyTo(message=own.number, places=_places(connection, own.number, person))
    sent = _SENT(connection, names).first()
    return None if sent is None else came_of(connection, sent.about_message, sent.parts, person)


def came_of(connection: Connection, about: int | None, parts: Sequence[Part], person: int) -> ReplyTo:
    """Return what is known of a message of the bot's of these parts, which came of inbox message `about`."""
    cause = None if about is None else _as_first_sent(connection, about)
    of = {part.of for part in parts if isinstance(part, AlertPart | Notice) and part.of}
    return ReplyTo(
        message=cause,
        places=() if cause is None else _places(connection, cause, person),
        questions=tuple(part.number for part in parts if isinstance(part, Question) and part.number),
        client=of.pop() if len(of) == 1 else None,
        alerts=tuple(part.number for part in parts if isinstance(part, AlertPart) and part.number),
        is_words=any(_passes_words_on(part) for part in parts),
    )


def _passes_words_on(part: Part) -> bool:
    match part:
        case AlertPart(reason=reason):
            return reason == "question"
        case Notice(topic=topic):
            return topic in WORDS_PASSED_ON
        case _:
            return False


def _as_first_sent(connection: Connection, message: int) -> int:
    """Return the inbox number of what `message` was before it was edited, if it was."""
    cause = _CAUSE(connection, {"message": message}).one()
    incoming: Text | Edited | FromCoach | FromDelivery = cause.incoming
    if not isinstance(incoming, Edited):
        return message
    names = {"chat": cause.chat, "message_key": cause.message_key, "before": message}
    first = _FIRST_VERSION(connection, names).first()
    return message if first is None else int(first.number)


def _places(connection: Connection, message: int, client: int) -> tuple[int, ...]:
    """Return the places of the entries that a message has recorded or put right."""
    made = _MADE(connection, {"message": message, "client": client})
    return tuple(sorted({entry.place or entry.number for entry in made}))
