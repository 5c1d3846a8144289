"""What short phrases about a set there are, and the shape of a rule that recognises one.

The rules themselves stand in the files beside this one, by what they speak of.
"""

import re
from typing import Literal, NamedTuple

MarkKind = Literal[
    "failure",
    "no failure",
    "failed on",
    "rir",
    "body",
    "lowering",
    "same all",
    "same load",
    "up",
    "down",
    "more reps",
    "fewer reps",
    "target",
    "target more",
    "target fewer",
    "done",
    "unknown load",
    "unknown reps",
    "again",
    "same again",
    "zero",
    "all kg",
    "all lb",
    "unit unknown",
    "change",
    "each hand",
    "pin",
    "every set",
    "no set",
]


class Rule(NamedTuple):
    """Recognises a phrase by `pattern`, which is only tried where one of the words `triggers` stands."""

    kind: MarkKind
    triggers: frozenset[str]
    pattern: re.Pattern[str]
