"""Words of warning signs, as data: what each sign is told by.

Here a place and a feeling near each other, in any order: "pressure in my chest", "the chest, it presses".
Fixed turns of phrase are next door.
"""

from dataclasses import dataclass
from typing import Literal

from domain.reading.patterns import Pattern
from domain.reading.words import words_of

Sign = Literal[
    "chest",
    "breath",
    "faint",
    "heart",
    "head",
    "numb",
    "tingling",
    "control",
    "pop",
    "urine",
    "bladder",
    "call for help",
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


CHEST = words_of("chest breastbone sternum breast")
CHEST_STRONG = words_of(
    """pain pains hurt hurts hurted hurting paining pressure tightness crushing squeezing stabbing pressing
    painful discomfort gripping clutching constricted"""
)
CHEST_SOFT = words_of(
    """tight squeeze squeezed heavy heaviness stab ache aches aching burning burn burns presses pressed
    sharp cramp cramping sitting standing elephant stone lies band twinge twinges tighten tightens
    tightened tightening vice vise clamp clamped rope brick choking suffocating compressed constricted
    squashed crushed killing kills"""
)
"""Feelings in the chest that hard training gives as well: none beside words of training."""
LIMBS = words_of(
    """arm arms leg legs hand hands foot foots feet finger fingers limb limbs toes toe thigh calf forearm face
    thumb side shoulder knee wrist groin saddle crotch"""
)
HEART_HURT = words_of("tight tightness pressure pain pains stabbing squeezing squeezed cramp burning sharp")
BREATH = words_of("breath breathe breathing breathes air oxygen lungs")
LACKING = words_of(
    """trouble difficult difficulty difficulties problem problems struggle struggles struggling lack
    shortness barely hardly impossible shallow painful cant couldnt unable fighting"""
)
NOT_OBEYING = words_of(
    """hangs dangles limp paralysed paralyzed lame drags dragging flops flopping slaps slapping
    unresponsive"""
)
DIZZY = words_of(
    """dizzy dizziness lightheaded lightheadedness giddy giddiness headedness woozy
    spinning spins spots headed faint
    fainting swaying swimming unsteady wobbly blurry"""
)
HEART = words_of("heart hearts heartbeat heartbeats pulse ticker")
HEART_ODD = words_of(
    """racing raced races pounding pounded skipping skips skipped flutter fluttering flutters fluttered
    jumping jumps stumbling stumbles stumbled irregular irregularly crazy wild mad weird weirdly funny
    hammering galloping thumping thumped beating beats bananas over flipping uneven odd strange strangely
    mental flop flops flopping flopped flip flips flipped somersault somersaults backflips fish thud
    thudding thuds missing missed pounds jumpy jumped haywire bonkers nuts berserk bouncing lurch lurches
    lurching lurched drumming dancing trembling twitching stuttering stutters misfiring fibrillating
    fluttery oddly erratic erratically throat stops stopped rhythm arrhythmia extra
    clappers dozen drum drums hammer jackhammer"""
)
ALL_TURNS = Pattern(
    """
    (everything|all|room|world|gym|floor|head) [just|is|was|in]* (turns|turned|turning) !(out|up|into)
    (everything|room|world|gym|floor) [just|is|was|went|got|goes|all]* (swimmy|wobbly|sideways|tilting)
    (everything|all|room|world|gym|floor|head) [just|is|was]* (spun|swims|swimming|swam)
    (everything|room|world|gym|floor|head) (goes|went|going) round|(see|seeing|saw|seen) stars
    """
)
"""Dizziness in everyday words."""
WEAK = words_of("weak weakness weaker strength power powerless drop drops dropping dropped grip hold")
TINGLING = words_of("tingling tingly tingles tingle tingled prickling prickles prickly needles ants")
DRINKS = words_of("cola coke tea coffee port")
"""Drinks whose colour the urine has; before the word for it they must stand right beside it."""
DRINKING = words_of("with after from drinking drank drink cup cups much all this every need needed before")
"""Words between by which such a drink is one that the client had."""
DARK = words_of(
    """dark brown cola coke tea red black blood bloody rusty coffee brownish reddish darker rust maroon
    port"""
)
URINE = words_of(
    """urine urines pee pees pipi wees wee piss peeing peed weeing urinated urinating pissing pissed
    urination toilet"""
)
POPS = words_of("pop popped popping pops snap snapped crack cracked crunch crunched bang banged")
SUDDEN = words_of(
    """sudden suddenly worst thunderclap exploding exploded explosion explosive splitting blinding severe
    massive violent brutal extreme extremely unbearable lightning hammer nowhere instantly"""
)
HEADACHE = words_of("headache headaches migraine")

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
