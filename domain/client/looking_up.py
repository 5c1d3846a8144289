"""What a client wants looked up, answered from the journal and the sheet; nothing of it changes either."""

import re
from collections import defaultdict
from collections.abc import Mapping, Sequence
from datetime import date

from domain.client.aims import show_aims
from domain.client.asking import tell_best, tell_count
from domain.client.closing import has_sets, results_in
from domain.client.coach_said import tell_coach_said
from domain.client.cues import tell_cues
from domain.client.draft import Draft
from domain.client.ever import tell_ever
from domain.client.exposures import moment
from domain.client.picturing import drawn
from domain.client.rotation import BESIDE, due
from domain.client.wants import HISTORY_SHOWN, show_history
from domain.client.why import exercises_known
from domain.entry_order import told
from domain.expressions import Expression
from domain.how_to import how_to_asked
from domain.journal import Entry, WorkoutRecord
from domain.looked_up_words import Asked, look_ups
from domain.names import name_key
from domain.reading import days_meant, exercises_named
from domain.sets import TrainingSet
from domain.spans import Span, span_of
from domain.values import facts_of

MOST_WORKOUTS = 7
"""How many workouts of a stretch of days are told set by set. The house's own choice."""

FEW, MOST_SHOWN = 3, 20
"""How many times of an exercise are shown where no number is said, and at most. The house's own choice."""

MOST_DAYS = 5
"""How many days of missed workouts are named, the latest. The house's own choice."""


def take_look_up(draft: Draft, text: str) -> bool:
    """Answer what `text` as a whole wants looked up; return whether it was such a wish."""
    by_name = Expression(rf"\b{re.escape(draft.client.coach.name)}\b", re.IGNORECASE)
    wishes = look_ups(by_name.sub("my coach", text))
    return any(answer(draft, asked, text) for asked in wishes) or take_how_to(draft, text)


def take_how_to(draft: Draft, text: str) -> bool:
    """Say in a line how to write here, where `text` as a whole asks that; return whether it did."""
    asked = how_to_asked(text)
    if asked is not None:
        says = asked.says.replace("{coach}", draft.client.coach.name)
        draft.notice("how to", name=asked.name, says=says)
    return asked is not None


def answer(draft: Draft, asked: Asked, text: str) -> bool:
    """Answer one way to take the question; return False where what it is of is no exercise, or no day."""
    said_of = asked.pieces.get("of")
    names = named(draft, said_of) if said_of else ()
    if asked.what == "last of":
        return tell_last_of(draft, names, said_of or "")
    if said_of and not names:
        return False
    span = span_said(draft, asked.pieces)
    if span is None and asked.pieces.keys() & {"span", "when"}:
        return False
    match asked.what:
        case "cues":
            return tell_cues(draft, names, text)
        case "coach said":
            tell_coach_said(draft, asked.pieces.get("about", ""))
        case "ever" | "first time":
            tell_ever(draft, names, asked.numbers, asked.pieces, when=asked.what == "first time")
        case "count":
            tell_count(draft, entries_in(draft, span, names), names, span)
        case "missed":
            tell_missed(draft, span)
        case "days" if span is not None:
            tell_days(draft, span)
        case "beaten":
            tell_beaten(draft)
        case "counts":
            return tell_counts(draft, asked.pieces.get("as"))
        case "best":
            return tell_best(draft, said_of or "")
        case "history":
            show_history(draft, "", names, most=max(1, min(int(asked.numbers.get("n", FEW)), MOST_SHOWN)))
        case "last time" | "whole history":
            show_history(draft, "", names, most=1 if asked.what == "last time" else HISTORY_SHOWN)
        case "picture":
            draft.say(drawn(draft, ()))
        case "aim" if draft.memory.barred:
            draft.notice("barred", coach=draft.client.coach.name)
        case "aim":
            return show_aims(draft, names)
        case _:
            return False
    return True


def named(draft: Draft, words: str) -> tuple[str, ...]:
    """Return the exercises of the client's that these words name."""
    return exercises_named(words, exercises_known(draft), draft.client.own_names)


def span_said(draft: Draft, pieces: Mapping[str, str]) -> Span | None:
    """Return the days that a question speaks of, a day or several; None where it speaks of none."""
    said = pieces.get("span") or pieces.get("when")
    if said is None:
        return None
    if (span := span_of(said, draft.today)) is not None:
        return span
    days = days_meant(said, draft.local)
    trained = {entry.set.on for entry in draft.state.entries}
    day = next((each for each in days if each in trained), days[0] if days else None)
    return None if day is None else Span(day, day)


