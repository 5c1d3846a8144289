"""What is left of a coach's messages once a client is erased: nothing that speaks of that client.

What names the client goes. The name is looked for as a word, and so is each longer word of it, in whatever
case: rather too much of what is past goes than too little.
"""

import re
from collections.abc import Iterator
from datetime import timedelta
from typing import Any

from pydantic import BaseModel

from domain.actions import Action
from domain.expressions import Expression
from domain.incoming import (
    Document,
    Edited,
    FromChat,
    FromCoach,
    FromDelivery,
    PictureWanted,
    SetsWanted,
    Text,
    Told,
    WhyWanted,
)
from domain.parts import AlertPart, CameOf, Chosen, Digest, File, Notice, Part
from domain.pictures import ProgrammeProgress, Progress, RosterProgress
from domain.reach import Reach
from domain.tally import Numbers

FORGET_AFTER = timedelta(hours=1)
"""How long after the erasure the chat itself is forgotten, to which the last words were sent. The house's own
choice."""

SHORTEST_NAME = 3
"""Words of a name that have fewer letters are not looked for by themselves. The house's own choice."""


class Name:
    """A person's name, to be found in what others have written."""

    def __init__(self, name: str) -> None:
        """Look for `name` and for each longer word of it."""
        self.name = name
        words = {name, *(word for word in name.split() if len(word) >= SHORTEST_NAME)} - {""}
        listed = "|".join(re.escape(word.casefold()) for word in sorted(words, key=len, reverse=True))
        self._words = Expression(rf"(?<!\w)(?:{listed})(?!\w)") if words else None

    def is_in(self, value: Any) -> bool:
        """Return whether any text within `value` (text, a model, plain JSON) has the name."""
        words = self._words
        return words is not None and any(words.search(text.casefold()) for text in _texts(value))

    def is_client_of(self, part: Part) -> bool:
        """Return whether a part is about the client of just this name."""
        match part:
            case AlertPart() | File() | Progress() | ProgrammeProgress():
                return part.client == self.name
            case Notice(facts=facts) | CameOf(notice=Notice(facts=facts)):
                return facts.get("client") == self.name
            case _:
                return False


def parts_left(
    parts: tuple[Part, ...], name: Name, *, is_sent: bool, client: int | None = None
) -> tuple[Part, ...]:
    """Return what of a message to a coach may stay; nothing where it speaks of the client of that number.

    An overview stays without the client. What is not sent yet goes only where it is about just this client.
    """
    left: list[Part] = []
    for part in parts:
        match part:
            case Digest(clients=lines):
                others = tuple(line for line in lines if line.name != name.name)
                numbers = numbers_left(part.numbers, name)
                if others or numbers is not None:
                    left.append(part.model_copy(update={"clients": others, "numbers": numbers}))
            case Reach():
                left.append(reach_left(part, name))
            case RosterProgress(rows=rows):
                left_rows = tuple(row for row in rows if row.client != name.name)
                if left_rows:
                    left.append(part.model_copy(update={"rows": left_rows}))
            case Chosen(action=action) if client is not None and getattr(action, "client", None) == client:
                return ()
            case _ if name.is_client_of(part) or (is_sent and name.is_in(part)):
                return ()
            case _:
                left.append(part)
    return tuple(left)


def reach_left(reach: Reach, name: Name) -> Reach:
    """Return whom words to several have reached, without the client."""
    return reach.model_copy(
        update={
            "reached": tuple(each for each in reach.reached if each != name.name),
            "unreached": tuple(each for each in reach.unreached if each.client != name.name),
        }
    )


def numbers_left(numbers: Numbers | None, name: Name) -> Numbers | None:
    """Return a digest's numbers without who is named in them."""
    if numbers is None:
        return None
    others = tuple(each for each in numbers.longest if each.client != name.name)
    return numbers.model_copy(update={"longest": others})


def actions_left(actions: tuple[Action, ...], client: int) -> tuple[int, ...]:
    """Return the places of the buttons that do not concern the client of that number."""
    return tuple(at for at, action in enumerate(actions) if getattr(action, "client", None) != client)


def words_left(
    incoming: FromChat | FromCoach | FromDelivery, name: Name
) -> FromChat | FromCoach | FromDelivery:
    """Return what a coach has sent, without its words where they have the name."""
    if not isinstance(incoming, Text | Edited | Document) or not name.is_in(incoming):
        return incoming
    return wordless(incoming)


def wordless(
    incoming: FromChat | FromCoach | FromDelivery,
) -> FromChat | FromCoach | FromDelivery:
    """Return what came in without the words that somebody wrote in it."""
    match incoming:
        case Document():
            return incoming.model_copy(update={"text": None, "name": "", "caption": ""})
        case Text() | Edited() | Told() | SetsWanted() | PictureWanted() | WhyWanted():
            return incoming.model_copy(update={"text": ""})
        case _:
            return incoming


def _texts(value: Any) -> Iterator[str]:
    match value:
        case str():
            yield value
        case BaseModel():
            yield from _texts(value.model_dump(mode="json"))
        case dict():
            for each in value.values():
                yield from _texts(each)
        case list() | tuple():
            for each in value:
                yield from _texts(each)
        case _:
            pass
