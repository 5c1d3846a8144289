"""Words about exercises' names, as data: short forms, joined words, words that tell little by themselves."""

from domain.reading.words import words_of

SHORT_FORMS: dict[str, tuple[str, ...]] = {
    "incl": ("incline",),
    "abs": ("ab",),
    "bb": ("barbell",),
    "bbs": ("barbell",),
    "benchpress": ("bench", "press"),
    "bi": ("bicep",),
    "birddog": ("bird", "dog"),
    "deadbug": ("dead", "bug"),
    "legpress": ("leg", "press"),
    "trapbar": ("trap", "bar"),
    "hexbar": ("hex", "bar"),
    "bis": ("bicep",),
    "biceps": ("bicep",),
    "bulgs": ("bulgarian",),
    "benches": ("bench",),
    "benched": ("bench",),
    "benching": ("bench",),
    "bp": ("bench", "press"),
    "bss": ("bulgarian", "split", "squat"),
    "bulg": ("bulgarian",),
    "calves": ("calf",),
    "cgbp": ("close", "grip", "bench", "press"),
    "chin": ("chinup",),
    "chins": ("chinup",),
    "chinups": ("chinup",),
    "chinning": ("chinup",),
    "curling": ("curl",),
    "dipping": ("dip",),
    "lunging": ("lunge",),
    "planking": ("plank",),
    "rowing": ("row",),
    "cruches": ("crunch",),
    "curled": ("curl",),
    "db": ("dumbbell",),
    "dbs": ("dumbbell",),
    "dead": ("dead",),
    "deads": ("deadlift",),
    "deadlifted": ("deadlift",),
    "deadlifting": ("deadlift",),
    "dl": ("deadlift",),
    "dls": ("deadlift",),
    "dumbell": ("dumbbell",),
    "dumbells": ("dumbbell",),
    "ext": ("extension",),
    "exts": ("extension",),
    "ez": ("ez",),
    "flye": ("fly",),
    "flyes": ("fly",),
    "ham": ("hamstring",),
    "hammie": ("hamstring",),
    "hammies": ("hamstring",),
    "hammy": ("hamstring",),
    "fsq": ("front", "squat"),
    "bsq": ("back", "squat"),
    "hung": ("hang",),
    "hams": ("hamstring",),
    "chinned": ("chinup",),
    "inc": ("incline",),
    "kb": ("kettlebell",),
    "kbs": ("kettlebell",),
    "lats": ("lat",),
    "lunged": ("lunge",),
    "mil": ("military",),
    "oh": ("overhead",),
    "ohp": ("overhead", "press"),
    "pd": ("pulldown",),
    "pecs": ("pec",),
    "planked": ("plank",),
    "pulldown": ("pulldown",),
    "rdl": ("romanian", "deadlift"),
    "rdls": ("romanian", "deadlift"),
    "rowed": ("row",),
    "sl": ("single", "leg"),
    "sldl": ("stiff", "leg", "deadlift"),
    "sldls": ("stiff", "leg", "deadlift"),
    "smith": ("smith", "machine"),
    "sq": ("squat",),
    "squatted": ("squat",),
    "squatting": ("squat",),
    "tri": ("tricep",),
    "triceps": ("tricep",),
    "tris": ("tricep",),
    "tbdl": ("trap", "bar", "deadlift"),
    "wrists": ("wrist",),
}
"""A word and what it stands for in names, in the singular."""

JOINED = frozenset(
    {
        ("push", "up"),
        ("press", "up"),
        ("pull", "up"),
        ("chin", "up"),
        ("chinup", "up"),
        ("sit", "up"),
        ("step", "up"),
        ("get", "up"),
        ("pull", "down"),
        ("pulldown", "down"),
        ("push", "down"),
        ("press", "down"),
        ("kick", "back"),
        ("dead", "lift"),
        ("roll", "out"),
        ("pull", "over"),
        ("pull", "apart"),
        ("pull", "through"),
        ("good", "morning"),
        ("body", "weight"),
        ("wall", "sit"),
        ("kettle", "bell"),
        ("dumb", "bell"),
        ("bar", "bell"),
        ("skull", "crusher"),
        ("cross", "over"),
    }
)
"""Two words that are also written as one."""

LOAD_WORDS = words_of(
    """weighted assisted assist assistance bodyweight bw lowering only negative eccentric unweighted"""
)
"""Words of a name that tell how the load is counted, rather than which exercise it is."""

WEAK = LOAD_WORDS | {"hold", "machine", "static", "isometric", "iso"}
"""Words of a name that people leave out."""

HARMLESS = WEAK | {
    "barbell",
    "flat",
    "regular",
    "normal",
    "standard",
    "full",
    "the",
    "conventional",
    "ez",
    "bar",
}
"""Words that people add without meaning another exercise."""

IMPLEMENTS = (
    frozenset(
        {
            "dumbbell",
            "barbell",
            "kettlebell",
            "machine",
            "cable",
            "band",
            "bar",
            "plate",
            "rope",
            "ball",
            "ring",
            "ez",
            "smith",
            "trx",
            "strap",
            "belt",
            "disc",
            "bench",
        }
        - {"bench"}
    )
    | LOAD_WORDS
)
"""Words that alone name no exercise."""

FUNCTION_WORDS = words_of("""the on with to of and from in a for at out no my it up down""")
"""Words between those of a name."""

ALONE = {"bench": "press", "overhead": "press", "military": "press"}
"""Words that alone mean one exercise to everybody, and the word that an exercise must have to be meant by
them."""

