"""Once a button is pressed, its message shows that, and keeps those that still have something to say."""

import pytest

from domain.actions import Action, Answer, Release, Show, Treat, Words, Write
from domain.chosen import after_press
from domain.incoming import ReplyTo, Under
from domain.parts import Chosen

UNDO, WAITS = Words(text="Undo", once=True), Words(text="I'll wait", once=True)
WHY = Words(text="Why?")
YES, NO = Answer(question=3, text="Yes"), Answer(question=3, text="No")
OTHER = Answer(question=4, text="No")
LIGHTEN = Treat(client=2, alert=1, remedy="lighten")
SEEN = Treat(client=2, alert=1, remedy="seen")
OF_ANOTHER = Treat(client=2, alert=5, remedy="seen")
WRITE = Write(client=2, alert=1, name="Noor")
SHOW = Show(client=2)


@pytest.mark.parametrize(
    ("buttons", "pressed", "left"),
    [
        ((YES, NO), YES, ()),
        ((YES, NO, OTHER), NO, (OTHER,)),
        ((YES, NO, UNDO), YES, (UNDO,)),
        ((UNDO, WHY), UNDO, (WHY,)),
        ((UNDO, WAITS), WAITS, ()),
        ((LIGHTEN, SEEN, WRITE, SHOW), LIGHTEN, (SHOW,)),
        ((LIGHTEN, SEEN, OF_ANOTHER), SEEN, (OF_ANOTHER,)),
        ((Release(client=2), WRITE), Release(client=2), (WRITE,)),
    ],
)
def test_what_is_settled_goes_and_all_else_stays(
    buttons: tuple[Action, ...], pressed: Action, left: tuple[Action, ...]
) -> None:
    say = after_press(7, pressed, Under(number=12, buttons=buttons, reply=ReplyTo()))
    assert say is not None
    assert (say.to, say.edits, say.buttons) == (7, 12, left)
    assert say.parts == (Chosen(action=pressed),)


@pytest.mark.parametrize(
    ("buttons", "pressed"), [((WHY, UNDO), WHY), ((LIGHTEN, SHOW), SHOW), ((LIGHTEN, WRITE), WRITE)]
)
def test_a_look_at_something_leaves_the_message_as_it_is(
    buttons: tuple[Action, ...], pressed: Action
) -> None:
    assert after_press(7, pressed, Under(number=12, buttons=buttons, reply=ReplyTo())) is None


def test_a_press_that_comes_too_late_only_takes_the_buttons_away() -> None:
    say = after_press(7, YES, Under(number=12, buttons=(YES, NO), reply=ReplyTo()), taken=False)
    assert say is not None
    assert (say.parts, say.buttons) == ((), ())


def test_a_button_of_no_known_message_changes_nothing() -> None:
    assert after_press(7, YES, None) is None
