"""How equipment is spoken of: words of one meaning brought to one, masses and lists of them.

Whatever says that one has something, only something, or not, becomes "have …", "only …", "no …". What is had
is taken in `domain.equipment_words`. A question keeps its mark, and so says nothing.
"""

import re
from decimal import Decimal
from typing import NamedTuple

from domain.expressions import Expression
from domain.units import Unit, convert

MASS = r"\d{1,3}(?:[.,]\d{1,3})?(?:kg|lb)?"
AND = r"(?:,? and |,? or |, | ?& ?)"
_COUNT = (
    r"(?:(?:one|two|three|four|five|six|eight|a|\d{1,2}) pairs? of |(?:two|four|six|eight) |\d{1,2} ?x ?|"
    r"[2468] (?=\d\S*s\b))"
)
COUNTED = rf"{_COUNT}{MASS}'?s?(?: plates)?(?:{AND}{_COUNT}{MASS}'?s?(?: plates)?)*"
LIST = rf"{_COUNT}?{MASS}'?s?(?: plates)?(?:{AND}{_COUNT}?{MASS}'?s?)*"
PLURALS = rf"{_COUNT}?{MASS}'?s(?:{AND}{_COUNT}?{MASS}'?s)*"

_ITEM = Expression(
    r"(?:(?P<count>[a-z]+|\d{1,2}) ?(?:x ?)?(?P<pairs>pairs? of )?)??"
    r"(?P<number>\d{1,3}(?:[.,]\d{1,3})?)(?P<unit>kg|lb)?'?s?(?: plates)?"
)
_NUMBERS = {"a": 1, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "eight": 8}


class Item(NamedTuple):
    """One mass of a list, and of how many pairs is spoken; None where that is not said."""

    mass: Decimal
    pairs: int | None


def items(text: str, unit: Unit) -> tuple[Item, ...]:
    """Return the masses of a `LIST`, in `unit`; loose ones, as of plates, are counted in pairs."""
    found = [match for part in re.split(AND, text) if (match := _ITEM.fullmatch(part))]
    return tuple(Item(_mass(each["number"], each["unit"], unit), _pairs(each)) for each in found)


def mass_of(text: str, unit: Unit) -> Decimal:
    """Return the one `MASS` of the text, in `unit`; what was said in the other is rounded to hundredths."""
    return items(text, unit)[0].mass


def _mass(number: str, said: str | None, unit: Unit) -> Decimal:
    mass = Decimal(number.replace(",", "."))
    if said is None or said == unit:
        return mass
    return round(convert(mass, "kg" if said == "kg" else "lb", unit), 2)


def _pairs(item: re.Match[str]) -> int | None:
    count = item["count"]
    if count is None:
        return None
    number = int(count) if count.isdecimal() else _NUMBERS[count]
    return number if item["pairs"] else number // 2


_WHO = r"(?:i|we|they|(?:(?:my|our|the|this) )?(?:home |hotel |new )?(?:gym|place|hotel))"
_ADVERBS = r"(?: (?:also|now|just|really|still))*"

_HAVING_IT = (
    r"(?<=[a-z])(?<!\ball) (?:that |which )?(?:i|we)"
    r"(?:'ve got|(?:'ve| have)? (?:got|have|use|own)| have)(?= is | are |$)"
)
_OF_A_GYM = r"(?:new|old|other|hotel|home)"
_SIZE = r"(?:smallest|lightest|biggest|largest|heaviest)"
_SAME: tuple[tuple[Expression, str], ...] = tuple(
    (Expression(pattern), word)
    for pattern, word in (
        (r"\b(?:dbs?|dum?bb?ells?)\b", "dumbbells"),
        (r"\b(?:discs?|disks?|plate)\b", "plates"),
        (r"\b(?:micro|fractional|change|weight) ?(?=plates\b)", ""),
        (r"\bhalf-steps?\b", "half steps"),
        (r"\b(?:increments?|intervals?)\b", "steps"),
        (r"\b(?:adjustable|loadable|fixed|hex|rubber) (?=dumbbells\b)", ""),
        (r"\b(?:olympic|women'?s|ladies'?|men'?s|straight|technique|training) (?=bar)", ""),
        (r"\b(?:my|our|the) (?:gym|place|hotel)'s (?=[a-z])", ""),
        (
            r"^(?:the |my )?smallest (?:step|jump|increase) (?:on|for|with) the bar (?:is|of)",
            "smallest step is",
        ),
        (
            r"^(?:the )?(?:smallest|least) (?:i|we) can add is (\S+) (?:a|per|on each|each) side",
            r"smallest plates are \1",
        ),
        (r"^(?:the |my )?plates go down to ", "smallest plates are "),
        (r"(?<=[a-z])'s (?=an? |only |\d)", " is "),
        (r"\bweight of the bar\b|\bbar'?s? weight\b", "bar"),
        (r"(?<=\d) ?1/2(?=s|kg|lb|\b)", ".5"),
        (r"^new (?=plates|dumbbells|bands)", "have "),
        (r"(?<=have )new (?=plates|dumbbells|bands|bar)|(?<=got )new (?=plates|dumbbells|bands|bar)", ""),
        (r" ?\b(?:kilograms?|kilos?|kgs?)\b|(?<=\d)(?:kilograms?|kilos?|kgs)\b", "kg"),
        (r" ?\b(?:pounds?|lbs?)\b|(?<=\d)(?:pounds?|lbs)\b", "lb"),
        (r"\btwos\b", "2s"),
        (r"\bfives\b", "5s"),
        (r"\btens\b", "10s"),
        (
            rf",? (?:here|(?:at|in) (?:(?:my|our|the|this) )?(?:{_OF_A_GYM} )?(?:home|gym|hotel|place))\b",
            "",
        ),
        (_HAVING_IT, ""),
        (
            r"^(?:each|every|one) (?:plates|pin|brick|step) (?:on|of|in) (?:the )?stack (?:is|weighs)",
            "stack goes up",
        ),
        (
            r"^(?:my |the )?(dumbbells|stack|machine|cable) (?:steps|jumps) (?:are|is|of)(?= \d)",
            r"\1 goes up",
        ),
        (r"^(?:the )?(\d\S*s|\d\S* plates) (?:is|are) (?:missing|gone)$", r"no \1"),
        (
            rf"^(?:the )?(\d\S*)(?: plates)? (?:is|are) (?:my |the |our )?({_SIZE})(?: plates)?$",
            r"\2 plates are \1",
        ),
        (r"^i can add (?=\d\S* to the )", "have "),
        (r"(?<=\d|g|b) to the (?=stack$|machine$|cable$)", " extra for the "),
    )
)
_OPENING = Expression(
    r"(?:(?:ok|okay|hi|hey|hello|btw|fyi|by the way|so|well|also|and|note(?: that)?)[,:]? )+"
)
_CLOSING = Expression(r"(?:,? (?:too|as well|now|at the moment|any ?more|available|to train with|please))+$")
_ON_TOP = Expression(r"\b(?:also|too|as well|now|bought|new)\b")

