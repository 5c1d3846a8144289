"""How to write here is said in one line, and what a line says is taken is taken."""

import re

import pytest

from domain.how_to import how_to_asked, how_tos
from domain.whole_messages import lines
from tests.domain.client.people import Life, at, kinds, noor

ASKED = {
    "both dumbbells": """
        both dumbbells or one?
        do I write one dumbbell or both?
        is it per hand or total?
        Do I count both dumbbells together
        how do I write dumbbells?
        is that the weight of one or both?
    """,
    "the bar": """
        does the bar count?
        is the bar included
        do I count the bar too?
        with or without the bar?
        with the bar or without?
        plates only or with the bar?
        does the weight of the bar count
    """,
    "warm-ups": """
        do I write warm-ups?
        should I log warm-up sets
        do warm ups count?
        do I have to send my warm-up sets too?
        what about the warm-up sets?
    """,
    "voice": """
        can I send a voice message?
        do you understand voice notes?
        can I talk to you?
        can you hear audio?
    """,
    "pictures and videos": """
        can I send a photo?
        can I send you a video of my squat?
        do you read screenshots?
    """,
    "language": """
        what language can I write in?
        can I write in Spanish?
        do you speak German?
        english only?
        ¿puedo escribir en español?
        which languages do you understand?
        can I write in my own language
    """,
    "a set": """
        how do I write a set?
        how do I log my workout?
        what do I write after a set?
        how to enter my results
    """,
    "put right": """
        how do I correct a mistake?
        can I edit my message?
        what if I made a typo?
        how do I change a set?
    """,
    "take back": """
        how do I undo?
        how can I delete a set?
        how do I remove the last entry
    """,
    "body weight": """
        how do I enter bodyweight exercises?
        how do I write pull-ups?
        how do I log dips with a belt?
    """,
    "help that takes weight off": """
        how do I write assisted pull-ups?
        how do I log assistance?
    """,
    "holds": """
        how do I write a plank?
        how do I log the wall sit?
        how do I record seconds?
    """,
    "one side at a time": """
        how do I write reps for each leg?
        do I count both sides or one?
        reps per side or total?
    """,
    "to failure": """
        how do I write that I went to failure?
        how do I tell you how hard it was?
    """,
    "all at once": """
        can I send all sets at once?
        can I send them after the workout?
        one message per set?
        do I have to send each set separately?
    """,
    "an earlier day": """
        can I write yesterday's workout?
        how do I add an old workout?
        what if I forget to write?
    """,
    "leave out": """
        how do I skip an exercise?
        can I leave out an exercise?
        what if I couldn't do all exercises?
    """,
    "move a workout": """
        how do I move a workout?
        what if I can't train today?
        can I postpone a session?
    """,
    "time away": """
        what if I am ill?
        how do I pause?
        what happens if I go on holiday?
    """,
    "reminders off": """
        how do I stop the reminders?
        how can I turn off notifications?
    """,
    "another hour": """
        how do I change the reminder?
        can I change the hour?
        change my reminder time
    """,
    "another answer": """
        how do I change my unit?
        change my time zone
        my time zone is wrong
        can I change my answers later?
        I want to change my equipment
    """,
    "another place": """
        I joined a gym
        I changed gyms
        I train at home now
        I'm in a hotel gym this week
    """,
    "when reminders come": """
        remind me the evening before
        remind me only on Mondays
        no reminders on weekends
        how often do you remind me?
    """,
    "sentences": """
        do I have to write in full sentences?
        do you understand abbreviations?
        does spelling matter?
    """,
    "the coach": """
        does my coach see this?
        will my coach read this?
        when does my coach answer?
    """,
}


@pytest.mark.parametrize(
    ("name", "text"), [(name, text) for name, texts in ASKED.items() for text in lines(texts)]
)
def test_it_is_told_what_is_asked(name: str, text: str) -> None:
    found = how_to_asked(text)
    assert found is not None
    assert found.name == name


@pytest.mark.parametrize(
    "text",
    [
        "80x8",
        "both dumbbells 14 x 10",
        "the bar x 10",
        "bar only for 10 reps",
        "warm-up 40x8",
        "skip curls",
        "stop",
        "undo",
        "change my reminder to 18:30",
        "I'm ill",
        "can I train today?",
        "can you check my form?",
        "is the bar bent?",
        "should I use both hands on the rope?",
        "how do I fix my squat?",
        "how do I get stronger?",
        "how do I change my grip?",
    ],
)
def test_what_asks_for_nothing_of_this_is_none(text: str) -> None:
    assert how_to_asked(text) is None


def test_each_line_is_one_and_short() -> None:
    assert {each.name for each in how_tos()} == set(ASKED)
    for each in how_tos():
        assert "\n" not in each.says
        assert len(each.says) < 160
        assert each.says.endswith(".")


SETS = re.compile(r"«([^»]*\d[^»]*)»")


@pytest.mark.parametrize("says", [each.says for each in how_tos() if re.search(r"«[^»]*\d", each.says)])
def test_what_a_line_says_is_taken_is_taken(says: str) -> None:
    for example in SETS.findall(says):
        life = Life(noor())
        life.says("row 60x8, rdl 90x7, hammer curl 14x9", at(2))
        said = kinds(life.says(example, at(2, 18, 5)))
        assert not {"nothing recorded", "no set found", "other script"} & set(said), (example, said)
