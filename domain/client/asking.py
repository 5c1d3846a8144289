"""What a client asks about the own journal, settings and data, answered from what stands; nothing changes."""

from collections import defaultdict
from collections.abc import Sequence
from datetime import timedelta

from domain.asked_words import Asked, asked_in
from domain.client.closing import has_sets
from domain.client.dismissing import dismiss
from domain.client.draft import Draft
from domain.client.leads_to import OVER
from domain.client.lifts import body_of, indices_since
from domain.client.rotation import BESIDE, open_workout
from domain.client.why import exercises_known
from domain.comparison import best_of
from domain.glossary import term_asked
from domain.journal import Entry
from domain.reading import Reading, exercises_named
from domain.review import review_of
from domain.sets import TrainingSet
from domain.spans import Span
from domain.values import facts_of

LEAST_ROUNDS = 4
"""Of how many exposures of an exercise on something is said of a gain. The house's own choice: with fewer a
test of trend can hardly tell a gain from chance."""

ANSWERABLE_BEFORE = frozenset[Asked]({"seen", "stored", "settings", "equipment", "coach", "which stop"})
"""What is answered while the first questions are open."""


def take_asked(draft: Draft, text: str, reading: Reading) -> bool:
    """Answer a question about the journal, the settings, the data or a word; return whether it was one."""
    if reading.sets or reading.open:
        return False
    found = asked_in(text)
    if found is not None:
        asked, of = found
        if draft.memory.joining is not None and asked not in ANSWERABLE_BEFORE:
            return False
        return answer_asked(draft, asked, of)
    term = term_asked(text)
    if term is not None:
        draft.notice("term", term=term.name, says=term.says)
    return term is not None


def answer_asked(draft: Draft, asked: Asked, of: str) -> bool:
    """Answer one of these questions; return False where it turns out to be about something else."""
    match asked:
        case "seen" | "stored":
            draft.notice("what this is", about=[asked], coach=draft.client.coach.name)
        case "settings":
            tell_settings(draft)
        case "equipment":
            draft.notice("equipment known", equipment=draft.client.equipment.model_dump(mode="json"))
        case "last workout":
            tell_last_workout(draft)
        case "best":
            return tell_best(draft, of)
        case "stronger":
            tell_strength(draft)
        case "stones":
            draft.notice("no such unit")
        case "hour":
            draft.notice("which hour", at=f"{draft.client.remind_at:%H:%M}")
        case "coach":
            draft.notice("coach is reached", coach=draft.client.coach.name)
        case "lost":
            draft.notice("help", word=None)
        case "which stop":
            ask_which_stop(draft)
        case "dismiss":
            dismiss(draft)
    return True


def ask_which_stop(draft: Draft) -> None:
    """Ask what is to stop, with the workout under way first, where there is one."""
    opened = open_workout(draft.state)
    begun = opened is not None and has_sets(draft, opened)
    draft.notice("which stop", workout=opened.name if begun and opened else None)
    draft.offer(*([OVER] if begun else []))


def tell_settings(draft: Draft) -> None:
    """Say all settings, and how each is changed."""
    client, stored = draft.client, draft.client.programme
    draft.notice(
        "settings",
        coach=client.coach.name,
        programme=stored.programme.name if stored else None,
        unit=client.unit,
        zone=client.zone,
        local=draft.local.strftime("%H:%M"),
        at=None if draft.memory.reminders_off else f"{client.remind_at:%H:%M}",
        mass=None if client.body_mass is None else str(client.body_mass),
        lacking=list(client.equipment.lacking),
    )


def tell_last_workout(draft: Draft) -> None:
    """Say what was done in the last workout of which something stands."""
    done = {entry.workout for entry in draft.state.entries}
    last = next((each for each in reversed(draft.state.workouts) if each.number in done), None)
    if last is None:
        draft.notice("no history", exercise=None)
        return
    by_exercise: defaultdict[str, list[TrainingSet]] = defaultdict(list)
    for entry in draft.state.entries:
        if entry.workout == last.number:
            by_exercise[entry.set.exercise].append(entry.set)
    rows = [
        {"exercise": exercise, "sets": [facts_of(each) for each in sets]}
        for exercise, sets in by_exercise.items()
    ]
    name = None if last.name == BESIDE else last.name
    draft.notice("last workout", workout=name, on=last.on.isoformat(), rows=rows)


def tell_best(draft: Draft, of: str) -> bool:
    """Say the best set ever of the exercises named, else of all; return False where none is meant."""
    known = exercises_known(draft)
    names = exercises_named(of, known, draft.client.own_names) if of else ()
    if of and not names:
        return False
    rows = []
    for exercise in names or known:
        sets = [entry.set for entry in draft.state.entries if entry.set.exercise == exercise]
        counting = [each for each in sets if each.load_kind == sets[-1].load_kind]
        if counting:
            rows.append(
                {"exercise": exercise, "set": facts_of(best_of(counting, body_of(draft.state, exercise)))}
            )
    if rows:
        draft.notice("best", rows=rows)
    else:
        draft.notice("no history", exercise=names[0] if names else None)
    return True


def tell_count(
    draft: Draft, entries: Sequence[Entry], names: Sequence[str] = (), span: Span | None = None
) -> None:
    """Say in how many workouts, and with how many sets, these `entries` were done, oldest first.

    They are those of the exercises `names`, where some are asked about, and of the days of `span`, if it is.
    """
    days = {entry.workout: entry.set.on for entry in entries if entry.set.on is not None}
    lately = draft.today - timedelta(days=27)
    draft.notice(
        "workouts counted",
        exercises=list(names),
        count=len(days),
        lately=None if span else sum(1 for day in days.values() if day >= lately),
        since=facts_of(span.first if span else min(days.values(), default=None)),
        until=facts_of(span.last) if span else None,
        sets=len(entries),
    )


def tell_strength(draft: Draft) -> None:
    """Say whether strength has risen over all exercises of the programme, as far as that can be told."""
    enough = tuple(each for each in indices_since(draft.state) if len(each) >= LEAST_ROUNDS)
    found = review_of(enough) if enough else None
    if found is None:
        draft.notice("strength so far", found=None)
        return
    low, high = found.interval
    draft.notice(
        "strength so far",
        found="risen" if found.risen else "fallen" if high < 0 else "unclear",
        gain=found.gain_per_round,
        low=low,
        high=high,
        rounds=found.rounds,
        exercises=len(enough),
        coach=draft.client.coach.name,
    )
