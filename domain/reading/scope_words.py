"""Words of what is no record, as data: plans, questions, other people, warm-ups, what was before."""

import re

from domain.reading.words import PERSONS, words_of

OTHER_TRIGGERS = words_of(PERSONS.replace("|", " ")) | words_of(
    "he she they everyone someone somebody hes shes"
)

WARM_TRIGGERS = words_of("""warm warmup warmups warmed warming wu feeler ramp ramped primer""")

HISTORY_TRIGGERS = words_of(
    """last previously used normally usually back year years months old previous current pr pb best record
    max before past"""
)


PLAN_BEFORE = re.compile(
    r"\b(?:going for|go for|gonna|going to|will|ill|want to|wanna|want|wants|aim(?:ing|ed)?|goal"
    r"|my target|target (?:was|is|:|of|says)|the target|plan(?:ning|ned)?|hope|hoping|hoped|try (?:for|to"
    r"|and)|trying (?:for|to)|about to|thinking (?:about|of)|think ill|let me try|supposed to|meant to do"
    r"|meant to be doing|was meant to|were meant to|should (?:be doing|do|have done|hit|get|try)|wanted"
    r"|should have been|shouldve been|ought to have been"
    r"|could have|couldve|would have|wouldve|might have|maybe next|id (?:like|love|have|rather)|if i"
    r"|if we|if you|it says|sheet says|sheet said|app says|app said|programme? says|programme? said"
    r"|says here|you said|you wrote|you put|you told|you had|you want|you wanted|you asked|you gave"
    r"|coach said|coach says|coach wrote|prescribed|on paper|tomorrow|soon|one day|someday"
    r"|dream(?:ing)? of|saving|next time|next week|next session|next workout|next month|by (?:christmas"
    r"|summer|easter|new year)|due to do|scheduled|ready for|looking forward to|aims|preparing for"
    r"|promise|build(?:ing)? (?:up )?to)\b"
)

PLAN_AFTER = re.compile(
    r"\b(?:next time|next week|next session|next workout|next month|tomorrow|soon|one day|some day"
    r"|someday|is the (?:plan|goal|target|aim)|was the (?:plan|goal|target|aim)|in my dreams"
    r"|by (?:christmas|summer|easter|new year)|next (?:monday|tuesday|wednesday|thursday|friday|saturday"
    r"|sunday)|was planned|were planned|is planned|planned)\b"
)

PLAN_TRIGGERS = words_of(
    """going go gonna will ill want wants aim aiming aimed goal target plan planning planned hope hoping
    hoped try trying about thinking think let supposed meant should wanted could couldve would wouldve
    might maybe id if says said wrote put told had asked gave prescribed paper tomorrow soon day someday
    dream dreaming saving next by due scheduled ready forward aims wanna preparing promise build building
    dreams shouldve ought"""
)

RESUME = re.compile(
    r"\b(?:but|only|so(?= #| just| only| went| did| lighter)|did|got|managed|ended up|actual|actually"
    r"|today|this time|instead|then i|so i|hit|settled|stuck|ended|made|in the end|in reality|turned into"
    r"|became|for now|however|was able|now)\b"
)

QUESTION_COMES_AFTER = words_of(
    """. , ! ? \n : ; ( ) - so and but or coach hi hey ok wondering question btw for please um uh sorry then
    also"""
) | {"\n", ""}

QUESTION = re.compile(
    r"(?:should|shall|can|could|would|do|does|did|is|are|am|was|were|will|may|might|what|whats|wats|how"
    r"|hows|why|when|which|who|where|any (?:tips|advice|idea|ideas|thoughts|chance)|isnt|arent|dont you"
    r"|cant i|couldnt i|shouldnt i|have i|has|if|whether|what if|must|ought)(?= (?:i|we|you|u|it|its|that"
    r"|this|the|these|those|my|there|they|anyone|to|a|an|is|are|do|does|did|should|can|could|would|much"
    r"|many|long|often|about|if|kind|sort|weight|heavy|reps|sets|load|exercise|exercises|means?|rest"
    r"|lower|high|low|he|she|was|were|on|exactly|happens|left|next|come|not|good|bad|better|best|have|of"
    r"|for|normal|ok|okay|safe|more|less|#|going|one|up|else|wrong|right|matter|worth|too|s|bench|squat"
    r"|squats|rows|dips|leg|your|any|tips|advice|idea|thoughts|chance|number)(?![^ ]))"
)