NEVER_IN_A_NAME = words_of(
    "rep reps set sets kg kgs lb lbs kilo kilos time times second seconds sec secs lifted lifting"
)
"""Words of a report that are no part of an exercise's name, though one may hold them."""

NO_INITIALS = words_of(
    """am an as at be bf bp bpm bs btw by ca cc cr db do eg ft fr go gp hi hr hrs ie if in is it kb kg km la
    lb lol ma me mm mph mr ms my ng no of oh ok on op or pa pb pls pm po pp pr ps pt rm rir rpe sa sh so ss st
    sub sup tf the to tbh tbd tbc asap idk imo imho lmk omg fyi brb diy aka rn irl smh ffs ikr nvm np ty thx
    dm eta ofc nc pc tmi tv uk up us vs vid wc wk wod ye yes yo"""
)
"""Letters that say something else than the first letters of an exercise's name."""

DISTINCT_IMPLEMENTS = words_of("rope cable")
"""Implements that tell one exercise of a plan by themselves, beside a number."""

GENERIC = words_of(
    """ab arm apart back bicep body bend box bird bug calf carry chair chest clean close core counter dead
    desk down drag drop extension farmer flexion floor forward foot front ab full get glute grip hack half
    ham hammer hamstring hand hang hanging head heel high hip hold hyper jump knee kneeling lat lateral
    leg lift low lower lowering lying machine march mountain narrow neck one open out oblique outer inner
    over overhead pec pin press pull push quad raise raised reach rear reverse rotation round russian
    seated shin shoulder side single sit slide slider stand standing static step straight suitcase swing
    table tap thigh thrust tibialis to toe top torso tricep trunk twist two up upper v walk walking wall
    wheel wide wrist ball bicycle kick pointer chop"""
)
"""Words that alone name an exercise only right beside a number."""

COMMON = words_of(
    """about actually after again all also always angle another answer any around away because become been
    before being best better between both bottom boxes break brunch bring broke broken building built
    hols
    bunch can cat change chance cheat cheats cheer chess chick chicken child children chill circle class
    clean clear close closed cold come coming cook cough could couple course crash crazy cross crowd crush
    curious dance days deal dear delay delete deli desk dinner dips done down dress drive drop drops
    during each early easily easy else ended energy enough even every exact exactly exam extensive
    extra facing fact
    fall falls fast feel feels feet felt fight final finally find fine finish first floors flies follow
    food foot form forward found four frame free fresh friday friend friends frozen front full gave
    getting girl give given giving goals goes going gone good grab great green grim grip gripping group
    grow guess gym half hand hands happy hard have having head heal health heard heart heavy held hello hung
    help here higher hill hold holding home hope hours house hungry idea injury inside into just keep kept
    kids kill kind knew know known large last late later lately laugh laundry lazy learn least leave left
    less light like line list little live lives load loads long look looks lose loss lost lots love lower
    lunch machine made make makes making manage managed march marked match matter maybe mean meant meet
    might mind minute miss missed mistake monday month more morning most mother move moved much music need
    needs never new next nice night none normal nothing notice number office often okay once only open
    order other ouch over pace packed pain paint park part pass past peak people perfect person phone pick
    supposed
    picked piece place plan plane planned plans planning plate plates play please plenty point pool press
    pressed pressure pretty price print problem proper proud program pump pumped push pushed pushing put
    quad queue quick quiet quite rain raise raised rather ready real really reason record relax repeat
    reply rest rested resting right rise rose round rough run rush rushed safe said say same sand saturday
    save says scale school scrap score seat second seem seems send sent series serious set sets share sharp
    sheet shift short should shoulders show shower sick side sight sign since single sleep slept slow
    slower small smart smooth some something song soon sore sorry sort space spare speed spent spin split
    spot squad stage stair stairs stand start started stay step steps stick stiff still stock stone stood
    stop stopped store story straight strange strap street strength stretch string strong stuck stuff
    stupid such sunday super sure surprise sweat sweating swim swimming swing swollen table take taken
    talk taste team text than thanks that their them then there these they thing things think third this
    those though thought three threw through throw thrust tight time times tired today toes together told
    tomorrow touch tough track train trained trainer training treat trial trip trouble true trust
    truth trying tuesday turn twice under until upper upset used usual very video wait waited waiting walk
    walked walking wall want wanted warm warmed watch water weak wear weather wednesday week weeks weird
    well went were what when where which while white whole wife will wind window wish with without woke
    wonder work worked working works world worry worse worst worth would write wrong wrote year yesterday
    your yours young beach bunch branch bends lounge plank lots row now how low flow grow growing going
    reserve reserved crunchy lying laying trying tall talking heated seated seats retired hamper hamster
    hammered reversed retention attention intention mention session tension pension dies lies ties tried
    fries cries flights fly lunging prose pulse pushes pills pull pulled shrug shrugged thirst blanket
    planks sling bringing swings swingy bridged fridge ridge dead died deadline deadly curly girls early hurl
    nasty extent extend extended exit rows pair pairs chair chairs stair share floor flour tour door poor
    squash squeeze squeezed square squares quit trap trip strips craps wraps preaching teacher teachers
    creature scull skill skills crusher crushed cushion narrow arrow marrow tomato barbecue barber bars
    bald bake bank hang hangry hungry angry change hinge binge single angle tingle mingle tangle triangle
    arms legs knees kneel heel steel feel carrier carried worry curry hurry berry ferry good goodbye
    morning mourning warning turning running burning burned learning earning facepalm facebook face pace
    lace race space bird birds third buy bug bugs big bag bags dig rug box boxing bosses losses crosses"""
)
"""Ordinary words that are no misspelt exercise, however like one they look."""
