"""Ways to say that an exercise is left out, and what only sounds so, from the lists beside."""

from pathlib import Path

import pytest

from tests.domain.reading.build import reading

HERE = Path(__file__).parent
LEFT_OUT = (HERE / "skips.txt").read_text(encoding="utf-8").splitlines()
BOTH_LEFT_OUT = (HERE / "skips_of_two.txt").read_text(encoding="utf-8").splitlines()
NOT_LEFT_OUT = (HERE / "no_skips.txt").read_text(encoding="utf-8").splitlines()

NAMES = {"bench": "Bench press", "the incline": "Incline dumbbell press", "dips": "Dip"}
DONE = "plank 40s"
AROUND = ("{}", "{}. {done}", "{done}, {}", "{done}. {}", "{done} and {}", "hi coach, {}", "{} 😩")


@pytest.mark.parametrize("way", LEFT_OUT)
def test_what_is_left_out_is_and_what_is_done_is_recorded(way: str) -> None:
    for name, exercise in NAMES.items():
        for around in AROUND:
            text = around.format(way.format(x=name), done=DONE)
            found = reading(text)
            assert (found.wants, found.skips) == (("skip_exercise",), (exercise,)), text
            assert len(found.sets) == ("{done}" in around), text
            assert not found.asks, text


@pytest.mark.parametrize("way", BOTH_LEFT_OUT)
@pytest.mark.parametrize("around", AROUND[:4])
def test_of_two_that_are_left_out_both_are(way: str, around: str) -> None:
    for first, second in (("bench", "dips"), ("the incline", "bench")):
        text = around.format(way.format(x=first, y=second), done=DONE)
        found = reading(text)
        assert (found.wants, set(found.skips)) == (("skip_exercise",), {NAMES[first], NAMES[second]}), text
        assert len(found.sets) == ("{done}" in around), text


@pytest.mark.parametrize("way", NOT_LEFT_OUT)
def test_what_only_sounds_so_leaves_nothing_out(way: str) -> None:
    for name in NAMES:
        assert not reading(way.format(x=name)).skips, way
