"""Body mass: asked for once a workout is done in which the body was the load, then every few weeks at most.

It is never nagged for. A question that was declined or ignored is over for some weeks, and who does not want
to be asked is not. What could as well be said of a set is taken for one.
"""

from dataclasses import replace
from datetime import timedelta
from decimal import Decimal

from domain.body_mass import LEAST_KG, Told, doubt_of, is_time_to_ask, told
from domain.client.draft import Draft
from domain.client.lines import line_named
from domain.client.plan import body_mass_kg
from domain.client.rotation import due, open_workout
from domain.exercises import describe
from domain.expressions import Expression
from domain.journal import WorkoutRecord
from domain.memory import Waiting
from domain.outcome import SettingsKept
from domain.parts import Question
from domain.sets import TrainingSet
from domain.units import Unit, convert

NOT_NOW = "Not now"
DO_NOT_ASK = "Don't ask again"

WAITS_FOR = timedelta(days=2)
"""For how long something typed can be the answer: until the next morning or two. The house's own choice."""

_NAMED = 3
"""So many exercises are named at most where body mass is asked for."""

_LATER = Expression(
    r"(?:no|nope|not)(?:,? (?:now|right now|today|thanks|thank you|sorry))*|"
    r"(?:maybe |some )?(?:later|another time|other time|next time)(?: maybe)?|skip(?: it| that| this)?|pass|"
    r"(?:i'd |i would )?(?:rather|prefer) not(?: to)?(?: say| tell)?|(?:i )?(?:don't|dont|do not) know|dunno|"
    r"no idea|(?:i have )?no scales?(?: here)?|never ?mind"
)
_NEVER = Expression(
    r"(?:please )?(?:(?:don't|dont|do not|never|stop|quit|no)(?: ever)? ask(?:ing)?(?: me)?(?: that| this)?"
    r"(?: again| anymore| any more| ever)*|never|none of your business)"
)
_NEVER_ASK = Expression(
    r"(?:please )?(?:(?:don't|dont|do not|never|stop|quit|no more)(?: ever)? (?:ask(?:ing)?|questions?)"
    r"(?: me)?(?: again)?(?: for| about| what)? (?:my |i )?(?:body ?)?(?:weight|mass|weigh)"
    r"(?: is)?(?: again| anymore| any more| ever| please)*|"
    r"i (?:don't|dont|do not|won't|will not) (?:want to |like to )?"
    r"(?:tell|give|share|say|be asked (?:for|about))(?: you)?(?: about)? my (?:body ?)?(?:weight|mass)|"
    r"my (?:body ?)?(?:weight|mass) is (?:none of your business|private))"
)


_CORRECTS = Expression(
    r"(?:(?:no|sorry|oops|wait|actually|rather|i mean|i meant|make (?:that|it)|(?:it |that )?should be|"
    r"correction|typo)[,:. ]+)+"
)


def ask_for_body_mass(draft: Draft) -> None:
    """Ask for body mass where a workout with the body as load has just been completed, and it is time to.

    Not beside another question, and not where something hurts: then there are other things to think of.
    """
    memory, client = draft.memory, draft.client
    done = completed_now(draft)
    known_since = memory.body_mass_told_on or (client.starts if client.body_mass is not None else None)
    if (
        done is None
        or memory.barred
        or draft.question("sets") is not None
        or draft.says(Question)
        or memory.body_mass_unwanted
        or draft.has_caution
        or not is_time_to_ask(draft.today, known_since, memory.body_mass_asked_on)
    ):
        return
    sets = [entry.set for entry in draft.state.entries if entry.workout == done.number]
    names = dict.fromkeys(each.exercise for each in sets if needs_body_mass(draft, done, each))
    if names:
        draft.remember(body_mass_asked_on=draft.today)
        facts = {"exercises": list(names)[:_NAMED]}
        draft.ask("body mass", {}, facts, (NOT_NOW, DO_NOT_ASK))


def needs_body_mass(draft: Draft, workout: WorkoutRecord, done: TrainingSet) -> bool:
    """Return whether body mass makes a difference to a set: the body is a part of its load, not all of it.

    Where nothing is ever added or taken off, the body alone is compared with itself.
    """
    if describe(done.exercise).body_share is None:
        return False
    line = line_named(draft.state, workout.name, done.exercise)
    return done.load_kind in {"added", "assist"} or (
        line is not None and line.prescription.add_load is not None
    )


def completed_now(draft: Draft) -> WorkoutRecord | None:
    """Return the workout that this message has completed, where none is under way."""
    before = {each.number: each.state for each in draft.start.workouts}
    latest = draft.state.workouts[-1] if draft.state.workouts else None
    if latest is None or latest.state != "done" or open_workout(draft.state) is not None:
        return None
    return latest if before.get(latest.number, "open") == "open" else None


