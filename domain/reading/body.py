"""What hurts: places, sides and scores, told from tired muscles, other people, the past and figures of
speech.

Warning signs that call for medical help are next door. Nothing here knows of sets; what is taken as a
score or a
part of the body is marked in the message, so that no set is made of it.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal

from domain.reading.body_words import (
    ACHE,
    CLICKS,
    CONDITIONAL,
    FIGURES,
    HURT,
    JOINTS,
    LONG_PAST,
    LONGEST_PART,
    MIDDLE,
    MUSCLES,
    NEEDS_PART,
    NEGATIONS,
    NOT_TWO,
    OTHERS,
    OVER_NOW,
    PART_FIRST,
    PARTS,
    PLURALS,
    STILL,
    TRIGGERS,
    UNTIL,
)
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.request import Pain, Place, Side
from domain.reading.tokens import Token

MOST_WORDS = 24
"""How many words of pain of one message are looked at; nobody needs more to say where it hurts."""
FARTHEST = 60
"""How many tokens away the words for a pain can stand."""

_SIDES: dict[str, Side] = {"left": "left", "right": "right", "both": "both", "lft": "left", "rigth": "right"}
_SCORE = re.compile(
    r"(?:(?P<low># (?:-|to|or) ))?(?P<a>#) ?(?:/|out of|from|of|auf|on|over) (?:10|ten|(?P<ten>#))"
    r"|\b(?:pain|ache|soreness|hurts?)(?: (?:level|score|scale|was|is|at|of|about|around|maybe|like|a|an"
    r"|:|=|now|roughly|,|just|only|rated|rating|probably|intensity))* (?P<b>#)(?! (?:kg|kgs|lbs?|reps?|x"
    r"|sets?|times|days?|weeks?|sec|min|years?|s\b|for))(?: (?:/|out of|from|of|over) #)?"
    r"|\b(?:(?:maybe|about|around|say|roughly|probably|perhaps|like|id say|id call it|a solid|rate it"
    r"|give it|only|just|solid|call it)(?: a| an| at| about)? )(?P<c>#)(?= [.,!)\n;]| or| at (?:most"
    r"|worst)| now| when| on (?:the|a)| i\b| though| but| and|$)"
    r"|\b(?:level|score|scale)(?: (?:of|is|was|:|a))? (?P<d>#)"
    r"|\ba (?P<e>#) (?:on|out)\b"
)
_SCORE_SIGNS = frozenset({"/", "out"})
_POPPED = re.compile(r"\b(?:pop|popped|popping|snap|snapped|crack|cracked)\b")
_KILLING = re.compile(
    r"\b(?:is|are|was|were|been) (?:really |absolutely )?(?:killing me|bothering me|bugging me|acting up"
    r"|playing up|giving me (?:trouble|grief|bother|jip|gyp)|complaining|in agony|unhappy)\b|\b(?:bothers"
    r"|hurts) me\b|\b(?:gives|gave|giving) me (?:some |a lot of |a bit of )?(?:trouble|grief|bother|jip"
    r"|gyp)\b|\b(?:acting|playing|flared|flaring) up\b"
)
_WENT = re.compile(
    r"\b(?:something|it) (?:pull|go|went|give|gave|tear|tore|snap|snapped|pop|popped|pinch|twinge|strain"
    r"|tweak|crunch)"
    r"(?= (?:in|at|on|around|behind|under|near|deep))|\ba (?:pull|pop|snap|tear|tweak|crunch|strain"
    r"|stab)(?= (?:in|at|behind|under|near) (?:my|the))"
)
_SOMETHING = re.compile(
    r"\bsomething (?:in there )?(?:hurts?|pulled|popped|went|is hurting|painful|tore)\b|\b(?:sharp|bad"
    r"|nasty|strong|stabbing|shooting|awful|terrible|weird|severe|sudden) pains?\b"
    r"|\bit (?:really )?hurts? (?:a lot|badly|bad|like hell|when)\b|\bin (?:a lot of |so much )?pain\b"
)


@dataclass(frozen=True, slots=True)
class _Part:
    """A part of the body in the message, from token `start` to before `end`."""

    start: int
    end: int
    place: Place
    side: Side | None
    word: str


def find_pain(message: Message, named: Sequence[Named]) -> tuple[Pain, ...]:
    """Return the places that hurt now or hurt in the workout told of, in order, each once."""
    if not message.has(TRIGGERS) and not (message.has(PART_FIRST) and message.has(_SCORE_SIGNS)):
        return ()
    figures = _spans(message, FIGURES)
    words = [
        at
        for at, token in enumerate(message.tokens)
        if (token.text in HURT or token.text in ACHE) and not any(s <= at < e for s, e in figures)
    ]
    for _, start, end in message.find(_KILLING):
        if not any(s <= start < e for s, e in figures):
            words.append(end - 1)
    parts = find_parts(message, named)
    words.extend(_scored(message, parts))
    words.extend(
        end - 1 for _, _, end in message.find(_WENT) if not any(s <= end - 1 < e for s, e in figures)
    )
    if not words:
        return ()
    found: dict[tuple[Place, str], Pain] = {}
    for at in sorted(set(words))[:MOST_WORDS]:
        for pain, part in _pain_at(message, at, parts):
            key = (pain.where, pain.side or "")
            known = found.get(key)
            if known is None or (known.score is None and pain.score is not None):
                found[key] = pain
            if part is not None:
                message.take(part.start, part.end, "pain")
            message.take(at, at + 1, "pain")
    return _merged(tuple(p for p in found.values() if p.score != 0))


def _scored(message: Message, parts: list[_Part]) -> list[int]:
    """Return where a part of the body has just a score: "left elbow 3/10"."""
    found: list[int] = []
    for part in parts:
        at = part.end
        while message.text(at) in {
            "at",
            "is",
            "was",
            "a",
            "about",
            ",",
            ":",
            "maybe",
            "like",
            "around",
            "now",
            "(",
            "still",
            "today",
        }:
            at += 1
        value = message.value(at)
        if value is None:
            at = _score_later(message, part)
            value = message.value(at)
        if (
            value is not None
            and value <= 10
            and message.text(at + 1) in {"/", "out", "of"}
            and 10 in {message.value(at + 2), message.value(at + 3)}
        ):
            found.append(at)
    return found


def _score_later(message: Message, part: _Part) -> int:
    """Return where a score out of ten stands later in the sentence of a part of the body."""
    _, last = message.sentence_span(part.start)
    for at in range(part.end, last):
        if (
            message.text(at) in {"/", "out"}
            and message.value(at + 1 if message.text(at) == "/" else at + 2) == 10
        ):
            before = message.texts(max(0, at - 5), at)
            if not {
                "x",
                "rpe",
                "effort",
                "energy",
                "mood",
                "form",
                "felt",
                "motivation",
                "sleep",
                "reps",
            } & set(before):
                return at - 1
    return len(message.tokens)


def _merged(pains: tuple[Pain, ...]) -> tuple[Pain, ...]:
    """Drop a place without side or score beside the same place with one, and the back beside a part of it."""
    kept: list[Pain] = []
    places = {p.where for p in pains}
    for pain in pains:
        same = [p for p in pains if p.where == pain.where and p is not pain]
        if pain.side is None and pain.where not in MIDDLE and any(p.side for p in same):
            if pain.score is not None:
                kept = [
                    Pain(p.where, p.side, p.score or pain.score) if p.where == pain.where else p for p in kept
                ]
            continue
        if pain.where == "other" and len(places) > 1:
            continue
        if pain.where == "back" and places & {"upper back", "lower back"}:
            continue
        kept.append(pain)
    return tuple(kept)


def _spans(message: Message, pattern: re.Pattern[str]) -> list[tuple[int, int]]:
    return [(start, end) for _, start, end in message.find(pattern)]


def find_parts(message: Message, named: Sequence[Named]) -> list[_Part]:
    """Return the parts of the body in the message, leaving out those inside an exercise's name."""
    inside = {at for n in named if n.end - n.start > 1 for at in range(n.start, n.end)}
    found: list[_Part] = []
    at = 0
    tokens = message.tokens
    while at < len(tokens):
        if tokens[at].text not in PART_FIRST and _without_is(tokens[at]) not in PART_FIRST:
            at += 1
            continue
        for length in range(LONGEST_PART, 0, -1):
            words = tuple(_without_is(t) for t in tokens[at : at + length])
            place = PARTS.get(words)
            if (
                place is None
                or len(words) < length
                or (length == 1 and at in inside)
                or (words == ("back",) and not _is_body_back(message, at))
            ):
                continue
            found.append(
                _Part(at, at + length, place, _side(message, at, at + length, place, words[-1]), words[-1])
            )
            at += length
            break
        else:
            at += 1
    return found


