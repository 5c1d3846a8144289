"""What the server refuses, and the ways in which a test can make it fail. Nothing here acts."""

from dataclasses import dataclass


class RefusedError(Exception):
    """An answer with `ok` false: `code` is the HTTP status too."""

    def __init__(self, code: int, description: str, *, retry_after: int | None = None) -> None:
        super().__init__(description)
        self.code = code
        self.description = description
        self.retry_after = retry_after


@dataclass(frozen=True)
class TooMany:
    """429: the request is not carried out, and may be sent again after `retry_after` seconds."""

    retry_after: int


@dataclass(frozen=True)
class Broken:
    """A status of 500 or above; where `done`, the request was carried out all the same."""

    code: int = 500
    done: bool = False


@dataclass(frozen=True)
class Cut:
    """The connection is cut without an answer; where `done`, the request was carried out all the same."""

    done: bool = False


@dataclass(frozen=True)
class Slow:
    """The request is carried out at once, the answer comes `seconds` later."""

    seconds: float


@dataclass(frozen=True)
class Says:
    """An answer with `ok` false, in these words."""

    code: int
    description: str


@dataclass(frozen=True)
class Nonsense:
    """200 with something that is not JSON; the request is carried out all the same."""


@dataclass(frozen=True)
class Odd:
    """200 with JSON of another shape than promised; the request is carried out all the same."""

    answer: object


Failure = TooMany | Broken | Cut | Slow | Says | Nonsense | Odd
