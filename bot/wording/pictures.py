"""Words in pictures and under them: the caption says what the picture shows."""

from datetime import date

from bot.markup import bold, escape
from bot.wording.alerts import REMEDIES
from bot.wording.notice_forms import Facts
from bot.wording.reader import Reader, day_words, listed, load_words, number, percent_words, set_words
from bot.wording.scripts import of_client, of_exercise, shown, told
from domain.pictures import Away, Mark, ProgrammeProgress, Progress, RosterProgress, RosterRow
from domain.progress import Scale
from domain.sets import TrainingSet


def title_words(part: Progress) -> str:
    """Say above the picture of one exercise which it is, and whose, as far as its letters can be drawn."""
    exercise, client = shown(part.exercise, ""), "" if part.small else shown(part.client, "")
    return ", ".join(filter(None, (exercise, client))) or PROGRESS


def scale_words(part: Progress) -> str:
    """Say what the numbers of a picture are, with their unit."""
    scale = part.scale
    each = " each" if scale.load_kind == "each" else ""
    match scale.measure:
        case "reps" | "seconds":
            of = "Seconds" if scale.measure == "seconds" else "Reps"
            if scale.is_mixed:
                return f"{of}, at several loads"
            return f"{'Lowering-only reps' if scale.lowering_only else of}{_at_the_load(part.last.set)}"
        case "one-rep max":
            return f"Estimated one-rep maximum, {scale.unit}{each}"
        case "one-rep max with body":
            return f"Estimated one-rep maximum with the body's share, {scale.unit}"
        case "load":
            return f"Load, {scale.unit}{each}"
        case "added load":
            return f"Added load, {scale.unit} (below 0: help)"


def _at_the_load(done: TrainingSet) -> str:
    load = load_words(done)
    return f" at {load}" if load and done.load else " with body weight"


def label_words(done: TrainingSet) -> str:
    """Say a set beside its point, in short."""
    amount = f"{done.seconds} s" if done.seconds is not None else f"{done.reps}"
    match done.load_kind:
        case "body":
            return amount if done.seconds is not None else f"{amount} reps"
        case "added":
            return f"+{number(done.load)} × {amount}"
        case "assist":
            return f"−{number(done.load)} × {amount}"
        case _:
            return f"{number(done.load)} × {amount}"


def away_words(away: Away) -> str:
    """Say a layoff in short."""
    days = (away.until - away.since).days + 2
    weeks = round(days / 7)
    return f"{weeks} weeks away"


def mark_words(mark: Mark) -> str:
    """Say what happened on a day, in short."""
    if mark.what == "stall" or mark.remedy is None:
        what = "stall told"
    elif mark.remedy == "write":
        what = "coach wrote about it"
    else:
        what = REMEDIES[mark.remedy].lower()
    return f"{mark.on.day} {mark.on:%b}: {what}"


def progress_words(part: Progress, reader: Reader) -> str:
    """Say how an exercise has gone: the same as the picture shows."""
    best, last = part.best, part.last
    times = {1: "once", 2: "twice"}.get(part.times, f"{part.times} times")
    of = bold(part.exercise)
    if part.small:
        return f"In the picture: {of} {times}, best {set_words(best.set)} on {day_words(best.on)}."
    whose = f"{bold(part.client)}, {of}" if reader.is_coach else of
    lines = [f"{whose}: done {times}, in the picture since {day_words(part.first.on)}."]
    lines.append(f"Best: {set_words(best.set)} on {day_words(best.on)}{_estimate(part.scale, best.value)}.")
    if last.on != best.on:
        lines.append(
            f"Last: {set_words(last.set)} on {day_words(last.on)}{_estimate(part.scale, last.value)}."
        )
    if change := change_words(part, " since the first shown"):
        lines.append(f"{change.capitalize()}." if last.on == best.on else f"The best is {change}.")
    if part.next_aim is not None:
        lines.append(f"Next aim: {set_words(part.next_aim)}.")
    if part.held_since is not None:
        lines.append(f"Set aside since {day_words(part.held_since)}, because it hurts.")
    lines += [f"No training from {day_words(away.since)} to {day_words(away.until)}." for away in part.away]
    if part.marks:
        lines.append(f"Marked: {'; '.join(mark_words(mark) for mark in part.marks)}.")
    return "\n".join(lines)


def programme_progress_words(part: ProgrammeProgress, reader: Reader) -> str:
    """Say how all exercises of a programme have gone, a line each."""
    of = f" on {bold(part.programme)}" if part.programme else ""
    lines = [f"{bold(part.client)}{of}:" if reader.is_coach else f"Your exercises{of}:"]
    for place, each in enumerate(part.exercises, start=1):
        change = change_words(each)
        held = ", set aside" if each.held_since else ""
        name = escape(told(each.exercise, of_exercise(place)))
        lines.append(f"{name}: best {set_words(each.best.set)}{f', {change}' if change else ''}{held}")
    if part.waiting:
        lines.append(f"Not done yet: {escape(listed(part.waiting))}.")
    return "\n".join(lines)


