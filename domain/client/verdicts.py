"""The verdict on an exercise and what to aim for next, as this client's state makes them; nothing is kept."""

from datetime import date

from domain.client.lines import Line
from domain.client.plan import body_mass_kg, easing_of, reckoned_from, target_for
from domain.comparison import extra_kg
from domain.exercises import describe
from domain.explanation import Aimed, When
from domain.exposure import Exposure
from domain.sets import TrainingSet
from domain.state import ClientState
from domain.target import NoTarget, Target
from domain.target_reasons import Eased
from domain.verdict import Verdict, judge


def verdict_on(state: ClientState, past: tuple[Exposure, ...]) -> Verdict:
    """Return the verdict on the last of the exposures `past` (one or more, of one exercise and workout)."""
    *earlier, now = past
    about = describe(now.exercise)
    return judge(
        now,
        earlier[-1] if earlier else None,
        tuple(earlier),
        body_mass_kg=body_mass_kg(state),
        body_share=about.body_share,
        joints=about.joints,
    )


def was_eased(
    state: ClientState, past: tuple[Exposure, ...], verdict: Verdict, aim: Target | NoTarget | None
) -> bool:
    """Return whether the last of `past` was lighter than the one before, and was to be.

    That is for a deload, or after a break; `aim` is what was to be aimed for in it.
    """
    *earlier, now = past
    was_to_be = easing_of(state, now.exercise, earlier) is not None or (
        isinstance(aim, Target) and isinstance(aim.reason, Eased)
    )
    return was_to_be and is_lighter(verdict)


def is_on_target(done: TrainingSet, aimed: Target | NoTarget | None) -> bool:
    """Return whether `done` is what was to be aimed for, or more."""
    if not isinstance(aimed, Target):
        return False
    aim = aimed.as_set()
    alike = (aim.load_kind, aim.lowering_only) == (done.load_kind, done.lowering_only)
    return alike and aim.load_kind != "assist" and done.kg >= aim.kg and done.amount >= aim.amount


def is_lighter(verdict: Verdict) -> bool:
    """Return whether less was put on than before, or of the body alone fewer reps or seconds were done."""
    done, before = verdict.set, verdict.before
    if before is None:
        return False
    less = extra_kg(done) - extra_kg(before)
    return less < 0 or (less == 0 and done.load_kind == "body" and done.amount < before.amount)


def aimed_next(state: ClientState, line: Line, past: tuple[Exposure, ...], on: date) -> Aimed:
    """Return what is to be aimed for the next time after the exposures `past`, as of the day `on`."""
    return aimed(state, "next time", line, target_for(state, line, past, on), past)


def aimed(
    state: ClientState, when: When, line: Line, target: Target | NoTarget, past: tuple[Exposure, ...]
) -> Aimed:
    """Return a target with what it was reckoned from: the best set of the last of the exposures `past`."""
    return Aimed(when, target, line.prescription.range, reckoned_from(state, line.exercise, past))
