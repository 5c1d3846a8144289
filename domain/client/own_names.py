"""A client's own words for exercises: which are learnt, from an answer or from a name that was put right.

A word is learnt only where it can be nothing else: no number, no everyday word, no name of the catalogue, no
part of such names that belongs to other exercises only ("curls", said by mistake, never come to mean rows).
"""

import re
from collections.abc import Iterable
from dataclasses import replace
from functools import cache

from rapidfuzz.distance import OSA

from domain.client.draft import Draft
from domain.exercises import catalogue, describe, lookup
from domain.memory import Called
from domain.names import name_words
from domain.outcome import SettingsKept
from domain.reading import Reading
from domain.reading.words import words_of

MOST_WORDS = 4
"""A name of one's own has no more words than this. The house's own choice."""

MOST_KEPT = 20
"""For how many of the latest words it is kept what they were taken for. The house's own choice."""

COMMON = words_of(
    """it its that this those these them they one ones thing things stuff some something other another same
    again the a an my your his her and or of on in at to for with from by not no yes ok okay please thanks
    exercise exercises set sets rep reps weight weights load workout session training gym today yesterday
    first second third fourth fifth last next more less easy hard heavy light good bad
    kg kgs kilo kilos lb lbs pound pounds seconds second minutes minute each side hand leg arm left right
    two three four five six seven eight nine ten eleven twelve fifteen twenty thirty forty fifty sixty
    seventy eighty ninety hundred dozen half
    monday tuesday wednesday thursday friday saturday sunday morning evening tonight week
    did do done got made was were is are just only then also i we me"""
)
"""Words that are no name of an exercise by themselves."""


def learn(draft: Draft, pairs: Iterable[tuple[str, str]]) -> None:
    """Keep what each word means, by the exercise's name, where it can be learnt."""
    own = dict(draft.client.own_names)
    own |= {word: exercise for word, exercise in pairs if can_be_learnt(word, exercise, own)}
    if own != dict(draft.client.own_names):
        draft.change(SettingsKept(replace(draft.client, own_names=own)))


def can_be_learnt(word: str, exercise: str, own: Iterable[str] = ()) -> bool:
    """Return whether `word` can be somebody's own name for `exercise`; what is in `own` is one."""
    if not looks_like_a_name(word):
        return False
    if word in own:
        return True
    about = describe(exercise)
    right = {part for name in (exercise, about.name, *about.names) for part in name_words(name)}
    own_parts = [part for part in name_words(word) if part not in COMMON]
    return all(part in right or not is_in_the_catalogue(part) for part in own_parts)


def looks_like_a_name(word: str) -> bool:
    """Return whether words can be a name of somebody's own at all."""
    parts = re.findall(r"[^\W\d_]+", word.casefold())
    return (
        0 < len(parts) <= MOST_WORDS
        and not any(sign.isdigit() for sign in word)
        and any(len(part) > 2 for part in parts)
        and not set(parts) <= COMMON
        and lookup(word) is None
    )


@cache
def catalogue_words() -> frozenset[str]:
    """Return every word that is in a name of the catalogue."""
    names = [name for each in catalogue() for name in (each.name, *each.names)]
    return frozenset(part for name in names for part in name_words(name))


def is_in_the_catalogue(part: str) -> bool:
    """Return whether a word is in a name of the catalogue, or is one of those words mistyped."""
    known = catalogue_words()
    return part in known or any(OSA.distance(part, each, score_cutoff=1) <= 1 for each in known)


def note_called(draft: Draft, reading: Reading, text: str, message: int) -> None:
    """Keep in mind which word of a message was taken for which exercise, until that is put right."""
    exercises = tuple(dict.fromkeys(each.exercise for each in reading.sets))
    words = dict.fromkeys(
        " ".join(text[each.start : each.end].casefold().split())
        for each in reading.words
        if each.became == "an exercise"
    )
    if len(words) != len(exercises):
        return
    called = [
        Called(message=message, word=word, exercise=exercise)
        for word, exercise in zip(words, exercises, strict=True)
        if looks_like_a_name(word)
    ]
    if called:
        draft.remember(called=(*draft.memory.called, *called)[-MOST_KEPT:])


def learn_put_right(draft: Draft, message: int, wrong: str, right: str) -> None:
    """Learn what the word means that was taken for the exercise `wrong` in that message, and is `right`."""
    if wrong != right:
        learn(
            draft,
            [
                (each.word, right)
                for each in draft.memory.called
                if (each.message, each.exercise) == (message, wrong)
            ],
        )
