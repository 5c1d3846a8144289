"""The rules for phrases that count from another set: that of last time, the target, the one before."""

from decimal import Decimal

from domain.reading.patterns import Pattern
from domain.reading.phrase_kinds import UNIT, Rule
from domain.reading.words import words_of

MOST_MORE = 20
"""Nobody does more reps than that beyond another set; a greater number is a load, or a slip."""

_AFTER_STEP = words_of(
    """for x from on since than to and but then today this with at again got did more heavier lighter so
    yesterday compared by which as over now finally still only just i it"""
)
"""Words that may follow the number by which a load went up or down."""
_NO_STEP = words_of(
    """warm warmed warming pull pulls push chin sit sat step set get next woke racked lay lie lying break
    broke calm cool cooled wound"""
)
"""Words that make something else of "up" and "down": "warm up 10"."""

_REPS = words_of("rep reps repetition repetitions times")
_LAST = """
    last (time|times|week|weeks|session|workout|one|training|monday|mondays)
    before|the last (time|one)|my last [one]|the previous (time|one|session|workout)
    previous|previously|last
"""
_SAME_BUT = "the? (same again|same thing|same|ditto|again) [,|but|just|only|with|minus|plus|and]*"
"""What is said before how much more or fewer than the set just done: "same again but two fewer"."""
_LISTS: dict[str, frozenset[str] | str] = {
    "last": _LAST,
    "reps": _REPS,
    "unit": UNIT,
    "same_but": _SAME_BUT,
}

