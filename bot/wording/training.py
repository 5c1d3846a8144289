"""Words for the plan, the verdict and the target."""

from bot.markup import bold, escape
from bot.wording.reader import (
    day_words,
    plates_words,
    ramp_words,
    set_words,
    sets_words,
)
from domain.parts import Nudge, Plan, PlanLine, Reminder, TargetPart, VerdictPart
from domain.sets import TrainingSet


def reminder_words(_part: Reminder) -> str:
    """Say that it is a training day; the plan that follows names the workout."""
    return "Training day."


def nudge_words(part: Nudge) -> str:
    """Ask, without blame, after a workout of which nothing was reported."""
    return (
        f"How did {bold(part.workout)} go? Send your sets as they were, or say «can't today» and I move it."
    )


def plan_words(part: Plan) -> str:
    """Say a workout: each exercise with what to aim for and what to beat."""
    head = f"{bold(part.workout)}, {day_words(part.on)}"
    lines = []
    for place, line in enumerate(part.lines, start=1):
        paired = place > 1 and part.lines[place - 2].straight_into_next
        lines.append(plan_line_words(place, line, paired=paired))
    return "\n".join([head, *lines, *plan_advice(part)])


FIRST_LOAD = (
    "To find a first load: begin far too light rather than too heavy, form first. Rest, add a little, and "
    "stop at the first that is hard for the reps with clean form; in doubt, well short of it. Send me that "
    "set."
)
FIRST_AIM = (
    "What you do for the first time: clean reps only, and stop well short when in doubt. Fewer is fine; your "
    "result puts the next aim right."
)


def plan_advice(part: Plan) -> list[str]:
    """Say once for the whole plan what several of its lines need."""
    advice = []
    if any(line.find_first_load for line in part.lines):
        advice.append(FIRST_LOAD)
    elif any(line.first_time for line in part.lines):
        advice.append(FIRST_AIM)
    warmed = [{ramp[0].exercise for ramp in line.warm_up} for line in part.lines]
    for first, line in enumerate(part.lines, start=1):
        if line.straight_into_next and not line.held_for:
            no_rest = f"No rest between {first} and {first + 1}"
            is_said = any(line.exercise in each for each in warmed)
            advice.append(
                f"{no_rest}." if is_said else f"{no_rest}: warm up for {first + 1} first, then for {first}."
            )
    return advice


def plan_line_words(place: int, line: PlanLine, *, paired: bool) -> str:
    """Say one exercise of a plan, over a few short lines."""
    into = "straight into " if paired else ""
    head = f"{place}. {into}{bold(line.exercise)}, {range_words(line)}"
    details = []
    if line.instead_of:
        details.append(f"in place of {escape(line.instead_of)}")
    if line.held_for:
        details.append(f"set aside because {because(line.held_for)}; leave it until your coach puts it back")
    elif line.target is not None:
        plates = plates_words(line.plates_per_side)
        first = "first time: " if line.first_time else ""
        details.append(f"{first}aim for {set_words(line.target)}" + (f" ({plates})" if plates else ""))
    elif line.find_first_load:
        details.append("first time: find your load")
    if line.to_beat is not None and not line.held_for:
        details.append(f"last time {set_words(line.to_beat)}")
    details.extend(warm_up_words(line))
    if line.caution:
        details.append(caution_words(line.caution))
    details.extend(escape(cue) for cue in line.cues)
    return "\n".join([head, *(f"    {detail}" for detail in details)])


def warm_up_words(line: PlanLine) -> list[str]:
    """Say the ramps before a line: its own, or those of all that are done without rest, in their order."""
    own = [ramp[0].exercise for ramp in line.warm_up] == [line.exercise]
    return [
        f"{'then' if place else 'warm up'}: {'' if own else f'{escape(ramp[0].exercise)} '}{ramp_words(ramp)}"
        for place, ramp in enumerate(line.warm_up)
    ]


def caution_words(where: str) -> str:
    """Say that an exercise loads a place for which another is on hold."""
    return f"it loads your {escape(where)} too: leave it as soon as you feel it there"


def caution_beside(part: VerdictPart) -> str:
    """Say beside a verdict that the exercise loads a place that hurts; empty where there is none."""
    return f"\n{caution_words(part.caution).capitalize()}." if part.caution else ""


def because(where: str) -> str:
    """Say why an exercise is set aside."""
    return "it hurts" if where == "other" else f"of your {escape(where)}"


def range_words(line: PlanLine) -> str:
    """Say the sets, the range and the effort of a prescription."""
    low, high = line.range.low, line.range.high
    span = f"{low}" if low == high else f"{low}–{high}"
    if line.range.of == "seconds":
        amount = f"hold {span} s"
    else:
        amount = f"{span} lowering-only reps" if line.lowering_only else f"{span} reps"
    sets = f"{line.sets} sets of " if line.sets > 1 else ""
    if line.done:
        left = line.sets - line.done
        sets = f"{left} more {'set' if left == 1 else 'sets'} of "
    match line.stop_short:
        case None:
            effort = ""
        case 0:
            effort = ", to failure"
        case 1:
            effort = ", stop one short of failure"
        case short:
            effort = f", stop {short} short of failure"
    return sets + amount + effort


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
    match part.result:
        case "beat":
            said = f"Beat last time{before}{margin_words(part)}."
            if part.personal_best:
                said += " Your best ever."
        case "level":
            said = f"Level with last time{before}{margin_words(part)}."
            if part.on_target:
                said += " Just what there was to aim for."
        case "below" if part.eased:
            said = f"Lighter than last time{before}, on purpose."
        case "below":
            said = f"Below last time{before}{margin_words(part)}."
        case "first":
            said = "First one of its kind: that is the mark to beat."
        case "not comparable":
            said = f"Too far from last time{before} to compare the two fairly."
            if part.on_target:
                said += " But just what there was to aim for."
    return f"{head}\n{said}"


def margin_words(part: VerdictPart) -> str:
    """Say by how much, where that is plain."""
    difference = part.reason.get("difference")
    match part.reason.get("rule"):
        case "same load" if part.result != "level" and isinstance(difference, int):
            many = abs(difference)
            unit = "second" if part.set.seconds is not None else "rep"
            return f" by {many} {unit}{'' if many == 1 else 's'}"
        case "load and amount":
            return ", with more load" if part.result == "beat" else ", with less load"
        case "by estimated 1RM":
            return ", load and reps taken together"
        case "by endurance":
            return ", load and time taken together"
        case _:
            return ""


def target_words(part: TargetPart) -> str:
    """Say what to aim for."""
    aim = TrainingSet(
        exercise=part.exercise,
        load=part.load,
        unit=part.unit,
        load_kind=part.load_kind,
        reps=part.reps,
        seconds=part.seconds,
        lowering_only=part.lowering_only,
    )
    plates = plates_words(part.plates_per_side)
    when = "Next set" if part.when == "next set" else "Next time"
    fewer = part.expected is not None and part.expected < aim.amount
    expect = f" Expect about {part.expected} at the new load." if fewer else ""
    return f"{when}: {set_words(aim)}" + (f" ({plates})" if plates else "") + f".{expect}"
