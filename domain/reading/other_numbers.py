"""Numbers that are no loads, reps or seconds, as data: prices, hours, ages, tests.

Those of the gym, of the body and of talk have files of their own.
"""

from decimal import Decimal
from typing import NamedTuple

from domain.reading.day_words import WEEKDAYS
from domain.reading.illness_words import FEVER, FEVERS
from domain.reading.patterns import Pattern
from domain.reading.words import PERSON_WORDS, words_of

MASS = words_of("kg kgs kilo kilos kilogram kilograms kilogramm lb lbs pound pounds stone stones st")
LEADS = """[
    was|is|on|at|in|to|set|no|nr|number|position|height|and|the|of|hole|setting|=|:|still|stays|now|about
    around|say|says|said|read|reads|showed|shows|like|hit|went|up|peaked|averag~|max|it|this|morning|today
]*"""
"""What may stand between the name of a thing and its number."""
LIFTED = words_of("kg kgs kilo kilos lb lbs pound pounds rep reps x")
"""Words after a number that is part of a set after all."""


class Other(NamedTuple):
    """Numbers that are not part of a set, and what they are: those that the pattern names "n", or else all in
    it.

    One of them is `least` or more, and `most` or less. `always` tells that a phrase about a set changes
    nothing, `glued` that no blank stands before its second number, `beside` that a whole set is told
    elsewhere in the message. No word of `unless` is said anywhere in it.
    """

    what: str
    pattern: Pattern
    least: Decimal | int = 0
    most: int = 10**9
    always: bool = False
    unless: frozenset[str] = frozenset()
    glued: bool = False
    beside: bool = False


_TIMES = (
    Other(
        "a time",
        Pattern(
            """
            # (am|pm|oclock|o clock|uhr)
            # : # (am|pm|uhr)
            (half past|quarter past|quarter to|half) # !({lifted})
            {until} [at|till|until|around] # [: #] !({lifted}|set|sets)
            """,
            lifted=LIFTED,
            until=words_of("until till til around since close closes closed open opens opened shut shuts"),
        ),
    ),
    Other(
        "an hour",
        Pattern(
            """
            # in the (morning|afternoon|evening|am|pm|night)
            at # (sharp|o clock)
            (up|awake|woken|woke) at {hours} !({lifted}|for)
            ({there}|train~|meet~) (at|by) # !({lifted}|for)
            (got|have|had) # (done|finished) [already|before|so far|today|now]* !({lifted}|for)
            (did|done) (it|this|that|them|these|the lot|everything) at # (today|yesterday) !({lifted}|for)
            """,
            lifted=LIFTED,
            hours="# [[,|and|&|then]* #] [[,|and|&|then]* #] [[,|and|&|then]* #]",
            there=words_of(
                """gym went started session class there up woke alarm leave left work arrived finished bed
                morning afternoon evening night today yesterday"""
            ),
        ),
    ),
    Other(
        "a clock time",
        Pattern(
            """
            (at|from|before|after|by|until|till) # : #
            (last night|yesterday|today|morning|evening) [,|at|around]* # : # :
            # : # >(in the|this|last|bus|train|tram|ferry|flight|appointment|meeting|class)
            ({ride}) [home|back|was|is|leaves|left|goes|went|at|the|of]* # : #
            """,
            ride="bus|train|tram|ferry|flight|appointment|meeting|shift",
        ),
        glued=True,
    ),
    Other(
        "round the clock",
        Pattern("# / # >(gym|place|store|shop|job|thing|opening|access|these)\n(open|on call|work~) # / #"),
        least=24,
        most=24,
    ),
    Other(
        "a while",
        Pattern(
            "# [more|other|whole|full|long]* {time} !(#|before yesterday)",
            time=words_of(
                """hr hrs hour hours h day days week weeks wk wks month months mth mths year years yr yrs
                fortnight fortnights night nights"""
            ),
        ),
    ),
    Other("a year", Pattern("(in|since|from|until) #"), least=1901, most=2099),
)

