"""What a client wants looked up is answered from the journal and the sheet, and changes neither."""

import copy
from dataclasses import replace
from datetime import date
from functools import cache

import pytest

from domain.incoming import Told
from domain.parts import Notice, Part
from domain.sheet import read_sheet
from domain.spans import Span, span_of
from tests.domain.client.people import MARA, SHEET, Life, at, kinds, noor

CUED = SHEET.replace(
    "1. Seated cable row, 8-10 reps\n",
    "1. Seated cable row, 8-10 reps\n   cue: chest tall, pull to the navel\n",
)


@cache
def trained() -> Life:
    """Noor, who has trained four times in March: the loads and reps below stand in her journal."""
    life = Life(noor(CUED))
    life.says("row 60x9, rdl 90x7, hammer curl 14x10", at(2))
    life.says("squat 20x10, wall sit 30 kg 40 s", at(5))
    life.says("row 62.5x9, rdl 100x6, hammer curl 14x11", at(8))
    life.says("squat 22x10, wall sit 30 kg 45 s", at(11))
    return life


def asked(text: str) -> tuple[Life, tuple[Part, ...]]:
    """Return her life after she has asked that on the 12th, and the answer."""
    life = copy.copy(trained())
    return life, life.says(text, at(12, 10))


LOOK_UPS: dict[str, tuple[str, dict[str, object]]] = {
    # how an exercise is done
    "cues for the row": ("cues", {"rows": [("Seated cable row", "chest tall, pull to the navel")]}),
    "how do I do the row?": ("cues", {}),
    "what was the cue for rows again?": ("cues", {}),
    "remind me of the cues for rows please": ("cues", {}),
    "row cues": ("cues", {}),
    "any form tips for the seated row?": ("cues", {}),
    "What should I watch out for on rows?": ("cues", {}),
    "how are rows done properly?": ("cues", {}),
    "cues?": ("cues", {}),
    "hey, can you give me the cues?": ("cues", {}),
    "cues for the wall sit": ("no cues", {"exercises": ["Wall sit"]}),
    "how should I do the rdl?": ("no cues", {"exercises": ["Romanian deadlift"]}),
    # the course of one
    "rdl history please": ("history", {"exercise": "Romanian deadlift"}),
    "how did the rdl go?": ("history", {"exercise": "Romanian deadlift"}),
    # whether so much was ever done
    "have I ever done 100?": ("ever", {"exercises": [], "times": 1, "first on": "2026-03-08"}),
    "have I ever done 100 on rdl?": ("ever", {"exercises": ["Romanian deadlift"], "times": 1}),
    "did I ever lift 95 on the romanian deadlift": ("ever", {"times": 1, "first on": "2026-03-08"}),
    "have I ever done 200 lb on rdl?": ("ever", {"unit": "lb", "times": 1, "first on": "2026-03-08"}),
    "have I ever done more than 100?": ("ever", {"times": 0, "best on": "2026-03-08"}),
    "have I ever squatted 30?": ("ever", {"exercises": ["Goblet squat"], "times": 0}),
    "have I done 60 for 9 on rows before?": ("ever", {"reps": 9, "times": 2, "first on": "2026-03-02"}),
    "have I ever done 62.5x9?": ("ever", {"times": 1, "first on": "2026-03-08"}),
    "did I ever do 12 reps on hammer curls?": ("ever", {"reps": 12, "times": 0, "best on": "2026-03-08"}),
    "have I ever done 11 hammer curls?": ("ever", {"reps": 11, "times": 1}),
    "have I ever held 45 seconds?": ("ever", {"seconds": 45, "times": 1, "first on": "2026-03-11"}),
    "have I ever held 60 seconds on the wall sit": ("ever", {"seconds": 60, "times": 0}),
    "was I ever at 90 on rdl?": ("ever", {"times": 2, "first on": "2026-03-02"}),
    "have I already done 20 on squats before?": ("ever", {"times": 2}),
    "when did I first do 100?": ("ever", {"when": True, "first on": "2026-03-08"}),
    "when was the first time I did 60 on rows?": ("ever", {"when": True, "first on": "2026-03-02"}),
    # how often
    "how many workouts?": ("workouts counted", {"count": 4, "sets": 10, "until": None}),
    "how many workouts this year?": ("workouts counted", {"count": 4, "since": "2026-01-01"}),
    "how many workouts this month?": ("workouts counted", {"count": 4, "since": "2026-03-01"}),
    "how many workouts last month": ("workouts counted", {"count": 0, "until": "2026-02-28"}),
    "how often did I train last week?": ("workouts counted", {"count": 3, "since": "2026-03-02"}),
    "how many sessions have I done in the last 7 days": ("workouts counted", {"count": 2}),
    "how many workouts in February?": ("workouts counted", {"count": 0}),
    "How often have I trained since March?": ("workouts counted", {"count": 4}),
    "how many times have I done rows?": ("workouts counted", {"count": 2, "exercises": ["Seated cable row"]}),
    "how many times did I squat this week?": ("workouts counted", {"count": 1}),
    "how many sets of rdl did I do this month?": ("workouts counted", {"sets": 2}),
    "how long have I been training?": ("workouts counted", {"since": "2026-03-02"}),
    "when did I start?": ("workouts counted", {"since": "2026-03-02"}),
    "did I miss any workouts?": ("missed counted", {"count": 0}),
    "how many workouts have I missed this month?": ("missed counted", {"count": 0}),
    "how often did I miss?": ("missed counted", {"count": 0}),
    # what was done
    "what did I do on Sunday?": ("days told", {"days": ["2026-03-08"]}),
    "what did I do yesterday": ("days told", {"days": ["2026-03-11"]}),
    "what did I do last Monday?": ("days told", {"days": []}),
    "what did I do on 2 March?": ("days told", {"days": ["2026-03-02"]}),
    "what did I lift on the 5th?": ("days told", {"days": ["2026-03-05"]}),
    "what was my workout on Sunday?": ("days told", {"days": ["2026-03-08"]}),
    "what did I do last week?": ("days told", {"days": ["2026-03-02", "2026-03-05", "2026-03-08"]}),
    "what did I train this week?": ("days told", {"days": ["2026-03-11"]}),
    "what have I done this month": (
        "days told",
        {"days": ["2026-03-02", "2026-03-05", "2026-03-08", "2026-03-11"]},
    ),
    "what do you have for Sunday?": ("days told", {"days": ["2026-03-08"]}),
    "my sets from Sunday": ("days told", {"days": ["2026-03-08"]}),
    "did I train on Sunday?": ("days told", {"days": ["2026-03-08"]}),
    "when was my last pull workout?": ("days told", {"days": ["2026-03-08"]}),
    "when did I last do rows?": (
        "done last",
        {"exercise": "Seated cable row", "on": "2026-03-08", "days": 4},
    ),
    "when did I last squat?": ("done last", {"exercise": "Goblet squat", "days": 1}),
    "what did I beat last time?": ("beaten", {"workout": "Legs", "beaten": ["Goblet squat", "Wall sit"]}),
    "how did the last workout go?": ("beaten", {"not_beaten": []}),
    # as what it stands; a question puts nothing right
    "Does it count for Monday?": ("counts as", {"workout": "Legs", "on": "2026-03-11", "is_other": True}),
    "does that count for Wednesday": ("counts as", {"is_other": False, "coming": "Pull"}),
    "which workout does it count for?": ("counts as", {"workout": "Legs"}),
    "did you write it down as legs?": ("counts as", {"workout": "Legs"}),
    # the course, the best, the aim
    "my last 2 rows": ("history", {"exercise": "Seated cable row"}),
    "the last 5 times on rdl": ("history", {"exercise": "Romanian deadlift"}),
    "my heaviest deadlift": ("best", {}),
    "what's my max on rdl?": ("best", {}),
    "what's the most I have ever lifted on rows?": ("best", {}),
    "best ever": ("best", {}),
    "show my progress": ("programme progress", {}),
    "how is my progress looking?": ("programme progress", {}),
    "what am I aiming for on rows?": ("plan", {}),
    "which weight for rows?": ("plan", {}),
    "what should I lift on squats next time?": ("why", {}),
    "how much should I squat next time?": ("why", {}),
    "what's next?": ("plan", {}),
    "last time": ("last workout", {}),
    "history of rows": ("history", {"exercise": "Seated cable row"}),
    "history rdl": ("history", {"exercise": "Romanian deadlift"}),
    "how did I do?": ("beaten", {"workout": "Legs"}),
    "how am I doing": ("strength so far", {}),
    "a picture of my progress": ("programme progress", {}),
    "what is a superset?": ("term", {}),
}


