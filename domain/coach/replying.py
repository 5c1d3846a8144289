"""A coach's reply to a message about one client: words for that client, or a request about that one."""

from domain.authority import has_client, is_offered
from domain.coach.draft import Draft
from domain.coach.taken_for import note_bare_name
from domain.coach.understanding import asked
from domain.coach_memory import Spoken
from domain.courtesies import is_courtesy
from domain.incoming import ReplyTo, Told


def takes_reply(draft: Draft, text: str, reply: ReplyTo | None) -> bool:
    """Pass a reply on to the client whom the message answered was about; return whether that was meant.

    What answers somebody's words is always meant for that one. Of a reply to anything else, a request is done
    instead, in which "her" and "him" are that client.
    """
    if reply is None or reply.client is None or not text.strip():
        return False
    client = reply.client
    if is_offered(draft.state, client):
        return False  # it answers the offer, in which the client is named
    if not has_client(draft.state, client):
        draft.notice("not your client")
        return True
    if not reply.is_words:
        draft.remember(spoken=Spoken(client=client, at=draft.at))
        request = asked(text, draft.names, client)
        if is_courtesy(text) or (request is not None and request.unknown is None):
            return False
    note_bare_name(draft, "tell", client)
    draft.order(client, Told(coach=draft.number, text=text.strip(), alerts=reply.alerts))
    return True
