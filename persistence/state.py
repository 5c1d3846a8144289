"""Loads one person's whole state, as the domain takes it.

Every query goes by an index and is bounded, so that the time does not grow with the years: the newest
`ENTRIES` sets that count and `WORKOUTS` workouts, by their days: an old journal that is brought in is older
than what was told before. That is several years of a rotation with rest days, and far more than any
comparison looks back.
"""

import secrets
from collections import defaultdict
from dataclasses import replace
from typing import Any

from sqlalchemy import Connection, Integer, Row, bindparam, select

from domain.coach_memory import CoachMemory
from domain.entry_order import in_order
from domain.incoming import CoachOrder, Heard, JournalSent, Started, Text, Undone
from domain.journal import Alert, AlertReason, Entry, ExerciseHold, Words, WorkoutRecord
from domain.memory import ClientMemory
from domain.parts import ClientLine
from domain.sets import TrainingSet
from domain.state import (
    WORDS_SEEN,
    BothState,
    Client,
    ClientState,
    Coach,
    CoachState,
    Invitation,
    Offer,
    Standing,
    State,
    StrangerState,
)
from persistence.coaching import coaches, notes, offered, open_invitations
from persistence.erasure import is_unsent
from persistence.past import holds_ever, matters_ever
from persistence.people import code_hash
from persistence.programmes import Programmes
from persistence.statements import Prepared
from persistence.tables import (
    AlertRow,
    EntryRow,
    HoldRow,
    InvitationRow,
    OfferRow,
    PersonRow,
    ProgrammeRow,
    WordsRow,
    WorkoutRow,
)

ENTRIES = 1_000
WORKOUTS = 400
ALL = 2**31 - 1
"""More than there can be of anything."""

_LONGEST_CODE = 100


_COACH = Prepared(
    select(PersonRow.number, PersonRow.name, PersonRow.zone, PersonRow.unit, PersonRow.coach_memory).where(
        PersonRow.number == bindparam("coach")
    )
)
_WORKOUTS = Prepared(
    select(
        WorkoutRow.number,
        WorkoutRow.programme,
        WorkoutRow.name,
        WorkoutRow.day,
        WorkoutRow.state,
        WorkoutRow.round,
        WorkoutRow.skipped,
    )
    .where(WorkoutRow.client == bindparam("client"))
    .order_by(WorkoutRow.day.desc(), WorkoutRow.number.desc())
    .limit(bindparam("most", type_=Integer))
)
_ENTRIES = Prepared(
    select(
        EntryRow.number,
        EntryRow.workout,
        EntryRow.message,
        EntryRow.at,
        EntryRow.place,
        EntryRow.exercise,
        EntryRow.load,
        EntryRow.unit,
        EntryRow.load_kind,
        EntryRow.reps,
        EntryRow.seconds,
        EntryRow.lowering_only,
        EntryRow.to_failure,
        EntryRow.rir,
        EntryRow.day,
    )
    .where(
        EntryRow.client == bindparam("client"),
        EntryRow.superseded_by.is_(None),
        EntryRow.taken_back_at.is_(None),
    )
    .order_by(EntryRow.day.desc(), EntryRow.number.desc())
    .limit(bindparam("most", type_=Integer))
)
_HELD = (
    select(HoldRow.client, HoldRow.number, HoldRow.exercise, HoldRow.place, HoldRow.side, HoldRow.since)
    .where(HoldRow.lifted_on.is_(None))
    .order_by(HoldRow.client, HoldRow.number)
)
_HOLDS = Prepared(_HELD.where(HoldRow.client == bindparam("client")))
_ALERTS = Prepared(
    select(AlertRow.number, AlertRow.reason, AlertRow.exercise, AlertRow.evidence, AlertRow.opened_at)
    .where(AlertRow.client == bindparam("client"), AlertRow.settled_at.is_(None))
    .order_by(AlertRow.number)
)
_OFFER = Prepared(
    select(OfferRow.to, OfferRow.at, OfferRow.with_notes).where(OfferRow.client == bindparam("client"))
)


_WORDS = Prepared(
    select(WordsRow.number, WordsRow.writer, WordsRow.name, WordsRow.text, WordsRow.at, WordsRow.alert)
    .where(WordsRow.client == bindparam("client"))
    .order_by(WordsRow.number.desc())
    .limit(bindparam("most", type_=Integer))
)


def load(connection: Connection, person: Row[Any], heard: Heard | None, programmes: Programmes) -> State:
    """Return the state of the person whose row this is, for the decision on `heard`."""
    coach = _coach_state(connection, person, heard, programmes) if person.is_coach else None
    client = _client_state(connection, person, heard, programmes) if person.is_client else None
    if coach is not None and client is not None:
        return BothState(replace(coach, is_client=True), client)
    code = _code(heard)
    is_brought = heard is not None and isinstance(heard.incoming, Started)
    brought = _invitation(connection, code, programmes) if is_brought and code else None
    if coach is not None:
        return replace(coach, invitation=brought)
    if client is not None:
        return replace(client, invitation=brought)
    return StrangerState(
        person.number,
        _invitation(connection, code, programmes) if code else None,
        person.erased_at,
        person.erased_at is not None and is_unsent(connection, person),
    )


