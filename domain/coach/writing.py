"""Words to a client that a coach begins with a button or half a sentence, and types next."""

from datetime import timedelta

from domain.actions import Write
from domain.coach.draft import Draft
from domain.coach.spreading import spread
from domain.incoming import Told

NEVER_MIND = "Never mind"

WAITS_FOR = timedelta(hours=1)
"""For how long the words are waited for: what is typed later is meant otherwise. The house's own choice."""


def begin_writing(draft: Draft, action: Write) -> None:
    """Ask what to tell the client."""
    about = {"clients": [action.client], "alert": action.alert}
    draft.ask("words", about, {"client": action.name}, (NEVER_MIND,))


def begin_writing_to(draft: Draft, clients: tuple[int, ...]) -> None:
    """Ask what to tell clients who were named without any words."""
    names = [draft.name_of(client) for client in clients]
    facts = {"client": names[0]} if len(names) == 1 else {"names": names}
    draft.ask("words", {"clients": list(clients), "alert": None}, facts, (NEVER_MIND,))


def pass_on(draft: Draft, text: str) -> bool:
    """Pass on what is typed while words for a client are awaited; return whether they were."""
    waiting = draft.memory.waiting
    if waiting is None or waiting.slot != "words" or draft.at - waiting.asked_at > WAITS_FOR:
        return False
    draft.remember(waiting=None)
    if text.strip().casefold() == NEVER_MIND.casefold():
        draft.notice("heard")
        return True
    clients, alert = waiting.about["clients"], waiting.about["alert"]
    if len(clients) > 1:
        spread(draft, tuple(clients), text.strip())
    else:
        draft.order_all(clients, Told(coach=draft.number, text=text.strip(), alert=alert))
    return True
