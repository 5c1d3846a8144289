"""What a coach can ask for, by kind: the names that the rules and what is noted of a message share."""

from typing import Literal

PeopleKind = Literal["notes", "forget note", "forget that note", "hand over", "keep", "invitations"]
"""Of notes on a client, of invitations, of handing a client over."""

WhoKind = Literal[
    "who needs me",
    "who trains",
    "who stalled",
    "who hurts",
    "who missed",
    "who asked",
    "who is due a review",
    "who is new",
    "who is away",
]
"""Over all clients."""

Kind = Literal[
    PeopleKind,
    WhoKind,
    "card",
    "sets",
    "talk",
    "why",
    "reminder",
    "rest more",
    "swap",
    "back",
    "leave out",
    "assign",
    "update",
    "release",
    "undo",
    "programmes",
    "remedies",
    "help",
    "days",
    "of the sheet",
    "of erasing",
    "who is on",
]
"""What a coach can want, apart from words to be passed on and notes."""
