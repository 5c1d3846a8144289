"""The whole journal as data, out and in again through the real store, with what was aside and mattered."""

import asyncio
import json
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal
from typing import Any, get_args

from hypothesis import given, settings
from hypothesis import strategies as st
from sqlalchemy import func, select

from bot.commands.database import passing
from bot.markup import plain
from domain.actions import Remedy, Role
from domain.journal import AlertReason, WorkoutState
from domain.journal_data import HoldData, JournalData, MatterData, SetData, WorkoutData
from domain.sets import LoadKind
from persistence.engine import reading
from persistence.tables import AlertRow, HoldRow, WordsRow
from tests.bot.test_old_journal import BEGIN, Room

DAYS = st.dates(date(2024, 1, 1), date(2026, 2, 27))
MOMENTS = st.integers(0, 700).map(lambda days: datetime(2024, 1, 1, 7, tzinfo=UTC) + timedelta(days=days))
KINDS: st.SearchStrategy[LoadKind] = st.sampled_from(get_args(LoadKind))
STATES: st.SearchStrategy[WorkoutState] = st.sampled_from(["done", "missed", "skipped"])
NAMES = st.sampled_from(["Dip", "Leg press", "懸垂", "Ilses Zugübung"])
ROLES: st.SearchStrategy[Role] = st.sampled_from(get_args(Role))


@st.composite
def sets(draw: st.DrawFn, on: date) -> SetData:
    """Draw a set of any kind: reps, lowering-only reps or a hold, with what is told of the effort."""
    kind, measure = draw(KINDS), draw(st.sampled_from(["reps", "lowering-only", "seconds"]))
    return SetData(
        exercise=draw(NAMES),
        load=Decimal(0) if kind == "body" else draw(st.decimals(0, 200, places=1)),
        unit=draw(st.sampled_from(["kg", "lb"])),
        load_kind=kind,
        reps=None if measure == "seconds" else draw(st.integers(0, 20)),
        seconds=draw(st.integers(1, 300)) if measure == "seconds" else None,
        lowering_only=measure == "lowering-only",
        to_failure=draw(st.sampled_from([None, True, False])),
        in_reserve=draw(st.sampled_from([None, Decimal("1.5"), Decimal(0)])),
        day=draw(st.sampled_from([None, on - timedelta(days=1)])),
        recorded_at=draw(MOMENTS),
    )


@st.composite
def workouts(draw: st.DrawFn) -> WorkoutData:
    state, day = draw(STATES), draw(DAYS)
    done = draw(st.lists(sets(day), min_size=1, max_size=3)) if state == "done" else []
    return WorkoutData(day=day, name=draw(st.sampled_from("AB")), state=state, round=1, sets=tuple(done))


@st.composite
def under_way(draw: st.DrawFn) -> WorkoutData:
    """Draw a workout that is not closed yet: of the day of the import, or the day before."""
    day = BEGIN.date() - timedelta(days=draw(st.integers(0, 1)))
    done = draw(st.lists(sets(day), min_size=1, max_size=3))
    return WorkoutData(day=day, name="A", state="open", round=2, sets=tuple(done))


@st.composite
def holds(draw: st.DrawFn) -> HoldData:
    since, lifted = draw(DAYS), draw(st.booleans())
    return HoldData(
        exercise=draw(NAMES),
        place=draw(st.sampled_from(["knee", "shoulder", "other"])),
        side=draw(st.sampled_from([None, "left", "right", "both"])),
        since=since,
        lifted_on=since + timedelta(days=draw(st.integers(0, 2))) if lifted else None,
        lifted_by=draw(ROLES) if lifted else None,
    )


EVIDENCE: dict[AlertReason, dict[str, Any]] = {
    "pain": {"said": "ouch", "pain": {"where": "knee", "side": "left", "score": 4}, "held": ["Dip"]},
    "urgent": {"said": "I fainted", "pain": [], "held": []},
    "missed": {"in_a_row": 2, "put_off": 0, "workout": "A"},
    "question": {"said": "wider?", "last": []},
    "review": {"rounds": 4, "gain_per_round": 0.01, "risen": True},
    "unreachable": {},
    "stall": {
        "without_beat": 3,
        "exercise": "Dip",
        "workout": "A",
        "exposures": [],
        "beside": [1, {"x": None}],
    },
}
ENGINE = {"since": "2026-01-05", "ended": 0.97, "exposures_since": 5, "counted": 14, "noise": 0.031}
STALLS: tuple[dict[str, Any], ...] = (
    EVIDENCE["stall"],
    {**ENGINE, "exercise": "Dip", "workout": "A", "exposures": []},
    {"since": "2026-01-05", "ended": 0.99, "exercises": ["Dip", "Leg press"], "lifts": [], "was_told": []},
)
"""A stall by a rule, by the engine, and of several at once."""


