"""Questions about what to aim for and what to beat in one exercise."""

from domain.client.draft import Draft
from domain.client.explaining import explain, spot_named
from domain.client.plan import plan_of
from domain.client.rotation import BESIDE, due
from domain.client.understanding import workout_meant
from domain.parts import Plan
from domain.values import facts_of


def show_aims(draft: Draft, names: tuple[str, ...]) -> bool:
    """Say what to aim for in the exercises `names`; return whether anything could be said of them.

    Those still to be done in the workout at hand stand in its plan; of any other, what came of it last and
    what is to be aimed for when it comes again is said.
    """
    workout, record = workout_meant(draft)
    plan = None
    if workout != BESIDE:
        coming = due(draft.state, draft.today)
        on = draft.today if record is not None or coming is None else max(coming.on, draft.today)
        plan = only(plan_of(draft.state, workout, on, record), names)
    planned = {line.exercise for line in plan.lines} if plan is not None else set()
    spots = [spot_named(draft, name) for name in names if name not in planned]
    # Of what was never done and is not due, nothing can be said before its day.
    told = [explain(draft, spot) for spot in spots if spot.record is not None or spot.workout == workout]
    found = [each for each in told if each is not None]
    if plan is not None and plan.lines:
        draft.say(plan)
    for each in found:
        draft.notice("why", explanation=facts_of(each))
    return bool(planned or found)


def only(plan: Plan, names: tuple[str, ...]) -> Plan:
    """Return the plan with nothing but the exercises `names` in it."""
    lines = tuple(
        line.model_copy(update={"straight_into_next": line.straight_into_next and following in names})
        for line, following in zip(plan.lines, [*(each.exercise for each in plan.lines[1:]), ""], strict=True)
        if line.exercise in names
    )
    return plan.model_copy(update={"lines": lines})
