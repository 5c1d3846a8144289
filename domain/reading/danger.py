"""Warning signs: words that describe something which calls for medical help at once.

The list is the contract's. Denials, other people, jokes and what is long past do not count. Where in doubt
the answer is yes: the bot then tells the client to stop and to call for help, which is the cheaper mistake.
The words themselves are next door; here stands how they are found, and how they are discounted.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import islice

from domain.reading.body_denials import DENIED_WITH, is_answered_no, is_asked_in_general, is_long_past
from domain.reading.body_parts import Part, find_parts, is_of_gear
from domain.reading.body_phrases import SOMEBODY_ELSE
from domain.reading.body_words import JOKE_WORDS, PARTS
from domain.reading.danger_discounts import (
    CHEST_WITH_A_SET,
    COLD_SWEAT,
    DENYING,
    EXERCISE_AFTER,
    FIGURES,
    GOES_ON,
    JESTED,
    LASTING,
    NOT_DENYING_AFTER,
    SERIOUS,
    SHORT_OF_AIR,
    SOMEBODY_FIRST,
    SPEAKS_OF_ME,
    STORY_TOLD,
    SURELY_CHEST,
    SYMPTOMS,
    THOUGHT_OF,
    TRAINED_CHEST,
    TRAINING_NEAR,
)
from domain.reading.danger_phrases import CANNOT_USE, PHRASES
from domain.reading.danger_words import (
    ALL_TURNS,
    CHEST,
    CHEST_STRONG,
    DIZZY,
    DRINKING,
    DRINKS,
    HEART,
    HEART_ODD,
    NEARS,
    POPS,
    WEAK,
    Near,
    Sign,
)
from domain.reading.message import Message
from domain.reading.patterns import Found
from domain.reading.request import Pain
from domain.reading.words import words_of

_PLACES = frozenset().union(*(near.places for near in NEARS))
MOST_TOLD = 60
"""How many of the things that sound like signs are looked at in one message."""
FARTHEST = 60
"""How many tokens away the words can stand that take the meaning out of a sign."""
_DENIED_WITH = DENIED_WITH | SYMPTOMS
_GOES_ON = words_of("but then so because and &")
"""Words after which what is told is denied no more."""
_SLEEPING = frozenset({"passed", "pass", "passing", "collapsed", "collapse", "blacked"})
"""Words that mean sleep beside a bed or a sofa, where "fainted" does not."""
_DENIAL_REACH = 16
"""How many words before a sign a denial is looked for."""


@dataclass(frozen=True, slots=True)
class _Told:
    """A sign told by the tokens from `start` to before `end`; `keys` are its telling words."""

    sign: Sign
    start: int
    end: int
    keys: tuple[int, ...]


def signs(message: Message) -> tuple[Sign, ...]:
    """Return the warning signs described, each once, in the order in which they are looked for."""
    found: dict[Sign, None] = {}
    joke = message.has(JOKE_WORDS)
    for told in islice(_told(message), MOST_TOLD):
        if told.sign not in found and not _discounted(message, told, joke=joke):
            found[told.sign] = None
    return tuple(found)


def danger_pain(message: Message, found: tuple[Sign, ...], pain: tuple[Pain, ...]) -> tuple[Pain, ...]:
    """Return the pain with the place of a sign that hurts by its nature, where it is not named yet."""
    places = {p.where for p in pain}
    if "chest" in found and "chest" not in places:
        return (*pain, Pain("chest"))
    if "head" in found and "head" not in places:
        return (*pain, Pain("head"))
    if "pop" in found and (not pain or places == {"other"}):
        return tuple(Pain(p.place, p.side) for p in find_parts(message, ())[:1] if p.place != "other")
    return pain


def _told(message: Message) -> Iterator[_Told]:
    """Yield what sounds like a warning sign, before anything is discounted."""
    for near in NEARS if message.has(_PLACES) else ():
        if message.has(near.places) and message.has(near.feelings):
            yield from _told_near(message, near)
    for sign, told in PHRASES.find(message):
        yield _Told(sign, told.start, told.end, (told.start,))
    odd = message.has(HEART) and message.has(HEART_ODD)
    if odd and (message.has(DIZZY) or ALL_TURNS.is_in(message)):
        yield from _told_near(message, Near("heart", HEART, HEART_ODD, 5))
    if message.has(POPS):
        yield from _told_pop(message)


def _told_near(message: Message, near: Near) -> Iterator[_Told]:
    """Yield each place with each feeling that stands near it."""
    tokens = message.tokens
    for place, token in enumerate(tokens):
        if token.text not in near.places or (
            token.text in CHEST and message.text(place + 1) in EXERCISE_AFTER
        ):
            continue
        for feeling in range(max(0, place - near.gap - 1), min(len(tokens), place + near.gap + 2)):
            text = tokens[feeling].text
            if feeling == place or text not in near.feelings:
                continue
            if text == "crushing" and message.text(feeling + 1) in {"it", "this"}:
                continue
            if abs(message.sentence[place] - message.sentence[feeling]) <= near.across:
                # "No strength" is what tells of weakness, and denies nothing.
                keys = (place,) if near.feelings is WEAK else (place, feeling)
                yield _Told(near.sign, min(place, feeling), max(place, feeling) + 1, keys)


def _told_pop(message: Message) -> Iterator[_Told]:
    """Yield a pop of a part of the body that then cannot be used, in either order."""
    useless = {message.sentence[cannot.start] for cannot in CANNOT_USE.find(message)}
    parts = [part for part in find_parts(message, ()) if not is_of_gear(message, part)] if useless else []
    if not parts:
        return
    for at, token in enumerate(message.tokens):
        here = message.sentence[at]
        if (
            token.text in POPS
            and not useless.isdisjoint((here - 1, here, here + 1))
            and (_is_of_a_part(message, at, parts) or not _popped_in(message, at))
        ):
            yield _Told("pop", at, at + 1, (at,))


def _is_of_a_part(message: Message, at: int, parts: Sequence[Part]) -> bool:
    """Return whether it is a part of the body that popped: "my knee popped on squats", "knee went pop"."""
    return any(part.end <= at and _WENT.issuperset(message.texts(part.end, at)) for part in parts)


_WENT = words_of(
    """just has have had then suddenly went goes gone go made makes gave gives it a an that literally actually
    kind kinda of sort sorta like and totally fully proper loud big joint really all"""
)
"""What may stand between a part of the body and its pop."""


def _popped_in(message: Message, at: int) -> bool:
    """Return whether somebody popped in or to somewhere, cracked on, or snapped something up."""
    after, then = message.text(at + 1), message.text(at + 2)
    if after in {"in", "at"}:
        of_a_part = then in {"my", "the", "left", "right", "one"} or (then,) in PARTS
        return not of_a_part or message.text(at + 3) in {"gym", "shop"}
    return after in {"to", "into", "by", "over", "round", "on", "up", "music", "song", "songs"}


def _discounted(message: Message, told: _Told, *, joke: bool) -> bool:
    """Return whether a sign is denied, another's, long past, a figure of speech or a joke."""
    first, last = message.sentence_span(told.start)
    first, last = max(first, told.start - FARTHEST), max(min(last, told.end + FARTHEST), told.end)
    if any(_is_denied(message, at) for at in told.keys) or is_answered_no(message, told.end):
        return True
    if _is_anothers(message, told, first) or is_long_past(message, told.start):
        return True
    clause, end = message.clause_span(told.start)[0], message.clause_span(told.end - 1)[1]
    full_of_it = not _FULL_OF_IT.isdisjoint(message.texts(clause, told.start))
    if STORY_TOLD.is_in(message, first if full_of_it else clause, end):
        return True
    if (thought := THOUGHT_OF.first(message, clause, told.start)) is not None:
        return "asked" not in thought.parts
    if is_asked_in_general(message, told.start, first, last) or _is_figure(message, told, first, last):
        return True
    if told.sign == "urine" and _is_drink(message, told):
        return True
    if told.sign == "chest" and not message.text(told.start).startswith("heart"):
        return _is_trained_chest(message, told, first, last)
    return joke and told.sign in JESTED and not SERIOUS.is_in(message)


