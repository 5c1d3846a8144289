"""An exercise that is only said to be done: an open set. Sets with numbers are made elsewhere."""

from collections.abc import Sequence

from domain.reading.gather import Group
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.patterns import Found, Pattern
from domain.reading.phrase_rules import REPS_UNKNOWN
from domain.reading.phrases import Mark
from domain.reading.request import Request
from domain.reading.resolve import Placed, Resolver
from domain.reading.words import FILLERS, words_of

_DONE = Pattern("""
    done|finished|completed|did|complete|nailed|smashed|crushed|sorted
    ticked off|got through|in the bag|knocked out|through with|(have|ive|has) made
""")
_DONE_ALONE = Pattern(
    """
    ^ [{before}]* [{before}]* {done} [{after}]* [{after}]* $
    """,
    before="""
        ok|okay|all|yes|yep|and|just|it s|its|thats|im|i am|that s|set|sets|got it|there|phew|right|now|coach
        hi|well
    """,
    done="done|finished|completed|complete|did it|done it|did them|did that",
    after="it|now|coach|that|one|set|thanks|!|,|.|(with|w) (that|it|this one)",
)
_ANOTHER_ALONE = Pattern(
    """
    ^ [{before}]* (another|one more|# more) (set|one|round|go) [done|in|too|now|coach|!|,|.]* $
    """,
    before="ok|okay|and|yes|yep|did|got|just|then|coach|hi|phew|right",
)
"""One set more, of which nothing is told."""
_SMALL = FILLERS | words_of(
    """with finished completed nailed smashed crushed complete were are both off ticked through sorted though
    tho but then again sorry unfortunately anyway w thats dusted over have ive made my dear love mate boss
    innit as you asked darling pal luv fam"""
)
"""Words that say nothing more beside the name of an exercise that is done."""


def done_without_numbers(
    message: Message,
    request: Request,
    resolver: Resolver,
    named: Sequence[Named],
    questions: Sequence[tuple[int, int]],
) -> list[Placed]:
    """Return an open set where an exercise is only said to be done."""
    if questions:
        return []
    done = _DONE.first(message)
    uncounted = REPS_UNKNOWN.first(message)
    more = _ANOTHER_ALONE.first(message) if request.done else None
    said = more or done or uncounted
    if said is None:
        return []
    at = said.start
    exercise: str | None = None
    if more is not None:
        exercise = request.done[-1].exercise
    elif _DONE_ALONE.at(message, 0):
        exercise = resolver.exercises.next(resolver.exercises.day(request.sent.date()))
    else:
        near = [
            n
            for n in named
            if (not n.weak or len(message.tokens) <= _FEW)
            and message.sentence[n.start] == message.sentence[at]
            and len(n.names) == 1
        ]
        if near and _says_done(message, near, at, uncounted):
            exercise = near[0].names[0]
    if exercise is None:
        return []
    return resolver.run(
        [Group(Named(at, at, (exercise,)), [Mark("done", at, at + 1)], sentence=message.sentence[at])]
    )


_FEW = 6
"""In so short a message a word that names an exercise only beside others names it alone."""
_DONE_BESIDE = Pattern(
    "[is|was|are|also|,|:|-]* (done|finished|completed) !(with|at|for|by|:|#|x|in|yesterday)"
)


def done_beside(
    message: Message, resolver: Resolver, named: Sequence[Named], questions: Sequence[tuple[int, int]]
) -> list[Placed]:
    """Return an open set of each exercise that is only said to be done, beside sets of others."""
    if questions or not resolver.placed or not message.has(_SAYS_DONE):
        return []
    told = {place.one.exercise for place in resolver.placed}
    before = len(resolver.placed)
    for name in named:
        if name.weak or len(name.names) != 1 or name.names[0] in told:
            continue
        found = _DONE_BESIDE.at(message, name.end)
        first, last = message.clause_span(name.start)
        if found is None or message.numbers(first, max(last, found.end)):
            continue
        mark = Mark("done", found.start, found.end)
        resolver.run([Group(name, [mark], sentence=message.sentence[name.start])])
    return resolver.placed[before:]


_SAYS_DONE = words_of("done finished completed")


def _says_done(message: Message, near: Sequence[Named], at: int, uncounted: Found | None) -> bool:
    inside = {i for n in near for i in range(n.start, n.end)}
    if uncounted is not None:
        inside.update(range(uncounted.start, uncounted.end))
    spans = [message.clause_span(at), message.clause_span(near[0].start)]
    first, last = min(spans)[0], max(spans)[1]
    return all(
        i in inside or message.text(i) in _SMALL or not message.text(i).isalpha() for i in range(first, last)
    )
