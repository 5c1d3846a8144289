"""What a client says in words of own equipment: plates, the bar, dumbbells, a stack, bands, what is missing.

A message is taken only if the whole of it says one such thing, so that a set ("dumbbells 30 for 8") is never
taken for equipment. The sentences are tried in the order of `_SENTENCES`.
"""

import re
from collections.abc import Callable
from decimal import Decimal

from domain.equipment import Equipment, Plate, Steps, default_equipment
from domain.units import Unit, convert

_MASS = r"\d{1,3}(?:[.,]\d{1,3})? ?(?:kgs?|kilos?|lbs?|pounds?)?"
_MASSES = rf"{_MASS}(?:(?:, and |, | and | ?& ?){_MASS})*"
_PLURALS = rf"{_MASS}'?s(?:(?:, and |, | and | ?& ?){_MASS}'?s)*"
_WHOSE = r"(?:(?:my|the|our) )?"
_HAVE = r"(?:i|we)(?: also)? (?:have|'ve got|have got)"
_HAVE_NOT = r"(?:i|we) (?:have no|have not got|haven't got|don't have)(?: any| an?)?"
_PLATE = r"(?:plate|disc)"
_PLATES = r"(?:plates|discs)"
_RACK = rf"{_WHOSE}(?P<rack>dumbbells|stack|weight stack|cable stack|stacks)"
_SPAN = rf"from (?P<first>{_MASS}) (?:up )?to (?P<last>{_MASS})"
_EXTRA = rf"(?: with an? (?:extra |half.step of |additional )(?P<extra>{_MASS}))?"

_THING = re.compile(
    r"(?:barbell|bar|dumbbell|kettlebell|cable|machine|stack|rack|bench|band|plate|ring|rope|box|station)s?"
)
"""The last word of what can be missing: no pain, time or question is equipment."""

_LONGEST = 120

Sentence = tuple[re.Pattern[str], Callable[[re.Match[str], Equipment], Equipment | None]]


def told(text: str, equipment: Equipment) -> Equipment | None:
    """Return the equipment as it is after what `text` says of it; None where it says nothing of the kind.

    Masses without a unit are in the equipment's own; others are converted, to hundredths.
    """
    if len(text) > _LONGEST:
        return None
    said = " ".join(text.casefold().replace("\u2019", "'").split()).strip(" .!")
    for pattern, change in _SENTENCES:
        if (found := pattern.fullmatch(said)) and (changed := change(found, equipment)) is not None:
            return changed
    return None


def _only_plates(found: re.Match[str], equipment: Equipment) -> Equipment | None:
    return _with_plates(equipment, dict.fromkeys(_masses(found["masses"], equipment)))


def _more_plates(found: re.Match[str], equipment: Equipment) -> Equipment | None:
    known: dict[Decimal, int | None] = {plate.mass: plate.pairs for plate in equipment.plates}
    masses = _masses(found["masses"], equipment)
    if any(mass > max(known, default=mass) for mass in masses):
        # "I have 30s" is rather of dumbbells: nobody tells of a plate heavier than all others in that way.
        return None
    return _with_plates(equipment, known | dict.fromkeys(masses))


def _no_plates(found: re.Match[str], equipment: Equipment) -> Equipment | None:
    missing = _masses(found["masses"], equipment)
    left = {plate.mass: plate.pairs for plate in equipment.plates if plate.mass not in missing}
    return _with_plates(equipment, left)


def _smallest_plate(found: re.Match[str], equipment: Equipment) -> Equipment | None:
    (least,) = _masses(found["mass"], equipment)
    left = {plate.mass: plate.pairs for plate in equipment.plates if plate.mass > least}
    return _with_plates(equipment, left | {least: None})


def _with_plates(equipment: Equipment, plates: dict[Decimal, int | None]) -> Equipment | None:
    sizes = tuple(
        Plate(mass=mass, pairs=pairs) for mass, pairs in sorted(plates.items(), reverse=True) if mass > 0
    )
    return equipment.model_copy(update={"plates": sizes}) if sizes else None


def _bar(found: re.Match[str], equipment: Equipment) -> Equipment | None:
    (mass,) = _masses(found["mass"], equipment)
    likely = mass <= 3 * default_equipment(equipment.unit).bar
    return equipment.model_copy(update={"bar": mass}) if likely else None


