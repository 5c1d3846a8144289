"""Words of what clients want done, as data: to stop, to take back, to leave out, to move, to pause."""

import re

from domain.reading.question_words import said
from domain.reading.words import PERSONS, words_of

STOP = said(
    r"stop (?:messaging|texting|sending|writing|contacting|reminding|notifying|bothering|nagging"
    r"|pinging)(?: me)?(?: \w+)?(?: (?:messages?|texts?|reminders?|notifications?))?",
    r"stop (?:these|the|all|your|with)(?: \w+){0,2} (?:messages?|texts?|reminders?|notifications?|msgs"
    r"|pings|nagging|spam)",
    r"stop (?:messages?|reminders?|texts?|notifications?)",
    r"unsubscribe(?: me)?",
    r"(?:no more|dont want(?: any)?(?: more)?|do not want(?: any)?(?: more)?"
    r"|dont need(?: any)?(?: more)?) (?:of (?:these|your) )?(?:messages?|reminders?|texts?|notifications?"
    r"|msgs?|pings?)",
    r"leave me alone",
    r"(?:turn|switch|shut) (?:off |them off|the )?(?:the |these |your |my |all )?(?:reminders?|messages?"
    r"|notifications?|bot|texts?)(?: off)?",
    r"(?:dont|do not|please dont|never) (?:text|message|write|contact|remind|send)(?: to)? me(?: again"
    r"| any ?more| anymore| messages| reminders| things)?",
    r"(?:mute|silence)(?: me| this| the bot| the reminders| reminders)?",
    r"stop it with the (?:messages|reminders)",
    r"take me off (?:this|the|your) (?:list|bot)",
    r"opt out|cancel my (?:reminders|messages|subscription)|delete my (?:number|account|data)",
    r"remove me(?: from (?:this|the|your) \w+)?",
)

STOP_ALONE = re.compile(r"^(?:please )?stop(?: please| now| it)?(?: [!.])*$")

UNDO = said(
    r"(?:oops|whoops|sorry|please|pls) (?:delete|remove|scrap)(?= [.!]|$)",
    r"undo(?: (?:that|it|the last(?: one| set)?|last|please))?",
    r"(?:scrap|scratch|delete|remove|cancel|erase|forget|ignore|bin|discard|void|strike|disregard|drop"
    r"|clear|revert|retract|withdraw)(?: (?:about|out))? (?:that|it|this|the (?:last|latest"
    r"|previous)(?: (?:one|set|entry|message|record|thing|bit|report|number|log))?|my (?:last|previous"
    r"|latest)(?: (?:one|set|entry|message|text|record))?|last(?: (?:one|set|entry|message|record))?"
    r"|what i (?:just )?(?:said|sent|wrote|typed)|that (?:last )?(?:one|set|entry|message|record)"
    r"|the set i just (?:sent|logged)|the (?:\w+ )?(?:one|set) i just (?:sent|logged|put in))",
    r"take (?:that|it|this|the last(?: (?:one|set|entry))?|my last(?: (?:one|set))?|that (?:last )?(?:one"
    r"|set)) (?:back|off|out|away|down)",
    r"take (?:back|off|out) (?:that|it|the last(?: (?:one|set|entry))?|my last(?: (?:one|set))?)",
    r"(?:that|this|it|the last one|last one|last set|the last set|that set|that one|my last message"
    r"|last message) (?:was|is)(?: \w+)? (?:a mistake|an accident|by mistake|by accident"
    r"|sent by (?:mistake|accident)|meant for (?:someone|my|somebody|another)(?: \w+)*|not mine"
    r"|not meant for you|nonsense|an error|wrong person|the wrong chat|my (?:buddys|friends|wifes"
    r"|husbands|mates|sons))",
    r"wrong (?:chat|person|number|window|conversation)",
    r"(?:sent|pressed send|hit send|pressed enter)(?: that| it| this)? (?:by (?:mistake|accident)"
    r"|accidentally|in error)",
    r"(?:i )?(?:didnt|did not|havent|never) (?:actually |really |even )?(?:do|did|done|finish) (?:that|it"
    r"|the last(?: one| set)?|this one|that one|that set|this|it yet)",
    r"(?:that|it|the last one|last one|that set|the last set) (?:doesnt|didnt|shouldnt|does not) count",
    r"dont (?:count|log|record|save) (?:that|it|the last(?: one| set)?)",
    r"(?:never ?mind|forget) (?:that|the last|what i (?:said|sent|wrote))(?: (?:one|set))?",
)

