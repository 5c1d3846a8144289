"""Words for the questions that the bot asks."""

from typing import Any, assert_never

from bot.markup import bold
from bot.wording.archive import leaving_words
from bot.wording.coach_changes import sending_words
from bot.wording.coach_programmes import which_programme_words
from bot.wording.coaching import handover_words
from bot.wording.joining import joining_question_words
from bot.wording.programme import programme_words
from bot.wording.programme_changes import assigning_words
from bot.wording.reader import day_words, listed, quoted, set_words
from domain.parts import Question
from domain.sets import TrainingSet
from domain.values import value_of


def question_words(part: Question) -> str:
    """Ask for one thing."""
    facts = part.facts
    match part.slot:
        case "exercise":
            return f"Which exercise was that{said(facts)}?"
        case "load":
            return f"What load was that{of(facts)}?{none_before(facts) or ' I do not want to guess it.'}"
        case "reps":
            return f"How many reps was that{of(facts)}?{none_before(facts)}"
        case "seconds":
            return f"How many seconds was that{of(facts)}?{none_before(facts)}"
        case "unit":
            return f"Was that kg or lb{said(facts)}?"
        case "date":
            return f"On which day was that{said(facts)}? A date or a weekday will do."
        case "day":
            return (
                "Until which day?"
                if facts.get("want") == "pause"
                else "To which day? A weekday or a date will do."
            )
        case "confirm":
            return confirm_words(facts)
        case "missed":
            return (
                f"I heard nothing of {bold(str(facts.get('workout')))} on "
                f"{day_words(str(facts.get('on')))}. What became of it?"
            )
        case "trouble":
            return "Tap one, or tell me in your own words."
        case "lately":
            return (
                "One more thing: was anything out of the ordinary lately, be it sleep, illness, food, or how "
                "hard training and life were? Tap one, or tell me in your own words."
            )
        case "body mass":
            return body_mass_words(facts)
        case "words":
            to = facts.get("client") or listed([str(each) for each in facts.get("names", [])])
            return f"What shall I tell {bold(str(to))}? I pass on what you type next."
        case "joining":
            return joining_question_words(facts)
        case "leaving":
            return leaving_words(facts)
        case "sheet":
            return sheet_words(facts)
        case "send":
            return sending_words(facts)
        case "programme":
            return assigning_words(facts)
        case "journal":
            return f"Whose journal is {quoted(str(facts.get('name')))}? Tap or type the client's name."
        case "which programme":
            return which_programme_words(facts)
        case "who":
            return "Which client do you mean?"
        case "handover":
            return handover_words(facts)
        case "role":
            return role_words(facts)
        case _:
            assert_never(part.slot)


def body_mass_words(facts: dict[str, Any]) -> str:
    """Ask for body mass, and say what for; where a number was told without its unit, ask for that."""
    if facts.get("told"):
        return f"To be sure of the unit: is {facts['told']} in kg or in lb?"
    named = bold(listed([str(name) for name in facts.get("exercises", [])]))
    return (
        f"With {named} the body is part of the load, so body weight helps me to compare. What do you weigh "
        "at the moment, roughly? I ask every few weeks at most, and it works without."
    )


def said(facts: dict[str, Any]) -> str:
    """Return what the question is about, in the person's own words."""
    text = str(facts.get("text", "")).strip()
    return f", in {quoted(text)}" if text else ""


def none_before(facts: dict[str, Any]) -> str:
    """Say that there is nothing that "the same as last time" could be."""
    return " I have none from before to go by." if facts.get("none_before") else ""


def of(facts: dict[str, Any]) -> str:
    """Return the exercise that the question is about, where that is known, else the words."""
    names = [each.get("exercise") for each in facts.get("open", []) if each.get("exercise")]
    return f" on {bold(str(names[0]))}" if names else said(facts)


def confirm_words(facts: dict[str, Any]) -> str:
    """Ask whether a set is meant as it would be recorded; of several readings, which."""
    candidates = [
        value_of(TrainingSet, one) for each in facts.get("open", []) for one in each.get("candidates") or []
    ]
    if not candidates:
        return f"How is that meant{said(facts)}? Send it once more, say as «80 kg x 8»."
    if len(candidates) == 1:
        only = candidates[0]
        return f"Do I have that right: {bold(only.exercise)}, {set_words(only)}?"
    named = " or ".join(set_words(each) for each in candidates)
    return f"Which is it on {bold(candidates[0].exercise)}: {named}?"


def sheet_words(facts: dict[str, Any]) -> str:
    """Say back a programme as understood, and ask whether to store it."""
    version = int(facts.get("version", 1))
    again = f"\nThis will be version {version}; who is under way keeps the old one." if version > 1 else ""
    return f"{programme_words(facts)}{again}\nIs that right?"


def role_words(facts: dict[str, Any]) -> str:
    """Ask a coach who trains, too, in which of the two roles something was said."""
    return f"{quoted(str(facts.get('text', '')))}: is that of your own training, or said as a coach?"
