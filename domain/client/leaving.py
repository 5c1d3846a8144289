"""Leaving: what is to become of the journal is asked, and nothing is erased without a second yes.

A client can have everything sent at any time, leave it with the coach, or have it erased. Erasing is the last
decision about a client: nothing else is decided in the same breath.
"""

from datetime import timedelta

from domain.client.draft import Draft
from domain.expressions import Expression
from domain.joining_words import agrees, plainly
from domain.journal import AlertReason
from domain.leaving_words import Wish, wish_of
from domain.memory import Waiting
from domain.outcome import Erased
from domain.parts import File, Notice

SEND, ERASE, LEAVE_IT, STAY = "Send it to me", "Erase it", "Leave it with my coach", "Stay"
ERASE_ALL, SEND_FIRST, KEEP = "Yes, erase everything", "Send it to me first", "No, keep it"

_SEND = Expression(
    r"(?:1|(?:please )?(?:(?:can|could|would) (?:you|i) )?(?:send|have|get|give)(?: it| me| them|"
    r" everything| that| all| to|"
    r" the| a| my| journal| file| copy| data| of| in)*(?: first| please)*\??|(?:the |a )?(?:file|"
    r"copy)(?: please)?)"
)
_ERASE = Expression(
    r"(?:2|(?:please )?(?:erase|delete|remove|wipe)(?: it| all| everything| them| that| the| my| data|"
    r" journal|"
    r" of it)*(?: please)?)"
)
_LEAVE_IT = Expression(
    r"(?:3|(?:just )?(?:leave|keep)(?: it| them| the journal| everything)*(?: with| to| for)?"
    r"(?: my coach| the coach| her| him| them)?|just leave|"
    r"(?:just )?(?:send|give|pass|hand)(?: it| them| the journal| everything)* to (?:my|the) coach(?: only)?)"
)
_STAY = Expression(
    r"(?:4|(?:i(?:'ll| will|'d rather)? |i want to )?stay(?: here)?|no|nope|never ?mind|nvm|cancel|forget it|"
    r"back|(?:i )?changed my mind|(?:sorry,? )?(?:i )?(?:didn't|didnt|did not) (?:really )?mean (?:it|"
    r"that)|not now|i(?:'m| am) staying|don't|do not|"
    r"(?:no,? )?keep(?: it| everything)?)"
)
_YES = Expression(
    r"(?:(?:yes|yep|yeah|i am sure|i'm sure|sure|please|absolutely|do it)[ ,.!]*)*"
    r"(?:yes|(?:erase|delete|remove|wipe)(?: it| all| everything| of it| me| my data)*)[ ,.!]*"
    r"(?:please|now|i am sure|i'm sure|thanks|thank you|do it|[ ,.!])*"
)
"""Nothing less than a yes, or the wish itself once more."""

OVER_ONCE_GONE: frozenset[AlertReason] = frozenset({"stall", "review", "missed", "unreachable"})
"""What a coach need not decide of somebody who has left; pain, warning signs and questions stay open."""

WAITS_FOR = timedelta(minutes=15)
"""For how long something typed can be the answer to what is asked about leaving. The house's own choice."""


def take_leaving(draft: Draft, text: str) -> bool:
    """Take a wish to leave, to have the data sent or erased; return whether the message is one."""
    wish = wish_of(text)
    if wish is not None:
        grant(draft, wish)
    return wish is not None


def answer_leaving(draft: Draft, text: str) -> bool:
    """Take `text` as the answer to what is asked about leaving; what is no answer lets that go.

    So no yes to something else, later on, is ever taken for this one.
    """
    question = draft.question("leaving")
    if question is None:
        return False
    if draft.at - question.asked_at <= WAITS_FOR and leaving_told(draft, question, text):
        return True
    draft.drop_question(question)
    return False


def leaving_told(draft: Draft, question: Waiting, text: str) -> bool:
    """Take the answer to what is to become of the data; return False where it is none.

    Only a clear yes to the second question erases: the first leads there.
    """
    said = plainly(text)
    is_last = question.about.get("want") == "erase"
    if is_last and _YES.fullmatch(said):
        erase(draft)
    elif _SEND.fullmatch(said):
        send_archive(draft)
        draft.drop_question(question)
        ask_to_erase(draft) if is_last else ask_what_becomes(draft, has_file=True)
    elif _STAY.fullmatch(said) or agrees(text) is False:
        draft.drop_question(question)
        draft.notice("all stays")
    elif is_last:
        return False
    elif _ERASE.fullmatch(said):
        ask_to_erase(draft)
    elif _LEAVE_IT.fullmatch(said):
        draft.drop_question(question)
        leave(draft)
    else:
        return False
    return True


def grant(draft: Draft, wish: Wish) -> None:
    """Do what is wished, or ask what is to become of the data first."""
    match wish:
        case "export":
            send_archive(draft)
        case "erase":
            ask_to_erase(draft)
        case "leave":
            ask_what_becomes(draft)


def send_archive(draft: Draft) -> None:
    """Send everything that is kept about the client, as a file."""
    draft.say(File(what="everything", of=draft.client.number, client=draft.client.name))


def ask_what_becomes(draft: Draft, *, has_file: bool = False) -> None:
    """Ask whether the data are to be sent, to be erased or to stay with the coach."""
    facts = {"want": "leave", "coach": draft.client.coach.name, "has_file": has_file}
    choices = (ERASE, LEAVE_IT, STAY) if has_file else (SEND, ERASE, LEAVE_IT, STAY)
    draft.ask("leaving", {"want": "leave"}, facts, choices)


def ask_to_erase(draft: Draft) -> None:
    """Ask whether everything is really to be erased."""
    facts = {"want": "erase", "coach": draft.client.coach.name}
    draft.ask("leaving", {"want": "erase"}, facts, (ERASE_ALL, SEND_FIRST, KEEP))


def leave(draft: Draft) -> None:
    """End it, with the journal left to the coach: nothing is sent any more until the client comes back."""
    draft.remember(left_at=draft.at, paused=True, paused_until=None, reminders_off=True)
    draft.settle(*(alert for alert in draft.state.alerts if alert.reason in OVER_ONCE_GONE))
    draft.notice("left", coach=draft.client.coach.name)
    draft.tell_coach(Notice(topic="client left", facts={"client": draft.client.name}))


def erase(draft: Draft) -> None:
    """Let everything about the client be erased; the coach hears that it happened."""
    draft.say_only(Notice(topic="erased", facts={"coach": draft.client.coach.name}))
    draft.tell_coach(Notice(topic="client erased", facts={"client": draft.client.name}))
    draft.change(Erased(draft.at))
