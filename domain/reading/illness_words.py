"""Turns of phrase for an illness, as data: the client's own, another's, and what only sounds like one."""

from decimal import Decimal

from domain.reading.patterns import Pattern
from domain.reading.words import PERSON_WORDS, words_of

AILS = words_of("dizzy dizziness fainted faint palpitations numb numbness collapsed")
"""Words of danger, beside which "sick" and "what do I do" mean another thing."""

_BAD = words_of(
    "the a an some really this that his her their bad nasty awful horrible proper stinking rotten full blown"
)
_ILLNESS = """
    flu|lurgy|grippe|man flu|stomach flu|covid|corona|cold|head cold|fever|temperature|temp of #
    migraine attack|shingles|chickenpox|chicken pox|shivers|chills|laryngitis|glandular fever
    bug|stomach bug|tummy bug|sickness bug|virus|norovirus|gastro|food poisoning
    infection|chest infection|throat infection|sinus infection|bronchitis|tonsillitis|pneumonia
"""

ILL = Pattern(
    """
    {have} [{bad}]* {illness}
    {feel} [{very}]* (sick|ill|unwell|poorly|under the weather|feverish) !(of|pump|session|workout|pr|set)
    (sick|ill) as a (dog|parrot)
    (sick|ill|flu|covid|fever) {now}
    in bed with _
    (been|stuck|lying|ill|sick) in bed (since|with|all|for)
    ^ [{bad}]* {illness} (,|.|!|so|and|since|been|in|again|no|cant|$)
    full of cold|^ (ill|sick|poorly) [.|!|again|today]* $
    ^ [sorry|hi|hey|hello|coach|,|just]* (ill|sick|poorly|unwell|not well) [again] (,|.|!|;|-|:) [so] >(
        {rests})
    ^ [sorry|hi|hey|hello|coach|,|just]* (ill|poorly|unwell|not well) [again|today]* (,|.|!|;|'\n')
    (,|.|;|!|-|but|'\n') [still|a bit|a little]* (ill|poorly|unwell) [today|again|now|though|,]* [.|!] $
    (doctor|doc|physio) (says|said) no (training|gym|lifting|sport)
    doctor (says|said|told me|wants me) ..4 (rest|no (training|gym|lifting)|stop|break)
    off sick|sick leave|signed off [sick|work|by]*|throwing up [since|all|everything|today|now]
    ^ [i|ive|just]* tested positive|feeling [_] , {bad} (cold|flu)
    (lying|not well ,|unwell ,) in bed
    [the|man]* (flu|covid) (got|hit|has|caught) me
    doctor (forbade|forbids|forbid|banned) ..2 (training|train|gym|sport|lifting)
    in [the] hospital
    {surely_ill} [i] (think|guess|suspect|reckon|fear|probably|maybe)
    {turns_out} [{bad}|definitely|probably|just|actually]* {surely_ill} !(season|jab|jabs|shot|vaccine|going)
    """,
    rests=words_of(
        """will ill i well no cant wont sorry in staying going let not need resting rest see bed hope
        back taking might pausing talk hopefully dont"""
    ),
    turns_out="its|it is|it s|turns out|turned out to be|its only|is it",
    surely_ill="""
        flu|lurgy|grippe|man flu|stomach flu|covid|corona|shingles|chickenpox|glandular fever|norovirus
        gastro|food poisoning|bronchitis|tonsillitis|pneumonia|(stomach|tummy|sickness) bug
    """,
    have="""
        got|have|ive|has|having|with|w|down with|came down with|coming down with|still|fighting
        caught|catched|picked up|hit by|struck by|knocked out by|floored by|suffering from
        tested positive for|laid up with|(gave|given|giving) me
    """,
    bad=_BAD,
    illness=_ILLNESS,
    feel="""
        im|i am|was|been|i feel|feel|feeling|woke up|fell|fallen|got
        still|really|quite|so|pretty|too|totally
    """,
    very="a bit|really|so|too|very|quite|pretty|totally|super|properly|extremely|still",
    now="""
        today|this week|all week|at the moment|atm|now|in bed|since|again|still|for|so
        , (no|cant|wont|so)
    """,
)

