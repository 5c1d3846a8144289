"""Training days and local time: when the next workout is due, and which moment a local hour is.

Days are the client's local calendar days, hours the local time of day, moments aware and in UTC. Nothing here
knows what day it is now, and reminders, pauses and missed workouts are decided elsewhere.
"""

from collections.abc import Sequence
from collections.abc import Set as AbstractSet
from datetime import UTC, date, datetime, time, timedelta
from functools import lru_cache
from itertools import count as counting
from itertools import islice
from typing import assert_never, get_args
from zoneinfo import ZoneInfo

from domain.programme import FixedDays, Rotation, Weekday

Schedule = Rotation | FixedDays

DAY = timedelta(days=1)
WEEK = timedelta(weeks=1)

ONE_DAY_BETWEEN = timedelta(days=2)
"""From one workout to the next with a whole rest day between them."""

NIGHT_ENDS = time(4)
"""Until then who is still up lives in the day before: evening training and late shifts run over midnight, and
hardly anybody begins a day earlier. The house's own choice."""


def next_slot(schedule: Schedule, *, last_done: date | None, starts: date, today: date) -> date:
    """Return the day that the schedule has for the next workout, which lies in the past where it is overdue.

    A rotation counts from `last_done`, the day of the last workout, however late that was; fixed days stay
    where they are. Where none was done the first workout is due on `starts`, or on the first of the fixed
    days from then on; nothing is ever due before `starts`. Of fixed days gone by, those of the last seven
    days before `today` are still due; older ones are not caught up on.
    """
    match schedule:
        case Rotation():
            return starts if last_done is None else max(starts, last_done + schedule.every_days * DAY)
        case FixedDays():
            free = starts if last_done is None else max(starts, last_done + DAY)
            return _first_fixed_day(schedule, max(free, today - WEEK))
        case _:
            assert_never(schedule)


def next_day(schedule: Schedule, slot: date, trained: date | None) -> date:
    """Return the day on which the workout of day `slot` is due, with the rest behind it that the sheet has.

    `trained` is the last day of training: where that was late, the rest puts off the next fixed day. In a
    rotation the slot has the rest already.
    """
    if isinstance(schedule, FixedDays) and trained is not None:
        return max(slot, rested(schedule, trained))
    return slot


def following_days(schedule: Schedule, from_day: date, count: int) -> tuple[date, ...]:
    """Return the `count` training days that come after `from_day` if every workout is done on its day."""
    match schedule:
        case Rotation():
            return tuple(from_day + turn * schedule.every_days * DAY for turn in range(1, count + 1))
        case FixedDays():
            days = (from_day + distance * DAY for distance in counting(1))
            return tuple(islice((day for day in days if _is_fixed_day(schedule, day)), count))
        case _:
            assert_never(schedule)


def earliest_ok(schedule: Schedule, last_done: date) -> date:
    """Return the first day after `last_done` with all the rest days of the sheet behind it.

    Between fixed weekdays the rest is the shortest that the week has, also after a workout that was done
    late. Where there is one day a week, that day itself is rest enough, unless the workout was right before.
    """
    match schedule:
        case Rotation():
            return last_done + schedule.every_days * DAY
        case FixedDays():
            week_later = last_done + _shortest_gap(schedule)
            return min(week_later, next_day(schedule, fixed_day_after(schedule, last_done), last_done))
        case _:
            assert_never(schedule)


def workout_in_turn(
    order: Sequence[str], done: Sequence[str], *, from_start: bool = True, begins: str | None = None
) -> str:
    """Return the workout whose turn it is after those `done`, oldest first: the first not done in this round.

    So whatever is done out of turn, the workout in turn stays in turn until it is done. What was done ahead
    of its turn is not asked for twice in a round, and one done twice running counts once. Without
    `from_start`, the first of those done is taken for the one that was in turn. The first round begins with
    the workout `begins`, where that is given.
    """
    return _in_turn(tuple(order), tuple(done), from_start, begins)


@lru_cache(maxsize=256)
def _in_turn(order: tuple[str, ...], done: tuple[str, ...], from_start: bool, begins: str | None) -> str:  # noqa: FBT001 only ever called just above
    places: set[int] = set(range(order.index(begins))) if begins in order else set()
    last: str | None = None
    for name in done:
        if not from_start and last is None and name in order:
            places = set(range(order.index(name)))
        place = _place_of(name, order, places, last)
        if place is not None:
            places.add(place)
        if len(places) == len(order):
            places.clear()
        last = name if name in order else last
    return order[_first_free(order, places)]


def _place_of(name: str, order: Sequence[str], places: AbstractSet[int], last: str | None) -> int | None:
    """Return the place of this round that a workout takes; None where it takes none."""
    in_turn = _first_free(order, places)
    if order[in_turn] == name:
        return in_turn
    free = (place for place, other in enumerate(order) if other == name and place not in places)
    return None if name == last else next(free, None)


def _first_free(order: Sequence[str], places: AbstractSet[int]) -> int:
    return next(place for place in range(len(order)) if place not in places)


