"""A client's wish for the own journal as a file."""

from domain.actions import Words
from domain.client.draft import Draft
from domain.journal_words import of_own
from domain.parts import File


def take_journal(draft: Draft, text: str) -> bool:
    """Send the journal, where the message asks for that; where no form was named, as pages to read."""
    asked = of_own(text)
    if asked is None:
        return False
    draft.say(File(what=asked.form or "journal pages", of=draft.client.number, client=draft.client.name))
    if asked.form is None:
        draft.offer(Words(text="My journal as CSV"), Words(text="Send me my data"))
    return True
