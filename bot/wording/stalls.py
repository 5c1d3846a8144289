"""Words for stalls, as a coach reads them: two lines for each, without terms of statistics, or all of it."""

from typing import Any

from bot.markup import bold, escape, italic
from bot.wording.reader import day_words, listed, percent_words, set_words
from bot.wording.reasons import verdict_because
from bot.wording.why import aimed_words
from domain.explanation import Aimed
from domain.parts import AlertPart
from domain.sets import TrainingSet
from domain.slope import Gain
from domain.values import value_of
from domain.verdict import Verdict

LAST_IN_SHORT = 4
"""So many of the last workouts are shown where it is said in short."""

SURE_FROM = 0.85
"""Below this chance a stall is called a first sign. The house's own choice."""

Evidence = dict[str, Any]


def stall_words(part: AlertPart) -> str:
    """Say a stall by whatever found it, with its evidence: in short, or all with the reasons."""
    evidence = part.evidence
    if part.exercise is None:
        lines = several_lines(part)
    elif "without_beat" in evidence:
        lines = rule_lines(part)
    else:
        lines = engine_lines(part)
    if evidence.get("later") and not part.full:
        lines.append(later_words(evidence))
    if evidence.get("answers"):
        lines.append(answers_words(evidence["answers"]))
    if evidence.get("overtaken"):
        lines.append("It hurts since, so that comes first: this matter is closed, and no load is offered.")
    if not part.full:
        lines.append(f"In full: «why has {escape(part.client)} stalled?»")
    return "\n".join(lines)


def rule_lines(part: AlertPart) -> list[str]:
    """Say a stall by the plain rule: the mark to beat, and what came since."""
    evidence, exposures = part.evidence, part.evidence.get("exposures", [])
    times = evidence.get("without_beat")
    stalled = f"{bold(part.client)} has stalled on {bold(str(part.exercise))}"
    lines = [f"{stalled}: {times} in a row without a beat."]
    if part.full:
        return [*lines, *full_lines(evidence)]
    if exposures:
        lines.append(f"To beat, from {day_words(exposures[0]['on'])}: {done_words(exposures[0])}.")
        lines.append(f"Since then: {', then '.join(done_words(each) for each in exposures[1:])}.")
    return lines


def engine_lines(part: AlertPart) -> list[str]:
    """Say a stall or a decline that was told from bad days."""
    evidence = part.evidence
    client, exercise = bold(part.client), bold(str(part.exercise))
    workouts, day = times_words(int(evidence["exposures_since"])), day_words(evidence["since"])
    may = is_early(evidence)
    if evidence.get("declining"):
        loses = "may be losing" if may else "is losing"
        first = f"{client} {loses} strength on {exercise}: down over {workouts} since {day}"
    else:
        stalled = "may have stalled" if may else "has stalled"
        first = f"{client} {stalled} on {exercise}: no gain in {workouts} since {day}"
    lines = [f"{first} ({sure_words(evidence['ended'])})."]
    if not part.full:
        last = ", ".join(done_words(each) for each in evidence["exposures"][-LAST_IN_SHORT:])
        return [*lines, f"{gains_words(evidence)} Last: {last}."]
    told_by = (
        f"Told from {times_words(int(evidence['counted']))} that can be held against each other. "
        f"A day varies by about {float(evidence['noise']):.1%} here; a single bad day is no stall."
    )
    return [*lines, gains_words(evidence), told_by, *full_lines(evidence)]


def several_lines(part: AlertPart) -> list[str]:
    """Say that a client slows in several exercises at once."""
    evidence = part.evidence
    if evidence.get("declining"):
        verb = "may be losing strength on" if is_early(evidence) else "is losing strength on"
    else:
        verb = "may have slowed down on" if is_early(evidence) else "has slowed down on"
    names = bold(listed(evidence["exercises"]))
    at_once = f"several exercises at once since {day_words(evidence['since'])}: {names}"
    lines = [
        f"{bold(part.client)} {verb} {at_once} ({sure_words(evidence['ended'])}).",
        f"{gains_words(evidence)} That speaks of rest, sleep, illness or food rather than of one exercise.",
    ]
    if evidence.get("was_told"):
        lines.append(f"It takes the place of what I told of {escape(listed(evidence['was_told']))} alone.")
    if part.full:
        for lift in evidence["lifts"]:
            last = ", ".join(done_words(each) for each in lift["exposures"])
            since = times_words(int(lift["exposures_since"]))
            lines.append(f"{escape(str(lift['exercise']))}, {since} since then. Last: {last}.")
    return lines


