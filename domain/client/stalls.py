"""Stalls of an exercise and reviews of a programme: found here, told to the client, brought to the coach."""

from domain.client.draft import Draft
from domain.client.exposures import history
from domain.client.lines import Line
from domain.client.plan import body_mass_kg
from domain.client.remedies import next_programme
from domain.exercises import describe
from domain.exposure import Exposure
from domain.parts import Safety
from domain.stall import find_stall, review
from domain.values import facts_of


def look_for_stall(draft: Draft, line: Line, past: tuple[Exposure, ...]) -> None:
    """Tell of a stall of this exercise, once until the coach has settled it."""
    stored = draft.client.programme
    if stored is None or draft.open_alert("stall", line.exercise) is not None:
        return
    for quiet in draft.memory.quiet:
        if quiet.exercise == line.exercise and len(past) < quiet.until_exposures:
            return
    stall = find_stall(
        past,
        line.prescription,
        stored.programme.tell_after,
        body_mass_kg=body_mass_kg(draft.state),
        body_share=describe(line.exercise).body_share,
    )
    if stall is None:
        return
    draft.notice("stall", exercise=line.exercise, without_beat=stall.without_beat)
    draft.say(Safety(where=None, exercise=line.exercise))
    if draft.memory.waiting is None:
        about = {"exercise": line.exercise}
        draft.ask("trouble", about, about, ("No trouble", "It hurts"))
    draft.alert("stall", line.exercise, facts_of(stall))


def look_back(draft: Draft) -> None:
    """Review the programme when its rounds are done: has strength risen?"""
    stored = draft.client.programme
    if stored is None or stored.programme.review is None or not stored.programme.schedule.order:
        return
    rounds = rounds_done(draft)
    every = stored.programme.review.after_rounds
    if rounds == 0 or rounds % every or rounds == draft.memory.reviewed_round:
        return
    if draft.open_alert("review") is not None:
        return
    draft.remember(reviewed_round=rounds)
    lines = [
        (workout.name, line.exercise)
        for workout in stored.programme.workouts
        for line in workout.prescriptions
    ]
    shares = {exercise: describe(exercise).body_share for _, exercise in lines}
    found = review(
        tuple(past for name, exercise in lines if (past := history(draft.state, name, exercise))),
        body_mass_kg=body_mass_kg(draft.state),
        body_shares={exercise: share for exercise, share in shares.items() if share is not None},
    )
    if found is None:
        return
    evidence = {**facts_of(found), "switch_to": stored.programme.review.switch_to}
    evidence["can_switch"] = next_programme(draft.state) is not None
    draft.notice("review", risen=found.risen, rounds=rounds)
    draft.alert("review", None, evidence)


def rounds_done(draft: Draft) -> int:
    """Return how many whole rounds of the present programme stand in the journal."""
    stored = draft.client.programme
    if stored is None:
        return 0
    closed = sum(
        1
        for record in draft.state.workouts
        if record.programme == stored.number and record.state in {"done", "skipped"}
    )
    whole, rest = divmod(closed, len(stored.programme.schedule.order))
    return whole if rest == 0 else 0
