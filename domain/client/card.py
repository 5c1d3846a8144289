"""What a coach sees of one client: the card, and the last times of one exercise, each with its verdict."""

from typing import Any

from domain.calendar import local_day
from domain.client.changes import meant
from domain.client.clearance import bring_to_release
from domain.client.draft import Draft
from domain.client.exposures import history, set_to_beat
from domain.client.lines import line_named
from domain.client.picturing import picture_button
from domain.client.rotation import BESIDE, due
from domain.client.verdicts import aimed_next, verdict_on
from domain.client.why import exercises_known
from domain.client.workouts import round_of
from domain.journal import WorkoutRecord
from domain.parts import ClientLine, Digest, Notice
from domain.state import ClientState
from domain.values import facts_of

WORKOUTS_SHOWN = 3
"""How many of the last workouts a card shows. The house's own choice."""

TIMES_SHOWN = 4
"""How many of the last times of an exercise are shown to a coach. The house's own choice."""


def show_card(draft: Draft) -> None:
    """Show the coach how this client is doing, and after that each open matter again with its remedies."""
    state = draft.state
    draft.tell_coach(
        Digest(today=draft.today, clients=(client_line(state, draft),), about="client"),
        Notice(topic="card", facts=card_facts(draft)),
        buttons=picture_button(draft),
        weight="answer",
    )
    if state.memory.clearance is not None:
        bring_to_release(draft, state.memory.clearance)
    for alert in state.alerts:
        draft.bring_to_coach(alert, again=draft.was_brought_again(alert), full=True)


def card_facts(draft: Draft) -> dict[str, Any]:
    """Return what a card says beside the client's line."""
    state, client = draft.state, draft.client
    coming = due(state, draft.today)
    stored = client.programme
    order = stored.programme.schedule.order if stored else ()
    done = [each for each in state.workouts if each.state != "skipped"]
    return {
        "client": client.name,
        "coming": coming.workout if coming else None,
        "place": order.index(coming.workout) + 1 if coming and coming.workout in order else None,
        "of": len(order),
        "round": round_of(state) if stored else None,
        "workouts": [workout_facts(state, each) for each in done[-WORKOUTS_SHOWN:]],
        "kept_out": list(state.memory.kept_out),
        "swaps": [{"exercise": each.exercise, "instead": each.instead} for each in state.memory.swaps],
        "lacking": list(client.equipment.lacking),
        "remind_at": f"{client.remind_at:%H:%M}",
        "reminders_off": state.memory.reminders_off,
        "local": draft.local.strftime("%H:%M"),
        "notes": [
            {"on": local_day(each.at, draft.zone).isoformat(), "text": each.text} for each in state.notes
        ],
        "not_understood": [
            {
                "on": local_day(each.at, draft.zone).isoformat(),
                "text": each.text,
                "lacks": list(each.lacks),
            }
            for each in state.memory.not_understood
        ],
    }


def workout_facts(state: ClientState, record: WorkoutRecord) -> dict[str, Any]:
    """Return a workout as a card has it: each exercise with its best set and its verdict."""
    names = dict.fromkeys(each.set.exercise for each in state.entries if each.workout == record.number)
    rows = []
    for name in names:
        past = history(state, record.name, name, until=record)
        rows.append(
            {
                "exercise": name,
                "set": facts_of(set_to_beat(past[-1])),
                "sets": len(past[-1].sets),
                "result": verdict_on(state, past).result,
            }
        )
    return {
        "on": record.on.isoformat(),
        "workout": record.name if record.name != BESIDE else "",
        "state": record.state,
        "rows": rows,
    }


def show_sets(draft: Draft, text: str) -> bool:
    """Show the coach the last times of the exercise that is named; return whether one is."""
    names = meant(draft, text, exercises_known(draft))
    for name in names:
        rows, workout = [], ""
        for each in dict.fromkeys(record.name for record in draft.state.workouts):
            past = history(draft.state, each, name)
            for at in range(len(past)):
                verdict = verdict_on(draft.state, past[: at + 1])
                rows.append(
                    {
                        "on": past[at].on.isoformat(),
                        "set": facts_of(set_to_beat(past[at])),
                        "sets": len(past[at].sets),
                        "result": verdict.result,
                        "workout": each,
                    }
                )
        rows.sort(key=lambda row: str(row["on"]))
        workout = str(rows[-1]["workout"]) if rows else ""
        line = line_named(draft.state, workout, name) if rows else None
        past = history(draft.state, workout, name) if rows else ()
        aimed = aimed_next(draft.state, line, past, draft.today) if line and not line.held else None
        draft.tell_coach(
            Notice(
                topic="sets of client",
                facts={
                    "client": draft.client.name,
                    "exercise": name,
                    "rows": rows[-TIMES_SHOWN:],
                    "aimed": facts_of(aimed) if aimed else None,
                    "held": line.held.where if line and line.held else None,
                },
            ),
            weight="answer",
        )
    return bool(names)


def client_line(state: ClientState, draft: Draft) -> ClientLine:
    """Return this client as one line of a coach's overview."""
    done = [record.on for record in state.workouts if record.state in {"open", "done"}]
    stored = state.client.programme
    coming = due(state, draft.today)
    return ClientLine(
        name=state.client.name,
        programme=stored.programme.name if stored else None,
        last_workout=done[-1] if done else None,
        due_on=coming.on if coming else None,
        open_alerts=tuple((alert.reason, alert.exercise) for alert in state.alerts),
        held=tuple(hold.exercise for hold in state.holds),
        paused=state.memory.paused,
        left=state.memory.left_at is not None,
        joining=state.memory.joining is not None,
        to_release=state.memory.clearance is not None,
        ill_on=state.memory.ill_since(done[-1] if done else None),
    )
