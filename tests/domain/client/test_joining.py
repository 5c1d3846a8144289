"""The first questions: how each is answered, what is heard in between, and what can never be passed over."""

from dataclasses import replace
from datetime import timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from domain.client.joining import STEPS
from domain.incoming import (
    Decided,
    Document,
    FromChat,
    FromCoach,
    Pressed,
    Released,
    Started,
    Text,
    Unsupported,
)
from domain.memory import Clearance, Joining, JoiningStep
from domain.parts import Notice, Part, Plan, Question, Reminder, TargetPart
from domain.readiness import readiness_of
from domain.state import ClientState
from tests.domain.client.people import MARA, SHEET, Life, at, kinds, noor
from tests.domain.tables import Case, read_cases

CASES = read_cases("joining.md")
ORDER: tuple[JoiningStep, ...] = tuple(step.name for step in STEPS)

LEG_PRESS = SHEET.replace(
    "1. Goblet squat, 8-12 reps\n",
    "1. Goblet squat, 8-12 reps\n3. Leg press, 10-15 reps\n   no leg press: Leg extension, 10-15 reps\n",
)
NOW = at(1, 18, 40)


def newcomer(*settled: JoiningStep, sheet: str = SHEET) -> ClientState:
    """Return a client who has just come in, with these questions answered; the coach's settings are taken."""
    state = noor(sheet)
    memory = state.memory.model_copy(update={"joining": Joining(settled=settled), "welcomed": False})
    return replace(state, memory=memory)


def joining_at(step: JoiningStep, sheet: str = SHEET) -> Life:
    """Return the life of a newcomer who has just been asked this question."""
    life = Life(newcomer(*ORDER[: ORDER.index(step)], sheet=sheet))
    joining = life.state.memory.joining
    assert joining is not None
    if step == "guardian":
        joining = joining.model_copy(update={"is_minor": True})
        life.state = replace(life.state, memory=life.state.memory.model_copy(update={"joining": joining}))
    life.wake_at = NOW - timedelta(minutes=1)
    assert asked(life.passes_to(NOW)) == step
    return life


def asked(parts: tuple[Part, ...] | list[Part]) -> str | None:
    """Return the question that an answer ends with, if it is one of the first."""
    last = parts[-1] if parts else None
    return str(last.facts["step"]) if isinstance(last, Question) and last.slot == "joining" else None


def settled(life: Life) -> tuple[JoiningStep, ...]:
    joining = life.state.memory.joining
    return ORDER if joining is None else joining.settled


def notices(parts: tuple[Part, ...]) -> list[str]:
    return [part.topic for part in parts if isinstance(part, Notice)]


def came_to(life: Life, step: JoiningStep, said: str) -> str:
    """Say something to a question; return what it came to as the table writes it."""
    parts = life.says(said, NOW)
    if step not in settled(life):
        assert asked(parts) == step
        last = parts[-1]
        assert isinstance(last, Question)
        return "again" if last.facts.get("unread") or notices(parts) in AGAIN_WITH else "open"
    memory, client = life.state.memory, life.state.client
    match step:
        case "consent":
            return "agreed" if memory.agreed_at == NOW else "not agreed"
        case "age":
            return "minor" if asked(parts) == "guardian" else "adult"
        case "guardian":
            return "agreed" if memory.guardian_said == said else "adult"
        case "readiness":
            which = memory.clearance
            return "none" if which is None else " ".join(which.which) or "yes"
        case "unit":
            return client.unit
        case "zone":
            return client.zone
        case "hour":
            return "off" if memory.reminders_off else f"{client.remind_at:%H:%M}"
        case "equipment":
            return ", ".join(client.equipment.lacking) or "all"
        case "first day":
            return client.starts.isoformat()


AGAIN_WITH = (["later with that"], ["training later"], ["help"], ["passed on"])
"""Answers beside the question that say as well that it was not answered."""


@pytest.mark.parametrize("case", CASES, ids=lambda case: f"{case.place.split(',')[0]}: {case['said']}")
def test_an_answer_comes_to_what_the_table_says(case: Case) -> None:
    step = next(name for name in ORDER if case.place.startswith(f"{name},"))
    life = joining_at(step, LEG_PRESS)
    assert came_to(life, step, case["said"]) == case["comes to"]


