"""What takes the meaning out of a warning sign: denials, other people, stories, jokes and trained muscles.

Data only.
"""

from domain.reading.danger_words import BREATH, Sign
from domain.reading.patterns import Pattern
from domain.reading.words import PERSON_WORDS, words_of

EXERCISE_AFTER = words_of(
    """press day supported fly flies workout machine dip dips expander pass height size hair exercises
    exercise pump muscle muscles session"""
)
"""Words after "chest" that make it an exercise or its muscle."""
TRAINED_CHEST = Pattern(
    """
    <!(not|no|isnt) {trained}
    <!(like|heavy) {load} ....5 (on|to|against|at|across) [my|the] chest
    {moves_to} [my|the] chest
    chest [at|with|on] [the|my] (same|usual) (weight|weights|load)
""",
    trained=words_of(
        """muscle muscles muscular pec pecs sore soreness doms pump pumped stretch stretched stretches
        stretching foam shirt shirts jacket bra jersey growing grow"""
    ),
    load=words_of(
        """weight weights bar barbell dumbbell dumbbells plate plates disc kg bell sandbag ball vest backpack
        belt"""
    ),
    moves_to=words_of("touch touched touches touching pause paused pauses pausing off to onto"),
)
"""The chest as a place that the bar comes to, or as a trained muscle."""
CHEST_WITH_A_SET = Pattern("<!(my|the) chest ....3 # (x|for|kg|kgs|lb|lbs|rep|reps|s)")
"""The chest as the short name of an exercise."""
TRAINING_NEAR = words_of(
    """bench benched benching press presses pressing flies fly flys dip dips pushups push pullover pullovers
    workout yesterday touch touched pause paused up big wide proud tall"""
)
SURELY_CHEST = Pattern(
    """
    (feel|feels|felt|like|theres|there is) ....3 {burden} ....2 (on|around) (my|the) chest
    chest ....6 like (someone|somebody|something|{burden}|_ {burden}) [is|was|s|just]* {on_top}
    chest [is|was] (pain|pains|hurt|hurts|pressure|tightness)
    (pain|pains|pressure|tightness|presses|pressing) ....2 (in|on|behind) (my|the) (chest|breast)
""",
    burden="weight|brick|stone|band|elephant",
    on_top="sitting|standing|lying|sat|stood|on|pressing|pushing",
)
SHORT_OF_AIR = BREATH | words_of("breaths breathed breathless breathlessness")
COLD_SWEAT = words_of("sweat sweats sweating sweaty sweated sick jaw arm faint")
"""Words beside a chest that is no trained muscle then."""