_HOLDING: tuple[tuple[str, Expression], ...] = (
    (
        "no ",
        Expression(
            rf"{_WHO}{_ADVERBS} (?:have|has)(?: got)? no |{_WHO}'ve got no |"
            rf"(?:{_WHO}{_ADVERBS} )?(?:don't|doesn't|do not|does not) (?:have|own)(?: access to)?(?: any)? |"
            rf"{_WHO}(?:'ve| have)?{_ADVERBS} "
            rf"(?:sold|lost|got rid of|gave away|given away|returned|broke|broken|threw away|"
            rf"thrown away)(?: all)?(?: of)?(?: my| our| the)? |"
            rf"(?:{_WHO} )?no longer (?:have|has|own|got)(?: any| a| the| my| our)? |no more |"
            rf"(?:{_WHO}{_ADVERBS} )?(?:haven't|hasn't|have not|has not)(?: got)?(?: any)? |"
            rf"there(?:'s| is| are) (?:no|not any|not an?) |there (?:isn't|aren't)(?: any)? |"
            rf"(?:{_WHO}(?:'re|'m| are| am| is) )?(?:missing|lacking|without)(?: any)? |no access to |no "
        ),
    ),
    (
        "only ",
        Expression(
            rf"{_WHO} (?:only have|only has|have only|has only|only own|own only) (?:got )?|"
            rf"{_WHO}(?:'ve| have| has) only got |{_WHO}'ve got only |"
            rf"all (?:that )?{_WHO}(?: have| has|'ve)(?: got)? (?:is|are) |"
            rf"there(?:'s| is| are) only |(?:the )?only |just "
        ),
    ),
    (
        "have ",
        Expression(
            rf"(?:now )?{_WHO}{_ADVERBS}(?:'ve| have| has)(?: got| bought)?{_ADVERBS} (?:access to )?|"
            rf"(?:now )?{_WHO}{_ADVERBS} (?:got|own|use|bought|train with|lift with|work with|can get) |"
            rf"{_WHO}(?:'m| am|'re| are) using |"
            rf"there(?:'s| is| are)(?: also| now)? |have |got |it(?:'s| is) |bought |with "
        ),
    ),
)


def canonical(text: str) -> tuple[str, bool]:
    """Return `text` with its having brought to one form, and whether something comes on top of what was."""
    said = " ".join(text.casefold().replace("\u2019", "'").split()).strip(" .!,")
    on_top = bool(_ON_TOP.search(said))
    if opening := _OPENING.match(said):
        said = said[opening.end() :]
    if closing := _CLOSING.search(said):
        said = said[: closing.start()]
    for pattern, word in _SAME:
        said = pattern.sub(word, said)
    for form, pattern in _HOLDING:
        if found := pattern.match(said):
            return form + re.sub(r"^(?:some |the |an? (?!pair))", "", said[found.end() :]), on_top
    return re.sub(r"^(?:my|the|our) ", "", said), on_top


ALL_AGAIN = Expression(
    r"(?:(?:and|ok|now|finally),? )*(?:i'm |i am |we're )?(?:now )?(?:back )?(?:at|in|to) (?:my|our|the) "
    r"(?:(?:usual|normal|own|old|full|big|regular|home) )+gym(?: again| now)*"
    r"(?:,? (?:with|where there is|which has|it has|they have) (?:everything|all of it|all))?|(?:i|we) have "
    r"(?:everything|all of it|a full gym|a whole gym|the whole gym)(?: again| now| back)+|"
    r"(?:everything|all of it)(?: is|'s)? (?:there|back)(?: again| now)*|(?:i|we) (?:can (?:now )?use|have|"
    r"have got|'ve got) (?:all|every|the whole)(?: of)?(?: the| my)? "
    r"(?:equipment|things|machines|gear|kit|stuff)(?: again| now| back| here)*"
)
"""That nothing is lacking any longer."""
