"""Turns of phrase of corrections, as data. What they mean is decided by their users."""

from domain.reading.patterns import Pattern
from domain.reading.words import KG_WORDS, LB_WORDS, NTHS, words_of

_THING = """
    that|it|this|those|they|these|both|weight|reps
    (the|that|my) last [one|set]|the last entry|last [one|set|weight]|the previous [one|set]
    all of (them|those)|all (three|two|four|five|#)
    the (first|second|third|fourth|fifth|other|top|middle) [one|set]|(first|second|third) (set|one)
    (set|number) #|# (st|nd|rd|th) (set|one)|the # (st|nd|rd|th) [set|one]
    the (weight|reps|load)
"""
"""What a correction points at."""
_BE = """
    was|were|is|are|should (be|have been|say|read)|shouldve been|(needs|has|ought) to be|must be
    (was|s) supposed to be|(was|were) meant to be
"""
_DENIED = "<!(why|if|or|whether) not [with|for|on]|wasnt|werent|isnt|instead of|rather than"
_UNIT = KG_WORDS | LB_WORDS
_PAIRED = words_of("sides legs arms hands")
_NTH = frozenset(NTHS)

SIGN = Pattern(
    """
    make:(make (that|it|those|them) [a|an] >(#|_|+|-))
    slip:(make the (last|{nth}) [one|set] [a|an|be]* >(#|+|-))
    slip:(make the last [one|set] [a|an] >(_))
    make:(^ [{opening}]* (scratch|scrap|strike|forget) that ,? [it was|it s|only|just|,]* >(# [{counted}]
        {asked_for}))
    slip:(^ [{opening}]* (wrong|edit|edited|fix|fixed|ups|upps) [:|,|-]* >(#))
    slip:(^ [{opening}]* i? (got|did|made|had) # [{counted}] actually)
    slip:(^ [{opening}]* ({not_so}) [,|.|!|:|-|coach|and]* (i|it|that) [only|just]* ({came_to}) >(#))
    slip:(^ [{opening}]* only [got|did|made|had]* # [{counted}] actually {ends})
    slip:(^ [{opening}]* (hang on|hold on) [,|no]* # [{counted}] {ends})
    slip:(^ [{opening}]* (watched|checked) [the|my]* video [back|again|,|and|it was]* # [{counted}] {ends})
    slip:(^ [{opening}]* (put|write|log|note) # [{counted}] (instead|please|pls) {ends})
    slip:(^ [{opening}]* [the|that]* (weight|load) (was|is|should be) [only|really]* # [{unit}] {ends})
    slip:(^ [{opening}]* only had # [{unit}] on the bar {ends})
    slip:(^ # [{counted}] actually [,|coach|sorry|.|!]* $)
    slip:((weight|load|reps|number) [is|was|s]* (wrong|incorrect) [:|,|-|it|was|should|be]* >(#))
    slip:({unit} ....6 ,? not in? {unit})
    slip:((sorry|oops|whoops|units|unit|ups) [,|:|in]* {unit} (>(.|!|,|-|not)|$))
    slip:(^ [{opening}]* in {unit} ,? (sorry|oops|not))
    slip:((correct|right) [one|number|weight|load|reps|value]* (is|was|should be) >(#))
    slip:(should of (be|been) >(#|_))
    make:(^ [{opening}]* {called} >(# [{counted}] [please|pls|thanks|coach|then|tbh|sorry|.|!|,]* $))
    slip:(^ # [{counted}] (-|=) '>' >(# [{counted}] [sorry|please|pls|.|!]* $))
    slip:(^ # [{counted}] [,|.]* (sorry|oops|whoops|typo|i (mean|meant)) [,|.|!|coach|my bad]* $)
    slip:(^ # [{counted}] (x|for|*|@) # [{counted}] [,|.]* (oops|whoops|typo|i (mean|meant)) [.|!]* $)
    slip:(^ [sorry|hey|oh|oops|,]* (that|the|my) ..4 (was|were) [in|all]* {unit} [btw|coach|sorry|.|!]* $)
    slip:(^ [{opening}]* (that|the|my) # (was|were) [in|all|actually|meant]* {unit} [not|{unit}|btw|coach|
        sorry|.|!]* $)
    hoped:((shouldve|should have|supposed to|meant to|ought to) (be|been|have been))
    slip:((should|should have|shouldve|supposed to|meant to|ought to) (be|been|say|read|have said))
    slip:(i? (should have|shouldve|meant to|wanted to) {written})
    slip:([i|actually] meant !(to (do|train|go|say hi|ask|text|send|tell|squat|lift|hit|use|press|start|get)))
    mean:(i mean)
    slip:{slip}
    sorry:((oops|whoops|oopsie|woops|sorry !(to)|my bad) ....3 (#|that|it|the last|last))
    was:(<!(what|how|whatever|which|know|sure) {thing} [_] {be} [{really}]* !(possible|allowed) (#|_|+|-))
    not:(# ..3 [,|'('|-] and? not [the|a|+|-] (#|_))
    not:(<!(why|if|or|whether) (not|wasnt|werent|isnt) [the|a] #)
    change:((change|correct|fix|edit|put|switch|alter|modify|revise|bump) ..5 {to_this})
    change:((change|correct|fix|edit|update|amend|make) [the|my]* [_ [_]] set # ..3 (to|into|be|:) #)
    change:((change|correct|fix|edit) [the|my]* _ [_] (its|it is|it s|it was|was|should be|as|,|:) [a|
        only|just]* >(#))
    make:(make [the|my]* (first|second|third|fourth|last) [_ [_]] (set|one) >(# [{counted}] {asked_for}))
    named:(make [the|my|that|todays|both|all|two]* !(that|it|those|them|sure) _ [_] [be|a|an|say|
        into]* >([+|-] # [{counted}] {asked_for}))
    put:((put|enter|write) [down] # [{counted}] (for|on|in|at|under) ..3 instead)
    make:(^ {never_mind} [,|it|that]* was [only|just|actually|more like]* >(# [{counted}] {asked_for}))
    values:((update|amend|adjust|replace|set|swap) ..5 {to_this})
    slip:(^ * (#|_)|# [_] * !(#)|<(,|.|!|coach|hi|hey|but|ugh|'\n') * #)
    actually:(actually [{it_was}] >(#))
    named:(^ [{opening}]* actually [the|my|that]* !(i|it|that|we) _ [_] [was|were|only|just]* >(# [{counted}]
        {asked_for}))
    change:((log|count|record|put|mark|file) {it_as})
    values:(save {it_as})
    sent:((instead of|rather than|not) {what} (i|you) [just|had|have|first]* {wrote} !(#))
    sent:(<(and) (put|write|enter|record|log|note) >(# (x|for|*|@) #))
    instead:((instead of|rather than) (#|_))
    not:(not _ [_] ,? (but|it was))
    slip:((wasnt|werent) _ [_] ,? (but|it was))
    told:(forgot to (say|mention|add|write|tell you) ,? [that|it|was|were|the last [one|set]]* ({ended}))
    told:(^ [oh|also|ps|and|,|it was|that was]* ({ended}) [,]* (btw|by the way|i forgot|forgot to (
        say|mention|add)) [coach|.|!]* $)
    told:(^ [oh|also|ps|and|,|it was|that was]* (to|till|until|at|went to) failure [coach|.|!]* $)
""",
    written="(written|typed|entered|logged|texted|said|noted|write|type|enter|log|text|say|note)",
    ends="[please|pls|sorry|coach|,|.|!]* $",
    ended="[to|till|until|at|went to]* failure|(each|per) hand|[in] (kg|lb|lbs|pounds|kilos)",
    slip="""
        correction|typo|mistyped|misread|miscounted|mis typed|(typed|wrote) [that|it] wrong
        (entry|record|log) (is|was) [all|totally]* (wrong|incorrect|off)|(entry|record) wrong
        wrong (number|exercise|lift|movement|machine|weight|reps|load|name|one|unit|day|date)
        got (that|it) wrong
        (made|is) an? (error|mistake)|^ (edit|fix|amendment) :|counted [it|that|them|the reps]* wrong
        (added|counted|worked|written|put) [it|that|them]* [up|out|down]* (wrong|wrongly|incorrectly)
        fat (finger|fingers|fingered)|my mistake|[i] mixed up|mixed them up|autocorrect
    """,
    opening="""
        well|ok|okay|hmm|actually|no|nah|so|um|uh|eh|,|you|can|could|please|pls|just|better|thinking about it
        on reflection|hi|hey|coach|sorry|ugh|but|oh|ah
    """,
    not_so="""
        {wrongly} [all|so|just|totally|completely|plain]* (wrong|incorrect|not (right|correct|true)|false)
        (that|it|this) (isnt|aint) (right|correct|true)
        wrong
    """,
    wrongly="(you|u) (are|r)|youre|(that|it|this) is|thats|its|you (got|have) (it|that|this)",
    came_to="did|got|made|had|was|is|managed|lifted",
    called="""
        (id|i would|i d|lets|let us|ill|we can) (call|count|say|put|log|make) [it|that|this] [as|a|an|at]
        (call|count|put|log|record|only count|just count) [it|that|this] [as|a|an|at|down as]
        (say|go with|more like|better say)
    """,
    counted="{unit}|rep|reps|s|sec|secs|seconds",
    thing=_THING,
    be=_BE,
    unit=_UNIT,
    nth=_NTH,
    what="(what|the (one|set|number|numbers|weight|reps)) [ever]",
    wrote="(wrote|said|sent|put|typed|told|have|logged|entered|recorded|noted)",
    never_mind="no|nah|nope|naw|wait|actually|sorry|hmm|well|oh",
    asked_for="""
        [please|pls|plz|thanks|coach|then|tbh|sorry|instead|not _]* >(.|!|,|$|'\n'|-|'('|i|cos|because|lol|as)
    """,
    really="actually|really|in fact|only|just|from|on|at|done|meant|for|the|a|an|not|with|all|both|in",
    to_this="(to|into|with|as|from) (#|_)",
    it_was="""
        (it|that) (was|is|should be)|it s|i only? (did|got)|i (used|had)
        did|got|only|its|thats|was|a|used|more like|about|the
    """,
    it_as="(it|that|them|those|this) [_] (as|under|for|on|down as|to)",
)
"""Signs of a correction, by their kinds; each is looked at more closely."""
ASIDE = Pattern(
    """
    (make|change|be) ....4 # [{unit}|rep|reps] [,|'('|-|.|please|pls|plz|thanks]* {because} ....9 n:#
    (counted|did|took) n:# (twice|double)|counted # n:(#)
    (cant|only|never|couldnt) ..1 count [up|only]* (to|past|beyond|over|above|after) n:#
    (counted|lost count|stopped counting) [up|only|it]* (to|past|beyond|over|above|after|at) n:#
    """,
    because="""
        (i|my|cos|because|cause|as|since|apparently|turns out|maths|math|counted|lost|read|misread|thought)
    """,
    unit=_UNIT,
)
"""A number of what is said beside a correction: "make the row 10, i cant count past 8"."""
TO_COME = Pattern(
    """
    from (next|now|monday|tomorrow|this week)|next (week|block|month|time|session|workout|cycle|phase)
    (something|anything|sth) (else|different|easier|lighter|harder|new)|(another|other|
        different) (exercise|lift|one|movement)
    (my|the|our|all) ..1 (day|days|workout|workouts|session|sessions|training) (to|from|into|for|on)
    permanently|every week|always|for good|in the future
    going forward|(the|my) (program|programme|plan|routine|split|target|goal)|tomorrow
    """
)
"""What makes a change one of what is to be done, and not of what is recorded."""
STRONG = Pattern("""
    make (that|it|those|them)|should (be|say|read|have been|have said)|shouldve been|supposed to be
    meant|i mean|correction|typo|mistyped|misread|miscounted|typed|wrote|wrong|fat finger~|my mistake|mixed
    autocorrect|oops|whoops|oopsie|woops|my bad
    change|correct|fix|edit|update|amend|adjust|replace|actually|* !(#)|^ *
""")
"""Signs that are no remark about a new set."""

