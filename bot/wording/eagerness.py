"""Words for more than was asked: kindly to the client, in a few words to the coach.

That strength comes back on the rest days, and that more sets ask for more rest: common practice, no source.
"""

from typing import Any, assert_never

from bot.markup import bold, escape
from bot.wording.notice_forms import Facts
from bot.wording.reader import Reader, day_words, listed, number
from domain.parts import Eager

REGIONS = {"upper": "upper body", "lower": "lower body", "trunk": "trunk"}


LEADS: dict[str, str] = {
    "great jump": "up at once",
    "extra sets": "more sets",
    "too soon": "too soon",
    "same again": "on a rest day",
    "not on the sheet": "beside the sheet",
}
"""What the coach reads in front of the matters of each rule, in the order in which they are said."""


def more_than_asked(facts: Facts, _reader: Reader) -> str:
    """Say what was more than asked, a line for each matter with its reason; at first also who sees it."""
    matters = [Eager.model_validate(each) for each in facts["matters"]]
    beside = [each for each in matters if each.rule == "not on the sheet"]
    lines = [words for each in matters if (words := matter_words(each, facts))]
    if beside:
        lines.append(beside_words(beside))
    if facts.get("is_first"):
        lines.append(f"{escape(str(facts['coach']))} sees such things in the week's overview.")
    return "\n".join(lines)


def matter_words(matter: Eager, around: Facts) -> str:
    """Say one matter to the client; nothing of those that are said together."""
    facts, exercise = matter.facts, bold(matter.exercise or "")
    match matter.rule:
        case "great jump":
            return (
                f"{exercise} went up by {percent_words(facts)} at once. Steps of up to a tenth are enough, "
                "and keep the next one within reach."
            )
        case "extra sets":
            return (
                f"{exercise}: {facts['done']} sets, and the sheet has {facts['prescribed']}. It counts on "
                "few, done hard, and on the rest after them."
            )
        case "too soon":
            return (
                f"{bold(matter.workout)} came {early_words(matter)}. Strength comes back, and a little more, "
                f"on the rest days.{counted_words(around)}"
            )
        case "same again":
            return (
                f"{exercise} loads the {REGIONS[facts['region']]} again, which was trained on "
                f"{day_words(facts['last'])} and has its rest until {day_words(facts['free_from'])}. "
                "Strength comes back, and a little more, on the rest days."
            )
        case "not on the sheet":
            return ""
        case _:
            assert_never(matter.rule)


def beside_words(matters: list[Eager]) -> str:
    """Say which exercises the sheet has not in that workout."""
    names = [bold(each.exercise or "") for each in matters]
    isnt = "is not" if len(names) == 1 else "are not"
    where = f"in {bold(matters[0].workout)}" if matters[0].workout else "on the sheet"
    it, costs = ("it", "it costs") if len(names) == 1 else ("them", "they cost")
    return f"{listed(names)} {isnt} {where}. I keep {it}, but {costs} rest as well: best agree on {it} first."


def counted_words(facts: Facts) -> str:
    """Say that a workout counts though it was early, and what comes next and when."""
    said = " It counts all the same, and the next one is counted from it." if facts.get("counted_on") else ""
    return said + (
        f" Next: {bold(str(facts['next']))}, {day_words(str(facts['on']))}." if facts.get("next") else ""
    )


def early_words(matter: Eager) -> str:
    """Say by how much a workout was early."""
    days = matter.facts["days_early"]
    if matter.facts["last"] == matter.on.isoformat():
        return "on top of another one on the same day"
    return f"{'a day' if days == 1 else f'{days} days'} before its rest was over"


def percent_words(facts: dict[str, Any]) -> str:
    """Say a share in whole percent."""
    return f"{number(round(float(facts['percent'])))}%"


def eager_words(matters: tuple[Eager, ...]) -> str:
    """Say to the coach where a client did more than was asked, one line for each way of doing so."""
    lines = []
    for rule, lead in LEADS.items():
        times: dict[str, int] = {}
        for each in matters:
            if each.rule == rule:
                words = in_short(each)
                times[words] = times.get(words, 0) + 1
        said = [f"{words} ({count} times)" if count > 1 else words for words, count in times.items()]
        if said:
            lines.append(f"    {lead}: {', '.join(said)}")
    return "\n".join(lines)


def in_short(matter: Eager) -> str:
    """Say one matter in a few words."""
    facts, exercise = matter.facts, escape(matter.exercise or "")
    match matter.rule:
        case "great jump":
            return f"{exercise} +{percent_words(facts)}"
        case "extra sets":
            return f"{exercise} {facts['done']}, not {facts['prescribed']}"
        case "too soon":
            days = facts["days_early"]
            if facts["last"] == matter.on.isoformat():
                return f"{escape(matter.workout)} on top of another one"
            return f"{escape(matter.workout)} by {days} {'day' if days == 1 else 'days'}"
        case "same again":
            return f"{exercise} ({REGIONS[facts['region']]})"
        case "not on the sheet":
            return exercise
        case _:
            assert_never(matter.rule)