def _without_is(token: Token) -> str:
    """Return a word without the "s" of "is": "knee's sore"."""
    text = token.text
    return text[:-1] if text.endswith("s") and token.end - token.start == len(text) + 1 else text


def _is_body_back(message: Message, at: int) -> bool:
    """Return whether "back" is the body's, and not "back on Monday" or "came back"."""
    before, after = message.text(at - 1), message.text(at + 1)
    if message.text(at) == "backs" and before not in {"the"}:
        return True
    if after in {
        "on",
        "in",
        "from",
        "to",
        "at",
        "home",
        "off",
        "soon",
        "tomorrow",
        "squat",
        "squats",
        "extension",
        "extensions",
        "by",
    } and before not in {"my", "the"}:
        return False
    return before in {
        "my",
        "the",
        "mid",
        "middle",
        "whole",
        "left",
        "right",
        "a",
        "your",
        "no",
        "of",
        "sore",
        "stiff",
        "bad",
    } or after in {
        "pain",
        "pains",
        "hurts",
        "hurt",
        "ache",
        "aches",
        "is",
        "was",
        "feels",
        "felt",
        "still",
        "stiff",
        "sore",
        "issues",
        "issue",
        "trouble",
        "twinge",
        "spasm",
        "niggle",
        "hurting",
    }