EXCUSE = Pattern("late|delay|wait|forgot|slow|busy|lot|no reply|silence|missed|cant|wont|bother")
"""What one is sorry for that is no wrong record."""
WRONG = Pattern("not #|# not|should~|meant|typo|wrong")
"""What makes a correction of it after all."""
WRONG_OR_WAS = Pattern("not|should~|meant|typo|wrong|was|were")
"""What puts something right of an exercise that nothing is recorded of."""
SKIPPED = Pattern("as skipped")
"""What is to be recorded of an exercise that was left out, not put right."""
DENIED_NUMBER = Pattern("not #")
COMPARISON = Pattern("""
    not (sure|bad|easy|great|good|too|so|really|ideal|happy|much|feeling|today|yet|only|even|a|the best|my)
    not (going|doing|quite|gonna|at all|to failure|that|very|sore|tired|pain)
""")
"""Remarks with "not" that set no number against another."""
NO_FIRST = Pattern("""
    ^ [hi|hey|coach|sorry|ugh|oh|,|!|ah|but|er|um|argh|whoops]* (no|nope|nah|wait) ,? [it was|it is|its|i did|
        i got|only|just|actually|wait|no|,]* #
""")
INSTEAD = Pattern("instead of [the|a] n:#")

POINTING = words_of("that both all first second third last previous those these")
"""Words before an exercise that point at its recorded sets."""
COUNTING = words_of("bodyweight bw assisted failure negatives weight")
"""Words that say how a load counts or a set ended."""
COUNTED_SO = Pattern("""
    [to|at] failure|[in] (each|per) hand|bodyweight|body weight|bw|negatives|lowering only|assisted
    (without|no) weight|(+|-) #
""")
"""How a recorded load counts or a set ended, right after "that was"."""
OTHER_WORTH = Pattern("""
    yesterday|monday|tuesday|wednesday|thursday|friday|saturday|sunday|today|last night
    (each|per) hand|failure|negatives|bodyweight|assist~
""")
"""What can be put right without a number or a name."""

