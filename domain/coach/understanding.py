"""What a coach's message asks for: which kind of request, of which clients, with which pieces as typed.

Names are found first and taken out of the way; then the turns of phrase of `phrases.py` are tried in their
order. A name with a slip is looked for only where a turn of phrase has a place for a name.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace
from decimal import Decimal
from itertools import groupby
from typing import Literal, cast, get_args

from domain.coach.naming import CLIENT, CLIENTS, ClientNames, Name, Named, with_names
from domain.coach.phrases import (
    NOTES,
    NOTES_ON_ANYBODY,
    NOTES_WITH_NAME,
    OF_ANYBODY,
    PHRASES,
    TELLING,
    TELLING_ANYBODY,
)
from domain.coach_requests import Kind
from domain.reading.english import is_english
from domain.reading.exercise_words import FUNCTION_WORDS
from domain.reading.message import Message, message_of
from domain.reading.patterns import Found, Pattern
from domain.reading.words import FILLERS, words_of
from domain.understood import Meant, Of

LONGEST = 60
"""How many words and signs a request has at most; what is longer is no request. The house's own choice."""

OWN = words_of("my me")
"""What stands for the coach who trains, too."""

CHANGES: frozenset[str] = frozenset({"swap", "leave out", "back", "rest more", "assign"})
"""What a coach can want changed of the own training; the hour of the reminder any client sets alone."""

PERSON = words_of("her him")
"""What stands for the client spoken of last."""

_NOBODY = (
    FUNCTION_WORDS
    | FILLERS
    | words_of(
        """it me you us they them that this everyone everybody things day week gym weather what who
        im i ive id ill my our sick unwell away everything
        she he her him his note notes invite invitation client clients coach"""
    )
)


Telling = Literal["tell", "note"]
"""Words to be passed on, or to be noted."""


@dataclass(frozen=True, slots=True)
class Asked:
    """A request. `of` has for each client named those that the name fits, `spans` where it stands.

    `everyone` is set where all clients are meant, but for those `without`. `pieces` are those of the turn of
    phrase as typed; `rest` is the whole text without the names. `unknown` is a name that no client bears.
    `meant` are the words of it and what each is, without the clients.
    """

    kind: Kind | Telling
    of: tuple[tuple[int, ...], ...] = ()
    spans: tuple[tuple[int, int], ...] = ()
    everyone: bool = False
    without: tuple[int, ...] = ()
    pieces: dict[str, str] = field(default_factory=dict)
    number: Decimal | None = None
    rest: str = ""
    unknown: str | None = None
    meant: tuple[Meant, ...] = ()


def asked(
    text: str, clients: Sequence[tuple[int, str]], spoken_of: int | None = None, own: int | None = None
) -> Asked | None:
    """Return what `text` asks for, None where it is not understood.

    `clients` are all of the coach's, by number and name; `spoken_of` is the one whom "her" or "him" means,
    `own` the coach's own number where she is a client of hers, whom "my" and "me" mean in a change.
    """
    message = message_of(text)
    names = ClientNames(clients)
    found = names.find(message)
    for chosen in _choices(found, message, spoken_of):
        named = with_names(message, chosen)
        told = _told(text, named)
        if told is not None:
            return told
        if len(message.tokens) <= LONGEST:
            request = _request(text, named, PHRASES)
            if request is not None and request.kind == "why" and not found and len(message.tokens) > _WHY:
                # "Why has Zed stalled?" may be of somebody who is no client.
                return _of_anybody(text, message, names) or request
            if request is not None:
                return request
    if own is not None and not found and (request := _of_own(text, message, own)) is not None:
        return request
    return _of_anybody(text, message, names) if not found else None


def _of_own(text: str, message: Message, own: int) -> Asked | None:
    """Return a change that a coach wants made of her own training, whichever word there means her."""
    for at, word in enumerate(message.texts(0, len(message.tokens))):
        if word in OWN and len(message.tokens) <= LONGEST:
            request = _request(text, with_names(message, [Name(at, at + 1, (own,))]), PHRASES)
            if request is not None and request.kind in CHANGES:
                return request
    return None


