"""What a client says in words of own equipment: plates, the bar, dumbbells, a stack, bands, what is missing.

A message is taken only if the whole of it says such things, so that a set ("dumbbells 30 for 8") is never
taken for equipment. It is brought to "have …", "only …", "no …" first (`domain.equipment_phrases`); the
sentences are then tried in the order of `_SENTENCES`.
"""

import re
from collections.abc import Callable
from decimal import Decimal
from typing import NamedTuple

from domain.equipment import Equipment, Plate, default_equipment
from domain.equipment_phrases import (
    ALL_AGAIN,
    AND,
    COUNTED,
    LIST,
    MASS,
    PLURALS,
    Item,
    canonical,
    items,
    mass_of,
)
from domain.equipment_racks import HALF_STEP, listed, with_clauses
from domain.exercises import lookup
from domain.expressions import Expression
from domain.names import name_key, name_words
from domain.units import Unit

_ARE = r"(?:(?: (?:is|are|weighs?)| ?=|:)(?: only)?(?: an?| the)?)"
_STACK = r"(?:(?:weight |cable |machine )?stacks?|(?:cable |weight )?machines?|cables?|pins)"

_BAND = (
    r"(?:the )?(?:red|blue|green|yellow|black|purple|orange|grey|gray|white|pink|light|medium|heavy|strong)"
    r"(?: bands?)?(?: (?:is|are))?"
)
_SIZES: dict[Unit, frozenset[Decimal]] = {
    "kg": frozenset(Decimal(each) / 4 for each in (1, 2, 3, 4, 5, 6, 8, 10, 20, 40, 60, 80, 100, 200)),
    "lb": frozenset(
        Decimal(each) / 4 for each in (1, 2, 3, 4, 5, 8, 10, 20, 40, 60, 100, 140, 180, 220, 400)
    ),
}
"""Sizes in which plates are sold, 0.25 to 50 kg and 0.25 to 100 lb: common practice, no source."""

_NAME = r"(?!just|only)[a-z][a-z -]{2,30}?"
_THING = Expression(
    r"(?:barbell|bar|dumbbell|kettlebell|cable|machine|stack|rack|bench|band|plate|ring|rope|box|station)s?"
)
"""The last word of what can be missing: no pain, time or question is equipment."""

_BARE = Expression(r"\W*no\b", re.IGNORECASE)
_ANY_MORE = Expression(
    r"\b(?:any ?more|any longer|here|at (?:my|our|the) (?:gym|place|hotel))\b", re.IGNORECASE
)
_NEWS = Expression(
    r"\b(?:now|again|back|finally|bought|new|got (?:an?|some|my|the)|there(?:'s| is) an?)\b", re.IGNORECASE
)
_IS_BACK = Expression(
    r"(?P<thing>[a-z][a-z -]{2,30}?) (?:is|are) (?:back|there|repaired|fixed|working)(?: again)?"
)
_GONE = Expression(
    r"(?P<thing>(?!machine|stack|station|box|rope)[a-z][a-z -]{2,30}?) (?:is|are|was|were|has been|"
    r"have been|got) "
    r"(?:gone|broken|removed|taken away|sold|out of order|out of use|closed)|"
    r"(?P<broke>(?!machine|stack|station|box|rope)[a-z][a-z -]{2,30}?) (?:has )?(?:broke|broken)(?: down)?"
)
"""How it is said of a thing that it is there no longer."""

_LONGEST = 160
_PARTS = tuple(
    Expression(rf"[.;\n]\s+|(?:,? and |, )(?=(?:{begins})\b)", re.I)
    for begins in (
        "the|my|our|no|only|just|i|we",
        "the|my|our|no|only|just|i|we|dumbbells?|dbs|plates|stacks?|bar|barbell|bands?|machines?|cables?",
    )
)
"""Where one thing is told after the other, tried in turn once the whole is no one sentence."""


class Said(NamedTuple):
    """What a sentence found, the equipment as it was, and whether it comes on top of that."""

    found: re.Match[str]
    equipment: Equipment
    on_top: bool
    names: tuple[str, ...] = ()
    """Names of other things that can be lacking, beside those that are common."""
    is_bare: bool = False
    """Whether it is said to be lacking by a mere "no"."""
    is_news: bool = False
    """Whether it is said as something that was not so before."""

    @property
    def mass(self) -> Decimal:
        """The one mass, in the equipment's unit."""
        return mass_of(self.found["mass"], self.equipment.unit)

    @property
    def items(self) -> tuple[Item, ...]:
        """The masses of the list, in the equipment's unit."""
        return items(self.found["list"], self.equipment.unit)


