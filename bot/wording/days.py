"""Words for a client about days: what is done, what is moved, what comes when."""

from datetime import date

from bot.markup import bold, escape
from bot.wording.notice_forms import Facts, sets_told
from bot.wording.reader import (
    Reader,
    day_words,
    listed,
)


def coming_words(facts: Facts, lead: str) -> str:
    """Say what comes next after `lead`, where anything does."""
    if not facts.get("workout") and not facts.get("next"):
        return ""
    name = str(facts.get("workout") or facts.get("next"))
    when = f", {day_words(str(facts['on']))}" if facts.get("on") else ""
    return f"{lead} {bold(name)}{when}."


def workout_done_words(facts: Facts, _reader: Reader) -> str:
    """Say that a workout is closed, what was beaten in it, and what comes next."""
    beaten, as_aimed, not_beaten = (
        list(facts.get(how) or ()) for how in ("beaten", "as_aimed", "not_beaten")
    )
    untold = list(facts.get("untold") or ())
    name = bold(str(facts["workout"]))
    if facts.get("closed_of"):
        head = f"{name} of {day_words(str(facts['closed_of']))} is closed"
    else:
        head = f"That is it for {name}" if untold else f"That completes {name}"
    lines = [f"{head}{_tally(beaten, as_aimed, not_beaten)}."]
    if untold and not facts.get("rest_told"):
        it = "it" if len(untold) == 1 else "them"
        lines.append(f"Not told of: {escape(listed(untold))}. Should you have done {it}, just send {it}.")
    if facts.get("next"):
        aims = sets_told(facts.get("aims") or ())
        to_aim = f"\nTo aim for: {aims}." if aims else ""
        day = day_words(str(facts["on"]))
        lines.append(f"Next: {bold(str(facts['next']))}, {day}{_for_rest(facts)}.{to_aim}")
    return ("\n" if untold else " ").join(lines)


def _tally(beaten: list[str], as_aimed: list[str], not_beaten: list[str]) -> str:
    """Say what was beaten and what not, where there was more than one to beat."""
    count = len(beaten) + len(as_aimed) + len(not_beaten)
    if count < 2:
        return ""
    all_of_them = "both" if count == 2 else f"all {count}"
    if len(beaten) == count:
        return f": {all_of_them} beaten"
    if len(as_aimed) == count:
        return f": {all_of_them} as aimed for"
    if len(not_beaten) == count:
        return ": nothing beaten this time, and that is part of it"
    groups = (("beaten", beaten), ("as aimed for", as_aimed), ("not this time", not_beaten))
    return ": " + ", ".join(f"{how} {escape(listed(names))}" for how, names in groups if names)


def _for_rest(facts: Facts) -> str:
    """Say behind a day from which fixed day a workout is put off, and for how much rest."""
    if not facts.get("own_day"):
        return ""
    days = int(facts["whole_rest_days"])
    rest = "rest day" if days == 1 else f"{days} rest days"
    return f" rather than {date.fromisoformat(str(facts['own_day'])):%A}, for the {rest} in between"


def moved_words(facts: Facts, _reader: Reader) -> str:
    """Say on which day a workout is now, and where that is early, what the coach has set."""
    moved = f"{bold(str(facts['workout']))} is now on {day_words(str(facts['on']))}."
    if not facts.get("rest_until"):
        if not (facts.get("own_day") or (facts.get("in_its_place") and facts.get("next"))):
            return f"{moved} Nothing is lost."
        next_on = day_words(str(facts["next_on"]))
        return f"{moved} Nothing is lost; {bold(str(facts['next']))} is then on {next_on}{_for_rest(facts)}."
    return f"{moved} {_better_rested(facts)}"


def out_of_turn_words(facts: Facts, _reader: Reader) -> str:
    """Say that another workout than the one in turn is done today, and where that is early, what is set."""
    after = f"; {bold(str(facts['next']))} comes after it" if facts.get("next") else ""
    said = f"{bold(str(facts['workout']))} today, then{after}."
    return f"{said} {_better_rested(facts)}" if facts.get("rest_until") else said


def _better_rested(facts: Facts) -> str:
    days = facts.get("rest_days")
    rest = f"{days} rest {'day' if days == 1 else 'days'} between workouts" if days else "some rest first"
    return (
        f"{escape(str(facts['coach']))} has set {rest}, in which strength comes back and a little more: "
        f"{day_words(str(facts['rest_until']))} is the better day. You decide."
    )


def turn_taken_words(facts: Facts, _reader: Reader) -> str:
    """Say that a workout is next because the client says so, and when."""
    on = f", {day_words(str(facts['on']))}" if facts.get("on") else ""
    return f"All right: {bold(str(facts['workout']))} is next{on}, and the order goes on from there."


def told_before_words(facts: Facts, _reader: Reader) -> str:
    """Say that what is told stands already, and how a second time is told."""
    names = list(facts.get("exercises") or ())
    what = bold(listed(names)) if names else "That"
    return (
        f"{what} {'stand' if len(names) > 1 else 'stands'} in your journal already, for "
        f"{day_words(str(facts['on']))}, so I leave it at that. If you did it a second time, send it with "
        "«again»."
    )


