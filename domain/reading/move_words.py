"""Turns of phrase for a workout on another day, as data: that it is moved, that it cannot be today, that it
will be then."""

from domain.reading.patterns import Pattern
from domain.reading.words import words_of

WEEKDAY = words_of("monday tuesday wednesday thursday friday saturday sunday")
_WEEKDAYS = frozenset(day + "s" for day in WEEKDAY)
_SHORT_WEEKDAY = WEEKDAY | words_of("mon tue tues wed thu thurs fri sat sun")

THE_WORKOUT = """
    workout|workouts|work out|work outs|training|trainings|session|sessions|gym|class|practice|everything
    today|todays|tomorrow|tomorrows|the day
    leg day|legs|push day|pull day|lower|upper
    it|this [one]|that
    ({weekday}|{weekdays}) [session|workout|training]
"""
"""What a workout is called: "my session", "leg day", "Friday's training"."""
WEEKDAY_LISTS = {"weekday": WEEKDAY, "weekdays": _WEEKDAYS}

MOVE = Pattern(
    """
    {move} [the|my|this|todays|our|it|that|off|back|up]* ({workout}) [{beside}]*
    {put_off} (to|until|till|by|for|off to) [next|this|coming] (tomorrow|{short_weekday})
    (put|puts|putting|puttin|holding|hold) [the|my|our|this|todays]* ({workout}) [session|
        workout|training|gym|class]* (off|over) [until|till|til|to|for|a|by]*
    {slide} [the|my|our|this|todays]* ({workout}) [session|workout|training|gym|class]* [over|
        back|on|off|along]* (to|until|till|til|for|into) [the|next|this|coming]* >(tomorrow|
        {short_weekday}|week|weekend)
    {put_off} me [over|back]* (to|until|till|for) [the|next|this|coming]* >(tomorrow|{short_weekday})
    (rain check|raincheck|rainchecking) [on|for|the|todays|today|training|gym|this|one|it]* [till|
        until|til|to|for]*
    ({workout}) [is|was|has been|got]* (moved|shifted|pushed|rescheduled|postponed) (to|until|till|for)
    ({workout}) [session|workout|training]* {becomes} ([on|for|the]* ({short_weekday}|tomorrow))
    (^|<(.|!|,|;|'\n')) [so|the|my|todays|please]* ({workout}) [workout|session|lift]* to >({short_weekday}|
        tomorrow)
    (training|session|workout) [from|of|for|today|todays]* i (make|do|train) >([on|at]* ({short_weekday}|
        tomorrow))
    (training|session|workout) (is|s|will be) [on|for]* ({short_weekday}|tomorrow) (now|instead)
    (put|putting) (it|this|that|{the_one}) off
    {keep} (it|this|that|{the_one}) (for|till|until) [the|next] ({weekday}|tomorrow)
    (push|pushing|move|moving) (it|this|that|today|training|{the_one}) [off|back] (to|until|till|for)
    ({workout}|itll) ..3 (wait|waits) (until|till|til|for) ({weekday}|tomorrow)
    the rest !(day|days) [of {unfinished}] ..4 ([on] {weekday}|tomorrow|next time)
    'the' (other|last) (ones|two|three|four|#) {then}
    the remaining (bits|bit|stuff|part|parts|ones|exercises|work|sets|two|three|four|#) {then}
    (everything else|the others|[the] other half|[the] second half) {then}
    (finish|finishing|continue|continuing) [it|this|up|off|the|my|workout|session|training]* {then}
    {finish} ..2 the? {remaining} ..4 ([on] {weekday}|tomorrow)
    """,
    move="""
        move|moving|moved|shift|shifting|shifted|push|pushing|pushed|bump|bumping|transfer
        postpone|postponing|postponed|delay|delaying|put off|putting off
        reschedule|rescheduling|rescheduled|change|swap|swapping|switch|switching|lay|laying
    """,
    keep="leave|leaving|left|save|saving|keep|keeping",
    becomes="(goes|slips|slides|gets moved|moves|is moving|is going) [over|back]* to|becomes|turns into",
    slide="""
        shove|shoving|shoved|kick|kicking|kicked|roll|rolling|rolled|slide|sliding|slid|nudge|nudging|bounce|bouncing
        slip|slipping|carry|carrying|defer|deferring|deferred|drag|dragging
    """,
    the_one="(the|my) (workout|session|training)",
    put_off="""
        move|moving|moved|shift|shifting|shifted|push|pushing|pushed|rescheduled|postponed|delayed
        postpone|postponing|delay|delaying|put off|putting off|reschedule|rescheduling|bump|bumping|bumped
    """,
    workout=THE_WORKOUT,
    beside="""
        workout|session|training|gym|one
        off|back|over|to|on|until|till|for|from|by|forward|a day|into|after
    """,
    unfinished="""
        it|them|this|my workout|todays [workout|session]
        the (workout|session|exercises|plan|list)
    """,
    finish=words_of("finish finishing do doing complete continue completing"),
    remaining="rest|remaining|remainder|other (half|exercises|ones)|second half|others",
    then="""
        [will be|will have to be|has to be|comes|goes|to do|to follow|is for|for]* ([on] {short_weekday}|
            tomorrow)
    """,
    short_weekday=_SHORT_WEEKDAY,
    **WEEKDAY_LISTS,
)

