"""A doctor first: what keeps a client from training until the coach says otherwise, and who is told of it."""

from domain.actions import Release
from domain.client.draft import Draft
from domain.expressions import Expression
from domain.memory import Clearance
from domain.parts import Notice
from domain.readiness import MATTERS, Matter


def see_a_doctor_first(draft: Draft, which: frozenset[Matter], said: str) -> None:
    """Let there be no training until a doctor was seen and the coach releases it; tell both."""
    before = draft.memory.clearance
    matters = {*which, *(before.which if before else ())}
    clearance = Clearance(at=draft.at, which=tuple(each for each in MATTERS if each in matters), said=said)
    draft.remember(clearance=clearance, barred=True)
    draft.notice("doctor first", coach=draft.client.coach.name, which=list(clearance.which))
    bring_to_release(draft, clearance)


def bring_to_release(draft: Draft, clearance: Clearance) -> None:
    """Tell the coach who is to see a doctor first, with the button that lets the training begin."""
    facts = {"client": draft.client.name, "which": list(clearance.which), "said": clearance.said}
    draft.tell_coach(
        Notice(topic="to be released", facts=facts),
        buttons=(Release(client=draft.client.number), draft.writing),
    )


_DOCTORS_YES = Expression(
    r"(?:.{0,60}\b)?(?:doctor|doc|dr|gp|physician|cardiologist|specialist|consultant|midwife)\b.{0,60}"
    r"\b(?:fine|ok|okay|can|may|good|happy|clear|cleared|agreed|agrees|allowed|allows|go|safe|pleased|"
    r"no problem|"
    r"yes)\b.{0,60}"
)


def tells_of_doctor(draft: Draft, text: str) -> bool:
    """Return whether somebody who may not train yet says that a doctor agrees; the coach is to hear that."""
    said = " ".join(text.casefold().split())
    is_barred = draft.memory.barred or draft.memory.clearance is not None
    return is_barred and "?" not in said and _DOCTORS_YES.fullmatch(said) is not None


def is_still_barred(draft: Draft) -> bool:
    """Return whether there is a reason left not to train: a warning sign not settled, or a doctor to be
    seen."""
    return draft.memory.clearance is not None or any(alert.reason == "urgent" for alert in draft.state.alerts)


_OF_TRAINING = Expression(
    r"\b(?:train\w*|work ?out|lift\w*|gym|exercis\w+|squat|bench|go on|carry on|continue)\b"
)


def is_of_training(text: str) -> bool:
    """Return whether a question is about training, so that who may not train is reminded of that."""
    return _OF_TRAINING.search(text.casefold()) is not None
