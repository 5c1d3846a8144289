"""How the first questions go: what is heard in between, where it goes on after a pause, how it ends.

Pain and warning signs are heard as ever. Sets that are told too early are kept as typed and heard once the
questions are over. The answer to anything that comes in ends with the question that is open, until none is.
"""

from dataclasses import replace
from datetime import datetime, timedelta

from domain.client.acting import act_on
from domain.client.asking import take_asked
from domain.client.clearance import is_still_barred, tells_of_doctor
from domain.client.draft import Draft
from domain.client.joining import LONGEST, STEPS, Step, joining_of, next_step, note
from domain.client.looking_up import take_how_to
from domain.client.pain import hold_for_pain, warn
from domain.client.rotation import due
from domain.client.settings import take_setting
from domain.client.talking import answer_coach, ask_coach
from domain.client.understanding import understand
from domain.client.wants import do
from domain.courtesies import is_courtesy, is_thanks
from domain.expressions import Expression
from domain.hedged_answers import without_hedges
from domain.incoming import Edited
from domain.joining_words import ADULT_FROM, BACK, asked_about, plainly
from domain.memory import ClientMemory, Joining, JoiningStep, KeptWords
from domain.outcome import SettingsKept
from domain.parts import Notice, Question, Urgent
from domain.reading import Reading
from domain.usual_hours import usual_hour

REMIND_AFTER = timedelta(days=1)
"""How long a question waits before the client is reminded of it, once: at an hour that suited before. The
house's own rule."""

TELL_COACH_AFTER = timedelta(days=2)
"""How long a question waits before the coach hears of it, once. The house's own rule."""

YOUNGEST = 8
"""Nobody younger writes to the bot, so a smaller number is no age. The house's own choice."""

_AGE_TOLD = Expression(
    r"(?:(?:sorry|oops|actually|well|by the way|btw|to be honest|i have to say|but|no|i lied)[,:. ]+)*"
    r"(?:i'm|i am|im|my age is)(?: actually| really| only| just| still)* (?P<age>\d{1,2})"
    r"(?: ?(?:years?|yrs?)(?: old)?)?(?: actually| though| not \d{2})*"
)

_NUMBER = Expression(r"\d+")
_NUMBERS_ALONE = Expression(r"[\d\s:.,/+-]+")
"""What is rather a slip in an answer than a set told too early: "25:99", "18 40"."""

MOST_KEPT = 20
"""How many messages with sets are kept until the questions are over, the latest. The house's own choice."""

CAN_WAIT: frozenset[JoiningStep] = frozenset({"hour", "equipment", "first day"})
"""What keeps nobody from being heard who has trained: it begins that day, with all else as it stands."""

LEFT_AFTER = 2
"""After so many answers in a row that are none the hour and the equipment are left as they stand. The house's
own choice."""

CANNOT_GO_BACK: frozenset[JoiningStep] = frozenset({"consent", "age", "guardian", "readiness"})
"""What is settled by these stays so until it is told otherwise in so many words."""


def ask(draft: Draft, step: Step, *, unread: bool = False) -> None:
    """Ask a question; asked once more it stays the same question, and is put shortly.

    `unread`: what was said just now was no answer to it.
    """
    waiting = draft.question("joining")
    draft.remember(welcomed=True)
    note(draft, asked_at=draft.at)
    facts, choices = {"step": step.name, **step.facts(draft)}, step.choices(draft)
    if waiting is not None and waiting.about.get("step") == step.name:
        draft.repeat(waiting, {**facts, "again": True, "unread": unread}, choices)
    else:
        draft.ask("joining", {"step": step.name}, facts, choices)


def go_on(draft: Draft, *, unread: bool = False) -> None:
    """Let the answer end with the question that is open; without one, the questions are over.

    Not beside a warning sign, and not to who has just asked for silence.
    """
    if draft.memory.joining is None or draft.says_of("reminders off"):
        return
    if draft.says(Urgent) or draft.says(Question):
        return
    step = next_step(draft)
    note(draft, unread=joining_of(draft).unread + 1 if unread else 0)
    if step is not None and step.name in CAN_WAIT and step.setting and joining_of(draft).unread >= LEFT_AFTER:
        draft.notice("left for now", what=step.name, at=f"{draft.client.remind_at:%H:%M}")
        settle(draft, step.name)
        go_on(draft)
    elif step is not None:
        ask(draft, step, unread=unread)
    elif draft.memory.clearance is None:
        finish(draft)
    elif draft.is_empty or draft.says_of("later with that"):
        draft.notice("waits for doctor", coach=draft.client.coach.name)


