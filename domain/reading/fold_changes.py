"""A change of mind inside a message: "80 for 8, no, 7", "80, no, 82.5 x 8".

What is said after it stands in place of something said before: of one number, or of all that was said from
some place on. Every such place is tried, and the row that comes of it is weighed like any other.
"""

from collections.abc import Iterator, Sequence

from domain.reading.drafts import is_amount
from domain.reading.phrases import Mark
from domain.reading.pieces import Piece
from domain.reading.quantities import Quantity

Pieces = list[Piece]

_SIMPLY_NEXT = 1.5
"""What it costs that nothing is changed, and what follows is simply the next."""
_FARTHER = 0.05
_DROPPED = 0.8
_UNLIKE = 0.6
_FARTHEST = 5
_NEAR_REPS = 4
_MOST_ROWS = 8


def changed_rows(pieces: Pieces) -> list[tuple[Pieces, float]]:
    """Return the rows that the pieces can be once what was changed is in its place, each with its cost."""
    if not any(_is_change(piece) for piece in pieces):
        return [(pieces, 0.0)]
    rows: list[tuple[Pieces, float]] = [([], 0.0)]
    for said in _between_changes(pieces):
        rows = [(row, cost + more) for left, cost in rows for row, more in _ways_to_change(left, said)]
        rows.sort(key=lambda row: row[1])
        del rows[_MOST_ROWS:]
    return rows


def _between_changes(pieces: Pieces) -> list[Pieces]:
    """Return what is said before, between and after the changes of mind."""
    said: list[Pieces] = [[]]
    for piece in pieces:
        if _is_change(piece):
            said.append([])
        else:
            said[-1].append(piece)
    return [each for each in said if each]


def _is_change(piece: Piece) -> bool:
    return isinstance(piece.what, Mark) and piece.what.kind == "change"


def _ways_to_change(left: Pieces, right: Pieces) -> Iterator[tuple[Pieces, float]]:
    """Yield what was said, its later part put in place of one number, or of all from some place on."""
    if not left:
        yield right, 0.0
        return
    yield [*left, right[0]._replace(joint="then", across="then"), *right[1:]], _SIMPLY_NEXT
    new = right[0]
    said = _length(right)
    for back, at in enumerate(range(len(left) - 1, max(-1, len(left) - 1 - _FARTHEST), -1)):
        old = left[at]
        unlike = _unlikeness(old, new) if said == 1 else None
        yield (
            [*left[:at], _joined_as(old, new), *right[1:]],
            _DROPPED * max(0, back + 1 - said) + (unlike or 0),
        )
        if unlike is not None:
            cost = unlike + _FARTHER * back
            yield [*left[:at], _in_place_of(old, new), *left[at + 1 :], *right[1:]], cost


def _length(right: Sequence[Piece]) -> int:
    """Return how many numbers are said in one go: two in "82.5 x 8, then 75 x 8"."""
    if len(right) > 1 and not _is_amount(right[0]) and _is_amount(right[1]):
        return 2
    length = 1
    while length < len(right) and right[length].joint in {"x", "for", "@", "at", ":", ""}:
        length += 1
    return length


def _is_amount(piece: Piece) -> bool:
    return isinstance(piece.what, Quantity) and is_amount(piece.what)


def _joined_as(old: Piece, new: Piece) -> Piece:
    return new._replace(joint=old.joint, across=old.across)


def _in_place_of(old: Piece, new: Piece) -> Piece:
    """Return a number in place of another, of the same kind as that where no word says otherwise."""
    piece = _joined_as(old, new)
    before, after = old.what, new.what
    if isinstance(before, Quantity) and isinstance(after, Quantity) and after.role is None:
        kept = before._replace(value=after.value, start=after.start, end=after.end)
        return piece._replace(what=kept, led=old.led)
    return piece._replace(led=old.led)


def _unlikeness(old: Piece, new: Piece) -> float | None:
    """Return what it costs that a number stands in place of another; None where they are not of one kind."""
    before, after = old.what, new.what
    if not isinstance(before, Quantity) or not isinstance(after, Quantity):
        return None
    if after.role is not None and before.role is not None and before.role != after.role:
        return None
    if abs(before.value - after.value) <= _NEAR_REPS:
        return 0.0
    near = before.value * 6 <= after.value * 10 <= before.value * 16
    return 0.1 if near else _UNLIKE
