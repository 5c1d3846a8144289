"""Turns of phrase about what hurts, as data: those that tell of pain, and those that take it back."""

from domain.reading.patterns import Pattern
from domain.reading.words import PERSON_WORDS, words_of

_VERY = """[
    really|absolutely|actually|literally|honestly|proper|properly|fully|totally|still|just|kinda|lowkey
    low key|a bit|a little|always|now|also|pretty|quite|so
]*"""
TROUBLES_ME = Pattern(
    """
    (is|are|was|were|been|being) {very} ((killing|bothering|bugging) me|{complaining})
    (is|are|was|were|been|being) {very} giving me ..2 {trouble}
    (gives|gave|giving) me [some|a lot of|a bit of] {trouble}
    (acting|playing|flared|flaring|acts|plays|played|acted|flares|play|act|flare) up
    (make|makes|making|made|give|gives|giving) me? ..2 (problem|problems|trouble|issues)
    (bothers|hurts|stings|killing|kills|kill|bugging|bugs|bother) me !(softly)
""",
    very=_VERY,
    complaining="""
        acting up|playing up|complaining|in agony|unhappy|screaming|moaning|whinging|protesting|sulking
    """,
    trouble=words_of("trouble grief bother jip gyp"),
)
_JOINT = words_of(
    "elbow elbows knee knees wrist wrists shoulder shoulders hip hips neck back ankle ankles thumb thumbs"
)
WENT = Pattern(
    """
    (something|it) [has|had] {went} >(me? (in|at|on|around|behind|under|near|deep))
    a (pull|pop|snap|tear|tweak|crunch|strain|stab|twang|ping) >((in|at|behind|under|near) (my|the|{place}))
    my [lower|upper] (back|neck|knee|shoulder|hip) [just|has|have] {gave_way} >({where_it_went})
    felt (my|the|something) ..2 (pull|tear|pop|snap|tweak|give)
    (twisted|turned|rolled|jammed) >({mine} (ankle|ankles))
    (twisted|jammed) >({mine} (knee|wrist|elbow|finger|thumb|back|neck))
    (put|threw|thrown|did|done) >({mine} back (out|in) !(side|front|the rack))
    locked up >((my|the) {mine} (back|neck|knee|shoulder|hip))
    have it? bad >((at|in|on) (my|the))
    (in|at) the ....3 it has pulled
    {part} (went|goes) >((ping|twang|pop|snap|crack|crunch) !(....6 {harmless}))
    (tennis|golfers|runners|jumpers|swimmers|frozen) >(elbow|elbows|knee|knees|shoulder|shoulders)
    {joint} {very} [does|do|did] (dont|doesnt|didnt|isnt|arent|wasnt|not) >({very} {pleased} !(me|you))
    {joint} >(kills)
    {joint} >(moaning|complaining|protesting|whinging|sulking|screaming|grumbling|niggling|nagging)
    {joint} (is|are|was|were|s) [really|still]* >(on fire)
    {joint} (feel|feels|felt|feeling) {so} >({awful})
    {joint} [is|was|at|about|around|like|now|still]* >(a # (today|now|when|on|after|.|,|!|$))
    (killed|wrecked|aggravated|irritated|messed up|did in|done in) {mine} {joint} !(workout|day|session)
    {joint} (is|are|was|were) {so} >({awful} !(idea|for|luck|timing|news))
    {joint} (feel|feels|felt|feeling|is|are) like [it|its|they|theyre|is|are|theres|on|full of|_]* {sharp}
    (broke|broken|fractured) >((my|a) [left|right|big|little]* {bone})
""",
    went=words_of(
        """pull pulls go went give gave tear tore snap snapped pop popped pinch twinge strain tweak crunch
        pulled sting stings"""
    ),
    gave_way="went out?|gone|gave (out|way)|is out|locked up",
    mine="[my|the|left|right|lower|upper]*",
    where_it_went="on|in|at|during|again|when|.|,|!|$",
    part=words_of(
        "hamstring hammy quad calf bicep groin knee shoulder elbow wrist ankle hip neck back glute"
    ),
    so="[really|very|so|still|pretty|quite|proper|just|a bit|bit|super|today|now|again]*",
    awful="bad|terrible|awful|horrible|dreadful|nasty",
    place="{part}|left|right|lower|upper|back|chest|arm|leg|hand|foot|thigh|shin|finger|thumb",
    sharp=words_of("glass gravel knives knife nails sandpaper daggers needles fire"),
    joint=_JOINT,
    very="[is|are|was|were|really|still|just|all|too|very|so|at|exactly]*",
    pleased="(like|love|enjoy|agree|happy|pleased|loving)",
    harmless="(no pain|painless|not hurt|doesnt hurt|didnt hurt|fine|nothing)",
    bone=words_of("wrist arm leg ankle foot toe finger thumb hand rib ribs collarbone elbow"),
)
"""Something went somewhere; what tells it ends with the word by which it hurts."""

