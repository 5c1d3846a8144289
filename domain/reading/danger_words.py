"""Words of warning signs, as data: what each sign is told by.

Two kinds of telling: a place and a feeling near each other, in any order ("pressure in my chest", "the
chest, it presses"), and fixed turns of phrase. Patterns are over the plain line of a message.
"""

import re
from dataclasses import dataclass
from typing import Literal

from domain.reading.words import words_of

Sign = Literal[
    "chest", "breath", "faint", "heart", "head", "numb", "tingling", "control", "pop", "urine", "bladder"
]


@dataclass(frozen=True, slots=True)
class Near:
    """A sign told by one of `places` and one of `feelings`, with at most `gap` words between, in any order.

    With `across` they may stand in two sentences, one after the other.
    """

    sign: Sign
    places: frozenset[str]
    feelings: frozenset[str]
    gap: int = 6
    across: bool = False


@dataclass(frozen=True, slots=True)
class Phrase:
    """A sign told by a turn of phrase; the pattern is asked only where one of `triggers` is said."""

    sign: Sign
    triggers: frozenset[str]
    pattern: re.Pattern[str]


def _phrase(sign: Sign, triggers: str, *ways: str) -> Phrase:
    return Phrase(sign, words_of(triggers), re.compile(r"\b(?:" + "|".join(ways) + r")\b"))


CHEST = words_of("chest breastbone sternum breast")
CHEST_STRONG = words_of(
    """pain pains hurt hurts hurted hurting paining pressure tightness crushing squeezing stabbing pressing
    painful discomfort gripping clutching constricted"""
)
CHEST_SOFT = words_of(
    """tight squeeze squeezed heavy heaviness stab ache aches aching burning burn burns presses pressed
    sharp cramp cramping sitting standing elephant stone lies band twinge twinges tighten tightens
    tightened tightening vice vise clamp clamped rope brick choking suffocating"""
)
"""Feelings in the chest that hard training gives as well: none beside words of training."""
LIMBS = words_of(
    """arm arms leg legs hand hands foot feet finger fingers limb limbs toes toe thigh calf forearm face
    thumb side shoulder knee wrist groin saddle crotch"""
)
HEART_HURT = words_of("tight tightness pressure pain pains stabbing squeezing squeezed cramp burning sharp")
BREATH = words_of("breath breathe breathing breathes air oxygen lungs")
LACKING = words_of(
    """trouble difficult difficulty difficulties problem problems struggle struggles struggling lack
    shortness barely hardly impossible shallow painful cant cannot couldnt unable fighting"""
)
NOT_OBEYING = words_of(
    """hangs dangles limp paralysed paralyzed lame obey obeying obeys drags dragging flops flopping slaps
    slapping unresponsive"""
)
DIZZY = words_of("dizzy dizziness lightheaded giddy woozy spinning spins spots headed faint swaying")
HEART = words_of("heart heartbeat pulse")
HEART_ODD = words_of(
    """racing raced races pounding pounded skipping skips skipped flutter fluttering flutters fluttered
    jumping jumps stumbling stumbles stumbled irregular irregularly crazy wild mad weird weirdly funny
    hammering galloping thumping thumped beating beats bananas over flipping uneven odd strange"""
)
WEAK = words_of("weak weakness weaker strength power powerless drop drops dropping dropped grip hold")
TINGLING = words_of("tingling tingly tingles tingle tingled prickling prickles prickly needles ants")
DRINKS = words_of("cola coke tea coffee pepsi port")
"""Drinks whose colour the urine has; before the word for it they must stand right beside it."""
DARK = words_of(
    """dark brown cola coke tea red black blood bloody rusty coffee brownish reddish darker rust maroon
    pepsi port"""
)
URINE = words_of(
    "urine pee pipi wees wee piss peeing peed weeing urinated urinating pissing pissed urination toilet"
)
POPS = words_of("pop popped popping pops snap snapped crack cracked crunch crunched")
SUDDEN = words_of(
    """sudden suddenly worst thunderclap exploding exploded explosion explosive splitting blinding severe
    massive violent brutal extreme extremely unbearable lightning hammer nowhere instantly"""
)
_SUDDEN = "|".join(sorted(SUDDEN))
HEADACHE = words_of("headache headaches migraine")