_UP = Pattern(
    """
    ({went_up}) [{what}]* n:# [u:{unit}] !(/) [more|heavier|extra] [(from|on|than|over|since) {last}]
    n:# u:{unit} (more|heavier|up|extra) [weight|load] {than} {last}
    n:# (heavier [weight|load]|up [weight|load]|extra [weight|load]|more (weight|load)) {than} {last}
    n:# u:{unit} (more|heavier|up) !(rep|reps)
    n:# more u:{unit} [(on|for|at|with) ..3] {than} {last}
    n:# [u:{unit}] more [of]* (help|assistance|support|assist) [than {last}]
    fraction:# [u:{unit}] ((more|heavier|up) [{than} {last}]|extra {than} {last}) !({reps})
    """,
    went_up="up|went up|added|add|increased|increase|bumped|heavier by",
    what="it|the weight|weight|up|by|another|an extra|extra|the load|to it",
    than="than|from|on|over|compared to",
    **_LISTS,
)
_DOWN = Pattern(
    """
    ({went_down}) [{what}]* n:# [u:{unit}] [less|lighter] [(from|on|than) {last}]
    n:# [u:{unit}] (lighter|less weight) than {last}
    (took|taking|take|knocked) n:# [u:{unit}] off !(the|my|of)
    n:# u:{unit} less than {last}
    n:# less than {last} >(for #|x #|, #)
    n:# [u:{unit}] (less|fewer) [of]* (help|assistance|support|assist) [than {last}]
    n:# u:{unit} (less|lighter|down|off) !(rep|reps)
    fraction:# [u:{unit}] (less|lighter|down|off) [than {last}] !({reps})
    """,
    went_down="""
        down|went down|lighter by|took off
        (dropped|drop|decreased|reduced|lowered) >([it|the weight|weight|the load|down] by)
    """,
    what="it|the weight|weight|down|by|another|to it|the load",
    **_LISTS,
)
_STEP_UP = Pattern(
    """
    n:# [u:{unit}] (up|heavier) >(for #|x #|, # {reps})
    n:# more >(for # {reps}|, # {reps}|x #)
    """,
    unit=UNIT,
    reps=_REPS,
)
_STEP_FROM_LAST = Pattern(
    "n:# more {than} {last} [,|-|and|with|for|got|:]* >(# {reps}|x #)",
    than="(than|from|on|over)",
    **_LISTS,
)
"""Of so much more than last time and reps of their own, the first is the load's; one or two are remarks."""
_STEP_DOWN = Pattern(
    """
    n:# [u:{unit}] (down|lighter|less) >(for #|x #|, # {reps})
    (dropped|drop|dropping) n:# [u:{unit}] !({reps}|x|/) !(for # !({reps}|,|.|and))
    """,
    unit=UNIT,
    reps=_REPS,
)
_MOST_STEP = 20
"""A greater number beside "up" or "dropped" is the load itself."""
_LEAST_STEP = 3
"""A smaller number more than last time can be one of reps."""
_A_SIDE = words_of("left right side arm leg hand")
"""Words after which "same" tells of one side what was told of the other."""
_TARGET = words_of("target plan goal")
_AMOUNT = words_of("rep reps second seconds sec secs s")
_OVER_TARGET = Pattern(
    """
    n:# [{amount}] more? (over|above|better than|past|more than|beyond) [the|my] {target}
    (target|plan) (plus|+) n:#
    (beat|exceeded|over|above) the? {target} by n:#
    """,
    target=_TARGET,
    amount=_AMOUNT,
)
_UNDER_TARGET = Pattern(
    """
    n:# [{amount}] [less|fewer] (below|under|short of|off|less than|fewer than|shy of) [the|my] {target}
    (target|plan) (minus|-) n:#
    n:# [{amount}] short !(of|than) (>(,|.|!|;|on|in|for|with|but)|$)
    missed the? {target} by n:#
    the? {target} missed by n:#
    """,
    target=_TARGET,
    amount=_AMOUNT,
)
_ON_TARGET = Pattern(
    """
    {hit} [the|my|our|all|your] (target|targets|goal) !(was|is|of|:|by)
    target (hit|reached|met|done|achieved|made|nailed)
    (hit|nailed|made|reached|smashed|matched) it (on|for|with|in) [the|my]* >(_ ..2 (too|also|as well|again))
    [{wholly}] <!({still_to_come}) (as|like|per|to) [it was|was|its|is|the|you|we|had]* {planned} [says|
        said|it]
    same as [the|my]* target
    what you (wrote|prescribed|planned|asked for)
    exactly (the|what) (plan|target|was planned)
    exactly what the plan (said|says|wanted)
    """,
    hit="hit|made|reached|got|nailed|smashed|met|matched|did|achieved|on|as per|per|to",
    wholly="exactly|just|precisely|all|everything|went|done|done exactly",
    still_to_come=words_of("tomorrow later soon"),
    planned="planned|prescribed|plan|programmed|written|scheduled|targeted|aimed|aimed for",
)
_REMARKS_ON = words_of("thats its is")
"""Words after which a comparison only remarks on what was told: "95x7, thats 2 more than before"."""
_MORE_REPS = Pattern(
    """
    (beat|bettered|topped|beaten|improved) _ ..4 by n:# [{reps}]
    <!(down|minus|lost|dropped|missed) n:# [more|extra] {reps} [more|extra|up|better] {than} {last}
    n:# (more|extra|better|up) [{reps}] (than|on|over|from|as) {last}
    n:# (second|seconds|sec|secs|s) (more|longer|extra|better) (than|on|over|from|as) {last}
    n:# (more|extra) {reps}
    n:# {reps} (more|extra|better|up) [{than} {last}]
    [{last}] (plus|+) n:# {reps}
    <!(push|pull|chin|sit|step|press) (up|plus) n:# (rep|reps|repetition|repetitions)
    one (more|extra) [rep|repetition] than {last}
    [got|did|managed|with] an extra (rep|repetition)
    {same_but} n:# (more|extra) [{reps}] !({unit}|weight)
    one better than {last}
    {same_but} one (more|extra) [rep]
    (same|ditto) [weight|load|again]* [,|but|and]* plus one [rep]
    n:# (more|extra) !({unit}) _ [!({unit}) _] [!({unit}) _] than {last}
    """,
    than="(than|on|over|from|as|compared to|vs)",
    **_LISTS,
)
_FEWER_REPS = Pattern(
    """
    [{same_but}] one (fewer|less) [rep] [(than|from) {last}] {not_of_load}
    [same|ditto] [again] [,|but|and]* minus one [rep] (>(.|,|!|on)|$)
    [{same_but}] n:# (fewer|less) [{reps}] [(than|from) {last}] {not_of_load}
    n:# {reps} (fewer|less|down) [(than|on|from|compared to|vs) {last}] {not_of_load}
    n:# {reps} short (of|than|on|from|compared to|vs) {last} {not_of_load}
    {last} minus n:# [{reps}] {not_of_load}
    (minus|down|lost|dropped) n:# [{reps}] (than|on|from|since|compared to) {last}
    (minus|down) n:# {reps} {not_of_load}
    n:# [second|seconds|sec|secs|s] (short of|below|under) {last} {not_of_load}
    n:# (second|seconds|sec|secs|s) (fewer|less|shorter) (than|from|as) {last}
    [{same_but}] (missed|lost|dropped) n:# {reps} {not_of_load}
    """,
    not_of_load="!([{reps}] than my? (right|left|other)) !(than {last} #) !({of_else} [_] than)",
    of_else="rest|help|assistance|assist|support|time|pain|sleep|weight|load|bounce|swing|range|momentum",
    **_LISTS,
)
_JUST_MORE = Pattern("<!(#) n:# more (>(,|.|!|;|'('|-|and|then|but|today)|$)")
"""After the name of an exercise: "push-ups one more"."""
_NO_NAME = words_of(
    """did do get got had have and then plus with in for left only even just maybe not no the was were is x
    managed hit , . ! ; : - + / ( @ at by to of kg kgs lb lbs reps rep s sec set sets try one two be could
    can couldve would eat need needed want wanted add added after before about squeezed out i"""
) | {"\n", ""}
_SAME_REPS = Pattern(
    "[the|exactly]* same [number of] ({reps}|rep count) [as {last}] !(_ #)",
    **_LISTS,
)
_FOR_MORE_REPS = Pattern("<(for) n:# (more|extra|better) [{reps}] than {last}", **_LISTS)
_FOR_FEWER_REPS = Pattern("<(for) n:# (fewer|less) [{reps}] than {last}", **_LISTS)
_MOST_FOR = 4
_SAME_LOAD = Pattern(
    """
    [at|with|on|using|kept] [the|that] same ({weight}) [(as|like|than) on? {usual}]
    weight was? the same [as last time]
    [{at}]* (last|previous) [{when}] (weight|weights|load) !(was|is|were|should|:|=|of)
    (at|with|on|using) (the|my) usual [weight|load|one|kilos|kg|lbs]* (>(.|,|!|;|-|and|but|this)|$)
    (weight|load) unchanged|no change in weight|unchanged weight
    same >([for|,|but|only|just|got|did]* # !(more|fewer|less|{reps} (more|fewer|less)))
    """,
    weight="""
        weight|weights|load|kg|kilos|lbs|poundage|amount|number of kilos
        dumbbell|dumbbells|db|dbs|bell|bells|kettlebell|kettlebells
        pin|stack|plates|bar|height|band|setting|assist|assistance|help|belt
    """,
    reps=_REPS,
    usual="last (time|week|session|workout)|before|always|usual|yesterday",
    at="at|with|on|using|the|same|my",
    when="time|times|week|weeks|session|sessions|workout|workouts",
)
_SAME_SET = Pattern(
    """
    [exactly|just|basically|literally|all] the same [_] [{result}] (as|like|than) on? {last}
    the same again (on|for|with|in) [the|my]* _ [_] (as|like) on? {last}
    {same} {last}
    same ({numbers}) [as {last}]
    """,
    result="""
        set|numbers|thing|result|weight and reps|reps and weight|weight and reps|weights and reps
        load and reps|everything|score|stuff
    """,
    same="""
        same|repeat|repeated|repeating|matched|equalled|equaled|tied|identical to|copy of|repeat of|like|as
        exactly like|level with|did the same as
    """,
    numbers="""
        numbers|weight and reps|reps and weight|weight same reps|load same reps|weight , same reps
        weight & reps|everything|result
    """,
    **_LISTS,
)
_SAME_AGAIN = Pattern(
    """
    the? exact? same again|ditto
    {another} [one|set|round|go] [,|-]* [just|exactly]* (the? same !({of_it})|like (it|that))
    """,
    another="(another|one more|# more)",
    of_it="weight|load|reps|numbers|but|with|for|one|kilos|kg|lb|lbs|as",
)
_AGAIN = Pattern("""
    again|once more|another (set|one|round|go)
    (one|#) more set
    an? extra set
    (one|#) more for (the road|luck|good (luck|measure)|fun|the (team|coach|win)|you)
    (one|a) [cheeky|more|very]* (bonus|extra|last|final) (one|set|go) !(was|is|left)
    (one|#) more [:] >(# [kg|lb] (x|for))
    another # (for|x)
    ^ [and|then|got|did]* another >(# [reps|rep] [there|too|today]* (>(.|,|!)|$))
    ^ [and|then|did]* # more # [kg|lb] (for|x)
""")
_ONE_MORE = Pattern(
    """
    ^ [and|then|did|ok|got|managed]* n:# more [set] [,|:|-|.|and|for|with|got|at]* (>(#)|$)
    ^ [and|then|did|ok|got|managed]* n:# more [set] (,|:|-|.) (>(#|same|at|with)|$)
    ^ [and|then|did|ok|got|managed]* n:# more [set|exercise] (:|-) >(_)
    """
)