_WHICH_QUESTION = Expression(
    r"(?:(?:sorry|oh|hi|hello|ok|please|and|so|wait)[,.!]? )*"
    r"(?:(?:what|which)(?: was| is|'s|s)? (?:the|your|that) (?:last )?question(?: again)?"
    r"|(?:(?:can|could|would) you )?(?:please )?(?:repeat|say|ask|send) (?:me )?(?:that|it|the question)"
    r"(?: again| once more)?|(?:what|which) did you (?:ask|want)(?: me| to know)*|come again|pardon(?: me)?"
    r"|again|what do you (?:want|need)(?: to know| from me)*|where (?:were|was|are) (?:we|i)|what now)"
    r"(?: please| again)*"
)
IN_PARTS: frozenset[JoiningStep] = frozenset({"age", "unit", "zone", "hour"})
"""What can be answered by a part of what is said; whether somebody agrees, or is ill, only by all of it."""
PARTS_TOLD = Expression(r"[,;.!?](?!\d)\s*|\s-\s|\n+")


def answer_joining(draft: Draft, text: str) -> bool:
    """Take `text` as the answer to the open question; return False where it is none, or none is open."""
    step, question = next_step(draft), draft.question("joining")
    if step is None or question is None or question.about.get("step") != step.name or len(text) > LONGEST:
        return False
    said = plainly(text)
    if (said in BACK or (step.no_goes_back and said == "no")) and go_back(draft, step):
        return True
    taken = step.take(draft, text)
    if taken == "unread" and step.name not in CANNOT_GO_BACK - {"age"}:
        bare = without_hedges(text)
        taken = step.take(draft, bare) if bare != text else taken
    if taken == "unread" and step.name in IN_PARTS:
        parts = [part for part in PARTS_TOLD.split(text) if part.strip()]
        answers = [part for part in parts if step.take(draft.trial(), part) == "settled"]
        taken = step.take(draft, answers[0]) if len(answers) == 1 and len(parts) > 1 else taken
    if taken == "settled":
        settle(draft, step.name)
    return taken != "unread" or put_right_before(draft, step, text)


def take_equipment_ahead(draft: Draft, text: str) -> bool:
    """Take what there is to train with, told in the words of an answer before it was asked; return whether it
    was."""
    step = next(each for each in STEPS if each.name == "equipment")
    tried = draft.trial()
    if step.name in joining_of(draft).settled or step.take(tried, text) != "settled" or tried.is_empty:
        return False
    step.take(draft, text)
    note(draft, settled=(*joining_of(draft).settled, step.name), reminded=False)
    return True


def put_right_before(draft: Draft, step: Step, text: str) -> bool:
    """Take `text` as another answer to a question before `step`, the latest first, where that is a setting:
    "8 pm", once its hour was said back. Return whether it is one; the question that is open stays."""
    settled = joining_of(draft).settled
    if isinstance(usual_hour(text), str):
        return False
    for before in reversed(STEPS[: STEPS.index(step)]):
        tried = draft.trial()
        is_setting = before.setting is not None and before.name in settled
        if is_setting and before.take(tried, text) == "settled" and not tried.is_empty:
            before.take(draft, text)
            return True
    return False


def settle(draft: Draft, name: JoiningStep) -> None:
    """Let a question be answered."""
    note(draft, settled=(*joining_of(draft).settled, name), reminded=False)
    draft.drop_question(draft.question("joining"))


def go_back(draft: Draft, step: Step) -> bool:
    """Ask the question before this one in the table again; return False where that cannot be."""
    settled = joining_of(draft).settled
    before = [each.name for each in STEPS[: STEPS.index(step)] if each.name in settled]
    if not before or before[-1] in CANNOT_GO_BACK:
        return False
    note(draft, settled=tuple(each for each in settled if each != before[-1]))
    draft.drop_question(draft.question("joining"))
    return True


