"""How an exercise is to be done, in the coach's own words from the sheet; without any the coach is asked."""

from collections.abc import Sequence

from domain.client.draft import Draft
from domain.client.lines import hold_on, lines_of
from domain.client.pain import say_what_is_aside
from domain.client.rotation import BESIDE
from domain.client.talking import bring_question
from domain.client.understanding import workout_meant


def tell_cues(draft: Draft, names: Sequence[str], text: str) -> bool:
    """Say the cues for the exercises `names`, without any for the workout at hand; return whether it did.

    Of one that the sheet has no cue for, the question `text` goes to the coach. What is on hold is to be
    left. Of an exercise that the programme does not have, nothing is said.
    """
    if draft.memory.barred:
        draft.notice("barred", coach=draft.client.coach.name)
        return True
    known = cues_known(draft)
    if not names:
        return tell_cues_at_hand(draft, known)
    if not set(names) & known.keys():
        return False
    held = {hold.exercise for hold in say_what_is_aside(draft, names)}
    asked = [name for name in names if name in known and name not in held]
    rows = [{"exercise": name, "cues": list(known[name])} for name in asked if known[name]]
    without = [name for name in asked if not known[name]]
    if rows:
        draft.notice("cues", rows=rows)
    if without:
        bring_question(draft, text, tuple(without))
        draft.notice("no cues", exercises=without, coach=draft.client.coach.name)
    return True


def tell_cues_at_hand(draft: Draft, known: dict[str, tuple[str, ...]]) -> bool:
    """Say all cues of the workout at hand; return False where there is none."""
    workout, _ = workout_meant(draft)
    if workout == BESIDE:
        return False
    lines = [
        line.exercise
        for line in lines_of(draft.state, workout)
        if hold_on(draft.state, line.exercise) is None
    ]
    rows = [{"exercise": name, "cues": list(known[name])} for name in lines if known[name]]
    if rows:
        draft.notice("cues", rows=rows)
    else:
        draft.notice("no cues at all", workout=workout)
    return True


def cues_known(draft: Draft) -> dict[str, tuple[str, ...]]:
    """Return each exercise of the programme, prescribed or done at present, with the coach's cues."""
    stored = draft.client.programme
    found: dict[str, tuple[str, ...]] = {}
    for workout in stored.programme.workouts if stored else ():
        at_present = (line.prescription for line in lines_of(draft.state, workout.name))
        for each in (*workout.prescriptions, *at_present):
            found[each.exercise] = tuple(dict.fromkeys((*found.get(each.exercise, ()), *each.cues)))
    return found
