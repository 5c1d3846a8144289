"""The forms that notices are written in: a text with places to fill, and one that lists names."""

from collections.abc import Callable, Iterable
from typing import Any

from bot.markup import escape
from bot.wording.reader import Reader, listed, set_words
from domain.sets import TrainingSet
from domain.values import value_of

Facts = dict[str, Any]
Words = str | Callable[[Facts, Reader], str]


def filled(text: str) -> Callable[[Facts, Reader], str]:
    """Return words in which each {place} is filled by the fact of that name, escaped; names are listed."""

    def words(facts: Facts, _reader: Reader) -> str:
        return text.format(**_texts(facts))

    return words


def with_names(text: str, empty: str) -> Callable[[Facts, Reader], str]:
    """Return words that list the facts' `names` at {names}; `empty` where there are none."""

    def words(facts: Facts, _reader: Reader) -> str:
        names = facts.get("names") or []
        return text.format(**_texts(facts)) if names else empty

    return words


def _texts(facts: Facts) -> dict[str, str]:
    lists = {key: listed(value) for key, value in facts.items() if is_names(value)}
    return {key: escape(value) for key, value in (facts | lists).items() if isinstance(value, str)}


def is_names(value: object) -> bool:
    """Return whether a fact is a list of names."""
    return isinstance(value, list) and all(isinstance(each, str) for each in value)


def sets_told(facts: Iterable[object]) -> str:
    """Say the sets that a notice carries, each with its exercise."""
    sets = [value_of(TrainingSet, each) for each in facts]
    return "; ".join(f"{escape(each.exercise)} {set_words(each)}" for each in sets)
