"""What a change makes of a client's state. The store must come to the same; a test holds them together."""

from dataclasses import replace

from domain.entry_order import in_order, with_entry, within
from domain.outcome import (
    AlertNoted,
    AlertRaised,
    AlertSettled,
    Change,
    CoachKept,
    Erased,
    Forgotten,
    HandedOver,
    HoldLifted,
    HoldPlaced,
    InvitationRevoked,
    Invited,
    Joined,
    JournalTaken,
    JournalTakenOut,
    NoteForgotten,
    NoteKept,
    OfferKept,
    Recorded,
    SettingsKept,
    SheetStored,
    TakenBack,
    WordsKept,
    WorkoutKept,
)
from domain.state import WORDS_SEEN, ClientState


def apply(state: ClientState, change: Change) -> ClientState:
    """Return the client's `state` after `change`. Changes of other people's records leave it as it is."""
    match change:
        case Recorded(entry, instead_of):
            kept = tuple(old for old in state.entries if old.number != instead_of)
            return replace(state, entries=with_entry(kept, entry, state.memory))
        case TakenBack(number):
            return replace(state, entries=tuple(old for old in state.entries if old.number != number))
        case WorkoutKept(workout):
            others = tuple(old for old in state.workouts if old.number != workout.number)
            together = sorted((*others, workout), key=lambda each: (each.on, each.number))
            return replace(state, workouts=tuple(together))
        case JournalTaken(workouts, entries, holds, matters):
            aside = tuple(each.hold for each in holds if each.lifted_on is None)
            opened = tuple(each.alert for each in matters if each.settled_at is None)
            return replace(
                state,
                workouts=tuple(sorted((*state.workouts, *workouts), key=lambda each: (each.on, each.number))),
                entries=in_order((*state.entries, *entries), state.memory),
                holds=(*state.holds, *aside),
                alerts=(*state.alerts, *opened),
            )
        case JournalTakenOut(entries, workouts, stay, gone, matters_gone):
            return replace(
                state,
                workouts=tuple(
                    each
                    for each in state.workouts
                    if each.number in stay or not within(each.number, workouts)
                ),
                entries=tuple(each for each in state.entries if not within(each.number, entries)),
                holds=tuple(each for each in state.holds if not within(each.number, gone)),
                alerts=tuple(each for each in state.alerts if not within(each.number, matters_gone)),
                words=tuple(
                    replace(each, alert=None) if within(each.alert or 0, matters_gone) else each
                    for each in state.words
                ),
            )
        case HoldPlaced(hold):
            return replace(state, holds=(*state.holds, hold))
        case HoldLifted(number):
            return replace(state, holds=tuple(old for old in state.holds if old.number != number))
        case AlertRaised(alert):
            return replace(state, alerts=(*state.alerts, alert))
        case AlertNoted(number, evidence):
            noted = (replace(old, evidence=evidence) if old.number == number else old for old in state.alerts)
            return replace(state, alerts=tuple(noted))
        case AlertSettled(number):
            return replace(state, alerts=tuple(old for old in state.alerts if old.number != number))
        case WordsKept(words):
            return replace(state, words=(*state.words, words)[-WORDS_SEEN:])
        case SettingsKept(client):
            return replace(state, client=client)
        case HandedOver(to, with_notes):
            # The programmes of the coach before are no longer to choose from; the one under way stays.
            client = replace(state.client, coach=to)
            notes = state.notes if with_notes else ()
            return replace(state, client=client, offer=None, offered_to=None, programmes=(), notes=notes)
        case OfferKept(offer):
            return replace(state, offer=offer)
        case (
            CoachKept()
            | SheetStored()
            | Invited()
            | InvitationRevoked()
            | NoteKept()
            | NoteForgotten()
            | Joined()
            | Erased()
            | Forgotten()
        ):
            return state
