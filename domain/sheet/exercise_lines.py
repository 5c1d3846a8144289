"""One line about exercises, in parts: a name with its phrases, its superset, alternatives, cues.

A line is first cut where the coach would draw breath (superset, sentence, semicolon, bracket); each piece is
then a handful of phrases, an alternative, a cue, or an exercise. What the line belongs to is the reader's
business.
"""

import re
from dataclasses import dataclass

from domain.exercises import lookup
from domain.expressions import Expression
from domain.sheet.clauses import read_clause
from domain.sheet.phrases import Amount, CueText, LoweringOnly, Phrase, Sets

_MOST_WORDS = 12
"""No name, and nothing before one, has more words than this."""


@dataclass(frozen=True, slots=True)
class Named:
    """An exercise begins here. `together` where it follows the one before without rest."""

    name: str
    together: bool = False


@dataclass(frozen=True, slots=True)
class Instead:
    """What to do instead: the condition and the exercise as written. No `condition` where none was given."""

    condition: str
    exercise: str


@dataclass(frozen=True, slots=True)
class Loose:
    """Words that no rule takes. `bracketed` where brackets or quotes mark them as words for the client."""

    text: str
    bracketed: bool = False


Part = Named | Instead | Loose | Phrase

_TOGETHER = Expression(
    r"(?:^|[\s,;.+&(-]+)(?:and\s+|then\s+|go\s+)*(?:straight\s+(?:on\s+)?(?:into|to)|straight\s+away|super\s*-?\s*set(?:ted)?"
    r"(?:\s+(?:with|into))|s/s\b|ss\s+with|immediately\s+(?:into|followed\s+by)|(?:immediately\s+|directly\s+)?followed\s+"
    r"(?:immediately|directly|straight\s+away|at\s+once)\s+by|directly\s+into|paired\s+with|"
    r"(?:with\s+)?no\s+rest\s*,?\s*(?:then\s+|straight\s+)*(?:into|to))\b\s*[:,-]?\s*",
    re.IGNORECASE,
)
_CUE = Expression(
    r"(?:^|[,;.(|]\s*|\s-\s+)(?:cues?|remember|notes?|tips?|focus|think|key|coaching\s+points?|form)\s*:\s*(?P<text>.+)$",
    re.IGNORECASE,
)
_BRACKETED = Expression(
    r"\((?P<round>[^()]*)\)|\[(?P<square>[^\[\]]*)\]|(?:(?<=\s)|^)\"(?P<quoted>[^\"\d][^\"]*)\""
)
_CONDITION = (
    r"(?:(?:if|when|where|in\s+case|for|with|without|no|bad|sore|troubled?|painful|dodgy|cranky|stiff)\b"
    r"|(?:\w+\s+){1,3}(?:trouble|problem|pain|issue|complaint)s?\b|(?:\w+\s+){1,3}(?:sore|hurts?|aches?)(?=\?))"
)
_PIECES = Expression(
    rf"\s*;\s*|\.\s+(?=[A-Za-z])|,\s*(?=(?:or\s+)?{_CONDITION}[^:,;]*(?::|->|=>|\b(?:do|use|try)\b))",
    re.IGNORECASE,
)
_CLAUSES = Expression(
    r"\s*\.{2,}\s*|,\s+|,(?!\d)|(?<!\d),|\s*\|\s*|(?<!\d):|:(?!\d)|(?<!\d)\s-+\s|\s-+\s(?!\d)"
)
_INSTEAD = Expression(
    rf"(?:(?:or|but|alternatively|alternatives?|alt|instead|swap)\b[\s,:]*)*(?P<condition>{_CONDITION}.*?)\s*(?:[:?]|->|=>|=|,|\s-\s|\b(?:do|use|try|then|"
    r"swap|take)\b)\s*(?P<exercise>.*)$",
    re.IGNORECASE,
)
_INSTEAD_AFTER = Expression(
    r"(?:or|alternatively|swap\s+(?:for|to)|swap\s+it\s+for|use|do|try)\b,?\s+(?P<exercise>.+?)\s+"
    r"(?P<condition>(?:if|when|where|in\s+case|without)\b.*)$",
    re.IGNORECASE,
)
_INSTEAD_UNSAID = Expression(
    r"(?:or(?:\s+else)?|alternatively|alternatives?|alt|instead|substitutes?|swap(?:\s+(?:for|to))?)\b\s*[:,-]?\s*"
    r"(?P<exercise>.*)$",
    re.IGNORECASE,
)
_LEADING_VERB = Expression(
    r"^(?:(?:do|use|try|then|go\s+for|go\s+to|swap\s+(?:for|to)|take|with)\s+)+", re.IGNORECASE
)


def read_line(text: str) -> tuple[Part, ...]:
    """Return the parts of a line in order."""
    cue = _CUE.search(text)
    stretches = _TOGETHER.split(text[: cue.start()] if cue else text)
    parts = [
        part for place, stretch in enumerate(stretches) for part in _stretch(stretch, together=place > 0)
    ]
    if cue:
        parts.append(CueText(cue["text"].strip(" )" if cue[0].startswith("(") else None)))
    return tuple(parts)


def split_name(text: str, *, together: bool = False) -> tuple[Part, ...]:
    """Return the exercise that `text` names, and the phrases that follow or precede the name."""
    clauses = [clause.strip() for clause in _CLAUSES.split(text) if clause.strip()] or [""]
    around: list[Part] = []
    while len(clauses) > 1 and not (whole := read_clause(clauses[0]))[1] and not lookup(clauses[0]):
        around.extend(whole[0])
        clauses.pop(0)
    first, *others = clauses
    around.extend(_clause_parts(", ".join(others)))
    name, phrases = _name_in(first, may_have_amount=not any(isinstance(part, Amount) for part in around))
    return (Named(name, together=together), *phrases, *around)