def test_there_are_eight_questions_at_most_for_who_is_of_age() -> None:
    assert len([step for step in STEPS if step.name != "guardian"]) == 8


def test_every_question_is_answered_by_each_of_its_buttons() -> None:
    for step in ORDER:
        labels = joining_at(step).buttons
        assert labels
        for label in labels:
            life = joining_at(step)
            parts = life.presses(label, NOW)
            is_refusal = label in {"No", "Not yet"}
            assert (step in settled(life)) != is_refusal, (step, label)
            assert "button is old" not in notices(parts)


def test_a_button_of_the_same_question_still_answers_it_after_a_detour() -> None:
    life = joining_at("unit")
    life.says("what a nice day", NOW)
    first = life.buttons["lb"]
    life.says("row 60x9", NOW)
    life.hears(Pressed(button="1:0", action=first), NOW)
    assert life.state.client.unit == "lb"


def test_a_button_of_an_earlier_question_changes_nothing() -> None:
    life = joining_at("unit")
    old = life.buttons["lb"]
    life.presses("kg", NOW)
    parts = life.hears(Pressed(button="1:0", action=old), NOW)
    assert notices(parts) == ["button is old"]
    assert asked(parts) == "zone"
    assert life.state.client.unit == "kg"


def test_nothing_is_an_answer_before_anything_was_asked() -> None:
    life = Life(newcomer())
    life.wake_at = None
    parts = life.says("yes", NOW)
    assert asked(parts) == "consent"
    assert life.state.memory.agreed_at is None


@pytest.mark.parametrize("incoming", [Document(name="x.txt", text="x"), Started(), Text(text="")])
def test_whatever_comes_in_is_answered_with_the_open_question(incoming: FromChat) -> None:
    assert asked(joining_at("hour").hears(incoming, NOW)) == "hour"


def test_an_edit_answers_nothing_but_pain_in_it_is_heard() -> None:
    life = joining_at("age")
    parts = life.edits("yes", "yess", 1, NOW)
    assert (notices(parts), asked(parts), settled(life)) == (["joining edit"], "age", ("consent",))
    parts = life.edits("my knee hurts", "yess", 1, NOW)
    assert kinds(parts)[0] == "safety"


def test_sets_are_kept_as_typed_and_recorded_once_all_is_answered() -> None:
    life = joining_at("zone")
    parts = life.says("row 60x9", NOW)
    assert notices(parts) == ["later with that"]
    life.edits("row 60x10", "row 60x9", 1, NOW)
    for answer in ("Amsterdam", "7:00", "skip"):
        life.says(answer, at(2))
    life.says("Thursday", at(3))
    (entry,) = life.state.entries
    assert (entry.set.exercise, entry.set.reps, entry.set.on, entry.message) == (
        "Seated cable row",
        10,
        NOW.date(),
        1,
    )


@pytest.mark.parametrize("step", ["hour", "equipment", "first day"])
def test_who_has_trained_begins_that_day_where_nothing_is_open_that_could_not_wait(step: JoiningStep) -> None:
    life = joining_at(step)
    parts = life.says("row 60x9", NOW)
    assert [kind for kind in kinds(parts) if kind in {"verdict", "joined"}] == ["verdict", "joined"]
    assert life.state.memory.joining is None
    assert life.state.client.starts <= NOW.date()


@pytest.mark.parametrize("step", ["hour", "equipment"])
def test_after_two_answers_that_are_none_what_can_wait_is_left(step: JoiningStep) -> None:
    life = joining_at(step)
    assert asked(life.says("the one with the red door", NOW)) == step
    parts = life.says("as I said", NOW)
    assert notices(parts) == ["left for now"]
    assert step in settled(life)


@pytest.mark.parametrize("step", ORDER)
def test_a_warning_sign_gets_emergency_words_alone_at_any_question(step: JoiningStep) -> None:
    life = joining_at(step)
    assert kinds(life.says("I have chest pain right now", NOW)) == ["urgent"]
    assert life.alert_reasons == ["urgent"]
    assert step not in settled(life)
    assert asked(life.says("hello", NOW)) == step


