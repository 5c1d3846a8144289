"""Turns of phrase for what is no record, as data: plans, warm-ups, what was before."""

from domain.reading.patterns import Pattern
from domain.reading.words import KG_WORDS, LB_WORDS, words_of

_WEEKDAYS = "monday|tuesday|wednesday|thursday|friday|saturday|sunday"

PLAN_BEFORE = Pattern(
    """
    (going|go) for !(it)|going to|gonna|will|<!({being}) ill !({no_will})|wanna|wanted|(want|wants) !(of)
    about to|soon|saving
    tried for|trying for|aim|aims|aiming|aimed|goal|hope|hoping|hoped|promise|dream of|dreaming of
    looking forward to
    plan|planning|planned|prescribed|scheduled|due to do|ready for|preparing for|(build|building) up? to
    try (for|to|and)|trying (for|to)|let me try
    next stop|thinking (about|of|maybe)|thinking >(#)|i (said|told you|wrote|typed)|think ill|maybe next
    ^ [coach|please|can you|could you|,]* make the? _ [_] >(# [please|thanks|coach|,|.|!]* $)
    my target|the target|target (was|is|of|says|said)
    (dont|no need to|not to|please dont) (log|record|count|save|note|enter) (this|that|it|these|
        them) !([set|one|again|twice] (as|at|under|on|for|to|again|twice))
    (just|only) (dreaming|daydreaming|fantasising|imagining)
    supposed to|meant to do|meant to be doing|(was|were) meant to
    should (be ({lifting})|do|have done|hit|get|try|have been)|shouldve been|ought to have been
    could have|couldve|would have|wouldve|might have
    id (like|love|have|rather)|if (i|we|you)
    (it|sheet|app|program|programme) says|(sheet|app|program|programme) said|says here|on paper
    you (said|wrote|put|told|had|want|wanted|asked|gave)
    coach (said|says|wrote) !(go for it|yes|ok|okay|well done|hi)
    (tip|tips|advice|recommendation|suggestion) (from|of|by)
    (physio|doctor|doc|therapist|channel|article|video|book) [{has}] (says|said|recommends|suggests|told|gave)
    tomorrow|one day|someday|{next}|by (christmas|summer|easter|new year)
""",
    no_will=",|.|!|;|'\\n'|$|so|again|since|with|but|today (,|.|!|;|$|'\\n')",
    being="was|were|been|being|am|im|feel|feeling|felt|fell|got|still|so|too|very|quite|really",
    next="next (time|week|session|workout|month) !((im|i am|ill be|we are|well be) !({doing}) _)",
    doing="having|getting|hitting|taking|going|gonna|doing|lifting|trying|aiming|loading",
    has="just|also|has|had|even",
    lifting="doing|using|lifting|squatting|benching|deadlifting|pressing|pulling|rowing|curling",
)
"""What is said before the numbers of a plan."""

PLAN_AFTER = Pattern(
    """
    next (time|week)|(for|in) [the|my|our] next (cycle|block|meet|month|season|year|phase)|tomorrow|soon
    (one|some) day >(.|,|!|$|-|'\n'|one day)|someday
    (is|was) the (plan|goal|target|aim)
    [on|by|for|next|this]* {weekday} (hopefully|or bust|here i come|fingers crossed|i hope|for sure)
    <!(the|of) [was|were|is] planned
    """,
    weekday=_WEEKDAYS,
)
"""What is said after the numbers of a plan."""

THANKED = Pattern(
    "(thanks|thank you|thx|ty|cheers) [so|very|much|a lot|again|coach|,]* for (the|this|my|your) [new]* plan"
)
"""A plan that one only thanks for."""
TO_COME = Pattern(
    """
    ({train}|see (you|u|ya)) [again|back|next|on|this|at|the|in|for]* {day} [{hour}]* (as|like) {usual}
    """,
    train="train|training|coming|come|back|in|session|workout|gym|going|be there|lifting",
    day="tomorrow|{weekday}",
    weekday=_WEEKDAYS,
    hour="at|#|:|am|pm|morning|afternoon|evening|night|then|,",
    usual="(planned|usual|always|agreed|scheduled|normal)",
)
"""A workout to come "as planned", which tells of no set."""

LATER = Pattern(
    """
    [{will}]* [{do}|of|it|the|my|all|to]* (rest|remaining|others|remainder) !(day|days) [{of_it}]* {day}
    [{will}]* (finish|finishing|continue) [it|up|off|the|this|workout|session|for|on|with]* {day}
    {away} ..3 [# _] [from|on|since|starting]* {from_day}
    (should|shall|can|could|may) (i|we) ..6 {day}
    """,
    of_it="of|it|them|the|workout|session|exercises|ones|for|to|on|till|until|comes|is|will be",
    away="away|off|gone|travelling|traveling|abroad|back|return|returning|holiday|vacation",
    will="will|ill|gonna|going to|can i|could i|may i|i|i can|i want to|id like to|is it ok to|ok to",
    do="do|doing|leave|leaving|move|moving|save|saving|make|making|push|pushing|take|taking|train",
    day="(tomorrow|next time|next week) (>(.|,|!|'?'|;|-|'\n'|')'|and|but|then|so|ok|thanks|please)|$)",
    from_day="(tomorrow|next week|next month) (>(.|,|!|;|-|'\n'|')'|and|but|then|so|thanks)|$)",
)
"""What is left for later: no number beside it is of that day."""

RESUME = Pattern("""
    but|instead|then i|so i|however|in the end|in reality|for now
    so >(#|just|only|went|did|lighter)
    <!(have) (managed|reached|achieved)|settled|stuck|ended up?|turned into|became|was able|actual|actually
    early:(did|got|made|hit|now|today|only|this time)
""")
"""What turns from a plan back to what was done. Right after the word for the plan, an "early" one is still
part of it."""

