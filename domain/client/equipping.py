"""What a client has to train with, as it changes: what takes whose place then, and what is out of reach."""

from collections.abc import Collection, Iterable, Sequence
from dataclasses import replace
from typing import Any, TypeVar

from domain.actions import Words
from domain.client.draft import Draft
from domain.client.lines import Line, line_for, lines_of
from domain.equipment import Equipment
from domain.equipment_words import told
from domain.outcome import SettingsKept
from domain.parts import Notice
from domain.programme import Prescription
from domain.state import Client, ClientState
from domain.topics import Topic

Each = TypeVar("Each")


def take_equipment(draft: Draft, text: str) -> bool:
    """Change the equipment where `text` says what there is, or is no more; return whether it did."""
    equipment = told(text, draft.client.equipment, without_of(draft.client))
    if equipment is not None:
        set_equipment(draft, equipment)
    return equipment is not None


def without_of(client: Client) -> tuple[str, ...]:
    """Return the equipment that the sheet has something else for, in the coach's words."""
    stored = client.programme
    return tuple(
        dict.fromkeys(
            other.without
            for workout in (stored.programme.workouts if stored else ())
            for line in workout.prescriptions
            for other in line.alternatives
            if other.why == "equipment"
        )
    )


def set_equipment(draft: Draft, equipment: Equipment) -> None:
    """Keep what the client has to train with, and say what comes of it; targets can be loaded with it."""
    tell_equipment(draft, keep_equipment(draft, equipment))


def keep_equipment(draft: Draft, equipment: Equipment) -> dict[str, Any]:
    """Keep what the client has to train with; return what comes of it, as it is said."""
    before, was = draft.client.equipment, by_place(draft.state)
    changed = [of for of in Equipment.model_fields if getattr(equipment, of) != getattr(before, of)]
    draft.change(SettingsKept(replace(draft.client, equipment=equipment)))
    now = by_place(draft.state)
    differ = [place for place in now if now[place] != was[place]]
    return {
        "equipment": equipment.model_dump(mode="json"),
        "changed": changed,
        "had": [each for each in before.lacking if each not in equipment.lacking],
        "instead": distinct(
            [replaced, now[place].exercise]
            for place in differ
            if (replaced := now[place].instead_of) is not None
            and now[place].exercise != was[place].exercise
            and not now[place].out_of_reach
        ),
        "back": distinct(
            now[place].exercise
            for place in differ
            if not now[place].out_of_reach and (was[place].instead_of is not None or was[place].out_of_reach)
            if now[place].instead_of is None
        ),
        "nothing_for": out_of_reach([now[place] for place in differ]),
        "again": out_of_reach([was[place] for place in differ if not now[place].out_of_reach]),
        "coach": draft.client.coach.name,
    }


def tell_equipment(draft: Draft, facts: dict[str, Any]) -> None:
    """Say what comes of other equipment, and tell the coach of what cannot be done any more, or can be."""
    draft.notice("equipment kept", **facts)
    tell_coach_of(draft, "nothing instead", facts["nothing_for"])
    tell_coach_of(draft, "within reach again", facts["again"])


def take_as_there(
    draft: Draft, exercises: Collection[str], workouts: Collection[int]
) -> dict[str, Any] | None:
    """Take as there again what sets of `exercises` show to be there; return what comes of it, None: nothing.

    They show it where the sheet has nothing else in the place, or where in the `workouts` they are of several
    replaced ones were done. Of one that has something in its place the client is only offered to say so, as a
    set of it may well be done somewhere else.
    """
    equipment = draft.client.equipment
    told = [
        (line_for(draft.state, each), blocking)
        for each in prescriptions_of(draft.client)
        if equipment.lacking and each.exercise in exercises
        if (blocking := what_blocks(draft.state, each))
    ]
    done = {each.set.exercise for each in draft.state.entries if each.workout in workouts}
    replaced = {
        each.exercise
        for each in prescriptions_of(draft.client)
        if equipment.lacking and each.exercise in done and what_blocks(draft.state, each)
    }
    if not told:
        return None
    shown = [thing for line, blocking in told if line.out_of_reach for thing in blocking]
    if len(replaced) > 1:
        shown = [thing for _, blocking in told for thing in blocking]
    if not shown:
        draft.offer(Words(text=f"I have {with_article(told[0][1][0])} again", once=True))
        return None
    draft.offer(Words(text=f"I have no {shown[0]}", once=True))
    there = tuple(each for each in equipment.lacking if each not in shown)
    return keep_equipment(draft, equipment.model_copy(update={"lacking": there}))


def prescriptions_of(client: Client) -> tuple[Prescription, ...]:
    """Return all lines of the client's sheet."""
    workouts = client.programme.programme.workouts if client.programme else ()
    return tuple(line for workout in workouts for line in workout.prescriptions)


def what_blocks(state: ClientState, prescription: Prescription) -> tuple[str, ...]:
    """Return the things, in the client's words, for the lack of which the sheet's exercise is not done."""
    return tuple(
        each
        for each in state.client.equipment.lacking
        if not is_done_lacking(state, prescription, (each,)) and is_done_lacking(state, prescription, ())
    )


def is_done_lacking(state: ClientState, prescription: Prescription, lacking: tuple[str, ...]) -> bool:
    """Return whether the sheet's own exercise is done by who lacks no more than that."""
    equipment = state.client.equipment.model_copy(update={"lacking": lacking})
    line = line_for(replace(state, client=replace(state.client, equipment=equipment)), prescription)
    return line.exercise == prescription.exercise and not line.out_of_reach


def with_article(thing: str) -> str:
    """Return the name of a thing as one speaks of it: "a leg press", "dip bars"."""
    is_plural = thing.endswith("s") and not thing.endswith("ss")
    return thing if is_plural else f"{'an' if thing[0] in 'aeiou' else 'a'} {thing}"


def by_place(state: ClientState) -> dict[tuple[str, int], Line]:
    """Return the lines of all workouts as they stand, each by its workout and its place there."""
    stored = state.client.programme
    return {
        (workout.name, place): line
        for workout in (stored.programme.workouts if stored else ())
        for place, line in enumerate(lines_of(state, workout.name))
    }


def out_of_reach(lines: Iterable[Line]) -> list[str]:
    """Return the sheet's names of those `lines` that cannot be done, each once."""
    return distinct(line.instead_of or line.exercise for line in lines if line.out_of_reach)


def tell_coach_of(draft: Draft, topic: Topic, exercises: Sequence[str]) -> None:
    """Tell the coach of exercises, where there are any."""
    if exercises:
        facts = {"client": draft.client.name, "exercises": list(exercises)}
        draft.tell_coach(Notice(topic=topic, facts=facts))


def distinct(several: Iterable[Each]) -> list[Each]:
    """Return each of `several` once, in their order."""
    found: list[Each] = []
    for each in several:
        if each not in found:
            found.append(each)
    return found
