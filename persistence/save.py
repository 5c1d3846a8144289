"""Saves one decision whole: what it records, says, orders, remembers, and when to wake the person next.

Everything runs in the caller's transaction. A record that does not fit what is stored raises, so that the
whole decision is rolled back.
"""

from collections.abc import Mapping
from datetime import datetime
from typing import Any, assert_never
from uuid import uuid4

from sqlalchemy import Connection, Row, bindparam, update

from domain.coach_memory import CoachMemory
from domain.incoming import Heard, Reachable
from domain.memory import ClientMemory
from domain.outcome import (
    AlertNoted,
    AlertRaised,
    AlertSettled,
    Change,
    CoachKept,
    Erased,
    Forgotten,
    HandedOver,
    HoldLifted,
    HoldPlaced,
    InvitationRevoked,
    Invited,
    Joined,
    JournalTaken,
    JournalTakenOut,
    NoteForgotten,
    NoteKept,
    OfferKept,
    Outcome,
    Recorded,
    SettingsKept,
    SheetStored,
    TakenBack,
    WordsKept,
    WorkoutKept,
)
from domain.parts import Say
from domain.state import Client
from persistence import coaching, erasure, inbox, joining, journal, outbox
from persistence.programmes import store_sheet
from persistence.statements import Prepared
from persistence.tables import PersonRow

_PERSON = Prepared(update(PersonRow).where(PersonRow.number == bindparam("person")))


def save(
    connection: Connection,
    person: Row[Any],
    heard: Heard | None,
    outcome: Outcome,
    lease: Mapping[str, Any],
    now: datetime,
) -> tuple[int, list[tuple[int, Say]]]:
    """Save what was decided for the person whose row this is.

    Returns the person's number, which is another than before where a stranger turned out to be somebody
    prepared by a roster; and what is said, each with its number in the outbox, still to be noted as waiting.
    `lease` holds the columns of the person's lease as they are to be.
    """
    number: int = person.number
    about = outbox.About(heard.number, None) if heard else outbox.About(None, person.wake_at)
    kept: dict[str, Any] = {**lease, "wake_at": outcome.wake_at}
    if outcome.memory is not None:
        kept[_memory_column(outcome.memory)] = outcome.memory
    if outcome.other_memory is not None:
        kept["coach_memory"] = outcome.other_memory
    if heard is not None and isinstance(heard.incoming, Reachable):
        kept["unreachable_since"] = None if heard.incoming.reachable else heard.at
    for change in outcome.changes:
        if isinstance(change, Joined):
            number, kept = joining.join(connection, person, change, kept)
        elif isinstance(change, Erased):
            kept |= erasure.erase(connection, person, change.at)
            about = outbox.About()  # what was heard is gone as well, so nothing can point at it
        else:
            _change(connection, person, change, now)
    says = [say.model_copy(update={"to": number}) if say.to == person.number else say for say in outcome.says]
    cause = (str(heard.number) if heard else uuid4().hex) if outcome.orders else ""
    for place, order in enumerate(outcome.orders):
        key = f"{inbox.orders_of(number, cause)}:{place}"
        inbox.order(connection, order.to, order.incoming, key, now)
    _PERSON(connection, {"person": number, **kept})
    return number, outbox.add(connection, says, about, now)


def settings(client: Client) -> dict[str, Any]:
    """Return a client's settings as the columns that hold them."""
    return {
        "name": client.name,
        "coach": client.coach.number,
        "unit": client.unit,
        "zone": client.zone,
        "remind_at": client.remind_at,
        "starts": client.starts,
        "equipment": client.equipment,
        "programme": client.programme.number if client.programme else None,
        "body_mass": client.body_mass,
        "own_names": dict(client.own_names),
    }


def _memory_column(memory: ClientMemory | CoachMemory) -> str:
    match memory:
        case ClientMemory():
            return "client_memory"
        case CoachMemory():
            return "coach_memory"
        case _:
            assert_never(memory)


def _change(connection: Connection, person: Row[Any], change: Change, now: datetime) -> None:
    number: int = person.number
    match change:
        case Recorded():
            journal.record(connection, number, change)
        case TakenBack():
            journal.take_back(connection, number, change)
        case WorkoutKept(workout):
            journal.keep_workout(connection, number, workout)
        case JournalTaken():
            journal.bring_in(connection, number, person.coach, change)
        case JournalTakenOut():
            journal.take_out(connection, number, change)
        case HoldPlaced(hold):
            journal.place_hold(connection, number, hold)
        case HoldLifted():
            journal.lift_hold(connection, number, change)
        case AlertRaised(alert):
            journal.raise_alert(connection, number, person.coach, alert)
        case AlertNoted():
            journal.note_alert(connection, number, change)
        case AlertSettled():
            journal.settle_alert(connection, number, change)
        case WordsKept(words):
            journal.keep_words(connection, number, words)
        case SettingsKept(client):
            _PERSON(connection, {"person": number, **settings(client)})
        case CoachKept(coach):
            _PERSON(connection, {"person": number, "zone": coach.zone, "unit": coach.unit})
        case SheetStored(programme, sheet):
            store_sheet(connection, number, programme, sheet, now)
        case Invited(invitation):
            joining.invite(connection, invitation, now)
        case InvitationRevoked(key):
            coaching.revoke(connection, number, key, now)
        case NoteKept(note):
            coaching.keep_note(connection, number, note)
        case NoteForgotten(note):
            coaching.forget_note(connection, number, note)
        case OfferKept(offer):
            coaching.keep_offer(connection, number, offer)
        case HandedOver():
            coaching.hand_over(connection, number, person.coach, change)
        case Forgotten():
            erasure.forget(connection, person)
        case Joined() | Erased():
            raise TypeError(change)  # it changes who the person is, so `save` sees to it
        case _:
            assert_never(change)
