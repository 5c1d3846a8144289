"""Numbers said for the left and the right side: the lower of the two counts. Other numbers pass unchanged."""

from domain.reading.message import Message
from domain.reading.quantities import Quantity
from domain.reading.words import FILLERS

_SIDE_WORDS = {"left", "right", "l", "r", "lft", "rt"}


def lower_of_sides(message: Message, quantities: list[Quantity]) -> list[Quantity]:
    """Take different reps on two sides as the lower: "10 left, 8 right", "10/9 l/r"."""
    if message.words.isdisjoint(_SIDE_WORDS):
        return quantities
    kept: list[Quantity] = []
    i = 0
    while i < len(quantities):
        one = quantities[i]
        following = quantities[i + 1] if i + 1 < len(quantities) else None
        if following is not None and one.unit is None and following.unit is None:
            between = message.texts(one.end, following.start)
            after = message.texts(following.end, following.end + 4)
            each_sided = (
                {_word_before(message, one.start), *between} & _SIDE_WORDS
                and {*between, *after[:2]} & _SIDE_WORDS
                and _beside_side(message, one)
            ) or len({w[0] for w in after if w in _SIDE_WORDS}) == 2
            around = {_word_before(message, one.start), *between, *after}
            sided = (
                {w for w in around if w in _SIDE_WORDS}
                if each_sided and one.role in {None, "reps", "seconds"}
                else set()
            )
            near = len(between) <= 8 and all(
                w in _SIDE_WORDS
                or (w in FILLERS and w != "x")
                or w
                in {
                    ",",
                    "/",
                    "and",
                    "on",
                    "the",
                    "side",
                    "leg",
                    "arm",
                    "with",
                    "but",
                    "only",
                    "&",
                    "-",
                    "for",
                }
                for w in between
            )
            if near and len({w[0] for w in sided}) == 2:
                lower = min(one.value, following.value)
                kept.append(
                    one._replace(
                        value=lower, role=one.role or "reps", end=_after_sides(message, following.end)
                    )
                )
                i += 2
                continue
        kept.append(one)
        i += 1
    return kept


def _word_before(message: Message, at: int) -> str:
    """Return the word before a number, past the limb that it is said of: "right leg 9"."""
    step = at - 1
    while message.text(step) in {"leg", "arm", "side", "hand", "foot", ":"}:
        step -= 1
    return message.text(step)


def _beside_side(message: Message, one: Quantity) -> bool:
    """Return whether a side stands right beside a number."""
    after = [w for w in message.texts(one.end, one.end + 4) if w not in {"on", "the", "my", "with", "reps"}]
    before = [
        w
        for w in message.texts(max(0, one.start - 3), one.start)
        if w not in {"on", "the", "my", ":", "with", "side", "leg", "arm"}
    ]
    return (after[:1] or [""])[0] in _SIDE_WORDS or (before[-1:] or [""])[0] in _SIDE_WORDS


def _after_sides(message: Message, at: int) -> int:
    while message.text(at) in _SIDE_WORDS or (
        message.text(at) in {"on", "the", "/", "side", "leg", "arm"}
        and message.text(at + 1) in _SIDE_WORDS | {"the"}
    ):
        at += 1
    return at
