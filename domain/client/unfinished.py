"""Sets that were only half understood: what is asked about them, and what an answer makes of them.

One thing is asked at a time. The answer goes to every unfinished set of that exercise that lacks it; what is
whole then is recorded, and the rest is asked on. A message that is no answer leaves the question open: it is
asked once more after other sets came in, then waits. What was typed stays in the inbox whatever comes of it.
"""

from collections.abc import Callable, Sequence
from dataclasses import replace
from decimal import Decimal

from domain.client.choices import choices
from domain.client.draft import SET_SLOTS, Draft
from domain.client.exposures import sets_done
from domain.client.half_understood import Unfinished, about_sets, unfinished_of
from domain.client.lines import line_named
from domain.client.not_understood import drop_given_up, give_up, given_up
from domain.client.own_names import learn
from domain.client.recording import correct, record
from domain.client.understanding import known, request_for, says_a_day, workout_meant
from domain.client.workouts import day_told_of
from domain.expressions import Expression
from domain.hedged_answers import either_of, without_hedges
from domain.memory import Answered, Waiting
from domain.reading import OpenSet, Reading, Request, Slot, answer, read
from domain.sets import TrainingSet, is_within_reason
from domain.values import facts_of

ORDER: tuple[Slot, ...] = ("exercise", "date", "confirm", "unit", "load", "reps", "seconds")
"""In which order things are asked: what the others depend on comes first."""

AMOUNTS: frozenset[Slot] = frozenset({"load", "reps", "seconds"})
"""What is answered by a number, and asked once more where two are said."""

NO = frozenset({"no", "n", "nope", "no it is not", "no it wasn't", "wrong"})

NEVER_MIND = frozenset(
    {"never mind", "nevermind", "leave it", "skip it", "don't know", "no idea", "forget it"}
)

_NUMBER = Expression(r"\d+(?:[.,]\d+)?")


def ask_about(draft: Draft, reading: Reading, text: str, message: int) -> None:
    """Ask for what is missing of the sets in `reading`; numbers out of all reason are not asked about."""
    entries = known(draft)
    day = None if says_a_day(reading) else day_told_of(draft)
    unfinished = tuple(
        Unfinished(
            open=each if day is None or each.on is None else replace(each, on=day),
            message=message,
            text=text,
            entry=None if each.replaces is None else entries[each.replaces].number,
        )
        for each in reading.open
    )
    sensible = tuple(each for each in unfinished if can_be(each.open))
    if len(sensible) < len(unfinished):
        draft.notice("out of reason")
    if sensible:
        again = {each.open.exercise for each in sensible}
        older = unfinished_of(draft.question("sets"))
        ask_next(draft, (*sensible, *(each for each in older if each.open.exercise not in again)))


def can_be(open_set: OpenSet) -> bool:
    """Return whether an unfinished set, as far as it is known, can be what somebody did."""
    return is_within_reason(as_known(open_set)) and all(map(is_within_reason, open_set.candidates))


def as_known(open_set: OpenSet) -> TrainingSet:
    """Return an unfinished set as far as it is known, with a plain guess at the rest."""
    return TrainingSet(
        exercise=open_set.exercise or "",
        load=open_set.load or Decimal(0),
        unit=open_set.unit or "kg",
        load_kind=open_set.load_kind or "total",
        reps=open_set.reps,
        seconds=open_set.seconds,
        on=open_set.on,
    )


def ask_next(draft: Draft, unfinished: tuple[Unfinished, ...], offered: tuple[str, ...] = ()) -> None:
    """Ask for the first thing, in the house's order, that the sets of the latest message lack.

    `offered` are the answers for buttons, where it was said that it is one of them.
    """
    draft.drop_question(draft.question("sets"))
    if not unfinished:
        return
    of_message = tuple(each for each in unfinished if each.message == unfinished[0].message)
    slot = next(slot for slot in ORDER if asked_for(of_message, slot))
    asked = asked_for(of_message, slot)
    sets = tuple(each.open for each in asked)
    number = draft.memory.last_question + 1
    draft.ask(
        slot,
        about_sets(tuple(replace(each, question=number) if each in asked else each for each in unfinished)),
        {
            "text": asked[0].text,
            "open": facts_of(sets),
            "none_before": all(is_pointed_at_nothing(draft, each) for each in sets),
        },
        offered or choices(draft, slot, sets, asked[0].text),
    )


