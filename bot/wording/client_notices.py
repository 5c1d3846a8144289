"""Words for what a client, or somebody who is to become one, is to know."""

from decimal import Decimal

from bot.markup import bold, escape
from bot.wording.asked import (
    best_words,
    equipment_known_words,
    last_workout_words,
    settings_words,
    strength_words,
    term_words,
    which_stop_words,
)
from bot.wording.coach_changes import rest_as_before_words, rest_more_words
from bot.wording.days import (
    comes_later_words,
    coming_words,
    days_ahead_words,
    early_words,
    hour_kept_words,
    moved_words,
    next_day_words,
    no_workout_words,
    out_of_turn_words,
    pause_stands_words,
    paused_words,
    rest_day_words,
    told_before_words,
    turn_taken_words,
    which_sets_words,
    workout_done_words,
    zone_later_words,
)
from bot.wording.eagerness import more_than_asked
from bot.wording.equipment import equipment_words
from bot.wording.joining import (
    CAUTIONS,
    doctor_first_words,
    joined_words,
    left_for_now_words,
    welcome_words,
    what_this_is_words,
)
from bot.wording.notice_forms import Facts, Words, filled, sets_told
from bot.wording.pictures import nothing_to_draw
from bot.wording.reader import (
    NO_BREAK,
    Reader,
    day_words,
    listed,
    number,
    plates_words,
    quoted,
    ramp_words,
    set_words,
    zone_words,
)
from bot.wording.safety import SEE_SOMEBODY
from bot.wording.taking_back import TAKING_BACK_WORDS
from bot.wording.why import why_words
from domain.sets import TrainingSet
from domain.topics import Topic
from domain.values import value_of

HELP = (
    "Send your sets as you would say them: «80 x 8», «rows 60 for 9», «bench 3x8 @ 80», «plank 50 s», "
    "«yesterday: squat 100x5».\n"
    "Put something right: «make that 9», «undo», or edit your message.\n"
    "Also: «what's next?», «why?», «how do I warm up?», «history of rows», «skip dips today», «can't today», "
    "«move it to Thursday», «away till the 14th», «I'm back», «remind me at 7», «not now, in 30 minutes», "
    "«I use pounds», «I'm in Lisbon», «my settings».\n"
    "About your training: «last time», «best rows», «what did I do on Monday?», «have I ever done 100?», "
    "«how many workouts this year?», «am I getting stronger?», «cues for the squat», «what is a superset?».\n"
    "If something hurts, say so. A question for your coach: just ask it. «stop» ends the reminders, "
    "«leave» all of it.\n"
)


def _still_aside(facts: Facts, _reader: Reader) -> str:
    named = [
        bold(exercise) if where == "other" else f"{bold(exercise)} ({escape(where)})"
        for exercise, where in facts["aside"]
    ]
    are, it = ("is", "it") if len(named) == 1 else ("are", "them")
    coach = escape(str(facts["coach"]))
    return (
        f"{listed(named)} {are} set aside. Leave {it} until {coach} puts {it} back, and see a qualified "
        f"professional (a doctor or a physiotherapist) before you load {it} again."
    )


def _fine_again(facts: Facts, _reader: Reader) -> str:
    aside, coach = facts["exercises"], escape(str(facts["coach"]))
    stays, it = ("stays", "it") if len(aside) == 1 else ("stay", "them")
    return (
        f"Good to hear, and I have told {coach}. {bold(listed(aside))} {stays} aside until {coach} puts {it} "
        "back. A qualified professional (a doctor or a physiotherapist) should have seen it by then."
    )


def _history(facts: Facts, _reader: Reader) -> str:
    rows = [
        f"{day_words(row['on'])}: {set_words(value_of(TrainingSet, row['set']))}" for row in facts["rows"]
    ]
    return "\n".join([bold(str(facts["exercise"])), *rows])


