"""Words about the body, as data: its parts, what hurts, what is only tired, and figures of speech."""

import re

from domain.reading.patterns import Pattern
from domain.reading.request import Place
from domain.reading.words import PERSON_WORDS, PERSONS, words_of

PARTS: dict[tuple[str, ...], Place] = {
    ("neck",): "neck",
    ("nape",): "neck",
    ("shoulder",): "shoulder",
    ("shoulders",): "shoulder",
    ("sholder",): "shoulder",
    ("shoulderjoint",): "shoulder",
    ("delt",): "shoulder",
    ("delts",): "shoulder",
    ("rotator", "cuff"): "shoulder",
    ("rotator",): "shoulder",
    ("collarbone",): "shoulder",
    ("collar", "bone"): "shoulder",
    ("ac", "joint"): "shoulder",
    ("bicep",): "upper arm",
    ("biceps",): "upper arm",
    ("tricep",): "upper arm",
    ("triceps",): "upper arm",
    ("upper", "arm"): "upper arm",
    ("upper", "arms"): "upper arm",
    ("elbow",): "elbow",
    ("elbows",): "elbow",
    ("forearm",): "forearm",
    ("forearms",): "forearm",
    ("wrist",): "wrist",
    ("wrists",): "wrist",
    ("hand",): "hand",
    ("hands",): "hand",
    ("finger",): "hand",
    ("fingers",): "hand",
    ("thumb",): "hand",
    ("thumbs",): "hand",
    ("palm",): "hand",
    ("palms",): "hand",
    ("knuckle",): "hand",
    ("knuckles",): "hand",
    ("upper", "back"): "upper back",
    ("between", "my", "shoulder", "blades"): "upper back",
    ("between", "the", "shoulder", "blades"): "upper back",
    ("shoulder", "blade"): "upper back",
    ("shoulder", "blades"): "upper back",
    ("trap",): "upper back",
    ("traps",): "upper back",
    ("lower", "back"): "lower back",
    ("low", "back"): "lower back",
    ("lowerback",): "lower back",
    ("lumbar",): "lower back",
    ("tailbone",): "lower back",
    ("si", "joint"): "lower back",
    ("small", "of", "my", "back"): "lower back",
    ("small", "of", "the", "back"): "lower back",
    ("bottom", "of", "my", "back"): "lower back",
    ("base", "of", "my", "back"): "lower back",
    ("base", "of", "my", "spine"): "lower back",
    ("back", "of", "my", "knee"): "knee",
    ("back", "of", "the", "knee"): "knee",
    ("back", "of", "my", "left", "knee"): "knee",
    ("back", "of", "my", "right", "knee"): "knee",
    ("back", "of", "my", "thigh"): "thigh",
    ("back", "of", "my", "neck"): "neck",
    ("back", "of", "the", "neck"): "neck",
    ("back", "of", "my", "head"): "head",
    ("back", "of", "the", "head"): "head",
    ("back", "of", "my", "shoulder"): "shoulder",
    ("back",): "back",
    ("backache",): "back",
    ("spine",): "back",
    ("lat",): "back",
    ("lats",): "back",
    ("chest",): "chest",
    ("breast",): "chest",
    ("breastbone",): "chest",
    ("sternum",): "chest",
    ("pec",): "chest",
    ("pecs",): "chest",
    ("rib",): "chest",
    ("ribs",): "chest",
    ("ribcage",): "chest",
    ("abdomen",): "abdomen",
    ("stomach",): "abdomen",
    ("tummy",): "abdomen",
    ("belly",): "abdomen",
    ("abs",): "abdomen",
    ("core",): "abdomen",
    ("obliques",): "abdomen",
    ("oblique",): "abdomen",
    ("hip",): "hip",
    ("hips",): "hip",
    ("hip", "flexor"): "hip",
    ("hip", "flexors"): "hip",
    ("glute",): "hip",
    ("glutes",): "hip",
    ("butt",): "hip",
    ("bum",): "hip",
    ("buttock",): "hip",
    ("buttocks",): "hip",
    ("groin",): "groin",
    ("adductor",): "groin",
    ("adductors",): "groin",
    ("inner", "thigh"): "thigh",
    ("thigh",): "thigh",
    ("thighs",): "thigh",
    ("quad",): "thigh",
    ("quads",): "thigh",
    ("quadricep",): "thigh",
    ("quadriceps",): "thigh",
    ("hamstring",): "thigh",
    ("hamstrings",): "thigh",
    ("hammy",): "thigh",
    ("hammies",): "thigh",
    ("hammie",): "thigh",
    ("it", "band"): "thigh",
    ("knee",): "knee",
    ("knees",): "knee",
    ("kneecap",): "knee",
    ("kneecaps",): "knee",
    ("knee", "cap"): "knee",
    ("patella",): "knee",
    ("meniscus",): "knee",
    ("calf",): "calf",
    ("calves",): "calf",
    ("calfs",): "calf",
    ("shin",): "calf",
    ("shins",): "calf",
    ("ankle",): "ankle",
    ("ankles",): "ankle",
    ("achilles",): "ankle",
    ("achilles", "tendon"): "ankle",
    ("foot",): "foot",
    ("feet",): "foot",
    ("heel",): "foot",
    ("heels",): "foot",
    ("toe",): "foot",
    ("toes",): "foot",
    ("arch",): "foot",
    ("sole",): "foot",
    ("head",): "head",
    ("headache",): "head",
    ("headaches",): "head",
    ("migraine",): "head",
    ("jaw",): "head",
    ("temple",): "head",
    ("temples",): "head",
    ("arm",): "other",
    ("arms",): "other",
    ("leg",): "other",
    ("legs",): "other",
}
"""Parts by the words for them."""

