"""What a coach's free words are taken for: kind, clients, pieces; a table of cases, and what is none."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from domain.coach.understanding import asked

CLIENTS = ((2, "Noor"), (3, "Ana Maria"), (4, "Piet"), (5, "Ana Sofia"), (6, "Adaeze"), (7, "Wiremu"))

OF_CLIENTS: list[tuple[str, str, tuple[int, ...], dict[str, str]]] = [
    ("how is Noor doing?", "card", (2,), {}),
    ("hows Piet", "card", (4,), {}),
    ("how's Adaze", "card", (6,), {}),
    ("tell me about wiremu", "card", (7,), {}),
    ("how are Noor and Piet?", "card", (2, 4), {}),
    ("what did Noor squat last time", "sets", (2,), {}),
    ("how much does Wiremu bench", "sets", (7,), {}),
    ("when did noor last train?", "sets", (2,), {}),
    ("tell Noor great job", "tell", (2,), {"text": "great job"}),
    ("tell Wirmu good job", "tell", (7,), {"text": "good job"}),
    ("Noor: well done", "tell", (2,), {"text": "well done"}),
    ("let Piet know I am away till Monday", "tell", (4,), {"text": "I am away till Monday"}),
    ("tell Noor, Piet and Wiremu: shut", "tell", (2, 4, 7), {"text": "shut"}),
    ("swap Noor's rows for pulldowns", "swap", (2,), {"exercise": "rows", "instead": "pulldowns"}),
    ("can you swap rows for pulldowns for Noor", "swap", (2,), {"exercise": "rows", "instead": "pulldowns"}),
    ("give Noor pulldowns instead of rows", "swap", (2,), {"exercise": "rows", "instead": "pulldowns"}),
    ("Noor should do dips instead of bench", "swap", (2,), {"exercise": "bench", "instead": "dips"}),
    ("give Piet one more rest day", "rest more", (4,), {}),
    ("Piet needs another rest day", "rest more", (4,), {}),
    ("let Piet rest 2 more days", "rest more", (4,), {}),
    ("no deadlifts for Ana Maria until I say so", "leave out", (3,), {"exercise": "deadlifts"}),
    ("Ana Sofia is not to deadlift for now", "leave out", (5,), {"exercise": "deadlift"}),
    ("drop Piet's dips", "leave out", (4,), {"exercise": "dips"}),
    ("take wiremu off dips", "leave out", (7,), {"exercise": "dips"}),
    ("put Ana Maria back on them", "back", (3,), {"exercise": "them"}),
    ("Noor can squat again", "back", (2,), {"exercise": "squat"}),
    ("raise Piet's reminder to 7", "reminder", (4,), {"clock": "7"}),
    ("set piets reminder to half past six", "reminder", (4,), {"clock": "half past six"}),
    ("remind Piet at 6:30", "reminder", (4,), {"clock": "6:30"}),
    ("put Noor on Harbour Base", "assign", (2,), {"programme": "Harbour Base"}),
    ("let Noor train", "release", (2,), {}),
    ("why is Noor's bench below?", "why", (2,), {}),
]


@pytest.mark.parametrize(("text", "kind", "clients", "pieces"), OF_CLIENTS)
def test_a_request_is_of_the_clients_named(
    text: str, kind: str, clients: tuple[int, ...], pieces: dict[str, str]
) -> None:
    request = asked(text, CLIENTS)
    assert request is not None
    assert (request.kind, request.of, request.pieces) == (kind, tuple((each,) for each in clients), pieces)


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("who needs me?", "who needs me"),
        ("what's new", "who needs me"),
        ("who trains today", "who trains"),
        ("who is stalled", "who stalled"),
        ("is anyone hurt?", "who hurts"),
        ("who didn't train yesterday", "who missed"),
        ("any questions?", "who asked"),
        ("who is away", "who is away"),
        ("which remedies worked?", "remedies"),
        ("take that back", "undo"),
        ("programmes", "programmes"),
    ],
)
def test_a_request_of_all_clients(text: str, kind: str) -> None:
    request = asked(text, CLIENTS)
    assert request is not None
    assert (request.kind, request.of) == (kind, ())


def test_a_name_that_fits_two_comes_with_both_and_its_place() -> None:
    request = asked("no deadlifts for Ana until I say so", CLIENTS)
    assert request is not None
    assert (request.of, request.spans) == (((3, 5),), ((17, 20),))


@pytest.mark.parametrize(("said", "days"), [("one", 1), ("2", 2), ("three", 3)])
def test_how_many_rest_days_are_said(said: str, days: int) -> None:
    request = asked(f"give Piet {said} more rest days", CLIENTS)
    assert request is not None
    assert request.number == days


@pytest.mark.parametrize("text", ["tell Bob: hi", "how is Bob?", "put Bob on Base", "tell Noor and Bob: hi"])
def test_somebody_unknown_is_said_to_be_so(text: str) -> None:
    request = asked(text, CLIENTS)
    assert request is not None
    assert request.unknown is not None
    assert "Bob" in request.unknown


@pytest.mark.parametrize(
    "text", ["bananas", "how is the weather", "thanks!", "Piet seems tired", "Noor, well done", "squat 80x8"]
)
def test_what_is_no_request_is_none(text: str) -> None:
    request = asked(text, CLIENTS)
    assert request is None or request.unknown is not None


def test_her_is_the_client_spoken_of_last() -> None:
    request = asked("give her one more rest day", CLIENTS, 2)
    assert request is not None
    assert request.of == ((2,),)
    assert asked("give her one more rest day", CLIENTS) is None


@given(st.text(max_size=200))
def test_any_text_at_all_is_read_without_a_fault(text: str) -> None:
    request = asked(text, CLIENTS, 2)
    assert request is None or all(fits for fits in request.of)
