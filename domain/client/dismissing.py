"""What a «never mind» lets go: a question of the bot's, one to the coach, or a change of plans."""

from collections.abc import Callable, Iterator
from datetime import datetime, timedelta
from functools import partial

from domain.client.draft import Draft, kind_of
from domain.client.half_understood import unfinished_of
from domain.client.plans import plans_as_before, plans_of
from domain.client.unfinished import forget_unfinished
from domain.entry_order import told
from domain.journal import Alert
from domain.memory import Waiting
from domain.parts import Notice
from domain.parts import Slot as Asked

WITHDRAWN_WITHIN = timedelta(minutes=30)
"""For how long a «never mind» takes back what the client has wanted. The house's own choice."""

LET_GO: frozenset[Asked] = frozenset({"day", "missed", "trouble", "lately", "body mass"})
"""Questions beside those about sets that need no answer."""

Deed = Callable[[], None]


def dismiss(draft: Draft) -> None:
    """Let go what was last asked or wanted; say what stands where that is nothing.

    A set that is recorded is never lost by it.
    """
    lately = [each for each in open_matters(draft) if draft.at - each[0] <= WITHDRAWN_WITHIN]
    question = draft.question("sets")
    recorded = max((each.at for each in told(draft.state)), default=None)
    _, let_go = max(lately, key=lambda each: each[0], default=(None, None))
    if let_go is not None:
        let_go()
    elif question is not None:
        drop(draft, question)
    elif recorded is not None and draft.at - recorded <= WITHDRAWN_WITHIN:
        draft.notice("all recorded stands")
    else:
        draft.notice("heard")


def open_matters(draft: Draft) -> Iterator[tuple[datetime, Deed]]:
    """Give each matter that can be let go with the moment at which it came up."""
    for question in draft.memory.questions:
        if kind_of(question.slot) == "sets" or question.slot in LET_GO:
            yield question.asked_at, partial(drop, draft, question)
    for alert in draft.state.alerts:
        if alert.reason == "question":
            yield alert.at, partial(withdraw, draft, alert)
    plans, recorded = draft.memory.plans_before, max((each.message for each in told(draft.state)), default=0)
    if plans is not None and plans.at is not None and plans.message > recorded:
        yield plans.at, partial(plans_as_before, draft, plans)


def drop(draft: Draft, question: Waiting) -> None:
    """Ask no further."""
    if kind_of(question.slot) == "sets":
        forget_unfinished(draft, max(each.message for each in unfinished_of(question)))
        draft.notice("question dropped")
        return
    draft.drop_question(question)
    if question.slot == "day":
        plans_as_before(draft, plans_of(draft))
    else:
        draft.notice("heard")


def withdraw(draft: Draft, alert: Alert) -> None:
    """Tell the coach that a question needs no answer; a further «never mind» is of no plans before it."""
    draft.settle(alert)
    if draft.memory.plans_before is not None and (draft.memory.plans_before.at or alert.at) <= alert.at:
        draft.remember(plans_before=None)
    draft.notice("question withdrawn", coach=draft.client.coach.name)
    facts = {"client": draft.client.name, "text": alert.evidence["said"]}
    draft.tell_coach(Notice(topic="client withdraws", facts=facts))
