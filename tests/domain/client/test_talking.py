"""What client and coach write to each other: questions, answers by reply, words to several."""

import pytest

from domain.incoming import ReplyTo, TalkWanted, Text, Told
from domain.parts import AlertPart, Notice, Part
from tests.domain.client.people import MARA, Life, at, kinds


def asking(*questions: str) -> Life:
    """Return a client who has trained on the 2nd and then asked the coach something."""
    life = Life()
    life.says("row 60x9, rdl 80x7, curls 12x10", at(2, 9))
    for hour, question in enumerate(questions, 10):
        life.says(question, at(2, hour))
    return life


def told(text: str, *, alerts: tuple[int, ...] | None = None, to_several: bool = False) -> Told:
    return Told(coach=MARA.number, text=text, alerts=alerts, to_several=to_several)


def questions_open(life: Life) -> list[str]:
    return [str(alert.evidence["said"]) for alert in life.state.alerts if alert.reason == "question"]


def facts(parts: tuple[Part, ...] | list[Part], topic: str) -> dict[str, object]:
    (found,) = (part for part in parts if isinstance(part, Notice) and part.topic == topic)
    return dict(found.facts)


def written(life: Life) -> list[tuple[str, str, str, int | None]]:
    return [(each.by, each.name, each.text, each.alert) for each in life.state.words]


STRAPS, WIDER = "can I use straps for the rdl?", "should my grip on the row be wider?"


def test_a_question_stands_beside_the_last_sets_of_the_exercise_it_is_about() -> None:
    life = asking(STRAPS)
    (part,) = [each for each in life.to_coach if isinstance(each, AlertPart)]
    assert (part.exercise, part.of, part.number) == ("Romanian deadlift", 2, 1)
    assert [each["exercise"] for each in part.evidence["last"]] == ["Romanian deadlift"]


def test_an_answer_by_reply_settles_that_question_alone_and_says_which() -> None:
    life = asking(STRAPS, WIDER)
    answer = life.hears(told("Yes, on the last set.", alerts=(1,)), at(2, 12))
    assert facts(answer, "from coach") == {
        "coach": "Mara",
        "text": "Yes, on the last set.",
        "answers": STRAPS,
    }
    assert questions_open(life) == [WIDER]


def test_words_about_nothing_in_particular_answer_all_that_was_asked() -> None:
    life = asking(STRAPS, WIDER)
    life.hears(told("Yes to both."), at(2, 12))
    assert questions_open(life) == []


def test_a_reply_to_an_answer_settles_no_other_question() -> None:
    life = asking(STRAPS)
    answer = life.hears(told("The left one.", alerts=()), at(2, 12))
    assert facts(answer, "from coach")["answers"] is None
    assert questions_open(life) == [STRAPS]


def test_words_to_several_answer_no_question() -> None:
    life = asking(STRAPS)
    life.hears(told("The gym is shut on Monday.", to_several=True), at(2, 12))
    assert questions_open(life) == [STRAPS]


@pytest.mark.parametrize(("words", "is_answer"), [("ok thanks", False), ("I can come on tuesdays", True)])
def test_a_kind_word_on_what_went_to_several_is_no_answer(words: str, is_answer: bool) -> None:
    life = asking()
    life.hears(told("The gym is shut on Monday.", to_several=True), at(2, 12))
    life.says(words, at(2, 13))
    assert kinds(life.to_coach) == (["client answers"] if is_answer else [])


def test_a_kind_word_on_what_went_to_one_is_an_answer() -> None:
    life = asking()
    life.hears(told("Well done."), at(2, 12))
    life.says("ok thanks", at(2, 13))
    assert kinds(life.to_coach) == ["client answers"]


REPLY = ReplyTo(message=9, is_words=True)


@pytest.mark.parametrize(
    ("text", "topics"),
    [
        ("ok", ["client answers"]),
        ("the left one", ["client answers"]),
        ("curls 12x11", ["client answers"]),
        ("and chalk?", ["question"]),
        ("which of the two grips do you mean?", ["question"]),
        ("my knee hurts", ["pain"]),
    ],
)
def test_a_reply_to_the_coach_reaches_the_coach_once_whatever_else_is_in_it(
    text: str, topics: list[str]
) -> None:
    life = asking()
    life.hears(told("Grip wider."), at(2, 12))
    life.says("thanks", at(2, 12, 30))
    life.hears(Text(text=text, reply=REPLY), at(9, 19))
    told_now = [each.reason if isinstance(each, AlertPart) else each.topic for each in heard_by_coach(life)]
    assert told_now == topics


def heard_by_coach(life: Life) -> list[AlertPart | Notice]:
    return [part for part in life.to_coach if isinstance(part, AlertPart | Notice)]


def test_the_thread_stands_in_the_journal_under_the_names_of_both() -> None:
    life = asking(STRAPS)
    life.hears(told("On the last set.", alerts=(1,)), at(2, 12))
    life.hears(Text(text="and the first?", reply=REPLY), at(2, 13))
    assert written(life)[:2] == [
        ("client", "Noor", STRAPS, 1),
        ("coach", "Mara", "On the last set.", 1),
    ]
    assert written(life)[2][:3] == ("client", "Noor", "and the first?")
    life.hears(TalkWanted(coach=MARA.number), at(2, 14))
    shown = facts(life.to_coach, "talk")["rows"]
    assert isinstance(shown, list)
    assert [row["text"] for row in shown] == [STRAPS, "On the last set.", "and the first?"]


def test_another_coach_can_neither_write_nor_read() -> None:
    life = asking(STRAPS)
    for order in (Told(coach=99, text="hello"), TalkWanted(coach=99)):
        before = life.state.words
        assert kinds(life.hears(order, at(2, 12))) == []
        assert life.state.words == before
