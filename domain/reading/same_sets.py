"""Whether two ways to read a group give the same sets, and which sets to ask about where they do not."""

from collections.abc import Iterator, Sequence

from domain.reading.context import Known
from domain.reading.drafts import Draft


def same_sets(some: Sequence[Draft], others: Sequence[Draft], known: Known) -> bool:
    """Return whether two ways give the same sets."""
    return len(some) == len(others) and all(
        a is b or (a.amount == b.amount and (a.load == b.load or _both_body(a, b, known)))
        for a, b in zip(some, others, strict=True)
    )


def _both_body(a: Draft, b: Draft, known: Known) -> bool:
    """Return whether both are done with body weight, said of the one and meant of the other."""
    if {a.load, b.load} != {None, "body"}:
        return False
    base = known.load_for_reps()
    return base is not None and base.load_kind == "body"


def asked(drafts: Sequence[Draft], rivals: Sequence[Draft], known: Known) -> Iterator[Draft]:
    """Yield the drafts, to be confirmed where they may be the rivals as well."""
    for at, draft in enumerate(drafts):
        if len(drafts) != len(rivals):
            yield draft._replace(confirm=True)
        elif same_sets([draft], [rivals[at]], known):
            yield draft
        else:
            yield draft._replace(confirm=True, unclear=(*draft.unclear, rivals[at]))
