"""What a coach's messages come to. `hear` and `wake` are the two ways in."""

from domain.coach.hearing import hear
from domain.coach.waking import wake

__all__ = ["hear", "wake"]