LONGEST_PART = max(map(len, PARTS))
PART_FIRST = frozenset(words[0] for words in PARTS)
MIDDLE: frozenset[Place] = frozenset({"neck", "upper back", "lower back", "back", "chest", "abdomen", "head"})
JOINTS: frozenset[Place] = frozenset(
    {
        "neck",
        "shoulder",
        "elbow",
        "wrist",
        "hand",
        "upper back",
        "lower back",
        "back",
        "hip",
        "knee",
        "ankle",
        "foot",
    }
)
MUSCLES = words_of(
    """delt delts bicep biceps tricep triceps trap traps lat lats pec pecs abs core oblique obliques glute
    glutes butt bum buttock buttocks quad quads hamstring hamstrings hammy hammies calf calves thigh
    thighs forearm forearms adductor adductors feet hands palms"""
)
"""Words for a part that mean its muscles, which are sore without harm."""
PLURALS = words_of(
    """shoulders delts biceps triceps elbows forearms wrists hands fingers thumbs palms hips glutes buttocks
    thighs quads quadriceps hamstrings hammies knees kneecaps calves calfs shins ankles feet heels toes
    arms legs adductors traps lats pecs knuckles"""
)
NOT_TWO = frozenset(
    {"fingers", "toes", "traps", "lats", "pecs", "knuckles", "biceps", "triceps", "quadriceps"}
)
"""Plural words that do not mean both sides."""

HURT = words_of(
    """hurt hurts hurting hurted hurtin pain pains painful painfull paining stabbing stabs stab stabbed
    sharp pinch pinches pinched pinching tweaked tweak tweaks tweaking strained strain straining pulled
    swollen swelling swelled twinge twinges twinged twingey throbbing throbs throb sprained sprain
    injured injury agony inflamed niggle niggles niggling niggly jabbing torn tore shooting bothering
    headache headaches migraine backache flared flaring tendinitis tendonitis dislocated nagging unhappy
    ow ouch ouchie stabby stinging stings sting painfully seized spasm spasms spasming bruised"""
)
NEEDS_PART = words_of(
    """sharp pinch pinches pinched pinching tweaked tweak tweaks tweaking strained strain straining pulled
    swollen swelling swelled throbbing throbs throb sprained sprain injured injury inflamed torn tore
    shooting bothering stab stabs stabbing stabbed flared flaring nagging dislocated twinge twinges
    twinged twingey niggle niggles niggling niggly jabbing agony hurted unhappy straining ow ouch ouchie
    stabby stinging stings sting seized spasm spasms spasming bruised painfully"""
)
"""Words that tell of pain only beside a part of the body."""
ACHE = words_of(
    """ache aches achy aching ached achey sore soreness stiff stiffness stiffened tender clicks clicking
    clicky clicked grumpy cranky creaky screaming"""
)
"""Words that tell of pain in a joint, the neck or the back; in a muscle only with a score."""
CLICKS = frozenset({"clicks", "clicking", "clicky", "clicked", "creaky"})
TRIGGERS = (
    HURT
    | ACHE
    | words_of(
        """killing something felt snap tear tweak playing acting bothers pop popped trouble gives gave
    bugging giving grief complaining screaming bad pulls"""
    )
)

