"""Numbers of the gym that are no loads, reps or seconds of a set, as data: rests, settings, efforts."""

from domain.reading.other_numbers import LEADS, LIFTED, MASS, Other
from domain.reading.patterns import Pattern
from domain.reading.words import PERSON_WORDS, REP_ADJECTIVES, words_of

_SECONDS = words_of("s sec secs second seconds")

_MACHINES = (
    Other(
        "a setting",
        Pattern(
            """
            <!(front|back|human) {seat} {leads} # [{th}] !({lifted})
            # {th} (hole|notch|setting|rung)
            (seat|bench|pad|pin|cable) (number|no|setting|height|position) ..6 (is|was|=|:) [now|still]* #
            {fixed} [is|was|set]* {at} [the|a]* {place} [no|number]* #
            (flat|machine|room|house|seat) # (is|was|had|has|were)
            """,
            seat="""
                seat|backrest|back rest|setting|notch|height|lever|rung|rack|peg|pegs|safety|safeties|pad
                roller|cable height|bench angle|angle|foot plate|footplate|handle
            """,
            th="st|nd|rd|th",
            fixed="(bar|rings|ring|box|bench|straps|strap|rope|safeties)",
            at="(in|on|at|to|from)",
            place="(hole|notch|hook|rung|position|setting|slot|peg|step)",
            leads=LEADS,
            lifted=LIFTED,
        ),
        always=True,
    ),
    Other(
        "which one of the gym's",
        Pattern(
            """
            (on|at|by) [the] (bench|rack|machine|platform|station) # (:|,|-|by|near|next|was|is)
            (rack|machine|platform|station|cable|bench|bay|treadmill|tower) # (is|was) [finally|actually|
                even|still]* (free|taken|busy|open|empty|broken|available|occupied|mine)
            """
        ),
        most=20,
    ),
    Other(
        "a number of something else",
        Pattern(
            """
            ({thing}|exercise number) # !({lifted}|@|/|for|times|reps|rep)
            floor # !({lifted}|@|/|for|# (rir|rpe|,|.|$))
            (^|<(.|!|;|'\n')) [thats|and]* all # [done|finished|in the bag|sorted|
                of them|exercises|lifts]* (.|!|$)
            """,
            thing=words_of(
                """song track episode chapter page room bus line day week number nr locker gate platform
                bay level phase block cycle workout session rotation station playlist version tram train
                channel visit top rank place table ward court lane pitch km mile kilometre grade season stage
                round pint"""
            ),
            lifted=LIFTED,
        ),
    ),
    Other(
        "none of something",
        Pattern(
            "n:# {thing}\n<!(#|x|for|at|kg|lb) n:# (now|today|anymore)",
            thing=words_of(
                """gym gyms weights equipment sleep time motivation energy chance idea clue fun coffee food
                kit drama complaints excuses regrets issues problems pain breaks days"""
            ),
        ),
        most=0,
    ),
    Other(
        "a bar's weight",
        Pattern(
            """
            bar [itself|here|there]* (is|weighs) [only|about|a|just]* # [{mass}] !(x|for|/|#)
            (includes|including|include|incl|counting|plus|without|excluding) [the|a|my|of]* # [{mass}] bar
            """,
            mass=MASS,
        ),
        always=True,
    ),
    Other(
        "reps at which it went",
        Pattern(
            """
            ({went}) ..2 (on|at|by|from|around|after) [the|rep|reps|number|numbers|like]* # (and|&|to|-|or) #
            """,
            went="""
                rounded|rounding|shook|shaking|wobbled|wobbly|slowed|cheated|swung|grinded|ground|bounced|ugly
                (form|technique|back|knees|hips|elbows|grip|tempo|speed|depth) (broke|went|got|was|slipped)
                (broke|breaking|fell|falling) (down|apart)|slipped|slipping|caved|struggled|struggling|tough
                shaky|messy|sloppy|burned|burning
            """,
        ),
        always=True,
    ),
    Other(
        "steps of the load",
        Pattern(
            "# (more|extra|fewer|less) {step} !(x|for)",
            step=words_of(
                "plate plates pin pins hole holes notch notches disc discs click clicks stack stacks"
            ),
        ),
    ),
    Other(
        "what there is",
        Pattern(
            "{got} [some|finally|just]* new ..2 {things} {more} # {more} {more}",
            got="(has|have|got|bought|ordered|get|gets|getting)",
            things=words_of("plates dumbbells kettlebells weights discs bumpers bells bars bands"),
            more="[,|a|and|or|x|*|:|{mass}|#]*",
            mass=MASS,
        ),
    ),
    Other(
        "what there is",
        Pattern(
            """
            {have} [only|just|the|a|pair|pairs|of|both|some]* # {more} {things} {there}
            """,
            more="[s|,|and|or|/|{mass}|#]*",
            there="(here|at home|available|to choose|lying around|to pick from)",
            have="have|got|ive|own|there (is|are)|(gym|hotel|they|we) (has|have|had)|only has",
            things="[{mass}|s|{thing}]*",
            thing=words_of("dumbbell dumbbells kettlebell kettlebells plate plates one ones db dbs bells"),
            mass=MASS,
        ),
    ),
    Other(
        "not to be had",
        Pattern(
            """
            {never} ..1 (find|get hold of|have|reach|see|use|had) [the|any|a|my]* # !(rep|reps|x|for)
            (missing|nicked|stolen|hogging|hogged|took|taken|using) [all|both|the|their]* the # [s|
                {mass}] >(so|,|.|and|then|today|again|$)
            the # [s|{mass}] [{things}] (were|was|are|is|had) [all|both|always|already|still] {gone}
            """,
            never="couldnt|cant|didnt|no|dont|nobody|never",
            things=words_of("dumbbell dumbbells kettlebell kettlebells plate plates one ones db dbs bar"),
            gone="taken|gone|missing|busy|in use|occupied|broken|not there|being used|hogged",
            mass=MASS,
        ),
    ),
)

