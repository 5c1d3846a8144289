"""Places where a client changes their mind within a message: "80 for 8, no wait, 7".

What the new number stands in place of is decided when the numbers are folded.
"""

from collections.abc import Iterator

from domain.reading.counted import is_counted
from domain.reading.message import Message
from domain.reading.patterns import Found, Pattern
from domain.reading.phrases import Mark
from domain.reading.tokens import WORD
from domain.reading.words import words_of

_NO = words_of("no noo nooo noooo")
_SURE = Pattern(
    """
    (no|wait|sorry|oh|actually) (hang|hold) on
    (hang|hold) on [a (sec|second|moment|minute)] >(,|.|-|!|no|wait|it)
    {no}|nope|nah|oh no|jk|just kidding|i lied|i lie|<!(to|a|the|long|
        my) wait|sorry|sry|oops|whoops|my bad|typo|correction
    i mean|i meant|meant|actually|[or] rather|edit|edited|recount|recounted|corrected|amended
    [pff|ha|haha|nah|im|i am|just|was]* (kidding|joking)
    (just|i) checked|checked (again|the video)|(watched|looked at) [it|the video]* back|on second count
    make that|make it|scratch that|scrap that|should be|should say
    {those_are} (last (week|time|session|month|weeks|times|sessions)|yesterdays|old)
    [only] in my (head|dreams|mind|imagination) [really|actually|,|.]*
    forgive me|pardon [me]|[i] beg [your] pardon|excuse me|silly me|my mistake|[i] tell a lie
    (thats|that is|that isnt|thats not|this is|not) [not|quite]* (right|wrong|correct|true)
    who am i (kidding|fooling|trying to kid)|let me be honest|(ok|okay|alright) fine
    [i] (looked|read|counted) [it|that] (wrong|wrongly)|[i] (misread|miscounted) [it|that]
    """,
    no=_NO,
    those_are="(thats|that is|that was|those are|those were)",
)
"""What takes back what was said before."""
_COUNTED = Pattern(
    """
    {wish} (call|count|make|put|log) [it|that|this|them|those|him] [as|a|an|at|down] >({amount})
    (call|count) (it|that|this|them|those|the last [one|set]) [as|a|an|at|for] >({amount})
    (,|-|'('|well|ok|okay|fine|alright|hmm) [,|call it|more like|only|just|ok|okay]* >(# {if_strict})
    (well|ok|okay) [,] [its|it was|more like|only|just]* >(# {tbh})
    {wish} (say|go with|count|only count|just count|record|take) >({amount})
    (only|just) (count|counting|counted|counts|call|put|log|record) [it|that]* >({amount})
    counts as >({amount})
    [the] (weight|load|reps) (was|were) [only|just]* >(# [{unit}] (actually|really|sorry|in fact|tho|though))
    (actually|in fact) [the] (weight|load|reps) (was|were) [only|just]* >(#)
    <(,|.|so|but|well|or|-|id|lets) say >({amount})
    (last|final) [#] [rep|reps|one|ones|couple|few] [{be}] ..4 ,? (so|put) [{only}]* >({amount})
    (helped|spotted|assisted|touched|nudged|touch|spot) ....7 ,? so [{only}]* >({amount})
    # (of (them|those|these|which)|were|was) ..5 ,? so [{only}]* >({amount})
    """,
    wish="id|i would|i d|lets|let us|ill|i ll|we can|you can|please|pls|better|i guess|shall we",
    if_strict="""
        [reps] (really|honestly|strictly|realistically) (>(.|,|!|')')|$)
        [reps] [,] if (im|i am|we|were|we are|youre|you are|i was|being|you|i) ..2
            (honest|strict|fair|generous|picky|count|counting|ignore|only|truthful|harsh)
        [reps] [,] (to be|being|tbh im) ..1 (honest|strict|fair)
        [reps] in (truth|reality|fairness)
    """,
    tbh="[reps] (really|actually|tbh|honestly|in the end|>(.|,|!|')')|$)",
    only="put|only|just|log|(call|make) (it|that)|count (it|that) as|thats|that is|its|it s|really|id say",
    be="was|were|wasnt|werent|got|looked|felt",
    amount="""
        # !(rpe|rir|sets|set|min~|sec|secs|hour~|more|left|out|/|in (the|reserve)|x|kg each|%|st|nd|rd|th)
    """,
    unit=words_of("kg kgs kilo kilos lb lbs pound pounds"),
)
"""What counts of the set just told: "15 but the last 2 were ugly, so call it 13"."""
_OF_SOMETHING_ELSE = words_of(
    "min mins minute minutes hour hours days weeks heart weigh weighed weight scale scales"
)
"""Words before it that make what is counted no reps."""
_BESIDE = Pattern(
    """
    ugh|er|erm|uh|um|hmm|eh|err|argh|lol|haha|or rather|in fact|more like|only|just
    it was|that was|was|i did|i got|its|it is|thats|for|at|with|x
    (they|these|those) (were|are)|theyre|(the|a) >(#)|ok|okay|alright
    ,|-|:|.|*
    i? [only|actually|really]* had # [{unit}] on [the bar|it]
    """,
    unit=words_of("kg kgs kilo kilos lb lbs pound pounds"),
)
"""What may stand beside it before the new number."""
_EXPLAINED = Pattern(
    "{back} ....9 # [{unit}] [,|.|')']* {so} [its|it is|thats|it was|really|,]* >(# [{unit}] (x|for|*) #)",
    back="({no}|wait|hang on|hold on|sorry|oops|actually)",
    so="(so|thats|that makes it|which makes it|meaning|hence|therefore|make it)",
    no=_NO,
    unit=words_of("kg kgs kilo kilos lb lbs pound pounds"),
)
"""A change of mind with its reason: "no wait, the pin was in 22.5, so 22.5 x 12"."""
_FARTHEST = 8
"""So many tokens before it, what is changed was said."""


