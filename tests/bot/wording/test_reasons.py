"""Every reason of a verdict and of a target has words, for the client who asks why and for the coach."""

from dataclasses import fields
from decimal import Decimal
from typing import cast, get_args

import pytest

from bot.markup import plain
from bot.wording.message import message_words
from bot.wording.reader import NO_BREAK, Reader
from bot.wording.reasons import aim_note, none_because, strength_words, target_because, verdict_because
from bot.wording.why import judged_words
from domain import comparison, target_reasons
from domain.exercises import Joint, describe
from domain.explanation import Aimed, Explanation
from domain.parts import Notice
from domain.programme import Range
from domain.target import Target, next_target
from domain.units import Unit
from domain.values import facts_of
from domain.verdict import Verdict, judge
from tests.domain.sheet_cells import equipped, prescribed
from tests.domain.tables import Case, exposures, read_cases, sets

READER = Reader("Noor", "Europe/Amsterdam", "kg")
COACH = Reader("Mara", "Europe/Lisbon", "kg", is_coach=True)


def judged(case: Case) -> Verdict:
    """Return the verdict of a row of the table of verdicts."""
    past = exposures(case.get("before"))
    (now,) = exposures(case["now"])
    mass, share, joints = case.get("body mass"), case.get("share"), case.get("joints")
    return judge(
        now,
        past[-1] if past else None,
        past[:-1],
        body_mass_kg=Decimal(mass) if mass else None,
        body_share=Decimal(share) if share else None,
        joints=cast("tuple[Joint, ...]", tuple(joints.split(", "))) if joints else (),
    )


def aimed(case: Case) -> Aimed:
    """Return what is aimed for in a row of the table of targets."""
    unit: Unit = "lb" if " lb" in case["aim"] else "kg"
    prescription, held, easing = prescribed(case["sheet"], case["exercise"])
    past = exposures(case.get("done"), case["exercise"], unit)
    other, body_mass, away = case.get("other"), case.get("body mass"), case.get("away")
    target = next_target(
        prescription,
        past,
        unit=unit,
        equipment=equipped(case.get("equipment"), unit),
        exercise=describe(case["exercise"]),
        body_mass_kg=Decimal(body_mass) if body_mass else None,
        last_of_other=sets(other)[-1] if other else None,
        held=held,
        easing=easing,
        days_away=int(away.split(maxsplit=1)[0]) if away else 0,
    )
    return Aimed("next time", target, prescription.range, last=past[-1].counting[-1] if past else None)


VERDICTS = read_cases("verdicts.md")
TARGETS = read_cases("targets.md")


def is_said_well(said: str) -> bool:
    """Return whether words are one line without anything that was not meant for people."""
    return bool(said) and not any(each in said for each in ("None", "{", "\n", "  ", "Decimal", "E+", "e-"))


@pytest.mark.parametrize("case", VERDICTS, ids=lambda case: case.place)
def test_the_reason_of_every_verdict_is_one_plain_line(case: Case) -> None:
    verdict = judged(case)
    said = verdict_because(verdict.result, verdict.set, verdict.before, verdict.reason)
    assert is_said_well(said)
    assert said.startswith("nothing") or said.endswith(("a beat", "level", "below", "do not call it"))


@pytest.mark.parametrize("case", TARGETS, ids=lambda case: case.place)
def test_the_reason_of_every_target_is_one_plain_line(case: Case) -> None:
    aim = aimed(case)
    assert is_said_well(target_because(aim))
    if isinstance(aim.target, Target):
        note = aim_note(aim.target.reason, aim.target.as_set(), lighter=True)
        assert note == "" or is_said_well(note)


BESIDE_TABLES: tuple[target_reasons.TargetReason, ...] = (
    target_reasons.BuildBack(8, Decimal(80), 6.7),
    target_reasons.Eased(Decimal("0.9"), after_illness=True),
)
"""Reasons that need more of a history than a row of the table has."""


@pytest.mark.parametrize("reason", BESIDE_TABLES)
def test_reasons_of_the_way_back_are_one_plain_line(reason: target_reasons.TargetReason) -> None:
    last = sets("75 kg x 8")[0]
    target = Target("Bench press", Decimal(80), "kg", "total", 6, None, lowering_only=False, reason=reason)
    assert is_said_well(target_because(Aimed("next time", target, Range(low=6, high=8), last)))


def test_every_kind_of_reason_has_been_said() -> None:
    """Those of the tables, and those beside them: the tests above have heard the words of each."""
    verdicts = {type(judged(case).reason) for case in VERDICTS}
    targets = {type(aimed(case).target.reason) for case in TARGETS} | {type(each) for each in BESIDE_TABLES}
    assert verdicts == set(get_args(comparison.Reason))
    assert targets >= set(get_args(target_reasons.TargetReason))
    for kind in get_args(target_reasons.NoTargetReason):
        made = kind("Goblet squat") if "exercise" in {each.name for each in fields(kind)} else kind()
        assert is_said_well(none_because(made))


