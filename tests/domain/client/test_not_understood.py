"""Words that were asked about in vain stand where the coach sees them, until they are told of after all."""

import pytest

from domain.client.not_understood import MOST_KEPT
from domain.incoming import CardWanted
from domain.parts import Notice
from tests.domain.client.people import MARA, Life, at, kinds


def shown(life: Life, day: int, hour: int = 20) -> list[tuple[str, list[str]]]:
    """Return what the coach's card shows as not understood."""
    life.hears(CardWanted(coach=MARA.number), at(day, hour))
    (card,) = [part for part in life.to_coach if isinstance(part, Notice)]
    return [(each["text"], each["lacks"]) for each in card.facts["not_understood"]]


def ignored_twice() -> Life:
    life = Life()
    life.says("row 9 reps", at(2))
    life.says("rdl 80x7", at(2, 18, 5))
    life.says("curls 14x10", at(2, 18, 9))
    return life


def test_a_question_that_still_waits_is_not_shown() -> None:
    life = Life()
    life.says("row 9 reps", at(2))
    assert shown(life, 2) == []
    life.says("rdl 80x7", at(2, 20))
    assert shown(life, 2) == []


def test_what_was_asked_once_more_in_vain_is_shown_and_still_answered() -> None:
    life = ignored_twice()
    assert shown(life, 2) == [("row 9 reps", ["load"])]
    assert kinds(life.says("60", at(2, 20)))[0] == "verdict"
    assert shown(life, 2) == []


def test_never_mind_is_shown_and_asks_nothing_else_a_third_time() -> None:
    life = ignored_twice()
    life.says("goblet squat 10 reps", at(2, 19))
    assert kinds(life.says("never mind", at(2, 19))) == ["question dropped"]
    assert shown(life, 2) == [("row 9 reps", ["load"]), ("goblet squat 10 reps", ["load"])]
    life.says("60", at(2, 20))
    assert life.state.entries[-1].set.exercise == "Seated cable row"


def test_after_twelve_hours_it_is_shown_and_no_number_answers_it_but_a_reply_does() -> None:
    life = Life()
    life.says("row 9 reps", at(2, 8))
    assert shown(life, 2, 19) == []
    assert shown(life, 2, 21) == [("row 9 reps", ["load"])]
    life.says("60", at(2, 22))
    assert not life.state.entries
    life.replies("60", 1, at(4), to_bot=True)
    assert [each.set.on for each in life.state.entries] == [at(2).date()]
    assert shown(life, 4) == [("60", ["reps"])]


@pytest.mark.parametrize("text", ["row 60x9", "on monday row 62.5x10"])
def test_what_is_told_of_in_full_after_all_is_shown_no_longer(text: str) -> None:
    life = ignored_twice()
    assert shown(life, 2)
    life.says(text, at(2 if text == "row 60x9" else 4, 21))
    assert shown(life, 4) == []


@pytest.mark.parametrize("text", ["row 60x9", "sorry, wrong chat"])
def test_what_is_edited_is_shown_no_longer(text: str) -> None:
    life = ignored_twice()
    life.says("never mind", at(2, 19))
    life.edits(text, "row 9 reps", 1, at(3))
    assert shown(life, 3) == []


def test_what_is_taken_back_is_not_shown() -> None:
    life = Life()
    life.says("row 9 reps", at(2))
    life.says("undo", at(2))
    assert shown(life, 4) == []


def test_only_the_latest_are_kept() -> None:
    life = Life()
    for count in range(MOST_KEPT + 3):
        life.says(f"rdl {count + 3} reps", at(2, 8, count * 2))
        life.says("never mind", at(2, 8, count * 2 + 1))
    kept = shown(life, 2)
    assert len(kept) == MOST_KEPT
    assert kept[-1][0] == f"rdl {MOST_KEPT + 5} reps"


@pytest.mark.parametrize(
    ("text", "answer"),
    [
        ("done. when's the next?", ["next day"]),
        ("What a day! How many workouts so far?", ["workouts counted"]),
        ("phew.\nlast time", ["last workout"]),
        ("The gym was packed. Bad music, too.", ["nothing recorded"]),
    ],
)
def test_what_a_message_as_a_whole_is_not_one_of_its_sentences_can_be(text: str, answer: list[str]) -> None:
    life = Life()
    life.says("row 60x9", at(2))
    assert kinds(life.says(text, at(2))) == answer
