"""Turns of phrase that tell of a warning sign, as data: "I can't catch my breath", "I blacked out"."""

from domain.reading.danger_words import SUDDEN, Sign
from domain.reading.pattern_tables import Table
from domain.reading.patterns import Pattern
from domain.reading.words import words_of

_LIMB = words_of(
    "arm arms leg legs hand hands foot feet finger fingers limb limbs toes thigh calf forearm face thumb"
)
_MY = "[my|the|a|one|both|any|whole|left|right|#|of|half|little|big|ring|index|middle|upper|lower]*"
_CANNOT = """
    cant even?|can no|couldnt|wont|no longer|barely|hardly
    unable to|[was] not able to|dont manage to|didnt manage to|struggling to|impossible to
"""
_WILL_NOT = "wont|doesnt"

_ON_THE_CHEST = Pattern("""
    (press|presses|pressed|pressing) me? (in|on) [my|the] (chest|breast)
    (sitting|standing|elephant|stone|brick|weight|lies|lying) ....3 (on|in) my (chest|breast)
""")
_HEART_HURTS = Pattern(
    """
    heart [really|also|still] (hurt|hurts|pain|pains|ache|aches|is hurting|cramp|cramps) !(for|to|when i see)
    {hurting} ....5 (in|at|around|near|of|behind) [my|the] heart
    (having|have|think|like|is|was) ..3 heart attack
""",
    hurting=words_of("pain pains pressure stabbing stitch cramp pressing tightness"),
)

_NO_BREATH = Pattern(
    """
    {cannot} ..1 (breathe|breath)
    {cannot} ..1 get ..1 (air|breath|oxygen)
    {cannot} ..1 catch (my|a|any) (breath|air)
    {cannot} get my? (air|breath) (in|back)
    {hard} [with] [to|for] my? (breathe|breathing|breath|air)
    hard to (take|get|draw|catch) ..3 (breath|air)
    (trouble|difficult|difficulty|hard|problem|problems) to? (get|getting|draw|drawing|catch) ..1 (air|breath)
    breathing {is_now} ..2 (hard|difficult|painful|impossible|tough|laboured|labored|shallow)
    air hunger
    breathing that? (wont|doesnt|isnt) ..1 {calmer}
    (breath|breathing) [is|was|gets] ..1 short
    (breath|air) (goes|went|is going|is|stayed|stays) (away|gone)
    (short|shortness) of (breath|air)
    (no|bad|too little|so little|little|not enough|hardly any|barely any) air !(con|conditioning)
    breathless that? i? (cant|couldnt|had to|have to)
    wheezing|gasping|(gasp|gasped|gasps) for (air|breath)
    asthma attack|suffocating|suffocate|suffocated|suffocates|suffocation
""",
    cannot=_CANNOT,
    hard=words_of(
        """trouble difficult difficulty difficulties struggle struggles struggled struggling hard problem
        problems fighting"""
    ),
    calmer="settle|calm|come back|slow|stop|settling|calming",
    is_now="is|was|feels|felt|gets|got|has been|became|becomes",
)
_BREATHLESS_AT_REST = Pattern(
    """
    {breathless} ....8 {resting}
    {breathless} ....3 (for|since) ..3 {times}
    {breathless} ....4 {times} (after|later|now)
    {times} (after|later) ....6 {breathless}
    {breathless} ....8 (for no reason|not normal|just ..1 ~ing)
    (sitting|resting|lying|still|even) ....5 (out of breath|breathless)
""",
    breathless="""
        out of breath|breathless|breathlessness|puffing|winded|panting
        breathing [is|was] (hard|heavy|heavily)|(heavy|hard) breathing
    """,
    resting=words_of(
        """sit sitting rest resting still lying walking nothing even calm stairs talking shoes kitchen shower
        car bed"""
    ),
    times=words_of("minute minutes min mins hour hours hrs"),
)

