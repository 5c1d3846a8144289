"""The hours at which a coach wants to be written to, told in plain words."""

from datetime import time

from domain.coach.draft import Draft
from domain.expressions import Expression
from domain.hours import Hours

_HOUR = r"(\d{1,2})(?:[:.h](\d{2}))? ?(am|pm|a\.m\.|p\.m\.)?"
_HOURS = Expression(
    r"(?:(?:my |my working |working )hours(?: are)?|hours(?: are)?|(?:only )?write (?:to )?me(?: only)?|"
    r"(?:only )?message me(?: only)?|i work) ?(?:from |between )?"
    rf"{_HOUR} ?(?:-|–|to|till|until|and) ?{_HOUR}"
)


def take_hours(draft: Draft, said: str) -> bool:
    """Keep the hours that a coach tells (`said` in lower case); return whether it was that."""
    found = _HOURS.fullmatch(said)
    if found is None:
        return False
    begin, end = at(*found.groups()[:3]), at(*found.groups()[3:])
    if begin is None or end is None or begin >= end:
        draft.notice("no such hours")
        return True
    draft.remember(hours=Hours(begin=begin, end=end))
    draft.notice("hours kept", begin=f"{begin:%H:%M}", end=f"{end:%H:%M}")
    return True


def at(hour: str, minute: str | None, half: str | None) -> time | None:
    """Return the time of day that was said, 24 as the last minute of the day; None where there is none."""
    of_day = int(hour)
    if half is not None and 1 <= of_day <= 12:
        of_day = of_day % 12 + (12 if half.startswith("p") else 0)
    if of_day == 24 and not int(minute or 0):
        return time(23, 59)
    return time(of_day, int(minute or 0)) if of_day <= 23 and int(minute or 0) <= 59 else None
