"""Exercises that are left out."""

import re
from collections.abc import Sequence

from domain.reading.body_words import HURT
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.want_words import BETWEEN_SKIP, NOT_SKIP, SKIP_AFTER, SKIP_VERB, THAT_ONE


def exercises_left_out(message: Message, named: Sequence[Named], in_question: set[int]) -> list[Named]:
    """Return the names of the exercises that are left out."""
    named = [n for n in named if message.text(n.end) not in HURT and not _is_of_the_body(message, n)]
    found: list[Named] = []
    if NOT_SKIP.search(message.line) and not re.search(r"\bskipp?(?:ed|ing)\b", message.line):
        return []
    for match, start, end in message.find(SKIP_VERB):
        if start in in_question or (message.taken[start] and message.taken[start] not in {"exercise"}):
            continue
        verb = match.group()
        _, last = message.sentence_span(start)
        ahead = [n for n in named if end <= n.start < min(last, end + 6)]
        ahead = [n for n in ahead if all(message.value(at) is None for at in range(end, n.start))]
        if verb == "no":
            ahead = [n for n in ahead if not n.weak and n.end - n.start >= 1]
        if ahead and _small_words(message, end, ahead[0].start):
            chain = [ahead[0]]
            for following in ahead[1:] + [n for n in named if n.start >= end + 6 and n.start < last]:
                between = message.texts(chain[-1].end, following.start)
                if (
                    between
                    and all(
                        w in {"and", ",", "the", "or", "nor", "&", "n", "plus", "also", "my"} for w in between
                    )
                    and not _followed_by_set(message, following)
                ):
                    chain.append(following)
                else:
                    break
            if _followed_by_set(message, chain[-1]) and verb not in {"skip", "skipped", "skipping"}:
                continue
            if (
                not verb.endswith("before")
                and verb.startswith(
                    (
                        "miss",
                        "drop",
                        "left",
                        "leave",
                        "cut",
                        "no",
                        "leaving",
                        "cant do",
                        "avoid",
                        "without",
                        "forgot",
                        "could not",
                        "couldnt manage",
                    )
                )
                and not _is_left_out(message, verb, chain[-1], last)
            ):
                continue
            found.extend(chain)
        elif message.text(end) in THAT_ONE and verb.startswith(
            (
                "skip",
                "leav",
                "left",
                "gave",
                "giv",
                "pass",
                "miss",
                "omit",
                "didnt",
                "couldnt",
                "cant",
                "bail",
            )
        ):
            before = [n for n in named if n.start < start and not n.weak]
            if (
                before
                and message.sentence[before[-1].start] >= message.sentence[start] - 1
                and not _followed_by_set(message, before[-1])
            ):
                found.append(before[-1])
    for _, start, end in message.find(SKIP_AFTER):
        if start in in_question:
            continue
        before = [n for n in named if n.end <= start and message.sentence[n.start] == message.sentence[start]]
        if (
            before
            and start - before[-1].end <= 4
            and before[-1] not in found
            and _small_words(message, before[-1].end, start)
            and not any(n.start >= end and n.start - end <= 1 for n in named)
        ):
            found.append(before[-1])
            earlier = before[:-1]
            while (
                earlier
                and all(
                    w in {"and", ",", "the", "&"} for w in message.texts(earlier[-1].end, found[-1].start)
                )
                and message.texts(earlier[-1].end, found[-1].start)
            ):
                found.append(earlier.pop())
    unique: list[Named] = []
    for name in found:
        if name not in unique and not any(set(name.names) == set(u.names) for u in unique):
            unique.append(name)
    return sorted(unique, key=lambda n: n.start)


def _is_of_the_body(message: Message, name: Named) -> bool:
    """Return whether a word that could name an exercise is a part of the body: "no more shoulder pain"."""
    return name.weak and "pain" in message.taken[name.start : name.end]


def _small_words(message: Message, start: int, end: int) -> bool:
    return all(message.text(at) in BETWEEN_SKIP for at in range(start, end))


def _followed_by_set(message: Message, name: Named) -> bool:
    """Return whether a number of a set stands right after a name."""
    at = name.end
    while message.text(at) in {"at", "for", "with", ":", "-", "was", "x"}:
        at += 1
    return message.value(at) is not None and message.text(at + 1) not in {"because", "min", "mins", "minutes"}


def _is_left_out(message: Message, verb: str, name: Named, last: int) -> bool:
    after = set(message.texts(name.end, min(last, name.end + 5)))
    if verb in {"no"}:
        return bool(after & {"today", "tonight", "this", ","})
    if verb in {"left", "leave", "leaving"}:
        return "out" in after or "today" in after
    if verb.startswith(("drop", "cut", "could")):
        return "today" in after or "tonight" in after or not after
    return True