NEGATIONS = words_of(
    """no not without never didnt doesnt dont isnt wasnt arent werent nothing zero none neither nor hardly
    havent hasnt aint didn doesn free cant couldnt minus nil 0 wont ohne deny denies denied"""
)
UNTIL = frozenset({"until", "till", "til", "except", "unless"})
OVER_NOW = re.compile(
    r"\b(?:(?:is |its |feels? |all |are |was |were |seems? |totally |completely |much |now )?(?:fine|good"
    r"|ok|okay|chill|better|great|gone|alright|healed|cured|happy|sorted) (?:now|again|today|anymore"
    r"|though)"
    r"|(?:(?:pains?|headaches?|ache|soreness) (?:is |are |has )?gone|no longer"
    r"|any ?more|anymore|not any more|went away|gone away|has gone|is gone"
    r"|are gone|all gone|cleared up|disappeared|vanished|pain free|painfree|painless|healed|recovered"
    r"|back to normal|stopped hurting|settled)"
    r"|now (?:its |it is |theyre )?(?:fine|good|ok|okay|better|gone|great|all good))\b"
)
STILL = frozenset({"still", "again", "worse"})
LONG_PAST = re.compile(
    r"\b(?:used to|last (?:year|month|season|winter|summer|spring|autumn)|(?:years?|months?|decades?) ago"
    r"|ages ago|back in #(?! (?:days?|hours?|min|mins|minutes|sec|secs|weeks?"
    r"|months?)\b)|as a (?:kid|child|teenager)|when i was|old (?:\w+ ){0,2}injury"
    r"|childhood|in my (?:twenties|teens|thirties|youth)|back then|years back|months back|in the past)(?!\w)"
)
CONDITIONAL = re.compile(
    r"\b(?:if|in case|whenever|unless|should i feel|what happens when|worried (?:about|that)|afraid (?:of"
    r"|that)|scared (?:of|that)|avoid|prevent|preventing|hope|hoping|so that|dont want|wouldnt want"
    r"|before it|supposed to|will|gonna|going to|might|could|meant to|does it mean)\b"
)
FIGURES = re.compile(
    r"\b(?:pain in the (?:neck|ass|arse|butt|bum|backside|rear|rump)|pain in my (?:ass|arse|butt"
    r"|backside)|painfully (?:slow\w*|obvious|early|long|heavy|hard|boring|aware|close|clear|honest|late)|"
    r"hurts? from (?:all the )?(?:laughing|smiling|grinning)|hurts? (?:\w+ )?in (?:a"
    r"|the) (?:good|best) way|headache to \w+"
    r"|headache for me|screaming (?:at|kids)|"
    r"no pain (?:,? ?)no gain|pain to (?:park|set|get|load|find|book|carry|clean|log|type|reach|sort)"
    r"|(?:such|what|real|bit of|is|was|are) an? (?:absolute |total |real |right |royal |huge "
    r"|proper )?pain(?! in (?:my|the)\b)(?! (?:here|there|when|near|under|behind|around))|"
    r"pain cave|feel the pain|(?:my )?(?:wallet|bank account|purse|pride|ego|feelings|soul|heart|brain"
    r"|eyes|ears|bank balance)(?: \w+)? (?:hurts?|aches?|is hurting)|hurts? (?:my|the|your|his"
    r"|her) (?:wallet|pride|ego|feelings|soul|heart|brain|eyes|ears|bank)|"
    r"(?:doesnt|dont|didnt|wouldnt|cant|wont|never) hurt to|wouldnt hurt|hurts? so good|hurt so good"
    r"|good pain|good hurt|"
    r"swollen (?:head|ego)|big head|sharp (?:at )?#|# sharp|# (?:am|pm|oclock) sharp|look(?:ing|s"
    r"|ed)? sharp|stay sharp|"
    r"pulled (?:it|this|that) off|pulled through|pulled out|pulled up|pulled over|pulled an all|pain au"
    r"|growing pains|"
    r"hurting for(?! (?:a|#|days|weeks|months|ages|some|about|over)\b)|hurts to (?:look"
    r"|watch|see|say|admit|think|leave|miss|pay)|sore (?:loser|subject|point"
    r"|spot with)|achievement|"
    r"(?:stairs?|steps|you|this|that|it|work|traffic|commute|heat|boss|programme|program|coach|squats"
    r"|lunges|workout|exams?|kids) (?:is|are|were|was|r) killing me|"
    r"bleeding heart|heartache|cold sore|sore throat|stiff (?:drink|competition|upper lip)"
    r"|stiff leg(?:ged)?|neck and neck|pinch (?:me|of)|plate pinch\w*|pinch (?:grip|hold)|at a pinch"
    r"|sharp(?:er)? (?:knife|knives|suit|shirt|turn|dresser|outfit|focus|contrast|increase)"
    r"|strained (?:relationship|voice)|no strain no gain)\b"
)
STORY = re.compile(
    r"\b(?:movie|film|series|episode|novel|hero|documentary|podcast|article|leaflet|checklist|lesson)\b"
)
"""What is told of in a story, a lesson or a list, and of nobody here."""
JOKE_WORDS = words_of("""lol haha hahaha lmao lmfao rofl jk joking kidding hehe hah ha 😂 🤣 💀 ☠ 😆 😹""")

