"""What client and coach write to each other: passed on under their names, and kept in the journal.

A question waits as an alert until the coach answers it; a reply answers just what it replies to.
"""

from datetime import timedelta

from domain.client.draft import Draft
from domain.client.eager import TELL_AGAIN_AFTER
from domain.client.explaining import explain, spot_named
from domain.client.following import note_remedy
from domain.client.putting_before import WRITTEN_ABOUT
from domain.client.stalls import EXPOSURES_LEFT_ALONE, leave_alone
from domain.client.understanding import understand
from domain.courtesies import is_courtesy
from domain.incoming import Told
from domain.journal import Alert, AlertReason, Words, Writer
from domain.memory import CoachWrote
from domain.outcome import AlertSettled, WordsKept
from domain.parts import Notice
from domain.values import facts_of

ANSWERS_COACH_WITHIN = timedelta(days=2)
"""For how long words with nothing to do in them can be an answer to the coach. The house's own choice."""

SETS_BESIDE = 3
"""How many of the last sets stand beside a question. The house's own choice."""

BROUGHT_WITH_WORDS: frozenset[AlertReason] = frozenset({"question", "pain", "urgent"})
"""What comes to the coach with the client's own words."""

WORDS_KEPT = 12
"""Of how many of the coach's messages it is remembered what they were about. The house's own choice."""


def ask_coach(draft: Draft, text: str, named: tuple[str, ...]) -> None:
    """Bring a question to the coach, and say so."""
    bring_question(draft, text, named)
    draft.notice("passed on", coach=draft.client.coach.name)


def bring_question(draft: Draft, text: str, named: tuple[str, ...]) -> None:
    """Bring a question to the coach, with the last sets beside it: of the exercise that it names."""
    of_it = [entry for entry in draft.state.entries if entry.set.exercise in named[:1]]
    last = (of_it or draft.state.entries)[-SETS_BESIDE:]
    evidence = {"said": text, "message": draft.message, "last": [facts_of(entry.set) for entry in last]}
    told = explain(draft, spot_named(draft, named[0])) if named else None
    if told is not None:
        evidence["explanation"] = facts_of(told)
    draft.alert("question", named[0] if named else None, evidence)
    keep_words(draft, "client", text, draft.memory.last_alert)


def keep_words(draft: Draft, by: Writer, text: str, alert: int | None = None) -> None:
    """Keep in the journal what one has written to the other."""
    name = draft.client.name if by == "client" else draft.client.coach.name
    number = draft.number("last_words")
    draft.change(WordsKept(Words(number=number, by=by, name=name, text=text, at=draft.at, alert=alert)))


def hear_coach(draft: Draft, order: Told) -> None:
    """Pass the coach's words on to the client; they answer what is asked, and settle what they are about."""
    text, settled = order.text, settle_by_words(draft, order)
    asked = [alert for alert in settled if alert.reason == "question"]
    answers = str(asked[0].evidence["said"]) if len(asked) == 1 else None
    spread = {"spread": order.spread, "by": order.coach} if order.spread else {}
    draft.notice("from coach", coach=draft.client.coach.name, text=text, answers=answers, **spread)
    keep_words(draft, "coach", text, asked[0].number if asked else None)
    draft.remember(told_at=draft.at, told_to_several=order.to_several)
    note_words(draft, text)
    if not order.to_several:
        facts = {"client": draft.client.name, "text": text}
        draft.tell_coach(Notice(topic="passed to client", facts=facts), weight="answer")


def settle_by_words(draft: Draft, order: Told) -> list[Alert]:
    """Settle the matters that the coach's words are about, and return them.

    Words about no matter answer all that the client has asked, unless they go to others as well, or reply to
    something else. A stall is then left alone as after any remedy.
    """
    named = {order.alert, *(order.alerts or ())}
    open_ones = [alert for alert in draft.state.alerts if alert.reason in WRITTEN_ABOUT]
    about = [alert for alert in open_ones if alert.number in named]
    if not about and order.alerts is None and not order.to_several:
        about = [alert for alert in open_ones if alert.reason == "question"]
    for alert in about:
        draft.change(AlertSettled(alert.number, "seen", order.coach, draft.at))
        if alert.reason == "stall":
            for exercise in alert.exercises:
                leave_alone(draft, exercise, EXPOSURES_LEFT_ALONE)
        note_remedy(draft, alert, "write")
    return about


def note_words(draft: Draft, text: str) -> None:
    """Remember that the coach wrote, and of which exercises: what is done about them is between the two."""
    wrote = CoachWrote(on=draft.today, exercises=understand(draft, text).names)
    recent = (each for each in draft.memory.coach_wrote if draft.today - each.on <= TELL_AGAIN_AFTER)
    draft.remember(coach_wrote=(*recent, wrote)[-WORDS_KEPT:])


def answer_coach(draft: Draft, text: str) -> bool:
    """Pass on the first words with nothing to do in them since the coach wrote; return whether they were.

    An answer of a word is an answer too, unless the coach wrote to several; some days later it hardly is one.
    A reply to the coach's words is one at any time, or if it asks something, a question.
    """
    if is_reply_to_words(draft) and text.strip():
        draft.remember(told_at=None)
        if text.rstrip().endswith("?"):
            ask_coach(draft, text, ())
        else:
            pass_on(draft, text)
        return True
    told_at = draft.memory.told_at
    if told_at is None or not any(sign.isalnum() for sign in text):
        return False
    if draft.memory.told_to_several and is_courtesy(text):
        return False
    draft.remember(told_at=None)
    if draft.at - told_at > ANSWERS_COACH_WITHIN:
        return False
    pass_on(draft, text)
    return True


def reply_to_coach(draft: Draft, text: str) -> None:
    """Pass on a reply to the coach's words, whatever else was done about it.

    What is brought to the coach with its words anyway, a new question or pain, is not passed on as well.
    """
    if not is_reply_to_words(draft) or draft.is_erased or not text.strip():
        return
    known = {alert.number for alert in draft.start.alerts}
    is_brought = any(
        alert.reason in BROUGHT_WITH_WORDS and alert.number not in known for alert in draft.state.alerts
    )
    if not is_brought and not draft.has_told("client answers"):
        draft.remember(told_at=None)
        pass_on(draft, text, silently=not draft.is_empty)


def is_reply_to_words(draft: Draft) -> bool:
    """Return whether the message replies to words of the coach's."""
    return draft.reply is not None and draft.reply.is_words


def pass_on(draft: Draft, text: str, *, silently: bool = False) -> None:
    """Tell the coach what the client answers."""
    facts = {"client": draft.client.name, "text": text}
    keep_words(draft, "client", text)
    draft.tell_coach(Notice(topic="client answers", facts=facts))
    if not silently:
        draft.notice("passed on", coach=draft.client.coach.name)


def show_talk(draft: Draft) -> None:
    """Show the coach what was written, by whom and when."""
    rows = [
        {"on": each.at.astimezone(draft.zone).date().isoformat(), "name": each.name, "text": each.text}
        for each in draft.state.words
    ]
    facts = {"client": draft.client.name, "rows": rows}
    draft.tell_coach(Notice(topic="talk", facts=facts), weight="answer")