def pause_stands_words(facts: Facts, _reader: Reader) -> str:
    """Say in a pause with an end that training counts, and does not end it."""
    return (
        f"You are paused until {day_words(str(facts['until']))}; say «I'm back» to end that. What you train "
        "counts either way."
    )


def rest_day_words(facts: Facts, _reader: Reader) -> str:
    """Say that nothing is planned, and what is next."""
    days = listed([day_words(str(each)) for each in facts.get("not_on") or ()], "or")
    return f"Nothing is planned {f'on {days}' if days else 'today'}." + coming_words(facts, " Next is")


def hour_kept_words(facts: Facts, _reader: Reader) -> str:
    """Say the hour of the reminder; where it was not said, that another one is as well."""
    kept = f"Reminders come at {facts['at']} from now on."
    return f"{kept} For another hour say, for example, «remind me at 19:30»." if facts.get("chosen") else kept


def zone_later_words(facts: Facts, _reader: Reader) -> str:
    """Say how the clocks of another place come to be gone by; of a return home, what is until then."""
    place = escape(str(facts["place"]))
    if facts.get("until"):
        until = day_words(str(facts["until"]))
        return (
            f"Good to know. Until {until} all goes on as it stands, by the clocks of {place}. If you do not "
            "train until then, tap below and I keep quiet; if you train elsewhere, say where, as «I'm in "
            "Lisbon»."
        )
    back = " back" if facts.get("back") else ""
    return f"Have a good trip{back}. Once you are there, say «I'm in {place}», and I go by the clocks there."


def next_day_words(facts: Facts, _reader: Reader) -> str:
    """Say when the next workout is."""
    days = int(facts.get("days") or 0)
    near = {0: "today", 1: "tomorrow"}.get(days)
    when = near or f"{day_words(str(facts['on']))}, in {days} days"
    begun = f"{bold(str(facts['begun']))} is under way. " if facts.get("begun") else ""
    return f"{begun}Next: {bold(str(facts['workout']))}, {when}{_for_rest(facts)}."


def comes_later_words(facts: Facts, _reader: Reader) -> str:
    """Say when a workout comes, where another comes before the day for which it was wanted."""
    workout, first = bold(str(facts["workout"])), bold(str(facts["first"]))
    on, first_on, wanted = day_words(str(facts["on"])), day_words(str(facts["first_on"])), facts.get("wanted")
    if facts.get("as_said"):
        return f"{workout} is on {on}, as you say. Before it comes {first}, on {first_on}."
    moved = f"{first} comes first, on {first_on}, then {workout} on {on}. I have moved nothing"
    if wanted is None:
        return f"{moved}."
    today = escape(f"{str(facts['workout']).lower()} today")
    return f"{moved}: each has its own day. On {day_words(str(wanted))} say «{today}», and you have it then."


def days_ahead_words(facts: Facts, _reader: Reader) -> str:
    """Say what the days to come have."""
    days = [f"{day_words(str(each['on']))}: {bold(str(each['workout']))}" for each in facts["days"]]
    if not days:
        return f"No workout between {day_words(str(facts['since']))} and {day_words(str(facts['until']))}."
    return "\n".join(["If each is done on its day:", *days])


def early_words(facts: Facts, _reader: Reader) -> str:
    """Say what the coach has set where somebody wants to train early."""
    day = day_words(str(facts["on"]), date.fromisoformat(str(facts["today"])))
    name, planned = bold(str(facts["workout"])), day_words(str(facts["due"]))
    if not facts.get("rest_until"):
        return f"You can: by {day} you have had your rest. {name} was for {planned}; shall I move it?"
    days = facts.get("rest_days")
    rest = f"{days} rest {'day' if days == 1 else 'days'} between workouts" if days else "some rest first"
    coach = escape(str(facts["coach"]))
    return (
        f"{name} is for {planned}: {coach} has set {rest}, in which strength comes back and a little more: "
        f"that day is the better one. You decide. Train {day}, and I write it down, and {coach} sees it."
    )


def paused_words(facts: Facts, _reader: Reader) -> str:
    """Say from when until when there is a pause, and what comes before one that is still to come."""
    until = f" until {day_words(str(facts['until']))}" if facts.get("until") else ""
    if facts.get("since"):
        since = day_words(str(facts["since"]))
        return f"Paused from {since}{until}; before that all goes on.{coming_words(facts, ' Next is')}"
    return f"Paused{until}. No reminders; say «I'm back» whenever you are."


def no_workout_words(facts: Facts, _reader: Reader) -> str:
    """Say why there is no workout to come."""
    if facts.get("paused"):
        return "You are paused. Say «I'm back» whenever you are."
    if facts.get("since"):
        away = day_words(str(facts["since"]))
        return f"Nothing more is planned: you are away from {away}. Say «I'm back» once you are."
    return "No workout is planned: your coach has not put you on a programme yet."


def which_sets_words(facts: Facts, _reader: Reader) -> str:
    """Ask for the sets of a workout of which it is not plain what was planned."""
    day = f"{date.fromisoformat(str(facts['on'])):%A}"
    return (
        f"Good. Which sets were those? Send them as they were, say «{day}: squat 80 x 8»; I do not want to "
        "guess them."
    )
