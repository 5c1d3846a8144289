"""What hurts, told from tired muscles, other people, the past and figures of speech.

Parts of the body and scores are in files of their own, and so are warning signs that call for medical
help. Nothing here knows of sets; what is taken as a score or a part of the body is marked in the message, so
that no set is made of it.
"""

from collections.abc import Callable, Sequence
from dataclasses import replace
from decimal import Decimal

from domain.reading.body_denials import is_denied, is_not_told
from domain.reading.body_parts import Part, find_parts
from domain.reading.body_phrases import FIGURES, HURTS_SOMEWHERE, IT_HURTS, OF_A_MUSCLE, TROUBLES_ME, WENT
from domain.reading.body_scores import is_out_of_ten, own_scores, score_later, score_of, take_score
from domain.reading.body_spans import parts_of, spans
from domain.reading.body_words import (
    ACHE,
    CLICKS,
    HURT,
    JOINTS,
    JOKE_WORDS,
    MIDDLE,
    MUSCLES,
    NEEDS_PART,
    PART_FIRST,
)
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.patterns import Pattern
from domain.reading.request import Pain, Place
from domain.reading.words import words_of

MOST_WORDS = 24
"""How many words of pain of one message are looked at; nobody needs more to say where it hurts."""
_TELLING = HURT | ACHE
_SCORE_SIGNS = frozenset({"/", "out", "on", "of", "from", "over"})
_PULLED_IT = Pattern("(like|think|thought|guess|if) i pulled it")
_HURTS = words_of("hurt hurts hurting painful")
_STILL_IS = words_of("is are was were still really now just always again today")
_ASKED = words_of("does do did will would should could can may might to")
"""Words that make a hurting one that is asked after, or only thought of."""
_ON_IT = words_of(": - on in during doing with at the my")


_SIDE_WORDS = frozenset({"left", "right", "both"})


def find_pain(message: Message, named: Sequence[Named]) -> tuple[Pain, ...]:
    """Return the places that hurt now or hurt in the workout told of, in order, each once."""
    if not _may_hurt(message):
        return ()
    parts = find_parts(message, named)
    own = own_scores(message, parts)
    exercises = [one for one in named if not one.weak]
    found: dict[tuple[Place, str], Pain] = {}
    for at in _told_at(message, parts, {at for at, _ in own.values()})[:MOST_WORDS]:
        for pain, part in _pain_at(message, at, parts, own) or _of_exercise(message, at, exercises):
            key = (pain.where, pain.side or "")
            known = found.get(key)
            if known is None or (known.score is None and pain.score is not None):
                found[key] = pain
            if part is not None:
                message.take(part.start, part.end, "pain")
                if pain.side is not None and message.text(part.start - 1) in _SIDE_WORDS:
                    message.heard.append((part.start - 1, part.start, "pain"))
                if part.start in own:
                    take_score(message, own[part.start][0])
            message.take(at, at + 1, "pain")
    return _merged(tuple(p for p in found.values() if p.score != 0))


def _may_hurt(message: Message) -> bool:
    """Return whether anything is said that can tell of pain; most messages say nothing of the kind."""
    return (
        message.has(_TELLING)
        or (message.has(PART_FIRST) and message.has(_SCORE_SIGNS))
        or TROUBLES_ME.is_in(message)
        or WENT.is_in(message)
    )


def _told_at(message: Message, parts: list[Part], scores: set[int]) -> list[int]:
    """Return the tokens by which pain is told, in order: words, turns of phrase and scores of a part."""
    figures = {at for figure in FIGURES.find(message) for at in range(figure.start, figure.end)}
    told = {at for at, token in enumerate(message.tokens) if token.text in _TELLING and at not in figures}
    for pattern in (TROUBLES_ME, WENT):
        told.update(found.end - 1 for found in pattern.find(message) if found.end - 1 not in figures)
    told.update(at for at in scores if is_out_of_ten(message, at))
    later = (score_later(message, part) for part in parts)
    told.update(at for at in later if message.value(at) is not None and at not in scores)
    return sorted(told)


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