SEPARATE_SET = Pattern("nth:(first|second|third|fourth|fifth) ..2 set\nn:# (st|nd|rd|th) set\nset n:# >(:|#)")
"""A set of an exercise, by its place, with new numbers."""
NTH_SET = Pattern(
    """
    the? nth:{nth} ..2 (one|set) !(exercise)
    the? nth:{nth} >(was|should|is|were)
    (set|number) n:# >([(of|on|for) ..3] [weight|load|reps]* (was|should|is|:|to))
    set n:# >(to #)
    n:# (st|nd|rd|th) (set|one)
""",
    nth=_NTH,
)
"""One of the recorded sets, by its place."""
ALL_OF_THEM = Pattern(
    """
    both !({paired})
    all (of (them|those|these|it)|three|two|four|five|the sets|my _)
    (those|they|these|the sets|all) [_] [_] (were|are|should)
    (were|are|be|been) (all|both)
    both sets|(every|each) set|make (those|them)
    all !({in_order}) [of|the|my|these]* _ [_] (#|were|was|are|should)|make [the|my] _ [_] all [at|to|be]* #
""",
    paired=_PAIRED,
    in_order=words_of("good done fine right wrong clear in over out i my"),
)
LAST_FEW = Pattern("last n:# ..1 [set|sets|one|ones] >(were|was|are|should|both|all|need|needs)")
"""The last few recorded sets."""
LAST_FEW_ARE = Pattern(
    "last # ..1 [set|sets|one|ones] {be} [at|for|only|just|with|actually|done|the|both|all]* [+|-] #",
    be="[both|all] (were|was|are|should be|shouldve been|should have been|need to be)",
)
"""The same with the number that is right."""
ALL_FEW = Pattern(
    """
    all of? [the|my|these|those] n:# >(..2 [set|sets|one|ones|of (them|those|these)] {be})
    <(,|for|on|in|all|#) n:# sets >($|.|!|,|not|actually|sorry)
    """,
    be=words_of("were was are is should need needs felt went at with had"),
)
"""All of some recorded sets, by their number: that number is none of the values."""
ASKED_FOR = Pattern(
    """
    (can|could|would|will|may|shall) (i|you|we|u) [please|pls|just|maybe|quickly]* {put_right}
    (is it possible|possible|would it be possible) to {put_right}
    (be so (kind|good) as to|i would be grateful if you (could|would)|be grateful if you) {put_right}
    """,
    put_right="""
        change|correct|fix|edit|update|amend|adjust|replace|put [it|that] right|set|switch|swap|make
        log|count|record|mark|file|save|move|enter|put|note
    """,
)
"""A question that only asks for the correction."""
SORRY = Pattern("""
    sorry|oops|whoops|my bad|my mistake|mistake|typo|wrong|misread|miscounted|mistyped|correction|apologies
""")
"""What makes a number said of a recorded exercise one that puts it right."""
VALUE_AFTER = Pattern(
    "[set|sets|one|ones|today|earlier]* {be} {only} [+|-] #",
    be="was|were|is|are|should be|shouldve been|should have been",
    only="[only|just|actually|really|with|at|for|the|in fact|all|both|done]*",
)
"""A number said of an exercise right after its name: "were with 9s"."""
UNIT_AFTER = Pattern(
    "[set|sets|one|ones|today|earlier]* {be} [in|all|actually|really|meant]* {unit} ({over}|$)",
    over=">(,|.|!|sorry|not)",
    be="was|were|is|are|should be|shouldve been|should have been",
    unit=_UNIT,
)
"""A unit said of an exercise right after its name: "were in pounds"."""
ALL_FEW_ARE = Pattern("""
    all [_] n:# ..3 (were|was|are|be|been|say|read) [at|for|only|just|with|actually|done|the]* [+|-] #
""")
"""All of some recorded sets, with the number that is right."""
BOTH = Pattern("(both|the two of them) !({paired})", paired=_PAIRED)
"""Two recorded sets, of one exercise or of two."""
BOTH_OR_ALL = Pattern("(both|all) !({paired})", paired=_PAIRED)
"""What makes several exercises, named one after the other, be meant alike."""
ALL_THERE_ARE = Pattern("all (of (them|those|these|it)|[the|my] sets)")
"""All recorded sets."""

