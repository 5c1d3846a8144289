"""Words about the body, as data: its parts, what hurts, what is only tired, and figures of speech."""

from domain.reading.request import Place
from domain.reading.words import words_of

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
    ("ab", "muscle"): "abdomen",
    ("ab", "muscles"): "abdomen",
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
    ("plantar",): "foot",
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
ONE_OF_EACH = words_of("necks backs spines stomachs chests groins")
"""Parts of which everybody has one, with the "s" of "is" or "has" and no sign before it: "my necks stiff"."""
GEAR = words_of(
    """sleeve sleeves wrap wraps strap straps brace pad pads support supports guard guards warmer warmers
    weights band bands belt monitor"""
)
"""What is worn on a part; what is said of it is not said of the part."""
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
    ow ouch ouchie stabby stinging stings sting painfully seized spasm spasms spasming bruised pinchy
    cricked crick irritated jarred splints fasciitis sciatica stubbed ouchy"""
)
NEEDS_PART = words_of(
    """sharp pinch pinches pinched pinching tweaked tweak tweaks tweaking strained strain straining pulled
    swollen swelling swelled throbbing throbs throb sprained sprain injured injury inflamed torn tore
    shooting bothering stab stabs stabbing stabbed flared flaring nagging dislocated twinge twinges
    twinged twingey niggle niggles niggling niggly jabbing agony hurted unhappy straining ow ouch ouchie
    stabby stinging stings sting seized spasm spasms spasming bruised painfully pinchy cricked crick
    irritated jarred splints fasciitis sciatica stubbed ouchy"""
)
"""Words that tell of pain only beside a part of the body."""
ACHE = words_of(
    """ache aches achy aching ached achey sore soreness stiff stiffness stiffened tender clicks clicking
    clicky clicked grumpy cranky creaky screaming grumbling grumbly dodgy iffy"""
)
"""Words that tell of pain in a joint, the neck or the back; in a muscle only with a score."""
CLICKS = frozenset({"clicks", "clicking", "clicky", "clicked", "creaky"})

NEGATIONS = words_of(
    """no not without never didnt doesnt dont isnt wasnt arent werent nothing zero none neither nor hardly
    havent hasnt aint didn doesn free cant couldnt minus nil 0 wont ohne deny denies denied"""
)
UNTIL = frozenset({"until", "till", "til", "except", "unless"})
JOKE_WORDS = words_of("""lol haha hahaha lmao lmfao rofl jk joking kidding hehe hah ha 😂 🤣 💀 ☠ 😆 😹""")
