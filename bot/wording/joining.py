"""Words for a new client's first questions: what the bot is and is not, what is asked, how it ends.

They never name a condition and never say that anything is harmless. Whoever comes from a roster is only
welcomed.
"""

from typing import Any

from bot.markup import bold, escape
from bot.wording.reader import Reader, day_words, listed, zone_words
from domain.memory import JoiningStep
from domain.readiness import MATTERS, Matter

CAUTIONS = (
    "I am a program, no doctor: nothing I say is medical advice, and I am not for emergencies. In an "
    "emergency call your local emergency number. If something hurts, leave it and see a doctor or a "
    "physiotherapist."
)


def welcome_words(facts: dict[str, Any], _reader: Reader) -> str:
    """Welcome a client: cautions first, then how it works and how to change the settings."""
    coach = escape(str(facts["coach"]))
    programme = f" for {bold(str(facts['programme']))}" if facts.get("programme") else ""
    return (
        f"Welcome, {bold(str(facts['name']))}. I keep your training journal with {coach}{programme}.\n\n"
        f"{CAUTIONS} Before you start with hard training, ask a doctor if you have any illness or symptom, "
        "or have not trained for long.\n\n"
        f"What you send me is kept in your journal and seen by {coach}. Say «stop» to end the "
        "reminders, «leave» to end it all.\n\n"
        "On training days I tell you what to do and what to beat. Afterwards, or between sets, send what you "
        "did in your own words, for example «80 x 8».\n"
        f"I take plain numbers as {escape(str(facts['unit']))} and your time as "
        f"{escape(str(facts['zone']))}. If that is wrong, say «I use pounds» or «I'm in Lisbon»; «remind "
        "me at 7» sets the hour."
    )


HOW_TO_LEAVE = (
    "Say «stop» and the reminders end at once. Say «leave» and all ends: you choose whether everything is "
    "sent to you as a file, erased, or left with {coach}."
)

RIGHT_NOW = (
    "If your chest hurts, you are short of breath or you feel faint right now, call your local emergency "
    "number."
)

ABOUT = {
    "what": "I am a program that keeps a training journal. " + CAUTIONS,
    "stored": "I keep your messages as you typed them, your sets, what you tell me of pain, and your "
    "settings: that is what a journal is made of. Nothing of it goes anywhere else.",
    "seen": "{coach} sees it, and whoever runs this bot could. On Telegram, messages pass through Telegram.",
    "leave": HOW_TO_LEAVE,
}

MATTER_QUESTIONS: dict[Matter, str] = {
    "signs": "Now or in the last months: pain, pressure or tightness in the chest, neck, jaw or arms; "
    "short breath at rest, with little effort or lying flat; dizziness or fainting; a racing or uneven "
    "heartbeat; swollen ankles; leg cramps when walking; a heart murmur; being unusually tired.",
    "disease": "A known illness of the heart, the blood vessels, the lungs, the kidneys or the blood "
    "sugar, or another that a doctor sees you for; medicine for any of them; an operation or a birth not "
    "long ago; a pregnancy.",
    "joints": "Trouble with a joint, a bone or the back that training could make worse.",
    "inactive": "In the last three months you were hardly active: less than half an hour, three days a week.",
}
"""The questions on readiness, after the published list of signs and symptoms and the published logic (Riebe
et al. 2015; the half hour on three days over three months is quoted from memory of it). The last clause of
the second, and the third, are the house's own."""

MATTER_NAMES: dict[Matter, str] = {
    "signs": "signs or symptoms",
    "disease": "a known illness, medicine, an operation or pregnancy",
    "joints": "a joint, a bone or the back",
    "inactive": "hardly active in the last three months",
}

STEPS_SHORT: dict[JoiningStep, str] = {
    "consent": "what I am and am not",
    "age": "the age",
    "guardian": "a guardian's word",
    "readiness": "readiness",
    "unit": "kg or lb",
    "zone": "where home is",
    "hour": "the hour of the reminder",
    "equipment": "the equipment",
    "first day": "the first day",
}
"""What each question is about, as the coach reads it."""

AGAIN: dict[JoiningStep, str] = {
    "consent": "Do you agree to what I am and am not, as said above? A yes or a no will do; ask me what "
    "you like.",
    "age": "Are you 18 or older? A yes, a no or your age will do.",
    "guardian": "A parent or guardian has to agree first, in words of their own, for example «I am her "
    "mother and I agree». I wait as long as it takes.",
    "readiness": "Does any of the four fit you? Say «none», or the numbers that do, or tell me in your own "
    "words.",
    "unit": "Do you count in kg or in lb?",
    "zone": "Where do you live? A larger town nearby or a country will do, or what time it is there, as "
    "«18:40».",
    "hour": "At what hour shall I remind you? Say it as «7:00» or «half past six».",
    "equipment": "What do you have to train with? Say what you have, as «dumbbells and bands», or what you "
    "lack, as «no barbell», or «skip».",
    "first day": "On which day do you begin? «Tomorrow», a weekday or a date will do, from today on.",
}
"""Each question put once more, shortly."""


def joining_question_words(facts: dict[str, Any]) -> str:
    """Ask one of the first questions; once more, after something else, shortly and kindly."""
    step: JoiningStep = facts["step"]
    if step == "consent" and facts.get("refused"):
        return (
            "All right, then we do not begin, and I ask nothing more. Should you change your mind, say "
            "«yes». In an emergency call your local emergency number."
        )
    if step == "zone" and facts.get("several"):
        return "There are several times in that country. Which town is nearest?"
    if facts.get("again"):
        lead = "That I could not take as an answer. " if facts.get("unread") else ""
        return lead + AGAIN[step]
    return FIRST[step](facts)


