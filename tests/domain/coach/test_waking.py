"""The coach's digest: once a week in her zone, with what there is to be done, and silent otherwise."""

from dataclasses import replace
from datetime import UTC, date, datetime
from zoneinfo import ZoneInfo

import pytest

from domain.coach_memory import CoachMemory
from domain.decide import hear, wake
from domain.incoming import Heard, Text
from domain.outcome import Outcome
from domain.parts import ClientLine, Digest, Eager
from domain.state import Coach, CoachState

BEGAN = datetime(2026, 3, 4, 12, tzinfo=UTC)


def coach(
    zone: str = "Europe/Oslo", looked_back_at: datetime | None = BEGAN, **lines: ClientLine
) -> CoachState:
    return CoachState(
        coach=Coach(number=1, name="Mara", zone=zone, unit="kg"),
        memory=CoachMemory(looked_back_at=looked_back_at),
        clients=tuple(enumerate(lines.values(), start=2)),
    )


def line(name: str, *eager: Eager, stalled: bool = False) -> ClientLine:
    return ClientLine(
        name=name,
        programme="Harbour Base",
        last_workout=None,
        due_on=None,
        open_alerts=(("stall", "Row"),) if stalled else (),
        eager=eager,
    )


def jump(at: datetime) -> Eager:
    return Eager(
        rule="great jump", exercise="Row", workout="Pull", on=at.date(), at=at, facts={"percent": 25.0}
    )


def local(day: int, hour: int, zone: str = "Europe/Oslo", month: int = 3) -> datetime:
    return datetime(2026, month, day, hour, tzinfo=ZoneInfo(zone)).astimezone(UTC)


def digest_of(outcome: Outcome) -> Digest | None:
    if not outcome.says:
        return None
    ((part,),) = [say.parts for say in outcome.says]
    assert isinstance(part, Digest)
    return part


def looked_back(outcome: Outcome) -> datetime | None:
    assert isinstance(outcome.memory, CoachMemory)
    return outcome.memory.looked_back_at


def test_the_first_waking_begins_the_first_week_and_says_nothing() -> None:
    outcome = wake(coach(looked_back_at=None, noor=line("Noor", stalled=True)), BEGAN)
    assert (digest_of(outcome), looked_back(outcome), outcome.wake_at) == (None, BEGAN, local(9, 7))


@pytest.mark.parametrize(
    ("zone", "looked", "at"),
    [
        ("Europe/Oslo", local(9, 7), local(16, 7)),
        ("Europe/Oslo", local(9, 6), local(9, 7)),
        ("Pacific/Auckland", local(9, 7, "Pacific/Auckland"), local(16, 7, "Pacific/Auckland")),
        # The clocks go forward on the 29th: the hour on the wall stays.
        ("Europe/Oslo", local(23, 7), local(30, 7)),
    ],
)
def test_the_digest_comes_on_monday_at_seven_where_the_coach_is(
    zone: str, looked: datetime, at: datetime
) -> None:
    state = coach(zone, looked, noor=line("Noor", stalled=True))
    early = wake(state, looked)
    assert (digest_of(early), early.memory, early.wake_at) == (None, None, at)
    digest = digest_of(wake(state, at))
    assert digest is not None
    assert digest.since == looked.astimezone(ZoneInfo(zone)).date()


def test_it_has_only_those_with_whom_something_is_to_be_done_and_what_is_of_the_week() -> None:
    state = coach(
        quiet=line("Quiet"),
        stalled=line("Stalled", stalled=True),
        noor=line("Noor", jump(local(3, 18)), jump(local(6, 18))),
        old=line("Old", jump(local(3, 18))),
    )
    outcome = wake(state, local(9, 7))
    digest = digest_of(outcome)
    assert digest is not None
    assert (digest.since, digest.today) == (date(2026, 3, 4), date(2026, 3, 9))
    assert [(each.name, len(each.eager)) for each in digest.clients] == [("Stalled", 0), ("Noor", 1)]
    assert (looked_back(outcome), outcome.wake_at) == (local(9, 7), local(16, 7))
    assert outcome.says[0].weight == "alert"


def test_where_there_is_nothing_to_be_done_nothing_is_said_and_the_week_goes_on() -> None:
    outcome = wake(coach(quiet=line("Quiet"), old=line("Old", jump(local(3, 18)))), local(9, 7))
    assert (outcome.says, looked_back(outcome), outcome.wake_at) == ((), local(9, 7), local(16, 7))


def test_one_that_is_overdue_comes_once_and_not_in_the_night() -> None:
    state = coach(noor=line("Noor", jump(local(6, 18))))
    at_night = wake(state, local(25, 2))
    assert (digest_of(at_night), at_night.wake_at) == (None, local(25, 7))
    outcome = wake(state, local(25, 7))
    assert digest_of(outcome) is not None
    assert outcome.wake_at == local(30, 7)


def test_whatever_the_coach_says_the_next_digest_stays_where_it_is() -> None:
    state = coach(noor=line("Noor", jump(local(6, 18))))
    outcome = hear(state, Heard(1, local(6, 12), Text(text="who needs me?")))
    assert outcome.wake_at == local(9, 7)
    digest = digest_of(outcome)
    assert digest is not None
    assert (digest.since, [each.eager for each in digest.clients]) == (None, [()])


def test_a_coach_who_was_never_woken_is_woken_by_what_she_says() -> None:
    state = replace(coach(), memory=CoachMemory())
    assert hear(state, Heard(1, BEGAN, Text(text="hello"))).wake_at == BEGAN
