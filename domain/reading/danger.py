"""Warning signs: words that describe something which calls for medical help at once.

The list is the contract's. Denials, other people, jokes and what is long past do not count. Where in
doubt the
answer is yes: the bot then tells the client to stop and to call for help, which is the cheaper mistake.
"""

import re

from domain.reading.body import find_parts
from domain.reading.body_words import JOKE_WORDS, LONG_PAST, OTHERS
from domain.reading.message import Message
from domain.reading.request import Pain
from domain.reading.words import words_of

_TRIGGERS = words_of(
    """chest breathe breathing breath air faint fainted fainting fainty passed blacked black blackout
    collapsed consciousness unconscious palpitations palpitation heart headache migraine head numb
    numbness tingling tingly tingles pins control feel move lift pop popped popping snap snapped crack
    cracked urine pee wee piss peeing peed weeing bladder incontinent incontinence breathless
    breathlessness sternum breastbone urinated urinating grey greyed pissed wet pissing toilet vision
    droopy drooping slurred paralysed paralyzed limp loo passing arm leg keeled"""
)

_CHEST = r"(?:chest|breastbone|sternum)"
_PAINWORD = (
    r"(?:pains?|hurts?|hurting|pressure|tightness|crushing|squeez\w+|heav\w+|stabbing|aching|ache"
    r"|constrict\w*|weight|burning|discomfort|painful|clutching|gripping)"
)
_LIMB = (
    r"(?:arms?|legs?|hands?|foot|feet|fingers?|limbs?|side|toes|thigh|calf|forearm|half of my body"
    r"|face|thumb)"
)
_CANNOT = (
    r"(?:cant|cannot|can not|couldnt|could not|unable to|not able to|wont|no longer|dont manage to"
    r"|barely|hardly|cant even|struggling to|impossible to)"
)

