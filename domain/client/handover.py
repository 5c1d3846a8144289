"""A client goes from one coach to another: offered, taken on or not, and then all that is open goes along.

The client's own decision carries it out, so that it happens at one moment, whole. What the client does is as
before; the former coach sees nothing of it any more.
"""

from dataclasses import replace
from datetime import timedelta

from domain.actions import Keep, TakeOn
from domain.client.card import show_card
from domain.client.draft import Draft
from domain.incoming import OfferAnswered, OfferMade
from domain.memory import Brought
from domain.outcome import HandedOver, OfferKept, SettingsKept
from domain.parts import Notice
from domain.state import Coach, Offer

OFFER_LASTS = timedelta(days=14)
"""How long another coach can think it over. The house's own choice."""


def offer(draft: Draft, order: OfferMade) -> None:
    """Ask another coach whether to take this client on; no more is told before that than who it is."""
    withdraw(draft, but=order.to)
    client = draft.client
    draft.change(OfferKept(Offer(order.to, order.to_name, draft.at, order.with_notes)))
    remember_told(draft, order.to)
    facts = {
        "client": client.name,
        "coach": client.coach.name,
        "programme": client.programme.programme.name if client.programme else None,
        "days": OFFER_LASTS.days,
    }
    draft.tell(
        order.to,
        Notice(topic="client offered", facts=facts),
        buttons=tuple(TakeOn(client=client.number, name=client.name, takes=takes) for takes in (True, False)),
    )
    draft.tell_coach(
        Notice(
            topic="offer made", facts={"client": client.name, "to": order.to_name, "days": OFFER_LASTS.days}
        ),
        buttons=(Keep(client=client.number, name=client.name),),
        weight="answer",
    )


def withdraw(draft: Draft, but: int | None = None) -> bool:
    """Take an open offer back, and tell whom it was made to unless that is `but`; return whether one was."""
    made = draft.state.offer
    if made is None:
        return False
    draft.change(OfferKept(None))
    if made.to != but and draft.at - made.at <= OFFER_LASTS:
        facts = {"client": draft.client.name, "coach": draft.client.coach.name}
        draft.tell(made.to, Notice(topic="offer withdrawn", facts=facts))
    return True


def answered(draft: Draft, order: OfferAnswered) -> None:
    """Carry out what the other coach has answered."""
    made = draft.state.offer
    if made is None or draft.at - made.at > OFFER_LASTS:
        draft.change(OfferKept(None))
        draft.tell(order.coach, Notice(topic="offer is over"))
    elif order.takes and draft.state.offered_to is not None:
        hand_over(draft, draft.state.offered_to, order.name, with_notes=made.with_notes)
    else:
        draft.change(OfferKept(None))
        facts = {"client": draft.client.name, "to": made.to_name, "coach": draft.client.coach.name}
        draft.tell(made.to, Notice(topic="offer declined", facts=facts))
        draft.tell_coach(Notice(topic="offer refused", facts=facts))


def hand_over(draft: Draft, to: Coach, name: str | None, *, with_notes: bool) -> None:
    """Make this client the other coach's, and tell all three; what is open comes with the card.

    The client is called `name` from then on, where that is given.
    """
    before, was_called = draft.client.coach, draft.client.name
    draft.change(HandedOver(to, with_notes))
    if name is not None:
        draft.change(SettingsKept(replace(draft.client, name=name)))
    remember_told(draft, before.number)
    draft.remember(told_at=None, brought=tuple(Brought(alert=each.number) for each in draft.state.alerts))
    draft.notice("your new coach", coach=to.name, before=before.name)
    gone = {"client": was_called, "to": to.name, "with_notes": with_notes}
    draft.tell(before.number, Notice(topic="client handed over", facts=gone))
    draft.tell_coach(
        Notice(topic="client taken on", facts={"client": draft.client.name, "before": before.name}),
        weight="answer",
    )
    show_card(draft)


def remember_told(draft: Draft, coach: int) -> None:
    """Remember that this coach was told of the client, so that an erasure reaches those words as well."""
    others = (each for each in draft.memory.other_coaches if each != coach)
    draft.remember(other_coaches=(*others, coach))
