"""The end of a workout: by its last set, by the client's word, or by itself once the day after is over.

Whichever it is, the client is told what was beaten and what not, what is next, and what to aim for then.
"""

from datetime import date

from domain.client.coming import put_off_for_rest
from domain.client.draft import Draft
from domain.client.exposures import history, moment
from domain.client.half_understood import unfinished_of
from domain.client.lines import hold_on, is_left_out, line_named, lines_of, sets_left
from domain.client.not_understood import ANSWERED_WITHIN
from domain.client.plan import ahead, target_for
from domain.client.rotation import BESIDE, due, open_workout
from domain.client.verdicts import is_on_target, verdict_on, was_eased
from domain.client.workouts import close
from domain.expressions import Expression
from domain.journal import WorkoutRecord
from domain.reading import Reading
from domain.values import facts_of

_OVER = (
    r"(?:(?:that'?s|that is|that was) (?:it|all|everything)(?: for (?:today|now|me|the day))?"
    r"|(?:i'?m |i am |we'?re |all )*(?:done|finished|through) (?:for (?:today|the day|now)|with (?:the|my) "
    r"(?:workout|training|session))|calling it (?:a day|quits)|(?:workout|session|training) (?:is )?"
    r"(?:done|over|finished|complete)|end of (?:the )?(?:workout|session|training)|(?:i'?m |i am )(?:all )?"
    r"(?:done|finished)|all done|(?:i |i'?m )?finish(?: (?:for )?today)?|that (?:was|is) the whole of it)"
)
_REST = r"(?:the rest|(?:any(?:thing)? )?(?:more|else)|all of it)"
_NOT_THE_REST = (
    r"(?:(?:(?:i )?(?:had |have |got )|there was |there is )?no (?:more )?(?:time|energy|strength|power)"
    rf"(?: left)? for {_REST}"
    rf"|(?:i )?(?:didn't|did not|couldn't|could not|won't|will not) (?:do|manage|finish|get to) {_REST}"
    r"|(?:i )?(?:am |'m )?(?:skip|skipped|skipping|leave|leaving|left|drop|dropped|dropping)(?: out)?"
    r" the rest(?: out)?"
    r"|(?:the )?rest (?:is |was |got )?(?:skipped|left out|dropped)"
    r"|(?:i )?(?:can't|cannot|cant) (?:do|manage) (?:any )?more"
    r"|(?:that(?:'s| is| was)|this (?:is|was)) all i (?:managed|could do|could manage|got done|had time for))"
    r"(?: (?:today|yesterday|this time|then))?"
)
_OVER = rf"(?:{_OVER}(?: (?:today|yesterday))?|{_NOT_THE_REST})"
_THANKS = Expression(r"(?:[ ,.!-]+(?:thx|thanks|thank you|ty|ta|cheers|pls|please|lol|mate|coach))+$")
_DONE = frozenset({"done", "finished", "all done", "complete", "completed", "done it", "done them", "did it"})
"""What is said of one exercise as well, while a workout is under way."""
_IS_OVER = Expression(rf"(?:(?:ok|okay|right|so|and|phew),? )?{_OVER}")
_REASON = r"(?:(?:[,;:.]| -) (?:because |since |as |cos )?|,? (?:because|since|as|cos|sorry) )[^\d?]{2,80}"
"""What can be said behind it where nothing else is wanted: "can't do more today, the kids are sick"."""
_IS_OVER_FOR = Expression(rf"(?:(?:ok|okay|right|so|and|phew|sorry),? )?{_OVER}{_REASON}")
_LEFT_THE_REST = Expression(rf"(?:^|\W){_NOT_THE_REST}(?:$|[,;:.] )")
_ENDS_OVER = Expression(rf"(?:^|[\n.,;!] ?|- |and )(?:and )?{_OVER}$")


def takes_end(draft: Draft, text: str, reading: Reading) -> bool:
    """Close the workout under way where `text` says nothing else, but for a reason; return whether it did."""
    opened, said = open_workout(draft.state), plain(text)
    is_plain = _IS_OVER.fullmatch(said) is not None
    if opened is None or not has_sets(draft, opened):
        return is_plain and answer_end(draft)
    gives_reason = not reading.wants and not reading.open and _IS_OVER_FOR.fullmatch(said) is not None
    if not is_plain and not gives_reason:
        return False
    finish(draft, opened, rest_told=_LEFT_THE_REST.search(said) is not None)
    return True


def answer_done(draft: Draft, text: str) -> bool:
    """Answer a bare "done" once nothing is under way any more; return whether it was one."""
    opened = open_workout(draft.state)
    is_over = opened is None or not has_sets(draft, opened)
    return is_over and plain(text) in _DONE and answer_end(draft)


def answer_end(draft: Draft) -> bool:
    """Answer word that a workout is over which has closed, or of which nothing stands; False without one."""
    coming = due(draft.state, draft.today)
    trained = any(each.set.on == draft.today for each in draft.state.entries)
    if draft.memory.barred or coming is None:
        return False
    if trained or coming.on > draft.today:
        draft.notice("missed noted", workout=coming.workout, on=max(coming.on, draft.today).isoformat())
    else:
        draft.notice("which sets then", on=draft.today.isoformat())
    return True