SERIOUS = Pattern("""
    not (funny|joking|a joke)|no joke
    seriously|serious|worried|scared
    still|since|hour|hours|yesterday|<!(leg|legs|push|pull|arm|back|chest|upper|lower|squat|gym) day|days|now
""")
"""Words that take the joke out of a sign."""
LASTING = Pattern("since|day|days|week|weeks|still|yesterday|(hour|hours) (now|later)|doesnt wake")
"""Words that take the harmless out of a numb limb."""
_ASLEEP = """
    rest:(asleep|<!({hardly}) (sleep|sleeping|slept) !({then_fell})|on (the|my) (sofa|couch|bed)|(in|
        to) my? bed)
    boredom|bored|goodnight|good night|night coach
    ate|eating|dinner|buffet
"""
_HARDLY = words_of("not havent didnt hardly barely never dont cant couldnt no without")
_SET = "set|sets|squat|squats|bench|deadlift|deadlifts|press|row|rows|rep|reps|lunges|training|workout"
STORY_TOLD = Pattern("movie|film|series|episode|novel|the hero|documentary|podcast")
"""What is told of in a story, and of nobody here, where it stands in the same clause."""
_FUN = "laugh~|giggl~|price|prices|the bill|when i saw|kidding|jk|hilarious"
_WORK = "what a (pump|session|workout|set|day)"
_JOY = "(from|with|of) [all|the|pure|sheer]* (excitement|joy|happiness|love|nerves)|in love"
_TIED = "(wraps|straps|sleeves|belt|shoes) [were|was|is|are] ..1 tight"
_FIGURE_WAYS: dict[Sign, str] = {
    "chest": """
        off my chest|treasure chest|just kidding|chest out|peer pressure
        (pressure|pressures) [is|was] on (for|,|.|!|lol|now|$)
        heart attack when
        (nearly|almost) ..1 a? heart attack
        (hurt|hurts) ..1 (seeing|to see|to watch|watching)
    """,
    "breath": """
        {fun}
        (hold|holding|take|takes|taking|took) my breath
        nose|mask|belt ..1 tight
        breath of fresh
        <!(not) (normal for me|as always|as usual|like always)
        breathing (exercise|technique|pattern|cue)|brace|bracing
    """,
    "faint": "{asleep}|{fun}|{joy}|needle|cheese|faint (hope|idea|memory|line|smell)",
    "heart": "{fun}|{joy}",
    "head": "headache to|{fun}",
    "numb": """
        {asleep}|{fun}|{work}|{tied}|sat on
        cold|ice|icy|freezing|frozen|winter|snow|gloves|dentist|dental
    """,
    "tingling": "excit~|{fun}",
    "control": "{fun}",
    "pop": "{fun}",
    "urine": """
        kidding|dark (outside|out|when|already|by|chocolate|roast|night|nights|morning|mornings|evening)
        (got|gets|getting) dark (early|so|at|by|already|now|,|.|$)
    """,
    "bladder": "{fun}|(nearly|almost) ....4 (when|because)",
    "call for help": """
        {fun}|(nearly|almost) ....4 (need|needed|call|called)
        when ..1 (should|do|does|would|must|can) (i|you|we|one|people)
    """,
}
FIGURES = {
    sign: Pattern(
        ways,
        fun=_FUN,
        asleep=_ASLEEP,
        hardly=_HARDLY,
        then_fell=f"....9 (after|during|on|in|at|doing) [the|my|a|last|of]* ({_SET})",
        work=_WORK,
        tied=_TIED,
        joy=_JOY,
    )
    for sign, ways in _FIGURE_WAYS.items()
}
"""Figures of speech, by the sign that they sound like; of "rest" are those of a limb or a client asleep."""
JESTED: frozenset[Sign] = frozenset({"numb", "control", "breath", "bladder", "call for help"})
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
THOUGHT_OF = Pattern("""
    if (i|you|my)|in case|what if|would it be|should i ever|wondering what
    article|read (about|that)|reading about|leaflet|checklist|lesson|training course|first aid
    what (would|could|does|do) $|(when|how) (would|should|do|will) (i|you|one) (worry|be worried|know) ..3 $
    warned|warn|signs (of|like)|(happen|happens) if
    asked:(you asked)
""")
"""What is only thought or read of; after "you asked" comes what is told."""
ASKS_IN_GENERAL = Pattern(
    "does|do|can|could|why (do|does)|how (common|often)|is it (true|common)|(is|are) ~ing"
)
IN_GENERAL = words_of(
    """happen happens common cause causes people everyone anyone often start starting beginners beginner
    newbies general generally someone lifters women men"""
)
"""Words of a question that is of nobody, where it does not speak of the client."""
ME = words_of("i my ive im me mine myself")
SPEAKS_OF_ME = Pattern("""
    i|ive|im|mine|myself
    <!(to|beside|behind|before|after|of|near|opposite|with|at|in|from|on|around|by) (me|my)
""")
"""The client, and not only as a place: "next to me"."""
SOMEBODY_FIRST = Pattern(
    "[and|so|but|well|yesterday|today|lol|haha|,]* [my|our|the|a|some|one] ..1 {person}",
    person=PERSON_WORDS | {f"{word}s" for word in PERSON_WORDS},
)
SOMEBODY_DOES = Pattern(
    "{opening} [my|our|the|a|an|some|one|this|that] ..1 {person} ({does})",
    opening="[and|so|but|well|yesterday|today|lol|haha|anyway|not me|,]*",
    person=PERSON_WORDS | {f"{word}s" for word in PERSON_WORDS},
    does="""
        at|on|in|next|beside|behind|opposite|from|by|who|with|near|has|had|have|got|gets|was|is|were|said|says
        collapsed|fainted|passed|hurt|tore|pulled|tweaked|went|just|also|keeps|kept|complained|started|felt|feels
    """,
)
"""Somebody else of whom a sentence tells from its beginning on: "the man on the treadmill ..."."""
READ_OF = Pattern(
    "(article|articles|read|reading|heard) ..2 (about|that|says|said)|(read|reading) (about|that)"
)
"""What one has only read or heard of."""
NOT_OF_ME = Pattern("""
    i dont have (any|it|one|that|this|them)|i have none|(not|isnt|its not) [about|for]* (me|mine)
    (im|i am) [all|totally|perfectly|absolutely]* (fine|ok|okay|good|well)
    asking for (a|my|some) _|(just|only) (curious|asking)|out of curiosity|hypothetical~|no symptoms
""")
"""What denies that a question is about the client."""
GOES_ON = words_of("had has have got is was were who whose he she they his her their")
