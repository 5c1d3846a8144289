"""What the first questions must say: the cautions, the published signs, and a doctor wherever a yes was
said."""

import re

import pytest

from bot.markup import plain
from bot.wording.message import message_words
from bot.wording.reader import Reader, zone_words
from domain.client.joining import STEPS
from domain.parts import Notice, Part, Question
from tests.bot.wording.test_care import NEVER

CLIENT = Reader("Noor", "Europe/Amsterdam", "kg")
COACH = Reader("Mara", "Europe/Lisbon", "kg", is_coach=True)

FACTS = {
    "name": "Noor",
    "coach": "Mara",
    "programme": "Harbour Base",
    "without": ["dumbbells"],
    "workout": "Pull",
}

SIGNS = [
    *("chest", "neck", "jaw", "arms", "short breath at rest", "little effort", "dizziness", "fainting"),
    "lying flat",
    *("swollen ankles", "heartbeat", "leg cramps when walking", "heart murmur", "unusually tired"),
]
"""The major signs and symptoms of the American College of Sports Medicine's list, as quoted in the project's
science notes; the logic is that of Riebe et al. 2015, Med Sci Sports Exerc 47:2473-2479."""


def words(part: Part, reader: Reader = CLIENT) -> str:
    return " ".join(plain(message_words((part,), reader)).split())


def question(step: str, **facts: object) -> str:
    return words(Question(slot="joining", facts={**FACTS, "step": step, **facts}))


def test_the_first_message_says_what_this_is_and_is_not() -> None:
    said = question("consent")
    for needed in ("no doctor", "medical advice", "not for emergencies", "local emergency number", "is kept"):
        assert needed in said
    for needed in ("seen by Mara", "Say «stop»", "Say «leave»", "erased", "Do you agree"):
        assert needed in said


@pytest.mark.parametrize("sign", SIGNS)
def test_readiness_asks_for_each_published_sign(sign: str) -> None:
    assert sign in question("readiness")


def test_readiness_asks_for_disease_activity_joints_and_back_too() -> None:
    said = question("readiness")
    for needed in ("heart", "blood vessels", "kidneys", "blood sugar", "joint", "back", "active", "medicine"):
        assert needed in said


@pytest.mark.parametrize("which", [[], ["signs"], ["disease"], ["joints"], ["inactive"]])
def test_a_yes_goes_to_a_doctor_first_and_names_no_condition(which: list[str]) -> None:
    said = words(Notice(topic="doctor first", facts={"coach": "Mara", "which": which}))
    assert "see a doctor before you train" in said
    assert ("local emergency number" in said) == (which in ([], ["signs"]))
    assert not NEVER.search(said)
    facts = {"client": "Noor", "which": which, "said": "<b>"}
    told = words(Notice(topic="to be released", facts=facts), COACH)
    assert "only once a doctor agrees" in told
    assert "«<b>»" in told


@pytest.mark.parametrize("step", [step.name for step in STEPS])
def test_each_question_is_put_shorter_the_second_time(step: str) -> None:
    first, again, unread = question(step), question(step, again=True), question(step, again=True, unread=True)
    assert len(again) <= max(len(first), 160)
    assert unread.endswith(again)
    assert not re.search(r"wrong|error|invalid", unread, re.IGNORECASE)


@pytest.mark.parametrize(
    ("zone", "said"),
    [
        ("Etc/GMT-2", "UTC+2"),
        ("Etc/GMT+5", "UTC-5"),
        ("Etc/GMT+12", "UTC-12"),
        ("Etc/UTC", "UTC"),
        ("Europe/Lisbon", "Europe/Lisbon"),
    ],
)
def test_a_zone_of_fixed_offset_is_said_the_way_clocks_are_set(zone: str, said: str) -> None:
    assert zone_words(zone) == said
