"""Exercises that are left out."""

from collections.abc import Sequence

from domain.reading.away import is_anothers
from domain.reading.body_words import HURT, PARTS
from domain.reading.exercise_words import IMPLEMENTS
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.patterns import Found, Pattern, words_needed
from domain.reading.skip_words import (
    BETWEEN,
    END_OF_NONE,
    IT,
    LONG_AGO,
    NEARLY_SKIPPED,
    NO_GAIN,
    NOT_SKIPPED,
    OTHERS_SKIP,
    SKIP,
    SKIPPED,
    SURELY_SKIPPED,
    TAKES_BACK,
)
from domain.reading.tokens import JOKE, LINE, SIGN
from domain.reading.words import words_of

_AND = words_of("and , the &")
_AND_MY = _AND | words_of("+ & or nor no n plus also my both all either")
_BEFORE_A_NUMBER = words_of("at for with : - was x only just got ( where i did")
_NO_SET = words_of("because min mins minutes")
_TODAY = words_of("today")
_TODAY_OR_PAUSE = words_of("today this ,")
_AFTER_NO = words_of("today or and , . !") | {""}
_OUT = words_of("out today")
_CANNOT = words_of("couldnt could cant didnt did wont never unable")
_BETTER = words_of(
    "any better properly right well heavier deeper lower more faster slower with without like as"
)
"""Words after the name with which it is done, but not so: "couldnt do squats any deeper"."""
_AFTER_NONE = words_of("the my any of sets doing")
_TO_ME = words_of("me us")
_HAVE_NOT = words_of("havent have hadnt had never")
_IN_AGES = words_of("in for since before ever like so this")
_SIGNS = words_of(": - = (")
_PARTED = words_of(", . ; ! )") | {"\n"}
_APART = words_of("out away off aside")

_MAY_LEAVE_OUT = words_needed(SKIP, SKIPPED)
"""Words without which no exercise is left out."""
_TOLD_OF = Pattern(
    "[{place}] (is|was|are|were|has|had|s|looks|look|free|full|taken|busy|broken|occupied|hurts|hurt)",
    place=words_of("bar bars machine machines rack racks station stand bench area corner platform cable"),
)
"""What makes the name after a comma begin a sentence of its own: "skip the hang, pull up bar is taken"."""

_SURELY_NOT = Pattern("(not|never|no more|without|wont be|aint) (skipping|missing|skipped)")

FARTHEST_NAME = 6
"""How many tokens after the words for leaving out the name of the exercise can begin."""
FARTHEST_BEFORE = 4
"""How many tokens can stand between the name of the exercise and the words for leaving out."""
WORDS_AFTER = 5
"""How many tokens after the name can tell that it is left out."""


def exercises_left_out(message: Message, named: Sequence[Named], in_question: set[int]) -> list[Named]:
    """Return the names of the exercises that are left out."""
    if _SURELY_NOT.is_in(message):
        return []
    if not message.has(_MAY_LEAVE_OUT) or (not message.has(SURELY_SKIPPED) and NOT_SKIPPED.is_in(message)):
        return []
    nearly = {at for near in NEARLY_SKIPPED.find(message) for at in range(near.start, near.end)}
    skips, skipped_before = (
        [one for one in pattern.find(message) if one.start not in nearly and not _is_not_mine(message, one)]
        for pattern in (SKIP, SKIPPED)
    )
    if not skips and not skipped_before:
        return []
    named = [
        n
        for n in named
        if message.text(n.end) not in HURT
        and not _is_of_the_body(message, n)
        and not (n.end == n.start + 1 and message.text(n.start) in IMPLEMENTS and message.text(n.end) in _IS)
    ]
    found: list[Named] = []
    for skip in skips:
        if skip.start not in in_question and message.taken[skip.start] in {"", "exercise"}:
            found.extend(_named_after(message, skip, named))
    for skipped in skipped_before:
        if skipped.start not in in_question:
            found.extend(_named_before(message, skipped, named, found))
    unique: list[Named] = []
    for name in found:
        if name not in unique and not any(set(name.names) == set(u.names) for u in unique):
            unique.append(name)
    return sorted(unique, key=lambda n: n.start)


