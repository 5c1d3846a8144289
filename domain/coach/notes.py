"""What a coach notes on a client, for the coach alone: kept, shown and forgotten."""

from domain.actions import ForgetNote, Words
from domain.authority import has_client
from domain.coach.draft import Draft
from domain.notes import LONGEST, Note
from domain.outcome import NoteForgotten, NoteKept

FORGET = "Forget that note"

SHOWN = 20
"""So many of the latest notes on one client are shown. The house's own choice."""


def notes_on(draft: Draft, client: int) -> list[Note]:
    """Return the coach's notes on one of the own clients, oldest first."""
    return [each for each in draft.state.notes if each.client == client and has_client(draft.state, client)]


def note(draft: Draft, clients: tuple[int, ...], text: str) -> None:
    """Keep a note on each of these clients."""
    if not text:
        show_notes(draft, clients)
        return
    if len(text) > LONGEST:
        draft.notice("note too long", most=LONGEST)
        return
    own = [client for client in clients if has_client(draft.state, client)]
    for client in own:
        draft.change(NoteKept(Note(0, client, text, draft.at, draft.message)))
        draft.spoke_of(client)
    if not own:
        draft.notice("not your client")
        return
    is_first = any(not notes_on(draft, client) for client in own)
    draft.remember(noted_in=draft.message)
    draft.offer(Words(text=FORGET, once=True))
    draft.notice("noted", names=[draft.name_of(client) for client in own], text=text, is_first=is_first)


def show_notes(draft: Draft, clients: tuple[int, ...]) -> None:
    """Show what is noted on these clients, with a button to forget each where it is on one."""
    rows = [
        {
            "client": draft.name_of(client),
            "notes": [
                {"on": draft.day_of(each.at).isoformat(), "text": each.text, "place": place}
                for place, each in enumerate(notes_on(draft, client), start=1)
            ][-SHOWN:],
        }
        for client in clients
        if notes_on(draft, client)
    ]
    draft.notice("notes", noted=rows, names=[draft.name_of(client) for client in clients])
    if len(clients) == 1:
        draft.spoke_of(clients[0])
        draft.offer(
            *(
                ForgetNote(client=clients[0], note=each.number, place=place)
                for place, each in list(enumerate(notes_on(draft, clients[0]), start=1))[-SHOWN:]
            )
        )


def forget_notes(draft: Draft, clients: tuple[int, ...], place: int | None, *, is_all: bool) -> None:
    """Forget the note at that `place` of a client's, or all, or without either the last one."""
    mine = [each for client in clients for each in notes_on(draft, client)]
    if place is not None:
        mine = mine[place - 1 : place] if place >= 1 else []
    elif not is_all:
        mine = mine[-1:]
    forget(draft, mine)


def forget_that_note(draft: Draft) -> None:
    """Forget the note that was made last, or else the last one on the client spoken of just now."""
    own = [each for each in draft.state.notes if has_client(draft.state, each.client)]
    last = [each for each in own if each.message == draft.memory.noted_in]
    spoken = draft.memory.spoken
    forget(draft, last or [each for each in own if spoken and each.client == spoken.client][-1:])


def press_forget(draft: Draft, action: ForgetNote) -> None:
    """Forget the note of a button."""
    if not has_client(draft.state, action.client):
        draft.notice("not your client")
        return
    forget(draft, [each for each in notes_on(draft, action.client) if each.number == action.note])


def forget(draft: Draft, gone: list[Note]) -> None:
    """Forget these notes, and say once more what they were."""
    for each in gone:
        draft.change(NoteForgotten(each.number))
    if any(each.message == draft.memory.noted_in for each in gone):
        draft.remember(noted_in=None)
    if gone:
        names = dict.fromkeys(draft.name_of(each.client) for each in gone)
        draft.notice("notes forgotten", names=list(names), count=len(gone))
    else:
        draft.notice("no such note")
