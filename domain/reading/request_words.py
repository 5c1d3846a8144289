"""Turns of phrase of questions and requests for the coach, as data."""

from domain.reading.patterns import Pattern
from domain.reading.words import words_of

REQUEST = Pattern(
    """
    (can|could|would|will) {you} [please|pls|maybe|perhaps|also] {do_this}
    (please|pls|plz|kindly) [coach|sir|,]* {kindly_do}
    is (a|an|the) _ ..3 (ok|okay|fine|alright|allowed) [instead|too|as well|for|with|then]* >('?'|$|.|for|
        with)
    (what|which) _ ..2 (is|are|s) (best|better|right|good|ideal|safer|safest)
    ^ [coach|so|,]* _ or no _ ['?']* $
    (swap|switch|replace|rotate|add|include|put) {thing} ....5 (next (time|week)|in the future)
    ({alter}|no more) {thing} ....6 {for_good}|{for_good} [,|please|can we|lets|i want to]* {alter} {thing}
    ({alter}|want|have) ....5 (out of|from|off|to|in|into) (the|my) {sheet} {closes}
    (tell|teach|show) me how to|tell me (is|are|was|does|do|will|would|should|can|if|whether)
    what (you|u) (think|reckon|say)
    ^ [so|and|coach|,]* (is|are|will|would|does|do|can|could) ....6 {spoil} ..1 (my|the|any) [_] {gains}
    (let me know|lmk) (if|what|whether|how|when|your|ur)
    (any|some|need|want|give me|looking for|after|love|like) {advice}
    (need|want|looking for|like|have) (a|an|some|any) (different|other|new|easier|alternative) {exercise}
    (id|i would|i|we) [_] {like} [you] [to|a|an|us to] {another}
    (call|ring|phone|text|contact) me
    (do|dont|would|did) (you|u) {think}
    (not|im not|unsure|wasnt|am not) [{quite}] (sure|certain) {whether}
    unsure (if|whether|about|how)
    (wondering|curious|wondered) (if|whether|about|how|what|why)|wonder (if|whether|why|what|how)
    (dont|didnt) know (if|whether|why|which|how to|how {deep}|what (to do|im doing))
    no idea (if|whether|why !(but|.|,|!|;|$|'\n')|how to|what to do)
    (hope|hoping) [that|thats|this|it|its] [is|was|are] {hoped}
    (is|if|whether|was|are) (that|this|it|those|these|they|he|she) ..3 {normal}
    (is|are) [my|a|the|some]* _ [_] (bad|normal|dangerous|harmful|ok|okay|fine|safe|good|a problem|bad for
        (me|you|it|my _)) [or not|or (bad|ok|fine)|coach|then]* '?'
    ^ [coach|so|hi|hey|,]* (is|are) !(it|this|that|there) _ [_] {harmless} [(at|for|with) ..4] $
    is (using|doing|taking|having|wearing|lifting|training) ..5 (cheating|allowed|ok|okay|fine|bad|wrong|
        safe) '?'
    (my|the|check|checking|check my|on my) form {form_is}
    why am i not|(id|i would) prefer _ ..3 instead|is # ..3 (ok|okay|enough|too)
    a? word with you|what am i doing wrong|when (can|could|should) i|(id|wanna|want to) {swap} _ ..3 for
    would ...6 be (ok|okay|alright|better|fine|possible|too (much|heavy|light))
    help me ..1 (with|fix|sort|improve|get)|(id|i would) (rather|prefer to) (do|use|have|try|start|swap)
    form check|(check|look at) my (form|technique|squat|bench|deadlift|video|vid)
    <!(your|that) (question|quick question|qq|q) (for|about|:|on|-|,|re)
    (tell|ask|message for|let|pass on to) [the|my] coach
    i (have|got|had|ve got) (a|an|one|another|some) (question|questions|request|worry|concern)
    {is_it} ....3 '?'
    thoughts (on|about) ....9 '?'
    ^ [any|your|ur|coach|,]* thoughts (on|about) !(the) _ ..4 $
    ^ [{so}]* (belt|straps|deload|chalk|sleeves|wraps|shoes) or (no|not|without) !(#)
    (may|might) i ..1 (train|do|use|swap|skip|change|try|ask|have|lift|go|add|rest|switch|replace|leave|
        start|stop)
    worth [me|us|it|just|still]* ~ing
    (reckon|think) (i should|(im|i am) ready|i (can|could|may)|its (ok|okay|time|too)) ....9 '?'
    {choice} ...7 or ...7 '?'
    (need|want|wanna|like|love) to? (talk|speak|chat) (to|with) (you|u|the coach|someone|a human)
    what (should|would|do|can|could|shall|must) (i|you|we)
    should (i|we|it|that|the|my)
    """,
    spoil="""
        kill|killing|ruin|ruining|hurt|harm|affect|cost me|slow|stop|eat|wreck|mess up|mess with|boost|help
    """,
    gains="gains|progress|strength|recovery|muscle|muscles|results|growth|training|lifts|gainz",
    you="you|u|ya|someone|we|the coach",
    so=words_of("so and ok okay coach hi hey quick question , : boss bro"),
    do_this="""
        check|look|watch|tell|explain|help|show me how|talk|chat|speak|call|ring|phone|write|text|meet|come
        see|advise|recommend|suggest|think|confirm|ask|comment|rate|assess|consider|review|find|pass|send|give
        change|swap|switch|replace|remove|move|adjust|update|set|reduce|increase|lower|shorten|drop|cut|add
        put|build|include|program|programme|plan|make|let|get|do|start|have a|take a|go over
    """,
    kindly_do="""
        check|look|watch|tell me|explain|advise|call|ring|review|have a look|take a look|look at|help
        swap|change|adjust|replace|make|give|pass|ask|let me know|send my|contact
    """,
    thing="_|#",
    alter="""
        swap|switch|replace|rotate|add|include|put|change|drop|remove|take|leave|skip|cut|ditch|scrap|delete
    """,
    sheet="programme|program|sheet|rotation",
    for_good="""
        permanently|permanent|for good|forever|for ever|from now on|from here on|for the future|altogether
    """,
    closes=">($|.|,|!|'?'|;|'\\n'|please|for|instead|permanently|and|because|as)",
    exercise="[_] (exercise|exercises|movement|movements|lift|lifts|machine)",
    swap="swap|change|replace|switch|exchange",
    advice="""
        tips|advice|thoughts|idea|ideas|suggestion|suggestions|feedback|opinion|guidance|pointers|cues|input
        your (advice|opinion|thoughts|input)|a second opinion|alternative|alternatives
    """,
    like=words_of("like want need love prefer wish"),
    another="""
        talk|ask|discuss|know|speak|chat|see you|call|word|check|swap|change|switch|replace
        do something|try something|new|less|different|another exercise|other|lower|easier|harder
    """,
    think="""
        think|reckon|recommend|suggest|want|prefer|mind|advise|agree|have (any|a|an)|know (if|why|how|a|what)
    """,
    quite="quite|really|so|too|#|totally|entirely",
    whether="""
        if|whether|about|how (to|i should)|how {deep}|what (to|im|i should)|im|i am|my|that (im|my)
    """,
    deep="low|deep|far|fast|heavy|i should",
    hoped="ok|okay|alright|normal|fine|right|not (bad|wrong|a problem)",
    harmless="safe|unsafe|dangerous|harmful|ok|okay|allowed|healthy|unhealthy|worth it|any good|any use",
    normal="""
        normal|true|ok|okay|alright|good|fine|right|correct|safe|allowed|enough|good enough|usual|common
        expected|bad|bad form|wrong|too much|dangerous|weird|a problem|an issue|(supposed|meant) to
    """,
    form_is="ok|okay|check|right|good|please|(look|looks) (ok|right|off|bad)|(feel|feels) (off|wrong|weird)",
    is_it="""
        too (heavy|light|much|little|fast|slow|low|many|few)|normal|thoughts|agree|ok like that|ok|okay
        good or bad|yes or no|right way|(good|bad) idea|worth it|any alternative|alternative|alternatives
        advice|tips|suggestion|suggestions|ideas|next (time|week|session|block|month)
    """,
    choice=words_of(
        """deload stick stay keep push drop go going straps belt heavier lighter rest wait swap stop more less
        higher lower"""
    ),
)

