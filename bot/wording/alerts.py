"""Words for a coach's alerts and overview, and the labels of buttons."""

from itertools import groupby
from typing import Any, assert_never

from bot.markup import bold, escape, italic
from bot.wording.assessment import by_chance_words, risen_words
from bot.wording.old_journal import journal_label
from bot.wording.reader import day_words, listed, percent_words, sets_words
from bot.wording.safety import place_words
from bot.wording.stalls import stall_words
from bot.wording.why import explanation_words
from domain.actions import (
    Action,
    Answer,
    BringIn,
    ChangeTo,
    ForgetNote,
    InRole,
    Keep,
    Release,
    Remedy,
    Show,
    TakeBack,
    TakeBackAll,
    Taken,
    TakeOn,
    Treat,
    Words,
    Write,
)
from domain.explanation import Explanation
from domain.parts import AlertPart
from domain.roles import AS_CLIENT, AS_COACH
from domain.sets import TrainingSet
from domain.values import value_of

REMEDIES: dict[Remedy, str] = {
    "lighten": "Load down, build back",
    "swap": "Use the alternative",
    "rest more": "One rest day more",
    "next programme": "Next programme",
    "keep on": "Leave it for now",
    "lift hold": "Put it back",
    "keep held": "Keep it aside",
    "let train": "Let training go on",
    "seen": "Seen",
}


WRITING: dict[Taken, str] = {"write": "Write to the client"}


def label(action: Action) -> str:
    """Return the words on a button."""
    match action:
        case Answer(text=text) | Words(text=text):
            return text
        case InRole(role=role):
            return AS_CLIENT if role == "client" else AS_COACH
        case Write(name=name, of=of):
            return f"{of[:1].upper()}{of[1:]}: write to {name}" if of else f"Write to {name}"
        case Treat(remedy=remedy, workouts=workouts, of=of):
            words = f"Leave it for {workouts} workouts" if workouts else REMEDIES[remedy]
            return f"{of[:1].upper()}{of[1:]}: {words.lower()}" if of else words
        case Release():
            return "Let training begin"
        case Show(exercise=exercise):
            return "Larger picture" if exercise else "Picture of all exercises"
        case ChangeTo(label=said):
            return said
        case TakeBackAll():
            return "Undo for all"
        case TakeBack():
            return "Undo"
        case TakeOn(name=name, takes=takes):
            return f"Take {name} on" if takes else "Decline"
        case Keep(name=name):
            return f"Keep {name}"
        case ForgetNote(place=place):
            return f"Forget note {place}"
        case BringIn():
            return journal_label(action)
        case _:
            assert_never(action)


def alert_words(part: AlertPart) -> str:
    """Say a matter to the coach, with its evidence."""
    client, evidence = bold(part.client), part.evidence
    of = bold(part.exercise) if part.exercise else ""
    match part.reason:
        case "stall":
            return stall_words(part)
        case "review":
            return review_words(part)
        case "pain":
            return pain_words(part)
        case "urgent":
            return (
                f"{bold('Urgent')}: {client} wrote: {quoted(evidence)}\n"
                "The bot said to stop and to call the local emergency number, and asks for no training until "
                "you let it go on. Please get in touch now."
            )
        case "missed":
            return f"{client} has {missed_words(evidence)}; {bold(str(evidence.get('workout')))} is next."
        case "question":
            about = f" about {of}" if of else ""
            return (
                f"{client} asks{about}: {quoted(evidence)}{last_sets(evidence)}{told_words(evidence)}\n"
                f"Reply to this message to answer."
            )
        case "unreachable":
            return f"{client} can no longer be reached: the chat is blocked or gone."
        case _:
            assert_never(part.reason)


def missed_words(evidence: dict[str, Any]) -> str:
    """Say how often in a row there was no training: missed, put off, or both."""
    missed, put_off = int(evidence.get("in_a_row", 0)), int(evidence.get("put_off", 0))
    if not put_off:
        return f"missed {missed} workouts in a row"
    moved = f"put training off on {put_off} {'day' if put_off == 1 else 'days'}"
    return (
        f"{moved} and missed {missed} since the last workout" if missed else f"{moved} since the last workout"
    )


def quoted(evidence: dict[str, Any]) -> str:
    """Return the client's own words, cut where they are long."""
    said = str(evidence.get("said", ""))
    return f"«{italic(said if len(said) <= 600 else said[:600] + ' …')}»"


def last_sets(evidence: dict[str, Any]) -> str:
    """Return the client's last sets, for a question."""
    sets = [value_of(TrainingSet, each) for each in evidence.get("last", [])]
    if not sets:
        return ""
    said = []
    for on, of_day in groupby(sets, key=lambda each: each.on):
        rows = [
            f"{escape(exercise)} {sets_words(tuple(done))}"
            for exercise, done in groupby(of_day, key=lambda each: each.exercise)
        ]
        said.append((f"{day_words(on)}: " if on else "") + "; ".join(rows))
    return "\nLast sets:\n" + "\n".join(said)


def told_words(evidence: dict[str, Any]) -> str:
    """Return what the client was told of the exercise asked about, with the reasons."""
    if not evidence.get("explanation"):
        return ""
    return f"\n{explanation_words(value_of(Explanation, evidence['explanation']), is_coach=True)}"


def review_words(part: AlertPart) -> str:
    """Say what the look back over some rounds found."""
    evidence = part.evidence
    rounds, gain = evidence.get("rounds"), float(evidence.get("gain_per_round", 0))
    risen = bool(evidence.get("risen"))
    text = (
        f"Review of {bold(part.client)} after {rounds} rounds: {risen_words(risen=risen)}, "
        f"{percent_words(gain)} a round over all exercises together."
    )
    breaks = [f"{evidence['weeks_away']} weeks away"] if evidence.get("weeks_away") else []
    breaks += ["an illness"] if evidence.get("was_ill") else []
    if breaks:
        text += f" That is with {listed(breaks)} in between."
    if evidence.get("interval") and evidence.get("p_value") is not None:
        low, high = map(float, evidence["interval"])
        text += f"\n{by_chance_words((low, high), float(evidence['p_value']), risen=risen)}"
    if not risen and evidence.get("switch_to"):
        text += f"\nThe sheet then goes to {bold(str(evidence['switch_to']))}."
        if not evidence.get("can_switch"):
            text += " I do not have that sheet yet."
    return text


def pain_words(part: AlertPart) -> str:
    """Say where it hurts, what was set aside, and what else loads the place."""
    evidence = part.evidence
    pain = evidence.get("pain", {})
    place = place_words(str(pain.get("where", "other")), pain.get("side"))
    score = f", {pain['score']} out of 10" if pain.get("score") is not None else ""
    held = evidence.get("held", [])
    if evidence.get("fine"):
        text = f"{bold(part.client)} writes that it hurts no longer: {quoted(evidence)}"
    elif pain.get("where", "other") == "other":
        text = f"{bold(part.client)} has pain{score}: {quoted(evidence)}"
    else:
        text = f"{bold(part.client)} has pain: {place}{score}. {quoted(evidence)}"
    if held:
        text += f"\nSet aside until you put it back: {escape(listed(held))}."
    if evidence.get("stalled"):
        text += (
            "\nIt had stalled as well; that matter is closed in favour of this one. "
            f"What showed it: «why has {escape(part.client)} stalled?»"
        )
    if evidence.get("also"):
        text += f"\nLoads the same place: {escape(listed(evidence['also']))}."
    return text + (
        "\nA qualified professional (a doctor or a physiotherapist) should see it before it is loaded again."
    )