_SIGNS: tuple[tuple[str, re.Pattern[str]], ...] = (
    (
        "chest",
        re.compile(
            rf"\b{_PAINWORD}\b(?: \S+){{0,6}} {_CHEST}\b"
            rf"|\b{_CHEST}\b(?: \S+){{0,4}} (?:{_PAINWORD}|tight|felt like someone"
            rf"|feels like someone)\b|\btight {_CHEST}\b|\b(?:sitting|standing|elephant|pressing"
            rf"|tight|heavy|band)(?: \S+){{0,4}} (?:on|around|across|in) my chest\b"
        ),
    ),
    (
        "breath",
        re.compile(
            rf"\b{_CANNOT} (?:really |properly )?(?:breathe|breath|get (?:enough |any "
            rf"|my )?(?:air|breath)|catch (?:my|a|any) (?:breath|air))\b|\b(?:trouble"
            rf"|difficult\w*|struggl\w+|hard|problems?|problem with|fighting)(?: with)?(?: to"
            rf"| for)? (?:breathe|breathing|breath|air)\b|\bgasping\b"
            rf"|\bshort(?:ness)? of breath\b|\bno air\b"
        ),
    ),
    (
        "breath still",
        re.compile(
            r"\b(?:out of breath|breathless\w*)\b(?=.{0,60}\b(?:sitting|rest|resting|still"
            r"|minutes?|lying|walking|doing nothing|even|hour|hours|for no reason|calm)\b)"
            r"|\b(?:sitting|resting|lying|still|even)\b.{0,30}\b(?:out of breath|breathless)\b"
        ),
    ),
    (
        "faint",
        re.compile(
            r"\b(?:fainted|fainting|keeled over|blacked out(?! the| my| a)"
            r"|black(?:ing)? out(?! the| my| a)|blackout|lost consciousness|unconscious"
            r"|passed out|pass(?:ing)? out|collapsed|greyed out|grey(?:ing)? out|felt faint"
            r"|feel(?:ing)? faint|faint feeling|feeling of fainting|faint and|nearly faint"
            r"|almost faint)\b|\b(?:went|going|everything|vision|all) (?:\w+ )?(?:black"
            r"|dark)\b(?=.{0,20}\b(?:eyes|vision|moment|second|seconds|standing|stood|me)\b)"
            r"|\bblack (?:before|in front of) my eyes\b|\beverything went (?:black|dark)\b"
            r"|\bvision (?:went|goes|gone|going) (?:black|dark|grey)\b"
            r"|\bso dizzy (?:that )?i (?:fell|almost|nearly|had to (?:lie|sit|hold))\b"
        ),
    ),
    (
        "heart",
        re.compile(
            r"\b(?:palpitations?|heart (?:\w+ ){0,3}(?:racing|raced|pounding|pounded|skipping"
            r"|skipped|fluttering|flutters|jumping|jumps|beating|stumbling|stumbles|irregular\w*"
            r"|races))\b(?=.*\b(?:dizz\w+|light ?headed|light headed|faint|woozy|giddy"
            r"|lightheaded\w*|spinning)\b)|\b(?:dizz\w+|light ?headed|woozy|giddy"
            r"|lightheaded\w*)\b.*\b(?:palpitations?|heart (?:\w+ ){0,3}(?:racing|raced|pounding"
            r"|pounded|skipping|fluttering|jumping|stumbling|irregular\w*|beating like|races))\b"
        ),
    ),
    (
        "head",
        re.compile(
            r"\b(?:sudden\w*|worst|thunderclap|exploding|explosive|splitting|out of nowhere"
            r"|blinding|severe|massive|violent|brutal|extreme)\b(?: \S+){0,6} (?:headaches?"
            r"|migraine|head pain|pain in (?:my|the) head)\b|\b(?:headache|head pain"
            r"|pain in (?:my|the) head)\b(?: \S+){0,8} (?:out of nowhere|suddenly|sudden|worst"
            r"|exploded|thunderclap|like (?:an )?explosion|like never before)\b"
            r"|\bhead (?:\w+ ){0,3}(?:exploded|exploding|explode)\b(?=.{0,40}(?:pain|headache"
            r"|sudden))"
        ),
    ),
    (
        "numb",
        re.compile(
            rf"\b(?:numb|numbness)\b(?: \S+){{0,6}} {_LIMB}\b|\b{_LIMB}\b(?: \S+){{0,5}} (?:numb"
            rf"|numbness)\b|\b{_CANNOT} (?:really |even )?feel (?:my|the"
            rf"|anything in my) (?:\w+ )?{_LIMB}\b|\bno (?:feeling"
            rf"|sensation) in my (?:\w+ )?{_LIMB}\b|\blost (?:all )?(?:feeling|sensation) in my\b"
        ),
    ),
    (
        "tingling",
        re.compile(
            r"\b(?:tingl\w+|pins and needles)\b(?=.*\b(?:weak\w*|no strength|no power"
            r"|lost strength|drop(?:s|ped|ping)? (?:things|stuff|the|my)|grip|cant hold"
            r"|cannot hold|strength)\b)|\b(?:weak|weakness|no strength|no power"
            r"|lost strength)\b(?=.*\b(?:tingl\w+|pins and needles)\b)"
        ),
    ),
    (
        "control",
        re.compile(
            rf"\b(?:lost|losing|lose|loss of|no) control (?:of|over) (?:my "
            rf"|the )?(?:\w+ )?{_LIMB}\b|\b{_CANNOT} (?:really |even )?(?:move|control|lift"
            rf"|raise) (?:my|the) (?:left |right |whole )?(?:arms?|legs?|foot|feet|hands?|fingers"
            rf"|toes)\b|\b{_LIMB}\b(?: \S+){{0,4}} (?:paraly[sz]ed|wont move|doesnt move"
            rf"|does not move|wont obey|not obeying|hangs limp|went limp|is limp|gone limp"
            rf"|gave way and)\b|\b(?:foot|leg) (?:is |keeps |just )?(?:drops|dropping|dragging)\b"
        ),
    ),
    (
        "pop",
        re.compile(
            rf"\b(?:pop|popped|popping|snap|snapped|crack|cracked"
            rf"|crunch)\b(?=.*\b(?:{_CANNOT}) (?:\w+ ){{0,3}}(?:walk|stand|bear|put|move|bend"
            rf"|straighten|lift|raise|load|step|extend|weight|turn|use|flex|grip)\b)|\b(?:pop"
            rf"|popped|snap|snapped|crack)\b(?=.*\bno weight on\b)"
        ),
    ),
    (
        "urine",
        re.compile(
            r"\b(?:urine|pee|wee|piss|peeing|peed|weeing|urinated"
            r"|urinating)\b(?: \S+){0,7} (?:dark|brown|cola|coke|tea|red|black|blood|bloody|rusty"
            r"|coffee|brownish|reddish)\b|\b(?:dark|brown|cola|coke|tea|bloody|red|black|rusty"
            r"|brownish|reddish|coffee)\b(?: \S+){0,4} (?:urine|pee|wee|piss)\b"
            r"|\bblood in my (?:urine|pee|wee)\b|\bpassing (?:dark|brown|blood)\b"
        ),
    ),
    (
        "bladder",
        re.compile(
            r"\b(?:wet|peed|pissed|weed) (?:myself|my (?:pants|trousers|shorts|leggings|self))\b"
            r"|\b(?:lost|lose|losing|loss of|no) control (?:of|over) (?:my )?(?:bladder|pee|wee"
            r"|urine|bowels?)\b|\b(?:cant|cannot|couldnt|can not) (?:hold|control|feel) (?:my "
            r"|the )?(?:bladder|pee|wee|urine|bowels?)\b|\bincontinen\w+\b|\bbladder (?:control"
            r"|just went|emptied|gave)\b|\b(?:leak|leaking|leaked) (?:urine|pee|wee)\b"
            r"|\bnumb (?:between|around) my (?:legs|groin|saddle)\b"
        ),
    ),
)

