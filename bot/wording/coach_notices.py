"""Words for what a coach is to know."""

from bot.markup import bold, escape, italic
from bot.wording.alerts import REMEDIES, WRITING
from bot.wording.coach_changes import (
    changed_words,
    sets_of_client_words,
    time_words,
    undone_words,
    which_exercise_words,
)
from bot.wording.coaching import note_line
from bot.wording.joining import STEPS_SHORT, client_ready_words, to_be_released_words
from bot.wording.notice_forms import Facts, Words, filled, with_names
from bot.wording.reader import Reader, day_words, listed, percent_words, quoted, set_words
from bot.wording.sheet import fault_words
from bot.wording.stalls import answers_words
from domain.sets import TrainingSet
from domain.topics import Topic
from domain.values import value_of

COACH_HELP = (
    "What you can say:\n"
    "«who needs me?» for the overview, «how is NAME doing?» for one client,\n"
    "«why is NAME's EXERCISE below?» for the reasons of a verdict and a target,\n"
    "«what did NAME squat last time?», «who is stalled?», «who trains today?»,\n"
    "«tell NAME …» to pass words on, «tell everyone: …»,\n"
    "«invite NAME to PROGRAMME», «put NAME on PROGRAMME», «programmes»,\n"
    "«swap NAME's rows for pulldowns», «no deadlifts for NAME until I say so»,\n"
    "«put NAME back on deadlifts», «give NAME one more rest day», «set NAME's reminder to 7», «undo»,\n"
    "«put EXERCISE back for NAME» after pain, «my hours are 8 to 20» for when I may write,\n"
    "«digest every day at 6» for when it comes, «no digest», «digest» for it now,\n"
    "«tell me after 4 without a beat» for a rule of your own for stalls, «no rule» to leave them to me,\n"
    "«which remedies worked?» over all clients, «note on NAME: …» and «notes on NAME» for you alone,\n"
    "«picture of NAME», «picture of NAME's EXERCISE», «clients at a glance»,\n"
    "«journal of NAME» as CSV, PDF or JSON, «journals of everyone»; old journals, CSV or JSON, I take in,\n"
    "«hand NAME over to COACH», «invite NAME as a coach», «invitations», «put me on PROGRAMME».\n"
    "Paste a sheet, or send it as a .txt file, and I say back what I understood before anything is stored."
)


FILE_FAULTS: dict[str, str] = {
    "too large": "it is too large.",
    "not text": "it is not plain text.",
    "not fetched": "the platform did not give it to me. Please send it again.",
}

SETTLED = {
    "lighten": "Settled: {client} starts {exercises} with about a tenth less and builds back.",
    "swap": "Settled: {client} does the alternative for {exercises}.",
    "rest more": "Settled: {client} has one rest day more before the next workout.",
    "next programme": "Settled: {client} goes on with the next programme.",
    "keep on": "Settled: I leave {client}'s {exercises} alone for {while}.",
    "lift hold": "Settled: what was set aside is back in {client}'s plan.",
    "keep held": "Settled: it stays aside for {client}.",
    "let train": "Settled: {client} trains again.",
    "seen": "Settled.",
}


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
    return SETTLED[str(facts["remedy"])].format_map(
        {
            "client": escape(str(facts["client"])),
            "exercises": escape(listed(facts["exercises"])),
            "while": f"{facts['workouts']} workouts" if facts.get("workouts") else "a while",
        }
    )


def _nothing_aside(facts: Facts, _reader: Reader) -> str:
    client = escape(str(facts["client"]))
    if facts.get("aside"):
        named = escape(str(facts["exercise"]))
        aside = escape(listed(facts["aside"]))
        return f"«{named}» is not aside for {client}. Aside: {aside}."
    return f"Nothing is aside for {client}."


def _done_though_aside(facts: Facts, _reader: Reader) -> str:
    sets = [value_of(TrainingSet, each) for each in facts["sets"]]
    named = "; ".join(f"{escape(each.exercise)} {set_words(each)}" for each in sets)
    client = bold(str(facts["client"]))
    return f"{client} has done what is set aside for pain: {named}. I have said to leave it."