_FAINTED = Pattern(
    """
    fainted|fainting|(keeled|keeling) over|lost [the|my|all] consciousness|unconscious|syncope
    (greyed|greying|grey) out
    (pass|passed|passing|passes) [clean|right|completely|straight] out !(flyers|the|leaflets)
    swooned|saw [only|just|everything] black !(_ _)
    saw black (for|and|before|when|during|at|on)
    found myself [sitting|lying|back|flat]* ....2 (floor|ground|deck|carpet|mat|rug|tiles|grass)
    (had|having|have) [a|another|one of|my|those|these|bit of]* funny (turn|turns|spell|spells)
    blacked out !(the|my|a)
    (black|blacking) out !(the|my|a|curtains|blinds)
    had a [short|brief|little] blackout
    blackout (for|during|on|after|in) (a|the|my|#|some|squat|squats)
    (i|ive|almost|nearly|just) collapsed
    collapsed (in|at|after|during|on the (floor|ground|platform|gym))
    collapse in the (shower|gym|changing)
    (was|been) (gone|away|out) for [like|about|maybe|around|only|just|roughly]* (a|some|a few|#) ..1 {moments}
    i was (short|shortly|briefly|quickly) (gone|away|out) !(to|for|from|with|of|on|at|in|shopping|buying)
    i [just|then|nearly|almost|also]* (went|dropped|fell|keeled|hit) [down] like a ..1 {heavy_thing}
    grey (around|round|at) the edges
    (nearly|almost) went out (during|on|at|in|mid)
    out cold !(water)
""",
    moments=words_of("moment moments second seconds sec secs minute minutes"),
    heavy_thing=words_of("sack stone tree log brick bricks plank"),
)
_FAINT = Pattern(
    """
    {feel} [a|very|so|really|bit|quite|little]* faint
    faint (feeling|and|after|during|on|in|at|spell)
    [so|that|too] {dizzy} that? i? (fell|almost fell|nearly fell|almost went|had to (lie|sit|hold)|collapsed)
    {dizzy} ....3 (fell over|fell down|fell to|on the floor|collapsed|hit the (floor|deck|ground|mat))
    ({dizzy}|wobbly|grey) ....6 (catch|caught) me
    {dizzy} ....3 (almost|nearly) (fell|dropped|went|down|collapsed)
    saw stars and ..3 (fell|fall|keel|keeled|keeling|down|over)
""",
    feel="felt|feel|feeling|was|am|im|came over|nearly|almost|close to|to|gonna|get|got|so|very|bit|quite",
    dizzy="dizzy|light headed|lightheaded|woozy",
)
_EYES_WENT_DARK = Pattern(
    """
    everything (faded|went fuzzy|got dark|went grey|grey|went [all] (white|blurry|dim|hazy))
    vision ....4 (black|dark|grey|white)|vision [was|is|started|kept]* (closing|closed|narrowing|narrowed)
    (before|in front of) [my|the] eyes ..3 (black|dark)|(black|dark) (before|in front of) the eyes
    tunnel vision|eyes (went|go|got|turned|became|were) (black|dark)
    (went|going|everything|vision|all|became|became all|was|turned|gone) ..1 (black|dark) ....3 {at_once}
    black (before|in front of) my eyes
    everything (went|goes|turned|became) (black|dark)
    vision (went|goes|gone|going|turned) (black|dark|grey)
""",
    at_once=words_of("eyes vision moment second seconds sec standing stood me"),
)
_CAME_TO = Pattern("""
    (people|they|someone|somebody|partner|spotter|he|she) ..3 (wake|woke|waking|waked) me
    woke up? on the !(sofa|couch|bed|wrong|right|plane|train|bus) _
    (woke up|came to|came round|came around) ....5 (floor|ground|deck)
    next thing i (know|knew|remember) ....7 (floor|ground|deck|ceiling)
""")

_HEAD_AT_ONCE = Pattern(
    """
    {sudden} ....4 head ..1 (hurt|hurts|pain|pains|is hurting)
    head suddenly ..1 (hurt|hurts|pounds|throbs)
    {sudden} ....7 (head pain|pain ..2 (in|of|at|behind) ....4 head)
    head ....6 (splitting|bursting) (open|apart)
    head ....6 (splitting|bursting) ....3 (sudden|suddenly)
    head ..1 (hurt|hurts) ....4 (extremely|suddenly|terribly|like never|never had)
    from one (second|moment|minute) to the (other|next) ....5 (headache|headaches|head pain)
    head ....5 (split|splits|burst|bursts) (open|apart)
    head ..3 (exploded|exploding|explode|explodes) ....6 (pain|headache|sudden|suddenly)
    (head pain|pain ..2 (in|of|at) ....4 head) ....8 {nowhere}
    (headache|headaches|migraine) ....8 {like_a_blow}
    came on? (in one|like a|all at once|out of) ....5 headache
""",
    sudden=SUDDEN,
    nowhere="nowhere|suddenly|sudden|worst|thunderclap|explosion|never before",
    like_a_blow="""
        all at once|worst ..3 (ever|had)|like never before
        like a (bomb|hammer|bolt|lightning|flash|knife|blow)
        in (one|a) (second|moment|instant)|from one (second|moment|minute) to the (other|next)
    """,
)