Change = Callable[[Said], Equipment | None]


def told(text: str, equipment: Equipment, names: tuple[str, ...] = ()) -> Equipment | None:
    """Return the equipment as it is after what `text` says of it; None where it says nothing of the kind.

    `names` are those of other things that can be lacking: what the client's own sheet speaks of.

    Masses without a unit are in the equipment's own; others are converted, to hundredths.
    """
    if len(text) > _LONGEST:
        return None
    whole = _told(text, equipment, names)
    if whole is not None:
        return whole
    for between in _PARTS:
        parts = between.split(text.strip())
        changed: Equipment | None = equipment if len(parts) > 1 else None
        for part in parts:
            changed = None if changed is None else _told(part, changed, names)
        if changed is not None:
            return changed
    return None


_PLATES_FIRST = Expression(
    r"(?:new |more |small |smaller |little )+plates(?P<where>(?: at home| now| today)*)(?:,|:| -) ?"
    r"(?P<masses>\d[\d., and&kglbs]*?)(?: ones)?[.!]*$",
    re.IGNORECASE,
)
"""Masses behind the word, as in "new plates, 1.25 kg ones"."""


def _told(text: str, equipment: Equipment, names: tuple[str, ...]) -> Equipment | None:
    if equipment.lacking and ALL_AGAIN.fullmatch(
        " ".join(text.casefold().replace("’", "'").split()).strip(" .!")
    ):
        return equipment.model_copy(update={"lacking": ()})
    said, on_top = canonical(_PLATES_FIRST.sub(r"\g<masses> plates\g<where>", text.strip()))
    is_bare = bool(_BARE.match(text)) and not _ANY_MORE.search(text)
    is_news = bool(_NEWS.search(text))
    if gone := _GONE.fullmatch(said):
        said = f"no {gone['thing'] or gone['broke']}"
    elif back := _IS_BACK.fullmatch(said):
        said = f"have {back['thing']}"
    for pattern, change in _SENTENCES:
        found = pattern.fullmatch(said)
        if found and (changed := change(Said(found, equipment, on_top, names, is_bare, is_news))) is not None:
            return changed
    return None


def _all_plates(said: Said) -> Equipment | None:
    return _with_plates(said.equipment, dict(said.items))


def _plates(said: Said) -> Equipment | None:
    """Take a list with a big plate, or with how many there are of each, for all; any other for more."""
    several, big = said.items, default_equipment(said.equipment.unit).bar / 2
    counted = all(each.pairs is not None for each in several)
    if len(several) > 1 and not said.on_top and (counted or any(each.mass >= big for each in several)):
        return _all_plates(said)
    known: dict[Decimal, int | None] = {plate.mass: plate.pairs for plate in said.equipment.plates}
    if any(each.mass > max(known, default=each.mass) for each in several):
        # "I have 30s" is rather of dumbbells: nobody tells of a plate heavier than all others in that way.
        return None
    named = {each.mass: each.pairs or known.get(each.mass) for each in several}
    return _with_plates(said.equipment, known | named)


def _of_plates(change: Change) -> Change:
    """Take a list without the word for plates only where plates come in all of these sizes."""
    return lambda said: (
        change(said) if all(each.mass in _SIZES[said.equipment.unit] for each in said.items) else None
    )


def _no_plates(said: Said) -> Equipment | None:
    missing = {each.mass for each in said.items}
    return _with_plates(
        said.equipment,
        {plate.mass: plate.pairs for plate in said.equipment.plates if plate.mass not in missing},
    )


def _smallest_plate(said: Said) -> Equipment | None:
    left = {plate.mass: plate.pairs for plate in said.equipment.plates if plate.mass > said.mass}
    return _with_plates(said.equipment, {**left, said.mass: None})


def _smallest_step(said: Said) -> Equipment | None:
    left = {plate.mass: plate.pairs for plate in said.equipment.plates if plate.mass > said.mass / 2}
    return _with_plates(said.equipment, {**left, said.mass / 2: None})


def _biggest_plate(said: Said) -> Equipment | None:
    left = {plate.mass: plate.pairs for plate in said.equipment.plates if plate.mass < said.mass}
    return _with_plates(said.equipment, {**left, said.mass: None})


def _with_plates(equipment: Equipment, plates: dict[Decimal, int | None]) -> Equipment | None:
    sizes = tuple(
        Plate(mass=mass, pairs=pairs)
        for mass, pairs in sorted(plates.items(), reverse=True)
        if mass >= Decimal("0.1") and pairs != 0
    )
    return equipment.model_copy(update={"plates": sizes}) if sizes else None


