"""Words for everything that is only to be known: one entry for each topic of `domain.parts.Topic`."""

from collections.abc import Callable
from typing import Any

from pydantic import TypeAdapter

from bot.markup import bold, escape
from bot.wording.joining import CAUTIONS, welcome_words
from bot.wording.reader import Reader, day_words, listed, set_words
from bot.wording.sheet import fault_words
from domain.parts import Notice, Topic
from domain.sets import TrainingSet

_SET = TypeAdapter(TrainingSet)
Facts = dict[str, Any]

HELP = (
    "Send your sets as you would say them: «80 x 8», «rows 60 for 9», «bench 3x8 @ 80», «plank 50 s», "
    "«yesterday: squat 100x5».\n"
    "Put something right: «make that 9», «undo», or edit your message.\n"
    "Also: «what's next?», «history of rows», «skip calves today», «can't today», «move to Thursday», "
    "«away till the 14th», «I'm back», «remind me at 7», «I use pounds», «I'm in Lisbon».\n"
    "If something hurts, say so. A question for your coach: just ask it.\n"
)

COACH_HELP = (
    "What you can say:\n"
    "«who needs me?» for the overview, «how is NAME doing?» for one client,\n"
    "«tell NAME: …» to pass words on, «invite NAME to PROGRAMME», «put NAME on PROGRAMME», «programmes».\n"
    "Paste a sheet, or send it as a .txt file, and I say back what I understood before anything is stored."
)


def notice_words(part: Notice, reader: Reader) -> str:
    """Return the words of a notice."""
    words = WORDS[part.topic]
    return words if isinstance(words, str) else words(part.facts, reader)


def _coming(facts: Facts, lead: str) -> str:
    if not facts.get("workout") and not facts.get("next"):
        return ""
    name = str(facts.get("workout") or facts.get("next"))
    when = f", {day_words(str(facts['on']))}" if facts.get("on") else ""
    return f"{lead} {bold(name)}{when}."


def _workout_done(facts: Facts, _reader: Reader) -> str:
    head = f"That completes {bold(str(facts['workout']))}. Well reported."
    coming = f" Next: {bold(str(facts['next']))}, {day_words(str(facts['on']))}." if facts.get("next") else ""
    return head + coming


def _moved(facts: Facts, _reader: Reader) -> str:
    return (
        f"{bold(str(facts['workout']))} is now on {day_words(str(facts['on']))}. "
        "It stays the next in turn, nothing is lost."
    )


def _taken_back(facts: Facts, _reader: Reader) -> str:
    sets = [_SET.validate_python(each) for each in facts["sets"]]
    named = "; ".join(f"{escape(each.exercise)} {set_words(each)}" for each in sets)
    return f"Taken back: {named}."


def _history(facts: Facts, _reader: Reader) -> str:
    rows = [f"{day_words(row['on'])}: {set_words(_SET.validate_python(row['set']))}" for row in facts["rows"]]
    return "\n".join([bold(str(facts["exercise"])), *rows])


def _no_history(facts: Facts, _reader: Reader) -> str:
    of = f" of {bold(str(facts['exercise']))}" if facts.get("exercise") else ""
    return f"Nothing{of} stands in your journal yet."


def _left_out(facts: Facts, _reader: Reader) -> str:
    return f"{escape(listed(facts['exercises']))} left out of {bold(str(facts['workout']))} this time."


def _paused(facts: Facts, _reader: Reader) -> str:
    until = f" until {day_words(str(facts['until']))}" if facts.get("until") else ""
    return f"Paused{until}. No reminders; say «I'm back» whenever you are."


def _stall(facts: Facts, _reader: Reader) -> str:
    return (
        f"{bold(str(facts['exercise']))} has not moved for {facts['without_beat']} times now. "
        "That happens and is no fault of yours; your coach hears of it and will decide what to change."
    )


def _review(facts: Facts, _reader: Reader) -> str:
    found = (
        "you have become stronger over all"
        if facts["risen"]
        else "strength has not clearly risen over all, so your coach takes a look at the programme"
    )
    return f"That was round {facts['rounds']}. Looking back: {found}."


def _invited(facts: Facts, _reader: Reader) -> str:
    name, code = escape(str(facts["name"])), escape(str(facts["code"]))
    return (
        f"An invitation for {bold(str(facts['name']))} to {bold(str(facts['programme']))}, "
        f"good for one person and {facts['days']} days. "
        f"{name} opens the chat with me and sends:\n/start {code}"
    )