def _pain_at(
    message: Message, at: int, parts: list[Part], own: dict[int, tuple[int, Decimal]]
) -> list[tuple[Pain, Part | None]]:
    """Return what hurts by the word at token `at`, each with its part; `own` are the parts' own scores."""
    for part in parts:
        if part.start in own and own[part.start][0] == at:
            return (
                [] if is_not_told(message, at) else [(Pain(part.place, part.side, own[part.start][1]), part)]
            )
    if is_not_told(message, at):
        return []
    word = message.text(at)
    first, last, start, end = spans(message, at)
    mine = [_sided(p, parts, message) for p in parts_of(message, at, parts)]
    mine = _closer_back(parts, mine, message)
    score = (
        score_of(message, at, start, end, last) if not all(p.start in own for p in mine) or not mine else None
    )
    if word == "me":
        mine = [p for p in mine if p.place in JOINTS and p.word not in MUSCLES]
    if word in ACHE:
        sore = _of_a_joint(message, at, first, last)
        mine = [p for p in mine if score is not None or p.start in own or sore(p)]
    elif word == "pulled":
        reach = 9 if _PULLED_IT.at(message, at - 2) else 5 if message.text(at - 2) == "it" else 3
        mine = [p for p in mine if p.start - at in range(8) or at - p.end in range(reach)]
    if not mine and (told := _one_of_two(message, at, first, parts)) is not None:
        mine = [told]
    if mine or word in ACHE:
        return [(Pain(p.place, p.side, own[p.start][1] if p.start in own else score), p) for p in mine]
    somewhere = HURTS_SOMEWHERE.is_in(message, first, last) or IT_HURTS.at(message, first, last)
    if (word in NEEDS_PART or score is None) and not somewhere:
        return []
    return [(Pain("other", None, score), None)]


def _one_of_two(message: Message, at: int, first: int, parts: list[Part]) -> Part | None:
    """Return the part named before, in an earlier sentence, with the side that hurts: "left one hurts"."""
    said = _SIDED_ONE.first(message, first, at)
    before = [part for part in parts if part.end <= first and part.place not in MIDDLE]
    if said is None or not before:
        return None
    side = message.text(said.start)
    return replace(before[-1], side="left" if side == "left" else "right" if side == "right" else "both")


_SIDED_ONE = Pattern("(left|right|both) (one|ones|of them)")


def _of_a_joint(message: Message, at: int, first: int, last: int) -> Callable[[Part], bool]:
    """Return what tells whether the ache of a word is of a joint, and not of a muscle that was trained."""
    if OF_A_MUSCLE.is_in(message, first, last):
        return lambda _part: False
    if message.text(at) in CLICKS and not _with_pain(message, first, last, at):
        return lambda _part: False
    return lambda part: part.place in JOINTS | {"abdomen"} and part.word not in MUSCLES


def _of_exercise(message: Message, at: int, named: Sequence[Named]) -> list[tuple[Pain, Part | None]]:
    """Return a pain somewhere, where it is the exercise itself that is said to hurt: "bench press hurts"."""
    before = at
    while message.text(before - 1) in _STILL_IS:
        before -= 1
    after = at + 1
    while message.text(after) in _ON_IT:
        after += 1
    about = {one.end for one in named} & {before} or {one.start for one in named} & {after}
    asked = not _ASKED.isdisjoint(message.texts(max(0, at - 2), at))
    speaks_of_it = message.text(at) in _HURTS and bool(about) and not asked
    if not speaks_of_it or message.has(JOKE_WORDS) or is_not_told(message, at):
        return []
    return [(Pain("other"), None)]


def _sided(part: Part, parts: list[Part], message: Message) -> Part:
    """Return a part with the side that its sentence gives it elsewhere: "meniscus hurts, left knee"."""
    if part.side is not None or part.place in MIDDLE:
        return part
    same = [
        p
        for p in parts
        if p.place == part.place and p.side and message.sentence[p.start] == message.sentence[part.start]
    ]
    return replace(part, side=same[0].side) if len(same) == 1 else part


def _closer_back(parts: list[Part], mine: list[Part], message: Message) -> list[Part]:
    """Return "the back" as the part of it that the sentence names elsewhere: "back pain, in the low back"."""
    if not any(p.place == "back" for p in mine):
        return mine
    sentence = message.sentence[mine[0].start]
    closer = [
        p for p in parts if p.place in {"lower back", "upper back"} and message.sentence[p.start] == sentence
    ]
    return [closer[0] if p.place == "back" and closer else p for p in mine]


def _with_pain(message: Message, first: int, last: int, at: int) -> bool:
    """Return whether a sentence tells of pain besides the word at `at`."""
    return any(
        t.text in HURT and not is_denied(message, i, message.clause_span(i)[0])
        for i, t in enumerate(message.tokens[first:last], first)
        if i != at
    )