def _client_state(
    connection: Connection, person: Row[Any], heard: Heard | None, programmes: Programmes
) -> ClientState:
    state = client_state(connection, person, programmes, whole=_needs_all(person, heard))
    is_order = heard is not None and isinstance(heard.incoming, CoachOrder)
    return replace(state, **of_coaches(connection, person)) if is_order else state


def client_state(
    connection: Connection,
    person: Row[Any],
    programmes: Programmes,
    *,
    whole: bool = False,
) -> ClientState:
    """Return the state of a client, with the recent past alone or with the `whole` journal."""
    number: int = person.number
    memory = person.client_memory or ClientMemory()
    before = {each.programme for each in memory.by_coach if each.programme is not None}
    return ClientState(
        client=_client(connection, person, programmes),
        memory=memory,
        former=tuple(programmes.find(connection, before).values()) if before else (),
        workouts=_workouts(connection, number, ALL if whole else WORKOUTS),
        entries=_entries(connection, number, ALL if whole else ENTRIES, memory),
        holds=tuple(_hold(row) for row in _HOLDS(connection, {"client": number})),
        alerts=_alerts(connection, number),
        holds_ever=holds_ever(connection, number) if whole else (),
        matters_ever=matters_ever(connection, number) if whole else (),
        words=_words(connection, number, ALL if whole else WORDS_SEEN),
        programmes=programmes.newest(connection, person.coach),
    )


def of_coaches(connection: Connection, person: Row[Any]) -> dict[str, Any]:
    """Return what a decision on a coach's order needs besides: the coach's notes, and an open offer."""
    row = _OFFER(connection, {"client": person.number}).first()
    to = coach_of(connection, row.to) if row else None
    return {
        "notes": notes(connection, person.coach, person.number),
        "offer": Offer(row.to, to.name, row.at, row.with_notes) if row and to else None,
        "offered_to": to,
    }


def coach_of(connection: Connection, number: int) -> Coach:
    """Return the coach of that number."""
    return _coach(_COACH(connection, {"coach": number}).one())


def _coach(row: Any) -> Coach:
    memory: CoachMemory = row.coach_memory or CoachMemory()
    return Coach(row.number, row.name, row.zone, row.unit, memory.hours, memory.tell_after)


def _client(connection: Connection, person: Row[Any], programmes: Programmes) -> Client:
    programme = None
    if person.programme is not None:
        programme = programmes.find(connection, {person.programme})[person.programme]
    return Client(
        number=person.number,
        name=person.name,
        coach=coach_of(connection, person.coach),
        unit=person.unit,
        zone=person.zone,
        remind_at=person.remind_at,
        starts=person.starts,
        equipment=person.equipment,
        programme=programme,
        body_mass=person.body_mass,
        own_names=person.own_names,
    )


def _workouts(connection: Connection, client: int, most: int) -> tuple[WorkoutRecord, ...]:
    rows = _WORKOUTS(connection, {"client": client, "most": most})
    return tuple(sorted((WorkoutRecord(*row) for row in rows), key=lambda each: (each.on, each.number)))


def _needs_all(person: Row[Any], heard: Heard | None) -> bool:
    """Return whether a decision is about an old journal as a whole: held against this one, or taken out."""
    match heard.incoming if heard else None:
        case JournalSent(step="look" | "begin"):
            return True
        case Undone(change=change):
            memory = person.client_memory or ClientMemory()
            return any(each.change == change for each in memory.brought_in)
        case _:
            return False


def _entries(connection: Connection, client: int, most: int, memory: ClientMemory) -> tuple[Entry, ...]:
    rows = _ENTRIES(connection, {"client": client, "most": most})
    entries = (
        Entry(number, workout, message, TrainingSet(*done), at, place)
        for number, workout, message, at, place, *done in rows
    )
    return in_order(entries, memory)


def _hold(row: Any) -> ExerciseHold:
    return ExerciseHold(row.number, row.exercise, row.place, row.side, row.since)


def _alerts(connection: Connection, client: int) -> tuple[Alert, ...]:
    rows = _ALERTS(connection, {"client": client})
    return tuple(Alert(*row) for row in rows)


def _words(connection: Connection, client: int, most: int) -> tuple[Words, ...]:
    rows = _WORDS(connection, {"client": client, "most": most})
    return tuple(Words(*row) for row in reversed(rows))