def is_pointed_at_nothing(draft: Draft, open_set: OpenSet) -> bool:
    """Return whether a set has no number of its own, nor any of its exercise to take them from."""
    has_number = open_set.load or open_set.bare or open_set.reps or open_set.seconds or open_set.candidates
    never = all(entry.set.exercise != open_set.exercise for entry in draft.state.entries)
    return open_set.exercise is not None and not has_number and never


def ask_again(draft: Draft) -> None:
    """After other sets came in, ask once more for what is still missing of earlier ones."""
    question = draft.question("sets")
    left = tuple(each for each in unfinished_of(question) if not is_told_otherwise(draft, each))
    if question is None or not left:
        draft.drop_question(question)
    elif question.again:
        give_up(draft, left)
    else:
        ask_next(draft, left)
        draft.remember(
            questions=tuple(
                each.model_copy(update={"again": True}) if each.slot in SET_SLOTS else each
                for each in draft.memory.questions
            )
        )


def is_told_otherwise(draft: Draft, unfinished: Unfinished) -> bool:
    """Return whether all sets of the exercise have come in since, this one among them."""
    name, workout = workout_meant(draft)
    line = line_named(draft.state, name, unfinished.open.exercise or "")
    if workout is None or line is None or unfinished.entry is not None:
        return False
    return sets_done(draft.state, workout, line.exercise) >= line.prescription.sets


def forget_unfinished(draft: Draft, message: int) -> None:
    """Ask no further about sets of that message."""
    drop_given_up(draft, lambda each: each.message == message)
    question = draft.question("sets")
    left = tuple(each for each in unfinished_of(question) if each.message != message)
    if question is None or len(left) == len(unfinished_of(question)):
        return
    if left:
        changed = question.model_copy(update={"about": about_sets(left)})
        draft.remember(
            questions=tuple(changed if each == question else each for each in draft.memory.questions)
        )
    else:
        draft.drop_question(question)


def first_of(draft: Draft, is_meant: Callable[[Unfinished], bool]) -> Waiting | None:
    """Return the question about sets as it is where those that are meant come first; None if there are none.

    What had been given up as not understood can still be answered.
    """
    question = draft.question("sets")
    waiting = unfinished_of(question)
    meant = tuple(each for each in waiting if is_meant(each)) or tuple(filter(is_meant, given_up(draft)))
    if not meant:
        return None
    of_message = tuple(each for each in meant if each.message == meant[0].message)
    others = tuple(each for each in waiting if each not in of_message)
    slot = next(slot for slot in ORDER if asked_for(of_message, slot))
    about = about_sets((*of_message, *others))
    if question is None:
        return Waiting(number=0, slot=slot, message=of_message[0].message, asked_at=draft.at, about=about)
    return question.model_copy(update={"slot": slot, "about": about})


def asked_for(unfinished: Sequence[Unfinished], slot: Slot) -> tuple[Unfinished, ...]:
    """Return the sets that lack `slot`, of the same message and exercise as the first of them."""
    lacking = [each for each in unfinished if slot in each.open.asks]
    return tuple(
        each
        for each in lacking
        if (each.message, each.open.exercise) == (lacking[0].message, lacking[0].open.exercise)
    )


def complete(draft: Draft, question: Waiting, text: str) -> bool:
    """Take `text`, just said, as the answer to a question about sets; return False where it is none."""
    slot: Slot = next(each for each in ORDER if each == question.slot)
    unfinished = unfinished_of(question)
    of_message = [each for each in unfinished if each.message == unfinished[0].message]
    asked = asked_for(of_message, slot)
    others = tuple(each for each in unfinished if each not in asked)
    said = " ".join(text.casefold().replace("’", "'").split()).rstrip(".!")
    plans = draft.memory.plans_before
    if said in NEVER_MIND and draft.reply is None and plans and plans.at and plans.at > question.asked_at:
        return False
    if said in NEVER_MIND or (slot == "confirm" and said in NO):
        give_up(draft, asked)
        if said in NEVER_MIND:
            draft.notice("question dropped", kept=True)
        else:
            draft.notice("say it again")
        go_on_with(draft, question, others)
        return True
    if slot == "confirm" and says_what_stands(draft, asked, said):
        draft.notice("all recorded stands")
        go_on_with(draft, question, others)
        return True
    text = without_hedges(text)
    request = request_for(draft, text, [each.open.exercise for each in asked if each.open.exercise])
    answered = [answer(each.open, slot, text, request) for each in asked]
    completed = [
        replace(each, open=now) for each, now in zip(asked, answered, strict=True) if now is not None
    ]
    if not completed or len(completed) < len(asked):
        if slot in AMOUNTS and (either := either_of(text)) is not None:
            ask_next(draft, unfinished, either)
            return True
        return put_on_day(draft, question, request)
    draft.drop_question(question)
    done = {(each.message, each.open.exercise) for each in asked}
    drop_given_up(draft, lambda each: (each.message, each.exercise) in done)
    draft.remember(answered=Answered(message=draft.message, question=question, at=draft.at))
    if slot == "exercise":
        known = zip(asked, completed, strict=True)
        learn(draft, [(was.open.said_name or "", now.open.exercise or "") for was, now in known])
    keep_whole(draft, completed)
    go_on_with(draft, question, (*(each for each in completed if each.open.complete() is None), *others))
    return True


