"""Whether a remedy has worked: looked at after some exposures, and told to the coach in numbers.

It has worked where the client has since shown more than ever before it. At the first look a lift that comes
back but is not there yet is too early to tell, and is looked at once more. All of it is the project's own
rule; a single client's numbers prove nothing, so the coach sees them beside the verdict.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

from domain.actions import Taken, TriedResult
from domain.client.bringing import in_coach_hours
from domain.client.draft import Draft
from domain.client.exposures import history, last_day_of
from domain.client.lifts import indices_since
from domain.client.plan import body_mass_kg
from domain.client.rotation import open_workout
from domain.client.workouts import workouts_closed
from domain.comparison import Body, best_of, compare
from domain.exercises import describe
from domain.exposure import Exposure
from domain.journal import Alert
from domain.memory import Tried
from domain.parts import Notice
from domain.review import review_of
from domain.sets import TrainingSet
from domain.state import ClientState
from domain.values import facts_of

FIRST_LOOK, LAST_LOOK = 3, 6
"""After how many exposures of the exercise a remedy is looked at, and looked at for the last time."""

ROUNDS = 2
"""After how many rounds a new programme is looked at."""

MOST_KEPT = 40
"""How many remedies of a client are remembered, the latest."""


@dataclass(frozen=True, slots=True)
class Found:
    """What a look at a remedy found: the sets `then`, `now` and the `best` before, or a programme's gain.

    Of several exercises, how many were `looked_at`, and in how many of them it `worked`.
    """

    result: TriedResult
    exposures: int
    then: TrainingSet | None = None
    now: TrainingSet | None = None
    best: TrainingSet | None = None
    gain_per_round: float | None = None
    looked_at: int | None = None
    worked: int | None = None


def note_remedy(draft: Draft, alert: Alert, remedy: Taken) -> None:
    """Remember a remedy for a stall or a review, to see whether it works; an older one of the same is over.

    What stalled again did not work; what a new programme cuts short is never told.
    """
    if alert.reason not in {"stall", "review"} or remedy == "seen":
        return
    is_programme = remedy == "next programme"
    older = [
        each
        if each.result not in {"open", "too early"} or not (is_programme or is_about(each, alert))
        else each.model_copy(update={"result": "cut short" if is_programme else "did not"})
        for each in draft.memory.tried
    ]
    exercise = alert.exercise
    swaps = {each.exercise: each.instead for each in draft.memory.swaps}
    if remedy == "swap" and exercise is not None:
        exercise = swaps.get(exercise, exercise)
    days = [last_day_of(draft.state, each) for each in alert.exercises]
    since = max((day for day in days if day is not None), default=draft.today)
    taken = Tried(
        alert=alert.number,
        remedy=remedy,
        by=draft.client.coach.number,
        on=draft.today,
        since=since,
        exercise=None if is_programme else exercise,
        workout=str(alert.evidence.get("workout", "")),
        exercises=alert.exercises if alert.exercise is None and not is_programme else (),
    )
    draft.remember(tried=(*older, taken)[-MOST_KEPT:])


def is_about(tried: Tried, alert: Alert) -> bool:
    """Return whether a remedy was for what an alert is about."""
    done_since = (tried.exercise,) if tried.exercise is not None else tried.exercises
    return bool({*done_since} & {*alert.exercises}) or (not done_since and not alert.exercises)


def follow_up(draft: Draft) -> tuple[Notice, ...]:
    """Return what the coach is to be told of each remedy that is due for a look, in the coach's hours."""
    if draft.at < in_coach_hours(draft.state, draft.at):
        return ()
    notices = []
    for tried, found in list(ripe(draft.state)):
        looked = tried.model_copy(
            update={"result": found.result, "looked": found.exposures, "looked_on": draft.today}
        )
        others = (looked if each.alert == tried.alert else each for each in draft.memory.tried)
        draft.remember(tried=tuple(others))
        stored = draft.client.programme
        facts = {
            "client": draft.client.name,
            "remedy": tried.remedy,
            "exercises": [tried.exercise] if tried.exercise is not None else list(tried.exercises),
            "on": tried.on.isoformat(),
            "programme": stored.programme.name if stored else None,
            **facts_of(found),
        }
        notices.append(Notice(topic="followed up", facts=facts))
    return tuple(notices)


