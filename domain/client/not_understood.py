"""Half understood sets that were asked about in vain.

Their words are kept as typed, with what they lack, where the coach sees them. They go once they are answered
after all, edited, or told of in full. A question about sets waits for some hours; then it was in vain.
"""

from collections.abc import Callable, Sequence
from datetime import timedelta

from domain.calendar import local_day
from domain.client.draft import Draft
from domain.client.half_understood import Unfinished, unfinished_of
from domain.client.lines import line_named
from domain.client.rotation import BESIDE
from domain.memory import NotUnderstood
from domain.reading import OpenSet
from domain.values import facts_of, value_of

ANSWERED_WITHIN = timedelta(hours=12)
"""For how long something typed can be the answer to a question about sets. The house's own choice."""

MOST_KEPT = 8
"""How many words that were not understood are kept, the latest. The house's own choice."""


def given_up(draft: Draft) -> tuple[Unfinished, ...]:
    """Return the sets that were asked about in vain."""
    return tuple(
        each
        for kept in draft.memory.not_understood
        for each in value_of(tuple[Unfinished, ...], kept.unfinished)
    )


def give_up(draft: Draft, unfinished: Sequence[Unfinished]) -> None:
    """Keep the words of unfinished sets as not understood; the sets of one exercise in a message are one."""
    kept = {(each.message, each.exercise): each for each in draft.memory.not_understood}
    for message, exercise in dict.fromkeys((each.message, each.open.exercise) for each in unfinished):
        alike = [each for each in unfinished if (each.message, each.open.exercise) == (message, exercise)]
        before = kept.pop((message, exercise), None)
        kept[message, exercise] = NotUnderstood(
            message=message,
            at=draft.at if before is None else before.at,
            text=alike[0].text,
            exercise=exercise,
            lacks=tuple(dict.fromkeys(slot for each in alike for slot in each.open.asks)),
            unfinished=tuple(facts_of(tuple(alike))),
        )
    in_order = sorted(kept.values(), key=lambda each: each.message)
    draft.remember(not_understood=tuple(in_order[-MOST_KEPT:]))


def drop_given_up(draft: Draft, is_over: Callable[[NotUnderstood], bool]) -> None:
    """Keep no longer what is over."""
    left = tuple(each for each in draft.memory.not_understood if not is_over(each))
    if len(left) < len(draft.memory.not_understood):
        draft.remember(not_understood=left)


def give_up_old_question(draft: Draft) -> None:
    """Let a question about sets no longer wait that was not answered in time."""
    question = draft.question("sets")
    if question is not None and draft.at - question.asked_at > ANSWERED_WITHIN:
        give_up(draft, unfinished_of(question))
        draft.drop_question(question)


def drop_told_since(draft: Draft) -> None:
    """Keep no longer what was told of in full since: the same numbers, or all sets of it that day."""
    drop_given_up(draft, lambda kept: is_told_since(draft, kept))


def is_told_since(draft: Draft, kept: NotUnderstood) -> bool:
    """Return whether each set in these words stands in the journal by now."""
    return all(stands(draft, kept, each.open) for each in value_of(tuple[Unfinished, ...], kept.unfinished))


def stands(draft: Draft, kept: NotUnderstood, open_set: OpenSet) -> bool:
    """Return whether what these words were to be was recorded since, on their day."""
    day = open_set.on or local_day(kept.at, draft.zone)
    of_day = [entry for entry in draft.state.entries if entry.set.on == day]
    since = [entry for entry in of_day if entry.at > kept.at and entry.message != kept.message]
    said = {open_set.load, open_set.bare, open_set.reps, open_set.seconds} - {None}
    if any(said <= {entry.set.load, entry.set.reps, entry.set.seconds} for entry in since if len(said) > 1):
        return True
    of_it = [entry for entry in of_day if entry.set.exercise == open_set.exercise]
    if not any(entry in since for entry in of_it):
        return False
    names = {record.number: record.name for record in draft.state.workouts}
    line = line_named(draft.state, names.get(of_it[-1].workout, BESIDE), of_it[-1].set.exercise)
    return line is None or len(of_it) >= line.prescription.sets