_GYM = (
    r"(?:work ?outs?|training|trainings|session|sessions|gym|today|todays|it|this|this one|the day"
    r"|leg day|legs|push day|pull day|lower|upper|tonight|tonights|everything|tomorrows?|class"
    r"|practice|that|(?:mon|tues|wednes|thurs|fri|satur|sun)days?(?: session| workout| training)?)"
)

_MOVE_VERB = (
    r"(?:move|moving|moved|shift|shifting|shifted|postpone|postponing|postponed|push|pushing"
    r"|pushed|reschedule|rescheduling|rescheduled|delay|delaying|swap|swapping|switch|switching"
    r"|put off|putting off|bump|bumping|transfer|change)"
)

MOVE = said(
    rf"{_MOVE_VERB} (?:(?:the|my|this|todays|our|it|that|tonights|off|back|up) )*{_GYM}(?: (?:workout"
    rf"|session|training|gym|one|off|back|over|to|on|until|till|for|from|by|forward|a day|into|after))*",
    r"(?:move|moving|shift|shifting|postpone|postponing|push|pushing|reschedule|delay|delaying|put off"
    r"|putting off) (?:to|until|till|by|for|off to) (?:next |this |coming )?(?:tomorrow"
    r"|(?:mon|tues|wednes|thurs|fri|satur|sun)day)",
    r"(?:the )?rest(?: of (?:it|the (?:workout|session|exercises|plan|list)|them|this|todays(?: workout"
    r"| session)?|my workout))?(?: \w+){0,4} (?:tomorrow|on (?:mon|tues|wednes"
    r"|thurs|fri|satur|sun)day|(?:mon|tues|wednes|thurs|fri|satur|sun)day|next time)",
    r"(?:finish|finishing|do|doing|complete|continue|completing)(?: \w+){0,2} (?:the )?(?:rest|remaining"
    r"|remainder|other half|second half|others)(?: \w+){0,4} (?:tomorrow|on (?:mon|tues|wednes"
    r"|thurs|fri|satur|sun)day|(?:mon|tues|wednes|thurs|fri|satur|sun)day)",
)

MOVE_WORDS = words_of(
    """move moving moved shift shifting shifted postpone postponing postponed push pushing pushed reschedule
    rescheduling rescheduled delay delaying swap swapping switch switching put putting bump bumping
    transfer rest finish finishing instead train training tomorrow go come doing delay do lift change
    workout work catch make better works"""
)

WILL_TRAIN = said(
    r"(?:ill|i will|will|gonna|going to|im|i am|gotta|plan to|planning to|want to|lets|let me|can i"
    r"|could i|may i|can we|could we|i can|i could|have to|need to|id rather|rather|might|ok to|i"
    r"|prefer to|i would|better|wanna)(?: \w+)? (?:train|training|do it|do this|do today"
    r"|do todays(?: \w+)?|do the (?:workout|session|training|gym)|do my (?:workout|session)|doing it"
    r"|doing (?:the|my|todays) (?:workout|session|one)|come|go|going|lift|workout|work out|finish"
    r"|catch up|catching up|make (?:it|that) up|making it up|do legs|do leg day|do that|hit the gym"
    r"|hit the weights|get it done|get to it|do mine|take it|have it|train it|do the rest|make up for it"
    r"|gym)",
    r"(?:doing|do|train|training) (?:it|this|the (?:workout|session)|todays(?: \w+)?|my workout|legs)"
    r"(?= (?:tomorrow|on (?:mon|tues|wednes|thurs|fri|satur|sun)|instead"
    r"|(?:mon|tues|wednes|thurs|fri|satur|sun)day))",
)

NO_TODAY = re.compile(
    r"\b(?:cant|cannot|can not|wont|not|no|couldnt|unable)(?: \w+){0,5} (?:today|tonight|todays)\b"
    r"|\b(?:cant|cannot|wont) (?:do|finish) the (?:rest|remaining)\b"
    r"|\btoday (?:is|s|wont|doesnt|isnt|not|no|was)(?: \w+)? ?(?:out|off|work|possible|good|happening"
    r"|impossible|bad|tricky|full|crazy|a no go|no good|too busy|busy|not possible)\b"
)