def _stretch(text: str, *, together: bool) -> list[Part]:
    """Return the parts of what lies between two superset words; after the first it begins with a name."""
    aside: list[Part] = []
    for bracket in _BRACKETED.finditer(text):
        words = next(group for group in bracket.groups() if group is not None).strip(" .")
        phrases, left = read_clause(words)
        if words and not left:
            aside.extend(phrases)
        elif words:
            aside.append(_instead(words) or Loose(words, bracketed=True))
    pieces = [piece.strip(" ,") for piece in _PIECES.split(_BRACKETED.sub(" ", text))]
    parts: list[Part] = [Named("", together=True)] if together and not any(pieces) else []
    for piece in pieces:
        if not piece:
            continue
        phrases, left = read_clause(piece)
        if together and not any(isinstance(part, Named) for part in parts):
            parts.extend(split_name(piece, together=True))
        elif not left:
            parts.extend(phrases)
        elif _begins_with_known_name(piece):
            parts.extend(split_name(piece))
        elif instead := _instead(piece):
            parts.append(instead)
        elif any(isinstance(part, Named) for part in parts):
            parts.extend(_clause_parts(piece))
        else:
            parts.extend(split_name(piece))
    return _with_bracket_in_name(parts, aside)


def _clause_parts(text: str) -> list[Part]:
    """Return the phrases in `text`, and what no rule takes, each up to where the coach draws breath."""
    parts: list[Part] = []
    while text := text.strip():
        phrases, left = read_clause(text)
        parts.extend(phrases)
        if not left:
            break
        stop = _CLAUSES.search(left)
        loose, text = (left[: stop.start()], left[stop.end() :]) if stop else (left, "")
        if not any(letter.isalnum() for letter in loose):
            continue
        parts.append(Loose(loose.strip()))
        if len(parts) > 1 and isinstance(parts[-2], Amount) and not _says_how_much(parts[-2]) and phrases:
            parts[-2:] = [Loose(f"{parts[-2].low} {loose.strip()}")]
    return parts


def _instead(piece: str) -> Instead | None:
    """Return the alternative that a piece tells of."""
    for pattern in (_INSTEAD_AFTER, _INSTEAD, _INSTEAD_UNSAID):
        if found := pattern.match(piece):
            exercise = _LEADING_VERB.sub("", found["exercise"].strip(" ,:-"), count=1)
            return Instead(condition=found.groupdict().get("condition", "").strip(" ,"), exercise=exercise)
    return None


def _with_bracket_in_name(parts: list[Part], aside: list[Part]) -> list[Part]:
    """Put bracketed words into the name where they belong to it ("Chest press (machine)"), or else last."""
    place = next((place for place, part in enumerate(parts) if isinstance(part, Named)), None)
    named = parts[place] if place is not None else None
    if place is None or not isinstance(named, Named):
        return [*parts, *aside]
    for extra in aside:
        words = extra.text if isinstance(extra, Loose) else ""
        for whole in (f"{words} {named.name}", f"{named.name} {words}"):
            if words and lookup(whole):
                rest = [other for other in aside if other is not extra]
                return [*parts[:place], Named(whole, named.together), *parts[place + 1 :], *rest]
    return [*parts, *aside]


def _name_in(text: str, *, may_have_amount: bool) -> tuple[str, tuple[Phrase, ...]]:
    """Return the name in a clause, and the phrases around it.

    Of all ways to cut the clause the one wins that leaves a name of the catalogue, the longest; else the one
    that leaves the shortest name. "Hold" stays with the name: "Towel hold 20-30 s".
    """
    known: list[tuple[str, tuple[Phrase, ...]]] = []
    other: list[tuple[str, tuple[Phrase, ...]]] = []
    for before, rest in _starts(text):
        cuts = [space.start() for space in re.finditer(r"\s", rest)][:_MOST_WORDS]
        for cut in [*cuts, len(rest)]:
            name = rest[:cut].strip(" ,.-@")
            phrases, left = read_clause(rest[cut:])
            together = (*before, *phrases)
            amounts = sum(isinstance(phrase, Amount) for phrase in together)
            if left or not name or amounts > may_have_amount or not re.search(r"[^\W\d_]", name):
                continue
            if lookup(name):
                known.append((name, together))
            elif not re.match(r"\s*(?:hold|held|holding)\b", rest[cut:], re.IGNORECASE):
                other.append((name, together))
    if known:
        return max(known, key=lambda way: len(way[0]))
    return min(other, key=lambda way: len(way[0])) if other else (text.strip(" ,.-@"), ())


def _starts(text: str) -> list[tuple[tuple[Phrase, ...], str]]:
    """Return the places where the name may begin: at once, or after sets and reps ("3x8 bench press")."""
    starts: list[tuple[tuple[Phrase, ...], str]] = [((), text)]
    for space in list(re.finditer(r"\s", text))[:_MOST_WORDS]:
        phrases, left = read_clause(text[: space.start()])
        if not left and any(_says_how_much(phrase) for phrase in phrases):
            starts.append((phrases, text[space.end() :]))
    return starts


def _begins_with_known_name(piece: str) -> bool:
    named = split_name(piece)[0]
    return isinstance(named, Named) and lookup(named.name) is not None


def _says_how_much(phrase: Phrase) -> bool:
    """Whether a phrase may stand before the name; a lone number there may be part of it ("Two-arm swing")."""
    match phrase:
        case Amount(low=low, high=high, of=of):
            return low < high or of is not None
        case Sets() | LoweringOnly():
            return True
        case _:
            return False
