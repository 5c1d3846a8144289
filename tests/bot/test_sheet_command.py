"""The `sheet` command: what a person sees of a sheet, and the exit status."""

from pathlib import Path

import pytest

from bot.commands.sheet import sheet_command

GOOD = """\
Quiet Harbour
Train every 3 days in turn: Pull, Legs
Review after 4 rounds. If strength has not risen, switch to Quiet Harbour Light
Tell me after 4 workouts without a beat

Pull
1. Seated cable row, 8-10 reps to failure
   straight into Lat pulldown, 5-7 reps to failure
2. Pull-up, 3-6 reps; over 6 add 2.5 kg; below 1 do negatives up to 6
   if the elbow is a problem: Straight-arm pulldown, 10-15 reps
   cue: chest to the bar
Legs
1. Goblet squat, 2 sets of 8-12 reps, stop two short of failure
2. Wall sit, hold 30-60 seconds, start 10 kg above last Goblet squat
3. Sandbag loads, 5 reps
"""

UNDERSTOOD = """\
Quiet Harbour
A workout every 3 days, counted from the last one done. In turn: Pull and Legs.
Review after 4 rounds; if strength has not risen, on to Quiet Harbour Light.
I tell you after 4 workouts of an exercise without a beat.

Pull
1. Seated cable row: 8\N{EN DASH}10 reps, to failure
    straight into Lat pulldown: 5\N{EN DASH}7 reps, to failure
2. Pull-up: 3\N{EN DASH}6 reps
    fewer than 1 full rep: lowering-only reps, up to 6
    more than 6 reps: add 2.5 kg
    if the elbow is a problem: Straight-arm pulldown, 10\N{EN DASH}15 reps
    cue: chest to the bar

Legs
1. Goblet squat: 2 sets of 8\N{EN DASH}12 reps, stopping 2 reps short of failure
2. Wall sit: hold 30\N{EN DASH}60 s
    starts 10 kg above the last Goblet squat
3. Sandbag loads: 5 reps

Please check:
Line 15: «Sandbag loads» is taken as your own exercise.
"""


def test_what_was_understood_is_printed_for_a_coach(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "sheet.txt").write_text(GOOD, encoding="utf-8")
    assert sheet_command(tmp_path / "sheet.txt") == 0
    said = capsys.readouterr()
    assert said.out == UNDERSTOOD
    assert said.err == ""


def test_faults_are_printed_with_a_mark_and_a_count(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "broken.txt"
    path.write_text(
        "Quiet Harbour\nTrain every 3 days in turn: A\nA\n\t1. Squat, 10-8\n2. Row <b>\n", encoding="utf-8"
    )
    assert sheet_command(path) == 1
    said = capsys.readouterr()
    assert said.out == ""
    assert said.err == (
        "   4 |     1. Squat, 10-8\n"
        "                     ^^^^\n"
        "    the range «10-8» is upside down. Write «8-10».\n"
        "\n"
        "   5 | 2. Row <b>\n"
        "          ^^^^^^^\n"
        "    it does not say how many reps, or how long. "
        "Write «Row <b>, 8-10 reps», or «Row <b>, hold 30-60 seconds».\n"
        "\n"
        f"{path}: 2 faults\n"
    )


@pytest.mark.parametrize(
    ("content", "line"),
    [
        (None, "No such file or directory"),
        (b"\x00\x01\x02" * 50, "it is not plain text; a sheet is a plain text file"),
        (b"a" * 2_000_000, "it is far larger than any sheet; a sheet is a plain text file"),
    ],
    ids=["missing", "binary", "huge"],
)
def test_a_file_that_is_no_sheet_gets_one_line(
    content: bytes | None, line: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "sheet.txt"
    if content is not None:
        path.write_bytes(content)
    assert sheet_command(path) == 1
    assert capsys.readouterr().err == f"kilopost: {path}: {line}\n"


def test_a_folder_is_no_sheet(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert sheet_command(tmp_path) == 1
    assert capsys.readouterr().err.count("\n") == 1


def test_faults_without_end_are_cut_short(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "sheet.txt"
    path.write_text("Harbour\nTrain every 3 days\nA\n" + "1. Squat\n" * 300, encoding="utf-8")
    assert sheet_command(path) == 1
    said = capsys.readouterr().err
    assert said.endswith(f"{path}: 300 faults, 260 of them not shown\n")
    assert len(said.splitlines()) < 200