_PACE = (
    Other(
        "rest",
        Pattern(
            """
            {rested} [{how_long}]* # [: #]
            (pause|pauses|paused) [{how_long}]* # [: #] !([{mass}] (x|for|*|@))
            (break|breaks) [{how_long}]* # [: #] !([{mass}] (x|for|*))
            # {duration} of? ..1 {rest}
            """,
            rested=words_of("rest rests rested resting waiting waited"),
            rest="rest|rests|break|breaks|pause|pauses|in? between",
            mass=MASS,
            how_long=words_of(
                "for of was about only between sets just a is full time times : the whole each around"
            ),
            duration=_SECONDS | words_of("min mins minute minutes m"),
        ),
    ),
    Other(
        "a tempo",
        Pattern(
            """
            tempo [of|was|:] # [(-|/) #]*
            {slow} [,|-|at|with|for|and]* # {seconds} (each|every|per|down)
            # (-|/) # (-|/) # tempo
            x # (with a?|,) n:# {seconds} (hold|holds|pause|pauses)
            """,
            seconds=_SECONDS,
            slow=words_of(
                "slow slowly lowering lowered negatives negative negs controlled eccentrics eccentric"
            ),
        ),
    ),
    Other(
        "a comparison",
        Pattern(
            """
            (thats|its|that is|it is|which is|this is) [a|about|like|already|even]* # [{count}] {more}
            """,
            count=words_of(
                "rep reps repetition repetitions sec secs second seconds s kg kgs kilo kilos lb lbs"
            ),
            more=words_of("more less fewer better up down longer heavier"),
        ),
    ),
    Other(
        "long ago",
        Pattern(
            "# [{unit}] {other} (on|than|from|since) [in|last]* {month}",
            other="(up|down|more|less|fewer|lighter|better|heavier)",
            unit=MASS,
            month=words_of(
                """january february march april june july august september october november december christmas
                easter spring summer autumn winter year"""
            ),
        ),
        always=True,
    ),
    Other(
        "the number of a thing",
        Pattern(
            "# [,|on|at|in]* (machine|station|platform|bay|locker|room) n:# [today|again]* (>(,|.|!)|$)",
        ),
        most=50,
    ),
    Other("another's", Pattern("# (more|less|fewer) than (my|his|her|your|him|them|she|he|the)")),
    Other(
        "a comparison",
        Pattern(
            "# [rep|reps|{unit}] (more|less|fewer) than [on|i did|i got|it was]* {then}",
            unit=MASS,
            then="""
                (yesterday|monday|tuesday|wednesday|thursday|friday|saturday|sunday|usual|expected|ever
                |planned|normal|thought|i (thought|expected|planned|hoped))
            """,
        ),
    ),
    Other(
        "some of those told",
        Pattern(
            """
            (thereof|whereof|of (which|those|these|them)|including) [the|last|about|only]* #
            incl [the|last|about|only]* # !(s|x|for|kg|lb|@|#)
            (last|first) # [reps|ones|of them]* [were|was|felt|very|really|a bit|with]* {how}
            (the|my|last|first|final) # (s|sec|secs|second|seconds) (were|was|felt|got|hurt)
            # (s|sec|secs|second|seconds|rep|reps) , n:# of (them|those|these|which) _
            all n:# of (them|us|those|these|you)
            (and|but|,) [only|just]* n:# of (them|those|these|which) [reps|ones]* (were|was|felt)
            """,
            how=REP_ADJECTIVES | words_of("bad messy sloppy assisted help cheated rough awful grinders"),
        ),
    ),
    Other(
        "another's",
        Pattern("(swears|swear|lives|sworn) by # [x] #\n(classic|famous|old|good old) # x #"),
    ),
    Other(
        "how often",
        Pattern("""
        # (times|x) (a|per|every|each|this|in a|weekly) !(side|sides|leg|arm|hand|foot|knee)
        # !(x|for|once|twice|times) ..3 !(once|twice|times) (a|per|every|each) (day|week|month)
    """),
    ),
)

