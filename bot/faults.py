"""What an operator has to mend: said on standard error, a line each, and never with a traceback."""

from dataclasses import dataclass


@dataclass
class OperatorFault(Exception):
    """Something that cannot be used as it is: one line for each thing that is wrong with it."""

    faults: tuple[str, ...]

    def __str__(self) -> str:
        """Return all lines."""
        return "\n".join(self.faults)
