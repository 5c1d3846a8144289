"""What there is to train with, answered in free words: "hotel gyms, usually dumbbells only".

Taken only as the answer to that question, so that what else a message can be is out of the way: of each
clause it counts what is named, whether that is there or not, and whether there is no more than that. The
strict sentences, which may be said at any time, stand in `domain.equipment_words`.
"""

import re
from collections.abc import Iterator

from domain.equipment import Equipment
from domain.equipment_phrases import AND
from domain.equipment_words import HAVING, of_same_use, told, without_others
from domain.expressions import Expression
from domain.names import name_words

_CLAUSE = Expression(
    r"[,;.!\n]+|\s(?:but|though|although|and(?= (?:no|not|without|i don't|we don't)\b))\s|\s-\s"
)
_ALL_BUT = Expression(
    r"\b(?:all|everything|everythin|it all|the lot|full gym)\b.*?\b(?:but|except|apart from|besides|bar|"
    r"other than|"
    r"minus|save|without|aside from)\b(?: for)?(?: no)?"
)
_DENIED = Expression(
    r"\b(?:no|not|n't|none|without|never|missing|lack(?:s|ing)?|gone|broken|except|minus|neither|nor|"
    r"can't|cannot)\b"
    r"|n't\b"
)
_NO_BEFORE = Expression(r"\b(?:no|without|except|minus|lacking|missing)\b")
_PLACE = Expression(r"^(?:at )?(?:my )?(?:home|garage|basement|hotel|home gym|garage gym):? ?(?=\w)(?!gym)")
"""Where it is, said before what is there: "home: dumbbells"."""
_TO_SO_MUCH = Expression(r"(?<!up )\bto (?=\d)")
_ONLY = Expression(
    r"\b(?:only|just|nothing but|mostly|usually|that's (?:it|all)|that is (?:it|all)|all (?:that )?(?:i|"
    r"we)(?:'ve| have)"
    r"(?: got)?)\b"
)
_WHOLE_GYM = Expression(
    r"\b(?:everything|all of it|full(?:y)?|the lot|well[- ]equipped|it all|rest is|has all|everything else)\b"
)
_BESIDE = Expression(
    r"(?:a|an|the|some|my|our|and|n|with|have|i|we|i've|got|of|pair|pairs|set|two|one|three|few|couple|at|"
    r"in|home|"
    r"hotel|gym|gyms|only|just|small|little|own|adjustable|heavy|light|old|bench|benches|rack|racks|mat|"
    r"box|chair|"
    r"step|plates?|weights?|set|sets|light|usually|mostly|train|use|there|is|are|that's|it|all|to|or|"
    r"garage|basement|up|kgs?|kilos?|lbs?|pounds?)"
)
"""What stands beside the names in a list of all that there is, and changes nothing."""


_BODY_ALONE = Expression(
    r"(?:(?:i have |only |just |i've got )*(?:nothing|none|no equipment|my body ?weight|"
    r"my (?:own )?body|body ?weight)"
    r"(?: (?:only|alone|at all))*)"
)
_BEFORE_ITEM = Expression(
    r"^(?:and |only |just |i have |i've got |we have |(?:i )?train (?:at home |in my \w+ )?with |at home |"
    r"some |an? |my |the |own |pair of )+"
)


def answered(text: str, equipment: Equipment, names: tuple[str, ...] = ()) -> Equipment | None:
    """Return the equipment of who answers `text`; None where it tells of none.

    `names` are those of other things that can be lacking: what the client's own sheet speaks of.
    """
    said = " ".join(text.casefold().replace("’", "'").split()).strip(" .!")
    if "?" in said:
        return None
    if (listed := _listed_alone(said, equipment, names)) is not None:
        return listed
    bars = [each for each in names if each.endswith(" bars")]
    if len(bars) == 1 and bars[0] not in said:
        said = re.sub(r"\b(?<!-)bars\b", bars[0], said)
    said = _PLACE.sub("", said)
    parts = [each.strip() for each in _CLAUSE.split(_ALL_BUT.sub(", no ", said)) if each and each.strip()]
    there, lacking, is_list, found = set[str](), list[str](), True, False
    after = equipment
    for part in parts:
        here = dict.fromkeys(_things_in(part, names))
        found = found or bool(here)
        if _DENIED.search(part):
            before, _, after_no = _split_at_no(part)
            denied = dict.fromkeys(_things_in(after_no, names))
            there.update(_things_in(before, names) if denied else ())
            lacking.extend(denied or here)
            continue
        there.update(here)
        if any(sign.isdigit() for sign in part):
            amounts = _TO_SO_MUCH.sub("up to ", part)
            after = told(amounts, after, names) or told(f"I have {amounts}", after, names) or after
        is_list = is_list and all(_is_beside(word, names) for word in re.findall(r"[a-z']+", part))
    if not found:
        return None
    is_whole_list = (is_list or _ONLY.search(said)) and not _WHOLE_GYM.search(said)
    if is_whole_list and not lacking and there & {*HAVING.values()}:
        return without_others(after, there, names)
    if not lacking:
        return None
    known = [each for each in after.lacking if each not in lacking]
    return after.model_copy(update={"lacking": (*known, *dict.fromkeys(lacking))})


def _split_at_no(part: str) -> tuple[str, str, str]:
    """Return what stands before a "no" that has things behind it, and those: "bar and plates no bench"."""
    found = _NO_BEFORE.search(part)
    return (part[: found.start()], found[0], part[found.end() :]) if found else (part, "", "")


def _is_beside(word: str, names: tuple[str, ...]) -> bool:
    return bool(_BESIDE.fullmatch(word)) or any(True for _ in _things_in(word, names))


def _things_in(said: str, names: tuple[str, ...]) -> Iterator[str]:
    """Give the things that can be lacking, as they are kept, that stand in `said`."""
    words, at = name_words(said), 0
    wholes = {name_words(each): each for each in names} | {name_words(each): each for each in HAVING.values()}
    while at < len(words):
        for length in range(min(4, len(words) - at), 0, -1):
            run = words[at : at + length]
            thing = wholes.get(run) or (
                HAVING.get(run[0]) if length == 1 else of_same_use(" ".join(run), names)
            )
            if thing is not None:
                yield thing
                at += length - 1
                break
        at += 1


def _listed_alone(text: str, equipment: Equipment, names: tuple[str, ...] = ()) -> Equipment | None:
    """Return the equipment of who has just what `text` lists ("dumbbells and bands", "nothing"); else
    None. `names` are those of other things that can be lacking."""
    said = " ".join(text.casefold().split()).strip(" .!")
    if _BODY_ALONE.fullmatch(said):
        return without_others(equipment, set(), names)
    items = [_BEFORE_ITEM.sub("", each) for each in re.split(AND, said)]
    named = [HAVING.get(each.removesuffix("s")) for each in items]
    return without_others(equipment, {each for each in named if each}, names) if None not in named else None
