"""Words of what is no record, as data: plans, questions, other people, warm-ups, numbers of something
else."""

import re

from domain.reading.words import PERSONS, words_of

_MASS = r"(?:kgs?|kilos?|kilograms?|kilogramm|lbs?|pounds?)"

_LEADS = (
    r"(?: (?:was|is|on|at|in|to|set|no|nr|number|position|height|and|the|of|hole|setting|=|:|still"
    r"|stays|now|at about|about|around|says|said|read|reads|showed|shows|like|hit|went|up|peaked"
    r"|averag\w+|max|it|this|morning|today))*"
)

OTHER_TRIGGERS = frozenset(PERSONS.replace("|", " ").split()) | {
    "he",
    "she",
    "they",
    "everyone",
    "someone",
    "somebody",
    "hes",
    "shes",
}

WARM_TRIGGERS = words_of("""warm warmup warmups warmed warming wu feeler ramp ramped primer""")

HISTORY_TRIGGERS = words_of(
    """last previously used normally usually back year years months old previous current pr pb best record
    max before past"""
)


def _any(words: str) -> frozenset[str]:
    return frozenset(words.split())


JUNK: tuple[tuple[str, frozenset[str], re.Pattern[str]], ...] = (
    (
        "a price",
        _any("€ $ £ euro euros eur usd dollar dollars bucks quid pence cents chf francs pln kr"),
        re.compile(
            r"# ?(?:€|\$|£|euros?|eur|usd|dollars?|bucks|quid|pence|cents|chf|francs|pln|kr)(?= "
            r"|$)|(?:€|\$|£) #(?: a| per)?"
        ),
    ),
    (
        "a heart rate",
        _any("bpm beats pulse heart heartrate hr"),
        re.compile(
            rf"# (?:bpm|beats|pulse)\b|\b(?:heart ?rate|heartrate|hr|pulse"
            rf"|bpm){_LEADS} #(?: / #)?"
        ),
    ),
    ("a blood pressure", _any("blood"), re.compile(rf"\bblood pressure{_LEADS} #(?: / #| over #)?")),
    (
        "a percentage",
        _any("% percent felt feel feels feeling moved looked seemed seems"),
        re.compile(r"# (?:%|percent)|(?:felt|feels?|feeling|moved|looked|seemed|seems) (?:more )?like #"),
    ),
    (
        "a temperature",
        _any("° degree degrees deg celsius"),
        re.compile(r"# ?(?:°|degrees?|deg|celsius)(?: [cf]\b)?"),
    ),
    (
        "a time",
        _any(
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
        _any("in sharp tonight this at"),
        re.compile(
            r"\b(?:at )?# in the (?:morning|afternoon|evening|am|pm|night)\b|\bat # (?:sharp"
            r"|tonight|this (?:morning|evening)|o clock)\b|\b(?:gym|went|started|train\w*|session"
            r"|class|there|up|woke|alarm|leave|left|work|meet\w*|arrived|finished|bed) at #(?= "
            r"|$)(?! (?:kgs?|kilos?|lbs?|pounds?|x|for|reps?))"
        ),
    ),
    (
        "a clock time",
        _any(":"),
        re.compile(r"\b(?:at|from|before|after) # : #|# : #(?= in the| this| last| tonight)"),
    ),
    (
        "a while",
        _any(
            "hr hrs hour hours h day days week weeks wk wks month months mth mths year years yr yrs"
            " fortnight fortnights night nights"
        ),
        re.compile(
            r"# (?:hrs?|hours?|h|days?|weeks?|wks?|months?|mths?|years?|yrs?|fortnights?"
            r"|nights?)\b(?: old)?"
        ),
    ),
    (
        "a length",
        _any(
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
        _any(
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
        _any("age aged turned turning turn im am hes shes is nearly almost yo y"),
        re.compile(
            r"\b(?:aged?|turned|turning|turn) (?:of )?#|\b(?:im|i am|hes|shes|he is|she is|nearly"
            r"|almost) #(?= |$)(?! (?:reps?|x|kgs?|kilos?|lbs?|pounds?|for|sets?|secs?|seconds?"
            r"|times|@|/|at|of|short|%))|# (?:yo|y o)\b"
        ),
    ),
    (
        "a setting",
        _any(
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
        _any(
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
        _any("rest rested resting rests break breaks pause paused pauses waiting waited between"),
        re.compile(
            r"\b(?:rest|rested|resting|rests|breaks?|paused?|waiting|waited)(?: (?:for|of|was"
            r"|about|only|between|sets|just|a|is|full|times?|:|the|whole|each|around))* # ?(?:s"
            r"|secs?|seconds?|mins?|minutes?|m|\"|')?|# ?(?:s|secs?|seconds?|mins?|minutes?"
            r"|m) (?:of )?(?:\w+ )?(?:rests?|breaks?|pauses?|between|in between)\b"
        ),
    ),
    (
        "a tempo",
        _any("tempo"),
        re.compile(r"\btempo (?:of |was |: )?#(?: [-/] #)*|# [-/] # [-/] # (?:tempo)"),
    ),
    (
        "how often",
        _any("times x"),
        re.compile(
            r"# (?:times|x) (?:a|per|every|each|this|in a|weekly) ?(?:week|day|month|year"
            r"|weekly)?\b"
        ),
    ),
    (
        "body weight",
        _any("weighed weigh weighing weighs weight body bodyweight bw scale scales weighin im am"),
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
        _any("lost gained lose gain put im am body bodyweight bw of down up"),
        re.compile(
            rf"\b(?:lost|gained|lose|gain|put on) (?:about |another |almost |nearly )?# {_MASS}\b"
            rf"|\b(?:im|i am) # {_MASS}\b|# {_MASS} (?:body ?weight|bw|of me)\b|\b(?:down"
            rf"|up) (?:about |almost |nearly |another )?# {_MASS} (?:since|this (?:week|month"
            rf"|year)|in (?:a|the|#|two|three)|over|already|so far|overall|on the scale)\b"
        ),
    ),
    (
        "a body weight",
        _any("body bodyweight bw"),
        re.compile(
            rf"\b(?:body ?weight|bw) # (?:{_MASS} )?(?:this morning|today|now|currently"
            rf"|before breakfast|on the scale)\b"
        ),
    ),
    (
        "not to be had",
        _any(
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
        _any("score scored won lost drew result match game"),
        re.compile(
            r"\b(?:score|scored|won|lost|drew|result|match|game)(?: (?:was|is|it|the|by|the match"
            r"|the game))* # ?[:-] ?#"
        ),
    ),
    (
        "so many of so many",
        _any("("),
        re.compile(r"\b(?:grandson|granddaughter|son|daughter|kid|nephew|niece|boy|girl)\w* \( # \)"),
    ),
    (
        "an effort",
        _any(
            "energy mood effort motivation stress sleep difficulty enjoyment form fun rating rated felt"
            " feeling feels tiredness fatigue soreness intensity hard tired"
        ),
        re.compile(
            r"\b(?:energy|mood|effort|motivation|stress|sleep|difficulty|enjoyment|form|fun"
            r"|rating|rated|felt|feeling|feels|tiredness|fatigue|soreness)(?: (?:was|is|of|like|a"
            r"|about|at|level|score|:|=|today|maybe))* # ?(?:/|out of|of) (?:10|#)|# ?(?:/"
            r"|out of) # (?:effort|energy|difficulty|intensity|mood|motivation|hard|tired)\b"
        ),
    ),
    (
        "a set's number",
        _any("set sets round rounds st nd rd th"),
        re.compile(
            r"(?<!# )(?<!first )(?<!second )(?<!third )(?<!last )(?<!final )(?<!next )(?<!top"
            r" )(?<!best )(?<!back )\b(?:sets?|rounds?) #(?= (?::|-|was|felt|\)|,|\.|of|went|only"
            r"|=|and|is|again)|$)|\b(?:sets?) # (?!x|reps?|@|times|kg|/ #)(?=#)|# (?:st|nd|rd"
            r"|th)(?= |$)"
        ),
    ),
    (
        "what it is not",
        _any("instead rather up down compared vs versus better beat beats beating opposed almost nearly not"),
        re.compile(
            rf"\b(?:instead of|rather than|(?<!and )(?<!or )up from|down from|compared to"
            rf"|compared with|vs|versus|better than|beats?|beating|as opposed to|almost|nearly"
            rf"|not quite)(?: got| hit| did| made| managed| had| a| another| my| the| last| old"
            rf"| a)*(?: (?:weeks?|times?))? #(?: {_MASS})?(?: (?:x|for|/|@"
            rf"|times) #)?(?: reps?)?(?= |$)"
        ),
    ),
    (
        "a share of",
        _any("of out go left remaining down in done"),
        re.compile(
            r"# (?:of|out of) (?:my |the |all )?#(?: (?:sets|exercises|done|down|to go))"
            r"|# (?:sets?|exercises|more sets|more exercises|workouts?|sessions?) (?:to go|left"
            r"|remaining|down|in|done)\b|(?:only|just) # (?:to go|left)\b|# (?:more )?to go\b"
            r"|# down\b"
        ),
    ),
)

PLAN_BEFORE = re.compile(
    r"\b(?:going for|go for|gonna|going to|will|ill|want to|wanna|want|wants|aim(?:ing|ed)?|goal"
    r"|my target|target (?:was|is|:|of|says)|the target|plan(?:ning|ned)?|hope|hoping|hoped|try (?:for|to"
    r"|and)|trying (?:for|to)|about to|thinking (?:about|of)|think ill|let me try|supposed to|meant to do"
    r"|meant to be doing|was meant to|were meant to|should (?:be doing|do|have done|hit|get|try)|wanted"
    r"|could have|couldve|would have|wouldve|might have|maybe next|id (?:like|love|have|rather)|if i"
    r"|if we|if you|it says|sheet says|sheet said|app says|app said|programme? says|programme? said"
    r"|says here|you said|you wrote|you put|you told|you had|you want|you wanted|you asked|you gave"
    r"|coach said|coach says|coach wrote|prescribed|on paper|tomorrow|soon|one day|someday"
    r"|dream(?:ing)? of|saving|next time|next week|next session|next workout|next month|by (?:christmas"
    r"|summer|easter|new year)|due to do|scheduled|ready for|looking forward to|aims|preparing for"
    r"|promise|build(?:ing)? (?:up )?to)\b"
)

PLAN_AFTER = re.compile(
    r"\b(?:next time|next week|next session|next workout|next month|tomorrow|soon|one day|some day"
    r"|someday|is the (?:plan|goal|target|aim)|was the (?:plan|goal|target|aim)|in my dreams"
    r"|by (?:christmas|summer|easter|new year)|next (?:monday|tuesday|wednesday|thursday|friday|saturday"
    r"|sunday)|was planned|were planned|is planned|planned)\b"
)

PLAN_TRIGGERS = words_of(
    """going go gonna will ill want wants aim aiming aimed goal target plan planning planned hope hoping
    hoped try trying about thinking think let supposed meant should wanted could couldve would wouldve
    might maybe id if says said wrote put told had asked gave prescribed paper tomorrow soon day someday
    dream dreaming saving next by due scheduled ready forward aims wanna preparing promise build building
    dreams"""
)

RESUME = re.compile(
    r"\b(?:but|only|so(?= #| just| only| went| did| lighter)|did|got|managed|ended up|actual|actually"
    r"|today|this time|instead|then i|so i|hit|settled|stuck|ended|made|in the end|in reality|turned into"
    r"|became|for now|however|was able|now)\b"
)

_KEEPS_PLAN = frozenset({"hope", "want", "if", "would"})

QUESTION_COMES_AFTER = words_of(
    """. , ! ? \n : ; ( ) - so and but or coach hi hey ok wondering question btw for please um uh sorry then
    also"""
) | {"\n", ""}

QUESTION = re.compile(
    r"(?:should|shall|can|could|would|do|does|did|is|are|am|was|were|will|may|might|what|whats|wats|how"
    r"|hows|why|when|which|who|where|any (?:tips|advice|idea|ideas|thoughts|chance)|isnt|arent|dont you"
    r"|cant i|couldnt i|shouldnt i|have i|has|if|whether|what if|must|ought)(?= (?:i|we|you|u|it|its|that"
    r"|this|the|these|those|my|there|they|anyone|to|a|an|is|are|do|does|did|should|can|could|would|much"
    r"|many|long|often|about|if|kind|sort|weight|heavy|reps|sets|load|exercise|exercises|means?|rest"
    r"|lower|high|low|he|she|was|were|on|exactly|happens|left|next|come|not|good|bad|better|best|have|of"
    r"|for|normal|ok|okay|safe|more|less|#|going|one|up|else|wrong|right|matter|worth|too|s|bench|squat"
    r"|squats|rows|dips|leg|your|any|tips|advice|idea|thoughts|chance|number)(?![^ ]))"
)

QUESTION_TRIGGERS = words_of(
    """should shall can could would do does did is are am was were will may might what whats wats how hows
    why when which who where any isnt arent dont cant couldnt shouldnt have has if whether must ought ?"""
)

QUESTION_FIRSTS = QUESTION_TRIGGERS - {"?"}

ASKING_WITHOUT_MARK = re.compile(
    r"^(?:should|shall|can|could|do|does|is|am|are|what|whats|how|why|when|which|where|any|isnt|would|may"
    r"|might|whether|if)\b"
)

STATEMENT = re.compile(
    r"^(?:is a|was|were|did|will|if|when|which|where|who|have|has|would|might|may|how (?:i|we)|what (?:i"
    r"|we) did)\b"
)

OTHER_SUBJECT = re.compile(
    rf"\b(?:(?:my|our|the|a|some|this|that|another|one|his|her"
    rf"|your)(?: \w+){{0,2}}? )?(?:{PERSONS})\b(?: \S+){{0,6}}? (?:did|does|do|got|gets|benched|benches"
    rf"|benching|lifted|lifts|lifting|squatted|squats|squatting|squat|deadlifted|deadlifts|deadlifting"
    rf"|deadlift|bench|hit|hits|hitting|pressed|presses|pressing|pulled|pulls|pulling|managed|can|curled"
    rf"|curls|curling|rowed|rows|rowing|repped|reps|repping|counted|counts|went|just|was|is|doing|warmed"
    rf"|put|had|has|made|loaded|used|uses|tried|with|dipped|moved|smashed|maxed|casually|warming|at|owns"
    rf"|says|said|thinks|cranked|banged|swears|claims|reckons|bet|held|holds)\b"
)

OTHER_PRONOUN = re.compile(
    r"\b(?:he|she|they|everyone|someone|somebody|hes|shes)(?: (?:just|only|even|casually|also|then"
    r"|easily))? (?:did|does|do|got|gets|benched|benches|lifted|lifts|squatted|squats|deadlifted"
    r"|deadlifts|hit|hits|pressed|pulled|managed|can|curled|curls|went|used|uses|was|is|had|has|repped"
    r"|reps|made|warmed|put|moved|counted|says|said|thinks|held|holds)\b"
)

BACK_TO_ME = re.compile(
    r"\b(?:i|me|mine|my turn|my (?:set|sets|bench|squat|deadlift|own|reps)|myself|im|ive|meanwhile i"
    r"|for me|we)\b"
)

NEXT_TO_ME = re.compile(
    r"\b(?:next to|beside|near|behind|in front of|opposite|with|by|across from|alongside|over|after"
    r"|before|than) (?:me|mine|my \w+)\b"
)

MY_OWN = re.compile(r"\b(?:i|me|mine|myself|ive)\b")

WARM = re.compile(
    r"\b(?:warm ups?|warmups?|warmed ups?|warming ups?|warm up sets?|warmup sets?|wu|feeler sets?|feeler"
    r"|ramp(?:ed|ing)? up|primer)\b"
)

WARM_ENDS = words_of(
    """then working work worked proper real top main actual heavy but afterwards actually after before first
    finally serious counted counting counts followed"""
)

HISTORY = re.compile(
    r"\b(?:last (?:time|week|weeks|month|session|workout|year|monday|tuesday|wednesday|thursday|friday"
    r"|saturday|sunday)|previously|used to|normally|usually|back in the day|a year ago|years ago"
    r"|months ago|(?:my |the )?(?:old|previous|last|current) (?:pr|pb|best|record|max)|(?:pr|pb|best"
    r"|record|max)(?: ever| so far| until now| up to now)? (?:was|is(?! now)|stands)|before (?:it )?was"
    r"|it was"
    r"|in the past)\b"
)

NOW = re.compile(r"\b(?:today|now|this time|but|so|this week|tonight|then|new|currently)\b")

_SECOND = re.compile(r"# (?:seconds?|secs?)\b")
