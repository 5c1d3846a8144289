"""What a coach's decision comes to for the client: carried out here, told to the client, and reported."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal
from typing import assert_never

from domain.actions import TakeBack
from domain.authority import may_decide
from domain.client.card import show_card, show_sets
from domain.client.changes import KEPT, back, change, meant, put_in_place, take_back
from domain.client.clearance import bring_to_release, is_still_barred
from domain.client.draft import Draft
from domain.client.exposures import last_day_of
from domain.client.following import note_remedy
from domain.client.handover import answered, offer, withdraw
from domain.client.joining_flow import release
from domain.client.old_journal import take_journal_sent, take_out
from domain.client.pain import held_by
from domain.client.picturing import show_coach
from domain.client.plan import plan_of
from domain.client.plans import move_to
from domain.client.remedies import next_programme
from domain.client.rotation import catch_up, due, open_workout
from domain.client.stalls import EXPOSURES_LEFT_ALONE, leave_alone
from domain.client.talking import hear_coach, show_talk
from domain.client.why import explain_to_coach
from domain.client.workouts import round_of, shut
from domain.incoming import (
    Assigned,
    AtAPress,
    CardWanted,
    Changed,
    Decided,
    FromCoach,
    JournalSent,
    OfferAnswered,
    OfferMade,
    OfferWithdrawn,
    PictureWanted,
    Released,
    SetsWanted,
    TalkWanted,
    Told,
    Undone,
    WhyWanted,
)
from domain.journal import Alert, ExerciseHold
from domain.memory import ByCoach, Easing, Swap
from domain.outcome import AlertSettled, HoldLifted, SettingsKept
from domain.parts import Notice
from domain.topics import Topic
from domain.wishes import BackWish

LIGHTEN_TO = Decimal("0.9")
"""The share of the last load an eased exercise starts from. The house's own rule, no published figure."""

BACK_FROM_PAIN = Decimal("0.7")
"""The share of the last load to begin with after pain: no more than after the longest time away. The house's
own rule, no published figure; whoever treats the client may well say less."""

ALL = frozenset({"all", "everything", "them", "all of it", "all of them"})

EASINGS_KEPT = 40
"""How many eased loads are remembered, the latest."""


def carry_out(draft: Draft, order: FromCoach) -> None:
    """Carry out an order, if it comes from somebody who may give it."""
    if not may_decide(draft.state, order):
        is_late = isinstance(order, OfferAnswered)
        draft.tell(order.coach, Notice(topic="offer is over" if is_late else "not your client"))
        return
    if isinstance(order, AtAPress):
        draft.pressed_in = order.under
    match order:
        case Decided():
            decided(draft, order)
        case Told():
            hear_coach(draft, order)
        case TalkWanted():
            show_talk(draft)
        case Assigned():
            assigned(draft, order)
        case CardWanted():
            show_card(draft)
        case WhyWanted(text=text):
            explain_to_coach(draft, text)
        case PictureWanted(text=text):
            show_coach(draft, text)
        case SetsWanted(text=text):
            if not show_sets(draft, text):
                show_card(draft)
        case Changed(change=number, wish=BackWish(exercise=exercise)):
            put_back(draft, number, exercise)
        case Changed():
            change(draft, order)
        case Undone(change=number, to_several=to_several):
            done = take_back(draft, number, silently=to_several)
            done = done or assigned_back(draft, number, silently=to_several) or take_out(draft, number)
            if not done:
                report(draft, "nothing to undo")
        case OfferMade():
            offer(draft, order)
        case OfferWithdrawn():
            report(draft, "kept after all" if withdraw(draft) else "not offered")
        case OfferAnswered():
            answered(draft, order)
        case JournalSent():
            take_journal_sent(draft, order)
        case Released():
            let_train(draft, order)
        case _:
            assert_never(order)


def report(draft: Draft, topic: Topic, **facts: object) -> None:
    """Tell the coach what came of the order."""
    draft.tell_coach(Notice(topic=topic, facts={"client": draft.client.name, **facts}), weight="answer")


def let_train(draft: Draft, order: Released) -> None:
    """Let training begin, or go on after a warning sign: whichever the coach's word was waited for."""
    signs = [each.number for each in draft.state.alerts if each.reason == "urgent"]
    if release(draft):
        report(draft, "released")
    elif not signs:
        report(draft, "already settled")
    else:
        for number in signs:
            decided(draft, Decided(coach=order.coach, alert=number, remedy="let train"))


