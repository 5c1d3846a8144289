"""New clients, each at one of the first questions, and what an answer comes to."""

from dataclasses import replace
from datetime import timedelta

from domain.client.joining import STEPS
from domain.memory import Joining, JoiningStep
from domain.parts import Notice, Part, Question
from domain.state import ClientState
from tests.domain.client.people import SHEET, Life, at, noor

ORDER: tuple[JoiningStep, ...] = tuple(step.name for step in STEPS)

LEG_PRESS = SHEET.replace(
    "1. Goblet squat, 8-12 reps\n",
    "1. Goblet squat, 8-12 reps\n3. Leg press, 10-15 reps\n   no leg press: Leg extension, 10-15 reps\n",
)
"""A sheet that has something else where a machine is missing."""
NOW = at(1, 18, 40)


def newcomer(*settled: JoiningStep, sheet: str = SHEET) -> ClientState:
    """Return a client who has just come in, with these questions answered; the coach's settings are taken."""
    state = noor(sheet)
    memory = state.memory.model_copy(update={"joining": Joining(settled=settled), "welcomed": False})
    return replace(state, memory=memory)


def joining_at(step: JoiningStep, sheet: str = SHEET) -> Life:
    """Return the life of a newcomer who has just been asked this question."""
    life = Life(newcomer(*ORDER[: ORDER.index(step)], sheet=sheet))
    joining = life.state.memory.joining
    assert joining is not None
    if step == "guardian":
        joining = joining.model_copy(update={"is_minor": True})
        life.state = replace(life.state, memory=life.state.memory.model_copy(update={"joining": joining}))
    life.wake_at = NOW - timedelta(minutes=1)
    assert asked(life.passes_to(NOW)) == step
    return life


def asked(parts: tuple[Part, ...] | list[Part]) -> str | None:
    """Return the question that an answer ends with, if it is one of the first."""
    last = parts[-1] if parts else None
    return str(last.facts["step"]) if isinstance(last, Question) and last.slot == "joining" else None


def settled(life: Life) -> tuple[JoiningStep, ...]:
    """Return the questions that are answered."""
    joining = life.state.memory.joining
    return ORDER if joining is None else joining.settled


def notices(parts: tuple[Part, ...]) -> list[str]:
    """Return the topics of what is said."""
    return [part.topic for part in parts if isinstance(part, Notice)]


def came_to(life: Life, step: JoiningStep, said: str) -> str:
    """Say something to a question; return what it came to as the table writes it."""
    parts = life.says(said, NOW)
    if step not in settled(life):
        assert asked(parts) == step
        last = parts[-1]
        assert isinstance(last, Question)
        return "again" if last.facts.get("unread") or notices(parts) in AGAIN_WITH else "open"
    memory, client = life.state.memory, life.state.client
    match step:
        case "consent":
            return "agreed" if memory.agreed_at == NOW else "not agreed"
        case "age":
            return "minor" if asked(parts) == "guardian" else "adult"
        case "guardian":
            return "agreed" if memory.guardian_said == said else "adult"
        case "readiness":
            which = memory.clearance
            return "none" if which is None else " ".join(which.which) or "yes"
        case "unit":
            return client.unit
        case "zone":
            return client.zone
        case "hour":
            return "off" if memory.reminders_off else f"{client.remind_at:%H:%M}"
        case "equipment":
            return ", ".join(client.equipment.lacking) or "all"
        case "first day":
            return client.starts.isoformat()


AGAIN_WITH = (["later with that"], ["training later"], ["help"], ["passed on"])
"""Answers beside the question that say as well that it was not answered."""
