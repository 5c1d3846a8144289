"""Words for the plan and the target."""

from bot.markup import bold, escape
from bot.wording.coach_changes import plan_change_words
from bot.wording.reader import (
    NO_BREAK,
    day_words,
    listed,
    number,
    plates_words,
    ramp_words,
    reps_words,
    set_words,
)
from bot.wording.reasons import aim_note
from domain import target_reasons as aims
from domain.parts import Nudge, Plan, Reminder, TargetPart, VerdictPart
from domain.plan_lines import PlanLine
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
    return "\n".join([head, *plan_change_words(part), *lines, *plan_advice(part)])


FIRST_LOAD = (
    "To find a first load: begin far too light rather than too heavy, form first. Rest, add a little, and "
    "stop at the first that is hard for the reps with clean form; in doubt, well short of it. Send me that "
    "set."
)


def plan_advice(part: Plan) -> list[str]:
    """Say once for the whole plan what several of its lines need."""
    advice = break_words(part)
    if any(line.find_first_load for line in part.lines):
        advice.append(FIRST_LOAD)
    warmed = [{ramp[0].exercise for ramp in line.warm_up} for line in part.lines]
    for first, line in enumerate(part.lines, start=1):
        if line.straight_into_next and not line.is_aside:
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
    elif line.out_of_reach:
        details.append("leave it out: you have nothing to do it with")
    elif line.target is not None:
        plates = plates_words(line.plates_per_side)
        first, easy = ("first time: ", "; form first, less is fine") if line.first_time else ("", "")
        loaded = f" ({plates})" if plates else ""
        details.append(f"{first}aim for {set_words(line.target)}{loaded}{easy}")
        note = aim_note(line.reason, line.target, lighter=line.lighter)
        if note and after_break(line) is None:
            details.append(note[0].lower() + note[1:].rstrip("."))
    elif line.find_first_load:
        details.append("first time: find your load")
    if line.to_beat is not None and not line.is_aside:
        details.append(f"last time {set_words(line.to_beat)}")
    if line.back_to is not None and line.target is not None and line.back_to.load != line.target.load:
        details.append(f"building back to {set_words(line.back_to)}")
    details.extend(warm_up_words(line))
    if line.caution:
        details.append(caution_words(line.caution))
    return "\n".join([head, *(f"    {detail}" for detail in details)])


def after_break(line: PlanLine) -> aims.Eased | None:
    """Return why a line is lighter, where it is because of a break, as all of the workout is."""
    reason = line.reason
    if isinstance(reason, aims.Eased) and (reason.days_away is not None or reason.after_illness):
        return reason
    return None


NOT_YET = "Not yet if you still have a fever or trouble in the chest; if you are unsure, ask a doctor first."


def break_words(part: Plan) -> list[str]:
    """Say why the workout is lighter after a break, and how it goes on; nothing where it is not."""
    eased = [reason for line in part.lines if (reason := after_break(line)) is not None]
    if not eased:
        return []
    lightest = min(eased, key=lambda each: each.factor)
    others = [line for line in part.lines if line.target is not None and after_break(line) is None]
    names = [line.exercise for line in part.lines if after_break(line) is not None]
    what = "it all begins" if not others else f"{listed(names)} {'begins' if len(names) == 1 else 'begin'}"
    less = f"{escape(what)} about {number(100 * (1 - lightest.factor))}% lighter"
    how = (
        "Stop at the number given, well short of failure, however easy it is. Next time it goes up again, "
        "step by step, until you are back where you were."
    )
    if lightest.after_illness:
        return [
            f"You were ill, so {less}, on purpose. {how} {NOT_YET}",
        ]
    weeks = (lightest.days_away or 0) // 7
    return [f"After {weeks} weeks away {less}, on purpose. {how}"]


def back_to_words(part: TargetPart) -> str:
    """Say beside a target what is being built back to after a break; empty where there is nothing."""
    if part.back_to is None:
        return ""
    if part.load_kind == part.back_to.load_kind != "assist" and part.load > part.back_to.load:
        return ""
    if (part.load, part.load_kind) == (part.back_to.load, part.back_to.load_kind):
        return " That is the load from before the break."
    return f" Building back to {set_words(part.back_to)}."


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
    match line.stop_short if after_break(line) is None else None:
        case None:
            effort = ""
        case 0:
            effort = ", to failure"
        case 1:
            effort = ", stop one short of failure"
        case short:
            effort = f", stop {short} short of failure"
    return sets + amount + effort


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
    said = f"{when}: {set_words(aim)}" + (f" ({plates})" if plates else "") + "."
    if part.when == "next set" and not part.put_right:
        return said
    notes = [aim_note(part.reason, aim, lighter=part.lighter), fewer_words(part, aim)]
    return " ".join([said, *(note for note in notes if note)])


def expected_words(part: TargetPart) -> str:
    """Say how many are to be expected, with the verb that fits: "6 reps are", "20 s are"."""
    if part.seconds is not None:
        return f"{part.expected}{NO_BREAK}s are"
    return f"{reps_words(part.expected or 0)} {'is' if part.expected == 1 else 'are'}"


def fewer_words(part: TargetPart, aim: TrainingSet) -> str:
    """Say that a new load brings fewer reps, and how few where that is fewer than what is aimed for."""
    if part.expected and part.expected < aim.amount:
        return f"The load is new: about {expected_words(part)} fine to begin with."
    match part.reason:
        case aims.AddLoad(done=done) | aims.MuchTooLight(done=done) if aim.amount < done:
            return f"{'Less time is' if part.seconds is not None else 'Fewer reps are'} normal at a new load."
        case _:
            return ""
