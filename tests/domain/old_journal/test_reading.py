"""Old journals as people write them: what is taken of each row, and what is not understood."""

from datetime import date
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.old_journal import (
    MOST_SETS,
    Found,
    clients_named,
    looks_like_a_journal,
    read_journal,
)
from domain.old_journal.found import MOST_NAMES
from domain.units import Unit

TODAY = date(2026, 3, 20)


def read(text: str, client: str = "Noor", unit: Unit = "kg", *, month_first: bool | None = None) -> Found:
    return read_journal(text, client, unit, TODAY, month_first=month_first)


def row(cells: str, head: str = "date,exercise,load,reps,seconds") -> Found:
    return read(f"{head}\n{cells}\n")


def sets(found: Found) -> list[tuple[str, str, str, str, int | None, int | None]]:
    return [
        (
            each.done.on.isoformat() if each.done.on else "",
            each.done.exercise,
            f"{each.done.load} {each.done.unit}",
            each.kind or "",
            each.done.reps,
            each.done.seconds,
        )
        for workout in found.workouts
        for each in workout.sets
    ]


def faults(found: Found) -> list[tuple[int, str, str]]:
    return [(each.row, each.what, each.shown) for each in found.faults]


@pytest.mark.parametrize(
    ("cell", "load", "kind"),
    [
        ("82.5", "82.5 kg", ""),
        ('"82,5"', "82.5 kg", ""),
        ("180 lb", "180 lb", ""),
        ("82.5kg", "82.5 kg", ""),
        ("60.0", "60.0 kg", ""),
        ("bw", "0 kg", "body"),
        ("Bodyweight", "0 kg", "body"),
        ("", "0 kg", "body"),
        ("0", "0 kg", "body"),
        ("+10", "10 kg", "added"),
        ("BW+10", "10 kg", "added"),
        ("bw + 25 lbs", "25 lb", "added"),
        ("-20", "20 kg", "assist"),
        ("−20 kg", "20 kg", "assist"),
        ("20 kg help", "20 kg", "assist"),
        ("24 each", "24 kg", "each"),
        ("2x24 kg", "24 kg", "each"),
    ],
)
def test_loads(cell: str, load: str, kind: str) -> None:
    assert sets(row(f"2026-03-12,Dip,{cell},8,")) == [("2026-03-12", "Dip", load, kind, 8, None)]


@pytest.mark.parametrize(
    ("cell", "day"),
    [
        ("2026-03-12", "2026-03-12"),
        ("2026-03-12T18:30:00", "2026-03-12"),
        ("2026/3/2", "2026-03-02"),
        ("12.03.2026", "2026-03-12"),
        ("2.3.26", "2026-03-02"),
        ("12 Mar 2026", "2026-03-12"),
        ("12 March 2026", "2026-03-12"),
        ('"March 12, 2026"', "2026-03-12"),
        ('"Thu, 12 Mar 2026"', "2026-03-12"),
        ("3/3/2026", "2026-03-03"),
    ],
)
def test_days_that_can_be_one_only(cell: str, day: str) -> None:
    assert [each[0] for each in sets(row(f"{cell},Dip,10,8,"))] == [day]


@pytest.mark.parametrize(
    ("days", "month_first", "taken"),
    [
        (["03/04/2025", "13/04/2025"], None, ["2025-04-03", "2025-04-13"]),
        (["03/04/2025", "04/13/2025"], None, ["2025-03-04", "2025-04-13"]),
        (["03/04/2025"], False, ["2025-04-03"]),
        (["03/04/2025"], True, ["2025-03-04"]),
        (["03/04/2025"], None, []),
        (["03/04/2025", "13/04/2025", "04/13/2025"], None, ["2025-04-13", "2025-04-13"]),
    ],
)
def test_how_days_are_written_is_told_by_the_file_or_asked(
    days: list[str], month_first: bool | None, taken: list[str]
) -> None:
    found = read(
        "\n".join(["date,exercise,reps", *(f"{day},Dip,8" for day in days)]), month_first=month_first
    )
    assert [each[0] for each in sets(found)] == taken
    assert (found.which_date is not None) == (len(taken) < len(days))


