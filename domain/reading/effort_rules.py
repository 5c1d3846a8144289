"""The rules for phrases about effort: reps left, failure, and the rep or the load at which a set failed."""

from domain.reading.patterns import Pattern
from domain.reading.phrase_kinds import UNIT, Rule
from domain.reading.words import ORDINALS, words_of

_ANY_ORDINAL = frozenset(ORDINALS)
_LATE_ORDINAL = frozenset(word for word, number in ORDINALS.items() if number > 5)
"""Those that are no number of a set."""
_REP = words_of("rep reps repetition repetitions")

_REPS_LEFT = Pattern(
    """
    (rir|r i r) [of|was|:|=|about|around] n:# !(- #)
    n:# (rir|r i r) !([of|was|:|=] #)
    n:# [{good} {rep}|more] [were|was|are|is|left|still|or so|for sure]* in the? (tank|reserve|me|hand|bank)
    n:# [{good} {rep}] (to spare|up my sleeve)
    n:# [_] _ in the? (tank|reserve)
    {fuel} [left|in the tank|in me]* for [maybe|about|perhaps|at least]* n:# more [{rep}]
    (could|couldve|could have|can|had) ..3 n:# more [rep|reps] [in me|in the tank|left] !(than|kg)
    n:# more [{rep}] {would} [still|maybe|just]* (gone|possible|doable|there|worked|been there) !(x|#|for)
    n:# [{rep}] (short of|away from|from|before|shy of|off) (failure|failing)
    reserve of? n:#
    """,
    rep=_REP,
    good="[good|more|full|clean|solid|decent|proper|strict|honest]*",
    fuel="gas|juice|fuel|room|enough|strength",
    would="would have|wouldve|could have|couldve|were|was|would have been|wouldve been|might have",
)
_LEFT = Pattern(
    """
    n:# [rep|reps|repetition|repetitions|more] left [in me|in the tank] !({elsewhere}|[,] right)
    left [about|maybe|only|just|another]* n:# [rep|reps|in (me|the tank)] (>(,|.|!)|$)
    n:# [rep|reps|repetition|repetitions|more] left >(on (all|both|each|every))
    """,
    elsewhere=words_of("side leg arm hand and to over on"),
)
_RIR_BY_SET = Pattern("rir [of|was|were|:|=]* # [,|/|and] n:# [[,|/|and] #] [[,|/|and] #] (>(,|.|;|'\n')|$)")
_RPE_BY_SET = Pattern(
    "rpe [of|was|were|:|=]* # (,|and|then) n:# [[,|and|then]* #] [[,|and|then]* #] (>(.|;|'\n')|$)"
)
"""An effort for each set: which is of which is not worked out, and none of its numbers is a set."""
_WITH = Pattern("(w|with) ['/'] n:# [left|more|spare|to spare] (>(,|.|!|;|and|then|'\n'|#)|$)")
"""After a whole set, few reps that it is said to be "with" are those left: "80x8 w 1"."""
_RPE = Pattern("""
    @? (rpe|r p e) [of|was|:|=|about|around|@|at] rpe:# !(- #) [/ #]
    @? rpe:# (rpe|r p e) !([of|was|:|=] #)
""")
_FAILED_ON = Pattern(
    """
    !((lost|missed|dropped) # {rep}) {failed} [{where}]* [the|my] n:({which}) [rep|reps|one] {no_load}
    n:({late_ordinal}|# (st|nd|rd|th)) [{rep}|one] {went_wrong}
    (on|at) the n:({late_ordinal}|# (st|nd|rd|th)) [{rep}|one] [,|i|it|have|had|just|then]* {went}
    """,
    failed="""
        failed|failing|fail|failure >(on)|died|stuck|missed|lost|got pinned|pinned|grinded out on
        stalled|gave (out|up)|broke down|collapsed|dropped >(on|at|the|it|during)
        (couldnt|cant|didnt|failed to|wasnt able to) {finish}
    """,
    finish="finish|lock out|get|complete|do|make|hit|manage",
    where="""
        it|the bar|halfway|half way|midway|mid|at|on|in|during|with|attempting|trying|up|through|just|for
        badly
    """,
    no_load="!({unit}|x|set|sets|(:|-) #|nil|quid|bucks|euro|euros|dollars|points|games|followers|balls)",
    went="failed|died|got stuck|gave up|collapsed|broke down|stopped >(.|,|$|'\\n')",
    went_wrong="""
        (wouldnt|didnt|wasnt to) (go|move|come|budge|happen) [up]|failed|got stuck
        [just|then] died|was a fail|wasnt (happening|there)|stalled|had no chance
    """,
    rep=_REP,
    which="{ordinal}|# (st|nd|rd|th)|[rep|number] #",
    ordinal=_ANY_ORDINAL,
    late_ordinal=_LATE_ORDINAL,
    unit=UNIT,
)
_NO_FAILURE = Pattern(
    """
    [well|way|just|a bit|a little|far] (short of|shy of|away from|before|nowhere near|without) {to} {failure}
    (no|not|not to|not quite to|not at|never reached) {to} {failure}
    (didnt|wasnt|havent|dont|never) ..3 {failure}
    not [taken|pushed|pushing|going|gone|quite|really|actually|even|all the way|close|
        anywhere near]* to {failure}
    not failed
    (none|neither) [of|them|those|these|sets|was|were|taken|went|actually]* to? {to} {failure}
    stopped [_] short [of [_] (failure|failing)]
    (stop|stopping) [_] short of [_] (failure|failing)
    """,
    to="[the|going to|reaching|hitting|full|actual|any|true|complete|until|till|to|all the way]*",
    failure=words_of("failure fail failing"),
)
_FAILURE = Pattern(
    """
    (to|till|til|until|at|reached|hit|unto|in|then|and then) [{utter}] (failure|fail|failing)
    failure
    failed [the|after|at the end|there|hard|miserably|at|on the (next|last|following) [one|rep]]
    nothing was? left [in the tank|in me|over]
    (nothing|none|no) more [left] in (me|the tank)
    nothing (more|left) to give|nothing in the tank|empty tank|tank was? empty|(emptied|drained) (the|my) tank
    {cannot} [_] ({squeeze}) out? {another} [rep|reps|one|#]
    (not|no) another rep [in me]
    (not|no) (another|#|a single) rep more
    not (one|a single|#|another) [rep] more (possible|in me|was|would|went|>(,|.|!|$))
    (until|till|til|unto) [i|we|it|there|just|really|literally|simply]* {the_end}
    to [complete|total|utter|the point of]* (exhaustion|my limit)
    no [more] (gas|juice|fuel|strength) left|no more (gas|juice|fuel) [in] (>(,|.|!|$|the tank|me))
    (everything|all) i had [in me|in the tank|left] (>(,|.|!|$)) | gave it (everything|all i had)
    all out|no more reps in me|went to the limit|absolute max
    <!(grip) gave out
    """,
    utter=words_of("complete total full absolute true muscle muscular technical"),
    squeeze="[have] (do|done|get|got|gotten|make|made|manage|managed|lift|lifted|squeezed|squeeze) out?",
    the_end="""
        nothing ..2 (going|goes|went|moved|moves|worked|works|left|possible|there|in me)
        (had|was|got) nothing [more|left]* (>(,|.|!|$)|in (me|the tank))
        nothing ..1 (>(,|.|!|$))
        (the|my) ..2 (said|says) (no|stop|enough|nope) !(to|more sets)
        the? (wheels|wheel) (fell|came) off
        (went|goes|could go|would go|was going|moved|worked) (no (more|longer|further)|not (more|anymore))
        {cannot} [do|get|manage|squeeze|out|go|on]* {no_more}
        (no more|nothing more) (possible|left|there|came|in me) !(to)
        exhaustion|exhausted|collapse|collapsed|collapsing|(the|my) (limit|absolute end)
        (dropped|failed|gave out)
    """,
    cannot="cant|couldnt|can no|could no",
    no_more="(any more|anymore|more|no more|longer|another|one more|it|>(,|.|!|$))",
    another="another|one more|a single more|any more|anymore|# more|more|a th|a #",
)
_CANNOT = "couldnt|cant"
_WOULD_NOT = "wouldnt|didnt|wasnt|refused to|wont|doesnt|never"
_TRIED = """
    <!(#|kg|kgs|lb|lbs|kilos|it|that) (tried|attempted|went for|had a go at|attempt at) [for|the|a|with]*
"""
_WHERE = "[(on|at|for|in) [the|my] ..2|_]"
_LIFT_IT = "(move|moved|budge|shift|lift|press|pull|get|do|stand|go|come|unrack)"
_AND_NOT = f"""
    [,|.|-|and|but|it|i|that|was|just|then|absolutely|completely|sadly|only|so]* (no|nope|nah|missed|failed|
        no (chance|luck|go|way)|not (a|even|happening|once|one)|nothing|pinned me|({_CANNOT}|{_WOULD_NOT}) [
        even|really|at all|quite]* {_LIFT_IT}) !(on|at (rep|#)|(#|the #) (st|nd|rd|th)|the last)
"""
"""What makes a load that was tried one that was not lifted."""
_NOTHING_LIFTED = Pattern(
    """
    {could_not} [even|really|quite|get to] ({lift}) [{leading_to}]* n:# [u:{unit}] {no_reps}
    <!(x|for|#) n:# [u:{unit}] {so} {would_not} {even} {budge}
    <!(x|for|#) n:# [u:{unit}] [just]* went nowhere
    <!(x|for|#) n:# [u:{unit}] {so} {cannot} {even} (get|lift|pull|press|push|budge|move|bring) it {off_it}
    <!(x|for|#) n:# [u:{unit}] {so} {cannot} {even} ({lift_it}) [at all|even]* {ends}
    <!(x|for|#) n:# [u:{unit}] i [just|really|absolutely|simply]* {cannot} {even} {move} [at all|up]* {alone}
    <!(x|for|#) n:# [u:{unit}] {so} (stayed|glued|stapled|bolted|nailed|stuck) {there}
    <!(x|for|#) n:# [u:{unit}] {so} (went|came) down [and|but|it|then]* (stayed|never|didnt|would|wouldnt|not)
    <!(x|for|#) n:# [u:{unit}] [just|completely|totally|absolutely|then]* ({pinned}) me
    {tried} n:# u:{unit} !(x|for) >({where} {and_not})
    n:# [u:{unit}] but? (it|that) (came|went|moved) (not|nowhere|never) ..2 (floor|rack|chest|up)
    <!(x|for|#) n:# [u:{unit}] ..3 , but? i? just? {cannot} even? {shift} it (>(,|.|!)|$)
    missed [the|a] n:# u:{unit} !(for|x)
    tried n:# [u:{unit}] ,? but? ..3 (not|nowhere|never) ..3 (floor|rack|chest|up)
    (zero|no) reps (at|with|on) n:#
    """,
    leading_to="the|a|up|with|it at|even|at|+|my",
    could_not="""
        couldnt|cant|didnt|wouldnt|failed to|unable to|not able to|no chance to
        didnt manage to|couldnt manage to|tried and failed to|no way to
    """,
    lift="""
        move|lift|budge|press|pull|unrack|shift|stand up with|get up|squat|bench|deadlift
        complete a rep (at|with)|do a single? rep (at|with)|get a single? rep (at|with|on)
        get (it|the bar) (up|off the floor) (at|with)
    """,
    no_reps="""
        !(rep|reps|more|th|st|nd|rd|x|for|set|sets|time|times|min|mins|minute|minutes|again)
    """,
    so="[,|but|and|it|the bar|bar|i|just|that|thing|on|then|so|yeah|was]*",
    even="[even|really|at all|quite|ever|once]*",
    off_it="(off|from|up from|past|out of) [the|my] (floor|ground|chest|rack|pins|bottom|hole) {no_number}",
    no_number="!([,|so|=|thats]* # !(x|for|*|@|/|#|{unit}))",
    there="(on|to) (the|my) (floor|ground|chest|rack|pins)",
    would_not=_WOULD_NOT,
    budge="""
        move|moved|budge|budged|shift|shifted|moving|budging|go up|went up|go anywhere|come up|came up
        [come|came|get|got|break|broke] [up|off|from|out of]* [the|my] (floor|ground|chest|rack|pins|bottom)
        (leave|left|break|broke) (the|my) (floor|ground|chest|rack)
    """,
    cannot=_CANNOT,
    ends="(>(,|.|!|;|then|so|but|and|$|'\n'))",
    tried=_TRIED,
    pinned="pinned|stapled|buried|flattened",
    where=_WHERE,
    and_not=_AND_NOT,
    shift=words_of("move budge shift"),
    move=words_of("move budge shift lift press pull push unrack raise"),
    lift_it="""
        (move|budge|shift|lift|press|pull|push|squat|bench|unrack|raise|stand) it [up|out|off|once]
        stand up with it|get it (up|out|moving|going)|(get|come|stand) up [with it|again]
    """,
    alone="""
        !(!(from (the|my) (floor|ground|chest|rack|pins)) (the|my|a|any|it|anything|anyone|on|to|after|
            afterwards|for|from|more|another|well|this|that|house|_))
    """,
    unit=UNIT,
)

