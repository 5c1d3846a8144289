"""What is not a record: plans, questions, other people's sets, warm-ups, and numbers of something else.

Each rule marks the numbers it speaks of in the message, so that no set is made of them. Nothing is read here.
"""

import re
from collections.abc import Sequence

from domain.reading.gym_numbers import OF_THE_GYM
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.other_numbers import OF_THE_WORLD
from domain.reading.pattern_tables import Table
from domain.reading.scope_words import (
    ASKING_WITHOUT_MARK,
    BACK_TO_ME,
    HISTORY,
    HISTORY_TRIGGERS,
    MY_OWN,
    NEXT_TO_ME,
    NOW,
    ON_THE_CHEST,
    OTHER_PRONOUN,
    OTHER_SUBJECT,
    OTHER_TRIGGERS,
    PLAN_AFTER,
    PLAN_BEFORE,
    PLAN_TRIGGERS,
    QUESTION,
    QUESTION_COMES_AFTER,
    QUESTION_FIRSTS,
    QUESTION_TRIGGERS,
    RESUME,
    STATEMENT,
    WARM,
    WARM_ENDS,
    WARM_TRIGGERS,
)
from domain.reading.tokens import JOKE, NUMBER
from domain.reading.words import words_of

THE_BODY = "the body"
"""What marks a part of the body where an exercise could be meant."""


_OTHERS = Table((other.pattern, other) for other in (*OF_THE_WORLD, *OF_THE_GYM))

_TOWARDS = words_of("to beside near behind of opposite with by from alongside than for")
"""Words before "me" that do not turn from another person back to the client."""
_AGAINST = words_of("vs than from versus was beats beat to with not")
"""Words before what was lifted earlier."""
_WARM_IS_OVER = words_of("done was felt and")


def mark_what_is_no_record(
    message: Message, named: Sequence[Named], known: set[int]
) -> list[tuple[int, int]]:
    """Mark the numbers that are no record. Return the questions and requests, as spans of tokens.

    `known` are the tokens of phrases that tell of a set, like "as planned" or "than last time".
    """
    for _, start, end in message.find(ON_THE_CHEST) if "chest" in message.words else ():
        message.take(start, end, THE_BODY)
    has_number = any(t.kind == NUMBER for t in message.tokens)
    questions = _questions(message) if message.has(QUESTION_TRIGGERS) else []
    questions = [(s, e) for s, e in questions if s not in known]
    for start, end in questions:
        message.take(start, end, "a question")
    if not has_number:
        return questions
    _mark_other_numbers(message, known)
    if message.has(OTHER_TRIGGERS):
        _mark_others(message)
    if message.has(PLAN_TRIGGERS):
        _mark_plans(message, known)
    if message.has(WARM_TRIGGERS):
        _mark_warm_ups(message, named)
    if message.has(HISTORY_TRIGGERS):
        _mark_history(message, known)
    return questions


def _mark_other_numbers(message: Message, known: set[int]) -> None:
    for other, found in _OTHERS.find(message):
        start, end = found.parts.get("n", (found.start, found.end))
        values = [v for at in range(start, end) if (v := message.value(at)) is not None]
        if (start not in known or other.always) and any(other.least <= v <= other.most for v in values):
            _take_numbers(message, start, end, other.what)


def _take_numbers(message: Message, start: int, end: int, what: str) -> None:
    for at in range(start, end):
        if message.value(at) is not None and not message.taken[at]:
            message.take(at, at + 1, what)


def _questions(message: Message) -> list[tuple[int, int]]:
    found: list[tuple[int, int]] = []
    for match, start, _ in message.find_from(QUESTION, QUESTION_FIRSTS):
        if message.text(start - 1) not in QUESTION_COMES_AFTER:
            continue
        _, last = message.sentence_span(start)
        if found and start < found[-1][1]:
            continue
        marked = message.text(last - 1) == "?" or (last < len(message.tokens) and message.text(last) == "?")
        opening = message.line[message.starts[start] : match.end()]
        rest = message.line[message.starts[start] : (message.starts[last - 1] if last > start else None)]
        if re.match(r"(?:did|do|does|have|has|will|would|could|can|may|might) #", rest):
            continue
        if not marked and not _asks(message.text(start - 1), rest, opening):
            continue
        found.append((start, last))
    return found


def _asks(before: str, rest: str, opening: str) -> bool:
    """Return whether words that can open a question do so, where no question mark stands at the end.

    `before` is the word before them, `rest` the sentence from there, `opening` the words themselves.
    """
    if re.match(
        r"(?:is|are|was|were|does|did|has|am) (?!it\b|that\b|this\b|i\b|my\b|the\b|there\b|these\b"
        r"|those\b|they\b|we\b)",
        rest,
    ):
        return False
    if opening.startswith(("if ", "whether ")):
        return before in {"wondering", "ask", "know", "sure"}
    if re.match(
        r"(?:can|could|would|will|should|may|might) (?:have|be|do|not|only|still|barely|also|easily"
        r"|probably)\b",
        rest,
    ):
        return False
    if STATEMENT.match(rest):
        return bool(
            re.match(
                r"(?:will|would|was|were|did) (?:it|that|this|you|i) (?:be|have|ok|okay|bad|wrong|normal"
                r"|matter)",
                rest,
            )
        )
    if re.match(r"(?:what|how) (?:a|an)\b", rest) or re.match(r"(?:can|could) (?:#|not|barely|feel)", rest):
        return False
    if re.match(r"do (?:the|my|it|that|this|these|those|more|#|squats|bench|rows|not|less)\b", rest):
        return False
    return ASKING_WITHOUT_MARK.match(rest) is not None


