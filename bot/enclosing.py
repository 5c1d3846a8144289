"""What goes out beside the words of a message: a picture or a file, made as the message is sent.

In the outbox stand only the parts that it is made of. So the row stays small, a message that is tried again
is made again, a file has what stands when it goes out, and who may see it is asked at that moment; a picture
shows the very numbers that its caption says. Making one takes time and no event loop: call it in a thread.
What cannot be made is left out, and its words go.
"""

import logging
from collections.abc import Callable
from dataclasses import replace

from bot.channel import Attachment, Rendered
from bot.files.writing import content_of, name_of
from bot.pictures.drawing import draw, drawable, picture_name
from bot.wording.enclosed import MISSING, withheld
from domain.parts import File, Part
from persistence.faults import DatabaseTrouble
from persistence.outbox import Outgoing
from persistence.store import Store

Enclose = Callable[[Outgoing, Rendered], Rendered]
"""Gives a message what goes out beside its words."""

log = logging.getLogger(__name__)


def encloses(parts: tuple[Part, ...]) -> bool:
    """Return whether a message of these parts has more than words."""
    return file_in(parts) is not None or drawable(parts) is not None


def made(store: Store) -> Enclose:
    """Return what makes the pictures and files, from `store`. Raises DatabaseTrouble when called."""

    def enclose(outgoing: Outgoing, rendered: Rendered) -> Rendered:
        return _with_file(store, outgoing, _with_picture(outgoing, rendered))

    return enclose


def named(outgoing: Outgoing, rendered: Rendered) -> Rendered:
    """Name what would be made, for whoever only reads the words."""
    shown, part = drawable(outgoing.say.parts), file_in(outgoing.say.parts)
    if shown is not None:
        rendered = replace(rendered, photo=Attachment(picture_name(shown), b""))
    return rendered if part is None else replace(rendered, document=Attachment(name_of(part), b""))


def _with_picture(outgoing: Outgoing, rendered: Rendered) -> Rendered:
    shown = drawable(outgoing.say.parts)
    if shown is None:
        return rendered
    try:
        return replace(rendered, photo=Attachment(picture_name(shown), draw(shown)))
    except Exception as error:  # noqa: BLE001 the caption says the same, and is to go whatever is wrong
        log.error("message %s: no picture of %s: %s", outgoing.number, shown.kind, type(error).__name__)
        return rendered


def _with_file(store: Store, outgoing: Outgoing, rendered: Rendered) -> Rendered:
    part = file_in(outgoing.say.parts)
    if part is None:
        return rendered
    try:
        content = content_of(part, store, outgoing.say.to)
    except DatabaseTrouble:
        raise
    except Exception as error:  # noqa: BLE001 whatever is wrong with a file, its words are to go
        log.error("message %s: no %s: %s", outgoing.number, part.what, type(error).__name__)
        return replace(rendered, text_html=f"{rendered.text_html}\n\n{MISSING}")
    if content is None:
        return replace(rendered, text_html=withheld(part))
    return replace(rendered, document=Attachment(name_of(part), content))


def file_in(parts: tuple[Part, ...]) -> File | None:
    """Return the part that asks for a file; None where none does."""
    return next((part for part in parts if isinstance(part, File)), None)
