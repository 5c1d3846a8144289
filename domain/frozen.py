"""The base of every value that is kept as JSON: frozen, and strict about its fields."""

from pydantic import BaseModel, ConfigDict


class Frozen(BaseModel):
    """A value that cannot be changed and knows no fields but its own."""

    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True)