QUESTION_TRIGGERS = words_of(
    """should shall can could would do does did is are am was were will may might what whats wats how hows
    why when which who where any isnt arent dont cant couldnt shouldnt have has if whether must ought ?"""
)

QUESTION_FIRSTS = QUESTION_TRIGGERS - {"?"}

ASKING_WITHOUT_MARK = re.compile(
    r"^(?:should|shall|can|could|do|does|is|am|are|what|whats|how|why|when|which|where|any|isnt|would|may"
    r"|might|whether|if)\b"
)

STATEMENT = re.compile(
    r"^(?:is a|was|were|did|will|if|when|which|where|who|have|has|would|might|may|how (?:i|we)|what (?:i"
    r"|we) did)\b"
)

OTHER_SUBJECT = re.compile(
    rf"\b(?:(?:my|our|the|a|some|this|that|another|one|his|her"
    rf"|your)(?: \w+){{0,2}}? )?(?:{PERSONS})\b(?: \S+){{0,6}}? (?:did|does|do|got|gets|benched|benches"
    rf"|benching|lifted|lifts|lifting|squatted|squats|squatting|squat|deadlifted|deadlifts|deadlifting"
    rf"|deadlift|bench|hit|hits|hitting|pressed|presses|pressing|pulled|pulls|pulling|managed|can|curled"
    rf"|curls|curling|rowed|rows|rowing|repped|reps|repping|counted|counts|went|just|was|is|doing|warmed"
    rf"|put|had|has|made|makes|make|loaded|used|uses|tried|with|dipped|moved|smashed|maxed|casually|warming|at|owns"
    rf"|says|said|thinks|cranked|banged|swears|claims|reckons|bet|held|holds)\b"
)

OTHER_PRONOUN = re.compile(
    r"\b(?:he|she|they|everyone|someone|somebody|hes|shes)(?: (?:just|only|even|casually|also|then"
    r"|easily))? (?:did|does|do|got|gets|benched|benches|lifted|lifts|squatted|squats|deadlifted"
    r"|deadlifts|hit|hits|pressed|pulled|managed|can|curled|curls|went|used|uses|was|is|had|has|repped"
    r"|reps|made|makes|warmed|put|moved|counted|says|said|thinks|held|holds)\b"
)

BACK_TO_ME = re.compile(
    r"\b(?:i|me|mine|my turn|my (?:set|sets|bench|squat|deadlift|own|reps)|myself|im|ive|meanwhile i"
    r"|for me|we|anyway|anyways|(?<=, )so)\b"
)

NEXT_TO_ME = re.compile(
    r"\b(?:next to|beside|near|behind|in front of|opposite|with|by|across from|alongside|over|after"
    r"|before|than) (?:me|mine|my \w+)\b"
)

MY_OWN = re.compile(r"\b(?:i|me|mine|myself|ive)\b")

WARM = re.compile(
    r"\b(?:warm ups?|warmups?|warmed ups?|warming ups?|warm up sets?|warmup sets?|wu|feeler sets?|feeler"
    r"|ramp(?:ed|ing)? up|primer)\b"
)

WARM_ENDS = words_of(
    """then working work worked proper real top main actual heavy but afterwards actually after before first
    finally serious counted counting counts followed"""
)

HISTORY = re.compile(
    r"\b(?:last (?:time|week|weeks|month|session|workout|year|monday|tuesday|wednesday|thursday|friday"
    r"|saturday|sunday)|previously|used to|normally|usually|back in the day|a year ago|years ago"
    r"|months ago|(?:my |the )?(?:old|previous|last|current) (?:pr|pb|best|record|max)|(?:pr|pb|best"
    r"|record|max)(?: ever| so far| until now| up to now)? (?:was|is(?! now)|stands)|before (?:it )?was"
    r"|it was"
    r"|in the past)\b"
)

ON_THE_CHEST = re.compile(
    r"\b(?:on|to|off|from|across|touch\w*) (?:the|my) chest\b(?! (?:press|supported|fly|flies|machine|row))"
    r"|\bchest (?:felt|feels|up|was|is)\b"
)
"""The chest as the place where a bar comes to, or how it feels."""

NOW = re.compile(r"\b(?:today|now|this time|but|so|this week|tonight|then|new|currently)\b")
