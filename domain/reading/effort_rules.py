"""The rules for phrases about effort: reps left, failure, and the rep or the load at which a set failed."""

import re

from domain.reading.phrase_kinds import Rule
from domain.reading.words import words_of

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

_LEFT_OVER = frozenset({"rir", "rpe", "tank", "reserve", "left", "more", "failure", "failing", "me", "hand"})

EFFORT_RULES: tuple[Rule, ...] = (
    Rule(
        "rir",
        _LEFT_OVER,
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
    Rule(
        "rir",
        _LEFT_OVER,
        re.compile(
            r"(?:@ )?\brpe (?:of |was |: |= |about |around |@ |at )?(?P<rpe>#)(?! - #)(?: / 10)?"
            r"|(?:@ )?(?P<rpe2>#) rpe\b(?! (?:of |was |: |= )?#)"
        ),
    ),
    Rule(
        "failed on",
        words_of(
            """failed failing fail died stuck missed lost pinned couldnt could not cant did didnt stalled
            wouldnt gave broke collapsed grinded dropped wasnt"""
        ),
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
    Rule(
        "no failure",
        frozenset({"failure", "fail", "failing", "failed", "stopped"}),
        re.compile(
            r"\b(?:(?:well |way |just |a bit |a little |far )?(?:short of|shy of|away from|before"
            r"|not to|not quite to|not at|nowhere near|without|no|never reached|not) (?:going to "
            r"|reaching |hitting |full |actual |any |true |complete )*(?:failure|failing|fail)"
            r"|(?:didnt|did not|wasnt|havent|dont|never)(?: \w+){0,3} (?:failure|fail|failing)"
            r"|not failed|no failure|stop(?:ped|ping)? (?:\w+ )?short(?: of (?:\w+ )?(?:failure|failing))?)\b"
        ),
    ),
    Rule(
        "failure",
        words_of("""failure fail failing failed left tank couldnt cant another out more limit could max"""),
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
    Rule(
        "zero",
        words_of(
            """couldnt could cant cannot didnt wouldnt failed unable refused did would missed reps tried
            wasnt not wont"""
        ),
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
)