def ripe(state: ClientState) -> Iterator[tuple[Tried, Found]]:
    """Give each remedy that is due for a look, with what is found."""
    for tried in state.memory.tried:
        if tried.result in {"open", "too early"}:
            if tried.exercise is not None:
                found = of_exercise(state, tried)
            else:
                found = of_several(state, tried) if tried.exercises else of_programme(state, tried)
            if found is not None:
                yield tried, found


def of_several(state: ClientState, tried: Tried) -> Found | None:
    """Look at a remedy for several exercises; None while it is not time. It worked where it did in most."""
    workouts = {record.name for record in state.workouts}
    pairs = [(workout, exercise) for exercise in tried.exercises for workout in sorted(workouts)]
    known = [past for pair in pairs if (past := history(state, *pair, before=open_workout(state)))]
    found = [look_at(state, past, tried) for past in known]
    looks = [each for each in found if each is not None]
    if not looks or (len(looks) < len(known) and max(each.exposures for each in looks) < LAST_LOOK):
        return None
    worked = sum(each.result == "worked" for each in looks)
    coming = sum(each.result == "too early" for each in looks)
    result: TriedResult = "did not"
    if 2 * worked > len(looks):
        result = "worked"
    elif 2 * (worked + coming) > len(looks):
        result = "too early"
    return Found(result, min(each.exposures for each in looks), looked_at=len(looks), worked=worked)


def of_exercise(state: ClientState, tried: Tried) -> Found | None:
    """Look at a remedy for one exercise; None while it is not time."""
    past = history(state, tried.workout, tried.exercise or "", before=open_workout(state))
    return look_at(state, past, tried) if past else None


def look_at(state: ClientState, past: tuple[Exposure, ...], tried: Tried) -> Found | None:
    """Look at the exposures `past` (one or more) of one exercise, for a remedy; None while it is not time."""
    exercise = past[-1].exercise
    past = tuple(each for each in past if each.kind == past[-1].kind)
    earlier, later = parted(past, tried.since)
    exposures = len(later)
    if exposures < (LAST_LOOK if tried.looked else FIRST_LOOK):
        return None
    if not earlier:
        # The alternative is new: its first exposure is what the others are held against.
        earlier, later = later[:1], later[1:]
    body = Body(body_mass_kg(state), describe(exercise).body_share)
    best, best_now = (
        best_of([one for each in some for one in each.counting], body) for some in (earlier, later)
    )
    then, first, now = (best_of(each.counting, body) for each in (earlier[-1], later[0], later[-1]))
    result: TriedResult = "did not"
    if compare(best_now, best, body).result == "beat":
        result, now = "worked", best_now
    elif exposures < LAST_LOOK and compare(now, first, body).result == "beat":
        result = "too early"
    return Found(result, exposures, then, now, best)


def parted(past: tuple[Exposure, ...], since: date) -> tuple[tuple[Exposure, ...], tuple[Exposure, ...]]:
    """Return the exposures until the day `since`, and those after it."""
    return tuple(each for each in past if each.on <= since), tuple(each for each in past if each.on > since)


def of_programme(state: ClientState, tried: Tried) -> Found | None:
    """Look at a new programme; None while its rounds are not done."""
    stored = state.client.programme
    closed = [record for record in workouts_closed(state) if record.on >= tried.on]
    if stored is None or len(closed) < ROUNDS * len(stored.programme.schedule.order):
        return None
    found = review_of(indices_since(state, closed[0].on))
    if found is None:
        return None
    result: TriedResult = "worked" if found.gain_per_round > 0 else "did not"
    return Found(result, found.rounds, gain_per_round=found.gain_per_round)