NOT_REQUEST = Pattern(
    """
    how (many|much)|what (weight|load) (it|that|i|was)|the weight|which weight
    if (it was|they were|it is|its) {unit}|{unit} or|if i counted|what (it|they) weigh
    """,
    unit=words_of("kg lb lbs kilo kilos pound pounds"),
)
"""Doubts about the record itself: "not sure if it was kg"."""

LIKES = Pattern("i [_] (like|love|prefer|need|want|wish)")
LIKES_IT = Pattern("(like|love|need|want|prefer) (new|other|less|different|check|a new|this|the|it)")
"""What the client likes, and asks nothing by that: "I like the new bar"."""
TO_TALK = words_of("talk ask swap change discuss know speak chat switch replace")

ANSWERS = words_of("no nope none nah nothing yes yep yeah")
AFTER_ANSWER = words_of(". , ! ; ? just") | {"\n", ""}
"""What follows an answer that the client gives to an own question: "any pain? no"."""

NUMBER_ASKED = Pattern("# [rep|reps|kg|kgs|lb|lbs|kilo|kilos|pound|pounds|today|s]* '?' $")
"""A record with a question mark: "bench 80 kg?"."""

OF_TRAINING = words_of(
    """i my me it heavy form set sets rep reps weight normal ok okay pain rest day days squat squats bench row
    rows deadlift deadlifts press curl curls knee knees back shoulder exercise training should why how what
    can deload heavier lighter belt straps programme program block worth"""
)
"""Words beside which a question is one for the coach."""

INSTEAD = words_of(
    """tomorrow instead move shift postpone day today ok okay fine train monday tuesday wednesday thursday
    friday saturday sunday"""
)
"""Words of a question that only asks whether a move is all right."""

BEFORE_A_REQUEST = words_of(
    """, : - please pls hi hey hello coach and so ok okay um uh but also btw just sorry can you u now then me
    yo quick question ps wait hmm still afraid lemme someone thinking"""
)
"""What may stand before a request at the beginning of its sentence."""

WONDERED_AT = Pattern(
    """
    <!(what|which) (says|reads|marked|labelled|stamped) [as|about|with]* # [{unit}] ...4 ['?']* $
    (it|its|everything|all|they|theyre) [is|are|was|were|all|only]* in (pounds|lbs|kg|kilos|stone) ['?']* $
    """,
    unit=words_of("kg kgs kilo kilos lb lbs pound pounds stone stones st pood"),
)
"""What an old weight says on it, told with question marks: the client wonders, and asks nobody."""
