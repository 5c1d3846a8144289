"""What is saved comes back: the store makes of a decision just what the domain's own `apply` makes of it."""

from collections.abc import Iterator
from datetime import date
from decimal import Decimal
from itertools import count
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from domain.incoming import Heard
from domain.journal import Entry, ExerciseHold, WorkoutRecord
from domain.memory import (
    Answered,
    ClientMemory,
    CoachWrote,
    EagerKept,
    Easing,
    PutRight,
    Quiet,
    Waiting,
)
from domain.outcome import (
    AlertNoted,
    AlertSettled,
    Change,
    HoldLifted,
    HoldPlaced,
    Outcome,
    Recorded,
    TakenBack,
    WorkoutKept,
)
from domain.parts import Eager
from domain.sets import TrainingSet
from domain.state import ClientState, State
from persistence import state as bounds
from persistence.faults import Undecided
from persistence.store import Store, open_store
from tests.persistence.decisions import Decisions
from tests.persistence.people import (
    NOON,
    after,
    settled,
    state_of,
    text,
    work_once,
)

KEYS = count()

JUMP = Eager(
    rule="great jump",
    exercise="Dip",
    workout="Push",
    on=date(2026, 2, 27),
    at=NOON,
    facts={"percent": 12.5},
)


@pytest.fixture(scope="module", params=["sqlite", "postgresql"])
def shared(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Store]:
    """Yield one store for many examples; each has a client of its own."""
    if request.param == "sqlite":
        folder: Path = tmp_path_factory.mktemp("state")
        store = open_store(f"sqlite:///{folder / 'kilopost.sqlite3'}")
        yield store
        store.close()
        return
    with request.getfixturevalue("postgres_server").database("state") as url:
        store = open_store(url)
        yield store
        store.close()


@settings(max_examples=60, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
@given(data=st.data())
def test_the_store_makes_of_a_decision_what_the_domain_makes_of_it(
    shared: Store, data: st.DataObject
) -> None:
    name = f"Noor {next(KEYS)}"
    settled(shared, name)
    chat = f"telegram:{name}"
    expected = [state_of(shared, chat)]

    def decide(state: State, heard: Heard | None) -> Outcome:
        assert isinstance(state, ClientState)
        assert heard is not None
        decisions = Decisions(data.draw, state, heard.number)
        for _ in range(data.draw(st.integers(0, 8))):
            data.draw(st.sampled_from(list(decisions.possible())))()
        expected.append(decisions.state)
        return Outcome(changes=tuple(decisions.changes), memory=decisions.state.memory)

    for _ in range(data.draw(st.integers(1, 4))):
        shared.receive([text(chat, "dip 8", f"{next(KEYS)}")])
        before, _ = work_once(shared, NOON, decide)
        assert before == expected[-2]
    assert state_of(shared, chat) == expected[-1]


def test_all_of_a_client_s_memory_comes_back(store: Store) -> None:
    settled(store, "Noor")
    question = Waiting(number=3, slot="load", message=2, asked_at=NOON, about={"reps": 8, "sets": [1, "a"]})
    done = TrainingSet("Dip", Decimal("2.50"), "kg", "added", reps=8, on=date(2026, 3, 1))
    memory = ClientMemory(
        last_entry=7,
        questions=(question,),
        answered=Answered(message=4, question=question, at=NOON),
        put_right=(PutRight(entry=3, was=done, workout=1, message=2),),
        quiet=(Quiet(exercise="Dip", since=date(2026, 3, 1)),),
        due_on=date(2026, 3, 5),
        eager=(EagerKept(workout=1, what=JUMP, told=True),),
        coach_wrote=(CoachWrote(on=date(2026, 3, 1), exercises=("Dip",)),),
        last_reported_at=after(hours=1),
        easings=(Easing(exercise="Dip", factor=Decimal("0.90"), since=date(2026, 3, 1)),),
    )
    store.receive([text("telegram:Noor", "x", "1")])
    work_once(store, NOON, lambda _state, _heard: Outcome(memory=memory))
    state = state_of(store, "telegram:Noor")
    assert isinstance(state, ClientState)
    assert state.memory == memory
    assert state_of(store, "telegram:Noor") == state  # a decision without memory leaves it as it is


def test_only_the_recent_past_is_loaded(store: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    settled(store, "Noor")
    monkeypatch.setattr(bounds, "ENTRIES", 3)
    monkeypatch.setattr(bounds, "WORKOUTS", 2)

    def five_workouts(state: State, heard: Heard | None) -> Outcome:
        assert isinstance(state, ClientState)
        assert heard is not None
        stored = state.programmes[0].number
        changes: list[Change] = []
        for number in range(1, 6):
            done = TrainingSet("Dip", Decimal(number), "kg", "added", reps=8)
            changes += [
                WorkoutKept(WorkoutRecord(number, stored, "Push", date(2026, 3, number), "done", 1)),
                Recorded(Entry(number, number, heard.number, done, NOON)),
            ]
        return Outcome(changes=(*changes, TakenBack(4, NOON)))

    store.receive([text("telegram:Noor", "x", "1")])
    work_once(store, NOON, five_workouts)
    state = state_of(store, "telegram:Noor")
    assert isinstance(state, ClientState)
    assert [each.number for each in state.entries] == [2, 3, 5]
    assert [each.number for each in state.workouts] == [4, 5]


@pytest.mark.parametrize(
    "change",
    [
        TakenBack(1, NOON),
        HoldLifted(1, date(2026, 3, 2), 1),
        AlertNoted(1, {}),
        AlertSettled(1, "seen", 1, NOON),
    ],
)
def test_a_decision_on_a_record_that_is_not_there_comes_to_nothing(store: Store, change: Change) -> None:
    settled(store, "Noor")
    before = state_of(store, "telegram:Noor")
    store.receive([text("telegram:Noor", "x", "1")])
    lease = store.claim_person(NOON, 30)
    assert lease is not None
    hold = HoldPlaced(ExerciseHold(9, "Dip", "elbow", None, date(2026, 3, 2)))
    with pytest.raises(Undecided, match="RecordMissing"):
        store.work(lease, NOON, lambda _state, _heard: Outcome(changes=(hold, change)))
    store.work(lease, NOON, lambda _state, _heard: Outcome())
    assert state_of(store, "telegram:Noor") == before
