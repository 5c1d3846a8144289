"""What a client has to train with, as it changes: what takes whose place then, and what is out of reach."""

from collections.abc import Iterable, Sequence
from dataclasses import replace
from typing import TypeVar

from domain.client.draft import Draft
from domain.client.lines import Line, lines_of
from domain.equipment import Equipment
from domain.equipment_words import told
from domain.outcome import SettingsKept
from domain.parts import Notice
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
    """Keep what the client has to train with; targets are loadable with it from now on.

    The coach hears of what can no longer be done with it, and has nothing in its place, and once it can be.
    """
    before, was = draft.client.equipment, by_place(draft.state)
    changed = [of for of in Equipment.model_fields if getattr(equipment, of) != getattr(before, of)]
    draft.change(SettingsKept(replace(draft.client, equipment=equipment)))
    now = by_place(draft.state)
    differ = [place for place in now if now[place] != was[place]]
    nothing = out_of_reach([now[place] for place in differ])
    again = out_of_reach([was[place] for place in differ if not now[place].out_of_reach])
    draft.notice(
        "equipment kept",
        equipment=equipment.model_dump(mode="json"),
        changed=changed,
        had=[each for each in before.lacking if each not in equipment.lacking],
        instead=distinct(
            [replaced, now[place].exercise]
            for place in differ
            if (replaced := now[place].instead_of) is not None
            and now[place].exercise != was[place].exercise
            and not now[place].out_of_reach
        ),
        back=distinct(
            now[place].exercise
            for place in differ
            if not now[place].out_of_reach and (was[place].instead_of is not None or was[place].out_of_reach)
            if now[place].instead_of is None
        ),
        nothing_for=nothing,
        coach=draft.client.coach.name,
    )
    tell_coach_of(draft, "nothing instead", nothing)
    tell_coach_of(draft, "within reach again", again)


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
