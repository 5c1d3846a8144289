"""The many ways in which the last record is put right: its reps, and its load."""

import pytest

from domain.reading import read
from domain.reading.wire import reading_to_json, request_from

REPS = (
    "make that 6",
    "6 not 7",
    "sorry 6",
    "sorry, 6 reps",
    "actually 6",
    "i meant 6",
    "it was 6",
    "was 6 not 7",
    "oops 6 reps",
    "wait 6",
    "no, 6 reps",
    "correction 6 reps",
    "should be 6",
    "change it to 6",
    "that was 6 reps",
    "only 6 actually",
    "only got 6 actually",
    "typo, 6",
    "6*",
    "*6",
    "sorry, only 6 reps",
    "ohp was 6",
    "the last one was 6",
    "last set was 6 reps",
    "i miscounted, 6",
    "miscounted it was 6",
    "meant to write 6",
    "should read 6",
    "edit: 6 reps",
    "make it 6 reps",
    "oh it was only 6",
    "my bad 6",
    "my bad it was 6",
    "whoops it was 6 reps not 7",
    "hang on, 6",
    "hold on it was 6",
    "i counted wrong, 6",
    "watched the video back, 6",
    "lost count, it was 6",
    "let's say 6",
    "call it 6",
    "put 6 instead",
    "write 6 please",
    "can you make it 6",
    "could you change that to 6",
    "fix: 6",
    "pls change to 6 reps",
    "that should have been 6",
    "not 7 but 6",
    "6 instead of 7",
    "6, not 7, sorry",
    "it's 6 not 7",
    "reps were 6",
    "reps: 6 not 7",
    "6 reps on the ohp not 7",
    "ohp 6 not 7",
    "ohp: make that 6",
)
LOADS = (
    "45 not 47.5",
    "make that 45 kg",
    "sorry 45kg",
    "it was 45 kg",
    "actually 45 kilos",
    "i used 45 kg not 47.5",
    "weight was 45",
    "the weight was 45 kg",
    "load was 45 kg",
    "meant 45 kg",
    "wrong weight, 45 kg",
    "wrong weight it was 45",
    "should be 45kg",
    "change the weight to 45",
    "45 kg not 47.5",
    "it was 45kg on the bar",
    "only had 45 kg on the bar",
    "bar had 45 not 47.5",
    "sorry the weight was 45",
    "oops 45 kg",
    "no wait, 45kg",
    "make it 45kg",
    "weight should be 45",
    "correct the weight to 45",
    "ohp was 45kg",
    "ohp 45kg not 47.5",
    "that was with 45kg",
    "i put 47.5 but it was 45",
    "i wrote 47.5 but used 45",
)
AROUND = ("{}", "coach {}", "{} please", "{}.")
_OHP = {
    "exercise": "Overhead press",
    "load": 47.5,
    "unit": "kg",
    "load_kind": "total",
    "reps": 7,
    "seconds": None,
}
_PLAN = ("Bench press", "6-8"), ("Overhead press", "5-8"), ("Incline dumbbell press", "8-10")
_REQUEST = {
    "unit": "kg",
    "sent": "2026-03-18T18:20:00",
    "plan": [{"name": name, "reps": reps} for name, reps in _PLAN],
    "done": [{**_OHP, "exercise": "Bench press", "load": 80, "reps": 8}, _OHP],
    "target": {
        "Overhead press": _OHP,
        "Incline dumbbell press": {
            **_OHP,
            "exercise": "Incline dumbbell press",
            "load": 30,
            "load_kind": "each",
        },
    },
}


def _put_right(text: str) -> tuple[list[str], list[tuple[str, float, int]]]:
    found = reading_to_json(read(request_from({**_REQUEST, "text": text})))
    return found["wants"], [(one["exercise"], one["load"], one["reps"]) for one in found["sets"]]


@pytest.mark.parametrize("words", REPS)
def test_the_reps_of_the_last_record_are_put_right(words: str) -> None:
    for around in AROUND:
        assert _put_right(around.format(words)) == (["correct"], [("Overhead press", 47.5, 6)]), around


@pytest.mark.parametrize("words", LOADS)
def test_the_load_of_the_last_record_is_put_right(words: str) -> None:
    for around in AROUND:
        assert _put_right(around.format(words)) == (["correct"], [("Overhead press", 45, 7)]), around


def test_a_number_that_is_the_load_already_and_too_many_reps_is_asked_about() -> None:
    light = {**_OHP, "exercise": "Incline dumbbell press", "load": 20, "load_kind": "each", "reps": 9}
    found = reading_to_json(read(request_from({**_REQUEST, "done": [light], "text": "think it was 20"})))
    assert (found["sets"], found["asks"]) == ([], ["confirm"])
