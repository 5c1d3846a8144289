"""Which of several exercises is meant, where a word behind its set tells: "row 65x9 (barbell)", "calf raise
80x14, the standing one"."""

from collections.abc import Sequence

from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.patterns import Pattern

_TOLD = Pattern(
    """
    '(' [the] word:_ [one|ones|version] ')'
    (,|-) [on|it was|that was|i mean|meaning]* the word:_ (one|ones|version)
    """
)


def with_what_is_meant(message: Message, named: Sequence[Named]) -> list[Named]:
    """Return the names, each that fits several exercises as the one that a word behind its numbers tells."""
    if all(len(name.names) < 2 for name in named):
        return list(named)
    kept: list[Named] = []
    told_by: set[int] = set()
    for at, name in enumerate(named):
        if name.start in told_by:
            continue
        following = [n.start for n in named[at + 1 :] if len(n.names) > 1]
        _, last = message.sentence_span(name.start)
        found = _TOLD.first(message, name.end, min([last, *following]))
        if len(name.names) > 1 and found is not None and message.numbers(name.end, found.start):
            start, _ = found.parts["word"]
            meant = [one for one in name.names if message.text(start) in one.lower().split()]
            if len(meant) == 1:
                told_by.add(start)
                kept.append(name._replace(names=(meant[0],), exact=True))
                continue
        kept.append(name)
    return kept
