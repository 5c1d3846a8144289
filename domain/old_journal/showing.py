"""What is said of an old journal before it is taken: counts, and the first of whatever is to be known."""

from domain.exercises import lookup
from domain.names import name_key
from domain.old_journal.found import Found
from domain.old_journal.looking import Looked, exercises_of, without
from domain.old_journal.names import LEFT_OUT
from domain.state import ClientState
from domain.values import facts_of

SHOWN = 8
"""How many rows and names are said; all are in the file beside it. The house's own choice."""


def shown_of(state: ClientState, found: Found, looked: Looked) -> dict[str, object]:
    """Return what is said of a journal before it is taken, as plain JSON."""
    days = [workout.day for _, workout in without(looked.workouts, looked.there, 0)]
    known = {name_key(each) for each in exercises_of(state)}
    taken = [each for each in looked.meanings if looked.exercises[each.name] != LEFT_OUT]
    renamed = [
        [each.name, looked.exercises[each.name]]
        for each in taken
        if name_key(each.name) != name_key(looked.exercises[each.name])
    ]
    new = [
        looked.exercises[each.name]
        for each in taken
        if lookup(looked.exercises[each.name]) is None and name_key(looked.exercises[each.name]) not in known
    ]
    kinds: dict[str, int] = {}
    for fault in looked.faults:
        kinds[fault.what] = kinds.get(fault.what, 0) + 1
    return {
        "sets": looked.to_take,
        "workouts": len(days),
        "first": min(days).isoformat() if days else None,
        "last": max(days).isoformat() if days else None,
        "exercises": len({looked.exercises[each.name] for each in taken}),
        "there": sum(last - first + 1 for first, last in looked.there),
        "left_out": looked.left_out,
        "faults": [facts_of(each) for each in looked.faults[:SHOWN]],
        "fault_count": len(looked.faults),
        "fault_kinds": kinds,
        "renamed": renamed[:SHOWN],
        "renamed_count": len(renamed),
        "new": list(dict.fromkeys(new))[:SHOWN],
        "new_count": len(set(new)),
        "unit": found.unit_assumed,
        "holds": len(looked.set_aside),
        "still_aside": [each.exercise for each in looked.set_aside if each.lifted_on is None],
        "matter_count": len(looked.matters),
        "still_open": sum(each.settled_at is None for each in looked.matters),
        "passed_over": list(found.passed_over[:SHOWN]),
    }
