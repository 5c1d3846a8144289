"""What is saved comes back: the store makes of a decision just what the domain's own `apply` makes of it."""

from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import date, time, timedelta
from decimal import Decimal
from itertools import count
from pathlib import Path
from typing import Any, get_args

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from domain.client.apply import apply
from domain.coach_memory import CoachMemory
from domain.incoming import Heard
from domain.journal import Alert, AlertReason, Entry, ExerciseHold, Words, WorkoutRecord, Writer
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
    AlertRaised,
    AlertSettled,
    Change,
    HoldLifted,
    HoldPlaced,
    Outcome,
    Recorded,
    SettingsKept,
    SheetStored,
    TakenBack,
    WordsKept,
    WorkoutKept,
)
from domain.parts import Eager
from domain.sets import LoadKind, TrainingSet
from domain.state import ClientState, CoachState, State
from persistence import state as bounds
from persistence.faults import Undecided
from persistence.store import Store, open_store
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

KEYS = count()

JUMP = Eager(
    rule="great jump",
    exercise="Dip",
    workout="Push",
    on=date(2026, 2, 27),
    at=NOON,
    facts={"percent": 12.5},
)

DAYS = st.dates(min_value=date(2020, 1, 1), max_value=date(2030, 1, 1))
MOMENTS = st.builds(lambda seconds: NOON + timedelta(seconds=seconds), st.integers(-(10**8), 10**8))
NAMES = st.text(st.characters(codec="utf-8", exclude_characters="\x00"), min_size=1, max_size=12)
EXERCISES = st.sampled_from(["Dip", "Bench press", "Ilses Zugübung", "פולי עליון", "懸垂", "x" * 300]) | NAMES
LOADS = st.decimals(min_value=0, max_value=9999, places=2) | st.decimals(min_value=0, max_value=999, places=8)


@st.composite
def training_sets(draw: st.DrawFn) -> TrainingSet:
    kind = draw(st.sampled_from(get_args(LoadKind)))
    amount = draw(st.integers(0, 3600))
    is_hold = draw(st.booleans())
    return TrainingSet(
        exercise=draw(EXERCISES),
        load=Decimal(0) if kind == "body" else draw(LOADS),
        unit=draw(st.sampled_from(["kg", "lb"])),
        load_kind=kind,
        reps=None if is_hold else amount,
        seconds=amount if is_hold else None,
        lowering_only=draw(st.booleans()),
        to_failure=draw(st.none() | st.booleans()),
        rir=draw(st.none() | st.decimals(min_value=0, max_value=10, places=1)),
        on=draw(st.none() | DAYS),
    )


JSON = st.recursive(
    st.none() | st.booleans() | st.integers(-(2**53), 2**53) | NAMES,
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(NAMES, inner, max_size=3),
    max_leaves=8,
)


Draw = Callable[[st.SearchStrategy[Any]], Any]


