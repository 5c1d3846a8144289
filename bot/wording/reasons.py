"""Why a verdict and a target are what they are, in one plain line each.

Every reason of `domain.comparison` and `domain.target_reasons` has its words here, and nowhere else.
"""

from decimal import Decimal
from typing import assert_never

from bot.markup import escape
from bot.wording.reader import NO_BREAK, load_words, number, reps_words
from bot.wording.safety import place_words
from domain import comparison as compared
from domain import target_reasons as aims
from domain.comparison import Result
from domain.explanation import Aimed
from domain.programme import Range
from domain.sets import TrainingSet
from domain.strength import tested_reps
from domain.target import NoTarget, Target
from domain.units import Unit, convert

SO: dict[Result, str] = {
    "beat": "so a beat",
    "level": "so level",
    "below": "so below",
    "first": "so the first",
    "not comparable": "so I do not call it",
}


def verdict_because(
    result: Result, now: TrainingSet, before: TrainingSet | None, reason: compared.Reason
) -> str:
    """Say by which rule and on which numbers `now` was judged against `before`, in one clause."""
    so = SO[result]
    if before is None:
        return "nothing of its kind came before, so this is the mark to beat"
    match reason:
        case compared.FirstOfKind():
            return "nothing of its kind came before, so this is the mark to beat"
        case compared.SameLoad(difference=difference):
            return f"the same load and {more_words(difference, now)}, {so}"
        case compared.LoadAndAmount(difference=difference):
            return f"{load_change(now, before)} and {more_words(difference, now)}, {so}"
        case compared.ByEstimate():
            return by_estimate(result, now, before, reason)
        case compared.ByEndurance(least_ratio=least, greatest_ratio=greatest):
            little = ", too little to tell" if result == "level" else ""
            return f"by published endurance times, {strength_words(least, greatest)}{little}, {so}"
        case compared.UpTheLadder():
            return f"full reps, where last time they were lowering-only, {so}"
        case compared.OutsideTested(lowest=lowest, highest=highest):
            measure = "seconds" if now.seconds is not None else "reps"
            return (
                f"{traded_words(now, before)}; what weighs one against the other was tested from {lowest} "
                f"to {highest} {measure} only, {so}"
            )
        case compared.CountedDifferently():
            return f"one is counted {counted_words(now)}, the other {counted_words(before)}, {so}"
        case compared.BodyMassUnknown():
            return (
                f"{traded_words(now, before)}; the body is part of the load, and without body weight known "
                f"the two cannot be weighed, {so}"
            )
        case compared.NoRelation():
            return f"{traded_words(now, before)}; of lowering-only reps nothing tells which is more, {so}"
        case compared.NoRep():
            return (
                "not one full rep either time, so level" if result == "level" else f"not one full rep, {so}"
            )
        case _:
            assert_never(reason)


def by_estimate(result: Result, now: TrainingSet, before: TrainingSet, reason: compared.ByEstimate) -> str:
    """Say what both sets are worth for one rep, and how that decides."""
    unit = now.unit
    mine, theirs = in_unit(reason.now_kg, unit), in_unit(reason.before_kg, unit)
    worth = f"worth {number(mine)} against {number(theirs)}{NO_BREAK}{unit} for one rep"
    highest = tested_reps(reason.equation)[-1]
    counted = (
        f", where more than {highest} reps count as {highest}"
        if max(now.amount, before.amount) > highest
        else ""
    )
    body = ", the body's share included" if now.load_kind not in ("total", "each") else ""
    if result == "level":
        one_rep = in_unit(reason.one_rep_kg, unit)
        rest = f"; the difference is less than the {number(one_rep)}{NO_BREAK}{unit} of a rep, so level"
    else:
        rest = f", {SO[result]}"
    return f"by the usual estimate{body}{counted}, {worth}{rest}"


def in_unit(kg: float, unit: Unit) -> Decimal:
    """Return an estimated load in the unit, to a tenth."""
    return round(convert(Decimal(str(kg)), "kg", unit), 1)


def strength_words(least: float, greatest: float) -> str:
    """Say between which bounds strength has changed."""
    low, high = round(100 * (least - 1)), round(100 * (greatest - 1))
    if low < 0 < high:
        return f"between {-low}% less and {high}% more strength"
    less, more = sorted((abs(low), abs(high)))
    span = f"{more}" if less == more else f"{less} to {more}"
    return f"{span}% {'less' if low < 0 else 'more'} strength"


def traded_words(now: TrainingSet, before: TrainingSet) -> str:
    """Say the plain facts of two sets of which one has more load and the other more reps."""
    difference = now.amount - before.amount
    joint = "but" if difference else "and"
    return f"{load_change(now, before)} {joint} {more_words(difference, now)}"


