"""The rules for phrases about effort: reps left, failure, and the rep or the load at which a set failed."""

from domain.reading.patterns import Pattern
from domain.reading.phrase_kinds import UNIT, Rule
from domain.reading.words import words_of

ORDINALS = {
    "first": 1,
    "second": 2,
    "third": 3,
    "fourth": 4,
    "fifth": 5,
    "sixth": 6,
    "seventh": 7,
    "eighth": 8,
    "ninth": 9,
    "tenth": 10,
    "eleventh": 11,
    "twelfth": 12,
    "thirteenth": 13,
    "fourteenth": 14,
    "fifteenth": 15,
    "sixteenth": 16,
    "seventeenth": 17,
    "eighteenth": 18,
    "nineteenth": 19,
    "twentieth": 20,
}
_ANY_ORDINAL = frozenset(ORDINALS)
_LATE_ORDINAL = frozenset(word for word, number in ORDINALS.items() if number > 5)
"""Those that are no number of a set."""
_REP = words_of("rep reps repetition repetitions")

_REPS_LEFT = Pattern(
    """
    (rir|r i r) [of|was|:|=|about|around] n:# !(- #)
    n:# (rir|r i r) !([of|was|:|=] #)
    n:# [[good|more|full] {rep}|more] [were|was|are|is|left|still|or so]* in the? (tank|reserve|me|hand)
    (could|couldve|could have|can|had) ..3 n:# more [rep|reps] [in me|in the tank|left] !(than|kg)
    n:# more [{rep}] {would} (gone|possible|doable|there|worked|been there) !(x|#|for)
    n:# [{rep}] (short of|away from|before|shy of|off) (failure|failing)
    reserve of? n:#
    """,
    rep=_REP,
    would="would have|wouldve|could have|couldve|were|was|would have been|wouldve been|might have",
)
_LEFT = Pattern(
    """
    n:# [rep|reps|repetition|repetitions|more] left [in me|in the tank] !({elsewhere}|[,] right)
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
        failed|failing|fail|died|stuck|missed|lost|got pinned|pinned|grinded out on
        stalled|gave out|broke down|collapsed|dropped >(on|at|the|it|during)
        (couldnt|could not|cant|cannot|didnt|did not|failed to|wasnt able to) {finish}
    """,
    finish="finish|lock out|get|complete|do|make|hit|manage",
    where="""
        it|the bar|halfway|half way|midway|mid|at|on|in|during|with|attempting|trying|up|through|just|for
        badly
    """,
    no_load="!({unit}|x|set|sets)",
    went="failed|died|got stuck|gave up|collapsed|broke down|stopped >(.|,|$|'\\n')",
    went_wrong="""
        wouldnt go|didnt go|failed|didnt move|wouldnt move|got stuck|died|was a fail|wasnt happening
        just died|stalled
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
    (didnt|did not|wasnt|havent|dont|never) ..3 {failure}
    not failed
    (none|neither) [of|them|those|these|sets|was|were|taken|went|actually]* to? {to} {failure}
    stopped [_] short [of [_] (failure|failing)]
    (stop|stopping) [_] short of [_] (failure|failing)
    """,
    to="[going to|reaching|hitting|full|actual|any|true|complete]*",
    failure=words_of("failure fail failing"),
)
_FAILURE = Pattern(
    """
    (to|till|til|until|at|reached|hit|unto|in|then|and then) [{utter}] (failure|fail|failing)
    failure
    failed [the|after|then|at the end|there|hard|miserably|at|on the (next|last|following) [one|rep]]
    nothing was? left [in the tank|in me|over]
    nothing more in (me|the tank)
    nothing in the tank|empty tank|tank was? empty
    (couldnt|could not|cant) [_] ({squeeze}) out? {another} [rep|reps|one|#]
    (not|no) another rep [in me]
    (not|no) (another|#) rep more
    all out|no more reps in me|went to the limit|absolute max
    <!(grip) gave out
    """,
    utter=words_of("complete total full absolute true muscle muscular technical"),
    squeeze="do|get|have done|manage|squeeze out|squeeze",
    another="another|one more|a single more|any more|anymore|# more|more|a th|a #",
)
_NOTHING_LIFTED = Pattern(
    """
    {could_not} [even|really|quite|get to] ({lift}) [the|a|up|with|it at|even|at]* n:# [u:{unit}] {no_reps}
    <!(x|for|#) n:# [u:{unit}] {so} {would_not} {even} {budge}
    <!(x|for|#) n:# [u:{unit}] {so} {cannot} {even} (get|lift|pull|press|push|budge|move|bring) it {off_it}
    <!(x|for|#) n:# [u:{unit}] {so} (stayed|glued|stapled|bolted|nailed|stuck) {there}
    n:# [u:{unit}] but? (it|that) (came|went|moved) (not|nowhere|never) ..2 (floor|rack|chest|up)
    <!(x|for|#) n:# [u:{unit}] ..3 , but? i? just? {cannot} even? {shift} it (>(,|.|!)|$)
    missed [the|a] n:# u:{unit} !(for|x)
    tried n:# [u:{unit}] ,? but? ..3 (not|nowhere|never) ..3 (floor|rack|chest|up)
    (zero|no) reps (at|with|on) n:#
    """,
    could_not="""
        couldnt|could not|cant|cannot|didnt|wouldnt|failed to|unable to|not able to|no chance to
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
    so="[,|but|and|it|the bar|bar|i|just|that|thing|then|so|yeah|was]*",
    even="[even|really|at all|quite|ever|once]*",
    off_it="(off|from|up from|past|out of) [the|my] (floor|ground|chest|rack|pins|bottom|hole) {no_number}",
    no_number="!([,|so|=|thats]* # !(x|for|*|@|/|#|{unit}))",
    there="(on|to) (the|my) (floor|ground|chest|rack|pins)",
    would_not="wouldnt|didnt|did not|would not|wasnt|refused to|wont|doesnt|never",
    budge="""
        move|moved|budge|budged|moving|budging|go up|went up|go anywhere|come up|came up
        [come|came|get|got|break|broke] [up|off|from|out of]* [the|my] (floor|ground|chest|rack|pins|bottom)
        (leave|left|break|broke) (the|my) (floor|ground|chest|rack)
    """,
    cannot="couldnt|could not|cant|cannot",
    shift=words_of("move budge shift"),
    unit=UNIT,
)

_MISSED = Pattern("missed [the|a] n:# [u:{unit}] (>(,|.|!|but|'\n')|$)", unit=UNIT)

_FAILED_AT = Pattern(
    """
    (failed|fail|failing|missed) [at|on|with|the|a|my]* n:# [u:{unit}] {no_reps}
    n:# [u:{unit}] ,? {no_chance} (>(,|.|!|'\n'|then|but|so)|$)
    """,
    unit=UNIT,
    no_reps="!(x|for|/|rep|reps|th|st|nd|rd|s|sec|secs|second|seconds|#)",
    no_chance="no (chance|luck|go|way)|nope|not a chance|not happening|didnt happen|wasnt happening",
)
"""A load that was not lifted once; a smaller number would be the rep."""

EFFORT_RULES: tuple[Rule, ...] = (
    Rule("rir", _REPS_LEFT, within=(0, 10), beside=True),
    Rule("rir", _LEFT, within=(0, 10), beside=True, unless=words_of("right r")),
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