def _is_figure(message: Message, told: _Told, first: int, last: int) -> bool:
    """Return whether words in its sentence make a sign a figure of speech.

    Numbness that lasts is no foot that fell asleep, and beside a bed only "passed out" means sleep.
    """
    figure = FIGURES[told.sign].first(message, first, last)
    if figure is None:
        return False
    if told.sign == "numb":
        return not LASTING.is_in(message, first, last)
    if told.sign == "faint" and "rest" in figure.parts:
        return not _SLEEPING.isdisjoint(message.texts(told.start, told.end))
    return True


def _is_drink(message: Message, told: _Told) -> bool:
    """Return whether a colour is that of a drink, and not of what follows: "black coffee and a pee"."""
    between = message.texts(told.start + 1, told.end - 1)
    if message.text(told.start) in DRINKS:
        return len(between) > 1
    drunk = message.text(told.end - 1) in DRINKS and not DRINKING.isdisjoint(between)
    return drunk or not DRINKS.isdisjoint(between[:1])


def _is_denied(message: Message, at: int) -> bool:
    """Return whether the word at `at` is denied: directly, or as one of a list of symptoms after a "no".

    Where anything else stands between them, the denial is of that: "no curls today as my chest hurts".
    """
    for i in range(at - 1, max(-1, at - _DENIAL_REACH), -1):
        text = message.text(i)
        if message.sentence[i] != message.sentence[at]:
            return False
        if text in DENYING:
            return not (
                message.text(i + 1) in NOT_DENYING_AFTER
                or (text == "never" and {"before", "until", "like"} & set(message.texts(at, at + 5)))
            )
        if text not in _DENIED_WITH or text in _GOES_ON:
            return False
    return False


