"""Words and signs that stand for others by what is beside them: "r arm" is the right one, "legs r dead"
has a verb.

Each rule looks at one place of a message and says what stands there instead, or nothing.
"""

from collections.abc import Callable, Iterator, Sequence
from decimal import Decimal
from typing import NamedTuple

from domain.reading.number_words import TENS, UNITS
from domain.reading.tokens import NUMBER, SIGN, WORD, Token
from domain.reading.words import ORDINALS, words_of


class Row(NamedTuple):
    """The tokens of a message and what they say."""

    tokens: Sequence[Token]
    said: Sequence[str]

    def word(self, at: int) -> str:
        """Return what stands at a place, "" outside the message."""
        return self.said[at] if 0 <= at < len(self.said) else ""

    def is_number(self, at: int) -> bool:
        """Return whether a number in digits stands at a place."""
        return 0 <= at < len(self.tokens) and self.tokens[at].kind == NUMBER

    def is_word(self, at: int) -> bool:
        """Return whether a word stands at a place."""
        return 0 <= at < len(self.tokens) and self.tokens[at].kind == WORD


class Swap(NamedTuple):
    """What stands instead of so many tokens: one other, or none."""

    token: Token | None
    instead_of: int = 1


_Rule = Callable[[Row, int], Swap | None]


def with_neighbours_heard(tokens: list[Token]) -> list[Token]:
    """Return the tokens, each that stands for another by its neighbours as that other, where it was typed."""
    said = [token.text for token in tokens]
    return list(_swapped(Row(tokens, said))) if not _RULES.keys().isdisjoint(said) else tokens


def _swapped(row: Row) -> Iterator[Token]:
    at = 0
    while at < len(row.tokens):
        swaps = (rule(row, at) for rule in _RULES.get(row.said[at], ()))
        swap = next((swap for swap in swaps if swap is not None), None)
        if swap is None:
            yield row.tokens[at]
            at += 1
            continue
        if swap.token is not None:
            yield swap.token
        at += swap.instead_of


def _as(row: Row, at: int, word: str, *, kind: str = WORD, instead_of: int = 1) -> Swap:
    last = row.tokens[at + instead_of - 1]
    return Swap(row.tokens[at]._replace(kind=kind, text=word, value=None, end=last.end), instead_of)


def _as_number(row: Row, at: int, value: int) -> Swap:
    return Swap(row.tokens[at]._replace(kind=NUMBER, text=str(value), value=Decimal(value), spoken=True))


_DICTATED = {("full", "stop"): ".", ("question", "mark"): "?", ("exclamation", "mark"): "!"}
_ARTICLES = words_of("a an the")


def _dictated(row: Row, at: int) -> Swap | None:
    """A sign that is said where speech is written down, and no "full stop" that one comes to."""
    sign = _DICTATED.get((row.word(at), row.word(at + 1)))
    if sign is None or at == 0 or row.word(at - 1) in _ARTICLES:
        return None
    return _as(row, at, sign, kind=SIGN, instead_of=2)


_SIDES = {"r": "right", "l": "left"}
_LIMBS = words_of("arm leg side hand foot arms legs")


def _side(row: Row, at: int) -> Swap | None:
    return _as(row, at, _SIDES[row.word(at)]) if row.word(at + 1) in _LIMBS else None


def _are(row: Row, at: int) -> Swap | None:
    """The verb between words: "legs r cooked"."""
    between = row.is_word(at - 1) and row.is_word(at + 1)
    return _as(row, at, "are") if between and row.word(at - 1).endswith(("s", "e")) else None


_STRENGTH = words_of("strength power force")
_ANY_OF = words_of("any all the my much real")
_FOR_SOMETHING = words_of("left for to")


def _weak(row: Row, at: int) -> Swap | None:
    """Weakness: "no strength", "without any force"; "no strength left for dips" leaves out the dips."""
    end = at + 1 + (row.word(at + 1) in _ANY_OF)
    if row.word(end) not in _STRENGTH or row.word(end + 1) in _FOR_SOMETHING:
        return None
    return _as(row, at, "weak", instead_of=end + 1 - at)


_TELLS = words_of("to was should is :")


def _nth_set(row: Row, at: int) -> Swap | None:
    """The number of a set: "set one to 82.5"."""
    is_nth = row.word(at - 1) == "set" and row.word(at + 1) in _TELLS
    return _as_number(row, at, UNITS[row.word(at)]) if is_nth else None


_NTH = words_of("first second third fourth last next other")


def _set(row: Row, at: int) -> Swap | None:
    """The set that is told next: "second one sixty for nine"."""
    return _as(row, at, "set") if row.word(at - 1) in _NTH and row.word(at + 1) in TENS else None


