"""What takes the meaning out of a warning sign: denials, other people, stories, jokes and trained muscles.

Data only; patterns are over the plain line of a message.
"""

import re

from domain.reading.danger_words import Sign
from domain.reading.words import PERSONS, words_of

EXERCISE_AFTER = words_of(
    """press day supported fly flies workout machine dip dips expander pass height size hair exercises
    exercise pump muscle muscles session"""
)
"""Words after "chest" that make it an exercise or its muscle."""
TRAINED_CHEST = re.compile(
    r"\b(?:muscles?|muscular|pecs?|sore|soreness|doms|pump|pumped|stretch\w*"
    r"|foam|shirts?|jacket|bra|jersey|growing|grow"
    r"|(?:weights?|bar|barbell|dumbbells?|plates?|disc|kg|bell|sandbag|ball"
    r"|vest|backpack|belt)(?: \S+){0,5} (?:on|to|against|at|across) (?:my "
    r"|the )?chest"
    r"|(?:touch\w*|paus\w*|off|to|onto) (?:my |the )?chest"
    r"|chest (?:at |with |on )?(?:the |my )?(?:same|usual) (?:weights?|load))\b"
)
"""The chest as a place that the bar comes to, or as a trained muscle."""
CHEST_WITH_A_SET = re.compile(r"(?<!my )(?<!the )\bchest (?:\S+ ){0,3}# ?(?:x|for|kgs?|lbs?|reps?|s)\b")
"""The chest as the short name of an exercise."""
TRAINING_NEAR = words_of(
    """bench benched benching press presses pressing flies fly flys dip dips pushups push pullover pullovers
    workout yesterday touch touched pause paused up big wide proud tall"""
)
SURELY_CHEST = re.compile(
    r"\b(?:feels? (?:\S+ ){0,3}(?:weight|brick|stone|band|elephant) (?:\S+ ){0,2}(?:on"
    r"|around) (?:my|the) chest"
    r"|chest (?:is |was )?(?:pains?|hurts?|pressure|tightness)|(?:pains?"
    r"|pressure|tightness|press(?:es|ing)) (?:\S+ ){0,2}(?:in|on|behind) (?:my"
    r"|the) (?:chest|breast))\b"
)

SERIOUS = re.compile(
    r"\b(?:not funny|no joke|not a joke|not joking|seriously|serious|still"
    r"|since|hours?|yesterday|days?|worried|scared|now)\b"
)
"""Words that take the joke out of a sign."""
LASTING = re.compile(r"\b(?:since|days?|hours? now|hours? later|still|yesterday|weeks?|does not wake)\b")
"""Words that take the harmless out of a numb limb."""
_ASLEEP = (
    r"asleep|sleep(?:ing)?|slept|on (?:the|my) (?:sofa|couch|bed)|(?:in|to) (?:my )?bed"
    r"|boredom|bored|good ?night|night coach|ate|eating|dinner|buffet"
)
_STORY = r"movie|film|series|episode|novel|the hero|documentary|podcast"
_FUN = r"laugh\w*|giggl\w*|price|prices|the bill|when i saw|kidding|jk|hilarious"
_FIGURE_WAYS: dict[Sign, tuple[str, ...]] = {
    "chest": (
        r"off my chest|treasure chest|just kidding",
        r"heart attack when|(?:nearly|almost) (?:\w+ )?(?:a )?heart attack",
        r"hurts? (?:\w+ )?(?:seeing|to see|to watch|watching)",
    ),
    "breath": (
        _FUN,
        r"hold(?:ing)? my breath|breath of fresh|tak\w+ my breath|took my breath",
        r"(?<!not )(?:normal for me|as always|as usual|like always)",
        r"breathing (?:exercise|technique|pattern|cue)|brac(?:e|ing)",
    ),
    "faint": (_ASLEEP, _FUN, r"needle", r"faint (?:hope|idea|memory|line|smell)", r"cheese"),
    "heart": (_FUN,),
    "head": (r"headache to", _FUN),
    "numb": (_ASLEEP, _FUN, r"cold|ice|icy|freezing|frozen|winter|snow|dentist|sat on|dental|gloves"),
    "tingling": (r"excit\w+", _FUN),
    "control": (_FUN,),
    "pop": (_FUN,),
    "urine": (r"kidding",),
    "bladder": (_FUN, r"(?:nearly|almost) (?:\S+ ){0,4}(?:when|because)"),
}
FIGURES = {sign: re.compile(rf"\b(?:{'|'.join((_STORY, *ways))})\b") for sign, ways in _FIGURE_WAYS.items()}
"""Figures of speech, by the sign that they sound like."""
JESTED: frozenset[Sign] = frozenset({"numb", "control", "breath", "bladder"})
"""Signs that are often said in jest of a hard set."""

DENYING = words_of(
    """no not without never didnt dont doesnt isnt wasnt havent hasnt deny denies denied neither nor none
    zero arent werent nothing nil"""
)
NOT_DENYING_AFTER = words_of(
    """sure certain great good well only just joke idea kidding funny lying know believe wrong normal longer
    understand"""
)
"""Words after "not", "no" or "dont" that make it no denial: "not sure", "no joke", "dont know"."""
SYMPTOMS = words_of(
    """chest pain pains pressure dizziness dizzy fainting faint numbness numb tingling weakness weak
    breathlessness breathless palpitations palpitation headache headaches shortness of breath short or
    nor any kind sort other signs symptoms anything like that such unusual real sudden severe bad
    discomfort tightness heart blackout blackouts nausea sweating trouble breathing problems dark urine
    pins needles loss feeling control bladder legs leg arm arms hands hand feet in my the"""
)
"""Words of a list of symptoms, all of which a "no" at its head denies."""
ANSWERED_NO = re.compile(
    r" ?(?:[?:=-] ?)?(?:no|nope|none|negative|nil|never|nothing|n)(?= [.,;!)\n/]"
    r"|$| thanks| thank| so far| at all)"
)
THOUGHT_OF = re.compile(
    r"\b(?:if i|if you|if my|in case|what if|would it be|should i ever|article"
    r"|read (?:about|that)|reading about|warned|warn|leaflet|checklist"
    r"|you asked|signs (?:of|like)|happens? if|wondering what|lesson|training course|first aid)\b"
)
IN_GENERAL = re.compile(
    r"^(?:does|do|can|could|why do|why does|how common|how often|is it (?:true"
    r"|common))\b(?=.*\b(?:happen|happens|common|cause|people|everyone|anyone"
    r"|often)\b)"
    r"(?!.*\b(?:i|my|me|ive|im)\b)"
)
BESIDE_ME = re.compile(
    r"\b(?:next to|beside|behind|in front of|near|opposite|with|at|in|from"
    r"|on|of|to|around|by|across from) (?:me|my)\b"
)
ME = re.compile(r"\b(?:i|my|ive|im|me|mine|myself)\b")
SOMEBODY_FIRST = re.compile(
    rf"^(?:\W*(?:and|so|but|well|yesterday|today|lol|haha) )*(?:my|our|the"
    rf"|a|some|one)? ?(?:\w+ )?(?:{PERSONS})s? "
)
GOES_ON = words_of("had has have got is was were who whose he she they his her their")
