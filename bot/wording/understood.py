"""What lies behind a message, in words: what a client's was taken for, and why the bot's says what it says.

For whoever wants to look closer: a touch on a message on the page. Each fact is a head and its words, without
markup.
"""

from itertools import chain, pairwise
from typing import NamedTuple

from bot.markup import plain
from bot.wording.behind_coach import behind_alert, behind_digest, behind_notice, behind_reach
from bot.wording.reader import day_words, listed, set_words, sets_words
from bot.wording.reading import Finding, findings, left_over
from bot.wording.reasons import verdict_because
from bot.wording.safety import place_words
from bot.wording.understood_coach import COACH_TAKEN_FOR, became, pieces_meant
from bot.wording.why import aimed_words, judged_words
from domain.explanation import Aimed, When
from domain.parts import (
    AlertPart,
    CameOf,
    Digest,
    Notice,
    Part,
    Plan,
    Safety,
    TargetPart,
    Urgent,
    VerdictPart,
)
from domain.plan_lines import PlanLine, TargetReason
from domain.programme import Range
from domain.reach import Reach
from domain.reading import Heard
from domain.sets import TrainingSet
from domain.target import Target
from domain.understood import TakenFor, Understood
from domain.verdict import Verdict
from persistence.understood import Ordered, Standing

NOT_NOTED = "What this was understood as is not noted."
NOTHING_BEHIND = "There is nothing reckoned in this message."

TAKEN_FOR: dict[TakenFor, str] = {
    "a report": "what was done, how it went, what is wanted: word by word",
    "an answer": "an answer to what the bot had asked",
    "an answer to the first questions": "an answer to one of the first questions",
    "an answer to the coach": "an answer to what the coach had written",
    "a question after reasons": "a question after the reasons of a verdict or a target",
    "a question": "a question that the bot can look up",
    "a setting": "a setting",
    "taken back again": "a wish to have back what was taken back",
    "a time for the reminder": "when to remind",
    "days asked": "a question after the days to come",
    "the end of the workout": "the end of the workout",
    "a change of turn": "which workout is next",
    "a request for the journal": "a request for the journal",
    "a request for a picture": "a request for a picture",
    "a request for a warm-up": "a request for a warm-up",
    "a request for plates": "a request for the plates to load",
    "a wish to leave": "a wish to leave",
    "an age": "the client's age",
    "a command": "a command of the menu",
    "nothing known": "nothing that the bot can act on",
}

ALL_TAKEN_FOR = dict[str, str](chain(TAKEN_FOR.items(), COACH_TAKEN_FOR.items()))
"""The words for all that a message can be taken for."""

BY_WORDS: frozenset[str] = frozenset({"a report", "nothing known"})
"""What is told by single words of the message; anything else is by the whole of it."""

_KINDS = {
    "record": "A set",
    "ask": "To be asked",
    "pain": "Pain",
    "urgent": "Urgent",
    "wants": "Wanted",
    "": "",
}
_STANDING: dict[Standing, str] = {
    "counts": "in the journal",
    "put right": "put right since",
    "taken back": "taken back since",
}


class Fact(NamedTuple):
    """A head, its words, and the words of a message that it came from, where that is known."""

    head: str
    words: str
    of: str = ""


class Stretch(NamedTuple):
    """A stretch of a message, and what its words became; nothing where they became nothing."""

    words: str
    became: tuple[str, ...] = ()


def stretches(text: str, understood: Understood) -> list[Stretch]:
    """Return a message in stretches, which together are all of it, each with what its words became."""
    words = understood.reading.words if understood.taken_for in BY_WORDS else ()
    words += tuple(Heard(each.start, each.end, became(each)) for each in understood.meant if each.end)
    edges = sorted({0, len(text), *(each.start for each in words), *(each.end for each in words)})
    return [
        Stretch(
            text[start:end],
            tuple(dict.fromkeys(each.became for each in words if each.start <= start and end <= each.end)),
        )
        for start, end in pairwise(edges)
    ]


