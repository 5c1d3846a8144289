"""A message in tokens, with what the rules look at: a plain line of its words, sentences, clauses, and marks.

The plain line has each word in lower case, `#` for a number, signs as they are, and a blank after each of
them; the small rules of the other files are patterns over it. A mark on a token tells what took it, or that
it is no record.
"""

from bisect import bisect_left, bisect_right
from collections.abc import Callable, Iterable, Iterator
from collections.abc import Set as AbstractSet
from dataclasses import dataclass, field
from decimal import Decimal
from functools import lru_cache
from itertools import accumulate

from domain.reading.adverbs import without_adverbs
from domain.reading.left_out import (
    without_ending,
    without_hesitations,
    without_opening,
    without_order,
    without_points_of_days,
)
from domain.reading.numbers import with_number_words
from domain.reading.pattern_ways import Way, that_can_be
from domain.reading.said_as_one import with_ways_as_one
from domain.reading.spelling import with_words_put_right
from domain.reading.tokens import NUMBER, WORD, Token, tokenise
from domain.reading.two_lists import with_lists_paired
from domain.reading.words import KG_WORDS, LB_WORDS, REP_WORDS, words_of

_STOPS = frozenset(".!?;\n")
_PAUSES = frozenset(",:()[]")
_JOINTS = frozenset({"but", "then", "so", "because", "cause", "cuz", "cos", "although", "though", "however"})
_PARTING = _STOPS | _PAUSES | _JOINTS | {"-"}
"""What parts a message into sentences and clauses."""
_UNIT_WORDS = KG_WORDS | LB_WORDS
_SIGNS_OF_A_SET = frozenset({"x", "*", "for"})
_AFTER_A_SET = words_of(
    """i going gonna will after pulse heart hr tried aiming could would should so my we today tomorrow
    next warmed"""
)
"""Words that tell of something else where they follow right on a whole set: "80x8 going for 85 next time"."""
_TELL_WHEN = words_of("today tomorrow next")
"""Those of them that do only where somebody tells on: "80x8 next time i go for 85"."""
_TELL_ON = words_of("more i im ill we my its going gonna will want need aiming trying up")


@dataclass(slots=True)
class Message:
    """The tokens of a message and where its sentences and clauses begin.

    `said` are the texts of the tokens, `pieces` the same with `#` for each number. `text` gives the text of a
    token, "" outside the message, `value` its number, None where it is none. `line` is the plain line;
    `starts` the place in it of each token, `places` the tokens at which each of its words, signs and `#`
    stands. `sentence` and `clause` number each token's sentence and clause. `possible` are the patterns that
    can be said with these words, `ways_of` gives how each of them can. `taken` has for each token what it
    became, "" where nothing did.
    """

    tokens: list[Token]
    said: list[str]
    pieces: list[str]
    line: str
    starts: list[int]
    places: dict[str, list[int]]
    words: frozenset[str]
    sentence: list[int]
    clause: list[int]
    text: Callable[[int], str]
    value: Callable[[int], Decimal | None]
    possible: AbstractSet[object]
    ways_of: Callable[[object], list[Way] | None]
    taken: list[str] = field(default_factory=list)
    heard: list[tuple[int, int, str]] = field(default_factory=list)

    def anew(self) -> "Message":
        """Return the same message with nothing taken, and with all patterns that there are by now."""
        possible = that_can_be(self.words)
        return Message(
            self.tokens,
            self.said,
            self.pieces,
            self.line,
            self.starts,
            self.places,
            self.words,
            self.sentence,
            self.clause,
            self.text,
            self.value,
            possible.keys(),
            possible.get,
            [""] * len(self.tokens),
        )

    def place(self, at: int) -> int:
        """Return where a token begins in the plain line; past its end for the token after the last."""
        return self.starts[at] if at < len(self.starts) else len(self.line)

    def tokens_of(self, start: int, end: int) -> tuple[int, int]:
        """Return the first token and the one after the last of a stretch of the plain line."""
        return self.at(start), self.at(max(start, end - 1)) + 1

    def at(self, place: int) -> int:
        """Return the index of the token at a place in the plain line."""
        return bisect_right(self.starts, place) - 1

    def take(self, start: int, end: int, became: str, *, over: bool = False) -> None:
        """Mark tokens as having become something; what is taken already stays, unless `over`."""
        for at in range(start, end):
            if over or not self.taken[at]:
                self.taken[at] = became
        self.heard.append((start, end, became))

    def numbers(self, start: int, end: int) -> list[int]:
        """Return which of the tokens from `start` to before `end` are numbers."""
        return [at for at in self.places.get("#", ()) if start <= at < end]

    def take_numbers(self, start: int, end: int, became: str) -> None:
        """Mark the numbers among some tokens, each by itself, where nothing took them yet."""
        for at in self.numbers(start, end):
            if not self.taken[at]:
                self.take(at, at + 1, became)

    def has(self, triggers: frozenset[str]) -> bool:
        """Return whether any of the words is said."""
        return not self.words.isdisjoint(triggers)

    def clause_span(self, at: int) -> tuple[int, int]:
        """Return the first token of the clause of token `at` and the one after its last."""
        return _run(self.clause, at)

    def sentence_span(self, at: int) -> tuple[int, int]:
        """Return the first token of the sentence of token `at` and the one after its last."""
        return _run(self.sentence, at)

    def texts(self, start: int, end: int) -> list[str]:
        """Return the texts of some tokens."""
        return self.said[start:end]


