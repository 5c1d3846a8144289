"""Word lists of the small rules, as data. Each list has one use, named beside it."""


def words_of(text: str) -> frozenset[str]:
    """Return the words of a list that is written as text."""
    return frozenset(text.split())


KG_WORDS = words_of("""kg kgs kilo kilos kilogram kilograms kilogramm kilogramme kgm kilogrammes""")
LB_WORDS = frozenset({"lb", "lbs", "pound", "pounds", "pounder", "pounders", "lbz", "pnds", "ibs"})
STONE_WORDS = frozenset({"stone", "stones", "st"})
REP_WORDS = words_of(
    """rep reps repetition repetitions r step steps repeats repetions
    repititions repitition wdh resp repos pieces"""
)
SET_WORDS = frozenset({"set", "sets", "series", "rounds"})
SECOND_WORDS = frozenset({"sec", "secs", "second", "seconds", "sek", "secounds", "secnds"})
MINUTE_WORDS = frozenset({"min", "mins", "minute", "minutes"})
NEGATIVE_WORDS = frozenset(
    {"negative", "negatives", "negs", "neg", "eccentrics", "eccentric", "lowerings", "lowers"}
)
TIMES_SIGNS = frozenset({"x", "*", "by", "times"})
AT_WORDS = frozenset({"@", "at", "with", "w", "using", "holding"})
FOR_WORDS = frozenset({"for", "fr", "fro", "foor", "ofr", "got", "did", "managed", "getting", "made"})
AND_WORDS = frozenset({"and", "&", "n", "plus", "nd", "und"})
THEN_WORDS = frozenset({"then", "followed", "afterwards", "finally", "later"})
BETWEEN = words_of(
    """a an the only just solid good clean hard full nice easy ugly i my today of total whole was it all them
    both this time tough strong slow proper like about still again in is were reps rep shaky grindy lovely
    comfortable strict paused each done uh um er erm uhm like what maybe"""
) - {"about", "each", "on"}
"""Words that may stand between a load and its reps without parting them."""

LOAD_NOUNS = words_of(
    """belt vest disc discs dumbbell dumbbells kettlebell kettlebells bell bar barbell stack weight weights
    backpack hips hip shoulders thighs rucksack ball cable machine band bands chain chains lap waist belly
    tummy stomach plate
    plates db dbs kb kbs sandbag bag bells sled prowler log loop rubber resistance tube pulley bottle
    bottles jug jugs"""
)
"""What a load is made of; such a word after it changes nothing."""

REP_ADJECTIVES = words_of(
    """good clean solid full hard ugly slow strict proper nice complete total straight perfect easy more
    smooth quality controlled shaky paused tough honest lovely great decent real whole grindy"""
)
"""Words between a number and "reps"."""

FILLERS = words_of(
    """uh um er erm uhm umm uhh ummm ermm err hm hmm ah oh ok okay so well hi hey hello yo and then i just
    only got did done today
    again another managed made it was about roughly final answer please thanks thank you coach lol haha
    finally yes yep yeah set reps the a first last one this time for with at nice easy hard tough felt
    good great that still now here we go my today's todays is all in total actually think maybe clean
    solid ugh phew next up more bro mate sets also plus man dude boom bam woohoo yay x rest of them kg
    exactly around somehow barely morning evening afternoon hit completed finished did reached there rip
    whew ouch wow grr hehe gosh omg tbh pb pr new best strong heavy light straight way too very really
    quite pretty a bit little"""
)
"""Words that say nothing of what a lone number is: with only these around it, it can be a result."""

RESULT_VERBS = words_of(
    """got did managed hit made completed finished reached achieved lifted pressed pulled pushed benched
    squatted deadlifted rowed curled held repped banged ground squeezed counted put moved cranked knocked
    scored took make"""
)
"""Verbs whose object is what was done."""

