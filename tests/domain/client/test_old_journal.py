"""An old journal sent for a client: shown first, asked about, taken in portions, compared with, taken out."""

from dataclasses import replace
from datetime import date, datetime, timedelta
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from domain.actions import BringIn, TakeBack
from domain.client import hear
from domain.client.apply import apply
from domain.client.old_journal import PORTION
from domain.entry_order import in_order
from domain.incoming import FromCoach, Heard, JournalSent, Undone
from domain.journal import Entry, WorkoutRecord, WorkoutState
from domain.journal_data import JournalData, journal_data
from domain.journal_table.writer import write_table
from domain.memory import ClientMemory
from domain.outcome import JournalTaken
from domain.parts import File, Notice, Plan, VerdictPart
from domain.sets import LoadKind, TrainingSet
from domain.state import ClientState
from domain.tally import Counts
from tests.domain.client.people import Life, at, kinds, noor

HEAD = "date,exercise,load,reps,seconds\n"
OLD = HEAD + (
    "2026-02-20,Seated Row (Cable),50,10,\n2026-02-20,RDL,70,8,\n"
    "2026-02-23,Goblet squat,24,12,\n2026-02-23,Wall sit,,,45\n2026-02-26,RDL,72.5,8,\n"
)


class Desk(Life):
    """A client's life in which the coach sends journals; what is ordered is done at once, as by the desk."""

    def __init__(self, state: ClientState | None = None) -> None:
        super().__init__(state)
        self.coach_buttons: tuple[Any, ...] = ()
        self.told: list[Notice | File] = []
        self.portions = 0

    def orders(self, order: FromCoach, when: datetime, text: str = "") -> list[str]:
        """Let an order come; return the topics that the coach is told of."""
        self.passes_to(when)
        self.told, self.portions = [], 0
        following: FromCoach | None = order
        while following is not None:
            if isinstance(following, JournalSent):
                following = following.model_copy(update={"text": text})
            self.heard += 1
            outcome = hear(self.state, Heard(self.heard, when, following))
            assert not [say for say in outcome.says if say.to == self.state.client.number]
            assert [
                each for each in outcome.changes if not isinstance(each, JournalTaken)
            ] == [] or isinstance(order, Undone)
            self.take(outcome)
            for say in outcome.says:
                self.coach_buttons = say.buttons
                self.told += [each for each in say.parts if isinstance(each, Notice | File)]
            following = next(
                (each.incoming for each in outcome.orders if isinstance(each.incoming, JournalSent)), None
            )
            self.portions += 1
        return kinds([each for each in self.told if isinstance(each, Notice)])

    def take(self, outcome: Any) -> None:
        """Let an outcome take effect as the store does: entries in the order that the memory tells."""
        self.wake_at = outcome.wake_at
        self.state = replace(self.state, memory=outcome.memory or self.state.memory)
        for change in outcome.changes:
            self.state = apply(self.state, change)
        self.state = replace(self.state, entries=in_order(self.state.entries, self.state.memory))

    def looks(self, text: str, when: datetime, **told: Any) -> list[str]:
        """Let the coach send a journal."""
        return self.orders(sent(text, **told), when, text)

    def button(self, says: str, of: str = "") -> BringIn:
        """Return the coach's button of that meaning."""
        return next(
            each
            for each in self.coach_buttons
            if isinstance(each, BringIn) and each.says == says and of in each.of
        )

    def taps(self, text: str, button: BringIn, when: datetime, change: int = 900) -> list[str]:
        """Let the coach press a button."""
        order = JournalSent(
            coach=1,
            file=button.file,
            name=button.name,
            step="begin" if button.says == "take" else "look",
            change=change,
            exercises=button.exercises,
            month_first=button.month_first,
        )
        return self.orders(order, when, text)

    def brings(self, text: str, when: datetime, change: int = 900) -> list[str]:
        """Let the coach send a journal and take it as it is shown."""
        assert self.looks(text, when) == ["journal looked at"]
        return self.taps(text, self.button("take"), when, change)

    @property
    def facts(self) -> dict[str, Any]:
        """What the coach was told last."""
        return next(each.facts for each in self.told if isinstance(each, Notice))


def sent(text: str, **told: Any) -> JournalSent:
    return JournalSent(coach=1, file=5, name="old.csv", text=text, **told)


