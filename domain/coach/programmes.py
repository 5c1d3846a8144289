"""The coach's programmes, found by name, or asked for where it is not clear which is meant."""

from typing import Any, Literal

from domain.called import the_one_like, the_one_named
from domain.coach.draft import Draft
from domain.state import StoredProgramme

MOST_OFFERED = 6
"""No more programmes than this are offered as buttons; any can be named. The house's own choice."""

NEVER_MIND = "Never mind"

_BESIDE_A_NAME = frozenset(
    {"the", "my", "our", "a", "programme", "program", "sheet", "plan", "one", "version"}
)

Wanted = Literal["invite", "assign", "train", "tell", "update"]
"""What is wanted with a programme: somebody is invited to it, clients are put on it, the coach trains by it,
words go to all on it, all on an older version of it are moved."""


def programme_named(draft: Draft, name: str) -> StoredProgramme | None:
    """Return the coach's programme of that name, or the only one with it in its name, slips apart."""
    named = [(each.programme.name, each) for each in draft.state.programmes]
    bare = " ".join(word for word in name.split() if word.casefold() not in _BESIDE_A_NAME)
    found = the_one_named(name, named) or the_one_named(bare, named)
    return found or the_one_like(name, named) or the_one_like(bare, named)


def ask_programme(
    draft: Draft,
    wanted: Wanted,
    about: dict[str, Any],
    *,
    named: str | None = None,
    names: list[str] | None = None,
) -> None:
    """Ask which programme is meant, of `names` or of all; `named` is one that there is not."""
    names = programme_names(draft) if names is None else names
    if not names:
        draft.notice("which programme", names=names)
        return
    facts = {"names": names, "named": named, "wanted": wanted, "who": about.get("who")}
    draft.ask("which programme", {**about, "wanted": wanted}, facts, (*names[:MOST_OFFERED], NEVER_MIND))


def only_programme(draft: Draft) -> StoredProgramme | None:
    """Return the coach's programme where there is just one."""
    return draft.state.programmes[0] if len(draft.state.programmes) == 1 else None


def programme_names(draft: Draft) -> list[str]:
    """Return the names of the coach's programmes."""
    return [each.programme.name for each in draft.state.programmes]
