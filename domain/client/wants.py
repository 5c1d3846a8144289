"""What a client wants done besides recording: changing plans, taking back, asking, looking things up."""

from collections.abc import Sequence
from datetime import datetime

from domain.client.aims import show_aims
from domain.client.draft import Draft
from domain.client.exposures import history, set_to_beat
from domain.client.half_understood import unfinished_of
from domain.client.not_understood import given_up
from domain.client.pain import say_what_is_aside
from domain.client.plan import plan_of
from domain.client.plans import (
    cannot,
    is_ill,
    keep_plans,
    move,
    plans_as_before,
    plans_of,
    say_nothing_planned,
    skip_exercises,
    stop_for_a_while,
)
from domain.client.recording import take_back
from domain.client.redoing import undoing
from domain.client.rotation import due, under_way
from domain.client.settings import trains_on_there
from domain.client.talking import ask_coach
from domain.client.understanding import came_of
from domain.client.unfinished import forget_unfinished
from domain.client.was_ill import note_ill_today
from domain.client.weighing import is_told_last, take_weight_back
from domain.client.why import exercises_known
from domain.entry_order import told
from domain.expressions import Expression
from domain.incoming import ReplyTo
from domain.joining_words import asks_who
from domain.journal import Entry
from domain.parts import VerdictPart
from domain.reading import Reading, Want, exercises_asked_of, exercises_named, speaks_of_illness
from domain.values import facts_of

KEEPS_FROM_TRAINING: frozenset[Want] = frozenset({"pause", "move", "skip_workout"})
"""What is wanted of who cannot train, be it for an illness: how the training begins again depends on that."""

HISTORY_SHOWN = 8
"""How many of the last exposures of an exercise are shown at once."""

_SENTENCES = Expression(r"[^.!?;\n]+[.!?;]?")
_IS_IT_GOOD = Expression(
    r"(?:and |so )?(?:(?:is|was|were|are) (?:that|it|this|they|those) (?:ok|okay|good|alright|all right|"
    r"right|fine|enough|any good|not bad|good enough)|how (?:is|was|did) (?:that|it|i)(?: do| go)?|"
    r"did i do (?:ok|okay|well|good|alright)|(?:all )?(?:good|ok|okay|right)|not bad,? (?:eh|huh|right)|"
    r"what do you think)"
)


def do(draft: Draft, want: Want, reading: Reading, text: str, named: tuple[str, ...]) -> None:
    """Do one thing that the client wants; `named` are the exercises that the message is about."""
    before, was_ill = plans_of(draft), is_ill(draft)
    match want:
        case "skip_exercise":
            skip_exercises(draft, reading.skips)
        case "skip_workout":
            cannot(draft, text)
        case "move":
            move(draft, reading, text)
        case "pause" if trains_on_there(text) and not speaks_of_illness(text):
            draft.notice("trains on there")
        case "pause":
            stop_for_a_while(draft, reading, text)
        case "undo":
            reply = draft.reply
            undoing(
                draft,
                lambda: undo(draft) if reply is None or reply.message is None else undo_of(draft, reply),
            )
        case "ask_coach" if draft.says(VerdictPart) and asks_only_whether_good(text):
            pass
        case "ask_coach":
            ask_coach(draft, text, named)
        case "show_plan":
            asked = exercises_asked_of(text, exercises_known(draft), draft.client.own_names)
            if draft.memory.barred or not asked or not show_aims(draft, asked):
                show_plan(draft)
        case "show_history":
            show_history(draft, text, named)
        case "help" if draft.memory.joining is not None or asks_who(text):
            draft.notice("what this is", about=["what"], coach=draft.client.coach.name)
        case "help":
            draft.notice("help", word=None)
        case "stop_messages":
            draft.remember(reminders_off=True)
            draft.notice("reminders off")
        case "correct":
            pass
    if want in KEEPS_FROM_TRAINING and speaks_of_illness(text):
        note_ill_today(draft)
        if not was_ill:
            draft.notice("get well")
    if want != "undo":
        keep_plans(draft, before)


def asks_only_whether_good(text: str) -> bool:
    """Return whether sets are told with no other question than "was that ok?": their verdict answers that."""
    asked = [part for part in _SENTENCES.findall(text.casefold().replace("’", "'")) if part.endswith("?")]
    return bool(asked) and all(_IS_IT_GOOD.fullmatch(part.strip(" ?")) for part in asked)