_NOBODY = words_of("no without")
_FULL_OF_IT = words_of("much many lots full")
"""Words for what a story has a lot of: "watching a series, so much fainting"."""


def _is_anothers(message: Message, told: _Told, first: int) -> bool:
    """Return whether the sign is another person's, by the words before it, which begin at token `first`."""
    if told.sign == "call for help" or not {"my", "me"}.isdisjoint(message.texts(told.start, told.end)):
        # "Someone call an ambulance" is asked of others.
        return False
    clause, _ = message.clause_span(told.start)

    def is_of(other: Found) -> bool:
        if message.text(other.start - 1) in _NOBODY or SPEAKS_OF_ME.is_in(message, other.end, told.start):
            return False
        return message.clause[other.start] == message.clause[told.start] or message.text(clause) in GOES_ON

    if any(is_of(other) for other in SOMEBODY_ELSE.find(message, first, told.start)):
        return True
    opening = SOMEBODY_FIRST.at(message, first, told.start)
    return (
        opening is not None
        and _NOBODY.isdisjoint(message.texts(opening.start, opening.end))
        and not SPEAKS_OF_ME.is_in(message, opening.end, told.start)
        and message.clause[told.start] == message.clause[first]
    )


def _is_trained_chest(message: Message, told: _Told, first: int, last: int) -> bool:
    """Return whether the chest is only the muscle that was trained, or where the bar comes to."""
    words = frozenset(message.texts(first, last))
    if SURELY_CHEST.is_in(message, first, last) or words & SHORT_OF_AIR:
        return False
    if TRAINED_CHEST.is_in(message, first, last):
        return True
    if any(message.text(at) in CHEST_STRONG for at in told.keys):
        return False
    if CHEST_WITH_A_SET.is_in(message, first, last):
        return True
    beside = words.difference(message.text(at) for at in told.keys)
    return COLD_SWEAT.isdisjoint(words) and not beside.isdisjoint(TRAINING_NEAR)
