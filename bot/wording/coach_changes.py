"""Words for what a coach changes for one client, as the coach reads it and as the client does."""

from typing import Any

from bot.markup import bold, escape
from bot.wording.notice_forms import Facts
from bot.wording.reader import Reader, day_words, listed, set_words
from bot.wording.safety import place_words
from bot.wording.why import aimed_words
from domain.explanation import Aimed
from domain.parts import Plan
from domain.plan_lines import PlanChange
from domain.reach import Reach
from domain.sets import TrainingSet
from domain.values import value_of

RESULTS = {"not comparable": "not comparable", "first": "first time"}


def changed_words(facts: Facts, _reader: Reader) -> str:
    """Say back to the coach what is changed for a client."""
    client, exercise = bold(str(facts["client"])), bold(str(facts.get("exercise") or ""))
    instead = bold(str(facts.get("instead") or ""))
    in_next = f" {escape(str(facts['client']))} sees it in the next plan."
    match facts["what"]:
        case "swap":
            return f"{client} does {instead} in place of {exercise} until you say otherwise.{in_next}"
        case "leave out":
            return (
                f"No {exercise} for {client} until you say «put {escape(str(facts['client']))} back on "
                f"{escape(str(facts.get('exercise')))}».{in_next}"
            )
        case "back":
            return f"{client} does {exercise} again.{in_next}"
        case "rest more":
            on = f" on {day_words(str(facts['next']))}" if facts.get("next") else " put off"
            return f"{client} rests {days_words(int(facts['days']))} more; the next workout is{on}."
        case "reminder":
            return f"{client} is reminded at {escape(str(facts.get('instead')))}, local time, from now on."
        case _:
            return f"Changed for {client}."


def days_words(days: int) -> str:
    """Say a number of days."""
    return "one day" if days == 1 else f"{days} days"


def undone_words(facts: Facts, _reader: Reader) -> str:
    """Say that changes are undone."""
    return f"Undone for {bold(str(facts['client']))}: {listed([undone(each) for each in facts['changes']])}."


def undone(change: dict[str, Any]) -> str:
    """Say one change that is undone."""
    exercise = escape(str(change.get("exercise") or ""))
    match change["what"]:
        case "swap":
            now = escape(str(change["before"])) if change.get("before") else exercise
            return f"{now} again, not {escape(str(change['instead']))}"
        case "leave out":
            return f"{exercise} is back"
        case "back":
            return f"{exercise} is as before"
        case "rest more":
            return "no rest more than the sheet has"
        case _:
            return f"reminded at {escape(str(change.get('before')))}"


def which_exercise_words(facts: Facts, _reader: Reader) -> str:
    """Ask which exercise is meant; where none is found, say which there are."""
    client, said = bold(str(facts["client"])), escape(str(facts["said"]))
    if facts.get("found"):
        return f"Which exercise do you mean by «{said}» for {client}?"
    if facts.get("slot") == "instead":
        return f"I know no exercise called «{said}», so nothing is changed for {client}."
    known = escape(listed([str(each) for each in facts["known"]]))
    sheet = f" The sheet has: {known}." if known else " There is no programme yet."
    return f"I find no «{said}» in what {client} does, so nothing is changed.{sheet}"


def sets_of_client_words(facts: Facts, _reader: Reader) -> str:
    """Say the last times of one exercise, each with its verdict, and what comes next."""
    client, exercise = bold(str(facts["client"])), bold(str(facts["exercise"]))
    if not facts["rows"]:
        return f"{client} has done no {exercise} yet."
    lines = [f"{client}, {exercise}", *(time_words(row) for row in facts["rows"])]
    if facts.get("held"):
        lines.append(f"Set aside: {place_words(str(facts['held']), None)}.")
    elif facts.get("aimed"):
        lines.append(aimed_words(value_of(Aimed, facts["aimed"])))
    return "\n".join(lines)


def time_words(row: dict[str, Any], *, day: bool = True) -> str:
    """Say one time of an exercise: its day, its best set, how many sets, and the verdict."""
    sets = f" (best of {row['sets']} sets)" if int(row["sets"]) > 1 else ""
    result = RESULTS.get(str(row["result"]), str(row["result"]))
    on = f"{day_words(str(row['on']))}: " if day else ""
    return f"{on}{set_words(value_of(TrainingSet, row['set']))}{sets}, {result}"


def plan_change_words(part: Plan) -> list[str]:
    """Say what the coach has changed since the last plan, where that was anything."""
    if not part.changes:
        return []
    return [f"Changed by {escape(part.by)}: {'; '.join(change_words(each) for each in part.changes)}."]


def change_words(change: PlanChange) -> str:
    """Say one change to the client."""
    exercise = escape(change.exercise)
    match change.what:
        case "swap":
            return f"{escape(change.instead)} in place of {exercise}"
        case "leave out":
            return f"no {exercise} for now"
        case "back":
            return f"{exercise} again"


NO_REASON = "it could not be sent"
WHY = {"blocked": "the chat is blocked", "chat gone": "the chat is gone"}


def reach_words(part: Reach) -> str:
    """Say whom words to several have reached so far, and whom they cannot reach."""
    waiting = part.total - len(part.reached) - len(part.unreached)
    few = part.total <= FEW_NAMED
    if not part.reached and not part.unreached:
        return f"On its way to {part.total}."
    reached = listed(list(part.reached)) if few else f"{len(part.reached)} of {part.total}"
    lines = [f"Reached: {escape(reached)}." if part.reached else "It has reached nobody so far."]
    if part.unreached:
        told = [f"{each.client} ({WHY.get(each.why, NO_REASON)})" for each in part.unreached]
        lines.append(f"Not reached: {escape(listed(told))}.")
    if waiting:
        lines.append(f"Still on its way to {waiting}.")
    return "\n".join(lines)


FEW_NAMED = 8
"""Up to so many clients are named where words have reached all of them; of more, how many they are."""


def sending_words(facts: Facts) -> str:
    """Ask whether words are to go to many."""
    names = [str(each) for each in facts["names"]]
    text = escape(str(facts["text"]))
    return f"This goes to {len(names)}: {escape(listed(names))}.\n\n«{text}»\n\nShall I send it?"


def rest_more_words(facts: Facts, _reader: Reader) -> str:
    """Say to the client that the coach wants more rest before the next workout."""
    days = int(facts.get("days") or 1)
    more = "one rest day" if days == 1 else f"{days} rest days"
    on = f": it comes on {day_words(str(facts['on']))}." if facts.get("on") else "."
    return f"{escape(str(facts['coach']))} gives you {more} more before the next workout{on}"


def rest_as_before_words(facts: Facts, _reader: Reader) -> str:
    """Say to the client that the extra rest is taken back."""
    on = f": the next workout comes on {day_words(str(facts['on']))}." if facts.get("on") else "."
    return f"{escape(str(facts['coach']))} takes the extra rest back{on}"
