"""Words for a coach's overview: who needs her, best first, who trains when, and the weekly look back."""

from collections import Counter
from collections.abc import Iterable
from datetime import date
from itertools import groupby

from bot.markup import bold, escape
from bot.wording.alerts import REMEDIES, WRITING
from bot.wording.eagerness import eager_words
from bot.wording.reader import day_words, listed
from domain.parts import About, ClientLine, Digest
from domain.tally import Numbers

URGENCY = ("urgent", "pain", "stall", "unreachable", "aside", "question", "missed", "review", "release")
"""What a matter is about, what needs the coach soonest first: alerts, what is still aside for pain, questions
waiting, missed workouts, reviews due, new clients to be released. The house's own order."""

FEW = 8
"""Up to so many clients each has a line of its own under those who train. The house's own choice."""


def digest_words(part: Digest) -> str:
    """Say who needs the coach first, then who trains when; a look back says what there is to be done."""
    if part.since is not None:
        return "\n".join(week_words(part, part.since))
    if not part.clients:
        return "No clients yet. Say «invite NAME to PROGRAMME» to bring one in."
    if part.about == "client":
        lines = needing_words(part.clients)
        return "\n".join([*lines, *(client_words(line, part.today) for line in part.clients)])
    if part.about == "trains":
        return trains_words(part.clients, part.today, part.on or part.today)
    if part.about != "all":
        return matter_words(part, part.about)
    lines = needing_words(part.clients) or [bold("Nobody needs you right now.")]
    if len(part.clients) <= FEW:
        in_order = sorted(part.clients, key=_when)
        return "\n".join([*lines, bold("Training"), *(client_words(line, part.today) for line in in_order)])
    return "\n".join([*lines, *training_words(part.clients, part.today)])


def training_words(clients: Iterable[ClientLine], today: date) -> list[str]:
    """Say who trains when, a line for each of the next days, and how many later."""
    near, later, none = [], 0, 0
    planned = sorted((line for line in clients if is_planned(line)), key=_when)
    none = sum(1 for line in clients if not is_planned(line) and not line.left)
    for on, lines in groupby(planned, key=lambda line: line.due_on):
        names = [line.name for line in lines]
        if on is not None and (on - today).days <= 1:
            when = f"Due since {day_words(on)}" if on < today else f"Train {day_words(on, today)}"
            near.append(f"{bold(when)}: {escape(listed(names))}")
        else:
            later += len(names)
    if not any(line.due_on == today for line in planned):
        near.insert(0, f"{bold('Train today')}: nobody")
    rest = [f"{later} later"] if later else []
    rest += [f"{none} with nothing planned"] if none else []
    return [*near, *([f"And {listed(rest)}."] if rest else [])]


def is_planned(line: ClientLine) -> bool:
    """Return whether there is a day on which this client trains next."""
    return line.due_on is not None and not (line.paused or line.joining or line.left)


def trains_words(clients: Iterable[ClientLine], today: date, on: date) -> str:
    """Say who trains on the day `on`; today also whose day went by."""
    training = [line for line in clients if is_planned(line) and line.due_on == on]
    late = [line for line in clients if is_planned(line) and line.due_on and line.due_on < today == on]
    day = day_words(on, today)
    lines = [
        f"{bold(f'{day[:1].upper()}{day[1:]}')}: {escape(listed([line.name for line in training]))}"
        if training
        else f"Nobody trains {day}."
    ]
    if late:
        lines.append(f"{bold('Late')}: {escape(listed([line.name for line in late]))}")
    return "\n".join(lines)


_REASON = {
    "stalled": "stall",
    "hurts": "pain",
    "missed": "missed",
    "asked": "question",
    "review": "review",
}
_HEADS: dict[About, tuple[str, str]] = {
    "stalled": ("Stalled", "Nobody has a stall that is open."),
    "hurts": ("Pain", "Nobody has told of pain that is open."),
    "missed": ("Missed workouts", "Nobody has missed workouts in a row."),
    "asked": ("Questions waiting", "No questions are waiting."),
    "review": ("Reviews", "No reviews are due."),
    "new": ("New", "Nobody new is waiting."),
    "away": ("Away", "Nobody is away."),
}


def matter_words(part: Digest, about: About) -> str:
    """Say whom one matter concerns, with what it is about."""
    head, nobody = _HEADS[about]
    lines = [
        f"{escape(line.name)}{said}" for line in part.clients if (said := said_of(line, about)) is not None
    ]
    return "\n".join([bold(head), *lines]) if lines else nobody


def said_of(line: ClientLine, about: About) -> str | None:
    """Say what of one client is told about one matter; None where it does not concern the client."""
    if about == "new":
        if line.to_release:
            return ": waits for your word that training may begin"
        return ": still answering the first questions" if line.joining else None
    if about == "away":
        return (": ill" if line.ill_on else "") if line.paused else None
    reason = _REASON[about]
    concerned = [
        exercise
        for kind, exercise in line.open_alerts
        if kind == reason or (kind == "urgent" and about == "hurts")
    ]
    held = line.held if about == "hurts" else ()
    if not concerned and not held:
        return None
    names = dict.fromkeys((*(each for each in concerned if each), *held))
    return f": {escape(listed(list(names)))}" if names else ""


