"""Taking an undo back: "no, put it back". What an undo came to is remembered, so that it can be had again.

That holds until something else is recorded or planned: then it could no longer be as it was.
"""

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta

from domain.actions import Words
from domain.client.draft import Draft
from domain.client.plans import PLANS, plans_of
from domain.client.recording import new_entry, recheck
from domain.expressions import Expression
from domain.journal import Entry
from domain.memory import PutRight, Undone
from domain.outcome import Recorded, SettingsKept, WorkoutKept
from domain.values import facts_of

REDO = Words(text="Put it back", once=True)

REDONE_WITHIN = timedelta(days=1)
"""For how long an undo can be taken back. The house's own choice."""

_IT = r"(?:it|that|them|this|those|everything|(?:the|my|that) (?:last )?[a-z -]{2,25})"
_OH = (
    r"(?:(?:no|oh|oops|sorry|wait|ah|hm+|actually|please|ok|okay|but|my mistake|my bad|hang on|hold on|"
    r"can you|could you)[,.!]* )*"
)
_WAYS = (
    rf"redo(?: {_IT})?",
    rf"(?:put|bring|give|get|add) {_IT} back(?: in| again)?",
    rf"restore {_IT}",
    rf"(?:i )?(?:want|need) {_IT} back",
    r"(?:undo|reverse|cancel) (?:the|that|my|this) undo(?:ing)?",
    rf"(?:keep|leave) {_IT}(?: in| there)?",
    rf"do(?:n't| not) (?:undo|delete|remove|take) {_IT}(?: back| out)?",
    rf"(?:i )?(?:didn't|did not|don't) (?:mean|want) to(?: undo| delete| take)?(?: {_IT})?(?: back)?",
    rf"{_IT} (?:was|were) (?:right|correct|fine|ok|okay)",
)
_REDO = Expression(
    rf"{_OH}(?:{'|'.join(_WAYS)})"
    r"(?: please| again| after all| as (?:it|they|that) (?:was|were)(?: before)?| the way it was)*"
)


def undoing(draft: Draft, undo: Callable[[], None]) -> None:
    """Carry out `undo`, and remember what it took back."""
    entries, workouts = draft.state.entries, draft.state.workouts
    put_right, plans = draft.memory.put_right, plans_of(draft)
    before, mass = draft.memory.plans_before, draft.client.body_mass
    undo()
    left = {entry.number for entry in draft.state.entries}
    stood = {entry.number for entry in entries}
    gone = tuple(entry for entry in entries if entry.number not in left)
    changed = plans.model_copy(update={"message": 0, "at": None})
    has_plans = changed != plans_of(draft).model_copy(update={"message": 0, "at": None})
    if not gone and not has_plans and mass == draft.client.body_mass:
        return
    records = {each.number: each for each in workouts}
    undone = Undone(
        at=draft.at,
        entries=gone,
        instead_of=tuple(entry.number for entry in draft.state.entries if entry.number not in stood),
        workouts=tuple(records[number] for number in dict.fromkeys(entry.workout for entry in gone)),
        put_right=put_right if gone else (),
        plans=plans if has_plans else None,
        plans_before=before if has_plans else None,
        body_mass=mass if mass != draft.client.body_mass else None,
        last_entry=draft.memory.last_entry,
        left=plans_of(draft),
    )
    draft.remember(undone=undone)
    draft.offer(REDO)


def take_redo(draft: Draft, text: str) -> bool:
    """Put back what was last taken back, where `text` asks for just that; return whether it does."""
    undone = draft.memory.undone
    said = " ".join(text.casefold().replace("’", "'").split()).rstrip(".! ")
    if undone is None or draft.at - undone.at > REDONE_WITHIN or _REDO.fullmatch(said) is None:
        return False
    draft.remember(undone=None)
    if is_overtaken(draft, undone):
        draft.notice("not put back")
        return True
    redo(draft, undone)
    return True


def is_overtaken(draft: Draft, undone: Undone) -> bool:
    """Return whether something was recorded or planned since."""
    now = plans_of(draft).model_copy(update={"message": 0, "at": None})
    return (
        undone.last_entry != draft.memory.last_entry
        or now != undone.left.model_copy(update={"message": 0, "at": None})
        or draft.memory.barred
    )


def redo(draft: Draft, undone: Undone) -> None:
    """Let all be as it was before the undo, and say so."""
    for workout in undone.workouts:
        draft.change(WorkoutKept(workout))
    again = {entry.number: stand_in_place(draft, undone, entry) for entry in undone.entries}
    if again:
        draft.remember(put_right=tuple(renumbered(each, again) for each in undone.put_right))
        recheck(draft, [(entry.workout, entry.set.exercise) for entry in undone.entries])
    if undone.plans is not None:
        draft.remember(
            plans_before=undone.plans_before, **{name: getattr(undone.plans, name) for name in PLANS}
        )
    if undone.body_mass is not None:
        draft.remember(body_mass_before=draft.client.body_mass, body_mass_told_in=draft.message)
        draft.change(SettingsKept(replace(draft.client, body_mass=undone.body_mass)))
    draft.notice(
        "put back",
        sets=[facts_of(entry.set) for entry in undone.entries],
        plans=undone.plans is not None,
        mass=None if undone.body_mass is None else f"{undone.body_mass.normalize():f}",
        unit=draft.client.unit,
    )


def stand_in_place(draft: Draft, undone: Undone, entry: Entry) -> int:
    """Record `entry` once more, in its place, instead of what the undo let stand there; return its number."""
    stands = next(
        (
            each.number
            for each in draft.state.entries
            if each.number in undone.instead_of and each.order[0] == entry.order[0]
        ),
        None,
    )
    again = replace(new_entry(draft, entry.workout, entry.set, entry.message, entry.order[0]), at=entry.at)
    draft.change(Recorded(again, instead_of=stands))
    return again.number


def renumbered(put_right: PutRight, again: dict[int, int]) -> PutRight:
    """Return what an entry had put right, of the entry that stands for it now."""
    return put_right.model_copy(
        update={
            "entry": again.get(put_right.entry, put_right.entry),
            "replaced": again.get(put_right.replaced, put_right.replaced),
        }
    )