PERSON_WORDS = words_of(
    """wife husband brother sister buddy buddies partner mate friend dad father mum mom mother son
    daughter colleague coworker player neighbour neighbor girlfriend boyfriend roommate roomie roomies
    flatmate cousin uncle aunt grandson granddaughter grandma grandpa gran boss trainer spotter
    flatmates kid guy guys dude lad lads bloke man woman girl lady fella chap teenager gf bf bro
    teammate classmate pal nephew niece housemate trainee someone somebody stranger everyone
    powerlifter bodybuilder lass lasses boy child toddler
    nan granny grandad grandfather grandmother hubby fiance fiancee
    missus kids sis twin bodybuilders instructor student"""
)
"""People who are not the client."""

ACTIVITIES = words_of(
    """bowls bowling
    tennis football soccer run ran running hike hiked hiking swim swam swimming bike biked biking cycling
    cycled golf wedding party partied pub drinking drunk drinks beers work worked shift flight flew travel
    travelled traveled exam exams doctor doctors physio dentist slept sleep ate dinner holiday basketball
    yoga class climbing match game birthday massage concert skiing ski gardening garden hockey rugby
    volleyball padel dance dancing walked walk paddle moved moving marathon race cooking cooked deadline
    lecture school uni office barbecue bbq hangover hungover pilates spin badminton surfing surf sailing
    boxing judo karate snow shopping interview meeting funeral surgery operation blood rain weather parade
    festival church cleaning cleaned painting painted decorating lawn hockey cricket handball kayaking
    sauna physiotherapist appointment"""
)
"""What a day can be said of that is no training with the coach."""

TRAINING = words_of(
    """workout session training trained gym lifted lifting did log logged results result numbers sets report
    forgot send sent text texted message write wrote reporting late done here finished went workouts list
    sessions got train exercise exercises"""
)
"""Words by which a day is the day of the training."""

INTERJECTIONS = words_of(
    """alright righto cheers hooray yippee yess yesss whoop whoops oops sweet nice cool awesome amazing
    beauty boss chief champ buddy pal guys everyone team evening afternoon monday tuesday wednesday
    thursday friday saturday sunday january february march april june july august september october
    november december quick update result report greetings salut hola servus moin hallo tach sorted bingo
    jackpot easy peasy crap damn dang jeez sheesh blimey crikey gosh hello hiya heya howdy yoohoo yeah
    yeahh okie okey okeydoke dokey ahoy heyy hiii hellooo also maybe kilo kilos kilogram kilograms pounds
    reps sets"""
)
"""Words that stand before a set without naming anything."""

SMALL_WORDS = words_of(
    """i my we at to is in of it on up x kg am pm no ok oh or by if as an be go he me so us do a the and for
    but was had got did put new pb pr lol omg wow yes yep hey hi yo man bro out off own per set rep raw
    via fr ngl tbh imo rn btw w n u ur im ive its can has any all one two day gym ago top max min last
    next lb lbs kgs bw rpe rir mon tue wed thu fri sat sun now not you too try few bit far big old bad hot
    fun pre pro her his him she ya ah eh uh um er erm hm mm aw ay da de en ja na nah ne und mit fat fit
    flu ha huh hmm hmmm then than that this our"""
)
"""Short words that name no exercise."""

ORDINALS = {
    word: number
    for number, word in enumerate(
        [
            "first",
            "second",
            "third",
            "fourth",
            "fifth",
            "sixth",
            "seventh",
            "eighth",
            "ninth",
            "tenth",
            "eleventh",
            "twelfth",
            "thirteenth",
            "fourteenth",
            "fifteenth",
            "sixteenth",
            "seventeenth",
            "eighteenth",
            "nineteenth",
            "twentieth",
        ],
        start=1,
    )
}
NTHS = {word: number for word, number in ORDINALS.items() if number <= 6}
"""The words for which set or exercise is meant; no workout has more."""

MONTH_WORDS = words_of(
    """jan feb mar apr may jun jul aug sep sept oct nov dec january february march april june july august
    september october november december"""
)
