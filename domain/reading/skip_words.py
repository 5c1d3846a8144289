"""Turns of phrase for what is left out today, as data: an exercise, or the whole workout."""

from domain.reading.move_words import THE_WORKOUT, WEEKDAY, WEEKDAY_LISTS
from domain.reading.patterns import Pattern
from domain.reading.words import words_of

_DENIED = """
    didnt|couldnt|cant|wont|shant|shall not|havent
    hadnt|never
"""
"""How the doing of something is denied."""
_WORN_OUT = """
    tired|knackered|busy|late|sore|hungover|exhausted|shattered|ill|drained|wrecked|hot|wiped|stressed
"""
_ENDS_ALONE = "$|.|!|,|;|')'|'('|'\n'|today|because|since|as|cos|cause|so|sorry|coach|again|lol|unfortunately"
"""What may stand after words that leave out what is said before them."""

SKIP = Pattern(
    """
    (^|<(.|!|;|'\n'|,)) not done :
    plainly:((skip|skipped|skipping) !([ahead|on|straight]* to))
    ended:((drop|dropped|dropping) {no_load} !([the|my] ({what_helps}) [down|back]* to)|cut out?)
    (leave|left|leaving|stop|stopped|go|quit|finish|finished|home|out of time) before
    (kicked|threw|thrown|chucked|booted|shooed|called|dragged) [me|us|everyone] (out|away) before [{i_could}]
    (closed|shut|closing|shutting|closes|closed up|locked up|broke|over) before {i_could}
    ended:(cross|crossing|crossed|strike|striking) (out|off)
    ended:((so|and|then) i (left|leave) !(it|that|this|those|them|these|....8 (out|off|away|before)))
    {left_out}|{not_done}|{not_up_to}|{all_but}
    (not|wont be|shant be|not be) >((squatting|benching|deadlifting|rowing|curling|pressing) today)
    today:(forget|forgetting)
    (ran|run|running) out of (time|steam|gas|juice|energy|puff) before|time [has|had|ran|was|is|s]* (out|
        up|over) before|never made it (to|as far as)
    today:(dont) (do|make|train) the? >(..3 today)
    apart:(left|let|leave|leaving|take|taking|took|cross|crossing|crossed|strike|striking|tick|put)
    (left|leave|leaving|gave|giving) >((it|that one|this one|them|those) (out|off|a miss))
    out:(leave|leaving)
    <!({not_none}) none:({none_of}) >({named})
    soft:(too {worn_out} (for|to do|to)|{denied} (feel like|fancy)|(wasnt|not) (feeling|fancying))
    today:no >(..3 (today|this (time|evening|morning|afternoon))|_ ..3 , ..4 {not_to_be_had})
    """,
    no_load="!([by|to|it|the|weight|down]* #)",
    what_helps="help|assist|assistance|support|weight|load|pin|stack|counterweight|band|bar",
    none_of="no|neither|none of [the|my]",
    not_none="has|have|had|got|theres|is|was|s|with|say|says|said|still|oh|or|a|of",
    named="[the|my|any|sets|of|doing]* _",
    worn_out=_WORN_OUT,
    denied=_DENIED,
    i_could="(i|we) [could|got|managed|came|had|even|the|chance|time|to|do|start|finish|get|reach]*",
    left_out="""
        skips|skippin|skiped|skipt|skippd|skipd|(leave|leaving|left) (out|off|away)
        missed out? on?|missing|miss !(doing)|without the?|passed on|passing on|pass on|bail on|bailed on
        bailing on
        duck|ducked|ducking|omit|omitted|omitting|ditch|ditched|ditching|nix|nixed|nixing|scrap|scrapped
        scrapping|cancel|cancelled|cancelling
        avoid|avoided|avoiding|sit out|sitting out|taking out|take out|took out
        forgo|forgoing|forwent|forgone|forego|foregoing|forewent|(count|counting) me out of|(opting|opted|
            opt) out of
        nix|nixed|axe|axed|forgot [to do|about|all about] !(one|another|a set|to)
        forgotten [to do|about]|dodging|dodged|swerving
        swerved|bottled|bottling
        (bin|binned|binning) off?|(chickened|wimped|copped) out of|renounce [to|on]|renouncing
    """,
    not_done="""
        ({denied}|unable to|(wasnt|not|wont be) able to) [even|quite|really|actually]* {get_to}
        i not (did|made|do)|(did|do|have|could|can) i? not [even] ({get_to}|made|did)
        (didnt|dont|havent|hadnt) have? [got] {enough} for
        (wasnt|isnt|not) {enough} for|(neither|no) _ (nor|or) {enough} for
        (not|wont be|shant be|not be) (doing|touching|gonna do|going to do|getting to)
        (no|out of) {enough} for|never got (to|round to|around to)
    """,
    not_up_to="""
        cba [with|to do|doing]|(cant|couldnt) be (arsed|bothered|fussed) (with|
            to do|doing)
        (not|wasnt) (up to|up for|in the mood for)|sacking off|sacked off|sack off
        (cant|couldnt) >((squat|bench|deadlift|row|curl|press) today)
    """,
    all_but="""
        (all|everything|done|finished|rest|lot) ..2 (but|except [for]|apart from|bar|minus|save for|without)
    """,
    enough="""
        [the|any|enough]* (time|energy|chance|strength|juice|appetite|steam|nerve|space) [left|today|at all]*
    """,
    get_to="""
        (get|got) (to|round to|around to|as far as|on|onto|on to|near|done)|do|doo|done|did|manage [to do]
        managed [to do]
        reach|reached|finish|finished|touch|bother (with|doing)|use|face|fit in|squeeze in|come to
        make [it (to|as far as)]|made [it (to|as far as)]|get to (do|start|finish)|start [on]|attempt
    """,
    not_to_be_had="""
        broken|taken|closed|occupied|busy|out of order|defect|missing|queue|in use
        torn|snapped|ripped|bust|busted|being fixed|under repair|not working
    """,
)
END_OF_NONE = Pattern(
    "{end}",
    end="""
        because|since|as|cos|cause|coz|so|sorry|today|this (time|evening|morning)|for (me|
            us) !(without|next|if|until|till|with|before|unless)|either|and|again
        unfortunately|sadly|alas|though|tho|then|possible|available|at all|done|happened|happening|i|we|the|my
        machine|machines|but|thanks|please|pls|coach|due to|only|just|lol|ran|too (busy|late|tired)
        was possible
    """,
)
"""What may follow the exercises after "no" if they are left out, and not "no squats felt ..."."""
NO_GAIN = Pattern("[,|;|.|!|-]* no (gain|gains|glory|party|life|pain|gainz)")
"""What makes a saying of it: "no squats, no glory"."""
OTHERS_SKIP = words_of(
    "who everyone everybody people nobody they you he she guys kids some others most always usually often"
)
"""Words right before leaving out by which it is not the client's, or not of today."""
LONG_AGO = Pattern(
    """
    last (week|time|session|workout|month|year|{weekday})
    used to|for (weeks|months|years)
    """,
    weekday=WEEKDAY,
)
"""When something was left out that is none of today's."""

