"""What hurts and what is a warning sign is heard beside anything else that is denied or left out."""

import pytest

from domain.reading import read
from tests.domain.reading.build import request

BESIDE = (
    "no curls today",
    "bench 80x8",
    "didn't do dips",
    "skipping ohp",
    "can't do squats",
    "won't train tomorrow",
    "not going today",
    "never doing lunges again",
    "without a belt today",
    "didn't sleep well",
    "no spotter",
    "not a good day",
    "couldn't finish",
    "no idea why",
    "nothing special",
    "didn't feel great",
    "not tired at all",
    "no more dips for me",
    "haven't slept",
    "no change in weight",
    "not to failure",
)
AROUND = (
    "my mate spotted me",
    "hi coach",
    "thanks for the plan",
    "used to love squats",
    "old injury from football",
    "was fine yesterday",
    "better than last week",
    "no longer scared of squats",
    "watched a film last night",
    "should I stop",
    "chest day done",
    "hungover a bit",
    "good session",
)
PARTED = (", ", ". ", "\n", " - ", " but ")
JOINED = (" ", ", ", " because ", " cos ", " and ", " but ", ". ", " as ", " since ", "\n", " - ")
PAINS = (
    "my knee hurts",
    "left knee hurts a bit",
    "knee pain 3/10",
    "sharp pain in my shoulder",
    "my lower back is sore",
    "my shoulder is pinching",
    "right wrist hurts about a 4",
)
SIGNS = (
    "my chest hurts",
    "nearly fainted",
    "chest pain",
    "cant breathe properly",
    "my left arm is numb",
    "sudden terrible headache",
    "my pee is brown",
    "passed out after squats",
    "heart racing and dizzy",
    "my knee popped and I cant walk",
)


@pytest.mark.parametrize("beside", BESIDE)
def test_pain_is_heard_beside_what_is_denied_or_left_out(beside: str) -> None:
    texts = [beside + joined + pain for joined in JOINED for pain in PAINS]
    assert [text for text in texts if not read(request(text)).pain] == []


@pytest.mark.parametrize("beside", BESIDE)
def test_a_warning_sign_is_heard_beside_what_is_denied_or_left_out(beside: str) -> None:
    texts = [beside + joined + sign for joined in JOINED for sign in SIGNS]
    assert [text for text in texts if not read(request(text)).urgent] == []


@pytest.mark.parametrize("around", AROUND)
def test_pain_and_a_warning_sign_are_heard_before_and_after_other_things(around: str) -> None:
    texts = [
        text for parted in PARTED for one in PAINS for text in (around + parted + one, one + parted + around)
    ]
    assert [text for text in texts if not read(request(text)).pain] == []
    texts = [
        text for parted in PARTED for one in SIGNS for text in (around + parted + one, one + parted + around)
    ]
    assert [text for text in texts if not read(request(text)).urgent] == []


@pytest.mark.parametrize(
    "text",
    [
        "no pain in my knee",
        "no real pain, no sharp pain anywhere",
        "my knee did not hurt at all",
        "didn't notice any knee pain today",
        "never had shoulder trouble or pain",
        "no chest pain, no dizziness, not short of breath",
        "I did not faint or feel any pressure on my chest",
        "without any pain in the elbow or the wrist",
    ],
)
def test_what_is_denied_is_not_heard(text: str) -> None:
    heard = read(request(text))
    assert (heard.pain, heard.urgent) == ((), False)
