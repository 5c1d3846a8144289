"""Decisions drawn by chance: whatever can be decided on a client, each fit for what came of those before."""

from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal
from typing import Any, get_args

from hypothesis import strategies as st

from domain.client.apply import apply
from domain.journal import Alert, AlertReason, Entry, ExerciseHold, Words, WorkoutRecord, Writer
from domain.outcome import (
    AlertNoted,
    AlertRaised,
    AlertSettled,
    Change,
    HoldLifted,
    HoldPlaced,
    Recorded,
    SettingsKept,
    TakenBack,
    WordsKept,
    WorkoutKept,
)
from domain.sets import LoadKind, TrainingSet
from domain.state import ClientState
from tests.persistence.people import (
    NOON,
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
