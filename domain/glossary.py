"""What words of the trade mean, for a client who asks. The terms stand in `glossary.toml`."""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

from domain.expressions import Expression
from domain.joining_words import plainly
from domain.own_data import own_data

_ASKED = Expression(
    r"(?:(?:hi|hello|hey|ok|okay|so|and|sorry|please|but|coach|btw)[,:. ]+)*"
    r"(?:(?:can you |could you |please )*(?:tell me |explain )?what"
    r"(?: is meant by|'s meant by| do you mean by|'s|s| is| are| was| do| does)?|"
    r"(?:can you |could you |please )*(?:explain|define)|(?:the )?(?:meaning|definition) of|"
    r"i (?:don't|do not|dont) know what)"
    r"(?: (?:exactly|actually))? (?:an? )?[\"'«“]?(?P<term>[a-z0-9 -]{1,40}?)[\"'»”]?"
    r"(?: (?:means?|is|are|stands? for))?(?: (?:exactly|actually|please|then|again|in training|here))*"
)


@dataclass(frozen=True, slots=True)
class Term:
    """A word of the trade under its usual `name`, and what it means."""

    name: str
    says: str


@cache
def glossary() -> Mapping[str, Term]:
    """Return all terms by each of their names, in small letters."""
    terms: dict[str, Term] = {}
    for entry in own_data("glossary.toml")["term"]:
        term = Term(entry["name"], entry["says"])
        for name in (entry["name"].casefold(), *entry["also"]):
            if name in terms:
                raise ValueError(f"{name} stands twice in the glossary")
            terms[name] = term
    return terms


def term_asked(text: str) -> Term | None:
    """Return the term that a message as a whole asks the meaning of; None where it asks something else."""
    found = _ASKED.fullmatch(plainly(text).rstrip("?! "))
    return glossary().get(found["term"].strip()) if found else None