def drop_old_weighing(draft: Draft) -> None:
    """Let the question for body mass no longer wait once it is old, or sets were told of since."""
    question = draft.question("body mass")
    if question is None:
        return
    is_told_since = any(entry.at > question.asked_at for entry in draft.state.entries)
    if is_told_since or draft.at - question.asked_at > WAITS_FOR:
        draft.drop_question(question)


def weight_told(draft: Draft, question: Waiting, text: str) -> bool:
    """Take the answer to the question for body mass; return False where it is none.

    A number alone is none while sets are asked about, or on a day of training, unless it was just asked for.
    """
    said = " ".join(text.casefold().replace("’", "'").split()).rstrip(".!? ")
    if _NEVER.fullmatch(said):
        never_ask(draft)
    elif said and _LATER.fullmatch(said):
        draft.drop_question(question)
        draft.notice("body mass later")
    elif (mass := told(text, draft.client.unit, asked=True)) is not None and is_of_body(
        draft, question, mass
    ):
        take_body_mass(draft, mass)
    else:
        return False
    return True


def is_of_body(draft: Draft, question: Waiting, mass: Told) -> bool:
    """Return whether a number can be of nothing but the body: no set is asked about, none is to be done."""
    if not mass.in_words and mass.mass < LEAST_KG:
        return False
    if mass.in_words and question.about.get("told") == f"{mass.mass.normalize():f}":
        return True
    if draft.reply is not None and question.number in draft.reply.questions:
        return True
    coming = due(draft.state, draft.today)
    return (
        draft.question("sets") is None
        and open_workout(draft.state) is None
        and (coming is None or coming.on > draft.today)
    )


def take_weight(draft: Draft, text: str) -> bool:
    """Take body mass told unasked, or the wish not to be asked for it; return whether it was one of these."""
    said = " ".join(text.casefold().replace("’", "'").split()).rstrip(".! ")
    if _NEVER_ASK.fullmatch(said):
        never_ask(draft)
        return True
    corrected = _CORRECTS.match(said) if is_told_last(draft) else None
    mass = told(
        said[corrected.end() :] if corrected else text, draft.client.unit, asked=corrected is not None
    )
    if mass is None or (corrected and not mass.in_words and mass.mass < LEAST_KG):
        return False
    take_body_mass(draft, mass)
    return True


def is_told_last(draft: Draft) -> bool:
    """Return whether body mass was told today, and no set since: then a correction is of it."""
    told_in, told_on = draft.memory.body_mass_told_in, draft.memory.body_mass_told_on
    latest = max((entry.message for entry in draft.state.entries), default=0)
    return told_on == draft.today and told_in > latest


def take_weight_back(draft: Draft) -> None:
    """Let the body mass be what it was before it was told last."""
    before = draft.memory.body_mass_before
    draft.change(SettingsKept(replace(draft.client, body_mass=before)))
    draft.remember(body_mass_told_in=0, body_mass_before=None)
    mass = None if before is None else f"{before.normalize():f}"
    draft.notice("body mass taken back", mass=mass, unit=draft.client.unit)


def never_ask(draft: Draft) -> None:
    """Obey the wish not to be asked for body mass, for good."""
    draft.drop_question(draft.question("body mass"))
    draft.remember(body_mass_unwanted=True)
    draft.notice("body mass not asked")


def take_body_mass(draft: Draft, mass: Told) -> None:
    """Keep a body mass, in the client's own unit; where it cannot be taken so, ask how it is meant."""
    doubt = doubt_of(mass, body_mass_kg(draft.state))
    number = f"{mass.mass.normalize():f}"
    match doubt:
        case None:
            keep_body_mass(draft, mass.mass, mass.unit)
        case "unit":
            draft.remember(body_mass_asked_on=draft.today)
            draft.ask("body mass", {"told": number}, {"told": number}, (f"{number} kg", f"{number} lb"))
        case "beyond":
            draft.notice("body mass unlikely", mass=number)


def keep_body_mass(draft: Draft, mass: Decimal, unit: Unit) -> None:
    """Keep the body mass and the day on which it was told."""
    kept = round(convert(mass, unit, draft.client.unit), 1)
    draft.drop_question(draft.question("body mass"))
    before = draft.memory.body_mass_before if is_told_last(draft) else draft.client.body_mass
    draft.change(SettingsKept(replace(draft.client, body_mass=kept)))
    draft.remember(body_mass_told_on=draft.today, body_mass_told_in=draft.message, body_mass_before=before)
    draft.notice("body mass kept", mass=f"{kept.normalize():f}", unit=draft.client.unit)


def weigh_again(draft: Draft, message: int, text: str) -> bool:
    """Take the edited message in which body mass was told last; return whether it was that one."""
    mass = told(text, draft.client.unit, asked=True)
    if message != draft.memory.body_mass_told_in or mass is None:
        return False
    draft.message = message
    take_body_mass(draft, mass)
    return True