def hear_joining(draft: Draft, text: str, reading: Reading) -> bool:
    """Decide on something typed while the questions are open; return False where nothing was found in it."""
    agreed = "consent" in joining_of(draft).settled
    if reading.urgent or reading.pain:
        hear_what_hurts(draft, text, reading)
        return True
    if answer_joining(draft, text):
        return True
    if tells_of_doctor(draft, text):
        if not answer_coach(draft, text):
            ask_coach(draft, text, ())
        return True
    if is_courtesy(text) and is_thanks(text):
        draft.notice("thanked")
        return True
    if about := asked_about(text) if not agreed or "help" in reading.wants else ():
        draft.notice("what this is", about=list(about), coach=draft.client.coach.name)
        return True
    if _WHICH_QUESTION.fullmatch(plainly(text).rstrip("?! ")):
        # Asked anew, so that all of it is said again.
        draft.drop_question(draft.question("joining"))
        return True
    if agreed and take_age_told(draft, text):
        return True
    if agreed and (take_asked(draft, text, reading) or take_how_to(draft, text)):
        return True
    if agreed and take_setting(draft, text):
        settle_by_setting(draft)
        return True
    if agreed and not reading.sets and take_equipment_ahead(draft, text):
        return True
    if (reading.sets or reading.open) and not is_slip(draft, text, reading):
        keep(draft, text)
        if not (reading.sets and reading.names and begin_at_once(draft)):
            draft.notice("later with that")
        return True
    wanted = [each for each in reading.wants if each in {"ask_coach", "stop_messages", "help"}]
    for want in wanted:
        do(draft, want, reading, text, reading.names)
    if reading.wants and not wanted and next_step(draft) is not None:
        draft.notice("training later")
    return bool(reading.wants)


def is_slip(draft: Draft, text: str, reading: Reading) -> bool:
    """Return whether a number is rather an answer that was not understood than a set told too early."""
    step = next_step(draft)
    awaits_number = step is not None and step.name in {"age", "hour"} and not reading.names
    return bool(_NUMBERS_ALONE.fullmatch(text)) or (awaits_number and len(_NUMBER.findall(text)) == 1)


def begin_at_once(draft: Draft) -> bool:
    """Let somebody who has trained begin that day, where nothing is open that could not wait; return whether
    nothing is."""
    settled = joining_of(draft).settled
    left = [each.name for each in STEPS if each.name not in settled and each.is_asked(draft)]
    if draft.memory.clearance is not None or not left or not CAN_WAIT.issuperset(left):
        return False
    for name in left:
        settle(draft, name)
    draft.change(SettingsKept(replace(draft.client, starts=min(draft.client.starts, draft.today))))
    return True


def settle_by_setting(draft: Draft) -> None:
    """Let a question be answered by a setting told in plain words, be it its turn or not."""
    settled = joining_of(draft).settled
    told = (each.name for each in STEPS if each.setting is not None and draft.says_of(each.setting))
    note(draft, settled=tuple(dict.fromkeys((*settled, *told))), reminded=False)


def hear_what_hurts(draft: Draft, text: str, reading: Reading) -> None:
    """Pain and warning signs go before all questions; where readiness is asked about, pain answers that
    too."""
    if reading.sets or reading.open:
        keep(draft, text)
    if reading.urgent:
        warn(draft, text, reading.pain)
        return
    hold_for_pain(draft, text, reading.pain, reading.names)
    step = next_step(draft)
    if step is not None and step.name == "readiness":
        answer_joining(draft, text)


def hear_joining_edit(draft: Draft, edited: Edited) -> None:
    """Take an edit: it answers no question, but what hurts is heard, and sets kept are kept as they now
    stand."""
    reading = understand(draft, edited.text)
    kept = joining_of(draft).kept
    if reading.urgent or reading.pain:
        hear_what_hurts(draft, edited.text, reading)
    elif edited.original in {each.message for each in kept}:
        changed = (
            each.model_copy(update={"text": edited.text}) if each.message == edited.original else each
            for each in kept
        )
        note(draft, kept=tuple(changed))
        draft.notice("later with that")
    else:
        draft.notice("joining edit")