_CANT = (
    r"(?:cant|cannot|can not|wont|wont be able to|not able to|unable to|couldnt|could not|not gonna"
    r"|not going to|am not|im not going to|not gonna be able to|will not|wont manage to"
    r"|didnt manage to|cant manage to|dont manage to|dont think i can|dont think ill|not|didnt"
    r"|did not|never)"
)

SKIP_WORKOUT = said(
    rf"{_CANT}(?: \w+)? (?:make it|make (?:today|tonight|todays|the gym|training|my workout|the session"
    rf"|this one|to the gym)|train|come|come in|go|workout|work out|get to the gym|get (?:there|in|out"
    rf"|away)|(?:do|finish) (?:any of )?the (?:rest|remaining)(?: (?:ones|exercises|sets))?"
    rf"(?! of the (?:sets?|reps))(?: of (?:it|them|the (?:workout|session|exercises|plan)))?"
    rf"|do (?:it|today|todays(?: \w+)?|the workout|my workout|training|the session|gym)|be (?:there"
    rf"|in|training|coming|at the gym)|lift|training|going|coming|working out"
    rf"|lifting)(?: (?:to (?:the )?(?:gym|training|it)|in|at all))*(?: (?:today|tonight|this (?:morning"
    rf"|evening|afternoon)|now|anymore|tomorrow|yesterday|this time|after all))?",
    r"no (?:gym|training|workout|session|lifting|time to train|time for (?:the )?(?:gym|training|workout"
    r"|a workout|my workout))(?: for me| possible| session)*(?: (?:today|tonight|this (?:morning|evening)"
    r"|tomorrow))?",
    rf"(?:skip|skipping|skipped|miss|missing|missed|cancel|cancelling|cancelled|bail on|bailing on"
    rf"|bailed on|sit out|sitting out|ditch|ditching|ditched|drop|give up on|pass on|passing on|blow off"
    rf"|blew off) (?:(?:the|my|this|our|on|out|out on|all of) )*(?:{_GYM[3:-1]}|rest of (?:it"
    rf"|the (?:workout|session))|rest|whole thing|entire workout|whole workout)(?: (?:today|tonight"
    rf"|workout|session|training|gym|this time))*",
    r"(?:taking|take|need|having|took) (?:today|the day|tonight|a day|the evening|a rest day"
    r"|an extra rest day)(?: off)?(?: today)?",
    rf"(?:today|tonight) (?:i )?{_CANT} (?:come|train|make it|go|do it|be there)",
    r"(?:come|go|train|can|will|do|make|manage) (?:today|tonight|tomorrow)(?: \w+)? not(?: (?:to|come|go"
    r"|train|training|the|gym|in))*",
    r"(?:giving|give|gave) (?:it|today|the gym|training|todays workout|tonight|the workout|this one"
    r"|the session) a miss",
    r"(?:day off|off|rest day|resting) today|today(?:s| is) (?:a )?(?:no (?:from|for) me|no go|no)"
    r"|today(?:s| is)? (?:a )?(?:rest day|off|day off|a write off)|not (?:happening )?today"
    r"|not feeling it today|today (?:isnt|is not|wont be|not) (?:happening|possible|going to happen"
    r"|gonna happen)|count me out(?: today)?|im out today|sitting (?:this one|today|it) out"
    r"|didnt make it(?: today| to the gym| yesterday)?|havent been (?:to the gym )?today|gym (?:is"
    r"|was) (?:closed|shut)(?: today)?|cant today|wont today|couldnt today",
)

SKIP_TRIGGERS = words_of(
    """cant cannot can wont not unable couldnt no skip skipping skipped miss missing missed cancel
    cancelling cancelled bail bailing bailed sit sitting ditch ditching ditched taking take need having
    took giving give gave day off rest today didnt havent gym count out come go train make manage will
    did never dont blow blew pass passing drop could"""
)

TODAY_WORDS = words_of(
    """today tonight todays tonights it gym train training workout session this morning evening make day
    come tomorrow go yesterday lift skip skipping rest remaining"""
)

AILS = words_of("dizzy dizziness fainted faint palpitations numb numbness collapsed")
"""Words of danger, beside which "sick" and "what do I do" mean another thing."""

