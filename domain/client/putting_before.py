"""How open matters are put before the coach: what each is about, what to look at, the remedies as buttons.

A stall comes with what was done since it was found, so that nobody decides on what is over.
"""

from collections.abc import Sequence
from datetime import date
from typing import Any

from domain.actions import Action, Show, Treat, Write
from domain.client.exposures import history
from domain.client.progress import progress_of
from domain.client.remedies import remedies_for
from domain.client.verdicts import verdict_on
from domain.journal import Alert, AlertReason
from domain.parts import AlertPart, Part, Safety
from domain.state import ClientState
from domain.values import facts_of

WRITTEN_ABOUT: frozenset[AlertReason] = frozenset({"stall", "review", "missed", "question"})
"""What a word to the client can settle."""

SEVERAL = "several exercises"
"""What a matter of several exercises is called on a button."""

LEFT_ALONE = (3, 6)
"""For how many workouts an exercise can be left alone, as offered to a coach. The house's own choice."""


def put_before_coach(
    state: ClientState, alerts: Sequence[Alert], today: date, *, full: bool = False
) -> tuple[tuple[Part, ...], tuple[Action, ...]]:
    """Return what is said of open alerts in one message, with the remedies that fit as buttons.

    A stall comes with a small picture of each exercise and the caution on pain and joints; it and a review
    with a button for a larger one. `full` is for all of the evidence.
    """
    parts: list[Part] = []
    buttons: list[Action] = []
    client = state.client
    for alert in alerts:
        evidence = {**alert.evidence, **done_since(state, alert)}
        parts.append(
            AlertPart(
                reason=alert.reason,
                client=client.name,
                exercise=alert.exercise,
                evidence=evidence,
                full=full,
                number=alert.number,
            )
        )
        of = (alert.exercise or (SEVERAL if alert.exercises else alert.reason)) if len(alerts) > 1 else ""
        buttons += (
            Treat(client=client.number, alert=alert.number, remedy=remedy, workouts=workouts, of=of)
            for remedy in remedies_for(state, alert)
            for workouts in (LEFT_ALONE if remedy == "keep on" else (None,))
        )
        if alert.reason in WRITTEN_ABOUT:
            buttons.append(Write(client=client.number, alert=alert.number, name=client.name, of=of))
    stalled = [each for alert in alerts if alert.reason == "stall" for each in alert.exercises]
    if stalled:
        courses = (progress_of(state, each, today, small=True) for each in stalled)
        parts += (each for each in courses if each is not None)
        parts.append(Safety(where=None, exercise=stalled[0]))
    if stalled or any(alert.reason == "review" for alert in alerts):
        buttons.append(Show(client=client.number, exercise=stalled[0] if len(stalled) == 1 else None))
    return tuple(parts), tuple(buttons)


def done_since(state: ClientState, alert: Alert) -> dict[str, Any]:
    """Return, as evidence, what was done of a stalled exercise after the exposures that the alert shows."""
    shown = alert.evidence.get("exposures", ())
    if alert.reason != "stall" or alert.exercise is None or not shown:
        return {}
    until = max(str(each["on"]) for each in shown)
    past = history(state, str(alert.evidence.get("workout", "")), alert.exercise)
    later = [at for at, each in enumerate(past) if each.on.isoformat() > until]
    if not later:
        return {}
    return {
        "later": facts_of([past[at] for at in later]),
        "later_verdicts": facts_of([verdict_on(state, past[: at + 1]) for at in later]),
    }
