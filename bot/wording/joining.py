"""Words for the first message to a client: what the bot is, what it is not, what is stored."""

from typing import Any

from bot.markup import bold, escape
from bot.wording.reader import Reader

CAUTIONS = (
    "I am a program, no doctor: nothing I say is medical advice, and I am not for emergencies. "
    "In an emergency call your local emergency number. "
    "If something hurts, leave it and see a doctor or a physiotherapist."
)


def welcome_words(facts: dict[str, Any], _reader: Reader) -> str:
    """Welcome a client: cautions first, then how it works and how to change the settings."""
    coach = escape(str(facts["coach"]))
    programme = f" for {bold(str(facts['programme']))}" if facts.get("programme") else ""
    return (
        f"Welcome, {bold(str(facts['name']))}. I keep your training journal with {coach}{programme}.\n\n"
        f"{CAUTIONS} Before you start with hard training, ask a doctor if you have any illness or symptom, "
        "or have not trained for long.\n\n"
        f"What you send me is kept in your journal and seen by {coach}. Say «stop messages» to end the "
        "reminders.\n\n"
        "On training days I tell you what to do and what to beat. Afterwards, or between sets, send what you "
        "did in your own words, for example «80 x 8».\n"
        f"I take plain numbers as {escape(str(facts['unit']))} and your time as "
        f"{escape(str(facts['zone']))}. "
        "If that is wrong, say «I use pounds» or «I'm in Lisbon»; «remind me at 7» sets the hour."
    )
