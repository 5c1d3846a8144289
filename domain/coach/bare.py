"""A client's name and no word of what is wanted: alone, the card; with an exercise, what was done of it."""

from collections.abc import Callable

from domain.coach.draft import Draft
from domain.coach.naming import ClientNames
from domain.coach.taken_for import note_bare_name, note_meant_beyond
from domain.coach.understanding import Asked, asked, closest_to
from domain.incoming import CardWanted
from domain.reading.message import message_of
from domain.reading.naming import names_for
from domain.reading.words import words_of

_BESIDE = words_of(
    """the a her his their last latest recent all on for of at in with and please pls thanks numbers number
    weights weight loads load sets set history time times today yesterday this week so far"""
)
"""What can stand beside the name and the exercise; any other word wants something else."""


def take_bare(draft: Draft, text: str, do: Callable[[Draft, Asked, str], None]) -> bool:
    """Take a client's name alone, or with an exercise: "Noor's squats?"; return whether it was that."""
    near = closest_to(text, draft.names)
    if len(near) == 1:
        note_bare_name(draft, "card", near[0])
        draft.order(near[0], CardWanted(coach=draft.number))
        return True
    request = asked(f"show {text}", draft.names)
    is_of_sets = request is not None and request.kind == "sets" and request.unknown is None
    if request is None or not is_of_sets or not is_of_exercises_alone(draft, text):
        return False
    note_meant_beyond(draft, request)
    do(draft, request, f"show {text}")
    return True


def is_of_exercises_alone(draft: Draft, text: str) -> bool:
    """Return whether a text names a client and an exercise of the coach's sheets, and nothing else."""
    known = dict.fromkeys(
        line.exercise
        for stored in draft.state.programmes
        for workout in stored.programme.workouts
        for line in workout.prescriptions
    )
    message = message_of(text)
    of_clients = {at for name in ClientNames(draft.names).find(message) for at in range(name.start, name.end)}
    of_exercises = {
        at
        for name in names_for(tuple(known), ()).find(message)
        for at in range(name.start, name.end)
        if at not in of_clients
    }
    others = (at for at in range(len(message.tokens)) if at not in of_clients | of_exercises)
    return bool(of_exercises) and all(
        message.text(at) in _BESIDE for at in others if any(map(str.isalnum, message.text(at)))
    )
