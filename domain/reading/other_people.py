"""What other people lifted: the numbers said of somebody who is not the client are marked."""

from collections.abc import Sequence

from domain.reading.exercise_words import COMMON
from domain.reading.message import Message
from domain.reading.name_stems import stem_of, vocabulary
from domain.reading.naming import Named
from domain.reading.next_clause import end_without_name
from domain.reading.patterns import Found, Pattern
from domain.reading.tokens import JOKE
from domain.reading.words import FILLERS, INTERJECTIONS, PERSON_WORDS, SMALL_WORDS, words_of

_DOES = words_of(
    """did does do got gets hit hits went put had has made makes used uses managed moved can was is held holds
    benched benches lifted lifts squatted squats deadlifted deadlifts pressed pulled curled curls repped reps
    warmed counted counts says said thinks completed completes reached reaches achieved achieves pushed
    pushes finished"""
)
_ALSO_DOES = words_of(
    """just with doing make loaded tried benching lifting squatting deadlifting
    hitting presses pressing pulls pulling curling rowed rows rowing repping dipped smashed maxed casually
    warming owns cranked banged swears claims reckons bet thrusted lunged dipped planked suggests
    suggested recommends recommended wants told tells"""
)
"""What follows on a person, but can follow on "they" too where that means the sets."""
_ADVISES = words_of(
    """says said thinks reckons claims swears bet suggests suggested recommends recommended wants told
    tells"""
)
"""Words after which even "I should" and "for me" are somebody else's idea."""
LAST_HOUR = 12
_NEAR = 7
"""How many tokens from a person on such a word can stand."""
_WHAT_I_DID = Pattern(
    """
    (i|ive) [just|only|actually|then|still] (did|got|managed|made|hit|done|do|stayed|kept)
    <(,|.|;|so|but|!) [so|but|only|just]* (did|got|managed|hit) >(#|it|the|bench|squat)
    """
)
_SOMEBODY = Pattern(
    """
    [{whose} ..2] {person} aged:{aged} [also|just|only|even|casually]* verb:({lifts}|{does}|{also_does})
    [{whose} ..2] {person} ....6 verb:(at >(#)|<!(,|-|:) {lifts}|{does}|{also_does})
    """,
    lifts=words_of("bench squat deadlift"),
    aged="'(' [aged] # [years|yrs|yo|old|!|'?'|.|y]* ')'",
    whose=words_of("my our the a some this that another one his her your"),
    person=PERSON_WORDS,
    does=_DOES,
    also_does=_ALSO_DOES,
)
_AN_HOUR = Pattern("at n:# [sharp] (,|.|!|;|-|'\n'|so|then)")
"""When somebody comes or is to be met: "boss at 9, bench 80x8"."""
_A_CHILD = Pattern(
    "my # (year|yr|yo|y) [o|old] [just|only|even|can|could]* {lifts}",
    lifts=words_of(
        """did does got hit hits squat squats squatted bench benches benched lift lifts lifted deadlift
        deadlifts deadlifted curl curls curled press presses pressed managed manages"""
    ),
)
_HE_OR_SHE = Pattern(
    """
    (he|she|they|everyone|someone|somebody|hes|shes) [just|only|even|casually|also|then|easily] {does}
    (he|she) [just|only|even|casually|also|then|easily] (lift|bench|squat|deadlift|do|make|press|curl) >(#)
""",
    does=_DOES,
)
_HIM_OR_HER = Pattern(
    "<!(told|tell|with|to|for|beat|by|of) (him|her|them|he|she) [:|-|with|got]* >(# [{unit}] (x|for|*) #)",
    unit=words_of("kg lb"),
)
_WHOEVER = Pattern(
    """
    <!(with|by|to) (my|our|this|that|the|some|a) who:_ [of _] [just|only|even]* [{kind}] (
        {lifted}) [{what}]* >(#)
    (the|that|this|some|a|one) who:_ (on|in|at|from|of) (my|our|the) ..2 ({does}) [{what}]* >(#)
    (the|that|this|some|a|one) who:_ {beside} (the|me|my) ..2 (is|was|just|s|be|keeps) ({lifted}|{lifting})
    """,
    lifting=words_of(
        """doing hitting repping banging benching squatting lifting pulling pressing curling rowing
        deadlifting using on at with warming"""
    ),
    kind="leg|bench|chest|shoulder|overhead|hip|front|back|box|strict|push",
    beside="(in|by|at|behind|beside|opposite|near|across|over|from|next to)",
    lifted="benched|squatted|lifted|pulled|pressed|deadlifted|repped|curled|rowed|put up|maxed|maxes|benches"
    "|squats|lifts|pulls|presses|deadlifts",
    what="about|like|the|a|around|over|up|out",
    does="did|does|made|makes|got|managed|hit|had|has|can do|just did",
)
"""Somebody of whom nothing is known but that they lift: "my gaffer pulled 180x3"."""
_UNKNOWN = Pattern(
    "(^|<({pause})) who:_ [just|only|even|casually]* {lifted} [{what}]* >(# [{unit}] (for|x|*) # ....4 i)",
    pause=words_of(", . ! ;"),
    lifted=words_of("benched squatted lifted pulled pressed deadlifted repped curled rowed maxed hit"),
    what="about|like|the|a|around|over|up|out",
    unit=words_of("kg kgs kilo kilos lb lbs pound pounds"),
)
"""The same without a word before, where the client is set against them: "bestie pulled 120x3, I got 80"."""
_NOBODY = words_of(
    """arm arms side leg legs hand body last first second third set one other right left best new old max top
    heavy warmup final whole back chest"""
)
_ADDRESSED = Pattern(
    "(^|<({pause})) (bro|dude|man|boss|mate|trainer) !({third})",
    third=words_of("at from in of who next says said reckons thinks told wants swears claims"),
    pause=words_of(", . ! yo hey hi hello evening morning afternoon day night thanks thank") | {"\n"},
)
"""The coach as a client may call them: "bro, got 80x8" tells of the client."""
_SURELY_THEIRS = words_of("did benched squatted lifted hit completed reached achieved")
"""What somebody did who is called the same."""
_AGAINST_ME = Pattern(
    "(i|ive) [just|only]* ({does}) [just|only|about]* #|<(,|.|but|and|while) me #", does=_DOES
)
"""The client's own set, against which another's is set: "mate got 100 for 3, I got 82.5"."""

