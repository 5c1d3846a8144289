"""What hurts, told from tired muscles, other people, the past and figures of speech.

Parts of the body and scores are in files of their own, and so are warning signs that call for medical
help. Nothing here knows of sets; what is taken as a score or a part of the body is marked in the message, so
that no set is made of it.
"""

import re
from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from domain.reading.body_parts import Part, find_parts
from domain.reading.body_scores import is_out_of_ten, own_scores, score_later, score_of, take_score
from domain.reading.body_words import (
    ACHE,
    CLICKS,
    CONDITIONAL,
    FIGURES,
    HURT,
    JOINTS,
    JOKE_WORDS,
    LONG_PAST,
    MIDDLE,
    MUSCLES,
    NEEDS_PART,
    NEGATIONS,
    OTHERS,
    OVER_NOW,
    PART_FIRST,
    STILL,
    STORY,
    TRIGGERS,
    UNTIL,
)
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.request import Pain, Place
from domain.reading.words import words_of

MOST_WORDS = 24
"""How many words of pain of one message are looked at; nobody needs more to say where it hurts."""
FARTHEST = 60
"""How many tokens away the words for a pain can stand."""

_SCORE_SIGNS = frozenset({"/", "out", "on", "of", "from", "over"})
_KILLING = re.compile(
    r"\b(?:is|are|was|were|been|being) (?:really |absolutely )?(?:killing me"
    r"|bothering me|bugging me|acting up"
    r"|playing up|giving me (?:\w+ ){0,2}(?:trouble|grief|bother|jip|gyp)"
    r"|complaining|in agony|unhappy|screaming)\b"
    r"|\b(?:bothers|hurts) me\b|\b(?:gives|gave|giving) me (?:some |a lot of "
    r"|a bit of )?(?:trouble|grief|bother"
    r"|jip|gyp)\b|\b(?:acting|playing|flared|flaring) up\b"
)
_WENT = re.compile(
    r"\b(?:something|it) (?:has |had )?(?:pulls?|go|went|give|gave|tear|tore"
    r"|snap|snapped|pop|popped|pinch|twinge"
    r"|strain|tweak|crunch|pulled|stings?)"
    r"(?= (?:me )?(?:in|at|on|around|behind|under|near|deep))"
    r"|\ba (?:pull|pop|snap|tear|tweak|crunch|strain|stab)(?= (?:in|at|behind|under|near) (?:my|the))"
    r"|\bmy (?:lower |upper )?(?:back|neck|knee|shoulder|hip) (?:just |has "
    r"|have )?(?:went|gone|gave (?:out|way)|went out"
    r"|is out|locked up)(?= (?:on|in|at|during|again|when)|$| [.,!])"
    r"|\bhave (?:it )?bad(?= (?:at|in|on) (?:my|the))|\bstings me\b|\b(?:in"
    r"|at) the (?:\S+ ){1,3}it has pulled\b"
)
_OUCH = r"(?:ow|ouch|argh)(?: [,.!])*"
_VERY = r"(?:really |still |actually )?"
_SOMETHING = re.compile(
    r"\bsomething (?:in there )?(?:hurts?|pulled|popped|went|is hurting|painful|tore)\b|\b(?:sharp|bad"
    r"|nasty|strong|stabbing|shooting|awful|terrible|weird|severe|sudden) pains?\b"
    r"|(?<!does )(?<!will )(?<!should )\bit (?:really )?hurts? "
    r"(?:a lot|badly|bad|like hell|when|on|during|doing)\b"
    r"|\bin (?:a lot of |so much )?pain\b"
    rf"|^(?:{_OUCH} )?(?:(?:it|that|this) {_VERY}hurts|it {_VERY}hurt)(?: now)?(?: [.!])*$"
    rf"|^{_OUCH} (?:it|that|this) {_VERY}hurts?(?: a lot| badly)?(?: [.!])*$"
)
_MINE = re.compile(r"\b(?:i|my|ive|im|me)\b")
_MAY_I = re.compile(
    r"\b(?:should|can|could|shall|may|do|must) i\b|\bis it (?:ok|okay|fine|bad|alright|safe)\b"
)
"""A question about what hurts already: "should I squat if my knee hurts?"."""
_INTO = words_of("in at on around under behind inside")
_JOINED = words_of("and & n plus , to into")
_WHEN = words_of("when while whilst whenever as during after because if")
_FREE = words_of("free killers killer relief meds")
_NOT_BUT = words_of("only just sure great ideal happy good")
"""Words after "not" that make it no denial."""
_CANT_BUT = words_of("hurt have feel get really even")
"""Words after "cant" or "dont" that are needed to make it a denial."""
_HURTS = words_of("hurt hurts hurting painful")
_STILL_IS = words_of("is are was were still really now just always again today")
_ASKED = words_of("does do did will would should could can may might to")
"""Words that make a hurting one that is asked after, or only thought of."""
_ON_IT = words_of(": - on in during doing with at the my")
_YES = words_of("yes yeah yep yup")
_NO = words_of("no nope none nil negative nothing")