def facts_understood(text: str, understood: Understood, orders: tuple[Ordered, ...] = ()) -> list[Fact]:
    """Return what a message was taken for, and where it is by single words, each of them.

    `orders` are those by which a coach's has reached clients.
    """
    facts = [Fact("Taken for", ALL_TAKEN_FOR[understood.taken_for])]
    facts += [Fact(*each) for each in pieces_meant(text, understood.meant, orders)]
    if understood.taken_for not in BY_WORDS or not text:
        return facts
    reading = understood.reading
    facts += [_fact(text, each) for each in findings(reading)]
    left = left_over(text, reading) if reading.words else ""
    if left:
        is_part = bool(reading.wants or reading.pain or reading.urgent)
        facts.append(Fact("Left over, or said around it" if is_part else "Left over", left))
    if reading.cut:
        facts.append(Fact("Too long", "only the beginning was read"))
    return facts


def fact_recorded(done: TrainingSet, standing: Standing) -> Fact:
    """Return the fact that a set came of a message, and whether it still stands."""
    day = f", {day_words(done.on)}" if done.on else ""
    return Fact("Recorded", f"{done.exercise}: {set_words(done)}{day} ({_STANDING[standing]})")


def facts_behind(part: Part) -> list[Fact]:
    """Return the reason and the numbers of one part of a message; none where nothing was reckoned for it."""
    match part:
        case VerdictPart():
            return _behind_verdict(part)
        case TargetPart():
            aim = TrainingSet(
                part.exercise,
                part.load,
                part.unit,
                part.load_kind,
                part.reps,
                part.seconds,
                part.lowering_only,
            )
            facts = _behind_aim(part.when, aim, part.reason, part.range, part.last, part.expected)
            return [Fact(f"Target, {part.exercise}", each.words) for each in facts]
        case Plan(lines=lines):
            return [fact for line in lines for fact in _behind_line(line)]
        case AlertPart():
            return [Fact(*each) for each in behind_alert(part)]
        case Digest():
            return [Fact(*each) for each in behind_digest(part)]
        case Reach():
            return [Fact(*each) for each in behind_reach(part)]
        case (Notice() as notice) | CameOf(notice=notice):
            return [Fact(*each) for each in behind_notice(notice)]
        case Safety(where=str(where), side=side, held=held):
            aside = f"; set aside: {listed(held)}" if held else ""
            return [Fact("Pain", f"{plain(place_words(where, side))}{aside}")]
        case Urgent():
            return [Fact("Urgent", "a warning sign was found in the message")]
        case _:
            return []


def _fact(text: str, finding: Finding) -> Fact:
    start, end = finding.told_in
    return Fact(_KINDS[finding.kind], finding.words, text[start:end])


def _behind_verdict(part: VerdictPart) -> list[Fact]:
    head = f"Verdict, {part.exercise}"
    facts = [Fact("Heard", sets_words(part.recorded))] if part.recorded else []
    if part.reason is None or part.held:  # where it hurts, nothing is said that would spur on
        return facts
    verdict = Verdict(
        part.result, part.exercise, part.set, part.before, part.reason, part.personal_best, part.in_order
    )
    facts.append(Fact(head, plain(judged_words(verdict, eased=part.eased))))
    if len(part.in_order) > 1:
        facts += [
            Fact(
                f"Set {place}",
                plain(
                    f"{set_words(each.now)} against {set_words(each.before)}: "
                    f"{verdict_because(each.result, each.now, each.before, each.reason)}"
                ),
            )
            for place, each in enumerate(part.in_order, start=1)
        ]
    return facts


def _behind_line(line: PlanLine) -> list[Fact]:
    if line.held_for is not None:
        return [Fact(line.exercise, f"on hold: {plain(place_words(line.held_for, None))}")]
    if line.target is None:
        return []
    facts = _behind_aim("this time", line.target, line.reason, line.range, line.last or line.to_beat)
    return [Fact(line.exercise, each.words) for each in facts]


def _behind_aim(
    when: When,
    aim: TrainingSet,
    reason: TargetReason | None,
    span: Range | None,
    last: TrainingSet | None,
    expected: int | None = None,
) -> list[Fact]:
    if reason is None or span is None:
        return []
    target = Target(
        aim.exercise,
        aim.load,
        aim.unit,
        aim.load_kind,
        aim.reps,
        aim.seconds,
        aim.lowering_only,
        reason,
        expected,
    )
    facts = [Fact("", plain(aimed_words(Aimed(when, target, span, last))))]
    if last is not None:
        facts.append(
            Fact("", f"Reckoned from {set_words(last)}, in a range of {span.low}–{span.high} {span.of}.")
        )
    return facts
