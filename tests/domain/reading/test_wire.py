"""Requests in, readings out, a line each; a broken line is told in one sentence and never stops the rest."""

import io
import json

import pytest

from bot.commands.read import read_stream
from domain.reading.wire import BrokenLineError, request_from_json

GOOD = json.dumps(
    {
        "text": "80 x 8",
        "unit": "kg",
        "sent": "2026-01-01T10:00",
        "plan": [{"name": "Bench press", "reps": "6-8"}],
    }
)


@pytest.mark.parametrize(
    "line",
    [
        "",
        "nonsense",
        "[]",
        "null",
        '{"text": 1}',
        '{"text": "x", "unit": "stone", "sent": "2026-01-01T10:00"}',
        '{"text": "x", "unit": "kg", "sent": "yesterday"}',
        '{"text": "x", "unit": "kg", "sent": "2026-01-01T10:00", "plan": 3}',
        '{"text": "x", "unit": "kg", "sent": "2026-01-01T10:00", "plan": [{"name": "A", "reps": "many"}]}',
        '{"text": "x", "unit": "kg", "sent": "2026-01-01T10:00", "done": [{"exercise": "A"}]}',
        '{"text": "x", "unit": "kg", "sent": "2026-01-01T10:00", "last": {"A": {"load": "80"}}}',
        '{"text": "x", "unit": "kg", "sent": "2026-01-01T10:00", "last": {"A": {"load": NaN}}}',
        "[" * 100_000,
    ],
)
def test_a_broken_line_is_one_clear_fault(line: str) -> None:
    with pytest.raises(BrokenLineError) as fault:
        request_from_json(line)
    assert "\n" not in str(fault.value)


def test_the_order_of_the_lines_is_kept_and_broken_ones_are_told() -> None:
    readings, faults = io.StringIO(), io.StringIO()
    status = read_stream(io.StringIO(f"{GOOD}\nbroken\n{GOOD}\n"), readings, faults)
    first, second, third = (json.loads(line) for line in readings.getvalue().splitlines())
    assert status == 1
    assert first == third
    assert first["sets"][0]["load"] == 80
    assert second == {"error": "it is not JSON"}
    assert faults.getvalue() == "line 2: it is not JSON\n"


def test_numbers_are_json_numbers_whole_where_they_are() -> None:
    readings = io.StringIO()
    line = GOOD.replace("80 x 8", "82.5 x 8 rpe 8.5")
    assert read_stream(io.StringIO(line), readings, io.StringIO()) == 0
    (one,) = json.loads(readings.getvalue())["sets"]
    assert (one["load"], one["reps"], one["rir"], one["on"]) == (82.5, 8, 1.5, "2026-01-01")


def test_what_was_done_is_lowering_only_where_the_plan_says_so_and_nothing_else_is_known() -> None:
    done = {"exercise": "Dip", "load": 0, "unit": "kg", "load_kind": "body", "reps": 6}
    line = json.dumps(
        {
            "text": "make that 5",
            "unit": "kg",
            "sent": "2026-01-01T10:00",
            "plan": [{"name": "Dip", "reps": "3-8", "lowering_only": True}, {"name": "Row", "reps": "6-8"}],
            "done": [done, {**done, "lowering_only": False}, {**done, "exercise": "Row"}],
        }
    )
    assert [one.lowering_only for one in request_from_json(line).done] == [True, False, False]
