"""Open questions and their answers. A message that is no answer is read as what it is."""

from collections.abc import Sequence

from domain.client.draft import SET_SLOTS, Draft
from domain.client.half_understood import unfinished_of
from domain.client.joining_flow import answer_joining
from domain.client.leaving import leaving_told
from domain.client.not_understood import ANSWERED_WITHIN
from domain.client.other_workout import plan_on
from domain.client.plans import keep_plans, move_to, note_missed, pause, plans_of, put_off
from domain.client.rotation import Due
from domain.client.trouble import is_said_in_full, lately_told, trouble_told
from domain.client.understanding import request_for
from domain.client.unfinished import complete, first_of
from domain.client.weighing import WAITS_FOR, weight_told
from domain.client.workouts import found_later
from domain.expressions import Expression
from domain.memory import Waiting
from domain.reading import read

TRAINED = frozenset({"trained", "i trained", "yes i trained", "i did it", "did it", "done", "yes"})
TODAY_INSTEAD = frozenset({"today instead", "today", "i'll do it today", "will do it today"})
MISSED_IT = frozenset({"missed it", "missed", "i missed it", "skipped it", "no", "nothing"})

_REASON = Expression(
    r"(?:,|\.|:| -)? (?:sorry|because|cos|as|since|had|was|due|the|my|i|overtime|too|work)\b|, "
)
"""How a reason begins that is told with what became of a workout."""


def take_typed(draft: Draft, text: str, names: Sequence[str]) -> bool:
    """Take something typed as the answer to an open question, the one asked last before any other.

    `names` are the exercises that the text speaks of: an answer speaks of no other than the question does.
    """
    for question in reversed(draft.memory.questions):
        waits_for = WAITS_FOR if question.slot == "body mass" else ANSWERED_WITHIN
        is_fresh = draft.at - question.asked_at <= waits_for
        is_meant = is_fresh or is_said_in_full(question, text)
        if is_meant and is_about(question, names) and take_answer(draft, question, text):
            return True
    return False


def take_reply(draft: Draft, text: str, names: Sequence[str]) -> bool:
    """Take a reply as the answer to what its message has asked, or raised, whatever was asked since."""
    reply = draft.reply
    if reply is None:
        return False
    asked = [each for each in reversed(draft.memory.questions) if each.number in reply.questions]
    meant = (
        first_of(draft, lambda each: each.question in reply.questions),
        first_of(draft, lambda each: each.message == reply.message),
    )
    asked += [each for each in meant if each is not None]
    asked += [
        each
        for each in draft.memory.questions
        if each.slot not in SET_SLOTS and reply.message is not None and each.message == reply.message
    ]
    return any(is_about(question, names) and take_answer(draft, question, text) for question in asked)


def is_about(question: Waiting, names: Sequence[str]) -> bool:
    """Return whether a question is about all of the exercises `names`, or asks which exercise is meant."""
    if question.slot not in SET_SLOTS or question.slot == "exercise":
        return True
    return set(names) <= {each.open.exercise for each in unfinished_of(question)}


def take_pressed(draft: Draft, number: int, text: str) -> bool:
    """Take a button as the answer to the question of that number, as long as what it asked is not known."""
    question = next((each for each in draft.memory.questions if each.number == number), None)
    question = question or first_of(draft, lambda each: each.question == number)
    return question is not None and take_answer(draft, question, text)


def take_answer(draft: Draft, question: Waiting, text: str) -> bool:
    """Take `text` as the answer to an open question; return False where it is none."""
    said = _plain(text).replace(",", "")
    match question.slot:
        case "trouble":
            return trouble_told(draft, question, text, said)
        case "lately":
            return lately_told(draft, question, text, said)
        case "missed":
            return missed_told(draft, question, _plain(text))
        case "day":
            return day_told(draft, question, text)
        case "body mass":
            return weight_told(draft, question, text)
        case "joining":
            return answer_joining(draft, text)
        case "leaving":
            return leaving_told(draft, question, text)
        case "sheet" | "programme" | "send" | "words" | "who" | "handover" | "role":
            return False
        case _:
            return complete(draft, question, text)


def _plain(text: str) -> str:
    return " ".join(text.casefold().replace("’", "'").split()).rstrip(".!")


def missed_told(draft: Draft, question: Waiting, said: str) -> bool:
    """Take the answer to what became of a workout of which nothing was reported."""
    number = int(question.about["workout"])
    missed = next((each for each in draft.state.workouts if each.number == number), None)
    said = _REASON.split(said, maxsplit=1)[0]
    if missed is None or missed.state != "missed" or said not in TRAINED | TODAY_INSTEAD | MISSED_IT:
        return False
    draft.drop_question(question)
    if said in TRAINED:
        found_later(draft, missed)
        draft.notice("trained after all", workout=missed.name, on=missed.on.isoformat())
    elif said in TODAY_INSTEAD:
        move_to(draft, Due(missed.name, missed.on), draft.today)
        draft.notice("moved", workout=missed.name, on=draft.today.isoformat())
    else:
        note_missed(draft)
    return True


def day_told(draft: Draft, question: Waiting, text: str) -> bool:
    """Take the answer to which day a workout is moved to, or a pause ends on."""
    pauses = question.about["want"] == "pause"
    on = read(request_for(draft, f"{'away till' if pauses else 'move it to'} {text}")).on
    if on is None or len(text) > 40:
        return False
    draft.drop_question(question)
    before = plans_of(draft)
    if pauses:
        pause(draft, on)
    elif "workout" in question.about:
        plan_on(draft, str(question.about["workout"]), on)
    else:
        put_off(draft, on)
    keep_plans(draft, before)
    return True
