"""What a coach's message was taken for, in words: what is asked for, of whom, and what exercises."""

from bot.wording.reader import listed
from domain.understood import CoachTakenFor, Meant, Of
from persistence.understood import Ordered

COACH_TAKEN_FOR: dict[CoachTakenFor, str] = {
    "notes": "to see your notes",
    "forget note": "to forget a note",
    "forget that note": "to forget the note made last",
    "hand over": "to hand a client over to another coach",
    "keep": "to keep a client who is offered to another coach",
    "invitations": "to see the open invitations",
    "who needs me": "who needs you",
    "who trains": "who trains when",
    "who stalled": "who has a stall",
    "who hurts": "who has pain",
    "who missed": "who has missed workouts",
    "who asked": "who waits for an answer",
    "who is due a review": "whose review is due",
    "who is new": "who is new",
    "who is away": "who is away",
    "card": "to see how a client is doing",
    "sets": "to see what a client did",
    "talk": "to see what you and a client wrote to each other",
    "why": "the reasons of a verdict, a target or a stall",
    "reminder": "another hour for a client's reminder",
    "rest more": "more rest before the next workout",
    "swap": "another exercise in the place of one",
    "back": "to have an exercise again",
    "leave out": "to leave an exercise out",
    "assign": "to put clients on a programme",
    "update": "to move clients to the newest version of their programme",
    "release": "to let a client train",
    "undo": "to take the last change back",
    "programmes": "to see your programmes",
    "remedies": "which remedies have worked",
    "help": "to see what can be asked",
    "days": "another day for a workout, which is for the client to choose",
    "of the sheet": "other sets, reps, loads or days between workouts, which the sheet has",
    "of erasing": "to erase a client, which is for the client alone to say",
    "who is on": "who is on a programme",
    "tell": "words to be passed on",
    "note": "a note, for you alone",
    "a sheet": "a programme's sheet",
    "an edit of no sheet": "an edit; only of a sheet is one read again",
    "an answer to an offer": "an answer to another coach's offer",
    "the coach's hours": "the hours at which to write to you",
    "when the digest comes": "the digest, or when it comes",
    "a rule for stalls": "after how many workouts to tell of a stall",
    "a picture or a journal": "a picture or a journal",
    "own training": "your own training",
    "an invitation": "an invitation",
    "a courtesy": "a kind word that asks for nothing",
    "nobody known": "something of somebody who is no client of yours",
    "either role": "something of your own training or of a client's: you were asked which",
    "an order": "what the coach has decided",
}

_PIECES: dict[Of, tuple[str, str]] = {
    "request": ("Asked for", "what is wanted"),
    "client": ("Client", "a client"),
    "exercise": ("Exercise", "an exercise"),
    "instead": ("Instead", "the exercise instead"),
    "clock": ("Hour", "an hour"),
    "number": ("Number", "a number"),
    "programme": ("Programme", "a programme"),
    "coach": ("Coach", "a coach"),
    "name": ("Name", "a name"),
    "day": ("Day", "a day"),
    "which": ("Which note", "which note"),
    "every": ("Which note", "all notes"),
    "text": ("Words", "the words themselves"),
}
"""The head of each piece of a request, and what its words became."""

AS_TYPED: frozenset[Of] = frozenset({"request", "text"})
"""What is said by the words themselves."""


def became(piece: Meant) -> str:
    """Return what the words of a piece became."""
    if piece.of != "client":
        return _PIECES[piece.of][1]
    return " or ".join(piece.means) if piece.means else "all clients"


def pieces_meant(
    text: str, meant: tuple[Meant, ...], orders: tuple[Ordered, ...]
) -> list[tuple[str, str, str]]:
    """Return each piece of a request as its head, what it means, and the words of `text` that it came from.

    Which exercise is meant, each client's own decision has found out. A client who is named nowhere is told
    by the order.
    """
    told = [
        (_PIECES[each.of][0], _meaning(text, each, orders), text[each.start : each.end])
        for each in meant
        if each.of not in AS_TYPED
    ]
    if not any(each.of == "client" for each in meant) and orders:
        told.append(("Client", listed(list(dict.fromkeys(each.client for each in orders))), ""))
    spoken = {each.of for each in meant}
    beside = {
        name
        for order in orders
        for each in (order.understood.meant if order.understood else ())
        if each.of not in spoken
        for name in each.means
    }
    return [*told, *(("Exercise", name, "") for name in sorted(beside))]


def _meaning(text: str, piece: Meant, orders: tuple[Ordered, ...]) -> str:
    if piece.of == "client":
        return became(piece)
    if piece.of not in {"exercise", "instead"}:
        return text[piece.start : piece.end]
    found: dict[str, list[str]] = {}
    for order in orders:
        for each in order.understood.meant if order.understood else ():
            if each.of == piece.of:
                found.setdefault(_one_of(each.means), []).append(order.client)
    if not found:
        return text[piece.start : piece.end]
    if len(found) == 1:
        return next(iter(found))
    return "; ".join(f"{listed(clients)}: {names}" for names, clients in found.items())


def _one_of(names: tuple[str, ...]) -> str:
    return " or ".join(names) if names else "none that is known"