CANNOT = (
    r"(?:cant|cannot|can not|can no|couldnt|could not|unable to|not able to"
    r"|wont|no longer|dont manage to|barely|hardly"
    r"|cant even|struggling to|impossible to|didnt manage to|was not able to)"
)
_LIMB = r"(?:arms?|legs?|hands?|foot|feet|fingers?|limbs?|toes|thigh|calf|forearm|face|thumb)"
_MY = r"(?:(?:my|the|a|one|both|any|whole|left|right|#|of) ){0,4}"

NEARS: tuple[Near, ...] = (
    Near("chest", CHEST, CHEST_STRONG | CHEST_SOFT),
    Near("chest", frozenset({"heart"}), HEART_HURT, 4),
    Near("heart", words_of("palpitations palpitation"), DIZZY, 40, across=True),
    Near("head", HEADACHE, SUDDEN, 9),
    Near("numb", words_of("numb numbness deaf"), LIMBS, 5),
    Near("breath", BREATH, LACKING, 4),
    Near("control", words_of("arm arms leg legs hand hands foot feet"), NOT_OBEYING, 4),
    Near("tingling", TINGLING, WEAK, 16, across=True),
    Near("urine", URINE, DARK, 7),
)

PHRASES: tuple[Phrase, ...] = (
    _phrase(
        "chest",
        "chest breast",
        r"press(?:es|ed|ing) (?:me )?(?:in|on) (?:my |the )?(?:chest|breast)",
        r"(?:sitting|standing|elephant|stone|brick|weight|lies|lying) (?:\S+ ){0,3}(?:on|in) my "
        r"(?:chest|breast)",
    ),
    _phrase(
        "chest",
        "heart",
        (
            r"heart (?:really |also |still )?(?:hurts?|pains?|pain|aches?|is hurting"
            r"|cramps?)(?! (?:for|to|when i see))"
        ),
        (
            r"(?:pains?|pressure|stabbing|stitch|cramp|pressing|tightness) (?:\S+ ){0,5}(?:in"
            r"|at|around|near|of|behind) (?:my |the )?heart"
        ),
        r"(?:having|have|think|like|is|was) (?:\w+ ){0,3}heart attack",
    ),
    _phrase(
        "breath",
        """breathe breath breathing air oxygen wheezing gasping gasp gasped suffocating suffocate suffocated
        short breathless breathlessness""",
        (
            rf"{CANNOT} (?:\w+ )?(?:breathe|breath|get (?:\w+ )?(?:air|breath|oxygen)"
            rf"|catch (?:my|a|any) (?:breath|air))"
        ),
        rf"{CANNOT} get (?:my )?(?:air|breath) (?:in|back)",
        (
            r"(?:trouble|difficult\w*|struggl\w+|hard|problems?|problem with|fighting)(?: with)?"
            r"(?: to| for)? (?:my )?(?:breathe|breathing|breath|air)"
        ),
        (
            r"breathing (?:is|was|feels|felt|gets|got|has been|became|becomes)(?: \w+){0,2} "
            r"(?:hard|difficult|painful|impossible|tough|laboured|labored|shallow)"
        ),
        (
            r"breathing (?:wont|doesnt|does not|will not|isnt) (?:\w+ )?(?:settle"
            r"|calm|come back|slow|settling|calming)"
        ),
        (
            r"wheezing|suffocat\w+|gasp\w* for (?:air|breath)|(?:breath|breathing) (?:is "
            r"|was |gets )?(?:\w+ )?short\b"
        ),
        (
            r"hard to (?:take|get|draw|catch) (?:\w+ ){0,3}(?:breath|air)|(?:breath"
            r"|air) (?:goes|went|is going|is) (?:away|gone)"
        ),
        r"(?:trouble|difficult|difficulty|hard|problem|problems) (?:to )?(?:get|getting|draw|drawing|catch) "
        r"(?:\w+ )?(?:air|breath)",
        r"gasping",
        r"short(?:ness)? of (?:breath|air)",
        r"(?:no|bad|too little|so little|little|not enough|hardly any|barely any) air(?! con)",
        r"breathless (?:that )?(?:i )?(?:cant|couldnt|had to|have to|cannot)",
    ),
    _phrase(
        "breath",
        "breath breathless breathlessness breathing puffing winded",
        (
            r"(?:out of breath|breathless\w*|breathing (?:is |was )?(?:hard|heavy"
            r"|heavily)|puffing|winded) (?:\S+ ){0,8}(?:sitting|rest|resting|still"
            r"|minutes?|min|lying|walking|nothing|even|hours?|for no reason|calm"
            r"|not normal|stairs|talking|shoes|kitchen|shower|car|bed|just (?:\w+ )?\w+ing)"
        ),
        r"(?:sitting|resting|lying|still|even) (?:\S+ ){0,5}(?:out of breath|breathless)",
    ),
    _phrase(
        "faint",
        """fainted fainting faint blacked black blacking blackout consciousness unconscious passed pass
        passing collapsed keeled keel greyed grey dark stars floor ground fell fall fallen dizzy headed
        lightheaded woke came collapse syncope cold eyes vision gone away out faded wake waking
        tunnel""",
        (
            r"fainted|fainting|keel(?:ed|ing)? over|lost consciousness"
            r"|unconscious|pass(?:ed|ing|es)? out(?! flyers"
            r"| the| leaflets)|syncope"
        ),
        (
            r"blacked out(?! the| my| a)|black(?:ing)? out(?! the| my| a| curtains"
            r"| blinds)|had a (?:short |brief |little )?blackout|blackout (?:for"
            r"|during|on|after|in) (?:a|the|my|#|some|squats?)"
        ),
        (
            r"(?:i |ive |almost |nearly |just )collapsed|collapsed (?:in|at|after"
            r"|during|on the (?:floor|ground|platform|gym))|collapse(?:d)?(?= (?:in the (?:shower"
            r"|gym|changing)))"
        ),
        (
            r"(?:was|been) (?:gone|away|out) for (?:a|some|a few|#) (?:\w+ )?(?:moments?"
            r"|seconds?|secs?|minutes?)"
        ),
        r"(?:nearly|almost) went out (?:during|on|at|in|mid)|everything (?:faded|went fuzzy|got dark)",
        r"(?:people|they|someone|somebody|partner|spotter|he|she)(?: \w+){0,3} (?:wake|woke|waking) me",
        r"tunnel vision|woke (?:up )?on the (?!sofa|couch|bed|wrong|right|plane|train|bus)",
        r"out cold(?! water)|eyes (?:went|go|got|turned|became|were) (?:black|dark)",
        r"greyed out|grey(?:ing)? out",
        (
            r"(?:felt|feel|feeling|was|am|im|came over|nearly|almost|close to"
            r"|to|gonna|get|got|so|very|bit|quite) (?:a |very |so |really |bit "
            r"|quite |little )*faint"
        ),
        r"faint (?:feeling|and|after|during|on|in|at|spell)",
        (
            r"(?:went|going|everything|vision|all|became|became all|was|turned"
            r"|gone) (?:\w+ )?(?:black|dark) (?:\S+ ){0,3}(?:eyes|vision|moment"
            r"|second|seconds|sec|standing|stood|me)"
        ),
        (
            r"black (?:before|in front of) my eyes|everything (?:went|goes|turned"
            r"|became) (?:black|dark)|vision (?:went|goes|gone|going|turned) (?:black"
            r"|dark|grey)"
        ),
        (
            r"(?:so |that |too )?(?:dizzy|light ?headed|lightheaded|woozy)(?: that)?(?: i)? "
            r"(?:fell|almost fell|nearly fell|almost went|had to (?:lie|sit|hold)"
            r"|collapsed)"
        ),
        (
            r"(?:dizzy|light ?headed|lightheaded) (?:\S+ ){0,3}(?:fell over|fell down"
            r"|fell to|on the floor|collapsed)"
        ),
        (
            r"(?:woke up|came to|came round|came around|next thing i (?:know|knew"
            r"|remember)) (?:\S+ ){0,5}(?:floor|ground|deck)"
        ),
        r"saw stars and (?:\w+ ){0,3}(?:fell|fall|keel\w*|down|over)",
    ),
    _phrase(
        "head",
        "head",
        rf"(?:{_SUDDEN})(?: \S+){{0,4}} head (?:\w+ )?(?:hurts?|pains?|is hurting)",
        (
            r"head (?:\S+ ){0,6}(?:splitting|bursting) (?:open|apart|suddenly"
            r"|sudden)|head (?:\S+ ){0,6}(?:splitting|bursting) (?:\S+ ){0,3}sudden\w*"
        ),
        r"head (?:\w+ )?hurts? (?:\S+ ){0,4}(?:extremely|suddenly|terribly|like never|never had)",
        (
            r"head (?:\w+ ){0,3}(?:exploded|exploding|explode|explodes) (?:\S+ ){0,6}(?:pain"
            r"|headache|sudden|suddenly)"
        ),
        (
            rf"(?:{_SUDDEN})(?: \S+){{0,7}} (?:head pain|pain (?:\w+ ){{0,2}}(?:in"
            rf"|of|at|behind) (?:\S+ ){{0,4}}head)"
        ),
        (
            r"(?:head pain|pain (?:\w+ ){0,2}(?:in|of|at) (?:\S+ ){0,4}head) (?:\S+ ){0,8}"
            r"(?:nowhere|suddenly|sudden|worst|thunderclap|explosion|never before)"
        ),
    ),
    _phrase(
        "head",
        "headache headaches migraine",
        (
            r"(?:headaches?|migraine) (?:\S+ ){0,8}(?:like never before|like a (?:bomb"
            r"|hammer|bolt|lightning|flash|knife|blow)|in (?:one|a) (?:second"
            r"|moment|instant))"
        ),
        r"came (?:on )?(?:in one|like a|all at once|out of) (?:\S+ ){0,5}headache",
    ),
    _phrase(
        "numb",
        "feel feeling sensation numb numbness asleep",
        rf"{CANNOT} (?:\w+ )?feel (?:anything in )?{_MY}{_LIMB}",
        (
            rf"(?:do not|dont|did not|didnt) (?:\w+ )?feel (?:anything in )?(?:my"
            rf"|the) (?:\w+ )?{_LIMB} (?:any ?more|anymore|at all|since|properly)"
        ),
        (
            rf"(?:no|little|less|hardly any|barely any|lost|losing|loss of"
            rf"|without|zero) (?:\w+ )?(?:feeling|sensation) (?:\w+ )?(?:in|on|of) {_MY}{_LIMB}"
        ),
        rf"feel nothing (?:\w+ )?(?:in|on) {_MY}{_LIMB}",
        r"(?:dont|cant|cannot|no) (?:feel|feeling) (?:anything |nothing )?between my legs",
        (
            rf"{_LIMB} (?:\w+ )?(?:is|are|fell|went|has fallen) asleep (?:\S+ ){{0,6}}(?:since"
            rf"|days?|hours?|still|weeks?)"
        ),
        r"(?:cant|cannot|dont|couldnt) (?:\w+ )?feel (?:my|the|one) (?:(?:left|right|whole) )?side",
        r"numb (?:between|around) my (?:legs|groin|saddle|crotch|buttocks)",
    ),
    _phrase(
        "control",
        """control move lift raise droopy drooping droops paralysed paralyzed limp obey obeying obeys
        hangs hanging hang drags dragging drag drops dropping flops flopping slurred tell want stroke
        lame close open respond react grip slaps slapping wanted tried""",
        rf"(?:lost|losing|lose|loss of|no) (?:\w+ )?control (?:of|over|in) {_MY}{_LIMB}",
        (
            rf"{CANNOT} (?:\w+ )?(?:move|control|lift|raise) (?:my|the|one|his) (?:\w+ )?(?:arms?"
            rf"|legs?|foot|feet|hands?|fingers|toes)"
        ),
        (
            rf"{_LIMB} (?:\S+ ){{0,4}}(?:paraly[sz]ed|wont move|doesnt move|does not move"
            rf"|would not move|wouldnt move|(?:wont|doesnt|does not|didnt|not|wouldnt"
            rf"|would not|will not) obey\w*|hangs? limp|just hangs?|hanging|went limp"
            rf"|is limp|gone limp|gave way and)"
        ),
        rf"{_LIMB} (?:wont|doesnt|does not|didnt|will not|would not) (?:\w+ )?do what i (?:tell|want|say)",
        rf"{_LIMB} (?:\S+ ){{0,4}}(?:(?:wont|doesnt|does not|will not) (?:close|open|respond|react)"
        rf"|(?:did not|didnt|not|does not|doesnt) (?:react|respond))",
        rf"{_LIMB} (?:\S+ ){{0,6}}{CANNOT} control (?:it|them)|{CANNOT} grip anything",
        r"foot (?:\w+ )?(?:slaps|slapping)|(?:wanted|tried) to (?:lift|move"
        r"|raise) my (?:\w+ )?(?:arm|leg|hand|foot)"
        r"(?: \S+){0,5} (?:not|nothing|didnt|wouldnt)",
        r"(?:foot|leg) (?:\w+ )?(?:drops|dropping|drags|dragging|flops|flopping)",
        r"(?:dragging|drag) my (?:\w+ )?(?:foot|leg)|keeps? (?:flopping|dropping|dragging)",
        (
            r"(?:face|mouth|eye) (?:\S+ ){0,3}(?:droopy|drooping|droops|hanging)"
            r"|slurred speech|speech (?:is |was |got )?slurred|(?:having|have"
            r"|think|like) (?:\w+ ){0,3}a stroke(?! of)"
        ),
    ),
    _phrase(
        "bladder",
        """wet peed pissed weed control bladder hold incontinent incontinence leak leaking leaked pee wee
        urine water bowels bowel feel""",
        r"(?:wet|peed|pissed|weed) (?:myself|my (?:pants|trousers|shorts|leggings|self))",
        (
            r"(?:lost|lose|losing|loss of|no) (?:\w+ )?control (?:of|over) (?:my "
            r"|the )?(?:bladder|pee|wee|urine|bowels?)"
        ),
        rf"{CANNOT} (?:\w+ )?(?:hold|control|feel) (?:my |the )?(?:bladder|pee|wee|urine|bowels?|water)",
        (
            r"incontinen\w+|(?:lost|no|loss of) (?:bladder|bowel) control|bladder (?:just went"
            r"|emptied|gave|control (?:is|was) gone)"
        ),
        rf"(?:{CANNOT}|dont|do not) feel when i (?:\w+ )?(?:need|have) to (?:pee|wee|go|urinate)",
        r"(?:leak|leaking|leaked) (?:\w+ )?(?:urine|pee|wee)",
    ),
    _phrase(
        "urine",
        "passing water",
        r"passing (?:dark|brown|blood|red)",
        r"my water (?:is|was|looks|looked)(?: \S+){0,3} (?:dark|brown|tea|cola|coke|black|red)",
    ),
)

CANNOT_USE = re.compile(
    rf"\b(?:{CANNOT} (?:\w+ ){{0,3}}(?:walk|stand|bear|put|move|bend|straighten"
    rf"|lift|raise|load|step|extend|weight|turn|use|flex|grip|rotate)"
    r"|(?:wont|doesnt|does not|will not) (?:go up|bend|move|straighten|lift|take (?:\w+ )?weight)"
    r"|no weight (?:on|through)|cant at all)\b"
)
"""What a joint or a limb cannot do any more, beside a pop."""