def full_lines(evidence: Evidence) -> list[str]:
    """Return a line for each exposure with the reason of its verdict, and one for what comes next."""
    later = evidence.get("later", [])
    lines = [evidence_lines(evidence.get("exposures", []), evidence.get("verdicts", []))]
    if later:
        lines += ["Done since I found it:", evidence_lines(later, evidence["later_verdicts"])]
    elif evidence.get("aimed") and not evidence.get("overtaken"):
        lines.append(aimed_words(value_of(Aimed, evidence["aimed"])))
    return lines


def later_words(evidence: Evidence) -> str:
    """Say what was done since a stall was found, and what of it was a beat."""
    judged = (value_of(Verdict, each) for each in evidence["later_verdicts"])
    done = [
        f"{done_words(each)} (a beat)" if verdict.result == "beat" else done_words(each)
        for each, verdict in zip(evidence["later"], judged, strict=True)
    ]
    return f"Done since I found it: {', '.join(done[-LAST_IN_SHORT:])}."


def evidence_lines(exposures: list[Evidence], verdicts: list[Any]) -> str:
    """Return one line for each exposure: its day, its sets, and the reason of its verdict, where it has one.

    `verdicts` are those on the last exposures.
    """
    unjudged = len(exposures) - len(verdicts)
    lines = []
    for place, each in enumerate(exposures):
        because = ""
        if place >= unjudged:
            judged = value_of(Verdict, verdicts[place - unjudged])
            because = f" ({verdict_because(judged.result, judged.set, judged.before, judged.reason)})"
        lines.append(f"{day_words(each['on'])}: {done_words(each)}{because}")
    return "\n".join(lines)


def gains_words(evidence: Evidence) -> str:
    """Say the gain each time before and since, with what it lies between."""
    before, since = evidence.get("before"), evidence.get("gain")
    said = []
    if before is not None:
        said.append(f"{percent_words(value_of(Gain, before).estimate)} each time until then")
    if since is not None:
        gain = value_of(Gain, since)
        said.append(f"{percent_words(gain.estimate)} each time since ({between_words(gain)})")
    text = ", ".join(said)
    return f"{text[:1].upper()}{text[1:]}." if text else ""


def between_words(gain: Gain) -> str:
    """Say between what a gain lies."""
    return f"between {percent_words(gain.low)} and {percent_words(gain.high)}"


def is_early(evidence: Evidence) -> bool:
    """Return whether what was found is a first sign rather than sure."""
    return float(evidence["ended"]) < SURE_FROM


def sure_words(chance: float) -> str:
    """Say how sure it is; never wholly."""
    sure = f"{min(99, max(1, round(100 * chance)))}% sure"
    return sure if chance >= SURE_FROM else f"an early sign, {sure}: worth a look, too soon for a change"


def times_words(workouts: int) -> str:
    """Say a number of workouts."""
    return "1 workout" if workouts == 1 else f"{workouts} workouts"


def done_words(exposure: Evidence) -> str:
    """Say the sets of an exposure."""
    return "; ".join(set_words(value_of(TrainingSet, one)) for one in exposure["sets"])


ASKED = {"trouble": "pain or joint trouble", "lately": "out of the ordinary lately"}
"""What a client is asked about a stall, as the coach reads it."""


def answers_words(answers: dict[str, str]) -> str:
    """Say what the client answered about a stall."""
    said = [f"{what}: «{italic(answers[slot])}»" for slot, what in ASKED.items() if slot in answers]
    return f"Asked, {'; '.join(said)}."
