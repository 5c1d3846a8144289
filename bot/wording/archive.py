"""Words for leaving, and in the file with everything about a client."""

from typing import Any

from bot.markup import bold, escape

BY = {"you": "You", "bot": "Kilopost", "coach": "Coach"}
"""Who said a message, in the file."""

READ_ME = """\
Everything that Kilopost keeps about {name}.

journal.csv      each recorded set that counts, one a line, for any program with tables
messages.txt     all messages, in order, in your local time
everything.json  all of it for machines: settings, what is remembered of the conversation, workouts,
                 every set with its corrections, what was set aside, what was brought to {coach},
                 and all messages

{notes}

Not in here: what {coach} has written down elsewhere, copies of the database that were made for
safety, and what your chat app keeps by itself.
"""


def notes_words(coach: str, count: int) -> str:
    """Say that the coach keeps notes, and that they can be asked for."""
    if not count:
        return f"{coach} keeps no notes on you here."
    notes = "a note" if count == 1 else f"{count} notes"
    return (
        f"{coach} keeps {notes} on you here, for the coach's own use. Their words are not in this file;\n"
        f"they are data about you, so you can ask {coach} for them. An erasure erases them, too."
    )


def leaving_words(facts: dict[str, Any]) -> str:
    """Ask what is to become of the data; before they are erased, ask once more."""
    coach = escape(str(facts["coach"]))
    if facts["want"] == "erase":
        return (
            "This erases your name, your messages and your whole journal, and cannot be undone; only "
            f"counts are left. {coach} hears that it happened. Out of my reach are: what {coach} has read or "
            "written down, what your chat apps keep, and safety copies of the database, until they are "
            f"replaced.\n{bold('Shall I erase everything?')}"
        )
    if facts.get("has_file"):
        return "What shall become of what I keep about you?"
    return (
        "You can leave at any time. What shall become of what I keep about you? I can send it all to you as "
        f"a file, erase it, or leave the journal with {coach} and write no more."
    )
