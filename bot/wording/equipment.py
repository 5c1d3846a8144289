"""Words for the equipment that was understood, so that a misreading is seen at once."""

from bot.markup import escape
from bot.wording.notice_forms import Facts
from bot.wording.reader import NO_BREAK, Reader, listed, number
from domain.equipment import Equipment, Listed, Plate, Steps
from domain.units import Unit


def equipment_words(facts: Facts, _reader: Reader) -> str:
    """Say what is now known of the things that were told of."""
    told = Equipment.model_validate(facts["equipment"])
    said = [words for of in facts["changed"] if (words := one_words(told, of))]
    known = f"Noted: {'; '.join(said)}." if said else "Noted."
    if not facts["changed"]:
        known = "That is as I have it already."
    if facts.get("had"):
        known += f" You have {escape(listed(facts['had']))} again."
    lacking = f" You have no {escape(listed(told.lacking, 'or'))}." if told.lacking else ""
    none = facts.get("nothing_for")
    it = "it" if none and len(none) == 1 else "them"
    nothing = (
        f" Your programme has nothing else for {escape(listed(none))}: leave {it} out. I have told "
        f"{escape(str(facts['coach']))}."
        if none
        else ""
    )
    changes = [f" {escape(other)} takes the place of {escape(name)}." for name, other in facts["instead"]]
    if facts.get("back"):
        are = "is" if len(facts["back"]) == 1 else "are"
        changes.append(f" {escape(listed(facts['back']))} {are} back in your workouts.")
    loaded = " What I give you to aim for can be loaded with that." if said else ""
    return f"{known}{loaded}{lacking}{''.join(changes)}{nothing}"


def one_words(told: Equipment, of: str) -> str:
    """Say one kind of thing that is there; nothing where none of it is known."""
    unit = told.unit
    match of:
        case "bar":
            return f"a bar of {number(told.bar)}{NO_BREAK}{unit}"
        case "plates":
            return f"plates of {listed([_plate(each) for each in told.plates])}{NO_BREAK}{unit}"
        case "bands" if told.bands:
            return f"bands of {listed([number(each) for each in told.bands])}{NO_BREAK}{unit}"
        case "dumbbells" if told.dumbbells is not None:
            return f"dumbbells {_rack(told.dumbbells, unit)}"
        case "stack" if told.stack is not None:
            return f"the stack {_rack(told.stack, unit)}"
        case _:
            return ""


def _plate(plate: Plate) -> str:
    if plate.pairs is None:
        return number(plate.mass)
    return f"{number(plate.mass)} ({plate.pairs} {'pair' if plate.pairs == 1 else 'pairs'})"


def _rack(rack: Steps | Listed, unit: Unit) -> str:
    if isinstance(rack, Listed):
        return f"of {listed([number(each) for each in rack.masses])}{NO_BREAK}{unit}"
    end = "up" if rack.last is None else f"to {number(rack.last)}"
    half = f", with {number(rack.extra)} to add" if rack.extra is not None else ""
    return f"from {number(rack.first)} {end} in steps of {number(rack.step)}{NO_BREAK}{unit}{half}"
