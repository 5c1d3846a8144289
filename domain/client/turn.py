"""Which workout is next by the client's own word: "Legs is next", of who comes with a journal on paper."""

import re

from domain.client.draft import Draft
from domain.client.plans import keep_plans, plans_of
from domain.client.rotation import in_turn
from domain.client.week import week_of
from domain.expressions import Expression
from domain.parts import Notice
from domain.planned import Turn

_BETWEEN = Expression(r"[,;:!?\n]|\.(?!\d)|\s-\s|\s(?:and|so|but)\s")
"""What parts one thing that is said from the next."""


def take_turn(draft: Draft, text: str) -> bool:
    """Let the workout be next that one part of `text` says to be; return whether one does.

    It is next from now on, and the order goes on from there; a coach who knows of workouts hears of it.
    """
    name = next((name for part in _BETWEEN.split(text) if (name := said_next(draft, part))), None)
    coming = in_turn(draft.state, draft.today)
    if name is None or coming is None or week_of(draft) is not None:
        return False
    before = plans_of(draft)
    turn = Turn(workout=name, since=draft.today, after=draft.memory.last_workout)
    draft.remember(turn=turn, moved_workout=name if draft.memory.moved_workout else None)
    now = in_turn(draft.state, draft.today) or coming
    draft.notice("turn taken", workout=name, on=None if draft.memory.joining else now.on.isoformat())
    if draft.state.workouts and name != coming.workout:
        facts = {"client": draft.client.name, "workout": name, "instead_of": coming.workout}
        draft.tell_coach(Notice(topic="client turn", facts=facts))
    keep_plans(draft, before)
    return True


def said_next(draft: Draft, text: str) -> str | None:
    """Return the workout of the programme that `text` as a whole says to be next."""
    stored = draft.client.programme
    said = " ".join(text.casefold().replace("’", "'").split())
    for workout in stored.programme.workouts if stored else ():
        if _says_next(re.escape(workout.name.casefold())).fullmatch(said):
            return workout.name
    return None


def _says_next(name: str) -> Expression:
    return Expression(
        rf"(?:my |the )?next (?:one |workout |session |up )?(?:is |was |should be |would be |comes )?{name}"
        r"(?: day)?"
        rf"|(?:and |then )?{name}(?: day)?(?:'s| is| comes| should be| would be)?(?: up)? next(?: up)?"
        rf"|i(?:'m| am) (?:now )?(?:at|up to) {name}"
        rf"|(?:i )?(?:continue|go on|carry on) (?:with|at) {name}"
    )
