"""Putting clients on a programme: what changes for each of them is shown before, and can be undone.

Clients for whom the same changes are shown together.
"""

from collections.abc import Iterable
from typing import Any

from domain.actions import TakeBackAll
from domain.authority import has_client
from domain.coach.draft import Draft
from domain.coach.programmes import ask_programme, programme_named
from domain.coach.yes_no import is_no, is_yes
from domain.incoming import Assigned, Undone
from domain.memory import Waiting
from domain.programme_changes import carried_over, changes_between
from domain.state import Standing, StoredProgramme
from domain.values import facts_of

CHANGE_IT = "Change it"
REFUSE = "Leave it"


def assign(draft: Draft, clients: tuple[int, ...], programme: str) -> None:
    """Put clients on the programme of that name; ask which one where there is none."""
    chosen = programme_named(draft, programme)
    if chosen is None:
        who = [draft.name_of(each) for each in clients]
        ask_programme(draft, "assign", {"clients": list(clients), "who": who}, named=programme)
        return
    assign_to(draft, clients, chosen)


def assign_to(draft: Draft, clients: Iterable[int], chosen: StoredProgramme) -> None:
    """Show what changes for clients on a programme, and ask; who has none yet is put on it at once."""
    clients = tuple(clients)
    on_it = [number for number in clients if number_of(draft, number) == chosen.number]
    without = [number for number in clients if number_of(draft, number) is None]
    others = [number for number in clients if number not in {*on_it, *without}]
    if on_it:
        draft.notice(
            "on it already", names=[draft.name_of(each) for each in on_it], programme=chosen.programme.name
        )
    if not others:
        put_on(draft, without, chosen)
        return
    facts = {
        "programme": chosen.programme.name,
        "version": chosen.version,
        "groups": groups_of(draft, others, chosen),
        "without": [draft.name_of(each) for each in without],
    }
    about = {"programme": chosen.number, "clients": [*others, *without]}
    draft.ask("programme", about, facts, (CHANGE_IT, REFUSE))


def number_of(draft: Draft, client: int) -> int | None:
    """Return the number of the programme that a client is on."""
    stored = standing_of(draft, client).programme
    return None if stored is None else stored.number


def standing_of(draft: Draft, client: int) -> Standing:
    """Return how a client stands with the programme."""
    return draft.state.standings.get(client, Standing())


def groups_of(draft: Draft, clients: Iterable[int], chosen: StoredProgramme) -> list[dict[str, Any]]:
    """Return for each programme that clients come from what changes, and whose history goes on in what."""
    groups: dict[int, dict[str, Any]] = {}
    for client in clients:
        standing, name = standing_of(draft, client), draft.name_of(client)
        before = standing.programme
        if before is None:
            continue
        group = groups.setdefault(
            before.number,
            {
                "before": before.programme.name,
                "version": before.version,
                "clients": [],
                "changes": facts_of(changes_between(before.programme, chosen.programme)),
                "histories": [],
                "swaps": [],
            },
        )
        group["clients"].append(name)
        goes_on, anew = carried_over(chosen.programme, standing.done)
        history = {"goes_on": list(goes_on), "anew": list(anew)}
        same = next((each for each in group["histories"] if each["history"] == history), None)
        if same is None:
            group["histories"].append({"clients": [name], "history": history})
        else:
            same["clients"].append(name)
        group["swaps"] += [
            {"client": name, "exercise": exercise, "instead": instead} for exercise, instead in standing.swaps
        ]
    return list(groups.values())


def answer_assigning(draft: Draft, waiting: Waiting, text: str) -> bool:
    """Take the answer to whether clients are to be put on a programme; return False where it is none."""
    refuses = is_no(text, REFUSE)
    if waiting.slot != "programme" or not (refuses or is_yes(text, CHANGE_IT, "change")):
        return False
    draft.remember(waiting=None)
    if refuses:
        draft.notice("programmes left")
        return True
    number = int(waiting.about["programme"])
    chosen = next((each for each in draft.state.programmes if each.number == number), None)
    if chosen is None:
        draft.notice("newer version since")
        return True
    own = [each for each in waiting.about["clients"] if has_client(draft.state, each)]
    if not own:
        draft.notice("not your client")
    put_on(draft, own, chosen)
    return True


def put_on(draft: Draft, clients: list[int], chosen: StoredProgramme) -> None:
    """Put clients on a programme; of several say it once, with one button to undo it for all."""
    several = len(clients) > 1
    draft.order_all(
        clients,
        Assigned(coach=draft.number, programme=chosen.number, change=draft.message, to_several=several),
    )
    if several:
        names = [draft.name_of(each) for each in clients]
        draft.notice("programme given to several", names=names, programme=chosen.programme.name)
        draft.offer(TakeBackAll(clients=tuple(clients), change=draft.message))


def undo_for_all(draft: Draft, clients: Iterable[int], change: int) -> None:
    """Undo what message `change` has changed for several clients; of several say it once."""
    own = [each for each in clients if has_client(draft.state, each)]
    if not own:
        draft.notice("not your client")
    draft.order_all(own, Undone(coach=draft.number, change=change, to_several=len(own) > 1))
    if len(own) > 1:
        draft.notice("undone for several", names=[draft.name_of(each) for each in own])


def on_older(draft: Draft, chosen: StoredProgramme) -> tuple[int, ...]:
    """Return the clients who are on an older version of a programme."""
    return tuple(
        number
        for number, _ in draft.names
        if (before := standing_of(draft, number).programme) is not None
        and before.programme.name == chosen.programme.name
        and before.number != chosen.number
    )


def update(draft: Draft, programme: str | None) -> None:
    """Show what changes for all who are on an older version of a programme, or of the only such one."""
    if programme is not None:
        chosen = programme_named(draft, programme)
        candidates = [] if chosen is None else [chosen]
    else:
        candidates = [each for each in draft.state.programmes if on_older(draft, each)]
    if programme is not None and not candidates:
        ask_programme(draft, "update", {}, named=programme)
    elif len(candidates) > 1:
        ask_programme(draft, "update", {}, names=[each.programme.name for each in candidates])
    elif not candidates or not on_older(draft, candidates[0]):
        draft.notice("nobody on older", programme=candidates[0].programme.name if candidates else None)
    else:
        assign_to(draft, on_older(draft, candidates[0]), candidates[0])
