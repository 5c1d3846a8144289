"""`assess`: a journal from elsewhere read, assessed and told; what is broken named, and nothing else lost."""

import json
from datetime import date, timedelta
from decimal import Decimal
from pathlib import Path

import pytest

from bot.commands.assess import assess_command
from bot.journal_file import read_journal
from bot.wording.assessment import standing_lines
from domain.gaining import Standing
from domain.slope import Gain
from tests.bench.lifters import Truth, lift

HEAD = "client,date,exercise,load,unit,reps,seconds\n"


def rows(client: str, truth: Truth, exposures: int = 36, seed: str = "a") -> str:
    past, _ = lift(truth, seed, exposures=exposures)
    return "".join(
        f"{client},{each.on},{each.exercise},{each.sets[0].load},kg,{each.sets[0].reps},\n" for each in past
    )


def assessed(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], content: str | bytes, *, as_json: bool = True
) -> tuple[int, str, list[str]]:
    file = tmp_path / "journal.csv"
    file.write_bytes(content if isinstance(content, bytes) else content.encode())
    status = assess_command(file, as_json=as_json)
    out, err = capsys.readouterr()
    return status, out, err.splitlines()


def test_gaining_and_stalled_as_json_lines(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    text = HEAD + rows("Ana", Truth(0.01, 0.02)) + rows("Bo", Truth(0.01, 0.02, ends=16))
    status, out, faults = assessed(tmp_path, capsys, text)
    gaining, ana, stalled, bo = [json.loads(line) for line in out.splitlines()]
    assert (status, faults) == (0, [])
    assert list(gaining) == [
        "client",
        "exercise",
        "exposures",
        "gain_per_exposure",
        "interval",
        "stalled",
        "declining",
        "since",
        "confidence",
    ]
    assert gaining["client"] == "Ana"
    assert (gaining["exercise"], gaining["exposures"], gaining["stalled"]) == ("Bench press", 36, False)
    assert gaining["interval"][0] < 0.01 < gaining["interval"][1]
    assert list(ana) == ["client", "review"]
    assert list(ana["review"]) == ["risen", "p_value", "gain_per_round", "rounds"]
    assert ana["review"]["risen"]
    assert ana["review"]["rounds"] == 36
    assert stalled["client"] == bo["client"] == "Bo"
    assert stalled["stalled"]
    assert not stalled["declining"]
    since = (date.fromisoformat(stalled["since"]) - date(2026, 1, 1)).days / 4
    assert 11 <= since <= 21
    assert 0.5 < stalled["confidence"] <= 1


def test_two_lines_each_in_words(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    text = HEAD + rows("Bo", Truth(0.01, 0.02, ends=16)) + "Bo,2026-01-01,Plank,,,,60\n"
    status, out, _ = assessed(tmp_path, capsys, text, as_json=False)
    lines = out.splitlines()
    assert status == 0
    assert lines[0] == "Bo"
    assert lines[1].startswith("  Bench press has stalled: last gained on ")
    assert "% sure that it no longer gains. Until then +" in lines[2]
    assert lines[3:5] == ["  Plank: too early to tell.", "    Only 1 workout to go by; 5 are needed."]
    assert lines[5].startswith("  All exercises together: strength has ")
    assert "doctor" in lines[7]


@pytest.mark.parametrize(
    ("row", "fault"),
    [
        ("Ana,2026-02-30,Squat,80,kg,8,", "date «2026-02-30»: a day is written like 2026-03-12"),
        ("Ana,1/2/2026,Squat,80,kg,8,", "date «1/2/2026»: a day is written like 2026-03-12"),
        (",2026-01-02,Squat,80,kg,8,", "no client"),
        ("Ana,2026-01-02,,80,kg,8,", "no exercise"),
        ('Ana,2026-01-02,Squat,"82,5",kg,8,', "load «82,5»: write 82.5, with a point"),
        ("Ana,2026-01-02,Squat,82,5,kg,8,", "8 cells for 7 columns"),
        ("Ana,2026-01-02,Squat,80kg,,8,", "load «80kg»: a number like 82.5, without a unit"),
        ("Ana,2026-01-02,Squat,-80,kg,8,", "load «-80»: a number like"),
        ("Ana,2026-01-02,Squat,80,stone,8,", "unit «stone»: kg or lb"),
        ("Ana,2026-01-02,Squat,80,kg,8.5,", "reps «8.5»: a whole number"),
        ("Ana,2026-01-02,Squat,80,kg,8,30", "reps and seconds: a set has one of them"),
        ("Ana,2026-01-02,Squat,8000,kg,8,", "more than anybody lifts"),
        ("Ana,2026-01-02,Squat,80,kg,٨,", "reps «٨»: a whole number like 8"),
        ("Ana,2026-01-02,Squat,80,kg,-4,", "reps «-4»: a whole number like 8"),
        ('Ana,2026-01-02,"Squat,80,kg,8,', "a quotation mark that does not close"),
    ],
)
def test_a_broken_row_is_named_by_its_line_and_the_others_count(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], row: str, fault: str
) -> None:
    text = HEAD + "Ana,2026-01-01,Squat,80,kg,8,\n\n" + row + "\nAna,2026-01-05,Squat,80,kg,9,\n"
    status, out, faults = assessed(tmp_path, capsys, text)
    assert status == 1
    assert len(faults) == 1
    assert f": line 4: {fault}" in faults[0]
    assert json.loads(out.splitlines()[0])["exposures"] == 2


@pytest.mark.parametrize(
    "content",
    [
        b"\xef\xbb\xbfclient,date,exercise,load,unit,reps,seconds\r\nAna,2026-01-01,Squat,80,kg,8,\r\n",
        "client;date;exercise;load;unit;reps;seconds\nAna;2026-01-01;Squat;80;kg;8;\n".encode("utf-16"),
        b"Reps,LOAD,note,exercise,date,client\n8,80,ok,Squat,2026-01-01,Ana\n,,,,,\n",
        b'client,date,exercise,load,unit,reps,seconds\n"Ana","2026-01-01","Squat","80","KG","8",""\n',
        b"client,date,exercise,load,unit,reps,seconds\nAna,2026-01-01,Squat,80.0,kg,8,0",
        b"client\tdate\texercise\tload\tunit\treps\rAna\t2026-01-01\tSquat\t80\t\t8\r",
        b"Client;Date;Exercise;Load;Unit;Reps;Seconds\nAna;2026-01-01;Squat;82,5;kg;8;\n",
    ],
)
def test_one_set_however_the_table_is_written(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], content: bytes
) -> None:
    status, out, faults = assessed(tmp_path, capsys, content)
    assert (status, faults) == (0, [])
    exercise, review = [json.loads(line) for line in out.splitlines()]
    assert exercise == {
        "client": "Ana",
        "exercise": "Squat",
        "exposures": 1,
        "gain_per_exposure": None,
        "interval": None,
        "stalled": False,
        "declining": False,
        "since": None,
        "confidence": None,
    }
    assert review["review"]["risen"] is False


