"""Words for what changes where clients are put on another programme, as the coach reads it beforehand."""

from typing import Any

from bot.markup import bold, escape
from bot.wording.programme import prescription_words, schedule_words
from bot.wording.reader import listed
from domain.programme import Prescription
from domain.programme_changes import ProgrammeChanges
from domain.values import value_of

MOST_NAMED = 6
"""How many clients are named in one go. The house's own choice."""


def assigning_words(facts: dict[str, Any]) -> str:
    """Say what changes for whom, and ask."""
    programme, version = str(facts["programme"]), int(facts["version"])
    blocks = [f"{bold(programme)}, version {version}" if version > 1 else bold(programme)]
    blocks += ["\n".join(_group_lines(group, programme)) for group in facts["groups"]]
    if facts["without"]:
        blocks.append(f"{_names(facts['without'])}: on no programme so far.")
    count = sum(len(group["clients"]) for group in facts["groups"]) + len(facts["without"])
    whom = {1: "", 2: " for both"}.get(count, f" for all {count}")
    question = f"Shall I change it{whom}?"
    return "\n\n".join([*blocks, question])


def _group_lines(group: dict[str, Any], programme: str) -> list[str]:
    before = "" if group["before"] == programme else f"{escape(str(group['before']))}, "
    lines = [f"{bold(_named(group['clients']))}, now on {before}version {group['version']}:"]
    lines += changes_lines(value_of(ProgrammeChanges, group["changes"]))
    for each in group["histories"]:
        lines.append(_history_line(each, alone=len(group["histories"]) == 1))
    lines += [
        f"{escape(str(each['client']))} does {escape(str(each['instead']))} in place of "
        f"{escape(str(each['exercise']))} so far; that ends."
        for each in group["swaps"]
    ]
    return lines


def changes_lines(changes: ProgrammeChanges) -> list[str]:
    """Say what a programme has otherwise than the one before."""
    lines = []
    if changes.gone:
        lines.append(f"Gone: {escape(listed([exercise for _, exercise in changes.gone]))}")
    lines += [f"New in {escape(workout)}: {_line_words(line)}" for workout, line in changes.new]
    lines += [
        f"From {escape(each.before)} to {escape(each.after)}: {escape(each.exercise)}"
        for each in changes.moved
    ]
    for each in changes.changed:
        was, now = (prescription_words(line, named=False) for line in (each.before, each.after))
        lines.append(_line_words(each.after) + (f" (so far {was})" if was != now else ", with other rules"))
    if changes.schedule is not None:
        lines.append(schedule_words(changes.schedule))
    if changes.rules:
        lines.append("The review or the rule for stalls is another one.")
    return lines or ["The same exercises, ranges and days."]


def _line_words(line: Prescription) -> str:
    return f"{escape(line.exercise)}, {prescription_words(line, named=False)}"


def _history_line(each: dict[str, Any], *, alone: bool) -> str:
    goes_on, anew = each["history"]["goes_on"], each["history"]["anew"]
    if not goes_on:
        text = "no history to go on from."
    elif not anew:
        text = "the history of all exercises goes on."
    elif len(anew) > len(goes_on):
        text = f"the history goes on for {listed(goes_on)} alone."
    else:
        text = f"the history goes on for all but {listed(anew)}."
    return escape(text[:1].upper() + text[1:]) if alone else f"{_names(each['clients'])}: {escape(text)}"


def _named(names: list[str]) -> str:
    if len(names) <= MOST_NAMED + 1:
        return listed(names)
    return f"{', '.join(names[:MOST_NAMED])} and {len(names) - MOST_NAMED} more"


def _names(names: list[str]) -> str:
    return escape(_named(names))
