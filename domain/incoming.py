"""What comes in: from a chat, or from a coach's decision on a client.

These are the values that stand in the inbox. Whatever platform they came from is no longer to be seen.
"""

from dataclasses import dataclass
from datetime import date, datetime
from typing import Annotated, Literal

from pydantic import Field

from domain.actions import Action, Remedy
from domain.frozen import Frozen
from domain.units import Unit
from domain.wishes import Wish


class ReplyTo(Frozen):
    """An earlier message that somebody replies to.

    `message` is the inbox number of the person's own message, as first sent, or of the one that the bot's
    message came of; None where the bot's came of none. `places` are those of the entries which that message
    recorded or put right, `questions` the numbers of the questions that the bot's message asked.

    `client` is the number of the one client whom the bot's message told a coach of, `alerts` are the numbers
    of the matters it told; `is_words`: it passed on what somebody has written.
    """

    message: int | None = None
    places: tuple[int, ...] = ()
    questions: tuple[int, ...] = ()
    client: int | None = None
    alerts: tuple[int, ...] = ()
    is_words: bool = False


class Text(Frozen):
    """Something typed. `key` names the message on its platform, `replies_to` the one it answers.

    The store fills in `reply`; it stays None where no message is answered, or an unknown one.
    """

    kind: Literal["text"] = "text"
    text: str
    key: str = ""
    replies_to: str | None = None
    reply: ReplyTo | None = None


class Edited(Frozen):
    """A message typed anew.

    The store fills in `original`, the inbox number of the message as first sent, and `before`, its text as it
    last stood; both stay None where that message is unknown. `places` are those of the entries that it was
    the first to record, and `reply` is what it answers. `answered` is the number in the outbox of the bot's
    answer to it, as long as nothing was said since.
    """

    kind: Literal["edited"] = "edited"
    text: str
    key: str
    original: int | None = None
    before: str | None = None
    places: tuple[int, ...] = ()
    reply: ReplyTo | None = None
    answered: int | None = None


class Under(Frozen):
    """The bot's message that a button stood under: its number in the outbox, its buttons, what it came of.

    `at` is when that came in, aware and in UTC; None where the message came of nothing that did.
    """

    number: int
    buttons: tuple[Action, ...]
    reply: ReplyTo
    at: datetime | None = None


class Pressed(Frozen):
    """A button press: the `button`'s data as sent. The store fills in the `action` it stands for.

    `action` stays None where the button is unknown, or was sent to somebody else. `under` is the message that
    it stood under.
    """

    kind: Literal["pressed"] = "pressed"
    button: str
    query: str = ""
    action: Action | None = None
    under: Under | None = None


class Document(Frozen):
    """A text file, with the words sent beside it.

    `text` is None where it was too large, not text or out of reach; `fault` says which.
    """

    kind: Literal["document"] = "document"
    name: str
    text: str | None = None
    caption: str = ""
    fault: Literal["too large", "not text", "not fetched"] | None = None


class Started(Frozen):
    """The chat was opened, with an invitation's `code` or with none."""

    kind: Literal["started"] = "started"
    code: str = ""


class Unsupported(Frozen):
    """Something that is neither words, a button nor a text file: `what` is its usual name."""

    kind: Literal["unsupported"] = "unsupported"
    what: str


class Reachable(Frozen):
    """The person has blocked the bot (`reachable` false) or let it in again."""

    kind: Literal["reachable"] = "reachable"
    reachable: bool


class CoachOrder(Frozen):
    """What coach number `coach` has decided, or wants, about this client."""

    coach: int


class PressedIn(Frozen):
    """The coach's message in which a button was pressed, by its number in the outbox, with the buttons that
    it still has."""

    number: int
    buttons: tuple[Action, ...] = ()


class AtAPress(CoachOrder):
    """A decision that a button can give: then what comes of it is shown under the message it stood in."""

    under: PressedIn | None = None


class Decided(AtAPress):
    """A coach's decision on an alert of this client."""

    kind: Literal["decided"] = "decided"
    alert: int
    remedy: Remedy
    workouts: int | None = None
    """For how many workouts an exercise is left alone, where that is the remedy."""


class Told(CoachOrder):
    """Words of the coach for this client."""

    kind: Literal["told"] = "told"
    text: str
    alert: int | None = None
    """The alert that they were written about, which they settle."""
    alerts: tuple[int, ...] | None = None
    """Those of the message that they are a reply to; what a word can settle, they settle. None: no reply."""
    to_several: bool = False
    """They go to others as well, and the coach has been told so at once."""
    spread: int = 0
    """The coach's message to several by which they went; the coach hears there whom they reach."""


