"""Whether a day is the day of the training, and not of tennis, a party or a sore back."""

from collections.abc import Callable

from domain.reading.body_phrases import SOMEBODY_ELSE
from domain.reading.body_words import HURT
from domain.reading.days import Day
from domain.reading.message import Message
from domain.reading.patterns import Pattern
from domain.reading.scope_words import AGAINST
from domain.reading.words import ACTIVITIES, FOR_WORDS, REP_WORDS, TIMES_SIGNS, TRAINING, words_of

_NOT_OF_A_SET = words_of("not than since after like before as until till til by vs")
_SORE = words_of(
    "sore soreness ache aches achy stiffness tired stiff hungover wrecked doms fatigued exhausted aching pain"
)
_HURT = HURT | words_of("sore achy stiff tender")
_HEADER_WORDS = words_of(
    """am pm at oclock around about session workout evening morning afternoon s late early night on last for
    from this so ok and hi hey hello sorry update the log results training numbers coach just my in
    here are i was there too also went again"""
)
_FEELINGS = words_of(
    """felt feel strong good great was hard tough easy went well really so bad ok okay awful fine tired
    amazing better best weak super pretty very quite rough brilliant decent not too alright nice horrible
    heavy light ! . smooth solid it surprisingly a bit day quick slow"""
)
_OF_THE_TRAINING = words_of("workout workouts session training sets numbers results log")
"""Words right beside a day that make it the training's."""
_OTHER_DOINGS = words_of("saw played playing play watched visited babysat hosted mowed shovelled rode raced")
"""What a client did on a day that is not the coach's training."""
_LOOKS_BACK = Pattern("""
    (that|this|it|those|these|all|both|which) ..1 (was|were|is|are|s) ..1 [on|from|of|for] $
    (thats|its) [on|from|of|for] $
""")
_NUMBER = Pattern("#")
_ALL = Pattern("(all|both|everything) [on|from|of|for] $")
"""What a clause begins with that says nothing but the day: "all on Monday"."""


_ALL_DONE = Pattern(
    """
    (managed|did|finished|completed|done|nailed|smashed|got through) ..2 {the_lot}
    got {the_lot} (done|in|finished)
    (this|that|it|these|those|they) [one|all|workout|session]* (happened|took place)
    (had|found|made) [the|some|a bit of|enough]* time
    (managed|made) (it|to make it) (in|to the gym|there)
    (got|squeezed|fitted|fit|snuck|managed|made) (one|it|this|that|these|them|a quick one|something) (in|done)
    {was} [such|really|quite|pretty]* (a|an) [really|pretty|very]* {kind} (one|session|workout)
    {was} (leg|upper|lower|push|pull|arm|back|chest|full body|gym|training|lifting) day
    """,
    the_lot="""
        the lot|everything|it all|all of it|the whole (thing|lot)|all [the] (sets|exercises)
        every (set|exercise)
    """,
    was="was|were",
    kind="""
        good|bad|great|solid|rough|decent|strong|weak|short|quick|long|hard|tough|heavy|light|proper|nice|better
    """,
)
"""What a client says of a day on which all of the training was done."""
_CHORES = words_of("house household chores groceries laundry dishes homework taxes")
_ELSE = (
    ACTIVITIES
    | _CHORES
    | words_of("off rest travel recovery sick ill house home job kids around wet dirty wrong")
)


def is_for_training(message: Message, day: Day, has_set: Callable[[int, int], bool]) -> bool:
    """Return whether a day is said of the training.

    `has_set(start, end)` tells whether a set or an exercise is named between two tokens.
    """
    before = message.text(day.start - 1)
    compared = message.text(day.start - 2) if before == "on" else before
    if message.text(day.start) in {"for", "from"}:
        before = message.text(day.start)
    if message.texts(day.start, day.end) == ["last", "week"] and not _is_of_a_set(message, day.start):
        return False
    if compared in _NOT_OF_A_SET:
        return _heads_a_set(message, day, has_set)
    if _has_an_owner(message, day) and (before in _COMPARED or _owns_something_else(message, day, has_set)):
        return False
    start, end = message.clause_span(day.start)[0], message.clause_span(day.end - 1)[1]
    after = message.text(day.end)
    if _SORE & set(message.texts(start, day.start)) and (before in {"from", "of"} or after == "s"):
        return False
    if not message.numbers(start, end) and not _HURT.isdisjoint(message.texts(start, day.start)):
        # "My elbow was sore yesterday" tells no day of a set.
        return False
    if before == "from" and _is_left_over(message, day, has_name=has_set(start, day.start)):
        return False
    if _is_to_come(message, day, start, end, has_set):
        return False
    if not _OF_THE_TRAINING.isdisjoint({before, after}) or before in {"for", "from"}:
        return True
    if message.texts(day.end, day.end + 2) == [",", "when"] or after == "when":
        # "About 5/6, when the leg extension was 30 for 11"
        return True
    heads = message.text(end - 1) == ":" and day.start - start <= 2
    return (
        heads
        or looks_back(message, day)
        or _is_of_its_clause(message, day, start, end, has_set)
        or _opens_the_tale(message, day, has_set)
    )