def bare() -> ClientState:
    """Return Noor before her first day, with nothing in her journal."""
    return replace(noor(), workouts=(), entries=(), memory=ClientMemory())


def test_a_journal_is_shown_and_nothing_is_taken_before_a_yes() -> None:
    life = Desk(bare())
    before = life.state
    assert life.looks(OLD, at(1, 12)) == ["journal looked at"]
    facts = life.facts
    assert (facts["sets"], facts["workouts"], facts["exercises"]) == (5, 3, 4)
    assert (facts["first"], facts["last"], facts["unit"]) == ("2026-02-20", "2026-02-26", "kg")
    assert facts["renamed"] == [["Seated Row (Cable)", "Seated cable row"], ["RDL", "Romanian deadlift"]]
    assert (life.state.workouts, life.state.entries) == (before.workouts, before.entries)
    assert any(isinstance(each, File) and each.source == 5 for each in life.told)


def test_the_next_plan_compares_with_what_was_taken_and_the_rotation_goes_on_from_it() -> None:
    life = Desk(bare())
    assert life.brings(OLD, at(1, 12)) == ["journal taken"]
    (plan,) = [part for part in life.passes_to(at(2, 8)) if isinstance(part, Plan)]
    assert plan.workout == "Legs"
    assert [str(line.to_beat.load) if line.to_beat else None for line in plan.lines] == ["24", "0"]
    verdicts = [part for part in life.says("goblet squat 24x13", at(2, 10)) if isinstance(part, VerdictPart)]
    assert [(each.result, each.before.reps if each.before else None) for each in verdicts] == [("beat", 12)]


def test_an_exercise_is_compared_in_the_workout_that_has_it_whatever_it_was_done_beside() -> None:
    text = HEAD + "2026-02-20,RDL,70,8,\n2026-02-20,Goblet squat,24,12,\n2026-02-20,Leg press,100,8,\n"
    life = Desk(bare())
    life.brings(text, at(1, 12))
    names = {each.number: each.name for each in life.state.workouts}
    assert {each.set.exercise: names[each.workout] for each in life.state.entries} == {
        "Romanian deadlift": "Pull",
        "Goblet squat": "Legs",
        "Leg press": "Pull",
    }


def test_nothing_is_raised_or_told_because_of_old_days() -> None:
    flat = HEAD + "".join(
        f"{date(2025, 12, 1) + timedelta(days=3 * n)},Goblet squat,24,10,\n" for n in range(25)
    )
    life = Desk(bare())
    life.brings(flat, at(1, 12))
    assert life.state.alerts == ()
    life.passes_to(at(1, 23))
    life.says("goblet squat 24x10", at(2, 10))
    assert life.state.alerts == ()


def test_old_days_are_no_workouts_done_of_a_digest_and_what_is_done_since_is_held_against_them() -> None:
    life = Desk(bare())
    life.brings(OLD, at(1, 12))
    life.passes_to(at(2, 8))
    tally = life.state.memory.tally
    assert tally is not None
    assert tally.workouts == ()
    assert tally.longest is None
    life.says("goblet squat 24x13", at(2, 10))
    assert life.state.memory.tally is not None
    (day,) = life.state.memory.tally.workouts
    assert (day.on, day.counts) == (date(2026, 3, 2), Counts(due=1, done=1, beat=1))


def test_undo_takes_all_of_it_out_and_leaves_the_rest() -> None:
    life = Desk(bare())
    life.says("rows 50x9", at(2, 10))
    told = life.state
    life.brings(OLD, at(2, 12))
    life.says("rows 50x8", at(2, 13))
    assert life.orders(Undone(coach=1, change=900), at(2, 14)) == ["journal taken out"]
    assert [each.set.reps for each in life.state.entries] == [9, 8]
    assert life.state.workouts == told.workouts
    assert life.orders(Undone(coach=1, change=900), at(2, 15)) == ["nothing to undo"]
    assert life.brings(OLD, at(2, 16), change=901) == ["journal taken"]


def test_what_the_client_has_put_right_of_it_stays() -> None:
    life = Desk(bare())
    life.brings(OLD, at(1, 12))
    old = life.state.entries[0]
    mended = Entry(90, old.workout, 77, replace(old.set, reps=11), at(1, 13), place=old.number)
    life.state = replace(life.state, entries=(mended, *life.state.entries[1:]))
    life.orders(Undone(coach=1, change=900), at(1, 14))
    assert life.state.entries == (mended,)
    assert [each.number for each in life.state.workouts] == [old.workout]