NOT_ILL = Pattern(
    """
    (not|no longer) (sick|ill)
    {kin} [_] (was|were|is|are|got|has been|have been) ..1 (sick|ill|unwell|poorly)
    was ..2 (sick|ill|unwell|poorly|under the weather) (last|on|yesterday|over|at the weekend)
    (that|it|this|pump|set|workout|session) (was|is) [so|really|just|absolutely|pretty|properly]* (sick|ill)
    (flu|cold|covid|bug|fever) [is|has|was] (gone !(round|around|through)|over|passed|behind)
    over the (flu|cold|bug)
    after [the|my|a] (flu|cold|covid|bug)
    recovered|better now|back from|despite
    sick of|home sick|homesick
    cold (in|out|outside|here)|with a cold '?'
    (sick|ill) (at|just|from) (the (thought|sight)|thinking|watching)
    sick (pump|session|workout|set|gains|pr|track|tune|beat)
    """,
    kin=PERSON_WORDS | words_of("dog cat"),
)
"""Ill no longer, or not at all: "sick of burpees"."""

FEVER = Pattern(
    """
    (fever|temperature|temp) [is|of|at|was|,|:|around|about|over|up|to|its|now|reading|-]* n:# !({lifted})
    n:# [°|degree|degrees|deg|c|celsius|f|of|,]* (fever|temperature|temp)
    """,
    lifted=words_of("kg kgs kilo kilos lb lbs pound pounds rep reps x for"),
)
"""A fever with its figure."""
FEVERS = ((Decimal("37.2"), 42), (Decimal("99.5"), 108))
"""What a fever measures, from and to, in degrees of either scale."""

I_WILL = Pattern(
    """
    ill - _
    ill [now|still|just|also] (do|go|try|be|train|get|have|take|send|let|see|skip|move|come|start)
    ill [now|still|just|also] (add|use|write|keep|make|finish)
    """
)
"""No illness: "ill do it later"."""

CAUGHT_IT = Pattern(
    """
    ({illness}) ....9 ((so have|and so do) i|me too|i (have|got|caught) it|ive (got|caught) it)
    ({illness}) ....9 (caught up with|got|hit|caught|floored|flattened|found|laid|knocked) me
    ({illness}) ....9 (gave|given|passed) it [on] to me
    (caught|got|have|catched|picked up) (what|whatever) (the|my|our) ..1 _ (had|have|has|got)
    (i (have|got|caught) it (too|also|now|as well)|ive (got|caught) it) ....9 ({illness})
    """,
    illness=_ILLNESS,
)
"""The client is ill of what another had: "the bug my kids had has caught up with me"."""

_ANOTHER = PERSON_WORDS | words_of(
    """baby child toddler family girl boy twins dog cat children one youngest eldest oldest little half bairn
    nipper everybody team office"""
)
_CALLED = words_of("mate mates bro boss man dude buddy pal guys guy lads lad chap one half little trainer")
"""People as whom the coach is spoken to, and words that alone are nobody."""
OTHER_ILL = Pattern(
    """
    (my|our|the|his|her) [_] {another} {other_is}
    {kin} [is|has|are|got|s|off|down|both|all]* (sick|ill|unwell|poorly|feverish|in [the] hospital)
    {kin} ..4 (has|have|got|with|caught) [{bad}]* ({illness})
    <!(i) has [got] [{bad}]* ({illness})
    (one|ones|youngest|eldest|oldest) [s|has|is]* (got|has|with|down with) [{bad}]* ({illness})
    (one|youngest|eldest|oldest) [is|s|has been|been]* (sick|ill|unwell|poorly)
    """,
    another=_ANOTHER | {word + "s" for word in _ANOTHER},
    other_is=words_of("is are has have had gets getting got was were caught s sick ill been came threw with"),
    kin=frozenset(word + s for word in _ANOTHER - _CALLED for s in ("", "s")),
    bad=_BAD,
    illness=_ILLNESS,
)
"""Another person is the one who is ill."""

MAY_I_TRAIN = Pattern(
    """
    (am i|are we) (allowed|ok|okay|fine|safe|good) to (train|lift|work out|come|go)
    (can|could|may|should|shall) (i|we) [still|even|really]* (train|lift|work out|come|go) ..3 with
    is it (ok|okay|safe|fine|alright|bad|wise) to (train|lift|work out) ..3 (with|when|while)
    """
)
"""A question whether to train with an illness, which pauses nothing by itself."""