def roster_progress_words(part: RosterProgress) -> str:
    """Say how all clients of a coach stand, a line each."""
    if not part.rows:
        return "No clients yet. Say «invite NAME to PROGRAMME» to bring one in."
    lines = [f"Strength since {day_words(part.since)}, all exercises of a client together:"]
    rows = (
        f"{escape(told(row.client, of_client(place)))}: {row_words(row)}"
        for place, row in enumerate(part.rows, start=1)
    )
    return "\n".join([*lines, *rows])


def programme_heading(part: ProgrammeProgress, drawn: int, first: date, last: date) -> str:
    """Say which programme a picture is of, how many of its exercises it shows, and of which time."""
    whole = len(part.exercises)
    count = f"{drawn} exercises" if drawn == whole else f"{drawn} of {whole} exercises"
    days = f"{_short_day(first, with_year=first.year != last.year)} to {_short_day(last)}"
    return ", ".join(filter(None, [shown(part.programme or "", ""), count if whole > 1 else "", days]))


def _short_day(day: date, *, with_year: bool = True) -> str:
    return f"{day.day} {day:%b}" + (f" {day.year}" if with_year else "")


def scale_in_short(part: Progress) -> str:
    """Say the scale of a small panel."""
    unit = part.scale.unit + (" each" if part.scale.load_kind == "each" else "")
    match part.scale.measure:
        case "reps" | "seconds":
            return scale_words(part).lower().removesuffix(" with body weight")
        case "one-rep max":
            return f"est. max, {unit}"
        case "one-rep max with body":
            return f"est. max with body, {unit}"
        case "load":
            return f"load, {unit}"
        case "added load":
            return f"added load, {unit}"


GLANCE, EXERCISES, PROGRESS = "Clients at a glance", "Exercises", "Progress"
SIGN_WORDS = {"done": "done", "best": "best so far", "aimed": "aimed for"}


def standing_in_short(part: Progress) -> str:
    """Say beside a small panel what is the matter with an exercise."""
    if part.held_since is not None:
        return "set aside"
    return "stalled" if any(mark.what == "stall" for mark in part.marks) else ""


def glance_words(part: RosterProgress) -> str:
    """Say what the picture of all clients shows."""
    since, today = _short_day(part.since, with_year=part.since.year != part.today.year), part.today
    return f"Change in strength, all exercises together, {since} to {_short_day(today)}"


def under_glance(left_out: int) -> str:
    """Say what the numbers in the picture of all clients are, and that there are more clients."""
    return "In a circle: how much there is to settle" + (f"; {left_out} more below" if left_out else "")


def change_in_short(row: RosterRow, digits: int) -> str:
    """Say a client's change in strength."""
    if len(row.points) < 2:
        return "–"
    return percent_words(row.points[-1][1], digits)


def state_in_short(row: RosterRow) -> str:
    """Say what else there is of a client, as short as it goes."""
    if row.matters:
        return "to settle"
    if row.joining:
        return "joining"
    if row.paused:
        return "paused"
    return f"{row.aside} aside" if row.aside else ""


def row_words(row: RosterRow) -> str:
    """Say one client's change in strength and what is open."""
    said = [percent_words(row.points[-1][1]) if len(row.points) > 1 else "too early to tell"]
    if row.joining:
        said = ["still answering the first questions"]
    if row.matters:
        said.append(f"{row.matters} to settle")
    if row.aside:
        said.append(f"{row.aside} aside")
    if row.paused:
        said.append("paused")
    return ", ".join(said)


def _estimate(scale: Scale, value: float) -> str:
    if scale.measure == "one-rep max":
        each = " each" if scale.load_kind == "each" else ""
        return f" (an estimated maximum of {value:.1f} {scale.unit}{each})"
    if scale.measure == "one-rep max with body":
        return f" (with the body's share, an estimated maximum of {value:.1f} {scale.unit})"
    return ""


def change_words(part: Progress, since: str = "") -> str:
    """Say how much the best of what is shown is above the first; empty where that says nothing.

    `since` are the words for when that was.
    """
    if len(part.points) < 2:
        return ""
    first, best = part.points[0][1], max(value for _, value in part.points)
    match part.scale.measure:
        case "reps":
            gained = round(best - first)
            return f"up by {gained} {'rep' if gained == 1 else 'reps'}{since}" if gained else ""
        case "seconds":
            return f"up by {round(best - first)} s{since}" if best > first and not part.scale.is_mixed else ""
        case "load" | "added load":
            gained_load = best - first
            return f"up by {gained_load:g} {part.scale.unit}{since}" if gained_load else ""
        case "one-rep max" | "one-rep max with body":
            return f"up by {best / first - 1:.0%}{since}" if best > first else ""


def nothing_to_draw(facts: Facts, reader: Reader) -> str:
    """Say that no set stands in the journal of which a picture could be drawn."""
    whose = f" for {bold(str(facts['client']))}" if reader.is_coach else ""
    of = f" of {escape(str(facts['exercise']))}" if facts.get("exercise") else ""
    return f"There is nothing to draw{whose} yet: no set{of} stands in the journal."