class Decisions:
    """Draws decisions on a client one after the other, each fit for the state that came of those before."""

    def __init__(
        self, draw: Callable[[st.SearchStrategy[Any]], Any], state: ClientState, message: int
    ) -> None:
        self.draw = draw
        self.state = state
        self.message = message
        self.changes: list[Change] = []

    def add(self, change: Change) -> None:
        self.changes.append(change)
        self.state = apply(self.state, change)

    def memory(self, **counted: int) -> int:
        ((name, number),) = counted.items()
        self.state = replace(self.state, memory=self.state.memory.model_copy(update={name: number}))
        return number

    def workout(self) -> None:
        number = self.memory(last_workout=self.state.memory.last_workout + 1)
        self.add(WorkoutKept(self._workout(number)))

    def workout_again(self) -> None:
        self.add(WorkoutKept(self._workout(self._one([each.number for each in self.state.workouts]))))

    def _workout(self, number: int) -> WorkoutRecord:
        return WorkoutRecord(
            number=number,
            programme=self.draw(st.sampled_from([None, self.state.programmes[0].number])),
            name=self.draw(NAMES),
            on=self.draw(DAYS),
            state=self.draw(st.sampled_from(["open", "done", "missed", "skipped"])),
            round=self.draw(st.integers(0, 500)),
            skipped=tuple(self.draw(st.lists(EXERCISES, max_size=2))),
        )

    def entry(self) -> None:
        self.add(Recorded(self._entry()))

    def correction(self) -> None:
        wrong = self._one([each.number for each in self.state.entries])
        place = next(each for each in self.state.entries if each.number == wrong).order[0]
        self.add(Recorded(replace(self._entry(), place=place), instead_of=wrong))

    def _entry(self) -> Entry:
        number = self.memory(last_entry=self.state.memory.last_entry + 1)
        workout = self._one([each.number for each in self.state.workouts])
        return Entry(number, workout, self.message, self.draw(training_sets()), self.draw(MOMENTS))

    def taking_back(self) -> None:
        self.add(TakenBack(self._one([each.number for each in self.state.entries]), self.draw(MOMENTS)))

    def hold(self) -> None:
        number = self.memory(last_hold=self.state.memory.last_hold + 1)
        side = self.draw(st.sampled_from([None, "left"]))
        self.add(HoldPlaced(ExerciseHold(number, self.draw(EXERCISES), "elbow", side, self.draw(DAYS))))

    def lifting(self) -> None:
        held = self._one([each.number for each in self.state.holds])
        self.add(HoldLifted(held, self.draw(DAYS), self.state.client.coach.number))

    def alert(self) -> None:
        number = self.memory(last_alert=self.state.memory.last_alert + 1)
        evidence = self.draw(st.dictionaries(NAMES, JSON, max_size=3))
        reason = self.draw(st.sampled_from(get_args(AlertReason)))
        exercise = self.draw(st.none() | EXERCISES)
        self.add(AlertRaised(Alert(number, reason, exercise, evidence, self.draw(MOMENTS))))

    def noting(self) -> None:
        alert = self._one([each.number for each in self.state.alerts])
        self.add(AlertNoted(alert, self.draw(st.dictionaries(NAMES, JSON, max_size=3))))

    def settling(self) -> None:
        alert = self._one([each.number for each in self.state.alerts])
        self.add(AlertSettled(alert, "seen", self.state.client.coach.number, self.draw(MOMENTS)))

    def words(self) -> None:
        number = self.memory(last_words=self.state.memory.last_words + 1)
        alert = self.draw(st.sampled_from([None, *(each.number for each in self.state.alerts)]))
        by = self.draw(st.sampled_from(get_args(Writer)))
        self.add(WordsKept(Words(number, by, self.draw(NAMES), self.draw(NAMES), self.draw(MOMENTS), alert)))

    def client_settings(self) -> None:
        client = replace(
            self.state.client,
            name=self.draw(NAMES),
            unit=self.draw(st.sampled_from(["kg", "lb"])),
            zone=self.draw(st.sampled_from(["Asia/Kathmandu", "America/St_Johns"])),
            remind_at=self.draw(st.times().map(lambda at: at.replace(microsecond=0))),
            starts=self.draw(DAYS),
            body_mass=self.draw(st.none() | st.decimals(min_value=1, max_value=300, places=1)),
            own_names=self.draw(st.dictionaries(NAMES, EXERCISES, max_size=3)),
            programme=self.draw(st.sampled_from([None, *self.state.programmes])),
        )
        self.add(SettingsKept(client))

    def _one(self, numbers: list[int]) -> int:
        return int(self.draw(st.sampled_from(numbers)))

    def possible(self) -> Iterator[Any]:
        """Yield the deeds that can be done as things stand."""
        yield from (self.workout, self.hold, self.alert, self.words, self.client_settings)
        if self.state.workouts:
            yield from (self.workout_again, self.entry, self.entry, self.entry)
        if self.state.entries:
            yield from (self.correction, self.taking_back)
        if self.state.holds:
            yield self.lifting
        if self.state.alerts:
            yield from (self.noting, self.settling)


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
