"""What a coach's digest has of this client's journal: reckoned anew with each decision that touches it.

What came with an old journal is what later workouts are held against, and never counted itself.
"""

from collections import Counter, defaultdict
from collections.abc import Iterator
from datetime import date, timedelta
from decimal import Decimal
from functools import lru_cache

from domain.client.draft import Draft
from domain.client.exposures import exposures_by_exercise
from domain.client.lines import hold_on, line_named, lines_of
from domain.client.plan import body_mass_kg, can_be_eased, target_for
from domain.client.rotation import BESIDE
from domain.client.verdicts import is_lighter, was_eased
from domain.entry_order import within
from domain.exercises import describe
from domain.exposure import Exposure
from domain.journal import WorkoutRecord
from domain.state import ClientState
from domain.tally import ClientTally, Counts, RemedyResult, Unbeaten, WorkoutCounts
from domain.verdict import Verdict, judge

DAYS_KEPT = 35
"""How far back the counts go, so that a digest that comes late still has its days. The house's own choice."""

IN_A_ROW = 3
"""From how many workouts in a row without a beat on an exercise is one that a digest names. The house's own
choice."""

LOOKED_BACK = 24
"""How many of the last exposures are looked at for that. The house's own choice."""

Past = list[tuple[WorkoutRecord, Exposure]]
"""The exposures of one exercise in the workouts of one name, oldest first."""


def keep_tally(draft: Draft) -> None:
    """Reckon it anew where the journal, the programme or what is aside has changed."""
    now, before = draft.state, draft.start
    is_same = (
        now.entries is before.entries
        and now.workouts is before.workouts
        and now.holds is before.holds
        and now.client.programme is before.client.programme
        and now.memory.tried is before.memory.tried
        and now.memory.brought_in is before.memory.brought_in
    )
    if draft.memory.tally is None or not is_same:
        tally = tally_of(draft.state, draft.today)
        if tally != draft.memory.tally:
            draft.remember(tally=tally)


def tally_of(state: ClientState, today: date) -> ClientTally:
    """Return the counts of the weeks up to the client's day `today`, and what is longest not beaten."""
    since = today - timedelta(days=DAYS_KEPT)
    courses = list(courses_of(state))
    results: defaultdict[int, Counter[str]] = defaultdict(Counter)
    for past in courses:
        for place, (record, _) in enumerate(past):
            if record.on >= since and not is_brought_in(state, record):
                results[record.number][result_at(state, past, place)] += 1
    counted = (
        WorkoutCounts(on=each.on, counts=counts_of(each, results[each.number]))
        for each in state.workouts
        if each.on >= since and not is_brought_in(state, each)
    )
    longest = max(unbeaten(state, courses), key=lambda each: each.workouts, default=None)
    return ClientTally(
        workouts=tuple(each for each in counted if each.counts != Counts()),
        longest=longest,
        done=tuple(sorted((past[0][0].name, past[0][1].exercise) for past in courses)),
        remedies=tuple(
            RemedyResult(remedy=each.remedy, worked=each.result == "worked", on=each.looked_on)
            for each in state.memory.tried
            if each.result in {"worked", "did not"} and each.looked_on is not None and each.looked_on >= since
        ),
    )


def is_brought_in(state: ClientState, record: WorkoutRecord) -> bool:
    """Return whether a workout came with an old journal."""
    return any(within(record.number, each.workouts) for each in state.memory.brought_in)


def counts_of(record: WorkoutRecord, results: Counter[str]) -> Counts:
    """Return the counts of one workout; what is beside the programme was never due."""
    is_done = record.state in {"open", "done"} and results.total() > 0
    is_due = record.name != BESIDE and (is_done or record.state in {"missed", "skipped"})
    named = {result.replace(" ", "_"): count for result, count in results.items()}
    return Counts(due=int(is_due), done=int(is_due and is_done), **named)


def courses_of(state: ClientState) -> Iterator[Past]:
    """Give each exercise in the workouts of each name: what is compared with one another."""
    for done in exposures_by_exercise(state).values():
        by_name: defaultdict[str, Past] = defaultdict(list)
        for record, exposure in done:
            by_name[record.name].append((record, exposure))
        yield from by_name.values()


def result_at(state: ClientState, past: Past, place: int) -> str:
    """Return the verdict on the exposure at that place of a course; none is drawn where it was to be lighter.

    Of what lies before the last one, only lowering-only exposures can decide, so that no others are gone
    through.
    """
    before = [exposure for _, exposure in past[:place]]
    deciding = (*(each for each in before[:-1] if each.lowering_only), *before[-1:], past[place][1])
    verdict = _verdict(deciding, body_mass_kg(state))
    if verdict.result == "below" and is_eased_at(state, past, place, verdict):
        return "not comparable"
    return verdict.result


def is_eased_at(state: ClientState, past: Past, place: int, verdict: Verdict) -> bool:
    """Return whether the exposure at that place was lighter on purpose, as far as the plans still tell.

    Most were not, be it that they were not lighter, or that nothing would have eased them: their targets are
    not reckoned.
    """
    record, exposure = past[place]
    until = tuple(each for _, each in past[: place + 1])
    if not is_lighter(verdict) or not can_be_eased(state, exposure.exercise, until[:-1], record.on):
        return False
    line = line_named(state, record.name, exposure.exercise)
    aim = target_for(state, line, until[:-1], record.on) if line is not None else None
    return was_eased(state, until, verdict, aim)


@lru_cache(maxsize=8192)
def _verdict(deciding: tuple[Exposure, ...], mass: Decimal | None) -> Verdict:
    """Return the verdict on the last of these exposures: most are asked for again with each decision.

    It is no word on a personal best, for which all that lies before would have to be there.
    """
    *earlier, now = deciding
    about = describe(now.exercise)
    return judge(
        now,
        earlier[-1] if earlier else None,
        tuple(earlier[:-1]),
        body_mass_kg=mass,
        body_share=about.body_share,
        joints=about.joints,
    )


def unbeaten(state: ClientState, courses: list[Past]) -> Iterator[Unbeaten]:
    """Give each exercise of the present sheet, and not aside, that was not beaten for some workouts."""
    stored = state.client.programme
    planned = {
        (each.name, line.exercise)
        for each in (stored.programme.workouts if stored else ())
        for line in lines_of(state, each.name)
    }
    for past in courses:
        record, exposure = past[-1]
        if (record.name, exposure.exercise) not in planned or hold_on(state, exposure.exercise) is not None:
            continue
        if is_brought_in(state, record):
            continue
        first = len(past)
        while first > max(0, len(past) - LOOKED_BACK) and result_at(state, past, first - 1) in NOT_BEATEN:
            first -= 1
        if len(past) - first >= IN_A_ROW:
            yield Unbeaten(exercise=exposure.exercise, workouts=len(past) - first, since=past[first][0].on)


NOT_BEATEN = frozenset({"level", "below"})
"""Verdicts that are no beat; what cannot be compared, or comes for the first time, begins anew."""