def _is_of_a_set(message: Message, at: int) -> bool:
    """Return whether a set stands right before a token that is not held beside another: "80x7 last week", and
    not "80x8 vs 80x7 last week"."""
    told = at - 2 if message.text(at - 1) in REP_WORDS else at - 1
    return message.text(told - 1) in TIMES_SIGNS | FOR_WORDS and AGAINST.isdisjoint(message.words)


_COMPARED = words_of("""beat beats beaten beating feel feeling felt match matched matching top topped vs
    repeat repeated recovering""")
"""Words before "mondays squats" that hold today beside it."""
_WHAT_DAYS_OWN = _OF_THE_TRAINING | words_of(
    """result set lifts lift stuff scores reps figures report one ones effort attempt attempts
    bit part top was were is its"""
)
_OWNED = 3


def _has_an_owner(message: Message, day: Day) -> bool:
    """Return whether something is told to be of a day: "mondays squats", "yesterday's queue"."""
    said = message.text(day.end - 1)
    return said == "yesterdays" or (day.kind in {"weekday", "last weekday"} and said.endswith("days"))


def _owns_something_else(message: Message, day: Day, has_set: Callable[[int, int], bool]) -> bool:
    """Return whether what is of a weekday is no training: "sundays roast still sits heavy"."""
    for at in range(day.end, day.end + _OWNED):
        text = message.text(at)
        if text in _WHAT_DAYS_OWN or not text.isalpha() or has_set(at, at + 1):
            return False
    return True


_HEADED = Pattern("[:|'('|was|were|,|of|at]* # [{unit}] (x|for|*) #", unit=words_of("kg kgs lb lbs"))


def _heads_a_set(message: Message, day: Day, has_set: Callable[[int, int], bool]) -> bool:
    """Return whether a day's exercise has its set right behind: "sore after yesterday's squats (80x8)"."""
    if not message.text(day.end - 1).endswith("s"):
        return False
    at = day.end
    while at < day.end + _OWNED and has_set(at, at + 1):
        at += 1
    return at > day.end and _HEADED.at(message, at) is not None


_LEFT_OVER = words_of(
    """recovered recovering recovery bruise bruised home back fatigue fatigued flu cold cough jetlag blister
    blisters leftovers program programme plan rule bug burnt sunburn drained battered wiped
    knackered beat wrecked dead cramp cramps scratch cut injury"""
)
"""What a client still has or got back from, some day: "the bruise from Tuesday"."""


def _is_left_over(message: Message, day: Day, *, has_name: bool) -> bool:
    """Return whether something else than the training is from a day, or goes on from it.

    Beside an exercise only the word right before counts: "back squat from Tuesday".
    """
    at = day.start - (message.text(day.start) != "from")
    before = message.texts(max(0, at - 1 if has_name else at - 3), at)
    if not _OF_THE_TRAINING.isdisjoint(before):
        return False
    return not _LEFT_OVER.isdisjoint(before) or message.text(day.end) in {"on", "onwards", "onward"}


def _is_of_its_clause(
    message: Message, day: Day, start: int, end: int, has_set: Callable[[int, int], bool]
) -> bool:
    """Return whether the clause of a day tells of a set, or of nothing but the training."""
    # "Last night after shift" is the training's; "after shift" only tells the hour.
    stop = next((at for at in range(day.end, end) if message.text(at) in {"after", "before"}), end)
    near = message.texts(max(start, day.start - 2), min(stop, day.end + 3))
    if _HAVE_TRAINED.at(message, day.end) is not None:
        return True
    if not _TRAINED.isdisjoint(message.texts(start, day.start)) or _goes_with_sets(message, day, start, end):
        return True
    if not ACTIVITIES.isdisjoint(near) or not _OTHER_DOINGS.isdisjoint(message.texts(start, end)):
        return False
    anothers = SOMEBODY_ELSE.is_in(message, start, day.start) and not _THEIR_GYM.is_in(
        message, start, day.start
    )
    if anothers and not _NUMBER.is_in(message, start, end):
        return False
    if has_set(start, end):
        return True
    if _ALL_DONE.is_in(message, start, end) and _tells_of_nothing_else(message, start, stop):
        return True
    others = {*message.texts(start, day.start), *message.texts(day.end, stop)}
    if all(word in _HEADER_WORDS or not word.isalpha() for word in others):
        return True
    if others <= _FEELINGS and (start == 0 or message.text(start - 1) in {"\n", ","}):
        return True
    return not others.isdisjoint(TRAINING) and others.isdisjoint(ACTIVITIES) and _CHORES.isdisjoint(others)


