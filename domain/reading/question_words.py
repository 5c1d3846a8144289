"""Turns of phrase of questions that the bot answers itself, as data: help, history, plan; and small talk."""

from domain.reading.patterns import Pattern
from domain.reading.words import MONTH_WORDS, words_of

_TERM = """
    (working|work) (set|sets)
    rir|rpe|amrap|rm|rdl|ohp|bss|emom|doms|pb|pr|personal best|rep range|rep|reps|set|sets|drop (set|sets)
    superset|supersets|dropset|dropsets|warm up|warmup|negative|negatives|lowering only|tempo
    hold|static hold|deload|failure|to failure|rest day|layoff|stall|double progression|verdict
"""

HELP_ALONE = Pattern(
    """
    ^ /? (help|menu|command|commands|info) [me|please|pls] [!|.|'?']* $
    ^ [a|an|the|"]* {term} ["|'?'|,|.|-|:]* (whats|what (is|does)) (that|this|it) [mean] ['?'|!]* $
    """,
    term=_TERM,
)

HELP = Pattern(
    """
    how (does|do|is) (this|it|the|that|you|your|u) ..4 (work|works|function)
    how (this|it|the bot|that|you|u) ..1 (work|works) >('?'|.|!|,|$|please|pls)
    how {can} [i|we|one] [even|actually|just|properly]* ({log}|tell {them}|say) !(if i (should|
        can))|how do (you|u) ({record}|use (this|the bot|it))
    [im|i|am|not|really|quite|,]* not [quite|really|at all]* (certain|sure) how {can} i {record}
    [im|i|am|not|really|quite|,]* not [quite|really|at all]* (certain|sure) how i {can} {record}
    how (i|we) [{can}|have to|need to|am to|am supposed to] {log}
    explain [to me|me|please|pls]* how (to|i|we|you|one) [{can}]* {log}
    how (to|do i) use (this|you|the bot|it)
    how {can} (i|we|you|u|one) (change|switch|set|turn) ..3 (kg|kgs|kilo|kilos|lb|lbs|pounds|unit|units)
    (whats|what (is|are|does|do)) [the|this|that|these|those] (small|little|tiny|wee) _
    (whats|what (is|are)) (the|this|that|these|those) (letter|letters|symbol|symbols|icon|icons|star|
        stars|arrow|arrows|tick|ticks|asterisk)
    (what|wtf) [else] (can|do|should|could|must|am|shall) (i|we|you) [even|actually|have to|need to|
        supposed to|meant to]* {type}
    what (can|could|do) (you|u|this [bot|thing]|the bot|it) (do|understand|know)
    what [is the?] (mean|means|meaning) of? ["] _
    (asks|asked|wonders|wants to know) what ["] _ ..1 ["] (means|is|stands for)
    what ((does|do) (the|this|that|these|those) ..5 (mean|stand for)|(the|this|that|these|those) ..5 (means|
        stands for))
    (what|whats|what (is|does|do|are|was|r)) [the|a|an] [{sign}] ["] (_|#|x #) ....4 (mean|means|stand for|
        stands for)
    (whats|what (is|are|was)|wats|wtf is|define|explain) [a|an|the|this|that|these] ["] {term} !(on)
    (meaning|definition) of _
    ^ [and|or|,]* [a|an|the] {term} ['?']* $|<('?') (and|or) (a|an|the|whats a) {term} '?'
    (what is|whats) meant (by|with)|how (am|are) (i|we) supposed to {log}
    do i [just|have to|need to]* (type|write|put|enter|text|send) ..3 {written}
    (what|which) (format|words)
    what (sort|kind|kinds|type|types) of (things|thing|stuff|messages|words) (can|could|do) (you|i|u)
    can i [just|also|simply]* (write|type|text|speak) (normally|freely|however|like (this|that))
    [list of|show|what] (command|commands|instructions)
    (need|show|get|please|some|more) help !(with (my|the|form))
    is (this|it) [thing|bot|chat]* (working|on|alive) ['?'] $
    are you a (bot|robot|human|person|machine|real person)|who (are|r) (you|u)
    am i talking to a (bot|person|human|machine|robot)
    do i just? (type|write|text|send) (it|them|that|this|everything|you)
    [i|we|still|really|just]* (dont|cant) (understand|get|see|follow) [how] (this|the) (bot|thing|
        app|works)
    [i|we|still|really|just]* (dont|cant) (understand|get|see|know|remember|figure out|work out) {how}
    [i|ive|have|im|am|we|,]* (forgot|forgotten|unsure|not sure|no (idea|clue)|lost on) {how}
    ^ [the|any|your|user|a|have|you|got|is|there]* (instructions|manual|user guide|how to) {asked}
    can (the bot|this bot|this thing|this chat) [also|even]* (speak|understand|read|take|do) _
    (whats|what is) a ["] target|difference between [a|an|the|"]* ({term}|target|set to beat)
    """,
    can=words_of("do does can should must shall may to"),
    how="""
        how ((this|the bot|it) works|to use (this|you|it|the bot)|to {record})
    """,
    record="log|enter|report|record|submit|register|input|undo",
    asked="""[for (this|the bot|it|you)] [somewhere|anywhere|please|pls|plz|'?'|.|!]* $""",
    log="""
        log|enter|report|record|submit|undo|correct|change|delete|edit|fix|note|register|input|save|fill in
        write|write you|type|tell you|text you|talk to|send (you|my|the|a|in)|put in|use (this|you|the)
    """,
    type="""
        type|write|enter|say to you|tell you|ask you|text [you|here]|send [you]
        do here|do with you|use you for|say (here|in here|to the bot|in this [bot|chat])
    """,
    term=_TERM,
    them="you|u|it|the bot",
    sign="word|words|term|letters|abbreviation|sign|number|symbol",
    written=words_of("kilos kg kgs lb lbs pounds weight weights reps unit units number numbers"),
)

