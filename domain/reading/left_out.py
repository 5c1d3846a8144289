"""What is left out of a message before its words are looked at: hesitations, openings, the points of days."""

from collections.abc import Iterator

from domain.reading.tokens import NUMBER, WORD, Token
from domain.reading.words import MONTH_WORDS, REP_WORDS, words_of

_HESITATIONS = words_of("um umm ummm uh uhh uhhh uhm ehm erm")
"""What is dictated between the words, and says nothing."""
_HELLO = ("hi", "hey", "hello", "hallo", "hiya", "yo", "heya", "oi")
_WHOM = tuple((word,) for word in ("coach", "there", "mate", "bro", "dude", "man", "boss", "buddy", "again"))
_ASKED_WITH = words_of("what whats when whens which how can could show")
_OPENINGS: dict[tuple[str, ...], frozenset[str]] = {
    words: signs
    for signs, openings in (
        (
            frozenset({""}),
            (
                *(("btw",), ("fyi",), ("just", "fyi"), ("by", "the", "way"), ("anyway",), ("anyways",)),
                *(
                    (*doubt, "if", this, matters, "but")
                    for doubt in (("not", "sure"), ("dont", "know"), ("no", "idea"))
                    for this in ("this", "it")
                    for matters in ("matters", "counts", "helps")
                ),
                *(("for", "the", "record"), ("just", "so", "you", "know"), ("last", "thing")),
            ),
        ),
        (frozenset({""}), tuple((hello, *whom) for hello in _HELLO for whom in ((), *_WHOM))),
        (_ASKED_WITH, (("brother",), ("bro",), ("friend",), ("my", "friend"), ("man",), ("sir",), ("boss",))),
        (_ASKED_WITH, (("please",), ("actually",), ("finally",), ("really",), ("seriously",))),
        (_ASKED_WITH | {","}, (("well",), ("oh",), ("hmm",))),
        (_ASKED_WITH, (("and",), ("also",))),
        (frozenset({","}), (("right",), ("okay",))),
        (
            frozenset({":"}),
            (
                ("update",),
                ("quick", "update"),
                ("small", "update"),
                ("quick", "one"),
                ("heads", "up"),
                ("ps",),
                ("p.s",),
            ),
        ),
    )
    for words in openings
}
"""What opens a message and says nothing, each with the signs of which one must follow, "" where none need."""
_LONGEST_OPENING = max(map(len, _OPENINGS))
_AFTER_AN_OPENING = frozenset({",", ":", "-", ".", "!"})
_ENDINGS: frozenset[tuple[str, ...]] = frozenset(
    {
        *((word,) for word in ("cheers", "thanks", "thx", "thankyou", "ty", "ta", "fyi", "btw")),
        ("tho",),
        ("though",),
        *((word,) for word in ("mate", "coach", "bro", "dude", "buddy", "pal", "boss")),
        ("thank", "you"),
        ("if", "that", "helps"),
        *((",", word, "?") for word in ("ok", "okay", "cool", "alright")),
        (":", ")"),
        (",", ")"),
        (":", "-", ")"),
    }
)
"""What closes a message and says nothing."""
_LONGEST_ENDING = max(map(len, _ENDINGS))
_LASTS = frozenset(ending[-1] for ending in _ENDINGS)
_SPOKEN_OF = words_of(
    """the my a an your our this that with from tell ask to of and by for as no not or even
    night goodnight"""
)
"""Words before "coach" or "mate" that make one somebody spoken of, and "tho" no end."""
_BEFORE_COACH = words_of(
    "sorry thanks thx cheers ta please pls ok yes no yep nope today now again tomorrow lol"
)
_ENDS = frozenset({".", "!"})
_BEFORE_AN_ENDING = frozenset({",", "-", ".", "!"})
_ASKS = words_of("i we")