def _side(message: Message, start: int, end: int, place: Place, word: str) -> Side | None:
    first, last = message.sentence_span(start)
    sides: set[Side] = set()
    for at in range(max(first, start - 4), start):
        text = message.text(at)
        if text in {"l", "r"} and at == start - 1:
            sides.add("left" if text == "l" else "right")
        side = _SIDES.get(text)
        if side is None or any(
            message.text(b) in PART_FIRST and message.text(b) != "back" for b in range(at + 1, start)
        ):
            continue
        if text == "right" and message.text(at + 1) in {
            "in",
            "on",
            "under",
            "at",
            "now",
            "after",
            "behind",
            "above",
            "below",
            "between",
            "through",
            "away",
            "where",
            "as",
        }:
            continue
        sides.add(side)
    for at in range(end, min(last, end + 12)):
        text = message.text(at)
        if at > end and (message.text(at),) in PARTS and message.text(at) != "back":
            break
        if at >= end + 6 and message.text(at + 1) != "side" and message.texts(at - 2, at) != ["on", "the"]:
            continue
        if (
            text in {"left", "right", "both"}
            and (
                message.text(at - 1) in {"(", "the", ",", "-", "my"}
                and message.text(at + 1) in {")", "side", "one", "ones", "sides", ",", "", ".", "-", "and"}
            )
            and message.text(at - 2) not in {"all", "to"}
        ):
            sides.add(_SIDES[text])
            break
    if {"left", "right"} <= sides or "both" in sides:
        return "both"
    if sides:
        return sides.pop()
    if (
        word in PLURALS
        and word not in NOT_TWO
        and place not in MIDDLE
        and message.text(start - 2) not in {"of"}
    ):
        return "both"
    return None