_MEASURES = (
    Other(
        "a price",
        Pattern(
            "# {money}\n(€|'$'|£) #\n{paid} [me|us|about|around|only|just|them|was|is|like]* # !({lifted})",
            paid=words_of("paid cost costs charged charge spent"),
            lifted=LIFTED,
            money=words_of(
                "€ $ £ euro euros eur usd dollar dollars bucks quid pence cents chf francs pln kr"
            ),
        ),
    ),
    Other(
        "a price",
        Pattern(
            "{costs} [is|are|went|has|have|gone|goes|up|down|now|by|to|was|about|another]* # !({lifted})",
            costs=words_of("rent mortgage petrol insurance subscription membership salary wages"),
            lifted=LIFTED,
        ),
        always=True,
    ),
    Other(
        "a decade",
        Pattern(
            "n:# s ({music}|_ {music})",
            music=words_of(
                "hits music rock songs song pop disco radio playlist tunes movie movies style kid classics"
            ),
        ),
        least=50,
    ),
    Other(
        "a heart rate",
        Pattern(
            """
            # (bpm|beats !(#|last|my|the|it)|pulse !([was|is|of|at|about]* #))
            (heart rate|heartrate|hr|pulse|bpm) [hit|reached|up to]* {leads} # [/ #]
            (hr|heart rate|pulse|heart) ....4 (peaked|topped out|maxed out|spiked) at n:#
            (watch|chest strap|hr monitor|monitor) [buzzed|beeped|went off|says|said|showed|hit]* at n:#
            """,
            leads=LEADS,
        ),
    ),
    Other("a blood pressure", Pattern("blood pressure {leads} # [(/|over) #]", leads=LEADS)),
    Other(
        "a percentage",
        Pattern(
            "# (%|percent|per cent)\n{felt} more? like #",
            felt=words_of("felt feel feels feeling moved looked seem seems seemed"),
        ),
    ),
    Other("a temperature", Pattern("# (°|degree|degrees|deg|celsius)\n(minus|'-') # (outside|out there)")),
    *(Other("a temperature", FEVER, least, most) for least, most in FEVERS),
    Other(
        "a length",
        Pattern(
            """
            # {length}
            # m !(# (s|sec|secs|second|seconds))
            <!(@|at) # k >(run|race|walk|on (the {machine}|{weekday})|in # (min|mins|minutes))
            """,
            weekday=frozenset(WEEKDAYS),
            machine=words_of("bike rower treadmill erg track road path beach trail"),
            length=words_of(
                """km kms mile miles mi cm mm meter meters metre metres inch inches ft feet foot laps
                floors storeys yard yards"""
            ),
        ),
    ),
    Other("a length", Pattern("<!(@|at|with) # k $"), most=21),
    Other("a length", Pattern("# steps"), least=100),
    Other("a length", Pattern("# steps (up|down|to)\n(walked|climbed|ran|took) ..3 # steps")),
    Other(
        "food or drink",
        Pattern(
            "# {food}",
            food=words_of(
                """kcal kcals cal cals calories gram grams g mg ml litre litres liter liters scoop scoops
                coffees beers pints eggs protein bananas"""
            ),
        ),
    ),
    Other("food or drink", Pattern("# (coffee|beer|pint|egg|banana)"), most=1),
    Other(
        "food or drink",
        Pattern(
            "{food} (x|*) #", food=words_of("coffee coffees tea teas beer beers pint pints egg eggs banana")
        ),
    ),
)