@pytest.mark.parametrize("step", ORDER)
def test_pain_sets_aside_what_hurts_at_any_question(step: JoiningStep) -> None:
    life = joining_at(step)
    parts = life.says("my left knee hurts", NOW)
    assert kinds(parts)[0] == "safety"
    assert life.alert_reasons[-1:] == ["pain"]
    assert asked(parts) == ("unit" if step == "readiness" else step)
    assert (life.state.memory.clearance is not None) == (step == "readiness")


def test_a_yes_on_readiness_keeps_from_training_until_the_coach_releases_it() -> None:
    life = joining_at("readiness")
    assert "doctor first" in notices(life.says("2", NOW))
    assert kinds(life.to_coach) == ["to be released"]
    for answer in ("kg", "Lisbon", "7", "skip"):
        parts = life.says(answer, NOW)
    assert notices(parts) == ["waits for doctor"]
    assert life.passes_to(at(20)) == []
    assert notices(life.says("what's the plan?", at(20))) == ["waits for doctor"]
    parts = life.hears(Released(coach=MARA.number), at(21))
    assert notices(parts) == ["may begin"]
    assert asked(parts) == "first day"
    assert kinds(life.to_coach) == ["released"]
    life.says("tomorrow", at(21))
    assert "reminder" in kinds(life.passes_to(at(22)))


def test_only_the_own_coach_releases_and_only_once() -> None:
    life = joining_at("readiness")
    life.says("2", NOW)
    life.hears(Released(coach=99), NOW)
    assert is_barred(life)
    life.hears(Released(coach=MARA.number), NOW)
    assert not is_barred(life)
    life.hears(Released(coach=MARA.number), NOW)
    assert kinds(life.to_coach) == ["already settled"]


def is_barred(life: Life) -> bool:
    return life.state.memory.barred


def test_a_warning_sign_and_a_yes_on_readiness_are_released_one_by_one() -> None:
    life = joining_at("readiness")
    life.says("1", NOW)
    life.says("I have chest pain", NOW)
    (alert,) = life.state.alerts
    life.hears(Decided(coach=MARA.number, alert=alert.number, remedy="let train"), NOW)
    assert life.state.memory.barred
    assert kinds(life.to_coach) == ["settled", "to be released"]
    life.hears(Released(coach=MARA.number), NOW)
    assert not life.state.memory.barred


def test_an_open_question_is_reminded_of_once_a_day_later_and_not_where_it_was_refused() -> None:
    life = joining_at("unit")
    assert kinds(life.passes_to(NOW + timedelta(hours=23))) == []
    assert kinds(life.passes_to(NOW + timedelta(hours=24))) == ["still there", "question"]
    assert life.passes_to(NOW + timedelta(days=30)) == []
    assert asked(life.says("kg", NOW + timedelta(days=30))) == "zone"
    refused = joining_at("consent")
    refused.says("no", NOW)
    assert refused.passes_to(NOW + timedelta(days=30)) == []
    assert kinds(refused.to_coach) == ["client agreed not"]
    assert asked(refused.says("yes", NOW + timedelta(days=30))) == "age"


def test_a_setting_told_early_is_not_asked_for_again() -> None:
    life = joining_at("unit")
    life.says("remind me at half past six", NOW)
    life.says("I'm in Madrid", NOW)
    assert asked(life.says("lb", NOW)) == "equipment"


def test_an_answer_said_back_wrongly_is_asked_for_again() -> None:
    life = joining_at("zone")
    life.says("Lisbon", NOW)
    assert asked(life.says("no", NOW)) == "zone"
    life.says("Porto", NOW)
    assert asked(life.says("that's wrong", NOW)) == "zone"


def test_the_zone_of_a_time_is_one_of_the_country_named_before() -> None:
    life = joining_at("zone")
    assert asked(life.says("USA", NOW)) == "zone"
    life.says("12:40 here", NOW)
    assert life.state.client.zone == "America/New_York"


LATER = [
    ("I have no leg press any more", "Leg extension"),
    ("my gym has no leg press", "Leg extension"),
    ("the leg press is gone", "Leg extension"),
]