HURTS_SOMEWHERE = Pattern(
    """
    something [in there] (hurt|hurts|pulled|popped|went|is hurting|painful|tore)
    (sharp|bad|nasty|strong|stabbing|shooting|awful|terrible|weird|severe|sudden) (pain|pains)
    <!(does|will|should) it really? (hurt|hurts) (a lot|badly|bad|like hell|when|on|during|doing)
    in [a lot of|so much] pain
    i (have|had|got|felt|feel) [some|a bit of|a little|quite]* pain ({then}|$)
    ^ [some|a bit of|bit of|had]* pain (when|while|during)
""",
    then=".|,|!|again|today|when|while|during|after",
)
IT_HURTS = Pattern(
    """
    [{ouch}] ((it|that|this) {very} hurts|it {very} hurt) now? [.|!]* $
    {ouch} (it|that|this) {very} (hurt|hurts) [a lot|badly] [.|!]* $
""",
    ouch="(ow|ouch|argh) [,|.|!]*",
    very="[really|still|actually]",
)
"""A sentence that tells nothing else."""

OF_A_MUSCLE = Pattern("<!(not|no|isnt|than) (muscle|muscles)")

FIGURES = Pattern(
    """
    (stop|keep|avoid|prevent) [my|the|me|from]* (elbows|elbow|knees|ribs) [from]* (flaring|caving)
    (elbows|elbow|ribs) [keep|are|still|always|just|from]* (flaring|flare|flared) (out|on|in|during|at|when)
    pain in 'the' (neck|ass|arse|butt|bum|backside|rear|rump)|pain in my (ass|arse|butt|backside)
    (such|what|real|bit of|is|was|are) (a|an) {great} pain !(in (my|the)|{where_it_is})
    (pain|headache) to {task}|headache (to _|for me)
    ({thing}) ....3 (gave|gives|giving|given) me [a|an|such|the|real|proper|total|biggest]* (headache|pain)
    (is|was|were|been|being) [just|such]* one ..2 headache
    !(it|this|that|there|theres|here|what|mine|still) _ is [just|such|really|becoming|getting]* a ..1 headache
    (was|were|been|being) [just|such]* a ..2 headache
    (headache|pain) [,|-]* (figuratively|metaphorically|figure of speech)
    [this|the|that|my] ({thing}) [today|here|again]* (is|was|were) [such|really|just]* (a|an) (headache|pain)
    no pain ,? no gain|no strain no gain|pain cave|feel 'the' pain|good pain|good hurt|growing pains|pain au
    painfully {much}|painfully slow~

    (hurt|hurts|sore|ache|aches|aching|achy|stiff) ..1 in (a|the) (good|best) way|(hurt|hurts) so good
    (hurt|hurts) from [all the] (laughing|smiling|grinning)
    [my] ({dear}|bank account|purse|bank balance) ..1 (hurt|hurts|ache|aches|is hurting)
    (hurt|hurts) (my|the|your|his|her) ({dear}|bank)
    (doesnt|dont|didnt|wouldnt|cant|wont|never) hurt to|wouldnt hurt
    hurts to (look|watch|see|say|admit|think|leave|miss|pay)
    hurting for !(a|#|days|weeks|months|ages|some|about|over)
    {deeds} (is|are|were|was|r) {very} killing me|{deeds} {very} (kill|kills|bother|bothers) me
    screaming (at|kids)

    pulled (it|this|that) off|pulled (through|out|up|over|an all)
    swollen (head|ego)
    # (am|pm|oclock) sharp|(look|looks|looking|looked|stay) sharp
    (sharp|sharper) (knife|knives|suit|shirt|turn|dresser|outfit|focus|contrast|increase)
    sore (loser|subject|point|throat|spot with)|cold sore
    stiff (drink|competition|upper lip|leg|legged)
    pinch [grip|hold|the|plates|plate|with|at|:|-]* # (kg|kgs|kilo|kilos|lb|lbs|s|sec|secs|second|seconds)
    pinch (me|of|grip|hold)|plate (pinch|pinches|pinching|pinched)|at a pinch
    strained (relationship|voice)
""",
    very=_VERY,
    great="[absolute|total|real|right|royal|huge|proper]",
    where_it_is=words_of("here there when near under behind around"),
    thing=words_of("queue machine gym traffic bus app rack weather parking crowd boss work job noise music"),
    task=words_of("park set get load find book carry clean log type reach sort"),
    much=words_of("obvious early long heavy hard boring aware close clear honest late"),
    dear=words_of("wallet pride ego feelings soul heart brain eyes ears"),
    deeds=words_of(
        """stair stairs step steps you this that it work traffic commute heat boss programme program coach
        squats lunges workout exam exams kids"""
    ),
)
"""Figures of speech with words of pain."""