COMPARISON_RULES: tuple[Rule, ...] = (
    Rule("up", _UP, not_after=_NO_STEP, goes_on=_AFTER_STEP, beside=True),
    Rule("down", _DOWN, not_after=_NO_STEP, goes_on=_AFTER_STEP, beside=True),
    Rule("up", _STEP_UP, within=(0, _MOST_STEP), beside=True),
    Rule("up", _STEP_FROM_LAST, within=(_LEAST_STEP, _MOST_STEP), beside=True),
    Rule("down", _STEP_DOWN, within=(0, _MOST_STEP), beside=True),
    Rule("target more", _OVER_TARGET, within=(0, MOST_MORE), whole=True, beside=True),
    Rule("target fewer", _UNDER_TARGET, within=(0, MOST_MORE), whole=True, beside=True),
    Rule("target", _ON_TARGET),
    Rule(
        "more reps",
        _MORE_REPS,
        within=(0, MOST_MORE),
        whole=True,
        beside=True,
        not_after=words_of("no not even") | _REMARKS_ON,
        otherwise=Decimal(1),
    ),
    Rule(
        "fewer reps",
        _FEWER_REPS,
        within=(0, MOST_MORE),
        whole=True,
        beside=True,
        not_after=_REMARKS_ON,
        otherwise=Decimal(1),
    ),
    Rule("more reps", _JUST_MORE, within=(1, MOST_MORE), whole=True, not_after=_NO_NAME),
    Rule("more reps", _SAME_REPS, otherwise=Decimal(0), beside=True),
    Rule("more reps", _FOR_MORE_REPS, within=(1, _MOST_FOR), whole=True),
    Rule("fewer reps", _FOR_FEWER_REPS, within=(1, _MOST_FOR), whole=True),
    Rule("same load", _SAME_LOAD),
    Rule("same all", _SAME_SET, not_after=_A_SIDE),
    Rule("same again", _SAME_AGAIN, not_after=_A_SIDE),
    Rule("again", _AGAIN),
    Rule("again", _ONE_MORE, within=(1, 1)),
)
