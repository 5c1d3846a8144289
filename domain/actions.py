"""What a button stands for.

A button keeps its action with the message it was sent under, so that a press that comes late, or twice, still
says exactly what it was about.
"""

from typing import Annotated, Literal

from pydantic import Field

from domain.frozen import Frozen
from domain.wishes import Wish

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


Taken = Remedy | Literal["write"]
"""What a coach can do about an alert: a remedy, or to write to the client about it."""


TriedResult = Literal["open", "too early", "worked", "did not", "cut short"]
"""What came of a remedy; `cut short` where another programme came before that could be told."""


Role = Literal["client", "coach"]
"""In which of two roles somebody says something who has both."""


class Answer(Frozen):
    """An answer to question `question` of this person in that `role`, as if `text` had been typed."""

    kind: Literal["answer"] = "answer"
    question: int
    text: str
    role: Role = "client"


class InRole(Frozen):
    """The same as saying `text` in one of two roles."""

    kind: Literal["in role"] = "in role"
    role: Role
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


class Write(Frozen):
    """A coach's wish to write to client `client`, called `name`, about alert `alert`; `of` as in `Treat`.

    An `alert` of 0 is none: what was told needs no settling.
    """

    kind: Literal["write"] = "write"
    client: int
    alert: int
    name: str
    of: str = ""


class Words(Frozen):
    """The same as saying `text`; `once` where that is of no use a second time, unlike a look at something."""

    kind: Literal["words"] = "words"
    text: str
    once: bool = False


class Release(Frozen):
    """A coach's word that client `client`, who was to see a doctor first, may begin to train."""

    kind: Literal["release"] = "release"
    client: int


class Show(Frozen):
    """A coach's wish for a picture of client `client`: of `exercise`, or where that is None, of all."""

    kind: Literal["show"] = "show"
    client: int
    exercise: str | None = None


class ChangeTo(Frozen):
    """A coach's wish for client `client`, just so: what `label` says, of several that it could have been."""

    kind: Literal["change to"] = "change to"
    client: int
    wish: Wish
    label: str


class TakeBack(Frozen):
    """A coach's wish to undo, for client `client`, what the coach's message `change` has changed."""

    kind: Literal["take back"] = "take back"
    client: int
    change: int


class TakeBackAll(Frozen):
    """A coach's wish to undo, for all of `clients`, what the coach's message `change` has changed."""

    kind: Literal["take back all"] = "take back all"
    clients: tuple[int, ...]
    change: int


class TakeOn(Frozen):
    """A coach's answer to the offer of client `client`, called `name`: to take the client on, or not to."""

    kind: Literal["take on"] = "take on"
    client: int
    name: str
    takes: bool


class Keep(Frozen):
    """A coach's wish to keep client `client`, called `name`, who is offered to another coach."""

    kind: Literal["keep"] = "keep"
    client: int
    name: str


class ForgetNote(Frozen):
    """A coach's wish that note number `note` on client `client` goes; it is the one at `place` of a list."""

    kind: Literal["forget note"] = "forget note"
    client: int
    note: int
    place: int


class BringIn(Frozen):
    """A coach's word on an old journal of client `client`: message `file` of the coach's, called `name`.

    `exercises` are what names in it mean, as told so far, "" being to leave them out; `month_first` is how
    days are written in it. `says` is what the coach says with the button, and `of` what that is
    about: how days are written; that a name means an exercise, is one itself, or is to be left out; that all
    names asked about are exercises themselves; that all is to be taken as it was shown, or nothing.
    """

    kind: Literal["bring in"] = "bring in"
    client: int
    file: int
    name: str
    exercises: dict[str, str] = Field(default_factory=dict)
    month_first: bool | None = None
    says: Literal["month first", "day first", "means", "keep", "keep all", "leave out", "take", "leave"]
    of: str = ""


Action = Annotated[
    Answer
    | InRole
    | Treat
    | Write
    | Words
    | Release
    | ChangeTo
    | TakeBack
    | TakeBackAll
    | Show
    | TakeOn
    | Keep
    | ForgetNote
    | BringIn,
    Field(discriminator="kind"),
]
