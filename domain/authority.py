"""Who may decide on whom: a coach on own clients, and nobody else on anybody. Told here alone.

It is asked twice: as a coach says something, so that she hears at once that it cannot be, and again as the
client's own decision carries it out, since a client may have been handed to another coach in between.
"""

from domain.state import Client, CoachState


def has_client(state: CoachState, client: int) -> bool:
    """Return whether this coach may see and decide on that client."""
    return any(number == client for number, _ in state.clients)


def is_coached_by(client: Client, coach: int) -> bool:
    """Return whether that coach may see and decide on this client."""
    return client.coach.number == coach