NOT_THIS = Pattern('{denied} [the|a|an|for|at|with|my|+|-] ["] n:# !(%|percent)', denied=_DENIED)
"""The number that is not right."""
OLD_NUMBERS = Pattern(
    "{denied} [the|a|an|for|at|with|my|only|just|+|-] # [{unit}|rep|reps] [(x|for|/|@) #]",
    denied=_DENIED,
    unit=_UNIT,
)
"""The numbers that are not right, load and reps together."""
NOT_NAMED = Pattern("({denied}|arent) [!(but) _] [!(but) _] $", denied=_DENIED)
"""Words before an exercise that is not the right one."""
UNIT_FIXED = Pattern(
    """
    (was|were|is|are|be|been|in|as|to|meant|should be) [in|actually|all|meant|the]* right:{unit}
    not wrong:{unit}
    (the|that|those|my|these) # (was|were|is|are) [in|actually|all|meant]* right:{unit}
    make (that|it|those|them|this) right:{unit}
    (wrong unit|unit|units) [,|:|is|was|in]* right:{unit}
    in right:{unit} ,? (sorry|not|oops)
    right:{unit} ,? not {unit}
    ^ right:{unit} (,? not|sorry|instead|i mean|$)
    ^ right:{unit} ....7 not [in] {unit}
    (sorry|oops|whoops|meant|mean|ups) ,? [in|its]* right:{unit}
""",
    unit=_UNIT,
)
"""A unit that puts the recorded one right, and one that is denied."""
_RIGHT = words_of("right fine correct ok okay same good true")
_IN_ORDER = "(is|are|was|were|stay|stays) [all|still|as|the|quite]* {right}"
WRONG_LOAD = Pattern(
    """
    (wrong|the|correct) (weight|load) !({in_order})|(weight|load) (should|was|is) !({right})
    (reps|count|time|seconds) {in_order}
    """,
    in_order=_IN_ORDER,
    right=_RIGHT,
)
"""That the load was recorded wrong."""
WRONG_AMOUNT = Pattern(
    """
    (wrong|the|correct) (reps|number of reps|rep count|count|seconds|time) !({in_order})
    (weight|load) {in_order}
    miscounted|(cant|couldnt|only|lost|never) ..1 count
    (only|just) (count|counting|counted) #|counted to #
""",
    in_order=_IN_ORDER,
    right=_RIGHT,
)
"""That the reps or the seconds were recorded wrong."""
