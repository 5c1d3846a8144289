"""Where a message names exercises: by the client's own names, and by runs of words that belong to names.

A whole name of the plan beats the client's own name, and that beats a partial one. A name that fits two of
the plan equally is returned with both. What a run means, and how misspelt words are mended, stands
in files of its own.
"""

from collections.abc import Sequence
from functools import lru_cache
from itertools import pairwise
from typing import NamedTuple

from domain.names import name_words
from domain.reading.exercise_words import (
    COMMON,
    FUNCTION_WORDS,
    GENERIC,
    HARMLESS,
    IMPLEMENTS,
    LOAD_WORDS,
)
from domain.reading.message import Message
from domain.reading.name_meaning import Meanings
from domain.reading.name_spelling import Spelling
from domain.reading.name_stems import Stems, joined, stem_of, stems_of, vocabulary
from domain.reading.patterns import Pattern
from domain.reading.tokens import WORD
from domain.reading.words import FILLERS, REP_ADJECTIVES, words_of

LABELS = words_of("weight weights load loads reps sets")
"""Words that say what the number after them is a number of."""
_LONGEST = 6
_MOST_NAMELESS = 8192
"""So many words are remembered of which it is known whether a name can begin with them."""
_DESCRIBED_BY = words_of("a all so very nice really super reps kg lb")
"""Words before an adjective."""
_DONE_ON = frozenset({"on", "with", "at", "using", "in", "by"})
_SIDES = words_of("side sides")
_LIMBS = words_of("arm leg hand side")
_OF_EACH = words_of("each per either every both a")
_COUNTED = words_of("s sec secs second seconds min mins minute minutes rep reps")
_ARTICLES = frozenset({"the", "a", "my"})
_JOINING = FUNCTION_WORDS - {"up", "down"}
"""Words that join others to a name of the plan, which is looked for as a whole."""
_TELLS_NOTHING = HARMLESS | GENERIC | IMPLEMENTS | COMMON | FILLERS
"""Words before a name that do not make it another exercise's."""


class Named(NamedTuple):
    """An exercise named in the message, from token `start` to before `end`.

    `names` are the exercises it can be: one, or several that fit equally, or none that is known. `exact`
    tells a whole name or short form. `weak` tells a word that names an exercise only beside a number.
    """

    start: int
    end: int
    names: tuple[str, ...]
    exact: bool = False
    weak: bool = False


