"""What is most likely said after each notice that a client can get: the buttons under it."""

from collections.abc import Mapping

from domain.actions import Words
from domain.topics import Topic

HELP = Words(text="Help")
HERE_AGAIN = Words(text="I'm back", once=True)
NEXT = Words(text="What's next?")
OVER = Words(text="Done for today", once=True)
PICTURE = Words(text="Picture of progress")
TOMORROW = Words(text="Tomorrow instead", once=True)
UNDO = Words(text="Undo", once=True)

_AFTER_HELP = (NEXT, Words(text="Last time"), Words(text="My settings"))

LEADS_TO: Mapping[Topic, tuple[Words, ...]] = {
    "already here": _AFTER_HELP,
    "all recorded stands": (Words(text="Take back the last set", once=True),),
    "back": (NEXT,),
    "beaten": (NEXT,),
    "best": (PICTURE,),
    "comes later": (NEXT,),
    "counts as": (NEXT,),
    "days ahead": (NEXT,),
    "days told": (NEXT,),
    "equipment kept": (NEXT,),
    "help": _AFTER_HELP,
    "hold lifted": (NEXT,),
    "joined": (NEXT,),
    "last workout": (NEXT,),
    "left out": (UNDO, NEXT),
    "let train": (NEXT,),
    "lighter": (NEXT,),
    "missed noted": (NEXT,),
    "moved": (UNDO,),
    "moved away": (UNDO,),
    "new programme": (NEXT,),
    "next day": (NEXT,),
    "no file wanted": (HELP,),
    "no pause": (NEXT,),
    "no set found": (HELP,),
    "no such unit": (Words(text="I use kg", once=True), Words(text="I use pounds", once=True)),
    "no workout planned": (HERE_AGAIN,),
    "not in it": (NEXT,),
    "nothing recorded": (HELP,),
    "nothing to leave out": (HERE_AGAIN,),
    "nothing to move": (HERE_AGAIN,),
    "nothing to read": (HELP,),
    "other script": (HELP,),
    "pause stands": (HERE_AGAIN,),
    "out of turn": (UNDO,),
    "paused": (UNDO,),
    "plans as before": (NEXT,),
    "put back": (UNDO, NEXT),
    "reminders off": (Words(text="Start reminders", once=True),),
    "reminders on": (NEXT,),
    "reminders rest": (HERE_AGAIN,),
    "rest as before": (NEXT,),
    "rest day": (NEXT,),
    "rest more": (NEXT,),
    "rest of it moved": (UNDO,),
    "still ill": (HERE_AGAIN,),
    "strength so far": (PICTURE,),
    "swapped": (NEXT,),
    "taken back": (NEXT,),
    "told before": (NEXT,),
    "too late today": (TOMORROW,),
    "trains on there": (NEXT,),
    "turn taken": (UNDO, NEXT),
    "warm-up noted": (NEXT,),
    "welcome": (NEXT,),
    "when later": (
        Words(text="In an hour", once=True),
        Words(text="In 3 hours", once=True),
        TOMORROW,
    ),
    "which stop": (Words(text="Stop reminders", once=True), Words(text="Leave", once=True)),
    "words only": (HELP,),
    "workout done": (NEXT,),
    "workouts counted": (PICTURE,),
}
"""The buttons, the likeliest first; those that lead to nothing just now are left away when they are offered.

A notice that is not here asks for words of one's own, ends what was begun, or comes beside what has its own.
"""
