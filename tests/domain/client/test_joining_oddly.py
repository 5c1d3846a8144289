"""Bad and odd input at each of the first questions."""

from datetime import timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from domain.incoming import (
    Document,
    FromChat,
    FromCoach,
    Pressed,
    Released,
    Started,
    Text,
    Unsupported,
)
from domain.memory import JoiningStep
from domain.parts import Plan, Reminder, TargetPart
from domain.readiness import readiness_of
from tests.domain.client.newcomers import NOW, ORDER, asked, joining_at, newcomer, settled
from tests.domain.client.people import MARA, Life, kinds

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
