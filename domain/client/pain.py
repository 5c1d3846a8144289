"""Pain and warning signs: what is set aside, what is asked, what the coach hears.

Nothing here says what a pain is or that anything is harmless; it sets exercises aside and sends people to
those who can tell.
"""

from collections.abc import Sequence
from datetime import timedelta
from typing import Any

from domain.client.draft import Draft
from domain.client.lines import hold_on, lines_of
from domain.client.rotation import open_workout
from domain.exercises import lookup
from domain.expressions import Expression
from domain.journal import Alert, ExerciseHold
from domain.outcome import HoldPlaced
from domain.parts import Notice, Safety, Urgent
from domain.reading import Pain, Reading
from domain.safety import loads_place
from domain.sets import TrainingSet
from domain.values import facts_of

_WELL = Expression(
    r"\b(?:fine|better|okay|ok|good|healed|gone|well|recovered|cleared|pain[- ]?free|no (?:more )?pain|"
    r"(?:no longer|stopped|not) hurt(?:s|ing)?|(?:doesn['’]?t|does not|don['’]?t) hurt)\b"
)
_OF_PAIN = Expression(r"\b(?:pain|hurt\w*|sore\w*|physio\w*|doctor|healed|recovered)\b")

_FINE_NOW = Expression(
    r"(?:(?:ok|okay|actually|oh|no|yes|hey|and|but|thanks|thank you),? )*"
    r"(?:(?:it|that|this|everything|all)(?:['’]?s| is| feels| felt| seems| got)? )?"
    r"(?:(?:all|much|a lot|a bit|totally|completely|perfectly|feels|feeling|already|i'm|i am|is) )*"
    r"(?:(?:fine|better|okay|ok|good|well) (?:again|now|already|today)|better|gone)"
    r"(?: (?:again|now|already|today|though|thanks))*"
)
"""Words that say nothing but that something is well again, and not what."""
_FINE_NOW_WITHIN = timedelta(days=3)
"""For how long after pain such words are of it. The house's own choice."""


def warn(draft: Draft, text: str, pain: tuple[Pain, ...]) -> None:
    """A warning sign: say what to do at once and nothing else; the coach hears of it at once.

    There is no training, and no talk of any, until the coach lets it go on. Where a place hurts as well, what
    loads it is set aside silently.
    """
    draft.say_only(Urgent())
    draft.remember(barred=True, questions=())
    for each in pain:
        for name in affected(draft, each.where, ()):
            set_aside(draft, name, each)
    older = [alert for alert in draft.state.alerts if alert.reason == "urgent"]
    draft.settle(*older)
    held = [hold.exercise for hold in draft.state.holds if hold not in draft.start.holds]
    held += [name for alert in older for name in alert.evidence.get("held", ())]
    draft.alert("urgent", None, {"said": text, "pain": [facts_of(each) for each in pain], "held": held})


def hold_for_pain(
    draft: Draft, text: str, pain: tuple[Pain, ...], named: tuple[str, ...], asked: Sequence[str] = ()
) -> None:
    """Set aside what hurts, say whom to see, tell the coach. `named` are the message's exercises.

    Where it names none, those `asked` about are set aside whatever else is.
    """
    draft.remember(odd_part="", odd_at=draft.at)
    for each in pain:
        causes = affected(draft, each.where, named)
        hurting = causes if named else tuple(dict.fromkeys((*causes, *asked)))
        also = tuple(
            name
            for name in programme_exercises(draft)
            if name not in hurting and loads_place(name, each.where)
        )
        for exercise in hurting:
            set_aside(draft, exercise, each)
        first = hurting[0] if hurting else None
        draft.say(Safety(where=each.where, side=each.side, exercise=first, held=hurting, also=also))
        overtaken = overtake_stalls(draft, hurting)
        tell_coach(draft, hurting, {"said": text, "pain": facts_of(each), "also": list(also), **overtaken})


def overtake_stalls(draft: Draft, held: Sequence[str]) -> dict[str, Any]:
    """Let pain take the place of the stalls of what is now `held`: return, as evidence, what had stalled.

    That several exercises slow together stays a matter as long as one of them is not held. Whoever hurts is
    asked no more about a stall, and the coach is offered no load on what hurts. What showed the stalls stays
    at hand for whoever asks why.
    """
    stalls = [alert for alert in draft.state.alerts if alert.reason == "stall"]
    touched = [alert for alert in stalls if {*alert.exercises} & {*held}]
    over = [alert for alert in touched if {*alert.exercises} <= {*held}]
    for question in draft.memory.questions:
        if question.slot in {"trouble", "lately"} and touched:
            draft.drop_question(question)
    draft.settle(*over)
    if not over:
        return {}
    return {
        "stalled": [each for alert in over for each in alert.exercises],
        "stalls": [{"exercise": alert.exercise, "evidence": alert.evidence} for alert in over],
    }