def without_order(tokens: list[Token]) -> list[Token]:
    """Leave out which set each of several is, behind its number: "8 in the first set, 7 in the second"."""
    said = [token.text for token in tokens]
    if "first" not in said:
        return tokens
    spans = list(_places_in_order(tokens, said))
    if len(spans) < len(_FIRST_TWO) or [said[at] for _, at, _ in spans[:2]] != _FIRST_TWO:
        return tokens
    left_out = {at for start, _, end in spans for at in range(start, end)}
    return [token for at, token in enumerate(tokens) if at not in left_out]


def _places_in_order(tokens: list[Token], said: list[str]) -> Iterator[tuple[int, int, int]]:
    """Yield where "in the second set" begins behind a number, its "second", and where it ends."""
    for at in range(2, len(tokens)):
        if said[at] not in _IN_ORDER:
            continue
        start = at - (said[at - 1] in _SPOKEN_OF)
        end = at + 1 + (at + 1 < len(tokens) and said[at + 1] in _A_SET)
        start -= said[start - 1] in _IN
        before = tokens[start - 1]
        stands_behind = said[start] in _IN or end == len(tokens) or said[end] in _PARTS
        if stands_behind and (before.kind == NUMBER or before.text in REP_WORDS):
            yield start, at, end


_FIRST_TWO = ["first", "second"]
_IN_ORDER = words_of("first second third fourth")
_A_SET = words_of("set one go round attempt try")
_IN = words_of("in on for")
_PARTS = words_of(", . ; and then but )")


def without_hesitations(tokens: list[Token]) -> list[Token]:
    """Leave out "um" and "uh", unless there is nothing else."""
    return [token for token in tokens if token.text not in _HESITATIONS] or tokens


def without_opening(tokens: list[Token]) -> list[Token]:
    """Leave out what only opens a message: "btw", "update:"."""
    for length in range(_LONGEST_OPENING, 0, -1):
        signs = _OPENINGS.get(tuple(token.text for token in tokens[:length]))
        if signs is None:
            continue
        if len(tokens) <= length:
            return tokens
        sign = tokens[length].text
        if sign in signs or "" in signs:
            rest = tokens[length + (sign in _AFTER_AN_OPENING) :]
            return rest or tokens
    return tokens


def without_ending(tokens: list[Token]) -> list[Token]:
    """Leave out what only closes a message: "cheers mate", "if that helps", a smile in signs."""
    end = len(tokens)
    while end > 1 and tokens[end - 1].text in _ENDS:
        end -= 1
    if tokens[end - 1 : end] and tokens[end - 1].text not in _LASTS:
        return tokens
    kept = end
    while (shorter := _without_one_ending(tokens, kept)) < kept:
        kept = shorter
    return tokens if kept == end else tokens[:kept]


def _without_one_ending(tokens: list[Token], end: int) -> int:
    """Return where the tokens before `end` stop without an ending, and the sign that parts it from them."""
    for length in range(min(_LONGEST_ENDING, end - 1), 0, -1):
        start = end - length
        if tuple(token.text for token in tokens[start:end]) not in _ENDINGS:
            continue
        before = tokens[start - 1].text
        if tokens[start].text == "coach" and tokens[start - 1].kind == WORD and before not in _BEFORE_COACH:
            # "Make Ines Noor's coach" speaks of one.
            return end
        if before in _SPOKEN_OF or (
            tokens[end - 1].text == ")" and any(t.text == "(" for t in tokens[:start])
        ):
            return end
        return start - 1 if start > 1 and before in _BEFORE_AN_ENDING else start
    return end


def without_points_of_days(tokens: list[Token]) -> list[Token]:
    """Leave out the point of a day before its month: "20. May"."""
    points = {
        at
        for at in range(1, len(tokens) - 1)
        if tokens[at].text == "."
        and tokens[at].glued
        and tokens[at - 1].kind == NUMBER
        and tokens[at + 1].text in MONTH_WORDS
        and not (at + 2 < len(tokens) and tokens[at + 2].text in _ASKS)
    }
    return [token for at, token in enumerate(tokens) if at not in points] if points else tokens
