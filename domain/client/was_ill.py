"""Word of an illness in which nothing else is wanted: "sorry, had a stomach bug since Thursday"."""

from domain.client.draft import Draft
from domain.expressions import Expression
from domain.reading import speaks_of_illness

_WAS_ILL = Expression(
    r"\b(?:i(?:'ve| have)?|just|been|was|am|i'm) (?:just |really |pretty |still |also )*"
    r"(?:had|have|having|got|caught|been|down with|over|in bed with|knocked out by|was|were)"
    r"(?: \w+){0,3} (?:bug|flu|cold|virus|covid|food poisoning|fever|infection|norovirus|tonsillitis|"
    r"bronchitis|pneumonia|ill|sick|poorly)\b"
)
_ANOTHERS = Expression(
    r"\b(?:my|his|her|their|our|the) (?:\w+ )?(?:son|daughter|kid|kids|child|children|wife|husband|mum|mom|"
    r"dad|partner|boss|baby|dog|cat|friend|brother|sister|family)\b"
)

ILL_DAYS_KEPT = 24
"""How many days of illness are remembered, the latest."""


def take_illness_told(draft: Draft, text: str) -> bool:
    """Note an illness of which no more is told than that it was there; return whether one is.

    What was asked about the workouts missed by it is answered then.
    """
    said = " ".join(text.casefold().replace("’", "'").split())
    if _ANOTHERS.search(said) or not (speaks_of_illness(text) or _WAS_ILL.search(said)):
        return False
    draft.drop_question(draft.question("missed"))
    note_ill_today(draft)
    draft.notice("get well")
    return True


def note_ill_today(draft: Draft) -> None:
    """Remember that the client was ill until today: the training begins lighter again."""
    ill_days = dict.fromkeys((*draft.memory.ill_days, draft.today))
    draft.remember(ill_on=draft.today, ill_days=tuple(ill_days)[-ILL_DAYS_KEPT:])