@pytest.mark.parametrize(("text", "topic", "facts"), [(text, *found) for text, found in LOOK_UPS.items()])
def test_it_is_looked_up_and_nothing_changes(text: str, topic: str, facts: dict[str, object]) -> None:
    life, (part, *others) = asked(text)
    assert not others
    assert kinds([part]) == [topic]
    before = trained().state
    assert life.state.entries == before.entries
    assert (life.state.alerts == before.alerts) == (topic != "no cues")
    if isinstance(part, Notice):
        assert facts_in(part, facts) == facts


def facts_in(part: Notice, wanted: dict[str, object]) -> dict[str, object]:
    """Return those facts of a notice that are `wanted`, some of them made short."""
    of_sets = {name: part.facts.get(name) for name in ("first", "best")}
    short = {
        **part.facts,
        **{f"{name} on": done["on"] for name, done in of_sets.items() if isinstance(done, dict)},
        "days": part.facts.get("days", [each["on"] for each in part.facts.get("workouts", [])]),
    }
    if part.topic == "cues":
        short["rows"] = [(row["exercise"], *row["cues"]) for row in part.facts["rows"]]
    return {name: short.get(name) for name in wanted}


@pytest.mark.parametrize(
    "text",
    [
        "how long should I rest between sets?",
        "can you check my form on rows?",
        "can you check my squat form?",
        "how do I do rows with a bad shoulder and no cable?",
        "how do I do yoga?",
        "should I do 100 on rdl?",
    ],
)
def test_what_needs_a_person_still_goes_to_the_coach(text: str) -> None:
    life, said = asked(text)
    assert kinds(said) == ["passed on"]
    assert [alert.evidence["said"] for alert in life.state.alerts if alert.reason == "question"] == [text]


