"""Faults as whoever runs the bot is told of them: a line each, with nothing that a person wrote."""

import traceback
from dataclasses import dataclass
from pathlib import Path


@dataclass
class OperatorFault(Exception):
    """Something that cannot be used as it is: one line for each thing that is wrong with it."""

    faults: tuple[str, ...]

    def __str__(self) -> str:
        """Return all lines."""
        return "\n".join(self.faults)


def told(error: BaseException | None) -> str:
    """Return the class of an error and in which lines it arose, without anything that a person wrote."""
    frames = traceback.extract_tb(error.__traceback__ if error else None)
    places = [f"{Path(frame.filename).name}:{frame.lineno}" for frame in frames[-5:]]
    return f"{type(error).__name__} at {' < '.join(reversed(places))}"
