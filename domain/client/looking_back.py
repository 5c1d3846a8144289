"""The look back on a programme after the sheet's rounds: told to the client, brought to the coach."""

from collections.abc import Sequence

from domain.client.draft import Draft
from domain.client.lifts import indices_since
from domain.client.remedies import next_programme
from domain.journal import WorkoutRecord
from domain.layoff import longest_break, share_after
from domain.review import review_of
from domain.values import facts_of


def look_back(draft: Draft, closed: Sequence[WorkoutRecord], rounds: int) -> None:
    """Review the rounds since the last review once they are done: has strength risen?

    `closed` are the workouts of the programme that have had their turn, oldest first, `rounds` the whole
    rounds that they make. What was lighter on purpose, or on hold, says nothing of it and is left out.
    """
    stored = draft.client.programme
    if stored is None or stored.programme.review is None:
        return
    reviewed = draft.memory.reviewed_round
    if rounds < reviewed + stored.programme.review.after_rounds:
        return
    if draft.open_alert("review") is not None:
        return
    since = min(record.on for record in closed if record.round > reviewed)
    found = review_of(indices_since(draft.state, since))
    if found is None:
        # Nothing to hold against each other yet, as where all only comes back: at the next workout's end.
        return
    draft.remember(reviewed_round=rounds)
    evidence = {
        **facts_of(found),
        "rounds": rounds - reviewed,
        "switch_to": stored.programme.review.switch_to,
    }
    evidence["can_switch"] = next_programme(draft.state) is not None
    away = longest_break([record.on for record in closed], since, draft.today)
    was_away = share_after(away) is not None
    was_ill = draft.memory.ill_on is not None and draft.memory.ill_on >= since
    evidence |= {"weeks_away": away // 7} if was_away else {}
    evidence |= {"was_ill": True} if was_ill else {}
    if draft.message and not (was_away or was_ill):
        # Unasked, the client is not told: the coach decides on it, and the day may have had its messages.
        # Nor is who comes back from a break told of a loss that was to be expected.
        draft.notice("review", risen=found.risen, rounds=rounds)
    draft.alert("review", None, evidence)