AS_USUAL = Pattern(
    """
    [{hour}]* [then|,]* (as|like) [per|always]* (usual|planned|normal|always|ever|scheduled|before|agreed)
    [{hour}]* [then|,]* (same (time|as) [as]* [always|usual|ever]*|no change|business as usual|
        is still on|stands)
    (too|as well|also) (>(.|,|!|'?')|$)
    """,
    hour="morning|afternoon|evening|night|at|#|:|am|pm|oclock|o clock",
)
"""What makes the day before it one on which the client trains anyhow."""

SOME_LATER_DAY = Pattern(
    """
    [off|back|over|on|out]* (to|until|till|til|into|for) [the|this|next|some|another]* (weekend|week|
        other time|day|later)
    """
)
"""A later day that must be asked for."""

WILL_TRAIN = Pattern(
    """
    {will} ..1 {train}
    (can|could|shall|lets|may) we? (say|make it) >([on] {short_weekday}|tomorrow)
    lets [just] do >([on] {short_weekday}|tomorrow)
    (catching up|training|<!(the|a|by|my) train|going|doing it) >([on] {weekday}|tomorrow)
    {has_to} (be|wait) [until|till|til|for|on]* >({short_weekday}|tomorrow)
    rather >(({short_weekday}|tomorrow) (than|not) today)
    (can|could|may|shall) (we|i) [maybe|please|just]* do >(tomorrow !(as well|too|also)|the day after
        tomorrow|{weekday} [instead|please|'?']* $)
    ^ [ok|can you|please|lets|,]* make (it|that|this) >([on|this|next]* {short_weekday} [please|instead]* $)
    the? (rest|remaining) [exercises|ones|of it]* i will? (do|make|finish)
    [the|my|todays]* (training|workout|session|gym) i will? (do|make|have|take) >([on] {short_weekday}|
        tomorrow)
    (doing|do) (this|it|that) >(tomorrow|on {short_weekday}|{weekday})
    train >(on # ..4 instead)
    (doing|do|train|training) {it} >(tomorrow|on {short_weekday}|{weekday}|instead)
    """,
    will="""
        ill|i will|will|gonna|going to|im|i am|i|gotta|have to|need to|might
        plan to|planning to|want to|wanna|prefer to|id rather|rather|i would|better
        lets|let me|shall we|can i|could i|may i|can we|could we|i can|i could|ok to
    """,
    train="""
        train [it]|training|workout|work out|lift|gym|hit the (gym|weights)
        make the (workout|session|training)|say|make it
        do (it|this|that|mine|legs|leg day|the rest|today|todays [_]|my (workout|session))
        do the (workout|session|training|gym)
        doing it|doing (the|my|todays) (workout|session|one)
        come|go|going|finish|take it|have it|get it done|get to it
        catch up|catching up|make (it|that) up|making it up|make up for it
    """,
    has_to="(will|ll|itll|it ll|itll) have to|(has|have|gonna have|going to have|needs) to",
    it="it|this|legs|my workout|todays [_]|the (workout|session)",
    weekday=WEEKDAY,
    short_weekday=_SHORT_WEEKDAY,
)

NOT_TODAY = Pattern(
    """
    too (tired|busy|late|knackered|hot|ill|sore)|(gym|gyms) [is|was] (shut|closed|locked)
    (stuck at|working) (work|late)|knackered|shattered|today {impossible}
    (cant|wont|not|no|couldnt|unable) ..5 (today|todays)
    (cant|wont) (do|finish) the (rest|remaining)
    today not >(,|.|but|-|;)|today [there is|i have|have|got]* no time|(cant|cant do it) (now|rn|
        right now)
    today (is|s|wont|doesnt|isnt|not|no|was) [_] {impossible}
    """,
    impossible="""
        out|off|work|possible|not possible|impossible|happening|good|no good|a no go
        bad|tricky|full|crazy|busy|too busy
    """,
)
"""Today is no day to train."""

SHIFT_BY = Pattern(
    """
    {shift} [{what}] [back|out] by? (a|one|n:#) (day|days) !(of)
    ^ [{what}|please|pls|can we do|lets do|,]* (a|one|n:#) (day|days) later [please|pls|.|!]* $
    """,
    shift=words_of("push pushing move moving shift shifting delay delaying bump bumping postpone"),
    what="""
        (it|this|that) one|it|this|that|everything|today|training|things
        (the|my|todays) (workout|session|training)
    """,
)
"""A workout comes some days later."""

SUITS = Pattern(
    """
    [{part}]* (works|work|suits|fits|(would|will) (suit|work|fit)) (me|better|best|for me)
    (is|would be) (better|easier|best) [for me|than today]
    """,
    part=words_of("morning afternoon evening night lunchtime"),
)
"""What is said of the day that suits the client, right after it."""

SETTLED = Pattern(
    """
    (then|it is|it ll be|it will be|,? not today) [then|please|pls|coach|thanks|sorry]* [.|!]* $
    """
)
"""What a message ends with that names nothing but the day: "Friday it is"."""
OPENING = words_of(", . ! ok okay right alright fine so hm hmm well let lets say make it on for")
"""Words that may stand before that day."""

COMES_AFTER = words_of(
    """, . but so maybe can ill on for do go train it come to and or then rather gonna will is - ; prefer
    better going doing training perhaps instead today ! ok workout session move make going lift think
    might could would i"""
)
"""Words after which the day comes on which the client trains instead."""
