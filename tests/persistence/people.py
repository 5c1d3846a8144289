"""An invented coach and her clients, and small steps with which a test lets them speak and be answered."""

from collections.abc import Callable, Iterable
from datetime import UTC, date, datetime, time, timedelta
from uuid import uuid4

from domain.incoming import FromChat, Heard, Text
from domain.outcome import Outcome
from domain.programme import Prescription, Programme, Range, Rotation, Workout
from domain.state import State
from persistence.inbox import Received
from persistence.prepared import PreparedClient, PreparedCoach, PreparedSheet, Roster
from persistence.store import Store

NOON = datetime(2026, 3, 2, 12, tzinfo=UTC)
LEASE_SECONDS = 30.0

Seen = tuple[State, Heard | None]


def after(**passed: float) -> datetime:
    """Return the moment so long after noon."""
    return NOON + timedelta(**passed)


def programme(name: str = "Harbour Base", *, high: int = 8) -> Programme:
    """Return a programme of one exercise."""
    dips = Prescription(exercise="Dip", counted="added", range=Range(low=5, high=high))
    return Programme(
        name=name,
        schedule=Rotation(every_days=3, order=("Push",)),
        workouts=(Workout(name="Push", prescriptions=(dips,)),),
    )


def roster(*clients: str, sheets: Iterable[Programme] = (programme(),)) -> Roster:
    """Return the coach Ilse with clients of these names."""
    return Roster(
        coaches=(PreparedCoach("Ilse", "Europe/Amsterdam", "kg", "telegram:1"),),
        sheets=tuple(PreparedSheet(each, f"the sheet of {each.name}") for each in sheets),
        clients=tuple(client(name) for name in clients),
    )


def client(name: str, chat: str | None = None) -> PreparedClient:
    """Return a client of Ilse's."""
    return PreparedClient(
        name=name,
        coach="Ilse",
        programme="Harbour Base",
        unit="kg",
        zone="Europe/Lisbon",
        starts=date(2026, 3, 2),
        remind_at=time(8),
        chat=chat or f"telegram:{name}",
    )


def settled(store: Store, *clients: str) -> dict[str, int]:
    """Put Ilse and her clients into the store, with nothing left to do; return everybody's number by name."""
    loaded = store.load_roster(roster(*clients), NOON)
    work_all(store, NOON, lambda _state, _heard: Outcome())
    return {each.person.name: each.person.number for each in loaded}


def text(chat: str, words: str, key: str, at: datetime = NOON) -> Received:
    """Return something typed in a chat; the platform's key of the message is `key`, too."""
    return received(chat, Text(text=words, key=key), key, at)


def received(chat: str, incoming: FromChat, key: str, at: datetime = NOON) -> Received:
    """Return something that came in from a chat."""
    return Received("telegram", f"{chat}/{key}", chat, at, incoming)


def work_all(store: Store, now: datetime, decide: Callable[[State, Heard | None], Outcome]) -> list[Seen]:
    """Do all there is to do at `now`; return what the decisions were shown."""
    seen: list[Seen] = []

    def noting(state: State, heard: Heard | None) -> Outcome:
        seen.append((state, heard))
        return decide(state, heard)

    while (lease := store.claim_person(now, LEASE_SECONDS)) is not None:
        while store.work(lease, now, noting):
            pass
    return seen


def work_once(store: Store, now: datetime, decide: Callable[[State, Heard | None], Outcome]) -> Seen:
    """Do the one thing there is to do at `now`; return what the decision was shown."""
    seen = work_all(store, now, decide)
    assert len(seen) == 1
    return seen[0]


def state_of(store: Store, chat: str, now: datetime = NOON) -> State:
    """Return the state of whoever writes in `chat`, by letting them say something that changes nothing."""
    store.receive([text(chat, "?", uuid4().hex, now)])
    state, _ = work_once(store, now, lambda _state, _heard: Outcome())
    return state
