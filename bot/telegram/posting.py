"""How updates are posted to us. It is told before anything that can listen is loaded."""

from dataclasses import dataclass

from bot.web.address import Address


@dataclass(frozen=True, slots=True)
class Posting:
    """Where Telegram is to post updates (`url`, public), where we listen, and what it has to show."""

    url: str
    address: Address
    secret: str