_DENIED = re.compile(
    r"\b(?:no|not|without|never|didnt|doesnt|dont|isnt|wasnt|nothing|zero|neither|nor|havent|hasnt"
    r"|nor any|werent|arent)\b(?: \S+){0,4} ?$"
)
_WHOLE_DENIED = re.compile(r"^(?:no|not|without|never|neither|zero) ")
_FIGURE = re.compile(
    r"\b(?:laugh\w*|lol|on the (?:sofa|couch|bed)|in bed|asleep|sleeping|from boredom|when i saw"
    r"|at the price|the bill|hold(?:ing)? my breath|breath of fresh|take my breath|took my breath"
    r"|off my chest|treasure chest|heart attack when|just kidding|jk|movie|film|series|novel|cold|ice"
    r"|fell asleep|fallen asleep|breathing (?:exercise|technique|pattern|cue)|brace|bracing|sat on it"
    r"|slept on it|sleeping on it)\b"
)
_SOFT = frozenset({"numb", "control", "faint", "breath", "bladder", "breath still"})
"""Signs that are often said in jest of a hard set."""
_JEST = re.compile(
    r"\b(?:after (?:those|that|the|these|all) (?:\w+ )?(?:squats?|lunges?|sets?|leg day|workout|session"
    r"|curls?|deadlifts?|set)|from (?:the |those |all )?(?:squats?|lunges?|pump|laughing|curls?)|pump"
    r"|leg day)\b"
)
_CHEST_MUSCLE = re.compile(
    r"\b(?:muscle|muscles|muscular|pec|pecs|sore|soreness|doms|pump|pumped|stretch\w*|foam|chest (?:press"
    r"|day|supported|fly|flies|workout|machine|dips?|expander|pass|height|size|hair)|(?:weight|weights"
    r"|bar|dumbbells?|plate|disc|kg|bell|sandbag|ball)(?: \S+){0,4} (?:on|to|against|at|across) (?:my "
    r"|the )?chest|(?:touch\w*|paus\w*|off|to|onto) (?:my |the )?chest)\b"
)
_HURTS = re.compile(r"\b(?:pains?|hurts?|hurting|pressure|crushing|stabbing|tightness|squeez\w+)\b")


