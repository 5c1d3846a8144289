"""What is told of the whole workout in one breath: "everything as planned", "hit every target but the curls".

Each exercise that is left of today's plan is then told of as if it had been named; those that are named
beside it have a tale of their own.
"""

from collections.abc import Sequence
from datetime import date, datetime
from typing import NamedTuple

from domain.reading.days import find_days
from domain.reading.element import Element
from domain.reading.gather import Group
from domain.reading.message import Message, message_of
from domain.reading.naming import Named
from domain.reading.patterns import Pattern
from domain.reading.phrase_kinds import MarkKind
from domain.reading.phrases import Mark
from domain.reading.tokens import LONGEST
from domain.reading.when import past_day
from domain.reading.which_exercise import Exercises
from domain.reading.words import words_of

_AS_PLANNED = Pattern(
    """
    (everything [else]|it all|all of it|the lot|the (rest|others) [{of_it}]|
        (^|<({pause})) rest [{of_it}]) {was} {planned}
    ((all|every) ..2 {exercises}|{workout}) {was} {planned}
    ^ [ok|well|so|hi|hey|coach|and|,|done|did|finished]* all {was} {planned}
    (everything|^ [ok|well|so|hi|hey|coach|and|,]* all [exercises|sets|lifts|of it]*) {was} {on_plan}
    {hit} (all|every|everyone|each) [of|the|my|todays|single|one]* {target}
    (all|every|everyone|each) [of|the|my|todays|single|one]* {target} {was} {reached}
    """,
    exercises="(exercise|exercises|lift|lifts|set|sets)",
    workout="[the|my|this|todays]* (whole|entire|full) (workout|session|training|thing|lot)",
    was="[was|were|went|is|done|today|got|have been|has been|did|,]*",
    planned="[exactly|just|all|precisely]* (as|like|to|per|according to) [the|you|it was|was|its]* {plan}",
    pause=words_of(", . ; - ! and then ok"),
    of_it="of (it|them|the (workout|session|list|exercises))",
    on_plan="on (plan|target|schedule|track|point|the money) (>(,|.|!|but|except|apart|bar)|$)",
    plan="(plan|planned|prescribed|written|programmed|wrote|scheduled|asked|targeted)",
    hit="(hit|made|met|got|reached|nailed|managed|did|smashed)",
    target="(target|targets|goal|goals)",
    reached="(hit|met|made|reached|done|nailed|achieved)",
)
_AS_LAST_TIME = Pattern(
    """
    {everything} {was} [exactly|just|the]* {like_last}
    ^ [ok|well|so|hi|hey|coach|and|,]* all {was} [exactly|just|the]* {like_last}
    [exactly|just|the]* {like_last} (on|for|with|in|across) {everything}
    """,
    everything="(everything|all (of (it|them)|exercises|lifts|sets)|[the] rest [of (it|them)])",
    was="[was|were|went|is|done|today|did|,]*",
    like_last="[the] same [weights|reps|numbers|and]* (as|like) last {time}|(like|as) last {time}",
    time="(time|week|session|workout)",
)


_SAID: tuple[tuple[Pattern, MarkKind], ...] = ((_AS_PLANNED, "target"), (_AS_LAST_TIME, "same all"))


def of_everything(
    message: Message, groups: Sequence[Group], named: Sequence[Named], exercises: Exercises
) -> list[Group]:
    """Return the groups, with one for each exercise that is told of as a part of the whole workout."""
    for pattern, kind in _SAID:
        found = pattern.first(message)
        if found is None or _is_of_one(message, found.end, named):
            continue
        if any(became not in {"", "a day"} for became in message.taken[found.start : found.end]):
            continue
        kept = [group for group in groups if group.named is not None or not _says_only(group, kind)]
        if _is_not_told(message, found.start):
            return kept
        for group in kept:
            if any(not isinstance(item, Mark) for item in group.items):
                group.items = [i for i in group.items if not (isinstance(i, Mark) and i.start < found.end)]
        own = {name for n in named for name in n.names}
        day = exercises.day(exercises.request.sent.date())
        turn = exercises.next(day)
        bare = sum(isinstance(i, Element) for group in kept if group.named is None for i in group.items)
        mark = Mark(kind, found.start, found.end, from_last=kind == "same all")
        at, sentence = found.start, message.sentence[found.start]
        told = [
            Group(Named(at, at, (one.name,)), [mark], sentence=sentence)
            for one in exercises.request.plan
            if one.name not in own
            for _ in range(one.sets - day.counts.get(one.name, 0) - bare * (one.name == turn))
        ]
        return sorted([*told, *kept], key=lambda group: group.start)
    return list(groups)


_NOT_TOLD = Pattern(
    """
    not|didnt|couldnt|cant|wont|dont|never|nearly|almost|hardly|barely|failed|'?'
    will|ill|gonna|going to|go|planning|plan to|want|wanted|wanna|hope|hoping|hopefully|try|trying|tried
    should|would|could|can|may|might|must|if|when|shall|lets|let|next|later|soon|to come
    (to|be|doing|get) >([do|doing]* (all|everything|every|the (rest|others|whole)))
    """
)
"""What makes it a plan, a wish, a question or a denial, and no workout that was done."""
_TODAY = words_of("today todays this morning evening afternoon")


def _is_not_told(message: Message, at: int) -> bool:
    """Return whether a sentence tells of no workout of today that was done as it says."""
    start, end = message.sentence_span(at)
    asks = "?" in message.texts(end - 1, end + 1)
    other_day = any(message.taken[k] == "a day" and message.text(k) not in _TODAY for k in range(start, end))
    return asks or other_day or _NOT_TOLD.is_in(message, start, end)


class WholeWorkout(NamedTuple):
    """A whole workout of the day `on`, gone by, told in one breath.

    `text` is what was said but for the words from `start` to `end` that say the day.
    """

    on: date
    text: str
    start: int
    end: int


def whole_workout_told(text: str, sent: datetime) -> WholeWorkout | None:
    """Return the workout of one day gone by of which all was as planned; None where that is not told."""
    message = message_of(text[:LONGEST])
    days = find_days(message) if any(pattern.is_in(message) for pattern, _ in _SAID) else []
    on = past_day(days[0], sent) if len(days) == 1 else None
    if on is None or on >= sent.date():
        return None
    start, end = days[0].start, days[0].end
    while message.text(start - 1) in _BEFORE_A_DAY:
        start -= 1
    first, last = message.tokens[start].start, message.tokens[end - 1].end
    rest = f"{text[:first]}{text[last:]}".strip(" ,:")
    said = message_of(rest)
    found = next((found for pattern, _ in _SAID if (found := pattern.first(said)) is not None), None)
    if found is None or "?" in said.texts(0, len(said.tokens)) or _NOT_TOLD.is_in(said):
        return None
    return WholeWorkout(on, rest, first, last)


_BEFORE_A_DAY = words_of("on for from of")


def _is_of_one(message: Message, end: int, named: Sequence[Named]) -> bool:
    """Return whether all that is spoken of is one exercise's: "everything as planned on the rows"."""
    at = end
    while message.text(at) in _TIES:
        at += 1
    return at > end and any(n.start == at for n in named)


_TIES = words_of("on for with in at the my")


def _says_only(group: Group, kind: MarkKind) -> bool:
    return all(isinstance(item, Mark) and item.kind == kind for item in group.items)