_IS = words_of("is was are were seems looks s")
"""Words by which the one named, where it is told by a single word, only tells why: "the cable is taken"."""


def _is_not_mine(message: Message, skip: Found) -> bool:
    """Return whether somebody else leaves out, or the client did so some time ago, or does so always."""
    if not _TO_ME.isdisjoint(message.texts(skip.start, skip.end)):
        # "They kicked me out before the rows".
        return False
    if message.text(skip.start - 1) in OTHERS_SKIP:
        return True
    first, last = message.clause_span(skip.start)
    return is_anothers(message, first, skip.start, message.text(skip.start)) or LONG_AGO.is_in(
        message, first, last
    )


def _named_after(message: Message, skip: Found, named: Sequence[Named]) -> list[Named]:
    """Return the exercises after the words that leave them out, or the one before: "skipping it"."""
    end = skip.end
    _, last = message.sentence_span(skip.start)
    ahead = [
        n
        for n in named
        if end <= n.start < min(last, end + FARTHEST_NAME)
        and all(message.value(at) is None for at in range(end, n.start))
        and not ("today" in skip.parts and n.weak and message.text(n.end) not in _AFTER_NO)
    ]
    if ahead and message.text(end) in IT and _ends_with_it(message, end):
        # "... so I skip that one, leg curl 50x12" leaves out the one before.
        ahead = []
    if ahead and message.text(end) in _PARTED and _is_right_after_a_name(message, skip, named):
        # "Rows: skipped, bench 80x8" leaves out the rows.
        return []
    if "none" in skip.parts and ahead and not _AFTER_NONE.issuperset(message.texts(end, ahead[0].start)):
        ahead = []
    if ahead and _small_words(message, end, ahead[0].start):
        farther = [n for n in named if end + FARTHEST_NAME <= n.start < last]
        chain = _chain(message, [*ahead, *farther])
        if _followed_by_set(message, chain[-1]) and "plainly" not in skip.parts:
            return []
        return chain if _is_left_out(message, skip, chain[-1], last) else []
    if message.text(end) in IT and message.text(skip.start) in TAKES_BACK:
        before = [n for n in named if n.start < skip.start and not n.weak][-1:]
        return [
            n
            for n in before
            if message.sentence[n.start] >= message.sentence[skip.start] - 1
            and not _followed_by_set(message, n)
            and not (
                message.text(skip.start) == "missed"
                and message.numbers(message.clause_span(n.start)[0], n.start)
            )
        ]
    return []


def _ends_with_it(message: Message, at: int) -> bool:
    """Return whether a clause ends with "it", "that one", "those today"."""
    at += 1
    while message.text(at) in _AFTER_IT:
        at += 1
    return message.text(at) in _PARTED


_AFTER_IT = words_of("one ones today too again")


def _is_right_after_a_name(message: Message, skip: Found, named: Sequence[Named]) -> bool:
    """Return whether nothing but a sign stands between a name and the words for leaving out."""
    at = skip.start - (message.text(skip.start - 1) in _SIGNS)
    return any(n.end == at for n in named)


def _chain(message: Message, named: Sequence[Named]) -> list[Named]:
    """Return the first of some names and those that are listed with it: "squats, lunges and rows"."""
    chain = [named[0]]
    for following in named[1:]:
        between = message.texts(chain[-1].end, following.start)
        if not between or not _AND_MY.issuperset(between) or _followed_by_set(message, following):
            break
        if between == [","] and _TOLD_OF.at(message, following.end) is not None:
            break
        if between == [","] and _is_the_reason(message, following):
            break
        chain.append(following)
    return chain


def _is_the_reason(message: Message, name: Named) -> bool:
    """Return whether a part of the body ends the sentence, and names no exercise: "no dips, shoulder"."""
    is_part = (message.text(name.start),) in PARTS and name.end == name.start + 1
    return is_part and name.end == message.sentence_span(name.start)[1]