def _bar(said: Said) -> Equipment | None:
    likely = said.mass <= 3 * default_equipment(said.equipment.unit).bar
    return said.equipment.model_copy(update={"bar": said.mass}) if likely else None


def _bands(said: Said) -> Equipment | None:
    return said.equipment.model_copy(update={"bands": tuple(sorted({each.mass for each in said.items}))})


def _told_bands(said: Said) -> Equipment | None:
    if "band" not in said.found[0]:
        return None
    masses = {mass_of(each, said.equipment.unit) for each in re.findall(MASS, said.found[0])}
    return said.equipment.model_copy(update={"bands": tuple(sorted(masses))})


def _dumbbells(said: Said) -> Equipment | None:
    return with_clauses(said.equipment, "dumbbells", said.found["rest"])


def _heaviest_dumbbell(said: Said) -> Equipment | None:
    return with_clauses(said.equipment, "dumbbells", f"stop at {said.found['mass']}")


def _listed(said: Said) -> Equipment | None:
    return listed(said.equipment, said.items)


def _stack(said: Said) -> Equipment | None:
    return with_clauses(said.equipment, "stack", said.found["rest"])


def _lacking(said: Said) -> Equipment | None:
    things = [
        _thing(re.sub(r"^(?:no |an? )+", "", each), said) for each in re.split(AND, said.found["things"])
    ]
    if None in things:
        return None
    known = (each for each in said.equipment.lacking if each not in things)
    return said.equipment.model_copy(update={"lacking": (*known, *dict.fromkeys(things))})


_QUALIFIED = Expression(
    r"^(?:(?:those|these|that|this|any|proper|real|free|decent|good|such|actual|of those) )+"
)
_STANDS = frozenset({"station", "stand", "tower", "frame", "bar", "handle", "rig"})


def of_same_use(name: str, names: tuple[str, ...]) -> str | None:
    """Return which of `names` serves the same exercise as the thing `name`: "dip station", "dip bars"."""
    words = name_words(name)
    if len(words) != 2 or words[1] not in _STANDS:
        return None
    same = [each for each in names if (of := name_words(each))[:1] == words[:1] and of[-1] in _STANDS]
    return same[0] if len(same) == 1 else None


def _thing(name: str, said: Said) -> str | None:
    """Return what is lacking, by the name it is kept under; None where that is no equipment.

    A bare "no leg press" may as well be about an exercise to leave out, unless the sheet speaks of the
    machine.
    """
    name = _QUALIFIED.sub("", name)
    for each in (name, re.sub(r" (?:machine|station)s?$", "", name)):
        if name_key(each) in {name_key(known) for known in said.names}:
            return each
    if (known_as := of_same_use(name, said.names)) is not None:
        return known_as
    machine = None if said.is_bare else _machine_of(name)
    return machine or (name if name and _THING.fullmatch(name.rsplit(maxsplit=1)[-1]) else None)


def _machine_of(name: str) -> str | None:
    """Return the exercise that is done on the machine of that name, in lower case; None where there is
    none."""
    known = lookup(name)
    return known.name.casefold() if known is not None and known.implement in {"machine", "cable"} else None


def _not_lacking(said: Said) -> Equipment | None:
    thing = said.found["thing"]
    gained = {thing, _machine_of(thing)} & {*said.equipment.lacking}
    if not gained:
        return said.equipment if said.is_news and _thing(thing, said) is not None else None
    lacking = tuple(each for each in said.equipment.lacking if each not in gained)
    return said.equipment.model_copy(update={"lacking": lacking})


def _only_these(said: Said) -> Equipment | None:
    named = [HAVING.get(each.removesuffix("s")) for each in re.split(AND, said.found["things"])]
    at_hand = {each for each in named if each is not None}
    return without_others(said.equipment, at_hand, said.names) if None not in named else None


def without_others(equipment: Equipment, at_hand: set[str], names: tuple[str, ...] = ()) -> Equipment:
    """Return the equipment of who has nothing but `at_hand`, neither of the implements nor of `names`."""
    keys = {name_key(each) for each in (*at_hand, *HAVING.values())}
    others = (
        *(each for each in HAVING.values() if each not in at_hand),
        *(each for each in names if name_key(each) not in keys and _machine_of(each) is None),
    )
    return equipment.model_copy(update={"lacking": tuple(dict.fromkeys((*equipment.lacking, *others)))})


def _several(change: Change) -> Change:
    """Take only a list of two and more: one mass alone may be that of a set."""
    return lambda said: change(said) if len(said.items) > 1 else None