def _run(numbers: list[int], at: int) -> tuple[int, int]:
    """Return the run of equal numbers around `at`; numbers never fall."""
    number = numbers[at]
    return bisect_left(numbers, number, 0, at), bisect_right(numbers, number, at)


def message_of(text: str) -> Message:
    """Return `text` as a message in which nothing is taken yet.

    Many rules look at the same message, each by itself: it is parsed once for all of them.
    """
    return _parsed(text).anew()


@lru_cache(maxsize=8)
def _parsed(text: str) -> Message:
    tokens = tokenise(text)
    plain = text.isascii()
    if "-" in text or not plain:
        tokens = list(_without_hyphens(tokens))
    tokens = with_words_put_right(without_adverbs(without_hesitations(without_points_of_days(tokens))))
    tokens = with_lists_paired(with_number_words(with_ways_as_one(tokens)))
    tokens = without_ending(without_opening(without_order(tokens)))
    return message_of_tokens(tokens, frozenset() if plain else _after_a_picture(text, tokens))


def message_of_tokens(tokens: list[Token], apart: AbstractSet[int] = frozenset()) -> Message:
    """Return a message of these tokens; each of those at the places `apart` begins a clause."""
    said = [token.text for token in tokens]
    values = {at: token.value for at, token in enumerate(tokens) if token.kind == NUMBER}
    pieces = said
    if values:
        pieces = said.copy()
        for at in values:
            pieces[at] = "#"
    places: dict[str, list[int]] = {}
    for at, piece in enumerate(pieces):
        if piece in places:
            places[piece].append(at)
        else:
            places[piece] = [at]
    words = frozenset(places)
    if apart or not _PARTING.isdisjoint(words) or not _AFTER_A_SET.isdisjoint(words):
        sentence, clause = _parts_of(tokens, pieces, apart)
    else:
        sentence, clause = [0] * len(tokens), [0] * len(tokens)
    possible = that_can_be(words)
    return Message(
        tokens=tokens,
        said=said,
        pieces=pieces,
        line=" ".join([*pieces, ""]),
        starts=list(accumulate([len(piece) + 1 for piece in pieces], initial=0))[:-1],
        places=places,
        words=words,
        sentence=sentence,
        clause=clause,
        text=_Texts([*enumerate(said), (-1, ""), (len(said), "")]).__getitem__,
        value=values.get,
        possible=possible.keys(),
        ways_of=possible.get,
        taken=[""] * len(tokens),
    )


