"""What is said of dumbbells and stacks, in any order: from where to where, by which steps and half steps."""

from decimal import Decimal
from itertools import pairwise
from typing import Literal

from domain.equipment import Equipment, Listed, Steps, default_equipment
from domain.equipment_phrases import MASS, Item, mass_of
from domain.exercises import Implement, usual_steps
from domain.expressions import Expression
from domain.units import Unit

Rack = Literal["dumbbells", "stack"]

_SMALL = r"(?:(?:magnet(?:ic)?|add[ -]?on|top[ -]?up)(?: plates| weight| pin)?|pin (?:plates|weight))"
HALF_STEP = (
    rf"(?:has |have |(?:can )?(?:goe?s? )?(?:up )?in )?(?:an? |the )?"
    rf"(?:(?P<extra>{MASS}) )?(?:small |little )?"
    rf"(?:half (?:a )?steps?(?: lever)?|{_SMALL}|extra(?: plates| weight)?|additional)"
    rf"(?:(?: of)? (?P<of>{MASS})'?s?)?(?: with (?:the |an? )?(?:small |little )?{_SMALL})?"
)
_TAIL = r"(?:steps?|jumps?|plates|at a time|(?:per|a|each) (?:plates|pin|step|time)|each|apart)"
_CLAUSES: tuple[tuple[str, Expression], ...] = tuple(
    (name, Expression(rf"(?:{pattern})(?=$|[ ,])"))
    for name, pattern in (
        (
            "span",
            (
                rf"(?:(?:goe?s?|runs?|ranges?|are) )?(?:up )?(?:from )?(?P<first>{MASS}) ?(?:up )?"
                rf"(?:to|-|–|through|until) ?(?P<last>{MASS})"
            ),
        ),
        ("first", rf"(?:starts?|begins?) (?:at|from|with) (?P<first>{MASS})"),
        (
            "last",
            (
                rf"(?:only )?(?:(?:goe?s? (?:only )?)?up to|goe?s? to|"
                rf"(?:stops?|ends?|max out|top out) at) (?P<last>{MASS})"
            ),
        ),
        (
            "step",
            (
                rf"(?:(?:goe?s?|comes?|moves?|are) (?:up )?(?:in|by)|(?:goe?s?|moves?) up|"
                rf"(?:increase|jump|climb)s?(?: in| by)?|(?:are )?(?:in|by|every))(?: steps of)? "
                rf"(?P<step>{MASS})'?s?"
                rf"(?: {_TAIL})?"
            ),
        ),
        ("step", rf"(?:is |are )?(?P<step>{MASS}) {_TAIL}"),
        ("half step", HALF_STEP),
    )
)
_BETWEEN = Expression(r"(?:,? ?(?:(?:and|with|plus|then) )+|[,:] ?| )")


def usual_step(of: Implement, unit: Unit) -> Decimal:
    """Return the usual step of an implement, common practice."""
    step = usual_steps()[of]
    return step.kg if unit == "kg" else step.lb


def with_clauses(equipment: Equipment, which: Rack, text: str) -> Equipment | None:
    """Return the equipment with what `text` says of a rack; None where it is not all understood.

    A step begins the rack anew; all else is added to what is known, or to the usual step. Where a half step
    has no mass it is half of the step. Several stretches ("1 to 10 by 1, then 12.5 to 30 by 2.5") are listed.
    """
    stretches = _stretches(text, equipment.unit)
    known = getattr(equipment, which)
    usual = usual_step("dumbbell" if which == "dumbbells" else "machine", equipment.unit)
    racks = [_steps(each, known if isinstance(known, Steps) else None, usual) for each in stretches]
    most = default_equipment(equipment.unit).bar
    steps = [each for each in racks if each is not None and each.step <= most]
    if not steps or len(steps) < len(racks) or (len(steps) > 1 and any(each.last is None for each in steps)):
        return None
    rack: Steps | Listed = steps[0]
    if len(steps) > 1:
        rack = Listed(masses=tuple(sorted({mass for each in steps for mass in each.masses(most)})))
    return equipment.model_copy(update={which: rack})


def _steps(masses: dict[str, Decimal], known: Steps | None, usual: Decimal) -> Steps | None:
    """Return the steps that one stretch tells of; None where they are out of reason."""
    begun = None if "step" in masses else known
    step = masses.get("step", begun.step if begun else usual)
    first = masses.get("first", begun.first if begun else step)
    last = masses.get("last", begun.last if begun else None)
    extra = begun.extra if begun else None
    if "half step" in masses:
        extra = masses.get("extra") or masses.get("of") or step / 2
    if (
        step < Decimal("0.1")
        or (last is not None and first > last)
        or {"span", "step"} & set(masses) == {"span"}
    ):
        return None
    return Steps(first=first, step=step, last=last, extra=extra)


def _stretches(text: str, unit: Unit) -> list[dict[str, Decimal]]:
    """Return the masses that the clauses of `text` name, a stretch for each step that is said.

    None at all where something in it is no clause.
    """
    stretches, rest = [dict[str, Decimal]()], text
    while rest:
        between = _BETWEEN.match(rest)
        rest = rest[between.end() :] if between else rest
        name, found = next(
            ((name, found) for name, pattern in _CLAUSES if (found := pattern.match(rest))), ("", None)
        )
        if found is None:
            return []
        if name in stretches[-1]:
            stretches.append({})
        stretches[-1][name] = Decimal(0)
        stretches[-1] |= {of: mass_of(said, unit) for of, said in found.groupdict().items() if said}
        rest = rest[found.end() :]
    return stretches if stretches[0] else []


def listed(equipment: Equipment, several: tuple[Item, ...]) -> Equipment | None:
    """Return the equipment with dumbbells of just these masses."""
    masses = sorted({each.mass for each in several})
    if masses[0] <= 0:
        return None
    steps = {after - before for before, after in pairwise(masses)}
    rack: Steps | Listed = Listed(masses=tuple(masses))
    if len(masses) > 3 and len(steps) == 1:
        rack = Steps(first=masses[0], step=steps.pop(), last=masses[-1])
    return equipment.model_copy(update={"dumbbells": rack})
