"""Which remedies fit an alert."""

from domain.actions import Remedy
from domain.journal import Alert
from domain.state import ClientState


def remedies_for(state: ClientState, alert: Alert) -> tuple[Remedy, ...]:
    """Return the remedies to offer the coach, the usual first."""
    exercise = alert.exercise
    match alert.reason:
        case "stall":
            swap: tuple[Remedy, ...] = ("swap",) if has_alternative(state, exercise) else ()
            switch: tuple[Remedy, ...] = ("next programme",) if next_programme(state) else ()
            return ("lighten", *swap, "rest more", *switch, "keep on")
        case "review":
            if not next_programme(state):
                return ("seen",)
            excused = any(alert.evidence.get(each) for each in ("risen", "weeks_away", "was_ill"))
            return ("seen", "next programme") if excused else ("next programme", "seen")
        case "pain":
            return ("lift hold", "keep held") if exercise else ("seen",)
        case "urgent":
            return ("let train",)
        case "missed" | "question" | "unreachable":
            return ("seen",)


def has_alternative(state: ClientState, exercise: str | None) -> bool:
    """Return whether the sheet names something to do instead of `exercise`."""
    stored = state.client.programme
    if stored is None or exercise is None:
        return False
    return any(
        line.exercise == exercise and line.alternatives
        for workout in stored.programme.workouts
        for line in workout.prescriptions
    )


def next_programme(state: ClientState) -> int | None:
    """Return the number of the programme that the sheet names to switch to, if the coach has it."""
    stored = state.client.programme
    if stored is None or stored.programme.review is None:
        return None
    wanted = stored.programme.review.switch_to
    for other in state.programmes:
        if wanted is not None and other.programme.name.casefold() == wanted.casefold():
            return other.number
    return None
