"""What a coach's message was taken for, noted with the decision: what is wanted, and of whom."""

from domain.coach.draft import Draft
from domain.coach.understanding import Asked
from domain.understood import CoachTakenFor, Meant, Understood, without_places


def note_meant(draft: Draft, request: Asked) -> None:
    """Note what is asked for, and which words mean whom."""
    clients = [
        Meant("client", *span, tuple(draft.name_of(client) for client in fits))
        for fits, span in zip(request.of, request.spans, strict=True)
    ]
    draft.understood = Understood(request.kind, meant=tuple(sorted((*request.meant, *clients), key=place_of)))


def place_of(meant: Meant) -> int:
    """Return where in the message something stands."""
    return meant.start


def note_meant_beyond(draft: Draft, request: Asked) -> None:
    """Note what is asked for in other words than the message has."""
    note_meant(draft, request)
    draft.understood = draft.understood and without_places(draft.understood)


def note_bare_name(draft: Draft, taken_for: CoachTakenFor, client: int) -> None:
    """Note what was meant of a client whom no turn of phrase names."""
    draft.understood = Understood(taken_for, meant=(Meant("client", means=(draft.name_of(client),)),))
