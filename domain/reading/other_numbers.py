"""Numbers that are no loads, reps or seconds, as data: prices, hours, ages, settings, body weight."""

import re

from domain.reading.words import PERSONS, words_of

_MASS = r"(?:kgs?|kilos?|kilograms?|kilogramm|lbs?|pounds?)"

_LEADS = (
    r"(?: (?:was|is|on|at|in|to|set|no|nr|number|position|height|and|the|of|hole|setting|=|:|still"
    r"|stays|now|at about|about|around|says|said|read|reads|showed|shows|like|hit|went|up|peaked"
    r"|averag\w+|max|it|this|morning|today))*"
)

JUNK: tuple[tuple[str, frozenset[str], re.Pattern[str]], ...] = (
    (
        "a price",
        words_of("€ $ £ euro euros eur usd dollar dollars bucks quid pence cents chf francs pln kr"),
        re.compile(
            r"# ?(?:€|\$|£|euros?|eur|usd|dollars?|bucks|quid|pence|cents|chf|francs|pln|kr)(?= "
            r"|$)|(?:€|\$|£) #(?: a| per)?"
        ),
    ),
    (
        "a heart rate",
        words_of("bpm beats pulse heart heartrate hr"),
        re.compile(
            rf"# (?:bpm|beats|pulse)\b|\b(?:heart ?rate|heartrate|hr|pulse"
            rf"|bpm){_LEADS} #(?: / #)?"
        ),
    ),
    ("a blood pressure", words_of("blood"), re.compile(rf"\bblood pressure{_LEADS} #(?: / #| over #)?")),
    (
        "a percentage",
        words_of("% percent felt feel feels feeling moved looked seemed seems"),
        re.compile(r"# (?:%|percent)|(?:felt|feels?|feeling|moved|looked|seemed|seems) (?:more )?like #"),
    ),
    (
        "a temperature",
        words_of("° degree degrees deg celsius"),
        re.compile(r"# ?(?:°|degrees?|deg|celsius)(?: [cf]\b)?"),
    ),
    (
        "a time",
        words_of(
            "am pm oclock o uhr half quarter until till til around since close closes closed open opens"
            " opened shut shuts"
        ),
        re.compile(
            r"# (?:am|pm|oclock|o clock|uhr)\b|# : # (?:am|pm|uhr)\b|\b(?:half past|quarter past"
            r"|quarter to|half) #(?= |$)(?! (?:kg|reps?|x))|\b(?:until|till|til|around|since"
            r"|closes?|closed|opens?|opened|shuts?) (?:at |till |until |around )?#(?: : #)?(?= "
            r"|$)(?! (?:x|reps?|kg|kgs|lbs?|sets?))"
        ),
    ),
    (
        "an hour",
        words_of("in sharp tonight this at"),
        re.compile(
            r"(?:\bat )?# in the (?:morning|afternoon|evening|am|pm|night)\b|\bat # (?:sharp"
            r"|tonight|this (?:morning|evening)|o clock)\b|\b(?:gym|went|started|train\w*|session"
            r"|class|there|up|woke|alarm|leave|left|work|meet\w*|arrived|finished"
            r"|bed|morning|afternoon|evening|night|today|yesterday|tonight) at #(?= "
            r"|$)(?! (?:kgs?|kilos?|lbs?|pounds?|x|for|reps?))"
        ),
    ),
    (
        "a clock time",
        words_of(":"),
        re.compile(r"\b(?:at|from|before|after) # : #|# : #(?= in the| this| last| tonight)"),
    ),
    (
        "a while",
        words_of(
            "hr hrs hour hours h day days week weeks wk wks month months mth mths year years yr yrs"
            " fortnight fortnights night nights"
        ),
        re.compile(
            r"# (?:hrs?|hours?|h|days?|weeks?|wks?|months?|mths?|years?|yrs?|fortnights?"
            r"|nights?)\b(?: old)?"
        ),
    ),
    (
        "a year",
        words_of("in since from until"),
        re.compile(r"\b(?:in|since|from|until) #(?= |$)"),
    ),
    (
        "a length",
        words_of(
            "km kms mile miles mi cm mm meter meters metre metres m inch inches ft feet foot steps laps"
            " floors storeys yard yards k"
        ),
        re.compile(
            r"# (?:km|kms|miles?|mi|cm|mm|meters?|metres?|m|inch|inches|ft|feet|foot|steps|laps"
            r"|floors|storeys|yards?)\b|# [kK](?= run| race| walk|$| on)"
        ),
    ),
    (
        "food or drink",
        words_of(
            "kcal kcals cal cals calories gram grams g mg ml litre litres liter liters scoop scoops"
            " coffee coffees beer beers pint pints egg eggs protein banana bananas"
        ),
        re.compile(
            r"# (?:kcals?|cals?|calories|grams?|g|mg|ml|litres?|liters?|scoops?|coffees?|beers?"
            r"|pints?|eggs?|protein|bananas?)\b"
        ),
    ),
    (
        "an age",
        words_of("age aged turned turning turn im am hes shes is nearly almost yo y"),
        re.compile(
            r"\b(?:aged?|turned|turning|turn) (?:of )?#|\b(?:im|i am|hes|shes|he is|she is|nearly"
            r"|almost) #(?= |$)(?! (?:reps?|x|kgs?|kilos?|lbs?|pounds?|for|sets?|secs?|seconds?"
            r"|times|@|/|at|of|short|%))|# (?:yo|y o)\b"
        ),
    ),
    (
        "a setting",
        words_of(
            "seat backrest back setting notch height lever rung rack peg pegs safety safeties pad roller"
            " cable bench angle foot footplate handle hole"
        ),
        re.compile(
            rf"\b(?:seat|backrest|back rest|setting|notch|height|lever|rung|rack|pegs?|safet(?:y"
            rf"|ies)|pad|roller|cable height|bench angle|angle|foot ?plate|footplate"
            rf"|handle){_LEADS} #(?: (?:st|nd|rd|th))?(?! (?:kgs?|lbs?|kilos?|pounds?|reps?|x) )"
            rf"|# (?:st|nd|rd|th) (?:hole|notch|setting|rung)"
        ),
    ),
    (
        "a number of something else",
        words_of(
            "song track episode chapter page room bus line day week number nr locker gate platform bay"
            " level floor phase block cycle workout session rotation station playlist version tram train"
            " channel exercise visit top rank place"
        ),
        re.compile(
            r"\b(?:song|track|episode|chapter|page|room|bus|line|day|week|number|nr|locker|gate"
            r"|platform|bay|level|floor|phase|block|cycle|workout|session|rotation|station"
            r"|playlist|version|tram|train|channel|exercise number|visit|top|rank"
            r"|place) #(?! (?:kgs?|kilos?|lbs?|reps?|x|@|/|for) )(?= |$)"
        ),
    ),
    (
        "rest",
        words_of("rest rested resting rests break breaks pause paused pauses waiting waited between"),
        re.compile(
            r"\b(?:rest|rested|resting|rests|breaks?|paused?|waiting|waited)(?: (?:for|of|was"
            r"|about|only|between|sets|just|a|is|full|times?|:|the|whole|each|around))* # ?(?:s"
            r"|secs?|seconds?|mins?|minutes?|m|\"|')?|# ?(?:s|secs?|seconds?|mins?|minutes?"
            r"|m) (?:of )?(?:\w+ )?(?:rests?|breaks?|pauses?|between|in between)\b"
        ),
    ),
    (
        "a tempo",
        words_of("tempo"),
        re.compile(r"\btempo (?:of |was |: )?#(?: [-/] #)*|# [-/] # [-/] # (?:tempo)"),
    ),
    (
        "how often",
        words_of("times x"),
        re.compile(
            r"# (?:times|x) (?:a|per|every|each|this|in a|weekly) ?(?:week|day|month|year"
            r"|weekly)?\b"
        ),
    ),
    (
        "body weight",
        words_of("weighed weigh weighing weighs weight body bodyweight bw scale scales weighin im am"),
        re.compile(
            rf"\b(?:weighed|weigh|weighing|weighs|weight is|weight was|weight today"
            rf"|weight this morning|body ?weight (?:is|was|of|:|now|today|this morning|=|at)"
            rf"|bw (?:is|was|:|now|today|=|this morning)|scales?|weigh ?in|im at|i am at"
            rf"|im down to|im up to){_LEADS}(?: in)?(?: at)?(?: about)? #(?: {_MASS})?(?! ?(?:x"
            rf"|for|reps?|@|\+|/|,) )"
        ),
    ),
    (
        "body weight",
        words_of("lost gained lose gain put im am body bodyweight bw of down up"),
        re.compile(
            rf"\b(?:lost|gained|lose|gain|put on) (?:about |another |almost |nearly )?# {_MASS}\b"
            rf"|\b(?:im|i am) # {_MASS}\b|# {_MASS} (?:body ?weight|bw|of me)\b|\b(?:down"
            rf"|up) (?:about |almost |nearly |another )?# {_MASS} (?:since|this (?:week|month"
            rf"|year)|in (?:a|the|#|two|three)|over|already|so far|overall|on the scale)\b"
        ),
    ),
    (
        "a body weight",
        words_of("body bodyweight bw"),
        re.compile(
            rf"\b(?:body ?weight|bw) # (?:{_MASS} )?(?:this morning|today|now|currently"
            rf"|before breakfast|on the scale)\b|\b(?:body ?weight|bw) # (?:{_MASS} )?(?=[.;\n])"
        ),
    ),
    (
        "another's weight",
        words_of("dog dogs cat puppy baby toddler suitcase bike parcel package luggage"),
        re.compile(
            rf"\b(?:dogs?|cat|puppy|baby|toddler|suitcase|bike|parcel|package"
            rf"|luggage) (?:is|was|weighs|weighed|has)(?: \w+)? #(?: {_MASS})?"
        ),
    ),
    (
        "not to be had",
        words_of(
            "couldnt could cant cannot didnt no dont nobody never taken gone missing busy use occupied"
            " broken there used hogged"
        ),
        re.compile(
            rf"\b(?:couldnt|could not|cant|cannot|didnt|no|dont|nobody|never)(?: \w+)? (?:find"
            rf"|get hold of|have|reach|see|use|had)(?: the| any| a| my)* #(?: s"
            rf"| {_MASS})?(?: dumbbells?| kettlebells?| plates?| one| ones)?(?= |$)(?! (?:reps?|x"
            rf"|for))|\b(?:the )?# ?(?:s|{_MASS})?(?: (?:dumbbells?|kettlebells?|plates?|one|ones"
            rf"|dbs?|bar))? (?:were|was|are|is|had)(?: all| both| always| already"
            rf"| still)? (?:taken|gone|missing|busy|in use|occupied|broken|not there|being used"
            rf"|hogged)\b"
        ),
    ),
    (
        "a score",
        words_of("score scored won lost drew result match game"),
        re.compile(
            r"\b(?:score|scored|won|lost|drew|result|match|game)(?: (?:was|is|it|the|by|the match"
            r"|the game))* # ?[:-] ?#"
        ),
    ),
    (
        "so many of so many",
        words_of("("),
        re.compile(r"\b(?:grandson|granddaughter|son|daughter|kid|nephew|niece|boy|girl)\w* \( # \)"),
    ),
    (
        "an effort",
        words_of(
            "energy mood effort motivation stress sleep difficulty enjoyment form fun rating rated felt"
            " feeling feels tiredness fatigue soreness intensity hard tired rpe"
        ),
        re.compile(
            r"(?<=\brpe # )(?:/|out of) #|"
            r"\b(?:energy|mood|effort|motivation|stress|sleep|difficulty|enjoyment|form|fun"
            r"|rating|rated|felt|feeling|feels|tiredness|fatigue|soreness)(?: (?:was|is|of|like|a"
            r"|about|at|level|score|:|=|today|maybe))* # ?(?:/|out of|of) (?:10|#)|# ?(?:/"
            r"|out of) # (?:effort|energy|difficulty|intensity|mood|motivation|hard|tired)\b"
        ),
    ),
    (
        "some reps of a set",
        words_of("last first final"),
        re.compile(
            r"\b(?:on|in|at|during|of|from|for) (?:the |my )?(?:last|first|final) # (?:reps?|ones?)\b"
        ),
    ),
    (
        "a tempo",
        words_of("hold holds pause pauses"),
        re.compile(
            r"(?:(?<=x # with )|(?<=x # with a )|(?<=x # , ))# (?:s|secs?|seconds?) (?:holds?|pauses?)\b"
        ),
    ),
    (
        "a number of sets",
        words_of("all"),
        re.compile(
            r"\ball(?: of)?(?: the| my| these| those)? # (?:(?:sets?|of (?:them|those|these)) )?"
            r"(?:were|are|felt|went)(?: (?:so|very|really|pretty|quite|super|too|a bit))* "
            r"(?!at|for|with|to|done|only|just)[a-z]+"
        ),
    ),
    (
        "a set's number",
        words_of("set sets round rounds st nd rd th"),
        re.compile(
            r"(?<!# )(?<!first )(?<!second )(?<!third )(?<!last )(?<!final )(?<!next )(?<!top"
            r" )(?<!best )(?<!back )\b(?:sets?|rounds?) #(?= (?::|-|was|felt|\)|,|\.|of|went|only"
            r"|=|and|is|again)|$)|\b(?:sets?) # (?!x|reps?|@|times|kg|/ #)(?=#)|# (?:st|nd|rd"
            r"|th)(?= |$)"
        ),
    ),
    (
        "what it is not",
        words_of(
            "instead rather up down compared vs versus better beat beats beating opposed almost nearly not"
        ),
        re.compile(
            rf"\b(?:instead of|rather than|(?<!and )(?<!or )up from|down from|compared to"
            rf"|compared with|vs|versus|better than|beats?|beating|as opposed to|almost|nearly"
            rf"|not quite)(?: got| hit| did| made| managed| had| a| another| my| the| last| old"
            rf"| (?:{PERSONS})s?| his| her| hers)*(?: (?:weeks?|times?))? #(?: {_MASS})?(?: (?:x|for|/|@"
            rf"|times) #)?(?: reps?)?(?= |$)"
        ),
    ),
    (
        "a share of",
        words_of("of out go left remaining down in done"),
        re.compile(
            r"# (?:of|out of) (?:my |the |all )?#(?: (?:sets|exercises|done|down|to go))"
            r"|# (?:sets?|exercises|more sets|more exercises|workouts?|sessions?) (?:to go|left"
            r"|remaining|down|in|done)\b|(?:only|just) # (?:to go|left)\b|# (?:more )?to go\b"
            r"|# down\b"
        ),
    ),
)