def tell_coach(draft: Draft, held: tuple[str, ...], evidence: dict[str, Any]) -> None:
    """Bring pain to the coach; what was open about the same matter is taken up in the new alert."""
    place = place_of(evidence)
    older = [
        alert
        for alert in draft.state.alerts
        if alert.reason == "pain"
        and (place == place_of(alert.evidence) or (place is None and held_by(alert) <= {*held}))
    ]
    draft.settle(*older)
    aside = (*held, *(name for alert in older for name in alert.evidence.get("held", ())))
    overtaken = {
        what: [each for one in (evidence, *(alert.evidence for alert in older)) for each in one.get(what, ())]
        for what in ("stalled", "stalls")
    }
    kept = {what: some for what, some in overtaken.items() if some}
    draft.alert("pain", held[0] if held else None, {**evidence, **kept, "held": list(dict.fromkeys(aside))})


def place_of(evidence: dict[str, Any]) -> str | None:
    """Return the place that an alert of pain is about; None where it says that it hurts no longer."""
    where = evidence.get("pain", {}).get("where")
    return None if where is None else str(where)


def held_by(alert: Alert) -> set[str]:
    """Return the exercises that are aside because of what an alert is about."""
    return {str(name) for name in alert.evidence.get("held", ())}


def say_what_is_aside(draft: Draft, exercises: Sequence[str]) -> tuple[ExerciseHold, ...]:
    """Say which of `exercises` were aside before this message and still are; return their holds."""
    names = dict.fromkeys(exercises)
    held = tuple(hold for name in names if (hold := hold_on(draft.start, name)) in draft.state.holds)
    if held:
        aside = [[hold.exercise, hold.where] for hold in held]
        draft.notice("still aside", aside=aside, coach=draft.client.coach.name)
    return held


def tell_of_held(draft: Draft, done: Sequence[TrainingSet]) -> None:
    """Say that exercises are still aside where sets of them come in, and to the coach that they were done.

    What was set aside on the day of the sets or later may have been done before that, and what stood in the
    journal already is not told again.
    """
    told = {(entry.set.exercise, entry.set.on) for entry in draft.start.entries}
    since = {hold.exercise: hold for hold in say_what_is_aside(draft, [each.exercise for each in done])}
    later = [
        facts_of(each)
        for each in done
        if each.exercise in since
        and is_after(each, since[each.exercise])
        and (each.exercise, each.on) not in told
    ]
    if later:
        draft.tell_coach(
            Notice(topic="done though aside", facts={"client": draft.client.name, "sets": later})
        )


def is_after(done: TrainingSet, held: ExerciseHold) -> bool:
    """Return whether a set was done on a day after its exercise was set aside."""
    return done.on is not None and done.on > held.since


def fine_again(draft: Draft, reading: Reading, text: str) -> bool:
    """Take words that it hurts no longer: the coach decides what comes back. Return whether it was so.

    "It's fine now", with nothing said of what, is of what began to hurt in the last days.
    """
    said = text.casefold()
    if reading.sets or not draft.state.holds or not _WELL.search(said):
        return False
    meant = tuple(
        hold for hold in draft.state.holds if hold.exercise in reading.names or hold.where.split()[-1] in said
    )
    if not meant and _FINE_NOW.fullmatch(said.strip(" .!")):
        meant = tuple(hold for hold in draft.state.holds if draft.today - hold.since <= _FINE_NOW_WITHIN)
    if not meant and not _OF_PAIN.search(said):
        return False
    held = tuple(hold.exercise for hold in meant or draft.state.holds)
    draft.notice("fine again", exercises=list(held), coach=draft.client.coach.name)
    tell_coach(draft, held, {"said": text, "fine": True})
    return True


def affected(draft: Draft, where: str, named: tuple[str, ...]) -> tuple[str, ...]:
    """Return the exercises to set aside for pain at `where`, the likeliest cause first.

    Those named in the message that may load the place; else the one just done, where it may; else all of the
    programme that do; else whatever was named.
    """
    causes = tuple(name for name in named if may_load(name, where))
    if causes:
        return causes
    under_way = open_workout(draft.state)
    if under_way is not None and draft.state.entries and not named:
        last = draft.state.entries[-1]
        recent = last.workout == under_way.number and under_way.on == draft.today
        if recent and may_load(last.set.exercise, where):
            return (last.set.exercise,)
    return tuple(name for name in programme_exercises(draft) if loads_place(name, where)) or named


def may_load(exercise: str, where: str) -> bool:
    """Return whether an exercise may load the place: where either of them is not known, it may."""
    return where == "other" or lookup(exercise) is None or loads_place(exercise, where)


def set_aside(draft: Draft, exercise: str, pain: Pain) -> None:
    """Place a hold, where there is none yet."""
    if hold_on(draft.state, exercise) is not None:
        return
    hold = ExerciseHold(
        number=draft.number("last_hold"),
        exercise=exercise,
        where=pain.where,
        side=pain.side,
        since=draft.today,
    )
    draft.change(HoldPlaced(hold))


def programme_exercises(draft: Draft) -> tuple[str, ...]:
    """Return the exercises of the programme as this client does them, each once, in the sheet's order."""
    stored = draft.client.programme
    if stored is None:
        return ()
    names = (
        line.exercise for workout in stored.programme.workouts for line in lines_of(draft.state, workout.name)
    )
    return tuple(dict.fromkeys(names))