def _pain_at(message: Message, at: int, parts: list[_Part]) -> list[tuple[Pain, _Part | None]]:
    """Return what hurts by the word at token `at`."""
    word = message.text(at)
    first, last = message.sentence_span(at)
    first, last = max(first, at - FARTHEST), min(last, at + FARTHEST)
    start, end = message.clause_span(at)
    start, end = max(start, first), min(end, last)
    if _is_denied(message, at, start, end) or _is_not_now(message, at, first, last, start):
        return []
    mine = _parts_of(message, at, start, end, first, last, parts)
    mine = _closer_back(parts, mine, message)
    score = _score(message, at, start, end, last)
    if word == "me":
        mine = [p for p in mine if p.place in JOINTS and p.word not in MUSCLES]
    if word in ACHE:
        muscular = "muscle" in message.texts(first, last) or "muscles" in message.texts(first, last)
        mine = [
            p
            for p in mine
            if score is not None
            or (
                p.place in JOINTS
                and p.word not in MUSCLES
                and not muscular
                and (word not in CLICKS or _with_pain(message, first, last, at))
            )
        ]
        return [(Pain(p.place, p.side, score), p) for p in mine]
    if word == "pulled":
        mine = [p for p in mine if p.start - at in range(8) or at - p.end in range(3)]
    if word in {"strain", "straining", "strained"} and message.text(at + 1) in {"to", "on"} and not mine:
        return []
    if mine:
        return [(Pain(p.place, p.side, score), p) for p in mine]
    if word in NEEDS_PART and not _SOMETHING.search(" ".join(_words(message, first, last))):
        return []
    if score is not None or _SOMETHING.search(" ".join(_words(message, first, last))):
        return [(Pain("other", None, score), None)]
    return []


def _closer_back(parts: list[_Part], mine: list[_Part], message: Message) -> list[_Part]:
    """Return "the back" as the part of it that the sentence names elsewhere: "back pain, in the low back"."""
    if not any(p.place == "back" for p in mine):
        return mine
    sentence = message.sentence[mine[0].start]
    closer = [
        p for p in parts if p.place in {"lower back", "upper back"} and message.sentence[p.start] == sentence
    ]
    return [closer[0] if p.place == "back" and closer else p for p in mine]


def _words(message: Message, start: int, end: int) -> list[str]:
    return ["#" if t.value is not None else t.text for t in message.tokens[start:end]]


def _with_pain(message: Message, first: int, last: int, at: int) -> bool:
    return any(
        t.text in HURT and not _is_denied(message, i, *message.clause_span(i))
        for i, t in enumerate(message.tokens[first:last], first)
        if i != at
    )


def _is_denied(message: Message, at: int, start: int, end: int) -> bool:
    """Return whether the word at `at` is denied in its clause: no pain, did not hurt, pain free."""
    if message.text(at + 1) in {"free", "killers", "killer", "relief", "meds"}:
        return True
    scope = start
    for i in range(at - 1, max(start, at - 7) - 1, -1):
        text = message.text(i)
        if text in {"and", "but", "just", "only"} and i < at - 1 and message.text(i - 1) != "not":
            scope = i
            break
        if text in NEGATIONS:
            if text == "not" and message.text(i + 1) in {
                "only",
                "just",
                "sure",
                "great",
                "ideal",
                "happy",
                "good",
            }:
                continue
            if text in {"cant", "couldnt", "dont", "wont"} and message.text(i + 1) not in {
                "hurt",
                "have",
                "feel",
                "get",
                "really",
                "even",
            }:
                continue
            rest = {message.text(j) for j in range(i, min(len(message.tokens), at + 5))}
            return not rest & UNTIL
    del scope, end
    return False


def _is_not_now(message: Message, at: int, first: int, last: int, start: int) -> bool:
    """Return whether the pain is another's, long past, over, or only thought of."""
    line = " ".join(_words(message, first, last))
    place = len(" ".join(_words(message, first, at)))
    still = not STILL.isdisjoint(message.texts(first, last))
    clause_before = " ".join(_words(message, start, at))
    for match in OTHERS.finditer(line):
        after = line[match.end() : max(place, match.end())]
        if match.start() <= place and not re.search(r"\b(?:i|my|ive|im|me)\b", after):
            return True
    if CONDITIONAL.search(clause_before):
        return True
    if still:
        return False
    over = OVER_NOW.search(line)
    if over is not None and over.start() > place - 40:
        between = line[min(place, over.end()) : max(place, over.start())]
        if not re.search(r"\bbut my\b", between) and not (
            over.end() <= place and re.search(r" , | but ", between + " ")
        ):
            return True
    return LONG_PAST.search(line) is not None


