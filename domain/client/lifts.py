"""The journal as the engine takes it: each exercise of each workout with what counts of it.

What was done while an exercise was on hold does not count, and of what was begun lighter on purpose (after
pain, for a deload, after an illness) nothing until strength is back: all of that says nothing of a gain.
"""

from collections import defaultdict
from datetime import date

from domain.client.exposures import exposures_by_exercise
from domain.client.lines import is_of
from domain.client.plan import body_mass_kg
from domain.comparison import Body
from domain.exercises import describe
from domain.exposure import Exposure
from domain.stall import Lift
from domain.state import ClientState
from domain.strength_series import begun_anew, series_of

Key = tuple[str, str]
"""A workout's name and an exercise's."""


def lifts_of(state: ClientState) -> dict[Key, Lift]:
    """Return what has been done of the present programme, by workout and exercise, alternatives too."""
    done: defaultdict[Key, list[Exposure]] = defaultdict(list)
    for exercise, dated in exposures_by_exercise(state).items():
        for record, exposure in dated:
            done[record.name, exercise].append(exposure)
    lifts = {key: lift_of(state, exposures) for key, exposures in sorted(done.items()) if is_of(state, *key)}
    return {key: lift for key, lift in lifts.items() if lift.exposures}


def indices_since(state: ClientState, since: date = date.min) -> tuple[tuple[float, ...], ...]:
    """Return the strength indices of each exercise of the present programme from a day on, oldest first."""
    series = [series_of(lift.exposures, lift.body, lift.breaks) for lift in lifts_of(state).values()]
    found = (tuple(point.shown for point in each.points if point.on >= since) for each in series)
    return tuple(each for each in found if each)


def lift_of(state: ClientState, exposures: list[Exposure]) -> Lift:
    """Return exposures of one exercise of one workout as a lift."""
    exercise = exposures[0].exercise
    quiet = [each.since for each in state.memory.quiet if each.exercise == exercise]
    return Lift(
        tuple(sorted(not_on_hold(state, exposures), key=lambda each: each.on)),
        body_of(state, exercise),
        breaks(state, exercise),
        max(quiet, default=None),
    )


def since_break(state: ClientState, past: tuple[Exposure, ...]) -> tuple[Exposure, ...]:
    """Return what counts of `past`, exposures of one exercise, since it was last begun lighter on purpose.

    What was begun lighter is no beat and none the less; held against what came before it, it would be.
    """
    kept = not_on_hold(state, past) if past else ()
    anew = begun_anew([each.on for each in kept], breaks(state, past[0].exercise) if past else ())
    return kept[max((at for at, is_anew in enumerate(anew) if is_anew), default=0) :]


def body_of(state: ClientState, exercise: str) -> Body:
    """Return what is known of the client's body in `exercise`."""
    about = describe(exercise)
    return Body(body_mass_kg(state), about.body_share, about.joints)


def breaks(state: ClientState, exercise: str) -> tuple[date, ...]:
    """Return the days after which `exercise` was begun lighter on purpose."""
    memory = state.memory
    eased = (each.since for each in memory.easings if each.exercise == exercise)
    ill = (*memory.ill_days, *([memory.ill_on] if memory.ill_on else []))
    return tuple(sorted({*eased, *ill}))


def not_on_hold(state: ClientState, exposures: list[Exposure] | tuple[Exposure, ...]) -> tuple[Exposure, ...]:
    """Return the exposures from days on which their exercise was not on hold."""
    exercise = exposures[0].exercise
    spans = [
        (each.held_since, each.since)
        for each in state.memory.easings
        if each.exercise == exercise and each.held_since is not None
    ]
    spans += [(hold.since, date.max) for hold in state.holds if hold.exercise == exercise]
    return tuple(each for each in exposures if not any(begun <= each.on <= ended for begun, ended in spans))
