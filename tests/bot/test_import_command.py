"""`import`: an old journal into a database, as an operator does it."""

from datetime import date, timedelta
from pathlib import Path

import pytest

from bot.command_line import app
from bot.commands.bring_journal import Wanted, import_command
from bot.commands.database import opened
from bot.faults import OperatorFault
from bot.roster import read_roster
from domain.journal_data import JournalData, WorkoutData
from tests.bot.test_desk import NOW, ROSTER

WANTED = Wanted("noor", dry_run=False, keep_names=False, month_first=None, report=None)


@pytest.fixture
def url(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> str:
    found = f"sqlite:///{tmp_path}/kilopost.sqlite3"
    monkeypatch.setenv("KILOPOST_DATABASE", found)
    with opened(found) as store:
        store.load_roster(read_roster(ROSTER), NOW)
    return found


def written(folder: Path, rows: str, head: str = "date,exercise,load,reps") -> Path:
    path = folder / "old.csv"
    path.write_text(f"{head}\n{rows}\n", encoding="utf-8")
    return path


def sets_of_noor(url: str) -> int:
    with opened(url) as store:
        number = next(person.number for person in store.people() if person.name == "Noor")
        state = store.whole_client(number, number)
        assert state is not None
        return len(state.entries)


def workouts_of_noor(url: str) -> list[str]:
    with opened(url) as store:
        number = next(person.number for person in store.people() if person.name == "Noor")
        state = store.whole_client(number, number)
        assert state is not None
        return [each.state for each in state.workouts]


def test_a_journal_is_taken_in_portions_and_the_coach_can_undo_it(
    url: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    days = [date(2023, 1, 1) + timedelta(days=at) for at in range(200)]
    path = written(tmp_path, "\n".join(f"{day},Leg press,100,{reps}" for day in days for reps in (8, 7)))
    assert import_command(path, WANTED) == 0
    assert sets_of_noor(url) == 400
    out = capsys.readouterr()
    assert "I would take 400 sets of 1 exercise in 200 workouts, 2023-01-01 to 2023-07-19." in out.out
    assert "400/400" in out.err
    assert import_command(path, WANTED) == 0
    assert "400 sets stand in the journal already" in capsys.readouterr().out
    assert sets_of_noor(url) == 400
    with opened(url) as store:
        told = [
            label
            for person in store.people()
            if person.is_coach
            for label, _ in store.latest_buttons(person.number)
        ]
    assert told == []  # nothing is sent yet; it waits in the outbox


def test_a_dry_run_takes_nothing_and_its_report_has_each_row(url: str, tmp_path: Path) -> None:
    path = written(tmp_path, "2026-02-01,Leg press,100,8\nsoon,Leg press,100,8\n2026-02-01,Wobbler,1,8")
    report = tmp_path / "report.csv"
    wanted = Wanted("Noor", dry_run=True, keep_names=True, month_first=None, report=report)
    assert import_command(path, wanted) == 0
    lines = report.read_text("utf-8-sig").splitlines()
    assert [line.split(",")[:3] for line in lines] == [
        ["row", "taken", "exercise"],
        ["2", "yes", "Leg press"],
        ["3", "no", "soon"],
        ["4", "yes", "Wobbler"],
    ]
    assert sets_of_noor(url) == 0


def test_workouts_that_were_missed_or_skipped_are_taken_without_a_set(url: str, tmp_path: Path) -> None:
    days = [date(2023, 1, 1) + timedelta(days=at) for at in range(300)]
    journal = JournalData(
        client="Noor",
        unit="kg",
        zone="UTC",
        workouts=tuple(
            WorkoutData(day=day, name="Pull", state="missed" if at % 2 else "skipped", round=1)
            for at, day in enumerate(days)
        ),
    )
    path = tmp_path / "missed.json"
    path.write_text(journal.model_dump_json())
    assert import_command(path, WANTED) == 0
    assert workouts_of_noor(url) == ["skipped", "missed"] * 150
    assert import_command(path, WANTED) == 0
    assert len(workouts_of_noor(url)) == 300


@pytest.mark.parametrize(
    ("rows", "client", "fault"),
    [
        ("2026-02-01,Wobbler,1,8", "Noor", "«Wobbler» (1 set)"),
        ("03/02/2025,Leg press,1,8", "Noor", "day first or month first"),
        ("2026-02-01,Leg press,1,8", "Ana", "there is no client «Ana»; there are: Noor"),
    ],
)
def test_what_is_to_be_known_first_is_said(
    url: str, tmp_path: Path, rows: str, client: str, fault: str
) -> None:
    wanted = Wanted(client, dry_run=False, keep_names=False, month_first=None, report=None)
    with pytest.raises(OperatorFault) as raised:
        import_command(written(tmp_path, rows), wanted)
    assert fault in "\n".join(raised.value.faults)
    assert sets_of_noor(url) == 0


def test_what_is_no_file_or_no_journal_is_said(url: str, tmp_path: Path) -> None:
    with pytest.raises(OperatorFault, match=r"No such file"):
        import_command(tmp_path / "none.csv", WANTED)
    (tmp_path / "a.xls").write_bytes(b"\x00\x01")
    with pytest.raises(OperatorFault, match=r"save it as CSV"):
        import_command(tmp_path / "a.xls", WANTED)
    with pytest.raises(OperatorFault, match=r"I cannot take «old\.csv»"):
        import_command(written(tmp_path, "1,2", "what,ever"), WANTED)
    assert url


def test_the_command_is_called_import() -> None:
    assert "import" in [each.name for each in app.registered_commands]
