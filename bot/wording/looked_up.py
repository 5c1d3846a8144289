"""Words for what a client wants looked up: cues, whether so much was ever done, how often, what on a day."""

from decimal import Decimal

from bot.markup import bold, escape
from bot.wording.notice_forms import Facts, Words
from bot.wording.reader import (
    NO_BREAK,
    Reader,
    day_words,
    listed,
    number,
    quoted,
    reps_words,
    set_words,
    sets_words,
)
from domain.sets import TrainingSet
from domain.topics import Topic
from domain.values import value_of


def how_to_words(facts: Facts, _reader: Reader) -> str:
    """Say how to write here."""
    return escape(str(facts["says"]))


def cues_words(facts: Facts, _reader: Reader) -> str:
    """Say how exercises are to be done, in the coach's words."""
    rows = [(bold(str(row["exercise"])), escape("; ".join(row.get("cues", [])))) for row in facts["rows"]]
    return "\n".join(f"{exercise}: {cues}" for exercise, cues in rows)


def no_cues_words(facts: Facts, _reader: Reader) -> str:
    """Say that the sheet has no cue, and that the coach is asked."""
    names = escape(listed(facts["exercises"], "or"))
    return f"The sheet has no cue for {names}. I have asked {escape(str(facts['coach']))}."


def coach_said_words(facts: Facts, _reader: Reader) -> str:
    """Say what the coach has written, or that it was nothing on that."""
    coach, about = escape(str(facts["coach"])), facts.get("about")
    if not facts["rows"]:
        return f"{coach} has written nothing {f'on {quoted(str(about))}' if about else 'to you'} here so far."
    rows = [f"{day_words(str(row['on']))}: {quoted(str(row.get('text', '')))}" for row in facts["rows"]]
    return "\n".join([f"{coach} wrote:", *rows])


def ever_words(facts: Facts, _reader: Reader) -> str:
    """Say yes, and when first, or no, and what comes nearest."""
    first, best = facts.get("first"), facts.get("best")
    on = f" on {escape(listed(facts['exercises'], 'or'))}" if facts.get("exercises") else ""
    asked = f"{'more than ' if facts.get('more') else ''}{_asked_words(facts)}{on}"
    if first is None:
        nearest = f" The most so far: {_with_day(best)}." if best is not None else ""
        return f"No, not {asked}, as far as your journal goes.{nearest}"
    times = int(facts["times"])
    again = "" if times == 1 else f"; {times} sets in all, last {_day_of(facts['latest'])}"
    return f"{'' if facts.get('when') else 'Yes. '}First {_with_day(first)}{again}."


def _asked_words(facts: Facts) -> str:
    load = f"{number(Decimal(facts['load']))}{NO_BREAK}{facts['unit']}" if facts.get("load") else ""
    if facts.get("seconds"):
        amount = f"{facts['seconds']}{NO_BREAK}s"
        return f"{load} for {amount}" if load else amount
    if facts.get("reps") is None:
        return load
    return f"{load} × {facts['reps']}" if load else reps_words(int(facts["reps"]))


def _with_day(facts: object) -> str:
    done = value_of(TrainingSet, facts)
    return f"{escape(done.exercise)} {set_words(done)}" + (f", {day_words(done.on)}" if done.on else "")


def _day_of(facts: object) -> str:
    done = value_of(TrainingSet, facts)
    return day_words(done.on) if done.on else "since"


def count_words(facts: Facts, _reader: Reader) -> str:
    """Say in how many workouts something was done, and with how many sets."""
    count, sets = int(facts["count"]), int(facts["sets"])
    of = f" with {escape(listed(facts['exercises'], 'or'))}" if facts.get("exercises") else ""
    until = facts.get("until")
    span = f" from {day_words(str(facts['since']))} to {day_words(str(until))}" if until else ""
    if not count:
        return f"None{of}{span}." if span else f"No workout{of} stands in your journal yet."
    workouts = f"{'1 workout' if count == 1 else f'{count} workouts'}{of}"
    many = "1 set" if sets == 1 else f"{sets} sets"
    if until:
        return f"{workouts}{span}, {many}."
    since = f" since {day_words(str(facts['since']))}"
    return f"{workouts}{since}, {facts['lately']} of them in the last four weeks, with {many} in all."


