"""The coach's programmes, found by name."""

from domain.called import the_one_named
from domain.coach.draft import Draft
from domain.state import StoredProgramme


def programme_named(draft: Draft, name: str) -> StoredProgramme | None:
    """Return the coach's programme of that name, or the only one with it in its name."""
    return the_one_named(name, [(each.programme.name, each) for each in draft.state.programmes])


def only_programme(draft: Draft) -> StoredProgramme | None:
    """Return the coach's programme where there is just one."""
    return draft.state.programmes[0] if len(draft.state.programmes) == 1 else None


def programme_names(draft: Draft) -> list[str]:
    """Return the names of the coach's programmes."""
    return [each.programme.name for each in draft.state.programmes]
