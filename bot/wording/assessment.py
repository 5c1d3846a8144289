"""Words for how exercises stand, as a coach reads them: two lines each, no terms of statistics."""

from datetime import date

from bot.wording.reader import percent_words
from domain.gaining import LEAST_EXPOSURES, Standing
from domain.review import Review
from domain.slope import Gain

CAUTION = (
    "Before changing anything, ask about pain, illness, sleep and food. What hurts belongs to a doctor or a "
    "physiotherapist before it is loaded again."
)

NO_ROWS = "there is nothing but the names of the columns; a line for each set comes under them"


def standing_lines(exercise: str, found: Standing) -> tuple[str, str]:
    """Say how an exercise stands and how sure that is."""
    if found.stalled and found.since is not None:
        what = "is declining" if found.declining else "has stalled"
        now = f" Since then {_between(found.gain)}." if found.gain else ""
        until = f" Until then {_a_time(found.before)}." if found.before else ""
        return f"{exercise} {what}: last gained on {_day(found.since)}.", f"{_sure(found)}.{until}{now}"
    times = "1 workout" if found.exposures == 1 else f"{found.exposures} workouts"
    if found.gain is None or found.exposures < LEAST_EXPOSURES:
        return f"{exercise}: too early to tell.", f"Only {times} to go by; {LEAST_EXPOSURES} are needed."
    return (
        f"{exercise}: no stall, {_a_time(found.gain)} over {times}.",
        f"{_between(found.gain).capitalize()}. {_sure(found)}.",
    )


def review_lines(found: Review | None) -> tuple[str, str]:
    """Say whether strength has risen over all exercises together, and how sure that is."""
    if found is None:
        return "All exercises together: too early to tell.", "No exercise has been done twice."
    risen, gain = risen_words(risen=found.risen), percent_words(found.gain_per_round)
    return (
        f"All exercises together: {risen}, {gain} each time.",
        by_chance_words(found.interval, found.p_value, risen=found.risen),
    )


def risen_words(*, risen: bool) -> str:
    """Say whether strength has risen."""
    return "strength has risen" if risen else "strength has not clearly risen"


def by_chance_words(interval: tuple[float, float], p_value: float, *, risen: bool) -> str:
    """Say between what the gain of a review lies, and how often chance alone would show as much."""
    low, high = interval
    # One change between two rounds says nothing of how far changes lie apart, and few changes that are all
    # above 0 do not yet show that it lies there.
    is_sure = low < high and (risen or low <= 0)
    between = f"Between {percent_words(low)} and {percent_words(high)}; by" if is_sure else "By"
    return f"{between} chance alone so in {_chance(p_value)}."


def _a_time(gain: Gain | None) -> str:
    return f"{percent_words(gain.estimate)} each time" if gain else ""


def _between(gain: Gain | None) -> str:
    return f"between {percent_words(gain.low)} and {percent_words(gain.high)} each time" if gain else ""


def _sure(found: Standing) -> str:
    ended = found.ended or 0.0
    percent = min(99, max(1, round(100 * ended)))
    sure = f"{percent}% sure that it no longer gains"
    return sure if found.stalled or ended < 0.5 else f"{sure}, too little to call it a stall"


def _chance(p_value: float) -> str:
    if p_value < 0.001:
        return "fewer than 1 of 1,000 looks"
    return f"{max(1, round(100 * p_value))} of 100 looks"


def _day(on: date) -> str:
    return f"{on.day} {on:%B %Y}"
