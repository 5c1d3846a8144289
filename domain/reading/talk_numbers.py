"""Numbers of what people tell beside their sets, as data: how long it all took, what is left, marks, sayings.

Of the world in itself: `other_numbers.py`; of the gym: `gym_numbers.py`.
"""

from domain.reading.other_numbers import LIFTED, Other
from domain.reading.patterns import Pattern
from domain.reading.words import words_of

_END = ">(,|.|!|'?'|')'|'('|;|-|'\n'|and|but|so|now|today|lol|haha|$)"
"""What ends a remark."""
_BEGIN = "(^|<(,|.|!|'?'|'('|;|-|:|'\n'|and|but|so|then))"
"""What stands before a remark."""
_CARDIO = """
    (treadmill|bike|exercise bike|rower|rowing machine|cross trainer|crosstrainer|elliptical|stepper|
        stairmaster
    |stair climber|erg|ski erg|spin bike)
"""
_EXTRAS = words_of(
    """abs ab core stretching stretches mobility cardio yoga pilates skipping jogging running walking foam
    intervals sprints conditioning hiit"""
)
_THINGS_TO_DO = words_of("exercise exercises workout workouts session sessions lift lifts station stations")

_WONDERED = (Other("a question", Pattern("(counts|count) as n:# (right|or|yes|yeah|'?')"), always=True),)
_HOW_LONG = (
    Other(
        "a while",
        Pattern(
            """
            {done} [all|it|just|quick|quickly]* (in|within|inside|after|under) ..1 n:(# [(:|h) #]) {end}
            # h [#] !({lifted})
            ((total|whole|overall|gym|session) time|in total) [was|is|of|:|about|around]* n:(# [(:|
                h) #]) !({lifted})
            {covered} ..2 in n:(# : #)
            {event} ..3 {moved} ..2 (to|till|until|at) #
            (late|early|here|there) , n:(# : #)
            (to|a|long|the) wait [of|was|for|about]* #
            (took|had|needed|takes|with) [a|about|only|just]* n:# {off}
            # times (better|worse|easier|harder|nicer|stronger|faster|slower|{more} _) !({lifted})
            """,
            more="more|less|as",
            event="meeting|call|appointment|class|lesson|shift|flight|dinner|lunch|session|zoom|interview",
            moved="moved|pushed|shifted|postponed|brought forward|put back|delayed|rescheduled",
            done=words_of("done finished wrapped through over sorted home out finito complete completed"),
            covered=words_of("k km miles run ran parkrun mile rowed row jog jogged walk walked cycled ride"),
            off="(before (it|that|them|this|starting|the)|between {sets}|in between|to {rest})",
            sets="[the|my]* (set|sets|each|them|exercises)",
            rest="(recover|breathe|rest)",
            end=_END,
            lifted=LIFTED,
        ),
    ),
)

_BESIDE_TRAINING = (
    Other(
        "something else done",
        Pattern(
            """
            {cardio} ..2 [(at|on|level) #] for #
            # [[easy|quick|more]* on] [the|a|my]* {cardio}
            # [[good|easy|quick|more]* (of|on)] ({extras}) !(reps|x)
            ({extras}|rolled|rolling|stretched|jogged|walked|skipped) [it|out|after|,]* for #
            # (round~|set~) of [the|some|my|a]* ({extras})
            ({extras}) [circuit|work]* [after|before|then|,|:|-]* # (round~|set~)
            zone # [for #]
            # (x|*) # (min|mins|minutes|m|km) ..2 (on [the|a|my]* {cardio}|run|rowing|row|sprints|intervals)
            # (school|dog|shop|coffee) (run|runs|walk|walks)
            """,
            cardio=_CARDIO,
            extras=_EXTRAS,
        ),
        always=True,
        beside=True,
    ),
    Other(
        "a length",
        Pattern("# k >(first|before|after|to|home|warm|easy|yesterday|this|in|there|later|tomorrow)"),
        most=42,
        beside=True,
    ),
)

_AROUND_TRAINING = (
    Other(
        "a time",
        Pattern(
            "{event} [is|was|starts|start]* at # [[,|then|and|/]* # [[,|then|and|/]* #]] !({lifted})",
            event="(exam|exams|meeting|meetings|lecture|lectures|appointment|appointments|call|calls|interview"
            "|interviews|flight|flights|dentist|doctor|physio)",
            lifted=LIFTED,
        ),
        most=24,
        always=True,
    ),
    Other(
        "how many people",
        Pattern("(queue|line|crowd|class|team|waiting list) of n:# !({lifted})", lifted=LIFTED),
        always=True,
    ),
    Other(
        "what is to come",
        Pattern(
            "n:# [kg|kgs|kilos|lb|lbs] (here (i|we) come|[is|are] {coming})",
            coming="(coming (soon|next|up)|incoming|calling [me|us])",
        ),
        always=True,
    ),
    Other(
        "what it felt like",
        Pattern("the # [kg|kgs|kilos|lb|lbs] (felt|feels|looked|moved) like #"),
        always=True,
    ),
    Other(
        "what something weighs",
        Pattern(
            """
            my {thing} (is|weighs|was|weighed) [about|around|over]* n:# [{mass}] !(x|for)
            (this|that) (is|makes) n:# {things}
            """,
            thing="(bag|backpack|rucksack|suitcase|dog|cat|kid|baby|toddler|son|daughter|niece|nephew|bike|cart)",
            mass="kg|kgs|kilos|kilo|lb|lbs|pounds",
            things="(bags|backpacks|suitcases|dogs|cats|kids|babies|toddlers|bikes)",
        ),
        always=True,
    ),
)

