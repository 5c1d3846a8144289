"""Questions about the plates for a load: answered with what the client trains with."""

from decimal import Decimal

from domain.client.draft import Draft
from domain.client.why import exercises_known
from domain.equipment import bar_loads_around, plates_per_side
from domain.exercises import describe
from domain.expressions import Expression
from domain.reading import Reading, exercises_asked_of
from domain.units import Unit

_I_DO = r"(?:do|should|shall|must|would|can) (?:i|we)"
_ASKED = Expression(
    r"(?:(?:so|and|hi|hey|ok|okay|please|but|coach|sorry),? )*"
    r"(?:"
    rf"(?:what|which|how many) (?:plates|discs)(?: {_I_DO} (?:need|use|put on|load|take)| go on| are| make)?"
    r"|(?:(?:what(?:'s| is| are|s)|tell me|show me|give me) )?(?:the )?(?:plates|plate math)"
    rf"|how {_I_DO} (?:load|plate|make)|how to load"
    rf"|what {_I_DO} (?:put|load) on(?: the bar| each side| a side)?"
    r"|(?:what|how much)(?: goes| is)?(?: on)? (?:each|a|per) side"
    r")"
    r"(?: (?:up|on|the bar|a bar|each side|per side|a side|for|to|make|get|with|at|of|is|is it))*"
    r" (?P<load>\d{1,3}(?:[.,]\d{1,2})?) ?(?P<unit>kgs?|kilos?|lbs?|pounds?)?"
    r"(?: (?:on|for|in) .{1,40}?)?(?: (?:today|please|pls|now|then|again|total|all in|each side|per side))*"
)


def take_plates(draft: Draft, text: str, reading: Reading) -> bool:
    """Say what to put on each side of the bar where `text` as a whole asks for that; return whether it did.

    For what is done with no bar there is nothing to say.
    """
    said = " ".join(text.casefold().replace("’", "'").split())
    found = _ASKED.fullmatch(said.rstrip(".!? "))
    if found is None or reading.sets:
        return False
    if not all(map(is_with_bar, exercises_asked_of(text, exercises_known(draft), draft.client.own_names))):
        return False
    if draft.memory.barred:
        draft.notice("barred", coach=draft.client.coach.name)
        return True
    load, unit = Decimal(found["load"].replace(",", ".")), unit_said(found["unit"], draft.client.unit)
    equipment = draft.client.equipment
    around = bar_loads_around(load, unit, equipment)
    draft.notice(
        "plates",
        load=str(load),
        unit=unit,
        bar=str(equipment.bar),
        bar_unit=equipment.unit,
        loads=[
            {"load": str(each), "plates": [str(one) for one in plates_per_side(each, unit, equipment) or ()]}
            for each in around
        ],
    )
    return True


def is_with_bar(exercise: str) -> bool:
    """Return whether an exercise is done with a barbell."""
    return describe(exercise).implement == "barbell"


def unit_said(word: str | None, usual: Unit) -> Unit:
    """Return the unit that a word says, the `usual` one where there is none."""
    if word is None:
        return usual
    return "kg" if word.startswith("k") else "lb"