def end_with(draft: Draft, text: str) -> bool:
    """Close the workout under way where a message ends by saying that it is over; return whether it did."""
    opened = open_workout(draft.state)
    if opened is None or not has_sets(draft, opened) or draft.question("sets") is not None:
        return False
    if not _ENDS_OVER.search(plain(text)):
        return False
    finish(draft, opened, rest_told=_LEFT_THE_REST.search(plain(text)) is not None)
    return True


def plain(text: str) -> str:
    """Return what was typed without what makes no difference to it."""
    lines = (" ".join(line.casefold().replace("’", "'").split()) for line in text.splitlines())
    return _THANKS.sub("", "\n".join(line for line in lines if line).rstrip(".! ")).rstrip(".!, ")


def has_sets(draft: Draft, workout: WorkoutRecord) -> bool:
    """Return whether sets of that workout stand."""
    return any(entry.workout == workout.number for entry in draft.state.entries)


def finish(draft: Draft, workout: WorkoutRecord, *, rest_told: bool = False) -> None:
    """Close a workout and sum it up; the client may have told that the rest of it is left out."""
    if not draft.memory.barred:
        sum_up(draft, workout, rest_told=rest_told)
    close(draft, workout)


def sum_up_closed(draft: Draft) -> None:
    """Sum up the workout that has closed by itself, or by the next one's beginning, where there is one."""
    number = draft.memory.to_sum_up
    draft.remember(to_sum_up=None)
    workout = next((each for each in draft.state.workouts if each.number == number), None)
    if workout is not None and has_sets(draft, workout) and not draft.memory.barred:
        sum_up(draft, workout, closed=True)


def sum_up(draft: Draft, workout: WorkoutRecord, *, closed: bool = False, rest_told: bool = False) -> None:
    """Say what was beaten in a workout and what not, what of it was never told, and what comes next.

    What comes today is said by itself.
    """
    coming = due(draft.state, draft.today)
    if closed and (draft.message or (coming is not None and coming.on <= draft.today)):
        coming = None
    if coming is not None and draft.is_stale(coming.on):
        coming = None
    # What to aim for in the same workout again was said set by set.
    is_other = closed or (coming is not None and coming.workout != workout.name)
    results = results_in(draft, workout)
    draft.notice(
        "workout done",
        workout=workout.name,
        closed_of=workout.on.isoformat() if closed else None,
        beaten=[name for name, result in results if result == "beat"],
        as_aimed=[name for name, result in results if result == "as aimed"],
        not_beaten=[name for name, result in results if result in {"level", "below"}],
        untold=untold_in(draft, workout),
        rest_told=rest_told,
        next=coming.workout if coming else None,
        on=coming.on.isoformat() if coming else None,
        **put_off_for_rest(draft.state, coming),
        aims=aims_of(draft, coming.workout, coming.on) if coming and is_other else [],
    )


def results_in(draft: Draft, workout: WorkoutRecord) -> list[tuple[str, str]]:
    """Return each exercise done in that workout with its verdict; none of what hurts, or was eased.

    One that beat nothing because no more than that was to be aimed for is "as aimed".
    """
    state = draft.state
    names = dict.fromkeys(entry.set.exercise for entry in state.entries if entry.workout == workout.number)
    found: list[tuple[str, str]] = []
    for name in names:
        past = history(state, workout.name, name, until=workout)
        line = line_named(state, workout.name, name)
        if hold_on(state, name) is not None or not past or moment(workout)[0] != past[-1].on:
            continue
        verdict = verdict_on(state, past)
        aimed = target_for(state, line, past[:-1], workout.on) if line is not None and past[:-1] else None
        if not was_eased(state, past, verdict, aimed):
            as_aimed = verdict.result == "level" and is_on_target(verdict.set, aimed)
            found.append((name, "as aimed" if as_aimed else verdict.result))
    return found


def untold_in(draft: Draft, workout: WorkoutRecord) -> list[str]:
    """Return the exercises of that workout not wholly told of, but for those still asked about."""
    question = draft.question("sets")
    is_fresh = question is not None and draft.at - question.asked_at <= ANSWERED_WITHIN
    asked = {each.open.exercise for each in unfinished_of(question)} if is_fresh else set()
    return [
        line.exercise
        for line in lines_of(draft.state, workout.name)
        if sets_left(draft.state, workout, line) > 0 and line.exercise not in asked
    ]


def aims_of(draft: Draft, workout: str, on: date) -> list[object]:
    """Return what is to be aimed for in the workout to come, as far as there is something to aim for."""
    if workout == BESIDE:
        return []
    state = draft.state
    lines = [
        line
        for line in lines_of(state, workout)
        if not line.is_aside and not is_left_out(line, state.memory.left_out)
    ]
    aims = (ahead(state, workout, line, on, None) for line in lines)
    return [facts_of(aim.target) for aim in aims if aim.target is not None and aim.past]
