"""What else the client wants done: leave out, move, pause, take back, ask, look at, stop. No set is read."""

from collections.abc import Sequence
from datetime import date, datetime

from domain.reading.away import find_pause, is_anothers, is_ill
from domain.reading.away_from import absence_of
from domain.reading.days import Day
from domain.reading.days_off import says_day_off
from domain.reading.message import Message
from domain.reading.moves import find_move
from domain.reading.naming import Named
from domain.reading.patterns import Pattern
from domain.reading.questions import find_questions
from domain.reading.request import Absence, Slot, Want
from domain.reading.skip_words import SAYS_WORKOUT, SKIP_WORKOUT, TAKES_BACK, TODAY_WORDS
from domain.reading.skips import exercises_left_out
from domain.reading.want_words import (
    DELETE,
    STOP,
    STOP_TOLD,
    UNDO,
)
from domain.reading.wanted import Wanted
from domain.reading.words import words_of

_WHOLE = words_of("today gym workout session")
_ALL = words_of("all every any")
_BOTH = _ALL | words_of("both either neither")
_POINTS = words_of("it that this one today")
"""Words by which the exercise just left out is pointed at: "so skipping that today"."""
_OF_AN_EXERCISE = words_of("it this the that drop miss do")
_MOVES_WEIGHT = words_of("lift go train come training lifting")
_A_WEIGHT = words_of(
    "without my a the it anything more that past below any heavier lower higher deeper faster for"
)
_CANNOT = words_of("never not didnt cant couldnt wont dont did will can")
_IT = words_of("it go come lift")
_TO_TRAIN = words_of("today gym training tomorrow")
_ELSEWHERE = words_of("toilet loo bathroom restroom lavatory end top last final")
"""Where one can fail to come to besides the gym."""
_NOT_UNDONE = words_of("dont didnt cant never not")
_DENIES_OR_ASKS = words_of("never is was")
"""Words right before: "is today a rest day"."""
_HAS_TO = words_of("have had need going want got decided forced able ok possible like")


def find_wants(
    message: Message,
    named: Sequence[Named],
    days: Sequence[Day],
    questions: Sequence[tuple[int, int]],
    sent: datetime,
) -> Wanted:
    """Return what the client wants done besides recording sets; undo and correct are decided elsewhere."""
    wants: list[Want] = []
    on: date | None = None
    absence: Absence | None = None
    asks: list[Slot] = []
    in_question = {at for s, e in questions for at in range(s, e)}
    used: list[Named] = []
    skips: list[str] = []

    for name in exercises_left_out(message, named, in_question):
        used.append(name)
        if len(name.names) == 1 or _means_all(message, name):
            skips.extend(name.names)
        elif name.names or not name.weak:
            asks.append("exercise")
    if skips:
        wants.append("skip_exercise")
    day_off = not skips and says_day_off(message, days, in_question)
    move = None if day_off else find_move(message, days, sent)
    if move is not None:
        wants.append("move")
        on = move.on
        if on is None:
            asks.append("date")
    if "move" not in wants:
        pause = find_pause(message, days, sent)
        if pause is not None:
            wants.append("pause")
            on = pause.on
            absence = None if is_ill(message) else absence_of(message, days, sent, on)
    elsewhere = {"move", "pause"} & set(wants)
    if not elsewhere and (day_off or _leaves_out_workout(message, named, in_question, skips, used)):
        wants.append("skip_workout")
    if STOP.is_in(message) and not STOP_TOLD.is_in(message):
        wants.append("stop_messages")
    find_questions(message, named, questions, wants)
    return Wanted(
        tuple(dict.fromkeys(wants)),
        tuple(dict.fromkeys(skips)),
        on,
        tuple(dict.fromkeys(asks)),
        tuple(used),
        absence,
    )


_LEAVES = words_of("leave leaving left take taking")
"""Words by which "off today" is said of an exercise: "leave that one off today"."""
_NO_REP = Pattern("the # (st|nd|rd|th) ....4 (dont|didnt|doesnt|not) count")
"""A rep that does not count: "6, jumped the 7th so dont count it"."""
_OF_THE_RECORD = words_of(
    """set entry one please pls again thanks x for at kg kgs lb lbs reps i that which ive have just now sent
    entered logged put in typed recorded wrote did there"""
)
_ENDS = words_of(". ! ; ,") | {"", "\n"}


