"""Whether somebody is off from work alone, which is no absence from training: "holiday from work"."""

from domain.reading.message import Message
from domain.reading.patterns import Pattern
from domain.reading.words import words_of

_FROM_WORK = Pattern(
    """
    (holiday|holidays|vacation|leave|break|time|{length}) [off] from (work|the office|uni|school|college)
    {length} off work
    """,
    length="day|days|week|weeks|fortnight|month",
)
"""Time off from work alone: there is more time to train."""

_ALSO_AWAY = Pattern(
    """
    {away}
    (no|not|cant|wont|without|and|or|skip|skipping|pause|pausing) [my|the|any|all|from]* {training}
    """,
    away=words_of(
        """away abroad travel travelling traveling fly flying flight trip camping skiing visiting cruise
        island pause break"""
    ),
    training="gym|train|training|lift|lifting|workouts|session|sessions|equipment",
)
"""What makes time off from work an absence from training as well."""


def is_only_off_work(message: Message) -> bool:
    """Return whether the message tells of time off from work, and of nothing that keeps from training."""
    return _FROM_WORK.is_in(message) and not _ALSO_AWAY.is_in(message)