ILL = said(
    r"(?:got|have|ive got|ive|caught|came down with|coming down with|down with|with|w|has|having|hit by"
    r"|still|tested positive for|laid up with|bed with|fighting|suffering from|struck by|picked up"
    r"|knocked out by|floored by) (?:the |a |an |some |really |this |that |bad |nasty |awful |horrible "
    r"|proper )*(?:flu|covid|corona|fever|cold|head cold|bug|virus|stomach bug|tummy bug|food poisoning"
    r"|chest infection|bronchitis|tonsillitis|norovirus|man flu|pneumonia|throat infection|stomach flu"
    r"|sinus infection|infection|temperature|migraine attack|gastro|sickness bug|shingles)",
    r"(?:im|i am|i feel|feel|feeling|been|still|really|quite|so|woke up|fell|fallen|was|pretty|too"
    r"|totally|got) (?:a bit |really |so |too |very |quite |pretty |totally |super |properly |extremely "
    r"|still )*(?:sick|ill|unwell|poorly|under the weather|feverish)(?! of\b)(?! pump| session| workout"
    r"| pr\b| set)",
    r"(?:sick|ill) as a (?:dog|parrot)",
    r"(?:sick|ill|flu|covid|fever)(?: (?:today|this week|at the moment|in bed|since|again|atm|now"
    r"|all week|leave|for|still|, no|, cant|, wont|, so)(?: \w+)?)",
    r"in bed with(?: \w+){1,3}|doctor (?:says|said|told me|wants me)(?: \w+){0,4} (?:rest|no (?:training"
    r"|gym|lifting)|stop|break)(?: \w+)*|signed off sick|off sick|in hospital|in the hospital",
)

ILL_WORDS = words_of(
    """flu covid corona fever cold bug virus poisoning infection bronchitis tonsillitis norovirus pneumonia
    sick ill unwell poorly feverish weather bed doctor hospital temperature gastro shingles attack
    sickness"""
)

NOT_ILL = re.compile(
    r"\b(?:(?:sick|ill) (?:at|just|from) (?:the (?:thought|sight)|thinking|watching)|"
    r"not (?:sick|ill)|over the (?:flu|cold|bug)|no longer (?:sick|ill)|(?:flu|cold|covid|bug"
    r"|fever) (?:is |has |was )?(?:gone|over|passed|behind)|recovered|better now|sick of|home sick"
    r"|homesick|sick (?:pump|session|workout|set|gains|pr|track|tune|beat)"
    r"|was (?:sick|ill) (?:last|on|yesterday|over|at the weekend)"
    r"|after (?:the |my |a )?(?:flu|cold|covid|bug)|back from|despite|ill (?:do|go|try|be|train|get|have"
    r"|take|send|let|see|skip|move|come|start|add|use|write|keep|make|finish))\b"
)

