"""Words for a coach on who is put on which programme, and when the digest comes."""

from datetime import date

from bot.markup import bold, escape
from bot.wording.notice_forms import Facts, Words
from bot.wording.reader import Reader, day_words, listed, quoted
from domain.topics import Topic

FEW = 8
"""Up to so many names are said, of more how many they are."""


def _digest_kept(facts: Facts, _reader: Reader) -> str:
    on = date.fromisoformat(str(facts["on"]))
    day = "Every day" if facts["every"] == "day" else f"Every {on:%A}"
    return f"{day} at {facts['at']} you get the digest; the next one comes on {day_words(str(facts['on']))}."


def _sheet_stored(facts: Facts, _reader: Reader) -> str:
    programme, older = bold(str(facts["programme"])), [str(each) for each in facts.get("older") or []]
    text = f"Stored: {programme}."
    if older:
        who = listed(older) if len(older) <= FEW else f"{len(older)} clients"
        return f"{text} On an older version: {escape(who)}. Before anyone is moved, I show what changes."
    return f"{text} Say «put NAME on {programme}» or «invite NAME to {programme}»."


def _changed_for_several(facts: Facts, _reader: Reader) -> str:
    who = escape(listed([str(each) for each in facts["names"]]))
    if "at" in facts:
        return f"Reminder at {bold(str(facts['at']))}, each in their own time: {who}."
    days = int(str(facts["days"]))
    rest = "One more rest day" if days == 1 else f"{days} more rest days"
    return f"{rest} before the next workout: {who}. Whoever is paused has none to put off; I name them apart."


def which_programme_words(facts: Facts) -> str:
    """Ask which programme is meant, and say which there are."""
    named, who = facts.get("named"), [str(each) for each in facts.get("who") or []]
    lead = f"I have no programme called {quoted(str(named))}. " if named else ""
    whom = f" for {bold(listed(who) if len(who) <= FEW else f'{len(who)} clients')}" if who else ""
    return f"{lead}Which programme{whom}? You have: {escape(listed([str(each) for each in facts['names']]))}."


COACH_PROGRAMME_WORDS: dict[Topic, Words] = {
    "sheet stored": _sheet_stored,
    "programme given to several": lambda facts, _: (
        f"On {bold(str(facts['programme']))} now: {escape(listed(facts['names']))}."
    ),
    "changed for several": _changed_for_several,
    "undone for several": lambda facts, _: f"Undone for {escape(listed(facts['names']))}.",
    "on it already": lambda facts, _: (
        f"On {bold(str(facts['programme']))} already: {escape(listed(facts['names']))}."
    ),
    "programmes left": "Left as it is; nobody is changed.",
    "newer version since": (
        "That sheet has a newer version since. Please say again whom to put on it, and I show what changes."
    ),
    "nobody on older": "Nobody is on an older version.",
    "digest kept": _digest_kept,
    "no digest": "No digest any more. «Digest every Monday at 7» brings it back, «digest» shows it once.",
    "no such digest": (
        "I find no time for the digest in that. Say it as «digest every day at 6», «digest on Sunday at "
        "18:00» or «no digest»."
    ),
}
