"""The small rules for short phrases about a set, each named for what it recognises.

The longest match goes first, then the listed order. A rule is only asked where one of its words stands."""

import re
from typing import Literal

from domain.reading.words import KG_WORDS, LB_WORDS, words_of

MarkKind = Literal[
    "failure",
    "no failure",
    "failed on",
    "rir",
    "body",
    "lowering",
    "same all",
    "same load",
    "up",
    "down",
    "more reps",
    "fewer reps",
    "target",
    "target more",
    "target fewer",
    "done",
    "unknown load",
    "unknown reps",
    "again",
    "same again",
    "zero",
    "all kg",
    "all lb",
    "unit unknown",
    "change",
    "each hand",
    "pin",
    "every set",
    "no set",
]

ORDINALS = {
    "first": 1,
    "second": 2,
    "third": 3,
    "fourth": 4,
    "fifth": 5,
    "sixth": 6,
    "seventh": 7,
    "eighth": 8,
    "ninth": 9,
    "tenth": 10,
    "eleventh": 11,
    "twelfth": 12,
    "thirteenth": 13,
    "fourteenth": 14,
    "fifteenth": 15,
    "sixteenth": 16,
    "seventeenth": 17,
    "eighteenth": 18,
    "nineteenth": 19,
    "twentieth": 20,
    "1st": 1,
    "2nd": 2,
    "3rd": 3,
}

_ORDINAL = "(?:" + "|".join(ORDINALS) + "|# (?:st|nd|rd|th)|#(?= rep\\b)|rep #|number #|#)"

_U = r"(?: (?P<u>kgs?|kilos?|lbs?|pounds?))?"

_REPS = r"(?:reps?|repetitions?|times)"

_LAST = (
    r"(?:last (?:time|week|weeks|session|workout|one|times?|training)|before|the last time"
    r"|the previous (?:time|one|session|workout)|previous(?:ly)?|my last(?: one)?|the last one"
    r"|last mondays?|last)"
)

