"""A client's "why?": the reasons of the verdict and the target that are asked about."""

import re
from collections.abc import Collection, Iterable
from decimal import Decimal

from domain.client.draft import Draft
from domain.client.explaining import (
    Spot,
    explain,
    last_told,
    latest_of_each,
    planned_now,
    spot_named,
    spots_of,
)
from domain.client.lines import lines_of
from domain.client.understanding import came_of
from domain.explanation import Explanation
from domain.expressions import Expression
from domain.parts import AlertPart, Notice
from domain.reading import WhyAsked, exercises_named, why_asked
from domain.values import facts_of

_OF_A_STALL = Expression(r"\b(?:stall|slow|declin|los(?:e|ing|t)\b|gain|progress|stuck|alert)", re.IGNORECASE)

MOST_EXPLAINED = 12
"""How many exercises are explained at once. The house's own choice."""


def why_of(draft: Draft, text: str) -> WhyAsked | None:
    """Return what a message asks the reason of; None where it ends in no such question."""
    return why_asked(text, exercises_known(draft), draft.client.own_names)


def exercises_known(draft: Draft) -> tuple[str, ...]:
    """Return the exercises of the client's programme, as they are done at present, and those recorded."""
    stored = draft.client.programme
    planned = [
        line.exercise
        for workout in (stored.programme.workouts if stored else ())
        for line in lines_of(draft.state, workout.name)
    ]
    return tuple(dict.fromkeys((*planned, *(entry.set.exercise for entry in draft.state.entries))))


def answer_why(draft: Draft, asked: WhyAsked) -> bool:
    """Say the reasons asked for; return False where it is about nothing that the bot has said."""
    if is_for_coach(draft, asked):
        return False
    if draft.memory.barred:
        draft.notice("barred", coach=draft.client.coach.name)
        return True
    found = found_for(draft, asked)
    for explanation in found[:MOST_EXPLAINED]:
        draft.notice("why", explanation=facts_of(explanation))
    return bool(found)


def is_for_coach(draft: Draft, asked: WhyAsked) -> bool:
    """Return whether it is rather asked of the coach, whose words came since the last set was told of."""
    told_at = draft.memory.told_at
    last = max((entry.at for entry in draft.state.entries), default=None)
    named = asked.names or asked.numbers or pointed_at(draft)
    return not named and told_at is not None and (last is None or told_at > last)


def explain_to_coach(draft: Draft, text: str) -> None:
    """Tell the coach the reasons of the exercises named in `text`, or of what was told last.

    Where it asks of a stall that is open, or of nothing in particular while one is, all of its evidence; or
    of one whose place pain has taken.
    """
    names = exercises_named(text, exercises_known(draft), draft.client.own_names)
    draft.note_meant("exercise", names)
    stalls = [alert for alert in draft.state.alerts if alert.reason == "stall"]
    is_of_stall = bool(_OF_A_STALL.search(text))
    if is_of_stall or not text.strip():
        asked = [alert for alert in stalls if not names or {*names} & {*alert.exercises}]
        if asked:
            draft.bring_to_coach(*asked, again=all(map(draft.was_brought_again, asked)), full=True)
            return
        if is_of_stall and (overtaken := stalls_overtaken(draft, names)):
            draft.tell_coach(*overtaken, weight="answer")
            return
    spots = [spot_named(draft, name) for name in names] or last_told(draft)
    found = explained(draft, spots)[:MOST_EXPLAINED]
    client = Notice(topic="reasons of client", facts={"client": draft.client.name, "known": bool(found)})
    reasons = [Notice(topic="why", facts={"explanation": facts_of(each)}) for each in found]
    draft.tell_coach(client, *reasons, weight="answer")


def stalls_overtaken(draft: Draft, names: Collection[str]) -> list[AlertPart]:
    """Return the stalls whose place pain has taken, with all of their evidence: those of `names`, if any."""
    found = [
        AlertPart(
            reason="stall",
            client=draft.client.name,
            exercise=each["exercise"],
            evidence={**each["evidence"], "overtaken": True},
            full=True,
        )
        for alert in draft.state.alerts
        if alert.reason == "pain"
        for each in alert.evidence.get("stalls", ())
    ]
    return [each for each in found if not names or {*names} & {*exercises_of(each)}]


def exercises_of(stall: AlertPart) -> list[str]:
    """Return the exercises that a stall is about."""
    return [stall.exercise] if stall.exercise else [str(each) for each in stall.evidence["exercises"]]


def found_for(draft: Draft, asked: WhyAsked) -> tuple[Explanation, ...]:
    """Return what the question is about.

    That is what the message answered has told of, the exercises named, or else what was told last. A number
    must be one that was told; where it is not in what was told last, it is looked for in all the rest.
    """
    pointed = pointed_at(draft)
    if asked.names:
        told = [spot for spot in pointed if spot.exercise in asked.names]
        if not asked.has_matter and not told:
            return ()
        return explained(draft, told or [spot_named(draft, name) for name in asked.names])
    if pointed:
        return speaking_of(explained(draft, pointed), asked.numbers)
    for spots in (last_told(draft), planned_now(draft), latest_of_each(draft.state)):
        found = speaking_of(explained(draft, spots), asked.numbers)
        if found or not asked.numbers:
            return found
    return ()


def pointed_at(draft: Draft) -> tuple[Spot, ...]:
    """Return what the message that is answered has told of; the plan where it came of nothing said."""
    reply = draft.reply
    if reply is None:
        return ()
    if reply.message is None:
        return planned_now(draft)
    return spots_of(draft.state, came_of(draft.state, reply.message, reply.places))


def explained(draft: Draft, spots: Iterable[Spot]) -> tuple[Explanation, ...]:
    """Return the explanations of those spots that have one."""
    return tuple(each for each in (explain(draft, spot) for spot in spots) if each is not None)


def speaking_of(found: tuple[Explanation, ...], numbers: tuple[Decimal, ...]) -> tuple[Explanation, ...]:
    """Return those explanations that speak of all the `numbers`."""
    return tuple(each for each in found if all(each.speaks_of(number) for number in numbers))
