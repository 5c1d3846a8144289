"""What a client's message comes to. One message in, one answer out."""

from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import assert_never

from domain.actions import (
    Action,
    Answer,
    BringIn,
    ChangeTo,
    ForgetNote,
    InRole,
    Keep,
    Release,
    Show,
    TakeBack,
    TakeBackAll,
    TakeOn,
    Treat,
    Words,
    Write,
)
from domain.client import orders
from domain.client.acting import act_on, answer_nothing
from domain.client.asking import take_asked
from domain.client.bringing import bring_up
from domain.client.changes import note_told
from domain.client.clearance import is_of_training, tells_of_doctor
from domain.client.closing import answer_done, end_with, takes_end
from domain.client.coaching_too import take_up_as_coach
from domain.client.commands import COMMANDS
from domain.client.days_ahead import take_days_asked
from domain.client.draft import Draft
from domain.client.eager import reckon
from domain.client.editing import hear_edit
from domain.client.following import follow_up
from domain.client.joining_flow import go_on, hear_joining, hear_joining_edit, take_age_told
from domain.client.later import take_later
from domain.client.leads_to import UNDO
from domain.client.leaving import answer_leaving, take_leaving
from domain.client.likely import WHY, offer_likely
from domain.client.lines import line_named, sets_left
from domain.client.looking_up import take_look_up
from domain.client.not_understood import drop_told_since, give_up_old_question
from domain.client.odd_feeling import answer_odd_feeling, say_of_odd_feeling, take_odd_feeling
from domain.client.other_workout import take_other_workout
from domain.client.pain import fine_again, hold_for_pain
from domain.client.picturing import take_picture
from domain.client.plates import take_plates
from domain.client.questions import take_pressed, take_reply, take_typed
from domain.client.redoing import take_redo, undoing
from domain.client.rotation import keep_due
from domain.client.sending_journal import take_journal
from domain.client.sentences import answers_all, asked_with_help, said_instead, take_each
from domain.client.settings import take_setting
from domain.client.settings_within import take_settings
from domain.client.strength import keep_strength
from domain.client.talking import answer_coach, ask_coach, reply_to_coach
from domain.client.tallying import keep_tally
from domain.client.today import take_today
from domain.client.trouble import IT_HURTS, note_illness, take_free_answer
from domain.client.turn import take_turn
from domain.client.understanding import came_of, put_right_again, understand, understand_of
from domain.client.waking import is_to_remind, next_wake, remind_beside
from domain.client.wants import undo_of
from domain.client.warming import take_warm_up
from domain.client.was_ill import take_illness_told
from domain.client.weighing import ask_for_body_mass, drop_old_weighing
from domain.client.why import answer_why, why_of
from domain.incoming import (
    Arrived,
    CoachOrder,
    Document,
    Edited,
    Heard,
    JournalSent,
    Pressed,
    Reachable,
    ReplyTo,
    SendingFailed,
    Started,
    Text,
    Under,
    Unsupported,
)
from domain.journal import Entry
from domain.outcome import Outcome
from domain.reading import Pain, Reading, Want, days_asked, is_lone_number
from domain.state import ClientState
from domain.understood import TakenFor, Understood, in_other_words

QUESTIONS: frozenset[Want] = frozenset({"ask_coach", "show_plan", "show_history", "help"})
"""What is only asked."""


def hear(state: ClientState, heard: Heard) -> Outcome:
    """Decide on one thing that came in for this client."""
    draft = Draft(state, heard.at, heard.number, heard.answered)
    give_up_old_question(draft)
    drop_old_weighing(draft)
    drop_told_since(draft)
    understood: Understood | None = None
    match heard.incoming:
        case Text(text=text, reply=reply):
            draft.reply = reply
            understood = hear_words(draft, text)
            reply_to_coach(draft, text)
        case Edited() as edited if state.memory.joining is not None:
            hear_joining_edit(draft, edited)
        case Edited(original=None, text=text):
            understood = hear_words(draft, text)
        case Edited() as edited:
            draft.edits = edited.answered
            understood = hear_edit(draft, edited)
        case Pressed(action=action, under=under):
            press(draft, action, under)
        case Document():
            draft.notice("no file wanted")
        case Started():
            if not take_up_as_coach(draft) and state.memory.joining is None:
                draft.notice("already here")
        case Unsupported(what=what):
            draft.notice("words only", what=what)
        case Reachable(reachable=reachable):
            orders.reachable(draft, reachable=reachable)
        case CoachOrder() as order:
            orders.carry_out(draft, order)
            understood = Understood("an order", meant=draft.meant)
        case SendingFailed():
            orders.reachable(draft, reachable=False)
        case Arrived():
            pass
        case _:
            assert_never(heard.incoming)
    if draft.is_erased:
        return draft.farewell()
    if isinstance(heard.incoming, JournalSent):
        # What is brought in is the past: nothing is reckoned, told or raised because of it.
        keep_strength(draft)
        keep_due(draft)
        return replace(draft.outcome(next_wake(draft.state, draft.at)), understood=understood)
    if isinstance(heard.incoming, Text | Edited | Pressed | Document | Started | Unsupported):
        orders.reachable(draft, reachable=True)
        go_on(draft)
    if isinstance(heard.incoming, Text | Edited | Pressed):
        ask_for_body_mass(draft)
    if is_to_remind(draft.state, draft.at) and not is_to_remind(state, draft.at):
        remind_beside(draft)
    drop_told_since(draft)
    offer_likely(draft)
    bring_up(draft, follow_up(draft))
    reckon(draft)
    keep_strength(draft)
    keep_tally(draft)
    keep_due(draft)
    note_told(draft)
    return replace(draft.outcome(next_wake(draft.state, draft.at)), understood=understood)


