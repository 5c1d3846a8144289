"""When a matter is brought to the coach: at once, in the coach's hours, and once again if left open.

A warning sign and pain come at once at any hour; they are told as they are raised. Everything else waits for
the coach's hours, and a stall for the rest of the workout, so that what is found in one workout comes in one
message. After it was brought up again a matter is left to the coach's weekly digest.
"""

from collections.abc import Iterator, Sequence
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from domain.calendar import local_day, not_before
from domain.client.draft import Draft
from domain.client.rotation import is_complete, open_workout
from domain.journal import Alert
from domain.memory import Brought
from domain.parts import Notice
from domain.state import ClientState

GATHERED_FOR = timedelta(hours=1)
"""For how long at most a stall waits for the rest of the workout, and an answer for the other one: who trains
has told of the rest by then. The house's own choice."""

AGAIN_AFTER = timedelta(days=2)
"""After how long a matter that nobody has settled is brought up again. The house's own choice."""


def in_coach_hours(state: ClientState, moment: datetime) -> datetime:
    """Return `moment`, put off to the coach's next hours where it lies outside them."""
    coach = state.client.coach
    return not_before(moment, ZoneInfo(coach.zone), coach.hours.begin, coach.hours.end)


def first_at(state: ClientState, alert: Alert) -> datetime:
    """Return when an alert that the coach has not heard of is brought up."""
    opened = open_workout(state)
    goes_on = opened is not None and not is_complete(state, opened)
    waits = alert.reason == "stall" and goes_on
    return in_coach_hours(state, alert.at + GATHERED_FOR if waits else alert.at)


def bringing(state: ClientState) -> Iterator[datetime]:
    """Give each moment at which something about an open alert is to be brought to the coach."""
    for alert, brought in known(state):
        if brought.at is None:
            yield first_at(state, alert)
        elif is_left_open(alert, brought):
            yield in_coach_hours(state, brought.at + AGAIN_AFTER)
    answers = answers_at(state)
    if answers is not None:
        yield answers


def answers_at(state: ClientState) -> datetime | None:
    """Return when the coach is to hear answers about a stall that she knows of; None where there are none.

    They wait for the answer that is still to come, but not for long.
    """
    answers = state.memory.stall_answers
    if answers is None or any(
        alert.reason == "stall" and brought.at is None and {*alert.exercises} & {*answers.exercises}
        for alert, brought in known(state)
    ):
        return None
    still_asked = any(each.slot in {"trouble", "lately"} for each in state.memory.questions)
    return in_coach_hours(state, answers.at + GATHERED_FOR if still_asked else answers.at)


def known(state: ClientState) -> Iterator[tuple[Alert, Brought]]:
    """Give each open alert with when it was brought up: as it was raised, where nothing is noted of it."""
    noted = {each.alert: each for each in state.memory.brought}
    for alert in state.alerts:
        yield alert, noted.get(alert.number) or Brought(alert=alert.number, at=alert.at)


def is_left_open(alert: Alert, brought: Brought) -> bool:
    """Return whether a matter that the coach has heard of is to come once again: good news never is."""
    return not brought.again and not (alert.reason == "review" and bool(alert.evidence.get("risen")))


def bring_up(draft: Draft, followed_up: Sequence[Notice] = ()) -> None:
    """Bring to the coach what is due by now; what comes to light at the same time, in one message.

    Once a stall is due, those that are only waiting for the workout's end come with it; once a matter is to
    be brought up again, so are all that would be on the same day of the coach's. `followed_up` is what became
    of remedies: of an exercise that has stalled again it comes with the stall.
    """
    draft.note_brought()
    state, now = draft.state, draft.at
    if now < in_coach_hours(state, now):
        return
    unheard = [alert for alert, brought in known(state) if brought.at is None]
    ripe = [alert for alert in unheard if first_at(state, alert) <= now]
    if any(alert.reason == "stall" for alert in ripe):
        ripe = [alert for alert in unheard if alert in ripe or alert.reason == "stall"]
    stalled = {each for alert in ripe if alert.reason == "stall" for each in alert.exercises}
    lead = tuple(each for each in followed_up if stalled & {*each.facts["exercises"]})
    if ripe:
        draft.bring_to_coach(*ripe, lead=lead)
        drop_answers(draft, ripe)
    tell_answers(draft)
    again = [
        (alert, in_coach_hours(state, brought.at + AGAIN_AFTER))
        for alert, brought in known(draft.state)
        if brought.at is not None and is_left_open(alert, brought)
    ]
    if any(moment <= now for _, moment in again):
        bring_up_again(draft, [alert for alert, moment in again if moment <= now or on_day(draft, moment)])
    for each in followed_up:
        if each not in lead:
            draft.tell_coach(each)


def drop_answers(draft: Draft, alerts: list[Alert]) -> None:
    """Forget answers that have come to the coach with the alerts that they are about."""
    answers = draft.memory.stall_answers
    if answers is not None and {each for alert in alerts for each in alert.exercises} >= {*answers.exercises}:
        draft.remember(stall_answers=None)


def tell_answers(draft: Draft) -> None:
    """Tell the coach the answers about a stall once, where it is time for them."""
    answers, moment = draft.memory.stall_answers, answers_at(draft.state)
    if answers is None or moment is None or moment > draft.at:
        return
    draft.remember(stall_answers=None)
    facts = {"client": draft.client.name, "exercises": list(answers.exercises), "answers": answers.said}
    draft.tell_coach(Notice(topic="stall answers", facts=facts))


def bring_up_again(draft: Draft, alerts: list[Alert]) -> None:
    """Bring matters to the coach once more, and say that it is for the last time."""
    zone = ZoneInfo(draft.client.coach.zone)
    since = local_day(min(alert.at for alert in alerts), zone)
    facts = {"client": draft.client.name, "since": since.isoformat()}
    draft.bring_to_coach(*alerts, lead=(Notice(topic="still open", facts=facts),), again=True)


def on_day(draft: Draft, moment: datetime) -> bool:
    """Return whether `moment` is on the day that it is now for the coach."""
    zone = ZoneInfo(draft.client.coach.zone)
    return local_day(moment, zone) == local_day(draft.at, zone)
