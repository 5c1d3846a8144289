"""What else the client wants done: leave out, move, pause, take back, ask, look at, stop. No set is read
here."""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta

from domain.reading.body_words import OTHERS
from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.request import Slot, Want
from domain.reading.when import Day, coming_day
from domain.reading.words import PERSONS, words_of


@dataclass(frozen=True, slots=True)
class Wanted:
    """What is wanted, with the exercises to leave out, the day of a move or a pause, and what must be
    asked."""

    wants: tuple[Want, ...] = ()
    skips: tuple[str, ...] = ()
    on: date | None = None
    asks: tuple[Slot, ...] = ()
    used_names: tuple[Named, ...] = ()


_B = r"(?<![^ \n])"
_E = r"(?![^ \n])"


def _words(*patterns: str) -> re.Pattern[str]:
    return re.compile(_B + "(?:" + "|".join(patterns) + ")" + _E)


_STOP = _words(
    r"stop (?:messaging|texting|sending|writing|contacting|reminding|notifying|bothering|these|the|all"
    r"|with the|your|nagging|pinging)(?: me)?(?: \w+)?(?: (?:messages?|texts?|reminders?"
    r"|notifications?))?",
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
_STOP_ALONE = re.compile(r"^(?:please )?stop(?: please| now| it)?(?: [!.])*$")
_UNDO = _words(
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
_HELP = _words(
    r"how (?:does|do|is) (?:this|it|the|that|you|this thing|your)(?: \w+){0,3} (?:work|works|function"
    r"|meant to work|supposed to work)",
    r"how (?:this|it|the bot|that)(?: \w+)? works?",
    r"what (?:can|do|should|could|am i supposed to|shall) (?:i|we|you)(?: even)? (?:type|write|say to you"
    r"|tell you|text(?: you| here)?|send(?: you)?|ask you|enter|do here|do with you|use you for)",
    r"what (?:can|could|do) (?:you|u|this(?: bot| thing)?|the bot|it) (?:do|understand|know)",
    r"what (?:means?|meaning)(?: \w+){1,4}",
    r"what(?:s| is| does| do| are| was| r)?(?: the| a| an)?(?: \w+){1,4} (?:mean|means|stand for"
    r"|stands for|supposed to mean)",
    r"(?:what(?:s| is| are| was)|wats|wtf is|define|explain)(?: a| an| the| this| that| these)? (?:rir"
    r"|rpe|amrap|superset|supersets|deload|1rm|rm|e1rm|negatives?|tempo|hold|static hold|drop ?sets?"
    r"|failure|warm ?up|rest day|personal best|pb|pr|layoff|rep range|reps?|sets?|lowering only"
    r"|double progression|stall|to failure|verdict|target|rdl|ohp|bss|emom|doms|superset mean)(?: (?:mean"
    r"|thing|thingy|about|stuff|again|anyway))?",
    r"(?:meaning|definition) of(?: \w+)+",
    r"how (?:do|can|should|to)(?: i| we)? (?:log|enter|report|record|submit|undo|correct|change|delete"
    r"|edit|fix|note|write(?: it| this| that| down)?|tell you|type|send you|put in|text you|use (?:this"
    r"|you|the)|fill in|register|input|save|talk to|write you)(?: \w+)*",
    r"(?:list of |show |what )?(?:commands?|instructions)(?: are there| please)?",
    r"(?:need|show|get|please|some|more) help(?! with (?:my|the|form))",
    r"how (?:to|do i) use (?:this|you|the bot|it)",
    r"are you a (?:bot|robot|human|person|machine|real person)",
    r"who (?:are|r) (?:you|u)|am i talking to a (?:bot|person|human|machine|robot)",
    r"i dont (?:understand|get) (?:how )?(?:this|the) (?:bot|thing|app|works)|dont know how (?:this"
    r"|the bot|it) works",
    r"(?:what|which) (?:format|words)(?: \w+){0,5}",
)
_HELP_ALONE = re.compile(r"^(?:/ ?)?(?:help|menu|commands?|info)(?: me| please| pls)?(?: [!.?])*$")
_HISTORY = _words(
    r"(?:what|how much|how many|how long|how heavy|which)(?: \w+){0,4} (?:did|have|had|was|were) (?:i|we"
    r"|my)(?: \w+){0,8}(?<! should)(?<! wrong)",
    r"what (?:were|was|are) my(?: \w+){0,3} (?:numbers|results|sets|lifts|best|record|records|pr|pb|prs"
    r"|pbs|weights?|reps|last|time|stats|score|max|history|bests)(?: \w+)*",
    r"what(?:s| is| was) my (?:best|record|pr|pb|max|last|previous|heaviest|history|progress|longest"
    r"|one rep max|1rm|current best|personal best|all time)(?: \w+)*",
    r"(?:show|send|give|tell|see|view|look at|pull up|list)(?: \w+){0,2} (?:my|the|me"
    r"|all)(?: \w+){0,3} (?:progress|history|log|logs|numbers|results|stats|statistics|records?|graph"
    r"|chart|past sets|journal|data|curve|lifts|trend|prs?|pbs?|bests|entries|previous \w+"
    r"|last (?:workout|session|time|week|sets?)|past \w+)(?: \w+)*",
    r"how (?:have i|ive|i have|i|my|am i|has my|did my|is my|are my|was my"
    r"|were my)(?: \w+){0,4} (?:got on|getting on|progress\w*|improv\w+|come along|coming along|changed"
    r"|develop\w*|going|gone|doing|done|trending|moving|look\w*)(?! right| wrong)(?: \w+)*",
    r"(?:have i|am i) (?:improv\w+|got(?:ten)? (?:stronger|better)|getting (?:stronger|better)"
    r"|progress\w*|made (?:any )?progress)(?: \w+)*",
    r"(?:progress|history|stats|my numbers|my progress|my history|my log|my stats)(?: (?:please|pls|for"
    r"|on|of|chart|graph|this|last|over|so far)(?: \w+)*)?(?= \?|$)",
    r"(?:tell me|remind me|know|see|remember) what (?:i|my|we) (?:\w+ ){0,2}?(?:did|lifted|used|got|had"
    r"|managed|hit|pressed|squatted|benched|lift|do|get|numbers|weights?)(?: \w+)*",
    r"what (?:i|we) (?:did|lifted|used|got|had|managed)(?: \w+){0,6} (?:last|before|previous\w*)(?: \w+)*",
    r"remind me what (?:i|my|we)(?: \w+){0,3} (?:did|lifted|got|used|had|last|best|was|were"
    r"|numbers)(?: \w+)*",
    r"what (?:weight|weights|load|reps|numbers?)(?: \w+)? did i (?:use|do|lift|get|have|hit|put"
    r"|manage)(?: \w+)*",
    r"when did i last (?:\w+)(?: \w+)*",
    r"how did (?:i|it|that)(?: \w+)? (?:do|go)(?: \w+)* (?:last|on|before|previous\w*|yesterday|monday"
    r"|tuesday|wednesday|thursday|friday|saturday|sunday)(?: \w+)*",
    r"what (?:was|were) (?:the|my)(?: \w+){0,2} (?:weights?|load|reps|numbers?|score)(?: \w+)* (?:last"
    r"|before|previous\w*)(?: \w+)*",
)
_PLAN = _words(
    r"what(?:s| is| am i| do i| are we| r we| else| else is| else do i)?(?: still)?(?: \w+){0,2} (?:left"
    r"|next|remaining|on today|today|up next|up today|on the (?:plan|menu|list|cards|agenda|programme"
    r"|program|schedule)|to do|the plan|planned|due|for today|coming up|scheduled|doing today"
    r"|doing tonight|after (?:that|this)|missing|outstanding)(?: \w+)*(?<! wrong)",
    r"(?:which|what) (?:exercises?|workout|sets?|lifts?|session|day|muscles?"
    r"|movements?)(?: \w+){0,4} (?:today|left|next|due|do i|is it|are|is|tomorrow|now|remain\w*|have|on"
    r"|tonight|first|missing|still)(?: \w+)*",
    r"what (?:should|shall|do|am|must|can|will) (?:i|we)(?: have to| need to| be| supposed to)? (?:do"
    r"|train|doing|training|lift|start with|beat|aim for|hit|try|be doing|go for|work on"
    r"|have)(?: (?:today|next|now|tonight|first|tomorrow|on|this|for|in|with|after|at|to beat"
    r"|as)(?: \w+)*)?(?= \?|$)",
    r"what(?:s| is| was| are| were)(?: the| my| todays| this weeks)? (?:target|targets|plan|goal|workout"
    r"|session|programme|program|routine|number to beat|weight to beat|set to beat|training"
    r"|number for)(?: \w+)*",
    r"(?:show|send|give|tell|see|list|resend|repeat)(?: \w+){0,2} (?:the|my|todays|me|this|tomorrows"
    r"|next)(?: \w+){0,2} (?:plan|workout|list|exercises|session|targets?|programme|program|routine"
    r"|training|schedule)(?: \w+)*",
    r"(?:todays|tomorrows|the|my|next)? ?(?:plan|workout|list|exercises|targets?)(?: for today| today"
    r"| please| pls)?(?= \?| please| pls|$)",
    r"what (?:weights?|load|numbers?|reps) (?:do|should|must|shall|am) i (?:\w+ )?(?:need to |have to "
    r"|supposed to |meant to |going to )?(?:beat|hit|aim for|go for|do|use|lift|get)(?: (?:today|on|next"
    r"|this|for|now)(?: \w+)*)?(?= \?|$)",
    r"how many (?:sets|exercises|more|things|lifts|movements)(?: \w+){0,5} (?:left|do i|today|remaining"
    r"|to do|to go|are there|are on|should|for)(?: \w+)*",
    r"(?:when|what day|which day)(?: \w+){0,3} (?:next|my) (?:workout|session|training|gym day)(?: \w+)*",
    r"(?:is|was) (?:it|today|this|tomorrow) (?:a |my )?(?:rest day|training day|leg day|push day|pull day"
    r"|gym day|workout day|day off)(?: \w+)*",
    r"(?:do|am) i (?:train|training|have (?:a )?(?:workout|training|gym|session)|lifting|working out"
    r"|on)(?: \w+){0,2} (?:today|tomorrow|tonight|next|this)(?: \w+)*",
    r"what(?:s| is) it today|what was (?:it|next|the plan) (?:again|today)|remind me what(?:s| is|s left"
    r"|s next| i have| im doing| to do| i need)(?: \w+)*|am i (?:done|finished)(?: for today)?"
    r"|is that (?:all|everything|it)(?: for today)?|anything (?:left|else today|else to do)"
    r"|what to (?:beat|do today|do next)(?: \w+)*|what comes (?:next|after)(?: \w+)*",
)
_SMALL_TALK = _words(
    r"how (?:are|r) (?:you|u|ya|things)(?: \w+)*|hows (?:it going|you|things|life|tricks|your)(?: \w+)*"
    r"|whats up|sup|you (?:there|ok|alright)|are you (?:there|ok|alright|awake|well|proud|happy|impressed"
    r"|kidding|serious|joking)(?: \w+)*|guess (?:what|who)(?: \w+)*|(?:can|could"
    r"|would) you believe(?: \w+)*|who (?:invented|needs|knew|even|does|designed|decided|thought|said"
    r"|cares|wants|came up)(?: \w+)*|why (?:do (?:i|we) (?:do|even|love|keep)|is (?:leg|it always"
    r"|everyone|everything|the gym)|are (?:gyms|people|burpees|lunges)|did i (?:ever )?(?:sign|agree"
    r"|think|say|eat)|does (?:it|everyone|this) always|oh why|me)(?: \w+)*|what (?:a|an) (?:day|week"
    r"|session|workout|life|time|set|pump|grind|feeling|relief|beast|mess)(?: \w+)*|isnt (?:it"
    r"|that) (?:great|nice|amazing|cool|funny|lovely|wild|crazy)(?: \w+)*|did you (?:see|watch|know|hear"
    r"|have|catch|sleep)(?: \w+)*|how was your(?: \w+)*|is it (?:friday|weekend|the weekend|bedtime"
    r"|christmas|over|beer)(?: \w+)*|did i mention(?: \w+)*|what is (?:life|sleep|this life"
    r"|wrong with (?:people|me|him))|do i get (?:a|an) (?:medal|prize|cookie|trophy|sticker|star|biscuit"
    r"|badge)(?: \w+)*|where (?:is|are|was|did) (?:everyone|the time|my (?:legs|lungs|arms|motivation"
    r"|energy))(?: \w+)*|who would have thought(?: \w+)*|what (?:else|more) is new|ya know"
    r"|you know(?: what i mean)?|know what i mean|what could go wrong|how (?:cool|nice|great|good|awesome"
    r"|crazy|sad|funny) is that|what (?:day|time) is it(?: \w+)*|do you (?:like|sleep|ever|lift"
    r"|drink)(?: \w+)*|who am i kidding|am i (?:a )?(?:machine|beast|genius|dead|dreaming|strong or what"
    r"|hulk|old)|was that (?:me|really me)|what am i doing with my life|is there a prize(?: \w+)*"
    r"|how time flies|what happened to(?: \w+)*",
)
_REQUEST = _words(
    r"(?:can|could|would|will) (?:you|u|ya|someone|we|the coach) (?:please |pls |maybe |perhaps "
    r"|also )?(?:check|look|watch|tell|explain|help|change|swap|adjust|give|call|ring|phone|have a|take a"
    r"|review|make|let|send|advise|talk|update|reduce|increase|lower|add|put|see|show me how|recommend"
    r"|suggest|come|meet|chat|speak|set|write|go over|switch|replace|remove|move|find|think|confirm|ask"
    r"|get|do|start|consider|assess|rate|comment|pass|program|programme|build|include|shorten|drop|plan"
    r"|cut)(?: \S+)*",
    r"(?:please|pls|plz|kindly) (?:check|look|watch|tell me|explain|advise|call|ring|review|have a look"
    r"|take a look|swap|change|adjust|let me know|help|give me|look at|pass|ask|give|make|replace|send my"
    r"|contact)(?: \S+)*",
    r"let me know (?:if|what|whether|how|when|your|ur)(?: \S+)*",
    r"(?:any|some|need|want|give me|looking for|after|love|like) (?:tips|advice|thoughts|ideas?"
    r"|suggestions?|feedback|opinion|guidance|your advice|your opinion|a second opinion|pointers|cues"
    r"|your thoughts|your input|input)(?: \S+)*",
    r"(?:id|i would|i|we) (?:\w+ )?(?:like|want|need|love|prefer|wish) (?:you )?(?:to|a|an"
    r"|us to)? ?(?:talk|ask|swap|change|discuss|know|speak|chat|see you|switch|replace|do something"
    r"|try something|new|call|less|different|another exercise|other|know if|check|lower|easier|harder"
    r"|word)(?: \S+)*",
    r"(?:call|ring|phone|text|contact) me(?: (?:please|back|when|later|today|tomorrow|asap|tonight"
    r"|if)(?: \S+)*)?",
    r"(?:do|dont|would|did) (?:you|u) (?:think|reckon|recommend|suggest|want|prefer|mind|advise|agree"
    r"|have (?:any|a|an)|know (?:if|why|how|a|what))(?: \S+)*",
    r"(?:not|im not|unsure|wasnt|am not) (?:quite |really |so |too |100 |totally |entirely )?(?:sure"
    r"|certain) (?:if|whether|about|how (?:to|i should|low|deep|far|fast|heavy)|what (?:to|im|i should)"
    r"|im|i am|my|that (?:im|my))(?: \S+)*|unsure (?:if|whether|about|how)(?: \S+)*",
    r"(?:i )?(?:was |am |im |just |been )?(?:wondering|curious) (?:if|whether|about|how|what"
    r"|why)(?: \S+)*|wonder (?:if|whether|why|what|how)(?: \S+)*",
    r"(?:dont|do not|didnt) know (?:if|whether|what to do|how to|why|what im doing|which|how (?:low|deep"
    r"|heavy|far|fast|i should))(?: \S+)*|no idea (?:if|whether|why|how to|what to do)(?: \S+)*",
    r"(?:hope|hoping) (?:that |thats |this |it |its )?(?:is |was |are )?(?:ok|okay|alright|normal|fine"
    r"|right|not (?:bad|wrong|a problem))(?: \S+)*",
    r"(?:is|if|whether|was|are) (?:that|this|it|those|these|they)(?: \w+){0,3} (?:normal|ok|okay|bad|fine"
    r"|right|too much|wrong|good|alright|enough|dangerous|safe|correct|allowed|a problem|an issue"
    r"|bad form|weird|usual|common|expected|good enough|supposed to|meant to)(?: \S+)*",
    r"(?:my|the|check|checking|check my|on my) form (?:ok|okay|check|right|good|please|looks? (?:ok|right"
    r"|off|bad)|feels? (?:off|wrong|weird))(?: \S+)*|form check(?: \S+)*|check my (?:form|technique|squat"
    r"|bench|deadlift|video|vid)(?: \S+)*|look at my (?:form|technique|squat|bench|deadlift|video"
    r"|vid)(?: \S+)*",
    r"(?:question|quick question|qq|q) (?:for|about|:|on|-|,|re)(?: \S+)*|(?:tell|ask|message for|let"
    r"|pass on to) (?:the |my )?coach(?: \S+)*|i (?:have|got|had|ve got) (?:a|an|one|another"
    r"|some) (?:question|questions|request|worry|concern)(?: \S+)*",
    r"(?:too (?:heavy|light|much|little|fast|slow|low|many|few)|normal|thoughts|ok like that|good or bad"
    r"|right way|any alternative|alternatives?|advice|tips|suggestions?|ideas|yes or no|agree|good idea"
    r"|bad idea|worth it|ok|okay)(?: \S+){0,3} \?",
    r"what (?:should|would|do|can|could|shall|must) (?:i|you|we)(?: \S+)*",
    r"should (?:i|we|it|that|the|my)(?: \S+)*",
)
_OPENERS = words_of(
    """what show send tell give how list remind help explain define which when see meaning progress history
    my todays plan dont am resend pull view wats wtf are need who stats whats i workout targets"""
) - {"my", "i", "are", "am"}
_REQUEST_KEYS = words_of(
    """can could would will please pls plz kindly let tips advice thoughts ideas idea suggestions suggestion
    feedback opinion guidance pointers cues input call ring phone text contact think reckon recommend
    suggest sure certain unsure wondering curious wonder know hope hoping normal ok okay fine bad safe
    form check checking technique look question questions quick qq q tell ask coach should what like want
    need love prefer wish talk swap change discuss speak chat switch replace alternative alternatives
    worth agree heavy light much many few fast slow low little right wrong good alright enough dangerous
    correct allowed problem issue weird usual common expected meant supposed request worry concern message"""
)
_NOT_REQUEST = re.compile(
    r"\b(?:how (?:many|much) (?:reps|repetitions|sets|times)?|what (?:weight|load) (?:it|that|i|was)"
    r"|the weight|which weight|if (?:it was|they were|it is|its) (?:kg|lbs?|kilos?|pounds?)|kg or|lbs? or"
    r"|kilos? or|pounds? or|if i counted|what (?:it|they) weigh)\b"
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
_MOVE = _words(
    rf"{_MOVE_VERB} (?:(?:the|my|this|todays|our|it|that|tonights|off|back|up) )*{_GYM}(?: (?:workout"
    rf"|session|training|gym|one|off|back|over|to|on|until|till|for|from|by|forward|a day|into|after))*",
    r"(?:the )?rest(?: of (?:it|the (?:workout|session|exercises|plan|list)|them|this|todays(?: workout"
    r"| session)?|my workout))?(?: \w+){0,4} (?:tomorrow|tmrw|tmr|tomorow|tommorow|on (?:mon|tues|wednes"
    r"|thurs|fri|satur|sun)day|(?:mon|tues|wednes|thurs|fri|satur|sun)day|next time)",
    r"(?:finish|finishing|do|doing|complete|continue|completing)(?: \w+){0,2} (?:the )?(?:rest|remaining"
    r"|remainder|other half|second half|others)(?: \w+){0,4} (?:tomorrow|tmrw|tmr|on (?:mon|tues|wednes"
    r"|thurs|fri|satur|sun)day|(?:mon|tues|wednes|thurs|fri|satur|sun)day)",
)
_MOVE_WORDS = words_of(
    """move moving moved shift shifting shifted postpone postponing postponed push pushing pushed reschedule
    rescheduling rescheduled delay delaying swap swapping switch switching put putting bump bumping
    transfer rest finish finishing instead train training tomorrow tmrw tmr go come do lift change workout
    work catch make better works"""
)
_WILL_TRAIN = _words(
    r"(?:ill|i will|will|gonna|going to|im|i am|gotta|plan to|planning to|want to|lets|let me|can i"
    r"|could i|may i|can we|could we|i can|i could|have to|need to|id rather|rather|might|ok to|i"
    r"|prefer to|i would|better|wanna)(?: \w+)? (?:train|training|do it|do this|do today"
    r"|do todays(?: \w+)?|do the (?:workout|session|training|gym)|do my (?:workout|session)|doing it"
    r"|doing (?:the|my|todays) (?:workout|session|one)|come|go|going|lift|workout|work out|finish"
    r"|catch up|catching up|make (?:it|that) up|making it up|do legs|do leg day|do that|hit the gym"
    r"|hit the weights|get it done|get to it|do mine|take it|have it|train it|do the rest|make up for it"
    r"|gym)",
)
_NO_TODAY = re.compile(
    r"\b(?:cant|cannot|can not|wont|not|no|couldnt|unable)(?: \w+){0,5} (?:today|tonight|todays)\b"
    r"|\btoday (?:is|s|wont|doesnt|isnt|not|no|was)(?: \w+)? ?(?:out|off|work|possible|good|happening"
    r"|impossible|bad|tricky|full|crazy|a no go|no good|too busy|busy|not possible)\b"
)
_CANT = (
    r"(?:cant|cannot|can not|wont|wont be able to|not able to|unable to|couldnt|could not|not gonna"
    r"|not going to|am not|im not going to|not gonna be able to|will not|wont manage to"
    r"|didnt manage to|cant manage to|dont manage to|dont think i can|dont think ill|not|didnt"
    r"|did not|never)"
)
_SKIP_WORKOUT = _words(
    rf"{_CANT}(?: \w+)? (?:make it|make (?:today|tonight|todays|the gym|training|my workout|the session"
    rf"|this one|to the gym)|train|come|come in|go|workout|work out|get to the gym|get (?:there|in|out"
    rf"|away)|do (?:it|today|todays(?: \w+)?|the workout|my workout|training|the session|gym)|be (?:there"
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
    r"(?:giving|give|gave) (?:it|today|the gym|training|todays workout|tonight|the workout|this one"
    r"|the session) a miss",
    r"(?:day off|off|rest day|resting) today|today(?:s| is) (?:a )?(?:no (?:from|for) me|no go|no)"
    r"|today(?:s| is)? (?:a )?(?:rest day|off|day off|a write off)|not (?:happening )?today"
    r"|not feeling it today|today (?:isnt|is not|wont be|not) (?:happening|possible|going to happen"
    r"|gonna happen)|count me out(?: today)?|im out today|sitting (?:this one|today|it) out"
    r"|didnt make it(?: today| to the gym| yesterday)?|havent been (?:to the gym )?today|gym (?:is"
    r"|was) (?:closed|shut)(?: today)?|cant today|wont today|couldnt today",
)
_SKIP_TRIGGERS = words_of(
    """cant cannot can wont not unable couldnt no skip skipping skipped miss missing missed cancel cancelling
    cancelled bail bailing bailed sit sitting ditch ditching ditched taking take need having took giving
    give gave day off rest today didnt havent gym count out will did never dont blow blew pass passing
    drop could"""
)
_TODAY_WORDS = words_of(
    """today tonight todays tonights it gym train training workout session this morning evening make day come
    tomorrow go yesterday lift skip skipping"""
)
_ILL = _words(
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
    r"(?:sick|ill|flu|covid|fever)(?: (?:today|this week|at the moment|in bed|since|again|atm|now"
    r"|all week|leave|for|still|, no|, cant|, wont|, so)(?: \w+)?)",
    r"in bed with(?: \w+){1,3}|doctor (?:says|said|told me|wants me)(?: \w+){0,4} (?:rest|no (?:training"
    r"|gym|lifting)|stop|break)(?: \w+)*|signed off sick|off sick|in hospital|in the hospital",
)
_ILL_WORDS = words_of(
    """flu covid corona fever cold bug virus poisoning infection bronchitis tonsillitis norovirus pneumonia
    sick ill unwell poorly feverish weather bed doctor hospital temperature gastro shingles attack
    sickness"""
)
_NOT_ILL = re.compile(
    r"\b(?:not (?:sick|ill)|over the (?:flu|cold|bug)|no longer (?:sick|ill)|(?:flu|cold|covid|bug"
    r"|fever) (?:is |has |was )?(?:gone|over|passed|behind)|recovered|better now|sick of|home sick"
    r"|homesick|sick (?:pump|session|workout|set|gains|pr|track|tune|beat)|was (?:sick|ill) last"
    r"|after (?:the |my |a )?(?:flu|cold|covid|bug)|back from|despite|ill (?:do|go|try|be|train|get|have"
    r"|take|send|let|see|skip|move|come|start|add|use|write|keep|make|finish))\b"
)
_AWAY = _words(
    r"(?:im |i am |be |going |gone |ill be |will be |were |we are |we re |am |)(?:away|out of town|abroad"
    r"|travell?ing|on (?:a )?(?:holiday|holidays|vacation|leave|annual leave|trip|business trip|work trip"
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
    r"|(?:please )?pause(?: please)?$|freeze my \w+",
    r"holidays?(?:!|:|,)? (?:till|til|until|from|for)|vacation (?:till|til|until|from|for)|(?:surgery"
    r"|operation)(?: \w+){0,6} (?:weeks?|days?|months?|until|till)|injured(?: \w+){0,4} (?:until|till"
    r"|for # weeks)",
    r"off (?:till|til|until|untill|for (?:#|a|two|the)|#|next week|this week|all week|the whole|from|to"
    r"|a (?:week|fortnight|month|couple))",
)
_AWAY_WORDS = words_of(
    """away town abroad travelling traveling holiday holidays vacation leave trip tour honeymoon country
    office off unavailable gone camping skiing gym training train back home return returning resume
    restart break pause time weeks week days fortnight month hold freeze surgery operation injured out
    till until til untill lifting closed lift months business conference cruise"""
)
_BUSY_WORDS = frozenset({"nights", "busy", "swamped", "shifts", "shift", "injured"})
_STILL = re.compile(
    r"\b(?:still training|still lift\w*|will train|ill train|can still|train(?:ing)? (?:anyway|as usual"
    r"|normally|there)|gym there|hotel gym|found a gym|used|trained|did|got)\b"
)
_UNTIL = re.compile(
    r"\b(?:till|til|until|untill|through|thru|back|return\w*|resum\w*|home|to|before|again|restart|up to)\b"
)
_LENGTH = re.compile(
    r"(?:(?P<n>#)|(?P<a>a|one|another|the next|the whole|this whole|a whole)|(?P<c>a couple of|couple of"
    r"|couple|a few|few|several|some)) (?:more |whole |full |good )?(?P<u>days?|weeks?|wks?|months?"
    r"|fortnights?)\b"
)

_SKIP_VERB = re.compile(
    r"\b(?:(?:leave|left|leaving|stop|stopped|go|quit|finish|finished|home) before|skip|skips|skipped"
    r"|skipping|skippin|skiped|leave out|leaving out|left out|leave off|leaving"
    r"|left off|leave|missed(?: out)?(?: on)?|missing|miss|miss out|drop|dropping|dropped|didnt (?:get to"
    r"|do|get (?:round|around) to|make it to|manage|get|reach|have time for|finish|even do|bother with"
    r"|touch|have (?:the )?(?:time|energy) for)|did not (?:get to|do|manage)|havent done|couldnt (?:do"
    r"|get to|use|fit in|face|be bothered with)|cant do|wont do|not doing|not gonna do|not going to do"
    r"|no time (?:left )?for|out of time (?:for|before)|(?:left|leave|leaving|gave|giving) (?=(?:it|that"
    r"|that one|this one|them|those) (?:out|off|a miss))|without (?:the )?|pass(?:ed|ing)? on"
    r"|never got (?:to|round to|around to)|no(?= (?:\w+ ){0,3}(?:today|tonight|this time))|bail(?:ed"
    r"|ing)? on|omit(?:ted|ting)?|cut(?: out)?|ditch(?:ed|ing)?|scrap(?:ped|ping)?|cancel(?:led|ling)?"
    r"|avoid(?:ing|ed)?|sit(?:ting)? out|ran out of time (?:for|before)|(?:leave|left|stop|stopped|go"
    r"|quit|finish|finished|home) before|taking out|take out|took out|nixed?|axed?|forgot(?: to do)?"
    r"|forgotten)\b"
)
_SKIP_AFTER = re.compile(
    r"\b(?:(?:down )?as (?:skipped|missed|not done)|(?:is|are|was|were|got|been|be) (?:skipped|left out"
    r"|missed|cancelled|dropped|out|not done|a no(?: go| show)?|off)|skipped|skip|a miss|not today"
    r"|didnt happen|not happening|will have to wait|have to wait|not done|left out|no time"
    r"|ran out of time|couldnt do|didnt do|didnt get to (?:it|them)|dropped)\b"
)
_NOT_SKIP = re.compile(
    r"\b(?:dont|never|didnt|not|wont|without|no) (?:want to |wanna |like to |gonna |to |be )?(?:skip\w*"
    r"|miss\w*|leav\w* out|drop\w*)\b"
)
_THAT_ONE = frozenset({"that", "it", "this", "them", "those", "these"})
_SKIP_WORDS = words_of(
    """skip skips skipped skipping skippin skiped leave leaving left missed missing miss drop dropping
    dropped didnt did havent couldnt cant wont not no out without pass passed passing never bail bailed
    bailing omit omitted omitting cut ditch ditched ditching scrap scrapped scrapping cancel cancelled
    avoid avoided avoiding sit sitting ran taking take took nix nixed axe axed forgot forgotten"""
)
_OTHER_ILL = re.compile(
    rf"\b(?:my|our|the|his|her) (?:\w+ )?(?:{PERSONS}|baby|child|toddler|family|girls|boys|boy|twins|dog"
    rf"|cat|children)s? (?:is|are|has|have|had|gets|getting|got|was|were|caught|s|sick|ill|been|came"
    rf"|threw|with)\b|\b(?:kids?|baby|child|daughter|son|dog|wife|husband)(?: is| has| are| got"
    rf"| s)? (?:sick|ill|flu|covid|fever|unwell|the flu|a fever|poorly)\b"
)


def find_wants(
    message: Message,
    named: Sequence[Named],
    days: Sequence[Day],
    questions: Sequence[tuple[int, int]],
    sent: datetime,
) -> Wanted:
    """Return what the client wants done besides the recording of sets; undo and correct are decided
    elsewhere."""
    wants: list[Want] = []
    on: date | None = None
    asks: list[Slot] = []
    line = message.line
    asked = [
        line[message.starts[s] : message.starts[e - 1] + len(_piece(message, e - 1))]
        for s, e in questions
        if e > s
    ]
    in_question = {at for s, e in questions for at in range(s, e)}
    used: list[Named] = []
    skips: list[str] = []

    if message.has(_SKIP_WORDS):
        for name in _skipped(message, named, in_question):
            used.append(name)
            if len(name.names) == 1:
                skips.append(name.names[0])
            elif name.names or not name.weak:
                asks.append("exercise")
        if skips:
            wants.append("skip_exercise")
    if message.has(_MOVE_WORDS):
        move = _move(message, days, sent)
        if move is not None:
            wants.append("move")
            on = move.on
            if on is None:
                asks.append("date")
    if "move" not in wants and (
        message.has(_AWAY_WORDS) or message.has(_ILL_WORDS) or message.has(_BUSY_WORDS)
    ):
        pause = _pause(message, days, sent)
        if pause is not None:
            wants.append("pause")
            on = pause.on
    if not {"move", "pause"} & set(wants) and message.has(_SKIP_TRIGGERS) and message.has(_TODAY_WORDS):
        for _, start, end in message.find(_SKIP_WORKOUT):
            if start in in_question or any(
                n.start >= start and n.end <= end + 1 and not n.weak for n in named
            ):
                continue
            if skips and not message.has(frozenset({"today", "tonight", "gym", "workout", "session"})):
                continue
            if skips and message.texts(start, end) == ["not", "today"]:
                continue
            if _says_workout(message, start, end, named):
                wants.append("skip_workout")
                break
    if message.has(_STOP_TRIGGERS) and (_STOP.search(line) or _STOP_ALONE.search(line)):
        wants.append("stop_messages")
    _questions(message, asked, wants)
    return Wanted(
        tuple(dict.fromkeys(wants)), tuple(dict.fromkeys(skips)), on, tuple(dict.fromkeys(asks)), tuple(used)
    )


_STOP_TRIGGERS = words_of(
    """stop unsubscribe more want need alone turn switch shut dont do never mute silence take opt cancel
    delete remove"""
)


def _piece(message: Message, at: int) -> str:
    return "#" if message.value(at) is not None else message.text(at)


_SAYS_WORKOUT = words_of(
    """today tonight todays gym train training workout session make this day come tomorrow go yesterday lift
    working going lifting coming everything rest whole"""
)


def _says_workout(message: Message, start: int, end: int, named: Sequence[Named]) -> bool:
    words = message.texts(start, end)
    after = message.text(end)
    if any(n.start in {end, end + 1} for n in named) and words[-1] in {
        "it",
        "this",
        "the",
        "that",
        "drop",
        "miss",
        "do",
    }:
        return False
    if (
        words[-1] in {"lift", "go", "train", "come", "training", "lifting"}
        and after
        in {
            "my",
            "a",
            "the",
            "it",
            "anything",
            "more",
            "that",
            "past",
            "below",
            "any",
            "heavier",
            "lower",
            "higher",
            "deeper",
            "faster",
            "for",
        }
        and message.text(end + 1) not in {"gym", "next"}
    ):
        return False
    if (
        after in {"reps", "rep", "#"}
        or message.value(end) is not None
        or message.value(start + 1) is not None
    ):
        return False
    if (
        words[:1] == ["not"]
        and words[-1] in {"go", "come", "training", "lift"}
        and "today" not in message.words
    ):
        return False
    if (
        words[0] in {"never", "not", "didnt", "cant", "couldnt", "wont", "dont", "did", "will", "can"}
        and words[-1] in {"it", "go", "come", "lift"}
        and words[-2:] != ["make", "it"]
    ):
        rest = " ".join(message.texts(end, min(len(message.tokens), end + 4)))
        if not re.search(r"\b(?:today|tonight|gym|training|tomorrow)\b", rest) and words[-1] != "train":
            return False
    if (
        words[0].startswith(("skip", "miss"))
        and message.text(start - 1) == "to"
        and message.text(start - 2)
        not in {
            "have",
            "had",
            "need",
            "going",
            "want",
            "got",
            "decided",
            "forced",
            "able",
            "ok",
            "possible",
            "like",
        }
    ):
        return False
    if words[:2] == ["no", "gym"] and "where" in message.texts(end, end + 2):
        return False
    return bool(set(words) & _SAYS_WORKOUT) or after in {"today", "tonight"}


def _skipped(message: Message, named: Sequence[Named], in_question: set[int]) -> list[Named]:
    """Return the names of the exercises that are left out."""
    found: list[Named] = []
    if _NOT_SKIP.search(message.line) and not re.search(r"\bskipp?(?:ed|ing)\b", message.line):
        return []
    for match, start, end in message.find(_SKIP_VERB):
        if start in in_question or (message.taken[start] and message.taken[start] not in {"exercise"}):
            continue
        verb = match.group()
        first, last = message.sentence_span(start)
        ahead = [n for n in named if end <= n.start < min(last, end + 6)]
        ahead = [n for n in ahead if all(message.value(at) is None for at in range(end, n.start))]
        if verb == "no":
            ahead = [n for n in ahead if not n.weak]
        if ahead and _small_words(message, end, ahead[0].start):
            chain = [ahead[0]]
            for following in ahead[1:] + [n for n in named if n.start >= end + 6 and n.start < last]:
                between = message.texts(chain[-1].end, following.start)
                if (
                    between
                    and all(w in {"and", ",", "the", "or", "&", "n", "plus", "also", "my"} for w in between)
                    and not _followed_by_set(message, following)
                ):
                    chain.append(following)
                else:
                    break
            if _followed_by_set(message, chain[-1]) and verb not in {"skip", "skipped", "skipping"}:
                continue
            if (
                not verb.endswith("before")
                and verb.startswith(
                    (
                        "miss",
                        "drop",
                        "left",
                        "leave",
                        "cut",
                        "no",
                        "leaving",
                        "cant do",
                        "avoid",
                        "without",
                        "forgot",
                    )
                )
                and not _is_left_out(message, verb, chain[-1], last)
            ):
                continue
            found.extend(chain)
        elif message.text(end) in _THAT_ONE and verb.startswith(
            (
                "skip",
                "leav",
                "left",
                "gave",
                "giv",
                "pass",
                "miss",
                "omit",
                "didnt",
                "couldnt",
                "cant",
                "bail",
            )
        ):
            if message.text(end) == "it" and message.text(end + 1) in {"today", "all", "tonight"}:
                pass
            before = [n for n in named if n.start < start and not n.weak]
            if (
                before
                and message.sentence[before[-1].start] >= message.sentence[start] - 1
                and not _followed_by_set(message, before[-1])
            ):
                found.append(before[-1])
        del first
    for _, start, end in message.find(_SKIP_AFTER):
        if start in in_question:
            continue
        before = [n for n in named if n.end <= start and message.sentence[n.start] == message.sentence[start]]
        if (
            before
            and start - before[-1].end <= 4
            and before[-1] not in found
            and _small_words(message, before[-1].end, start)
            and not any(n.start >= end and n.start - end <= 1 for n in named)
        ):
            found.append(before[-1])
            earlier = before[:-1]
            while (
                earlier
                and all(
                    w in {"and", ",", "the", "&"} for w in message.texts(earlier[-1].end, found[-1].start)
                )
                and message.texts(earlier[-1].end, found[-1].start)
            ):
                found.append(earlier.pop())
    unique: list[Named] = []
    for name in found:
        if name not in unique and not any(set(name.names) == set(u.names) for u in unique):
            unique.append(name)
    return sorted(unique, key=lambda n: n.start)


_BETWEEN_SKIP = words_of(
    """the my all of on doing any out to today tonight those these them both remaining rest with a set sets
    second third last final , : put down left got even also again just now some one two more time for -
    other is are was were be being , so gotta had have only please had been completely entirely totally
    finally just then and it today's that machine thing stuff been i have we ive"""
)


def _small_words(message: Message, start: int, end: int) -> bool:
    return all(message.text(at) in _BETWEEN_SKIP for at in range(start, end))


def _followed_by_set(message: Message, name: Named) -> bool:
    """Return whether a number of a set stands right after a name."""
    at = name.end
    while message.text(at) in {"at", "for", "with", ":", "-", "was", "x"}:
        at += 1
    return message.value(at) is not None and message.text(at + 1) not in {"because", "min", "mins", "minutes"}


def _is_left_out(message: Message, verb: str, name: Named, last: int) -> bool:
    after = set(message.texts(name.end, min(last, name.end + 5)))
    if verb in {"no"}:
        return bool(after & {"today", "tonight", "this"})
    if verb in {"left", "leave", "leaving"}:
        return "out" in after or "today" in after
    if verb.startswith(("drop", "cut")):
        return "today" in after or "tonight" in after or not after
    if verb.startswith(("avoid", "without", "forgot")):
        return True
    return True


def _move(message: Message, days: Sequence[Day], sent: datetime) -> Wanted | None:
    """Return a move with its day, None where nothing is moved."""
    coming = [d for d in days if _is_coming(message, d, sent)]
    for match, start, end in message.find(_MOVE):
        words = message.texts(start, end)
        if (
            words[0]
            in {
                "push",
                "pushing",
                "pushed",
                "change",
                "put",
                "moved",
                "move",
                "swap",
                "switch",
                "switching",
                "swapping",
            }
            and not coming
        ) and (
            words[0] not in {"move", "put"}
            or not {
                "workout",
                "training",
                "session",
                "today",
                "todays",
            }
            & set(words)
        ):
            continue
        if message.text(start - 1) in {"didnt", "wouldnt", "couldnt", "dont"} or {
            "houses",
            "house",
            "flat",
            "home",
        } & set(message.texts(end, end + 2)):
            continue
        if not coming and words[0] in {"the", "rest", "finish", "do", "doing"}:
            continue
        if (
            not coming
            and "today" not in message.words
            and "todays" not in message.words
            and not {"workout", "training", "session", "gym"} & set(words)
        ):
            continue
        del match
        return Wanted(on=_day(coming, message, start, sent))
    if not coming:
        return None
    if "instead" in message.words:
        for day in coming:
            first, last = message.sentence_span(day.start)
            if "instead" in message.texts(first, last) and "of" not in {
                message.text(at + 1) for at in range(first, last) if message.text(at) == "instead"
            } - {message.text(day.start)}:
                return Wanted(on=coming_day(day, sent))
            if "instead" in message.texts(first, last):
                return Wanted(on=coming_day(day, sent))
    if _NO_TODAY.search(message.line):
        for day in coming:
            before = message.text(day.start - 1)
            if before in {"on", "for", "to", "the"}:
                before = message.text(day.start - 2)
            if before in _MOVE_COMES_AFTER:
                return Wanted(on=coming_day(day, sent))
    for _, start, end in message.find(_WILL_TRAIN):
        first, last = message.sentence_span(start)
        near = [d for d in coming if start < d.start < last and d.start - end <= 6]
        if len(near) > 1 and message.text(near[0].end) in {"and", ",", "&"}:
            continue
        if (
            near
            and not any(message.value(at) is not None for at in range(end, near[0].start))
            and not re.search(r"\b(?:back|until|till|away)\b", " ".join(message.texts(first, near[0].start)))
        ):
            if (
                message.text(end) in {"to", "for", "on", "with", "up"}
                and near[0].start - end > 2
                and message.text(end + 1) in {"see", "the", "a", "visit", "work", "bed"}
                and message.text(end + 2) not in {"gym", "workout"}
            ):
                continue
            return Wanted(on=coming_day(near[0], sent))
    return None


_MOVE_COMES_AFTER = words_of(
    """, . but so maybe can ill on for do go train it come to and or then rather gonna will is - ; prefer
    better going doing training perhaps instead today ! ok workout session move make going lift think
    might could would i"""
)


def _is_coming(message: Message, day: Day, sent: datetime) -> bool:
    if day.kind in {"last weekday", "vague"} or message.text(day.start - 1) in {
        "since",
        "from",
        "due",
        "after",
        "before",
        "yesterday",
        "by",
    }:
        return day.kind == "next weekday"
    if day.kind == "offset":
        return day.values[0] > 0 and message.text(day.start - 1) not in {"due", "til", "till"}
    if day.kind == "weekday":
        text = message.text(day.end - 1)
        return not text.endswith("ys") or message.text(day.end) in {"instead"}
    return day.kind in {"next weekday", "day of month", "numbers", "date"} and (
        coming_day(day, sent) is not None or day.kind == "next weekday"
    )


def _day(coming: Sequence[Day], message: Message, start: int, sent: datetime) -> date | None:
    sentence = message.sentence[start]
    for day in (*(d for d in coming if message.sentence[d.start] == sentence and d.start >= start), *coming):
        return coming_day(day, sent)
    return None


def _pause(message: Message, days: Sequence[Day], sent: datetime) -> Wanted | None:
    """Return a pause with the day of the return, None where nothing is paused."""
    line = message.line
    ill = None
    if message.has(_ILL_WORDS) and not _NOT_ILL.search(line) and not _OTHER_ILL.search(line):
        ill = _ILL.search(line)
    if ill is not None:
        return Wanted(on=_return_day(message, days, sent, 0))
    if not message.has(_AWAY_WORDS) and not message.has(_BUSY_WORDS):
        return None
    for match, start, end in message.find(_AWAY):
        first, last = message.sentence_span(start)
        text = " ".join(message.texts(first, last))
        words = message.texts(start, end)
        if OTHERS.search(text[: max(0, len(" ".join(message.texts(first, start))))]) and not re.search(
            r"\b(?:i|im|ill|we|my)\b", text
        ):
            continue
        del match
        back = bool(re.search(r"\b(?:back|home|return|resume|restart|again)", " ".join(words)))
        on = _return_day(message, days, sent, start if back else first)
        if back and on is None and not (message.value(end + 1) is not None or message.value(end) is not None):
            continue
        if back and any(
            w in {"squat", "squats", "my", "the"}
            for w in [message.text(start - 1), message.text(end)]
            if w in {"squat", "squats", "my"}
        ):
            continue
        if (
            words[-1] in {"off", "out", "gone", "home"}
            and on is None
            and not _LENGTH.search(line)
            and "week" not in message.words
        ):
            continue
        if on is None and _STILL.search(line):
            continue
        if words[-1] in {"back"} and message.text(end) in {"in"} and on is None:
            continue
        if on is None and not back and not _is_length_or_open(message, start, end, last):
            continue
        return Wanted(on=on)
    if (
        re.search(
            r"\b(?:holidays?|vacation|away|abroad|travell?ing|trip|leave|no gym|no training|on nights"
            r"|night shifts?|nights|off|busy|swamped|injured|closed)\b",
            line,
        )
        and re.search(r"\b(?:till|til|until|back)\b", line)
        and not _STILL.search(line)
    ):
        on = _return_day(message, days, sent, 0)
        return Wanted(on=on) if on is not None else None
    return None


def _is_length_or_open(message: Message, start: int, end: int, last: int) -> bool:
    text = " ".join(message.texts(start, min(last, end + 8)))
    return bool(
        re.search(
            r"\b(?:weeks?|days?|months?|fortnight|holidays?|vacation|leave|break|pause|hold|trip|until"
            r"|till|til|abroad|travell?ing|away|surgery|town|honeymoon|country|closed|shut)\b",
            text,
        )
    ) and not re.search(
        r"\b(?:right away|put away|away from failure|walked away|straight away|pin|ran away|stay away"
        r"|throw away|far away)\b",
        text,
    )


def _return_day(message: Message, days: Sequence[Day], sent: datetime, start: int) -> date | None:
    """Return the day that a pause ends: a day after "till" or "back", or a length counted from today."""
    candidates = [
        d
        for d in days
        if d.start >= start
        and d.kind not in {"last weekday", "vague"}
        and not (d.kind == "offset" and d.values[0] <= 0)
    ]
    cued = [
        d
        for d in candidates
        if any(_UNTIL.match(message.text(at)) for at in range(max(0, d.start - 4), d.end))
    ]
    for day in cued:
        on = coming_day(day, sent)
        if on is not None:
            return on
    line = message.line[message.starts[start] :] if start < len(message.starts) else message.line
    match = _LENGTH.search(line)
    if match is not None and not re.match(r" (?:ago|old|a week|per)", line[match.end() :]):
        unit = match["u"]
        size = (
            7
            if unit.startswith(("week", "wk"))
            else 14
            if unit.startswith("fort")
            else 30
            if unit.startswith("month")
            else 1
        )
        if match["n"]:
            at = message.at((message.starts[start] if start < len(message.starts) else 0) + match.start("n"))
            value = message.value(at)
            count = int(value) if value is not None and value == int(value) and value < 400 else 0
        elif match["a"]:
            count = 1
        else:
            return None
        return sent.date() + timedelta(days=count * size) if count else None
    if "next" in message.words and re.search(r"\bnext week\b", line):
        return sent.date() + timedelta(days=14 - sent.weekday())
    return None


def _questions(message: Message, asked: Sequence[str], wants: list[Want]) -> None:
    """Add what is asked: a plan, a history, help, or else the coach."""
    line = message.line
    if _HELP_ALONE.match(line):
        wants.append("help")
        return
    moved = bool({"move", "pause", "skip_workout", "stop_messages"} & set(wants))
    rest = line
    for text in asked:
        topic = _topic(text)
        if topic is not None and not (
            topic == "ask_coach"
            and moved
            and re.search(
                r"\b(?:tomorrow|instead|move|shift|postpone|day|today|ok|okay|fine|train|monday|tuesday"
                r"|wednesday|thursday|friday|saturday|sunday)\b",
                text,
            )
        ):
            wants.append(topic)
        rest = rest.replace(text, " ", 1)
    for sentence in re.split(r"(?<= [.!?;\n])|\n", rest):
        plain = sentence.strip()
        if not plain:
            continue
        topic = _unmarked(plain, moved=moved)
        if topic is not None:
            wants.append(topic)


def _topic(text: str) -> Want | None:
    """Return what a question asks for; None for small talk."""
    if _SMALL_TALK.search(text) and not _REQUEST.search(text):
        return None
    for pattern, want in _TOPICS:
        if pattern.search(text):
            return want
    return "ask_coach"


_TOPICS: tuple[tuple[re.Pattern[str], Want], ...] = (
    (
        _words(r"how (?:do|should|can|to) (?:i|you) (?:do|perform|breathe|brace|hold|grip|set up)(?: \w+)*"),
        "ask_coach",
    ),
    (_STOP, "stop_messages"),
    (_HELP, "help"),
    (_PLAN, "show_plan"),
    (_HISTORY, "show_history"),
)


def _unmarked(sentence: str, *, moved: bool) -> Want | None:
    """Return what a sentence without the form of a question asks for all the same."""
    words = set(sentence.split())
    ends_asking = sentence.rstrip().endswith("?")
    opens = ends_asking or not words.isdisjoint(_OPENERS)
    for pattern, want in ((_HELP, "help"), (_HISTORY, "show_history"), (_PLAN, "show_plan")) if opens else ():
        match = pattern.search(sentence)
        if (
            match is not None
            and (ends_asking or _opens(sentence, match.start()))
            and (
                ends_asking
                or re.match(
                    r"(?:what|show|send|tell|give|how|list|remind|help|explain|define|which|when|see"
                    r"|meaning|progress|history|my|todays|plan|i dont|dont know|am|resend|pull|view|wats"
                    r"|wtf|are|need|who|stats)",
                    match.group(),
                )
            )
        ):
            return want  # type: ignore[return-value] # literals of the tuple above
    if not words.isdisjoint(_REQUEST_KEYS):
        match = _REQUEST.search(sentence)
        if match is not None and not _NOT_REQUEST.search(match.group()):
            said = match.group()
            if moved and re.search(r"\b(?:tomorrow|instead|move|shift|train)\b", said):
                return None
            if (
                re.match(r"(?:hope|hoping|is|if|was|are|whether)\b", said)
                and not ends_asking
                and not re.match(r"(?:hope|hoping|if|whether|is that|is this|is it)", said)
            ):
                return None
            if re.match(r"(?:do|did|would|will|can|could|should|what)\b", said) and not (
                ends_asking
                or _opens(sentence, match.start())
                or re.match(r"(?:can|could|would|will) (?:you|u|someone)", said)
            ):
                return None
            if (
                re.match(r"i (?:\w+ )?(?:like|love|prefer|need|want|wish)\b", said)
                and re.search(
                    r"\b(?:like|love|need|want|prefer) (?:new|other|less|different|check|a new|this|the"
                    r"|it)\b",
                    said,
                )
                and not re.search(
                    r"\b(?:talk|ask|swap|change|discuss|know|speak|chat|switch|replace)\b", said
                )
            ):
                return None
            return "ask_coach"
    if ends_asking and re.search(r"#(?: (?:reps?|kgs?|lbs?|kilos?|pounds?|today|s))* \?$", sentence):
        return None
    if (
        ends_asking
        and len(words) > 1
        and not _SMALL_TALK.search(sentence)
        and re.search(
            r"\b(?:i|my|me|it|heavy|form|sets?|reps?|weight|normal|ok|okay|pain|rest|days?|squats?|bench"
            r"|rows?|deadlifts?|press|curls?|knees?|back|shoulder|exercise|training|should|why|how|what"
            r"|can)\b",
            sentence,
        )
    ):
        return "ask_coach"
    return None


def _opens(sentence: str, place: int) -> bool:
    """Return whether a place is the beginning of a sentence, or comes after a greeting or a pause."""
    before = sentence[:place].strip()
    return (
        before == ""
        or before.endswith((",", ":", "-"))
        or before.split()[-1]
        in {
            "please",
            "pls",
            "hi",
            "hey",
            "hello",
            "coach",
            "and",
            "so",
            "ok",
            "okay",
            "um",
            "uh",
            "but",
            "also",
            "btw",
            "just",
            "sorry",
            "can",
            "you",
            "u",
            "now",
            "then",
            "me",
            "yo",
            "quick",
            "question",
            "ps",
            "wait",
            "hmm",
            "still",
        }
    )


_UNDO_TRIGGERS = words_of(
    """undo scrap scratch delete remove cancel erase forget ignore bin discard void strike disregard drop
    clear revert retract withdraw take mistake accident wrong sent pressed hit didnt did havent never
    doesnt shouldnt does dont nevermind mind not mine nonsense error meant"""
)


def find_undo(message: Message) -> tuple[int, int] | None:
    """Return the words that take back the last record, as a span of tokens; None where there are none."""
    if not message.has(_UNDO_TRIGGERS):
        return None
    for _, start, end in message.find(_UNDO):
        if (
            message.text(start - 1) in {"dont", "didnt", "cant", "to", "never", "not"}
            and message.text(start - 1) != "to"
        ):
            continue
        if message.taken[start] and message.taken[start] not in {"a question", "exercise"}:
            continue
        return start, end
    return None
