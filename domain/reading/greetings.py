"""A greeting or a cry that has the words of an exercise's name: "good morning", "oh no"."""

from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.request import Request
from domain.reading.words import words_of

_BEFORE = words_of("hi hey hello coach ,")
_AFTER_OH = words_of("no yes yeah well wait sorry and but dear boy my man god shit crap damn i it the , ! .")
_MORNING = words_of("morning goodmorning")
_TELLS_OF_IT = words_of("is was were are felt feels went hurts hurt x with at for set sets done : - =")


def is_greeting(message: Message, name: Named, request: Request) -> bool:
    """Return whether "good morning" greets, or "oh" cries, rather than names an exercise.

    It opens the message, and no set follows at once; after a comma one does only if the plan has the
    exercise.
    """
    if message.texts(name.start, name.end) == ["oh"] and message.text(name.end) in _AFTER_OH:
        return True
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