def _parts_of(
    message: Message, at: int, start: int, end: int, first: int, last: int, parts: list[_Part]
) -> list[_Part]:
    """Return the parts that the word at `at` speaks of: those of its clause, or the nearest of its
    sentence."""
    here = [p for p in parts if start <= p.start < end]
    if here:
        main = [p for p in here if not _subordinate(message, p, at)]
        earlier = [p for p in parts if first <= p.start < start]
        if not main and earlier:
            return earlier[-1:]
        chosen = main or here
        before = [p for p in chosen if p.end <= at]
        after = [p for p in chosen if p.start >= at]
        if (
            before
            and after
            and not any(
                message.text(i) in {"and", "&", "plus", "also"} for i in range(before[-1].end, after[0].start)
            )
        ):
            # "my elbow hurts lifting my arm" speaks of the elbow; "pain in my knee" of what follows.
            return (
                after
                if message.text(at + 1) in {"in", "at", "on", "around", "under", "behind", "inside"}
                else before
            )
        return _alike(message, chosen, at)
    before = [p for p in parts if first <= p.start < start]
    if before:
        return before[-1:]
    after = [p for p in parts if end <= p.start < last]
    if after:
        return after[:1]
    previous = [p for p in parts if p.start < first and message.sentence[p.start] == message.sentence[at] - 1]
    return (
        previous[-1:]
        if len(previous) == 1 and message.text(at - 1) in {"it", "its", "still", "", "they"}
        else []
    )


def _alike(message: Message, chosen: list[_Part], at: int) -> list[_Part]:
    """Keep the parts that are joined by "and" to the nearest one."""
    nearest = min(chosen, key=lambda p: min(abs(p.start - at), abs(p.end - 1 - at)))
    kept = [nearest]
    index = chosen.index(nearest)
    for step in (-1, 1):
        i = index + step
        while 0 <= i < len(chosen):
            left, right = sorted((chosen[i], chosen[i - step]), key=lambda p: p.start)
            between = {message.text(j) for j in range(left.end, right.start)}
            if not (between & {"and", "&", "n", "plus", ",", "to", "into"}):
                break
            kept.append(chosen[i])
            i += step
    return sorted(kept, key=lambda p: p.start)


def _subordinate(message: Message, part: _Part, at: int) -> bool:
    """Return whether a part stands in what the client did when it hurt: "when I lift my arms"."""
    if part.start < at:
        return False
    between = message.texts(at + 1, part.start)
    return any(
        w in {"when", "while", "whilst", "whenever", "as", "during", "after", "because", "if"}
        for w in between
    )


def _score(message: Message, at: int, start: int, end: int, last: int) -> Decimal | None:
    """Return the score that the client puts on a pain: in its clause, after it, or in a short sentence
    after it."""
    in_clause = _score_in(message, at, start, end)
    if in_clause is not None:
        return in_clause
    stretch = last
    if last < len(message.tokens):
        following_first, following_last = message.sentence_span(last)
        if following_last - following_first <= 9:
            stretch = following_last
    return _score_in(message, at, start, stretch)


def _score_in(message: Message, at: int, first: int, stretch: int) -> Decimal | None:
    line = " ".join(_words(message, first, stretch))
    offsets: list[int] = []
    length = 0
    for token in message.tokens[first:stretch]:
        offsets.append(length)
        length += (1 if token.value is not None else len(token.text)) + 1
    for match in _SCORE.finditer(line):
        group = next(g for g in ("a", "b", "c", "d", "e") if match[g])
        at_score = first + offsets.index(match.start(group))
        value = message.value(at_score)
        if match["ten"] and message.value(first + offsets.index(match.start("ten"))) != 10:
            continue
        if (
            value is None
            or not 0 <= value <= 10
            or (message.taken[at_score] and message.taken[at_score] != "score")
        ):
            continue
        if group in {"c", "e"} and first + offsets.index(match.start(group)) < at and group == "c":
            continue
        if group == "a" and message.text(at_score - 1) in {"x", "*"}:
            continue
        whole_start = first + _index(offsets, match.start())
        whole_end = first + _index(offsets, match.end() - 1) + 1
        message.take(at_score if group == "b" else whole_start, max(whole_end, at_score + 1), "score")
        return value
    return None


def _index(offsets: list[int], place: int) -> int:
    found = 0
    for i, offset in enumerate(offsets):
        if offset <= place:
            found = i
    return found