def _card(facts: Facts, _reader: Reader) -> str:
    lines = []
    if facts.get("coming"):
        place = f", {facts['place']} of {facts['of']}" if facts.get("place") else ""
        lines.append(f"Next: {escape(str(facts['coming']))}{place}, round {facts['round']}")
    lines += [f"Out until your word: {escape(listed(facts['kept_out']))}"] if facts.get("kept_out") else []
    lines += [
        f"{escape(str(each['instead']))} in place of {escape(str(each['exercise']))}"
        for each in facts.get("swaps", [])
    ]
    lines += [f"Without: {escape(listed(facts['lacking']))}"] if facts.get("lacking") else []
    off = "off" if facts.get("reminders_off") else f"at {facts.get('remind_at')}"
    lines.append(f"Reminder {off}; it is {facts.get('local')} there now")
    for each in facts["workouts"]:
        lines += ["", *_workout(each)]
    if not facts["workouts"]:
        lines += ["", "Nothing in the journal yet."]
    missing = [_not_understood(each) for each in facts.get("not_understood", [])]
    lines += ["", "Not understood", *missing] if missing else []
    notes = [note_line(each) for each in facts.get("notes", [])]
    return "\n".join([*lines, *(["", "Your notes", *notes] if notes else [])])


def _workout(facts: Facts) -> list[str]:
    name = str(facts["workout"] or "Beside the sheet")
    state = " (missed)" if facts["state"] == "missed" else ""
    rows = [f"{escape(str(row['exercise']))} {time_words(row, day=False)}" for row in facts["rows"]]
    return [f"{bold(name)}, {day_words(str(facts['on']))}{state}", *rows]


RESULTS = {
    "worked": "It worked.",
    "did not": "It has not worked.",
    "too early": "It is coming back, but too early to tell; I look once more after as many workouts again.",
}


def _followed_up(facts: Facts, _reader: Reader) -> str:
    client, since = bold(str(facts["client"])), day_words(str(facts["on"]))
    result = RESULTS[str(facts["result"])]
    if facts.get("gain_per_round") is not None:
        gain, rounds = percent_words(float(facts["gain_per_round"])), facts["exposures"]
        programme = escape(str(facts["programme"]))
        return f"{client} on {programme} since {since}: {gain} a round over {rounds} rounds. {result}"
    if facts.get("looked_at") is not None:
        remedy, names = REMEDIES_TAKEN[str(facts["remedy"])], bold(listed(facts["exercises"]))
        return (
            f"{client} on {names} since {remedy} on {since}: more than ever before in {facts['worked']} of "
            f"{facts['looked_at']}. {result}"
        )
    then, now, best = (set_words(value_of(TrainingSet, facts[key])) for key in ("then", "now", "best"))
    remedy, exercise = REMEDIES_TAKEN[str(facts["remedy"])], bold(listed(facts["exercises"]))
    return (
        f"{client} on {exercise} since {remedy} on {since}: {then} then, {now} now; "
        f"best before {best}. {result}"
    )


REMEDIES_TAKEN = {
    "lighten": "the load went down",
    "swap": "it came as the alternative",
    "rest more": "the rest day more",
    "next programme": "the next programme",
    "keep on": "it was left alone",
    "write": "you wrote",
}


def _remedies(facts: Facts, _reader: Reader) -> str:
    rows = facts["rows"]
    if not any("taken" in row for row in rows):
        return "No remedy has been taken yet."
    lines = [
        f"{(REMEDIES | WRITING)[row['remedy']]}: taken {row['taken']}; "
        f"worked {row['worked']}, did not {row['did_not']}, too early to tell {row['early']}"
        for row in rows
    ]
    return "\n".join([bold("Remedies, over all clients"), *lines, "Few cases: a hint, and no proof."])


LACKS = {
    "exercise": "which exercise",
    "load": "what load",
    "reps": "how many reps",
    "seconds": "how many seconds",
    "unit": "kg or lb",
    "date": "which day",
    "confirm": "how it is meant",
}
"""What of a set was never told."""


def _not_understood(facts: Facts) -> str:
    lacks = listed([LACKS[slot] for slot in facts["lacks"]])
    return f"{day_words(facts['on'])}: {quoted(str(facts['text']))} ({lacks})"


def _talk(facts: Facts, _reader: Reader) -> str:
    if not facts["rows"]:
        return f"You and {bold(str(facts['client']))} have not written to each other yet."
    lines = [
        f"{day_words(row['on'])}, {escape(str(row['name']))}: {escape(str(row['text']))}"
        for row in facts["rows"]
    ]
    return "\n".join([f"With {bold(str(facts['client']))}:", *lines])