@pytest.mark.parametrize(
    ("cells", "amounts"),
    [
        ("8,", [(8, None)]),
        ("8.0,", [(8, None)]),
        ("8/7/6,", [(8, None), (7, None), (6, None)]),
        ('"8, 7, 6",', [(8, None), (7, None), (6, None)]),
        ("3x8,", [(8, None)] * 3),
        ("0,", [(0, None)]),
        (",60", [(None, 60)]),
        (",1:30", [(None, 90)]),
        (",90 s", [(None, 90)]),
        (",1 min 30 s", [(None, 90)]),
        ("0,45", [(None, 45)]),
    ],
)
def test_reps_and_seconds(cells: str, amounts: list[tuple[int | None, int | None]]) -> None:
    assert [each[4:] for each in sets(row(f"2026-03-12,Dip,,{cells}"))] == amounts


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("Date;Lift;Weight (lb);Reps\n12.3.2026;Row;110,5;8", ("Row", "110.5 lb", 8)),
        ("date\texercise\tkg\treps\n2026-03-12\tRow\t50\t8", ("Row", "50 kg", 8)),
        ("Day|Movement|Load|Unit|Repetitions\n2026-03-12|Row|50|lbs|8", ("Row", "50 lb", 8)),
        ("\r\nreps,weight_kg,exercise name,performed on\r\n8,50,Row,2026-03-12\r\n", ("Row", "50 kg", 8)),
        ("Date,Exercise,Pounds,Reps\n2026-03-12,'=Row,50,8", ("=Row", "50 lb", 8)),
    ],
)
def test_other_columns_separators_and_units(text: str, found: tuple[str, str, int]) -> None:
    (each,) = sets(read(text))
    assert (each[1], each[2], each[4]) == found


def test_a_column_of_sets_repeats_a_row_and_one_of_all_names_is_read_in_full() -> None:
    found = read("date,exercise,weight,reps,sets,notes,RPE\n2026-03-12,Row,50,8,3,good,9")
    assert [each[4] for each in sets(found)] == [8, 8, 8]
    assert found.passed_over == ("notes", "RPE")
    assert found.unit_assumed == "kg"


@pytest.mark.parametrize(
    ("cells", "what", "shown"),
    [
        (",Dip,10,8,", "no date", ""),
        ("yesterday,Dip,10,8,", "date", "yesterday"),
        ("2026-02-30,Dip,10,8,", "date", "2026-02-30"),
        ("1899-12-31,Dip,10,8,", "date", "1899-12-31"),
        ("2026-03-21,Dip,10,8,", "future", "2026-03-21"),
        ("2026-03-12,,10,8,", "no exercise", ""),
        ("2026-03-12,Dip,heavy,8,", "load", "heavy"),
        ("2026-03-12,Dip,10-12,8,", "load", "10-12"),
        ("2026-03-12,Dip,10,eight,", "reps", "eight"),
        ("2026-03-12,Dip,10,8-10,", "reps", "8-10"),
        ("2026-03-12,Dip,10,,soon", "seconds", "soon"),
        ("2026-03-12,Dip,10,8,30", "both", "8, 30"),
        ("2026-03-12,Dip,10,,", "nothing done", ""),
        ("2026-03-12,Dip,10,900,", "beyond reason", "10 900"),
        ("2026-03-12,Dip,82,5,8,12", "too many cells", "12"),
        (f"2026-03-12,{'Dip ' * 40},10,8,", "long name", f"{('Dip ' * 40)[:39]}…"),
    ],
)
def test_what_is_not_understood_is_left_out_and_named(cells: str, what: str, shown: str) -> None:
    found = row(cells)
    assert (sets(found), faults(found)) == ([], [(2, what, shown)])


def test_a_hold_is_not_of_lowering_only_reps() -> None:
    head = "date,exercise,load,reps,seconds,lowering_only"
    assert faults(row("2026-03-12,Dip,,,30,yes", head)) == [(2, "lowered hold", "30")]
    assert [each[4] for each in sets(row("2026-03-12,Dip,,5,,yes", head))] == [5]


def test_rows_are_numbered_as_in_the_file_and_a_note_may_go_on_over_lines() -> None:
    text = 'date,exercise,reps,note\n2026-03-12,Dip,8,"one\ntwo"\n\n2026-03-13,Dip,x,\n2026-03-14,Dip,7,\n'
    found = read(text)
    assert [(each.row, each.done.reps) for workout in found.workouts for each in workout.sets] == [
        (2, 8),
        (6, 7),
    ]
    assert faults(found) == [(5, "reps", "x")]