RULES: tuple[tuple[MarkKind, re.Pattern[str]], ...] = (
    (
        "rir",
        re.compile(
            r"\brir (?:of |was |: |= |about |around )?(?P<n>#)(?! - #)|(?P<m>#) rir\b(?! (?:of "
            r"|was |: |= )?#)|(?P<k>#)(?: (?:good |more |full )?(?:reps?|repetitions?"
            r"|more))?(?: left| still| or so)? in (?:the )?(?:tank|reserve|me|hand)\b"
            r"|(?P<l>#)(?: reps?| repetitions?| more)? left(?: in (?:me|the tank))?(?= "
            r"|$)(?! (?:side|leg|arm|hand|and|to|over|on|,? right|right))|\b(?:could|couldve"
            r"|could have|can|had)(?: \w+){0,3} (?P<o>#) more(?: reps?)?(?: in me| in the tank"
            r"| left)?\b(?! (?:than|kg))|(?P<q>#)(?: reps?| repetitions?)? (?:short of|away from"
            r"|before|shy of|off) (?:failure|failing)\b|\breserve (?:of )?(?P<r>#)"
        ),
    ),
    (
        "rir",
        re.compile(
            r"(?:@ )?\brpe (?:of |was |: |= |about |around |@ |at )?(?P<rpe>#)(?! - #)(?: / 10)?"
            r"|(?:@ )?(?P<rpe2>#) rpe\b(?! (?:of |was |: |= )?#)"
        ),
    ),
    (
        "failed on",
        re.compile(
            rf"\b(?:failed|failing|fail|died|stuck|missed|lost|got pinned|pinned|(?:couldnt"
            rf"|could not|cant|cannot|didnt|did not|failed to|wasnt able to) (?:finish|lock out"
            rf"|get|complete|do|make|hit|manage)|grinded out on|stalled|gave out|broke down"
            rf"|collapsed|dropped)(?: (?:it|the bar|halfway|half way|midway|mid|at|on|in|during"
            rf"|with|attempting|trying|up|through|just|for|badly))* (?:the "
            rf"|my )?(?P<o>{_ORDINAL})(?: reps?| one)?(?= |$)(?! (?:kgs?|lbs?|kilos?|pounds?|x"
            rf"|sets?) )|(?<![^ ])(?P<o2>{'|'.join(list(ORDINALS)[5:])}|# (?:st|nd|rd"
            rf"|th))(?: rep| one)? (?:wouldnt go|didnt go|failed|didnt move|wouldnt move"
            rf"|got stuck|died|was a fail|wasnt happening|just died|stalled)\b"
        ),
    ),
    (
        "no failure",
        re.compile(
            r"\b(?:(?:well |way |just |a bit |a little |far )?(?:short of|shy of|away from|before"
            r"|not to|not quite to|not at|nowhere near|without|no|never reached|not) (?:going to "
            r"|reaching |hitting |full |actual |any |true |complete )*(?:failure|failing|fail)"
            r"|(?:didnt|did not|wasnt|havent|dont|never)(?: \w+){0,3} (?:failure|fail|failing)"
            r"|not failed|no failure|stopped short)\b"
        ),
    ),
    (
        "failure",
        re.compile(
            r"\b(?:(?:to|till|til|until|at|reached|hit|unto|in|then|and then) (?:complete |total |full "
            r"|absolute |true |muscle |muscular |technical )?(?:failure|fail|failing)|failure"
            r"|failed(?: (?:the|after|then|at the end|there|hard|miserably|at|on the (?:next|last"
            r"|following)(?: one| rep)?))?|nothing (?:was )?left(?: in the tank| in me| over)?"
            r"|nothing more in (?:the tank|me)|nothing in the tank|empty tank|tank (?:was )?empty"
            r"|(?:couldnt|could not|cant)(?: \w+)? (?:do|get|have done|manage|squeeze out"
            r"|squeeze)(?: out)? (?:another|one more|a single more|any more|anymore|# more|more"
            r"|a th|a #)(?: reps?| one| #)?|(?:not|no) another rep(?: in me)?|all out"
            r"|no more reps in me|went to the limit|absolute max|(?<!grip )gave out)\b"
        ),
    ),
    (
        "zero",
        re.compile(
            r"\b(?:couldnt|could not|cant|cannot|didnt|wouldnt|failed to|unable to|not able to"
            r"|no chance to|didnt manage to|couldnt manage to|tried to|tried and failed to"
            r"|no way to)(?: even| really| quite| get to)? (?:move|lift|budge|press|pull|unrack"
            r"|shift|stand up with|complete a rep (?:at|with)|do a (?:single )?rep (?:at|with)"
            r"|get a (?:single )?rep (?:at|with|on)|get (?:it|the bar) (?:up|off the floor) (?:at"
            r"|with)|get up|squat|bench|deadlift)(?: the| a| up| with| it at| even| at"
            r"| with)* (?P<n>#)(?P<u> (?:kgs?|kilos?|lbs?|pounds?))?(?! (?:reps?|more|th|st|nd|rd"
            r"|x|for|sets|times|min|again))|(?P<m>#)(?P<v> (?:kgs?|kilos?|lbs?"
            r"|pounds?))?(?: \w+)? (?:wouldnt|didnt|did not|would not|wasnt|refused to"
            r"|wont) (?:move|budge|moving|go up|go anywhere|come off the floor|leave the floor"
            r"|budging|come up)\b|(?<!x )(?<!for )(?<!# )(?P<p>#)(?: (?:kgs?|kilos?|lbs?|pounds?))?"
            r"(?: \w+){0,3} , (?:but )?(?:i )?(?:just )?(?:couldnt|could not|cant|cannot)(?: even)? (?:move"
            r"|budge|shift) it(?= [,.!]| $|$)|\bmissed(?: the| a)? (?P<k>#) (?P<w>kgs?|kilos?|lbs?"
            r"|pounds?)(?= |$)(?! (?:for|x))|\b(?:zero|no|# ) reps (?:at|with|on) (?P<o>#)"
        ),
    ),
    (
        "each hand",
        re.compile(
            r"\b(?:each hand|per hand|in each hand|in every hand|a hand|per dumbbell"
            r"|each dumbbell|per db|per side of dumbbells|both hands each)\b"
        ),
    ),
    (
        "up",
        re.compile(
            rf"\b(?:up|went up|added|add|increased|increase|bumped|heavier by)(?: (?:it"
            rf"|the weight|weight|up|by|another|an extra|extra|the load"
            rf"|to it))* (?P<n>#){_U}(?! ?/)(?: (?:more|heavier|extra))?(?: (?:from|on|than|over"
            rf"|since) {_LAST})?|(?P<m>#){_U.replace('<u>', '<v>')} (?:more|heavier|up"
            rf"|extra)(?: weight| load)? (?:than|from|on|over|compared to) {_LAST}"
            rf"|(?P<k>#) (?P<w>kgs?|kilos?|lbs?|pounds?) (?:more|heavier|up|extra)\b(?! reps?)"
        ),
    ),
    (
        "down",
        re.compile(
            rf"\b(?:down|went down|(?:dropped|drop|decreased|reduced|lowered)(?= (?:it "
            rf"|the weight |weight |the load |down )?by)|lighter by|took off)(?: (?:it|the weight"
            rf"|weight|down|by|another|to it|the load))* (?P<n>#){_U}(?: (?:less"
            rf"|lighter))?(?: (?:from|on|than) {_LAST})?"
            rf"|(?P<m>#){_U.replace('<u>', '<v>')} (?:lighter|less)(?: weight)? than {_LAST}"
            rf"|(?P<k>#) (?P<w>kgs?|kilos?|lbs?|pounds?) (?:less|lighter|down|off)\b(?! reps?)"
        ),
    ),
    (
        "target more",
        re.compile(
            r"(?<![^ ])(?:(?P<n>#)(?: reps?| rep)?(?: more)? (?:over|above|better than|past"
            r"|more than|beyond)(?: the| my)? (?:target|plan|goal)|(?:target|plan) (?:plus"
            r"|\+) (?P<m>#)|(?:beat|exceeded|over|above) (?:the )?(?:target|plan"
            r"|goal) by (?P<k>#))(?![^ ])"
        ),
    ),
    (
        "target fewer",
        re.compile(
            r"(?<![^ ])(?:(?P<n>#)(?: reps?| rep)?(?: less| fewer)? (?:below|under|short of|off"
            r"|less than|fewer than|shy of)(?: the| my)? (?:target|plan|goal)|(?:target"
            r"|plan) (?:minus|-) (?P<m>#)|missed (?:the )?(?:target|plan"
            r"|goal) by (?P<k>#))(?![^ ])"
        ),
    ),
    (
        "target",
        re.compile(
            r"\b(?:(?:hit|made|reached|got|nailed|smashed|met|matched|did|achieved|on|as per|per"
            r"|to) (?:the |my |our |all |your )?(?:target|targets|goal)(?! (?:was|is|of|:|by))"
            r"|target (?:hit|reached|met|done|achieved|made|nailed)|(?:exactly |just |precisely "
            r"|all |everything |went |done |done exactly )?(?:as|like|per|to) (?:it was |was "
            r"|its |is |the |you |we |had )*(?:planned|prescribed|plan|programmed|written"
            r"|scheduled|targeted|aimed|aimed for)(?: says| said| it)?|what you (?:wrote"
            r"|prescribed|planned|asked for)|exactly (?:the|what) (?:plan|target|was planned)"
            r"|exactly what the plan (?:said|says|wanted))\b"
        ),
    ),
    (
        "more reps",
        re.compile(
            rf"(?<![^ ])(?:(?:beat|bettered|topped|beaten"
            rf"|improved)(?: \w+){{1,5}} by (?P<n>#)(?: {_REPS})?|(?P<m>#) (?:more "
            rf"|extra )?{_REPS}(?: more| extra| up| better)? (?:than|on|over|from|as|compared to"
            rf"|vs) {_LAST}|(?P<k>#) (?:more|extra|better|up)(?: {_REPS})? (?:than|on|over|from"
            rf"|as) {_LAST}|(?P<o>#) (?:more|extra) {_REPS}|(?P<p>#) {_REPS} (?:more|extra|better"
            rf"|up)|(?:plus|\+) (?P<q>#) {_REPS}|(?:up|plus) (?P<r>#) (?:reps?|repetitions?)"
            rf"|one (?:more|extra)(?: (?:rep|repetition))?(?: than {_LAST})|(?:got |did |managed "
            rf"|with )?an extra (?:rep|repetition)|one better than {_LAST}|(?P<t>#) (?:more"
            rf"|extra)(?: (?!kgs?\b|kilos?\b|lbs?\b|pounds?\b)\w+){{1,3}} than {_LAST})(?![^ ])"
        ),
    ),
    (
        "fewer reps",
        re.compile(
            rf"(?<![^ ])(?:(?P<m>#) (?:fewer|less)(?: {_REPS})?(?: (?:than|from) {_LAST})?"
            rf"|(?P<p>#) {_REPS} (?:fewer|less|down|short)|(?:minus|down) (?P<q>#) {_REPS}"
            rf"|(?P<s>#) (?:short of|below|under) {_LAST}|(?:missed|lost"
            rf"|dropped) (?P<t>#) {_REPS})(?![^ ])(?! than {_LAST} #)"
        ),
    ),
    (
        "same load",
        re.compile(
            r"\b(?:(?:at |with |on |using |kept )?(?:the |that )?same (?:weight|weights|load|kg"
            r"|kilos|lbs|poundage|dumbbells?|dbs?|bells?|bell|kettlebells?|pin|stack|plates|bar"
            r"|height|band|setting|assist|assistance|help|belt|number of kilos|amount)(?: (?:as"
            r"|like|than) (?:on )?(?:last (?:time|week|session|workout)|before|always|usual"
            r"|yesterday))?|weight (?:was )?(?:the )?same(?: as last time)?|(?:weight"
            r"|load) unchanged|no change in weight|unchanged weight|same(?= (?:for )?#))\b"
        ),
    ),
    (
        "same all",
        re.compile(
            rf"\b(?:(?:exactly |just |basically |literally "
            rf"|all )?(?:the )?same(?: \w+)?(?: (?:set|numbers|thing|result|weight and reps"
            rf"|reps and weight|weights? and reps|load and reps|everything|score|stuff))? (?:as"
            rf"|like|than) (?:on )?{_LAST}|(?:same|repeat|repeated|repeating|matched|equalled"
            rf"|equaled|tied|identical to|copy of|like|as|exactly like|level with"
            rf"|did the same as) {_LAST}|same (?:numbers|weight and reps|reps and weight"
            rf"|weight same reps|load same reps|weight , same reps|weight & reps|everything"
            rf"|result) ?(?:as {_LAST})?)\b"
        ),
    ),
    ("same again", re.compile(r"\b(?:the )?(?:exact )?same again\b|\bditto\b")),
    (
        "again",
        re.compile(
            r"(?<![^ ])(?:again|once more|another (?:set|one|round|go)|(?:one|#) more set"
            r"|an extra set|extra set|another # (?:for|x))\b"
        ),
    ),
    (
        "lowering",
        re.compile(
            r"\b(?:lowering only|lowering|only lowering|slow lowers?|negatives?|negs?|eccentrics?"
            r"|eccentric only|lowered only|just the lowering)\b"
        ),
    ),
    (
        "body",
        re.compile(
            r"\b(?:body ?weight(?: only)?|bw|b w|no (?:added |extra |additional )?weights?"
            r"|without (?:any |added |extra |additional )*weights?|unweighted|no load"
            r"|just (?:my )?body ?weight|only (?:my )?body ?weight|own (?:body ?)?weight|just me"
            r"|zero added|weightless|no belt|no plates?|unassisted|without (?:any )?(?:help"
            r"|assistance|assist|band)|no (?:help|assistance|assist))\b"
        ),
    ),
    (
        "unit unknown",
        re.compile(
            r"\b(?:(?:not sure|dont know|no idea|unsure|unclear|cant tell|or was it|could be"
            r"|might be|might have been|maybe)(?: \w+){0,5} (?:kgs?|kilos?|lbs?"
            r"|pounds?) or (?:kgs?|kilos?|lbs?|pounds?)|(?:kgs?|kilos?|lbs?|pounds?) or (?:kgs?"
            r"|kilos?|lbs?|pounds?)|(?:not sure|no idea|dont know) (?:which"
            r"|what) units?(?: \w+){0,3}|in (?:stones?|plates units|poods?)|units? unknown)\b"
        ),
    ),
    (
        "unknown load",
        re.compile(
            r"\b(?:(?:dont (?:know|remember|recall)|do not (?:know|remember)|didnt (?:see|note"
            r"|check|write|look)|cant (?:remember|recall|tell|read|say|see)|cannot (?:remember"
            r"|tell|say)|couldnt (?:read|see|tell|remember)|not sure|no idea|unsure|forgot|forget"
            r"|forgotten)(?: \w+){0,4} (?:weight|heavy|load|kilos|kg|lbs|pounds)(?: (?:it|that"
            r"|this) (?:was|is|were)| was| is)?|unknown weight|no idea (?:what|how) (?:it|they"
            r"|that|the \w+) (?:weigh\w*|is|was)|weight (?:unknown|not marked|unmarked"
            r"|isnt marked|not labelled)|(?:the |a |that )?(?:green|red|blue|black|yellow|purple"
            r"|orange|grey|gray|pink|white|brown|violet|silver|gold|thick|thin|heavy|heaviest"
            r"|light|lightest|lighter|heavier|medium|middle|strong|strongest|weak|weakest|mini"
            r"|long|short|small|big)(?: resistance| loop| mini| tube| rubber)? (?:bands?|tube|one"
            r"|ones|dumbbells?|kettlebell|ball|loop|db|dbs)(?! (?:side|pull|walk|row|press))"
            r"|no idea of the weight|some weight|whatever weight|the (?:big|small|heavy|light"
            r"|middle) (?:dumbbells?|bell|kettlebell|one))\b"
        ),
    ),
    (
        "unknown reps",
        re.compile(
            r"\b(?:lost count|didnt count|forgot to count|forgot (?:the|how many) reps"
            r"|how (?:many|much) (?:reps|repetitions|times)?(?: \w+){0,4} (?:dont|not|cant|unsure"
            r"|forgot)|(?:dont|not sure|cant|forgot|no idea)(?: \w+){0,4} how (?:many"
            r"|much) (?:reps|repetitions|times|i did|i got)|a few reps|some reps|several reps"
            r"|a couple of reps|a bunch of reps|loads of reps|lots of reps|as many as i could)\b"
        ),
    ),
    (
        "all kg",
        re.compile(
            r"\b(?:all|both|everything|weights?|numbers?|those|these)(?: (?:is|are|was|were"
            r"|the weights|of (?:them|it|these|those)))* (?:in )?(?:kgs?|kilos?|kilograms?)\b"
            r"|(?<!# )\b(?:in|its|thats|theyre) (?:kgs?|kilos?|kilograms?)(?= |$)(?! \w+ unit)"
            r"|\( (?:all )?(?:in )?(?:kgs?|kilos) \)"
        ),
    ),
    (
        "all lb",
        re.compile(
            r"\b(?:all|both|everything|weights?|numbers?|those|these)(?: (?:is|are|was|were"
            r"|the weights|of (?:them|it|these|those)))* (?:in )?(?:lbs?|pounds?)\b"
            r"|(?<!# )\b(?:in|its|thats|theyre) (?:lbs?|pounds?)(?= |$)"
            r"|\( (?:all )?(?:in )?(?:lbs?|pounds) \)"
        ),
    ),
    (
        "pin",
        re.compile(
            r"\b(?:pin|hole|slot|notch|plate number|peg)(?: (?:was|is|on|at|in|to|set|hole|no"
            r"|number|nr|the|pin))* (?P<n>#)(?: (?:st|nd|rd|th))?|(?P<m>#) (?:st|nd|rd"
            r"|th) (?:hole|pin|slot)|(?:level|setting) (?P<k>#)"
        ),
    ),
    (
        "every set",
        re.compile(
            r"\b(?:all|each|every)(?: (?:of (?:them|these)|sets?|one|time))? (?=(?:to|till"
            r"|until) (?:failure|fail))"
        ),
    ),
)

