"""Words that name an exercise elsewhere and are something else here: a limb, a moment, a day of training.

Whether a word names an exercise at all is decided in `naming.py`.
"""

from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.words import words_of

_OF_EVERY = frozenset({"each", "per", "either", "every"})
"""Words by which a limb is counted: "in each hand", "per leg"."""
_OF_TRAINING = frozenset({"day", "days", "session", "workout"})
"""Words after a muscle that make it what was trained, and no exercise: "leg day"."""


def is_no_name(message: Message, name: Named) -> bool:
    """Return whether a weak name is something else here: "my chest", "three in a row"."""
    if is_a_streak(message, name) or (
        not name.names and message.texts(name.start - 2, name.start) == ["in", "a"]
    ):
        return True
    if message.texts(name.start, name.end) == ["floor"] and not _UP_FROM.isdisjoint(
        message.texts(name.start - 2, name.start)
    ):
        return True
    if message.texts(name.start - 2, name.start) == ["of", "a"] or _is_a_limb(message, name):
        return True
    if message.text(name.start - 1) in _OF_EVERY or message.text(name.end) in _OF_TRAINING:
        return True
    if message.texts(name.start, name.end) == ["clean"] and message.text(name.start - 1) in _COUNTS:
        return True
    if message.text(name.end - 1) == "grip" and message.text(name.end) in _GONE:
        return True
    mine = message.text(name.start - 1) == "my" and name.end < len(message.tokens)
    heads = name.exact and message.text(name.end) == ":"
    return mine and not heads and (bool(name.names) or message.value(name.end) is None)


_UP_FROM = words_of("off from on onto across to")
"""Words before "the floor" where it is that of the gym: "got 160 off the floor"."""
_COUNTS = words_of("times rep reps x")
_GONE = words_of(
    "went gone slipped slipping gave failed failing was is died dying issues problem limited first"
)


def is_a_streak(message: Message, name: Named) -> bool:
    """Return whether "row" only tells that things came one after the other: "4 nights in a row"."""
    return message.texts(name.start - 2, name.end) == ["in", "a", "row"]


def is_a_chin(message: Message, name: Named) -> bool:
    """Return whether "chin" is the part of the body that must come over the bar."""
    alone = message.texts(name.start, name.end) == ["chin"]
    return alone and message.text(name.end) in _OF_A_CHIN


_OF_A_CHIN = frozenset(
    {"over", "never", "up", "not", "didnt", "got", "just", "barely", "above", "was", "to", "wasnt"}
)


def is_worn(message: Message, name: Named) -> bool:
    """Return whether something to wear is only called by an exercise: "my dip belt snapped"."""
    return message.text(name.end) in _WORN


_WORN = words_of("belt belts shoes shoe straps sleeves gloves")


def is_a_moment(message: Message, name: Named) -> bool:
    """Return whether "hang on" asks for a moment: "bench 70, hang on, 72.5 for 7"."""
    start = name.start + (message.text(name.start) == "oh")
    taken_back = message.text(name.start - 1) in {"no", "wait", "oh", "ah", "sorry", "actually", "nope"}
    if taken_back and message.texts(start, name.end)[:1] == ["hang"] and message.text(start + 1) == "on":
        return True
    return (
        name.end <= start + 2
        and message.text(start) in {"hang", "hold"}
        and message.text(start + 1) == "on"
        and message.text(start + 2) in {",", ".", "-", "!", "no", "wait", "a", "sorry"}
    )


def _is_a_limb(message: Message, name: Named) -> bool:
    """Return whether a word of a name is one side of the body here: "right arm 13, left arm 11"."""
    one_word = name.end == name.start + 1
    return one_word and message.text(name.start) in _LIMBS and message.text(name.start - 1) in _SIDES


_LIMBS = frozenset({"arm", "leg", "side", "hand"})
_SIDES = frozenset({"left", "right"})


def tells_the_order(message: Message, before: Named, name: Named) -> bool:
    """Return whether a name only tells when another was done: "dips before bench today: +10 x 7"."""
    between = message.texts(before.end, name.start)
    return between[:1] in (["before"], ["after"]) and (len(between) == 1 or between[1:] in (["the"], ["my"]))


def is_where_it_is_done(message: Message, before: Named, name: Named) -> bool:
    """Return whether a word for an unknown exercise only tells where it is: "calf raises on the step"."""
    between = message.texts(before.end, name.start)
    return not name.names and bool(before.names) and between[:1] in _AT and between[1:] in (["the"], ["a"])


_AT = (["on"], ["in"], ["by"], ["at"], ["off"], ["from"])


def is_not_done(message: Message, name: Named) -> bool:
    """Return whether a name only tells what was not done: "pulldowns instead of the chin-ups, 50x9".

    Or what it was that could not be had: "pulldowns since the row was taken: 50x9".
    """
    if could_not_be_had(message, name):
        return True
    start = name.start - (message.text(name.start - 1) in {"the", "my"})
    return message.texts(start - 2, start) in _INSTEAD or message.texts(start - 1, start + 1) in _INSTEAD_THE


def could_not_be_had(message: Message, name: Named) -> bool:
    """Return whether a name tells only what somebody else had: "the row was taken"."""
    at = name.end + (message.text(name.end) in _THINGS)
    if message.text(at) not in _WAS:
        return False
    at += 1
    while message.text(at) in _STILL:
        at += 1
    return message.text(at) in _TAKEN or message.texts(at, at + 2) == ["in", "use"]


_THINGS = words_of("machine machines rack racks station stations bench stack bar")
_WAS = words_of("is was were are being s")
_STILL = words_of("still all always again already so too just constantly")
_TAKEN = words_of("taken busy occupied hogged broken closed gone full")
_INSTEAD = (["instead", "of"], ["rather", "than"])
_INSTEAD_THE = (["replaced", "the"], ["instead", "the"])


def is_compared_to(message: Message, name: Named) -> bool:
    """Return whether a name only tells what something was like: "more of a shrug than a rep"."""
    return (
        message.text(name.start - 1) in {"a", "an"}
        and message.text(name.start - 2) in _LIKE
        and message.value(name.end) is None
    )


_LIKE = frozenset({"of", "like", "than", "into", "as"})