def find_pain(message: Message, named: Sequence[Named]) -> tuple[Pain, ...]:
    """Return the places that hurt now or hurt in the workout told of, in order, each once."""
    if not message.has(TRIGGERS) and not (message.has(PART_FIRST) and message.has(_SCORE_SIGNS)):
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
                if part.start in own:
                    take_score(message, own[part.start][0])
            message.take(at, at + 1, "pain")
    return _merged(tuple(p for p in found.values() if p.score != 0))


def _told_at(message: Message, parts: list[Part], scores: set[int]) -> list[int]:
    """Return the tokens by which pain is told, in order: words, turns of phrase and scores of a part."""
    figures = {at for _, start, end in message.find(FIGURES) for at in range(start, end)}
    told = {
        at
        for at, token in enumerate(message.tokens)
        if (token.text in HURT or token.text in ACHE) and at not in figures
    }
    for pattern in (_KILLING, _WENT):
        told.update(end - 1 for _, _, end in message.find(pattern) if end - 1 not in figures)
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
                [] if _is_not_told(message, at) else [(Pain(part.place, part.side, own[part.start][1]), part)]
            )
    if _is_not_told(message, at):
        return []
    word = message.text(at)
    first, last, start, end = _spans(message, at)
    mine = [_sided(p, parts, message) for p in _parts_of(message, at, parts)]
    mine = _closer_back(parts, mine, message)
    score = (
        score_of(message, at, start, end, last) if not all(p.start in own for p in mine) or not mine else None
    )
    if word == "me":
        mine = [p for p in mine if p.place in JOINTS and p.word not in MUSCLES]
    if word in ACHE:
        muscular = not {"muscle", "muscles"}.isdisjoint(message.texts(first, last))
        mine = [
            p
            for p in mine
            if score is not None
            or p.start in own
            or (
                p.place in JOINTS
                and p.word not in MUSCLES
                and not muscular
                and (word not in CLICKS or _with_pain(message, first, last, at))
            )
        ]
    elif word == "pulled":
        mine = [
            p
            for p in mine
            if p.start - at in range(8) or at - p.end in range(5 if message.text(at - 2) == "it" else 3)
        ]
    if mine or word in ACHE:
        return [(Pain(p.place, p.side, own[p.start][1] if p.start in own else score), p) for p in mine]
    line = _line(message, first, last)
    if (word in NEEDS_PART or score is None) and not _SOMETHING.search(line):
        return []
    return [(Pain("other", None, score), None)]


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
    if not speaks_of_it or message.has(JOKE_WORDS) or _is_not_told(message, at):
        return []
    return [(Pain("other"), None)]


def _spans(message: Message, at: int) -> tuple[int, int, int, int]:
    """Return the ends of the sentence and the clause of a token, no farther than words for a pain stand."""
    first, last = message.sentence_span(at)
    first, last = max(first, at - FARTHEST), min(last, at + FARTHEST)
    start, end = message.clause_span(at)
    return first, last, max(start, first), min(end, last)


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


def _line(message: Message, start: int, end: int) -> str:
    """Return a stretch of the plain line."""
    if start >= end:
        return ""
    starts = message.starts
    return message.line[starts[start] : starts[end] - 1 if end < len(starts) else None]


def _with_pain(message: Message, first: int, last: int, at: int) -> bool:
    """Return whether a sentence tells of pain besides the word at `at`."""
    return any(
        t.text in HURT and not _is_denied(message, i, *message.clause_span(i))
        for i, t in enumerate(message.tokens[first:last], first)
        if i != at
    )


def _is_not_told(message: Message, at: int) -> bool:
    """Return whether the pain of a word is denied, another's, long past, over, or only thought of."""
    first, last, start, end = _spans(message, at)
    return _is_denied(message, at, start, end) or _is_not_now(message, at, first, last, start)


