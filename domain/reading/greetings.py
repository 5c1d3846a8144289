"""A greeting that has the words of an exercise's name: "good morning"."""

from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.request import Request
from domain.reading.words import words_of

_BEFORE = words_of("hi hey hello coach ,")
_MORNING = words_of("morning goodmorning")
_TELLS_OF_IT = words_of("is was were are felt feels went hurts hurt x with at for set sets done : - =")


def is_greeting(message: Message, name: Named, request: Request) -> bool:
    """Return whether "good morning" greets, rather than names an exercise.

    It opens the message, and no set follows at once; after a comma one does only if the plan has the
    exercise.
    """
    if _MORNING.isdisjoint(message.words):
        return False
    if message.texts(name.start, name.end) not in (["good", "morning"], ["goodmorning"]):
        return False
    if not all(word in _BEFORE for word in message.texts(0, name.start)):
        return False
    after = name.end
    if message.text(after) in {",", "!"} and any(p.name in name.names for p in request.plan):
        after += 1
    return message.value(after) is None and message.text(after) not in _TELLS_OF_IT