def _sheet_faults(facts: Facts, _reader: Reader) -> str:
    faults = facts["faults"]
    count = "one thing" if len(faults) == 1 else f"{len(faults)} things"
    return "\n".join(
        [
            f"I could not take {count} in this sheet, so nothing is stored:",
            *(fault_words(each) for each in faults),
        ]
    )


def _settled(facts: Facts, _reader: Reader) -> str:
    return SETTLED[str(facts["remedy"])].format(
        client=escape(str(facts["client"])), exercise=escape(str(facts.get("exercise") or ""))
    )


FILE_FAULTS: dict[str, str] = {
    "too large": "it is too large.",
    "not text": "it is not plain text.",
    "out of reach": "the platform did not give it to me. Please send it again.",
}

SETTLED = {
    "lighten": "Settled: {client} starts {exercise} with a tenth less and builds back.",
    "swap": "Settled: {client} does the alternative for {exercise}.",
    "rest more": "Settled: {client} has one rest day more before the next workout.",
    "next programme": "Settled: {client} goes on with the next programme.",
    "keep on": "Settled: I leave {client}'s {exercise} alone for a while.",
    "lift hold": "Settled: what was set aside is back in {client}'s plan.",
    "keep held": "Settled: it stays aside for {client}.",
    "let train": "Settled: {client} trains again.",
    "seen": "Settled.",
}


def _card(facts: Facts, _reader: Reader) -> str:
    rows = [_SET.validate_python(each) for each in facts["last"]]
    if not rows:
        return "Nothing in the journal yet."
    lines = [
        f"{day_words(each.on) if each.on else ''}: {escape(each.exercise)} {set_words(each)}" for each in rows
    ]
    return "\n".join(["Last sets", *lines])


def _by_coach(text: str) -> Callable[[Facts, Reader], str]:
    def words(facts: Facts, _reader: Reader) -> str:
        named = {key: escape(str(value)) for key, value in facts.items() if isinstance(value, str)}
        return text.format(**named)

    return words


def _names(text: str, empty: str) -> Callable[[Facts, Reader], str]:
    def words(facts: Facts, _reader: Reader) -> str:
        names = facts.get("names") or []
        named = {key: escape(str(value)) for key, value in facts.items() if isinstance(value, str)}
        return text.format(names=escape(listed(names)), **named) if names else empty

    return words


