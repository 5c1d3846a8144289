"""A coach's reply to a message about a client."""

import pytest

from domain.incoming import CardWanted, Changed, ReplyTo, TalkWanted, Text, Told
from domain.outcome import Order
from domain.wishes import SwapWish
from tests.domain.coach.test_hearing import does, said

WORDS = ReplyTo(message=4, client=2, alerts=(5,), is_words=True)
MATTER = ReplyTo(message=4, client=2, alerts=(5,))


@pytest.mark.parametrize("text", ["Yes, on the last set.", "undo", "how is Ana Maria doing?", "ok"])
def test_a_reply_to_somebodys_words_is_always_for_that_one(text: str) -> None:
    assert does(Text(text=text, reply=WORDS)).orders == (Order(2, Told(coach=1, text=text, alerts=(5,))),)


def test_a_reply_to_another_matter_is_for_the_client_where_it_asks_for_nothing() -> None:
    text = "Sleep first, then we see."
    assert does(Text(text=text, reply=MATTER)).orders == (Order(2, Told(coach=1, text=text, alerts=(5,))),)


@pytest.mark.parametrize(
    ("text", "order"),
    [
        ("how is she doing?", None),
        ("how is her training going?", None),
        ("how is Ana Maria doing?", Order(3, CardWanted(coach=1))),
        (
            "swap her rows for pulldowns",
            Order(2, Changed(coach=1, change=1, wish=SwapWish(exercise="rows", instead="pulldowns"))),
        ),
        ("tell her well done", Order(2, Told(coach=1, text="well done"))),
    ],
)
def test_a_reply_to_another_matter_that_asks_for_something_is_done(text: str, order: Order | None) -> None:
    orders = does(Text(text=text, reply=MATTER)).orders
    if order is not None:
        assert orders == (order,)
    else:
        assert [each.to for each in orders] == [2]


def test_a_kind_word_on_a_matter_goes_to_nobody() -> None:
    outcome = does(Text(text="ok, thanks", reply=MATTER))
    assert (outcome.orders, said(outcome)) == ((), ["heard"])


@pytest.mark.parametrize("reply", [WORDS, MATTER])
def test_nobody_elses_client_is_reached_by_a_reply(reply: ReplyTo) -> None:
    outcome = does(Text(text="hello", reply=reply.model_copy(update={"client": 99})))
    assert (outcome.orders, said(outcome)) == ((), ["not your client"])


@pytest.mark.parametrize(
    "text",
    [
        "what did Noor ask?",
        "what did noor write",
        "show my conversation with Noor",
        "the thread with Noor",
        "what did I tell Noor?",
        "Noor's questions",
    ],
)
def test_what_was_written_can_be_seen(text: str) -> None:
    assert does(Text(text=text)).orders == (Order(2, TalkWanted(coach=1)),)
