"""What is kept of a coach comes back: who needs her, her memory, codes and sheets."""

from datetime import date, time

from domain.coach_memory import CoachMemory
from domain.incoming import Heard
from domain.journal import Alert, ExerciseHold, WorkoutRecord
from domain.memory import (
    ClientMemory,
    EagerKept,
)
from domain.outcome import (
    AlertRaised,
    AlertSettled,
    HoldPlaced,
    Outcome,
    SheetStored,
    WorkoutKept,
)
from domain.parts import Eager
from domain.state import ClientState, CoachState, State
from persistence.store import Store
from tests.persistence.people import (
    NOON,
    after,
    programme,
    settled,
    state_of,
    text,
    work_all,
    work_once,
)

JUMP = Eager(
    rule="great jump",
    exercise="Dip",
    workout="Push",
    on=date(2026, 2, 27),
    at=NOON,
    facts={"percent": 12.5},
)


def test_a_coach_sees_who_needs_her_and_when_everybody_trained(store: Store) -> None:
    people = settled(store, "Noor", "Piet")

    def trained(state: State, _heard: Heard | None) -> Outcome:
        assert isinstance(state, ClientState)
        stored = state.programmes[0]
        return Outcome(
            changes=(
                WorkoutKept(WorkoutRecord(1, stored.number, "Push", date(2026, 2, 27), "done", 1)),
                WorkoutKept(WorkoutRecord(2, stored.number, "Push", date(2026, 3, 1), "missed", 1)),
                AlertRaised(Alert(1, "pain", "Dip", {}, NOON)),
                AlertRaised(Alert(2, "missed", None, {}, NOON)),
                AlertSettled(2, "seen", people["Ilse"], NOON),
                HoldPlaced(ExerciseHold(1, "Dip", "elbow", "left", date(2026, 2, 27))),
            ),
            memory=ClientMemory(
                last_workout=2, due_on=date(2026, 3, 4), paused=True, eager=(EagerKept(workout=1, what=JUMP),)
            ),
        )

    store.receive([text("telegram:Noor", "x", "1")])
    work_once(store, NOON, trained)
    state = state_of(store, "telegram:1")
    assert isinstance(state, CoachState)
    (noor_number, noor), (piet_number, piet) = state.clients
    assert (noor_number, piet_number) == (people["Noor"], people["Piet"])
    assert (noor.name, noor.programme, noor.remind_at) == ("Noor", "Harbour Base", time(8))
    assert (noor.last_workout, noor.due_on, noor.paused) == (date(2026, 2, 27), date(2026, 3, 4), True)
    assert (noor.open_alerts, noor.held, noor.eager) == ((("pain", "Dip"),), ("Dip",), (JUMP,))
    assert (piet.last_workout, piet.open_alerts, piet.held, piet.paused) == (None, (), (), False)


def test_a_coach_s_memory_comes_back(store: Store) -> None:
    settled(store)
    store.receive([text("telegram:1", "x", "1")])
    memory = CoachMemory(looked_back_at=after(hours=1))
    work_once(store, NOON, lambda _state, _heard: Outcome(memory=memory))
    state = state_of(store, "telegram:1")
    assert isinstance(state, CoachState)
    assert state.memory == memory


def test_a_coach_s_code_is_fresh_each_time_and_has_128_bits(store: Store) -> None:
    settled(store)
    states = [state_of(store, "telegram:1") for _ in range(3)]
    codes = {state.fresh_code for state in states if isinstance(state, CoachState)}
    assert len(codes) == 3
    assert all(len(code) == 22 for code in codes)  # 128 bits, six to a character


def test_a_sheet_of_the_same_name_is_the_next_version_and_clients_keep_theirs(store: Store) -> None:
    settled(store, "Noor")
    store.receive([text("telegram:1", "x", "1")])
    other, again = programme("Harbour Light"), programme(high=12)
    stored = (SheetStored(other, "light"), SheetStored(again, "base, again"))
    work_once(store, NOON, lambda _state, _heard: Outcome(changes=stored))
    coach, noor = state_of(store, "telegram:1"), state_of(store, "telegram:Noor")
    assert isinstance(coach, CoachState)
    assert isinstance(noor, ClientState)
    assert [(each.version, each.programme) for each in coach.programmes] == [(1, other), (2, again)]
    assert noor.programmes == coach.programmes
    assert noor.client.programme is not None
    assert (noor.client.programme.version, noor.client.programme.programme) == (1, programme())


def test_wakes_are_told_apart_from_messages(store: Store) -> None:
    settled(store, "Noor")
    store.receive([text("telegram:Noor", "wake me", "1")])
    work_once(store, NOON, lambda _state, _heard: Outcome(wake_at=after(minutes=1)))
    ((state, heard),) = work_all(store, after(minutes=2), lambda _state, _heard: Outcome())
    assert isinstance(state, ClientState)
    assert heard is None
