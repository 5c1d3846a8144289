"""Stalls: looked for as exercises are done, told to the client, brought to the coach.

Where the sheet or the coach names a plain rule, that decides; else the engine does, which may find that
several exercises slow together: then the matter is the client, and takes in what had stalled alone.
"""

from collections.abc import Sequence
from typing import Any

from domain.client.draft import Draft
from domain.client.exposures import history, last_day_of
from domain.client.lifts import Key, body_of, lifts_of, since_break
from domain.client.lines import Line
from domain.client.trouble import forget_stalls
from domain.client.verdicts import aimed_next, verdict_on
from domain.exposure import Exposure
from domain.gaining import Findings, Standing, Together
from domain.journal import Alert
from domain.memory import Quiet
from domain.parts import Notice
from domain.plain_rule import Unbeaten, find_unbeaten
from domain.stall import Lift, look_at
from domain.values import facts_of

EXPOSURES_LEFT_ALONE = 3
"""For how many exposures no new stall is looked for once one is settled. The house's own choice."""

LAST_SHOWN = 6
"""How many of the last exposures are the evidence of a stall that the engine finds."""

Done = tuple[str, Line]
"""A workout's name, and the line of it that has just been done."""


def look_for_stalls(draft: Draft, done: Sequence[Done]) -> list[str]:
    """Tell of stalls of what has just been done, each once until the coach has settled it.

    Return the exercises of which to ask the client (`ask_about_stalls`).
    """
    if not done:
        return []
    if (tell_after := rule_of(draft)) is not None:
        return [line.exercise for name, line in done if tell_by_rule(draft, name, line, tell_after)]
    lifts = lifts_of(draft.state)
    found = look_at(list(lifts.values()))
    if found.together is not None:
        return tell_of_client(draft, lifts, found.together)
    if draft.open_alert("stall") is not None:
        return []
    standings = dict(zip(lifts, found.standings, strict=True))
    keys = [((name, line.exercise), line) for name, line in done]
    return [
        line.exercise for key, line in keys if tell_of_lift(draft, line, lifts.get(key), standings.get(key))
    ]


def rule_of(draft: Draft) -> int | None:
    """Return the plain rule that holds for this client: the sheet's, else the coach's, else none."""
    stored = draft.client.programme
    of_sheet = stored.programme.tell_after if stored else None
    return draft.client.coach.tell_after if of_sheet is None else of_sheet


def tell_by_rule(draft: Draft, workout: str, line: Line, tell_after: int) -> bool:
    """Tell of a stall by the plain rule, where it is new; return whether it is."""
    if draft.open_alert("stall", line.exercise) is not None:
        return False
    past = history(draft.state, workout, line.exercise)
    stall = stall_by_rule(draft, past, tell_after)
    if stall is None:
        return False
    draft.notice("stall", exercises=[line.exercise], without_beat=stall.without_beat)
    evidence = {"exercise": line.exercise, "workout": workout, **facts_of(stall)}
    draft.alert("stall", line.exercise, {**evidence, **reasons_in(draft, line, past, stall.exposures)})
    return True


def stall_by_rule(draft: Draft, past: tuple[Exposure, ...], tell_after: int) -> Unbeaten | None:
    """Return the stall at the end of `past`, exposures of one exercise, by the plain rule."""
    if not past or is_left_alone(draft, past[0].exercise, past):
        return None
    settled = settled_on(draft, past[0].exercise)
    recent = since_break(draft.state, past)
    kept = tuple(each for each in recent if settled is None or each.on > settled.since)
    body = body_of(draft.state, past[0].exercise)
    return find_unbeaten(
        kept, tell_after, body_mass_kg=body.mass_kg, body_share=body.share, joints=body.joints
    )


def tell_of_lift(draft: Draft, line: Line, lift: Lift | None, standing: Standing | None) -> bool:
    """Tell of a stall of one exercise that the engine has found; return whether it is new.

    Of one that is open already the evidence is brought up to date.
    """
    if lift is None or standing is None or not standing.stalled or standing.since is None:
        return False
    told = draft.open_alert("stall", line.exercise)
    if told is None and left_alone_in(draft, lift):
        return False
    past, shown = lift.exposures, lift.exposures[-LAST_SHOWN:]
    evidence = {
        **facts_of(standing),
        "exercise": line.exercise,
        "workout": past[-1].workout,
        "counted": standing.exposures,
        "exposures": facts_of(shown),
        "exposures_since": sum(each.on > standing.since for each in past),
        **reasons_in(draft, line, past, shown),
    }
    if told is not None:
        draft.note_evidence(told, **evidence)
        return False
    since, declining = standing.since.isoformat(), standing.declining
    draft.notice("stall", exercises=[line.exercise], since=since, declining=declining)
    draft.alert("stall", line.exercise, evidence)
    return True


