"""Whether an exposure beat the last one of its kind.

A set that beats all sets of the other side decides. Where there is none, the best sets are level, and the
sets are gone through in order; the first that differs decides. How set is compared with set stands in
`domain.comparison`.
"""

from dataclasses import dataclass
from decimal import Decimal

from domain.comparison import (
    Body,
    Comparison,
    FirstOfKind,
    NoRep,
    Reason,
    Result,
    UpTheLadder,
    best_of,
    compare,
)
from domain.exercises import Joint
from domain.exposure import Exposure
from domain.sets import TrainingSet


@dataclass(frozen=True, slots=True)
class Verdict:
    """This exposure against the last one of its kind.

    `set` is the deciding set of now and `before` its opposite number. `in_order` is set against set in the
    order done, to say where something was gained or lost. `personal_best`: better than every exposure of
    its kind so far.
    """

    result: Result
    exercise: str
    set: TrainingSet
    before: TrainingSet | None
    reason: Reason
    personal_best: bool
    in_order: tuple[Comparison, ...] = ()


def judge(
    now: Exposure,
    before: Exposure | None,
    earlier: tuple[Exposure, ...] = (),
    *,
    body_mass_kg: Decimal | None = None,
    body_share: Decimal | None = None,
    joints: tuple[Joint, ...] = (),
) -> Verdict:
    """Return the verdict on `now` against `before`, the last exposure of the same exercise and workout.

    `earlier` are exposures before that, oldest first: they tell a personal best, and where the client went
    down from full to lowering-only reps, the last lowering-only ones are taken from there. An exposure of
    another kind (an alternative, another workout) is nothing to compare with. `body_mass_kg` is the latest
    one, used for both. `joints` are those that the exercise loads, for holds of different loads.
    """
    body = Body(body_mass_kg, body_share, joints)
    if before is not None and now.lowering_only and not before.lowering_only:
        before = next((each for each in reversed(earlier) if each.kind == now.kind), None)
    if before is None or now.kind._replace(lowering_only=before.lowering_only) != before.kind:
        return Verdict(
            "first", now.exercise, best_of(now.counting, body), None, FirstOfKind(), personal_best=False
        )

    in_order = tuple(
        compare(mine, theirs, body) for mine, theirs in zip(now.counting, before.counting, strict=False)
    )
    if before.lowering_only and not now.lowering_only:
        decided = _up_the_ladder(best_of(now.counting, body), best_of(before.counting, body))
        in_order = ()
    else:
        decided = _decide(now, before, body, in_order)
    rivals = [each for each in (*earlier, before) if each.kind == now.kind]
    return Verdict(
        decided.result,
        now.exercise,
        decided.now,
        decided.before,
        decided.reason,
        personal_best=decided.result == "beat"
        and all(_decide(now, rival, body).result == "beat" for rival in rivals),
        in_order=in_order,
    )


def _up_the_ladder(now: TrainingSet, before: TrainingSet) -> Comparison:
    if now.amount == 0:
        return Comparison("not comparable", now, before, NoRep())
    return Comparison("beat", now, before, UpTheLadder(now.amount))


def _decide(
    now: Exposure, before: Exposure, body: Body, in_order: tuple[Comparison, ...] | None = None
) -> Comparison:
    """Return the comparison that decides between two exposures of one kind."""
    mine, theirs = now.counting, before.counting
    best = compare(best_of(mine, body), best_of(theirs, body), body)
    for one in (best.now, *mine):
        if all(compare(one, other, body).result == "beat" for other in theirs):
            return compare(one, best.before, body)
    for other in (best.before, *theirs):
        if all(compare(one, other, body).result == "below" for one in mine):
            return compare(best.now, other, body)
    if in_order is None:
        in_order = tuple(compare(one, other, body) for one, other in zip(mine, theirs, strict=False))
    first = next((each for each in in_order if each.result in ("beat", "below")), None)
    if first is not None:
        return first
    if best.result not in ("beat", "below"):
        return best
    # The best sets differ and yet settle nothing: some other set is level, or cannot be compared.
    against = (
        [compare(best.now, other, body) for other in theirs]
        if best.result == "beat"
        else [compare(one, best.before, body) for one in mine]
    )
    return next((each for each in against if each.result in ("level", "not comparable")), best)