_NUMB = Pattern(
    """
    {cannot} ..1 feel [anything in] {my} {limb}
    (dont|didnt) ..1 feel [anything in] (my|the) ..1 {limb} {any_more}
    {limb} i {no_more_feel} feel [it|them|nothing]* {any_more}
    {limb} i ({cannot}|no more) ..1 feel !(like|the|a)
    {hardly} more? ..1 (feeling|sensation) ..1 (in|on|of) {my} {limb}
    (arm|leg|hand|foot) ....8 no (feeling|sensation) !(of|for|like|that)
    feel nothing ..1 (in|on) {my} {limb}
    (dont|cant|no) (feel|feeling) [anything|nothing] between my legs
    {part} [has|is|s|just|completely]* (went|gone|goes|going|stays|feels) dead ....9 {lasting}
    {limb} ..1 (is|are|fell|went|has fallen) asleep ....6 (since|day|days|hour|hours|still|week|weeks)
    (cant|dont|couldnt) ..1 feel (my|the|one) [left|right|whole] side
    numb (between|around) my (legs|groin|saddle|crotch|buttocks)
""",
    cannot=_CANNOT,
    my=_MY,
    limb=_LIMB,
    no_more_feel="dont|didnt|not",
    any_more="any more|anymore|at all|since|properly|right",
    part="hand|foot|arm|leg|finger|fingers|thumb|toes",
    lasting="since|still|stays|stayed|hour|hours|day|days|morning|week",
    hardly="no|little|less|hardly any|barely any|lost|losing|loss of|without|zero",
)
_NO_CONTROL = Pattern(
    """
    (lost|losing|lose|loss of|no|dont have|havent got) ..1 control (of|over|in) {my} {limb}
    {cannot} ..1 (move|control|lift|raise) (my|the|one|his) ..1 {whole_limb}
    {limb} ....4 (paralysed|paralyzed|hang limp|hangs limp|just hang|just hangs|just hanging)
    {limb} ....4 (hanging (limp|there|loose|useless~|down)|(is|was) hanging)
    {limb} ....4 ((went|is|gone) limp|gave way completely? and)
    {limb} ....4 ({will_not}|wouldnt) move !({what_is_moved})
    {limb} ....4 ({will_not}|dont|didnt|not|wouldnt|barely|hardly|no longer|stopped|never|
        cant) ..1 (obey|obeys|obeying|listen|listens)
    {limb} ..1 (obey|obeys|listen|listens) [to] (me|it) not
    {limb} ..1 ({will_not}|dont|didnt|wouldnt) ..1 do (what|as) i (tell|want|say)
    {limb} ..1 ({will_not}|dont|didnt|wouldnt) ..1 do as (its|it is|it was|theyre) told
    {limb} ....6 ({will_not}|dont) (close|open|respond|react)
    {limb} ....4 (didnt|not) (react|respond)
    {limb} ....6 {cannot} control (it|them)
    {cannot} grip anything
    (arm|leg|hand|foot) ....3 dead and ..1 {cannot}
    (wanted|tried) to (lift|move|raise) my ..1 (arm|leg|hand|foot) ....5 (not|nothing|didnt|wouldnt)
""",
    cannot=_CANNOT,
    will_not=_WILL_NOT,
    my=_MY,
    limb=_LIMB,
    what_is_moved=words_of("on in at for up a the another it that this weight any"),
    whole_limb=words_of("arm arms leg legs foot feet hand hands finger fingers toes"),
)
_LIMB_DRAGS = Pattern("""
    foot ..1 (slaps|slapping)
    (foot|leg) ..1 (drops|dropping|drags|dragging|flops|flopping)
    (dragging|drag) my ..1 (foot|leg)
    (keep|keeps) (flopping|dropping|dragging)
""")
_STROKE = Pattern(
    """
    (face|mouth|eye) ....3 (droopy|drooping|droops|hanging)
    slurred speech|(speech|words) [is|was|were|got|went|came out|all]* (slurred|funny|jumbled|garbled)
    {cannot} (see (out of|with|on) (one|my) [left|right]* (eye|side)|find (my|the) words|speak properly)
    (went|gone|going) blind (in|on) (one|my)|lost [the] (sight|vision) (in|on) (one|my)
    (having|have|think|like) ..3 a stroke !(of)
    """,
    cannot=_CANNOT,
)