def is_urgent(message: Message) -> bool:
    """Return whether the message describes a warning sign."""
    return bool(signs(message))


def signs(message: Message) -> tuple[str, ...]:
    """Return the warning signs described, by their short names."""
    if not message.has(_TRIGGERS):
        return ()
    found: list[str] = []
    joke = message.has(JOKE_WORDS)
    line = message.line.replace("\n", ".")
    for name, pattern in _SIGNS:
        for match in pattern.finditer(line):
            if not _discounted(name, match, line, joke=joke):
                found.append(name)
                break
    return tuple(found)


def danger_pain(message: Message, found: tuple[str, ...], pain: tuple[Pain, ...]) -> tuple[Pain, ...]:
    """Return the pain with the place of a warning sign that hurts by its nature, where it is not named
    yet."""
    places = {p.where for p in pain}
    if "chest" in found and "chest" not in places:
        return (*pain, Pain("chest"))
    if "head" in found and "head" not in places:
        return (*pain, Pain("head"))
    if "pop" in found and not pain:
        return tuple(Pain(p.place, p.side) for p in find_parts(message, ())[:1] if p.place != "other")
    return pain


def _discounted(name: str, match: re.Match[str], line: str, *, joke: bool) -> bool:
    """Return whether a sign is denied, another's, long past, a figure of speech or a joke."""
    start = max(line.rfind(mark, 0, match.start()) for mark in (" . ", " ! ", " ? ", " ; ")) + 1
    start = max(start, 0)
    ends = [e for e in (line.find(mark, match.end()) for mark in (" .", " !", " ?", " ;")) if e >= 0]
    end = min(ends) if ends else len(line)
    sentence = line[start:end]
    before = line[start : match.start()]
    clause_before = re.split(r" (?:,|but|and then|then|so|:|-) ", before)[-1].strip()
    if _DENIED.search(clause_before) and not re.search(
        r"\b(?:not sure|dont know|no idea|no joke|not great|not good)\b", clause_before
    ):
        return True
    if (
        re.search(r"\b(?:no|not|without|never|didnt|isnt|wasnt|doesnt)\b", match.group())
        and name in {"chest", "faint", "heart", "head", "pop"}
        and not re.search(r"\b(?:cant|cannot|couldnt|not able)\b", match.group())
    ):
        return True
    for other in OTHERS.finditer(before):
        if not re.search(
            r"\b(?:i|my|ive|im|me)\b", before[other.end() :] + match.group()[:0]
        ) and not re.search(r"\bmy\b", match.group()):
            return True
    if re.match(
        r"\s*(?:my|our|the|a|some) (?:\w+ )?(?:wife|husband|brother|sister|buddy|partner|mate|friend|dad"
        r"|mum|mom|mother|father|son|daughter|colleague|neighbour|neighbor|gran\w*|uncle|aunt|boss|guy"
        r"|bloke|lady|man|woman|cousin)s? ",
        sentence,
    ) and not re.search(r"\bmy (?:chest|arm|leg|head|heart|hand|foot)\b|\bi\b", sentence):
        return True
    if LONG_PAST.search(sentence):
        return True
    if re.search(
        r"\b(?:if i|in case|what if|would it be|should i ever|article|read (?:about|that)|warned about"
        r"|leaflet|checklist|you asked)\b",
        before,
    ):
        return "you asked" not in before
    figure = _FIGURE.search(sentence)
    if figure and name in _SOFT | {"chest", "faint"}:
        return True
    if name == "chest":
        if _CHEST_MUSCLE.search(sentence) and not re.search(
            r"\bchest pains?\b|\bpains? in my chest\b|\bpressure (?:on|in) my chest\b", sentence
        ):
            return True
        if not _HURTS.search(sentence) and re.search(
            r"\b(?:bench\w*|press\w*|flies|flys?|dips?|push ups?|pushups?|yesterday|workout)\b", sentence
        ):
            return True
    return name in _SOFT and (
        joke or (name in {"numb", "control"} and _JEST.search(sentence) is not None and joke)
    )