_KINDS_OF_PRESS = words_of("overhead bench leg chest shoulder floor incline")


_BEFORE_ONES_OWN = words_of("i ive and then also just did") | {"", ",", ".", "!"}


def _press(row: Row, at: int) -> Swap | None:
    """The name in what the client did: "overhead pressed 42.5", and not "my boss leg pressed 150"."""
    is_name = row.word(at - 1) in _KINDS_OF_PRESS and row.word(at - 2) in _BEFORE_ONES_OWN
    return _as(row, at, "press") if is_name else None


_EVERY = words_of("each every either per")


def _hand(row: Row, at: int) -> Swap | None:
    return _as(row, at, "hand") if row.word(at - 1) in _EVERY else None


_BEFORE_ONE = words_of("last this that next other which")
_OF_A_SET = words_of("x for kg lb rep reps . / * @")


def _one(row: Row, at: int) -> Swap | None:
    """No number: "the last 1 to failure"."""
    is_one = row.word(at - 1) in _BEFORE_ONE and row.word(at + 1) not in _OF_A_SET
    return _as(row, at, "one") if is_one else None


def _to(row: Row, at: int) -> Swap | None:
    """An arrow before a word: "today's workout -> Saturday"."""
    leads = row.word(at + 1) == ">" and row.is_word(at - 1) and row.is_word(at + 2)
    return _as(row, at, "to", instead_of=2) if leads else None


_REACHED = words_of("got out managed hit did made reached had")


def _reps_reached(row: Row, at: int) -> Swap | None:
    """Reps by their last: "squeezed out a tenth rep"."""
    is_last = row.word(at + 1) == "rep" and row.word(at - 1) in _ARTICLES
    reached = is_last and not _REACHED.isdisjoint(row.said[max(0, at - 3) : at - 1])
    return _as_number(row, at, ORDINALS[row.word(at)]) if reached else None


_LISTED = frozenset({",", "and"})
_ENDS = frozenset({"", ".", ",", "!"})


def _then(row: Row, at: int) -> Swap | None:
    """A number that comes next: "10 and after 9"; "10, after that 9" needs no word for it."""
    if row.word(at - 1) not in _LISTED:
        return None
    if row.word(at + 1) == "that":
        return Swap(None, 2) if row.is_number(at + 2) else None
    ends = row.word(at + 2) in _ENDS or row.word(at + 2) in _ENDS_A_SET
    return _as(row, at, "then") if row.is_number(at + 1) and ends else None


_ENDS_A_SET = words_of("reps rep kg kgs lb lbs s sec secs seconds ) sets")
_CHANGES = words_of("change turn turned make made switch convert put split")


def _times(row: Row, at: int) -> Swap | None:
    """A times sign: "67.5 into 7"."""
    between = row.is_number(at - 1) and row.is_number(at + 1) and _CHANGES.isdisjoint(row.said)
    return _as(row, at, "x") if between else None


def _pause_of_a_list(row: Row, at: int) -> Swap | None:
    """What parts the reps of a list, or leads to it: "80 8 rest 7", "80 went 8/8/7"."""
    if not (row.is_number(at - 1) and row.is_number(at + 1)):
        return None
    return _as(row, at, ":" if row.word(at) == "went" else ",", kind=SIGN)


_HELP = words_of("assist assistance help band support")
_CRIES = frozenset({"!", "."})
_NO = words_of("no without zero")


def _comma(row: Row, at: int) -> Swap | None:
    """What ends "no assist", of which the reps may follow: "no help!! got 1"."""
    last = at
    while row.word(last) in _CRIES:
        last -= 1
    is_none = row.word(last) in _HELP and row.word(last - 1) in _NO
    return _as(row, at, ",", kind=SIGN) if is_none else None


_TABLE: tuple[tuple[frozenset[str], _Rule], ...] = (
    (frozenset(first for first, _ in _DICTATED), _dictated),
    (frozenset(_SIDES), _side),
    (frozenset({"r"}), _are),
    (words_of("no without zero lost losing"), _weak),
    (words_of("one two three four"), _nth_set),
    (frozenset({"one"}), _set),
    (words_of("pressed pressing"), _press),
    (words_of("fist paw mitt"), _hand),
    (frozenset({"1"}), _one),
    (frozenset({"-"}), _to),
    (frozenset(ORDINALS), _reps_reached),
    (frozenset({"after"}), _then),
    (frozenset({"into"}), _times),
    (words_of("rest pause breather break went"), _pause_of_a_list),
    (_CRIES, _comma),
)
_RULES: dict[str, tuple[_Rule, ...]] = {
    word: tuple(rule for words, rule in _TABLE if word in words) for words, _ in _TABLE for word in words
}
