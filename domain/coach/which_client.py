"""Which client is meant, where a name fits several: asked with a button for each, and then done."""

from collections.abc import Callable

from domain.coach.draft import Draft
from domain.coach.understanding import closest_to
from domain.coach.writing import WAITS_FOR
from domain.expressions import Expression

MOST_OFFERED = 20
"""How many clients are offered by buttons; any can be named. The house's own choice."""

_WORDS = Expression(r"[^\s,;:.!?]+")
_BESIDE_A_NAME = frozenset(
    {
        "the",
        "one",
        "that",
        "i",
        "mean",
        "meant",
        "for",
        "of",
        "it's",
        "its",
        "is",
        "client",
        "called",
        "no",
        "please",
    }
)


def ask_who(draft: Draft, text: str, span: tuple[int, int], fits: tuple[int, ...]) -> None:
    """Ask whom the name at that place of the text means."""
    start, end = span
    about = {"text": text, "start": start, "end": end, "fits": list(fits)}
    draft.ask(
        "who", about, {"name": text[start:end]}, [draft.name_of(number) for number in fits[:MOST_OFFERED]]
    )


def take_who(
    draft: Draft, text: str, obey: Callable[[Draft, str], None], question: int | None = None
) -> bool:
    """Take a name as the answer to whom was meant, and do what was asked; return whether it was that.

    `question` is the number of the question that a button answers.
    """
    asked = draft.memory.who
    if asked is None or (question is not None and asked.number != question):
        return False
    if question is None and draft.at - asked.asked_at > WAITS_FOR:
        return False
    answer = " ".join(word for word in _WORDS.findall(text) if word.casefold() not in _BESIDE_A_NAME)
    fits = [number for number in closest_to(answer, draft.names) if number in asked.about["fits"]]
    exact = [number for number in fits if draft.name_of(number).casefold() == answer.casefold()]
    if len(exact or fits) != 1:
        return False
    draft.remember(who=None)
    whole, start, end = str(asked.about["text"]), int(asked.about["start"]), int(asked.about["end"])
    name = draft.name_of((exact or fits)[0])
    owns = whole[start:end].casefold().endswith(("'s", "’s"))
    obey(draft, f"{whole[:start]}{name}{chr(39) + 's' if owns else ''}{whole[end:]}")
    return True