def _consent(facts: dict[str, Any]) -> str:
    coach = escape(str(facts["coach"]))
    programme = f" for {bold(str(facts['programme']))}" if facts.get("programme") else ""
    return (
        f"Welcome, {bold(str(facts['name']))}. I keep your training journal with {coach}{programme}.\n\n"
        f"{CAUTIONS}\n\n"
        f"What you send me is kept in your journal and seen by {coach}. "
        f"{HOW_TO_LEAVE.format(coach=coach)}\n\n"
        "There are a few questions first, eight at most. Do you agree to this?"
    )


def _readiness(_facts: dict[str, Any]) -> str:
    listing = "\n".join(f"{place}. {MATTER_QUESTIONS[each]}" for place, each in enumerate(MATTERS, start=1))
    return (
        f"The training is hard, so four questions first. Does any of these fit you?\n{listing}\n"
        f"Say «none», or the numbers that fit. If you are not sure, say so. {RIGHT_NOW}"
    )


def _equipment(facts: dict[str, Any]) -> str:
    without = [str(each) for each in facts.get("without", [])]
    other = f" Your programme has something else to do for whoever has no {escape(listed(without, 'or'))}."
    return (
        "What do you have to train with? Say what you lack («no barbell»), all that you have («dumbbells "
        f"and bands»), or details («my smallest plate is 2.5»).{other if without else ''} You can skip this."
    )


def _first_day(facts: dict[str, Any]) -> str:
    first = f" with {bold(str(facts['workout']))}" if facts.get("workout") else ""
    return f"The last one: on which day do you begin{first}?"


FIRST = {
    "consent": _consent,
    "age": lambda _: "Are you 18 or older? If not, a parent or guardian has to agree first.",
    "guardian": lambda _: (
        "Then a parent or guardian has to agree first. Please show them what I said above, and let them "
        "type here who they are and that they agree. Your coach hears of it."
    ),
    "readiness": _readiness,
    "unit": lambda _: "Do you count in kg or in lb?",
    "zone": lambda _: (
        "Where do you live? A town or a country will do, or tell me what time it is there now, as «18:40»."
    ),
    "hour": lambda _: (
        "At what hour shall I remind you on training days? If the time that I said is not yours, say «wrong»."
    ),
    "equipment": _equipment,
    "first day": _first_day,
}


def what_this_is_words(facts: dict[str, Any], _reader: Reader) -> str:
    """Answer what is asked about the conditions."""
    coach = escape(str(facts["coach"]))
    return "\n".join(ABOUT[each].format(coach=coach) for each in facts["about"] or ("what",))


def doctor_first_words(facts: dict[str, Any], _reader: Reader) -> str:
    """Say that a doctor is to be seen before training; with signs, what to do if they are there now."""
    coach = escape(str(facts["coach"]))
    now = f" {bold(RIGHT_NOW)}" if not facts["which"] or "signs" in facts["which"] else ""
    return (
        "Thank you for telling me. Please see a doctor before you train, and say there what you told "
        f"me.{now}\n"
        f"I cannot tell what it means. {coach} hears of it, and lets the training begin once a doctor "
        "agrees; until then, no training."
    )


def to_be_released_words(facts: dict[str, Any], _reader: Reader) -> str:
    """Tell the coach what was said yes to, and whose decision comes first."""
    which = "; ".join(MATTER_NAMES[each] for each in facts["which"]) or "did not say what"
    return (
        f"{bold(str(facts['client']))} said yes to a question on readiness ({which}): "
        f"«{escape(str(facts['said']))}»\n"
        "I have said to see a doctor first, and there is no training until you let it begin. Please do so "
        "only once a doctor agrees."
    )


def left_for_now_words(facts: dict[str, Any], _reader: Reader) -> str:
    """Say how something is left that was not settled, and how it is told later."""
    if facts["what"] == "hour":
        return (
            f"I leave it at {facts['at']} for now; say «remind me at 7», or when it suits you, at any time."
        )
    return (
        "I leave that for now, and take it that you have what there is; say «I have no barbell» at any time."
    )


def joined_words(facts: dict[str, Any], _reader: Reader) -> str:
    """Say that the questions are over, what comes first, and how all of it can be changed."""
    first = (
        f"The {'next' if facts.get('has_begun') else 'first'} workout is {bold(str(facts['workout']))}, "
        f"{day_words(str(facts['on']))}."
        if facts.get("workout")
        else "Your coach decides when it begins."
    )
    at = f" I remind you at {facts['at']}." if facts.get("at") else ""
    return (
        f"That is all, thank you. {first}{at} Afterwards, or between sets, send what you did in your own "
        "words, for example «80 x 8».\n"
        "All of it can be changed at any time: «remind me at 7», «I'm in Lisbon», «I use pounds», «I have "
        "no barbell»."
    )


def client_ready_words(facts: dict[str, Any], _reader: Reader) -> str:
    """Tell the coach how a new client has answered, as far as it matters for the training."""
    settings = [zone_words(str(facts["zone"])), str(facts["unit"])]
    settings.append(f"reminders at {facts['at']}" if facts.get("at") else "no reminders")
    if facts.get("lacking"):
        settings.append(f"no {listed([str(each) for each in facts['lacking']], 'or')}")
    which = "Next" if facts.get("has_begun") else "First"
    coming = f"{bold(str(facts['workout']))}, {day_words(str(facts['on']))}" if facts.get("workout") else ""
    first = f" {which} workout: {coming}." if coming else ""
    return f"{bold(str(facts['client']))} has answered all questions: {escape(', '.join(settings))}.{first}"