@pytest.mark.parametrize(
    ("content", "fault"),
    [
        ("", "line 1: no column 'client'"),
        ("name,date,exercise\nAna,2026-01-01,Squat\n", "line 1: no column 'client'"),
        ("client,date,exercise,date\n", "line 1: two columns 'date'"),
        ('client,"date,exercise\n', "line 1: a quotation mark"),
    ],
)
def test_a_table_without_its_columns_is_refused_kindly(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], content: str, fault: str
) -> None:
    status, out, faults = assessed(tmp_path, capsys, content)
    assert (status, out) == (1, "")
    assert fault in faults[0]


def test_a_table_with_no_row_says_so(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    status, out, told = assessed(tmp_path, capsys, HEAD)
    assert (status, out) == (0, "")
    assert "nothing but the names of the columns" in told[0]


def test_two_rounds_say_nothing_of_between_what_a_gain_lies(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    text = HEAD + "Ana,2026-01-01,Squat,80,kg,8,\nAna,2026-01-05,Squat,80,kg,9,\n"
    _, out, _ = assessed(tmp_path, capsys, text, as_json=False)
    assert out.splitlines()[4] == "    By chance alone so in 50 of 100 looks."


@pytest.mark.parametrize(
    ("ended", "sure"),
    [
        (0.07, "7% sure that it no longer gains."),
        (0.79, "that it no longer gains, too little to call it a stall."),
    ],
)
def test_what_speaks_for_a_stall_where_none_is_called_is_no_contradiction(ended: float, sure: str) -> None:
    found = Standing(40, ended=ended, gain=Gain(0.004, -0.001, 0.009))
    first, second = standing_lines("Squat", found)
    assert first == "Squat: no stall, +0.4% each time over 40 workouts."
    assert second.endswith(sure)


def test_no_such_file_and_no_text(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert assess_command(tmp_path / "none.csv") == 1
    assert "No such file" in capsys.readouterr().err
    status, _, faults = assessed(tmp_path, capsys, b"\x00\x01\x02")
    assert status == 1
    assert "not plain text" in faults[0]


def test_sets_of_a_day_are_one_exposure_and_names_of_one_exercise_are_one() -> None:
    journal = read_journal(
        HEAD + "Ana,2026-01-05,bench,80,kg,8,\nAna,2026-01-05,Bench press,80,kg,7,\n"
        "Ana,2026-01-01,BENCH,175,lb,8,\n"
        "Ana,2026-01-05,Glow worm press,20,kg,8,\nAna,2026-01-05,Dip,,,6,\nAna,2026-01-08,Dip,5,kg,6,\n"
    )
    sets = journal.clients["Ana"]
    assert list(sets) == ["bench", "Glow worm press", "Dip"]
    assert [(each.load, each.unit) for each in sets["bench"]] == [
        (Decimal(80), "kg"),
        (Decimal(80), "kg"),
        (Decimal(175), "lb"),
    ]
    assert [each.load_kind for each in sets["Dip"]] == ["body", "added"]


def test_a_row_that_tells_of_no_set_names_its_exercise_only(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    status, out, _ = assessed(tmp_path, capsys, HEAD + "Ana,2026-01-05,Squat,80,kg,,\n")
    exercise, review = [json.loads(line) for line in out.splitlines()]
    assert status == 0
    assert exercise["exposures"] == 0
    assert review["review"] == {"risen": False, "p_value": None, "gain_per_round": None, "rounds": 0}


def test_a_long_file_is_read_to_the_end(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """One client who did one thing every day for years, and others: only the latest of it is weighed."""
    days = [date(2000, 1, 1) + timedelta(each) for each in range(9000)]
    text = HEAD + "".join(f"Ana,{on},Squat,80,kg,8,\n" for on in days)
    text += "".join(f"Client {each % 50},{days[each]},Row,40,kg,{8 + each % 3},\n" for each in range(3000))
    status, out, _ = assessed(tmp_path, capsys, text)
    assert status == 0
    assert len(out.splitlines()) == 2 * 51
    first = json.loads(out.splitlines()[0])
    assert first["stalled"]
    assert first["exposures"] == len(days)
