"""All rules for short phrases about a set, in their order.

The longest match goes first, then the listed order. Phrases about effort and phrases that compare have their
own files; here stand those that say how a load is counted and what is not known.
"""

from domain.reading.comparison_rules import COMPARISON_RULES
from domain.reading.effort_rules import EFFORT_RULES
from domain.reading.pattern_tables import Table
from domain.reading.patterns import Pattern
from domain.reading.phrase_kinds import UNIT, Rule
from domain.reading.words import words_of

_EACH_HAND = Pattern("""
    in? each hand|in (every|either) hand|per hand|a hand|both hands each
    (per|each) dumbbell|per db|per side of dumbbells
""")
_LOWERING = Pattern("""
    (lowering|lowered|eccentric) only
    (only|just) the (going|way|coming|lowering|letting) [myself]* down [part|half|phase|bit]
    the [way|going]* down (part|half|phase|bit) only|only the down (part|half|phase|bit)
    lowering|only lowering|just the lowering|slow (lower|lowers)
    negative|negatives|neg|negs|eccentric|eccentrics
""")
_BODY = Pattern("""
    [just|only] [with] [my|the] (body weight|bodyweight) only?
    bw|b w|own (weight|body weight|bodyweight)
    just me !(and|at|in|with|who|i)
    just me and (the|a|my) (step|box|floor|mat|wall|chair|ground|stairs|stair)
    [just|only] (with|using) (my|me) body !(weight)
    no (added|extra|additional|external) (weight|weights|load)|no (weight|weights)|no (kilo|kilos) >(#)
    without [any|added|extra|additional|external]* (weight|weights|load)
    (without anything|with nothing) [on|added|extra|at all]*
    unweighted|weightless|zero added|no load
    (no|without) [the|a|my|any|extra]* (belt|plate|plates|vest|backpack|rucksack|chain|chains)
    without [it|that] >(,|;|.|:|#|'\n')|without it? $
    unassisted|no (help|assistance|assist)|without any? (help|assistance|assist|band)
""")
_UNIT_UNKNOWN = Pattern(
    """
    ({unsure}) ..5 {unit} or {unit}
    {unit} or {unit}
    (not sure|no idea|dont know) (which|what) (unit|units) [_] [_] [_]
    in (stone|stones|plates units|pood|poods)
    (unit|units) unknown
    """,
    unsure="""
        not sure|dont know|no idea|unsure|unclear|cant tell|or was it|could be|might be|might have been
        maybe
    """,
    unit=UNIT,
)
_ODD_UNIT = Pattern(
    """
    [it] [{says}] n:# (pood|poods)
    [it] {says} n:# (stone|stones|st)
    <!({change}) (half a|a|one|an old) (stone|stones) >({of_a_load})
    """,
    change=words_of(
        "lost lose losing gained gain put another almost nearly about around over than by down up on"
    ),
    of_a_load="""
        (weight|sandbag|kettlebell|bag|dumbbell|plate|disc|each|of)|x|for
        [#] (on|in) [my|the|each|a]* ({lap}|hand)
    """,
    lap="lap|hips|hip|chest|shoulders|back|belt|backpack|rucksack|bag|belly|thighs",
    says="(says|reads|marked|labelled|labeled|written|stamped) [as|at|about|on it|:]*",
)
"""Units that stand on old weights; a body's own weight in stones is more than any of them."""
_LOAD_UNKNOWN = Pattern(
    """
    ({unsure}) ..4 (weight|heavy|load|kilos|kg|lbs|pounds) [(it|that|this) (was|is|were)|was|is]
    (couldnt|cant) (see|read|make out) the (number|numbers|label|figure|sticker|scale)
    unknown weight|some weight|whatever weight|no idea of the weight
    (no idea|dont know|not sure) (what|how) (it|they|that|those|these|the) ..2 (weigh~|is|was)
    (no idea|dont know|not sure) (what|how much) (is|was) on (it|the _ ..1|there)
    (plates|weights|stack|dumbbells|bells) [is|are|was|were] (unmarked|unlabelled|not marked|not labelled)
    ({unsure}|who knows|no clue|dunno) (what|how (much|heavy)) ..3 (weigh~|weight)
    weight (unknown|not marked|unmarked|isnt marked|not labelled)
    [the|a|that] {look} [resistance|loop|mini|tube|rubber] {thing} !(side~|pull~|walk~|row~|press~)
    the (big|small|heavy|light|middle) (dumbbell|dumbbells|bell|kettlebell|one)
    """,
    unsure="""
        dont (know|remember)|dont recall
        didnt (see|note|check|write|look)
        cant (remember|recall|tell|read|say|see)
        couldnt (read|see|tell|remember)
        not sure|no idea|unsure|forgot|forget|forgotten
    """,
    look=words_of(
        """green red blue black yellow purple orange grey gray pink white brown violet silver gold thick thin
        heavy heaviest light lightest lighter heavier medium middle strong strongest weak weakest mini long
        short small big"""
    ),
    thing=words_of("band bands tube one ones dumbbell dumbbells kettlebell ball loop db dbs"),
)
REPS_UNKNOWN = Pattern(
    """
    lost (count|track) [of the? (reps|repetitions)] !(of)|stopped counting|forgot counting
    (no idea|no clue|dunno|dont know|cant say|couldnt say|cant remember) how many (>(,|.|!|'\n')|$)
    (forgot|forgotten) how (many|much|often)
    didnt count|forgot to count|too {spent} to (count|keep count)|forgot (the|how many) reps
    how (many|much|often) [reps|repetitions|times] ..4 (dont|not|cant|unsure|forgot|forgotten|no idea)
    (dont|not sure|cant|forgot|no idea) ..4 how (many|much) (reps|repetitions|times|i did|i got)
    (a few|some|several|a couple of|a bunch of|loads of|lots of) reps
    as many as i could
    <(x|for|*) (lots|loads|plenty|many|a few|some|several|a (lot|bunch|couple)) >(,|.|!|$|because)
""",
    spent=words_of(
        "tired fried knackered cooked dead exhausted distracted busy wrecked shattered gone spent sleepy"
    ),
)
_ONE_OR_OTHER = Pattern(
    """
    n:# [{reps}] ({either} # [{reps}]|ish) {go_on} ({lost_count})
    """,
    reps="rep|reps",
    either="(or|maybe|perhaps|possibly|/|-|or (maybe|even|was it|perhaps)|could be)",
    go_on="[,|.|-|'('|i|honestly|tbh|but|so|sorry|think|really|kind of|kinda|to be honest|just]*",
    lost_count="lost (count|track)|stopped counting|miscounted|(didnt|forgot to|couldnt) count",
)
"""Reps of which the client knows only about how many they were."""
_REPS_BETWEEN = Pattern("[somewhere] between # and n:# [reps] !({unit})", unit=UNIT)
_ALL_IN = """
    ({all}) [is|are|was|were|the weights|of (them|it|these|those)]* in? {unit}
    <!(#) (in|its|thats|theyre) {unit} !(_ unit)
    '(' all? in? {unit} ')'
"""
_ALL = words_of("all both everything weight weights number numbers those these")
_ALL_KG = Pattern(_ALL_IN, all=_ALL, unit=words_of("kg kgs kilo kilos kilogram kilograms"))
_ALL_LB = Pattern(_ALL_IN, all=_ALL, unit=words_of("lb lbs pound pounds"))
_PIN = Pattern(
    """
    (pin|hole|slot|notch|plate number|peg) [was|is|on|at|in|to|set|hole|no|number|nr|the|pin]* n:# [{th}]
    n:# {th} (hole|pin|slot)
    (level|setting) n:#
    """,
    th=words_of("st nd rd th"),
)
_EVERY_SET = Pattern(
    """
    {every} [{of_them}|one] [{linked}]* >({effort})
    [on|for|in|across] (both|all|each|every) (sets|set|time|times|rounds)
    <({left}) (on|for|in|across|with) [all] {every} [{of_them}|one] (>(,|.|!|;|and|'\n')|$)
    <({left}) {every} (>(,|.|!|;|'\n')|$)
    """,
    every="both|all|each|every",
    of_them="[of] [the] (them|these|those|set|sets|time|times|rounds)",
    linked="at|with|w|had|were|was|about|around|=|:|felt like|still|left|-|@",
    effort="to? (failure|fail)|(till|until) (failure|fail)|rpe|rir|# [rep|reps|more]* (in|left|rir)",
    left=words_of("tank reserve left failure fail me hand"),
)

_LOAD_RULES: tuple[Rule, ...] = (
    Rule("each hand", _EACH_HAND),
    Rule("lowering", _LOWERING, not_after=words_of("no not without zero")),
    Rule("body", _BODY, not_before=words_of("+ plus")),
    Rule("unit unknown", _UNIT_UNKNOWN),
    Rule("unit unknown", _ODD_UNIT, within=(0, 6)),
    Rule("unknown load", _LOAD_UNKNOWN),
    Rule("unknown reps", REPS_UNKNOWN),
    Rule("unknown reps", _ONE_OR_OTHER, within=(1, 50)),
    Rule("unknown reps", _REPS_BETWEEN, within=(2, 50)),
    Rule("all kg", _ALL_KG),
    Rule("all lb", _ALL_LB),
    Rule("pin", _PIN),
    Rule("every set", _EVERY_SET),
)

RULES: Table[Rule] = Table((rule.pattern, rule) for rule in (*EFFORT_RULES, *COMPARISON_RULES, *_LOAD_RULES))