def _means_all(message: Message, name: Named) -> bool:
    """Return whether all exercises that a name fits are meant: "both calf raises"."""
    before = message.texts(max(0, name.start - 3), name.start)
    return bool(name.names) and not (_BOTH if len(name.names) == 2 else _ALL).isdisjoint(before)


def _leaves_out_workout(
    message: Message,
    named: Sequence[Named],
    in_question: set[int],
    skips: Sequence[str],
    used: Sequence[Named],
) -> bool:
    """Return whether the whole workout is left out."""
    if not message.has(TODAY_WORDS):
        return False
    for skip in SKIP_WORKOUT.find(message):
        start, end = skip.start, skip.end
        if start in in_question or any(n.start >= start and n.end <= end + 1 and not n.weak for n in named):
            continue
        if message.text(start - 1) in _DENIES_OR_ASKS or any(0 <= start - n.end <= 1 for n in used):
            continue
        if is_anothers(message, message.clause_span(start)[0], start, message.text(start)):
            continue
        if message.texts(start, end) == ["not", "today"] and "yesterday" in message.texts(start - 2, start):
            continue
        if (
            skips
            and message.text(end - 2) == "off"
            and not _LEAVES.isdisjoint(message.texts(end - 6, end - 2))
        ):
            continue
        if skips and message.text(start) in TAKES_BACK and _POINTS.issuperset(message.texts(start + 1, end)):
            continue
        if skips and (not message.has(_WHOLE) or message.texts(start, end) == ["not", "today"]):
            continue
        if _says_workout(message, start, end, named):
            return True
    return False


def _says_workout(message: Message, start: int, end: int, named: Sequence[Named]) -> bool:
    """Return whether what is left out is the workout: "can't make it", and not "can't lift more"."""
    words = message.texts(start, end)
    opening, last, after = words[0], words[-1], message.text(end)
    if last in _OF_AN_EXERCISE and any(n.start in {end, end + 1} for n in named):
        return False
    if last in _MOVES_WEIGHT and after in _A_WEIGHT and message.text(end + 1) not in {"gym", "next"}:
        return False
    if opening == "cancel" and not message.has(TODAY_WORDS - {"cancel"}):
        return False
    if after in {"reps", "rep"} or message.value(end) is not None or message.value(start + 1) is not None:
        return False
    if opening == "not" and last in _MOVES_WEIGHT and "today" not in message.words:
        return False
    vague = opening in _CANNOT and last in _IT and words[-2:] != ["make", "it"]
    if vague and _TO_TRAIN.isdisjoint(message.texts(end, end + 4)):
        return False
    if (
        words[-2:] == ["make", "it"]
        and after == "to"
        and not _ELSEWHERE.isdisjoint(message.texts(end, end + 3))
    ):
        return False
    to_skip = opening.startswith(("skip", "miss")) and message.text(start - 1) == "to"
    if to_skip and message.text(start - 2) not in _HAS_TO:
        return False
    if words[:2] == ["no", "gym"] and "where" in message.texts(end, end + 2):
        return False
    return (
        not SAYS_WORKOUT.isdisjoint(words)
        or after in {"today"}
        or words[-2:-1] in (["to"], ["must"], ["gotta"])
    )


def find_undo(message: Message, named: Sequence[Named], last: str | None) -> tuple[int, int] | None:
    """Return the words that take back the last record, as a span of tokens; None where there are none.

    `last` is the exercise of that record.
    """
    for name in named:
        before = (DELETE.at(message, name.start - words) for words in (1, 2, 3))
        delete = next((found for found in before if found is not None and found.end == name.start), None)
        if delete is None or name.names != (last,):
            continue
        end = name.end
        while message.text(end) in _OF_THE_RECORD or message.value(end) is not None:
            end += 1
        if message.text(end) in _ENDS:
            return delete.start, end
    for undo in UNDO.find(message):
        if (
            message.text(undo.start - 1) in _NOT_UNDONE
            or _is_of_a_warm_up(message, undo.start)
            or _NO_REP.is_in(message, 0, undo.end)
        ):
            continue
        if message.taken[undo.start] in {"", "a question", "exercise"}:
            return undo.start, undo.end
    return None


_WARM_UP = words_of("warm warmup warmups warming warmed ramp ramping feeler feelers")


def _is_of_a_warm_up(message: Message, at: int) -> bool:
    """Return whether a warm-up is told of before a place in its sentence: "warm-up was 40x12, that doesn't
    count"."""
    start, _ = message.sentence_span(at)
    return not _WARM_UP.isdisjoint(message.texts(start, at))