def missed_words(facts: Facts, _reader: Reader) -> str:
    """Say how many workouts were missed, and the latest of them."""
    count = int(facts["count"])
    if not count:
        return "None missed."
    rows = [f"{escape(row['workout'])}, {day_words(str(row['on']))}" for row in facts["rows"]]
    lead = "the latest " if count > len(rows) else ""
    return f"{'1 workout' if count == 1 else f'{count} workouts'} missed: {lead}{'; '.join(rows)}."


def days_told_words(facts: Facts, _reader: Reader) -> str:
    """Say what was done on a day, or in some days."""
    first, last, workouts = str(facts["first"]), str(facts["last"]), facts["workouts"]
    if not workouts:
        when = day_words(first) if first == last else f"{day_words(first)} to {day_words(last)}"
        return f"Nothing stands in your journal for {when}."
    told = [_workout_words(each) for each in workouts]
    left = int(facts.get("left") or 0)
    more = [f"And {left} before that; ask for a shorter time to see them."] if left else []
    return "\n\n".join([*told, *more])


def _workout_words(workout: Facts) -> str:
    name = f"{bold(str(workout['workout']))}, " if workout.get("workout") else ""
    lines = [
        f"{escape(row['exercise'])}: {sets_words(tuple(value_of(TrainingSet, each) for each in row['sets']))}"
        for row in workout["rows"]
    ]
    return "\n".join([f"{name}{day_words(str(workout['on']))}", *lines])


def counts_words(facts: Facts, _reader: Reader) -> str:
    """Say as which workout, of which day, the last sets stand, and what is next."""
    on, name = day_words(str(facts["on"])), facts.get("workout")
    stands = f"is {bold(str(name))} of {on}" if name else f"stands on {on}, beside your workouts"
    other = " If it was done on another day, say so: «that was on Monday»." if facts.get("is_other") else ""
    coming = facts.get("coming")
    ahead = f" Next: {escape(str(coming))}, {day_words(str(facts['coming_on']))}." if coming else ""
    return f"What you sent last {stands}.{ahead}{other}"


def beaten_words(facts: Facts, _reader: Reader) -> str:
    """Say what was beaten in the last workout, what not, and what was done for the first time."""
    name = f"{bold(str(facts['workout']))}, " if facts.get("workout") else ""
    found = (
        ("beaten", facts["beaten"]),
        ("not this time", facts["not_beaten"]),
        ("first time", facts["first"]),
    )
    said = [f"{how} {escape(listed(names))}" for how, names in found if names]
    return f"{name}{day_words(str(facts['on']))}: {'; '.join(said) or 'nothing there to compare'}."


def done_last_words(facts: Facts, _reader: Reader) -> str:
    """Say when an exercise was done last, and what."""
    days = int(facts["days"])
    ago = {0: "today", 1: "yesterday"}.get(days, f"{days} days ago")
    sets = sets_words(tuple(value_of(TrainingSet, each) for each in facts["sets"]))
    return f"{bold(str(facts['exercise']))}: {sets}, {day_words(str(facts['on']))}, {ago}."


LOOKED_UP_WORDS: dict[Topic, Words] = {
    "coach said": coach_said_words,
    "workouts counted": count_words,
    "missed counted": missed_words,
    "days told": days_told_words,
    "beaten": beaten_words,
    "counts as": counts_words,
    "done last": done_last_words,
    "ever": ever_words,
    "cues": cues_words,
    "no cues": no_cues_words,
    "how to": how_to_words,
}
