"""What a button stands for.

A button keeps its action with the message it was sent under, so that a press that comes late, or twice, still
says exactly what it was about.
"""

from typing import Annotated, Literal

from pydantic import Field

from domain.frozen import Frozen

Remedy = Literal[
    "lighten",
    "swap",
    "rest more",
    "next programme",
    "keep on",
    "lift hold",
    "keep held",
    "let train",
    "seen",
]
"""What a coach can decide about an alert: ease the load and build back, change to the alternative exercise,
one rest day more, the programme that the sheet names next, leave it for a while, put a held exercise back,
keep it held, let the client train again after a warning sign, or only take note."""


class Answer(Frozen):
    """An answer to question `question` of this person, as if `text` had been typed."""

    kind: Literal["answer"] = "answer"
    question: int
    text: str


class Treat(Frozen):
    """A coach's decision on alert `alert` of client `client`."""

    kind: Literal["treat"] = "treat"
    client: int
    alert: int
    remedy: Remedy
    workouts: int | None = None
    """For how many workouts it is left alone."""
    of: str = ""
    """What the alert is about, where the message is about several."""


class Words(Frozen):
    """The same as saying `text`."""

    kind: Literal["words"] = "words"
    text: str


Action = Annotated[Answer | Treat | Words, Field(discriminator="kind")]
