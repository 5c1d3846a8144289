"""How far a word of pain reaches: its clause, its sentence, and the parts of the body that it speaks of."""

from domain.reading.body_parts import Part
from domain.reading.message import Message
from domain.reading.words import words_of

FARTHEST = 60
"""How many tokens away the words for a pain can stand."""
_INTO = words_of("in at on around under behind inside")
_JOINED = words_of("and & n plus , to into")
_WHEN = words_of("when while whilst whenever as during after because if")
_YES = words_of("yes yeah yep yup")


def spans(message: Message, at: int) -> tuple[int, int, int, int]:
    """Return the ends of the sentence and the clause of a token, no farther than words for a pain stand."""
    first, last = message.sentence_span(at)
    first, last = max(first, at - FARTHEST), min(last, at + FARTHEST)
    start, end = message.clause_span(at)
    return first, last, max(start, first), min(end, last)


def parts_of(message: Message, at: int, parts: list[Part]) -> list[Part]:
    """Return the parts that a word speaks of: those of its clause, or the nearest of its sentence."""
    first, last, start, end = spans(message, at)
    here = [p for p in parts if start <= p.start < end]
    earlier = [p for p in parts if first <= p.start < start]
    if here:
        main = [p for p in here if not _subordinate(message, p, at)]
        if not main and earlier:
            return earlier[-1:]
        chosen = main or here
        before = [p for p in chosen if p.end <= at]
        after = [p for p in chosen if p.start >= at]
        if before and after and _JOINED.isdisjoint(message.texts(before[-1].end, after[0].start)):
            # "my elbow hurts lifting my arm" speaks of the elbow; "pain in my knee" of what follows.
            return after if message.text(at + 1) in _INTO else before
        return _alike(message, chosen, at)
    if earlier:
        return earlier[-1:]
    later = [p for p in parts if end <= p.start < last]
    if later:
        return later[:1]
    if message.text(last - 1) == "?" and message.text(last) in _YES:
        _, answered = message.sentence_span(last)
        return [p for p in parts if last < p.start < answered][:1]
    previous = [p for p in parts if p.start < first and message.sentence[p.start] == message.sentence[at] - 1]
    points_back = message.text(at - 1) in {"it", "its", "still", "", "they"}
    return previous[-1:] if len(previous) == 1 and points_back else []


def _alike(message: Message, chosen: list[Part], at: int) -> list[Part]:
    """Keep the parts that are joined by "and" to the nearest one."""
    nearest = min(chosen, key=lambda p: min(abs(p.start - at), abs(p.end - 1 - at)))
    kept = [nearest]
    index = chosen.index(nearest)
    for step in (-1, 1):
        i = index + step
        while 0 <= i < len(chosen):
            left, right = sorted((chosen[i], chosen[i - step]), key=lambda p: p.start)
            if _JOINED.isdisjoint(message.texts(left.end, right.start)):
                break
            kept.append(chosen[i])
            i += step
    return sorted(kept, key=lambda p: p.start)


def _subordinate(message: Message, part: Part, at: int) -> bool:
    """Return whether a part stands in what the client did when it hurt: "when I lift my arms"."""
    return part.start >= at and not _WHEN.isdisjoint(message.texts(at + 1, part.start))