def _no_history(facts: Facts, _reader: Reader) -> str:
    of = f" of {bold(str(facts['exercise']))}" if facts.get("exercise") else ""
    return f"Nothing{of} stands in your journal yet."


def _left_out(facts: Facts, _reader: Reader) -> str:
    return f"{escape(listed(facts['exercises']))} left out of {bold(str(facts['workout']))} this time."


def _zone_kept(facts: Facts, _reader: Reader) -> str:
    zone, on = str(facts["zone"]), facts.get("on")
    now = f"{facts['local']} on {day_words(str(on))}" if on else f"{facts['local']} now"
    if zone.startswith("Etc/"):
        return (
            f"Noted: {zone_words(zone)}, where it is {now}. Tell me a town, and I follow it "
            "when its clocks change."
        )
    return f"Noted: you are in {escape(zone)}, where it is {now}."


def _stall(facts: Facts, _reader: Reader) -> str:
    names = facts["exercises"]
    if "without_beat" in facts:
        what = f"has not gone up {facts['without_beat']} times in a row."
    else:
        verb = ("has" if len(names) == 1 else "have") + (
            " gone down" if facts["declining"] else " not gone up"
        )
        what = f"{verb} since {day_words(str(facts['since']))}, as far as one can tell from days that vary."
    return (
        f"{bold(listed(names))} {what} "
        "That happens and is no fault of yours; your coach hears of it and will decide what to change."
    )


def _review(facts: Facts, _reader: Reader) -> str:
    found = (
        "you have become stronger over all"
        if facts["risen"]
        else "strength has not clearly risen over all, so your coach takes a look at the programme"
    )
    return f"That was round {facts['rounds']}. Looking back: {found}."


def _from_coach(facts: Facts, _reader: Reader) -> str:
    words = f"{bold(str(facts['coach']))}: {escape(str(facts['text']))}"
    return f"{words}\n(To {quoted(str(facts['answers']))})" if facts.get("answers") else words


def _warm_up(facts: Facts, _reader: Reader) -> str:
    ramps = [tuple(value_of(TrainingSet, each) for each in ramp) for ramp in facts["ramps"]]
    lines = [f"{escape(ramp[0].exercise)}: {ramp_words(ramp)}" for ramp in ramps]
    head = f"Warm-up for {bold(str(facts['workout']))}"
    said = [f"{head}, easy sets in this order:" if len(lines) > 1 else f"{head}:", *lines] if lines else []
    if facts["to_find"]:
        said.append(f"{escape(listed(facts['to_find']))}: the way up to a first load is the warm-up.")
    if facts["others"]:
        said.append(f"{escape(listed(facts['others']))}: a few easy reps of it are enough.")
    if not said:
        return "Nothing is left that needs a warm-up."
    return "\n".join([*said, "Warm-up sets are no record: send me only the hard ones."])


def _plates(facts: Facts, _reader: Reader) -> str:
    unit = facts["unit"]
    asked = f"{number(Decimal(facts['load']))}{NO_BREAK}{unit}"
    bar = f"{number(Decimal(facts['bar']))}{NO_BREAK}{facts['bar_unit']} bar"
    other_unit = "" if facts["bar_unit"] == unit else f"{NO_BREAK}{facts['bar_unit']}"
    loads = [
        (
            f"{number(Decimal(each['load']))}{NO_BREAK}{unit}",
            plates_words(tuple(map(Decimal, each["plates"]))) + (other_unit if each["plates"] else ""),
        )
        for each in facts["loads"]
    ]
    if len(loads) == 1 and loads[0][0] == asked:
        return f"{asked}: {loads[0][1]}" + (f", on a {bar}." if facts["loads"][0]["plates"] else ".")
    nearest = listed([f"{load} ({plates})" for load, plates in loads], "or")
    return f"{asked} cannot be loaded with your plates on a {bar}. Nearest: {nearest}."


