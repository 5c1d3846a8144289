"""What a verdict and a target say, read as a client between two sets reads it."""

from decimal import Decimal

import pytest

from bot.markup import plain
from bot.wording.reader import NO_BREAK
from bot.wording.training import target_words
from bot.wording.verdict import verdict_words
from domain.parts import TargetPart, VerdictPart
from domain.target_reasons import (
    AddLoad,
    BackIntoRange,
    DownTheLadder,
    Eased,
    LowerLoad,
    MoreFirst,
    OneMore,
    OtherSets,
    Relative,
    TargetReason,
)
from domain.verdict import judge
from tests.domain.tables import exposures


def said_of(before: str | None, now: str, *, told: int = 0, mass: int | None = None) -> str:
    """Return the words of the verdict, of which `told` sets have been told of before."""
    past, (mine,) = exposures(before), exposures(now)
    verdict = judge(
        mine,
        past[-1] if past else None,
        past[:-1],
        body_mass_kg=Decimal(mass) if mass else None,
        body_share=Decimal(1),
    )
    part = VerdictPart(
        exercise=verdict.exercise,
        result=verdict.result,
        set=verdict.set,
        before=verdict.before,
        recorded=mine.sets[told:],
        sets_before=told,
        personal_best=verdict.personal_best,
        reason=verdict.reason,
        in_order=verdict.in_order,
    )
    _echo, _, words = plain(verdict_words(part)).replace(NO_BREAK, " ").partition("\n")
    return words


@pytest.mark.parametrize(
    ("before", "now", "said"),
    [
        (None, "80 kg x 8", "First one of its kind: that is the mark to beat."),
        ("80 kg x 8", "80 kg x 9", "Beat last time (80 kg × 8) by 1 rep. Your best ever."),
        ("80 kg x 9 then 80 kg x 7", "80 kg x 8", "Beat last time (80 kg × 7) by 1 rep."),
        ("80 kg x 8", "80 kg x 8", "Level with last time (80 kg × 8)."),
        ("80 kg x 8", "80 kg x 6", "Below last time (80 kg × 8) by 2 reps."),
        ("40 kg for 30 s", "40 kg for 31 s", "Beat last time (40 kg for 30 s) by 1 second. Your best ever."),
        ("80 kg x 8", "82.5 kg x 8", "Beat last time (80 kg × 8), with more load. Your best ever."),
        (
            "help 20 kg x 8",
            "help 15 kg x 8",
            ("Beat last time (20 kg of help × 8), with less help. Your best ever."),
        ),
        ("80 kg x 8", "82.5 kg x 7", "Level with last time (80 kg × 8), load and reps taken together."),
        (
            "lowering x 8",
            "body x 2",
            ("Beat last time (8 lowering-only reps), with full reps. Your best ever."),
        ),
        (
            "20 kg x 25",
            "25 kg x 16",
            ("5 kg more but 9 reps fewer than last time (20 kg × 25): too far apart to say which is more."),
        ),
        (
            "body x 12",
            "+10 kg x 8",
            (
                "10 kg more but 4 reps fewer than last time (12 reps): without your body "
                "weight I cannot say which is more."
            ),
        ),
        (
            "30 kg x 8",
            "each 15 kg x 8",
            (
                "Last time (30 kg × 8) the load was counted as the whole load, now "
                "per hand: I cannot compare the two."
            ),
        ),
    ],
)
def test_a_verdict_says_what_is_plain(before: str | None, now: str, said: str) -> None:
    """Never a beat that was none; where nothing can be said, the plain facts and why."""
    before = before.replace("lowering x", "body lowering x") if before else None
    assert said_of(before, now) == said


@pytest.mark.parametrize(
    ("before", "now", "where"),
    [
        ("80 kg x 8", "80 kg x 9", ""),
        ("80 kg x 8, 8", "80 kg x 9, 9", ""),
        ("80 kg x 8, 8", "80 kg x 9, 6", "Set by set: 1 rep up, 2 reps down."),
        ("80 kg x 8, 8, 7", "80 kg x 8, 8, 9", "Set by set: level, level, 2 reps up."),
        ("80 kg x 8, 8", "82.5 kg x 8; 77.5 kg x 7", "Set by set: up, down."),
        ("80 kg x 8, 8, 8", "80 kg x 9", ""),
        ("40 kg for 30, 30 s", "40 kg for 35, 30 s", "Set by set: 5 seconds up, level."),
    ],
)
def test_of_several_sets_it_is_said_where_it_was_gained_or_lost(before: str, now: str, where: str) -> None:
    assert where in said_of(before, now)
    assert where or "Set by set" not in said_of(before, now)


