"""Numbers of the client's body that are no loads, as data: measures of health, body weight."""

from domain.reading.other_numbers import LEADS, LIFTED, MASS, Other
from domain.reading.patterns import Pattern
from domain.reading.words import words_of

_HEALTH = (
    Other(
        "a measure of health",
        Pattern(
            """
            {measure} [is|was|of|at|now|around|about|came back|today|:|level|levels]* n:({of_it})
            ({measure}) ....4 (was|from|to|at|down|up) n:# !({lifted})
            """,
            measure="""
                cholesterol|ldl|hdl|glucose|blood (sugar|pressure)|hba1c|ferritin|haemoglobin|hemoglobin
                vitamin d|testosterone|tsh|resting (heart rate|hr|pulse)|vo2 max|vo2max|hrv|bmi|body fat
            """,
            of_it="# [(/|over) #] [, (was|from|down from|up from) #]",
            lifted=LIFTED,
        ),
        always=True,
    ),
    Other(
        "a score",
        Pattern(
            """
            {pain} ..3 # [{of}] [,|and|but]* [now|today|then|down to|went to|is|its|at|a]* n:(# [{of}]) {ends}
            # (/|out of) # (on|with|during|for|in) ..3 [,|and|but]* n:(# (/|out of) #) (on|with|during|for|in)
            """,
            pain=words_of("pain ache aches soreness stiffness discomfort twinge"),
            of="(/|out of) #",
            ends="(>(,|.|!|')'|so|but|and)|$)",
        ),
        most=10,
        always=True,
    ),
)

_BODY_WEIGHT = (
    Other(
        "body weight",
        # Fewer are reps: "chin-ups: bodyweight today 9".
        Pattern("(bodyweight|body weight) today [:|,|is|was|-]* n:# !(x|for|rep|reps|@|+|/|,)"),
        least=35,
    ),
    Other(
        "body weight",
        Pattern(
            """
            {weighed} {leads} # [{mass}] {when} {then} {moved} {by} {much} !({of_a_set})
            # [{mass}] [on|in] the? (scale|scales) {when} {then} {moved} {by} {much} !({of_a_set})
            # [{mass}] (on|said|says|showed) [the|my]* (scale|scales)
            {weighed} {leads} # [{mass}] {when} {then} # [{mass}] (down|up) !(for)
            # {mass} (less|more|lighter|heavier) {since}
            {weighed} {leads} # [{mass}] {when} [,|and]* # [{mass}] (less|more|lighter|heavier) than
            (lost|gained|put on) {about} # [,|.|and|so|now|i]* {weighed} {leads} # [{mass}]
            {weighed} {leads} # [{mass}] !(x|for|rep|reps|@|+|/|,)
            weighed (me|myself|in) {leads} [,|:] # [{mass}] !(x|for|rep|reps|@|+|/|#)
            (lost|gained|lose|gain|put on) {about} # {mass}
            (lost|gained|lose|gain|put on|dropped|took) {about} # [{mass}|inch|inches|cm] (off|from|round|
                around|on) [my|the] {waist}
            # {mass} (off|down|lighter|gone) in {about} (#|a|the|two|three|one) [short]* (day|days|week|
                weeks|month|months)
            (im|i am|me) # {mass} !(x|for|*|@|of)
            # {mass} ({body}|of me)
            # {mass} [# [{mass}]] on the? (scale|scales) !({of_a_set})
            (down|up) {about} # {mass} {since}
            (dropped|lost|gained) {about} # {since} !(x|for)
            (down|up|back|under|over) [to|at|about|around]* # (stone|stones) [#] !(x|for|*|@|rep|reps|/|on)
            """,
            when="[this|on|the|scale|scales|morning|today|now|am|yesterday|evening|first thing]*",
            then="[,|.|!|;|'('|-|and|so|that is|thats|its|which is|im|i am]*",
            by="[about|another|almost|nearly|by|a|nother|only|just]*",
            moved="down|up|lost|gained",
            much="(# [{mass}]|half a {mass})",
            of_a_set="x|for|*|@|rep|reps|/",
            weighed="""
                weighed|weigh|weighing|weighs|weighin|weigh in|scale|scales
                <!(without|no|added|extra|additional|same) weight ((is|was) !(# [{mass}] (
                    actually|really|sorry|in fact))|today)
                (bodyweight|body weight) (is|was|of|at|now)
                bw (is|was|:|=|now|today)
                (stepped|stood|hopped|jumped|got) on the scale [this (morning|evening)|today] [,|:|-|and]*
                (stepped|stood|hopped|jumped|got) on the scales [this (morning|evening)|today] [,|:|-|and]*
                im at|i am at|im down to|im up to
            """,
            about="[about|another|almost|nearly]",
            since="""
                since|this (week|month|year)|in (a|the|#|two|three)|over|already|so far|overall|on the scale
            """,
            body="body weight|bodyweight|bw",
            waist=words_of("waist belly middle hips bum tummy gut waistline"),
            leads=LEADS,
            mass=MASS,
        ),
        always=True,
    ),
    Other(
        "a body weight",
        Pattern(
            """
            {body} [is|was|at|:]* # [{mass}] {when} {then} {moved} {by} (# [{mass}]|half a {mass})
            {body} # [{mass}] (this (morning|am|evening)|today|now|currently|before breakfast|on the scale)
            {body} # [{mass}] (>(.|;|,|'\n'|'('|')'|and)|$)
            waist [size]* [is|was|at|now|:|measured|down to]* # [cm|in|inches]*
            {body} (down|up|back|now|steady) [to|at|around]* # !(x|for)
            """,
            body="body weight|bodyweight|bw",
            when="[this|morning|today|now|am|yesterday|evening]*",
            then="[,|.|!|;|'('|-|and|so|thats|its]*",
            moved="down|up|lost|gained",
            by="[about|another|almost|nearly|by|only|just]*",
            mass=MASS,
        ),
        least=40,
        always=True,
    ),
)

OF_THE_BODY = (*_HEALTH, *_BODY_WEIGHT)