def needing_words(clients: tuple[ClientLine, ...]) -> list[str]:
    """Say who needs the coach and why; nothing where nobody does."""
    waiting = [(line.name, matters(line)) for line in sorted(clients, key=urgency)]
    lines = [f"{escape(name)}: {escape(listed(what))}" for name, what in waiting if what]
    return [bold("Needs you"), *lines] if lines else []


MOST_NAMED, MOST_EAGER = 8, 6
"""How many lines a digest has at most of who needs the coach, and of who did more than asked: it is read
standing. The house's own choice."""


def week_words(part: Digest, since: date) -> list[str]:
    """Say what happened since that day in numbers, then what there is to be done; in a few lines."""
    lines = number_words(part.numbers, since) if part.numbers else [f"Since {day_words(since)}:"]
    head, *needing = needing_words(part.clients) or [""]
    lines += [head, *needing[:MOST_NAMED]] if needing else []
    if len(needing) > MOST_NAMED:
        lines.append(f"And {len(needing) - MOST_NAMED} more; all of them: «who needs me?»")
    eager = [line for line in part.clients if line.eager]
    if eager:
        lines += [bold("Did more than asked"), *clipped_eager(eager)]
    if part.numbers and not needing:
        lines.append("Nobody needs you right now.")
    return lines


def clipped_eager(clients: list[ClientLine]) -> list[str]:
    """Say who did more than asked, as far as there is room; of the others the names."""
    lines: list[str] = []
    for place, line in enumerate(clients):
        words = [escape(line.name), *eager_words(line.eager).splitlines()]
        if lines and len(lines) + len(words) > MOST_EAGER:
            return [*lines, escape(f"Also: {listed([each.name for each in clients[place:]])}")]
        lines += words[:MOST_EAGER]
    return lines


def number_words(numbers: Numbers, since: date) -> list[str]:
    """Say the numbers of the days from `since` to that until which they go."""
    until, counts = numbers.until, numbers.counts
    days = day_words(since) if until <= since else f"{day_words(since)} to {day_words(until)}"
    compared = [("beaten", counts.beat), ("level", counts.level), ("below", counts.below)]
    others = [("for the first time", counts.first), ("not comparable", counts.not_comparable)]
    lines = [bold(days), f"Workouts: {counts.done} of {counts.due} done"]
    said = [f"{count} {what}" for what, count in compared]
    said += [f"{count} {what}" for what, count in others if count]
    lines.append(f"Exercises: {', '.join(said)}")
    if numbers.longest:
        named = [
            f"{each.client}, {each.of.exercise} ({each.of.workouts} workouts)" for each in numbers.longest
        ]
        lines.append(escape(f"Longest without a beat: {'; '.join(named)}"))
    if numbers.remedies:
        told = [
            f"{(REMEDIES | WRITING)[each.remedy].lower()} {each.worked} of {each.looked}"
            for each in numbers.remedies
        ]
        lines.append(f"Remedies that worked: {', '.join(told)}")
    return lines


def _when(line: ClientLine) -> tuple[bool, date, str]:
    return (line.due_on is None, line.due_on or date.max, line.name)


def client_words(line: ClientLine, today: date) -> str:
    """Say one client's next and last workout."""
    if line.joining:
        coming = "still answering the first questions"
    elif line.left:
        coming = "has left"
    elif line.paused:
        coming = "paused, ill" if line.ill_on else "paused"
    elif line.due_on is None:
        coming = "nothing planned"
    elif line.due_on < today:
        coming = f"due since {day_words(line.due_on)}"
    else:
        coming = f"trains {day_words(line.due_on, today)}"
    if line.ill_on and not line.paused:
        coming += " (was ill, begins lighter)"
    last = f", last {day_words(line.last_workout, today)}" if line.last_workout else ""
    held = f"; aside: {escape(listed(line.held))}" if line.held else ""
    programme = f" ({escape(line.programme)})" if line.programme else ""
    return f"{escape(line.name)}{programme}: {coming}{last}{held}"


def urgency(line: ClientLine) -> tuple[int, int]:
    """Return what puts clients in order, who needs the coach soonest first, then with most that waits."""
    ranks = [URGENCY.index(kind) for kind in kinds_of(line).elements()]
    return (min(ranks, default=len(URGENCY)), -len(ranks))


def kinds_of(line: ClientLine) -> Counter[str]:
    """Return what of a client waits for the coach, by its kind."""
    kinds = Counter[str](reason for reason, _ in line.open_alerts)
    if line.held and not kinds["pain"] and not kinds["urgent"]:
        kinds["aside"] = 1
    if line.to_release:
        kinds["release"] = 1
    return kinds


def matters(line: ClientLine) -> list[str]:
    """Say what of a client waits for the coach, soonest first; matters of one kind together."""
    kinds = kinds_of(line)
    said = []
    for kind in sorted((each for each in kinds if kinds[each]), key=URGENCY.index):
        names = dict.fromkeys(each for reason, each in line.open_alerts if reason == kind and each)
        said.append(matter(kind, kinds[kind], list(line.held if kind == "aside" else names)))
    return said


def matter(reason: str, count: int, exercises: list[str]) -> str:
    """Say the open matters of one kind in a word or two."""
    named = {
        "urgent": "a warning sign",
        "missed": "missed workouts",
        "unreachable": "cannot be reached",
        "review": "review due",
        "stall": "stalled",
        "aside": "still aside for pain",
        "release": "your word that training may begin",
        "question": "a question" if count == 1 else f"{count} questions",
    }.get(reason, reason)
    return f"{named} ({listed(exercises)})" if exercises else named
