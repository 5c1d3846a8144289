"""How a client's strength has changed over the last weeks, all exercises together: for the coach's picture.

It is the mean, over the exercises done in that time, of the latest strength index less the first. A picture
only: what is concluded from an index stands in `domain.gaining`.
"""

import math
from datetime import timedelta

from domain.client.draft import Draft
from domain.client.exposures import exposures_by_exercise
from domain.client.plan import body_mass_kg
from domain.comparison import Body
from domain.exercises import describe
from domain.pictures import Points
from domain.strength_series import series_of

WEEKS_SHOWN = 12
"""How far the picture of all clients looks back. The house's own choice."""


def keep_strength(draft: Draft) -> None:
    """Reckon it anew where the journal has changed."""
    if draft.state.entries != draft.start.entries:
        strength = strength_over(draft)
        if strength != draft.memory.strength:
            draft.remember(strength=strength)


def strength_over(draft: Draft) -> Points:
    """Return by day how much strength has changed since the first day shown, as a fraction."""
    since = draft.today - timedelta(weeks=WEEKS_SHOWN)
    mass = body_mass_kg(draft.state)
    shown = []
    for exercise, done in exposures_by_exercise(draft.state).items():
        if done[-1][1].on >= since:
            body = Body(mass, describe(exercise).body_share)
            series = series_of([exposure for _, exposure in done], body)
            shown += [(point.on, exercise, point.shown) for point in series.points if point.on >= since]
    first: dict[str, float] = {}
    latest: dict[str, float] = {}
    course = {}
    for on, exercise, index in sorted(shown):
        first.setdefault(exercise, index)
        latest[exercise] = index - first[exercise]
        course[on] = round(math.expm1(sum(latest.values()) / len(latest)), 4)
    return tuple(course.items())
