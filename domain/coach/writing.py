"""Words to a client that a coach begins with a button under an alert, and types next."""

from datetime import timedelta

from domain.actions import Write
from domain.coach.draft import Draft
from domain.incoming import Told

NEVER_MIND = "Never mind"

WAITS_FOR = timedelta(hours=1)
"""For how long the words are waited for: what is typed later is meant otherwise. The house's own choice."""


def begin_writing(draft: Draft, action: Write) -> None:
    """Ask what to tell the client."""
    about = {"client": action.client, "alert": action.alert}
    draft.ask("words", about, {"client": action.name}, (NEVER_MIND,))


def pass_on(draft: Draft, text: str) -> bool:
    """Pass on what is typed while words for a client are awaited; return whether they were."""
    waiting = draft.memory.waiting
    if waiting is None or waiting.slot != "words" or draft.at - waiting.asked_at > WAITS_FOR:
        return False
    draft.remember(waiting=None)
    if text.strip().casefold() == NEVER_MIND.casefold():
        draft.notice("heard")
        return True
    client, alert = int(waiting.about["client"]), int(waiting.about["alert"])
    if all(number != client for number, _ in draft.state.clients):
        draft.notice("not your client")
        return True
    draft.order(client, Told(coach=draft.state.coach.number, text=text.strip(), alert=alert))
    return True
