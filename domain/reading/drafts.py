"""A set as far as it was said, and what its numbers are by themselves: the values that the fold works on."""

from decimal import Decimal
from typing import Literal, NamedTuple

from domain.reading.context import Known
from domain.reading.phrases import Mark
from domain.reading.quantities import Quantity

Source = Quantity | Mark | Literal["body", "unknown"] | None


class Draft(NamedTuple):
    """One set as far as it was said: where its load and its reps come from, and how it was done.

    `unclear` holds the other ways to take it; such a set must be confirmed. `bare` is a number that could be
    either load or reps.
    """

    load: Source = None
    amount: Quantity | Mark | None = None
    start: int = 0
    end: int = 0
    to_failure: bool | None = None
    rir: Decimal | None = None
    lowering: bool = False
    reps: int | None = None
    unclear: tuple["Draft", ...] = ()
    confirm: bool = False
    bare: Decimal | None = None


def whole(value: Decimal) -> int:
    """Return a number of sets: whole, and one at least."""
    return max(1, int(value))


def is_amount(q: Quantity) -> bool:
    """Return whether a number is said to be of reps or seconds."""
    return q.role in {"reps", "seconds"}


def same_mass(first: Quantity, second: Quantity) -> bool:
    """Return whether two loads are one load said in both units."""
    if {first.unit, second.unit} != {"kg", "lb"}:
        return False
    kg, lb = (first.value, second.value) if first.unit == "kg" else (second.value, first.value)
    return abs(kg - lb * Decimal("0.45359237")) <= max(Decimal("1.5"), kg * Decimal("0.03"))


def pairs_of_dumbbells(
    q: list[Quantity], joints: list[str], known: Known
) -> tuple[list[Quantity], list[str]]:
    """Take "2x30kg dumbbells" and "2 x 30s" as a pair of thirties."""
    if (
        len(q) == 3
        and q[0].value == 2
        and q[0].role is None
        and joints[1] == "x"
        and joints[2] in {"for", "x", "@", "at"}
        and known.kind == "each"
        and known.load_fits(q[1]) is not False
        and not known.load_fits(q[0])
        and known.reps_fit(q[2])
        and not (joints[2] != "for" and known.load_fits(q[2]))
    ):
        return [q[1]._replace(kind="each"), *q[2:]], [joints[0], *joints[2:]]
    if (
        len(q) >= 2
        and q[0].value == 2
        and q[0].role is None
        and joints[1] in {"x", ""}
        and (
            q[1].kind == "each"
            or (q[1].role == "pair" and len(q) > 2)
            or (joints[1] == "x" and _is_of_a_pair(q[1], known) and not known.in_range(q[0]))
        )
    ):
        return [q[1]._replace(kind="each"), *q[2:]], [joints[0], *joints[2:]]
    return q, joints


def _is_of_a_pair(q: Quantity, known: Known) -> bool:
    """Return whether a number after "2 x" is the load of each hand, as it is no sensible number of reps."""
    if known.kind != "each":
        return False
    return q.role == "load" or (
        q.role is None and known.load_fits(q) is True and not (known.in_range(q) or known.hold)
    )
