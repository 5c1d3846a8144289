"""What becomes of the buttons of a message once one of them is pressed.

Where the press has settled something, the choice is shown under the message and its buttons go; those stay
that only show something, and those of other matters in the same message.
"""

from domain.actions import Action, Answer, ChangeTo, Release, Show, TakeBack, Treat, Words, Write
from domain.incoming import Under
from domain.parts import Chosen, Say


def after_press(to: int, action: Action, under: Under | None, *, taken: bool = True) -> Say | None:
    """Return how the message to person `to` changes in which `action` was pressed; None where it does not.

    Where the press was not `taken`, as what it asked is known by now, only the buttons go.
    """
    if under is None:
        return None
    left = tuple(each for each in under.buttons if stays(each, action))
    if left == under.buttons:
        return None
    parts = (Chosen(action=action),) if taken else ()
    return Say(to=to, parts=parts, buttons=left, weight="nudge", edits=under.number)


def only_shows(action: Action) -> bool:
    """Return whether a press does no more than show something: each new press of it is answered anew."""
    return isinstance(action, Show) or (isinstance(action, Words) and not action.once)


def stays(button: Action, pressed: Action) -> bool:
    """Return whether a button has still something to say after another one, or itself, was `pressed`."""
    match button, pressed:
        case (Words(once=True), Words(once=True)):
            return False
        case (Answer(question=one), Answer(question=other)):
            return one != other
        case (Treat() | Write(), Treat()):
            return (button.client, button.alert) != (pressed.client, pressed.alert)
        case (Release() | ChangeTo() | TakeBack(), Release() | ChangeTo() | TakeBack()):
            return button.kind != pressed.kind
        case _:
            return True
