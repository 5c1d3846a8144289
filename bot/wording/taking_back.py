"""Words for what is taken back, put back, or left as it stands."""

from decimal import Decimal

from bot.markup import escape
from bot.wording.days import coming_words
from bot.wording.notice_forms import Facts, Words, sets_told
from bot.wording.reader import NO_BREAK, Reader, number
from domain.topics import Topic


def _taken_back(facts: Facts, _reader: Reader) -> str:
    stand = f" As before: {sets_told(facts['stand'])}." if facts.get("stand") else ""
    return f"Taken back: {sets_told(facts['sets'])}.{stand}"


def _put_back(facts: Facts, _reader: Reader) -> str:
    back = [f"Put back: {sets_told(facts['sets'])}."] if facts["sets"] else []
    back += ["Your plans are as you had changed them."] if facts["plans"] else []
    mass = facts["mass"]
    back += (
        [f"Your body weight is {number(Decimal(mass))}{NO_BREAK}{escape(str(facts['unit']))} again."]
        if mass
        else []
    )
    return " ".join(back)


TAKING_BACK_WORDS: dict[Topic, Words] = {
    "all recorded stands": "All right. What stands in your journal stays there.",
    "question dropped": lambda facts, _: (
        "All right, I ask no further, and record nothing of it."
        + (" Your words stay in the journal as not understood." if facts.get("kept") else "")
    ),
    "plans as before": lambda facts, _: "All right, as it was before." + coming_words(facts, " Next is"),
    "nothing to take back": "There is nothing to take back.",
    "nothing to put right": "Nothing of that message stands in your journal, so I change nothing. "
    "Send the set as it was, say as «80 kg x 8».",
    "taken back": _taken_back,
    "put back": _put_back,
    "not put back": "Something else has come since, so I cannot put that back as it was. Send me the sets "
    "once more, or say how you want it.",
}
