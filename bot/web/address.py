"""Where something listens. It is told before anything that can listen is loaded."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Address:
    """Where to listen; port 0 lets the machine choose one that is free."""

    host: str
    port: int

    def __str__(self) -> str:
        """Return it as it stands in a URL."""
        return f"[{self.host}]:{self.port}" if ":" in self.host else f"{self.host}:{self.port}"
