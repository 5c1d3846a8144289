"""The rules for phrases that count from another set: that of last time, the target, the one before."""

import re

from domain.reading.phrase_kinds import Rule
from domain.reading.words import words_of

_U = r"(?: (?P<u>kgs?|kilos?|lbs?|pounds?))?"

_REPS = r"(?:reps?|repetitions?|times)"

_LAST = (
    r"(?:last (?:time|week|weeks|session|workout|one|times?|training)|before|the last time"
    r"|the previous (?:time|one|session|workout)|previous(?:ly)?|my last(?: one)?|the last one"
    r"|last mondays?|last)"
)

COMPARISON_RULES: tuple[Rule, ...] = (
    Rule(
        "up",
        frozenset(
            {"up", "plus", "added", "add", "increased", "increase", "bumped", "more", "heavier", "extra"}
        ),
        re.compile(
            rf"\b(?:up|went up|added|add|increased|increase|bumped|heavier by)(?: (?:it"
            rf"|the weight|weight|up|by|another|an extra|extra|the load"
            rf"|to it))* (?P<n>#){_U}(?! ?/)(?: (?:more|heavier|extra))?(?: (?:from|on|than|over"
            rf"|since) {_LAST})?|(?P<m>#){_U.replace('<u>', '<v>')} (?:more|heavier|up"
            rf"|extra)(?: weight| load)? (?:than|from|on|over|compared to) {_LAST}"
            rf"|(?P<k>#) (?P<w>kgs?|kilos?|lbs?|pounds?) (?:more|heavier|up|extra)\b(?! reps?)"
        ),
    ),
    Rule(
        "down",
        words_of("down minus dropped drop decreased reduced lighter less took lowered off"),
        re.compile(
            rf"\b(?:down|went down|(?:dropped|drop|decreased|reduced|lowered)(?= (?:it "
            rf"|the weight |weight |the load |down )?by)|lighter by|took off)(?: (?:it|the weight"
            rf"|weight|down|by|another|to it|the load))* (?P<n>#){_U}(?: (?:less"
            rf"|lighter))?(?: (?:from|on|than) {_LAST})?"
            rf"|(?P<m>#){_U.replace('<u>', '<v>')} (?:lighter|less)(?: weight)? than {_LAST}"
            rf"|(?P<k>#) (?P<w>kgs?|kilos?|lbs?|pounds?) (?:less|lighter|down|off)\b(?! reps?)"
        ),
    ),
    Rule(
        "target more",
        frozenset({"target", "plan", "goal"}),
        re.compile(
            r"(?<![^ ])(?:(?P<n>#)(?: reps?| rep)?(?: more)? (?:over|above|better than|past"
            r"|more than|beyond)(?: the| my)? (?:target|plan|goal)|(?:target|plan) (?:plus"
            r"|\+) (?P<m>#)|(?:beat|exceeded|over|above) (?:the )?(?:target|plan"
            r"|goal) by (?P<k>#))(?![^ ])"
        ),
    ),
    Rule(
        "target fewer",
        frozenset({"target", "plan", "goal"}),
        re.compile(
            r"(?<![^ ])(?:(?P<n>#)(?: reps?| rep)?(?: less| fewer)? (?:below|under|short of|off"
            r"|less than|fewer than|shy of)(?: the| my)? (?:target|plan|goal)|(?:target"
            r"|plan) (?:minus|-) (?P<m>#)|missed (?:the )?(?:target|plan"
            r"|goal) by (?P<k>#))(?![^ ])"
        ),
    ),
    Rule(
        "target",
        words_of(
            """target targets goal planned prescribed plan programmed written scheduled targeted aimed
            wrote asked"""
        ),
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
    Rule(
        "more reps",
        frozenset({"more", "extra", "beat", "better", "bettered", "topped", "plus", "up", "+", "beaten"}),
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
    Rule(
        "fewer reps",
        frozenset({"fewer", "less", "minus", "down", "short", "below", "under", "missed", "lost", "dropped"}),
        re.compile(
            rf"(?<![^ ])(?:(?P<m>#) (?:fewer|less)(?: {_REPS})?(?: (?:than|from) {_LAST})?"
            rf"|(?P<p>#) {_REPS} (?:fewer|less|down|short)|(?:minus|down) (?P<q>#) {_REPS}"
            rf"|(?P<s>#) (?:short of|below|under) {_LAST}|(?:missed|lost"
            rf"|dropped) (?P<t>#) {_REPS})(?![^ ])(?! than {_LAST} #)"
        ),
    ),
    Rule(
        "same load",
        frozenset({"same", "unchanged", "change"}),
        re.compile(
            r"\b(?:(?:at |with |on |using |kept )?(?:the |that )?same (?:weight|weights|load|kg"
            r"|kilos|lbs|poundage|dumbbells?|dbs?|bells?|bell|kettlebells?|pin|stack|plates|bar"
            r"|height|band|setting|assist|assistance|help|belt|number of kilos|amount)(?: (?:as"
            r"|like|than) (?:on )?(?:last (?:time|week|session|workout)|before|always|usual"
            r"|yesterday))?|weight (?:was )?(?:the )?same(?: as last time)?|(?:weight"
            r"|load) unchanged|no change in weight|unchanged weight|same(?= (?:for )?#))\b"
        ),
    ),
    Rule(
        "same all",
        words_of(
            """same repeat repeated matched equalled equaled tied identical copy like as level repeating
            exactly"""
        ),
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
    Rule(
        "same again",
        frozenset({"same", "ditto"}),
        re.compile(r"\b(?:the )?(?:exact )?same again\b|\bditto\b"),
    ),
    Rule(
        "again",
        frozenset({"again", "another", "more", "extra"}),
        re.compile(
            r"(?<![^ ])(?:again|once more|another (?:set|one|round|go)|(?:one|#) more set"
            r"|an extra set|extra set|another # (?:for|x))\b"
        ),
    ),
)