def more_words(difference: int, done: TrainingSet) -> str:
    """Say a difference in reps or seconds: "2 reps more", "a rep fewer"."""
    if difference == 0:
        return "as long" if done.seconds is not None else "as many reps"
    many = abs(difference)
    if done.seconds is not None:
        return f"{many}{NO_BREAK}s {'more' if difference > 0 else 'less'}"
    return f"{reps_words(many)} {'more' if difference > 0 else 'fewer'}"


def load_change(now: TrainingSet, before: TrainingSet) -> str:
    """Say by how much the load has changed, in the unit of the set of now."""
    if now.load_kind == before.load_kind == "assist":
        change = convert(before.load, before.unit, now.unit) - now.load
        return f"{mass_words(change, now.unit)} {'less' if change > 0 else 'more'} help"
    change = convert(compared.extra_kg(now) - compared.extra_kg(before), "kg", now.unit)
    each = " in each hand" if now.load_kind == "each" else ""
    return f"{mass_words(change, now.unit)} {'more' if change > 0 else 'less'}{each}"


def mass_words(mass: Decimal, unit: Unit) -> str:
    """Say a mass without its sign, to hundredths."""
    return f"{number(round(abs(mass), 2))}{NO_BREAK}{unit}"


def counted_words(done: TrainingSet) -> str:
    """Say how the load of a set is counted."""
    match done.load_kind:
        case "total":
            return "as the whole load"
        case "each":
            return "per hand"
        case "added" | "assist" | "body":
            return "from body weight"
        case _:
            assert_never(done.load_kind)


def target_because(aimed: Aimed) -> str:
    """Say why the target is what it is, or why there is none, in one clause."""
    target = aimed.target
    if isinstance(target, NoTarget):
        return none_because(target.reason)
    return aim_because(target, aimed)


def held_because(where: str, side: str | None, *, is_coach: bool = False) -> str:
    """Say why an exercise is on hold, and whose matter that is."""
    whose = "the" if is_coach else "your"
    why = "it hurt" if where == "other" else f"of {whose} {place_words(where, side)}"
    if is_coach:
        return f"on hold because {why}, until you put it back"
    return (
        f"on hold because {why}: leave it until your coach puts it back. Whether it can be loaded again is "
        "for your coach and a qualified professional (a doctor or a physiotherapist)"
    )


def none_because(reason: aims.NoTargetReason) -> str:
    """Say why nothing is aimed for."""
    match reason:
        case aims.Held():
            return held_because("other", None)
        case aims.FirstTime():
            return (
                "it is the first time, so there is no load to reckon from: start light and work up to one "
                "that is hard for the reps"
            )
        case aims.OtherNotDone(exercise=exercise):
            return f"the sheet reckons it from {escape(exercise)}, which has not been done yet"
        case _:
            assert_never(reason)


def aim_because(target: Target, aimed: Aimed) -> str:
    """Say by which rule a target follows from the last set."""
    reason, span = target.reason, range_span(aimed.range)
    holds = target.seconds is not None
    measure = "seconds" if holds else "reps"
    match reason:
        case aims.OneMore(done=done):
            more = "a tenth longer" if holds else "one rep more"
            where = f" inside {span}" if aimed.range.low <= done <= aimed.range.high else ""
            return f"with {amount(done, holds=holds)}{where}, so the same load and {more}"
        case aims.AddLoad(done=done, ready=ready, percent=percent, by_sheet=by_sheet):
            at, place = ("over" if done > ready else "at"), f"the top of {span}"
            if ready != aimed.range.high:
                at, place = "over", f"the {ready - 1} from which the sheet adds load"
            how = "what the sheet adds" if by_sheet else "the smallest step up that fits"
            step = step_words(target, aimed.last, percent)
            return f"with {amount(done, holds=holds)} {at} {place}, so {how}{step}{expected_words(target)}"
        case aims.MuchTooLight(done=done, percent=percent, capped=capped):
            how = "as great a step as is taken at once" if capped else "the load for the middle of it"
            step = step_words(target, aimed.last, percent)
            return (
                f"with {amount(done, holds=holds)} far above {span}, so {how}{step}{expected_words(target)}"
            )
        case aims.MoreFirst(percent=percent, until=until):
            following = next_load_words(reason, target.unit)
            step = "" if percent is None else f", {number(round(percent, 1))}% more"
            enough = amount(until, holds=holds)
            return (
                f"the next load is {following}{step}: only from {enough} on at this one is {span} to be "
                "expected there"
            )
        case aims.NothingHeavier():
            if target.load_kind == "body":
                return f"the sheet adds no load here, so more {measure}"
            return f"there is nothing heavier to load, so more {measure}"
        case aims.OtherSets(least=least, ready=ready):
            return f"the best set is at {ready}, the weakest at {least}: all to {ready} before load is added"
        case aims.BackIntoRange(done=done):
            return f"with {amount(done, holds=holds)} under {span}, so the same load once more, back up to it"
        case aims.LowerLoad(running=running):
            times = "the first time" if running == 1 else f"{times_words(running)} running"
            return f"under {span} {times}, so a load for the middle of it{expected_words(target)}"
        case aims.DownTheLadder(done=done, below=below):
            return f"{done} full reps of the {below} that the sheet asks for, so lowering-only reps first"
        case aims.UpTheLadder(done=done, up_to=up_to):
            return (
                f"{done} lowering-only reps done of the {up_to} that the sheet asks for, so full reps again"
            )
        case aims.Relative(exercise=exercise, other_load=other_load):
            last = mass_words(other_load, target.unit)
            return f"the sheet reckons the load from {escape(exercise)}, last {last}"
        case aims.Eased(factor=factor, days_away=days_away, after_illness=ill):
            away = f"after {days_away} days away" if days_away is not None else "taken down on purpose"
            share = f"at most {number(100 * factor)}% of the last load, to be built back from there"
            return f"{'after an illness' if ill else away}, so {share}"
        case aims.BuildBack(done=done, wanted=wanted, percent=percent):
            step = step_words(target, aimed.last, percent)
            old = f"{mass_words(wanted, target.unit)}, the load from before the break"
            return f"with {amount(done, holds=holds)} a step up{step}: building back to {old}"
        case aims.FirstWithBody():
            return f"the first time with body weight, so the bottom of {span}"
        case _:
            assert_never(reason)


