"""Who a message is written for, and how numbers, sets and days are said to anybody."""

from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from bot.markup import escape
from domain.sets import TrainingSet
from domain.units import Unit

NO_BREAK = "\u00a0"
"""Keeps a number and its unit on one line."""


LONGEST_QUOTE = 80
"""Longer words of somebody's are cut where they are quoted."""


@dataclass(frozen=True, slots=True)
class Reader:
    """The person who will read: `zone` is an IANA name."""

    name: str
    zone: str
    unit: Unit
    is_coach: bool = False


def zone_words(zone: str) -> str:
    """Say an IANA zone; one of fixed offset by that, since the tz database counts such zones the other way
    about."""
    fixed = zone.removeprefix("Etc/GMT")
    if zone == "Etc/UTC" or not fixed:
        return "UTC"
    return zone if fixed == zone else f"UTC{'-' if fixed.startswith('+') else '+'}{fixed[1:]}"


def number(value: Decimal | float) -> str:
    """Say a number without needless digits."""
    if isinstance(value, Decimal):
        return f"{value.normalize():f}"
    return f"{value:g}"


def load_words(done: TrainingSet) -> str:
    """Say the load of a set, as the trade does; empty for body weight alone."""
    mass = f"{number(done.load)}{NO_BREAK}{done.unit}"
    match done.load_kind:
        case "total":
            return mass
        case "each":
            return f"{mass} each"
        case "added":
            return f"body weight + {mass}"
        case "assist":
            return f"{mass} of help"
        case "body":
            return ""


def set_words(done: TrainingSet) -> str:
    """Say a whole set: load, then reps or seconds, then how hard it was."""
    load = load_words(done)
    if done.seconds is not None:
        amount = f"{done.seconds}{NO_BREAK}s"
        said = f"{load} for {amount}" if load else amount
    else:
        reps = reps_words(done.reps or 0, lowering_only=done.lowering_only)
        said = f"{load} × {done.reps}" if load else reps
        if load and done.lowering_only:
            said += " lowering-only"
    return said + effort_words(done)


def reps_words(reps: int, *, lowering_only: bool = False) -> str:
    """Say a number of reps."""
    kind = "lowering-only rep" if lowering_only else "rep"
    return f"{reps}{NO_BREAK}{kind}{'' if reps == 1 else 's'}"


def effort_words(done: TrainingSet) -> str:
    """Say how hard a set was, where that is known."""
    if done.to_failure:
        return ", to failure"
    if done.rir is not None:
        return f", {number(done.rir)} in reserve"
    return ""


def sets_words(sets: tuple[TrainingSet, ...]) -> str:
    """Say several sets in a row; a load that stays the same is said once."""
    first = sets[0]
    same = all(
        (each.load, each.unit, each.load_kind, each.lowering_only, each.seconds is None)
        == (first.load, first.unit, first.load_kind, first.lowering_only, first.seconds is None)
        and not effort_words(each)
        for each in sets
    )
    if len(sets) > 1 and same and first.load_kind != "body" and first.seconds is None:
        return f"{load_words(first)} × {', '.join(str(each.reps) for each in sets)}"
    return "; ".join(set_words(each) for each in sets)


def ramp_words(ramp: tuple[TrainingSet, ...]) -> str:
    """Say the warm-up sets of one exercise; how their load is counted is said once."""
    first, *others = ramp
    if first.load_kind == "body":
        return f"{set_words(first)} with body weight alone"
    return ", ".join([set_words(first), *(f"{number(each.load)} × {each.reps}" for each in others)])


def plates_words(plates: tuple[Decimal, ...] | None) -> str:
    """Say the plates for each side of the bar; empty where there are none to say."""
    if plates is None:
        return ""
    if not plates:
        return "empty bar"
    return "each side " + " + ".join(number(plate) for plate in plates)


def bar(done: int, total: int) -> str:
    """Return how much of something is done as a bar of ten, with the share beside it."""
    share = min(max(done / total, 0.0), 1.0) if total else 1.0
    full = int(share * 10)
    return f"{'█' * full}{'░' * (10 - full)} {share:.0%}"


def day_words(day: date | str, today: date | None = None) -> str:
    """Say a day; `today` makes the near ones plain."""
    on = date.fromisoformat(day) if isinstance(day, str) else day
    if today is not None:
        near = {0: "today", 1: "tomorrow", -1: "yesterday"}.get((on - today).days)
        if near:
            return near
    return f"{on:%A} {on.day} {on:%B}"


def percent_words(change: float, digits: int = 1) -> str:
    """Say a change, a share (0.01 is 1%), with a proper sign; one that rounds to nothing has none."""
    said = f"{change:+.{digits}%}"
    return said.replace("-", "−") if any(each in "123456789" for each in said) else said[1:]


def quoted(text: str) -> str:
    """Quote what somebody typed, in one line, cut where it is long."""
    line = " ".join(text.split())
    return f"«{escape(line if len(line) <= LONGEST_QUOTE else line[: LONGEST_QUOTE - 1] + '…')}»"


def listed(names: list[str] | tuple[str, ...], last: str = "and") -> str:
    """Say a list of names."""
    if len(names) <= 1:
        return "".join(names)
    return f"{', '.join(names[:-1])} {last} {names[-1]}"