@pytest.mark.parametrize("case", [*VERDICTS, *TARGETS], ids=lambda case: case.place)
def test_an_explanation_survives_the_outbox(case: Case) -> None:
    """It is stored as plain JSON and said from that, by the same rules and numbers."""
    explanation = (
        Explanation("Row", verdict=judged(case))
        if "now" in case.columns
        else Explanation("Row", aimed=aimed(case))
    )
    notice = Notice(topic="why", facts={"explanation": facts_of(explanation)})
    stored = Notice.model_validate_json(notice.model_dump_json())
    said = plain(message_words((stored,), READER))
    if explanation.verdict is not None:
        assert said == f"Row\n{plain(judged_words(explanation.verdict))}"
    elif explanation.aimed is not None:
        assert plain(target_because(explanation.aimed)) in said


@pytest.mark.parametrize(
    ("before", "now", "said"),
    [
        ("77.5 kg x 9", "80 kg x 8", ("by the usual estimate, worth 101.3 against 100.8 kg for one rep; the "
         "difference is less than the 2.7 kg of a rep, so level")),
        ("175 lb x 8", "185 lb x 4", ("by the usual estimate, worth 209.7 against 221.7 lb for one rep, "
         "so below")),
        ("60 kg x 12", "62.5 kg x 10", ("2.5 kg more but 2 reps fewer; what weighs one against the other was "
         "tested from 1 to 10 reps only, so I do not call it")),
        ("80 kg x 8", "80 kg x 9", "the same load and 1 rep more, so a beat"),
        ("80 kg x 8", "80 kg x 8", "the same load and as many reps, so level"),
        ("80 kg x 8", "77.5 kg x 8", "2.5 kg less and as many reps, so below"),
        ("help 20 kg x 8", "help 15 kg x 9", "5 kg less help and 1 rep more, so a beat"),
        ("each 20 kg x 8", "each 22 kg x 8", "2 kg more in each hand and as many reps, so a beat"),
        ("body lowering x 6", "body x 2", "full reps, where last time they were lowering-only, so a beat"),
    ],
)  # fmt: skip
def test_a_verdict_is_told_with_its_rule_and_its_numbers(before: str, now: str, said: str) -> None:
    """In the unit of the set; the numbers are worked by hand: load x (1 + reps / 30), by Epley."""
    (past,), (mine,) = exposures(before), exposures(now)
    verdict = judge(mine, past)
    words = verdict_because(verdict.result, verdict.set, verdict.before, verdict.reason)
    assert words.replace(NO_BREAK, " ") == said


@pytest.mark.parametrize(
    ("sheet", "done", "said"),
    [
        ("6-8", "80 kg x 8", ("with 8 reps at the top of 6–8, so the smallest step up that fits, 2.5 kg more "
         "(3.1%)")),
        ("6-8", "80 kg x 7", "with 7 reps inside 6–8, so the same load and one rep more"),
        ("6-8", "80 kg x 8 then 80 kg x 5", ("with 5 reps under 6–8, so the same load once more, back up "
         "to it")),
        ("6-8", "80 kg x 5 then 80 kg x 5", "under 6–8 twice running, so a load for the middle of it"),
    ],
)  # fmt: skip
def test_a_target_is_told_with_its_rule_and_its_numbers(sheet: str, done: str, said: str) -> None:
    row = {"exercise": "Bench press", "sheet": sheet, "done": done, "aim": "80 kg x 8"}
    words = target_because(aimed(Case("here", row)))
    assert words.replace(NO_BREAK, " ").startswith(said)


@pytest.mark.parametrize(
    ("least", "greatest", "said"),
    [
        (0.96, 0.97, "3 to 4% less strength"),
        (0.97, 1.02, "between 3% less and 2% more strength"),
        (1.03, 1.03, "3% more strength"),
        (1.02, 1.05, "2 to 5% more strength"),
    ],
)
def test_the_change_in_strength_by_holds_is_said_between_its_bounds(
    least: float, greatest: float, said: str
) -> None:
    assert strength_words(least, greatest) == said


def test_a_hold_is_the_matter_of_the_coach_and_a_professional() -> None:
    held = Notice(topic="why", facts={"explanation": facts_of(Explanation("Row", held=("knee", "left")))})
    said = plain(message_words((held,), READER))
    assert "on hold because of your left knee" in said
    assert "your coach and a qualified professional (a doctor or a physiotherapist)" in said
    assert "of the left knee, until you put it back" in plain(message_words((held,), COACH))