class _Texts(dict[int, str]):
    """The texts of tokens by their places."""

    def __missing__(self, at: int) -> str:
        return ""


def _parts_of(tokens: list[Token], pieces: list[str], apart: AbstractSet[int]) -> tuple[list[int], list[int]]:
    """Return the number of the sentence and of the clause that each token is of."""
    sentence: list[int] = []
    clause: list[int] = []
    sentence_now = clause_now = 0
    for at, piece in enumerate(pieces):
        if piece in _JOINTS or at in apart or (piece in _AFTER_A_SET and _tells_on_after_a_set(pieces, at)):
            clause_now += 1
        sentence.append(sentence_now)
        clause.append(clause_now)
        if piece in _PAUSES or (piece == "-" and _stands_free(tokens, at)):
            clause_now += 1
        elif piece in _STOPS and not _is_abbreviation(tokens, at):
            sentence_now += 1
            clause_now += 1
    return sentence, clause


def _tells_on_after_a_set(pieces: list[str], at: int) -> bool:
    """Return whether a load and its reps stand right before a place, "80x8", "80 kg for 8 reps", and more is
    told from there on."""
    if pieces[at] in _TELL_WHEN and _TELL_ON.isdisjoint(pieces[at + 1 : at + 3]):
        return False
    if pieces[at] == "after" and pieces[at + 1 : at + 2] != ["#"]:
        return False
    at -= 1
    if at >= 0 and pieces[at] in REP_WORDS:
        at -= 1
    if at < 2 or pieces[at] != "#" or pieces[at - 1] not in _SIGNS_OF_A_SET:
        return False
    return pieces[at - 2] == "#" or (at > 2 and pieces[at - 3] == "#" and pieces[at - 2] in _UNIT_WORDS)


def _after_a_picture(text: str, tokens: list[Token]) -> frozenset[int]:
    """Return the places of words before which a picture stands, like the one of a face, that is no token."""
    return frozenset(
        at
        for at in range(1, len(tokens))
        if tokens[at].kind == WORD
        and any(char > _LAST_OF_LETTERS for char in text[tokens[at - 1].end : tokens[at].start])
    )


_LAST_OF_LETTERS = "\u2190"
"""Signs and pictures come after it in Unicode."""


def _stands_free(tokens: list[Token], at: int) -> bool:
    """Return whether a dash has a blank on both sides, and a word on one, so that it parts two clauses."""
    if at == 0 or at + 1 >= len(tokens) or tokens[at].glued or tokens[at + 1].glued:
        return False
    return tokens[at - 1].kind == WORD or tokens[at + 1].kind == WORD


def _is_abbreviation(tokens: list[Token], at: int) -> bool:
    """Return whether a point stands inside a number or after a short unit, with more of the sentence to
    come."""
    if tokens[at].text != "." or at + 1 >= len(tokens) or at == 0:
        return False
    before, after = tokens[at - 1], tokens[at + 1]
    if after.glued and before.kind == NUMBER and after.kind == NUMBER:
        return True
    return before.text in {"sec", "secs", "min", "lbs", "reps", "approx", "ca", "no", "rep"} and (
        after.kind == NUMBER or after.text in {"x", "@", "at", "with", "for"}
    )


def _without_hyphens(tokens: Iterable[Token]) -> Iterator[Token]:
    """Leave out hyphens inside words: "push-up" reads as "push up"."""
    before: Token | None = None
    held: Token | None = None
    for token in tokens:
        if held is not None:
            if not (token.kind == WORD and token.glued):
                yield held
            held = None
        if token.text == "-" and token.glued and before is not None and before.kind == WORD:
            held = token
        else:
            yield token
        before = token
    if held is not None:
        yield held
