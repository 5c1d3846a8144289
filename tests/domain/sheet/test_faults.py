"""What a sheet cannot be taken for: every fault has its line, its part, and what would be right."""

import random
import time
from pathlib import Path
from typing import get_args

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.commands.sheet import fault_lines
from bot.wording.sheet import FAULTS, NOTES, fault_words
from domain.sheet import FaultCode, NoteCode, read_sheet, write_sheet
from domain.values import facts_of

HEAD = "Quiet Harbour\nTrain every 3 days in turn: A\n\nA\n"
"""A whole sheet but for the exercises, which begin in line 5."""

LONE_LINES: list[tuple[str, list[tuple[int, FaultCode, str, str]]]] = [
    # (what stands from line 5 on, the faults: line number, what, part, hint)
    ("Bench press, 10-8 reps", [(5, "range upside down", "10-8 reps", "8-10")]),
    ("Bench press, 0 reps", [(5, "zero", "0 reps", "")]),
    ("Bench press, 500 reps", [(5, "too many reps", "500 reps", "100")]),
    ("Bench press, 8-500", [(5, "too many reps", "500", "100")]),
    ("Plank, hold 2-90 minutes", [(5, "too many seconds", "hold 2-90 minutes", "3600")]),
    ("Bench press, 40 sets of 8", [(5, "sets out of range", "40 sets of", "20")]),
    ("Bench press, 2-3 sets of 8", [(5, "sets not one number", "2-3 sets of", "3 sets")]),
    ("Bench press, 8 reps, 10 reps", [(5, "two ranges", "Bench press, 8 reps, 10 reps", "")]),
    ("1. Bench press", [(5, "no range", "Bench press", "")]),
    ("1. Bench press, to failure", [(5, "no range", "Bench press", "")]),
    ("Dip, 8 reps, stop 12 short of failure", [(5, "too many short", "stop 12 short of failure", "10")]),
    ("Hammer curl + Dip, 8", [(5, "two exercises", "Hammer curl + Dip", "Dip")]),
    ("1. 8-10 reps", [(5, "nothing before", "8-10 reps", "")]),
    ("Bench press, 8 reps, over 8 add 2.5", [(5, "load without unit", "over 8 add 2.5", "2.5")]),
    ("Bench press, 8 reps\nwhen you hit 1, add 5 kg", [(6, "zero", "when you hit 1, add 5 kg", "")]),
    ("Bench press, 8 reps\nif the spleen is a problem: Dip", [(6, "unknown joint", "spleen", "")]),
    ("Bench press, 8 reps\nbad back: Dip", [(6, "unknown joint", "back", "")]),
    ("Bench press, 8 reps\nor Dip", [(6, "alternative without reason", "Dip", "")]),
    ("Bench press, 8 reps\nno barbell:", [(6, "alternative without exercise", "no barbell", "")]),
    ("Bench press, 8 reps\nno barbell: Dip, 9-7 reps", [(6, "range upside down", "9-7 reps", "7-9")]),
    ("Bench press, 8 reps\nno barbell: Plank", [(6, "no range", "Plank", "")]),
    ("straight into Dip, 8 reps", [(5, "superset alone", "straight into Dip, 8 reps", "")]),
    ("Dip, 8 reps\nstraight into", [(6, "superset without exercise", "straight into", "")]),
    ("Dip, 8 reps, start 10 kg above last Leg press", [(5, "reference missing", "Leg press", "")]),
    (
        "Dip, 8 reps, start 10 kg above last Gablet squat\nGoblet squat, 8 reps",
        [(5, "reference missing", "Gablet squat", "Goblet squat")],
    ),
    ("Dip, 8 reps, start 10 kg above last Dip", [(5, "reference to itself", "Dip", "")]),
    ("Dip, 8 reps, with 3 chains", [(5, "not understood", "3 chains", "")]),
    ("Q, 8-10 reps", [(5, "no exercise", "Q", "")]),
    ("Dip, 8 reps\n\nA\nBench press, 8 reps", [(7, "duplicate workout", "A", "4")]),
    ("Dip, 8 reps\n\nB\n1. Bench press, 8 reps", [(7, "section not in rotation", "B", "")]),
    ("Dip, 8 reps\nTell me after 1 workout", [(6, "too few workouts", "Tell me after 1 workout", "")]),
    (
        "Dip, 8 reps\n\nLegs, heavy:\n1. Squat, 8",
        [(7, "no workout name", "Legs, heavy", ""), (7, "section not in rotation", "Legs, heavy", "")],
    ),
    ("Dip, 8 reps\nReview after 6 weeks", [(6, "review not in rounds", "Review after 6 weeks", "")]),
    ("Dip, 8 reps\nTrain every 4 days", [(6, "two schedules", "Train every 4 days", "")]),
    ("", [(4, "empty workout", "A", "")]),
]  # fmt: skip