_WHY = 3
"""How many words «why» has about somebody at least: "why is Zed stuck"."""


def named_in(text: str, clients: Sequence[tuple[int, str]]) -> tuple[tuple[int, ...], ...]:
    """Return for each client named in `text` those whom the name fits."""
    return tuple(fits for name in ClientNames(clients).find(message_of(text)) for fits in name.meant)


def nearly_named(text: str, clients: Sequence[tuple[int, str]]) -> list[tuple[int, ...]]:
    """Return whose name, with a slip, each word may be that is no English one."""
    names = ClientNames(clients)
    words = [word for word in message_of(text).said if len(word) >= _LEAST_OF_SLIP and not is_english(word)]
    return [near for word in words if len(near := names.closest([word])) == 1]


_LEAST_OF_SLIP = 4
"""How long a word is at least that is taken for a name with a slip where nothing else says so."""


def closest_to(text: str, clients: Sequence[tuple[int, str]]) -> tuple[int, ...]:
    """Return the clients whom a short text names by itself, exactly or nearly; none where it is no name."""
    message, names = message_of(text.strip(" ?!.,")), ClientNames(clients)
    whole = [name for name in names.find(message) if name.end - name.start == len(message.tokens)]
    if whole:
        return whole[0].fits
    return names.closest(message.said) if 0 < len(message.said) <= 3 else ()


def _choices(found: list[Name], message: Message, spoken_of: int | None) -> Iterator[list[Name]]:
    """Give the names to take a message with: all of them, each alone, as it is, and "her" for a name."""
    yield found
    if len(found) > 1:
        yield from ([name] for name in found)
    if spoken_of is not None and not found:
        person = [Name(at, at + 1, (spoken_of,)) for at, word in enumerate(message.said) if word in PERSON]
        if person:
            yield person[:1]


def _told(text: str, named: Named) -> Asked | None:
    """Return words to be passed on, or to be noted, where the text begins so."""
    heads: tuple[tuple[Telling, Sequence[Pattern]], ...] = (("note", NOTES), ("tell", TELLING))
    for kind, pattern in ((kind, each) for kind, patterns in heads for each in patterns):
        hit = pattern.at(named.message, 0)
        if hit is None:
            continue
        if _goes_on_with_a_name(named.message, hit.end):
            return Asked(kind, unknown=_piece(text, named.message, (hit.end + 1, hit.end + 2)))
        begin = named.message.tokens[hit.end - 1].end if hit.end else len(text)
        if pattern in NOTES_WITH_NAME and hit.end < len(named.message.tokens):
            begin = named.message.tokens[hit.parts["who"][0]].start
        words = text[begin:].strip(" ,:-\n\t")
        request = _asked(kind, text, named, hit)
        start = text.index(words, begin)
        return replace(
            request,
            pieces=request.pieces | {"text": words},
            number=None,
            rest="",
            meant=(*request.meant, Meant("text", start, start + len(words))) if words else request.meant,
        )
    return None


_ANOTHER = Pattern("(and|&|,|+) _ [_] :")


def _goes_on_with_a_name(message: Message, at: int) -> bool:
    """Return whether somebody unknown stands beside those who are told: "tell Noor and Bob: …"."""
    return _ANOTHER.at(message, at) is not None


def _request(text: str, named: Named, phrases: Sequence[tuple[Kind, Pattern]]) -> Asked | None:
    for kind, pattern in phrases:
        hit = pattern.at(named.message, 0)
        if hit is not None and not (kind == "why" and len(named.names) > 1):
            return _asked(kind, text, named, hit)
    return None