@pytest.mark.parametrize(
    ("text", "sets"),
    [
        ("did 100 on rdl for 6", 1),
        ("did rows 60x9 and rdl 100x6", 2),
        ("have done 62.5x10 on rows", 1),
        ("last row 60x8", 1),
        ("my last set of rows was 60x8", 1),
        ("first time 100 for 6 on rdl", 1),
    ],
)
def test_what_tells_of_sets_is_recorded(text: str, sets: int) -> None:
    life = copy.copy(trained())
    life.says(text, at(14))
    assert len(life.state.entries) == len(trained().state.entries) + sets


def test_no_cue_is_told_of_what_is_aside_and_none_while_there_is_no_training() -> None:
    life = copy.copy(trained())
    life.says("my left shoulder hurts on rows", at(12, 10))
    assert "cues" not in kinds(life.says("cues for the row", at(12, 10, 5)))
    barred = copy.copy(trained())
    barred.says("I had chest pain and nearly fainted", at(12, 10))
    assert kinds(barred.says("how do I do the row?", at(12, 11))) == ["barred"]


def test_the_coach_gets_a_question_after_a_cue_that_the_sheet_does_not_have() -> None:
    life, _ = asked("how do I do the wall sit?")
    (alert,) = (each for each in life.state.alerts if each.reason == "question")
    assert (alert.exercise, alert.evidence["said"]) == ("Wall sit", "how do I do the wall sit?")


def test_missed_workouts_are_counted() -> None:
    life = copy.copy(trained())
    life.passes_to(at(16))
    (part,) = life.says("how many workouts did I miss?", at(16))
    assert isinstance(part, Notice)
    assert (part.facts["count"], part.facts["rows"]) == (1, [{"workout": "Pull", "on": "2026-03-14"}])


def test_a_question_is_answered_before_it_is_taken_for_an_answer() -> None:
    life = copy.copy(trained())
    assert "question" in kinds(life.says("rows 62.5", at(14)))
    assert kinds(life.says("have I ever done 62.5x10?", at(14, 18, 1))) == ["ever"]
    assert "verdict" in kinds(life.says("9", at(14, 18, 2)))


