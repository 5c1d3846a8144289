"""Words for what a client asks about the own journal, the settings and the words of the trade."""

from bot.markup import bold, escape
from bot.wording.equipment import one_words
from bot.wording.notice_forms import Facts
from bot.wording.reader import NO_BREAK, Reader, day_words, listed, percent_words, set_words, zone_words
from domain.equipment import Equipment
from domain.sets import TrainingSet
from domain.values import value_of


def term_words(facts: Facts, _reader: Reader) -> str:
    """Say what a word means."""
    name = str(facts["term"])
    return f"{bold(name[:1].upper() + name[1:])}: {escape(str(facts['says']))}"


def settings_words(facts: Facts, _reader: Reader) -> str:
    """Say all settings, with how each is changed."""
    programme = f", on {bold(str(facts['programme']))}" if facts.get("programme") else ""
    at = f"at {facts['at']}" if facts.get("at") else "none"
    mass = f"{facts['mass']}{NO_BREAK}{facts['unit']}" if facts.get("mass") else "not known"
    lacking = f"\nWithout: {escape(listed(facts['lacking']))}" if facts.get("lacking") else ""
    return (
        f"Coach: {escape(str(facts['coach']))}{programme}\n"
        f"Unit: {facts['unit']}\n"
        f"Zone: {escape(zone_words(str(facts['zone'])))}, where it is {facts['local']}\n"
        f"Reminders: {at}\n"
        f"Body weight: {mass}{lacking}\n"
        "To change one, say so: «I use pounds», «I'm in Lisbon», «remind me at 7», «I weigh 72 kg», «I "
        "have no "
        "barbell»."
    )


def equipment_known_words(facts: Facts, _reader: Reader) -> str:
    """Say what the client has to train with, as far as it is known."""
    known = Equipment.model_validate(facts["equipment"])
    things = [words for of in Equipment.model_fields if (words := one_words(known, of))]
    lacking = f" You have no {escape(listed(known.lacking, 'or'))}." if known.lacking else ""
    return (
        f"I reckon with {'; '.join(things)}.{lacking} All else I take to be there. To change it, say what "
        f"you "
        "have or lack: «my smallest plate is 2.5», «I have no leg press»."
    )


def last_workout_words(facts: Facts, _reader: Reader) -> str:
    """Say what was done in the last workout."""
    named = f"{bold(str(facts['workout']))}, " if facts.get("workout") else ""
    lines = [
        f"{escape(row['exercise'])}: "
        + ", ".join(set_words(value_of(TrainingSet, each)) for each in row.get("sets", [row.get("set")]))
        for row in facts["rows"]
    ]
    return "\n".join([f"Last time: {named}{day_words(str(facts['on']))}", *lines])


def best_words(facts: Facts, _reader: Reader) -> str:
    """Say the best sets ever."""
    lines = []
    for row in facts["rows"]:
        best = value_of(TrainingSet, row["set"])
        on = f", {day_words(best.on)}" if best.on else ""
        lines.append(f"{escape(row['exercise'])}: {set_words(best)}{on}")
    return "\n".join([bold("Best ever"), *lines])


def strength_words(facts: Facts, _reader: Reader) -> str:
    """Say whether strength has risen, how sure that is, and that it promises nothing."""
    found = facts["found"]
    if found is None:
        return (
            "It is too early to tell: an exercise has to come round a few times, four at least, before a "
            "gain can "
            "be told from chance. Until then, see whether you beat your last time."
        )
    gain, low, high = (percent_words(float(facts[key])) for key in ("gain", "low", "high"))
    figures = f"about {gain} a round over {facts['rounds']} rounds (between {low} and {high})"
    if found == "risen":
        said = f"Yes, over all your exercises together strength has risen: {figures}."
    elif found == "fallen":
        coach = escape(str(facts["coach"]))
        said = f"Not of late: over all your exercises together it is {figures}. Ask {coach} about it."
    else:
        said = f"That cannot clearly be told yet: {figures}, which can be chance."
    return f"{said} That is reckoned from your sets, and promises nothing for what comes."


def which_stop_words(facts: Facts, _reader: Reader) -> str:
    """Ask what is to stop: a workout under way, the reminders, or all of it."""
    workout = f"{escape(str(facts['workout']))} for today, " if facts["workout"] else ""
    return f"What shall I end: {workout}the reminders, or all of it?"
