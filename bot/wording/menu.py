"""Words for the chat's menu of commands, and for groups."""

MENU = (
    ("plan", "today's workout, or the next one"),
    ("history", "how an exercise went"),
    ("undo", "take back what was recorded last"),
    ("help", "what you can say"),
    ("stop", "no more reminders"),
)

FAREWELL = "I only talk in private chats, so I leave this one. Write to me directly."
"""Said in a group before leaving it."""