def decided(draft: Draft, order: Decided) -> None:
    """Settle an alert with the coach's remedy; one already settled is only said to be so."""
    alert = next((each for each in draft.state.alerts if each.number == order.alert), None)
    if alert is None:
        report(draft, "already settled")
        return
    draft.change(AlertSettled(alert.number, order.remedy, order.coach, draft.at))
    if alert.reason == "stall":
        leave_all_alone(draft, alert, order.workouts or EXPOSURES_LEFT_ALONE)
    done = True
    alone_for: dict[str, int] = {}
    match order.remedy:
        case "lighten":
            lighten(draft, alert)
        case "swap":
            done = swap(draft, alert)
        case "rest more":
            draft.remember(extra_rest_days=draft.memory.extra_rest_days + 1)
            draft.notice("rest more", coach=draft.client.coach.name)
        case "next programme":
            number = next_programme(draft.state)
            done = number is not None and assign(draft, number)
        case "keep on":
            draft.notice("keep on", coach=draft.client.coach.name, exercises=list(alert.exercises))
            alone_for = {"workouts": order.workouts or EXPOSURES_LEFT_ALONE}
        case "lift hold":
            lift(draft, alert)
        case "let train":
            draft.remember(barred=is_still_barred(draft))
            not_before_tomorrow(draft)
            draft.notice("barred" if draft.memory.barred else "let train", coach=draft.client.coach.name)
            lift(draft, alert)
        case "keep held" | "seen":
            pass
        case _:
            assert_never(order.remedy)
    if done:
        note_remedy(draft, alert, order.remedy)
    waits_on = order.remedy == "let train" and draft.memory.clearance is not None
    report(
        draft,
        "settled" if done else "remedy not possible",
        remedy="seen" if waits_on else order.remedy,
        exercises=list(alert.exercises),
        reason=alert.reason,
        **alone_for,
    )
    if waits_on and draft.memory.clearance is not None:
        bring_to_release(draft, draft.memory.clearance)


def leave_all_alone(draft: Draft, alert: Alert, exposures: int = EXPOSURES_LEFT_ALONE) -> None:
    """Look for no new stall of what an alert is about for some exposures."""
    for exercise in alert.exercises:
        leave_alone(draft, exercise, exposures)


def not_before_tomorrow(draft: Draft) -> None:
    """Let the next workout come tomorrow at the earliest."""
    coming = due(draft.state, draft.today)
    if coming is not None and coming.on <= draft.today:
        move_to(draft, coming, draft.today + timedelta(days=1))


def lighten(draft: Draft, alert: Alert) -> None:
    """Ease the load of what an alert is about, to be built back."""
    for exercise in alert.exercises:
        ease(draft, exercise, LIGHTEN_TO)
    draft.notice("lighter", coach=draft.client.coach.name, exercises=list(alert.exercises))


def ease(draft: Draft, exercise: str, factor: Decimal, held_since: date | None = None) -> None:
    """Begin the next time with `factor` of the last load of `exercise`, held from the day `held_since` on."""
    since = last_day_of(draft.state, exercise) or draft.today
    eased = Easing(exercise=exercise, factor=factor, since=since, held_since=held_since)
    earlier = (each for each in draft.memory.easings if (each.exercise, each.since) != (exercise, since))
    draft.remember(easings=(*earlier, eased)[-EASINGS_KEPT:])


def swap(draft: Draft, alert: Alert) -> bool:
    """Put the sheet's alternative in place of the exercise; return whether there is one."""
    stored = draft.client.programme
    if stored is None:
        return False
    for workout in stored.programme.workouts:
        for line in workout.prescriptions:
            if line.exercise == alert.exercise and line.alternatives:
                instead = line.alternatives[0].exercise
                put_in_place(draft, line.exercise, instead)
                draft.notice(
                    "swapped", coach=draft.client.coach.name, exercise=line.exercise, instead=instead
                )
                return True
    return False


def lift(draft: Draft, alert: Alert) -> None:
    """Put back what this pain had set aside, as far as no other keeps it aside."""
    held = held_by(alert) | ({alert.exercise} if alert.exercise else set())
    for other in draft.state.alerts:
        if other.reason in {"pain", "urgent"}:
            held -= held_by(other)
    end_holds(draft, [hold for hold in draft.state.holds if hold.exercise in held])


def end_holds(draft: Draft, holds: Sequence[ExerciseHold]) -> None:
    """Put exercises back into the plan, much lighter at first."""
    for hold in holds:
        draft.change(HoldLifted(hold.number, draft.today, draft.client.coach.number))
        ease(draft, hold.exercise, BACK_FROM_PAIN, hold.since)
        leave_alone(draft, hold.exercise)
    if holds:
        draft.notice(
            "hold lifted",
            coach=draft.client.coach.name,
            exercises=[hold.exercise for hold in holds],
            where=holds[0].where,
        )