_EFFORTS = (
    Other(
        "another's count",
        Pattern(
            """
            ({person}) [only|just|even|clearly]* {counts} [it|that|was|as|i|did|got|only|had|at]* n:# {no_set}
            according to [my|the] ({person}) [it was|,|i did]* n:#
            n:# [reps] (if you (ask|believe)|according to|(says|said|claims|swears|reckons) (my|the|{person}))
            """,
            person=PERSON_WORDS | words_of("coach he she they mirror phone watch app camera video"),
            counts=words_of("counted counts says said reckons swears claims claimed makes thinks insists"),
            no_set="!(x|for|*|@|kg|kgs|lb|lbs|min|mins)",
        ),
        most=50,
    ),
    Other(
        "a score",
        Pattern(
            "({felt}) [:|=|was|is|at|about|a|level|score|today]* # [(/|out of) #] !({lifted})",
            felt=words_of(
                """sleep stress mood energy motivation soreness fatigue difficulty effort intensity readiness
                hunger enjoyment pump rating"""
            ),
            lifted=LIFTED,
        ),
        most=100,
    ),
    Other(
        "what a load is made of",
        Pattern(
            """
            <!(x|for|*|@|:) # [{mass}] [{a_side}] {and_more} (=|makes|totals) >(# [{mass}] {x})
            """,
            a_side="(a|each|per|/) (side|hand)",
            and_more="[+|and|plus|the|bar|a|#|{mass}]*",
            x="(x|for|*|@|,|reps)",
            mass=MASS,
        ),
    ),
    Other(
        "what a load is made of",
        Pattern(
            """
            # (x|for|*|@) # [rep|reps] '(' n:({of_it}) ')'
            <!(x|for|*|@|:) # [{mass}] '(' n:({of_it}) ')' >((x|for|*|@|,|:) #|# (rep|reps)|.|$|'\n')
            """,
            of_it="....9 (plate|plates|side|hand|bar|collars|discs) ....6",
            mass=MASS,
        ),
        always=True,
    ),
    Other(
        "how many are held",
        Pattern(
            """
            n:# (dumbbells|kettlebells|bells|dbs|kbs) (of|at|weighing) >(#)
            (with|w|using|holding|at|on) [the|my]* n:# >(# s !({lifted}))
            """,
            lifted=words_of("sec secs seconds"),
        ),
        least=2,
        most=2,
        always=True,
    ),
    Other(
        "a sum",
        Pattern("# [reps] (=|equals|makes|thats|total~) n:# [{mass}] !(x|for|*|@|rep|reps|/|,)", mass=MASS),
        least=100,
    ),
    Other(
        "an effort",
        Pattern("rpe # (/|out of) n:#"),
    ),
)

OF_THE_GYM = (*_MACHINES, *_PACE, *_EFFORTS)
