"""Words on what coaches have with each other and for themselves: invitations, clients handed over, notes."""

from typing import Any

from bot.markup import bold, escape, italic
from bot.wording.notice_forms import Facts, Words, filled
from bot.wording.reader import Reader, day_words, listed, quoted
from domain.topics import Topic


def invited_words(facts: Facts, _reader: Reader) -> str:
    """Hand an invitation's code to the coach who made it."""
    name, code = escape(str(facts["name"])), escape(str(facts["code"]))
    if facts.get("programme"):
        to = f"to {bold(str(facts['programme']))}"
        what = ""
    else:
        to = "as a coach"
        what = f" {name} will have own clients, and sees none of yours."
    if not code:
        return f"An invitation for {bold(str(facts['name']))} {to}."
    return (
        f"An invitation for {bold(str(facts['name']))} {to}, good for one person and {facts['days']} days."
        f"{what} {name} opens the chat with me and sends:\n/start {code}"
    )


def _invitations(facts: Facts, _reader: Reader) -> str:
    rows = facts["invitations"]
    if not rows:
        return "No invitation is open."
    lines = [
        f"{escape(str(row['name']))}{' (as a coach)' if row['as_coach'] else ''}, "
        f"till {day_words(str(row['until']))}"
        for row in rows
    ]
    return "\n".join([bold("Open invitations"), *lines, "«revoke the invitation for NAME» takes one back."])


def _revoked(facts: Facts, _reader: Reader) -> str:
    names, left = facts["names"], facts["left"]
    if names:
        whose = "The invitation" if len(names) == 1 else "The invitations"
        return f"{whose} for {escape(listed(names))} can no longer be taken up."
    return f"No such invitation is open. Open: {escape(listed(left))}." if left else "No invitation is open."


def handover_words(facts: Facts) -> str:
    """Ask whether a client is really to be offered to another coach."""
    client, to = bold(str(facts["client"])), bold(str(facts["to"]))
    text = (
        f"I ask {to} whether to take {client} on. Until then all stays as it is. After a yes {client} is "
        f"{to}'s, with the journal and all that is open; {client} is told, and you see nothing of it any "
        "more."
    )
    if count := int(facts.get("notes", 0)):
        notes = "Your note" if count == 1 else f"Your {count} notes"
        them = "it" if count == 1 else "them"
        return f"{text}\n{notes} on {client}: shall {to} have {them}? Otherwise I erase {them} then."
    return f"{text}\nShall I ask?"


def _offered(facts: Facts, _reader: Reader) -> str:
    client, coach = bold(str(facts["client"])), bold(str(facts["coach"]))
    on = f", on {bold(str(facts['programme']))}" if facts.get("programme") else ""
    name = escape(str(facts["client"]))
    return (
        f"{coach} asks you to take on {client}{on}. With a yes {name} is your client, with the journal and "
        f"all that is open. The offer stands for {facts['days']} days: «take {name}» or «decline {name}»."
    )


def _handed_over(facts: Facts, _reader: Reader) -> str:
    client, to = bold(str(facts["client"])), bold(str(facts["to"]))
    notes = "Your notes went along." if facts.get("with_notes") else "What you had noted is erased."
    return (
        f"{to} has taken {client} on, and {client} is told. From now on I tell you nothing of {client}. "
        f"{notes} What stands in this chat I cannot take back: please delete what you need no longer."
    )


def _noted(facts: Facts, _reader: Reader) -> str:
    names = bold(listed([str(each) for each in facts["names"]]))
    text = f"Noted on {names}, for you alone: {quoted(str(facts['text']))}"
    if facts.get("is_first"):
        text += (
            "\nIt stands on the card, and no client ever sees it here. It is personal data all the same: who "
            "asks for everything that I keep is told that there are notes and may ask you for them, and they "
            "go when everything is erased."
        )
    return text


def note_line(note: dict[str, Any], place: int | None = None) -> str:
    """Say one note with its day."""
    number = f"{place}. " if place is not None else ""
    return f"{number}{day_words(str(note['on']))}: {italic(str(note['text']))}"


def _notes(facts: Facts, _reader: Reader) -> str:
    rows, names = facts["noted"], facts["names"]
    if not rows:
        on = f" on {escape(str(names[0]))}" if len(names) == 1 else ""
        return f"You have noted nothing{on}. Say «note on NAME: …»."
    blocks = []
    for row in rows:
        lines = [note_line(each, int(each["place"])) for each in row["notes"]]
        blocks.append("\n".join([f"Your notes on {bold(str(row['client']))}", *lines]))
    return "\n\n".join(blocks)


def _forgotten(facts: Facts, _reader: Reader) -> str:
    count = int(facts["count"])
    what = "That note is" if count == 1 else f"{count} notes are"
    return f"{what} erased, on {escape(listed(facts['names']))}."


def _coach_trains(facts: Facts, reader: Reader) -> str:
    coach = str(facts["coach"])
    how = (
        "by your own sheet"
        if coach == reader.name
        else f"with {bold(coach)} as your coach, and stay a coach to yours"
    )
    return (
        f"You train here now, {how}. What reads as a set, or hurts, I take as your own training; what names "
        "a client of yours, or asks what a coach asks, as the coach's. Where it could be both, I ask."
    )


COACHING_WORDS: dict[Topic, Words] = {
    "invited": invited_words,
    "coach joined": filled("{name} has opened the chat, and is a coach here now."),
    "coach trains": _coach_trains,
    "which coach": "Who is it to be? Say «invite NAME as a coach».",
    "unknown coach": filled(
        "I know no other coach called {name}. «invite {name} as a coach» brings one in; otherwise say the "
        "whole name, as it is known here."
    ),
    "coach name is taken": filled("There is a coach called {name} already. Use another name."),
    "invitations": _invitations,
    "invitations revoked": _revoked,
    "client offered": _offered,
    "offer made": lambda facts, _: (
        f"{bold(str(facts['to']))} is asked whether to take {bold(str(facts['client']))} on, and has "
        f"{facts['days']} days. Until then {bold(str(facts['client']))} is yours; "
        f"«keep {escape(str(facts['client']))}» takes the offer back."
    ),
    "offer withdrawn": filled("{coach} has taken the offer of {client} back; there is nothing to do."),
    "offer declined": filled("Declined: {client} stays with {coach}, who is told."),
    "offer refused": filled("{to} does not take {client} on, so {client} stays with you."),
    "offer is over": "That offer does not stand any more.",
    "kept after all": filled("{client} stays with you; the offer is taken back."),
    "not offered": filled("{client} is offered to nobody, and stays with you."),
    "nothing handed over": "All stays as it is.",
    "take on as": lambda facts, _: (
        f"You have a client called {bold(str(facts['name']))} already. Say "
        f"«take {escape(str(facts['name']))} as NAME» with a name that tells the two apart."
    ),
    "client handed over": _handed_over,
    "client taken on": filled(
        "{client} is your client now, and knows it; until now {before} was the coach. The card, with what "
        "is open, comes next."
    ),
    "one at a time": "One client at a time, please: each hand over is a matter of its own.",
    "noted": _noted,
    "notes": _notes,
    "notes forgotten": _forgotten,
    "note too long": lambda facts, _: (
        f"A note has {facts['most']} letters at most, so nothing is noted. Please make two of it."
    ),
    "no such note": "I find no such note. «notes on NAME» shows what there is.",
}
