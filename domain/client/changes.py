"""Single changes that the coach makes for this client: carried out, reported, kept for the next plan, undone.

Which exercise the coach's words mean is found as in the client's own messages. What changes the days or the
hour of the next plan, the client hears at once; the rest stands in that plan.
"""

from collections.abc import Sequence
from dataclasses import replace
from typing import Literal, assert_never

from domain.actions import ChangeTo, TakeBack
from domain.calendar import DAY
from domain.client.draft import Draft
from domain.client.lines import Line, lines_of
from domain.client.plans import move_to
from domain.client.rotation import due
from domain.client.why import exercises_known
from domain.clock_words import Clock, clock_of, moved_clock
from domain.exercises import describe
from domain.incoming import Changed
from domain.memory import ByCoach, Swap
from domain.outcome import SettingsKept
from domain.parts import Notice, Plan
from domain.reading.message import message_of
from domain.reading.naming import names_for
from domain.topics import Topic
from domain.wishes import BackWish, LeaveOutWish, ReminderWish, RestWish, SwapWish

KEPT = 20
"""How many of the coach's changes are kept to be undone. The house's own choice."""


def change(draft: Draft, order: Changed) -> None:
    """Make one change; say to the coach what it came to, or what else it might be."""
    wish = order.wish
    match wish:
        case SwapWish():
            swap(draft, order.change, wish)
        case LeaveOutWish():
            leave_out(draft, order.change, wish)
        case BackWish():
            raise TypeError(wish)  # it ends holds as well, so that `orders` sees to it
        case RestWish(days=days):
            rest_more(draft, order.change, days, silently=order.to_several)
        case ReminderWish(clock=clock):
            set_reminder(draft, order.change, clock, silently=order.to_several)
        case _:
            assert_never(wish)


def swap(draft: Draft, number: int, wish: SwapWish) -> None:
    """Put another exercise in the place of one of the sheet's."""
    lines = {line.exercise: line for line in all_lines(draft)}
    found = meant(draft, wish.exercise, tuple(lines))
    if len(found) != 1 or found[0] not in lines:
        of_sheet = [name for name in found if name in lines]
        ask_which(draft, wish, "exercise", wish.exercise, of_sheet)
        return
    line = lines[found[0]]
    others = meant(draft, wish.instead, (*alternatives_of(line), *exercises_known(draft)), of="instead")
    if len(others) != 1:
        ask_which(draft, wish, "instead", wish.instead, others)
        return
    of_sheet_name, instead = line.instead_of or line.exercise, others[0]
    facts = {"exercise": line.exercise, "instead": instead}
    if instead in lines and shares_a_workout(draft, line.exercise, instead):
        report(draft, "already in it", **facts)
    elif describe(instead).is_hold != (line.prescription.range.of == "seconds"):
        report(draft, "other kind", **facts)
    else:
        before = next((each.instead for each in draft.memory.swaps if each.exercise == of_sheet_name), None)
        put_in_place(draft, of_sheet_name, None if instead == of_sheet_name else instead)
        note(
            draft,
            ByCoach(
                change=number,
                what="swap",
                exercise=of_sheet_name,
                instead=instead,
                before=before,
                on=draft.today,
            ),
        )


def leave_out(draft: Draft, number: int, wish: LeaveOutWish) -> None:
    """Take an exercise out until further word; it is no matter of pain."""
    named = tuple(line.exercise for line in all_lines(draft))
    found = [name for name in meant(draft, wish.exercise, named) if name in named]
    if len(found) != 1:
        ask_which(draft, wish, "exercise", wish.exercise, found)
        return
    if found[0] in draft.memory.kept_out:
        report(draft, "already out", exercise=found[0])
        return
    draft.remember(kept_out=(*draft.memory.kept_out, found[0]))
    note(draft, ByCoach(change=number, what="leave out", exercise=found[0], on=draft.today))


