"""Turns of phrase for an absence, as data: that the client is away, how long, and what only sounds so."""

from domain.reading.move_words import WEEKDAY
from domain.reading.patterns import Pattern
from domain.reading.words import MONTH_WORDS, words_of

_WEEKDAYS = WEEKDAY | words_of("mon tue tues wed thu thurs fri sat sun")
_UNTIL = words_of("till til until untill")
_UNIT = words_of("day days week weeks wk wks month months fortnight fortnights")

LENGTH = Pattern(
    """
    <!(since|after) (n:#|one:{one}|some:{some}) [more|whole|full|good] unit:{unit} !({counted})
    """,
    counted="""
        ago|old|a week|per|to go|({until}) (my|the|holiday~|vacation|christmas|easter)|off (and|but) still
    """,
    until=_UNTIL,
    one="a|one|another|'the' next|the whole|this whole|a whole",
    some="a couple of|couple of|couple|a few|few|several|some",
    unit=_UNIT,
)
"""How long a pause takes: "for 2 weeks"."""

AWAY = Pattern(
    """
    {until_well}
    (laid up|bedridden|bedbound|housebound|quarantined|isolating|in isolation) ..5 >({until}|for|this|all|
        .|,|$)
    [im|i am|be|going|gone|ill be|will be|were|we are|we re|am] <!(take|takes|taking|
        took) {away} >({away_for})
    wont be (here|around|about|home|in town|available) >({away_for})
    (take|takes|taking|took) (the|my|our) ..2 {on_a_trip} >({until}|from|for|next|this|on|.|,)
    (im|i am|be|going|gone|ill be|will be|were|we are|we re|am) in _ >({away_for})
    (^|<({friday})) in _ >({until}|, no gym)
    going (dark|offline|awol|mia|off grid|off the grid) >(till|until|til|for|from|#|this|next|on)
    {until} the? (#|_) ..1 (am i|are we) (by|with|at|in|away) ....4 >(,|.|$)
    (im|i am|we are|ill be) {away} $|in (holidays|vacation) >(.|,|!|$)
    off >({until}|for (#|a|two|the)|from|to|#|next week|(this|all) week|the whole|a {unit_off})
    {no_training} [at all|for me|possible|again|anywhere|there|where]* >({until}|before [the] {day}|
        {weeks_without})
    [#|a|two|three|the next|the whole]* {unit} (abroad|away|offshore|overseas|out of town|{on_leave})
    see (you|ya|u) in (a|#|two|three) [couple of] {unit}
    [{coming}] {back} [{back_where}]* >({back_when})
    {take} [{how_much}]* [#] {unit} {off}
    {take_a} (a|my|an) [{how_long}]* {a_break} [from|until|till|for|of|next|starting|now]*
    [{coming}] [can] (train|training|lift|lifting|be in) again >(from|on|after|next|#|{weekday})
    {unit} without [any] (training|gym|the gym|lifting)
    pausing (for|until|till|now) >(now|#|a|{weekday}|{month}|the)
    (make|making|do|doing|take|taking) [a|my] (pause|break) [from _ [_]] {until}
    off [from] [the|my]* (training|gym|lifting|weights|workouts) >({until}|for (#|a|two|three|the)|from|this|
        next|#|all)
    out of (training|the gym|action) >({until}|for (#|a|two|three|the))
    (make|making|do|doing) (#|one|a) (week|weeks|day|days|months|month) (holiday|holidays|pause|vacation|
        break)
    <!({one}) pause (me|my|the|everything|training|it|this|things|all|for|until|till)
    put (me|my (training|programme|program)|everything|it|things|training) on (hold|pause)
    <!(s|sec|secs|second|seconds|minute|minutes|min|mins|a|with|rest) please? pause please? $
    freeze my _
    ^ [{greeting}]* (im|i am|we are|were) away? on [a|my|our] {holiday} [{at_present}] >(.|!|,|so|$)
    (holiday|holidays) [!|:|,] (till|til|until|from|for)
    <!({no_own}) {holiday} {ahead} !(is|was|isnt|will|went|has|got)
    ^ [{greeting}]* {is_away} [{at_present}] [.|!] $
    {goes} [{somewhere}]* {when} [[in the] {part}] for {how_many} {unit_long}
    {leaves} [{somewhere}]* for {how_many} {unit_long} >([,] {when}|.|,|!|$)
    vacation (till|til|until|from|for)
    (surgery|operation) ..6 (week|weeks|day|days|month|months|until|till)
    {doctor} ..4 (#|a|one|two|three|four|another) {unit} [of]* (no|without|off|rest)
    (refrain|abstain|stay away) from [all|any]* (exercise|exercising|training|lifting|the gym) {until}
    {doctor} ..3 (rest|pause|stop|avoid|no) ..2 for (#|a|one|two|three|four|another) {unit}
    injured ..4 (until|till|for # weeks)
    (all|this|next|whole) week [,|.|so|and|means]* {no_training}
    in [a|the] (plaster|cast|sling) !(of)|on crutches
    """,
    until_well="""
        (^|<({opening})) (out|off|away|resting|sidelined|benched|out of (action|commission)|no (gym|
            training) [for me]) {until} {well}
        (^|<({opening})) (out|away|off|no (gym|training) [for me]) for {now}
        (resting|rest|no (gym|training) [for me]|not (training|lifting)|off) {until} {well}
    """,
    opening=words_of(", . ! - so im am ill be and ; ( now flu covid") | {"\n"},
    now="(now|the time being|the foreseeable|a while|a bit) >(.|,|!|$|-|'('|'\n'|i|my)",
    well="""
        further notice
        [i|im|ive|its|it is|i am|i feel|this|that|it|the _|my _|all]* (better|well|healed|recovered|fit|
            gone|passed|healthy|cleared|over it)
    """,
    away="""
        away|out of town|abroad|travelling|traveling|unavailable|camping|skiing|at a conference
        (^|<(im|am|be|were|we|are|all|both|now|then|also|and|ill|so|,|.|-|!|;)) gone
        out of [the] (country|office)|out|off [work|on (holiday|leave|vacation)]
        on [a] (travel|travels|the road|holiday|holidays|vacation|leave|annual leave|parental leave)
        in (holidays|vacation)|on [a] (trip|business trip|work trip|business|tour|honeymoon|a cruise)
        on [my|our|me] (hols|holibobs|holiday|holidays|vacation|vacay|vacations|leave)
    """,
    away_for="""
        till|til|until|untill|through|thru|from|for|next|on|this|the|over|all|to|starting|as of|between
        in|with|and|,|.|-|now|so|visiting|#|a|an|two|tomorrow|today|at|about|around|also|there
        {weekday}|{month}
    """,
    doctor="""
        (doctor|doc|physio|gp|surgeon|therapist|physician) (says|said|told me|ordered|wants me|recommends|
            (has|have) (asked|told) me [to])
    """,
    until=_UNTIL,
    on_a_trip="camping|skiing|away|abroad|on (holiday|vacation|a trip)",
    unit_off=words_of("week fortnight month couple"),
    no_training="""
        no (gym|training|workout|workouts|equipment|session|sessions|lifting|access to [a|the] gym)
        cant (train|lift|make it {there})|not training|wont [be able to] train
        wont (make it|get|come) {there}|wont be (training|lifting)
        (gym|studio) [is|will be] (closed|shut|closing)
    """,
    there="[back|in|to (the gym|training)|there]*",
    weeks_without="for [the next] (#|a|two|three|the)|(this|next) (week|month)|all week|the next",
    coming="be|shall be|im|ill be|i am|will be|get|come|coming|return|returning|am|and|,|.",
    back="back|brb|bbl|home|return|returning|resume|resuming|start again|restart|train again|training again",
    back_where="""
        in !(#|a|two|three|the) _|at it|to (training|it|the gym|normal|lifting|work)
        in (the gym|town|the country|action)
        home|here|again|training|from [my|the] _
    """,
    back_when="""
        on (the|#|{weekday}|{month})|the #|{weekday}|{month}|in (#|a|about|two|three|the #)
        next|#|after (the|#|a)
        around the|by|from the|tomorrow|(at|by) the #
    """,
    take=words_of(
        "taking take took need needing having have want got on plan planning a # my due booked this"
    ),
    how_much="""
        a|some|the|next|about|another|my|whole|full|couple of|few|coming|of|time|extra|short|long|little
    """,
    unit=words_of("day days week weeks month months fortnight break time pause"),
    off="off|break|away|out|pause|holiday|rest|of rest|from (training|the gym)",
    take_a="taking|take|need|having|have|want|(on|going on) !(my [_] break)|start|starting",
    how_long="""
        little|short|longer|long|small|proper|much needed|training|complete|full|well earned
    """,
    greeting=words_of("hi hey hello coach sorry ,"),
    holiday="holiday|holidays|vacation|annual leave",
    no_own=words_of("bank public national school summer half kids your his her their last"),
    ahead="[all|the whole|for|the] next week|(all|this whole) week|from {weekday}",
    is_away="away|abroad|out of (town|the country)|on [a|my|our] {holiday}|travelling|traveling",
    goes="{leaves}|(go|going) [away|off|on]*|heading off|setting off|off",
    leaves="leave|leaving|fly|flying|travel|travelling|traveling|im off|i am off|were off|we are off",
    somewhere="away|off|out|home|(to|for) [the|my|our] _",
    when="[on|this|next|coming]* ({weekday}|tomorrow|the #)",
    part="morning|afternoon|evening|night|early|late",
    how_many="[about|around|some]* (#|a|an|two|three|one) [good|whole|full|couple of|few]*",
    unit_long=_UNIT,
    at_present="now|today|at the moment|this week",
    on_leave="(in|on) (holiday|holidays|vacation|leave)",
    one=words_of("one a # only no short long quick second sec brief little each every another"),
    friday=WEEKDAY,
    day="(#|next|{weekday}|{month}|then|that)",
    weekday=_WEEKDAYS,
    month=MONTH_WORDS,
    a_break="break|pause|holiday|vacation|rest week|deload|time out|timeout|week off",
)