@pytest.mark.parametrize(("lines", "faults"), LONE_LINES, ids=[lines for lines, _ in LONE_LINES])
def test_a_fault_has_its_line_its_part_and_what_would_be_right(
    lines: str, faults: list[tuple[int, FaultCode, str, str]]
) -> None:
    result = read_sheet(HEAD + lines)
    assert [(fault.line_number, fault.what, fault.part, fault.hint) for fault in result.faults] == faults
    assert result.programme is None
    written = (HEAD + lines).splitlines()
    assert all(fault.line_number and fault.line == written[fault.line_number - 1] for fault in result.faults)


WHOLE_SHEETS: list[tuple[str, list[tuple[int | None, FaultCode, str]]]] = [
    ("", [(None, "empty", "")]),
    (" \r\n\t\n", [(None, "empty", "")]),
    ("🏋️‍♀️ 💪\n🔥", [(None, "empty", "")]),
    ("Harbour", [(None, "no schedule", ""), (None, "no workouts", "")]),
    ("Harbour\nTrain every 3 days", [(None, "no workouts", "")]),
    ("Harbour\nA\n1. Dip, 8 reps", [(None, "no schedule", "")]),
    ("Harbour\nTrain 3 times a week\nA\n1. Dip, 8 reps", [(2, "weekdays missing", "Train 3 times a week")]),
    ("Harbour\nTrain every 45 days\nA\n1. Dip, 8 reps", [(2, "too many days", "Train every 45 days")]),
    ("Harbour\nTrain every 3 days in turn: A, B\nA\n1. Dip, 8 reps", [(2, "workout without section", "B")]),
    ("Harbour\nTrain every 3 days\n1. Dip, 8 reps", [(3, "exercise before workout", "Dip, 8 reps")]),
    ("Train every 3 days in turn: A\nA\n1. Dip, 8 reps", [(1, "no name", "")]),
    (
        "Harbour\nTrain every 3 days in turn: Pull, Puhs\nPull\n1. Row, 8 reps\nPush\n1. Dip, 8 reps",
        [(2, "workout without section", "Puhs"), (5, "section not in rotation", "Push")],
    ),
    (
        "Harbour\nMon: Upper; Mon: Lower\nUpper\n1. Dip, 8 reps\nLower\n1. Squat, 8 reps",
        [(2, "two schedules", "Mon: Upper; Mon: Lower")],
    ),
]  # fmt: skip


@pytest.mark.parametrize(("sheet", "faults"), WHOLE_SHEETS)
def test_a_sheet_at_fault_as_a_whole(sheet: str, faults: list[tuple[int | None, FaultCode, str]]) -> None:
    assert [(fault.line_number, fault.what, fault.part) for fault in read_sheet(sheet).faults] == faults


def test_every_fault_of_a_sheet_is_listed_in_the_order_of_its_lines() -> None:
    sheet = """\
Broken Harbour
Train every 3 days in turn: Pull, Push, Legs
Review after 6 weeks

Pull
1. Seated cable row, 10-8 reps
2. Romanian deadlift
   if the spleen is a problem: Back extension
Push
1. Dip, 0 reps; over 8 add 2.5
Arms
1. Hammer curl, 8-12 reps, start 5 kg above last Bench press
"""
    result = read_sheet(sheet)
    assert [(fault.line_number, fault.what) for fault in result.faults] == [
        (2, "workout without section"),
        (3, "review not in rounds"),
        (6, "range upside down"),
        (7, "no range"),
        (10, "load without unit"),
        (10, "zero"),
        (11, "section not in rotation"),
        (12, "reference missing"),
    ]


def test_a_fault_is_shown_with_a_mark_under_the_part_and_what_would_be_right() -> None:
    fault = read_sheet(HEAD + "1. Bench press, 10-8 reps").faults[0]
    assert fault_lines(fault) == [
        "   5 | 1. Bench press, 10-8 reps",
        "                       ^^^^^^^^^",
        "    the range «10-8 reps» is upside down. Write «8-10».",
        "",
    ]


def test_a_fault_is_said_in_one_line_with_the_words_of_people_escaped() -> None:
    fault = read_sheet(HEAD + "1. Bench press, 8 reps\nif the <spleen> is a problem: Dip").faults[0]
    assert fault_words(facts_of(fault)) == (
        "Line 6 («if the &lt;spleen&gt; is a problem: Dip»): I know no joint «&lt;spleen&gt;». "
        "Name one of these: neck, shoulder, elbow, wrist, upper back, lower back, hip, knee or ankle."
    )


def test_every_fault_and_note_has_words() -> None:
    assert set(FAULTS) == set(get_args(FaultCode))
    assert set(NOTES) == set(get_args(NoteCode))


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("bench press 8-10\n" * 70_000, "too large"),
        ("a\n" * 14_000, "too many lines"),
        (random.Random(4).randbytes(20_000).decode("latin-1"), "not text"),
        ("Harbour\0Base", "not text"),
    ],
    ids=["a megabyte", "many lines", "binary", "with a zero byte"],
)
def test_what_is_no_sheet_gets_one_clear_fault_at_once(text: str, what: FaultCode) -> None:
    begun = time.process_time()
    faults = read_sheet(text).faults
    assert [fault.what for fault in faults] == [what]
    assert time.process_time() - begun < 1