def test_a_beat_told_before_is_not_cheered_again_for_the_sets_after_it() -> None:
    """Who then does fewer reps hears that the first set stays the beat, and where something was lost."""
    assert said_of("80 kg x 8, 8", "80 kg x 9, 6", told=1) == (
        "Still a beat on last time in set 1 (80 kg × 8) by 1 rep. Set by set: 1 rep up, 2 reps down."
    )


@pytest.mark.parametrize(
    ("before", "now", "told", "said"),
    [
        (
            "80 kg x 8, 7, 6",
            "80 kg x 8, 8",
            1,
            "Beat last time in set 2 (80 kg × 7) by 1 rep. Your best ever, ",
        ),
        (
            "80 kg x 8, 7, 6",
            "80 kg x 8, 8, 6",
            2,
            "Still a beat on last time in set 2 (80 kg × 7) by 1 rep. ",
        ),
        ("80 kg x 8, 8", "80 kg x 8, 6", 1, "Below last time in set 2 (80 kg × 8) by 2 reps. "),
        ("80 kg x 8, 7", "80 kg x 7, 9", 0, "Beat last time (80 kg × 8) by 1 rep. Your best ever. "),
    ],
)
def test_where_the_best_sets_are_level_it_is_said_which_set_decides(
    before: str, now: str, told: int, said: str
) -> None:
    """A beat in the second set is none of the best one of last time, and does not sound like it."""
    assert said_of(before, now, told=told).startswith(said)


@pytest.mark.parametrize(
    ("reason", "reps", "expected", "note"),
    [
        (OneMore(7), 8, None, ""),
        (AddLoad(8, 8, 3.1), 6, 6, "Fewer reps are normal at a new load."),
        (AddLoad(8, 8, 9.1), 6, 4, "The load is new: about 4 reps are fine to begin with."),
        (AddLoad(8, 8, 9.1), 6, 1, "The load is new: about 1 rep is fine to begin with."),
        (
            MoreFirst(12, Decimal(50), 11.1, 14),
            13,
            None,
            "More reps first: 50 kg, 11% more, comes after 14 reps.",
        ),
        (
            MoreFirst(6, Decimal(0), None, 7, "body"),
            7,
            None,
            "More reps first: body weight alone comes after 7 reps.",
        ),
        (
            MoreFirst(6, Decimal("17.5"), 5.0, 7, "assist"),
            7,
            None,
            "More reps first: 17.5 kg of help, 5% more, comes after 7 reps.",
        ),
        (OtherSets(6, 8), 8, None, "All sets up to 8 first, then more load."),
        (BackIntoRange(5, 6), 6, None, "Up to 6 first, the bottom of the range."),
        (LowerLoad(5, 6, 2), 7, None, "Under 6 twice running, so lighter."),
        (DownTheLadder(2, 4), 5, None, "Fewer than 4 full reps, so lowering-only ones for a time."),
        (Relative("Goblet squat", Decimal(30)), 8, None, "Lighter, as it goes by your last Goblet squat."),
        (Eased(Decimal("0.9")), 7, None, "Lighter on purpose, to build back from there."),
    ],
)
def test_an_aim_that_goes_down_stays_or_leaps_says_why(
    reason: TargetReason, reps: int, expected: int | None, note: str
) -> None:
    """Nobody should need to ask; between two sets it is kept short, unless a wrong load is put right."""
    part = TargetPart(
        exercise="Bench press",
        load=Decimal(80),
        unit="kg",
        load_kind="total",
        reps=reps,
        expected=expected,
        lighter=True,
        reason=reason,
    )
    said = plain(target_words(part)).replace(NO_BREAK, " ")
    assert said == f"Next time: 80 kg × {reps}." + (f" {note}" if note else "")
    between = part.model_copy(update={"when": "next set"})
    assert plain(target_words(between)).replace(NO_BREAK, " ") == f"Next set: 80 kg × {reps}."
    put_right = between.model_copy(update={"put_right": True})
    assert plain(target_words(put_right)).replace(NO_BREAK, " ") == said.replace("Next time", "Next set")