_SENTENCES: tuple[tuple[Expression, Change], ...] = tuple(
    (Expression(pattern), change)
    for pattern, change in (
        (rf"(?:only )?plates{_ARE} (?P<list>{LIST})", _all_plates),
        (rf"only (?P<list>{LIST}) plates", _all_plates),
        (rf"only (?P<list>{PLURALS})", _of_plates(_several(_all_plates))),
        (rf"(?:only|have) (?P<list>{COUNTED})", _of_plates(_plates)),
        (rf"(?P<list>{COUNTED}(?<=plates))", _several(_all_plates)),
        (rf"(?P<list>{COUNTED}) plates", _several(_all_plates)),
        (rf"have (?P<list>{LIST}) plates", _plates),
        (rf"have (?P<list>{PLURALS})", _of_plates(_plates)),
        (rf"have plates(?: of|:)? (?P<list>{LIST})", _plates),
        (rf"no (?P<list>{PLURALS})(?: plates)?", _no_plates),
        (rf"no (?P<list>{LIST}) plates", _no_plates),
        (rf"(?:smallest|lightest) plates{_ARE} (?P<mass>{MASS})(?:'?s)?", _smallest_plate),
        (rf"no plates (?:under|below|(?:smaller|lighter|less) than) (?P<mass>{MASS})", _smallest_plate),
        (rf"(?:biggest|largest|heaviest) plates{_ARE} (?P<mass>{MASS})(?:'?s)?", _biggest_plate),
        (rf"no plates (?:over|above|(?:bigger|heavier|larger) than) (?P<mass>{MASS})", _biggest_plate),
        (rf"bar(?:bell)?{_ARE} (?P<mass>{MASS})", _bar),
        (rf"(?:have|only) (?P<mass>{MASS}) bar(?:bell)?", _bar),
        (rf"smallest step is (?P<mass>{MASS})", _smallest_step),
        (rf"bands{_ARE} (?P<list>{LIST})", _bands),
        (rf"{_BAND} {MASS}(?:{AND}{_BAND} {MASS})*", _told_bands),
        (rf"(?:have|only) (?P<list>{LIST}) bands", _bands),
        (rf"(?:have|only) bands of (?P<list>{LIST})", _bands),
        (rf"(?:biggest|largest|heaviest) dumbbells{_ARE} (?P<mass>{MASS})(?:'?s)?", _heaviest_dumbbell),
        (
            rf"no dumbbells (?:over|above|(?:bigger|heavier|larger) than) (?P<mass>{MASS})",
            _heaviest_dumbbell,
        ),
        (rf"only (?P<list>{LIST}) dumbbells", _listed),
        (rf"have (?:(?P<list>{LIST}) dumbbells)", _several(_listed)),
        (rf"(?:have|only) dumbbells of (?P<list>{LIST})", _listed),
        (rf"dumbbells(?: are(?: only)?|:) (?P<list>{LIST})", _several(_listed)),
        (r"(?:have )?dumbbells?(?P<rest>[ ,:].+)", _dumbbells),
        (rf"{_STACK}(?P<rest>[ ,:].+)", _stack),
        (
            rf"(?:have )?(?P<rest>{HALF_STEP})(?: (?:for|on) (?:the )?{_STACK})?",
            _stack,
        ),
        (rf"no (?P<things>{_NAME}(?:{AND}{_NAME})*)", _lacking),
        (rf"only (?P<things>[a-z]+(?:{AND}[a-z]+)*)", _only_these),
        (r"have (?P<thing>[a-z][a-z -]{2,30}?)(?: again)?", _not_lacking),
    )
)

HAVING: dict[str, str] = {
    "barbell": "barbell",
    "bar": "barbell",
    "dumbbell": "dumbbells",
    "kettlebell": "kettlebells",
    "cable": "cables",
    "machine": "machines",
    "band": "bands",
}
"""The implements that a list of what is at hand can name, each with the name of its lack."""


def equipment_of(words: tuple[str, ...], unit: Unit) -> Equipment | str:
    """Return the equipment that a list tells of; or the first item that is not understood.

    Each item is a sentence ("dumbbells go up in 2 kg from 4 to 24"), a lack ("no barbell") or an implement at
    hand ("dumbbells"). Where implements at hand are named, all others are lacking.
    """
    equipment, at_hand = default_equipment(unit), set[str]()
    for item in words:
        said = " ".join(item.casefold().split()).strip(" .!")
        implement = HAVING.get(said.removesuffix("s"))
        if implement is not None:
            at_hand.add(implement)
            continue
        changed = told(said, equipment) or told(f"i have {said}", equipment)
        if changed is None:
            return item
        equipment = changed
    return without_others(equipment, at_hand) if at_hand else equipment
