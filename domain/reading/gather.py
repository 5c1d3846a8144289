"""Numbers, names and short phrases gathered into groups: what was said of one exercise in one stretch.

Which numbers are joined, and which name they belong to, is decided by the words and signs between them. A
lone
bare number counts only where it is anchored: beside a name, after a verb of doing, or alone in its clause.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass, field

from domain.reading.exercise_words import COMMON
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.phrases import Mark, Quantity
from domain.reading.tokens import LINE, NUMBER, WORD
from domain.reading.words import (
    AND_WORDS,
    AT_WORDS,
    BETWEEN,
    FILLERS,
    FOR_WORDS,
    INTERJECTIONS,
    LOAD_NOUNS,
    RESULT_VERBS,
    THEN_WORDS,
    TIMES_SIGNS,
    TRAINING,
    words_of,
)

TIGHT = frozenset({"x", "for", "@", "at", "/", ":", "-", ""})
"""Joints inside one element; the others stand between elements: , and then line stop gap."""


@dataclass(slots=True)
class Element:
    """Numbers that are tightly joined. `joints[i]` stands before `quantities[i]`; the first one before
    them all."""

    quantities: list[Quantity]
    joints: list[str]
    after_at: bool = False
    next_to_name: bool = False
    result: bool = False

    @property
    def start(self) -> int:
        """The first token."""
        return self.quantities[0].start

    @property
    def end(self) -> int:
        """The token after the last."""
        return self.quantities[-1].end


Item = Element | Mark


@dataclass(slots=True)
class Group:
    """What was said of one exercise in one stretch of a sentence. `pointer` is a number in the plan, from
    1."""

    named: Named | None
    items: list[Item] = field(default_factory=list)
    line: int = 0
    sentence: int = 0
    pointer: int | None = None
    again: bool = False
    first_on_line: bool = True
    unknown_word: str | None = None
    doubtful: bool = False

    @property
    def start(self) -> int:
        """The first token of what was said."""
        return min([i.start for i in self.items] + ([self.named.start] if self.named else []), default=0)

    @property
    def end(self) -> int:
        """The token after the last of what was said."""
        return max([i.end for i in self.items] + ([self.named.end] if self.named else []), default=0)


_POINTER = re.compile(
    r"(?:(?<=\n )|^|(?<= ))(?P<n>#) \)|(?:(?<=\n )|^)(?P<m>#) [.:](?= )|\b(?:exercise|ex|no|nr) (?:no "
    r"|number |nr |# )?(?P<k>#)(?= [:,\-.]| #|\b)|\b(?P<o>first|second|third|fourth|fifth"
    r"|sixth) exercise\b|(?P<q>#) (?:st|nd|rd|th) exercise\b"
)
_ORDINALS = {"first": 1, "second": 2, "third": 3, "fourth": 4, "fifth": 5, "sixth": 6}
_GROUP_MARKS = frozenset(
    {
        "same all",
        "same load",
        "up",
        "down",
        "more reps",
        "fewer reps",
        "target",
        "target more",
        "target fewer",
        "body",
        "unknown load",
        "pin",
        "failed on",
        "failure",
        "no failure",
        "rir",
        "lowering",
        "unknown reps",
        "each hand",
        "every set",
        "again",
        "same again",
        "change",
        "zero",
    }
)
PROVIDERS = frozenset(
    {
        "same all",
        "same load",
        "up",
        "down",
        "more reps",
        "fewer reps",
        "target",
        "target more",
        "target fewer",
        "body",
        "unknown load",
        "pin",
        "zero",
        "same again",
    }
)
"""Phrases that give a load or reps of their own."""


def find_pointers(message: Message) -> dict[int, int]:
    """Return the places where an exercise is pointed at by its number in the plan, and mark those numbers."""
    found: dict[int, int] = {}
    if not message.has(frozenset({")", ".", ":", "exercise", "ex", "no", "nr"})):
        return found
    for match, start, end in message.find(_POINTER):
        if match["o"]:
            number = _ORDINALS[match["o"]]
        else:
            group = next(g for g in ("n", "m", "k", "q") if match[g])
            at, _ = message.span(match, group)
            value = message.value(at)
            if value is None or value != int(value) or not 1 <= value <= 15 or message.taken[at]:
                continue
            if group == "n" and _in_brackets(message, at):
                continue
            if group == "m" and (end >= len(message.tokens) or not _has_more(message, end)):
                continue
            number = int(value)
        found[start] = number
        message.take(start, end, "a place in the plan", over=True)
    if len(found) == 1 and all(message.text(at + 1) == ":" for at in found):
        # A lone "80: 8, 7, 6" is a load with its reps.
        at = next(iter(found))
        message.taken[at] = message.taken[at + 1] = ""
        return {}
    return found


def _in_brackets(message: Message, at: int) -> bool:
    """Return whether a bracket is open at a token of its line."""
    depth = 0
    for i in range(at - 1, -1, -1):
        if message.tokens[i].kind == LINE:
            break
        depth += (message.text(i) == "(") - (message.text(i) == ")")
    return depth > 0


def _has_more(message: Message, start: int) -> bool:
    """Return whether more of the line follows, with a number in it."""
    for at in range(start, len(message.tokens)):
        if message.tokens[at].kind == LINE:
            return False
        if message.tokens[at].kind == NUMBER:
            return True
    return False


def joint_between(message: Message, start: int, end: int, blank: set[int]) -> str:
    """Return how two numbers are joined by the tokens from `start` to before `end`."""
    seen: str | None = None
    words = 0
    explained = [at for at in range(start, end) if message.taken[at] == "an explanation"]
    if explained:
        start = explained[-1] + 1
    for at in range(start, end):
        if at in blank:
            continue
        token = message.tokens[at]
        text = token.text
        if token.kind == LINE:
            return "line"
        if text in {".", "!", "?", ";"}:
            return "stop"
        if text == ")" and explained:
            continue
        if text in {",", "(", ")"}:
            seen = ","
        elif text in TIMES_SIGNS:
            seen = _stronger(seen, "x")
        elif text in FOR_WORDS:
            seen = "for" if seen in {None, "for", ","} else seen
        elif text in AT_WORDS:
            seen = _stronger(seen, "@" if text == "@" else "at")
        elif text == "-" and not token.glued:
            seen = _stronger(seen, ":") if at == start and at + 1 == end else _stronger(seen, ",")
        elif text in {"/", ":", "-", "="}:
            seen = _stronger(seen, {"=": ":"}.get(text, text))
        elif text in {"|"}:
            seen = ","
        elif text in AND_WORDS or text in {"+", "or"}:
            seen = _stronger(seen, "and")
        elif text in {"first", "second", "third", "fourth", "fifth", "last", "final", "1st", "2nd"}:
            seen = _stronger(seen, ",")
        elif text in THEN_WORDS or text == ">":
            seen = "then"
        elif (
            text in BETWEEN
            or text in LOAD_NOUNS
            or (text == "on" and message.text(at + 1) in {"my", "the"} and message.text(at + 2) in LOAD_NOUNS)
            or (
                token.kind == WORD
                and text in {"you", "we", "next", "another", "again", "set", "sets", "too", "as", "well"}
            )
        ):
            words += 1
            if words > 4:
                return "gap"
        elif token.kind == WORD or text in {"%", "€", "$", "£"}:
            return "gap"
    return seen if seen is not None else ("" if words <= 2 else "gap")


_STRENGTH = {"": 0, "x": 1, "for": 1, ":": 1, "/": 1, "-": 1, "@": 2, "at": 2, "and": 3, ",": 3, "then": 4}


def _stronger(seen: str | None, new: str) -> str:
    return new if seen is None or _STRENGTH[new] > _STRENGTH[seen] else seen


def gather(
    message: Message,
    named: Sequence[Named],
    marks: Sequence[Mark],
    quantities: Sequence[Quantity],
    pointers: dict[int, int],
    *,
    all_count: bool = False,
) -> list[Group]:
    """Return the groups of the message, in order; with `all_count` no lone number is left out."""
    named = [
        n for n in named if not (n.weak and message.text(n.start - 1) == "my" and n.end < len(message.tokens))
    ]
    blank = {at for m in marks for at in range(m.start, m.end)}
    name_tokens = {at for n in named for at in range(n.start, n.end)}
    changes = {at for m in marks if m.kind == "change" for at in range(m.start, m.end)}
    elements = _elements(message, quantities, blank, name_tokens, pointers, changes)
    things: list[Named | Element | Mark] = [*named, *elements, *(m for m in marks if m.kind in _GROUP_MARKS)]
    things.sort(key=lambda t: t.start)
    kept = things if all_count else _anchored(message, things, blank)
    groups: list[Group] = []
    sentence: list[Named | Element | Mark] = []
    number = -1
    for thing in kept:
        now = message.sentence[thing.start]
        if now != number and sentence:
            groups.extend(_grouped(message, sentence, pointers))
            sentence = []
        number = now
        sentence.append(thing)
    if sentence:
        groups.extend(_grouped(message, sentence, pointers))
    _number_lines(message, groups)
    for group in groups:
        group.doubtful = _is_doubtful(message, group)
        if group.named is None and group.pointer is None and not group.again and group.items:
            group.unknown_word = _unknown_word(message, group)
    return groups


def _is_doubtful(message: Message, group: Group) -> bool:
    """Return whether a question mark stands right after what was said: "80x8?"."""
    end = group.end
    while message.text(end) in {"kg", "lb", "reps", "today"} or (message.taken[end : end + 1] == ["a day"]):
        end += 1
    return bool(group.items) and message.text(end) == "?"


def _unknown_word(message: Message, group: Group) -> str | None:
    """Return a word that stands where the name of an exercise would, and is none that is known."""
    first = group.items[0]
    if not isinstance(first, Element):
        return None
    at = first.start - 1
    while message.text(at) in {":", "-", "at", "with", "was", "for", "got", "x", "="} and at >= 0:
        at -= 1
    if (
        at >= 0
        and _is_unknown(message, at)
        and (at == 0 or message.text(at - 1) in _NAME_COMES_AFTER or _is_unknown(message, at - 1))
    ):
        return message.text(at)
    at = group.items[-1].end
    if message.text(at) in {"on", "of"}:
        at += 1
        while message.text(at) in {"the", "my"}:
            at += 1
        if at < len(message.tokens) and _is_unknown(message, at):
            return message.text(at)
    return None


_NAME_COMES_AFTER = frozenset(
    {",", ".", "\n", "and", "then", "did", "the", "for", ":", ";", "!", "&", "on", "plus", "n", "some", "my"}
)


def _is_unknown(message: Message, at: int) -> bool:
    token = message.tokens[at]
    return (
        token.kind == WORD
        and not message.taken[at]
        and len(token.text) >= 4
        and token.text not in FILLERS
        and token.text not in COMMON
        and token.text not in BETWEEN
        and token.text not in RESULT_VERBS
        and token.text not in TRAINING
        and token.text not in INTERJECTIONS
        and not token.text.endswith(("ly", "ing"))
    )


def _elements(
    message: Message,
    quantities: Sequence[Quantity],
    blank: set[int],
    name_tokens: set[int],
    pointers: dict[int, int],
    changes: set[int],
) -> list[Element]:
    elements: list[Element] = []
    before: Quantity | None = None
    for quantity in quantities:
        joint = "gap"
        if before is not None:
            between = range(before.end, quantity.start)
            if any(at in name_tokens for at in between):
                last_name = max(at for at in between if at in name_tokens) + 1
                after_name = joint_between(message, last_name, quantity.start, blank)
                joint = after_name if after_name in {",", "and", "then", "line", "stop"} else "name"
            elif any(at in pointers for at in between):
                joint = "then"
            elif any(at in changes for at in between):
                joint = "change"
            else:
                joint = joint_between(message, before.end, quantity.start, blank)
        if joint in TIGHT and elements and not _parts(elements[-1], joint):
            elements[-1].quantities.append(quantity)
            elements[-1].joints.append(joint)
        else:
            elements.append(
                Element(
                    [quantity],
                    [joint],
                    after_at=message.text(quantity.start - 1) in AT_WORDS,
                    result=message.text(quantity.start - 1) in RESULT_VERBS,
                )
            )
        before = quantity
    return elements


def _parts(element: Element, joint: str) -> bool:
    """Return whether a blank after a finished load and reps begins the next set: "80x8 85x5"."""
    return joint == "" and len(element.quantities) >= 2 and False


def _anchored(
    message: Message, things: list[Named | Element | Mark], blank: set[int]
) -> list[Named | Element | Mark]:
    """Leave out lone bare numbers that nothing anchors, and weak names away from a number."""
    kept: list[Named | Element | Mark] = []
    for i, thing in enumerate(things):
        before = things[i - 1] if i else None
        after = things[i + 1] if i + 1 < len(things) else None
        if isinstance(thing, Named):
            if thing.weak and (not thing.names or _is_body_part(message, thing)):
                continue
            if thing.weak and not (
                _beside(message, before, thing, blank) or _beside(message, thing, after, blank)
            ):
                continue
            kept.append(thing)
        elif isinstance(thing, Element):
            beside_before = _past_marks(things, i, -1)
            beside_after = _past_marks(things, i, 1)
            if isinstance(beside_before, Named) and _close(message, beside_before.end, thing.start, blank):
                thing.next_to_name = True
            after = beside_after
            if isinstance(after, Named) and _close(message, thing.end, after.start, blank, of=True):
                thing.next_to_name = True
            if _is_anchored(message, thing, kept, things, i, blank):
                kept.append(thing)
        else:
            kept.append(thing)
    return kept


_STATES = words_of("""is are was were feels felt feel still hurts so looks got gets really""")


def _is_body_part(message: Message, name: Named) -> bool:
    """Return whether a word is a part of the body here, and no exercise: "my chest is pumped"."""
    return message.text(name.start - 1) == "my" and message.text(name.end) in _STATES


def _past_marks(things: list[Named | Element | Mark], i: int, step: int) -> Named | Element | Mark | None:
    """Return the next thing in a direction that is not a phrase which only describes."""
    at = i + step
    while 0 <= at < len(things):
        thing = things[at]
        if not isinstance(thing, Mark) or thing.kind in PROVIDERS:
            return thing
        at += step
    return None


def _beside(message: Message, left: object, right: object, blank: set[int]) -> bool:
    if isinstance(left, Named) and isinstance(right, Element):
        return _close(message, left.end, right.start, blank)
    if isinstance(left, Element) and isinstance(right, Named):
        return _close(message, left.end, right.start, blank, of=True)
    if isinstance(left, Named) and isinstance(right, Mark):
        return right.kind in PROVIDERS and right.start - left.end <= 2
    if isinstance(left, Mark) and isinstance(right, Named):
        return left.kind in PROVIDERS and right.start - left.end <= 2
    return False


_CLOSE = (
    FILLERS
    | AT_WORDS
    | FOR_WORDS
    | TIMES_SIGNS
    | words_of(
        """: - = ( ) but were feels went each their reps up to both & , ended came gave max straight plus
        machine
    total also there says -> > | * weight weighed using loaded today be been as well warm topped out"""
    )
)


def _close(message: Message, start: int, end: int, blank: set[int], *, of: bool = False) -> bool:
    """Return whether only small words stand between two places."""
    allowed = 6
    for at in range(start, end):
        if at in blank:
            continue
        token = message.tokens[at]
        if token.kind == LINE:
            if of:
                return False
            continue
        if token.text in {".", "!", "?", ";"} or (of and token.text == ","):
            return False
        if token.kind == NUMBER:
            return False
        if (
            token.text in _CLOSE
            or (of and token.text in {"of", "on", "the", "in", "a"})
            or token.text in {"on", "my", "i"}
        ):
            allowed -= 1
            if allowed < 0:
                return False
            continue
        return False
    return True


def _is_anchored(
    message: Message,
    element: Element,
    kept: list[Named | Element | Mark],
    things: list[Named | Element | Mark],
    i: int,
    blank: set[int],
) -> bool:
    quantities = element.quantities
    first = quantities[0]
    if len(quantities) > 1:
        joints = set(element.joints[1:])
        if not joints & {"x", "for", "@", "at", ":"} and all(
            q.role in {"pair", "plates"} for q in quantities
        ):
            return element.next_to_name and len(quantities) == 1
        if joints & {"x", "for", "@", "at", ":"} or any(q.role is not None for q in quantities):
            return not (joints == {"-"} and _is_range(quantities))
        if joints == {"-"} and _is_range(quantities):
            return False
    elif first.role == "reps" and not (first.times and message.text(first.end - 1) == "times"):
        return True
    if element.joints[0] == "change":
        return True
    following = things[i + 1] if i + 1 < len(things) else None
    if isinstance(following, Mark) and following.kind == "change":
        return True
    if element.next_to_name:
        return True
    sentence = message.sentence[element.start]
    beside = [t for t in things if t is not element and message.sentence[t.start] == sentence]
    named = any(isinstance(t, Named) for t in beside)
    if first.role in {"load", "sets", "plates"} and (first.unit is not None or first.role != "load"):
        if named or any(
            isinstance(t, Element) and any(q.role == "reps" for q in t.quantities) for t in beside
        ):
            return True
        if any(isinstance(t, Mark) and t.kind in PROVIDERS | {"failed on"} for t in beside):
            return True
    if first.role == "reps":
        return (
            named
            or _alone(message, element, blank)
            or any(isinstance(t, Element) and t.quantities[0].role == "load" for t in beside)
        )
    if first.role == "load" and (first.kind is not None or first.each):
        return True
    if first.role == "seconds" and not first.minutes:
        return True
    if first.role == "seconds":
        return named or _alone(message, element, blank)
    before = kept[-1] if kept else None
    if isinstance(before, Element) and element.joints[0] in {",", "/", "and", "then", "-", "x"}:
        return _ends_here(message, element.end) or element.joints[0] != "," or len(quantities) > 1
    if (
        isinstance(before, Mark)
        and before.kind in PROVIDERS
        and _close(message, before.end, element.start, blank)
    ):
        return True
    if i + 1 < len(things):
        after = things[i + 1]
        if (
            isinstance(after, Mark)
            and after.kind in {"failed on", "failure", "rir", "same load", "no failure", "lowering", "body"}
            and _close(message, element.end, after.start, blank)
        ):
            return True
    verb_at = element.start - 1
    while verb_at >= 0 and message.text(verb_at) in BETWEEN | {"about", "another"}:
        verb_at -= 1
    if (
        message.text(verb_at) in RESULT_VERBS
        and message.sentence[max(verb_at, 0)] == sentence
        and _ends_here(message, element.end)
    ):
        element.result = True
        return True
    return _alone(message, element, blank)


_AFTER_RESULT = words_of(
    """today again done easy hard tough felt good great lol haha this that then at with for and but so again
    now just only clean solid x ok okay yesterday tonight still please total also easily barely reps set
    kg too max somehow final unfortunately sadly though tho finally before after all in i phew wow coach
    pb pr new first second third fourth last set"""
)


def _is_range(quantities: list[Quantity]) -> bool:
    """Return whether numbers joined by dashes are a range, 8-10, rather than a list, 8-7-6."""
    values = [q.value for q in quantities]
    return len(values) == 2 and values[0] < values[1]


def _ends_here(message: Message, end: int) -> bool:
    """Return whether nothing that can be counted follows: the clause ends, or goes on with a small word."""
    if end >= len(message.tokens):
        return True
    token = message.tokens[end]
    return (
        token.kind != WORD
        or token.text in _AFTER_RESULT
        or token.text
        in AND_WORDS
        | THEN_WORDS
        | {
            "but",
            "because",
            "on",
            "before",
            "after",
            "which",
            "while",
            "instead",
            "not",
            "as",
            "or",
            "if",
            "out",
            "the",
            "more",
            "per",
            "each",
            "no",
            "cause",
            "cuz",
            "from",
            "since",
        }
    )


def _alone(message: Message, element: Element, blank: set[int]) -> bool:
    """Return whether only small words stand around an element in its clause."""
    start, end = message.clause_span(element.start)
    stop = max(end, element.end)
    return all(
        at in blank
        or element.start <= at < element.end
        or message.tokens[at].kind != WORD
        or message.text(at) in FILLERS
        or message.text(at) in BETWEEN
        or bool(message.taken[at] and message.taken[at] not in {"a question"})
        for at in range(start, stop)
    )


def _grouped(message: Message, things: list[Named | Element | Mark], pointers: dict[int, int]) -> list[Group]:
    """Return the groups of one sentence: each number goes to the name before it, or to the one after it."""
    runs: list[list[Element | Mark]] = [[]]
    names: list[Named | None] = [None]
    for thing in things:
        if isinstance(thing, Named):
            names.append(thing)
            runs.append([])
        else:
            runs[-1].append(thing)
    count = len(names)
    owned: list[list[Element | Mark]] = [[] for _ in names]
    owned[0] = runs[0]
    if count > 1 and runs[0]:
        last = runs[0][-1]
        parted = _parted(message, last.end, names[1].start if names[1] else 0)
        own = [t for t in runs[1] if not isinstance(t, Mark) or t.kind in PROVIDERS]
        follows = bool(own) and not _introduced(message, names[1])
        waits = (
            len(runs[0]) == 1
            and _is_lone_load(runs[0][0])
            and bool(own)
            and isinstance(own[0], Element)
            and own[0].quantities[0].role == "reps"
        )
        if (
            waits
            or not parted
            or not follows
            or not any(isinstance(t, Element) or t.kind in PROVIDERS for t in runs[0])
        ):
            owned[0], owned[1] = [], list(runs[0])
    after_mode = bool(owned[1]) if count > 1 else False
    for k in range(1, count):
        run = runs[k]
        if not run:
            continue
        following = names[k + 1] if k + 1 < count else None
        if following is None:
            owned[k].extend(run)
            continue
        split = len(run)
        tail_start = _tail(message, run)
        direct = not _parted(message, run[-1].end, following.start)
        gives = any(isinstance(t, Element) or t.kind in PROVIDERS for t in run[tail_start:])
        next_run = runs[k + 1] if k + 1 < count else []
        next_has = any(isinstance(t, Element) or t.kind in PROVIDERS for t in next_run)
        if (
            direct
            and gives
            and (tail_start > 0 or owned[k] or not _near(run[0], names[k]))
            and (
                _introduced(message, following)
                or (after_mode and not next_has)
                or (after_mode and _parted(message, _end_of(names[k]), run[tail_start].start))
            )
        ):
            split = tail_start
        owned[k].extend(run[:split])
        owned[k + 1].extend(run[split:])
    for k in range(2, count):
        if not owned[k] and _is_shared(message, owned[k - 1], names[k - 1], names[k]):
            owned[k] = list(owned[k - 1])
    groups: list[Group] = []
    for name, items in zip(names, owned, strict=True):
        if name is None and not items:
            continue
        items.sort(key=lambda t: t.start)
        groups.extend(_by_pointer(message, name, items, pointers))
    return groups


def _is_lone_load(item: Element | Mark) -> bool:
    return (
        isinstance(item, Element)
        and len(item.quantities) == 1
        and item.quantities[0].role in {None, "load", "pair"}
    )


def _is_shared(
    message: Message, items: list[Element | Mark], name: Named | None, following: Named | None
) -> bool:
    """Return whether a phrase is said of two names at once: "hit the target on squats and thrusts"."""
    if name is None or following is None or not items:
        return False
    between = message.texts(name.end, following.start)
    return all(isinstance(i, Mark) and i.kind in {"target", "same all"} for i in items) and (
        bool(between) and all(w in {"and", ",", "the", "my", "&", "both", "on"} for w in between)
    )


def _end_of(name: Named | None) -> int:
    return name.end if name is not None else 0


def _near(item: Element | Mark, name: Named | None) -> bool:
    return name is not None and item.start - name.end <= 1


def _by_pointer(
    message: Message, name: Named | None, items: list[Element | Mark], pointers: dict[int, int]
) -> list[Group]:
    """Part items at the places that point at an exercise by its number."""
    start = min([i.start for i in items] + ([name.start] if name else []), default=0)
    sentence = message.sentence[start]
    groups = [Group(name, sentence=sentence)]
    for item in items:
        inside = [at for at in pointers if groups[-1].items and groups[-1].items[-1].end <= at < item.start]
        if inside:
            groups.append(Group(None, sentence=sentence))
        groups[-1].items.append(item)
    for group in groups:
        before = [
            at
            for at in pointers
            if at < group.start
            and group.start - at <= 6
            and message.sentence[at] in {message.sentence[group.start], message.sentence[group.start] - 1}
        ]
        if before:
            group.pointer = pointers[max(before)]
        group.again = any(isinstance(i, Mark) and i.kind in {"again", "same again"} for i in group.items)
        group.items = [i for i in group.items if not (isinstance(i, Mark) and i.kind == "again")]
    return groups


def _parted(message: Message, start: int, end: int) -> bool:
    """Return whether a comma, a break or a "then" stands between two places."""
    return any(
        message.text(at) in {",", ":", "then", "and", "but", ";", ".", "(", "so", "&", "n"}
        or message.tokens[at].kind == LINE
        for at in range(start, end)
    )


def _introduced(message: Message, name: Named | None) -> bool:
    """Return whether a name is tied to what stands before it: "on the squat", "of rows"."""
    if name is None:
        return False
    at = name.start - 1
    if message.text(at) in {"the", "my", "those", "that", "these"}:
        at -= 1
    return message.text(at) in {"on", "of", "in", "at", "for", "during", "doing", "with"}


def _tail(message: Message, run: list[Element | Mark]) -> int:
    """Return where the last stretch of a run begins, after a comma, an "and" or a "then"."""
    for i in range(len(run) - 1, 0, -1):
        if _parted(message, run[i - 1].end, run[i].start):
            item = run[i]
            if isinstance(item, Element) and len(item.quantities) == 1 and item.quantities[0].role is None:
                continue
            return i
    return 0


def _number_lines(message: Message, groups: list[Group]) -> None:
    lines: list[int] = []
    number = 0
    for token in message.tokens:
        lines.append(number)
        if token.kind == LINE:
            number += 1
    before = -1
    for group in groups:
        group.line = lines[group.start] if lines else 0
        group.first_on_line = group.line != before
        before = group.line