def _is_denied(message: Message, at: int, start: int, end: int) -> bool:
    """Return whether a word is denied in its clause: no pain, did not hurt, pain free, pain: none."""
    if message.text(at + 1) in _FREE or _is_answered_no(message, at):
        return True
    for i in range(at - 1, max(start, at - 7) - 1, -1):
        text = message.text(i)
        if text in {"and", "but", "just", "only"} and i < at - 1 and message.text(i - 1) != "not":
            return False
        if text in NEGATIONS:
            after = message.text(i + 1)
            if text == "not" and after in _NOT_BUT:
                continue
            if text in {"cant", "couldnt", "dont", "wont"} and after not in _CANT_BUT:
                continue
            if text == "without" and not {"cant", "cannot", "couldnt"}.isdisjoint(message.texts(start, i)):
                return False
            return UNTIL.isdisjoint(message.texts(i, min(len(message.tokens), at + 5)))
    del end
    return False


def _is_answered_no(message: Message, at: int) -> bool:
    """Return whether a pain is only asked after, and answered with no: "knee pain: none"."""
    mark = at + 1
    if message.text(mark) in {":", "?", "-", "="}:
        mark += 1
    return message.text(mark) in _NO and message.text(mark + 1) in {"", ".", ",", ";", "!", "\n", ")"}


def _is_not_now(message: Message, at: int, first: int, last: int, start: int) -> bool:
    """Return whether the pain is another's, a story's, long past, over, or only thought of."""
    line = _line(message, first, last)
    place = len(_line(message, first, at))
    for match in OTHERS.finditer(line):
        if match.start() <= place and not _MINE.search(line[match.end() : max(place, match.end())]):
            return True
    if STORY.search(line[:place]):
        return True
    clause_before = _line(message, start, at)
    if CONDITIONAL.search(clause_before) and not (
        " if my " in f" {clause_before} " and _MAY_I.search(line[:place])
    ):
        return True
    if not STILL.isdisjoint(message.texts(first, last)):
        return False
    over = OVER_NOW.search(line)
    if over is not None and over.start() > place - 40:
        between = line[min(place, over.end()) : max(place, over.start())]
        changes = over.end() <= place and (" , " in between + " " or " but " in between + " ")
        if "but my" not in between and not changes:
            return True
    return is_long_past(message, first, last)


def is_long_past(message: Message, first: int, last: int) -> bool:
    """Return whether a stretch of the message tells of long ago: "years ago", "in 2015"."""
    if LONG_PAST.search(_line(message, first, last)):
        return True
    return any(
        message.text(at - 1) in {"in", "since", "from"} and 1900 < (message.value(at) or 0) < 2100
        for at in range(first, last)
    )


def _parts_of(message: Message, at: int, parts: list[Part]) -> list[Part]:
    """Return the parts that a word speaks of: those of its clause, or the nearest of its sentence."""
    first, last, start, end = _spans(message, at)
    here = [p for p in parts if start <= p.start < end]
    earlier = [p for p in parts if first <= p.start < start]
    if here:
        main = [p for p in here if not _subordinate(message, p, at)]
        if not main and earlier:
            return earlier[-1:]
        chosen = main or here
        before = [p for p in chosen if p.end <= at]
        after = [p for p in chosen if p.start >= at]
        if before and after and _JOINED.isdisjoint(message.texts(before[-1].end, after[0].start)):
            # "my elbow hurts lifting my arm" speaks of the elbow; "pain in my knee" of what follows.
            return after if message.text(at + 1) in _INTO else before
        return _alike(message, chosen, at)
    if earlier:
        return earlier[-1:]
    later = [p for p in parts if end <= p.start < last]
    if later:
        return later[:1]
    if message.text(last - 1) == "?" and message.text(last) in _YES:
        _, answered = message.sentence_span(last)
        return [p for p in parts if last < p.start < answered][:1]
    previous = [p for p in parts if p.start < first and message.sentence[p.start] == message.sentence[at] - 1]
    points_back = message.text(at - 1) in {"it", "its", "still", "", "they"}
    return previous[-1:] if len(previous) == 1 and points_back else []


def _alike(message: Message, chosen: list[Part], at: int) -> list[Part]:
    """Keep the parts that are joined by "and" to the nearest one."""
    nearest = min(chosen, key=lambda p: min(abs(p.start - at), abs(p.end - 1 - at)))
    kept = [nearest]
    index = chosen.index(nearest)
    for step in (-1, 1):
        i = index + step
        while 0 <= i < len(chosen):
            left, right = sorted((chosen[i], chosen[i - step]), key=lambda p: p.start)
            if _JOINED.isdisjoint(message.texts(left.end, right.start)):
                break
            kept.append(chosen[i])
            i += step
    return sorted(kept, key=lambda p: p.start)


def _subordinate(message: Message, part: Part, at: int) -> bool:
    """Return whether a part stands in what the client did when it hurt: "when I lift my arms"."""
    return part.start >= at and not _WHEN.isdisjoint(message.texts(at + 1, part.start))