class Assigned(AtAPress):
    """The coach put this client on another programme, by its number."""

    kind: Literal["assigned"] = "assigned"
    programme: int
    change: int = 0
    """The coach's message that it came of, by which it can be undone."""
    to_several: bool = False
    """It is so for others as well, and the coach has been told so at once."""


class CardWanted(CoachOrder):
    """The coach wants to see how this client is doing."""

    kind: Literal["card wanted"] = "card wanted"


class SetsWanted(CoachOrder):
    """The coach wants to see what this client did of an exercise; `text` are the coach's own words."""

    kind: Literal["sets wanted"] = "sets wanted"
    text: str


class TalkWanted(CoachOrder):
    """The coach wants to see what this client and the coach have written to each other."""

    kind: Literal["talk wanted"] = "talk wanted"


class PictureWanted(CoachOrder):
    """The coach wants to see how this client's exercises named in `text` have gone, or without any, all."""

    kind: Literal["picture wanted"] = "picture wanted"
    text: str


class WhyWanted(CoachOrder):
    """The coach wants the reasons of this client's verdict and target; `text` are the coach's own words."""

    kind: Literal["why wanted"] = "why wanted"
    text: str


class Changed(AtAPress):
    """The coach changes one thing for this client; `change` is the coach's message that it came of."""

    kind: Literal["changed"] = "changed"
    change: int
    wish: Wish
    to_several: bool = False
    """As in `Assigned`; what could not be done for this client is still said."""


class Undone(AtAPress):
    """The coach takes back what message `change` has changed for this client."""

    kind: Literal["undone"] = "undone"
    change: int
    to_several: bool = False
    """As in `Assigned`."""


class Released(AtAPress):
    """The coach lets this client train, who was to see a doctor first."""

    kind: Literal["released"] = "released"


class OfferMade(CoachOrder):
    """The coach offers this client to coach number `to`, with own notes or without."""

    kind: Literal["offer made"] = "offer made"
    to: int
    to_name: str
    with_notes: bool = False


class OfferWithdrawn(CoachOrder):
    """The coach keeps this client after all."""

    kind: Literal["offer withdrawn"] = "offer withdrawn"


class OfferAnswered(CoachOrder):
    """The coach to whom this client is offered takes the client on, or does not.

    `name` is what the client is to be called, where that coach has another of the same name.
    """

    kind: Literal["offer answered"] = "offer answered"
    takes: bool
    name: str | None = None


class JournalSent(CoachOrder):
    """The coach has sent an old journal of this client: inbox message `file` of the coach's, called `name`.

    First it is looked at; once the coach agrees (`begin`), its workouts are taken in portions, each an order
    of its own from the workout number `start` on, until the last. `change` is the coach's message that it
    came of, by which all of it is undone. `exercises` are what names in the file mean, as far as the coach or
    the reading has told; `month_first` how its days are written. What begins with the first portion stays
    so for all of them: `unit` of loads without one, `on` the day on which it is taken, `there` the rows, as
    (first, last), that stand in the journal already; `shown_in` the order whose answer shows how far it has
    come, None where it is short. The store fills in `text`, unless it is gone.
    """

    kind: Literal["journal sent"] = "journal sent"
    file: int
    name: str
    step: Literal["look", "begin", "portion"] = "look"
    change: int = 0
    exercises: dict[str, str] = Field(default_factory=dict)
    month_first: bool | None = None
    unit: Unit | None = None
    on: date | None = None
    there: tuple[tuple[int, int], ...] = ()
    start: int = 0
    shown_in: int | None = None
    text: str | None = Field(default=None, exclude=True)


class SendingFailed(Frozen):
    """A message to person `person` could not be delivered, for good."""

    kind: Literal["sending failed"] = "sending failed"
    person: int
    why: str


class Arrived(Frozen):
    """Words that a coach has written to several, in message `message`, have reached client `person`.

    Where they cannot be delivered, for good, `why` says so.
    """

    kind: Literal["arrived"] = "arrived"
    person: int
    message: int
    why: str | None = None


FromDelivery = SendingFailed | Arrived
FromChat = Text | Edited | Pressed | Document | Started | Unsupported | Reachable
FromCoach = (
    Decided
    | Told
    | Assigned
    | CardWanted
    | SetsWanted
    | TalkWanted
    | WhyWanted
    | PictureWanted
    | Changed
    | Undone
    | Released
    | OfferMade
    | OfferWithdrawn
    | OfferAnswered
    | JournalSent
)
Incoming = Annotated[FromChat | FromCoach | FromDelivery, Field(discriminator="kind")]


@dataclass(frozen=True, slots=True)
class Heard:
    """One thing that came in: its number in the inbox, when (aware, UTC), and what.

    `answered` is when it is answered, which can be long after it was said; where it is not given, at once.
    """

    number: int
    at: datetime
    incoming: FromChat | FromCoach | FromDelivery
    answered: datetime | None = None