def put_back(draft: Draft, number: int, exercise: str) -> None:
    """Put back what the coach names, at whatever time; settle what was open only because of it.

    "Them" are what is aside for the same reason, where only one reason is there.
    """
    wanted = " ".join(exercise.casefold().split())
    named = meant(draft, exercise, [each.exercise for each in draft.state.holds])
    taken_out = (*draft.memory.kept_out, *draft.memory.swaps)
    all_of_it = wanted in ALL or (wanted == "it" and len(draft.state.holds) + len(taken_out) == 1)
    if back(draft, number, exercise, all_of_it=all_of_it and not draft.state.holds):
        return
    is_all = all_of_it and not taken_out
    holds = [
        each
        for each in draft.state.holds
        if is_all or wanted in each.exercise.casefold() or each.exercise in named
    ]
    if not holds:
        aside = [*(each.exercise for each in draft.state.holds), *draft.memory.kept_out]
        aside += [each.exercise for each in draft.memory.swaps]
        report(draft, "nothing aside", aside=aside, exercise=exercise)
        return
    end_holds(draft, holds)
    left = {each.exercise for each in draft.state.holds}
    for alert in draft.state.alerts:
        held = held_by(alert)
        if alert.reason == "pain" and held and not held & left:
            draft.change(AlertSettled(alert.number, "lift hold", draft.client.coach.number, draft.at))
    report(draft, "settled", remedy="lift hold", exercises=[holds[0].exercise], reason="pain")


def assigned(draft: Draft, order: Assigned) -> None:
    """Put the client on a programme and report it, with what the way back is."""
    before = draft.client.programme
    made = ByCoach(
        change=order.change,
        what="programme",
        programme=before.number if before else None,
        swaps=draft.memory.swaps,
        on=draft.today,
        told_on=draft.today,
    )
    if not assign(draft, order.programme):
        report(draft, "no such programme")
        return
    draft.remember(by_coach=(*draft.memory.by_coach, made)[-KEPT:])
    if draft.client.programme is not None and not order.to_several:
        facts = given_facts(draft)
        undo = (TakeBack(client=draft.client.number, change=order.change),) if before else ()
        draft.tell_coach(Notice(topic="programme given", facts=facts), buttons=undo, weight="answer")


def assigned_back(draft: Draft, number: int, *, silently: bool = False) -> bool:
    """Put the client back on the programme of before message `number`; return whether there was one.

    `silently`: the coach knows.
    """
    for made in draft.memory.by_coach:
        if made.change == number and made.what == "programme" and made.programme is not None:
            if not assign(draft, made.programme, made.swaps):
                return False
            left = tuple(each for each in draft.memory.by_coach if each.change != number)
            draft.remember(by_coach=left)
            if not silently:
                report(draft, "programme given", **given_facts(draft))
            return True
    return False


def given_facts(draft: Draft) -> dict[str, object]:
    """Return which programme the client is on, for the coach."""
    stored = draft.client.programme
    name, version = (stored.programme.name, stored.version) if stored else ("", 1)
    is_newest = any(stored is not None and each.number == stored.number for each in draft.state.programmes)
    return {
        "client": draft.client.name,
        "programme": name,
        "version": version if version > 1 or not is_newest else None,
    }


def assign(draft: Draft, number: int, swaps: tuple[Swap, ...] = ()) -> bool:
    """Put the client on another programme, and show its first workout; return whether there is such.

    What was eased after pain stays eased; stalls and reviews of the old programme are over, and so is what
    the coach had put in the place of its exercises, but for `swaps`.
    """
    programmes = (*draft.state.programmes, *draft.state.former)
    stored = next((each for each in programmes if each.number == number), None)
    if stored is None:
        return False
    opened = open_workout(draft.state)
    if opened is not None:
        shut(draft, opened)
    draft.change(SettingsKept(replace(draft.client, programme=stored)))
    over = [alert for alert in draft.state.alerts if alert.reason in {"stall", "review"}]
    is_newer = draft.start.client.programme is not None and (
        draft.start.client.programme.programme.name == stored.programme.name
    )
    draft.remember(
        swaps=swaps,
        by_coach=tuple(
            each.model_copy(update={"told_on": draft.today}) if each.what == "swap" else each
            for each in draft.memory.by_coach
        ),
        quiet=(),
        left_out=(),
        moved_to=None,
        moved_workout=None,
        moved_from=None,
        owed=None,
        swapped=None,
        turn=None,
        stands_for=None,
        reviewed_round=round_of(draft.state) - 1,
    )
    for alert in over:
        draft.change(AlertSettled(alert.number, "next programme", draft.client.coach.number, draft.at))
        leave_all_alone(draft, alert)
    coming = catch_up(draft)
    draft.notice(
        "new programme",
        coach=draft.client.coach.name,
        programme=stored.programme.name,
        begins=coming is not None,
        is_newer=is_newer,
    )
    if coming is not None:
        draft.say(plan_of(draft.state, coming.workout, coming.on))
        if coming.on == draft.today:
            draft.remember(reminded_on=draft.today)
    return True


def reachable(draft: Draft, *, reachable: bool) -> None:
    """Tell the coach once where a client can no longer be reached; that is over once the client is back."""
    alert = draft.open_alert("unreachable")
    if reachable and alert is not None:
        draft.settle(alert)
    elif not reachable and alert is None:
        draft.alert("unreachable", None, {})