class Names:
    """The names of one plan and one client, ready to be looked for. Built once for each plan."""

    def __init__(self, plan: tuple[str, ...], own: tuple[tuple[str, str], ...]) -> None:
        self._own = {tuple(name_words(word)): exercise for word, exercise in own} | {
            words: name for name in plan if not _JOINING.isdisjoint(words := tuple(name_words(name)))
        }
        """By their words, and those of the plan that small words join: "sit to stand"."""
        self._plan = frozenset(plan)
        self._meanings = Meanings(plan)
        self._after_a_letter = {
            (first, second)
            for stems in map(stems_of, plan)
            for first, second in pairwise(stems)
            if len(first) == 1
        }
        self._spelling = Spelling(
            plan, (s for known in self._meanings.known for stems in known.stems for s in stems)
        )
        self._own_firsts = {words[0] for words in self._own if words}
        self._nameless: dict[str, bool] = {}

    def find(self, message: Message) -> list[Named]:
        """Return the exercises named in the message, in order."""
        found: list[Named] = []
        tokens = message.tokens
        nameless = self._nameless
        count = len(tokens)
        at = 0
        while at < count:
            token = tokens[at]
            word = token.text
            if (nameless[word] if word in nameless else self._is_nameless(word)) or token.kind != WORD:
                at += 1
                continue
            if message.taken[at] and message.taken[at] != "exercise":
                at += 1
                continue
            if (token.text in _SIDES and _is_of_a_number(message, at)) or (
                token.text in _LIMBS and message.text(at - 1) == "other"
            ):
                at += 1
                continue
            own = self._own_at(message, at) if self._own else None
            if own is not None and not self._is_exact(message, at, own[0]):
                found.append(Named(at, own[0], (own[1],), exact=True))
                at = own[0]
                continue
            run, end = self._lettered(message, at) if len(token.text) == 1 else ([], at)
            if not run and not self._spelling.stems(token.text):
                if not (_begins_a_name(message, at) and self._slip(message, at)):
                    at += 1
                    continue
                run, end = [(stem, at) for stem in self._slip(message, at)], at + 1
            while end < count and tokens[end].kind == WORD and not message.taken[end] and len(run) < 12:
                more = self._spelling.stems(tokens[end].text) or (
                    (self._spelling.short_typo(tokens[end].text) or self._slip(message, end))
                    if end > at
                    else ()
                )
                if not more or (end > at and self._is_step(message, end)):
                    break
                run.extend((stem, end) for stem in more)
                end += 1
            hits = self._in_run(run)
            if len(run) > 1 and not any(n.names for n in hits):
                hits = self._by_beginnings(run) or hits
            if (end == at + 1 or message.text(at + 1) in _ANY_THING) and not any(n.names for n in hits):
                hits = self._by_a_part(message, at, run[0][0]) or hits
            describes = self._only_describes(message, at, hits) or _is_flat(message, at, found)
            if not (end == at + 1 and describes):
                found.extend(hits)
            at = max(end, at + 1)
        if not message.words.isdisjoint(_DONE_ON):
            found = [self._with_place(message, one) for one in found]
        found = [one for one in found if not _is_part_of_a_thing(message, one)]
        return self._not_told_already(found) if len(found) > 1 else found

    def _is_nameless(self, word: str) -> bool:
        """Return whether no name begins with a word, wherever it stands."""
        if len(self._nameless) > _MOST_NAMELESS:
            self._nameless.clear()
        nameless = self._nameless[word] = not (
            word in _SIDES
            or len(word) == 1
            or self._spelling.stems(word)
            or self._spelling.slip(word)
            or self._spelling.beginning(word)
            or (self._own_firsts and stem_of(word) in self._own_firsts)
        )
        return nameless

    def _slip(self, message: Message, at: int) -> Stems:
        """Return the short word of the plan for a misspelt one right before a set, or before another such."""
        word = message.text(at)
        if _SET_FOLLOWS.at(message, at + 1) is not None:
            return self._spelling.slip(word) or self._spelling.beginning(word, alone=True)
        if _SET_FOLLOWS.at(message, at + 2) is None:
            return ()
        following = message.text(at + 1)
        known = self._spelling.stems(following) or self._spelling.slip(following)
        return (self._spelling.slip(word) or self._spelling.beginning(word)) if known else ()

    def _lettered(self, message: Message, at: int) -> tuple[list[tuple[str, int]], int]:
        """Return what is named by the letter at a token: a bar ("T-bar") as one word of a name, or the letter
        before another word of the plan ("Z press"); with where it ends. Nothing where there is none."""
        if (message.text(at), stem_of(message.text(at + 1))) in self._after_a_letter:
            return [(message.text(at), at)], at + 1
        word = message.text(at) + message.text(at + 1)
        if message.text(at + 1) != "bar" or word not in vocabulary():
            return [], at
        return [(word, at + 1)], at + 2

    def _with_place(self, message: Message, name: Named) -> Named:
        """Return a name with what it is done on or with, where that tells which is meant: "calves on the
        press", "rows with the bar"."""
        start = name.end
        if message.text(start) not in _DONE_ON or message.text(start + 1) not in _ARTICLES:
            return name
        said = joined(
            stem for t in message.tokens[name.start : name.end] for stem in self._spelling.stems(t.text)
        )
        for end in range(start + _LONGEST, start + 2, -1):
            words = message.texts(start + 2, end)
            if len(words) != end - start - 2 or not all(self._spelling.stems(word) for word in words):
                continue
            on = joined(
                "barbell" if stem == "bar" else stem for word in words for stem in self._spelling.stems(word)
            )
            hit = self._meanings.of((*on, *said)) if on and said else None
            if hit is None or len(hit[0]) != 1:
                continue
            if hit[0][0] in name.names or (name.names and hit[1] and self._names_one(on)):
                # "Calves on the leg press" may be the catalogue's, and is no leg press.
                return Named(name.start, end, hit[0])
        return name

    def _names_one(self, stems: Stems) -> bool:
        """Return whether stems are those of one exercise for certain."""
        hit = self._meanings.of(stems)
        return hit is not None and len(hit[0]) == 1 and hit[1]

    def _not_told_already(self, found: list[Named]) -> list[Named]:
        """Leave out names that lie in others, and of several that fit those named before without doubt."""
        kept: list[Named] = []
        for one in found:
            if kept and one.start < kept[-1].end:
                continue
            told = {n.names[0] for n in kept if len(n.names) == 1 and not n.weak}
            left = tuple(name for name in one.names if name not in told)
            if len(one.names) > 1 and len(left) == 1 and not one.weak:
                one = one._replace(names=left)  # noqa: PLW2901 - the same, surer
            elif len(left) > 1:
                one = self._of_the_same_kind(one, left, kept)  # noqa: PLW2901 - the same, surer
            kept.append(one)
        return kept

    def _of_the_same_kind(self, one: Named, left: Sequence[str], before: Sequence[Named]) -> Named:
        """Return a name that fits several as the one that is of the kind of the last named: "standing calves
        60x12, seated 40x15" speaks of two calf raises."""
        if not before or len(before[-1].names) != 1:
            return one
        cores = {known.name: known.core for known in self._meanings.known}
        kind = cores.get(before[-1].names[0], frozenset())
        alike = [name for name in left if cores.get(name, frozenset()) & kind]
        return one._replace(names=tuple(alike)) if len(alike) == 1 else one

    def _by_beginnings(self, run: list[tuple[str, int]]) -> list[Named]:
        """Return the exercise of the plan whose words begin as those of a nameless run: "comp squat"."""
        whole = [((self._spelling.beginning(stem) or (stem,))[0], at) for stem, at in run]
        hits = self._in_run(whole) if whole != run else []
        return hits if len(hits) == 1 and len(hits[0].names) == 1 and hits[0].names[0] in self._plan else []

    def _only_describes(self, message: Message, at: int, hits: list[Named]) -> bool:
        """Return whether a word, of no exercise of the plan, only tells how a set went: "80x8 clean"."""
        if message.text(at) in {"pause", "paused"} and message.value(at + 1) is not None:
            return not any(name in self._plan for n in hits for name in n.names)
        if message.text(at) not in REP_ADJECTIVES:
            return False
        beside_a_set = message.value(at - 1) is not None or message.text(at - 1) in _DESCRIBED_BY
        return beside_a_set and not any(name in self._plan for n in hits for name in n.names)

    def _by_a_part(self, message: Message, at: int, stem: str) -> list[Named]:
        """Return what a word stands for that names no exercise by itself, where a name would stand: ", band 6
        for 18", "the assisted ones"."""
        is_thing = message.text(at + 1) in _ANY_THING
        if not (is_thing or _stands_for_a_name(message, at)):
            return []
        told = self._told_by_a_part(stem)
        if is_thing and told:
            return [Named(at, at + 2, told)]
        return [] if is_thing else [Named(at, at + 1, told, weak=True)]

    def _told_by_a_part(self, stem: str) -> tuple[str, ...]:
        """Return the one exercise of the plan that an implement, or the beginning of a word, tells; none
        otherwise.

        Such a word, "band 6 for 18", stands for a name only at the beginning of a clause, right before a
        number.
        """
        fits = [k.name for k in self._meanings.known if stem in k.stems[0]] or [
            k.name
            for k in self._meanings.known
            if len(stem) >= 4 and any(s.startswith(stem) for s in k.stems[0])
        ]
        return tuple(fits) if len(fits) == 1 else ()

    def _is_step(self, message: Message, at: int) -> bool:
        """Return whether "up" or "down" before a number is a step of load, and not the end of a name."""
        if message.text(at) not in {"up", "down"} or message.value(at + 1) is None:
            return False
        before = message.text(at - 1)
        if before in {"press", "step"}:
            return before + message.text(at) not in self._spelling.words
        return before not in {"pull", "push", "chin", "sit"}

    def _own_at(self, message: Message, at: int) -> tuple[int, str] | None:
        for length in (4, 3, 2, 1):
            words = tuple(stem_of(t.text) for t in message.tokens[at : at + length] if t.kind == WORD)
            if len(words) == length and words in self._own:
                return at + length, self._own[words]
        return None

    def _is_exact(self, message: Message, at: int, end: int) -> bool:
        """Return whether a whole name of the plan begins at `at` and reaches at least as far as `end`."""
        for stop in range(min(len(message.tokens), at + _LONGEST), end - 1, -1):
            if self._meanings.is_whole(
                joined(s for t in message.tokens[at:stop] for s in self._spelling.stems(t.text))
            ):
                return True
        return False

    def _is_done_without_load(self, window: Stems, names: tuple[str, ...]) -> bool:
        """Return whether "bodyweight" before a name outside the plan tells how it was done."""
        if len(window) < 2 or window[0] not in {"bodyweight", "bw"}:
            return False
        return not any(known.name in names for known in self._meanings.known)

    def _in_run(self, run: list[tuple[str, int]]) -> list[Named]:
        """Return the names in a run of words that all belong to names, the longest first from the left."""
        found: list[Named] = []
        stems = [stem for stem, _ in run]
        at = 0
        left_over: list[str] = []
        while at < len(run):
            for length in range(min(_LONGEST + 2, len(run) - at), 0, -1):
                window = joined(stems[at : at + length])
                hit = self._meanings.of(window)
                if hit is None:
                    continue
                start, end = run[at][1], run[at + length - 1][1] + 1
                if self._is_done_without_load(window, hit[0]):
                    start = run[at + 1][1]
                if at + length < len(run) and run[at + length][1] == end - 1:
                    continue
                names, exact = hit
                if left_over and not all(s in _TELLS_NOTHING for s in left_over):
                    names = names if exact and len(window) > 1 else ()
                weak = len(window) == 1 and (
                    window[0] in GENERIC
                    or window[0] in IMPLEMENTS
                    or (not names and not left_over and window[0] in COMMON)
                )
                before = found[-1] if found else None
                if before is not None and before.end == start and before.end - before.start == 1:
                    # Two names with nothing between them are rather one that is not known: "sumo squat".
                    start, names = found.pop().start, names if names == before.names else ()
                    weak = weak and before.weak
                found.append(Named(start, end, names, exact=exact, weak=weak))
                left_over = []
                at += length
                break
            else:
                left_over.append(stems[at])
                at += 1
        return found