COACH_WORDS: dict[Topic, Words] = {
    "changed": changed_words,
    "undone": undone_words,
    "which exercise of client": which_exercise_words,
    "sets of client": sets_of_client_words,
    "not sent": "Good, it goes to nobody.",
    "nobody to tell": "There is nobody to tell that to.",
    "nothing to undo": lambda facts, _: (
        f"There is nothing to undo for {bold(str(facts['client']))}."
        if facts.get("client")
        else "There is no change of yours to take back. What you wrote to a client has been passed on: "
        "write once more to put it right."
    ),
    "already in it": filled(
        "{client} does {instead} in that workout already, so it would come twice, and nothing is changed. "
        "«No {exercise} for {client}» takes the other one out."
    ),
    "already out": filled("{exercise} is out for {client} already."),
    "other kind": filled(
        "{exercise} and {instead} are not counted alike, reps with one and seconds with the other, so the "
        "sheet has to say the range. Nothing is changed for {client}."
    ),
    "nothing planned for client": lambda facts, _: (
        f"{bold(str(facts['client']))} is paused, so there is no workout to put off."
        if facts.get("paused")
        else f"{bold(str(facts['client']))} has no workout planned, so there is none to put off."
    ),
    "no such hour for client": filled(
        "I find no time of day in «{said}», so nothing is changed for {client}. Say it as "
        "«remind {client} at 18:30»."
    ),
    "too much rest": lambda facts, _: (
        f"Between one and {facts['most']} days, please; for longer the client says «away till …»."
    ),
    "client's own days": lambda facts, _: (
        f"The days of {bold(str(facts['client']))} are the client's own to move, in the chat with me: «pause "
        "until Monday», «move it to Friday», «can't today», «I'm ill», «no reminders». You see it on the "
        "card. From here you can give a rest day more, set the hour of the reminder, or write."
    ),
    "of the sheet": lambda facts, _: (
        "Sets, reps and how often to train stand in the sheet, and loads and aims follow from what was done, "
        "so nothing is changed. To have it otherwise for "
        f"{bold(str(facts['client']))} alone, paste the sheet with the change under a name of its own, then "
        f"say «put {escape(str(facts['client']))} on» that name. In words I can swap an exercise, leave one "
        "out, give a rest day more or set the reminder."
    ),
    "client's own leaving": lambda facts, _: (
        f"Whether everything about {bold(str(facts['client']))} is erased is for the client alone to say, by "
        "«leave» in the chat with me; you are told when it happens. «Hand "
        f"{escape(str(facts['client']))} over to» another coach ends it for you alone."
    ),
    "who is on": with_names("On {programme}: {names}.", "Nobody is on that programme."),
    "coach unsure": lambda facts, _: (
        f"I am not sure what to do about {bold(str(facts['client']))}. To pass words on, begin with "
        f"«tell {escape(str(facts['client']))}»."
    ),
    "reasons of client": lambda facts, _: (
        f"Why, for {bold(str(facts['client']))}:"
        if facts.get("known")
        else f"I have told {bold(str(facts['client']))} nothing of that yet, so there is nothing to explain."
    ),
    "passed to client": filled("Passed on to {client}."),
    "talk": _talk,
    "client answers": lambda facts, _: (
        f"{bold(str(facts['client']))} answers: «{italic(str(facts['text']))}»\n"
        "Reply to this message to answer."
    ),
    "nothing aside": _nothing_aside,
    "done though aside": _done_though_aside,
    "stall answers": lambda facts, _: (
        f"{bold(str(facts['client']))} on {bold(listed(facts['exercises']))}. "
        f"{answers_words(facts['answers'])}"
    ),
    "stall withdrawn": filled(
        "{client} has put sets of {exercises} right: there is no stall after all, so that matter is settled."
    ),
    "edit not taken": "I do not act on edited messages, only on an edited sheet. Please send it anew.",
    "already settled": filled("That matter of {client}'s is settled already."),
    "settled": _settled,
    "hours kept": filled(
        "From {begin} to {end} I write to you of what can wait. Pain and warning signs come at once."
    ),
    "no such hours": "I need two hours of one day, the later one last. Say it as «my hours are 8 to 20».",
    "rule kept": lambda facts, _: (
        f"From now on a stall is {facts['workouts']} workouts in a row without a beat, where the sheet says "
        "nothing else. Say «no rule» and I tell stalls from bad days myself again."
    ),
    "no such rule": "I need two workouts at least. Say it as «tell me after 4 without a beat».",
    "no rule": (
        "Good: where a sheet names no rule, I tell stalls from bad days myself, by each client's own gain "
        "and how much a day varies."
    ),
    "followed up": _followed_up,
    "remedies": _remedies,
    "still open": lambda facts, _: (
        f"Still open with {bold(str(facts['client']))}, since {day_words(str(facts['since']))}. "
        "I bring it up this once; after that it stands in the weekly look back."
    ),
    "remedy not possible": filled("That does not fit {client}'s sheet, so nothing is changed."),
    "no such programme": filled("I do not have that programme, so nothing is changed for {client}."),
    "programme given": lambda facts, _: (
        f"{bold(str(facts['client']))} is on {bold(str(facts['programme']))}"
        + (f", version {facts['version']}," if facts.get("version") else "")
        + " now."
    ),
    "card": _card,
    "coach already here": lambda _, reader: f"You are in, {escape(reader.name)}.\n{COACH_HELP}",
    "file not taken": lambda facts, _: (
        f"I could not take {escape(str(facts['name']))}: "
        + FILE_FAULTS.get(str(facts.get("fault")), "I could not read it.")
        + " A sheet is a plain .txt file."
    ),
    "not your client": "That is not one of your clients.",
    "sheet faults": _sheet_faults,
    "sheet left": "Left as it is; nothing is stored.",
    "programmes": with_names(
        "Your programmes: {names}.", "No programmes yet. Paste a sheet, or send it as a .txt file."
    ),
    "coach help": lambda _facts, _: COACH_HELP,
    "coach lost": lambda _facts, _: (
        "I did not understand that, and nothing is changed. I know «who needs me?», «how is NAME doing?», "
        "«tell NAME …», changes such as «no deadlifts for NAME until I say so» or «give NAME one more rest "
        "day», and a sheet that you paste. «Help» has all of it."
    ),
    "which programme": with_names(
        "Which programme? You have: {names}.",  # as it was asked before answers were waited for
        "You have no programme yet. Paste a sheet, or send it as a .txt file.",
    ),
    "name is taken": filled("You already have a client called {name}. Use another name."),
    "unknown client": with_names(
        "I know no client called {name}. Yours are: {names}.", "You have no clients yet."
    ),
    "client renamed": filled("{client} wants to be called {name}, and goes by that here from now on."),
    "could not be shown": (
        "There is something that you should see, and it cannot be shown here. "
        "Say «who needs me?», and I tell you what is open."
    ),
    "client joined": lambda facts, _: (
        f"{escape(str(facts['client']))} has opened the chat. I ask the first questions, and tell you once "
        "they are answered."
        if facts.get("is_asked")
        else f"{escape(str(facts['client']))} has joined."
    ),
    "client agreed not": filled("{client} has not agreed to begin, so there is nothing for now."),
    "client withdraws": lambda facts, _: (
        f"{bold(str(facts['client']))} needs no answer any more to: «{italic(str(facts['text']))}»"
    ),
    "client is minor after all": lambda facts, _: (
        f"{bold(str(facts['client']))} now says to be under 18: «{escape(str(facts['said']))}»\n"
        "I have asked for a parent's or guardian's word, and there is no training before it."
    ),
    "client half-way": lambda facts, _: (
        f"{bold(str(facts['client']))} has stopped half-way through the first questions, at "
        f"{STEPS_SHORT[facts['step']]}. I have reminded once, and say no more of it; it goes on where it "
        f"stopped."
        if facts.get("step") in STEPS_SHORT
        else f"{bold(str(facts['client']))} has stopped half-way through the first questions."
    ),
    "client left": filled(
        "{client} has left. I write to {client} no more; the journal stays with you. «I'm back» brings "
        "{client} back."
    ),
    "client back": filled("{client} is back, and gets messages again."),
    "client turn": filled("{client} goes on with {workout}, as said in the chat; {instead_of} was in turn."),
    "client erased": filled(
        "{client} has had everything erased: name, messages, journal, and what I told you of them. Only "
        "counts are left. Safety copies of the database are not reached until they are replaced. Please "
        "delete what you have elsewhere, and this chat's messages on {client} as well."
    ),
    "client is minor": filled(
        "{client} is under 18. I have asked for a parent's or guardian's word, and wait for it before "
        "anything else."
    ),
    "guardian's word": lambda facts, _: (
        f"{bold(str(facts['client']))} now says to be 18 or older: «{escape(str(facts['said']))}»"
        if facts.get("is_adult")
        else f"A guardian of {bold(str(facts['client']))} agrees: «{escape(str(facts['said']))}»\n"
        "I cannot tell who typed it: please make sure."
    ),
    "to be released": to_be_released_words,
    "released": filled("{client} may begin to train."),
    "client ready": client_ready_words,
    "nothing instead": lambda facts, _: (
        f"{bold(str(facts['client']))} has nothing to do {escape(listed(facts['exercises']))} with, and the "
        "sheet has nothing else in the place. It is left out until you change that, say "
        f"«swap {escape(str(facts['client']))}'s {escape(str(facts['exercises'][0]).lower())} for …»."
    ),
    "within reach again": filled("{client} can do {exercises} again."),
    "welcome coach": lambda facts, _: f"Welcome, {bold(str(facts['name']))}. {COACH_HELP}",
}