def hear_words(draft: Draft, text: str) -> Understood:
    """Decide on something typed, and return what it was taken for."""
    command = COMMANDS.get(text.replace("’", "'").strip(" \n.!?").casefold())
    if command is None:
        return hear_text(draft, text)
    return Understood("a command", in_other_words(hear_text(draft, command).reading))


def hear_text(draft: Draft, text: str) -> Understood:
    """Decide on plain words: an answer awaited or a setting first, unless something hurts."""
    reading = understand(draft, text)
    hurts = reading.urgent or bool(reading.pain)
    if not hurts and (meant := said_instead(text) or asked_with_help(text)) is not None:
        tried = draft.trial()
        if hear_text(tried, meant).taken_for != "nothing known" and not tried.says_of("passed on"):
            return hear_text(draft, meant)
    if not hurts and (answer_leaving(draft, text) or take_leaving(draft, text)):
        return Understood("a wish to leave", reading)
    if not hurts and answer_odd_feeling(draft, text):
        return Understood("an answer", reading)
    if not hurts and draft.memory.joining is None and take_age_told(draft, text):
        return Understood("an age", reading)
    if draft.memory.joining is not None:
        return Understood(hear_while_joining(draft, text, reading), reading)
    if draft.reply is None:
        reading = put_right_again(draft, text, reading)
        hurts = reading.urgent or bool(reading.pain)
    if not hurts and take_why(draft, text):
        return Understood("a question after reasons", reading)
    if not hurts and take_look_up(draft, text):
        return Understood("a question", reading)
    if not hurts and take_reply(draft, text, reading.names):
        return Understood("an answer", reading)
    if draft.reply is not None:
        of_earlier = hear_of_earlier(draft, draft.reply, reading, text)
        if of_earlier is not None:
            return Understood("a report", of_earlier)
    is_of_earlier = draft.reply is not None and bool(
        came_of(draft.state, draft.reply.message, draft.reply.places)
    )
    if not hurts and not is_of_earlier and take_typed(draft, text, reading.names):
        return Understood("an answer", reading)
    has_sets, goes_away = bool(reading.sets), "pause" in reading.wants
    rest = None if hurts else take_settings(draft, text, has_sets=has_sets, goes_away=goes_away)
    if rest is not None:
        hear_rest(draft, rest)
        return Understood("a setting", reading)
    if not hurts and (asked_for := take_request(draft, text, reading)) is not None:
        return Understood(asked_for, reading)
    is_question = "ask_coach" in reading.wants and QUESTIONS.issuperset(reading.wants)
    if is_question and not reading.sets and not hurts and answers_all(draft, text, take_part):
        asked_for = take_each(draft, text, take_part) or "a question"
        return Understood(asked_for, reading)
    note_illness(draft, reading, text)
    act_on(draft, reading, text, draft.message)
    if reading.sets:
        end_with(draft, text)
    if draft.is_empty:
        return Understood(answer_words(draft, reading, text), reading)
    if not hurts and (reading.sets or "ask_coach" in reading.wants):
        say_of_odd_feeling(draft, text)
    asks_to_train = "ask_coach" in reading.wants and is_of_training(text)
    if (reading.sets or asks_to_train) and draft.memory.barred and not reading.urgent:
        draft.notice("barred", coach=draft.client.coach.name)
    return Understood("a report", reading)


def hear_while_joining(draft: Draft, text: str, reading: Reading) -> TakenFor:
    """Decide on words said before the first questions are over."""
    if hear_joining(draft, text, reading):
        return "an answer to the first questions"
    if answer_coach(draft, text):
        return "an answer to the coach"
    go_on(draft, unread=True)
    return "nothing known"


def take_request(draft: Draft, text: str, reading: Reading) -> TakenFor | None:
    """Do what is asked for in words of its own; return what that was, None where nothing of the kind is."""
    requests: tuple[tuple[TakenFor, Callable[[], bool]], ...] = (
        ("taken back again", lambda: take_redo(draft, text)),
        ("a time for the reminder", lambda: take_later(draft, text)),
        ("a question", lambda: take_asked(draft, text, reading)),
        ("the end of the workout", lambda: takes_end(draft, text, reading)),
        ("a change of turn", lambda: not reading.sets and take_turn(draft, text)),
        ("a change of turn", lambda: not reading.sets and take_other_workout(draft, text)),
        ("days asked", lambda: take_days_asked(draft, text)),
        ("a setting", lambda: take_setting(draft, text)),
        ("a request for the journal", lambda: take_journal(draft, text)),
        ("a request for a picture", lambda: take_picture(draft, reading, text)),
        ("a request for a warm-up", lambda: take_warm_up(draft, text, reading)),
        ("a request for plates", lambda: take_plates(draft, text, reading)),
    )
    return next((what for what, takes in requests if takes()), None)


