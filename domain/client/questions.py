"""Questions that wait for their answer. A message that is no answer is read as what it is."""

from dataclasses import replace

from domain.client.draft import Draft
from domain.client.pain import hold_for_pain
from domain.client.rotation import due
from domain.client.unfinished import complete
from domain.memory import Waiting
from domain.outcome import WorkoutKept
from domain.reading import Pain


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
            return complete(draft, waiting, waiting.slot, text)


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