AWAY = said(
    r"(?:im |i am |be |going |gone |ill be |will be |were |we are |we re |am |)(?:away|out of town|abroad"
    r"|travell?ing|on (?:a )?(?:travels?|the road|holiday|holidays|vacation"
    r"|leave|annual leave|trip|business trip|work trip"
    r"|business|tour|honeymoon|a cruise|parental leave)|out of (?:the )?(?:country|office)|off(?: work"
    r"| on (?:holiday|leave|vacation))?|unavailable|gone|camping|skiing|at a conference|out"
    r"|in [a-z]+)(?= (?:till|til|until|untill|through|thru|from|for|next|on|this|the|over|all|to|#|a|two"
    r"|til|in|with|and|,|\.|now|-|visiting|sunday|monday|tuesday|wednesday|thursday|friday|saturday"
    r"|starting|as of|tomorrow|between|so))",
    r"(?:no (?:gym|training|workouts?|access to (?:a |the )?gym|equipment|sessions?)|cant train"
    r"|cannot train|wont (?:be able to )?train|not training|wont be training|cant make it|no lifting"
    r"|cant lift|wont be lifting|(?:gym|studio) (?:is |will be )?(?:closed|shut|closing))(?: (?:at all"
    r"|for me|possible|again|anywhere|there|where))*(?= (?:till|til|until|untill|for (?:the next )?(?:#|a"
    r"|two|three|the)|before|this (?:week|month)|next (?:week|month)|all week|the next))",
    r"(?:be |im |ill be |i am |will be |get |come |coming |return |returning |am |and |, |\. |^)?(?:back"
    r"|home|return|returning|resume|resuming|start again|restart|train again|training again)(?: (?:at it"
    r"|to (?:training|it|the gym|normal|lifting|work)|in (?:the gym|town|the country|action)|home|here"
    r"|again|training|from (?:my |the )?\w+))*(?= (?:on (?:the|mon|tues|wednes|thurs|fri|satur|sun|#|jan"
    r"|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)|the #|mon|tues|wednes|thurs|fri|satur|sunday|sun"
    r"|in (?:#|a|about|two|three)|next|#|after (?:the|#|a)|around the|by|from the|tomorrow))",
    r"(?:taking|take|need|needing|having|have|want|got|on|plan|planning|took|a|#|my|due|booked"
    r"|this)(?: (?:a|some|the|next|about|another|my|whole|full|couple of|few|coming|of|time|extra|short"
    r"|long|little))* ?(?:#)? ?(?:weeks?|days?|month|months|fortnight|break|time|pause) (?:off|break|away"
    r"|out|from training|pause|holiday|rest|of rest|from the gym)",
    r"(?:taking|take|need|having|have|want|on|going on|start|starting) (?:a|my|an) (?:little |short "
    r"|longer |long |small |proper |much needed |training |complete |full |well earned )*(?:break|pause"
    r"|holiday|vacation|rest week|deload|time out|timeout|week off)(?: (?:from|until|till|for|of|next"
    r"|starting|now))*",
    r"pause (?:me|my|the|everything|training|it|this|things|all|for|until|till)(?: \w+)*|put (?:me"
    r"|my (?:training|programme|program)|everything|it|things|training) on (?:hold|pause)(?: \w+)*"
    r"|(?<!\bs )(?<!\bsec )(?<!\bsecs )(?<!\bsecond )(?<!\bseconds )(?<!\ba )(?<!\bwith )"
    r"(?:please )?pause(?: please)?$|freeze my \w+",
    r"^(?:(?:hi|hey|hello|coach|sorry|,) )*(?:im|i am|we are|were) (?:away )?on (?:a |my |our )?"
    r"(?:holidays?|vacation|annual leave)(?: (?:now|today|at the moment|this week))?(?= (?:[.!,]|so\b)|$)",
    r"holidays?(?:!|:|,)? (?:till|til|until|from|for)|vacation (?:till|til|until|from|for)|(?:surgery"
    r"|operation)(?: \w+){0,6} (?:weeks?|days?|months?|until|till)|injured(?: \w+){0,4} (?:until|till"
    r"|for # weeks)",
    r"off (?:till|til|until|untill|for (?:#|a|two|the)|#|next week|this week|all week|the whole|from|to"
    r"|a (?:week|fortnight|month|couple))",
)

AWAY_WORDS = words_of(
    """travel travels road away town abroad travelling traveling holiday holidays vacation leave trip tour
    honeymoon country office off unavailable gone camping skiing gym training train back home return
    returning resume restart break pause time weeks week days fortnight month hold freeze surgery
    operation injured out till until til untill lifting closed lift months business conference cruise"""
)

BUSY_WORDS = frozenset({"nights", "busy", "swamped", "shifts", "shift", "injured"})

STILL = re.compile(
    r"\b(?:still training|still lift\w*|will train|ill train|can still|train(?:ing)? (?:anyway|as usual"
    r"|normally|there)|gym there|hotel gym|found a gym|used|trained|did|got)\b"
)

UNTIL = re.compile(
    r"\b(?:till|til|until|untill|through|thru|back|return\w*|resum\w*|home|to|before|again|restart|up to)\b"
)

LENGTH = re.compile(
    r"(?:(?P<n>#)|(?P<a>a|one|another|the next|the whole|this whole|a whole)|(?P<c>a couple of|couple of"
    r"|couple|a few|few|several|some)) (?:more |whole |full |good )?(?P<u>days?|weeks?|wks?|months?"
    r"|fortnights?)\b"
)