def hear_rest(draft: Draft, rest: str) -> None:
    """Hear what a message says beside its settings; what comes to nothing was only their reason."""
    reading = understand(draft, rest)
    if reading.sets or reading.wants or reading.open or days_asked(rest) is not None:
        hear_words(draft, rest)


def answer_words(draft: Draft, reading: Reading, text: str) -> TakenFor:
    """Answer words with nothing to do in them; they may answer the bot's question, or the coach."""
    if end_with(draft, text) or answer_done(draft, text):
        return "the end of the workout"
    if fine_again(draft, reading, text) or take_free_answer(draft, text):
        return "an answer"
    if answer_coach(draft, text):
        return "an answer to the coach"
    if tells_of_doctor(draft, text):
        ask_coach(draft, text, ())
        return "a question"
    if take_today(draft, text):
        return "days asked"
    if take_illness_told(draft, text) or take_odd_feeling(draft, text):
        return "an answer"
    if (taken := take_each(draft, text, take_part)) is not None:
        return taken
    answer_nothing(draft, text)
    return "nothing known"


def take_part(draft: Draft, text: str) -> TakenFor | None:
    """Do what one sentence of several asks for; return what that was, None where it asks for nothing."""
    if take_why(draft, text):
        return "a question after reasons"
    return "a question" if take_look_up(draft, text) else take_request(draft, text, understand(draft, text))


def take_why(draft: Draft, text: str) -> bool:
    """Answer a question after reasons, and first what is recorded before it; return whether it was one.

    It goes before all else: "why 82.5 and not 85?" is no correction, and answers no question.
    """
    asked = why_of(draft, text)
    if asked is None:
        return False
    if asked.said_before:
        before = text[: asked.start]
        if not understand(draft, before).sets:
            return False
        hear_words(draft, before)
    return answer_why(draft, asked) or asked.said_before


def hear_of_earlier(draft: Draft, reply: ReplyTo, reading: Reading, text: str) -> Reading | None:
    """Put right or take back what the message answered has recorded; return how it was read for that.

    Returns None where that is not wanted.

    Of a message that nothing stands of, nothing can be put right: another record is not touched instead. A
    number alone is what the set should have been, unless it can as well be the next one of that exercise.
    """
    entries = came_of(draft.state, reply.message, reply.places)
    of_them = understand_of(draft, text, entries)
    if of_them is None and is_lone_number(text) and not awaits_more(draft, entries):
        of_them = understand_of(draft, f"make that {text}", entries)
        of_them = of_them and in_other_words(of_them)
    if of_them is not None:
        act_on(draft, of_them, text, draft.message)
        return of_them
    if reply.message is not None and not entries and "correct" in reading.wants:
        act_on(draft, replace(reading, sets=(), open=(), wants=(), replaces=()), text, draft.message)
        draft.notice("nothing to put right")
        return reading
    return None


def awaits_more(draft: Draft, entries: Sequence[Entry]) -> bool:
    """Return whether more sets of the last exercise in `entries` are to be done in its workout today."""
    if not entries or entries[-1].set.on != draft.today:
        return False
    record = next((each for each in draft.state.workouts if each.number == entries[-1].workout), None)
    line = line_named(draft.state, record.name, entries[-1].set.exercise) if record else None
    return record is not None and line is not None and sets_left(draft.state, record, line) > 0


def press(draft: Draft, action: Action | None, under: Under | None) -> None:
    """Decide on a button; one whose question is no longer open is answered kindly.

    What is taken back by a button is so in the place where it was said.
    """
    match action:
        case Words() if action == UNDO and under is not None:
            draft.edits = under.number
            reply, when = under.reply, under.at
            undoing(draft, lambda: undo_of(draft, reply, when))
        case Words() if action == WHY and under is not None:
            draft.reply = under.reply
            hear_words(draft, action.text)
        case Words(text=text) | InRole(text=text):
            hear_words(draft, text)
            draft.show_chosen(action, under)
        case Answer(question=question, text=text):
            taken = take_pressed(draft, question, text)
            draft.show_chosen(action, under, taken=taken)
            if not taken:
                press_late(draft, text)
        case None:
            draft.notice("button is not yours")
        case (
            Treat()
            | Write()
            | Release()
            | ChangeTo()
            | TakeBack()
            | TakeBackAll()
            | Show()
            | TakeOn()
            | Keep()
            | ForgetNote()
            | BringIn()
        ):
            draft.notice("button is not yours")
        case _:
            assert_never(action)


def press_late(draft: Draft, text: str) -> None:
    """Answer a button whose question is no longer open; but pain counts at any time."""
    if text == IT_HURTS:
        hold_for_pain(draft, text, (Pain(where="other"),), ())
    else:
        draft.notice("button is old")
