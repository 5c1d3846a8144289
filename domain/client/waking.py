"""What the passing of time comes to for a client: reminders, a nudge, a missed workout, an end of the day.

Every event that lies ahead follows from the state alone, so there is no list of jobs to fall out of step:
`next_wake` gives the earliest, and `wake` does all that are due. What was done must no longer be due: an
event that would come again and again is given up for a while, so that no waking can go on for ever.
"""

from collections import Counter
from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from typing import Literal
from zoneinfo import ZoneInfo

from domain.calendar import at_local, local_day
from domain.client.bringing import bring_up, bringing, in_coach_hours
from domain.client.changes import note_told
from domain.client.closing import sum_up_closed
from domain.client.draft import Draft
from domain.client.following import follow_up, ripe
from domain.client.joining_flow import (
    go_on,
    half_way_moment,
    remind_of_question,
    reminder_moment,
    tell_of_half_way,
)
from domain.client.later import remind_again
from domain.client.likely import offer_likely
from domain.client.missing import tell_of_missed
from domain.client.plan import plan_of
from domain.client.plans import begin_pause
from domain.client.rotation import Due, catch_up, due, is_complete, keep_due, open_workout
from domain.client.tallying import keep_tally
from domain.client.week import pass_turn
from domain.client.workouts import close, sum_up_later
from domain.journal import WorkoutRecord
from domain.outcome import Outcome, Stuck, WorkoutKept
from domain.parts import Nudge, Reminder, Weight
from domain.state import ClientState

Event = Literal[
    "welcome",
    "join",
    "half-way",
    "away",
    "return",
    "close",
    "sum up",
    "rest",
    "remind",
    "nudge",
    "missed",
    "bring",
    "again",
]

MOST_AT_ONCE = 20
"""How often one event can be due in one waking. However long the bot was off, it is once or twice."""

STUCK_FOR = timedelta(hours=1)
"""For how long an event is left alone that would be due without an end."""

NUDGE_AFTER = timedelta(hours=3)
"""How long after the reminder a nudge can come at the earliest. The house's own choice."""

UNASKED_A_DAY = 2
"""After so many messages of a day that the client has not asked for no nudge follows."""

EVENING = time(20)
"""Most people who train after work are back by then: no nudge comes before. The house's own choice."""

QUIETER_AFTER = 3
"""After so many workouts missed in a row only reminders come: the coach knows, and nobody is to be nagged."""

SILENT_AFTER = 6
"""After so many missed in a row the reminders rest as well, until the client writes.

Prompts wear off (66% more steps at first, 14% on average, in a micro-randomised trial of walking, as a
secondary text has it), and one-way messages did hardly anything where two-way ones helped (risk ratios 1.04
and 1.23; Wald et al. 2015, Am J Med 128:1139). The number is the house's own choice."""

UNASKED_IS_HABIT = 3
"""Who has told of so many workouts in a row before being asked gets no nudge, until one is missed.

Messages of individual or decreasing frequency did better than those of a fixed one (Head et al. 2013, Soc Sci
Med 97:41-48, 19 trials). The number is the house's own choice, like the hour of a nudge; for the best hour of
a reminder no pooled evidence was found, so the client chooses it."""

LONG_AGO = datetime.min.replace(tzinfo=UTC)
"""Before anything that can be due: what is due since then comes first."""

MORNING = time(9)
"""At this hour of the day after it is asked what became of a workout, or at the client's own where that is
earlier: there is a day left to make it up. The house's own choice."""

LAST_HOUR = time(21)
"""No nudge comes later than this, local time. The house's own choice."""


def next_wake(state: ClientState, after: datetime, stuck: frozenset[Event] = frozenset()) -> datetime | None:
    """Return the moment of the next event (aware, UTC), or None. Events that are past are due at `after`.

    Those that are `stuck` wait for a while, whenever they are due.
    """
    moments = [
        max(moment, after + STUCK_FOR) if event in stuck else moment for moment, event in events(state, after)
    ]
    return max(after, min(moments)) if moments else None


def wake(state: ClientState, now: datetime) -> Outcome:
    """Do all that is due at `now`."""
    draft = Draft(state, now)
    stuck = do_due(draft)
    keep_tally(draft)
    keep_due(draft)
    offer_likely(draft)
    if not draft.is_empty and draft.memory.remind_again_at == state.memory.remind_again_at:
        before = draft.memory.unasked if draft.memory.unasked_on == draft.today else 0
        draft.remember(unasked_on=draft.today, unasked=before + 1)
    note_told(draft)
    weight: Weight = "nudge" if state.memory.welcomed else "answer"
    outcome = draft.outcome(next_wake(draft.state, now, stuck), weight)
    return replace(outcome, stuck=tuple(Stuck(draft.client.number, each) for each in sorted(stuck)))