@st.composite
def matters(draw: st.DrawFn) -> MatterData:
    reason, opened, settled = draw(st.sampled_from(sorted(EVIDENCE))), draw(MOMENTS), draw(st.booleans())
    evidence = draw(st.sampled_from(STALLS)) if reason == "stall" else EVIDENCE[reason]
    of_one = reason != "stall" or "exercises" not in evidence
    return MatterData(
        reason=reason,
        exercise=("Dip" if reason == "stall" else draw(st.none() | NAMES)) if of_one else None,
        evidence=evidence,
        opened_at=opened,
        settled_at=opened + timedelta(hours=3) if settled else None,
        settled_by=draw(ROLES) if settled else None,
        remedy=draw(st.sampled_from(get_args(Remedy))) if settled else None,
    )


JOURNALS = st.builds(
    lambda done, going, aside, mattered: JournalData(
        client="Noor",
        unit="kg",
        zone="UTC",
        workouts=(*sorted(done, key=lambda each: each.day), *going),
        set_aside=tuple(aside),
        matters=tuple(mattered),
    ),
    st.lists(workouts(), max_size=4, unique_by=lambda each: (each.day, each.name)),
    st.lists(under_way(), max_size=1),
    st.lists(holds(), max_size=4),
    st.lists(matters(), max_size=4),
)


def beside(room: Room, of: str) -> list[int]:
    """Return how many holds and matters stand."""
    with reading(room.store._engine) as connection:
        return [
            connection.execute(
                select(func.count()).select_from(row).where(row.client == room.number[of])
            ).scalar_one()
            for row in (HoldRow, AlertRow)
        ]


def is_barred(room: Room, whose: str) -> bool:
    """Return whether training waits for the coach's word."""
    state = room.store.whole_client(room.number[whose], room.number[whose])
    assert state is not None
    return state.memory.barred


@given(JOURNALS)
@settings(max_examples=6, deadline=None)
def test_all_kinds_come_back_as_they_were_and_are_not_doubled(journal: JournalData) -> None:
    if not (journal.workouts or journal.set_aside or journal.matters):
        return
    with passing() as store:
        room = Room(store)
        for whose in ("Noor", "Piet"):
            text = journal.model_copy(update={"client": whose}).model_dump_json()
            room.sends(f"{whose}.json", text)
            assert "Done" in room.presses("Take it in")
            out = JournalData.model_validate_json(room.file("journal data", whose))
            assert out.workouts == journal.workouts
            assert out.set_aside == journal.set_aside
            assert out.matters == journal.matters
            journal = out
        first = room.file("journal data", "Piet")
        assert "nothing in it to take" in plain(room.sends("Piet.json", first.decode()).text_html)
        assert room.file("journal data", "Piet") == first
        assert "Undone" in room.presses("Undo")
        assert beside(room, "Piet") == [0, 0]
        assert not [name for name, _ in room.heard[4:] if name == "Piet"]


def test_what_is_open_stays_open_and_goes_with_an_undo_whatever_came_of_it() -> None:
    journal = JournalData(
        client="Noor",
        unit="kg",
        zone="UTC",
        workouts=(),
        set_aside=(HoldData(exercise="Leg press", place="knee", side="left", since=date(2026, 2, 1)),),
        matters=tuple(
            MatterData(reason=reason, evidence=EVIDENCE[reason], opened_at=BEGIN - timedelta(days=9))
            for reason in ("question", "urgent")
        ),
    )
    with passing() as store:
        room = Room(store)
        shown = plain(room.sends("Noor.json", journal.model_dump_json()).text_html)
        assert "Set aside once: Leg press would be aside until you put it back." in shown
        assert "2 matters brought to the coach: 2 still open" in shown
        assert beside(room, "Noor") == [0, 0]
        room.presses("Take it in")
        asyncio.run(room.stage.say("Mara", "who needs me?"))
        needs = plain(room.last.text_html)
        assert "Noor" in needs
        asyncio.run(room.stage.say("Noor", "leg press 100x10"))
        told = plain(next(each for name, each in reversed(room.heard) if name == "Noor").text_html)
        assert "until" in told
        assert is_barred(room, "Noor")
        asyncio.run(room.stage.say("Mara", "tell Noor: a little wider"))
        assert "Undone" in room.presses("Undo")
        assert beside(room, "Noor") == [0, 0]
        assert not is_barred(room, "Noor")
        with reading(store._engine) as connection:
            assert connection.execute(select(WordsRow.alert)).scalars().all() == [None]


