"""Scores from 0 to 10 that a client puts on a pain, each told from the reps, loads and efforts beside it."""

from collections.abc import Sequence
from decimal import Decimal

from domain.reading.body_parts import Part, is_of_gear
from domain.reading.body_words import HURT
from domain.reading.message import Message
from domain.reading.patterns import Pattern
from domain.reading.words import words_of

_SCORE = Pattern(
    """
    [# (-|to|or)] score:# ({out_of}|/|on|auf) (ten|ten:#)
    (pain|ache|soreness|hurt|hurts) [{leading_to}]* [{leading_to}]* told:# !({counted}) [{out_of} #]
    <!(so) {about} [a|an|at|about] alone:# >({ending})
    (is|was|at) a alone:# >({ending})
    {i_would} {put_at} [a|an|at|as|about|like|around|maybe|solid|only]* alone:# >({ending})
    (level|score|scale) [of|is|was|:|a] score:#
    , [a|an] alone:# ({i_would} {think}|perhaps|maybe|probably|or so|ish|i guess|tops|if that|at most)
    a score:# (on|out) [of (ten|ten:#)]
""",
    out_of="out of|from|of|over",
    leading_to="""
        level|score|scale|intensity|rated|rating|was|is|at|of|about|around|maybe|like|a|an|:|=|now|roughly|,
        just|only|probably|down|up|to|went|between # and|somewhere|round|out of (ten|#)
    """,
    counted="""
        kg|kgs|lb|lbs|rep|reps|x|set|sets|time|times|day|days|week|weeks|sec|min|year|years|s
        for !(now)|and #|/|@
    """,
    about="""
        maybe|about|around|say|roughly|probably|perhaps|like|rate it|give it|only|just|call it
        a? (solid|good|strong|firm|bad|light|mild|small|low|high|decent|proper)
    """,
    i_would="i|id|i d|i would|i should|id have to|ill|i will|would",
    put_at="""
        say|think|guess|reckon|suppose|call it|go with|go for|put (it|that|this) at|score it|mark it
        (rate|give) (it|that|this)
    """,
    think="say|think|guess|reckon|suppose|believe",
    ending="""
        .|,|!|')'|;|'\n'|$|or|ish|at (most|worst)|for now|right now|now|today|rn|when|on (the|a)
        i|though|but|and
    """,
)
"""Scores; one that is "told" comes after the word of pain, and one that is "alone" counts only after it."""
_TO_SCORE = words_of(
    "left right side at is was a about , : maybe like around now ( still today hurts hurt pain painful"
)
"""Words that may stand between a part and its own score."""
_OUT_OF = words_of("/ out of on from over")
_OF_EFFORT = words_of("x rpe effort energy mood form felt motivation sleep reps hard difficulty")
_SHORT_SENTENCE = 12
"""How many tokens the sentence after a pain has whose lone number can be its score."""
_FARTHEST = 40
"""How many tokens after a part its score can stand."""
_ENDS = frozenset({"", ",", ".", "!", ")", "\n", ";", "-"})


def own_scores(message: Message, parts: Sequence[Part]) -> dict[int, tuple[int, Decimal]]:
    """Return the scores that stand with a part of their own, by the part's first token: "left elbow 3/10".

    Each comes with its token. A lone number counts where the pain is said before the part: "pain knee 4".
    """
    found: dict[int, tuple[int, Decimal]] = {}
    for part in parts:
        at = part.end
        while message.text(at) in _TO_SCORE:
            at += 1
        value = message.value(at)
        if value is None or not 0 <= value <= 10:
            continue
        first, _ = message.clause_span(part.start)
        told = not HURT.isdisjoint(message.texts(first, part.start))
        if is_out_of_ten(message, at) or (told and at == part.end and message.text(at + 1) in _ENDS):
            found[part.start] = (at, value)
    return found


def is_out_of_ten(message: Message, at: int) -> bool:
    """Return whether "out of ten" follows the number at a token."""
    return message.text(at + 1) in _OUT_OF and 10 in {message.value(at + 2), message.value(at + 3)}


def take_score(message: Message, at: int) -> None:
    """Mark a score, and its "out of ten" where it has one."""
    number = at
    while message.value(number) is None and number < at + 2:
        number += 1
    end = number + 1
    if is_out_of_ten(message, number):
        end = number + 3 if message.value(number + 2) == 10 else number + 4
    message.take(at, end, "score")


def score_later(message: Message, part: Part) -> int:
    """Return where a score out of ten stands later in the sentence of a part; past the end without one."""
    _, last = message.sentence_span(part.start)
    for at in range(part.end, min(last, part.end + _FARTHEST) if not is_of_gear(message, part) else 0):
        if message.text(at) in {"/", "out"}:
            ten = message.value(at + 1 if message.text(at) == "/" else at + 2)
            score = message.value(at - 1)
            if (
                ten == 10
                and score is not None
                and score <= 10
                and _OF_EFFORT.isdisjoint(message.texts(max(0, at - 5), at + 4))
            ):
                return at - 1
    return len(message.tokens)


def score_of(message: Message, at: int, start: int, end: int, last: int) -> Decimal | None:
    """Return the score of a pain: in its clause, its sentence, or a short sentence after it."""
    in_clause = _score_in(message, at, start, end)
    if in_clause is not None:
        return in_clause
    stretch = last
    if last < len(message.tokens):
        following_first, following_last = message.sentence_span(last)
        if following_last - following_first <= _SHORT_SENTENCE:
            stretch = following_last
    return _score_in(message, at, start, stretch) or _score_out_of_ten_later(message, last)


def _score_out_of_ten_later(message: Message, last: int) -> Decimal | None:
    """Return a score that one of the next sentences gives out of ten, and of nothing else: "knee hurts again.
    Bit annoying. Maybe a 3 out of 10, nurse put peas on it"."""
    for _ in range(_SENTENCES_LATER):
        if last >= len(message.tokens):
            return None
        first, last = message.sentence_span(last)
        for at in message.numbers(first, last):
            value = message.value(at) or Decimal(0)
            beside = message.texts(max(first, at - 5), at + 4)
            if message.taken[at] or not is_out_of_ten(message, at) or value > 10 or value % 1:
                continue
            if _OF_EFFORT.isdisjoint(beside):
                take_score(message, at)
                return value
    return None


_SENTENCES_LATER = 2


def _score_in(message: Message, at: int, first: int, stretch: int) -> Decimal | None:
    for found in _SCORE.find(message, first, stretch):
        kind = next(name for name in ("score", "told", "alone") if name in found.parts)
        place, _ = found.parts[kind]
        value = message.value(place)
        if "ten" in found.parts and message.value(found.parts["ten"][0]) != 10:
            continue
        if value is None or not 0 <= value <= 10 or message.taken[place] not in {"", "score"}:
            continue
        if (kind == "alone" and place < at) or message.text(place - 1) in {"x", "*"}:
            continue
        message.take(place if kind == "told" else found.start, found.end, "score")
        return value
    return None