_PEOPLE_AND_THINGS = (
    Other(
        "an age",
        Pattern(
            """
            (age|aged|turned|turning|turn) of? #
            (im|i am|hes|shes|he is|she is|nearly|almost) # !({lifted}|{going_on})
            # (yo|y o)
            """,
            lifted=LIFTED,
            going_on=words_of("set sets sec secs second seconds times for at @ / of short %"),
        ),
    ),
    Other(
        "another's weight",
        Pattern(
            "{other} (is|was|weighs|weighed|has) ..1 #",
            other=words_of("dog dogs cat puppy baby toddler suitcase bike parcel package luggage"),
        ),
    ),
    Other(
        "a score",
        Pattern(
            """
            (score|scored|won|lost|drew|result|match|game) [was|is|it|the|by|match|game]* # (:|-) #
            (won|lost) # (nil|love|all)|# (:|-) # ((for|to) (us|them)|win|defeat|loss|at half time)
            (bar|gravity|floor|bench|weight|weights|iron|stairs|machine|body|gym) # , me # [.|!|,]* $
            (brain|brains) ..2 # (cell|cells)|# (brain|working|functioning) (cell|cells)
            """
        ),
        always=True,
    ),
    Other(
        "a score",
        Pattern(
            """
            (tennis|badminton|volleyball|squash|padel|pickleball) ....6 # (set|sets|game|games|match|matches)
            (lost|won) [all|the|in|both]* # (sets|games|matches)
            """
        ),
    ),
    Other(
        "a game",
        Pattern(
            """
            # [-] (a [-] side|aside) {game}
            ({plays}) [some|a game of|at|in|a|of|the]* # [-] (a [-] side|aside)
            {ended} ....6 n:# [-] (a [-] side|aside)
            n:# [-] (a [-] side|aside) ....6 {ended}
            """,
            ended=words_of("lost won drew beaten scored thrashed hammered goal goals keeper pitch"),
            game=words_of(
                """football footy soccer hockey rugby netball game match tournament league last yesterday
                today this earlier on after before with"""
            ),
            plays=words_of("play played playing plays had game match did"),
        ),
        least=5,
        most=11,
    ),
    Other(
        "rounds of a sport",
        Pattern(
            "# (round~|bout~|lap~|game~|set~|hole~|half|halves) [of|on|in|at]* the? {sport}",
            sport=words_of(
                """badminton basketball bouldering bowling boxing climbing cricket darts football golf hockey
                judo karate kickboxing padel pickleball pool rugby sparring squash swimming table tennis
                volleyball wrestling"""
            ),
        ),
    ),
    Other(
        "a rank",
        Pattern(
            "(no|nr|number) # {first}",
            first=words_of(
                "cause dad enemy excuse fan goal hit mom mum on priority reason rule song spot tip wish worry"
            ),
        ),
        most=10,
        always=True,
    ),
    Other(
        "a mark",
        Pattern(
            """
            # out of # (for|to) (the|my|this|that|a)
            # (star|stars) [for|to|review~]
            a n:# [in|on|for|at]* [my|the|his|her]* {taught}
            """,
            taught=words_of("exam exams test tests maths math english spelling chemistry physics class"),
        ),
    ),
    Other("so many people", Pattern("# of (us|you guys|my friends)")),
    Other("bars of a signal", Pattern("# (bar|bars) of (signal|reception|battery|chocolate|soap)")),
    Other("so many still to do", Pattern("# down [,|and]* # (to go|left|more)")),
    Other(
        "a remark on what was told",
        Pattern(
            """
            (and|but|,|though|only|.|'('|reps|because|since) the n:# [s] {was} !(..3 #)
            ^ the n:# {was} {late}
            """,
            was=words_of("was were is felt looked seemed"),
            late=words_of("late early full packed cancelled slow closed"),
        ),
    ),
    Other(
        "what was not done", Pattern("# more [rep|reps|set|sets]* (and|or) (id|i would|i might|im|i am|i)")
    ),
    Other(
        "so many of so many",
        Pattern(
            """
            (grandson~|granddaughter~|son~|daughter~|kid~|nephew~|niece~|boy~|girl~) '(' # ')'
            {person} '(' [aged] # ')'
            """,
            person=PERSON_WORDS,
        ),
    ),
)

_TESTS = (
    Other(
        "a result of a test",
        Pattern(
            "{got} [a|an]* # [%|percent|points|marks]* (on|in|for) {whose} {test}",
            got="(got|scored|made|(passed|failed) with)",
            whose="[my|the|a|his|her|our|last|final]*",
            test=words_of(
                "exam exams test tests quiz essay paper assignment theory maths math english finals course"
            ),
        ),
        always=True,
    ),
    Other(
        "a charge", Pattern("(battery|phone|charge|mobile) [is|was|still|only|just]* (on|at) # [%|percent]")
    ),
)
_KIT = (
    Other(
        "of what one has",
        Pattern(
            "({got}) ..6 [#] ..2 # [{mass}] [{sort}]* {thing}",
            sort="steel|iron|rubber|bumper|cast|adjustable|weighted|small|new|old|big|of",
            thing=words_of(
                """pair pairs dumbbell dumbbells kettlebell kettlebells plate plates disc discs vest bell
                bells set"""
            ),
            got="gave|given|lent|lend|lends|bought|buy|buying|sold|borrowed|ordered|arrived|inherited",
            mass=MASS,
        ),
        always=True,
    ),
)
OF_THE_WORLD = (*_MEASURES, *_TIMES, *_PEOPLE_AND_THINGS, *_TESTS, *_KIT)
OF_PEOPLE = (*_TIMES, *_PEOPLE_AND_THINGS)
"""Those of people and of time alone."""