@pytest.mark.parametrize(("said", "instead"), LATER)
def test_equipment_that_is_there_no_longer_brings_the_alternative(said: str, instead: str) -> None:
    life = Life(noor(LEG_PRESS))
    life.says("row 60x9\nrdl 80x8\n14x11", at(2))
    life.says(said, at(3))
    plan = next(part for part in life.says("what's next?", at(5)) if isinstance(part, Plan))
    assert instead in [line.exercise for line in plan.lines]
    life.says("I have a leg press again", at(5))
    plan = next(part for part in life.says("what's next?", at(5)) if isinstance(part, Plan))
    assert "Leg press" in [line.exercise for line in plan.lines]


def test_the_coach_hears_where_the_sheet_has_nothing_instead() -> None:
    life = Life(noor(LEG_PRESS.replace("   no leg press: Leg extension, 10-15 reps\n", "")))
    life.says("I have no leg press any more", at(2))
    assert kinds(life.to_coach) == ["nothing instead"]


@pytest.mark.parametrize(
    "said",
    [
        "I have been diagnosed with diabetes",
        "I'm pregnant",
        "I had a heart attack",
        "I now have a heart condition",
    ],
)
def test_an_illness_found_later_goes_to_a_doctor_first_too(said: str) -> None:
    life = Life()
    life.says(said, at(2))
    assert life.state.memory.barred
    assert isinstance(life.state.memory.clearance, Clearance) or life.alert_reasons == ["urgent"]


def test_the_first_day_can_be_changed_until_the_first_workout() -> None:
    life = Life()
    life.says("I'd like to start on Thursday", at(1))
    assert life.state.client.starts.isoformat() == "2026-03-05"


ODD_WORDS = """
yes; no; ok; none; None of these; 1; 2 and 3; not sure; 18; 17; I'm 34; kg; lb; Lisbon; USA; it's 7:10
here; 7; skip; half past six; back; wrong; today; tomorrow; I use pounds; I'm in Madrid; remind me at 7;
I have no barbell; row 60x9; undo; help; my knee hurts; I have chest pain right now; what's next?; stop
messages; I'm back; I have diabetes; why?; I am her mother and I agree; my mum will agree; can you check
my form?; away till the 14th; Yes, I agree; Under 18; what do you store?; move it to Thursday; ;
"""
ODD = st.sampled_from([each.strip() for each in ODD_WORDS.split(";")])


@settings(max_examples=150, deadline=None)
@given(st.lists(st.tuples(ODD, st.integers(0, 30)), max_size=25))
def test_no_order_of_odd_answers_passes_over_the_agreement_or_the_readiness(
    story: list[tuple[str, int]],
) -> None:
    life, now = Life(newcomer()), NOW
    life.wake_at = now
    answered_ready = asked_ready = False
    for said, hours in story:
        now += timedelta(hours=hours)
        parts = [*life.passes_to(now), *(heard := life.says(said, now))]
        done = settled(life)
        assert done[:1] in {(), ("consent",)}
        if asked_ready and (readiness_of(said) is not None or "safety" in kinds(heard)):
            answered_ready = True
        asked_ready = asked(heard) == "readiness"
        memory = life.state.memory
        assert ("consent" in done) == (memory.agreed_at is not None)
        if "readiness" in done:
            assert answered_ready
            assert "consent" in done
            assert "age" in done
        if memory.joining is not None or memory.clearance is not None:
            assert not any(isinstance(part, Plan | Reminder | TargetPart) for part in parts)
            assert life.state.entries == ()
        if memory.clearance is not None:
            assert memory.barred


ANYTHING: st.SearchStrategy[FromChat | FromCoach] = st.one_of(
    ODD.map(lambda said: Text(text=said)),
    st.text(max_size=30).map(lambda said: Text(text=said)),
    st.just(Released(coach=MARA.number)),
    st.just(Started()),
)


@settings(max_examples=80, deadline=None)
@given(st.lists(ANYTHING, max_size=15))
def test_who_is_joining_is_always_answered(story: list[FromChat | FromCoach]) -> None:
    life = Life(newcomer())
    life.wake_at = NOW
    for incoming in story:
        parts = life.hears(incoming, NOW)
        assert parts or isinstance(incoming, Released)