def keep(draft: Draft, text: str) -> None:
    """Keep words until the questions are over."""
    words = KeptWords(message=draft.message, at=draft.at, text=text)
    note(draft, kept=(*joining_of(draft).kept, words)[-MOST_KEPT:])


def finish(draft: Draft) -> None:
    """All is answered: hear what was kept, say what comes first, tell the coach."""
    kept, now, message = joining_of(draft).kept, draft.at, draft.message
    draft.remember(joining=None)
    for words in kept:
        draft.at, draft.message = words.at, words.message
        act_on(draft, understand(draft, words.text), words.text, words.message)
    draft.at, draft.message = now, message
    client, coming = draft.client, due(draft.state, draft.today)
    facts = {
        "has_begun": bool(draft.state.entries),
        "client": client.name,
        "unit": client.unit,
        "zone": client.zone,
        "at": None if draft.memory.reminders_off else f"{client.remind_at:%H:%M}",
        "lacking": list(client.equipment.lacking),
        "workout": coming.workout if coming else None,
        "on": coming.on.isoformat() if coming else None,
    }
    draft.notice("joined", **facts)
    draft.tell_coach(Notice(topic="client ready", facts=facts))


def release(draft: Draft) -> bool:
    """Let training begin, by the coach's word; return False where nothing was to be released."""
    if draft.memory.clearance is None:
        return False
    draft.remember(clearance=None)
    draft.remember(barred=is_still_barred(draft))
    draft.notice("barred" if draft.memory.barred else "may begin", coach=draft.client.coach.name)
    if draft.memory.joining is not None:
        note(draft, reminded=False)
        go_on(draft)
    return True


def reminder_moment(memory: ClientMemory) -> datetime | None:
    """Return when to remind of the question that is open; None where that was done, or is unwanted."""
    joining = memory.joining
    if joining is None or joining.asked_at is None or joining.reminded or joining.refused:
        return None
    return None if memory.reminders_off else joining.asked_at + REMIND_AFTER


def half_way_moment(memory: ClientMemory) -> datetime | None:
    """Return when the coach is told that the client has stopped half-way; None where that was done."""
    joining = memory.joining
    if joining is None or joining.asked_at is None or joining.coach_told or joining.refused:
        return None
    return joining.asked_at + (REMIND_AFTER if joining.reminded else TELL_COACH_AFTER)


def remind_of_question(draft: Draft) -> None:
    """Remind once, kindly, of the question that is open."""
    note(draft, reminded=True)
    if next_step(draft) is not None:
        draft.notice("still there", coach=draft.client.coach.name)
        go_on(draft)


def tell_of_half_way(draft: Draft) -> None:
    """Tell the coach once that the client has stopped half-way, and at which question."""
    step = next_step(draft)
    note(draft, coach_told=True)
    if step is not None:
        facts = {"client": draft.client.name, "step": step.name}
        draft.tell_coach(Notice(topic="client half-way", facts=facts), buttons=(draft.writing,))


def take_age_told(draft: Draft, text: str) -> bool:
    """Take word of being under age from somebody who was taken for an adult: a guardian has to agree first.

    Until then nothing is trained, as when it is told at first.
    """
    found = _AGE_TOLD.fullmatch(plainly(text))
    joining = draft.memory.joining
    if found is None or not YOUNGEST <= int(found["age"]) < ADULT_FROM:
        return False
    if draft.memory.guardian_said is not None or (joining is not None and joining.is_minor):
        return False
    before = joining or Joining(settled=tuple(step.name for step in STEPS if step.name != "guardian"))
    settled = tuple(each for each in before.settled if each != "guardian")
    draft.remember(
        joining=before.model_copy(update={"is_minor": True, "settled": settled, "reminded": False})
    )
    draft.drop_question(draft.question("joining"))
    draft.notice("minor after all")
    facts = {"client": draft.client.name, "said": text}
    news = Notice(topic="client is minor after all", facts=facts)
    draft.tell_coach(news, buttons=(draft.writing,))
    return True