_MISSED = Pattern("missed [the|a] n:# [u:{unit}] (>(,|.|!|but|'\n')|$)", unit=UNIT)

_FAILED_AT = Pattern(
    """
    (failed|fail|failing|missed) [at|on|with|the|a|my]* n:# [u:{unit}] {no_reps}
    n:# [u:{unit}] ,? {no_chance} (>(,|.|!|'\n'|then|but|so)|$)
    <!(x|for|#) n:# [u:{unit}] [,|but|and|then|i|so|just]* (failed|missed|lost) (it|that [one]) {ends}
    <!(x|for|#) n:# [u:{unit}] [,|but|and]* {not_once}
    {tried} n:# !(x|for|{unit}|st|nd|rd|th|rep|reps) >({where} {and_not})
    """,
    ends="(>(,|.|!|then|so)|$)",
    not_once="(not even (one|once|a single) [rep]|not (one|a single) rep|not once)",
    tried=_TRIED,
    where=_WHERE,
    and_not=_AND_NOT,
    unit=UNIT,
    no_reps="!(x|for|/|rep|reps|th|st|nd|rd|s|sec|secs|second|seconds|#)",
    no_chance="no (chance|luck|go|way)|nope|not a chance|not happening|didnt happen|wasnt happening",
)
"""A load that was not lifted once; a smaller number would be the rep."""

EFFORT_RULES: tuple[Rule, ...] = (
    Rule("rir", _REPS_LEFT, within=(0, 10), beside=True),
    Rule("rir", _LEFT, within=(0, 10), beside=True, unless=words_of("right r halfway exercises sets down")),
    Rule("no set", _RIR_BY_SET, within=(0, 5)),
    Rule("no set", _RPE_BY_SET, within=(5, 10)),
    Rule("rir", _WITH, within=(0, 4), whole=True, after_set=True),
    Rule("rir", _RPE, within=(0, 10), beside=True),
    Rule("failed on", _FAILED_ON, within=(1, 50)),
    Rule("no failure", _NO_FAILURE),
    Rule("failure", _FAILURE, not_after=words_of("not no without never didnt")),
    Rule("zero", _NOTHING_LIFTED),
    Rule("zero", _MISSED, within=(20, 10**4)),
    Rule("zero", _FAILED_AT, within=(51, 10**4)),
)
