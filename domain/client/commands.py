"""The chat's menu and single words, each with the words that say the same."""

COMMANDS = {
    "/plan": "what's the plan today?",
    "/history": "show my history",
    "/last": "last time",
    "/best": "best ever",
    "/settings": "my settings",
    "/leave": "leave",
    "/undo": "undo",
    "/help": "help",
    "/stop": "stop the reminders",
    "next": "what's next?",
    "next one": "what's next?",
    "what now": "what's next?",
    "now what": "what's next?",
    "nxt": "what's next?",
    "cant": "can't today",
    "can't": "can't today",
    "cannot": "can't today",
    "missed": "couldn't make it",
    "missed it": "couldn't make it",
}
"""The chat's menu, and single words of as much; each is the same as saying the words beside it."""