"""What follows is left out. A named part tells how sure that is: `plainly`, whatever follows; only with "out"
or with "today" after it; or where the sentence has `ended`, since a weight can be dropped as well."""

SKIPPED = Pattern(
    """
    [down] as (skipped|missed|not done)
    (is|are|was|were|got|been|be) (skipped|left out|missed|cancelled|dropped|out|not done|a no [go|show])
    i (leave|left|let|am leaving) (out|away|off)|{denied} [get|gonna|going to|have]* {happen} !(by|without)
    (aint|isnt|arent|not|wasnt) [gonna|going to]* {happen}
    (couldnt|cant|wont) be done|[i|we|also|was|were|:|-|=]* (forgot|forgotten) {by_then}
    [is|are|was|were] off today
    machine? [is|was|are|were] {taken} [{long}]* [{so}]* (skipped|skip|skipping|left out) {by_then}
    (i|we) [unfortunately|sadly|alas]* {could_not} [even|quite|really|actually|unfortunately]* {do} [it|
        them]* [all]* {by_now}
    (i|we) [unfortunately|sadly]* {could_not} [even|quite|unfortunately]* finish [it|them]* (anymore|any more)
    (didnt|havent|hasnt) (happen|happened) !(by|without)
    (fell|fallen|fall) victim
    i (make|do|did|made|train) [it|them] not (today|anymore|any more)
    leave i (out|away|off)|[i] (didnt|couldnt) (come|manage|get) [to|it|them] (anymore|any more)
    (will be|have been|got|get) (skipped|left out|cut|cancelled|dropped|bumped|axed|binned|scrapped|
        ditched)|cancelled|can wait
    (arent|werent|wasnt|isnt) done|must wait|i couldnt do|got left
    (fall|fell|falls|falling) (out|off|away|by the wayside)|off the (menu|table|list|cards)
    (-|:|=) (no|nope|nah|naw|none|nothing|nada) >(.|!|,|'\n'|$|today)
    (binned|ditched|scrapped|axed|nixed) >(today|.|,|!|$)
    skipped|skip|a miss|dropped {no_load} !([the|
        my] ({what_helps}))|left out|not done|not today|didnt happen !(by|
        without)|not happening|[will] have to wait
    no time|ran out of time|couldnt do|didnt do|didnt get to (it|them)
    """,
    no_load="!([by|to|it|the|weight|down]* #)",
    what_helps="help|assist|assistance|support|weight|load|pin|stack|counterweight|band|bar",
    denied=_DENIED,
    happen="happen|happened|happening|occur|(get|got) done",
    taken="""
        taken|busy|occupied|broken|used|gone|free|defective|dead|full|out of order|closed|shut|missing|in use
    """,
    by_then=f">({_ENDS_ALONE})",
    long="all|the|whole|entire|time|evening|day|again|today|,",
    so="so|and|i|,|.|that|this|it|one|had to|have to|will|im|them|those",
    could_not="""
        didnt|couldnt|cant|havent|never|wasnt able to
dont
    """,
    do="""
        manage [to do]|do|done|make|get to|get (round|around) to|reach|fit in|squeeze in
        come to|managed|got to|did
    """,
    by_now="""
        (today|anymore|any more|yet|in time|after all|this time|because|since|cos|cause|so|sorry
            |,|.|!|$|-|'\n')
    """,
)
"""What stands before it is left out."""

