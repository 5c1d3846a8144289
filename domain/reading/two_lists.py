"""Loads in a row and the reps of each in another: "50 50 60 / 8 8 6" is 50 × 8, 50 × 8 and 60 × 6."""

from collections.abc import Iterator
from decimal import Decimal

from domain.reading.tokens import NUMBER, SIGN, WORD, Token

_PARTS = frozenset({"/", ":"})
_SURELY_LOADS = Decimal("1.5")
"""So many times the most of one list is the least of the other at least, where it holds the loads."""
_MOST = 8


def with_lists_paired(tokens: list[Token]) -> list[Token]:
    """Return the tokens, each load of a first list followed by its reps from a second one as long."""
    at = next(
        (at for at, token in enumerate(tokens) if token.text in _PARTS and _is_between(tokens, at)), None
    )
    if at is None:
        return tokens
    loads, reps = _list_before(tokens, at), _list_after(tokens, at)
    if not 1 < len(loads) == len(reps) <= _MOST or _least(loads) < _SURELY_LOADS * _most(reps):
        return tokens
    start, end = tokens.index(loads[0]), tokens.index(reps[-1]) + 1
    return [*tokens[:start], *_paired(loads, reps), *tokens[end:]]


def _is_between(tokens: list[Token], at: int) -> bool:
    return 1 < at < len(tokens) - 2 and {tokens[at - 1].kind, tokens[at + 1].kind} == {NUMBER}


def _list_before(tokens: list[Token], end: int) -> list[Token]:
    start = end
    while start > 0 and (tokens[start - 1].kind == NUMBER or tokens[start - 1].text == ","):
        start -= 1
    return [token for token in tokens[start:end] if token.kind == NUMBER]


def _list_after(tokens: list[Token], at: int) -> list[Token]:
    end = at + 1
    while end < len(tokens) and (tokens[end].kind == NUMBER or tokens[end].text == ","):
        end += 1
    return [token for token in tokens[at + 1 : end] if token.kind == NUMBER]


def _least(numbers: list[Token]) -> Decimal:
    return min(token.value or Decimal(0) for token in numbers)


def _most(numbers: list[Token]) -> Decimal:
    return max(token.value or Decimal(0) for token in numbers)


def _paired(loads: list[Token], reps: list[Token]) -> Iterator[Token]:
    for k, (load, amount) in enumerate(zip(loads, reps, strict=True)):
        if k:
            yield load._replace(kind=SIGN, text=",", value=None)
        yield load
        yield amount._replace(kind=WORD, text="x", value=None)
        yield amount