def says_what_stands(draft: Draft, asked: Sequence[Unfinished], said: str) -> bool:
    """Return whether an answer about a correction has no numbers but those that it was to put right: "no, it
    was 42.5 after all"."""
    entries = {entry.number: entry.set for entry in draft.state.entries}
    numbers = {Decimal(each.replace(",", ".")) for each in _NUMBER.findall(said)}
    standing = [entries.get(each.entry) for each in asked if each.entry is not None]
    return (
        bool(numbers)
        and len(standing) == len(asked)
        and all(each is not None and numbers <= {each.load, Decimal(each.amount)} for each in standing)
    )


def put_on_day(draft: Draft, question: Waiting, request: Request) -> bool:
    """Take words that say no more than the day of what is asked about: "that was yesterday"; ask on.

    They are of the record instead where sets have come in with the question, or since.
    """
    if any(entry.at >= question.asked_at for entry in draft.state.entries):
        return False
    unfinished = unfinished_of(question)
    message = unfinished[0].message
    done = tuple(as_known(each.open) for each in unfinished if each.message == message)
    said = read(replace(request, done=done))
    days = {each.on for each in said.sets}
    if (
        "correct" not in said.wants
        or said.open
        or len(days) != 1
        or not without_day(said.sets) <= without_day(done)
    ):
        return False
    on = days.pop()
    draft.notice("of that day", on=on.isoformat() if on else None)
    ask_next(
        draft,
        tuple(
            replace(each, open=replace(each.open, on=on)) if each.message == message else each
            for each in unfinished
        ),
    )
    return True


def without_day(sets: Sequence[TrainingSet]) -> set[TrainingSet]:
    """Return the sets as done on no day."""
    return {replace(each, on=None) for each in sets}


def go_on_with(draft: Draft, question: Waiting, left: tuple[Unfinished, ...]) -> None:
    """Ask for what is left of a question; what was asked about in vain just waits for an answer."""
    in_vain = {(each.message, each.exercise) for each in draft.memory.not_understood}
    if not left or any((each.message, each.open.exercise) not in in_vain for each in left):
        ask_next(draft, left)
        return
    of_message = tuple(each for each in left if each.message == left[0].message)
    waits = question.model_copy(
        update={
            "number": draft.number("last_question"),
            "slot": next(slot for slot in ORDER if asked_for(of_message, slot)),
            "about": about_sets(left),
            "again": True,
        }
    )
    others = tuple(each for each in draft.memory.questions if each.slot not in SET_SLOTS)
    draft.remember(questions=(waits, *others))


def keep_whole(draft: Draft, completed: list[Unfinished]) -> None:
    """Record the sets that have become whole; those that put an entry right supersede it."""
    entries = {entry.number: entry for entry in draft.state.entries}
    message = completed[0].message
    whole = [(each.entry, done) for each in completed if (done := each.open.complete()) is not None]
    new = [done for entry, done in whole if entry not in entries and is_within_reason(done)]
    fixed = [(entries[entry], done) for entry, done in whole if entry in entries and is_within_reason(done)]
    if len(new) + len(fixed) < len(whole):
        draft.notice("out of reason")
    if new:
        record(draft, new, message)
    if fixed:
        correct(draft, fixed, message)


def answer_anew(draft: Draft, answered: Answered) -> tuple[int, ...]:
    """Open the question again that an edited message had answered; return the entries made of that answer."""
    messages = {each.message for each in unfinished_of(answered.question)}
    others = tuple(each for each in draft.memory.questions if each.slot not in SET_SLOTS)
    draft.remember(questions=(*others, answered.question), answered=None)
    return tuple(
        entry.number for entry in draft.state.entries if entry.at == answered.at and entry.message in messages
    )