_BLADDER = Pattern(
    """
    (wet|peed|pissed|weed) (myself|my (pants|trousers|shorts|leggings|self))
    (lost|lose|losing|loss of|no) ..1 control (of|over) [my|the] (bladder|pee|wee|urine|bowel|bowels)
    {cannot} ..1 (hold|control|feel) [my|the] (bladder|pee|wee|urine|bowel|bowels|water)
    (lost|no|loss of) (bladder|bowel) control
    bladder ..1 (went|emptied|gave|let go|control (is|was) gone)
    bladder has no control
    ({cannot}|dont) feel when i ..1 (need|have) to (pee|wee|go|urinate)
    {cannot} ..1 (tell|feel|notice) (when|if|that) ..3 (bladder|toilet|pee|wee)
    (pee|urine|wee) (ran|runs|came|comes|running|coming) ..2 (down|out)
    (leak|leaking|leaked) ..1 (urine|pee|wee)|i [also|just|keep|kept|even|have]* (leak|leaked|leaking)
    (didnt|dont|couldnt|never) [quite|even] make it to the (toilet|loo|bathroom|restroom|lavatory)
    incontinent|incontinence
""",
    cannot=_CANNOT,
)
_DARK_URINE = Pattern(
    """
    passing (dark|brown|blood|red)
    (my water|water i pass|water i passed) ({looks}) ....3 (dark|brown|tea|cola|coke|black|red)
    ({urine} ..2 (is|was|been|looks|looked|gone|turned|went)|urines) [really|very|so|quite|all]* dark
    (urine|pee|wee) ..2 (look|looks|looked|is|was) like [a|the|some]* !({usual}) _
    (urine|pee|wee) ..2 (is|was|looks|looked) !({usual}) _ (coloured|colored|colour|color)
""",
    urine="urine|pee|wee|piss",
    looks="is|was|s|has been|had been|has|looks|looked|went|gone|turned|came out|comes out|became",
    usual="clear|water|straw|normal|usual|always|before|yellow|lemonade|apple|pale|light|that|this|it|i|a|lot",
)

_CALL_FOR_HELP = Pattern(
    """
    (call|get|send|phone|ring|calling|phoning|ringing|fetch|dial) ..3 {rescue}
    (need|want) ..1 {rescue}
    (help|please|quick|emergency|urgent) [,|.|!|me]* [an|the]* {rescue}
    ^ [an|the]* {rescue} [now|please|pls|quick|quickly|asap|!|.|,|help]* $
    """,
    rescue="ambulance|paramedic|paramedics|(the|an) emergency (services|number|doctor)",
)
"""Who asks for rescue needs it, whatever the reason: the bot cannot call anyone, and has to say so."""

PHRASES: Table[Sign] = Table(
    (
        (_ON_THE_CHEST, "chest"),
        (_HEART_HURTS, "chest"),
        (_NO_BREATH, "breath"),
        (_BREATHLESS_AT_REST, "breath"),
        (_FAINTED, "faint"),
        (_FAINT, "faint"),
        (_EYES_WENT_DARK, "faint"),
        (_CAME_TO, "faint"),
        (_HEAD_AT_ONCE, "head"),
        (_NUMB, "numb"),
        (_NO_CONTROL, "control"),
        (_LIMB_DRAGS, "control"),
        (_STROKE, "control"),
        (_BLADDER, "bladder"),
        (_DARK_URINE, "urine"),
        (_CALL_FOR_HELP, "call for help"),
    )
)
"""What each of the turns of phrase is a sign of."""

CANNOT_USE = Pattern(
    """
    {cannot} ..3 {use}
    ({will_not}) (go up|bend|move|straighten|lift|take ..1 weight)
    can [the|my|it|this|that|left|right]* ..1 not ..2 {use}
    ({gives}) ....6 (stand|step|walk|weight|load|put)
    (when|whenever|as soon as|every time|if) i ....5 (stand|step|walk|weight|load|put) ....6 ({gives})
    no weight (on|through|thru|in|possible)
    cant ..3 (straight|stretch)
    cant at all
""",
    cannot=_CANNOT,
    will_not=_WILL_NOT,
    gives="buckles|buckled|buckling|gives (way|out)|giving (way|out)|gave way|folds|collapses",
    use=words_of(
        """walk stand bear put move bend straighten lift raise load step extend weight turn use flex grip
        rotate"""
    ),
)
"""What a joint or a limb cannot do any more, beside a pop."""
