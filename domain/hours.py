"""The hours of a day at which somebody may be written to unasked."""

from datetime import time
from typing import Self

from pydantic import model_validator

from domain.frozen import Frozen


class Hours(Frozen):
    """From `begin` until `end`, local times of one day; ValueError where the end is not after the beginning.

    The hours that hold where nobody has said otherwise are the house's own choice.
    """

    begin: time = time(7)
    end: time = time(22)

    @model_validator(mode="after")
    def _in_order(self) -> Self:
        if self.begin >= self.end:
            raise ValueError(f"hours must lie within one day: {self.begin} is not before {self.end}")
        return self


USUAL = Hours()