HISTORY = Pattern(
    """
    (what|how much|how many|how long|how heavy|which) ..4 (did|have|had|was|were) (i|we|my) !([got|still]* to)
    what (were|was|are) my ..3 {numbers}
    (how many|how much) [_] (i|we) (had|did|used|lifted|took|managed) ..4 last
    (whats|what (is|was)) [the|a] (pr|pb|best|max|record) (on|for|in|at) _
    (whats|what (is|was)) the? (most|heaviest|best|highest|longest) ..2 (ive|i have|i ever|i)
    (whats|what (is|was)) my ..2 {best}|(whats|what (is|was)) (my|the) best _ ..2 (so far|ever|yet|until now)
    what (was|were) (my|the) _ ..2 {then} >('?'|$)|hows my _ ..2 {got_on}|how far have i (come|got)
    ^ ..2 (pr|pb|best|max|record|history) '?' $|^ last !(set|one|exercise|rep|week) _ ..1 '?' $
    (show|tell|see) me? (what|how) (ive|i have) ..1 (done|did|lifted|been doing|trained)
    (show|tell|see) me? (what|how much|how many) all? (i|we) {did}
    (show|tell|see) me? how (the|my) ..3 (has|have|is|are) [been] {going}
    ^ how (has|have) (the|my) ..3 [been] {going}
    [i|id|should|would|like|love|want|to|please]* see (what|how much) (i|we|ive|i have) {did}
    (show|send|give) me? my _ ..2 (over|since|from|in|for) the? (last|past)|what was it (last|before)
    (numbers|results|sets) (from|of) (last|yesterday|monday|tuesday|wednesday|thursday|friday|saturday|sunday)
    show [me|my|the|our]* [_ [_]] {history}
    (show|send|give|tell|see|view|look at|pull up|list) ..2 (my|the|me|all) ..3 {log}
    list my ..2 {sessions}
    {list_it} (what (i|ive|i have) {did_or_do}|my _ ..2 {numbers})
    {bring_up} [me] (my|the|our) [old|past|previous|last|earlier|latest|recent|all]* ..2 {log}
    ({bring_up}|show [me]|list|give me) my (old|past|previous|last|earlier|recent) ..2 >('?'|$|please|pls|
        .|from|on|for)
    [i|id|would|please]* (want|wanna|need|like|love) [to] (see|view|look at|check|
        have) my ..2 {log} !(for|form)
    [id|i|would|like|want|to|please]* (see|know|tell me|show me) how (i have|ive|i) ..2 {got_on}
    what (i|we|ive|weve) [have] (done|{did}) [on|the]* {weekday}
    did i [manage to]* (beat|better|improve on|top) (last|my|mondays|tuesdays|wednesdays|thursdays|fridays)
    ^ [show|send|give|me|see|list|all|the|,]* (my|all my) ..2 (history|progress|stats|numbers|log|gains|
        sets|results) [please|pls|'?'|.|!|again]* $
    (show|send|give|list) me? (every|all|each) [of|my|the]* ..3 (since|from|in|last|this|over) _
    ^ (every|all|each) [of|my|the]* ..2 {sessions} (since|from|in) _ [{sure}]
    show [me] [the|my]* last (workout|session|workouts|sessions|sets|time|numbers)
    ^ last (time|session|week) ..5 what (was|did|were) (it|i|they)
    how {have_i} ..4 {got_on} !(right|wrong)
    (have|has) my _ ..2 improv~|did i (lift|do|manage) more than last|(id|i would) like to see my {log}
    ^ ..3 last (time|week|session|workout) '?' $
    ^ last (time|week|session) (on|for|at|with) [the|my]* ..3 '?' $
    ^ my (best|heaviest|previous) ..3 '?' $
    ^ my last (workout|session) [please|'?'] $|show my _ [_] $
    (have i|am i) (improv~|(got|gotten|getting) (stronger|better)|progress~|made any? progress)
    {my_log} [please|pls|{about} ..8] >('?'|$)
    (tell me|remind me|know|see|remember) what (i|my|we) ..2 {did_or_do}
    (what|how (much|many|heavy|long)|(which|what) (weight|load|number)) (i|we) {did} ..6 (last|before|
        previous~)
    remind me what (i|my|we) ..3 ({did}|last|best|was|were|numbers)
    what (weight|weights|load|reps|number|numbers) ..1 did i (use|do|lift|get|have|hit|put|manage)
    when did i last _
    how did (i|it|that) ..1 (do|go|fare|get on) ..8 {then}
    how did !(you|your) (my|the) _ ..3 go >('?'|$|today|{then})
    how did !(you|your) _ ..2 go (last|before|yesterday|previous~)
    what (was|were) (the|my) ..2 (weight|weights|load|reps|number|numbers|score) ..8 (last|before|previous~)
    """,
    history="history|progress|stats|log",
    going="going|doing|coming|getting|looking|gone|done|developed|progressed|moved|changed|come",
    numbers=words_of(
        """numbers results sets lifts best bests record records pr pb prs pbs weight weights reps last time
        stats score max history"""
    ),
    best="""
        best|record|pr|pb|max|last|previous|heaviest|history|progress|longest|one rep max
        current best|personal best|all time
    """,
    log="""
        progress|history|log|logs|journal|data|gains|figures|entries|numbers|results|stats|statistics|graph
        chart|curve|trend
        record|records|lifts|pr|prs|pb|pbs|bests|past _|previous _
        last (workout|workouts|session|sessions|time|week|weeks|set|sets|month|few _)
    """,
    sure=words_of("please pls thanks ?"),
    bring_up="""
        (bring|pull|dig|call|look|get|fetch|put) (up|out)|read [me] (back|
            out)|read me|fetch|lemme see|let me (see|have|look at)
        give me|gimme|get me|bring me|find me|can i (see|have)
    """,
    have_i="have i|ive|i have|i|my|am i|(has|have) my|did my|is my|are my|was my|were my",
    got_on="""
        got on|getting on|progress~|improv~|develop~|look~|come along|coming along|changed
        going|gone|doing|done|trending|trended|moving|moved|changed
    """,
    list_it="""
        ^ [please|hi|hello|coach|,]* list|kindly list
        (can|could|would|will) (you|u) [please|kindly|just]* list
    """,
    sessions="sessions|workouts|sets|lifts|trainings",
    my_log="[my] (progress|history|stats)|my (numbers|log|bests|prs|pbs)",
    about=words_of("for on of chart graph this last over please pls so"),
    did=words_of("did lifted used got had managed made took pushed pulled pressed squatted benched rowed"),
    weekday="monday|tuesday|wednesday|thursday|friday|saturday|sunday|yesterday",
    did_or_do=words_of(
        """did lifted used got had managed hit pressed squatted benched lift do get numbers weight weights"""
    ),
    month=MONTH_WORDS,
    then="""
        last|the (last|past)|over|since|lately|recently|on|before|previous~|yesterday|in {month}
        monday|tuesday|wednesday|thursday|friday|saturday|sunday
    """,
)