def test_a_workout_under_way_goes_on_where_it_would_have_and_is_done_otherwise() -> None:
    def journal(days_ago: int) -> str:
        day = BEGIN.date() - timedelta(days=days_ago)
        done = SetData(
            exercise="Leg press", load=Decimal(100), unit="kg", load_kind="total", reps=8, recorded_at=BEGIN
        )
        data = JournalData(
            client="Noor",
            unit="kg",
            zone="UTC",
            workouts=(WorkoutData(day=day, name="All", state="open", round=1, sets=(done,)),),
        )
        return data.model_dump_json()

    def states(room: Room) -> list[str]:
        out = JournalData.model_validate_json(room.file("journal data", "Noor"))
        return [each.state for each in out.workouts]

    with passing() as store:
        room = Room(store)
        room.sends("Noor.json", journal(2))
        room.presses("Take it in")
        assert states(room) == ["done"]
        room.sends("Noor.json", journal(1))
        room.presses("Take it in")
        assert states(room) == ["done", "open"]
        room.sends("Noor.json", journal(0))
        room.presses("Take it in")
        assert states(room) == ["done", "open", "done"]
        asyncio.run(room.stage.wait_until(BEGIN + timedelta(days=2)))
        assert "open" not in states(room)


def test_a_set_that_no_table_could_keep_is_said_with_its_row_and_the_others_are_taken() -> None:
    good = {
        "exercise": "Leg press",
        "load": "100",
        "unit": "kg",
        "load_kind": "total",
        "reps": 8,
        "recorded_at": "2026-02-01T10:00:00Z",
    }
    bad: list[tuple[dict[str, Any], str]] = [
        ({"reps": -1}, "not a number of reps"),
        ({"reps": None, "seconds": -5}, "not a time"),
        ({"load": "-2.5"}, "not a load that I know"),
        ({"load_kind": "body"}, "not a load that I know"),
        ({"in_reserve": "-1"}, "not a number of reps in reserve"),
        ({"reps": 8, "seconds": 8}, "a set has one of them"),
        ({"reps": None}, "no reps and no seconds"),
        ({"reps": 10**25}, "more than anybody"),
        ({"day": "2027-01-01"}, "a day still to come"),
    ]
    sets_given = [good, *({**good, **wrong} for wrong, _ in bad)]
    workout = {"day": "2026-02-01", "name": "All", "state": "done", "round": 1, "sets": sets_given}
    text = json.dumps({"client": "Noor", "unit": "kg", "zone": "UTC", "workouts": [workout]})
    with passing() as store:
        room = Room(store)
        shown = plain(room.sends("Noor.json", text).text_html)
        assert f"{len(bad)} rows not taken" in shown
        for _, why in bad[:8]:
            assert why in shown
        assert "Done" in room.presses("Take it in")
        out = JournalData.model_validate_json(room.file("journal data", "Noor"))
        assert [each.reps for each in out.workouts[0].sets] == [8]


def test_what_cannot_be_is_said_and_not_taken() -> None:
    journal = JournalData(
        client="Noor",
        unit="kg",
        zone="UTC",
        workouts=(),
        set_aside=(
            HoldData(exercise="Dip", place="knee", since=date(2026, 2, 1), lifted_on=date(2026, 1, 1)),
        ),
        matters=(MatterData(reason="stall", exercise="Dip", evidence={}, opened_at=BEGIN),),
    )
    with passing() as store:
        room = Room(store)
        shown = plain(room.sends("Noor.json", journal.model_dump_json()).text_html)
        assert "2 rows not taken" in shown
        assert "There is nothing in it to take" in shown
        assert not room.last.buttons