def _coach_state(
    connection: Connection, person: Row[Any], heard: Heard | None, programmes: Programmes
) -> CoachState:
    clients = _clients(connection, person.number)
    return CoachState(
        coach=_coach(person),
        memory=person.coach_memory or CoachMemory(),
        clients=_client_lines(connection, clients),
        programmes=programmes.newest(connection, person.number),
        fresh_code=secrets.token_urlsafe(16),
        strength={each.number: each.client_memory.strength for each in clients if each.client_memory},
        tallies={
            each.number: each.client_memory.tally
            for each in clients
            if each.client_memory and each.client_memory.tally
        },
        notes=notes(connection, person.number),
        coaches=coaches(connection, person.number),
        invitations=open_invitations(connection, person.number, heard.at) if heard else (),
        offered=offered(connection, person.number),
        standings=_standings(connection, clients, programmes),
    )


def _standings(connection: Connection, clients: list[Any], programmes: Programmes) -> dict[int, Standing]:
    numbers = {each.programme_number for each in clients if each.programme_number is not None}
    stored = programmes.find(connection, numbers)
    standings = {}
    for each in clients:
        memory: ClientMemory = each.client_memory or ClientMemory()
        standings[each.number] = Standing(
            programme=stored.get(each.programme_number),
            done=memory.tally.done if memory.tally else (),
            swaps=tuple((swap.exercise, swap.instead) for swap in memory.swaps),
        )
    return standings


def _clients(connection: Connection, coach: int) -> list[Any]:
    last_workout = (
        select(WorkoutRow.day)
        .where(WorkoutRow.client == PersonRow.number, WorkoutRow.state.in_(("open", "done")))
        .order_by(WorkoutRow.day.desc(), WorkoutRow.number.desc())
        .limit(1)
        .scalar_subquery()
    )
    clients = connection.execute(
        select(
            PersonRow.number,
            PersonRow.name,
            PersonRow.remind_at,
            PersonRow.client_memory,
            ProgrammeRow.name.label("programme"),
            PersonRow.programme.label("programme_number"),
            last_workout.label("last_workout"),
        )
        .outerjoin(ProgrammeRow, ProgrammeRow.number == PersonRow.programme)
        .where(PersonRow.coach == coach, PersonRow.is_client)
        .order_by(PersonRow.number)
    )
    return list(clients)


def _client_lines(connection: Connection, clients: list[Any]) -> tuple[tuple[int, ClientLine], ...]:
    numbers = [client.number for client in clients]
    alerts: defaultdict[int, list[tuple[AlertReason, str | None]]] = defaultdict(list)
    for number, reason, exercise in connection.execute(
        select(AlertRow.client, AlertRow.reason, AlertRow.exercise)
        .where(AlertRow.client.in_(numbers), AlertRow.settled_at.is_(None))
        .order_by(AlertRow.client, AlertRow.number)
    ):
        alerts[number].append((reason, exercise))
    held: defaultdict[int, list[str]] = defaultdict(list)
    for row in connection.execute(_HELD.where(HoldRow.client.in_(numbers))):
        held[row.client].append(row.exercise)
    return tuple((client.number, _client_line(client, alerts, held)) for client in clients)


def _client_line(
    client: Any, alerts: dict[int, list[tuple[AlertReason, str | None]]], held: dict[int, list[str]]
) -> ClientLine:
    memory: ClientMemory = client.client_memory or ClientMemory()
    return ClientLine(
        name=client.name,
        programme=client.programme,
        last_workout=client.last_workout,
        due_on=memory.due_on,
        remind_at=client.remind_at,
        open_alerts=tuple(alerts.get(client.number, ())),
        held=tuple(held.get(client.number, ())),
        paused=memory.paused,
        left=memory.left_at is not None,
        joining=memory.joining is not None,
        to_release=memory.clearance is not None,
        ill_on=memory.ill_since(client.last_workout),
        eager=tuple(each.what for each in memory.eager),
        tried=tuple((each.remedy, each.result) for each in memory.tried),
    )


def _code(heard: Heard | None) -> str | None:
    """Return what may be an invitation's code: a link's, or a single word typed by hand."""
    match heard.incoming if heard else None:
        case Started(code=code):
            return code
        case Text(text=text) if len(text) <= _LONGEST_CODE and len(text.split()) == 1:
            return text.strip()
        case _:
            return None


def _invitation(connection: Connection, code: str, programmes: Programmes) -> Invitation | None:
    """Return the invitation of this code, locked: of two who take it up at once, one sees it used."""
    row = connection.execute(
        select(InvitationRow)
        .where(InvitationRow.code_hash == code_hash(code), InvitationRow.revoked_at.is_(None))
        .with_for_update()
    ).first()
    if row is None:
        return None
    programme = None
    if row.programme is not None:
        programme = programmes.find(connection, {row.programme})[row.programme]
    return Invitation(
        code=code,
        name=row.name,
        expires=row.expires,
        coach=None if row.coach is None else coach_of(connection, row.coach),
        programme=programme,
        used=row.used_by is not None,
        as_coach=row.as_coach,
        person=row.person,
    )