def _asked(kind: Kind | Telling, text: str, named: Named, hit: Found) -> Asked:
    message = named.message
    where = hit.parts.get("who", (0, len(message.tokens)))
    names = [
        (name, span)
        for at in range(*where)
        if message.text(at) in {CLIENT, CLIENTS}
        for name, span in zip(named.names[at], _spans(text, message, at, named.names[at]), strict=True)
    ]
    number = hit.parts.get("n")
    return Asked(
        kind=kind,
        of=tuple(fits for name, _ in names for fits in name.meant),
        spans=tuple(span for name, span in names for _ in name.meant),
        everyone="who" in hit.parts and not names,
        without=tuple(
            number
            for at in range(*hit.parts.get("but", (0, 0)))
            for name in named.names.get(at, ())
            for number in name.fits
        ),
        pieces={
            name: _piece(text, message, place)
            for name, place in hit.parts.items()
            if name not in {"who", "n", "said", "but"}
        },
        number=message.value(number[0]) if number else None,
        rest=_without_names(text, message),
        meant=_meant(message, hit),
    )


_CALLED: dict[str, Of] = {"n": "number", "who": "client", **{each: cast(Of, each) for each in get_args(Of)}}
"""What the words of a turn of phrase are, by its name for them."""


def _meant(message: Message, hit: Found) -> tuple[Meant, ...]:
    """Return what the words of a turn of phrase are; what is no piece of it, tells what is asked for."""
    pieces = {at: name for name, place in hit.parts.items() if name in _CALLED for at in range(*place)}
    said = range(*hit.parts.get("said", (0, 0)))
    of = [pieces.get(at, "request") if at in pieces or at in said else None for at in range(hit.end)]
    found: list[Meant] = []
    for name, run in groupby(range(hit.end), key=lambda at: None if _is_name(message, at) else of[at]):
        places = [at for at in run if any(map(str.isalnum, message.text(at)))]
        if name is not None and places:
            first, last = message.tokens[places[0]], message.tokens[places[-1]]
            found.append(Meant(_CALLED[name], first.start, last.end))
    return tuple(found)


def _is_name(message: Message, at: int) -> bool:
    return message.text(at) in {CLIENT, CLIENTS}


def _spans(text: str, message: Message, at: int, names: tuple[Name, ...]) -> list[tuple[int, int]]:
    """Return where in the text each of the names stands that the token `at` is for."""
    token = message.tokens[at]
    plain = message_of(text)
    return [
        (plain.tokens[name.start].start, plain.tokens[name.end - 1].end)
        if token.start <= plain.tokens[name.start].start
        else (token.start, token.end)
        for name in names
    ]


def _piece(text: str, message: Message, place: tuple[int, int]) -> str:
    tokens = message.tokens[place[0] : place[1]]
    return text[tokens[0].start : tokens[-1].end].strip() if tokens else ""


def _without_names(text: str, message: Message) -> str:
    kept, begin = [], 0
    for at, token in enumerate(message.tokens):
        if message.text(at) in {CLIENT, CLIENTS}:
            kept.append(text[begin : token.start])
            begin = token.end
    return " ".join("".join((*kept, text[begin:])).split())


def _of_anybody(text: str, message: Message, names: ClientNames) -> Asked | None:
    """Return a request with a name that has a slip, or that no client bears."""
    heads = [("tell", pattern) for pattern in (*NOTES_ON_ANYBODY, *TELLING_ANYBODY)]
    phrases = OF_ANYBODY if len(message.tokens) <= LONGEST else ()
    unknown: str | None = None
    for _, pattern in (*heads, *phrases):
        hit = pattern.at(message, 0)
        if hit is None:
            continue
        start, end = hit.parts["who"]
        for stop in range(start + 1, end + 1) if ("tell", pattern) in heads else (end,):
            near = names.closest(message.said[start:stop])
            if near:
                return _with_one(text, message, Name(start, stop, near))
        is_all = end - start == len(message.tokens)
        if unknown is None and not is_all and not _NOBODY.issuperset(message.said[start:end]):
            unknown = _piece(text, message, (start, end)).removesuffix("'s").removesuffix("’s")
    return None if unknown is None else Asked("card", unknown=unknown)


def _with_one(text: str, message: Message, name: Name) -> Asked | None:
    named = with_names(message, [name])
    told = _told(text, named)
    return told if told is not None else _request(text, named, PHRASES)