def back(draft: Draft, number: int, words: str, *, all_of_it: bool) -> bool:
    """Have again what the coach had taken out or swapped; return whether the words mean something of that."""
    out, swaps = draft.memory.kept_out, draft.memory.swaps
    could = dict.fromkeys((*out, *(each.exercise for each in swaps)))
    found = (
        list(could) if all_of_it else [name for name in meant(draft, words, tuple(could)) if name in could]
    )
    for exercise in found:
        before = next((each.instead for each in swaps if each.exercise == exercise), None)
        draft.remember(kept_out=tuple(each for each in draft.memory.kept_out if each != exercise))
        put_in_place(draft, exercise, None)
        note(
            draft,
            ByCoach(change=number, what="back", exercise=exercise, before=before, on=draft.today),
        )
    return bool(found)


def rest_more(draft: Draft, number: int, days: int, *, silently: bool = False) -> None:
    """Put the next workout off by `days`, counted from today where its day has come or gone by.

    `silently`: the coach knows.
    """
    coming = due(draft.state, draft.today)
    if coming is None:
        report(draft, "nothing planned for client", paused=draft.memory.paused)
        return
    on = max(coming.on, draft.today) + days * DAY
    if draft.memory.moved_to is not None:
        move_to(draft, coming, on)
    else:
        late = (on - coming.on).days
        draft.remember(extra_rest_days=draft.memory.extra_rest_days + late, reminded_on=None)
    draft.notice(
        "rest more", coach=draft.client.coach.name, days=days, on=on.isoformat(), workout=coming.workout
    )
    note(
        draft,
        ByCoach(
            change=number, what="rest more", days=(on - coming.on).days, on=draft.today, told_on=draft.today
        ),
        silently=silently,
    )


def set_reminder(draft: Draft, number: int, clock: str, *, silently: bool = False) -> None:
    """Set the hour of the client's reminder; where morning and evening fit, the other one is a button.

    `silently`: the coach knows.
    """
    moved = moved_clock(clock, draft.client.remind_at)
    said = clock_of(clock) if moved is None else Clock((moved,))
    if said is None:
        report(draft, "no such hour for client", said=clock)
        return
    before = draft.client.remind_at
    draft.change(SettingsKept(replace(draft.client, remind_at=said.as_said)))
    at = f"{said.as_said:%H:%M}"
    draft.notice("hour from coach", coach=draft.client.coach.name, at=at)
    made = ByCoach(
        change=number,
        what="reminder",
        instead=at,
        before=f"{before:%H:%M}",
        on=draft.today,
        told_on=draft.today,
    )
    others = tuple(
        ChangeTo(
            client=draft.client.number, wish=ReminderWish(clock=f"{other:%H:%M}"), label=f"{other:%H:%M}"
        )
        for other in said.times[1:]
    )
    note(draft, made, *others, silently=silently)


def take_back(draft: Draft, number: int, *, silently: bool = False) -> bool:
    """Undo what the coach's message `number` has changed; return whether there is anything to undo.

    `silently`: the coach knows.
    """
    made = [each for each in draft.memory.by_coach if each.change == number and each.what != "programme"]
    for each in made:
        undo(draft, each)
    if made:
        left = tuple(each for each in draft.memory.by_coach if each not in made)
        # What the client has been told of is told as it is again.
        again = tuple(
            ByCoach(change=0, what="back", exercise=each.exercise, on=draft.today)
            for each in made
            if each.told_on is not None and each.what in {"swap", "leave out"}
        )
        draft.remember(by_coach=(*left, *again)[-KEPT:])
        if not silently:
            report(
                draft, "undone", changes=[each.model_dump(mode="json", exclude={"swaps"}) for each in made]
            )
    return bool(made)


def undo(draft: Draft, made: ByCoach) -> None:
    """Undo one change."""
    match made.what:
        case "swap":
            put_in_place(draft, made.exercise, made.before)
        case "leave out":
            draft.remember(kept_out=tuple(each for each in draft.memory.kept_out if each != made.exercise))
        case "back" if made.before is not None:
            put_in_place(draft, made.exercise, made.before)
        case "back":
            draft.remember(kept_out=(*draft.memory.kept_out, made.exercise))
        case "rest more":
            draft.remember(extra_rest_days=max(0, draft.memory.extra_rest_days - made.days))
            coming = due(draft.state, draft.today)
            on = None if coming is None else max(coming.on, draft.today).isoformat()
            draft.notice("rest as before", coach=draft.client.coach.name, on=on)
        case "reminder" if made.before is not None:
            clock = clock_of(made.before)
            if clock is not None:
                draft.change(SettingsKept(replace(draft.client, remind_at=clock.as_said)))
                draft.notice("hour from coach", coach=draft.client.coach.name, at=made.before)
        case _:
            pass


