"""When matters come to the coach: in her hours, what is found together at once, once again, then no more."""

from dataclasses import replace
from datetime import datetime, time

import pytest

from domain.client import hear, wake
from domain.hours import Hours
from domain.incoming import CardWanted, Decided, FromChat, FromCoach, Heard, Text
from domain.outcome import Outcome
from domain.parts import AlertPart
from domain.state import ClientState
from tests.domain.client.people import MARA, ZONE, Life, at, kinds, noor

TWO = """\
Pair
Train every day in turn: Day
Tell me after 2 workouts without a beat

Day
1. Bench press, 5-8 reps
2. Seated cable row, 8-10 reps
"""

Matter = tuple[str, str | None]

BENCH: Matter = ("stall", "Bench press")
ROW: Matter = ("stall", "Seated cable row")
PAIN: Matter = ("pain", "Bench press")
QUESTION: Matter = ("question", None)


def looked_after(hours: Hours = MARA.hours, zone: str = "Europe/Amsterdam") -> ClientState:
    """Return Noor with a coach in `zone`, who may be written to at `hours`."""
    state = noor(TWO)
    return replace(state, client=replace(state.client, coach=replace(MARA, zone=zone, hours=hours)))


class Heeded(Life):
    """A life of which is noted when the coach was told of which alerts, and how the message began."""

    def __init__(self, state: ClientState) -> None:
        """Begin with `state`."""
        super().__init__(state)
        self.told: list[tuple[str, list[Matter]]] = []
        self.leads: list[str] = []

    def hears(self, incoming: FromChat | FromCoach, when: datetime) -> tuple[()]:
        """Let something come in at `when`, after all that fell due before it."""
        self.passes_to(when)
        self.heard += 1
        self.note(hear(self.state, Heard(self.heard, when, incoming)), when)
        return ()

    def passes_to(self, when: datetime) -> list[object]:  # type: ignore[override]
        """Let time pass."""
        while self.wake_at is not None and self.wake_at <= when:
            moment = self.wake_at
            self.note(wake(self.state, moment), moment)
            self._goes_on_after(moment)
        return []

    def note(self, outcome: Outcome, when: datetime) -> None:
        """Let an outcome take effect, and note what the coach is told."""
        self._take(outcome)
        for say in outcome.says:
            alerts: list[Matter] = [
                (part.reason, part.exercise) for part in say.parts if isinstance(part, AlertPart)
            ]
            if say.to == MARA.number and alerts:
                self.told.append((f"{when.astimezone(ZONE):%d %H:%M}", alerts))
                self.leads.append(kinds(say.parts)[0])


def two_days(last: list[tuple[str, datetime]], state: ClientState | None = None) -> Heeded:
    """Let the same be done on the 2nd and the 3rd, then what is said in `last`."""
    life = Heeded(state or looked_after())
    for day in (2, 3):
        life.says("bench 80x6, rows 60x9", at(day))
    for text, when in last:
        life.says(text, when)
    return life


@pytest.mark.parametrize(
    ("last", "told"),
    [
        # Both in one message, in two of one workout, and where the workout is never finished.
        ([("bench 80x5, rows 60x8", at(4))], [("04 18:00", [BENCH, ROW])]),
        ([("bench 80x5", at(4)), ("rows 60x8", at(4, 18, 20))], [("04 18:20", [BENCH, ROW])]),
        ([("bench 80x5", at(4))], [("04 19:00", [BENCH])]),
        ([("bench 80x5", at(4)), ("rows 60x10", at(4, 18, 20))], [("04 18:20", [BENCH])]),
        # In the night it waits for the morning; pain and warning signs do not.
        ([("bench 80x5, rows 60x8", at(4, 23))], [("05 07:00", [BENCH, ROW])]),
        ([("bench 80x5", at(4, 21, 30))], [("05 07:00", [BENCH])]),
        ([("can you check my form?", at(4, 2))], [("04 07:00", [QUESTION])]),
        ([("my shoulder hurts on bench press", at(4, 23))], [("04 23:00", [PAIN])]),
        ([("I fainted", at(4, 3))], [("04 03:00", [("urgent", None)])]),
        # A question does not wait for the workout's end, and does not hurry a stall.
        (
            [("bench 80x5", at(4)), ("can you check my form?", at(4, 18, 5))],
            [("04 18:05", [QUESTION]), ("04 19:00", [BENCH])],
        ),
    ],
)
def test_what_cannot_wait_comes_at_once_and_the_rest_in_her_hours_together(
    last: list[tuple[str, datetime]], told: list[tuple[str, list[Matter]]]
) -> None:
    life = two_days(last)
    life.passes_to(at(5, 7, 30))
    assert life.told == told