_KIN = "mum|mom|dad|wife|husband|hubby|son|daughter|brother|sister|gran|kids?|partner"
_OF_THE_TRADE = "coach|client|clients|patient|teacher|pupil"
OTHERS = re.compile(
    r"\b(?:"
    + "|".join(
        (
            rf"(?:my|our|his|her|their|the|a|some|this|that|your)(?: \w+)? (?:{PERSONS})s?",
            rf"(?:{PERSONS})s",
            rf"(?<!like )(?:{PERSONS}) (?:has|had|was|got|hurt|pulled|strained|tweaked|fainted|passed)",
            rf"(?:{_KIN}) (?:is|are)",
            rf"(?:my|the|a|another|our) (?:other |old )?(?:{_OF_THE_TRADE})",
            r"coach (?:at|of|in) (?:the|another)",
            r"he|she|his|her|hers|their|theyre|shes|hes|they|cat|cats|dog|dogs|horse",
        )
    )
    + r")\b"
)
"""Another person or an animal, of whom something is told."""
_SEVERAL = frozenset(f"{word}s" for word in PERSON_WORDS)
SOMEBODY_ELSE = Pattern(
    """
    (my|our|his|her|their|the|a|some|this|that|your) ..1 ({person}|{persons})
    {persons}
    <!(like) {person} (has|had|was|got|hurt|pulled|strained|tweaked|fainted|passed)
    {kin} (is|are)
    (my|the|a|another|our) [other|old] {of_the_trade}
    coach (at|of|in) (the|another)
    he|she|his|her|hers|their|theyre|shes|hes|they
    cat|cats|dog|dogs|horse
""",
    person=PERSON_WORDS,
    persons=_SEVERAL,
    kin=words_of("mum mom dad wife husband hubby son daughter brother sister gran kid kids partner"),
    of_the_trade=words_of("coach client clients patient teacher pupil"),
)
"""Another person or an animal, of whom something is told."""
SUBORDINATE = words_of(
    """when while whilst whenever as during after before because from since on if at with lifting doing
    bending raising"""
)
