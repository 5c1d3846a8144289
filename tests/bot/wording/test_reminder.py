"""A reminder is the workout as a short message: in the sheet's order, with all that is needed at the bar."""

import pytest

from bot.markup import plain
from bot.wording.message import message_words
from bot.wording.reader import Reader
from domain.parts import Plan, Reminder
from domain.state import ClientState
from tests.domain.client.people import Life, at, noor

READER = Reader("Noor", "Europe/Amsterdam", "kg")

SHEET = """\
Harbour Base
Train every 3 days in turn: Push, Pull

Push
1. Back squat, 5-8 reps, stop one short of failure
   if a knee is a problem: Hip thrust, 8-12 reps
   cue: sit between the heels
2. Bench press, 2 sets of 5-8 reps to failure
   cue: shoulder blades together
   no barbell: Dumbbell bench press
3. Dip, 5-8 reps to failure
   straight into Dumbbell lateral raise, 10-15 reps
4. Plank, hold 45-120 seconds

Pull
1. Seated cable row, 8-10 reps
"""
FIRST = "squat 60x6, bench 50x6, bench 50x5, dip +5 x 6, lateral raises 6s x 12, plank 60 s"


def reminded(*said: str, state: ClientState | None = None) -> tuple[Life, str]:
    """Return Noor's life, and the reminder of her second Push on 8 March, after what she has `said`."""
    life = Life(state or noor(SHEET))
    life.says(FIRST, at(2))
    life.says("row 60x9", at(5))
    for place, words in enumerate(said):
        life.says(words, at(6, 18, place))
    parts = life.passes_to(at(8, 8))
    assert isinstance(parts[0], Reminder)
    return life, plain(message_words(tuple(parts), READER)).replace("\u00a0", " ")


def test_the_whole_of_it_at_a_glance() -> None:
    _, said = reminded()
    assert said.splitlines() == [
        "Training day.",
        "Push, Sunday 8 March",
        "1. Back squat, 5–8 reps, stop one short of failure",
        "    aim for 60 kg × 7 (each side 20)",
        "    last time 60 kg × 6",
        "    warm up: 30 kg × 8, 40 × 5, 50 × 2",
        "2. Bench press, 2 sets of 5–8 reps, to failure",
        "    aim for 50 kg × 7 (each side 15)",
        "    last time 50 kg × 6",
        "    warm up: 25 kg × 8, 35 × 5",
        "3. Dip, 5–8 reps, to failure",
        "    aim for body weight + 5 kg × 7",
        "    last time body weight + 5 kg × 6",
        "    warm up: Dumbbell lateral raise 3 kg each × 8, 4 × 5",
        "    then: Dip 3 reps with body weight alone",
        "4. straight into Dumbbell lateral raise, 10–15 reps",
        "    aim for 6 kg each × 13",
        "    last time 6 kg each × 12",
        "5. Plank, hold 45–120 s",
        "    aim for 66 s",
        "    last time 60 s",
        "No rest between 3 and 4.",
    ]


def line_of(said: str, exercise: str) -> list[str]:
    """Return what is said of an exercise, line by line."""
    lines = said.splitlines()
    start = next(at for at, line in enumerate(lines) if line[:1].isdigit() and f" {exercise}," in line)
    end = next((at for at in range(start + 1, len(lines)) if not lines[at].startswith("    ")), len(lines))
    return [line.strip() for line in lines[start:end]]


@pytest.mark.parametrize(
    ("said", "exercise", "has"),
    [
        (("my left knee hurts on squats",), "Hip thrust", "in place of Back squat"),
        (("my left knee hurts on squats",), "Hip thrust", "first time: find your load"),
        (("my chest muscle feels pulled on bench",), "Bench press", "set aside because of your chest"),
        (("I have no barbell any more",), "Dumbbell bench press", "in place of Bench press"),
        (("I sold my 1.25s and 2.5s",), "Back squat", "aim for 60 kg × 7 (each side 20)"),
        (("my bar is 15",), "Back squat", "aim for 60 kg × 7 (each side 20 + 2.5)"),
    ],
)
def test_what_is_held_or_lacking_stands_with_what_is_done_instead(
    said: tuple[str, ...], exercise: str, has: str
) -> None:
    _, words = reminded(*said)
    assert any(has in line for line in line_of(words, exercise))


def test_nothing_is_to_be_aimed_for_on_what_is_set_aside() -> None:
    _, words = reminded("my chest muscle feels pulled on bench")
    (_, *about) = line_of(words, "Bench press")
    assert len(about) == 1


def test_cues_come_on_request_and_do_not_make_it_longer() -> None:
    life, words = reminded()
    assert "heels" not in words
    said = plain(message_words(life.presses("Cues", at(8, 9)), READER))
    assert said.splitlines() == ["Back squat: sit between the heels", "Bench press: shoulder blades together"]


def test_a_pair_of_which_one_is_left_out_is_no_pair() -> None:
    life = Life(noor(SHEET))
    life.says(FIRST, at(2))
    life.says("row 60x9", at(5))
    life.says("skip the lateral raises", at(8, 7))
    parts = life.passes_to(at(8, 8))
    words = plain(message_words(tuple(parts), READER))
    assert "straight into" not in words
    assert "No rest" not in words


def test_it_fits_into_one_message_on_a_small_screen() -> None:
    _, words = reminded()
    assert len(words) < 1024
    assert max(map(len, words.splitlines())) <= 70


def test_a_workout_under_way_has_only_what_is_left() -> None:
    life, _ = reminded()
    life.says("squat 60x7, bench 50x7", at(8, 18))
    (plan,) = life.says("what's next?", at(8, 18, 5))
    assert isinstance(plan, Plan)
    words = plain(message_words((plan,), READER))
    assert line_of(words, "Bench press")[0] == "1. Bench press, 1 more set of 5–8 reps, to failure"
    assert "Back squat" not in words
