"""What a client wants to be called: "call me Bea", "my name is Bea". The coach hears of it."""

import re
from dataclasses import replace

from domain.actions import Words
from domain.client.draft import Draft
from domain.expressions import Expression
from domain.outcome import SettingsKept
from domain.parts import Notice
from domain.reading.words import words_of

_CALLED = Expression(
    r"(?:(?:hi|hello|hey|oh|btw|by the way|actually|sorry|no)[,.! ]+)*"
    r"(?:(?:please |just |you can |could you |can you )*call me|"
    r"(?:but )?my (?:real |first |proper |new )?name(?:'s| is)(?: now| actually| really)?|"
    r"(?:i'm|i am|im)(?: now| actually)? called|i go by|"
    r"(?:please )?(?:change|set) my name to|everybody calls me|everyone calls me)"
    r"(?: just)? [\"'«“]?(?P<name>[^\W\d_][^\d\n,;:?!\"«»“”]{0,39}?)[\"'»”]?"
    r"(?:,? (?:please|now|from now on|instead|actually|thanks|not [^\W\d_]{1,20}))*[.! ]*",
    re.IGNORECASE,
)
_NO_NAME = words_of(
    """a an the me you it this that tomorrow today tonight later now soon back again when if at on in after
    before maybe crazy old stupid weak lazy names sometime anytime asap please wrong not right spelled spelt
    misspelled whenever once about for by to of and or morning evening afternoon noon first"""
)
"""Words that are in no name: "call me later", "call me crazy", "my name is wrong"."""

MOST_WORDS = 3
"""How many words a name has at most. The house's own choice."""


def take_name(draft: Draft, text: str) -> bool:
    """Call the client as `text` as a whole says; return whether it did."""
    name = name_said(text)
    if name is None:
        return False
    before = draft.client.name
    if name != before:
        draft.change(SettingsKept(replace(draft.client, name=name)))
        draft.tell_coach(Notice(topic="client renamed", facts={"client": before, "name": name}))
        draft.offer(Words(text=f"Call me {before}", once=True))
    draft.notice("name kept", name=name)
    return True


def name_said(text: str) -> str | None:
    """Return the name that `text` gives its writer, with a capital where it has none; None: it gives none."""
    found = _CALLED.fullmatch(" ".join(text.replace("’", "'").split()))
    if found is None:
        return None
    name = found["name"].strip(" .'-")
    words = name.split()
    if not name or len(words) > MOST_WORDS or not _NO_NAME.isdisjoint(word.casefold() for word in words):
        return None
    return name if name != name.casefold() else " ".join(word[:1].upper() + word[1:] for word in words)
