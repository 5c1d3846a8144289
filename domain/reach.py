"""How far a coach's words to several clients have come, as a part of what the bot says."""

from typing import Literal

from domain.frozen import Frozen


class Unreached(Frozen):
    """A client whom words did not reach, and why."""

    client: str
    why: str


class Reach(Frozen):
    """Whom a coach's words to `total` clients have reached so far, and whom they cannot reach."""

    kind: Literal["reach"] = "reach"
    total: int
    reached: tuple[str, ...] = ()
    unreached: tuple[Unreached, ...] = ()
