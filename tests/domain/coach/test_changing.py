"""One change for several clients at once."""

import pytest

from domain.actions import TakeBackAll
from domain.incoming import Changed, Text
from domain.parts import Notice
from domain.wishes import ReminderWish, RestWish, Wish
from tests.domain.coach.test_hearing import does
from tests.domain.coach.test_spreading import MANY, NAMES

EVERYONE = tuple(range(2, 2 + len(NAMES)))


@pytest.mark.parametrize(
    ("text", "clients", "wish", "said"),
    [
        ("remind everyone at 7:30", EVERYONE, ReminderWish(clock="7:30"), {"at": "07:30"}),
        ("give everyone two more rest days", EVERYONE, RestWish(days=2), {"days": 2}),
        ("give Noor and Piet one more rest day", (2, 3), RestWish(days=1), {"days": 1}),
    ],
)
def test_it_is_said_back_once(
    text: str, clients: tuple[int, ...], wish: Wish, said: dict[str, object]
) -> None:
    outcome = does(Text(text=text), MANY)
    assert [(order.to, order.incoming) for order in outcome.orders] == [
        (client, Changed(coach=1, change=1, wish=wish, to_several=True)) for client in clients
    ]
    (say,) = outcome.says
    (notice,) = (part for part in say.parts if isinstance(part, Notice))
    names = [NAMES[client - 2] for client in clients]
    assert (notice.topic, dict(notice.facts)) == ("changed for several", {"names": names, **said})
    assert TakeBackAll(clients=clients, change=1) in say.buttons


@pytest.mark.parametrize(
    "text", ["give Noor one more rest day", "no dips for Noor and Piet", "remind Noor at 7:30"]
)
def test_what_may_differ_is_said_by_each(text: str) -> None:
    outcome = does(Text(text=text), MANY)
    assert {order.incoming.to_several for order in outcome.orders if isinstance(order.incoming, Changed)} == {
        False
    }
    assert outcome.says == ()