def next_load_words(reason: aims.MoreFirst, unit: Unit) -> str:
    """Say the load that comes next, counted as it is."""
    return load_words(TrainingSet("", reason.next_load, unit, reason.next_kind)) or "body weight alone"


def times_words(times: int) -> str:
    """Say how often."""
    return {1: "once", 2: "twice"}.get(times, f"{times} times")


def amount(done: int, *, holds: bool) -> str:
    """Say a number of reps or seconds."""
    return f"{done}{NO_BREAK}s" if holds else reps_words(done)


def range_span(span: Range) -> str:
    """Say a range: "6-8", or "30-60 s" of a hold."""
    said = f"{span.low}" if span.low == span.high else f"{span.low}–{span.high}"
    return f"{said}{NO_BREAK}s" if span.of == "seconds" else said


def step_words(target: Target, last: TrainingSet | None, percent: float | None) -> str:
    """Say how great the step to a target is: ", 2.5 kg (3%)"; nothing where that is not known."""
    if last is None:
        return ""
    of = "" if percent is None else f" ({number(round(percent, 1))}%)"
    return f", {load_change(target.as_set(), last)}{of}"


def expected_words(target: Target) -> str:
    """Say how many are to be expected at a new load, where that is known."""
    expected = target.expected
    if expected is None or expected == target.as_set().amount:
        return ""
    return f"; about {amount(expected, holds=target.seconds is not None)} to be expected there"


def aim_note(reason: aims.TargetReason | None, aim: TrainingSet, *, lighter: bool) -> str:
    """Say in a few words why an aim goes down, stays or leaps; nothing where it goes on as usual."""
    match reason:
        case aims.MuchTooLight():
            return "The last load was much too light."
        case aims.MoreFirst(percent=percent, until=until):
            more, measure = ("Longer", "seconds") if aim.seconds is not None else ("More reps", "reps")
            following = next_load_words(reason, aim.unit)
            step = "" if percent is None else f", {round(percent)}% more,"
            return f"{more} first: {following}{step} comes after {until} {measure}."
        case aims.OtherSets(ready=ready):
            return f"All sets up to {ready} first, then more load."
        case aims.BackIntoRange(low=low):
            return f"Up to {low} first, the bottom of the range."
        case aims.LowerLoad(low=low, running=running):
            times = "" if running == 1 else f" {times_words(running)} running"
            return f"Under {low}{times}, so lighter."
        case aims.DownTheLadder(below=below):
            few = "Not one full rep yet" if below == 1 else f"Fewer than {below} full reps"
            return f"{few}, so lowering-only ones for a time."
        case aims.UpTheLadder():
            return "Full reps again."
        case aims.Relative(exercise=exercise):
            return f"Lighter, as it goes by your last {escape(exercise)}." if lighter else ""
        case aims.Eased():
            return "Lighter on purpose, to build back from there."
        case None | aims.OneMore() | aims.AddLoad() | aims.NothingHeavier() | aims.FirstWithBody():
            return ""
        case aims.BuildBack():
            return ""
        case _:
            assert_never(reason)
