"""Pain and warning signs: what is set aside, what is asked, what the coach hears.

Nothing here says what a pain is or that anything is harmless; it sets exercises aside and sends people to
those who can tell.
"""

from domain.client.draft import Draft
from domain.client.lines import hold_on
from domain.client.rotation import open_workout
from domain.journal import ExerciseHold
from domain.outcome import HoldPlaced
from domain.parts import Safety, Urgent
from domain.reading import Pain
from domain.safety import loads_place
from domain.values import facts_of


def warn(draft: Draft, text: str, pain: tuple[Pain, ...]) -> None:
    """A warning sign: say what to do at once and nothing else; the coach hears of it at once.

    There is no training, and no talk of any, until the coach lets it go on. Where a place hurts as well, what
    loads it is set aside silently.
    """
    draft.say(Urgent())
    draft.remember(barred=True, waiting=None)
    exercises = [
        name for each in pain for name in affected(draft, each.where, ()) if set_aside(draft, name, each)
    ]
    draft.alert("urgent", None, {"said": text, "pain": [facts_of(each) for each in pain], "held": exercises})


def hold_for_pain(draft: Draft, text: str, pain: tuple[Pain, ...], named: tuple[str, ...]) -> None:
    """Set aside what hurts, say whom to see, tell the coach. `named` are the message's exercises."""
    for each in pain:
        hurting = affected(draft, each.where, named)
        for exercise in hurting:
            set_aside(draft, exercise, each)
        first = hurting[0] if hurting else None
        also = tuple(
            name
            for name in programme_exercises(draft)
            if name not in hurting and loads_place(name, each.where)
        )
        draft.say(Safety(where=each.where, side=each.side, exercise=first, held=hurting, also=also))
        draft.alert(
            "pain",
            first,
            {"said": text, "pain": facts_of(each), "held": list(hurting), "also": list(also)},
        )


def affected(draft: Draft, where: str, named: tuple[str, ...]) -> tuple[str, ...]:
    """Return the exercises to set aside for pain at `where`, the likeliest cause first.

    Those named in the message that load the place, or where none does, all that are named; else the one just
    done, where it loads the place; else all of the programme that load it.
    """
    if named:
        return tuple(name for name in named if loads_place(name, where)) or named
    under_way = open_workout(draft.state)
    if under_way is not None and draft.state.entries:
        last = draft.state.entries[-1]
        recent = last.workout == under_way.number and under_way.on == draft.today
        if recent and loads_place(last.set.exercise, where):
            return (last.set.exercise,)
    return tuple(name for name in programme_exercises(draft) if loads_place(name, where))


def set_aside(draft: Draft, exercise: str, pain: Pain) -> bool:
    """Place a hold, where there is none yet."""
    if hold_on(draft.state, exercise) is not None:
        return False
    hold = ExerciseHold(
        number=draft.number("last_hold"),
        exercise=exercise,
        where=pain.where,
        side=pain.side,
        since=draft.today,
    )
    draft.change(HoldPlaced(hold))
    return True


def programme_exercises(draft: Draft) -> tuple[str, ...]:
    """Return the exercises of the client's programme, each once, in the sheet's order."""
    stored = draft.client.programme
    if stored is None:
        return ()
    return tuple(
        dict.fromkeys(
            line.exercise for workout in stored.programme.workouts for line in workout.prescriptions
        )
    )
