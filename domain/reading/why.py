"""Questions after the reason for a verdict or a target: "why 82.5?", "how come below?", "why not more".

Such a question is told from all others by what it is about: every word of it belongs to asking, to loads and
reps, to verdicts and targets, or to an exercise. One strange word ("why do I feel so tired", "why is my knee
worse", "coach, why …") makes it a question of another kind, which is read as ever. So does an exercise with
nothing else beside it: "why rows?" asks for the choice of the exercise, which is the coach's.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal
from types import MappingProxyType

from domain.reading.message import Message, message_of
from domain.reading.naming import names_for
from domain.reading.patterns import Pattern
from domain.reading.words import KG_WORDS, LB_WORDS, words_of


@dataclass(frozen=True, slots=True)
class WhyAsked:
    """A question after reasons, which begins at the place `start` of the text.

    `said_before` is whether something else stands before it, which is to be read by itself. `names` are the
    exercises that it is about; `numbers` are those asked about, without those that were expected instead.
    `has_matter` is whether a load, a number, a verdict or a target is named.
    """

    start: int
    said_before: bool
    names: tuple[str, ...]
    numbers: tuple[Decimal, ...]
    has_matter: bool


_ASKING = Pattern(
    """
    <!(is|was) why|whys|how (come|so)|based on what|on what basis|what for
    (how is|hows) (that|it|this|{matter})
    (whats|what is|what are|what was) (that|this|it|these|the|my|#) ...4 (based on|from)
    (whats|what is|what was) the reason|[the] reason [for ..4] '?'
    where (does|did|do|is|was) ...4 (come|comes|from)
    how (did|do|does) (you|u) (get|come|work|arrive|calculate|decide|choose)
    (explain|justify) (that|this|it|the|why)
    """,
    matter=words_of("below level beat lower higher less more"),
)

_SIGNS = words_of("? ! . , ; : - x % & ( ) + @") | {'"', "\n"}
_ASIDE = words_of(
    """why whys not how hows come comes so what whats based on is basis for where does did from the that this
    it its reason explain justify but and hm hmm huh wait ok okay oh hey hi pls please though tho then a
    exactly really just again sorry thanks thank you u get got work out calculate arrive decide choose
    at up with be was are me to now"""
)
"""Words that can stand in a question which names nothing: it is about what was last said."""
_SMALL = _ASIDE | words_of(
    """i we my mine our your these those one an of in as than not no any only even still already instead
    isnt arent wasnt werent didnt dont doesnt havent hasnt wont do doing done being been were am have has had
    should shall must will would could can im ive youre if when after before today on each per or by
    go goes going gone went make made makes say says said tell told give gave given want wants wanted need
    supposed meant keep kept put use used stay stays staying stayed here there all both time times"""
)
_MATTER = (
    words_of(
        """below level beat beats beaten beating equal equals comparable compare compared best pb pr record
        verdict result target targets aim aims aiming goal more less fewer lower lowered lowering higher
        heavier lighter same light heavy down up high low increase increased decrease decreased raise raised
        drop dropped jump jumps add adds added adding reduce reduced many much few big small smaller bigger
        little step range load loads weight weights reps rep seconds secs sec last next previous expect
        expected count counted counts each lift top bottom hold held set aside plates max negatives negative
        than"""
    )
    | KG_WORDS
    | LB_WORDS
)
_OF_THE_BODY = Pattern("(am i|i am|im) ..1 (heavier|lighter|up|down|going)|my body? (weight|mass)")
"""What is rather said of the client's own weight, where no exercise and no number is named."""
_OF_THE_BOT = Pattern("(cant|cannot|couldnt) >(you|u|it|that|this|they|these|those)")
"""What the bot cannot do, or what cannot be done; what the client cannot do is no matter of the bot's."""
_WHY_NOT = Pattern("why not [!|.|'?']* $")
"""After something else it asks for nothing: "one more set, why not"."""
_INSTEAD = words_of("not than of over against rather versus vs")
"""Words before a number that was expected rather than told: "why not 85", "instead of 85"."""

_ARTICLES = words_of("the my todays this a")
_ASKED_ON = words_of("on for in of at with")
_AIMS = words_of("target targets goal aim number")

LONGEST = 24
"""How many words and signs a question after reasons has at most. The house's own choice."""

_NO_NAMES: Mapping[str, str] = MappingProxyType({})


def why_asked(
    text: str, exercises: Sequence[str] = (), own_names: Mapping[str, str] = _NO_NAMES
) -> WhyAsked | None:
    """Return what a question after reasons is about; None where `text` does not end in one.

    `exercises` are those of the client's programme, `own_names` the client's own words for some.
    """
    message = message_of(text)
    asking = _ASKING.first(message)
    if asking is None:
        return None
    begins = _opening(message, asking.start)
    count = len(message.tokens)
    if not begins < count <= begins + LONGEST:
        return None
    named = _names(message, begins, exercises, own_names)
    numbers = message.numbers(begins, count)
    words = [
        at
        for at in range(begins, count)
        if at not in named and at not in numbers and _OF_THE_BOT.at(message, at) is None
    ]
    if any(message.text(at) not in _SMALL | _MATTER | _SIGNS for at in words):
        return None
    if _is_followed_by_more(message, asking.end, numbers) or not all(named.values()):
        return None
    if not named and not numbers and _OF_THE_BODY.is_in(message, begins):
        return None
    if begins and _WHY_NOT.is_in(message, begins):
        return None
    has_matter = bool(numbers) or any(message.text(at) in _MATTER for at in words)
    if not has_matter and any(message.text(at) not in _ASIDE | _SIGNS for at in words):
        return None
    return WhyAsked(
        start=message.tokens[begins].start,
        said_before=begins > 0,
        names=tuple(dict.fromkeys(name for names in named.values() for name in names)),
        numbers=tuple(_asked_about(message, numbers)),
        has_matter=has_matter,
    )


def exercises_named(text: str, exercises: Sequence[str], own_names: Mapping[str, str]) -> tuple[str, ...]:
    """Return the exercises that `text` names, as `why_asked` knows them."""
    named = _names(message_of(text), 0, exercises, own_names)
    return tuple(dict.fromkeys(name for names in named.values() for name in names))


def exercises_asked_of(text: str, exercises: Sequence[str], own_names: Mapping[str, str]) -> tuple[str, ...]:
    """Return the exercises that a question about the plan is of: "what should I beat on rows".

    Not those that only tell when: "what comes after rows".
    """
    message = message_of(text)
    finder = names_for(tuple(exercises), tuple(own_names.items()))
    asked: dict[str, None] = {}
    for name in finder.find(message):
        before = name.start
        while before > 0 and message.text(before - 1) in _ARTICLES:
            before -= 1
        is_on = not _ASKED_ON.isdisjoint(message.texts(max(0, before - 1), before))
        if is_on or message.text(name.end) in _AIMS:
            asked.update(dict.fromkeys(name.names))
    return tuple(asked)


def _opening(message: Message, at: int) -> int:
    """Return the token at which the question begins: what leads up to it belongs to it, a record does not."""
    before = range(at)
    if all(message.text(each) in _SMALL | _MATTER | _SIGNS for each in before):
        return 0
    if "?" in message.texts(0, at) and message.numbers(0, at):
        return 0
    while at > 0 and message.text(at - 1) in _ASIDE and message.text(at - 1) not in {"for", "at", "with"}:
        at -= 1
    return at


def _names(
    message: Message, begins: int, exercises: Sequence[str], own_names: Mapping[str, str]
) -> dict[int, tuple[str, ...]]:
    """Return the tokens of the exercises named in the question, each with the exercises that it can mean."""
    finder = names_for(tuple(exercises), tuple(own_names.items()))
    return {
        at: name.names
        for name in finder.find(message)
        for at in range(max(begins, name.start), name.end)
        if not (name.weak and message.text(at) in _SMALL | _MATTER)
    }


def _is_followed_by_more(message: Message, end: int, numbers: Sequence[int]) -> bool:
    """Return whether numbers come after the question, in a sentence of their own: those are a record."""
    stops = [at for sign in ("?", "\n") for at in message.places.get(sign, ()) if at >= end]
    return bool(stops) and any(at > min(stops) for at in numbers)


def _asked_about(message: Message, numbers: Sequence[int]) -> Iterator[Decimal]:
    """Return the numbers that are asked about, without those that were expected instead of them."""
    for at in numbers:
        value = message.value(at)
        if value is not None and _INSTEAD.isdisjoint(message.texts(max(0, at - 1), at)):
            yield value