WORDS: dict[Topic, str | Callable[[Facts, Reader], str]] = {
    "no file wanted": "I read files only from coaches. Type your sets as you would say them: «80 x 8».",
    "already here": lambda _, reader: f"You are in, {escape(reader.name)}.\n{HELP}",
    "words only": _by_coach("I can only read words, not a {what}. Type it as you would say it: «80 x 8»."),
    "cut": "That was very long: I have read only its beginning. Please send the rest once more, in parts.",
    "read again": "Read again after your edit.",
    "button is old": "That button belongs to an earlier question. Just type what you mean.",
    "button is not yours": "That button does nothing here. Just type what you mean.",
    "no set found": "I found no set in that, so nothing is recorded. Say it as «80 kg x 8», or «help».",
    "heard": "All right.",
    "nothing to read": "I find no words in that. Send your sets as «80 x 8», or say «help».",
    "say it again": "Then I record nothing. Send it once more as it was, say as «80 kg x 8».",
    "no trouble": "Good to know. Should that change, leave the exercise and tell me.",
    "moved": _moved,
    "missed noted": lambda facts, _: (
        f"All right. {bold(str(facts['workout']))} stays the next in turn"
        + (f", {day_words(str(facts['on']))}." if facts.get("on") else ".")
    ),
    "trained after all": _by_coach("Good. Send me the sets of {workout} as they were."),
    "help": lambda _facts, _reader: HELP + CAUTIONS,
    "reminders off": "No more reminders. Your journal stays; say «start reminders» to have them back.",
    "nothing to leave out": "There is nothing to leave out: no workout is planned.",
    "left out": _left_out,
    "nothing to move": "There is nothing to move: no workout is planned.",
    "day is past": lambda facts, _: (
        f"{day_words(str(facts['on'])).capitalize()} is past. Which day do you mean?"
    ),
    "rest of it moved": lambda facts, _: (
        f"The rest of {bold(str(facts['workout']))} on {day_words(str(facts['on']))}, then. "
        "What you sent stands."
    ),
    "paused": _paused,
    "back": lambda facts, _: "Welcome back." + _coming(facts, " Next is"),
    "nothing to take back": "There is nothing to take back.",
    "taken back": _taken_back,
    "passed on": _by_coach("I have passed that on to {coach}."),
    "no workout planned": lambda facts, _: (
        "You are paused. Say «I'm back» whenever you are."
        if facts.get("paused")
        else "No workout is planned: your coach has not put you on a programme yet."
    ),
    "no history": _no_history,
    "history": _history,
    "no such hour": "There is no such hour. Say it as «remind me at 7» or «remind me at 18:30».",
    "hour kept": _by_coach("Reminders come at {at} from now on."),
    "unit kept": _by_coach("Plain numbers are {unit} from now on. What is recorded stays as you said it."),
    "body mass unlikely": "That body mass seems unlikely. Say it as «I weigh 72 kg».",
    "body mass kept": _by_coach("Noted: {mass} {unit}."),
    "zone kept": _by_coach("Noted: you are in {zone}, where it is {local} now."),
    "stall": _stall,
    "review": _review,
    "workout done": _workout_done,
    "from coach": lambda facts, _: f"{bold(str(facts['coach']))}: {escape(str(facts['text']))}",
    "rest more": _by_coach("{coach} gives you one rest day more before the next workout."),
    "lighter": _by_coach("{coach} takes the load down on {exercise}: you build back from there."),
    "swapped": _by_coach("{coach} changes {exercise} to {instead} from the next workout on."),
    "keep on": _by_coach("{coach} has seen {exercise} and lets you go on as you are."),
    "hold lifted": lambda facts, _: (
        f"{escape(str(facts['coach']))} has put {escape(listed(facts['exercises']))} back into your plan. "
        "If it hurts again, leave it and tell me."
    ),
    "new programme": lambda facts, _: (
        f"{escape(str(facts['coach']))} has put you on {bold(str(facts['programme']))}. It begins with:"
    ),
    "barred": _by_coach(
        "No training for now: after what you wrote, {coach} first has to let it go on. Have it looked at by a "
        "doctor, and call your local emergency number if it comes back."
    ),
    "let train": _by_coach(
        "{coach} lets your training go on. If anything of it comes back, stop and call your local emergency "
        "number."
    ),
    "passed to client": _by_coach("Passed on to {client}."),
    "already settled": _by_coach("That matter of {client}'s is settled already."),
    "settled": _settled,
    "remedy not possible": _by_coach("That does not fit {client}'s sheet, so nothing is changed."),
    "no such programme": _by_coach("I do not have that programme, so nothing is changed for {client}."),
    "programme given": _by_coach("{client} is on {programme} now."),
    "card": _card,
    "coach already here": lambda _, reader: f"You are in, {escape(reader.name)}.\n{COACH_HELP}",
    "file not taken": lambda facts, _: (
        f"I could not take {escape(str(facts['name']))}: "
        + FILE_FAULTS.get(str(facts.get("fault")), "I could not read it.")
        + " A sheet is a plain .txt file."
    ),
    "not your client": "That is not one of your clients.",
    "sheet stored": _by_coach(
        "Stored: {programme}. Say «put NAME on {programme}» or «invite NAME to {programme}»."
    ),
    "sheet faults": _sheet_faults,
    "sheet left": "Left as it is; nothing is stored.",
    "programmes": _names(
        "Your programmes: {names}.", "No programmes yet. Paste a sheet, or send it as a .txt file."
    ),
    "coach help": lambda facts, _: (
        ("" if facts.get("understood") else "I did not understand that. ") + COACH_HELP
    ),
    "invited": _invited,
    "which programme": _names(
        "Which programme? You have: {names}.",
        "You have no programme yet. Paste a sheet, or send it as a .txt file.",
    ),
    "name is taken": _by_coach("You already have a client called {name}. Use another name."),
    "unknown client": _names(
        "I know no client called {name}. Yours are: {names}.", "You have no clients yet."
    ),
    "client joined": _by_coach("{client} has joined."),
    "stranger": "Hello. This chat is for invited people only; ask your coach for an invitation.",
    "invitation is over": "This invitation is used or has run out. Please ask your coach for a new one.",
    "welcome coach": lambda facts, _: f"Welcome, {bold(str(facts['name']))}. {COACH_HELP}",
    "welcome": welcome_words,
}
