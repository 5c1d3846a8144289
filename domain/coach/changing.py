"""One change for several clients, said back once with one button that undoes it for all."""

from domain.actions import TakeBackAll
from domain.clock_words import clock_of
from domain.coach.draft import Draft
from domain.incoming import Changed
from domain.wishes import ReminderWish, RestWish, Wish


def change(draft: Draft, clients: tuple[int, ...], wish: Wish) -> None:
    """Change one thing for clients. What comes to the same for several is said here, else by each client."""
    facts = _same_for_all(wish) if len(clients) > 1 else {}
    order = Changed(coach=draft.number, change=draft.message, wish=wish, to_several=bool(facts))
    draft.order_all(clients, order)
    if facts:
        draft.notice("changed for several", names=[draft.name_of(each) for each in clients], **facts)
        draft.offer(TakeBackAll(clients=clients, change=draft.message))


def _same_for_all(wish: Wish) -> dict[str, str | int]:
    """Return what a change comes to, where that is the same whoever the client is."""
    match wish:
        case ReminderWish(clock=clock) if (said := clock_of(clock)) is not None:
            return {"at": f"{said.as_said:%H:%M}"}
        case RestWish(days=days):
            return {"days": days}
        case _:
            return {}