_TRIGGERS: tuple[tuple[MarkKind, frozenset[str]], ...] = (
    ("rir", frozenset({"rir", "rpe", "tank", "reserve", "left", "more", "failure", "failing", "me", "hand"})),
    (
        "failed on",
        words_of(
            """failed failing fail died stuck missed lost pinned couldnt could not cant did didnt stalled
            wouldnt
    gave broke collapsed grinded dropped wasnt"""
        ),
    ),
    ("no failure", frozenset({"failure", "fail", "failing", "failed", "stopped"})),
    (
        "failure",
        words_of("""failure fail failing failed left tank couldnt cant another out more limit could max"""),
    ),
    (
        "zero",
        words_of(
            """couldnt could cant cannot didnt wouldnt failed unable refused did would missed reps tried wasnt
            not
    wont"""
        ),
    ),
    ("each hand", frozenset({"hand", "dumbbell", "db", "hands", "dumbbells"})),
    (
        "up",
        frozenset(
            {"up", "plus", "added", "add", "increased", "increase", "bumped", "more", "heavier", "extra"}
        ),
    ),
    ("down", words_of("""down minus dropped drop decreased reduced lighter less took lowered off""")),
    ("target more", frozenset({"target", "plan", "goal"})),
    ("target fewer", frozenset({"target", "plan", "goal"})),
    (
        "target",
        words_of(
            """target targets goal planned prescribed plan programmed written scheduled targeted aimed"
            " wrote asked"""
        ),
    ),
    (
        "more reps",
        frozenset({"more", "extra", "beat", "better", "bettered", "topped", "plus", "up", "+", "beaten"}),
    ),
    (
        "fewer reps",
        frozenset({"fewer", "less", "minus", "down", "short", "below", "under", "missed", "lost", "dropped"}),
    ),
    (
        "same all",
        words_of(
            """same repeat repeated matched equalled equaled tied identical copy like as level repeating"
            " exactly"""
        ),
    ),
    ("same again", frozenset({"same", "ditto"})),
    ("again", frozenset({"again", "another", "more", "extra"})),
    ("same load", frozenset({"same", "unchanged", "change"})),
    (
        "lowering",
        words_of("""lowering lower lowers negative negatives neg negs eccentric eccentrics lowered"""),
    ),
    (
        "body",
        words_of(
            """body bodyweight bw weight weights unweighted load me zero weightless b belt plate plates
            unassisted
    help assistance assist band"""
        ),
    ),
    (
        "unknown load",
        words_of(
            """weight heavy load kilos kg lbs pounds band bands one ones dumbbells dumbbell kettlebell ball
            tube loop
    db dbs idea bell"""
        ),
    ),
    ("unknown reps", frozenset({"count", "reps", "repetitions", "many", "much", "could"})),
    ("unit unknown", frozenset({"or", "unit", "units", "stone", "stones", "pood", "poods"})),
    ("all kg", KG_WORDS),
    ("all lb", LB_WORDS),
    ("pin", frozenset({"pin", "hole", "slot", "notch", "plate", "peg", "level", "setting"})),
    ("every set", frozenset({"all", "each", "every"})),
)

_TRIGGER_OF = dict(_TRIGGERS)

GUARDED_RULES = tuple((kind, _TRIGGER_OF[kind], pattern) for kind, pattern in RULES)

ANY_TRIGGER = frozenset().union(*(words for _, words in _TRIGGERS))