CLIENT_WORDS: dict[Topic, Words] = {
    **TAKING_BACK_WORDS,
    "no file wanted": "I read files only from coaches. Type your sets as you would say them: «80 x 8».",
    "already here": lambda _, reader: f"You are in, {escape(reader.name)}.\n{HELP}",
    "words only": filled("I can only read words, not a {what}. Type it as you would say it: «80 x 8»."),
    "cut": "That was too much at once, so I record nothing of it. Please send it once more, in parts.",
    "went wrong": "Sorry, something went wrong on my side with that. It is kept; please say it another way.",
    "read again": "Read again after your edit.",
    "of that day": lambda facts, _: f"{day_words(str(facts['on']))}, then.",
    "button is old": "That button belongs to an earlier question. Just type what you mean.",
    "button is not yours": "That button does nothing here. Just type what you mean.",
    "no set found": "I found no set in that, so nothing is recorded. Say it as «80 kg x 8», or «help».",
    "which sets then": which_sets_words,
    "heard": "All right.",
    "nothing recorded": "All right. I found nothing to record in that; say «help» for what I understand.",
    "out of reason": "Those numbers are beyond anything I know, so I record none of them. Once more, please?",
    "other script": "I can read only English so far. Send your sets as «80 x 8», or say «help».",
    "nothing to read": "I find no words in that. Send your sets as «80 x 8», or say «help».",
    "say it again": "Then I record nothing. Send it once more as it was, say as «80 kg x 8».",
    "no trouble": "Good to know. Should that change, leave the exercise and tell me.",
    "feels odd": filled(
        "Does it hurt? Then leave what loads it, and say «{hurts}»: I set it aside and tell {coach}. If it "
        "stays odd, have it looked at by a qualified professional (a doctor or a physiotherapist)."
    ),
    "feels dizzy": "Sit or lie down until it has wholly passed, and drink something; if it comes again, stop "
    "for today and see a doctor before you go on. Should you faint or nearly faint, or should it come with "
    "pain in the chest, a racing heart or trouble breathing, call your local emergency number.",
    "moved": moved_words,
    "missed noted": lambda facts, _: (
        f"All right. Next: {bold(str(facts['workout']))}"
        + (f", {day_words(str(facts['on']))}." if facts.get("on") else ".")
    ),
    "trained after all": lambda facts, _: (
        f"Good. Send me the sets of {bold(str(facts['workout']))} as they were; I put them down for "
        f"{day_words(str(facts['on']))}."
    ),
    "help": lambda _facts, _reader: HELP + CAUTIONS,
    "reminders off": "No more reminders. Your journal stays; say «start reminders» to have them back.",
    "nothing to leave out": "There is nothing to leave out: no workout is planned.",
    "left out": _left_out,
    "not in it": lambda facts, _: (
        f"{escape(listed(facts['exercises'], 'or'))} is not in {bold(str(facts['workout']))} anyway."
    ),
    "nothing to move": "There is nothing to move: no workout is planned.",
    "rest day": rest_day_words,
    "next day": next_day_words,
    "comes later": comes_later_words,
    "days ahead": days_ahead_words,
    "early": early_words,
    "moved away": lambda facts, _: "All right, not this time." + coming_words(facts, " Next is"),
    "day is past": lambda facts, _: (
        f"{day_words(str(facts['on'])).capitalize()} is past. Which day do you mean?"
    ),
    "rest of it moved": lambda facts, _: (
        f"The rest of {bold(str(facts['workout']))} on {day_words(str(facts['on']))}, then. "
        "What you sent stands."
    ),
    "put off often": filled(
        "It has been put off a few times now, so I let {coach} know. Perhaps other days, or another hour, "
        "suit you better? «remind me at 7» changes the hour."
    ),
    "paused": paused_words,
    "no pause": lambda facts, _: "All right, no pause then." + coming_words(facts, " Next is"),
    "trains on there": "Good, then it goes on as planned. If the clocks are other ones there, say «I'm in "
    "Lisbon» once you have arrived; «away till the 14th» pauses it after all.",
    "pause over": "You train again, so the pause is over.",
    "still ill": "Take the time that it takes; I stay quiet. Once you are well, say «I'm back», and we begin "
    "lighter.",
    "turn taken": turn_taken_words,
    "out of turn": out_of_turn_words,
    "told before": told_before_words,
    "pause stands": pause_stands_words,
    "reminders rest": lambda facts, _: (
        "I have heard nothing for a while, so I stop reminding you now. Nothing is lost: say «I'm back», or "
        f"send your sets, whenever you like. {escape(str(facts['coach']))} knows."
    ),
    "reminders on": lambda facts, _: "Reminders are on again." + coming_words(facts, " Next is"),
    "back": lambda facts, _: "Welcome back." + coming_words(facts, " Next is"),
    "warm-up": _warm_up,
    "plates": _plates,
    "get well": "Get well first: no training with a fever, or with pain, tightness or short breath in the "
    "chest. If you are unsure, ask a doctor. Once you are back, we begin lighter.",
    "warm-up noted": "Good. Warm-up sets are no record; send me the hard ones.",
    "written down": lambda facts, _: f"Written down: {sets_told(facts['sets'])}.",
    "still aside": _still_aside,
    "fine again": _fine_again,
    "passed on": filled("I have passed that on to {coach}."),
    "no workout planned": no_workout_words,
    "no history": _no_history,
    "nothing to draw": nothing_to_draw,
    "history": _history,
    "why": why_words,
    "no such hour": "There is no such hour. Say it as «remind me at 7» or «remind me at 18:30».",
    "hour kept": hour_kept_words,
    "again later": filled("All right, I remind you once more at {at}."),
    "when later": "When shall I remind you? Say «in 30 minutes» or «again at 6 pm», or move it.",
    "too late today": "That is no longer today. Shall I move it to tomorrow?",
    "name kept": filled("All right, {name} it is."),
    "zone later": zone_later_words,
    "unit kept": filled("Plain numbers are {unit} from now on. What is recorded stays as you said it."),
    "body mass unlikely": filled(
        "I may have misread {mass}. Say it as «I weigh 72 kg» or «I weigh 11 stone 5»."
    ),
    "body mass taken back": lambda facts, _: (
        f"Taken back. As before: {facts['mass']} {facts['unit']}."
        if facts.get("mass")
        else "Taken back: I know no body weight of yours."
    ),
    "body mass later": "All right, another time. It works without.",
    "body mass not asked": "All right, I do not ask for it. Should you want it counted, say «I weigh …».",
    "body mass kept": filled("Noted: {mass} {unit}."),
    "equipment kept": equipment_words,
    "zone kept": _zone_kept,
    "which town": "There are several times in that country. Say a town: «I'm in Lisbon».",
    "place unclear": lambda facts, _: (
        f"I cannot tell where that is. As I know it you are in {escape(zone_words(facts['zone']))}, where it "
        f"is {facts['local']} now. If that is wrong, say a large town near you: «I'm in Lisbon»."
    ),
    "trouble noted": lambda facts, _: (
        f"I pass that on to {escape(str(facts['coach']))}. If it is pain or trouble with a joint, leave "
        f"{bold(listed(facts['exercises'], last='or'))} and tell me so. {SEE_SOMEBODY}"
    ),
    "lately noted": filled("Thank you. {coach} gets that with the rest, and decides what to change."),
    "stall": _stall,
    "review": _review,
    "workout done": workout_done_words,
    "more than asked": more_than_asked,
    "your new coach": filled(
        "{coach} is your coach from now on, in place of {before}. Your journal and all that is open is with "
        "{coach}, and you go on as before; {before} sees nothing of it any more. If you do not want that, "
        "say «leave» or «delete my data», or write to {coach} here."
    ),
    "from coach": _from_coach,
    "rest more": rest_more_words,
    "rest as before": rest_as_before_words,
    "hour from coach": filled("{coach} has set your reminder to {at}. Say «remind me at 8» to change it."),
    "lighter": filled("{coach} takes the load down on {exercises}: you build back from there."),
    "swapped": filled("{coach} changes {exercise} to {instead} from the next workout on."),
    "keep on": filled("{coach} has seen {exercises} and lets you go on as you are."),
    "hold lifted": lambda facts, _: (
        f"{escape(str(facts['coach']))} has put {escape(listed(facts['exercises']))} back into your plan, "
        "lighter to begin with. If it hurts again, leave it and tell me."
    ),
    "new programme": lambda facts, _: (
        f"{escape(str(facts['coach']))} has changed {bold(str(facts['programme']))} for you."
        + (" Next comes:" if facts.get("begins") else "")
        if facts.get("is_newer")
        else f"{escape(str(facts['coach']))} has put you on {bold(str(facts['programme']))}."
        + (" It begins with:" if facts.get("begins") else "")
    ),
    "barred": filled(
        "No training for now: after what you wrote, {coach} first has to let it go on. Have it looked at by "
        "a doctor, and call your local emergency number if it comes back."
    ),
    "doctor first": doctor_first_words,
    "waits for doctor": filled(
        "That is all I need for now. There is no training until you have seen a doctor and {coach} lets it "
        "begin; "
        "then I ask for the first day. In an emergency call your local emergency number."
    ),
    "training later": "Training comes as soon as the questions are answered.",
    "may begin": filled(
        "{coach} lets your training begin. If anything comes up that worries you, stop and ask a doctor; "
        "in an emergency call your local emergency number."
    ),
    "guardian noted": filled("Thank you. I have told {coach}."),
    "reminders unwanted": "All right, no reminders. Say «remind me at 7» should you want them.",
    "what this is": what_this_is_words,
    "later with that": "I keep that and take it once the questions are answered, so that nothing is lost.",
    "left for now": left_for_now_words,
    "joining edit": "I take no edited answers. To change something, say it in a new message.",
    "still there": filled("A few questions are still open before you can begin with {coach}. No hurry:"),
    "joined": joined_words,
    "which hour": filled("Now it is {at}. Say the hour that you want, as «remind me at 7»."),
    "which stop": which_stop_words,
    "coach is reached": filled("Just ask here: I pass questions on to {coach}, and bring you the answer."),
    "term": term_words,
    "settings": settings_words,
    "equipment known": equipment_known_words,
    "last workout": last_workout_words,
    "best": best_words,
    "no cues at all": lambda facts, _: f"The sheet has no cues for {bold(str(facts['workout']))}.",
    "strength so far": strength_words,
    "no such unit": "I count loads in kg or lb. Your body weight may be in stone: «I weigh 11 stone 5».",
    "thanked": "You are welcome.",
    "question withdrawn": filled("All right, I have told {coach} that it needs no answer."),
    "minor after all": "Thank you for telling me. Training waits until that is settled.",
    "all stays": "All right, nothing is erased, and we go on as before.",
    "left": filled(
        "Done: I write no more, and {coach} keeps your journal. Say «I'm back» if you want to go on, «send "
        "me my data» or «erase my data» at any time. All the best."
    ),
    "erased": filled(
        "Everything is erased. Out of reach are what {coach} has read and safety copies, until they are "
        "replaced. Thank you, and all the best. To begin again, ask {coach} for a new invitation."
    ),
    "erased before": "Nothing is kept about you any more. To begin again, ask your coach for an invitation.",
    "let train": filled(
        "{coach} lets your training go on. If anything of it comes back, stop and call your local emergency "
        "number."
    ),
    "stranger": "Hello. This chat is for invited people only; ask your coach for an invitation.",
    "invitation is over": "This invitation is used or has run out. Please ask your coach for a new one.",
    "welcome": welcome_words,
}
