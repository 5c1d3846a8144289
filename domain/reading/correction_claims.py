"""What the client said before and now takes back: "I only did ten on the curl, I said eleven".

A claim counts only where its number is one of those recorded.
"""

from collections.abc import Iterator, Sequence
from decimal import Decimal

from domain.reading.message import Message
from domain.reading.naming import Named
from domain.reading.patterns import Found, Pattern, words_needed
from domain.reading.request import Request
from domain.reading.words import KG_WORDS, LB_WORDS, words_of
from domain.sets import TrainingSet

_UNIT = KG_WORDS | LB_WORDS
_CLAIM = Pattern(
    """
    ((i|ive) {once} {told}|{who} {once} {recorded}) {what} ..2 n:# [{unit}|rep|reps] {more}
    (down|saved|recorded|logged|entered|listed|noted) (as|for|at|with) n:# [{unit}|rep|reps] [(x|for|/|@) #]
    (the|that) n:# [{unit}|rep|reps] {was} [really|actually|only|just|a|an]* >(# [{unit}|rep|reps] [.|!|,|
        sorry|coach|really|actually]* $)
    {change} [the|that|my]* n:# [{unit}|rep|reps] (to|into|in|for|with|a|an) >([a|an|the] #)
    <!({planner}) (says|shows|reads) n:# [{unit}|rep|reps] [(x|for|/|@) #]
    """,
    change=words_of("change turn switch correct fix edit alter make swap amend update changing"),
    more="[(x|for|/|@|times) #] !(on (the|it|each)|a side|in)",
    who="you|youve|u|it|the app|the bot|app|bot",
    recorded="have me|have it|has me|have|has|put|recorded|logged|saved|noted|entered|wrote down",
    planner=words_of("coach trainer plan program programme sheet he she they"),
    was="(was|should be|shouldve been|should have been)",
    once="[had|have|just|accidentally|first|mistakenly|wrongly|probably|stupidly|originally|earlier]*",
    told="""
        said|say|says|wrote|write|written|put|typed|told you|told|entered|logged|recorded|noted|texted|sent
        sent you|reported|saved|gave you|claimed
    """,
    what="[you|it|that|them|down|me|as|at|was|were|in|for|by mistake|by accident|coach|earlier|before|set]*",
    unit=_UNIT,
)
_SET_SAID_AGAIN = Pattern(
    """
    (that|the|those|my|this) load:# [{unit}] (x|for|/|*|by|times) amount:# ....8 {belongs}
    """,
    belongs="""
        (was|is|were|are|should|should be|belongs|belong|goes|go|needs to go|has to go|shouldve been)
        [be|to|on|under|for|with|at|meant|actually|the|my|supposed|from|really|in fact|of|as|into|a|done]* $
    """,
    unit=_UNIT,
)
"""A recorded set said again, with the exercise that it belongs to right after."""

MAY_CLAIM = words_needed(_CLAIM, _SET_SAID_AGAIN)
"""Words without which nothing recorded is said again."""


def claims(message: Message, request: Request, named: Sequence[Named]) -> Iterator[Found]:
    """Return where a recorded number is said to have been told, beside the one that is right."""
    numbers = message.numbers(0, len(message.tokens))
    records = _records(request, named)
    for found in _CLAIM.find(message):
        value = message.value(found.parts["n"][0])
        beside = [at for at in numbers if not found.start <= at < found.end and not message.taken[at]]
        if 1 <= len(beside) <= 2 and any(value in {one.load, Decimal(one.amount)} for one in records):
            yield found


def is_said_again_of_another(message: Message, request: Request, named: Sequence[Named]) -> bool:
    """Return whether a recorded set is said again as one of another exercise: "that 65x10 was the rows"."""
    for name in named:
        found = _SET_SAID_AGAIN.first(message, 0, name.start)
        if found is None or len(name.names) != 1:
            continue
        load, amount = (message.value(found.parts[part][0]) for part in ("load", "amount"))
        if any(
            (one.load, Decimal(one.amount)) == (load, amount) and one.exercise != name.names[0]
            for one in request.done
        ):
            return True
    return False


def _records(request: Request, named: Sequence[Named]) -> list[TrainingSet]:
    """Return the recorded sets of the exercises named, of the last one where none is."""
    names = {name for n in named for name in n.names} or {request.done[-1].exercise}
    return [one for one in request.done if one.exercise in names]
