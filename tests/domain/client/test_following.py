"""Whether a remedy has worked: looked at after some exposures, and once more where it is too early."""

import pytest

from domain.actions import Remedy
from domain.incoming import Decided, Told
from domain.parts import Notice
from tests.domain.client.people import MARA, Life, at, noor

SHEET = """\
Press
Train every day in turn: Day
Tell me after 2 workouts without a beat

Day
1. Bench press, 5-8 reps
   no barbell: Dumbbell bench press, 6-10 reps
"""


def treated(remedy: Remedy, workouts: int | None = None) -> Life:
    """Let bench press stall at 80 kg, best 80 kg x 6, on the 4th, and the coach take a remedy."""
    life = Life(noor(SHEET))
    for day, reps in ((2, 6), (3, 6), (4, 5)):
        life.says(f"80x{reps}", at(day))
    stall = life.state.alerts[0].number
    order = Decided(coach=MARA.number, alert=stall, remedy=remedy, workouts=workouts)
    life.hears(order, at(4, 19))
    return life


def looks(life: Life, sets: list[str]) -> list[tuple[int, str]]:
    """Let `sets` be done, one a day from the 5th; return the day of each look and what it found."""
    found = []
    for day, each in enumerate(sets, start=5):
        life.says(each, at(day))
        found += [
            (day, str(part.facts["result"]))
            for part in life.to_coach
            if isinstance(part, Notice) and part.topic == "followed up"
        ]
    return found


@pytest.mark.parametrize(
    ("remedy", "sets", "found"),
    [
        ("rest more", ["80x6", "80x7"], []),
        ("rest more", ["80x6", "80x7", "82.5x6"], [(7, "worked")]),
        ("rest more", ["80x6", "80x7", "80x5"], [(7, "worked")]),
        ("keep on", ["80x5", "80x6", "80x6"], [(7, "too early")]),
        ("keep on", ["80x5", "80x5", "80x5"], [(7, "did not")]),
        # As good as the best before is not more; the last look is final.
        (
            "lighten",
            ["72.5x6", "72.5x7", "75x6", "75x7", "77.5x6", "80x6"],
            [(7, "too early"), (10, "did not")],
        ),
        (
            "lighten",
            ["72.5x6", "72.5x8", "75x8", "77.5x8", "80x7", "80x8"],
            [(7, "too early"), (10, "worked")],
        ),
        # The alternative is new: its own first exposure is the mark.
        ("swap", ["28x8", "28x9", "28x10"], [(7, "worked")]),
        ("swap", ["28x8", "28x8", "28x8"], [(7, "did not")]),
    ],
)
def test_a_remedy_is_looked_at_after_three_exposures_and_at_most_once_more(
    remedy: Remedy, sets: list[str], found: list[tuple[int, str]]
) -> None:
    life = treated(remedy)
    assert looks(life, sets) == found
    (tried,) = [each for each in life.state.memory.tried if each.alert == 1]
    assert (tried.remedy, tried.by, tried.on) == (remedy, MARA.number, at(4).date())


def test_the_numbers_are_those_of_then_and_now() -> None:
    life = treated("rest more")
    assert looks(life, ["80x6", "80x7", "82.5x6"]) == [(7, "worked")]
    (told,) = [part.facts for part in life.to_coach if isinstance(part, Notice)]
    said = [(str(told[key]["load"]), told[key]["reps"]) for key in ("then", "now", "best")]
    assert said == [("80", 5), ("82.5", 6), ("80", 6)]


def test_a_look_waits_for_the_coach_s_hours() -> None:
    life = treated("rest more")
    looks(life, ["80x6", "80x7"])
    life.says("80x8", at(7, 23, 30))
    assert life.to_coach == ()
    results = []
    for hour in (7, 8):  # six and seven o'clock in Lisbon
        life.passes_to(at(8, hour))
        results.append(life.state.memory.tried[0].result)
    assert results == ["open", "worked"]


@pytest.mark.parametrize(("workouts", "again"), [(3, 7), (6, 10)])
def test_an_exercise_is_left_alone_for_as_many_workouts_as_the_coach_says(workouts: int, again: int) -> None:
    life = treated("keep on", workouts)
    days = []
    for day in range(5, 12):
        life.says("80x5", at(day))
        days += [day] if "stall" in life.alert_reasons else []
    assert days[:1] == [again]
    assert life.state.memory.tried[0].result == "did not"


def test_words_about_a_stall_settle_it_and_are_followed_up_like_a_remedy() -> None:
    life = Life(noor(SHEET))
    for day, reps in ((2, 6), (3, 6), (4, 5)):
        life.says(f"80x{reps}", at(day))
    life.hears(Told(coach=MARA.number, text="Sleep first.", alert=1), at(4, 19))
    assert life.state.alerts == ()
    assert looks(life, ["80x5", "80x6", "80x7"]) == [(7, "worked")]
    assert life.state.memory.tried[0].remedy == "write"
