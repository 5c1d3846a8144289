"""A journal on paper, read back with pypdf, a reader of PDF that has nothing to do with what writes it."""

import warnings
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal
from io import BytesIO

from pypdf import PdfReader

from bot.files.pages import printed
from domain.journal import Entry, ExerciseHold, WorkoutRecord
from domain.sets import TrainingSet
from domain.state import ClientState
from tests.domain.client.people import noor

FIRST = date(2026, 3, 2)
LONG = "Dumbbell Romanian deadlift on one leg, held in the opposite hand, with a slow way down"


def state_of(workouts: int) -> ClientState:
    """Return Noor with so many workouts of a long-named exercise and a squat each."""
    records: list[WorkoutRecord] = []
    entries: list[Entry] = []
    for at in range(workouts):
        on = FIRST + timedelta(days=3 * at)
        records.append(WorkoutRecord(at + 1, 7, "Pull", on, "missed" if at == 1 else "done", at + 1))
        if at == 1:
            continue
        for name in (LONG, "Goblet squat"):
            done = TrainingSet(name, Decimal("22.5"), "lb", "each", reps=8, on=on)
            moment = datetime(2026, 3, 2, 12, tzinfo=UTC) + timedelta(days=3 * at)
            entries += [Entry(len(entries) + 1, at + 1, 1, done, moment)]
            entries += [Entry(len(entries) + 1, at + 1, 1, replace(done, reps=7), moment)]
    return replace(noor(), workouts=tuple(records), entries=tuple(entries))


def texts(content: bytes) -> list[str]:
    return [
        " ".join(page.extract_text().replace("\xa0", " ").split())
        for page in PdfReader(BytesIO(content)).pages
    ]


def test_pages_have_all_sets_with_dates_and_units_and_their_numbers() -> None:
    pages = texts(printed(state_of(40)))
    assert len(pages) > 2
    for at, page in enumerate(pages, 1):
        assert page.endswith(f"Noor · page {at} of {len(pages)}")
    whole = " ".join(pages)
    assert whole.count("22.5 lb each × 8, 7") == 2 * 39
    assert "Monday 2 March 2026: Pull" in pages[0]
    assert "Thursday 5 March 2026: Pull (missed)" in whole
    assert "39 workouts, 156 sets, 2 March 2026 to 27 June 2026" in pages[0]


def test_pages_are_a4_and_a_long_name_stays_within_its_column() -> None:
    (page,) = PdfReader(BytesIO(printed(state_of(1)))).pages
    assert [round(float(each)) for each in page.mediabox[2:]] == [595, 842]  # ISO 216: 210 mm x 297 mm
    widest = max(
        len(line.split("22.5")[0]) for line in page.extract_text().splitlines() if "Dumbbell" in line
    )
    assert widest < len(LONG)
    assert set(LONG.split()) <= set(page.extract_text().split())


def test_the_same_journal_makes_the_same_file() -> None:
    assert printed(state_of(5)) == printed(state_of(5))


def test_an_empty_journal_and_what_is_set_aside_are_said() -> None:
    held = replace(noor(), holds=(ExerciseHold(1, "Goblet squat", "knee", "left", FIRST),))
    (page,) = texts(printed(held))
    assert "Nothing stands in this journal yet." in page
    assert "Set aside at present: Goblet squat, since 2 March 2026 (left knee)" in page


def test_any_name_can_be_printed() -> None:
    odd = replace(noor().client, name="Zoë {nb} \x07李\n\u202eא" + "x" * 300)
    assert len(texts(printed(replace(noor(), client=odd)))) == 1


def test_the_best_of_each_exercise_stands_first_and_each_new_best_is_marked() -> None:
    state = journal(noor(), ("Dip", [5, 6, 6, 4, 8]), ("Goblet squat", [9, 8, 8, 8, 8]))
    (page,) = texts(printed(state))
    head, _, rest = page.partition("Monday 2 March 2026: Pull")
    assert "Best of each exercise Dip 8 reps on 14 March 2026 5 times" in head
    assert "Goblet squat 9 reps on 2 March 2026 5 times" in head
    assert rest.count("best so far") == 2
    assert "Dip 6 reps best so far Goblet squat 8 reps Sunday 8 March" in rest
    assert "Dip 8 reps best so far" in rest


def test_what_the_letters_do_not_have_is_stood_for_and_said() -> None:
    tanaka = replace(noor(), client=replace(noor().client, name="田中 花子"))
    state = journal(tanaka, ("懸垂", [5]), ("Жим лёжа", [5]), ("تمرين الضغط", [4]))
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        (page,) = texts(printed(state))
    assert "Training journal The client Coach" in page
    assert all(name in page for name in ("exercise 1", "Жим лёжа", "exercise 3"))
    assert "the table of the journal (CSV) has them" in page
    assert "(CSV)" not in " ".join(texts(printed(state_of(3))))


def journal(state: ClientState, *exercises: tuple[str, list[int]]) -> ClientState:
    """Return the client with workouts, three days apart, with a set of each exercise, of so many reps."""
    records: list[WorkoutRecord] = []
    entries: list[Entry] = []
    for at in range(len(exercises[0][1])):
        on = FIRST + timedelta(days=3 * at)
        records.append(WorkoutRecord(at + 1, 7, "Pull", on, "done", at + 1))
        for name, reps in exercises:
            done = TrainingSet(name, Decimal(0), "kg", "body", reps=reps[at], on=on)
            moment = datetime(2026, 3, 2, 12, tzinfo=UTC) + timedelta(days=3 * at)
            entries.append(Entry(len(entries) + 1, at + 1, 1, done, moment))
    return replace(state, workouts=tuple(records), entries=tuple(entries))
