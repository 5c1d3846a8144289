"""Questions about the warm-up: answered with the ramps of the workout at hand, all or those asked about."""

from collections.abc import Sequence

from domain.client.draft import Draft
from domain.client.plan import plan_of, warm_ups
from domain.client.plans import say_nothing_planned
from domain.client.rotation import BESIDE, due
from domain.client.understanding import workout_meant
from domain.expressions import Expression
from domain.reading import Reading
from domain.values import facts_of

_ASKED = Expression(
    r"(?:(?:so|and|hi|hey|ok|okay|please|but),? )*"
    r"(?:(?:how (?:do|should|shall|can|would|must) (?:i|we)|how to|how many|what(?:'s| is| are|s)?|which|"
    r"what (?:kind|sort) of|show(?: me)?|give me|any|(?:do|should|must) i(?: need| do| have)?|what about|"
    r"how about|need|can i (?:get|have|see)|i need|tell me|remind me of) ?)?"
    r"(?:(?:a|an|my|the|some|to|for|of|about|do|today's) )*"
    r"warm(?:ing)?[ -]?ups?(?: (?:sets?|plan|ramp|weights?|loads?|routine))?"
    r"(?: (?:should|do|can|must) i (?:do|use|take|need))?"
    r"(?P<what> (?:for|on|before|with) .{1,40}?)?"
    r"(?: (?:today|first|now|please|properly|then|again))*"
)
_ALL = frozenset({"today", "this", "it", "this workout", "the workout", "training", "today's workout"})
_TOLD = Expression(r"\bwarm(?:ed|ing)?[ -]?up")


def take_warm_up(draft: Draft, text: str, reading: Reading) -> bool:
    """Say how to warm up where `text` as a whole asks for that; return whether it did.

    "For" something that is no exercise of the client's is for the coach to answer.
    """
    said = " ".join(text.casefold().replace("’", "'").split())
    found = _ASKED.fullmatch(said.rstrip(".!? "))
    if found is None or reading.sets:
        return False
    what = (found["what"] or "").split(maxsplit=1)[1:]
    workout, _ = workout_meant(draft)
    is_of_all = not what or what[0] in {*_ALL, workout.casefold()}
    if not is_of_all and not reading.names:
        return False
    say_warm_up(draft, () if is_of_all else reading.names)
    return True


def say_warm_up(draft: Draft, names: Sequence[str] = ()) -> None:
    """Say the ramps for what is left of the workout at hand, or only for the exercises `names`."""
    if draft.memory.barred:
        draft.notice("barred", coach=draft.client.coach.name)
        return
    workout, record = workout_meant(draft, names)
    if workout == BESIDE:
        say_nothing_planned(draft)
        return
    coming = due(draft.state, draft.today)
    on = draft.today if record is not None or coming is None else max(coming.on, draft.today)
    plan = plan_of(draft.state, workout, on, record)
    lines = [line for line in plan.lines if not line.is_aside and (not names or line.exercise in names)]
    before = [ramp for each in warm_ups(draft.state, lines, on, every=True) for ramp in each]
    ramped = {ramp[0].exercise for ramp in before}
    draft.notice(
        "warm-up",
        workout=workout,
        ramps=[[facts_of(each) for each in ramp] for ramp in before],
        to_find=[line.exercise for line in lines if line.find_first_load],
        others=[line.exercise for line in lines if line.exercise not in ramped and not line.find_first_load],
    )


def is_of_warm_up(text: str) -> bool:
    """Return whether a message tells of a warm-up."""
    return _TOLD.search(text.casefold()) is not None
