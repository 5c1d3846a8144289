"""What a client's messages and the passing of time come to.

`hear` and `wake` are the two ways in. The other modules each decide one kind of thing, on a `Draft`.
"""

from domain.client.hearing import hear
from domain.client.waking import wake

__all__ = ["hear", "wake"]
