"""The words of corrections, as patterns over a message's line. What they mean is decided by their users."""

import re

from domain.reading.words import words_of

THING = (
    r"(?:that|it|this|the last(?: one| set| entry)?|last(?: one| set)|that last(?: one| set)?"
    r"|my last(?: one| set)?|the previous(?: one| set)?|those|they|these|both|all of (?:them|those)"
    r"|all (?:three|two|four|five|#)|the (?:first|second|third|fourth|fifth|other|top|middle)(?: one"
    r"| set)?|(?:set|number) #|# (?:st|nd|rd|th) (?:set|one)|the # (?:st|nd|rd|th)(?: set| one)?"
    r"|first set|second set|third set|last weight|the weight|the reps|the load|weight|reps)"
)
"""What a correction points at."""
_BE = (
    r"(?:was|were|is|are|should be|should have been|shouldve been|should say|should read|needs to be"
    r"|has to be|must be|ought to be|s supposed to be|was supposed to be|was meant to be"
    r"|were meant to be)"
)
MARKERS = re.compile(
    rf"\bmake (?:that|it|those|them|the last(?: one| set)?)(?: a| an)? (?=#|\w|\+|-)|\b(?:should|shouldve"
    rf"|should have|supposed to|meant to|ought to) (?:be|been|have been|say|read|have said)\b|\b(?:i "
    rf"|actually )?meant\b(?! to (?:do|train|go|say hi|ask|text|send|tell))|\bi mean\b"
    r"|\b(?:correction|typo|mistyped|misread|miscounted|mis typed|typed (?:that |it )?wrong"
    r"|wrote (?:that |it )?wrong|wrong (?:number|exercise|weight|reps|load|name|one|unit|day|date)"
    r"|got (?:that|it) wrong|fat fingers?|fat fingered|my mistake|i mixed up|mixed up|mixed them up"
    r"|autocorrect)\b"
    r"|\b(?:oops|whoops|oopsie|sorry|my bad|woops)(?: \S+){0,3}? (?:#|that|it|the last|last)(?![^ ])"
    rf"|\b{THING}(?: \w+)? {_BE}(?: (?:actually|really|in fact|only|just|from|on|at|done|meant|for|the|a"
    rf"|an|not|with|all|both))* (?:#|\w+|\+|-)"
    r"|# (?:\w+ ){0,3}?(?:,|\(|-)? ?(?:and )?not (?:the |a )?(?:#|\w+)|\bnot (?:the |a )?#"
    r"|\b(?:change|correct|fix|edit|update|amend|adjust|replace|switch|put|set|swap)(?: \w+){0,5} (?:to"
    r"|into|with|as|from) (?:#|\w+)"
    r"|^\* ?#|# (?:\w+ )?\*|^\* ?\w+|\bactually (?:(?:it|that) (?:was|is|should be)|it s|i (?:did|got"
    r"|only did|only got|used|had)|(?:did|got|only|its|thats|was|a|used|more like|about|the))* ?(?=#)"
    r"|\b(?:it|that|they|those|these) (?:was|were) (?=#)|\b(?:log|count|record|save|put|mark|file) (?:it"
    r"|that|them|those|this)(?: \w+)? (?:as|under|for|on|down as|to)\b"
    r"|\b(?:instead of|rather than) (?:#|\w+)|\b(?:not|wasnt|werent) \w+(?: \w+)?(?: ,)? (?:but|it was)\b"
)
"""Signs of a correction; each is looked at more closely."""
TRIGGERS = words_of(
    """no nope nah wait make should shouldve supposed meant mean correction typo mistyped misread
    miscounted typed wrote wrong
    got fat mistake mixed autocorrect oops whoops oopsie sorry bad woops that it this last those they
    these both all not change correct fix edit update amend adjust replace switch put set * actually log
    count record save mark file was were second first third instead rather"""
)
"""Words of which a correction has at least one."""
STRONG = re.compile(
    r"\b(?:make (?:that|it|those|them)|should (?:be|say|read|have been|have said)|shouldve been"
    r"|supposed to be|meant|i mean|correction|typo|mistyped|misread|miscounted|typed|wrote|wrong"
    r"|fat finger\w*|my mistake|mixed|autocorrect|oops|whoops|oopsie|woops|my bad|change|correct|fix|edit"
    r"|update|amend|adjust|replace|actually)\b|\*"
)
"""Signs that are no remark about a new set."""
REGRET = re.compile(r"(?:shouldve|should have|supposed to|meant to|ought to) (?:be|been|have been)$")
"""What can be said of a new set as well, that fell short of what was hoped."""
COMPARISON = re.compile(
    r"\b(?:not (?:to failure|sure|bad|easy|great|good|too|so|really|ideal|happy|much|feeling|today|yet"
    r"|only|even|a|the best|my|going|doing|quite|gonna|at all|that|very|sore|tired|pain))\b"
)
"""Remarks with "not" that set no number against another."""
NO_FIRST = re.compile(
    r"^(?:no|nope|nah|wait)(?: ,)?(?: (?:it was|only|just|it is|its|i did|i got|actually"
    r"|wait))* #"
)
INSTEAD = re.compile(r"\binstead of(?: the| a)? (?P<n>#)")
POINTING = frozenset(
    {"that", "both", "all", "first", "second", "third", "last", "previous", "those", "these"}
)
"""Words before an exercise that point at its recorded sets."""
COUNTING = frozenset({"bodyweight", "bw", "assisted", "failure", "negatives", "weight"})
"""Words that say how a load counts or a set ended."""
SEPARATE_SET = re.compile(
    r"\b(?P<w>third|second|fourth|fifth|first) set\b|(?P<n>#) (?:st|nd|rd|th) set\b|\bset (?P<m>#) (?=:|#)"
)
"""A set of an exercise, by its place, with new numbers."""
ALL_OF_THEM = re.compile(
    r"\b(?:both(?! (?:sides|legs|arms|hands))|all (?:of (?:them|those|these|it)|three|two|four|five|sets"
    r"|the sets|my \w+)|(?:those|they|these|the sets|all) (?:were|are|should)|every set|each set"
    r"|make (?:those|them))\b"
)
NTH_SET = re.compile(
    r"\b(?:the )?(?P<w>first|second|third|fourth|fifth|sixth)(?: (?:one|set)|(?= (?:was|should|is"
    r"|were)))\b(?! exercise)|\b(?:set|number) (?P<n>#)(?= (?:was|should|is|:))|(?P<m>#) (?:st|nd|rd"
    r"|th) (?:set|one)\b"
)
NTHS = {"first": 1, "second": 2, "third": 3, "fourth": 4, "fifth": 5, "sixth": 6}
LAST_FEW = re.compile(r"\bthe last (?P<n>#)(?: (?:sets?|ones?))?(?= (?:were|was|are|should|both|all|need))")
"""The last few recorded sets."""
ALL_FEW = re.compile(
    r"\ball(?: of)?(?: the| my| these| those)? (?P<n>#)(?= (?:(?:sets?|ones?|of (?:them|those|these)) )?"
    r"(?:were|was|are|is|should|need|felt|went))"
)
"""All of some recorded sets, by their number: that number is none of the values."""
ALL_FEW_ARE = re.compile(
    r"\ball(?: \w+)? # (?:\w+ ){0,3}?(?:were|was|are|be|been|say|read)"
    r"(?: (?:at|for|only|just|actually|with))* (?:[+-] )?#"
)
"""All of some recorded sets, with the number that is right."""
BOTH = re.compile(r"\b(?:both|the two of them)\b(?! (?:sides|legs|arms|hands))")
"""Two recorded sets, of one exercise or of two."""
ALL_THERE_ARE = re.compile(r"\ball (?:of (?:them|those|these|it)|(?:the |my )?sets)\b")
"""All recorded sets."""
NOT_THIS = re.compile(
    r"\b(?:not|wasnt|werent|isnt|instead of|rather than)(?: the| a| an| for| at| with| my)? (?P<n>#)(?! ?(?:%"
    r"|percent))"
)
"""The number that is not right."""
OLD_NUMBERS = re.compile(
    r"\b(?:not|wasnt|werent|isnt|instead of|rather than)"
    r"(?: the| a| an| for| at| with| my| only| just)? #"
    r"(?: (?:kgs?|kilos?|lbs?|pounds?|reps?))?(?: (?:x|for|/|@) #)?"
)
"""The numbers that are not right, load and reps together."""
DAY_FIXED = re.compile(
    r"\b(?:was|were|from|actually|done|did|on|for|meant|is|should be|happened|be|that s)(?: (?:from|on"
    r"|actually|done|for|the|of))* ?$"
)
"""Words before a day that put the day right."""
UNIT_FIXED = re.compile(
    r"\b(?:(?:was|were|is|are|be|in|meant|as|been|to|should be)(?: (?:in|actually|all|meant|the))*"
    r"|not) (?P<u>kgs?|kilos?|kilograms?|lbs?|pounds?)\b|^(?P<v>kgs?|kilos?|lbs?|pounds?)(?: (?:not|sorry"
    r"|instead|i mean|, not)|$)|\b(?:sorry|oops|meant|mean)(?: ,)? (?P<w>kgs?|kilos?|lbs?|pounds?)\b"
)
"""A unit that puts the recorded one right."""
