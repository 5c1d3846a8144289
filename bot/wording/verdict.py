"""Words for the verdict: the echo of what was recorded, whether it beat last time, and where."""

from typing import assert_never

from bot.markup import bold
from bot.wording.reader import NO_BREAK, day_words, reps_words, set_words, sets_words
from bot.wording.reasons import counted_words, traded_words
from domain import comparison as compared
from domain.comparison import Comparison
from domain.parts import VerdictPart
from domain.sets import TrainingSet


def verdict_words(part: VerdictPart) -> str:
    """Echo the sets just recorded and say whether they beat last time."""
    echo = sets_words(part.recorded) if part.recorded else set_words(part.set)
    head = f"{bold(part.exercise)}: {echo}."
    if part.on is not None:
        head = f"{bold(part.exercise)}, {day_words(part.on)}: {echo}."
    if part.corrected:
        head = f"Put right. {head}"
    if part.held or (part.result == "first" and part.sets_before):
        return head
    before = f" ({set_words(part.before)})" if part.before is not None else ""
    decides = deciding_place(part.in_order, part.set, part.before)
    later = f" in set {decides}" if decides > 1 else ""
    told_before = part.sets_before > 0 and part.set not in part.recorded
    match part.result:
        case "beat" if told_before:
            in_set = f" in set {decides}" if decides else f", with {set_words(part.set)},"
            said = f"Still a beat on last time{in_set}{before}{margin_words(part)}."
        case "beat":
            said = f"Beat last time{later}{before}{margin_words(part)}."
            if part.personal_best:
                said += " Your best ever, all sets together." if later else " Your best ever."
        case "level":
            said = f"Level with last time{before}{margin_words(part)}."
            if part.on_target:
                said += " Just what there was to aim for."
        case "below" | "not comparable" if part.eased:
            said = f"Lighter than last time{before}, on purpose."
        case "below":
            said = f"Below last time{later}{before}{margin_words(part)}."
        case "first":
            said = "First one of its kind: that is the mark to beat."
        case "not comparable":
            said = uncompared_words(part)
            if part.on_target:
                said += " But just what there was to aim for."
        case _:
            assert_never(part.result)
    where = where_words(part.in_order)
    return f"{head}\n{said}" + (f" {where}" if where and not part.eased else "")


def deciding_place(in_order: tuple[Comparison, ...], now: TrainingSet, before: TrainingSet | None) -> int:
    """Return which set against the same one of last time has decided, from 1; 0 where it was no such pair.

    After the first it decides because the best sets, or those before it, are level.
    """
    pairs = ((place, each) for place, each in enumerate(in_order, start=1))
    return next((place for place, each in pairs if (each.now, each.before) == (now, before)), 0)


def margin_words(part: VerdictPart) -> str:
    """Say by how much, where that is plain."""
    match part.reason:
        case compared.SameLoad(difference=difference) if difference:
            return f" by {length_words(difference, holds=part.set.seconds is not None)}"
        case compared.LoadAndAmount():
            more = part.result == "beat"
            if part.set.load_kind == "assist":
                return f", with {'less' if more else 'more'} help"
            return f", with {'more' if more else 'less'} load"
        case compared.ByEstimate():
            return ", load and reps taken together"
        case compared.ByEndurance():
            return ", load and time taken together"
        case compared.UpTheLadder():
            return ", with full reps"
        case _:
            return ""


def length_words(difference: int, *, holds: bool) -> str:
    """Say a difference in reps or seconds, without its sign."""
    many = abs(difference)
    return f"{many} second{'' if many == 1 else 's'}" if holds else reps_words(many).replace(NO_BREAK, " ")


def uncompared_words(part: VerdictPart) -> str:
    """Say the plain facts of two sets of which it cannot be told which is more, and why not."""
    now, before = part.set, part.before
    if before is None:
        return "Nothing to compare it with."
    last = f"last time ({set_words(before)})"
    match part.reason:
        case compared.CountedDifferently():
            return (
                f"Last time ({set_words(before)}) the load was counted {counted_words(before)}, now "
                f"{counted_words(now)}: I cannot compare the two."
            )
        case compared.NoRep():
            return f"Not one full rep, so there is nothing to compare with {last}."
        case compared.BodyMassUnknown():
            why = "without your body weight I cannot say which is more"
        case compared.NoRelation():
            why = "with lowering-only reps nothing tells which is more"
        case _:
            why = "too far apart to say which is more"
    facts = traded_words(now, before)
    return f"{facts[0].upper()}{facts[1:]} than {last}: {why}."


def where_words(in_order: tuple[Comparison, ...]) -> str:
    """Say in which set something was gained or lost, where several were compared and they differ."""
    told = [step_words(each) for each in in_order]
    if len(set(told)) < 2:
        return ""
    return f"Set by set: {', '.join(told)}."


def step_words(compared_set: Comparison) -> str:
    """Say what one set has gained or lost on the same one of last time."""
    direction = {"beat": "up", "below": "down"}.get(compared_set.result, compared_set.result)
    match compared_set.reason:
        case compared.SameLoad(difference=difference) if difference:
            return f"{length_words(difference, holds=compared_set.now.seconds is not None)} {direction}"
        case _:
            return direction