NOT_SKIPPED = Pattern(
    """
    (dont|never|didnt|not|wont|wouldnt|without|no) [want to|wanna|like to|gonna|to|be|ever|dare|just]* {skip}
    (dont|never|wont|doesnt|would never) (forget|let|tell|make|allow|remember|think) ..3 {skip}
    (wish|if only|wished|imagine|dream of|dreaming of|tempted to|kidding|joking) ..3 {skip}
    """,
    skip="(skip~|miss~|leav~ out|drop~)",
)
SURELY_SKIPPED = words_of("skipped skipping skiped skiping")
NEARLY_SKIPPED = Pattern(
    """
    (nearly|almost) ..1 {skipped}
    {inclined} ..3 {skip} ....9 but [i|then|still|in the end|,]* (did|got|managed|went|made|dragged|pushed)
    """,
    skipped="(skipped|missed|bailed on|binned|ditched|dropped|left out)",
    inclined="tempted|wanted|inclined|gonna|going to|about to|thinking|thought|considered",
    skip="skip|skipping|miss|missing|bail on|bailing on|bin|binning|ditch|ditching|leave out|leaving out",
)
"""What was nearly left out, and done after all."""

TAKES_BACK = words_of(
    """skip skips skipped skipping skippin skiped leave leaving left gave giving pass passed passing miss
    missed missing omit omitted omitting didnt couldnt cant bail bailed bailing"""
)
"""First words of leaving out after which "it" is the exercise said before: "bench: skipped it"."""
IT = words_of("that it this them those these")

