"""What a client is asked about a stall: first whether anything hurts, then what was out of the ordinary.

Whatever is answered stands with the alert, in the client's own words, for the coach, and under what it is
about, whichever of the two was asked. A yes to pain goes the
way of all pain, and nothing else is asked then.
"""

import re
from collections.abc import Collection, Iterable
from typing import Any

from domain.calendar import local_day
from domain.client.draft import Draft
from domain.client.lines import done_instead_of
from domain.client.not_understood import ANSWERED_WITHIN
from domain.client.pain import hold_for_pain, may_load
from domain.courtesies import is_courtesy
from domain.expressions import Expression
from domain.memory import StallAnswers, Waiting
from domain.parts import Safety
from domain.reading import Pain, Reading, denies_trouble, speaks_of_illness, speaks_of_late

NO_TROUBLE = "No trouble"
IT_HURTS = "It hurts"

NOTHING_UNUSUAL = "Nothing unusual"
OUT_OF_THE_ORDINARY = (NOTHING_UNUSUAL, "Slept badly", "Was ill", "Ate little", "Hard weeks")

SAID_IN_FULL = {
    "trouble": frozenset({NO_TROUBLE.casefold()}),
    "lately": frozenset(each.casefold() for each in OUT_OF_THE_ORDINARY),
}
"""What buttons say that can mean nothing else when it is typed, however much later."""
TROUBLE = frozenset(
    {"it hurts", "yes", "yes it hurts", "yes it does", "a bit", "a little", "yeah", "some pain"}
)
DENIALS = frozenset(
    ["no", "nope", "none", "not", "nothing", "doesn't", "doesnt", "don't", "never", "fine", "good"]
)
BESIDE_DENIALS = frozenset(
    ["it", "there", "is", "that", "does", "hurt", "pain", "trouble", "joint", "all", "at", "really", "feels"]
) | frozenset(
    ["any", "ok", "okay", "thanks", "thank", "you", "my", "joints", "are", "problem", "problems", "with"]
)
"""Words that can stand beside a denial without saying anything else."""
NO = Expression(r"\W*(?:no|nope|none|not|nothing|never)\b", re.IGNORECASE)
YES = Expression(r"\W*(?:yes|yeah|yep|yup|it does|a (?:bit|little))\b", re.IGNORECASE)
BESIDE_NOTHING = BESIDE_DENIALS | {
    "unusual",
    "out",
    "of",
    "the",
    "ordinary",
    "as",
    "usual",
    "always",
    "normal",
}


def ask_about_stalls(draft: Draft, exercises: Iterable[str]) -> None:
    """Ask whether the exercises that have just stalled give pain or joint trouble.

    An earlier question of the same that still waits is taken up, so that one answer is enough.
    """
    names = list(exercises)
    if not names:
        return
    earlier = draft.question("trouble")
    names = list(dict.fromkeys([*asked_about(earlier), *names]))
    draft.say(Safety(where=None, exercise=names[0], also=tuple(names[1:])))
    about = {"exercises": names}
    draft.ask("trouble", about, about, (NO_TROUBLE, IT_HURTS))


def asked_about(question: Waiting | None) -> list[str]:
    """Return the exercises that a question about stalls is about."""
    if question is None:
        return []
    about: dict[str, Any] = question.about
    return [str(name) for name in about.get("exercises") or [about["exercise"]]]


def forget_stalls(draft: Draft, exercises: Collection[str]) -> None:
    """Ask no longer about stalls of `exercises` that are none."""
    for slot in ("trouble", "lately"):
        question = draft.question(slot)
        if question is not None and {*exercises} & {*(names := asked_about(question))}:
            left = [name for name in names if name not in exercises]
            draft.drop_question(question)
            if left:
                kept = question.model_copy(update={"about": {"exercises": left}})
                draft.remember(questions=(*draft.memory.questions, kept))


def trouble_told(draft: Draft, question: Waiting, text: str, said: str) -> bool:
    """Take a plain answer to whether exercises that have stalled give pain or joint trouble."""
    exercises = asked_about(question)
    if is_denial(said, BESIDE_DENIALS):
        note(draft, question, text)
        draft.notice("no trouble", exercise=exercises[0])
        ask_about_the_rest(draft, exercises)
        return True
    if said in TROUBLE:
        hurting = with_those_in_place(draft, exercises)
        draft.drop_question(question)
        hold_for_pain(draft, text, (Pain(where="other"),), hurting)
        return True
    return False


def asked_about_pain(draft: Draft, text: str, pain: Iterable[Pain]) -> tuple[str, ...]:
    """Return the exercises of which it was asked whether they hurt, where `text` can mean that they do.

    That is any yes, and else whatever may load a place that hurts.
    """
    question = open_question(draft)
    if question is None or question.slot != "trouble":
        return ()
    names = with_those_in_place(draft, asked_about(question))
    if YES.match(text):
        return names
    places = [each.where for each in pain]
    return tuple(name for name in names if any(may_load(name, where) for where in places))


