"""What the page in a browser says that is not fixed: the names of scenes, notes on the clock, faults."""

from typing import Final

SCENE_NAMES: Final = {
    "own": "Your people",
    "first day": "The first day",
    "weeks later": "Some weeks later",
}
"""The scenes to begin with, by what they are."""

NO_DEMO: Final = (
    "there is nobody yet, and this is not a checkout with the demo's people: "
    "bring people in with «load ROSTER», or show some with «page --scene FILE»"
)

ABOUT_COPY: Final = (
    "These are your own people, in a copy of your database: whatever you try here reaches nobody, and is "
    "gone when the page is closed. So the clock can be moved, too."
)
ABOUT_DEMO: Final = "Everybody here is invented, and nothing is kept: try whatever you like."

NOTHING_AHEAD: Final = "There was nothing to say on these two phones for two weeks, or nothing lies ahead."
TOO_LONG: Final = "That is longer than one message can be. Please send it in parts."
NOT_TAKEN: Final = "That could not be taken. Reload the page, and try again."
DATABASE_AWAY: Final = "The database is busy or away just now. Please try again in a moment."
PLAYING: Final = "What came before is still being played. Please wait a moment."
STRANGER: Final = "Somebody new"

OWN_ADDRESS_ONLY: Final = "This page answers to its own address only."
FOREIGN_SITE: Final = "Another site cannot do this."
NO_SUCH_PLACE: Final = (
    "There is nothing at this address. Each time the page is started it has a new one, which is told in the "
    "terminal that it was started from."
)


def opening_words(address: str, *, opens: bool) -> str:
    """Say in the terminal where the page is."""
    where = "The page opens in your browser; it is at" if opens else "Open this in a browser on this machine:"
    return (
        f"{where}\n\n    {address}\n\n"
        "Whoever has this address and this machine sees all that is on it. Ctrl+C ends it."
    )