BETWEEN = words_of(
    """the my all of on doing any out to today those these them both remaining rest with a set sets
    second third last final , : put down left got even also again just now some one two more time for -
    other either is are was were be being so gotta had have only please been completely entirely totally
    finally then and it that machine thing stuff i we ive unfortunately
    sadly alas regrettably around round """
)
"""Small words between what leaves out and the name of the exercise."""

SKIP_WORKOUT = Pattern(
    """
    {cannot} ..1 {train} [to [the] (gym|training|it)|in|at all]* [{when}]
    no chance [of|for|to|training|train|the|a|gym|workout|me|getting|making|it|there]* today
    no {workout_time} [for me|possible|session]* [today|this (morning|evening)|tomorrow]
    {skip} [the|my|this|our|on|out|out on|all of]* ({workout}|{rest}) [{today}]*
    (taking|take|need|having|took) {a_day} off? today?
    today i? {cannot} to? (come|train|make it|go|do it|be there)
    (^|<(sorry|,|.|!|coach|but)) [sorry|coach|,|hi|but]* today i {cannot} >(,|.|!|$|-|because|
        my|the|sorry|'\n')
    (gym|training|session|workout) [today]* (aint|isnt|not|wont be|s not) (happening|
        happen|on|going to happen|gonna happen) [today]*
    (come|go|train|can|will|do|make|manage) (today|tomorrow) [_] not [{to_train}]*
    (giving|give|gave) {this_workout} a miss
    (leave|leaving) [the|my|todays]* (training|workout|session|gym) (out|off) [{today}]*
    (leave|leaving|skip|skipping) [the|my]* (training|workout|session|gym) for (today|once)
    sit (today|this one|it) out
    (have to|must|need to|has to) [be] (cancel|cancelled|skip) [for|it] today
    today i (have|need|had|must|got) to? (cancel|skip)
    <!(you|u|they|he|she|dont) ((have|need|got|had) to|must|gotta) cancel >([{to_coach}|
        on you|again]* (.|!|$))
    ^ [{to_coach}|i|we]* (cant|wont|couldnt) (attend|come) [{to_coach}]* $
    today i dont (train|come|get to the gym|make it|go)
    i pass for today|no can do today|today is (impossible|not possible)
    never made it to the gym|(cant|couldnt) be (arsed|bothered|fussed) ({when}|with [the] (gym|training))
    ^ [i|sorry|but|,]* [have] no (time|motivation|energy) today|today i have no time
    {day_off}|{not_today}|today (didnt|wont|isnt gonna) happen
    ^ [im|i am|sorry|coach|just|far|way|,]* too {worn_out} [today]* [sorry|coach|,]* $
    ^ [sorry|hi|hey|coach|im|i am|,]* out today [coach|sorry]* (>(,|.|!|-|;|because|cos|as|my|the)|
        $)
    """,
    cannot="""
        cant|couldnt|not able to|unable to|(wont|cant|didnt|dont) manage to
        wont|wont be able to|(shant|shall not) be able to|shant|shall not
        am not|[im] not going to|not gonna [be able to]
        dont think i can|dont think ill|not|didnt|never|dont >({train} today)
        too {worn_out} (to|for) >([the] (train|gym|training|workout|session|work out|lift|come|go))
    """,
    worn_out=_WORN_OUT,
    train="""
        make (it|today|todays|the gym|training|my workout|the session|this one|to the gym)
        manage [it|the|my|a|todays]* (today|workout|session|training|gym|tomorrow)
        making (it|today)|manage (it to the gym|training|today)
        attend [the] (gym|training|session|today)
        do (it|today|todays [_]|the workout|my workout|[the] training|the session|gym)
        (do|finish) [any of] the {remaining}
        get to the gym|get (there|in|out|away)|be (there|in|training|coming|at the gym)
        the gym
        train|training !(with|without|hard|harder|heavier|heavy|heavily|{beside_training})
        come [in]|coming|go|going|lift|lifting|workout|work out|working out
    """,
    beside_training=words_of("partner partners buddy mate shoes gloves plan"),
    to_coach="sorry|hi|hey|hello|coach|,|but|so|unfortunately|im afraid|i am afraid",
    remaining="""
        (rest|remaining) [ones|exercises|sets] !(of the (set|sets|rep|reps)) [of (it|them|the (workout|
            session|exercises|plan))]
    """,
    when="""
        today|tomorrow|yesterday|now|anymore|this (morning|evening|afternoon|time)|after all
    """,
    workout_time="""
        gym|lift|(training|workout|session|lifting) !({beside_training})|time to train
        time for ([the|a|my] workout|[the] (gym|training))
    """,
    skip="""
        calling off|call off|called off
        skip|skipping|skipped|bailing|swerving|miss|missing|missed|cancel|cancelling|cancelled|ditch
        ditching|ditched|drop
        flake on|flaking on|flaked on|dipping on|dip on|ghosting|duck out of|ducking out of
        bail on|bailing on|bailed on|sit out|sitting out|give up on|pass on|passing on|blow off|blew off
    """,
    workout=THE_WORKOUT,
    rest="rest of (it|the (workout|session))|rest|whole thing|(entire|whole) workout",
    today="today|workout|session|training|gym|this time",
    a_day="today|the day|a day|the evening|a rest day|an extra rest day",
    to_train=words_of("to come go train training the gym in"),
    this_workout="it|today|the gym|training|todays workout|the workout|this one|the session",
    day_off="""
        (day off|off|rest day|resting) today|today [is] [a] (rest day|off|day off|a write off)
        todays [a] (rest day|off|day off|a write off)
    """,
    not_today="""
        (todays|today is) [a] (no (from|for) me|no go|no)
        today (isnt|wont be|not) (happening|possible|going to happen|gonna happen)
        not [happening|gonna happen|going to happen] today|not feeling it today
        (cant|wont|couldnt) today|(^|<(i|im|am|,|.)) not coming [in|sorry]* >(.|!|,|$)
        count me out today?|im out today|sitting (this one|today|it) out
        didnt make it [today|to the gym|yesterday]|havent been [to the gym] today
        (gym|training|session|workout) is a (no|no go|write off|non starter) [for me] today
        no (chance|way|hope) [of|to|the|any|making|getting to|going to|for|im|i am]* (gym|training|it|
            session) today
        today (falls|fall) (out|flat|through|away)|no show [from|for] me today
        (drop|dropping|cry|crying|back|backing|bow|bowing|pull|pulling) (out|off) [of] today
        (gym|gyms) (is|was) (closed|shut|locked) !(on|until|till|at)
        (gym|gyms) (closed|shut|locked) >(today|.|,|!|$)
        (training|gym|session|workout) ..2 (falls|fell|fall) (out|flat|through)
        (training|gym|session|workout) [is|was|has been|has to be|had to be|must be]* (cancelled|called off)
        (training|session|workout) [_] (doesnt|wont|didnt|cant|isnt) (take|taking) place
        today [the|my] (training|session|workout) is cancelled
    """,
    **WEEKDAY_LISTS,
)
"""The whole workout is left out today."""

SAYS_WORKOUT = words_of(
    """today todays gym train training workout session make this day come tomorrow go yesterday lift
    working going lifting coming everything rest whole remaining attend"""
)

TODAY_WORDS = words_of(
    """today todays it gym train training workout session this morning evening make day
    come coming tomorrow go yesterday lift skip skipping rest remaining cancel attend"""
)