PLAN = Pattern(
    """
    (whats|what [is|am i|do i|are we|r we|else [is|do i]]) still? ..2 {left}
    (which|what) [#] {exercise} ..4 {due}
    (which|what) (ones|one|of (them|these|those)) ..3 (have|need|must|should|am|still|are) ..4 (to do|left|
        to go|do|missing)
    what (should|shall|do|am|must|can|will) still? (i|we) still? [{have_to}|be] {train} [{when} ..8] >('?'|$)
    (whats|what (is|was|are|were)) [the|my|todays|this weeks] {target}
    {show} ..2 (the|my|todays|me !({different})|this|tomorrows|next) ..2 {plan}|show {plan}
    (whats|what is|when is|whens|when s|when [i] have) [my|the]* {to_come} >('?'|$|.|!|please)
    ^ [{so}]* how (heavy|many reps|much weight) (for|on|in|are|is|do) ..4 {asked}
    ^ [{so}]* how (much|heavy) (on|for|with) [the|my]* ..3 (today|now) ['?'|please]* $
    what do (i|we) need (on|for|in) [the|my]* ..3 {asked}
    what have (you|u) got (me|us) (doing|down for|on|lined up)
    what have (i|we) [got|on|still|to do]* >('?'|$|today|tomorrow|left|next|after)
    (which|what) [ones|one|bits|things|{exercise}] (am i|are we|i am) [still|meant to be]* (down|in|on|up) for
    (send|tell|show|give) [to] me what (i|we) [still] (must|should|shall|{have_to}) {train}
    what have (i|we) [got|on|to do]* (today|tomorrow|left|next)|^ next '?' $
    (^|<(,|.|!|;|-|'\n'|and|so|ok|hey|coach)) [the|my|and]* next (exercise|lift|movement) '?'
    what {weight} (for|on) _ ..2 (today|next|now)
    [i] forgot what (comes|is|was) (next|after)|[i] (cant find|lost|deleted) (my|the) {plan}
    [todays|tomorrows|the|my|next] {the_plan} [for today|today|please|pls] >('?'|please|pls|$)
    what {weight} (do|should|must|shall|am) i ..1 [{have_to}] {beat} [{when} ..8] >('?'|$)
    how many (sets|exercises|more|things|lifts|movements) ..5 {to_do}
    (which|what) {exercise} (comes|is|was) (after|next|first)
    (when|what day|which day) ..3 (next|my) (workout|session|training|gym day)
    (is|was) (it|today|this|tomorrow) [a|my] ((rest|training|leg|push|pull|gym|workout) day|day off)
    (do|am) i {training} ..2 (today|tomorrow|next|this)
    (whats|what is) it today|what was (it|next|the plan) (again|today)
    remind me (whats|what (is|am i|i am|i should|i have|im doing|to do|i need))
    am i (done|finished)|is that (all|everything|it)|anything (left|else (today|to do))
    (what now|now what|and now) >('?'|$)|(which|what) is next|anything after _ ..2 '?'
    (have|get) (todays|tomorrows|the|my) {plan} [of _] [for (today|tomorrow)] [again|please|pls|,]* ('?'|$)
    what to (beat|do today|do next)
    [i|have|ive|ve|,]* [forgot|forgotten]* (what|which) [one|ones|exercise|lift|set]* (comes|is|are|
        was) (next|after|now|first) >('?'|$|.|!|,|please|pls|again|today)
    what (have you got|do you have|you got|have we got) [for me|planned|in store|lined up|on|for]* (today|
        next|now|tomorrow)
    how (much weight|many (kilos|kg|lbs|pounds)|much) (do|must|am) i [{have_to}|need|use|have|to|lift|
        load|put]* (for|on|in|at) [the|my]* ..3 {asked}
    how many reps (of|for|on|in) [the|my]* ..3 {asked}
    (when|what day|which day) do i (train|lift|work out|come|go) [again|next]* >('?'|$|.|!|please)
    {show} {plan} [please|pls]* >('?'|$|.|!)
    (whats|what (is|comes|was|s)|which [one] (is|comes)|what do (i|we) (have|do)) [up|
        coming]* {beside} [the|my|that|those]* ..4 {asked}
    ^ [{so}]* what have (i|we) [got|still]* to {train} [{when} ..8] >('?'|$|.|!|please)
    ^ [{so}]* what (i|we) (must|should|shall|have to|need to|got to|
        gotta) still? {train} [{when} ..8] >('?'|$|.|!|please)
    how many [more|are|is|do|i|have|got|we]* (left|remaining|to go)
    how many sets (of|for|on) [the|my]* ..3 {asked}
    """,
    left="""
        left|next|remaining|missing|outstanding|today|due|planned|the plan|scheduled|coming up|to do
        on today|up (next|today|first)|for today|doing today|after (that|this)
        first !(aid)|on for (me|today)
        on (todays|my|the) (plan|menu|list|cards|agenda|programme|program|schedule)
    """,
    exercise=words_of(
        """machine machines exercise exercises workout set sets lift lifts session day muscle muscles movement
        movements"""
    ),
    due="""
        today|tomorrow|now|left|next|due|first|missing|still|do i|is it|are|is|have|on|remain~
    """,
    train="""
        do|doing|be doing|train|training|lift|start with|beat|aim for|hit|try|go for|work on|have
    """,
    when="today|tomorrow|next|now|first|on|this|for|in|with|after|at|to beat|as",
    target="""
        target|targets|plan|goal|workout|session|programme|program|routine|training
        (number|weight|set) to beat|number for
    """,
    plan=words_of(
        """plan workout list exercises session target targets programme program routine training schedule"""
    ),
    the_plan=words_of("plan workout list exercises target targets"),
    weight=words_of("weight weights load number numbers reps"),
    have_to="(need|have|supposed|meant|going) to",
    beat="beat|hit|aim for|go for|do|use|lift|get|squat|bench|deadlift|row|press|curl",
    to_do="left|do i|today|remaining|to (do|go)|are (there|on)|should|for",
    show="show|send|give|tell|see|list|resend|repeat|gimme|gimmie",
    beside=words_of("after before following"),
    so=words_of("so and ok okay coach hi hey now , but please pls sorry"),
    to_come="(next (session|workout|training|one)|tomorrow)",
    asked="[again|now|today|then|please|pls|bro|mate|coach]* >('?'|$|.|!)",
    different=words_of("a an another less more"),
    training="train|training|have [a] (workout|training|gym|session)|lifting|working out|on",
)

