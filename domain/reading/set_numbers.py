"""Numbers that tell which set or which reps are meant, or of how many, and are none of a set, as data."""

from domain.reading.other_numbers import LIFTED, MASS, Other
from domain.reading.patterns import Pattern
from domain.reading.words import PERSON_WORDS, words_of

OF_SETS = (
    # "14st" are stones.
    *(Other("a set's number", Pattern("# st"), number, number) for number in (1, 21, 31)),
    Other(
        "some reps of a set",
        Pattern(
            """
            (on|in|at|during|of|from|for) [the|my] (last|first|final) # (rep|reps|one|ones)
            (last|first|final) # [rep|reps|one|ones] [of (them|those|these)] {how}
            """,
            how="[so|very|really|pretty|quite|super|a bit|kinda|all]* "
            "(ugly|slow|hard|tough|grindy|easy|rough|shaky|messy|sloppy|brutal|terrible|awful|cheated|partial"
            "|partials|assisted|spotted|were|was|felt|barely|grinders|grinder|dodgy|iffy|horrible|painful)",
        ),
    ),
    Other(
        "some reps of a set",
        Pattern(
            """
            (+|plus) n:# (kipping|kipped|cheat|cheats|cheaty|ugly|{helped})
            n:# (more|extra|further) [rep|reps] (with (help|assistance|[a] (spot|spotter))|assisted|{helped})
            n:# of (them|those|these|which) [were|was|are|only|just]* ({helped})
            """,
            helped="partial|partials|forced|spotted|cheated",
        ),
        most=20,
        always=True,
    ),
    Other(
        "some reps of a set",
        Pattern(
            """
            (rep|reps) n:(# [(and|&|to|-|,) #]) [{was}]* {how}
            (paused|pausing|held) (the|my) (first|last|top) n:#
            (slipped|wobbled|shook|shaking|cheated|struggled|slowed|stuck) ..1 (on|at|from|after) {rep} n:#
            """,
            was="was|were|felt|got|went|really|very|a bit|bit|kinda|so",
            how="(slow|ugly|hard|tough|grindy|shaky|messy|sloppy|brutal|rough|iffy|dodgy|wobbly|easy)",
            rep="[the|rep|reps|number]*",
        ),
        most=30,
        always=True,
        beside=True,
    ),
    Other(
        "a set's number",
        # As in "squat 1: 115x5, squat 2: 115x4".
        Pattern("<!(#|{unit}|x|for|@|at|with|,|.|-|/) n:# : >(# [{unit}] (x|for|@|'*') #)", unit=MASS),
        least=1,
        most=6,
        always=True,
    ),
    Other(
        "some reps of a set",
        Pattern(
            "<!({failed}) (at|on|around|about|by|after|during|from) (rep|reps) [no|number] n:#",
            failed="failed|failing|fail|died|missed|stuck|stopped|stalled|racked|up|in|ended|quit|finished"
            "|right|again|out|down",
        ),
        most=30,
        always=True,
        beside=True,
    ),
    Other(
        "a set's number",
        # As in "squat 1 - 115x5, 2 - 115x4" and "squat (1) 115x5".
        Pattern(
            """
            {set} [,|;]* n:# (:|-|')') >({set})
            n:# (:|-|')') >({set} [,|;]* # (:|-|')') {set})
            '(' n:# ')' >({set})
            """,
            set=f"# [{'|'.join(sorted(MASS))}] (x|for|'*') #",
        ),
        least=1,
        most=6,
        always=True,
    ),
    Other(
        "a number of something else",
        Pattern("all n:# ..3 (are|were|is) (taken|busy|occupied|in use|broken|full|gone|out of order|used)"),
        most=20,
        always=True,
    ),
    Other(
        "how many were done",
        Pattern("(did|done|finished|hit|got) [through] all n:# [of (them|it)|exercises|lifts|today]* :"),
        most=12,
        always=True,
    ),
    Other(
        "how many were done",
        Pattern(
            """
            (got|did|managed|only|just|done) [only|just]* the first n:# [exercises|ones|lifts]* (in|done|
                only|,|:)
            """
        ),
        most=9,
    ),
    Other(
        "a number of sets",
        Pattern(
            "all of? [the|my|these|those] # {of_them} (were|are|felt|went) {very}"
            " !(at|for|with|to|done|only|just) _",
            of_them="[set|sets|of (them|those|these)]",
            very="[so|very|really|pretty|quite|super|too|a bit]*",
        ),
    ),
    Other(
        "a set's number",
        Pattern(
            """
            <!(#|{nth}|next|back|last|final|other|nd|rd|th|st|{sort}) (set|sets|round|rounds) # >({goes_on})
            <!(first|st|nd|rd|th|{sort}) set # >(#)
            <!(#|{sort}) sets # >(#)
            # (nd|rd|th)
            set n:# >((:|-) # [{mass}] (x|for|*|@))
            (№|s) n:# [:|.|')'|-|=]* >(# [{mass}] (x|for|*|@|#))
            """,
            mass=MASS,
            nth="first|second|third|fourth|fifth",
            sort=words_of(
                "drop dropped strip down off super giant cluster working work heavy light easy hard"
            ),
            goes_on="""
                :|-|was|felt|')'|,|.|of|went|only|=|and|is|again|$
                to failure|till failure|failed|hard|easy
            """,
        ),
    ),
    Other(
        "what it is not",
        Pattern(
            """
            {didnt} [really|{do}|the|with|at|for|my]* n:# [{mass}] {then} ..3 {did} {slightly} {a_set}
            {wasnt} [the|at]* n:# [{mass}] [,|but|.|and|-|;]* (it|that|this)? was {slightly} >(#)
            """,
            then="..3 (,|but|.|and|-|;)",
            didnt="didnt|couldnt|never",
            do=words_of("do get manage use lift make take have load"),
            did=words_of("did got was used managed had made used took lifted"),
            wasnt="wasnt|werent",
            slightly="[only|just|actually|more like|really]*",
            a_set=">(# [{mass}] (x|for|*|@|/|#|,|reps))",
            mass=MASS,
        ),
        least=13,
        always=True,
    ),
    Other(
        "what it is not",
        # The set of before, told in brackets or right behind the one of today.
        Pattern(
            """
            '(' {before} [time|times|week|set|best|one|was|it|:|=]* n:({set}) [kg|{before}|time|week]* ')'
            '(' n:({set}) {before} [time|times|week|one|session|on|{day}]* ')'
            {set} [,|'('|-]* (was|from) n:({set}) [{before}|time|week]* (>(,|.|!|')')|$)
            """,
            set=f"# [{'|'.join(sorted(MASS))}] (x|for|'*') #",
            before="last|prev|previous|previously|before|old|was|from|pb|pr|best|lastweek",
            day="monday|tuesday|wednesday|thursday|friday|saturday|sunday",
        ),
        always=True,
    ),
    Other(
        "what it is not",
        Pattern(
            "{other_than} [{whose}]* [week|weeks|time|times] # [{mass}] [(x|for|/|@|times) #]",
            other_than="""
                instead of|rather than|<!(and|or) up from|down from|compared (to|with)|vs|versus|better than
                beat|beats|beating|as opposed to|almost|nearly|not quite
            """,
            whose=PERSON_WORDS
            | {f"{person}s" for person in PERSON_WORDS}
            | words_of("got hit did made managed had a another my the last old his her hers"),
            mass=MASS,
        ),
    ),
    Other(
        "a share of",
        Pattern(
            """
            # (of|out of) [my|the|all] # (sets|exercises|done|down|to go|{things})
            # [rep|reps] (out of|of the) [planned|target|possible]* n:# !({lifted}|sets)
            # of n:# [reps|done|planned|in total] (>(,|.|!|')')|$)
            # more? {parts} (to go|left|remaining|down|in|done)
            (only|just) # to go
            # (more? to go|down)
            """,
            parts=words_of("set sets exercise exercises workout workouts session sessions"),
            things=words_of(
                "numbers messages people days workouts sessions weeks machines racks kids lads times"
            ),
            lifted=LIFTED,
        ),
    ),
    Other("a share of", Pattern("(only|just) # left"), unless=words_of("right r")),
)
