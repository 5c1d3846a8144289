"""Who may see what of whom, and decide on whom: a coach on own clients, and nobody else on anybody.

It is told here alone, and asked twice: as a coach says something, so that she hears at once that it cannot
be, and again as the client's own decision carries it out, since a client may have been handed to another
coach in between. A file is asked about as it goes out.
"""

from domain.incoming import CoachOrder, FromCoach, OfferAnswered
from domain.state import Client, ClientState, CoachState


def own_clients(state: CoachState) -> tuple[tuple[int, str], ...]:
    """Return the number and the name of each client whom this coach may name in a message."""
    return tuple((number, line.name) for number, line in state.clients)


def has_client(state: CoachState, client: int) -> bool:
    """Return whether this coach may see and decide on that client."""
    return any(number == client for number, _ in state.clients)


def is_offered(state: CoachState, client: int) -> bool:
    """Return whether another coach offers that client to this one, who may then take the client on."""
    return any(offer.client == client for offer in state.offered)


def may_order(state: CoachState, client: int, order: FromCoach) -> bool:
    """Return whether this coach may send that order to that client."""
    return is_offered(state, client) if isinstance(order, OfferAnswered) else has_client(state, client)


def may_decide(state: ClientState, order: CoachOrder) -> bool:
    """Return whether this client's own decision is to carry that order out."""
    if isinstance(order, OfferAnswered):
        return state.offer is not None and state.offer.to == order.coach
    return is_coached_by(state.client, order.coach)


def is_coached_by(client: Client, coach: int) -> bool:
    """Return whether that coach may see and decide on this client."""
    return client.coach.number == coach


def may_read_journal(reader: int, client: int, coach: int | None) -> bool:
    """Return whether a person may have the whole journal of `client`, whose coach is now `coach`."""
    return reader in {client, coach}


def may_read_everything(reader: int, client: int) -> bool:
    """Return whether a person may have all that is kept about `client`: only the client."""
    return reader == client