def _goes_with_sets(message: Message, day: Day, start: int, end: int) -> bool:
    """Return whether the client went with somebody that day, and sets are told in the same sentence."""
    if _WENT.first(message, start, day.start) is None or not ACTIVITIES.isdisjoint(message.texts(start, end)):
        return False
    return _NUMBER.is_in(message, end, message.sentence_span(day.start)[1])


_THEIR_GYM = Pattern("at (my|her|his|our|a|the) _ [_] (gym|place|studio|house)")
"""Where the client trained, though it is somebody else's."""
_TO_COME = words_of(
    """see meet wait ready excited forward hopefully hoping hope hopes will ill gonna going plan
    planning plans coming come gotta shall cant rematch revenge back again more next aim aiming target
    goal try trying rest remaining finish finishing move moving shift shifting swap swapping switch"""
)
_WAITING = words_of("see meet wait ready excited forward hopefully will ill gonna going plan planning cant")
"""Words beside a day that is said behind a set and is not the set's: "80x7, see you Friday"."""


def _is_to_come(
    message: Message, day: Day, start: int, end: int, has_set: Callable[[int, int], bool]
) -> bool:
    """Return whether a day behind a set is one to come: "80x7 see you friday"."""
    if day.kind not in {"weekday", "last weekday"}:
        return False
    told = [at for at in range(start, day.start) if has_set(at, at + 1)]
    if not told:
        return not _WAITING.isdisjoint(message.texts(start, day.start)) and start > 0
    beside = {*message.texts(told[-1] + 1, day.start), *message.texts(day.end, end)}
    return not beside.isdisjoint(_TO_COME)


_WENT = Pattern(
    "[i|we] [just|only]* went [there|in|along]* (with|to (the gym|train|lift)|alone|solo|together)"
)
"""Told of a day, it is the training that one went to, whoever came along."""
_HAVE_TRAINED = Pattern("[,]* i (have|ive|did|had|was)? [also|just|still]* (trained|train|training|lifted)")
_TRAINED = words_of("trained lifted logging logged reporting reported recording recorded")
"""Verbs that make a day in their clause the training's, whatever else was done: "trained after the shift"."""
_PLACES = words_of(
    """alone bar bars barbell basement bench busy cage club closed crowded dumbbells empty equipment garage
    gym hall heaving hotel machine machines packed place plates platform quiet rack racks rammed room
    session shed squat studio there traveling travelling"""
)
"""Where and with what one trains."""
_LIFE = words_of(
    """asleep ate bed birthday called died doctor dentist drank drinking drove exam flew funeral interview
    kids married meeting met party phone physio rained raining sleep slept snow snowed wedding
    woke work worked"""
)
_NO_TRAINING = (_LIFE | _ELSE | _SORE | _OTHER_DOINGS) - {"off"}
_GOES_ON = Pattern(":|so [i|we]* [only|just|did|managed|got|had]* _|only|just")


def _opens_the_tale(message: Message, day: Day, has_set: Callable[[int, int], bool]) -> bool:
    """Return whether a sentence or clause begins with the day, tells where or how one trained, and goes on to
    a set.

    "Tuesday at the place by the depot, all in pounds there: bench 155x6", "yesterday on 4 hours of sleep".
    """
    start, end = message.sentence_span(day.start)
    clause, _ = message.clause_span(day.start)
    if not any(
        all(message.text(at) in _BEFORE_THE_DAY for at in range(begins, day.start))
        for begins in (start, clause)
    ):
        return False
    sets_at = next((at for at in range(day.end, end) if has_set(at, at + 1)), None)
    if sets_at is None:
        return False
    if _CIRCUMSTANCE.at(message, day.end) is not None:
        return True
    words = set(message.texts(day.end, sets_at))
    if words & _NO_TRAINING or SOMEBODY_ELSE.is_in(message, day.end, sets_at):
        return False
    return bool(words & _PLACES) or _GOES_ON.is_in(message, day.end, sets_at)


_CIRCUMSTANCE = Pattern(
    """
    [,|and]* (on|after|with) [only|just|about|barely|like|maybe|all of]* {little} ..2 sleep
    [,|and]* (on|with) (an empty stomach|a hangover)|[,] (fasted|hungover|sleep deprived)
    """,
    little="(#|no|little|zero|bad|poor|a|hardly any|not much)",
)
"""How a client was when training."""
_BEFORE_THE_DAY = words_of("on so ok and hi hey hello , - back i")


def _tells_of_nothing_else(message: Message, start: int, end: int) -> bool:
    return _ELSE.isdisjoint(message.texts(start, end)) and not SOMEBODY_ELSE.is_in(message, start, end)


def looks_back(message: Message, day: Day) -> bool:
    """Return whether a day is said of what was told before it: "that was yesterday"."""
    start, _ = message.clause_span(day.start)
    if start == 0:
        return False
    return _LOOKS_BACK.is_in(message, start, day.start) or _ALL.at(message, start, day.start) is not None
