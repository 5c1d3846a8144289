"""Workouts missed or put off in a row: counted, and told to the coach before they become a habit."""

from domain.client.draft import Draft
from domain.client.rotation import due
from domain.outcome import AlertNoted

MISSED_TOLD = 2
"""After so many workouts missed in a row the coach hears of it."""

PUT_OFF_TOLD = 3
"""After so many days in a row on which a workout was missed or put off, too. The house's own choice: who
moves a day once or twice looks after the training, who goes on moving it does not train."""

PUT_OFF_KNOWN = 12
"""How many days of putting off are remembered at most. The house's own choice."""


def count_put_off(draft: Draft) -> None:
    """Note that the workout in turn was put off today, and tell the coach where that has become a habit."""
    days = dict.fromkeys((*draft.memory.put_off_on, draft.today))
    draft.remember(put_off_on=tuple(days)[-PUT_OFF_KNOWN:])
    if tell_of_missed(draft):
        draft.notice("put off often", coach=draft.client.coach.name)


def tell_of_missed(draft: Draft) -> bool:
    """Let the coach hear of two workouts missed in a row, or of three that were missed or put off.

    Return whether that is new.
    """
    missed, put_off = draft.memory.missed_in_a_row, len(draft.memory.put_off_on)
    coming = due(draft.state, draft.today)
    if (missed < MISSED_TOLD and missed + put_off < PUT_OFF_TOLD) or coming is None:
        return False
    evidence = {"in_a_row": missed, "put_off": put_off, "workout": coming.workout}
    alert = draft.open_alert("missed")
    if alert is None:
        draft.alert("missed", None, evidence)
    else:
        draft.change(AlertNoted(alert.number, evidence))
    return alert is None
