"""Turns of phrase for what is left out today, as data: an exercise, or the whole workout."""

from domain.reading.move_words import THE_WORKOUT, WEEKDAY_LISTS
from domain.reading.patterns import Pattern
from domain.reading.words import words_of

SKIP = Pattern(
    """
    plainly:(skip|skipped|skipping)
    ended:(drop|dropped|dropping|cut out?|could not ({get_to}|use)|couldnt manage)
    (leave|left|leaving|stop|stopped|go|quit|finish|finished|home|out of time) before
    {left_out}|{not_done}
    (left|leave|leaving|gave|giving) >((it|that one|this one|them|those) (out|off|a miss))
    out:(leave|leaving)
    today:no >(..3 (today|tonight|this time)|_ ..3 , ..4 {not_to_be_had})
    """,
    left_out="""
        skips|skippin|skiped|(leave|leaving|left) (out|off|away)
        missed out? on?|missing|miss|without the?|passed on|passing on|pass on|bail on|bailed on|bailing on
        omit|omitted|omitting|ditch|ditched|ditching|scrap|scrapped|scrapping|cancel|cancelled|cancelling
        avoid|avoided|avoiding|sit out|sitting out|taking out|take out|took out
        nix|nixed|axe|axed|forgot [to do]|forgotten
    """,
    not_done="""
        didnt ({get_to}|get (round|around) to|get|make it to|reach|finish|touch|even do|bother with)
        didnt have (time|the time|energy|the energy) for|did not {get_to}|havent done
        couldnt ({get_to}|use|fit in|face|be bothered with)
        (cant|wont) do|not doing|not (gonna|going to) do
        no time [left] for|out of time for|never got (to|round to|around to)|(so|therefore) no
    """,
    get_to="get to|do|manage",
    not_to_be_had="broken|taken|closed|occupied|busy|out of order|defect|missing|queue|in use",
)
"""What follows is left out. A named part tells how sure that is: `plainly`, whatever follows; only with "out"
or with "today" after it; or where the sentence has `ended`, since a weight can be dropped as well."""

SKIPPED = Pattern(
    """
    [down] as (skipped|missed|not done)
    (is|are|was|were|got|been|be) (skipped|left out|missed|cancelled|dropped|out|not done|a no [go|show])
    i (leave|left|am leaving) (out|away|off)|(never|didnt) (happened|happen)
    skipped|skip|a miss|dropped|left out|not done|not today|didnt happen|not happening|[will] have to wait
    no time|ran out of time|couldnt do|didnt do|didnt get to (it|them)
    """
)
"""What stands before it is left out."""

NOT_SKIPPED = Pattern(
    "(dont|never|didnt|not|wont|without|no) [want to|wanna|like to|gonna|to|be] (skip~|miss~|leav~ out|drop~)"
)
SURELY_SKIPPED = words_of("skipped skipping skiped skiping")

TAKES_BACK = words_of(
    """skip skips skipped skipping skippin skiped leave leaving left gave giving pass passed passing miss
    missed missing omit omitted omitting didnt couldnt cant bail bailed bailing"""
)
"""First words of leaving out after which "it" is the exercise said before: "bench: skipped it"."""
IT = words_of("that it this them those these")

BETWEEN = words_of(
    """the my all of on doing any out to today tonight those these them both remaining rest with a set sets
    second third last final , : put down left got even also again just now some one two more time for -
    other is are was were be being so gotta had have only please been completely entirely totally
    finally then and it that machine thing stuff i we ive"""
)
"""Small words between what leaves out and the name of the exercise."""

SKIP_WORKOUT = Pattern(
    """
    {cannot} ..1 {train} [to [the] (gym|training|it)|in|at all]* [{when}]
    no {workout_time} [for me|possible|session]* [today|tonight|this (morning|evening)|tomorrow]
    {skip} [the|my|this|our|on|out|out on|all of]* ({workout}|{rest}) [{today}]*
    (taking|take|need|having|took) {a_day} off? today?
    (today|tonight) i? {cannot} (come|train|make it|go|do it|be there)
    (come|go|train|can|will|do|make|manage) (today|tonight|tomorrow) [_] not [{to_train}]*
    (giving|give|gave) {this_workout} a miss
    {day_off}|{not_today}
    """,
    cannot="""
        cant|cannot|can not|couldnt|could not|not able to|unable to|(wont|cant|didnt|dont) manage to
        wont|wont be able to|will not|shant|shall not|am not|[im] not going to|not gonna [be able to]
        dont think i can|dont think ill|not|didnt|did not|never
    """,
    train="""
        make (it|today|tonight|todays|the gym|training|my workout|the session|this one|to the gym)
        do (it|today|todays [_]|the workout|my workout|training|the session|gym)
        (do|finish) [any of] the {remaining}
        get to the gym|get (there|in|out|away)|be (there|in|training|coming|at the gym)
        train|training|come [in]|coming|go|going|lift|lifting|workout|work out|working out
    """,
    remaining="""
        (rest|remaining) [ones|exercises|sets] !(of the (set|sets|rep|reps))
        [of (it|them|the (workout|session|exercises|plan))]
    """,
    when="""
        today|tonight|tomorrow|yesterday|now|anymore|this (morning|evening|afternoon|time)|after all
    """,
    workout_time="""
        gym|training|workout|session|lifting|time to train|time for ([the|a|my] workout|[the] (gym|training))
    """,
    skip="""
        skip|skipping|skipped|miss|missing|missed|cancel|cancelling|cancelled|ditch|ditching|ditched|drop
        bail on|bailing on|bailed on|sit out|sitting out|give up on|pass on|passing on|blow off|blew off
    """,
    workout=THE_WORKOUT,
    rest="rest of (it|the (workout|session))|rest|whole thing|(entire|whole) workout",
    today="today|tonight|workout|session|training|gym|this time",
    a_day="today|tonight|the day|a day|the evening|a rest day|an extra rest day",
    to_train=words_of("to come go train training the gym in"),
    this_workout="it|today|tonight|the gym|training|todays workout|the workout|this one|the session",
    day_off="""
        (day off|off|rest day|resting) today|today [is] [a] (rest day|off|day off|a write off)
        todays [a] (rest day|off|day off|a write off)
    """,
    not_today="""
        (todays|today is) [a] (no (from|for) me|no go|no)
        today (isnt|is not|wont be|not) (happening|possible|going to happen|gonna happen)
        not [happening] today|not feeling it today|(cant|wont|couldnt) today
        count me out today?|im out today|sitting (this one|today|it) out
        didnt make it [today|to the gym|yesterday]|havent been [to the gym] today
        gym (is|was) (closed|shut) today?
        (training|gym|session|workout) (falls|fell) (out|flat|through)
    """,
    **WEEKDAY_LISTS,
)
"""The whole workout is left out today."""

SAYS_WORKOUT = words_of(
    """today tonight todays gym train training workout session make this day come tomorrow go yesterday lift
    working going lifting coming everything rest whole remaining"""
)

TODAY_WORDS = words_of(
    """today tonight todays tonights it gym train training workout session this morning evening make day
    come tomorrow go yesterday lift skip skipping rest remaining"""
)