SMALL_TALK = Pattern(
    """
    how (are|r) (you|u|ya|things)|hows (it going|you|things|life|tricks|your)|whats up !(next|first|today|
        now|after|tomorrow)|sup|how was your
    you (there|ok|alright)|(you|u) call (that|this|it) (a|an)
    are (they|you|these people) (crazy|mad|serious|nuts|insane|joking|kidding)
    are you (there|ok|alright|awake|well|proud|happy|impressed|kidding|serious|joking)
    did you (see|watch|know|hear|have|catch|sleep)|do you (like|sleep|ever|lift|drink)
    did i mention|guess (what|who)|(can|could|would) you (believe|imagine)|who would have thought
    who (invented|needs|knew|even|does|designed|decided|thought|said|cares|wants|came up)
    why do (i|we) (do >(this|it|that|these)|even|love|keep)
    why (is (leg|it always|everyone|everything|the gym)|oh why|me)
    why (are (gyms|people|burpees|lunges)|did i ever? (sign|agree|think|say|eat))
    why does (it|everyone|this) always
    what (a|an) (day|week|session|workout|life|time|set|pump|grind|feeling|relief|beast|mess)
    isnt (it|that) (something|great|nice|amazing|cool|funny|lovely|wild|crazy)
    how (cool|nice|great|good|awesome|crazy|sad|funny) is that|how time flies
    is it (friday|weekend|the weekend|bedtime|christmas|over|beer)|what (day|time) is it
    what is (life|sleep|this life|wrong with (people|me|him))|what am i doing with my life
    do i (have|need) to (fall|die|cry|puke|vomit|faint|collapse|pass out|sell|marry)
    do i get (a|an) (medal|prize|cookie|trophy|sticker|star|biscuit|badge)|is there a prize
    where (is|are|was|did) (everyone|the time|my (legs|lungs|arms|motivation|energy))
    what (else|more) is new|what happened to|what could go wrong|was that [really] me
    ya know|you know|know what i mean|who am i kidding
    am i a? (machine|beast|genius|dead|dreaming|strong or what|hulk|old)
    """
)
"""What asks for no answer."""

HOW_IT_IS_DONE = Pattern(
    "how (do|should|can|to) (i|you) (do|perform|breathe|brace|hold|grip|set up)",
)
"""A question about how an exercise is done, which is for the coach."""

WHAT_NOW = Pattern("what ((do|should|can|shall|must) i|to) do|{now_what}", now_what="what now|now what")
NOW_WHAT = Pattern("what now|now what|what (should|shall|can|could|must) i do >('?'|.|,|!|$|about|with)")

OPENS_A_REQUEST = words_of(
    """what whats show send tell give how list remind help explain define which when see meaning progress
    history my todays plan i dont am resend pull view wats wtf are need who stats
    is do have hows numbers results gimme gimmie lemme let bring pull dig get fetch can call look find want
    wanna need cant forgot forgotten no unsure not instructions manual the any user your which last
    rir rpe amrap rm rdl did id would all"""
)
"""How what is no question in form begins where it asks for a plan, a history or help: "show my plan"."""
