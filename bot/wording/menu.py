"""Words for the chat's menu of commands, and for groups."""

MENU = (
    ("plan", "today's workout, or the next one"),
    ("last", "what you did last time"),
    ("best", "your best sets"),
    ("undo", "take back what was recorded last"),
    ("settings", "unit, zone, reminders, and how to change them"),
    ("help", "what you can say"),
    ("stop", "no more reminders"),
    ("leave", "end it: your data sent, kept or erased"),
)

FAREWELL = "I only talk in private chats, so I leave this one. Write to me directly."
"""Said in a group before leaving it."""