_TOWARDS = words_of("""to beside near behind of opposite with by from alongside than for spotting
    helping watching teaching beating joining past following telling showing asking""")
"""Words before "me" that do not turn from another person back to the client."""
_MINE = Pattern("i|im|myself|ive\n<!({towards}|over|after|before) (me|mine)", towards=_TOWARDS)
_BACK_TO_ME = Pattern(
    """
    <!({towards}|over|after|before) (i|me|mine|myself|im|ive|we|meanwhile i)
    <!({towards}) my (turn|set|sets|bench|squat|deadlift|own|reps)
    for me|anyway|anyways
    <(,) so
    with me [it was|it is|its|only|just|:]* >(#)
""",
    towards=_TOWARDS,
)
_WANTS_ME = Pattern(
    """
    (wants|wanted|needs|told|tells|asks|asked) me [to|be|come|get|go|leave|stop|hurry|back|out|early|up]* (
        home|there|here|by|at|early|around|in|off|away|out|over|back|for (lunch|dinner|tea|supper|#))
    """
)
"""Where somebody wants the client to be, which tells of no lift: "wife wants me home by 4, so just ..."."""
_SAYS_OF_ME = Pattern(
    """
    {says} [that] (i|im|ive|my) [_] ({am}|_ _ ,)
    """,
    says=_ADVISES,
    am=words_of(
        """look looks looked am was m snore smell talk eat sleep work seem become mad crazy getting too
        obsessed addicted"""
    ),
)
"""What somebody says of the client, and no number of the next clause: "my wife says I look strong"."""
_TURNS = words_of("but so :")
_WITH = words_of("with by to from and told tell beat as")
"""Words between the client and somebody else in one sentence: "I trained with my brother, got …"."""