def do_due(draft: Draft) -> frozenset[Event]:
    """Do all that is due, the earliest first; return the events that would be due without an end.

    What is due follows from the state and the moment alone. So an event that has changed nothing is due for
    ever, and is left alone at once; one that changes something each time, after `MOST_AT_ONCE` times.
    """
    done: Counter[Event] = Counter()
    stuck: frozenset[Event] = frozenset()
    while ripe := [
        (moment, event)
        for moment, event in events(draft.state, draft.at)
        if moment <= draft.at and event not in stuck
    ]:
        _, event = min(ripe, key=lambda each: each[0])
        before = draft.decided
        happen(draft, event)
        done[event] += 1
        if draft.decided == before or done[event] == MOST_AT_ONCE:
            stuck |= {event}
    return stuck


def events(state: ClientState, now: datetime) -> Iterator[tuple[datetime, Event]]:
    """Give each event that still lies ahead of this client, or was not yet done, with its moment."""
    zone = ZoneInfo(state.client.zone)
    today = local_day(now, zone)
    memory = state.memory
    if not memory.welcomed:
        yield LONG_AGO, "welcome"
    if (moment := reminder_moment(memory)) is not None:
        yield moment, "join"
    if (moment := half_way_moment(memory)) is not None:
        yield in_coach_hours(state, max(moment, now)), "half-way"
    if memory.remind_again_at is not None:
        yield memory.remind_again_at, "again"
    if memory.pause_ahead is not None:
        yield at_local(memory.pause_ahead.since, time(0), zone), "away"
    if memory.paused and memory.paused_until is not None:
        yield at_local(memory.paused_until, time(0), zone), "return"
    # What fell due while nobody was there to say it waits for her next hours as well.
    yield from ((in_coach_hours(state, max(moment, now)), "bring") for moment in bringing(state))
    if any(ripe(state)):
        yield in_coach_hours(state, now), "bring"
    remind_at = state.client.remind_at
    opened = open_workout(state)
    if opened is not None:
        last_day = max(opened.on, memory.rest_on or opened.on)
        yield at_local(last_day + timedelta(days=2), time(0), zone), "close"
        if is_rest_to_come(state, opened) and not memory.reminders_off:
            yield at_local(last_day, remind_at, zone), "rest"
    if memory.to_sum_up is not None and memory.sum_up_on is not None and not memory.reminders_off:
        yield at_local(memory.sum_up_on, remind_at, zone), "sum up"
    coming = due(state, today)
    if coming is None or memory.reminders_off:
        return
    if memory.reminded_on is None or memory.reminded_on < coming.on:
        yield at_local(coming.on, remind_at, zone), "remind"
        return
    had_enough = memory.unasked_on == coming.on and memory.unasked >= UNASKED_A_DAY
    is_quiet = (
        coming.on < today
        or had_enough
        or memory.missed_in_a_row >= QUIETER_AFTER
        or memory.told_unasked >= UNASKED_IS_HABIT
    )
    if memory.nudged_on != coming.on and not is_quiet and (nudge := nudge_moment(coming.on, remind_at, zone)):
        yield nudge, "nudge"
    # It may have come nearer since it was reminded of: the day of the reminder is the one to be asked about.
    asked_about = max(coming.on, memory.reminded_on)
    yield at_local(asked_about + timedelta(days=1), min(remind_at, MORNING), zone), "missed"


def nudge_moment(on: date, remind_at: time, zone: ZoneInfo) -> datetime | None:
    """Return when to nudge on that day; None where the reminder already comes late in the evening."""
    reminded = at_local(on, remind_at, zone)
    latest = at_local(on, LAST_HOUR, zone)
    moment = min(max(reminded + NUDGE_AFTER, at_local(on, EVENING, zone)), latest)
    return moment if moment - reminded >= timedelta(hours=1) else None


def happen(draft: Draft, event: Event) -> None:
    """Do one event."""
    match event:
        case "welcome":
            welcome(draft)
        case "join":
            remind_of_question(draft)
        case "half-way":
            tell_of_half_way(draft)
        case "remind":
            remind(draft)
        case "nudge":
            nudge(draft)
        case "missed":
            miss(draft)
        case "away":
            begin_pause(draft)
        case "return":
            draft.remember(paused=False)
        case "close":
            opened = open_workout(draft.state)
            if opened is not None:
                close(draft, opened)
                sum_up_later(draft, opened)
        case "sum up":
            sum_up_closed(draft)
        case "rest":
            remind_of_rest(draft)
        case "bring":
            bring_up(draft, follow_up(draft))
        case "again":
            remind_again(draft)


