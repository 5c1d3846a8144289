"""What a coach's message was taken for is noted with the decision: what is wanted, and of whom."""

from dataclasses import replace
from datetime import timedelta

import pytest

from domain.coach_memory import CoachMemory, Spoken
from domain.decide import hear
from domain.incoming import Edited, FromChat, Heard, ReplyTo, Text
from domain.state import CoachState
from domain.understood import Understood
from tests.domain.client.people import SHEET
from tests.domain.coach.test_hearing import NOW, STATE, noor

SPOKEN = replace(STATE, memory=CoachMemory(spoken=Spoken(client=2, at=NOW)))


def heard(incoming: FromChat, state: CoachState = SPOKEN) -> Understood:
    outcome = hear(state, Heard(1, NOW + timedelta(minutes=1), incoming))
    assert outcome.understood is not None
    return outcome.understood


@pytest.mark.parametrize(
    ("text", "taken_for", "meant"),
    [
        ("no squats for Noor, please", "leave out",
         {"no": "request", "squats": "exercise", "for": "request", "Noor": "client: Noor"}),
        ("swap Ana's rows for pulldowns", "swap",
         {"swap": "request", "Ana's": "client: Ana Maria", "rows": "exercise", "for": "request",
          "pulldowns": "instead"}),
        ("put her back on them", "back",
         {"put": "request", "her": "client: Noor", "back on": "request", "them": "exercise"}),
        ("erm remind uh Noor at 7", "reminder",
         {"remind": "request", "Noor": "client: Noor", "at": "request", "7": "clock"}),
        ("give nor two more rest days", "rest more",
         {"give": "request", "nor": "client: Noor", "two": "number", "more rest days": "request"}),
        ("tell everyone: shut today", "tell",
         {"tell": "request", "everyone": "client", "shut today": "text"}),
        ("remember about Noor: likes mornings", "note",
         {"remember about": "request", "Noor": "client: Noor", "likes mornings": "text"}),
        ("move Noor to Harbour Base", "assign",
         {"move": "request", "Noor": "client: Noor", "to": "request", "Harbour Base": "programme"}),
        ("who needs me?", "who needs me", {"who needs me": "request"}),
        ("my hours are 8 to 20", "the coach's hours", {}),
        ("digest every day at 6", "when the digest comes", {}),
        ("tell me after 4 without a beat", "a rule for stalls", {}),
        ("a picture of Noor's squats", "a picture or a journal", {}),
        ("invite Zed to Harbour Base", "an invitation", {}),
        ("I use pounds", "a setting", {}),
        ("how is Zed?", "nobody known", {}),
        ("thank you", "a courtesy", {}),
        ("quokka", "nothing known", {}),
        (SHEET, "a sheet", {}),
    ],
)  # fmt: skip
def test_a_coach_s_words_mean(text: str, taken_for: str, meant: dict[str, str]) -> None:
    found = heard(Text(text=text))
    assert found.taken_for == taken_for
    assert {
        text[each.start : each.end]: f"{each.of}: {', '.join(each.means)}" if each.means else each.of
        for each in found.meant
    } == meant


def test_a_name_that_fits_two_means_either() -> None:
    state = replace(STATE, clients=((2, noor("Ana Sofia")), (3, noor("Ana Maria"))))
    (_, client) = heard(Text(text="how is Ana?"), state).meant
    assert client.means == ("Ana Sofia", "Ana Maria")


def test_whom_a_reply_goes_to_is_told_without_any_words() -> None:
    found = heard(Text(text="well done", reply=ReplyTo(client=2, is_words=True)))
    assert (found.taken_for, found.meant[0].means, found.meant[0].end) == ("tell", ("Noor",), 0)


def test_an_answer_is_one_whatever_it_leads_to() -> None:
    asked = hear(STATE, Heard(1, NOW, Text(text=SHEET)))
    assert isinstance(asked.memory, CoachMemory)
    state = replace(STATE, memory=asked.memory)
    assert heard(Text(text="yes"), state).taken_for == "an answer"


@pytest.mark.parametrize(("text", "taken_for"), [("how is Noor?", "an edit of no sheet"), (SHEET, "a sheet")])
def test_an_edit_is_of_a_sheet_or_of_none(text: str, taken_for: str) -> None:
    assert heard(Edited(text=text, key="1", before="before")).taken_for == taken_for