def mark_other_people(message: Message, named: Sequence[Named]) -> None:
    """Mark the numbers that are another's."""
    for found in _SOMEBODY.find(message):
        verb, _ = found.parts["verb"]
        # "two guys were chatting but bench 80x8" and "with my sister: bench 80x8" tell of the client.
        between = message.texts(found.start, verb)
        turned = not _TURNS.isdisjoint(between) or between.count(")") > between.count("(")
        if message.text(verb) == "at" and _is_an_hour(message, verb):
            message.take_numbers(verb, verb + 2, "an hour")
            continue
        if _WANTS_ME.at(message, verb) is not None:
            continue
        if not turned and not _is_about_the_client(message, found):
            advises = not _ADVISES.isdisjoint(message.texts(found.start, found.start + _NEAR))
            # "My neighbour (82!) does 30 for 15" is one sentence.
            for start in (found.start, verb) if "aged" in found.parts else (found.start,):
                _mark(message, named, start, _WHAT_I_DID if advises else _BACK_TO_ME)
    for found in (*_WHOEVER.find(message), *_UNKNOWN.find(message)):
        if _may_be_somebody(message, found.parts["who"][0]):
            _mark(message, named, found.start, _BACK_TO_ME)
    for found in (*_HE_OR_SHE.find(message), *_A_CHILD.find(message), *_HIM_OR_HER.find(message)):
        if message.text(found.start - 1) == '"':
            # "'Only five exercises', they said" has what was said before it.
            continue
        if not _MINE.is_in(message, found.start, found.end):
            _mark(message, named, found.start, _BACK_TO_ME)


def _may_be_somebody(message: Message, at: int) -> bool:
    """Return whether a word before a verb can be a person's: it names no exercise, and says nothing else."""
    word = message.text(at)
    if word in _NOBODY or message.taken[at]:
        return False
    has_article = message.text(at - 1) in _ARTICLES
    return has_article or not (
        word in COMMON | FILLERS | SMALL_WORDS | INTERJECTIONS or stem_of(word) in vocabulary()
    )


_ARTICLES = words_of("my our this that the some a one")


def _is_an_hour(message: Message, at: int) -> bool:
    """Return whether "at 9," is when somebody comes."""
    value = message.value(at + 1)
    return value is not None and value <= LAST_HOUR and _AN_HOUR.at(message, at) is not None


def _is_about_the_client(message: Message, found: Found) -> bool:
    """Return whether somebody is spoken to or only mentioned, where the client tells of their own sets."""
    if _MINE.is_in(message, found.start, found.end):
        return True
    if message.text(found.start - 1) in _WITH and _MINE.is_in(message, 0, found.start):
        return True
    verb, _ = found.parts["verb"]
    if message.text(verb) in _SURELY_THEIRS or _ADDRESSED.at(message, found.start) is None:
        return False
    return not (message.numbers(verb, found.end + 1) and _AGAINST_ME.is_in(message, verb, None))


def _mark(message: Message, named: Sequence[Named], start: int, back_to_me: Pattern) -> None:
    _, last = message.sentence_span(start)
    last = next((at for at in range(start, last) if message.tokens[at].kind == JOKE), last)
    said_of_me = _SAYS_OF_ME.first(message, start, last)
    if said_of_me is not None:
        last = min(last, message.clause_span(said_of_me.start)[1])
    last = min(last, end_without_name(message, named, start, start, last))
    back = back_to_me.first(message, start + 1, last)
    message.take_numbers(start, last if back is None else back.start, "another's")
