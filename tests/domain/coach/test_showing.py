"""What a coach asks to see: own clients' pictures, all at a glance, and nobody else's."""

from dataclasses import replace
from datetime import date

import pytest

from domain.actions import Show
from domain.incoming import PictureWanted, Pressed, Text
from domain.outcome import Order
from domain.parts import File, Notice
from domain.pictures import RosterProgress
from tests.domain.coach.test_hearing import MARA, STATE, does, noor, said


@pytest.mark.parametrize(
    ("text", "client", "rest"),
    [
        ("show me Noor's squat", 2, "squat"),
        ("picture of Noor", 2, ""),
        ("a picture of Noor's bench press, please", 2, "bench press"),
        ("Noor's squat as a graph", 2, "squat"),
        ("draw Ana Maria’s rows", 3, "rows"),
        ("can I see a chart of Ana Maria?", 3, ""),
    ],
)
def test_a_picture_of_a_client_is_asked_of_that_client(text: str, client: int, rest: str) -> None:
    assert does(Text(text=text)).orders == (Order(client, PictureWanted(coach=MARA.number, text=rest)),)


@pytest.mark.parametrize("text", ["show me Noor", "how is Noor?"])
def test_to_be_shown_a_client_is_still_the_card(text: str) -> None:
    (order,) = does(Text(text=text)).orders
    assert order.incoming.kind == "card wanted"


@pytest.mark.parametrize(
    "text",
    ["my clients at a glance", "at a glance", "show me everybody at a glance", "picture of my clients"],
)
def test_all_clients_come_at_a_glance_with_whoever_needs_the_coach_first(text: str) -> None:
    waits = noor("Ana Maria").model_copy(update={"open_alerts": (("stall", "Dip"), ("question", None))})
    course = ((date(2026, 2, 20), 0.0), (date(2026, 2, 25), 0.02))
    state = replace(STATE, clients=((2, noor()), (3, waits)), strength={2: course})
    (say,) = does(Text(text=text), state).says
    (part,) = say.parts
    assert isinstance(part, RosterProgress)
    assert [(row.client, row.matters, row.points) for row in part.rows] == [
        ("Ana Maria", 2, ()),
        ("Noor", 0, course),
    ]


def test_a_button_shows_an_own_client_only() -> None:
    own = does(Pressed(button="1:0", action=Show(client=2, exercise="Dip")))
    assert own.orders == (Order(2, PictureWanted(coach=MARA.number, text="Dip")),)
    other = does(Pressed(button="1:0", action=Show(client=99)))
    assert (other.orders, said(other)) == ((), ["not your client"])


@pytest.mark.parametrize(
    ("text", "form", "clients"),
    [
        ("journals of everyone", "journal table", ["Noor", "Ana Maria"]),
        ("export all my clients' journals as JSON", "journal data", ["Noor", "Ana Maria"]),
        ("all journals as pdf please", "journal pages", ["Noor", "Ana Maria"]),
        ("send me everybody's journals as PDF", "journal pages", ["Noor", "Ana Maria"]),
        ("journals of Ana Maria and Noor", "journal table", ["Ana Maria", "Noor"]),
    ],
)
def test_several_journals_come_a_file_each_and_one_message_shows_how_far(
    text: str, form: str, clients: list[str]
) -> None:
    outcome = does(Text(text=text))
    files = [part for say in outcome.says for part in say.parts if isinstance(part, File)]
    assert [(each.client, each.what) for each in files] == [(name, form) for name in clients]
    shown = [
        (say.instead_of, part.facts["sent"])
        for say in outcome.says
        for part in say.parts
        if isinstance(part, Notice)
    ]
    assert shown == [(None, 0), (1, 1), (1, 2)]


def test_of_many_journals_it_is_shown_in_ten_steps_how_far_they_are() -> None:
    clients = tuple((at, noor(f"Client{at}")) for at in range(2, 43))
    outcome = does(Text(text="journals of everyone"), replace(STATE, clients=clients))
    shown = [say for say in outcome.says if say.instead_of is not None]
    assert len(shown) == 10
    assert [say.weight for say in shown] == ["nudge"] * 9 + ["answer"]
