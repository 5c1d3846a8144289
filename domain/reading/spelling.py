"""A few words that much hangs on, put right where they are mistyped: "chset pian" reads as "chest pain".

Only these are mended: the words of the body and of danger, since a slip must not hide what calls for help,
and the words for days, failure and what is to be done. A word that is good English as it stands is left
alone, and so is one with more than a single slip.
"""

import re
from functools import lru_cache

from rapidfuzz.distance import OSA

from domain.reading.tokens import Token
from domain.reading.words import words_of

_SAFETY_WORDS = words_of(
    """achilles ankle ankles bladder blacked breath breathe breathing breathless
    cannot chest collapsed dizziness
    dizzy elbow elbows faint fainted fainting forearm forearms groin hamstring hamstrings headache
    headaches heart hurting hurts knees numbness painful pains palpitations passed pinches pinching
    popped pressure shoulder shoulders stabbing stomach strained swollen thigh thighs tightness tingling
    tingly tweaked unconscious urine wrist wrists"""
)
"""Words of five letters or more, each of which may have one slip."""
_SHORT_SAFETY_WORDS = words_of("hurt knee neck numb pain")
"""Words of four letters, of which only two neighbours may have changed places."""

_KEY_WORDS = words_of(
    """monday tuesday wednesday thursday friday saturday sunday yesterday tomorrow tonight failure weight
    moving skipped skipping bodyweight pounds second today"""
)
_SHORT_KEY_WORDS = words_of("same skip sets move")

_GOOD_AS_THEY_ARE = words_of(
    """angle angles breach breaches breaching breadth breaths breeding cheat cheats chess chests chesty
    collapse collapses collapser crest ditzy fain faints feint feinting feinted grain grains grin groan
    groans groins grown hear heard hearing hears heartb hearth hearts hearty heat hunting hunts hurdling
    hurls hurting passes parsed paused pained paint painted paints pairs paid paired plaid plain plains
    pans pants passe past pasted phased pinched pinned pitches pitching plopped popper poppet presume
    pressured propped punched punches punching pins pin smoulder sprained stained stomachs strain strains
    strainer stubbing swallow swollens though tinkling topped twine twinge uncle urines wrest writs
    waist waists
    kneels kneed kneel preys poised weigh weighs weighed weighty mowing moping mooing musing sundae
    pound pounded ponds seconds cannon canoe
    shipped shipping skipper slipped slipping slip wright failures yesterdays tomorrows mondays tuesdays
    wednesdays thursdays fridays saturdays sundays todays seems moves moved pissed passer gasped blacken
    backed slacked blocked tweeted twisted tangling tingle tingles weights heartbreak stabbings"""
)
_ALIASES = {
    "bakc": "back",
    "kne": "knee",
    "knie": "knee",
    "hert": "hurt",
    "sholder": "shoulder",
    "sholders": "shoulders",
    "brest": "chest",
    **dict.fromkeys(("tmrw", "tmr", "tmw", "tmrrw", "tomo", "tomoz", "tommorrow", "tommorow"), "tomorrow"),
    "tofailure": "failure",
    **dict.fromkeys(("wuts", "wats", "wots", "whts"), "whats"),
    **dict.fromkeys(("wut", "wat", "wot", "wht", "waht"), "what"),
    "skiped": "skipped",
    "skipp": "skip",
    **dict.fromkeys(("cnat", "catn", "cantt"), "cant"),
    "doin": "doing",
    "goin": "going",
    "trainin": "training",
    "liftin": "lifting",
    "movin": "moving",
    "feelin": "feeling",
    "comin": "coming",
    "hurtin": "hurting",
    "benchin": "benching",
    "squattin": "squatting",
    "skippin": "skipping",
    "whatd": "what did",
    "dizzi": "dizzy",
    "serie": "set",
    **dict.fromkeys(("outta", "outa", "outof"), "out of"),
}
"""Slips that the rule below does not take; some are two words written as one."""
_REPEATED = re.compile(r"([a-z])\1{2,}")
_LONG = _SAFETY_WORDS | _KEY_WORDS
_ALL = _LONG | _SHORT_SAFETY_WORDS | _SHORT_KEY_WORDS
_BY_LETTER = {
    letter: tuple(word for word in sorted(_ALL) if word[0] == letter) for letter in {word[0] for word in _ALL}
}


def with_safety_words(tokens: list[Token]) -> list[Token]:
    """Return the tokens, those that are mistyped words of danger put right; their places stay as typed."""
    said = [token.text for token in tokens]
    right = list(map(mended, said))
    if right == said:
        return tokens
    put_right: list[Token] = []
    for token, word in zip(tokens, right, strict=True):
        if token.text == word:
            put_right.append(token)
            continue
        first, _, second = word.partition(" ")
        put_right.append(token._replace(text=first))
        if second:
            put_right.append(token._replace(text=second, start=token.end - 1, glued=True))
    return put_right


@lru_cache(maxsize=8192)
def mended(word: str) -> str:
    """Return the word of danger that `word` is a slip of, otherwise `word` itself."""
    if word in _ALL or word in _GOOD_AS_THEY_ARE:
        return word
    if (alias := _ALIASES.get(word)) is not None:
        return alias
    if _REPEATED.search(word):
        for kept in (r"\1", r"\1\1"):
            shorter = _REPEATED.sub(kept, word)
            if shorter in _ALL:
                return shorter
    if not 4 <= len(word) <= 14:
        return word
    for right in _BY_LETTER.get(word[0], ()):
        if abs(len(right) - len(word)) > 1 or OSA.distance(word, right, score_cutoff=1) > 1:
            continue
        if right in _LONG or sorted(right) == sorted(word):
            return right
    return word
