"""People who chat: what is kind, wanted after all, asked in passing, or over by now is heard as that."""

from decimal import Decimal

import pytest

from tests.domain.client.people import Life, at, kinds


def trained() -> Life:
    life = Life()
    life.says("row 60x9, rdl 80x7, curls 14x10", at(2))
    return life


@pytest.mark.parametrize(
    ("text", "answer"),
    [
        ("aww thank you so much, you are very kind!!", ["thanked"]),
        ("oh lovely, have a nice day", ["heard"]),
        ("sorry for asking so much", ["heard"]),
        ("Sorry to bother you again!", ["heard"]),
        ("delete my data please, no wait, just tell me what you have of me", ["what this is"]),
        ("leave - no, sorry, when do I train next?", ["next day"]),
        ("What a day! How many workouts so far? And when do I train next?", ["workouts counted", "next day"]),
        ("What a day! How many workouts so far? And should I eat more?", ["passed on"]),
        ("I've got new plates, 0.5 kg ones. and could you write in pounds please? he thinks in pounds",
         ["equipment kept", "unit kept"]),
        ("I'm stuck in a meeting, remind me later", ["rest day"]),
        ("my shoulder feels weird", ["feels odd"]),
        ("both knees feel a bit off", ["feels odd"]),
        ("not pain really, more like stiff", ["no trouble"]),
        ("the workout was a bit odd", ["nothing recorded"]),
        ("help what do I do today", ["plan"]),
        ("Help! How many workouts so far?", ["workouts counted"]),
        ("not gonna carry on sorry", ["which stop"]),
        ("whats my best ever row", ["best"]),
        ("what now", ["plan"]),
        ("when am I next then?", ["next day"]),
        ("not able for it today, visitors", ["rest day"]),
        ("Thank you dear, bye", ["thanked"]),
        ("¿qué hago hoy?", ["other script"]),
        ("can I swap days", ["question"]),
        ("does it count for anything?", ["passed on"]),
        ("I'd like to stop now", ["which stop"]),
        ("can I stop training", ["which stop"]),
        ("actually kilos were better", ["unit kept"]),
        ("how am I doing so far, compared to the start?", ["strength so far"]),
        ("sorry for the silence, I had a stomach bug since Thursday", ["get well"]),
        ("my son had a stomach bug", ["nothing recorded"]),
        ("off to the sea till the 14th, they have a gym there I think", ["trains on there"]),
        ("away till the 14th, they have no gym there", ["paused"]),
    ],
)  # fmt: skip
def test_it_is_heard(text: str, answer: list[str]) -> None:
    assert kinds(trained().says(text, at(3))) == answer


@pytest.mark.parametrize("question", ["Was that ok?", "how was that?", "Not bad, eh?"])
def test_whether_it_was_good_is_said_by_the_verdict_and_asked_of_nobody(question: str) -> None:
    life = Life()
    assert kinds(life.says(f"row 60x9. {question}", at(2))) == ["verdict", "target"]
    assert life.to_coach == ()


def test_what_was_to_be_put_right_and_is_right_after_all_stands() -> None:
    life = trained()
    assert kinds(life.says("oh sorry the curls were 11", at(2))) == ["question"]
    assert kinds(life.says("no wait, it was 14 after all, ignore me", at(2))) == ["all recorded stands"]
    assert life.state.entries[-1].set.load == Decimal(14)
    assert life.state.memory.questions == ()


def test_who_trains_in_a_pause_hears_once_that_it_stands() -> None:
    life = trained()
    life.says("away till the 20th", at(3))
    assert kinds(life.says("squat 20x10, wall sit 20 kg 45s", at(5)))[0] == "pause stands"
    assert kinds(life.says("row 60x10", at(8)))[0] == "verdict"


def test_after_an_illness_told_in_passing_it_begins_lighter() -> None:
    life = trained()
    assert kinds(life.passes_to(at(6, 9)))[-1] == "question"
    life.says("sorry for the silence, I had a stomach bug since Thursday", at(6, 10))
    assert life.state.memory.ill_on is not None
    assert life.state.memory.questions == ()
