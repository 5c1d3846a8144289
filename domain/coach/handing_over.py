"""A client handed to another coach: asked for, offered, and on the other side taken on or not.

What becomes of it is decided on the client's side (`domain.client.handover`).
"""

from datetime import timedelta
from typing import Any

from domain.actions import Keep, TakeOn
from domain.authority import has_client, is_offered
from domain.called import plain, the_one_named
from domain.coach.draft import Draft
from domain.coach.naming import ClientNames, with_names
from domain.coach.notes import notes_on
from domain.coach.phrases import DECLINES, TAKES
from domain.coach.yes_no import bare, is_no, is_yes
from domain.incoming import OfferAnswered, OfferMade, OfferWithdrawn
from domain.memory import Waiting
from domain.reading.message import message_of
from domain.state import OfferedClient

OFFER = "Ask {coach}"
WITH_NOTES = "With my notes"
WITHOUT_NOTES = "Without my notes"
NEVER_MIND = "Never mind"

ANSWERS_WITHIN = timedelta(hours=1)
"""For how long a bare yes can be the answer to an offer. The house's own choice."""

_WITH = frozenset({"with", "with notes", "with the notes", "with my notes", "yes with my notes", "with them"})
_WITHOUT = frozenset({"without", "without notes", "without the notes", "without my notes", "without them"})
_TAKING = ("accept", "i accept", "take", "i take", "i do", "with pleasure", "gladly")
_DECLINING = ("decline", "i decline", "refuse", "i can't", "i cannot", "sorry no")


def coach_named(draft: Draft, name: str) -> tuple[int, str] | None:
    """Return the other coach of that name, or the only one with it in the name."""
    said = plain(name).removeprefix("coach ")
    return the_one_named(said, [(known, (number, known)) for number, known in draft.state.coaches])


def ask_to_hand_over(draft: Draft, clients: tuple[int, ...], name: str) -> None:
    """Ask whether a client is really to be offered to the coach of that name, and what of the notes."""
    found = coach_named(draft, name)
    if found is None:
        draft.notice("unknown coach", name=name)
        return
    if len(clients) != 1:
        draft.notice("one at a time")
        return
    (client,) = clients
    to, to_name = found
    notes = len(notes_on(draft, client))
    about: dict[str, Any] = {"client": client, "to": to, "to_name": to_name, "notes": notes}
    facts = {"client": draft.name_of(client), "to": to_name, "notes": notes}
    yes = (WITH_NOTES, WITHOUT_NOTES) if notes else (OFFER.format(coach=to_name),)
    draft.spoke_of(client)
    draft.ask("handover", about, facts, (*yes, NEVER_MIND))


def answer_handover(draft: Draft, waiting: Waiting, text: str) -> bool:
    """Take the answer to whether a client is to be offered; return False where it is none."""
    if waiting.slot != "handover":
        return False
    said = bare(text)
    about = waiting.about
    has_notes = bool(about["notes"])
    if is_no(text):
        draft.remember(waiting=None)
        draft.notice("nothing handed over")
        return True
    agrees = is_yes(text, OFFER.format(coach=about["to_name"]), "ask")
    if not (said in _WITH | _WITHOUT if has_notes else agrees):
        return False
    draft.remember(waiting=None)
    order = OfferMade(
        coach=draft.number,
        to=int(about["to"]),
        to_name=str(about["to_name"]),
        with_notes=has_notes and said in _WITH,
    )
    draft.order(int(about["client"]), order)
    return True


def keep(draft: Draft, client: int) -> None:
    """Keep a client who is offered to another coach."""
    draft.order(client, OfferWithdrawn(coach=draft.number))


def take_offer(draft: Draft, text: str) -> bool:
    """Take the answer to an offer of another coach's; return whether it was that."""
    offers = draft.state.offered
    if not offers:
        return False
    takes, declines = is_yes(text, *_TAKING), is_no(text, *_DECLINING)
    recent = [each for each in offers if draft.at - each.at <= ANSWERS_WITHIN]
    if len(recent) == 1 and (takes or declines) and draft.memory.waiting is None:
        answer_offer(draft, recent[0], takes=takes and not declines)
        return True
    message = message_of(text)
    names = ClientNames([(each.client, each.name) for each in offers]).find(message)
    if not names or len(names[0].fits) != 1:
        return False
    named = with_names(message, names[:1]).message
    (offer,) = [each for each in offers if each.client == names[0].fits[0]]
    for pattern in TAKES:
        if (hit := pattern.at(named, 0)) is not None:
            place = hit.parts.get("name")
            name = _typed(text, named, place) if place else None
            answer_offer(draft, offer, takes=True, name=name)
            return True
    if any(pattern.at(named, 0) is not None for pattern in DECLINES):
        answer_offer(draft, offer, takes=False)
        return True
    return False


def _typed(text: str, message: Any, place: tuple[int, int]) -> str:
    tokens = message.tokens[place[0] : place[1]]
    return text[tokens[0].start : tokens[-1].end].strip()


def press_offer(draft: Draft, action: TakeOn) -> None:
    """Take a button's answer to an offer; one that no longer stands is said to be over."""
    if not is_offered(draft.state, action.client):
        draft.notice("offer is over")
        return
    (offer,) = [each for each in draft.state.offered if each.client == action.client]
    answer_offer(draft, offer, takes=action.takes)


def press_keep(draft: Draft, action: Keep) -> None:
    """Keep a client by the button beside the offer."""
    if has_client(draft.state, action.client):
        keep(draft, action.client)
    else:
        draft.notice("not your client")


def answer_offer(draft: Draft, offer: OfferedClient, *, takes: bool, name: str | None = None) -> None:
    """Answer an offer; no two clients of one coach have the same name."""
    called = name or offer.name
    if takes and plain(called) in {plain(each) for _, each in draft.names}:
        draft.notice("take on as", name=called)
        return
    draft.order(offer.client, OfferAnswered(coach=draft.number, takes=takes, name=name))
