"""Questions that wait: what a reading must ask, and what an answer makes of it.

A question about sets keeps the unfinished sets as they are; the answer completes the first of them that lacks
what was asked. A message that is no answer drops the question, and what was typed stays in the inbox.
"""

from dataclasses import replace

from pydantic import TypeAdapter

from domain.client.draft import Draft
from domain.client.pain import hold_for_pain
from domain.client.recording import record
from domain.client.rotation import due
from domain.client.understanding import request_for
from domain.memory import Waiting
from domain.outcome import SettingsKept, WorkoutKept
from domain.parts import Slot
from domain.reading import OpenSet, Pain, Reading, answer
from domain.reading import Slot as SetSlot

_OPEN = TypeAdapter(tuple[OpenSet, ...])
_SLOTS = TypeAdapter(tuple[SetSlot, ...])

ORDER: tuple[SetSlot, ...] = ("exercise", "date", "confirm", "unit", "load", "reps", "seconds")
"""In which order things are asked: what the others depend on comes first."""


def ask_about(draft: Draft, reading: Reading, text: str) -> None:
    """Ask for what is missing of the sets in `reading`, one thing at a time."""
    ask_next(draft, reading.open, reading.asks, text)


def ask_next(draft: Draft, open_sets: tuple[OpenSet, ...], slots: tuple[SetSlot, ...], text: str) -> None:
    """Ask for the first of `slots`, in the house's order, or where there are none, for nothing."""
    for slot in ORDER:
        if slot in slots:
            facts = {"text": text, "open": _OPEN.dump_python(open_sets, mode="json")}
            draft.ask(
                slot,
                {**facts, "slots": list(slots)},
                facts,
                choices(draft, slot, open_sets),
            )
            return


def choices(draft: Draft, slot: Slot, open_sets: tuple[OpenSet, ...]) -> tuple[str, ...]:
    """Return the likely answers, as they can be typed."""
    request = request_for(draft, "")
    match slot:
        case "exercise":
            return tuple(line.name for line in request.plan)
        case "unit":
            return ("kg", "lb")
        case "confirm":
            return either_or(open_sets) or ("Yes", "No")
        case "load":
            loads = [
                reference
                for each in open_sets
                if each.exercise is not None
                for reference in (request.target.get(each.exercise), request.last.get(each.exercise))
                if reference is not None and reference.load
            ]
            return tuple(dict.fromkeys(f"{each.load.normalize():f} {each.unit}" for each in loads))
        case _:
            return ()


def either_or(open_sets: tuple[OpenSet, ...]) -> tuple[str, ...]:
    """Return the readings of the one set that can be taken in several ways, as they can be typed."""
    if len(open_sets) != 1 or len(open_sets[0].candidates) < 2:
        return ()
    return tuple(
        f"{each.load.normalize():f} {each.unit} {'for' if each.reps is None else 'x'} {each.amount}"
        for each in open_sets[0].candidates
        if each.load
    )


def take_answer(draft: Draft, waiting: Waiting, text: str) -> bool:
    """Take `text` as the answer to the waiting question; return False where it is none."""
    match waiting.slot:
        case "trouble":
            return trouble_told(draft, waiting, text)
        case "missed":
            return missed_told(draft, waiting, text)
        case "sheet" | "who":
            return False
        case _:
            return set_completed(draft, waiting, text)


def set_completed(draft: Draft, waiting: Waiting, text: str) -> bool:
    """Complete the waiting sets; record those that are whole, and ask on where something is missing."""
    open_sets = _OPEN.validate_python(waiting.about["open"])
    slots = _SLOTS.validate_python(tuple(waiting.about["slots"]))
    if waiting.slot not in slots or waiting.slot not in ORDER:
        return False
    slot: SetSlot = next(each for each in slots if each == waiting.slot)
    request = request_for(draft, text)
    if slot == "confirm" and text.strip().casefold() in {"no", "n", "nope", "nein"}:
        draft.remember(waiting=None)
        draft.notice("say it again")
        return True
    completed: list[OpenSet] = []
    for each in open_sets:
        answered = answer(each, slot, text, request)
        if answered is None:
            return False
        completed.append(answered)
    draft.remember(waiting=None)
    whole = [done for each in completed if (done := each.complete()) is not None]
    rest = tuple(each for each in completed if each.complete() is None)
    if slot == "exercise":
        learn_name(draft, open_sets, completed)
    if whole:
        record(draft, whole, waiting.message)
    left = tuple(each for each in slots if each != slot) or missing_of(rest)
    if rest and left:
        ask_next(draft, rest, left, str(waiting.about["text"]))
    return True


def missing_of(open_sets: tuple[OpenSet, ...]) -> tuple[SetSlot, ...]:
    """Return what is still missing of unfinished sets, where the reading asked for one thing first."""
    missing: dict[SetSlot, None] = {}
    for each in open_sets:
        if each.exercise is None:
            missing["exercise"] = None
        elif each.load is None:
            missing["load"] = None
        elif each.reps is None and each.seconds is None:
            missing["reps"] = None
    return tuple(missing)


def learn_name(draft: Draft, open_sets: tuple[OpenSet, ...], completed: list[OpenSet]) -> None:
    """Keep the client's own word for the exercise that was asked about, where there was such a word."""
    own = dict(draft.client.own_names)
    for before, after in zip(open_sets, completed, strict=True):
        word = before.said_name
        if word and before.exercise is None and after.exercise is not None:
            own[word] = after.exercise
    if own != dict(draft.client.own_names):
        draft.change(SettingsKept(replace(draft.client, own_names=own)))


def trouble_told(draft: Draft, waiting: Waiting, text: str) -> bool:
    """Take the answer to whether an exercise that has stalled gives pain or joint trouble."""
    exercise = str(waiting.about["exercise"])
    said = text.strip().casefold()
    if said in {"no trouble", "no", "nope", "none", "fine", "all fine", "no pain"}:
        draft.remember(waiting=None)
        draft.notice("no trouble", exercise=exercise)
        return True
    if said in {"it hurts", "yes", "yes it hurts", "a bit"}:
        draft.remember(waiting=None)
        hold_for_pain(draft, text, (Pain(where="other", side=None, score=None),), (exercise,))
        return True
    return False


def missed_told(draft: Draft, waiting: Waiting, text: str) -> bool:
    """Take the answer to what became of a workout of which nothing was reported."""
    number = int(waiting.about["workout"])
    missed = next((each for each in draft.state.workouts if each.number == number), None)
    said = text.strip().casefold()
    if missed is None or said not in {"trained", "today instead", "missed it"}:
        return False
    draft.remember(waiting=None)
    match said:
        case "trained":
            draft.change(WorkoutKept(replace(missed, state="open")))
            draft.remember(missed_in_a_row=max(0, draft.memory.missed_in_a_row - 1))
            draft.notice("trained after all", workout=missed.name)
        case "today instead":
            draft.remember(moved_to=draft.today, moved_workout=missed.name)
            draft.notice("moved", workout=missed.name, on=draft.today.isoformat())
        case _:
            coming = due(draft.state, draft.today)
            on = coming.on.isoformat() if coming else None
            draft.notice("missed noted", workout=coming.workout if coming else missed.name, on=on)
    return True
