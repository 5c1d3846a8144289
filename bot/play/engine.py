"""Playing a script on a stage."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import UTC, datetime

from bot.channel import Rendered
from bot.enclosing import Enclose, named
from bot.play.script import Script, ScriptFault, Step
from bot.stage import NoSuchButtonError, NoSuchMessageError, NothingToEditError, Stage
from bot.textfile import read_document
from domain.parts import Notice, Part
from persistence.outbox import Outgoing
from persistence.store import Store


@dataclass(frozen=True, slots=True)
class Said:
    """A message of the bot: when (aware, UTC), and to whom."""

    at: datetime
    outgoing: Outgoing
    rendered: Rendered


Audience = Callable[[Step | Said], None]
"""Called with everything that happens, in order: what people do, and what the bot says."""


async def play(script: Script, store: Store, audience: Audience, enclose: Enclose = named) -> Stage:
    """Play all steps; return the stage as it stands at the end. Raises ScriptFault for an impossible step.

    Pictures and files are only named where `enclose` makes none.
    """

    codes = [""]

    def watch(at: datetime, outgoing: Outgoing, rendered: Rendered) -> None:
        codes.extend(codes_in(outgoing.say.parts))
        audience(Said(at.astimezone(UTC), outgoing, rendered))

    stage = Stage(store, script.steps[0].at, watch, enclose)
    for step in script.steps:
        await stage.wait_until(step.at)
        if step.who is None:
            await stage.settle()
            if step.off_until is not None:
                audience(step)
                stage.goes_off(step.off_until)
            continue
        audience(step)
        await _do(stage, script, with_code(step, codes[-1]), step.who)
    return stage


def codes_in(parts: tuple[Part, ...]) -> list[str]:
    """Return the codes of invitations that a message tells."""
    return [str(part.facts["code"]) for part in parts if isinstance(part, Notice) and part.topic == "invited"]


def with_code(step: Step, code: str) -> Step:
    """Return the step with the code of the latest invitation, which is random, where it says CODE for it."""
    return replace(step, what=f"/start {code}") if step.what == "/start CODE" and code else step


async def _do(stage: Stage, script: Script, step: Step, who: str) -> None:
    try:
        match step.deed:
            case "says" | None:
                await stage.say(who, step.what)
            case "replies":
                await stage.say(who, step.what, stage.message(who, step.to).key)
            case "edits":
                await stage.edit(who, step.what)
            case "presses":
                await stage.press(who, step.what)
            case "sends":
                path = script.folder / step.what
                await stage.bring(who, read_document(path.name, path.read_bytes()))
    except NoSuchButtonError as fault:
        there = f"; there are: {', '.join(fault.labels)}" if fault.labels else ""
        raise ScriptFault(step.line, f"{who} has no button «{fault.wanted}»{there}") from None
    except NoSuchMessageError:
        raise ScriptFault(step.line, f"there is no message with «{step.to}» in the chat of {who}") from None
    except NothingToEditError:
        raise ScriptFault(step.line, f"{who} has said nothing that could be edited") from None
    except OSError as fault:
        raise ScriptFault(step.line, f"cannot read {step.what}: {fault.strerror}") from None