WARM = Pattern(
    """
    <!(after|no|without) {warm} !(done|was !(#)|felt|and)
    (got|get|getting|make|made) (myself|me|my _) (warm|loose)|to (loosen|ease) (up|in)|to get (loose|going)
    <!(still|too|so|very|was|is|nice|felt|feel|feeling|got|get|and) warm (>(')')|>([:|-]* #)|only)
    """,
    warm="""
        (warm|warmed|warming) (up|ups)|warmup|warmups|wu|feeler|(ramp|ramped|ramping) up|primer
        (to|just|and) get warm
    """,
)
"""A warm-up, unless it is only said to be over."""

WARMED = Pattern(
    """
    (after|done|finished) [my|the|a|all|some|two|three|few|of]* (warm (up|ups)|warmup|warmups|warming up)
    warmed up [really|very]* (well|properly|nicely|good|quickly|thoroughly) >(,|.|!|-|;|'\n'|$)
    """
)
"""A warm-up that is over, and tells of no number."""

WARM_ENDS = words_of(
    """then working work worked proper real top main actual heavy but afterwards actually after before first
    finally serious counted counting counts followed"""
)
"""Words that turn from a warm-up to what counts."""
FIRST = words_of("first before after")
"""Those that say it only after a number of the warm-up."""

SUM = Pattern(
    """
    a:# (plus|and|+) b:# [{what}]* [,|-]* {makes} [{all}]* c:#
    """,
    makes="(so|makes|thats|=|total|altogether|in total|which (is|makes))",
    what="rep|reps|more|after|a|breath|rest|breather|extra",
    all="thats|its|it|is|a|total|of|makes|in|all|total|altogether|call|just|say|about",
)
"""A number that is said as the sum of two."""

HISTORY = Pattern(
    """
    last (time|week|weeks|month|session|workout|year|{weekday})
    previously|normally|usually|used to|in the past|back in the day|(a year|years|months) ago
    [my|the] (old|previous|last|current) {best}
    {best} [ever|so far|until now|up to now] (was|stands|is !(now))
    before it? was
""",
    weekday=_WEEKDAYS,
    best="pr|pb|best|record|max",
)
"""What was before, and is no set of now."""
NOW = Pattern("today|now|new|currently|this (time|week)|but|so|then")
"""What turns from it back to now."""
AGAINST = words_of("vs than from versus was beats beat to with not")
"""Words before what was lifted earlier."""

OF_BOTH_HANDS = Pattern(
    """
    both:# [{unit}] {together} [,|'('|=|so|thats|-]* each:# [{unit}] [in|per|a]* {each}
    each:# [{unit}] [in|per|a]* {each} [hand|,|'('|=|so|thats|-]* both:# [{unit}] {together}
    """,
    unit=KG_WORDS | LB_WORDS,
    together="(total|altogether|combined|in total|all up)",
    each="(each|hand|side|arm|dumbbell|db)",
)
"""What both hands hold together, said beside what each of them does."""

THE_BODY = "the body"
"""What marks a part of the body where an exercise could be meant."""
ON_THE_CHEST = Pattern(
    """
    (on|to|off|from|across|touch~) [the|my] chest !(press|supported|fly|flies|machine|row)
    chest (felt|feels|up|was|is)
    (on|across|over|round|around) (my|the) (lap|waist)
    <({weight}) (on|across) (my|the) ({part}) !({movement})
    (on|across|over|round|around) (my|'the') ({part}) !({exercise})
""",
    movement="thrust~|press~|raise~|extension~|abduct~|adduct~|squat~|curl~|machine|flexor|bridge~",
    weight="kg|kgs|kilo|kilos|lb|lbs|pounds|plate|disc|dumbbell|bar",
    part="hips|hip|back|shoulders|thighs|legs|knees|belly",
    exercise="{movement}|:|x|#",
)
"""The chest as the place where a bar comes to, or how it feels, and other places where a load lies."""

WHICH_SET = Pattern(
    """
    [and|then] (on|in|for|at|with) (the|my|that) {nth} [{set}] !({other})
    ^ [and|then|so|the|my|oh|ok]* {nth} [{set}] [was|were|only|just|got|:|,]* >(#)
    (the|my) {nth} {set}
    """,
    nth="(first|second|third|fourth|fifth|# (st|nd|rd|th))",
    set="(one|set|go|time|round|try|attempt)",
    other="rep|reps|exercise|machine|half|day|week|floor|one|of|{month}|x",
    month="january|february|march|april|may|june|july|august|september|october|november|december",
)
"""Which of the sets it is."""
FIGURE = Pattern(
    """
    [and|with] [my] {limp} {parts}
    [and|with] [my|the] {parts} {state} {spent} !(lift~|hang~|bug~|press~|curl~|#)
    """,
    limp=words_of("noodle noodly jelly dead spaghetti rubber rubbery wobbly jello floppy wet useless"),
    parts=words_of("arm arms leg legs hand hands forearm forearms biceps triceps quads shoulders glutes"),
    state="[are|is|were|was|feel|felt|feels|like|all|of|made|turned|to|into|now|just|totally|absolutely|so]*",
    spent="""
        noodle|noodles|jelly|spaghetti|rubber|jello|lead|mush|cooked|fried|toast|gone|shot|dead
        screaming [at me]|on fire|killing me|burning|given up|wobbly|finished
    """,
)
"""How spent a limb is, in a figure of speech: its words name no exercise, and count nothing."""
