"""A note that a coach keeps on a client, for the coach alone."""

from dataclasses import dataclass
from datetime import datetime

LONGEST = 1_000
"""How many letters a note has at most. The house's own choice."""


@dataclass(frozen=True, slots=True)
class Note:
    """A note on person `client`, from the coach's inbox message `message`; its `number` counts over all."""

    number: int
    client: int
    text: str
    at: datetime
    message: int