def test_a_forgotten_quotation_mark_spoils_its_own_row_alone() -> None:
    lines = ["date,exercise,reps,note", '2026-03-12,Dip,8,"oh', *["2026-03-13,Dip,7,fine"] * 400]
    found = read("\n".join(lines))
    assert sum(len(each.sets) for each in found.workouts) == 401


def test_rows_of_one_day_and_workout_belong_together_in_any_order() -> None:
    text = (
        "date,workout,exercise,reps\n2026-03-12,Legs,Squat,5\n2026-03-10,Arms,Curl,9\n"
        "2026-03-12,Legs,Squat,6\n2026-03-12,Arms,Curl,8\n"
    )
    assert [
        (each.day.isoformat(), each.name, [one.done.reps for one in each.sets])
        for each in read(text).workouts
    ] == [("2026-03-10", "Arms", [9]), ("2026-03-12", "Legs", [5, 6]), ("2026-03-12", "Arms", [8])]


@pytest.mark.parametrize(
    ("client", "reps", "fault"),
    [("Noor", [8], None), ("noor", [8], None), ("Piet", [7], None), ("Ana", [], "nobody")],
)
def test_of_several_clients_only_the_own_rows_are_taken(
    client: str, reps: list[int], fault: str | None
) -> None:
    found = read("client,date,exercise,reps\nNoor,2026-03-12,Dip,8\nPiet,2026-03-12,Dip,7", client)
    assert [each[4] for each in sets(found)] == reps
    assert found.head_fault == fault


def test_the_rows_of_one_client_under_another_name_are_taken() -> None:
    found = read("athlete,date,exercise,reps\nN.,2026-03-12,Dip,8")
    assert [each[4] for each in sets(found)] == [8]
    assert clients_named("athlete,date,exercise,reps\nN.,2026-03-12,Dip,8") == ("N.",)


@pytest.mark.parametrize(
    ("text", "fault"),
    [
        ("", "no columns"),
        ("squat,60,8\nsquat,60,8", "no columns"),
        ("date,reps\n2026-03-12,8", "no columns"),
        (",".join(["date", "exercise", *["x"] * 200]), "no columns"),
        ("date,exercise,reps\n" + "2026-03-12,Dip,8\n" * (MOST_SETS + 1), "too many"),
        ("date,exercise,reps\n" + "2026-03-12,Dip,20x8\n" * (MOST_SETS // 10), "too many"),
        (
            "date,exercise,reps\n" + "".join(f"2026-03-12,Dip {at},8\n" for at in range(MOST_NAMES + 1)),
            "too many names",
        ),
        ("{", "not a journal"),
        ("{}", "not a journal"),
        ('{"form": "training journal", "client": "Noor"' + "[" * 5000, "not a journal"),
    ],
)
def test_what_is_no_journal_as_a_whole(text: str, fault: str) -> None:
    assert read(text).head_fault == fault
    assert read(text).workouts == ()


@pytest.mark.parametrize(
    ("name", "text", "is_journal"),
    [
        ("old.csv", "what,ever", True),
        ("notes.txt", "Date;Exercise;Reps\n12.3.2026;Row;8", True),
        ("base.txt", "Harbour Base\nTrain every 3 days in turn: Pull, Legs", False),
        ("base.txt", "date of birth, exercises at home\n", False),
    ],
)
def test_a_journal_is_told_from_a_sheet(name: str, text: str, is_journal: bool) -> None:
    assert looks_like_a_journal(name, text) == is_journal


@given(st.text(max_size=400), st.booleans())
def test_any_text_at_all_is_read_or_refused(text: str, headed: bool) -> None:
    found = read(f"date,exercise,load,reps\n{text}" if headed else text)
    rows = {each.row for workout in found.workouts for each in workout.sets}
    assert rows.isdisjoint(each.row for each in found.faults)


@given(st.text(alphabet='2026-03,"\n;1/x =+\t|', max_size=300))
def test_what_looks_nearly_like_a_table_is_read_or_refused(text: str) -> None:
    found = read(f"date,exercise,reps\n{text}")
    assert all(each.done.load >= Decimal(0) for workout in found.workouts for each in workout.sets)
