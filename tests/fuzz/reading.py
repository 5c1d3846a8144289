"""`python -m tests.fuzz.reading --messages N`: any message at all, without an exception and without an
invented number.

Messages are strung together at random from what people write and from what nobody does. Each set that
would be
recorded must have its load and its reps among the numbers of the message, or among the sets that it
points at.
"""

import argparse
import random
import sys
import time
from decimal import Decimal

from domain.reading import Request, read
from domain.reading.message import message_of
from domain.sets import TrainingSet
from tests.domain.reading.build import PLAN, TARGET, one, request

PIECES = (
    "bench", "incline", "dips", "plank", "squats", "the evil one", "press", "80", "8", "82.5", "77,5",
    "10", "26", "120", "x", "x", "x", "for", "@", "at", "with", "kg", "kg", "lb", "reps", "reps",
    "sets of", "3", "2", "/", ",", ",", ".", ":", "-", "+", "(", ")", "\n", "\n", "and", "then", "but",
    "no", "wait", "sorry", "not", "actually", "make that", "same weight", "same as last time", "up 2.5",
    "down 5", "one more rep than last time", "as planned", "two below target", "to failure",
    "failed on the 9th", "rpe 8", "rir 2", "2 in the tank", "bw", "bodyweight", "each hand", "a side",
    "two plates", "pin 7", "the green band", "yesterday", "on monday", "12/3", "last night", "tomorrow",
    "the 9th", "my left knee hurts", "6/10", "no pain", "chest pain", "skip", "today",
    "moving to friday", "away till the 14th", "undo", "scrap that", "i meant", "that was",
    "the second one", "should i", "?", "!", "next time", "going for", "my mate did", "warm up",
    "seat 4", "heart rate 150", "eighty", "eight", "a dozen", "half", "one twenty", "1:05", "50 sec",
    "held", "negatives", "💪", "😂", "½", "×", "8️⃣", "\u202e", "\u0000", "<b>", "привет", "99999999999",
    "0", "0.0", "-20", "1)", "2.", "#", "*", "again", "another", "done", "got", "managed",
)  # fmt: skip
DONE = (one("Bench press", "80", 8), one("Bench press", "80", 7), one("Dip", "10", 6, kind="added"))


def message(chance: random.Random) -> str:
    """Return a message of some pieces, joined by blanks or by nothing."""
    pieces = chance.choices(PIECES, k=chance.randint(1, 14))
    return "".join(piece + chance.choice((" ", " ", " ", "")) for piece in pieces)


def numbers_behind(asked: Request) -> set[Decimal]:
    """Return every number that a set of this message may have: said, pointed at, or one step from there."""
    said = {t.value for t in message_of(asked.text).tokens if t.value is not None}
    pointed = {n for each in (*asked.done, *TARGET.values()) for n in (each.load, Decimal(each.amount))}
    # Half a rep is none: 82.5 reps are 82, and others can be counted from there.
    base = said | pointed | {Decimal(0)} | {Decimal(int(n)) for n in said}
    steps = {a + b for a in base for b in said} | {a - b for a in base for b in said} | {a - 1 for a in base}
    steps |= {a + b for a in steps for b in said} | {a - b for a in steps for b in said}
    wholes = (
        {Decimal(int(n)) for n in base}
        | {n * 60 for n in said}
        | {Decimal(int(a * 60 + b)) for a in said for b in said}
    )
    return base | steps | wholes | {n + 1 for n in pointed}


def faults_of(found: TrainingSet, behind: set[Decimal]) -> list[str]:
    """Return what of a set has no number behind it."""
    return [
        name
        for name, value in (("load", found.load), ("amount", Decimal(found.amount)))
        if value not in behind
    ]


def run(messages: int, seed: int) -> int:
    """Read so many messages; print the first fault and return 1, or return 0."""
    chance = random.Random(seed)
    began = time.perf_counter()
    for number in range(messages):
        text = message(chance)
        asked = request(
            text, done=DONE[: chance.randint(0, len(DONE))], plan=PLAN[: chance.randint(0, len(PLAN))]
        )
        try:
            reading = read(asked)
        except Exception as error:  # noqa: BLE001 - whatever it is, it must not happen
            print(f"message {number}: {text!r}\n  {type(error).__name__}: {error}")
            return 1
        behind = numbers_behind(asked)
        for found in reading.sets:
            if faults := faults_of(found, behind):
                print(f"message {number}: {text!r}\n  no number behind the {' and '.join(faults)} of {found}")
                return 1
    took = time.perf_counter() - began
    print(
        f"{messages} messages (seed {seed}): no exception and no invented number; "
        f"{took / messages * 1e6:.0f} µs each"
    )
    return 0


def main() -> int:
    """Run as many messages as the command line says."""
    arguments = argparse.ArgumentParser(description="Read messages strung together at random.")
    arguments.add_argument("--messages", type=int, default=1_000_000)
    arguments.add_argument("--seed", type=int, default=1)
    said = arguments.parse_args()
    return run(said.messages, said.seed)


if __name__ == "__main__":
    sys.exit(main())
