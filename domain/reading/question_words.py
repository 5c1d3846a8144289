"""Words of questions and requests, as data: what is help, a history, a plan, small talk, or for the coach."""

import re

from domain.reading.words import words_of

WORD_BEGINS = r"(?<![^ \n])"

WORD_ENDS = r"(?![^ \n])"


def said(*patterns: str) -> re.Pattern[str]:
    """Return a pattern that finds any of some turns of phrase, each of whole words."""
    return re.compile(WORD_BEGINS + "(?:" + "|".join(patterns) + ")" + WORD_ENDS)


HELP = said(
    r"how (?:does|do|is) (?:this|it|the|that|you|this thing|your)(?: \w+){0,3} (?:work|works|function"
    r"|meant to work|supposed to work)",
    r"how (?:this|it|the bot|that)(?: \w+)? works?",
    r"what (?:can|do|should|could|am i supposed to|shall) (?:i|we|you)(?: even)? (?:type|write|say to you"
    r"|tell you|text(?: you| here)?|send(?: you)?|ask you|enter|do here|do with you|use you for)",
    r"what (?:can|could|do) (?:you|u|this(?: bot| thing)?|the bot|it) (?:do|understand|know)",
    r"what (?:is (?:the )?)?(?:means?|meaning)(?: of)?(?: \w+){1,4}",
    r"what(?:s| is| does| do| are| was| r)?(?: the| a| an)?(?: \w+){1,4} (?:mean|means|stand for"
    r"|stands for|supposed to mean)",
    r"(?:what(?:s| is| are| was)|wats|wtf is|define|explain)(?: a| an| the| this| that| these)? (?:rir"
    r"|rpe|amrap|superset|supersets|deload|1rm|rm|e1rm|negatives?|tempo|hold|static hold|drop ?sets?"
    r"|failure|warm ?up|rest day|personal best|pb|pr|layoff|rep range|reps?|sets?|lowering only"
    r"|double progression|stall|to failure|verdict|target|rdl|ohp|bss|emom|doms|superset mean)(?: (?:mean"
    r"|thing|thingy|about|stuff|again|anyway))?",
    r"(?:meaning|definition) of(?: \w+)+",
    r"how (?:do|can|should|must|shall|may|to)(?: i| we)? (?:log|enter"
    r"|report|record|submit|undo|correct|change|delete"
    r"|edit|fix|note|write(?: it| this| that| down)?|tell you|type|send (?:you"
    r"|my|the|a|in)|put in|text you|use (?:this"
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

HELP_ALONE = re.compile(r"^(?:/ ?)?(?:help|menu|commands?|info)(?: me| please| pls)?(?: [!.?])*$")

HISTORY = said(
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
    r"how did (?:my|the) (?:\w+ ){1,4}?go(?= \?|$| (?:last|on|before|yesterday|today|previous\w*))(?: \w+)*",
    r"how did (?!you|your)(?:\w+ ){1,3}?go (?:last|before|yesterday|previous\w*)(?: \w+)*",
    r"what (?:was|were) (?:the|my)(?: \w+){0,2} (?:weights?|load|reps|numbers?|score)(?: \w+)* (?:last"
    r"|before|previous\w*)(?: \w+)*",
)

PLAN = said(
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
    r"|(?:what now|now what)(?= \?|$)"
    r"|what to (?:beat|do today|do next)(?: \w+)*|what comes (?:next|after)(?: \w+)*",
)

SMALL_TALK = said(
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

REQUEST = said(
    r"(?:can|could|would|will) (?:you|u|ya|someone|we|the coach) (?:please |pls |maybe |perhaps "
    r"|also )?(?:check|look|watch|tell|explain|help|change|swap|adjust|give|call|ring|phone|have a|take a"
    r"|review|make|let|send|advise|talk|update|reduce|increase|lower|add|put|see|show me how|recommend"
    r"|suggest|come|meet|chat|speak|set|write|go over|switch|replace|remove|move|find|think|confirm|ask"
    r"|get|do|start|consider|assess|rate|comment|pass|program|programme|build|include|shorten|drop|plan"
    r"|cut)(?: \S+)*",
    r"(?:please|pls|plz|kindly) (?:check|look|watch|tell me|explain|advise|call|ring|review|have a look"
    r"|take a look|swap|change|adjust|let me know|help|give me|look at|pass|ask|give|make|replace|send my"
    r"|contact)(?: \S+)*",
    r"(?:swap|switch|replace|rotate|add|include|put) (?:\S+ ){1,6}(?:next time|next week|from now on"
    r"|in (?:the )?future)(?: \S+){0,2}",
    r"(?:tell|teach|show) me how to(?: \S+)*",
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

OPENERS = words_of(
    """what show send tell give how list remind help explain define which when see meaning progress history
    my todays plan dont am resend pull view wats wtf are need who stats whats i workout targets"""
) - {"my", "i", "are", "am"}

REQUEST_KEYS = words_of(
    """teach show can could would will please pls plz kindly let tips advice thoughts ideas idea suggestions
    suggestion feedback opinion guidance pointers cues input call ring phone text contact think reckon
    recommend suggest sure certain unsure wondering curious wonder know hope hoping normal ok okay fine
    bad safe form check checking technique look question questions quick qq q tell ask coach should what
    like want need love prefer wish talk swap change discuss speak chat switch replace alternative
    alternatives worth agree heavy light much many few fast slow low little right wrong good alright
    enough dangerous correct allowed problem issue weird usual common expected meant supposed request
    worry concern message"""
)

NOT_REQUEST = re.compile(
    r"\b(?:how (?:many|much) (?:reps|repetitions|sets|times)?|what (?:weight|load) (?:it|that|i|was)"
    r"|the weight|which weight|if (?:it was|they were|it is|its) (?:kg|lbs?|kilos?|pounds?)|kg or|lbs? or"
    r"|kilos? or|pounds? or|if i counted|what (?:it|they) weigh)\b"
)