_WHAT_IS_LEFT = (
    Other(
        "so many still to do",
        Pattern(
            """
            (still|only|just|another|got|have) n:# [more|left]* to (do|go) {end}
            n:# left to (do|go)
            # [more|exercises|things]* left (on|in) (the|my|todays) (list|plan|menu|sheet|workout)
            # _ down [,|and]* # (to go|left|more)
            [the] last n:# [exercises|lifts|ones]* (today|tomorrow|later|to come)
            (next up|up next|next) is (number|no|nr|exercise) n:#
            """,
            end=_END,
        ),
        most=12,
    ),
    Other(
        "a share of",
        Pattern(
            """
            {things} # (of|/|out of) #
            # (of|/|out of) # {things}
            {done} # (of|out of) # (,|.|!|-|so|and|what|whats|$)
            # / # (done|ticked|finished|complete|completed|to go|down)
            (halfway|half way|half done|half time) [through]* ,? # (of|/|out of) #
            """,
            things=_THINGS_TO_DO,
            done="(did|done|finished|through) [only|just|all|with]*",
        ),
        most=12,
    ),
    Other(
        "a share of",
        Pattern("{begin} # (of|out of) # {end}", begin=_BEGIN, end=_END),
        most=12,
        beside=True,
    ),
)

_MARKS = (
    Other(
        "a while",
        Pattern("{begin} n:# and (out|home|gone|off|showered) {end}", begin=_BEGIN, end=_END),
        beside=True,
    ),
    Other(
        "what was before",
        Pattern(
            """
            not my best , that was # [(x|for) #]
            all time best [is|was|still|:]* # {end}
            once (did|had|managed|got|hit) # {end}
            """,
            end=_END,
        ),
        always=True,
        beside=True,
    ),
    Other(
        "a score",
        Pattern(
            """
            {begin} [{fair}]* # out of # [today|for (me|us|now)|would _ again|again]* {end}
            """,
            fair="solid|strong|good|decent|easy|weak|proud|poor|low|high|hard|clear|big|comfortable|shaky|fun|firm",
            begin=_BEGIN,
            end=_END,
        ),
        most=10,
        always=True,
        beside=True,
    ),
    Other(
        "a score",
        Pattern(
            """
            (won|lost|beat (him|her|them)|drew) [it|by]* # [to #] [[,] #|(-|:) #]*
            par # ....3 shot [a|an|#]* #
            """
        ),
        always=True,
    ),
)

_SAYINGS = (
    Other(
        "a saying",
        Pattern(
            """
            # cheers (for|to)
            # thumbs up
            # for # (deal~|offer~|special)
            n:# (is (coming|calling|next)|here (i come|we come|we go)|or bust|calling my name|awaits)
            # espresso~
            (table|dinner|lunch|breakfast|booked|cooked|cooking|reservation) for # [at #]
            # x # (is a classic|isnt for me)
            # of # _ (broken|closed|out|taken|free|working|gone|cancelled)
            (collar|collars|clip|clips) (weigh|weighs|are|is) # [each]
            # steps (forward|forwards|back|backwards|ahead|closer)
            cloud #
            # ({sort}) (benches|racks|machines|barbells|bars|dumbbells|mats|boxes) !(for|x|at|:|#)
            {kit} # (benches|racks|machines|barbells|bars) !(for|x|at)
            of the # (benches|racks|machines|barbells|bars|of us)
            ({people}) ....3 # of them
            {never_so} n:# '?' ['?']* [no|nah|lol|haha|ha|,]* (never|no way|as if|{dream})
            # of them (came|left|looked|watched|stared|laughed|clapped|cheered)
            (open|access|on call|around) # #
            (like|as if|as though) (i|we) (was|were|am) # again
            # : # (fasting|fast|diet)
            # in # (chance|odds)
            # to # (it|that|against|odds)
            odds ..2 # to #
            # / # (if|whether|chance)
            passed (with|at) #
            missed # {rides}
            """,
            sort="new|old|more|extra|different|spare|broken",
            never_so="<!(x|for|*|@)",
            dream="in my dreams|dream on|not a chance",
            people=words_of(
                """people persons guys lads kids pupils students colleagues patients residents neighbours
                grandchildren children teenagers boys girls blokes women men fans players guests visitors"""
            ),
            kit="(have|has|had|got|are|were|with|left) [only|just|like]*",
            rides=words_of(
                """bus buses train trains calls call trams tram flights meals lifts meetings days sessions
                workouts classes appointments"""
            ),
        ),
        always=True,
    ),
    Other(
        "a temperature",
        Pattern("(minus|'-') # (in|inside) (the|my|our|this) _ !(#)\n(minus|'-') # (here|today|degrees)"),
    ),
)

OF_TALK = (*_WONDERED, *_HOW_LONG, *_BESIDE_TRAINING, *_AROUND_TRAINING, *_WHAT_IS_LEFT, *_MARKS, *_SAYINGS)