_SEVERAL = frozenset(f"{word}s" for word in PERSON_WORDS)
SOMEBODY_ELSE = Pattern(
    """
    (my|our|his|her|their|the|a|some|this|that|your) ..1 ({person}|{persons})
    {persons}
    <!(like) {person} (has|had|was|got|hurt|pulled|strained|tweaked|fainted|passed)
    {kin} (is|are)
    (my|the|a|another|our) [other|old] {of_the_trade}
    (client|clients|member|members) (before|after|next|beside|behind)
    coach (at|of|in) (the|another)
    <!({joint}) (he|she)|his|her|hers|their|shes|hes
    <!(like) (they|theyre) !({very} {ails})
    cat|cats|dog|dogs|horse
""",
    person=PERSON_WORDS,
    persons=_SEVERAL,
    joint=_JOINT,
    kin=words_of("mum mom dad wife husband hubby son daughter brother sister gran kid kids partner"),
    very=_VERY,
    ails=words_of(
        """hurt hurting ache aching sting stinging burn burning throb throbbing kill killing bother bothering
        pinch pinching sore painful swollen stiff tender click clicking bad worse"""
    ),
    of_the_trade=words_of("coach client clients patient teacher pupil"),
)
"""Another person or an animal, of whom something is told."""

OVER_NOW = Pattern(
    """
    {is_all} ({fine}|chill|alright|healed|cured|happy|sorted) (now|again|today|anymore|though)
    now [its|it is|theyre] ({fine}|all good)
    (pain|pains|headache|headaches|ache|soreness) [is|are|has]* [completely|totally|all|finally|now]* gone
    no longer|not (any more|anymore)|pain free|painfree|painless
    (went|gone) away|(has|is|are|all) gone !({worse})|disappeared|vanished
    cleared up|healed|recovered|settled|back to normal|stopped hurting
""",
    is_all="[is|its|feel|feels|all|are|was|were|seem|seems|totally|completely|much|now]",
    fine=words_of("fine good ok okay better gone great"),
    worse=words_of(
        """all stiff sore numb tender swollen painful achy wrong again tight weird pop ping twang bad worse
        from very so really completely totally"""
    ),
)
LONG_PAST = Pattern("""
    used to|when i was|as a (kid|child|teenager)|childhood|in my (twenties|teens|thirties|youth)
    last (year|month|season|winter|summer|spring|autumn)
    (year|years|yr|yrs|month|months|mths|decade|decades|ages) ago|(years|yrs|months) back
    back in # !(day|days|hour|hours|min|mins|minutes|sec|secs|week|weeks|month|months)
    back then|in the past|old ..2 injury
    (was|in) [back|in]* # , (nothing|none|never|no problems|not once) [again] since
""")
_NO_MORE = (
    "(no|nope|none|negative|nil|never|nothing|n) >(.|,|;|!|')'|/|'\n'|$|thanks|thank|so far|at all|and)"
)
ANSWERED_NO = Pattern("['?'|:|=|-] [no|nope|nah] {no}", no=_NO_MORE)
NO_TO_IT = Pattern("['?'|,]* [no|nope|nah] {no}", no=_NO_MORE)
HAD_NONE = Pattern("i (have|had|got|felt) (none|neither|no such)|none of (it|that|them|those|these)")
STILL = Pattern(
    "still|worse|<!(never) again|(not|never|hasnt|havent|wont|didnt|doesnt) ..2 (go|gone|went) (away|off)"
)
CONDITIONAL = Pattern("""
    if|in case|whenever|unless|should i feel|what happens when|does it mean
    (worried|afraid|scared) (about|that|of|ill|id|i (will|might|would|could|may))
    what (would|could)|(when|how) (would|should|do|will) (i|you|one) (worry|be worried|know)
    (can|could|does|do|will|would) ..3 cause
    avoid|prevent|preventing|so that|(dont|wouldnt) want|before it
    hope|hoping|supposed to|meant to|will|gonna|going to|might|could
""")
"""A pain that is only thought of."""
IF_MY = Pattern("if my")
MAY_I = Pattern("(should|can|could|shall|may|do|must) i|is it (ok|okay|fine|bad|alright|safe)")
"""A question about what hurts already: "should I squat if my knee hurts?"."""
STORY = words_of("movie film series episode novel hero documentary podcast article leaflet checklist lesson")
"""What is told of in a story, a lesson or a list, and of nobody here."""