def welcome(draft: Draft) -> None:
    """Say who this is, and what it is not: the first thing that a client reads, be it with the first
    question."""
    client = draft.client
    if draft.memory.joining is not None:
        go_on(draft)
        return
    draft.remember(welcomed=True)
    draft.notice(
        "welcome",
        name=client.name,
        coach=client.coach.name,
        programme=client.programme.programme.name if client.programme else None,
        unit=client.unit,
        zone=client.zone,
    )


def remind(draft: Draft) -> None:
    """Say what today's workout is; one whose day has gone by while the bot was away comes today."""
    coming = reminded(draft)
    if coming is not None:
        draft.say(
            Reminder(workout=coming.workout, on=draft.today),
            plan_of(draft.state, coming.workout, draft.today),
        )


def remind_beside(draft: Draft) -> None:
    """Say what today's workout is in an answer that has just made it due, so that no reminder need follow."""
    coming = reminded(draft)
    if coming is not None:
        draft.say(plan_of(draft.state, coming.workout, draft.today))


def reminded(draft: Draft) -> Due | None:
    """Return today's workout, which counts as reminded of from now on; None where there is none."""
    coming = catch_up(draft)
    if coming is None or coming.on > draft.today:
        return None
    draft.remember(reminded_on=draft.today)
    asks_at = nudge_moment(draft.today, draft.client.remind_at, draft.zone)
    if asks_at is not None and asks_at <= draft.at:
        # A reminder that comes so late needs no nudge on its heels.
        draft.remember(nudged_on=draft.today)
    return coming


def is_to_remind(state: ClientState, now: datetime) -> bool:
    """Return whether a reminder is due by now."""
    return state.memory.welcomed and any(
        event == "remind" and moment <= now for moment, event in events(state, now)
    )


def is_rest_to_come(state: ClientState, opened: WorkoutRecord) -> bool:
    """Return whether the rest of the workout under way was moved to a day of which no reminder came yet."""
    rest_on, reminded_on = state.memory.rest_on, state.memory.reminded_on
    if rest_on is None or rest_on <= opened.on or is_complete(state, opened):
        return False
    return reminded_on is None or reminded_on < rest_on


def remind_of_rest(draft: Draft) -> None:
    """Say what is left of a workout, on the day to which its rest was moved; one long past is left out."""
    opened = open_workout(draft.state)
    draft.remember(reminded_on=draft.today)
    if opened is not None and draft.memory.rest_on == draft.today:
        draft.say(
            Reminder(workout=opened.name, on=draft.today),
            plan_of(draft.state, opened.name, draft.today, opened),
        )


def nudge(draft: Draft) -> None:
    """Ask once, kindly, where nothing was reported."""
    coming = due(draft.state, draft.today)
    if coming is None:
        return
    draft.remember(nudged_on=coming.on)
    draft.say(Nudge(workout=coming.workout, on=coming.on))


def miss(draft: Draft) -> None:
    """Count the workout as missed for that day, and ask what became of it."""
    coming = due(draft.state, draft.today)
    stored = draft.client.programme
    if coming is None or stored is None:
        return
    record = WorkoutRecord(
        number=draft.number("last_workout"),
        programme=stored.number,
        name=coming.workout,
        on=coming.on,
        state="missed",
        round=0,
    )
    draft.change(WorkoutKept(record))
    pass_turn(draft, record.name, record.on)
    draft.remember(
        moved_to=None,
        moved_workout=None,
        moved_from=None,
        extra_rest_days=0,
        missed_in_a_row=draft.memory.missed_in_a_row + 1,
        told_unasked=0,
    )
    tell_of_missed(draft)
    if draft.memory.missed_in_a_row >= SILENT_AFTER:
        draft.remember(paused=True, paused_until=None)
        draft.notice("reminders rest", coach=draft.client.coach.name)
        return
    following = due(draft.state, draft.today)
    if draft.memory.missed_in_a_row <= QUIETER_AFTER:
        again_today = following is not None and following.on <= draft.today
        draft.ask(
            "missed",
            {"workout": record.number},
            {"workout": record.name, "on": record.on.isoformat()},
            ("Trained", "Missed it") if again_today else ("Trained", "Today instead", "Missed it"),
        )