def workout_of_day(schedule: FixedDays, day: date) -> str:
    """Return the workout that the sheet has on the weekday of `day`; its first where it has none there."""
    weekday = get_args(Weekday)[day.weekday()]
    return schedule.order[schedule.days.index(weekday) if weekday in schedule.days else 0]


def left_behind(schedule: FixedDays, slot: date, on: date, *, keeps_rest: bool) -> date | None:
    """Return the fixed day whose workout has no room left, once that of the fixed day `slot` is done on `on`.

    It is the one right after `slot`, where that has gone by; or where it `keeps_rest`, where there would be
    fewer rest days before it than the shortest that the week has. None where the week goes on as it stands.
    """
    following = _first_fixed_day(schedule, slot + DAY)
    room = rested(schedule, on) if keeps_rest else on + DAY
    return following if following < room else None


def rested(schedule: FixedDays, on: date) -> date:
    """Return the first day after `on` with the shortest rest behind it that the week has.

    So a workout that was late puts the next one off where there would be less. Where there is one day a week,
    a whole day of rest is enough: the house's own choice, like that no week need have more than it has.
    """
    return on + (_shortest_gap(schedule) if len(set(schedule.days)) > 1 else ONE_DAY_BETWEEN)


def fixed_day_after(schedule: FixedDays, day: date) -> date:
    """Return the first of the fixed days after `day`."""
    return _first_fixed_day(schedule, day + DAY)


@lru_cache(maxsize=256)
def at_local(day: date, hour: time, zone: ZoneInfo) -> datetime:
    """Return the first moment, in UTC, at which clocks in `zone` show `hour` of `day`, or a later time.

    So an hour that comes twice is its first coming, and one that the clocks leap over, when they go forward,
    is the first moment after the leap.
    """
    wall = datetime.combine(day, hour)
    with_offset_before, with_offset_after = (
        wall.replace(tzinfo=zone, fold=fold).astimezone(UTC) for fold in (0, 1)
    )
    if _wall_time(with_offset_before, zone) == wall:
        return with_offset_before
    # The clocks leap over it. Reckoned with the offset from after the leap it lies before the leap, and the
    # other way about (PEP 495), so the leap is between the two, and it happens on a whole second.
    too_early = with_offset_after.replace(microsecond=0)
    late_enough = with_offset_before.replace(microsecond=0)
    while late_enough - too_early > timedelta(seconds=1):
        between = too_early + timedelta(seconds=(late_enough - too_early) // timedelta(seconds=2))
        if _wall_time(between, zone) < wall:
            too_early = between
        else:
            late_enough = between
    return late_enough


def local_day(moment: datetime, zone: ZoneInfo) -> date:
    """Return the calendar day in `zone` at `moment`. Raises ValueError where `moment` has no offset."""
    return _wall_time(moment, zone).date()


def day_lived(moment: datetime, zone: ZoneInfo) -> date:
    """Return the day that somebody still awake calls today: past midnight, the one that has just ended."""
    wall = _wall_time(moment, zone)
    return wall.date() - DAY if wall.time() < NIGHT_ENDS else wall.date()


def not_before(
    moment: datetime, zone: ZoneInfo, earliest: time = time(7), latest: time = time(22)
) -> datetime:
    """Return `moment` in UTC, put off to the next `earliest` where it is before that, or from `latest` on.

    Where `earliest` comes twice in a night, its first coming ends the quiet hours.
    Raises ValueError where `moment` has no offset, or `earliest` is not before `latest`.
    """
    if earliest >= latest:
        raise ValueError(f"quiet hours must lie around midnight: {earliest} is not before {latest}")
    wall = _wall_time(moment, zone)
    if earliest <= wall.time() < latest:
        return moment.astimezone(UTC)
    day = wall.date() if wall.time() < earliest else wall.date() + DAY
    return max(moment.astimezone(UTC), at_local(day, earliest, zone))


def _wall_time(moment: datetime, zone: ZoneInfo) -> datetime:
    """Return what clocks in `zone` show at `moment`, without an offset."""
    if moment.utcoffset() is None:
        raise ValueError(f"a moment must have an offset: {moment}")
    return _shown(moment.astimezone(UTC), zone)


@lru_cache(maxsize=64)
def _shown(in_utc: datetime, zone: ZoneInfo) -> datetime:
    # A decision asks for its own moment many times. In UTC, equal moments are the same moment.
    return in_utc.astimezone(zone).replace(tzinfo=None, fold=0)


def _is_fixed_day(schedule: FixedDays, day: date) -> bool:
    return get_args(Weekday)[day.weekday()] in schedule.days


def _first_fixed_day(schedule: FixedDays, from_day: date) -> date:
    week = (from_day + distance * DAY for distance in range(7))
    return next(day for day in week if _is_fixed_day(schedule, day))


def _shortest_gap(schedule: FixedDays) -> timedelta:
    """Return the shortest distance between two training days of the week; a week where there is only one."""
    places = sorted({get_args(Weekday).index(day) for day in schedule.days})
    following = [*places[1:], places[0] + 7]
    return min(after - before for before, after in zip(places, following, strict=True)) * DAY