def _rack(found: re.Match[str], equipment: Equipment) -> Equipment | None:
    named = found.groupdict()
    (step,) = _masses(named["step"], equipment)
    first, last, extra = (
        _masses(named[name], equipment)[0] if named.get(name) else None for name in ("first", "last", "extra")
    )
    if step <= 0 or (first is not None and last is not None and first > last):
        return None
    steps = Steps(first=step if first is None else first, step=step, last=last, extra=extra)
    return equipment.model_copy(update={"dumbbells" if named["rack"] == "dumbbells" else "stack": steps})


def _bands(found: re.Match[str], equipment: Equipment) -> Equipment | None:
    return equipment.model_copy(update={"bands": tuple(sorted(set(_masses(found["masses"], equipment))))})


def _lacking(found: re.Match[str], equipment: Equipment) -> Equipment | None:
    if not _THING.fullmatch(found["thing"].split()[-1]):
        return None
    lacking = (*(each for each in equipment.lacking if each != found["thing"]), found["thing"])
    return equipment.model_copy(update={"lacking": lacking})


def _not_lacking(found: re.Match[str], equipment: Equipment) -> Equipment | None:
    if found["thing"] not in equipment.lacking:
        return None
    lacking = tuple(each for each in equipment.lacking if each != found["thing"])
    return equipment.model_copy(update={"lacking": lacking})


def _masses(text: str, equipment: Equipment) -> tuple[Decimal, ...]:
    """Return the masses named in `text`, in the equipment's unit."""
    masses = []
    for number, word in re.findall(r"(\d+(?:[.,]\d+)?) ?(kg|kilo|lb|pound)?", re.sub(r", ", " ; ", text)):
        unit: Unit = equipment.unit if not word else "kg" if word.startswith("k") else "lb"
        mass = convert(Decimal(number.replace(",", ".")), unit, equipment.unit)
        masses.append(mass if unit == equipment.unit else round(mass, 2))
    return tuple(masses)


_SENTENCES: tuple[Sentence, ...] = (
    (re.compile(rf"{_WHOSE}(?:only )?{_PLATES} are (?:only )?(?P<masses>{_MASSES})"), _only_plates),
    (re.compile(rf"(?:i|we) (?:only have|have only) (?P<masses>{_MASSES}) {_PLATES}"), _only_plates),
    (re.compile(rf"{_HAVE} (?P<masses>{_PLURALS})(?: too| as well)?"), _more_plates),
    (re.compile(rf"{_HAVE} (?P<masses>{_MASSES}) {_PLATES}(?: too| as well)?"), _more_plates),
    (re.compile(rf"(?:{_HAVE_NOT}|no) (?P<masses>{_PLURALS}|{_MASSES} {_PLATES})"), _no_plates),
    (re.compile(rf"{_WHOSE}(?:smallest|lightest) {_PLATE} (?:is|weighs) (?P<mass>{_MASS})"), _smallest_plate),
    (re.compile(rf"{_WHOSE}bar(?:bell)? (?:is|weighs) (?:only )?(?P<mass>{_MASS})"), _bar),
    (re.compile(rf"{_RACK} (?:goe?s? up|jumps?) (?:in |by )?(?P<step>{_MASS})(?: {_SPAN})?{_EXTRA}"), _rack),
    (
        re.compile(rf"{_RACK} (?:goe?s?|runs?) {_SPAN} (?:in|by) (?P<step>{_MASS}){_EXTRA}"),
        _rack,
    ),
    (re.compile(rf"{_WHOSE}bands are (?P<masses>{_MASSES})"), _bands),
    (re.compile(rf"{_HAVE_NOT} (?P<thing>[a-z][a-z -]{{2,30}}?)(?: here| at home| any more)?"), _lacking),
    (re.compile(r"(?:now i|i now) have an? (?P<thing>[a-z][a-z -]{2,30})"), _not_lacking),
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
    if not at_hand:
        return equipment
    lacking = dict.fromkeys((*equipment.lacking, *(each for each in HAVING.values() if each not in at_hand)))
    return equipment.model_copy(update={"lacking": tuple(lacking)})
