"""Questions and requests: which of them the bot answers itself, and which are for the coach."""

from collections.abc import Iterator, Sequence

from domain.reading.away import ails
from domain.reading.message import Message
from domain.reading.move_words import WEEKDAY
from domain.reading.naming import Named
from domain.reading.patterns import Found, Pattern, words_needed
from domain.reading.question_words import (
    HELP,
    HELP_ALONE,
    HISTORY,
    HOW_IT_IS_DONE,
    NOW_WHAT,
    OPENS_A_REQUEST,
    PLAN,
    SMALL_TALK,
    WHAT_NOW,
)
from domain.reading.request import Want
from domain.reading.request_words import (
    AFTER_ANSWER,
    ANSWERS,
    BEFORE_A_REQUEST,
    INSTEAD,
    LIKES,
    LIKES_IT,
    NOT_REQUEST,
    NUMBER_ASKED,
    OF_TRAINING,
    REQUEST,
    TO_TALK,
    WONDERED_AT,
)
from domain.reading.want_words import STOP, UNDO
from domain.reading.words import words_of

_TOPICS: tuple[tuple[Pattern, Want], ...] = (
    (HOW_IT_IS_DONE, "ask_coach"),
    (STOP, "stop_messages"),
    (HELP, "help"),
    (PLAN, "show_plan"),
    (HISTORY, "show_history"),
)
_UNASKED_TOPICS: tuple[tuple[Pattern, Want], ...] = (
    (HELP, "help"),
    (HISTORY, "show_history"),
    (PLAN, "show_plan"),
)
"""What can be wanted without the form of a question."""
_MAY_ASK = words_needed(*(pattern for pattern, _ in _UNASKED_TOPICS), REQUEST, WHAT_NOW) | words_of("? or")
"""Words without which nothing is asked for in a sentence of its own."""
_SENTENCE_ENDS = words_of(". ! ? ;") | {"\n"}
_PAUSES = _SENTENCE_ENDS | {","}
_MOVED = frozenset({"move", "pause", "skip_workout", "stop_messages"})
_TO_MOVE = words_of("tomorrow instead move shift train today todays change") | WEEKDAY
_ASKING = words_of("do did would will can could should what")
_ASKING_YOU = words_of("can could would will")
_YOU = words_of("you u someone")
_ASKS_WHAT = words_of("what which how why when")
_WORTH = words_of("worth reckon think")
_BEING = words_of("is was are")
_THIS = words_of("that this it he she")

_WHEN_DUE = words_of("today next first now tomorrow")
_DUE = _WHEN_DUE | {"or"}
_ASKS_OF_TODAY = words_of("is are am do which have was")
_PARTS_TRAINED = words_of("legs leg push pull upper lower chest back arms shoulders body full")
_OF_A_CHOICE = words_of(
    """is it today today this that are we am i doing do got the its on next a day days with start starting
    first now tomorrow or , ? my again then and coming up which comes what one was have done session"""
)
"""Words of a question that asks which exercise is due."""

LONGEST_CHOICE = 14
LONGEST_TALK = 3
LONGEST_ANSWERED = 15
"""How many tokens a question has that the client answers at once."""


def find_questions(
    message: Message, named: Sequence[Named], asked: Sequence[tuple[int, int]], wants: list[Want]
) -> None:
    """Add what is asked: a plan, a history, help, or else the coach. `asked` are the questions, as tokens."""
    if HELP_ALONE.is_in(message):
        wants.append("help")
        return
    may_ask = message.has(_MAY_ASK)
    if not asked and not may_ask:
        return
    in_danger = ails(message) or ("pain" in message.taken and NOW_WHAT.is_in(message))
    moved = not _MOVED.isdisjoint(wants)
    polite = bool(wants)
    done = _answered(message)
    for start, end in asked:
        if start >= end or not done.isdisjoint(range(start, end)):
            continue
        due = named and _asks_which_is_due(message, named, start, end)
        topic = "show_plan" if due else _topic_of(message, start, end)
        if topic == "show_plan" and in_danger:
            topic = "ask_coach"
        done.update(range(start, end))
        if topic == "ask_coach" and moved and not INSTEAD.isdisjoint(message.texts(start, end)):
            continue
        if topic is not None:
            wants.append(topic)
    if not may_ask:
        return
    for start, end in _sentences(message, done):
        if named and _asks_which_is_due(message, named, start, end):
            wants.append("show_plan")
            continue
        topic = _Sentence(message, start, end).topic(moved=moved, polite=polite)
        if in_danger and topic in {None, "show_plan"} and WHAT_NOW.is_in(message, start, end):
            topic = "ask_coach"
        if topic is not None:
            wants.append(topic)


def _asks_which_is_due(message: Message, named: Sequence[Named], start: int, end: int) -> bool:
    """Return whether exercises are named only to ask which of them is due: "is it squats today or rows"."""
    words = message.texts(start, end)
    if len(words) > LONGEST_CHOICE or _DUE.isdisjoint(words):
        return False
    if words[0] not in _ASKS_OF_TODAY:
        asks = "?" in message.texts(end - 1, end + 1) and "or" in words
        if not asks or _WHEN_DUE.isdisjoint(words):
            return False
    inside = {at for n in named for at in range(n.start, n.end) if start <= at < end}
    inside.update(at for at in range(start, end) if message.text(at) in _PARTS_TRAINED)
    return bool(inside) and all(at in inside or message.text(at) in _OF_A_CHOICE for at in range(start, end))