PIECES = (
    *("Train every 3 days in turn: Pull, Push", "Train on Mon, Wed"),
    *("Mon/Thu: Upper; Tue/Fri: Lower", "Pull", "Push", "Review after 4 rounds"),
    *("If strength has not risen, switch to ", "Tell me after 3 workouts", "\n", "\n\n", "1. ", "- "),
    *("A1. ", "Bench press", "Dip", "Wall sit", "zig", ", ", "; ", ": ", ". ", " - ", "8-10 reps"),
    *("10-8", "3x8", "2 sets of 8", "hold 30-60 s", "to failure", "RPE 8", "over 8", "add", "2.5 kg"),
    *("2.5", "straight into ", "below 1 do lowering-only reps up to 8", "if the knee is a problem: "),
    *("no dumbbells: ", "cue: ", "(", ")", '"', "start 10 kg above last ", "   ", "\t", "**", "# "),
    *("|", "&", "or ", "and ", "\u00d7", "\u2013", "\u00bd", "é", "\u202e", "0", "999999", "{", "}"),
    *("%s", "<b>"),
)
pieces = st.sampled_from(PIECES)


@settings(max_examples=500, deadline=None)
@given(
    st.one_of(
        st.text(max_size=300),
        st.lists(pieces, max_size=60).map("".join),
        st.lists(pieces, max_size=40).map(" ".join),
        st.lists(pieces, max_size=40).map(lambda some: HEAD + "".join(some)),
    )
)
def test_any_text_is_answered(text: str) -> None:
    """No text raises; what is taken can be written out and means the same; each fault has words."""
    result = read_sheet(text)
    assert (result.programme is None) == bool(result.faults)
    for fault in result.faults:
        assert fault_words(facts_of(fault))
        assert fault_lines(fault)
    if result.programme is not None:
        assert read_sheet(write_sheet(result.programme)).programme == result.programme


MONOTONOUS = (
    *("8 ", "a", "a ", "to ", "- ", "if ", "8-", "over 8 ", "Mon, ", "2 sets ", "add load "),
    *("no x: ", "rest ", "1:", "straight into ", "full ", "you get ", "each ", "stop ", "go "),
    *("is due ", '"a" ', "(a) ", "x ", "of the ", ", "),
)


@pytest.mark.parametrize("words", MONOTONOUS)
def test_no_wording_makes_it_slow(words: str) -> None:
    """Lines of one word over and over are what a careless pattern takes for ever on."""
    line = (words * 390)[:390]
    begun = time.process_time()
    read_sheet(HEAD + "1. Dip, 8 reps\n" + f"{line}\n" * 14)
    assert time.process_time() - begun < 1


def test_many_long_lines_take_no_longer_than_each_by_itself() -> None:
    lines = [(words * 390)[:390] for words in MONOTONOUS] * 3
    begun = time.process_time()
    read_sheet(HEAD + "1. Dip, 8 reps\n" + "\n".join(lines))
    assert time.process_time() - begun < 5


def test_a_line_that_is_far_too_long_is_said_so() -> None:
    faults = read_sheet(HEAD + "1. Dip, 8 reps\n" + "slowly " * 100).faults
    assert [(fault.line_number, fault.what) for fault in faults] == [(6, "line too long")]


GOOD_SHEETS = tuple(
    path.read_bytes().decode()
    for path in sorted(Path(__file__).parent.glob("*/*.txt"))
    if "house." not in path.name
)


@st.composite
def damaged_sheets(draw: st.DrawFn) -> str:
    """A good sheet with lines left out, said twice, in another order, cut short, or with a piece put in."""
    lines = draw(st.sampled_from(GOOD_SHEETS)).splitlines()
    for _ in range(draw(st.integers(1, 4))):
        place = draw(st.integers(0, len(lines) - 1))
        match draw(st.sampled_from(["leave out", "twice", "move", "cut", "put in"])):
            case "leave out" if len(lines) > 1:
                del lines[place]
            case "twice":
                lines.insert(place, lines[place])
            case "move":
                lines.insert(draw(st.integers(0, len(lines) - 1)), lines.pop(place))
            case "cut":
                lines[place] = lines[place][: draw(st.integers(0, len(lines[place])))]
            case _:
                at = draw(st.integers(0, len(lines[place])))
                lines[place] = lines[place][:at] + draw(pieces) + lines[place][at:]
    return "\n".join(lines)


@settings(max_examples=150, deadline=None)
@given(damaged_sheets())
def test_a_damaged_sheet_is_answered(text: str) -> None:
    """What is still taken can be written out and means the same; what is not has words for each fault."""
    result = read_sheet(text)
    assert (result.programme is None) == bool(result.faults)
    assert all(fault_words(facts_of(fault)) for fault in result.faults)
    if result.programme is not None:
        assert read_sheet(write_sheet(result.programme)).programme == result.programme, write_sheet(
            result.programme
        )


def test_what_could_not_be_said_back_the_same_is_not_taken() -> None:
    """A name that swallows a range, a schedule or a rule would come back as something else."""
    for line in ("1. Tue/Fri, 8-12 reps", "1. Dead hang 10-8- 2 x 20-40 s"):
        assert read_sheet(f"{HEAD}{line}").programme is None, line