TODAY = date(2026, 3, 12)  # a Thursday


@pytest.mark.parametrize(
    ("said", "first", "last"),
    [
        ("this week", date(2026, 3, 9), TODAY),
        ("last week", date(2026, 3, 2), date(2026, 3, 8)),
        ("this month", date(2026, 3, 1), TODAY),
        ("last month", date(2026, 2, 1), date(2026, 2, 28)),
        ("this year", date(2026, 1, 1), TODAY),
        ("last year", date(2025, 1, 1), date(2025, 12, 31)),
        ("in March", date(2026, 3, 1), TODAY),
        ("in december", date(2025, 12, 1), date(2025, 12, 31)),
        ("in feb 2024", date(2024, 2, 1), date(2024, 2, 29)),
        ("since January", date(2026, 1, 1), TODAY),
        ("since 2025", date(2025, 1, 1), TODAY),
        ("in 2025", date(2025, 1, 1), date(2025, 12, 31)),
        ("in the last 4 weeks", date(2026, 2, 13), TODAY),
        ("the past ten days", None, None),
        ("over the last three days", date(2026, 3, 10), TODAY),
        ("in 2031", None, None),
        ("in may 2026", None, None),
        ("in ju", None, None),
        ("in my sleep", None, None),
    ],
)
def test_a_stretch_of_days_is_told(said: str, first: date | None, last: date | None) -> None:
    assert span_of(said, TODAY) == (None if first is None or last is None else Span(first, last))


def test_cues_are_those_of_the_programme_of_now() -> None:
    state = trained().state
    assert state.client.programme is not None
    programme = read_sheet(SHEET.replace("6-8 reps", "6-8 reps\n   cue: hips back")).programme
    assert programme is not None
    stored = replace(state.client.programme, programme=programme)
    life = copy.copy(trained())
    life.state = replace(state, client=replace(state.client, programme=stored))
    (part,) = life.says("cues for rdl", at(12, 10))
    assert isinstance(part, Notice)
    assert part.facts["rows"] == [{"exercise": "Romanian deadlift", "cues": ["hips back"]}]


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("what did my coach say about holidays?", ["Walk a lot on your holiday."]),
        ("What has Mara written about the holiday?", ["Walk a lot on your holiday."]),
        ("did my coach say anything about sleep?", ["Sleep eight hours."]),
        ("what did Mara say?", ["Walk a lot on your holiday.", "Sleep eight hours."]),
        ("what did my coach say about dips?", []),
    ],
)
def test_the_coachs_words_are_looked_up_by_what_they_are_about(text: str, told: list[str]) -> None:
    life = Life()
    life.hears(Told(coach=MARA.number, text="Walk a lot on your holiday."), at(2))
    life.hears(Told(coach=MARA.number, text="Sleep eight hours."), at(3))
    (said,) = life.says(text, at(4))
    assert isinstance(said, Notice)
    assert (said.topic, [row["text"] for row in said.facts["rows"]]) == ("coach said", told)


def test_where_the_coach_has_written_nothing_the_question_is_a_press_away() -> None:
    life = Life()
    life.says("what did my coach say about holidays?", at(2))
    assert kinds(life.presses("Ask my coach about holidays", at(2))) == ["passed on"]
    assert life.alert_reasons == ["question"]


@pytest.mark.parametrize(
    ("text", "rows"),
    [
        (
            "history of rows, rdl and squat",
            {"Seated cable row": 2, "Romanian deadlift": 2, "Goblet squat": 2},
        ),
        ("show me the history for rows, curls", {"Seated cable row": 2, "Hammer curl": 2}),
        ("rows and rdl history please", {"Seated cable row": 2, "Romanian deadlift": 2}),
        ("last time rows and rdl?", {"Seated cable row": 1, "Romanian deadlift": 1}),
        ("how did rows and rdl go?", {"Seated cable row": 1, "Romanian deadlift": 1}),
    ],
)
def test_the_course_of_several_is_told_one_after_the_other(text: str, rows: dict[str, int]) -> None:
    _, parts = asked(text)
    notices = [part for part in parts if isinstance(part, Notice)]
    assert {each.facts["exercise"]: len(each.facts["rows"]) for each in notices} == rows