_SET_FOLLOWS = Pattern("[:|-] # [kg|kgs|kilos|lb|lbs|s] (x|for|'*'|@|#)")


def _begins_a_name(message: Message, at: int) -> bool:
    """Return whether a word stands where the name of an exercise would."""
    return message.text(at - 1) in {"", ",", ".", ";", "then", "and", "did", "\n"}


def _is_of_a_number(message: Message, at: int) -> bool:
    """Return whether a side is that of the number before it: "30s each side plank"."""
    if message.text(at - 1) not in _OF_EACH:
        return False
    return message.value(at - 2) is not None or message.text(at - 2) in _COUNTED


def _is_flat(message: Message, at: int, before: list[Named]) -> bool:
    """Return whether "flat" only tells how many, right behind the number of an exercise named before it:
    "push-ups 20 flat"."""
    if message.text(at) != "flat" or message.value(at - 1) is None or not before:
        return False
    return message.sentence[before[-1].start] == message.sentence[at] and message.value(at + 1) is None


def _is_part_of_a_thing(message: Message, name: Named) -> bool:
    """Return whether a name is only the thing that something is a part of: "the wrong side of the sled"."""
    at = name.start - 1
    while message.text(at) in _ARTICLES | {"that", "this"}:
        at -= 1
    return message.text(at) == "of" and message.text(at - 1) in _PARTS_OF_THINGS and at < name.start - 1


_PARTS_OF_THINGS = words_of("side sides hole corner seat pad handle edge rail arm arms leg legs pin sticker")
_ANY_THING = words_of("thing things thingy one ones version")
"""Words for an exercise that the word before them tells."""
_NAMELESS = LABELS | LOAD_WORDS | FUNCTION_WORDS | ((COMMON | FILLERS) - GENERIC)


def _stands_for_a_name(message: Message, at: int) -> bool:
    """Return whether a word that names no exercise by itself stands where a name would: ", band 6 for 18"."""
    after = at + 2 if message.text(at + 1) in {":", "-"} else at + 1
    return (
        message.text(at - 1) in {"", ",", ".", ";", "then", "\n"}
        and message.value(after) is not None
        and message.text(at) not in _NAMELESS
    )


@lru_cache(maxsize=512)
def names_for(plan: tuple[str, ...], own: tuple[tuple[str, str], ...]) -> Names:
    """Return the names of a plan and a client."""
    return Names(plan, own)