def _answered(message: Message) -> set[int]:
    """Return the tokens of questions that the client answers at once: "any pain? no"."""
    answered: set[int] = set()
    for at in message.places.get("?", ()):
        if message.text(at + 1) in ANSWERS and message.text(at + 2) in AFTER_ANSWER:
            start = at
            while start > 0 and message.text(start - 1) not in _PAUSES:
                start -= 1
            if 0 < at - start <= LONGEST_ANSWERED:
                answered.update(range(start, at + 1))
    return answered


def _sentences(message: Message, done: set[int]) -> Iterator[tuple[int, int]]:
    """Return the sentences of what is left without some tokens."""
    start = 0
    ends = [at for sign in _SENTENCE_ENDS & message.words for at in message.places[sign]]
    for at in sorted(done.union(ends)):
        after = at if at in done or message.text(at) == "\n" else at + 1
        if start < after:
            yield start, after
        start = at + 1
    if start < len(message.tokens):
        yield start, len(message.tokens)


def _topic_of(message: Message, start: int, end: int) -> Want | None:
    """Return what a question asks for; None for small talk, and for a request that the bot itself fulfils."""
    if SMALL_TALK.is_in(message, start, end) and not REQUEST.is_in(message, start, end):
        return None
    for pattern, want in _TOPICS:
        if pattern.is_in(message, start, end):
            return want
    return None if UNDO.is_in(message, start, end) else "ask_coach"


_ASKS = words_of("should can could how what why which when is ok normal shall may")
"""Words of which a question about somebody else has one where the coach is to answer it."""


class _Sentence:
    """A sentence without the form of a question, and what it asks for all the same."""

    def __init__(self, message: Message, start: int, end: int) -> None:
        self._message = message
        self._start = start
        self._end = end
        self._ends_asking = message.text(end - 1) == "?"

    def topic(self, *, moved: bool, polite: bool = False) -> Want | None:
        """Return what is asked for, None where nothing is."""
        for pattern, want in _UNASKED_TOPICS:
            found = self._first(pattern)
            if found is not None and (self._ends_asking or self._asks_the_bot(found)):
                return want
        if self._first(STOP) is not None or self._is_only_talk():
            return None
        request = self._first(REQUEST)
        if request is not None and not NOT_REQUEST.is_in(self._message, request.start, self._end):
            for_coach = (
                self._is_for_coach(request.start, moved=moved, polite=polite) and self._first(UNDO) is None
            )
            return "ask_coach" if for_coach else None
        if moved and not INSTEAD.isdisjoint(self._message.texts(self._start, self._end)):
            return None
        return "ask_coach" if self._ends_asking and self._is_of_training() else None

    def _first(self, pattern: Pattern) -> Found | None:
        return pattern.first(self._message, self._start, self._end)

    def _asks_the_bot(self, found: Found) -> bool:
        return self._opens(found.start) and self._message.text(found.start) in OPENS_A_REQUEST

    def _opens(self, at: int) -> bool:
        """Return whether a token begins the sentence, or comes after a greeting or a pause."""
        return at == self._start or self._message.text(at - 1) in BEFORE_A_REQUEST

    def _is_for_coach(self, at: int, *, moved: bool, polite: bool) -> bool:
        """Return whether what sounds like a request is one that the coach must hear of."""
        message = self._message
        words = message.texts(at, self._end)
        if moved and not _TO_MOVE.isdisjoint(message.texts(max(self._start, at - 2), self._end)):
            return False
        opening, second = message.text(at), message.text(at + 1)
        if opening in _BEING:
            return self._ends_asking or (opening == "is" and (second in _THIS or at == self._start))
        if opening == "if" and polite:
            return False
        if opening in _WORTH:
            return self._ends_asking
        if opening in _ASKING:
            if message.text(self._start) in _ASKS_WHAT:
                return True
            return self._ends_asking or self._opens(at) or (opening in _ASKING_YOU and second in _YOU)
        return not (
            LIKES.at(message, at, self._end)
            and LIKES_IT.is_in(message, at, self._end)
            and TO_TALK.isdisjoint(words)
        )

    def _is_only_talk(self) -> bool:
        """Return whether the sentence is small talk and too short for more: "you ok?"."""
        return self._end - self._start <= LONGEST_TALK and self._first(SMALL_TALK) is not None

    def _is_of_training(self) -> bool:
        """Return whether what ends with a question mark asks about the training, and is no record."""
        return (
            self._end - self._start > 1
            and not OF_TRAINING.isdisjoint(self._message.texts(self._start, self._end))
            and self._first(NUMBER_ASKED) is None
            and self._first(WONDERED_AT) is None
            and self._first(SMALL_TALK) is None
            and not self._is_of_another()
        )

    def _is_of_another(self) -> bool:
        """Return whether the client only wonders at somebody else's set: "she squats 95 already??"."""
        marked = "another's" in self._message.taken[self._start : self._end]
        return marked and _ASKS.isdisjoint(self._message.texts(self._start, self._end))