def test_the_last_word_of_the_client_is_never_about_an_old_journal() -> None:
    life = Desk(bare())
    life.says("rows 50x9", at(2, 10))
    life.brings(HEAD + "2026-03-01,RDL,70,8,\n", at(2, 11))
    life.says("make that 10", at(2, 12))
    assert [(each.set.exercise, each.set.reps) for each in life.state.entries] == [
        ("Romanian deadlift", 8),
        ("Seated cable row", 10),
    ]
    life.says("undo", at(2, 13))
    life.says("undo", at(2, 14))
    assert kinds(life.says("undo", at(2, 15))) == ["nothing to take back"]
    assert [each.set.exercise for each in life.state.entries] == ["Romanian deadlift"]


def test_what_stands_already_is_not_taken_twice() -> None:
    life = Desk(bare())
    life.brings(OLD, at(1, 12))
    assert life.looks(OLD, at(1, 13)) == ["journal looked at"]
    assert (life.facts["sets"], life.facts["there"], life.facts["takes"]) == (0, 5, False)
    more = OLD + "2026-02-26,RDL,72.5,8,\n2026-02-26,RDL,72.5,7,\n"
    assert life.brings(more, at(1, 14), change=901) == ["journal taken"]
    done = [each.set.reps for each in life.state.entries if each.set.on == date(2026, 2, 26)]
    assert done == [8, 8, 7]


def test_names_are_asked_about_once_each_and_each_answer_is_kept() -> None:
    text = HEAD + "2026-02-20,Prone flinger,5,9,\n2026-02-20,Wobbler,5,9,\n2026-02-21,Prone flinger,5,9,\n"
    life = Desk(bare())
    assert life.looks(text, at(1, 12)) == ["journal name"]
    assert (life.facts["shown"], life.facts["many"], life.facts["left"]) == ("Prone flinger", 2, 1)
    assert life.taps(text, life.button("keep", "Prone"), at(1, 12)) == ["journal name"]
    assert life.facts["shown"] == "Wobbler"
    assert life.taps(text, life.button("leave out"), at(1, 12)) == ["journal looked at"]
    assert (life.facts["sets"], life.facts["left_out"], life.facts["new"]) == (2, 1, ["Prone flinger"])
    life.taps(text, life.button("take"), at(1, 12))
    assert [each.set.exercise for each in life.state.entries] == ["Prone flinger"] * 2


def test_all_names_can_be_kept_at_once() -> None:
    text = HEAD + "2026-02-20,Prone flinger,5,9,\n2026-02-20,Wobbler,5,9,\n"
    life = Desk(bare())
    life.looks(text, at(1, 12))
    assert life.taps(text, life.button("keep all"), at(1, 12)) == ["journal looked at"]
    assert life.facts["sets"] == 2


def test_how_days_are_written_is_asked() -> None:
    text = HEAD + "03/02/2026,RDL,70,8,\n"
    life = Desk(bare())
    assert life.looks(text, at(9, 12)) == ["journal days"]
    assert life.taps(text, life.button("day first"), at(9, 12)) == ["journal looked at"]
    assert life.facts["first"] == "2026-02-03"


@pytest.mark.parametrize(
    ("order", "text", "topic"),
    [
        (sent(""), "no head", "journal unreadable"),
        (JournalSent(coach=1, file=5, name="old.csv"), None, "journal gone"),
        (JournalSent(coach=3, file=5, name="old.csv"), OLD, "not your client"),
    ],
)
def test_what_cannot_be_taken(order: JournalSent, text: str | None, topic: str) -> None:
    life = Desk(bare())
    outcome = hear(life.state, Heard(1, at(1, 12), order.model_copy(update={"text": text})))
    assert kinds([part for say in outcome.says for part in say.parts]) == [topic]
    assert outcome.changes == ()


def test_a_press_that_comes_twice_takes_it_once() -> None:
    life = Desk(bare())
    life.looks(OLD, at(1, 12))
    button = life.button("take")
    life.taps(OLD, button, at(1, 12))
    assert life.taps(OLD, button, at(1, 12)) == []
    assert len(life.state.entries) == 5


