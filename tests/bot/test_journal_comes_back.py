"""The whole journal as data, out and in again through the real store, with what was aside and mattered."""

import asyncio
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
def sets(draw: st.DrawFn) -> SetData:
    kind = draw(KINDS)
    return SetData(
        exercise=draw(NAMES),
        load=Decimal(0) if kind == "body" else draw(st.decimals(1, 200, places=1)),
        unit=draw(st.sampled_from(["kg", "lb"])),
        load_kind=kind,
        reps=draw(st.integers(1, 20)),
        recorded_at=draw(MOMENTS),
    )


@st.composite
def workouts(draw: st.DrawFn) -> WorkoutData:
    state = draw(STATES)
    done = draw(st.lists(sets(), min_size=1, max_size=3)) if state == "done" else []
    return WorkoutData(
        day=draw(DAYS), name=draw(st.sampled_from("AB")), state=state, round=1, sets=tuple(done)
    )


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


@st.composite
def matters(draw: st.DrawFn) -> MatterData:
    reason, opened, settled = draw(st.sampled_from(sorted(EVIDENCE))), draw(MOMENTS), draw(st.booleans())
    return MatterData(
        reason=reason,
        exercise="Dip" if reason == "stall" else draw(st.none() | NAMES),
        evidence=EVIDENCE[reason],
        opened_at=opened,
        settled_at=opened + timedelta(hours=3) if settled else None,
        settled_by=draw(ROLES) if settled else None,
        remedy=draw(st.sampled_from(get_args(Remedy))) if settled else None,
    )


JOURNALS = st.builds(
    lambda done, aside, mattered: JournalData(
        client="Noor",
        unit="kg",
        zone="UTC",
        workouts=tuple(sorted(done, key=lambda each: each.day)),
        set_aside=tuple(aside),
        matters=tuple(mattered),
    ),
    st.lists(workouts(), max_size=4, unique_by=lambda each: (each.day, each.name)),
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
        asyncio.run(room.stage.say("Mara", "tell Noor: a little wider"))
        assert "Undone" in room.presses("Undo")
        assert beside(room, "Noor") == [0, 0]
        with reading(store._engine) as connection:
            assert connection.execute(select(WordsRow.alert)).scalars().all() == [None]


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
