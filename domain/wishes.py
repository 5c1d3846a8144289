"""Single changes that a coach wants made for a client, in the coach's own words as far as they name things.

Which exercise is meant, the client's own decision finds out: it knows the client's programme and names.
"""

from typing import Annotated, Literal

from pydantic import Field

from domain.frozen import Frozen


class SwapWish(Frozen):
    """Do `instead` in place of `exercise`, until the coach says otherwise."""

    what: Literal["swap"] = "swap"
    exercise: str
    instead: str


class LeaveOutWish(Frozen):
    """Do no more of `exercise` until the coach says otherwise."""

    what: Literal["leave out"] = "leave out"
    exercise: str


class BackWish(Frozen):
    """Do `exercise` again as the sheet has it: whatever had set it aside or swapped it is over."""

    what: Literal["back"] = "back"
    exercise: str


class RestWish(Frozen):
    """Rest `days` more before the next workout."""

    what: Literal["rest more"] = "rest more"
    days: int = Field(ge=1, le=14)


class ReminderWish(Frozen):
    """Have the reminder at the time of day that `clock` says."""

    what: Literal["reminder"] = "reminder"
    clock: str


Wish = Annotated[SwapWish | LeaveOutWish | BackWish | RestWish | ReminderWish, Field(discriminator="what")]
