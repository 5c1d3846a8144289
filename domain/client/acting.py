"""What is done about a message once it is understood: the urgent first, then pain, sets, wants, questions."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import compress

from domain.actions import Words
from domain.client.draft import Draft
from domain.client.own_names import learn_put_right, note_called
from domain.client.pain import hold_for_pain, warn
from domain.client.plans import is_ill
from domain.client.recording import correct, enter, record, supersede
from domain.client.told_before import without_told_before
from domain.client.trouble import asked_about_pain
from domain.client.understanding import is_told, known, says_a_day
from domain.client.unfinished import ask_about, ask_again
from domain.client.wants import do
from domain.client.warming import is_of_warm_up
from domain.courtesies import is_courtesy, is_thanks
from domain.journal import Entry
from domain.other_languages import is_other_language
from domain.reading import Reading, Want, days_to_come, whole_workout_told
from domain.sets import TrainingSet, is_within_reason


def act_on(
    draft: Draft,
    reading: Reading,
    text: str,
    message: int,
    *,
    wants: Sequence[Want] | None = None,
    places: Sequence[int] = (),
) -> None:
    """Do all that a reading holds, the urgent first. A warning sign gets no talk of training beside it.

    `wants` are those to do where that is not all; `places` those of the sets that the new ones replace.
    """
    named = tuple(dict.fromkeys(each.exercise for each in reading.sets))
    if not (places or reading.urgent or reading.pain):
        reading = without_told_before(draft, reading, text)
    if reading.urgent:
        keep_sets(draft, reading, message, places, silently=True)
        warn(draft, text, reading.pain)
        return
    if reading.pain:
        # Before the sets are answered, so that nothing is aimed for on what hurts.
        hold_for_pain(
            draft,
            text,
            reading.pain,
            named or reading.skips or reading.names,
            asked_about_pain(draft, text, reading.pain),
        )
    keep_sets(draft, reading, message, places)
    if "correct" not in reading.wants:
        note_called(draft, reading, text, message)
    for want in reading.wants if wants is None else wants:
        do(draft, want, reading, text, named or reading.names)
    if reading.open:
        ask_about(draft, reading, text, message)
    elif reading.sets:
        ask_again(draft)
    if reading.cut:
        draft.notice("cut")


def keep_sets(
    draft: Draft, reading: Reading, message: int, places: Sequence[int] = (), *, silently: bool = False
) -> None:
    """Record the sets of a reading, or put recorded ones right with them; nothing that is out of reason."""
    sensible = [is_within_reason(each) for each in reading.sets]
    if not all(sensible) and not silently:
        draft.notice("out of reason")
    if not any(sensible):
        return
    if "correct" in reading.wants:
        entries = known(draft)
        pairs = [(entries[index], right) for index, right in zip(reading.replaces, reading.sets, strict=True)]
        if not reading.names:
            pairs = [*of_whole_message(entries, pairs), *pairs]
            sensible = [is_within_reason(right) for _, right in pairs]
        for old, right in compress(pairs, sensible):
            learn_put_right(draft, old.message, old.set.exercise, right.exercise)
        (supersede if silently else correct)(draft, list(compress(pairs, sensible)), message)
    else:
        sets = tuple(compress(dated(reading), sensible))
        (enter if silently else record)(draft, sets, message, places)


def of_whole_message(
    entries: Sequence[Entry], pairs: Sequence[tuple[Entry, TrainingSet]]
) -> list[tuple[Entry, TrainingSet]]:
    """Return what else a day is of that is put right without a name: "that was yesterday" is of all that the
    last message has told, and not of its last set alone."""
    if len(pairs) != 1:
        return []
    (meant, right), on = pairs[0], pairs[0][1].on
    if on is None or right != replace(meant.set, on=on) or on == meant.set.on:
        return []
    same = [each for each in entries if each.message == meant.message and each.set.on == meant.set.on]
    return [(each, replace(each.set, on=on)) for each in same if each is not meant]


def dated(reading: Reading) -> tuple[TrainingSet, ...]:
    """Return the sets of a reading, with their day only where the client has said one."""
    if says_a_day(reading):
        return reading.sets
    return tuple(replace(each, on=None) for each in reading.sets)


def answer_nothing(draft: Draft, text: str) -> None:
    """Answer a message in which there was nothing to do."""
    letters = [sign for sign in text if sign.isalpha()]
    whole = whole_workout_told(text, draft.local)
    if whole is not None:
        draft.notice(
            "told before" if is_told(draft, whole.on) else "which sets then", on=whole.on.isoformat()
        )
    elif is_of_warm_up(text):
        draft.notice("warm-up noted")
    elif any(sign.isdigit() for sign in text):
        draft.notice("no set found")
    elif is_courtesy(text):
        draft.notice("thanked" if is_thanks(text) else "heard")
    elif not letters:
        draft.notice("nothing to read")
    elif not any(letter.isascii() for letter in letters) or is_other_language(text):
        draft.notice("other script")
    elif is_ill(draft):
        draft.notice("still ill")
        for day in days_to_come(text, draft.local)[:1]:
            draft.offer(Words(text=f"Back on {day:%A} {day.day} {day:%B}", once=True))
    else:
        draft.notice("nothing recorded")
