"""Numbers beside a set that nothing explains: one of them could be the set's own, and then the set is asked
about.

What a message tells is either of a set, or of something that a rule knows. Where a number is neither, and is
so near to the load or the reps just read that it could have been meant in their place, the set is in doubt.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from decimal import Decimal

from domain.reading.counted import is_counted
from domain.reading.gather import Group
from domain.reading.message import Message
from domain.reading.patterns import Pattern
from domain.reading.phrases import Mark
from domain.reading.words import PERSON_WORDS, words_of
from domain.sets import TrainingSet

_NEAR_REPS, _NEAR_SECONDS = 3, 10
_LIGHTER, _HEAVIER = Decimal("0.8"), Decimal("1.25")
"""How far from the reps, the seconds and the load a number can be that was meant in their place."""
_LIGHTEST = 12
"""A number that is no more is no load that is told a second time."""

_EXPLAINED = Pattern(
    """
    (rep|reps|no|nr|number|volume|size|at|by|until|till|before|after|since|around|past|of|about|the last) >(#)
    {may_be} ..3 >(#)
    {short_of} >(#)
    (in|back in|until|before|last) _ ..1 (it|that|this|they) (was|were) >(#)
    from >(# to #)|like [it|that|they]* (was|were|is) >(#)|(not|than|like|as|vs|versus) >(#)
    (for|with|by) [another]* >(# more)
    (rated|rate|rating|est|estimated|rm|max|score) [max|rm|#|is|at|about|of|around|must be|:|now]* >(#)
    (route|road|radio|chapter|channel|area|formula|windows|version) >(#)
    {leaves} [me|us|again]* in >(# (,|.|!|$|min|mins|minute|minutes|'\n'))
    {weekday} >(# (or bust|next))
    (called|call|dial|dialled|ring|rang|phoned) >(#)
    (seat|back|pad|pin|hole|notch) ..2 >(#)
    {another} [_] [also|only|still]* {counted} [me|it|that|they|was|were|at|only|about|just]* >(# [reps]
        [,|.|-]* (but|it was|i (counted|did|say|got)))
    (coach|you|sheet|plan|target|programme|program|app|goal) {set_down} [me|to|do|for|at|about|at least]* >(#)
    """,
    another=PERSON_WORDS | words_of("he she they"),
    counted="says|said|say|counted|counts|reckons|reckoned|thinks|thought|claims|claimed|swears|swore|saw",
    set_down="said|says|say|wrote|writes|wanted|wants|asked|gave|told|had|was|is|expected|planned|thought",
    may_be="""
        could !(be #)|couldve|coulda|would|wouldve|woulda|should|shouldve|shoulda|id|wish|hope|hoping|want
        love|dream~|need|needs|needed|chasing|someday
    """,
    leaves="""
        leaves|leave|leaving|starts|start|closes|close|closing|shuts|opens|due|home|off|out|back|there|begins
    """,
    weekday="monday|tuesday|wednesday|thursday|friday|saturday|sunday|tomorrow",
    short_of="(close|near|up|get|got|getting|come|came|make it) to|reach|almost",
)
"""What explains the number that follows it: a moment, a wish, a comparison, something near."""
_REMARKED = Pattern("# ((was|is) [right|so|just|very]* (there|close|near|next)|next|soon|incoming|times)")
"""What explains the number before it."""


@dataclass(frozen=True, slots=True)
class Unexplained:
    """Numbers by the sentence they stand in, and all that are said of the sets."""

    by_sentence: dict[int, list[Decimal]]
    said: frozenset[Decimal]
    sentence: Sequence[int]

    def is_doubted(self, one: TrainingSet, at: int) -> bool:
        """Return whether a number beside a set, told at the token `at`, could be its own."""
        here = self.sentence[at]
        for beside in (here - 1, here, here + 1):
            for value in self.by_sentence.get(beside, ()):
                if value not in self.said and _could_be(value, one):
                    return True
        return False


def unexplained(message: Message, groups: Iterable[Group], marks: Iterable[Mark]) -> Unexplained | None:
    """Return the numbers that no set has and nothing explains; None where there are none."""
    of_sets = {at for group in groups for item in group.items for at in range(item.start, item.end)}
    of_sets.update(at for mark in marks for at in range(mark.start, mark.end))
    numbers = message.places.get("#", ())
    left = [
        at
        for at in numbers
        if (at not in of_sets and not message.taken[at]) or message.taken[at] == "another's count"
    ]
    if not left:
        return None
    told = {found.end for found in _EXPLAINED.find(message)}
    told.update(found.start for found in _REMARKED.find(message))
    by_sentence: dict[int, list[Decimal]] = {}
    for at in left:
        value = message.value(at)
        if value is not None and at not in told and not is_counted(message, at + 1):
            by_sentence.setdefault(message.sentence[at], []).append(value)
    said = frozenset(value for at in numbers if at in of_sets and (value := message.value(at)) is not None)
    return Unexplained(by_sentence, said, message.sentence) if by_sentence else None


def _could_be(value: Decimal, one: TrainingSet) -> bool:
    """Return whether a number could be the load or the amount of a set in place of what was read."""
    if value in {one.load, one.amount}:
        return False
    near = _NEAR_REPS if one.seconds is None else _NEAR_SECONDS
    if value % 1 == 0 and 2 * value > one.amount and abs(value - one.amount) <= near:
        return True
    return value > _LIGHTEST and one.load > 0 and _LIGHTER <= value / one.load <= _HEAVIER
