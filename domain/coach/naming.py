"""Which clients a coach's message names: by the whole name or a part of it, with a possessive, with a slip.

Where a client is named, one word stands for the name in the message that is read further, so that the turns
of phrase of `words.py` need know no names.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

from rapidfuzz.distance import OSA

from domain.reading.message import Message, message_of, message_of_tokens
from domain.reading.tokens import WORD, Token

CLIENT, CLIENTS = "@client", "@clients"
"""What stands in a message for one client named, and for several: nothing that could be typed as a word."""

_BETWEEN = frozenset({",", "and", "&", "+"})

_ALL_OF = (
    "both",
    "both the",
    "both my",
    "both of the",
    "both of my",
    "the two",
    "my two",
    "all the",
    "all my",
)
"""What stands before a name that several clients bear where each of them is meant."""


@dataclass(frozen=True, slots=True)
class Name:
    """A name from token `start` to before `end`, and the clients that it fits, be it several.

    `is_all`: every one of them is meant, as in "both Noors".
    """

    start: int
    end: int
    fits: tuple[int, ...]
    is_all: bool = False

    @property
    def meant(self) -> tuple[tuple[int, ...], ...]:
        """For each client meant, those of whom it can be."""
        return tuple((each,) for each in self.fits) if self.is_all else (self.fits,)


@dataclass(frozen=True, slots=True)
class Named:
    """A message in which `CLIENT` or `CLIENTS` stands for names; `names` has those of each such token."""

    message: Message
    names: dict[int, tuple[Name, ...]]


class ClientNames:
    """The names of one coach's clients, ready to be looked for."""

    def __init__(self, clients: Sequence[tuple[int, str]]) -> None:
        self._known = tuple((number, words_of_name(name)) for number, name in clients)

    def find(self, message: Message) -> list[Name]:
        """Return the names in a message, the longest at each place; of equal ones a whole name goes first."""
        found: list[Name] = []
        at = 0
        while at < len(message.tokens):
            name = self._all_at(message, at) or self._at(message, at)
            if name is not None:
                found.append(name)
            at = at + 1 if name is None else name.end
        return found

    def closest(self, words: Sequence[str]) -> tuple[int, ...]:
        """Return the clients whose name, or a part of it, `words` may be a slip of or begin; the nearest."""
        said = " ".join(words)
        near: dict[int, int] = {}
        for number, known in self._known:
            ways = (" ".join(known), *known)
            slips = [
                slip for way in ways for end in ("", "s") if (slip := slips_in(said, way + end)) is not None
            ]
            if slips:
                near[number] = min(slips)
        if near:
            return tuple(number for number, slips in near.items() if slips == min(near.values()))
        return tuple(
            number
            for number, known in self._known
            if len(said) >= LEAST_BEGINNING and any(way.startswith(said) for way in known)
        )

    def _all_at(self, message: Message, at: int) -> Name | None:
        """Return the name of which every client is meant who bears it; None where fewer than two do."""
        for words in _ALL_OF:
            begin = at + len(words.split())
            if begin < len(message.tokens) and " ".join(message.texts(at, begin)) == words:
                fits = tuple(
                    number
                    for number, known in self._known
                    if any(_fits(message.tokens[begin : begin + 1], (word,)) for word in known)
                )
                if len(fits) > 1:
                    return Name(at, begin + 1, fits, is_all=True)
        return None

    def _at(self, message: Message, at: int) -> Name | None:
        best: dict[int, tuple[int, bool]] = {}
        for number, known in self._known:
            for length in range(len(known), 0, -1):
                window = message.tokens[at : at + length]
                if len(window) == length and _fits(window, known):
                    best[number] = (length, length == len(known))
                    break
        if not best:
            return None
        longest = max(best.values())
        fits = tuple(number for number, each in best.items() if each == longest)
        return Name(at, at + longest[0], fits)


LEAST_BEGINNING = 3
"""How many letters of a name are enough to mean it, where only one begins so. The house's own choice."""


def slips_in(said: str, name: str) -> int | None:
    """Return how many slips make `said` of `name`: one in four letters or more, two in seven or more.

    Of three letters only two neighbours may have changed places. None where it is another word.
    """
    most = 2 if len(name) >= 7 else 1
    slips = OSA.distance(said, name, score_cutoff=most)
    if slips > most or len(name) < 3 or (len(name) == 3 and sorted(said) != sorted(name)):
        return None
    return slips


@lru_cache(maxsize=4096)
def words_of_name(name: str) -> tuple[str, ...]:
    """Return the words of a name as they stand in a message."""
    return tuple(message_of(name).said)


_WORDS_OF_A_LETTER = frozenset("aix")
"""Letters that are no initial of a name behind another word: words, and the sign between load and reps."""


def _fits(window: Sequence[Token], known: tuple[str, ...]) -> bool:
    """Return whether each word is one of the name's, in its order; the last one can be its possessive.

    Beside a word that is exact, another may have a slip.
    """
    left = list(known)
    exact = 0
    for place, token in enumerate(window):
        if token.kind != WORD:
            return False
        ways = {token.text, *((token.text.removesuffix("s"),) if place == len(window) - 1 else ())}
        hit = next((word for word in left if word in ways), None)
        if hit is None:
            hit = next(
                (word for word in left if len(word) >= 4 and slips_in(token.text, word) is not None), None
            )
        else:
            exact += 1
        if hit is None and exact and len(token.text) == 1 and token.text not in _WORDS_OF_A_LETTER:
            hit = next((word for word in left if word.startswith(token.text)), None)
        if hit is None:
            return False
        left = left[left.index(hit) + 1 :]
    return exact > 0


def with_names(message: Message, names: Sequence[Name]) -> Named:
    """Return the message with one word for each run of names: "Noor, Piet and Ana" is one."""
    tokens: list[Token] = []
    kept: dict[int, tuple[Name, ...]] = {}
    starts = {name.start: name for name in names}
    at = 0
    while at < len(message.tokens):
        name = starts.get(at)
        if name is None:
            tokens.append(message.tokens[at])
            at += 1
            continue
        run = [name]
        end = name.end
        while (following := _next_of_run(message, end, starts)) is not None:
            run.append(following)
            end = following.end
        first, last = message.tokens[at], message.tokens[end - 1]
        tokens.append(
            Token(
                WORD,
                CLIENT if len(run) == 1 and not name.is_all else CLIENTS,
                first.start,
                last.end,
                glued=first.glued,
            )
        )
        kept[len(tokens) - 1] = tuple(run)
        at = end
    return Named(message_of_tokens(tokens), kept)


def _next_of_run(message: Message, at: int, starts: dict[int, Name]) -> Name | None:
    """Return the name that follows behind "and" or a comma, or both, at the token `at`."""
    after = at
    while after < at + 2 and message.text(after) in _BETWEEN:
        after += 1
    return starts.get(after) if after > at else None