def undo(draft: Draft) -> None:
    """Take back what the last message came to: its sets, its open question, or its change of plans."""
    question = draft.question("sets")
    asked = max((each.message for each in unfinished_of(question)), default=0)
    last = max(told(draft.state), key=lambda entry: (entry.at, entry.message, entry.number), default=None)
    recorded = last.message if last else 0
    plans = draft.memory.plans_before
    last_plans = plans.message if plans is not None else 0
    if is_told_last(draft) and draft.memory.body_mass_told_in > max(asked, recorded, last_plans):
        take_weight_back(draft)
    elif plans is not None and plans.message > max(asked, recorded):
        plans_as_before(draft, plans)
    elif last is None and question is None:
        draft.notice("nothing to take back")
    else:
        forget_unfinished(draft, max(asked, recorded))
        entries = [entry for entry in draft.state.entries if entry.message == max(asked, recorded)]
        if entries:
            take_sets_back(draft, entries)
        else:
            draft.notice("question dropped")


def undo_of(draft: Draft, reply: ReplyTo, at: datetime | None = None) -> None:
    """Take back what the message answered came to, and nothing else; what an answer to a question has made
    whole is told by the moment `at` of that message.

    Its own corrections stand as before; its sets go, even if another message has put them right since.
    """
    entries = came_of(draft.state, reply.message, reply.places)
    entries = entries or tuple(entry for entry in draft.state.entries if entry.at == at)
    plans = draft.memory.plans_before
    asked = {each.message for each in (*unfinished_of(draft.question("sets")), *given_up(draft))}
    forget_unfinished(draft, reply.message or 0)
    if entries:
        take_sets_back(draft, entries, of=reply.message)
    elif plans is not None and plans.message == reply.message:
        plans_as_before(draft, plans)
    else:
        draft.notice("question dropped" if reply.message in asked else "nothing to take back")


def take_sets_back(draft: Draft, entries: Sequence[Entry], of: int | None = None) -> None:
    """Take sets back and say so; what had been put right by them stands as before, what hurts stays aside.

    Where they are taken back as those `of` a message, what others have put right goes as a whole.
    """
    kept = {entry.number for entry in draft.state.entries}
    take_back(draft, [entry for entry in entries if of in {None, entry.message}])
    take_back(draft, [entry for entry in entries if of not in {None, entry.message}], whole=True)
    draft.notice(
        "taken back",
        sets=[facts_of(entry.set) for entry in entries],
        stand=[facts_of(entry.set) for entry in draft.state.entries if entry.number not in kept],
    )
    say_what_is_aside(draft, [entry.set.exercise for entry in entries])


def show_plan(draft: Draft) -> None:
    """Show what is left of the workout under way, or the one in turn, and its day."""
    coming = due(draft.state, draft.today)
    workout = under_way(draft.state, draft.today)
    if draft.memory.barred:
        draft.notice("barred", coach=draft.client.coach.name)
    elif workout is not None:
        draft.say(plan_of(draft.state, workout.name, draft.memory.rest_on or draft.today, workout))
    elif coming is None:
        say_nothing_planned(draft)
    else:
        on = max(coming.on, draft.today)
        draft.remember(reminded_on=on if on == draft.today else draft.memory.reminded_on)
        draft.say(plan_of(draft.state, coming.workout, on))


def show_history(draft: Draft, text: str, named: tuple[str, ...], *, most: int = HISTORY_SHOWN) -> None:
    """Show the last exposures of each exercise named, at most so many; of the one done last where none is."""
    names = named or exercises_named(text, exercises_known(draft), draft.client.own_names)
    if not names and draft.state.entries:
        names = (draft.state.entries[-1].set.exercise,)
    if not names:
        draft.notice("no history", exercise=None)
    for exercise in names:
        rows = [
            {"on": past.on.isoformat(), "set": facts_of(set_to_beat(past)), "sets": len(past.sets)}
            for workout in dict.fromkeys(record.name for record in draft.state.workouts)
            for past in history(draft.state, workout, exercise)
        ]
        rows.sort(key=lambda row: str(row["on"]))
        if rows:
            draft.notice("history", exercise=exercise, rows=rows[-most:])
        else:
            draft.notice("no history", exercise=exercise)