TYPED_INSTEAD = (
    *("?", "🏋️", "....", "asdf qwerty", "привет", "۱۲۳", "x" * 5000, "0", "-1", "9999999999", "1e9", "80 x 8"),
    *(
        "maybe",
        "I don't know what to say",
        "none of your business",
        "yes no yes",
        "<b>yes</b>",
        "'; drop table",
    ),
    *("\n\n", "32 January", "25:99", "blorple", "no idea, sorry", "/plan", "/history", "undo"),
)
"""What people type where something else was asked."""
MEANT = (("zone", "-1"), ("readiness", "0"))
"""An offset from UTC, and that none of the four fits. Whatever else settles readiness leads to a doctor."""

NEVER_BY_ACCIDENT: tuple[JoiningStep, ...] = ("consent", "age", "guardian", "readiness", "unit", "zone")


@pytest.mark.parametrize("step", ORDER)
@pytest.mark.parametrize("odd", TYPED_INSTEAD, ids=lambda odd: repr(odd[:20]))
def test_bad_input_leaves_the_question_open_and_puts_it_once_more(step: JoiningStep, odd: str) -> None:
    life = joining_at(step)
    parts = life.says(odd, NOW)
    assert parts
    if step in NEVER_BY_ACCIDENT and (step, odd) not in MEANT:
        assert step not in settled(life) or life.state.memory.clearance is not None
    if step not in settled(life):
        assert asked(parts) == step
    assert not any(isinstance(part, Plan | TargetPart) for part in parts)


@pytest.mark.parametrize("step", ORDER)
@pytest.mark.parametrize(
    "odd",
    [Unsupported(what="photo"), Document(name="x.txt", text="yes"), Started(), Pressed(button="9:9")],
    ids=lambda odd: odd.kind,
)
def test_whatever_is_sent_instead_of_words_leaves_the_question_open(step: JoiningStep, odd: FromChat) -> None:
    life = joining_at(step)
    parts = life.hears(odd, NOW)
    assert step not in settled(life)
    assert asked(parts) == step


def test_a_slip_in_an_hour_is_no_set() -> None:
    life = joining_at("hour")
    assert asked(life.says("25:99", NOW)) == "hour"
    assert life.state.memory.joining is not None
    assert life.state.memory.joining.kept == ()


def test_the_coach_hears_once_of_who_stops_half_way() -> None:
    life = joining_at("zone")
    told: list[tuple[str, str]] = []
    for day in range(2, 28):
        while life.wake_at is not None and life.wake_at <= at(day, 20):
            moment = life.wake_at
            life.passes_to(moment)
            told += [(f"{moment:%d %H}", part.topic) for part in life.to_coach if isinstance(part, Notice)]
    assert told == [("03 17", "client half-way")]


def test_nobody_is_told_of_who_goes_on_in_time() -> None:
    life = joining_at("first day")
    life.says("tomorrow", at(2, 12))
    assert life.state.memory.joining is None
    while life.wake_at is not None and life.wake_at <= at(9):
        life.passes_to(life.wake_at)
        assert "client half-way" not in [part.topic for part in life.to_coach if isinstance(part, Notice)]


@pytest.mark.parametrize(
    "text", ["I'm actually 16", "sorry, I'm 17", "I am only 15 years old", "actually I'm 16"]
)
def test_who_turns_out_to_be_under_age_needs_a_guardian_before_training_goes_on(text: str) -> None:
    life = joining_at("first day")
    life.says("tomorrow", NOW)
    parts = life.says(text, NOW + timedelta(hours=1))
    assert notices(parts) == ["minor after all"]
    assert asked(parts) == "guardian"
    assert [part.topic for part in life.to_coach if isinstance(part, Notice)] == ["client is minor after all"]
    assert not any(isinstance(part, Plan | Reminder) for part in life.passes_to(at(6)))
    life.says("I am her mother and I agree", at(6, 12))
    assert life.state.memory.joining is None
    assert life.state.memory.guardian_said == "I am her mother and I agree"


@pytest.mark.parametrize("text", ["I'm 34", "I'm 18", "I'm 16 reps in", "row 80x16", "I'm 5"])
def test_what_says_no_such_age_changes_nothing(text: str) -> None:
    life = joining_at("first day")
    life.says("tomorrow", NOW)
    life.says(text, NOW + timedelta(hours=1))
    assert life.state.memory.joining is None