def with_changes(message: Message, marks: list[Mark]) -> list[Mark]:
    """Add the places where the client changes their mind within the message."""
    counted = [(f.start, f.end) for f in _COUNTED.find(message) if _follows_a_set(message, f.start)]
    if not counted and not _SURE.is_in(message):
        return marks
    added: list[Mark] = []
    explained = [(f.start, f.end) for f in _EXPLAINED.find(message) if _is_one_reason(message, f)]
    missed = [mark.end for mark in marks if mark.kind == "zero"]
    for start, end in (*counted, *explained, *_changes(message)):
        if any(start in range(at, at + _FARTHEST) for at in missed):
            # "Tried 90, nope. 80x7" tells of two sets.
            continue
        before = message.numbers(max(0, start - _FARTHEST), start)
        if before and message.taken[before[-1]] == "pain":
            # "my knee was sore, say five. No, four": no set is changed.
            message.take_numbers(end, end + 1, "pain")
        elif any(not message.taken[at] for at in before):
            number_within = any(message.value(at) is not None for at in range(start, end))
            added.append(Mark("change", start if number_within else end - 1, end))
    if not added:
        return marks
    spans = {at for m in added for at in range(m.start - 6, m.end)}
    kept = [m for m in marks if m.start not in spans or m.kind == "unknown reps"]
    return sorted([*kept, *added], key=lambda m: m.start)


def _follows_a_set(message: Message, start: int) -> bool:
    """Return whether a load and reps stand before; "80 for, say, 8" has but one number yet."""
    first = max(0, start - 2 * _FARTHEST)
    if not _OF_SOMETHING_ELSE.isdisjoint(message.texts(max(0, start - _FARTHEST), start)):
        return False
    return sum(message.value(at) is not None and not message.taken[at] for at in range(first, start)) > 1


def _is_one_reason(message: Message, found: Found) -> bool:
    """Return whether a reason names one number and no set, and the number is said again after it."""
    numbers = message.numbers(found.start, found.end)
    return len(numbers) == 1 and message.value(numbers[0]) == message.value(found.end)


def _is_number_of(message: Message, at: int) -> bool:
    """Return whether "no" is short for the number of something: "coffee no 4"."""
    before = message.tokens[at - 1] if at else None
    number = at + 2 if message.text(at + 1) == "." and message.tokens[at + 1].glued else at + 1
    return (
        before is not None
        and message.text(at) == "no"
        and message.value(number) is not None
        and before.kind == WORD
        and before.text not in _BEFORE_NO
    )


def _is_none_of_these(message: Message, start: int, end: int) -> bool:
    """Return whether a bare "no" denies what is counted right after it: "no 7 bus today"."""
    if message.text(end - 1) != "no" or any(message.text(at) in _NO for at in range(start, end - 1)):
        return False
    return is_counted(message, end + 1) and not message.tokens[end + 1].glued


_BEFORE_NO = words_of(
    """kg kgs kilo kilos lb lbs pound pounds s sec secs second seconds rep reps times each x for at or and but
    then oh ah eh er um uh hmm hm ugh argh wait sorry actually oops well on th st nd rd lol haha"""
)


def _changes(message: Message) -> Iterator[tuple[int, int]]:
    """Yield where words of a second thought stand side by side, right before a number."""
    at = 0
    while at < len(message.tokens):
        start, end, sure = at, at, False
        while True:
            sure_one = None if _is_number_of(message, end) else _SURE.at(message, end)
            told = sure_one or _BESIDE.at(message, end)
            if told is None:
                break
            sure, end = sure or sure_one is not None, told.end
        if sure and message.value(end) is not None and not _is_none_of_these(message, start, end):
            yield start, end
        at = max(end, start + 1)
