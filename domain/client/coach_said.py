"""What the coach has written to a client, looked up by what it is about."""

from domain.actions import Words
from domain.client.draft import Draft
from domain.expressions import Expression

MOST_TOLD = 3
"""How many of the coach's messages are told at most, the latest. The house's own choice."""

SAME_BEGINNING = 4
"""Words with so many letters of their beginning in common are taken for the same: holiday, holidays."""

_WORD = Expression(r"[^\W\d_]{3,}")
_OF_NO_SUBJECT = frozenset(
    {"the", "and", "for", "with", "that", "this", "all", "any", "anything", "going", "doing"}
)


def tell_coach_said(draft: Draft, about: str) -> None:
    """Tell the coach's latest words, or those about what is named; offer to ask where there are none."""
    wanted = subjects(about)
    written = [each for each in draft.state.words if each.by == "coach"]
    found = [each for each in written if not wanted or wanted & subjects(each.text)]
    rows = [
        {"on": each.at.astimezone(draft.zone).date().isoformat(), "text": each.text}
        for each in found[-MOST_TOLD:]
    ]
    draft.notice("coach said", coach=draft.client.coach.name, about=about or None, rows=rows)
    if about and not rows:
        draft.offer(Words(text=f"Ask my coach about {about}", once=True))


def subjects(text: str) -> set[str]:
    """Return the words of a text by their beginnings, without those that tell no subject."""
    words = (found[0].casefold() for found in _WORD.finditer(text))
    return {word[:SAME_BEGINNING] for word in words if word not in _OF_NO_SUBJECT}
