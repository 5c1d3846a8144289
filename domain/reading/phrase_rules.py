"""All rules for short phrases about a set, in their order.

The longest match goes first, then the listed order. Phrases about effort and phrases that compare have their
own files; here stand those that say how a load is counted and what is not known.
"""

import re

from domain.reading.comparison_rules import COMPARISON_RULES
from domain.reading.effort_rules import EFFORT_RULES
from domain.reading.phrase_kinds import Rule
from domain.reading.words import KG_WORDS, LB_WORDS, words_of

_LOAD_RULES: tuple[Rule, ...] = (
    Rule(
        "each hand",
        frozenset({"hand", "dumbbell", "db", "hands", "dumbbells"}),
        re.compile(
            r"\b(?:each hand|per hand|in each hand|in every hand|a hand|per dumbbell"
            r"|each dumbbell|per db|per side of dumbbells|both hands each)\b"
        ),
    ),
    Rule(
        "lowering",
        words_of("""lowering lower lowers negative negatives neg negs eccentric eccentrics lowered"""),
        re.compile(
            r"\b(?:lowering only|lowering|only lowering|slow lowers?|negatives?|negs?|eccentrics?"
            r"|eccentric only|lowered only|just the lowering)\b"
        ),
    ),
    Rule(
        "body",
        words_of(
            """body bodyweight bw weight weights unweighted load me zero weightless b belt plate plates
            unassisted help assistance assist band"""
        ),
        re.compile(
            r"\b(?:body ?weight(?: only)?|bw|b w|no (?:added |extra |additional )?weights?"
            r"|without (?:any |added |extra |additional )*weights?|unweighted|no load"
            r"|just (?:my )?body ?weight|only (?:my )?body ?weight|own (?:body ?)?weight|just me"
            r"|zero added|weightless|no belt|no plates?|unassisted|without (?:any )?(?:help"
            r"|assistance|assist|band)|no (?:help|assistance|assist))\b"
        ),
    ),
    Rule(
        "unit unknown",
        frozenset({"or", "unit", "units", "stone", "stones", "pood", "poods"}),
        re.compile(
            r"\b(?:(?:not sure|dont know|no idea|unsure|unclear|cant tell|or was it|could be"
            r"|might be|might have been|maybe)(?: \w+){0,5} (?:kgs?|kilos?|lbs?"
            r"|pounds?) or (?:kgs?|kilos?|lbs?|pounds?)|(?:kgs?|kilos?|lbs?|pounds?) or (?:kgs?"
            r"|kilos?|lbs?|pounds?)|(?:not sure|no idea|dont know) (?:which"
            r"|what) units?(?: \w+){0,3}|in (?:stones?|plates units|poods?)|units? unknown)\b"
        ),
    ),
    Rule(
        "unknown load",
        words_of(
            """weight heavy load kilos kg lbs pounds band bands one ones dumbbells dumbbell kettlebell
            ball tube loop db dbs idea bell"""
        ),
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
    Rule(
        "unknown reps",
        frozenset({"count", "reps", "repetitions", "many", "much", "could"}),
        re.compile(
            r"\b(?:lost count|didnt count|forgot to count|forgot (?:the|how many) reps"
            r"|how (?:many|much) (?:reps|repetitions|times)?(?: \w+){0,4} (?:dont|not|cant|unsure"
            r"|forgot)|(?:dont|not sure|cant|forgot|no idea)(?: \w+){0,4} how (?:many"
            r"|much) (?:reps|repetitions|times|i did|i got)|a few reps|some reps|several reps"
            r"|a couple of reps|a bunch of reps|loads of reps|lots of reps|as many as i could)\b"
        ),
    ),
    Rule(
        "all kg",
        KG_WORDS,
        re.compile(
            r"\b(?:all|both|everything|weights?|numbers?|those|these)(?: (?:is|are|was|were"
            r"|the weights|of (?:them|it|these|those)))* (?:in )?(?:kgs?|kilos?|kilograms?)\b"
            r"|(?<!# )\b(?:in|its|thats|theyre) (?:kgs?|kilos?|kilograms?)(?= |$)(?! \w+ unit)"
            r"|\( (?:all )?(?:in )?(?:kgs?|kilos) \)"
        ),
    ),
    Rule(
        "all lb",
        LB_WORDS,
        re.compile(
            r"\b(?:all|both|everything|weights?|numbers?|those|these)(?: (?:is|are|was|were"
            r"|the weights|of (?:them|it|these|those)))* (?:in )?(?:lbs?|pounds?)\b"
            r"|(?<!# )\b(?:in|its|thats|theyre) (?:lbs?|pounds?)(?= |$)"
            r"|\( (?:all )?(?:in )?(?:lbs?|pounds) \)"
        ),
    ),
    Rule(
        "pin",
        frozenset({"pin", "hole", "slot", "notch", "plate", "peg", "level", "setting"}),
        re.compile(
            r"\b(?:pin|hole|slot|notch|plate number|peg)(?: (?:was|is|on|at|in|to|set|hole|no"
            r"|number|nr|the|pin))* (?P<n>#)(?: (?:st|nd|rd|th))?|(?P<m>#) (?:st|nd|rd"
            r"|th) (?:hole|pin|slot)|(?:level|setting) (?P<k>#)"
        ),
    ),
    Rule(
        "every set",
        frozenset({"all", "each", "every"}),
        re.compile(
            r"\b(?:all|each|every)(?: (?:of (?:them|these)|sets?|one|time))? (?=(?:to|till"
            r"|until) (?:failure|fail))"
        ),
    ),
)

RULES = (*EFFORT_RULES, *COMPARISON_RULES, *_LOAD_RULES)

ANY_TRIGGER = frozenset().union(*(rule.triggers for rule in RULES))
