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
    risen = "strength has risen" if found.risen else "strength has not clearly risen"
    low, high = map(percent_words, found.interval)
    # One change between two rounds says nothing of how far changes lie apart.
    between = f"Between {low} and {high}; by" if found.interval[0] < found.interval[1] else "By"
    return (
        f"All exercises together: {risen}, {percent_words(found.gain_per_round)} each time.",
        f"{between} chance alone so in {_chance(found.p_value)}.",
    )


def _a_time(gain: Gain | None) -> str:
    return f"{percent_words(gain.estimate)} each time" if gain else ""


def _between(gain: Gain | None) -> str:
    return f"between {percent_words(gain.low)} and {percent_words(gain.high)} each time" if gain else ""


def _sure(found: Standing) -> str:
    ended = found.ended or 0.0
    percent = min(99, max(1, round(100 * ended)))
    return f"{percent}% sure that it no longer gains"


def _chance(p_value: float) -> str:
    if p_value < 0.001:
        return "fewer than 1 of 1,000 looks"
    return f"{max(1, round(100 * p_value))} of 100 looks"


def _day(on: date) -> str:
    return f"{on.day} {on:%B %Y}"