def entries_in(draft: Draft, span: Span | None, names: Sequence[str] = ()) -> list[Entry]:
    """Return the entries of these days by their days: of the exercises `names`, or of all."""
    found = [
        entry
        for entry in draft.state.entries
        if (not names or entry.set.exercise in names)
        and (span is None or (entry.set.on is not None and span.first <= entry.set.on <= span.last))
    ]
    return sorted(found, key=lambda entry: (entry.set.on or date.min, entry.order))


def tell_missed(draft: Draft, span: Span | None) -> None:
    """Say how many workouts were missed."""
    missed = [
        record
        for record in draft.state.workouts
        if record.state == "missed" and (span is None or span.first <= record.on <= span.last)
    ]
    rows = [{"workout": record.name, "on": record.on.isoformat()} for record in missed[-MOST_DAYS:]]
    draft.notice("missed counted", count=len(missed), rows=rows)


def tell_days(draft: Draft, span: Span) -> None:
    """Say what was done on these days, workout by workout, the latest of them set by set."""
    names = {record.number: record.name for record in draft.state.workouts}
    found: defaultdict[tuple[date, int], defaultdict[str, list[TrainingSet]]] = defaultdict(
        lambda: defaultdict(list)
    )
    for entry in entries_in(draft, span):
        found[entry.set.on or date.min, entry.workout][entry.set.exercise].append(entry.set)
    workouts = [
        {
            "on": on.isoformat(),
            "workout": None if names.get(number, BESIDE) == BESIDE else names[number],
            "rows": [{"exercise": name, "sets": facts_of(sets)} for name, sets in rows.items()],
        }
        for (on, number), rows in found.items()
    ]
    draft.notice(
        "days told",
        first=span.first.isoformat(),
        last=span.last.isoformat(),
        workouts=workouts[-MOST_WORKOUTS:],
        left=max(0, len(workouts) - MOST_WORKOUTS),
    )


def tell_beaten(draft: Draft) -> None:
    """Say what was beaten in the last workout of which something stands, and what not."""
    last = last_workout(draft)
    if last is None:
        draft.notice("no history", exercise=None)
        return
    results = results_in(draft, last)
    draft.notice(
        "beaten",
        workout=None if last.name == BESIDE else last.name,
        on=last.on.isoformat(),
        beaten=[name for name, result in results if result == "beat"],
        not_beaten=[name for name, result in results if result in {"level", "below"}],
        first=[name for name, result in results if result == "first"],
    )


def tell_counts(draft: Draft, said: str | None) -> bool:
    """Say which workout, of which day, was told last; return False where nothing is, or `said` is neither."""
    entries = told(draft.state)
    days = days_meant(said, draft.local) if said else ()
    if not entries or (said and not days and not workout_called(draft, said)):
        return False
    last = max(entries, key=lambda entry: (entry.at, entry.number))
    record = next(each for each in draft.state.workouts if each.number == last.workout)
    coming, on = due(draft.state, draft.today), last.set.on or record.on
    draft.notice(
        "counts as",
        workout=None if record.name == BESIDE else record.name,
        on=on.isoformat(),
        is_other=bool(days) and on not in days,
        coming=coming.workout if coming else None,
        coming_on=max(coming.on, draft.today).isoformat() if coming else None,
    )
    return True


def last_workout(draft: Draft, name: str | None = None) -> WorkoutRecord | None:
    """Return the last workout of which something stands, of that name if one is given; None: none does."""
    done = [
        record
        for record in draft.state.workouts
        if (name is None or record.name == name) and has_sets(draft, record)
    ]
    return max(done, key=moment, default=None)


def tell_last_of(draft: Draft, names: Sequence[str], said: str) -> bool:
    """Say when an exercise, or a workout that is called so, was done last; return whether it is either."""
    if workout := workout_called(draft, said):
        record = last_workout(draft, workout)
        if record is None:
            draft.notice("no history", exercise=workout)
        else:
            tell_days(draft, Span(record.on, record.on))
        return True
    for name in names:
        sets = [entry.set for entry in entries_in(draft, None, (name,))]
        if not sets:
            draft.notice("no history", exercise=name)
            continue
        on = sets[-1].on or draft.today
        draft.notice(
            "done last",
            exercise=name,
            on=on.isoformat(),
            days=(draft.today - on).days,
            sets=facts_of([each for each in sets if each.on == on]),
        )
    return bool(names)


def workout_called(draft: Draft, words: str) -> str | None:
    """Return the workout of the programme with that name: "pull", "the leg day"."""
    stored = draft.client.programme
    said = words.casefold()
    for more in (" workout", " session", " day"):
        said = said.removesuffix(more)
    workouts = stored.programme.workouts if stored else ()
    return next((each.name for each in workouts if name_key(each.name) == name_key(said)), None)