def with_those_in_place(draft: Draft, exercises: list[str]) -> tuple[str, ...]:
    """Return exercises, and what the client does in their place at present."""
    return (*exercises, *(name for each in exercises for name in done_instead_of(draft.state, each)))


def lately_told(draft: Draft, question: Waiting, text: str, said: str) -> bool:
    """Take a plain answer to what was out of the ordinary."""
    if said not in SAID_IN_FULL["lately"] and not is_denial(said, BESIDE_NOTHING):
        return False
    note(draft, question, text)
    draft.notice("lately noted", coach=draft.client.coach.name)
    return True


def is_said_in_full(question: Waiting, text: str) -> bool:
    """Return whether `text` is what a button of a question about a stall says, and not a mere yes or no.

    An illness is none: told later it may well be a new one.
    """
    said = text.strip(" .!").casefold()
    return said in SAID_IN_FULL.get(question.slot, ()) and not speaks_of_illness(said)


def is_denial(said: str, beside: frozenset[str]) -> bool:
    """Return whether words say no, and nothing else."""
    words = set(said.split())
    return bool(words & DENIALS) and words <= DENIALS | beside


def ask_about_the_rest(draft: Draft, exercises: list[str]) -> None:
    """Ask what was out of the ordinary of late, as strength is lost by that too; not twice a day."""
    for alert in draft.state.alerts:
        said = alert.evidence.get("answers", {}).get("lately")
        if alert.reason == "stall" and said and local_day(alert.at, draft.zone) == draft.today:
            keep(draft, exercises, "lately", str(said))
            return
    draft.ask("lately", {"exercises": exercises}, {"exercises": exercises}, OUT_OF_THE_ORDINARY)


def take_free_answer(draft: Draft, text: str) -> bool:
    """Take words with nothing else to do in them as the answer to what was asked last about a stall."""
    question = open_question(draft)
    if question is None or is_courtesy(text) or not any(sign.isalpha() for sign in text):
        return False
    coach = draft.client.coach.name
    if question.slot == "trouble" and speaks_of_late(text):
        take_early(draft, question, text)
        return True
    note(draft, question, text)
    if question.slot == "lately":
        draft.notice("lately noted", coach=coach)
    else:
        draft.notice("trouble noted", coach=coach, exercises=asked_about(question))
        ask_about_the_rest(draft, asked_about(question))
    return True


def take_early(draft: Draft, question: Waiting, text: str) -> None:
    """Take what was out of the ordinary, told where it was asked for pain, as what it is.

    Whether anything hurts is asked once more, unless the same words say that nothing does.
    """
    exercises = asked_about(question)
    nothing_hurts = NO.match(text) or denies_trouble(text)
    if nothing_hurts:
        note(draft, question, text)
    keep(draft, exercises, "lately", text)
    draft.notice("lately noted", coach=draft.client.coach.name)
    if not nothing_hurts:
        draft.drop_question(question)
        ask_about_stalls(draft, exercises)


def note_illness(draft: Draft, reading: Reading, text: str) -> None:
    """Let words of an illness, of which something else is made, answer what was out of the ordinary too."""
    question = open_question(draft)
    if question is None or not reading.wants or not speaks_of_illness(text):
        return
    if question.slot == "lately":
        note(draft, question, text)
    else:
        keep(draft, asked_about(question), "lately", text)


def open_question(draft: Draft) -> Waiting | None:
    """Return the question about a stall asked last, if something typed can still be the answer."""
    asked = [each for each in draft.memory.questions if each.slot in {"trouble", "lately"}]
    fresh = [each for each in asked if draft.at - each.asked_at <= ANSWERED_WITHIN]
    return fresh[-1] if fresh else None


def note(draft: Draft, question: Waiting, text: str) -> None:
    """Keep an answer with the alerts that it is about, and for the coach who has heard of them already."""
    draft.drop_question(question)
    keep(draft, asked_about(question), question.slot, text)


def keep(draft: Draft, exercises: list[str], slot: str, text: str) -> None:
    """Keep what was said about the stalls of `exercises` when asked for `slot`."""
    for alert in draft.state.alerts:
        if alert.reason == "stall" and {*alert.exercises} & {*exercises}:
            draft.note_evidence(alert, answers={**alert.evidence.get("answers", {}), slot: text})
    waiting = draft.memory.stall_answers
    before = waiting.said if waiting is not None and set(waiting.exercises) & {*exercises} else {}
    kept = StallAnswers(exercises=tuple(exercises), said={**before, slot: text}, at=draft.at)
    draft.remember(stall_answers=kept)