def _named_before(
    message: Message, skipped: Found, named: Sequence[Named], found: Sequence[Named]
) -> list[Named]:
    """Return the exercises before the words that leave them out: "squats and lunges: skipped"."""
    start, end = skipped.start, skipped.end
    before = [n for n in named if n.end <= start and message.sentence[n.start] == message.sentence[start]]
    if not before or before[-1] in found or start - before[-1].end > FARTHEST_BEFORE:
        return []
    if not _small_words(message, before[-1].end, start):
        return []
    if any(n.start == end or (n.start == end + 1 and message.text(end) not in _PARTED) for n in named):
        return []
    if not _PART_OF_A_SET.isdisjoint(message.texts(max(0, before[-1].start - _NEAR), before[-1].start)):
        # "The weight on the row I forgot" leaves out no rows.
        return []
    listed = [before.pop()]
    while before:
        between = message.texts(before[-1].end, listed[-1].start)
        if not between or not _AND.issuperset(between):
            break
        listed.append(before.pop())
    return listed


_PART_OF_A_SET = words_of("weight weights load loads reps number numbers kilos pounds settings setting")
_NEAR = 3


def _is_of_the_body(message: Message, name: Named) -> bool:
    """Return whether a word that could name an exercise is a part of the body: "no more shoulder pain"."""
    return name.weak and "pain" in message.taken[name.start : name.end]


def _small_words(message: Message, start: int, end: int) -> bool:
    return all(message.text(at) in BETWEEN for at in range(start, end))


def _followed_by_set(message: Message, name: Named) -> bool:
    """Return whether a number of a set stands right after a name."""
    at = name.end
    while message.text(at) in _BEFORE_A_NUMBER:
        at += 1
    if message.text(at) == "," and _SET_ENDS.at(message, at + 1) is not None:
        # "All on target but the press, 50x9"
        return True
    return message.value(at) is not None and message.text(at + 1) not in _NO_SET


_SET_ENDS = Pattern(
    """
    [only|just|got]* # [kg|kgs|kilo|kilos|lb|lbs] (x|for|*|/) # [reps] (>(.|!|;|,|and|'\n')|$)
    [i|there|only|just]* (got|did|managed|made) [only|just]* # [reps|on those|there] (>(.|!|;|,|'\n')|$)
    """
)


def _ends_at(message: Message, at: int) -> bool:
    """Return whether a sign stands at a token, or nothing: no question mark, and none that goes on."""
    if at >= len(message.tokens):
        return True
    sign = message.tokens[at]
    return (
        sign.kind in {SIGN, LINE, JOKE}
        and sign.text not in {"?", "/", "'", "&", "+"}
        and (NO_GAIN.at(message, at) is None)
    )


def _is_left_out(message: Message, skip: Found, name: Named, last: int) -> bool:
    """Return whether what follows the name lets the words mean that it is left out."""
    after = message.texts(name.end, min(last, name.end + WORDS_AFTER))
    if message.text(skip.start) in _CANNOT and not _BETTER.isdisjoint(after[:2]):
        return False
    if message.text(skip.start) in _HAVE_NOT and not _IN_AGES.isdisjoint(after[:1]):
        return False
    if "none" in skip.parts:
        return _ends_at(message, name.end) or END_OF_NONE.at(message, name.end) is not None
    if "soft" in skip.parts:
        return not message.numbers(name.end, last)
    if "today" in skip.parts:
        return not after or after[0] in {".", "!"} or not _TODAY_OR_PAUSE.isdisjoint(after)
    if "out" in skip.parts:
        return not _OUT.isdisjoint(after)
    if "apart" in skip.parts:
        return not _APART.isdisjoint(after[:1]) or (
            after[:1] == ["for"] and not _TODAY.isdisjoint(after[1:2])
        )
    return "ended" not in skip.parts or not after or not _TODAY.isdisjoint(after)
