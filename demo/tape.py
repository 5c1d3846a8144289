"""Everything that happened while the weeks were played, in order, and whose story each thing belongs to."""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.play.engine import Said
from bot.play.script import Step
from domain.parts import Part


@dataclass(frozen=True, slots=True)
class Happening:
    """Something done or said. `client` is whose story it belongs to; None for the coach's own affairs."""

    event: Step | Said
    client: str | None


class Tape:
    """An audience of the play that remembers."""

    def __init__(self, clients: frozenset[str]) -> None:
        """`clients` are the clients' names."""
        self._clients = clients
        self._events: list[Step | Said] = []

    def __call__(self, event: Step | Said) -> None:
        """Remember one event."""
        self._events.append(event)

    def happenings(self) -> Iterator[Happening]:
        """Give everything in order. What the coach does belongs to the client of whom the answer speaks."""
        for place, event in enumerate(self._events):
            match event:
                case Said():
                    yield Happening(event, self._of_message(event))
                case Step(who=who) if who in self._clients:
                    yield Happening(event, who)
                case Step():
                    answers = (later for later in self._events[place + 1 :] if isinstance(later, Said))
                    answer = next(answers, None)
                    prompt = answer is not None and answer.at == event.at
                    yield Happening(event, self._of_message(answer) if answer and prompt else None)

    def _of_message(self, said: Said) -> str | None:
        if not said.outgoing.is_coach:
            return said.outgoing.name
        named = (name for part in said.outgoing.say.parts if (name := client_of(part)) in self._clients)
        return next(named, None)


def client_of(part: Part) -> str | None:
    """Return the client of whom a part for the coach speaks, where it is just one."""
    name = getattr(part, "client", None) or getattr(part, "facts", {}).get("client")
    return name if isinstance(name, str) else None