def tell_of_client(draft: Draft, lifts: dict[Key, Lift], found: Together) -> list[str]:
    """Tell that a client slows in several exercises; return those to ask about, where it is new.

    Of one that is open already the evidence is brought up to date. An open stall of a single one of them is
    part of it from now on.
    """
    slowing = [list(lifts.values())[at] for at in found.which]
    exercises = list(dict.fromkeys(lift.exposures[-1].exercise for lift in slowing))
    evidence = {
        **facts_of(found),
        "exercises": exercises,
        "lifts": [lift_evidence(lift, found) for lift in slowing],
    }
    told = draft.open_alert("stall")
    if told is not None:
        draft.note_evidence(told, **evidence)
        return []
    if any(left_alone_in(draft, lift) for lift in slowing):
        return []
    alone = [alert for alert in draft.state.alerts if alert.reason == "stall" and alert.exercise in exercises]
    answers = {slot: said for alert in alone for slot, said in alert.evidence.get("answers", {}).items()}
    evidence["was_told"] = [alert.exercise for alert in alone if draft.was_brought(alert)]
    draft.settle(*alone)
    draft.notice("stall", exercises=exercises, since=found.since.isoformat(), declining=found.declining)
    draft.alert("stall", None, evidence | ({"answers": answers} if answers else {}))
    return [each for each in exercises if each not in {alert.exercise for alert in alone}]


def lift_evidence(lift: Lift, found: Together) -> dict[str, Any]:
    """Return what one exercise shows of a common end: the last exposures."""
    return {
        "exercise": lift.exposures[-1].exercise,
        "exposures": facts_of(lift.exposures[-LAST_SHOWN:]),
        "exposures_since": sum(each.on > found.since for each in lift.exposures),
    }


def reasons_in(
    draft: Draft, line: Line, past: tuple[Exposure, ...], shown: tuple[Exposure, ...]
) -> dict[str, Any]:
    """Return, as evidence, the verdict on each exposure shown but the first, and what comes next."""
    places = [at for at, each in enumerate(past) if each in shown][1:]
    verdicts = [verdict_on(draft.state, past[: at + 1]) for at in places]
    return {
        "verdicts": facts_of(verdicts),
        "aimed": facts_of(aimed_next(draft.state, line, past, past[-1].on)),
    }


def look_again(draft: Draft, done: Sequence[Done]) -> None:
    """Withdraw stalls that were told of, where the sets of `done` as they now stand show none."""
    about = {line.exercise for _, line in done}
    alerts = [alert for alert in draft.state.alerts if alert.reason == "stall" and about & {*alert.exercises}]
    if not alerts:
        return
    if (tell_after := rule_of(draft)) is not None:
        pasts = [history(draft.state, name, line.exercise) for name, line in done]
        stalled = {past[0].exercise for past in pasts if stall_by_rule(draft, past, tell_after)}
        over = [alert for alert in alerts if not {*alert.exercises} & stalled]
    else:
        lifts = lifts_of(draft.state)
        found = look_at(list(lifts.values()))
        over = [alert for alert in alerts if not is_found(alert, lifts, found)]
    for alert in over:
        withdraw(draft, alert)


def is_found(alert: Alert, lifts: dict[Key, Lift], found: Findings) -> bool:
    """Return whether the engine finds what an alert says."""
    if alert.exercise is None:
        return found.together is not None
    return any(
        standing.stalled and exercise == alert.exercise
        for (_, exercise), standing in zip(lifts, found.standings, strict=True)
    )


def withdraw(draft: Draft, alert: Alert) -> None:
    """Settle a stall that was none; the coach hears so if she has heard of it."""
    was_brought = draft.was_brought(alert)
    draft.settle(alert)
    forget_stalls(draft, alert.exercises)
    if was_brought:
        facts = {"client": draft.client.name, "exercises": list(alert.exercises)}
        draft.tell_coach(Notice(topic="stall withdrawn", facts=facts))


def leave_alone(draft: Draft, exercise: str, exposures: int = EXPOSURES_LEFT_ALONE) -> None:
    """Look for no new stall of the exercise for some exposures: whatever was decided has to show first."""
    others = tuple(each for each in draft.memory.quiet if each.exercise != exercise)
    since = last_day_of(draft.state, exercise) or draft.today
    draft.remember(quiet=(*others, Quiet(exercise=exercise, since=since, exposures=exposures)))


def settled_on(draft: Draft, exercise: str) -> Quiet | None:
    """Return when a stall of the exercise was settled last; None where none ever was.

    What came before, and was then lightened on purpose or put back, is no part of a new stall.
    """
    return next((each for each in draft.memory.quiet if each.exercise == exercise), None)


def is_left_alone(draft: Draft, exercise: str, past: Sequence[Exposure]) -> bool:
    """Return whether no stall of the exercise is to be looked for yet."""
    settled = settled_on(draft, exercise)
    return settled is not None and sum(each.on > settled.since for each in past) < settled.exposures


def left_alone_in(draft: Draft, lift: Lift) -> bool:
    """Return whether no stall of a lift is to be looked for yet."""
    return is_left_alone(draft, lift.exposures[0].exercise, lift.exposures)