SKIP_VERB = re.compile(
    r"\b(?:(?:leave|left|leaving|stop|stopped|go|quit|finish|finished|home) before|skip|skips|skipped"
    r"|skipping|skippin|skiped|leave out|leaving out|left out|leave off|leaving"
    r"|left off|leave|missed(?: out)?(?: on)?|missing|miss|miss out|drop|dropping|dropped|didnt (?:get to"
    r"|do|get (?:round|around) to|make it to|manage|get|reach|have time for|finish|even do|bother with"
    r"|touch|have (?:the )?(?:time|energy) for)|did not (?:get to|do|manage)|havent done|could not (?:do"
    r"|manage|get to|use)|couldnt (?:do|manage|get to|use|fit in|face|be bothered with)|cant do|wont do"
    r"|not doing|not gonna do|not going to do"
    r"|no time (?:left )?for|out of time (?:for|before)|(?:left|leave|leaving|gave|giving) (?=(?:it|that"
    r"|that one|this one|them|those) (?:out|off|a miss))|without (?:the )?|pass(?:ed|ing)? on"
    r"|never got (?:to|round to|around to)|no(?= (?:\w+ ){0,3}(?:today|tonight"
    r"|this time))|(?:so|therefore) no"
    r"|no(?= (?:\w+ ){1,4}, (?:\w+ ){0,4}(?:broken|taken|closed|occupied|busy|out of order|defect|missing"
    r"|queue|in use))|bail(?:ed"
    r"|ing)? on|omit(?:ted|ting)?|cut(?: out)?|ditch(?:ed|ing)?|scrap(?:ped|ping)?|cancel(?:led|ling)?"
    r"|avoid(?:ing|ed)?|sit(?:ting)? out|ran out of time (?:for|before)|(?:leave|left|stop|stopped|go"
    r"|quit|finish|finished|home) before|taking out|take out|took out|nixed?|axed?|forgot(?: to do)?"
    r"|forgotten)\b"
)

SKIP_AFTER = re.compile(
    r"\b(?:(?:down )?as (?:skipped|missed|not done)|(?:is|are|was|were|got|been|be) (?:skipped|left out"
    r"|missed|cancelled|dropped|out|not done|a no(?: go| show)?|off)|skipped|skip|a miss|not today"
    r"|didnt happen|not happening|will have to wait|have to wait|not done|left out|no time"
    r"|ran out of time|couldnt do|didnt do|didnt get to (?:it|them)|dropped)\b"
)

NOT_SKIP = re.compile(
    r"\b(?:dont|never|didnt|not|wont|without|no) (?:want to |wanna |like to |gonna |to |be )?(?:skip\w*"
    r"|miss\w*|leav\w* out|drop\w*)\b"
)

THAT_ONE = frozenset({"that", "it", "this", "them", "those", "these"})

SKIP_WORDS = words_of(
    """skip skips skipped skipping skippin skiped leave leaving left missed missing miss drop dropping
    dropped didnt did havent couldnt cant wont not no out without pass passed passing never bail bailed
    bailing omit omitted omitting cut ditch ditched ditching scrap scrapped scrapping cancel cancelled
    avoid avoided avoiding sit sitting ran taking take took nix nixed axe axed forgot forgotten"""
)

OTHER_ILL = re.compile(
    rf"\b(?:my|our|the|his|her) (?:\w+ )?(?:{PERSONS}|baby|child|toddler|family|girls|boys|boy|twins|dog"
    rf"|cat|children)s? (?:is|are|has|have|had|gets|getting|got|was|were|caught|s|sick|ill|been|came"
    rf"|threw|with)\b|\b(?:kids?|baby|child|daughter|son|dog|wife|husband"
    rf"|mum|mom|dad|brother|sister|gran)(?: is| has| are| got"
    rf"| s)? (?:sick|ill|flu|covid|fever|unwell|the flu|a fever|poorly|in hospital|in the hospital)\b"
)

STOP_TRIGGERS = words_of(
    """stop unsubscribe more want need alone turn switch shut dont do never mute silence take opt cancel
    delete remove"""
)

SAYS_WORKOUT = words_of(
    """today tonight todays gym train training workout session make this day come tomorrow go yesterday lift
    working going lifting coming everything rest whole remaining"""
)

BETWEEN_SKIP = words_of(
    """the my all of on doing any out to today tonight those these them both remaining rest with a set sets
    second third last final , : put down left got even also again just now some one two more time for -
    other is are was were be being , so gotta had have only please had been completely entirely totally
    finally just then and it today's that machine thing stuff been i have we ive"""
)

MOVE_COMES_AFTER = words_of(
    """, . but so maybe can ill on for do go train it come to and or then rather gonna will is - ; prefer
    better going doing training perhaps instead today ! ok workout session move make going lift think
    might could would i"""
)

UNDO_TRIGGERS = words_of(
    """undo scrap scratch delete remove cancel erase forget ignore bin discard void strike disregard drop
    clear revert retract withdraw take mistake accident wrong sent pressed hit didnt did havent never
    doesnt shouldnt does dont nevermind mind not mine nonsense error meant"""
)