def _mark_plans(message: Message, known: set[int]) -> None:
    for match, start, end in message.find(PLAN_BEFORE):
        if start in known:
            continue
        if match.group() in {"want", "wants"} and message.text(end) == "of":
            continue
        _, last = message.sentence_span(start)
        _take_numbers(message, end, _resumes(message, end, last), "a plan")
    for match, start, _ in message.find(PLAN_AFTER):
        if start in known:
            continue
        clause_first, _ = message.clause_span(start)
        scope = start
        while scope > clause_first and message.text(scope - 1) not in {"and", "&", "plus"}:
            scope -= 1
        if (
            match.group() in {"next time", "next week", "tomorrow", "soon"}
            or "plan" in match.group()
            or "goal" in match.group()
            or "the" in match.group()
        ):
            _take_numbers(message, scope, start, "a plan")


def _resumes(message: Message, start: int, last: int) -> int:
    """Return where a plan ends: at a word that turns back to what was done, or at the end of the sentence."""
    line = message.line[message.starts[start] :] if start < len(message.starts) else ""
    offset = message.starts[start] if start < len(message.starts) else 0
    for match in RESUME.finditer(line):
        at = message.at(offset + match.start())
        if at >= last:
            break
        if any(message.tokens[i].kind == JOKE for i in range(start, at)):
            break
        if (
            match.group() in {"did", "got", "made", "hit", "now", "today", "only", "this time"}
            and at <= start + 1
        ):
            continue
        return at
    joke = next((i for i in range(start, last) if message.tokens[i].kind == JOKE), None)
    return joke if joke is not None else last


def _mark_others(message: Message) -> None:
    for pattern in (OTHER_SUBJECT, OTHER_PRONOUN):
        for match, start, _ in message.find(pattern):
            if MY_OWN.search(NEXT_TO_ME.sub(" ", match.group())) or (
                start > 0
                and message.text(start - 1)
                in {"with", "by", "to", "from", "and", "told", "tell", "beat", "as"}
                and pattern is OTHER_SUBJECT
                and MY_OWN.search(message.line[: match.start()])
            ):
                continue
            if (
                message.text(start) in {"bro", "dude", "man", "boss", "mate", "trainer"}
                and (start == 0 or message.text(start - 1) in {",", ".", "!", "\n", "yo", "hey"})
                and not re.search(r"\b(?:did|benched|squatted|lifted|hit)\b", match.group())
            ):
                continue
            _, last = message.sentence_span(start)
            line = message.line[message.starts[start] :]
            stop = last
            for back in BACK_TO_ME.finditer(line):
                at = message.at(message.starts[start] + back.start())
                if at > start and at < last and message.text(at - 1) not in _TOWARDS:
                    stop = at
                    break
            _take_numbers(message, start, stop, "another's")


def _mark_warm_ups(message: Message, named: Sequence[Named]) -> None:
    for _, start, end in message.find(WARM):
        if message.text(start - 1) in {"after", "no", "without"} or message.text(end) in _WARM_IS_OVER:
            continue
        first, last = message.sentence_span(start)
        clause_first, clause_last = message.clause_span(start)
        clause_first = max(clause_first, first)
        if message.text(start - 1) == "(":
            # "60x5 (warm up)" speaks of what stands before the bracket.
            clause_first = max(first, message.clause_span(start - 1)[0])
        ahead = _warm_end(message, end, last, named)
        before = any(
            message.value(at) is not None and not message.taken[at] for at in range(clause_first, start)
        )
        within = any(message.value(at) is not None for at in range(end, min(ahead, clause_last)))
        if not (before and not within) and any(
            message.value(at) is not None for at in range(end, min(ahead, clause_last + 6))
        ):
            _take_numbers(message, end, ahead, "a warm-up")
        else:
            scope = start
            while scope > clause_first and message.text(scope - 1) not in {"and", "then", "&"}:
                scope -= 1
            _take_numbers(message, scope, start, "a warm-up")


def _warm_end(message: Message, start: int, last: int, named: Sequence[Named]) -> int:
    names = 0
    seen_number = False
    for at in range(start, last):
        if (
            message.text(at) in WARM_ENDS
            or (message.text(at) in {"and"} and message.text(at + 1) in WARM_ENDS)
        ) and (seen_number or message.text(at) not in {"first", "before", "after"}):
            return at
        if message.value(at) is not None:
            seen_number = True
        if any(n.start == at for n in named):
            names += 1
            if names > 1 or seen_number:
                return at
    return last


def _mark_history(message: Message, known: set[int]) -> None:
    for match, start, end in message.find(HISTORY):
        if match.group() == "it was" or start in known or any(message.taken[at] for at in range(start, end)):
            continue
        clause_first, clause_last = message.clause_span(start)
        _, last = message.sentence_span(start)
        line = message.line[message.starts[start] + len(match.group()) :]
        stop = clause_last
        now = NOW.search(line)
        if now is not None:
            at = message.at(message.starts[start] + len(match.group()) + now.start())
            stop = min(last, at) if at > end else clause_last
        if any(message.value(at) is not None for at in range(end, stop)):
            _take_numbers(message, end, stop, "what was before")
            continue
        for at in range(start - 1, clause_first - 1, -1):
            if message.text(at) in _AGAINST:
                _take_numbers(message, at, start, "what was before")
                break
