"""Sets that were only half understood: what is asked about them, and what an answer makes of them.

One thing is asked at a time. The answer goes to every unfinished set of that exercise that lacks it; what is
whole then is recorded, and the rest is asked on. What was typed stays in the inbox whatever comes of it.
"""

from dataclasses import dataclass, replace

from pydantic import TypeAdapter

from domain.client.draft import Draft
from domain.client.recording import correct, record
from domain.client.understanding import known, request_for
from domain.memory import Waiting
from domain.outcome import SettingsKept
from domain.reading import OpenSet, Reading, Slot, answer
from domain.sets import is_within_reason

ORDER: tuple[Slot, ...] = ("exercise", "date", "confirm", "unit", "load", "reps", "seconds")
"""In which order things are asked: what the others depend on comes first."""

NO = frozenset({"no", "n", "nope", "no it is not", "no it wasn't", "wrong"})


@dataclass(frozen=True, slots=True)
class Unfinished:
    """An unfinished set; `entry` is the number of the entry that it is to put right, if any."""

    open: OpenSet
    entry: int | None = None


_ALL = TypeAdapter(tuple[Unfinished, ...])
_OPEN = TypeAdapter(tuple[OpenSet, ...])


def ask_about(draft: Draft, reading: Reading, text: str) -> None:
    """Ask for what is missing of the sets in `reading`; numbers out of all reason are not asked about."""
    entries = known(draft.state)
    unfinished = tuple(
        Unfinished(each, None if each.replaces is None else entries[each.replaces].number)
        for each in reading.open
    )
    sensible = tuple(each for each in unfinished if all(map(is_within_reason, each.open.candidates)))
    if len(sensible) < len(unfinished):
        draft.notice("out of reason")
    ask_next(draft, sensible, text)


def ask_next(draft: Draft, unfinished: tuple[Unfinished, ...], text: str) -> None:
    """Ask for the first thing, in the house's order, that any of the sets lacks."""
    for slot in ORDER:
        asked = asked_for(unfinished, slot)
        if asked:
            sets = tuple(each.open for each in asked)
            draft.ask(
                slot,
                {"text": text, "unfinished": _ALL.dump_python(unfinished, mode="json")},
                {"text": text, "open": _OPEN.dump_python(sets, mode="json")},
                choices(draft, slot, sets),
            )
            return


def asked_for(unfinished: tuple[Unfinished, ...], slot: Slot) -> tuple[Unfinished, ...]:
    """Return the sets that lack `slot`, as far as they are of the exercise of the first of them."""
    lacking = [each for each in unfinished if slot in each.open.asks]
    return tuple(each for each in lacking if each.open.exercise == lacking[0].open.exercise)


def choices(draft: Draft, slot: Slot, asked: tuple[OpenSet, ...]) -> tuple[str, ...]:
    """Return the likely answers, as they can be typed."""
    request = request_for(draft, "")
    match slot:
        case "exercise":
            return tuple(line.name for line in request.plan)
        case "unit":
            return ("kg", "lb")
        case "confirm":
            return either_or(asked) or ("Yes", "No")
        case "load":
            name = asked[0].exercise or ""
            loads = (request.target.get(name), request.last.get(name))
            return tuple(
                dict.fromkeys(
                    f"{each.load.normalize():f} {each.unit}" for each in loads if each and each.load
                )
            )
        case "reps" | "seconds" | "date":
            return ()


def either_or(asked: tuple[OpenSet, ...]) -> tuple[str, ...]:
    """Return the readings of the one set that can be taken in several ways, as they can be typed."""
    if len(asked) != 1 or len(asked[0].candidates) < 2:
        return ()
    return tuple(
        f"{each.load.normalize():f} {each.unit} {'for' if each.reps is None else 'x'} {each.amount}"
        for each in asked[0].candidates
        if each.load
    )


def complete(draft: Draft, waiting: Waiting, slot: Slot, text: str) -> bool:
    """Take `text` as the answer to `slot`; return False where it is none."""
    unfinished = _ALL.validate_python(waiting.about["unfinished"])
    asked = asked_for(unfinished, slot)
    others = tuple(each for each in unfinished if each not in asked)
    if slot == "confirm" and text.strip().casefold().rstrip(".!") in NO:
        draft.remember(waiting=None)
        draft.notice("say it again")
        ask_next(draft, others, str(waiting.about["text"]))
        return True
    request = request_for(draft, text)
    answered = [answer(each.open, slot, text, request) for each in asked]
    completed = [
        replace(each, open=now) for each, now in zip(asked, answered, strict=True) if now is not None
    ]
    if not completed or len(completed) < len(asked):
        return False
    draft.remember(waiting=None)
    if slot == "exercise":
        learn_names(draft, asked, completed)
    keep_whole(draft, completed, waiting.message)
    left = (*(each for each in completed if each.open.complete() is None), *others)
    ask_next(draft, left, str(waiting.about["text"]))
    return True


def keep_whole(draft: Draft, completed: list[Unfinished], message: int) -> None:
    """Record the sets that have become whole; those that put an entry right supersede it."""
    entries = {entry.number: entry for entry in draft.state.entries}
    whole = [(each.entry, done) for each in completed if (done := each.open.complete()) is not None]
    new = [done for entry, done in whole if entry not in entries and is_within_reason(done)]
    fixed = [(entries[entry], done) for entry, done in whole if entry in entries and is_within_reason(done)]
    if len(new) + len(fixed) < len(whole):
        draft.notice("out of reason")
    if new:
        record(draft, new, message)
    if fixed:
        correct(draft, fixed, message)


def learn_names(draft: Draft, asked: tuple[Unfinished, ...], completed: list[Unfinished]) -> None:
    """Keep the client's own word for the exercise that was asked about, where there was such a word."""
    own = dict(draft.client.own_names)
    for before, after in zip(asked, completed, strict=True):
        if before.open.said_name and after.open.exercise is not None:
            own[before.open.said_name] = after.open.exercise
    if own != dict(draft.client.own_names):
        draft.change(SettingsKept(replace(draft.client, own_names=own)))
