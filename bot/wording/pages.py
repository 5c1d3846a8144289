"""Words on the printed pages of a journal."""

from datetime import date

from bot.wording.reader import day_words, listed, set_words, sets_words
from domain.client.progress import Record
from domain.journal import ExerciseHold, WorkoutRecord
from domain.sets import TrainingSet
from domain.state import ClientState

TITLE = "Training journal"
NOTHING = "Nothing stands in this journal yet."
ASIDE = "Set aside at present"
BESIDE = "Beside the programme"
BESTS = "Best of each exercise"
NEW_BEST = "best so far"
CLIENT = "The client"
OTHER_SCRIPT = (
    "Some names are written in letters that these pages do not have; the table of the journal (CSV) has them "
    "as they were written."
)
NOT_COMPARED = "done in ways that cannot be compared"
UNITS = (
    "Each line is one exercise with its sets in the order done: load × reps, or a hold in seconds (s). Loads "
    "are in the unit in which they were told: kg, or lb (1 lb = 0.45359237 kg). Body weight alone has none."
)


def head_lines(state: ClientState) -> list[str]:
    """Say whose journal it is, and what stands in it."""
    client = state.client
    done = {entry.workout for entry in state.entries}
    days = [record.on for record in state.workouts if record.number in done]
    lines = [f"Coach: {client.coach.name}"]
    if client.programme is not None:
        lines.append(f"Programme: {client.programme.programme.name}")
    if days:
        lines.append(
            f"{counted(len(done), 'workout')}, {counted(len(state.entries), 'set')}, "
            f"{long_day(min(days))} to {long_day(max(days))}"
        )
    return lines


def counted(many: int, what: str) -> str:
    """Say how many there are of something."""
    return f"{many:,} {what}{'' if many == 1 else 's'}"


def long_day(day: date) -> str:
    """Say a day with its year, as a page needs it."""
    return f"{day.day} {day:%B %Y}"


def workout_words(record: WorkoutRecord) -> str:
    """Say a workout's day, name, and what became of it."""
    name = record.name or BESIDE
    became = "" if record.state in {"done", "open"} else f" ({record.state})"
    return f"{day_words(record.on)} {record.on.year}: {name}{became}"


def exercise_words(sets: tuple[TrainingSet, ...], workout_day: date) -> str:
    """Say the sets of one exercise, and their day where it is not the workout's own."""
    days = sorted({each.on for each in sets if each.on is not None and each.on != workout_day})
    told = f" (on {listed([long_day(each) for each in days])})" if days else ""
    return sets_words(sets) + told


def best_words(record: Record) -> str:
    """Say the best of an exercise, and when that was."""
    best = record.best
    return NOT_COMPARED if best is None else f"{set_words(best.set)} on {long_day(best.on)}"


def times_words(times: int) -> str:
    """Say how often something was done."""
    return {1: "once", 2: "twice"}.get(times, f"{times:,} times")


def skipped_words(record: WorkoutRecord) -> str:
    """Say what was left out of a workout."""
    return f"Left out: {listed(list(record.skipped))}"


def hold_words(hold: ExerciseHold) -> str:
    """Say an exercise on hold."""
    where = hold.where if hold.side is None else f"{hold.side} {hold.where}"
    return f"{hold.exercise}, since {long_day(hold.since)} ({where})"


def foot_words(name: str, page: int, pages: str) -> str:
    """Say whose page it is, and which of how many."""
    return f"{name} · page {page} of {pages}"