@pytest.mark.parametrize(
    ("hours", "zone", "heard"),
    [
        (Hours(), "Europe/Amsterdam", "04 18:00"),
        (Hours(begin=time(9), end=time(17)), "Europe/Amsterdam", "05 09:00"),
        (Hours(), "America/Denver", "04 18:00"),
        (Hours(), "Pacific/Auckland", "04 19:00"),
    ],
)
def test_her_hours_are_those_where_she_is(hours: Hours, zone: str, heard: str) -> None:
    life = two_days([("bench 80x5, rows 60x10", at(4))], looked_after(hours, zone))
    life.passes_to(at(5, 12))
    assert life.told == [(heard, [BENCH])]


def test_hours_end_after_they_begin() -> None:
    with pytest.raises(ValueError, match="within one day"):
        Hours(begin=time(20), end=time(8))


def test_what_nobody_settles_is_brought_up_again_once_and_together() -> None:
    life = two_days([("bench 80x5, rows 60x10", at(4)), ("can you check my form?", at(4, 20))])
    life.passes_to(at(31))
    of_both = [each for each in life.told if BENCH in each[1] and QUESTION in each[1]]
    assert life.told[:2] == [("04 18:00", [BENCH]), ("04 20:00", [QUESTION])]
    assert of_both == [("06 18:00", [BENCH, QUESTION])]
    assert life.leads[life.told.index(of_both[0])] == "still open"
    assert sum(BENCH in alerts for _, alerts in life.told) == 2


def test_what_came_in_the_night_is_brought_up_again_in_her_hours() -> None:
    life = two_days([("bench 80x5, rows 60x10", at(4, 23))])
    life.passes_to(at(7, 6, 59))
    assert life.told == [("05 07:00", [BENCH])]
    life.passes_to(at(7, 7))
    assert life.told[1:] == [("07 07:00", [BENCH])]


def test_what_fell_due_while_the_bot_was_off_and_is_found_in_the_night_waits_for_her_hours() -> None:
    life = two_days([("bench 80x5", at(4))])
    assert life.wake_at == at(4, 19)
    life.note(wake(life.state, at(4, 23)), at(4, 23))
    assert life.told == []
    life.passes_to(at(5, 12))
    assert life.told == [("05 07:00", [BENCH])]


def test_what_is_settled_is_not_brought_up_again_and_no_stall_is_told_twice() -> None:
    life = two_days([("bench 80x5, rows 60x10", at(4)), ("bench 80x5, rows 60x11", at(6, 12))])
    assert life.told == [("04 18:00", [BENCH])]
    stall = life.state.alerts[0].number
    life.hears(Decided(coach=MARA.number, alert=stall, remedy="keep on"), at(6, 13))
    life.passes_to(at(7))
    assert len(life.told) == 1
    assert life.state.memory.brought == ()


def test_a_stall_put_right_before_she_heard_of_it_is_never_told() -> None:
    life = two_days([("rows 60x10", at(4, 22)), ("bench 80x5", at(4, 23)), ("make that 7", at(4, 23, 5))])
    life.passes_to(at(5, 12))
    assert (life.told, life.state.alerts) == ([], ())


def test_her_hours_hold_from_when_she_changes_them() -> None:
    life = two_days([("bench 80x5, rows 60x10", at(4, 23))])
    later = replace(life.state.client.coach, hours=Hours(begin=time(9), end=time(17)))
    life.state = replace(life.state, client=replace(life.state.client, coach=later))
    life.passes_to(at(5, 12))
    assert life.told == [("05 09:00", [BENCH])]


def test_an_alert_from_before_this_was_noted_is_brought_up_once() -> None:
    life = two_days([("bench 80x5, rows 60x10", at(4))])
    life.state = replace(life.state, memory=life.state.memory.model_copy(update={"brought": ()}))
    life.hears(Text(text="thanks"), at(4, 20))
    life.passes_to(at(12))
    assert [when for when, alerts in life.told if BENCH in alerts] == ["04 18:00", "06 18:00"]


def test_a_card_shows_all_of_the_evidence_and_brings_nothing_up_once_more() -> None:
    life = two_days([("bench 80x5, rows 60x10", at(4))])
    life.passes_to(at(6, 19))
    life.hears(CardWanted(coach=MARA.number), at(6, 19))
    shown = [part.full for part in life.to_coach if isinstance(part, AlertPart)]
    life.passes_to(at(12))
    of_bench = [when for when, alerts in life.told if BENCH in alerts]
    assert (shown, of_bench) == ([True], ["04 18:00", "06 18:00", "06 19:00"])