def note(draft: Draft, made: ByCoach, *others: ChangeTo, silently: bool = False) -> None:
    """Keep a change to be undone and for the next plan, and report it to the coach unless `silently`."""
    draft.remember(by_coach=(*draft.memory.by_coach, made)[-KEPT:])
    if silently:
        return
    coming = due(draft.state, draft.today)
    on = None if coming is None else max(coming.on, draft.today).isoformat()
    facts = made.model_dump(mode="json", exclude={"swaps", "on"})
    back_to = TakeBack(client=draft.client.number, change=made.change)
    draft.tell_coach(
        Notice(topic="changed", facts={"client": draft.client.name, **facts, "next": on}),
        buttons=(*others, back_to),
        weight="answer",
    )


def note_told(draft: Draft) -> None:
    """Note that the client has heard of the coach's changes, where the answer has a plan."""
    if draft.says(Plan):
        told = tuple(
            each if each.told_on is not None else each.model_copy(update={"told_on": draft.today})
            for each in draft.memory.by_coach
        )
        if told != draft.memory.by_coach:
            draft.remember(by_coach=told)


def put_in_place(draft: Draft, exercise: str, instead: str | None) -> None:
    """Let `instead` be done in place of the sheet's `exercise`; None: the exercise itself."""
    others = tuple(each for each in draft.memory.swaps if each.exercise != exercise)
    chosen = () if instead is None else (Swap(exercise=exercise, instead=instead),)
    draft.remember(swaps=(*others, *chosen))


def meant(
    draft: Draft, words: str, plan: Sequence[str], *, of: Literal["exercise", "instead"] = "exercise"
) -> tuple[str, ...]:
    """Return the exercises that the coach's words can mean: one, several that fit equally, or none."""
    finder = names_for(tuple(dict.fromkeys(plan)), tuple(draft.client.own_names.items()))
    found = finder.find(message_of(words))
    names = found[0].names if found else ()
    draft.note_meant(of, names)
    return names


def all_lines(draft: Draft) -> list[Line]:
    """Return the lines of the whole programme as they stand for this client."""
    stored = draft.client.programme
    workouts = stored.programme.workouts if stored else ()
    return [line for workout in workouts for line in lines_of(draft.state, workout.name)]


def alternatives_of(line: Line) -> tuple[str, ...]:
    """Return what the sheet names to be done instead of a line."""
    return tuple(each.exercise for each in line.prescription.alternatives)


def shares_a_workout(draft: Draft, exercise: str, other: str) -> bool:
    """Return whether one of the workouts has both exercises, as they stand for this client."""
    stored = draft.client.programme
    for workout in stored.programme.workouts if stored else ():
        names = {line.exercise for line in lines_of(draft.state, workout.name)}
        if {exercise, other} <= names:
            return True
    return False


def ask_which(
    draft: Draft, wish: SwapWish | LeaveOutWish, slot: str, said: str, found: Sequence[str]
) -> None:
    """Ask the coach which exercise is meant, with a button for each; where none is, say which there are."""
    buttons = tuple(
        ChangeTo(client=draft.client.number, wish=wish.model_copy(update={slot: name}), label=name)
        for name in dict.fromkeys(found)
    )
    of_sheet = list(dict.fromkeys(line.exercise for line in all_lines(draft)))
    facts = {
        "client": draft.client.name,
        "said": said,
        "slot": slot,
        "found": list(found),
        "known": of_sheet,
    }
    draft.tell_coach(Notice(topic="which exercise of client", facts=facts), buttons=buttons, weight="answer")


def report(draft: Draft, topic: Topic, **facts: object) -> None:
    """Tell the coach what came of the wish."""
    draft.tell_coach(Notice(topic=topic, facts={"client": draft.client.name, **facts}), weight="answer")