LOOSE = words_of("off out gone home")
"""Words for an absence that mean other things as well, unless a length or a day is said."""

OPEN = Pattern(
    "{open}",
    open=words_of(
        """week weeks day days month months fortnight holiday holidays vacation leave break pause hold trip
        until till til abroad travelling traveling away surgery town honeymoon country closed shut plaster
        cast sling crutches"""
    ),
)
"""Words of an absence that is one even without a day of return."""

NOT_OPEN = Pattern(
    """
    (right|breath|put|walked|straight|ran|stay|throw|far|blown) away
    blew me away|away from failure|pin
    on my [lunch|coffee|tea]* break
    (without|no|not a single) [a|any|one]* [proper|long|short]* (pause|break|pauses|breaks)
    """
)

NOT_GONE = Pattern(
    """
    (not|hasnt|havent|hadnt|never|wont|didnt|doesnt) [really|quite|fully|entirely|yet|all]* {gone} (away|off)
    {trouble} ..4 {gone} (away|off)
    (take|takes|took|taking|throw|throwing|wipe|clear) [that|this|the|my|it|last|one|set|entry]* away
    """,
    gone="(gone|go|goes|going|went)",
    trouble=words_of(
        """pain pains ache aches soreness doms stiffness swelling tightness twinge it that this numbness
        headache"""
    ),
)