def test_a_long_journal_comes_in_portions_and_can_be_undone_half_way() -> None:
    days = [date(2024, 1, 1) + timedelta(days=n) for n in range(300)]
    text = HEAD + "".join(f"{day},RDL,70,{reps},\n" for day in days for reps in (8, 7, 6))
    life = Desk(bare())
    assert life.brings(text, at(1, 12)) == ["journal begun", *["journal coming"] * 3, "journal taken"]
    assert life.portions == 900 // (PORTION // 3 * 3) + 1
    assert [len(life.state.entries), len(life.state.workouts)] == [900, 300]
    assert [each.set.on for each in life.state.entries] == [day for day in days for _ in range(3)]
    (noted,) = life.state.memory.brought_in
    assert (noted.entries, noted.workouts, noted.taken) == (((1, 900),), ((1, 300),), 900)
    life.orders(Undone(coach=1, change=900), at(1, 13))
    assert (life.state.entries, life.state.workouts) == ((), ())
    late = JournalSent(coach=1, file=5, name="old.csv", step="portion", change=900, start=100)
    assert life.orders(late, at(1, 14), text) == []
    assert life.state.entries == ()


NAMES = st.sampled_from(
    ["Dip", "Squat", "=1+1", "Prone flinger, 'odd'", "-x", "Zercher; carry", "Ä «b»", "'tis"]
)
LOADS = st.decimals(0, 400, places=2, allow_nan=False)


@st.composite
def journals(draw: st.DrawFn) -> ClientState:
    """Return Noor with a journal of days before 1 March 2026: everything that a journal can hold."""
    records: list[WorkoutRecord] = []
    states: tuple[WorkoutState, ...] = ("done", "done", "missed", "skipped")
    kinds_of_load: tuple[LoadKind, ...] = ("total", "each", "added", "assist", "body")
    entries: list[Entry] = []
    day = date(2026, 1, 1)
    for number in range(1, draw(st.integers(1, 6)) + 1):
        day += timedelta(days=draw(st.integers(0, 4)))
        state = draw(st.sampled_from(states))
        name = draw(st.sampled_from(["Pull", "Legs", "", "=Other"]))
        skipped = tuple(draw(st.lists(NAMES, max_size=2)))
        records.append(WorkoutRecord(number, 7, name, day, state, draw(st.integers(1, 3)), skipped))
        for _ in range(draw(st.integers(1, 4)) if state == "done" else 0):
            kind = draw(st.sampled_from(kinds_of_load))
            held = draw(st.booleans())
            done = TrainingSet(
                draw(NAMES),
                draw(LOADS) if kind != "body" else 0 * draw(LOADS).quantize(1),
                draw(st.sampled_from(["kg", "lb"])) if kind != "body" else "kg",
                kind,
                None if held else draw(st.integers(0, 200)),
                draw(st.integers(1, 3600)) if held else None,
                lowering_only=not held and draw(st.booleans()),
                to_failure=draw(st.sampled_from([None, True, False])),
                rir=draw(st.none() | st.decimals(0, 5, places=1, allow_nan=False)),
                on=day + timedelta(days=draw(st.sampled_from([0, 0, 0, 1]))),
            )
            moment = at(1, 0) - timedelta(seconds=draw(st.integers(0, 10**6)))
            entries.append(Entry(len(entries) + 1, number, 1, done, moment))
    return replace(bare(), workouts=tuple(records), entries=tuple(entries))


@settings(max_examples=25, deadline=None)
@given(journals())
def test_what_goes_out_as_a_table_comes_in_unchanged(state: ClientState) -> None:
    out = write_table(state)
    life = Desk(bare())
    if state.entries:
        assert life.brings(out, at(2, 12))[-1] == "journal taken"
    assert write_table(life.state) == out


@settings(max_examples=25, deadline=None)
@given(journals())
def test_what_goes_out_as_data_comes_in_unchanged(state: ClientState) -> None:
    out = journal_data(state).model_dump_json()
    life = Desk(bare())
    assert life.brings(out, at(2, 12))[-1] == "journal taken"
    assert journal_data(life.state) == JournalData.model_validate_json(out)
    assert life.looks(out, at(2, 13)) == ["journal looked at"]
    assert not life.facts["takes"]


def test_the_button_under_what_was_taken_undoes_it() -> None:
    life = Desk(bare())
    life.brings(OLD, at(1, 12))
    assert life.coach_buttons == (TakeBack(client=2, change=900),)
