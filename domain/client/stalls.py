"""Stalls of an exercise and reviews of a programme: found here, told to the client, brought to the coach."""

from collections.abc import Sequence
from typing import Any

from domain.client.draft import Draft
from domain.client.exposures import history, last_day_of
from domain.client.lines import Line
from domain.client.plan import body_mass_kg
from domain.client.remedies import next_programme
from domain.client.trouble import forget_stall
from domain.client.verdicts import aimed_next, verdict_on
from domain.exercises import describe
from domain.exposure import Exposure
from domain.journal import WorkoutRecord
from domain.layoff import longest_break, share_after
from domain.memory import Quiet
from domain.parts import Notice
from domain.stall import Stall, find_stall, review
from domain.values import facts_of

EXPOSURES_LEFT_ALONE = 3
"""For how many exposures no new stall is looked for once one is settled. The house's own choice."""


def look_for_stall(draft: Draft, line: Line, past: tuple[Exposure, ...]) -> bool:
    """Tell of a stall of this exercise, once until the coach has settled it; return whether it is new.

    Who looks then asks about all that were found (`ask_about_stalls`).
    """
    recent = since_settled(draft, line.exercise, past)
    if recent is None or draft.open_alert("stall", line.exercise) is not None:
        return False
    stall = stall_in(draft, line, recent)
    if stall is None:
        return False
    draft.notice("stall", exercise=line.exercise, without_beat=stall.without_beat)
    draft.alert("stall", line.exercise, {**facts_of(stall), **reasons_in(draft, line, past, stall)})
    return True


def reasons_in(draft: Draft, line: Line, past: tuple[Exposure, ...], stall: Stall) -> dict[str, Any]:
    """Return, as evidence, the verdict on each exposure of a stall but the first, and what comes next."""
    first = len(past) - len(stall.exposures)
    verdicts = [verdict_on(draft.state, past[: at + 1]) for at in range(first + 1, len(past))]
    return {
        "verdicts": facts_of(verdicts),
        "aimed": facts_of(aimed_next(draft.state, line, past, past[-1].on)),
    }


def look_again(draft: Draft, line: Line, past: tuple[Exposure, ...]) -> None:
    """Withdraw a stall that was told of, where the sets as they now stand show none."""
    alert = draft.open_alert("stall", line.exercise)
    left = since_settled(draft, line.exercise, past)
    if alert is None or (left and stall_in(draft, line, left) is not None):
        return
    was_brought = draft.was_brought(alert)
    draft.settle(alert)
    forget_stall(draft, line.exercise)
    if was_brought:
        facts = {"client": draft.client.name, "exercise": line.exercise}
        draft.tell_coach(Notice(topic="stall withdrawn", facts=facts))


def stall_in(draft: Draft, line: Line, past: tuple[Exposure, ...]) -> Stall | None:
    """Return the stall at the end of the exposures `past` by the sheet's own rule, if there is one."""
    stored = draft.client.programme
    about = describe(line.exercise)
    return find_stall(
        past,
        line.prescription,
        stored.programme.tell_after if stored else None,
        body_mass_kg=body_mass_kg(draft.state),
        body_share=about.body_share,
        joints=about.joints,
    )


def leave_alone(draft: Draft, exercise: str, exposures: int = EXPOSURES_LEFT_ALONE) -> None:
    """Look for no new stall of the exercise for some exposures: whatever was decided has to show first."""
    others = tuple(each for each in draft.memory.quiet if each.exercise != exercise)
    since = last_day_of(draft.state, exercise) or draft.today
    draft.remember(quiet=(*others, Quiet(exercise=exercise, since=since, exposures=exposures)))


def since_settled(draft: Draft, exercise: str, past: tuple[Exposure, ...]) -> tuple[Exposure, ...] | None:
    """Return the exposures since a stall of the exercise was settled, all of them where none ever was.

    What came before, and was then lightened on purpose or put back, is no part of a new stall. None while
    the exercise is still to be left alone.
    """
    for quiet in draft.memory.quiet:
        if quiet.exercise == exercise:
            later = tuple(each for each in past if each.on > quiet.since)
            return later if len(later) >= quiet.exposures else None
    return past


def look_back(draft: Draft, closed: Sequence[WorkoutRecord], rounds: int) -> None:
    """Review the rounds since the last review once they are done: has strength risen?

    `closed` are the workouts of the programme that have had their turn, oldest first, `rounds` the whole
    rounds that they make.
    """
    stored = draft.client.programme
    if stored is None or stored.programme.review is None:
        return
    reviewed = draft.memory.reviewed_round
    if rounds < reviewed + stored.programme.review.after_rounds:
        return
    if draft.open_alert("review") is not None:
        return
    draft.remember(reviewed_round=rounds)
    since = min(record.on for record in closed if record.round > reviewed)
    lines = [
        (workout.name, line.exercise)
        for workout in stored.programme.workouts
        for line in workout.prescriptions
    ]
    shares = {exercise: describe(exercise).body_share for _, exercise in lines}
    found = review(
        tuple(
            past
            for name, exercise in lines
            if (past := tuple(each for each in history(draft.state, name, exercise) if each.on >= since))
        ),
        body_mass_kg=body_mass_kg(draft.state),
        body_shares={exercise: share for exercise, share in shares.items() if share is not None},
    )
    if found is None:
        return
    evidence = {**facts_of(found), "switch_to": stored.programme.review.switch_to}
    evidence["can_switch"] = next_programme(draft.state) is not None
    away = longest_break([record.on for record in closed], since, draft.today)
    was_away = share_after(away) is not None
    was_ill = draft.memory.ill_on is not None and draft.memory.ill_on >= since
    evidence |= {"weeks_away": away // 7} if was_away else {}
    evidence |= {"was_ill": True} if was_ill else {}
    if draft.message and not (was_away or was_ill):
        # Unasked, the client is not told: the coach decides on it, and the day may have had its messages.
        # Nor is who comes back from a break told of a loss that was to be expected.
        draft.notice("review", risen=found.risen, rounds=rounds)
    draft.alert("review", None, evidence)