BUSY = Pattern(
    """
    {busy}|no (gym|training|exercise|lifting|weights|equipment|access|dumbbells|barbell|kit)
    no chance of [the|any] (gym|training)
    [on] nights|night (shift|shifts)
    """,
    busy=words_of(
        """holiday holidays vacation away abroad travelling traveling trip leave off busy
        swamped injured closed"""
    ),
)
"""Words of no time to train, a pause only beside the day of return."""

NO_TRAINING_FOR = Pattern(
    "no {training} ....9 for # {unit}|[for] (#|a|one|two|three|four) {unit} ....9 no {training}",
    training=words_of("training gym weights equipment dumbbells barbell kit machines exercise lifting"),
    unit=_UNIT,
)
"""No training for a length of time."""

STILL = Pattern(
    """
    still (training|lift~)|can still
    (will|ill) train|(train|training) (anyway|as usual|normally|there)
    gym there|hotel gym|found a gym
    (machine|machines|weights|plates|dumbbells|rack|gym) here (are|is|have|has|only)
    used|trained|did|got
    """
)
"""The client trains all the same."""

UNTIL = _UNTIL | words_of(
    """through thru back return returns returned returning resume resumes resumed resuming home to before
    again restart"""
)
"""Words beside the day of return."""

BACK_THEN = Pattern(
    """
    [,|then]* {i} [only|then|again]* {back} [{back_from}]* >($|.|,|!|;|and|until|till|so|-|'\n'|then|{no})
    """,
    i="i|we|im|i am|ill|i will|i shall|were|we are|we will|well|i ll|we ll",
    back="""
        [am|are|be|will be|shall be] (back|home again|home|back home)
        (come|fly|drive|get|travel|am coming|coming|are coming) (back|home|again)
        return|returning|will return|be returning
        (train|start|lift|resume) again|resume|[am|are|be|will be|shall be] (there|in|here|available) again
    """,
    back_from="""
        again|home|here|in (town|the gym|the country)|at (it|the gym)|to (training|the gym|normal)
        from [my|the|our] _
    """,
    no="no",
)
"""The return, said right after its day: "on the 9th I am back from vacation"."""

UNTIL_THEN = Pattern("(until|till|til|up to) (then|there|that [day|date]|this [day|date])|before (that|then)")
"""Words that point back at a day said before."""

NEXT_WEEK = Pattern("next week")

THIS_WEEK = Pattern("(this|the whole|all|all of this|(the|for the) rest of the|the rest of this) week")

GOES_HOME = Pattern("(fly|flying|drive|driving|travel|travelling|go|going|head|heading|off) home [on|this]*")
"""A journey home before its day, which is where somebody comes from as often as where they go."""
